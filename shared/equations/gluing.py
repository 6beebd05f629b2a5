"""Gluing: scarfs, laminations and gaps: plain geometry of the bond, and the glue that it takes."""
from math import sqrt

from .rounding import ceiling


def scarf_area(thickness: float, width: float, ratio: float) -> float:
    """Bonded area of a scarf of k to 1:
        A = t b sqrt(1 + k^2)

    thickness, width: t, b [m]; ratio: k [-]
    >>> round(scarf_area(0.006, 1.2, 8), 7)
    0.0580483
    """
    return thickness * width * sqrt(1 + ratio * ratio)


def scarf_joined(first: float, second: float, thickness: float, ratio: float) -> float:
    """Length of two panels joined by a scarf: L_1 + L_2 - k t [m].

    >>> round(scarf_joined(2.44, 2.44, 0.006, 8), 6)
    4.832
    """
    return first + second - ratio * thickness


def scarf_stress(stress: float, ratio: float) -> "tuple[float, float]":
    """(shear along the bond, pull across it) of a pull in the panel:
        s k / (1 + k^2), s / (1 + k^2)

    stress: s, in the panel [Pa]; ratio: k [-]; evenly spread over the bond, its ends not looked at
    >>> [round(one / 1e6, 4) for one in scarf_stress(40e6, 8)]
    [4.9231, 0.6154]
    """
    return stress * ratio / (1 + ratio * ratio), stress / (1 + ratio * ratio)


def former_radius(radius: float, layers: int) -> float:
    """Radius of the former on which equal layers are glued, for a wanted radius once they spring back:
        R_f = R (1 - 1 / n^2)

    radius: R, free of the former [m]; layers: n, 2 or more, free to slide until the glue is hard
    returns: [m]; elastic layers, a glue that does not creep
    >>> former_radius(1.6, 4)
    1.5
    """
    return radius * (1 - 1 / (layers * layers))


def bend_strain(thickness: float, radius: float) -> float:
    """Strain in the outer face of a layer bent to a radius: t / (2 R) [-].

    >>> bend_strain(0.01, 1.0)
    0.005
    """
    return thickness / (2 * radius)


def clamps_for(pressure: float, length: float, width: float, force: float, apart: float) -> int:
    """How many clamps press a bond: enough for the pressure, none farther apart than said.

    pressure: [Pa]; length, width: of the bond [m]; force: of one clamp [N]; apart: along the bond, at the most [m]
    >>> clamps_for(0.05e6, 2.0, 0.06, 1000.0, 0.15), clamps_for(0.05e6, 2.0, 0.02, 1000.0, 0.15)
    (14, 14)
    >>> clamps_for(0.05e6, 2.0, 0.2, 1000.0, 0.15)
    20
    """
    return max(ceiling(length / apart), ceiling(pressure * length * width / force))


def glue_placed(volume: float, density: float, squeezed: float) -> float:
    """Glue to place for what stays in the bond: V rho / (1 - q) [kg].

    volume: V, of the bond line or the gap [m3]; density: rho [kg/m3]; squeezed: q, share that comes out [-]
    >>> round(glue_placed(0.0003, 1100, 0.2), 6)
    0.4125
    """
    return volume * density / (1 - squeezed)


def wedge_volume(gaps: "tuple[float, ...]", depth: float, length: float) -> float:
    """Volume of a gap whose width is known at equal distances: mean gap x depth x length [m3].

    gaps: [m], one or more; depth: of the edge [m]; the mean by the trapezoidal rule
    >>> round(wedge_volume((0.001, 0.003), 0.02, 1.5) * 1e6, 6)
    60.0
    """
    if len(gaps) == 1:
        return gaps[0] * depth * length
    return (sum(gaps) - (gaps[0] + gaps[-1]) / 2) / (len(gaps) - 1) * depth * length


def bare_fillet_radius(thickness: float, cotangent: float, panel: float, face: float) -> float:
    """Radius of a fillet without tape whose foot carries what the panel carries in bending:
        t + 2 R cot h = t sqrt(f / f_90), R = t (sqrt(f / f_90) - 1) / (2 cot h)

    thickness: t, of the panel that stands on the other [m]; cotangent: cot h, half of the angle between the faces
    panel: f, its bending strength; face: f_90, what pulls the other panel's face off [same unit]
    returns: R [m], 0 where the panel's own edge is enough; section moduli of two rectangles, t and foot wide
    >>> round(bare_fillet_radius(0.006, 1.0, 40, 2) * 1000, 3)
    10.416
    """
    return max(0.0, thickness * (sqrt(panel / face) - 1) / (2 * cotangent))

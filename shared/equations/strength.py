"""Strength: what a strip of seam or panel one metre wide carries, in bending and in pull. Elastic to the first limit.

A section is a list of parts laid on each other: (stiffness E [Pa], from, to [m]), measured from one face on.
"""
from math import sqrt

from .types import Figures


def laminate_pull(fraction: float) -> float:
    """Tensile strength of hand-laid woven E-glass:
        800 p^2 - 80 p + 37  [MPa]

    fraction: p, glass by mass [-], 0.3 to 0.6; as recalled from ISO 12215-5:2008, Annex C, not confirmed there
    returns: [Pa]
    >>> round(laminate_pull(0.3) / 1e6, 6)
    85.0
    """
    return (800 * fraction * fraction - 80 * fraction + 37) * 1e6


def laminate_push(fraction: float) -> float:
    """Compressive strength of hand-laid woven E-glass:
        150 p + 72  [MPa]

    fraction: p, glass by mass [-]; as recalled from ISO 12215-5:2008, Annex C, not confirmed there
    returns: [Pa]
    >>> round(laminate_push(0.3) / 1e6, 6)
    117.0
    """
    return (150 * fraction + 72) * 1e6


def laminate_stiffness(fraction: float) -> float:
    """Stiffness of hand-laid woven E-glass:
        38000 p - 5000  [MPa]

    fraction: p, glass by mass [-], above 0.14; as recalled from ISO 12215-5:2008, Annex C, not confirmed there
    returns: [Pa]
    >>> round(laminate_stiffness(0.3) / 1e6, 6)
    6400.0
    """
    return (38000 * fraction - 5000) * 1e6


def layer_shear(fraction: float) -> float:
    """Shear strength between two layers of hand-laid glass:
        22 - 17.5 p  [MPa]

    fraction: p, glass by mass [-]; as recalled from ISO 12215-5:2008, Annex C, not confirmed there
    returns: [Pa]
    >>> round(layer_shear(0.4) / 1e6, 6)
    15.0
    """
    return (22 - 17.5 * fraction) * 1e6


def neutral_axis(parts: Figures) -> float:
    """Where a bent section is neither stretched nor pressed:
        sum(E A y) / sum(E A)

    parts: a section
    returns: from the same face [m]; textbook, transformed section
    >>> neutral_axis(((1.0, 0.0, 2.0), (3.0, 2.0, 4.0)))
    2.5
    """
    whole = sum([stiff * (end - start) for stiff, start, end in parts])
    return sum([stiff * (end * end - start * start) / 2 for stiff, start, end in parts]) / whole


def bending_stiffness(parts: Figures, axis: float) -> float:
    """Stiffness of a section in bending about an axis:
        sum(E (b^3 / 12 + b y^2)) = sum(E (y_2^3 - y_1^3) / 3)

    parts: a section; axis: from the same face [m]
    returns: EI of one metre's width [N m]; textbook, transformed section
    >>> round(bending_stiffness(((12.0, 0.0, 1.0),), 0.5), 9)
    1.0
    """
    return sum([stiff * ((end - axis) ** 3 - (start - axis) ** 3) / 3 for stiff, start, end in parts])


def cracked_axis(core: float, glass: float, pressed: float, stretched: float, depth: float) -> float:
    """How deep a core is pressed that takes no pull, between two skins:
        E_c x^2 / 2 + E (t_p + t_s) x + E (t_p^2 / 2 - t_s (H + t_s / 2)) = 0

    core, glass: stiffness E_c, E [Pa]; pressed, stretched: t_p, t_s [m], of the skins; depth: H, of the core [m]
    returns: x, from the pressed face of the core [m], 0 or less where the skins alone carry; textbook, cracked section
    >>> round(cracked_axis(2.0, 10.0, 0.0, 0.1, 1.0), 6)
    0.640175
    """
    half = glass * (pressed + stretched)
    rest = glass * (pressed * pressed / 2 - stretched * (depth + stretched / 2))
    return (sqrt(max(0.0, half * half - 2 * core * rest)) - half) / core


def moment(stiffness: float, axis: float, limits: Figures) -> "tuple[float, str]":
    """The bending that the first of several limits allows:
        f EI / (E |y - axis|)

    stiffness: EI [N m]; axis [m]; limits: (what, E [Pa], y [m], f [Pa]) each; one that lies on the axis limits nothing
    returns: (of one metre's width [N], what limits)
    >>> moment(1.0, 0.5, (("top", 12.0, 1.0, 6.0), ("bottom", 12.0, 0.0, 5.0)))
    (0.8333333333333334, 'bottom')
    """
    found = [(strength * stiffness / (stiff * abs(y - axis)), what) for what, stiff, y, strength in limits
             if abs(y - axis) > 1e-12]
    return min(found)


def plate_moment(strength: float, thickness: float) -> float:
    """Bending that a panel carries:
        f t^2 / 6

    strength: f, in bending [Pa]; thickness: t [m]
    returns: of one metre's width [N]
    >>> round(plate_moment(40e6, 0.006), 6)
    240.0
    """
    return strength * thickness * thickness / 6


def across_bends(plies: int, across: float) -> float:
    """Bending strength of plywood across the face grain, of that along it. Equal plies, each other one turned:
        (EI_90 / c_90) / (EI_0 / c_0),  c to the outer face of the outermost ply that lies along the span

    plies: odd, 3 or more; across: stiffness of a ply across its grain, of that along [-]
    returns: [-]; the method of USDA FPL-059 (1964); its factor for the span is the same both ways and falls out
    >>> round(across_bends(5, 1 / 20), 6), round(across_bends(3, 0.0), 6)
    (0.51429, 0.115385)
    """
    def modulus(first: float, second: float, reach: float) -> float:
        parts = [(second if place % 2 else first, place - plies / 2, place + 1 - plies / 2) for place in range(plies)]
        return bending_stiffness(parts, 0.0) / reach
    return modulus(across, 1.0, plies / 2 - 1) / modulus(1.0, across, plies / 2)


def across_pulls(plies: int, across: float) -> float:
    """Strength of plywood in pull across the face grain, of that along it: as the plies that lie along the pull share.

    plies: odd, 3 or more, all equal; across: of a ply across its grain, of that along [-]
    returns: [-]
    >>> across_pulls(5, 0.0)
    0.6666666666666666
    """
    turned = plies // 2
    return (turned + across * (plies - turned)) / (plies - turned + across * turned)


def shear_lag(shear: float, layer: float, first: float, second: float) -> float:
    """How quickly a lap hands its force over:
        lambda^2 = (G / eta) (1 / (E_1 t_1) + 1 / (E_2 t_2))

    shear, layer: G [Pa] and thickness eta [m] of what shears between the two; first, second: E t of each [N/m]
    returns: lambda [1/m]; Volkersen (1938), from memory. After 3 / lambda all but 5 % of the force is handed over
    >>> round(shear_lag(60e6, 0.0012, 5.28e6, 21e6), 3)
    108.861
    """
    return sqrt(shear / layer * (1 / first + 1 / second))

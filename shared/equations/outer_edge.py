"""Outer edge: what stands open between two panel edges, and the rounded outer edge of a seam.

Seen along the seam with the inside up: the inner faces meet in the origin, the bisector is the y axis, a is the angle
between the faces, h = a / 2. Square edges touch at the inner corners, so the V opens to the outside; edges bevelled by
more than (pi - a) / 2 touch at the outer corners and open to the inside.
"""
from collections import namedtuple
from math import asin, cos, pi, sin, sqrt, tan

from .fillet import excess

# inner, outer: half the width between the panels' inner and outer corners; depth: between those two lines [m]
Opening = namedtuple("Opening", ("inner", "outer", "depth"))
SLACK = 1e-12  # m: what the runtimes' last bits may differ


def opening(angle: float, thickness: float, gap: float = 0.0, bevel: float = 0.0) -> Opening:
    """The opening between two panel edges, the gap measured where they are nearest.

    angle: a [rad], 0 < a < pi; thickness: t [m]; gap: g [m]; bevel: b [rad] off square, outer corner forward
    returns: Opening [m], plane geometry
    >>> [round(1000 * side, 4) for side in opening(pi / 2, 0.006, 0.004)]
    [2.0, 6.2426, 4.2426]
    """
    h = angle / 2
    lean = tan(bevel)
    wider = thickness * (cos(h) - lean * sin(h))
    depth = thickness * (sin(h) + lean * cos(h))
    if wider >= 0:
        return Opening(gap / 2, gap / 2 + wider, depth)
    return Opening(gap / 2 - wider, gap / 2, depth)


def v_area(angle: float, thickness: float, gap: float = 0.0, bevel: float = 0.0) -> float:
    """What stands open between the panel edges, from the line of the inner to that of the outer corners.

    Without gap and bevel 1/2 t**2 sin a; bevelled by b each 1/2 (t / cos b)**2 |sin(pi - a - 2 b)|; square edges with
    a gap g t sin h + 1/2 t**2 sin a.
    angle: a [rad]; thickness: t [m]; gap: g [m]; bevel: b [rad]
    returns: [m2]; a trapezium, plane geometry
    >>> round(v_area(pi / 2, 1.0), 6)
    0.5
    """
    found = opening(angle, thickness, gap, bevel)
    return (found.inner + found.outer) * found.depth


def filled_from_inside(angle: float, thickness: float, gap: float = 0.0, bevel: float = 0.0) -> float:
    """What a putty pressed right through takes beyond the cove itself: the opening, less what the cove counted already.

    Added to `fillet.area` it is the whole section as long as the cove's tangent points lie on the panels:
        square edges: g t sin h + 1/2 t**2 sin a - 1/4 g**2 cot h
    angle: a [rad]; thickness: t [m]; gap: g [m]; bevel: b [rad]
    returns: [m2]; plane geometry
    >>> round(filled_from_inside(pi / 2, 6.0, 4.0), 4)
    30.9706
    """
    found = opening(angle, thickness, gap, bevel)
    return (found.inner + found.outer) * found.depth - found.inner * found.inner * tan((pi - angle) / 2)


def bare_corner(angle: float, thickness: float, gap: float = 0.0, bevel: float = 0.0) -> float:
    """From the corner of the two faces to where a panel begins, along the face: a cove must reach further than this.

    returns: [m]; 0 where the inner corners touch
    >>> round(bare_corner(pi / 2, 6.0, 4.0), 4)
    2.8284
    """
    return opening(angle, thickness, gap, bevel).inner / sin(angle / 2)


def cover(angle: float, thickness: float, radius: float) -> float:
    """What stands over the inner corner on the bisector when the outer edge is rounded:
        (t - r (1 - cos(d / 2))) / cos(d / 2),  d = pi - a

    angle: a [rad]; thickness: t [m]; radius: r [m], of the round-over
    returns: [m]; exactly t at r = t, thinner for a larger radius, 0 or less where the rounding breaks through
    >>> cover(2.0, 0.006, 0.006)
    0.006
    """
    x = (pi - angle) / 2
    if radius == thickness:
        return thickness
    half = sin(x / 2)
    return (thickness - radius * 2 * half * half) / cos(x)


def largest_round(angle: float, thickness: float, gap: float = 0.0, bevel: float = 0.0) -> float:
    """The largest round-over that touches filling only; beyond it the plane takes wood too.

    returns: r [m]: the panel thickness for square edges that touch
    >>> round(largest_round(2.0, 0.006), 6)
    0.006
    """
    return opening(angle, thickness, gap, bevel).outer / cos(angle / 2)


def rounded_area(angle: float, thickness: float, radius: float, gap: float = 0.0, bevel: float = 0.0,
                 edges: "Opening | None" = None) -> float:
    """The opening filled out to a round-over that is tangent to both outer faces:
        square edges that touch, r <= t: t**2 tan(d / 2) - r**2 (tan(d / 2) - d / 2),  d = pi - a

    angle: a [rad]; thickness: t [m]; radius: r [m], 0 for a sharp edge; gap: g [m]; bevel: b [rad]
    edges: their `opening` where it is known already
    returns: [m2]; where the rounding takes wood, only what lies between the edges counts; plane geometry
    >>> round(rounded_area(pi / 2, 1.0, 1.0), 6), round(rounded_area(pi / 2, 1.0, 0.0), 6)
    (0.785398, 1.0)
    """
    x = (pi - angle) / 2
    found = edges or opening(angle, thickness, gap, bevel)
    if radius <= found.outer / sin(x) + SLACK:
        whole = (found.inner + found.outer) * found.depth
        return whole + found.outer * found.outer * tan(x) - radius * radius * excess(x)
    half, down = round_meets_edge(angle, thickness, radius, gap, bevel)
    top = found.inner / tan(angle / 2)
    bow = asin(min(1.0, half / radius))
    return (found.inner + half) * (top - down) + radius * radius * bow - half * sqrt(radius * radius - half * half)


def round_meets_edge(angle: float, thickness: float, radius: float, gap: float = 0.0, bevel: float = 0.0) -> tuple:
    """Where a round-over that takes wood crosses the right panel's edge: (x, y) [m], from the inner faces' corner.

    radius above `largest_round`, and `cover` above 0
    >>> [round(side, 4) for side in round_meets_edge(pi / 2, 1.0, 2.0)]
    [0.5176, -0.5176]
    """
    found = opening(angle, thickness, gap, bevel)
    top = found.inner / tan(angle / 2)
    centre = (radius - thickness) / sin(angle / 2)
    across, rise = found.outer - found.inner, top - centre
    a = across * across + found.depth * found.depth
    b = found.inner * across - rise * found.depth
    c = found.inner * found.inner + rise * rise - radius * radius
    along = (sqrt(max(0.0, b * b - a * c)) - b) / a
    return found.inner + along * across, top - along * found.depth


def outside_flank(width: float, angle: float, radius: float) -> float:
    """Flank of a tape bent round the outer edge, each side on the flat:
        (w - r d) / 2,  d = pi - a

    width: w [m]; angle: a [rad]; radius: r [m]
    returns: [m]; below 0: the tape does not reach round the bend
    >>> round(outside_flank(0.075, pi / 2, 0.006), 5)
    0.03279
    """
    return (width - radius * (pi - angle)) / 2

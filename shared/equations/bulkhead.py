"""Bulkhead: a panel standing on another, an inside corner on either side and its own edge between them."""
from math import cos, pi, tan


def other_angle(angle: float) -> float:
    """The angle on the other side of the bulkhead [rad].

    >>> round(other_angle(1.2), 6)
    1.941593
    """
    return pi - angle


def foot_area(angle: float, thickness: float, gap: float = 0.0) -> float:
    """What is open under a square bulkhead edge, between the planes of its two faces:
        g t / cos p + 1/2 t**2 tan p,  p = |pi / 2 - a|

    angle: a [rad], on one side; thickness: t [m]; gap: g [m], where the edge is nearest
    returns: [m2]; a leaning bulkhead stands on one corner; plane geometry
    >>> round(foot_area(pi / 2, 9.0, 2.0), 6)
    18.0
    """
    lean = abs(pi / 2 - angle)
    return gap * thickness / cos(lean) + thickness * thickness * tan(lean) / 2


def bare_foot(angle: float, thickness: float, gap: float = 0.0) -> float:
    """From a corner on the side of `angle` up its face to where the bulkhead begins [m].

    On the open side of a leaning bulkhead the edge stands off by t tan p more.
    >>> round(bare_foot(pi / 2, 9.0, 2.0), 6)
    2.0
    """
    lean = angle - pi / 2
    return gap / cos(lean) + (thickness * tan(lean) if lean > 0 else 0.0)

"""Fillet: the cove of putty in an inside corner, from its radius and the angle between the panels.

All of it is plane geometry: a circle of radius R that touches both faces. With half the opening x = (pi - a) / 2 the
cotangent of a / 2 is tan x; written so, nothing cancels where the corner is nearly open.
"""
from math import cos, pi, sin, tan


def excess(x: float) -> float:
    """tan x - x, exact to the last digits where x is small.

    x [rad], 0 <= x < pi / 2
    returns: [-]; below 0.1 by the series of the tangent, Abramowitz & Stegun (1964), 4.3.67
    >>> round(excess(0.05) * 1e6, 6)
    41.708376
    """
    if x > 0.1:
        return tan(x) - x
    square = x * x
    rest = 17 / 315 + square * (62 / 2835 + square * 1382 / 155925)
    return x * square * (1 / 3 + square * (2 / 15 + square * rest))


def tangent_length(radius: float, angle: float) -> float:
    """From the corner to where the cove leaves the panel:
        R cot(a / 2)

    radius: R [m]; angle: a [rad], between the faces, 0 < a < pi
    returns: [m]; also the limit for tack and the line to clean to
    >>> round(tangent_length(1.0, pi / 3), 5)
    1.73205
    """
    return radius * tan((pi - angle) / 2)


def throat(radius: float, angle: float) -> float:
    """From the corner to the cove on the bisector:
        R (1 / sin(a / 2) - 1)

    radius: R [m]; angle: a [rad], 0 < a < pi
    returns: [m]; plane geometry
    >>> round(throat(0.012, pi / 2) * 1000, 6)
    4.970563
    """
    x = (pi - angle) / 2
    half = sin(x / 2)
    return radius * 2 * half * half / cos(x)


def radius_for_throat(depth: float, angle: float) -> float:
    """The radius that leaves a throat of that depth:
        R = b sin(a / 2) / (1 - sin(a / 2))

    depth: b [m]; angle: a [rad], 0 < a < pi; grows like 8 b / (pi - a)**2 as the corner opens
    returns: R [m]; plane geometry
    >>> round(radius_for_throat(1.0, pi / 2), 5)
    2.41421
    """
    x = (pi - angle) / 2
    half = sin(x / 2)
    return depth * cos(x) / (2 * half * half)


def arc(radius: float, angle: float) -> float:
    """Length of the cove's surface across the seam:
        R (pi - a)

    radius: R [m]; angle: a [rad], 0 < a < pi
    returns: [m]
    >>> round(arc(1.0, pi / 3), 5)
    2.0944
    """
    return radius * (pi - angle)


def chord(radius: float, angle: float) -> float:
    """Straight across the cove, from tangent point to tangent point:
        2 R cos(a / 2)

    radius: R [m]; angle: a [rad], 0 < a < pi
    returns: [m]; plane geometry
    >>> round(chord(1.0, pi / 2), 6)
    1.414214
    """
    return 2 * radius * sin((pi - angle) / 2)


def radius_for_chord(width: float, angle: float) -> float:
    """The radius of a cove that is so wide, straight across:
        R = c / (2 cos(a / 2))

    width: c [m]; angle: a [rad], 0 < a < pi
    returns: R [m]; plane geometry
    >>> round(radius_for_chord(0.024, 5 * pi / 6) * 1000, 4)
    46.3644
    """
    return width / (2 * sin((pi - angle) / 2))


def area(radius: float, angle: float) -> float:
    """Cross-section of the cove:
        R**2 (cot(a / 2) - (pi - a) / 2)

    radius: R [m]; angle: a [rad], 0 < a < pi
    returns: [m2]; the kite to the two tangent points less the sector; at a square corner 0.2146 R**2
    (Machinery's Handbook, 31st ed., "Spandrel or Fillet")
    >>> round(area(0.012, pi / 2) * 1e6, 5)
    30.90266
    """
    return radius * radius * excess((pi - angle) / 2)

"""Cove: how large the fillet of a corner is, and what decided.

The rule of the trade wants a throat about as deep as the panel is thick. As a corner opens that radius runs away, so
there the trade goes by the width of the cove instead: wider than in a square corner, and thinner. The tape caps both:
it must still lie on bare panel on each side of the cove.
"""
from collections import namedtuple
from math import pi, tan

from .fillet import radius_for_chord, radius_for_throat

RULE, WIDTH, LEAST, TAPE, ROOM, FLAT, OWN = "rule", "width", "least", "tape", "room", "flat", "own"
# own [m]: a radius that is given, or None; throat [m], width: across the cove [m], or None, not both
# least [m]; spread [m]: tape less two flanks, None without tape
# room [m]: panel that is free each side, or None; flat [rad]: from here on flat tape alone
Rule = namedtuple("Rule", ("own", "throat", "width", "least", "spread", "room", "flat"))


def largest(rule: Rule, angle: float) -> tuple:
    """The largest radius that tape and room leave at an angle [rad], and which of them: (R [m] or None, what)."""
    most, why = None, ""
    if rule.spread is not None:
        most, why = max(0.0, rule.spread) / (pi - angle), TAPE
    if rule.room is not None:
        fits = rule.room * tan(angle / 2)
        if most is None or fits < most:
            most, why = fits, ROOM
    return most, why


def sized(rule: Rule, angle: float) -> tuple:
    """The radius at an angle and what decided it:
        R = max(R_least, min(R_throat, c / (2 cos(a / 2)), (w - 2 m) / (pi - a), free panel tan(a / 2)))

    angle: a [rad], 0 < a < pi
    returns: (R [m], RULE, WIDTH, LEAST, TAPE, ROOM, FLAT or OWN); R = 0 where flat tape alone is laid; common practice
    >>> rule = Rule(None, 0.006, 0.036, 0.010, 0.045, None, 2.79)
    >>> [round(sized(rule, a)[0], 5) for a in (pi / 2, 2.2, 2.5)], [sized(rule, a)[1] for a in (2.0, 2.2)]
    ([0.01449, 0.03968, 0.05708], ['rule', 'width'])
    """
    if rule.own is not None:
        return rule.own, OWN
    if angle >= rule.flat - 1e-12:
        return 0.0, FLAT
    most, cap = largest(rule, angle)
    if rule.width is not None:
        wide = radius_for_chord(rule.width, angle)
        if most is None or wide <= most:
            most, cap = wide, WIDTH
    radius, why = most, cap
    if rule.throat is not None:
        deep = radius_for_throat(rule.throat, angle)
        if most is None or deep <= most:
            radius, why = deep, RULE
    if radius < rule.least:
        return rule.least, LEAST
    return radius, why

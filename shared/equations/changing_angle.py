"""Changing angle: a quantity per metre of seam, summed over a seam whose angle changes.

Between two stations the angle changes evenly. A section's area is convex in the angle, so the mean angle gives too
little; the sum here is an integral, exact to about eight digits.
"""
from collections import namedtuple

from .types import Function

# at [m], angle [rad]
Station = namedtuple("Station", ("at", "angle"))

# Gauss-Legendre, five points: Abramowitz & Stegun (1964), table 25.4
POINTS = ((-0.906179845938664, 0.236926885056189), (-0.538469310105683, 0.478628670499366),
          (0.0, 0.568888888888889), (0.538469310105683, 0.478628670499366), (0.906179845938664, 0.236926885056189))
WIDEST = 0.3  # rad: one stretch of five points; wider ones are cut
HALVINGS = 16  # a kink is found to WIDEST / 2**16; a continuous section then errs by the square of that, 1e-10 of it


def steady(angle: float, length: float) -> tuple:
    """The stations of a seam whose angle is the same all along."""
    return (Station(0.0, angle), Station(length, angle))


def spread(angles: tuple, lengths: tuple) -> tuple:
    """Stations from the angles and the stretches between them; one length is shared out evenly.

    >>> [station.at for station in spread((1.5, 2.0, 2.5), (3.0,))]
    [0.0, 1.5, 3.0]
    """
    if len(angles) == 1:
        return steady(angles[0], sum(lengths))
    if len(lengths) == 1:
        lengths = (lengths[0] / (len(angles) - 1),) * (len(angles) - 1)
    at, found = 0.0, [Station(0.0, angles[0])]
    for angle, length in zip(angles[1:], lengths):
        at += length
        found.append(Station(at, angle))
    return tuple(found)


def length(stations: tuple) -> float:
    """From the first station to the last [m]."""
    return stations[-1].at - stations[0].at


def summed(section: Function, stations: tuple, splits: tuple = (), regime: "Function | None" = None,
           known: "dict | None" = None) -> float:
    """The integral of a section over the length of the seam.

    section: function of the angle [rad] -> [m2]; stations: in order along the seam
    splits: angles [rad] where the section jumps; regime: function of the angle -> what decides there, the same wherever
    the section is smooth; the angle where it changes is looked for
    known: a dict of what was found of the same section between two angles, which is kept there [m2 rad]; or None
    returns: [m3]
    >>> round(summed(lambda angle: angle * angle, (Station(0.0, 0.0), Station(2.0, 3.0))), 9)
    6.0
    """
    total = 0.0
    for here, there in zip(stations, stations[1:]):
        run, change = there.at - here.at, there.angle - here.angle
        if abs(change) < 1e-9:
            total += section(here.angle) * run
            continue
        low, high = min(here.angle, there.angle), max(here.angle, there.angle)
        found = known.get((low, high)) if known else None
        if found is None:
            found = _between(section, low, high, splits, regime)
            if known is not None:
                known[(low, high)] = found
        total += found * run / (high - low)
    return total


def _between(section: Function, low: float, high: float, splits: tuple, regime: "Function | None") -> float:
    """The integral of a section over the angle."""
    found = 0.0
    for start, end in pieces(low, high, splits, regime):
        count = int((end - start) / WIDEST) + 1
        half = (end - start) / count / 2
        for place in range(count):
            middle = start + half * (2 * place + 1)
            for point, weight in POINTS:
                found += half * weight * section(middle + half * point)
    return found


def pieces(low: float, high: float, splits: tuple = (), regime: "Function | None" = None) -> list:
    """The stretches of angle between low and high within which a section is smooth.

    >>> pieces(1.0, 2.0, (1.5, 3.0))
    [(1.0, 1.5), (1.5, 2.0)]
    """
    marks = [low] + sorted([split for split in splits if low < split < high]) + [high]
    found = []
    for start, end in zip(marks, marks[1:]):
        if regime:
            # a hair inside: at a split itself the other side may be the one that counts
            hair = (end - start) * 1e-9
            last = regime(end - hair)
            while regime(start + hair) != last:
                switch = _switch(regime, start + hair, end)
                found.append((start, switch))
                start = switch
        found.append((start, end))
    return found


def _switch(regime: Function, low: float, high: float) -> float:
    """The angle up to which the regime at `low` holds."""
    first = regime(low)
    for _ in range(HALVINGS):
        middle = (low + high) / 2
        if regime(middle) == first:
            low = middle
        else:
            high = middle
    return high

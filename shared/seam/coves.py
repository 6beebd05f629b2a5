"""Coves: the cove at each station of a seam and on each side, and what it measures."""
from collections import namedtuple

from ..equations import bulkhead, cove, fillet
from . import seam

# side: seam.FIRST, or seam.SECOND beyond a bulkhead; at [m] along the seam; angle [rad]; radius [m], 0 where flat tape
# alone is laid; why: what decided, RULE to OWN
Cove = namedtuple("Cove", ("side", "at", "angle", "radius", "why"))
# of a cove that is there [m]: throat on the bisector, leg from the corner along each panel, arc across it
Size = namedtuple("Size", ("radius", "throat", "leg", "arc"))
RULE, LEAST, TAPE, ROOM, FLAT, OWN = cove.RULE, cove.LEAST, cove.TAPE, cove.ROOM, cove.FLAT, cove.OWN


def coves(spec: seam.Spec) -> list:
    """The `Cove` at each station, of a bulkhead then those of its other side; one station where the angle is steady."""
    if spec.kind not in seam.COVED:
        return []
    found, stations = [], spec.stations
    if len(stations) == 2 and stations[0].angle == stations[1].angle:
        stations = stations[:1]
    for station in stations:
        radius, why = cove.sized(seam.rule(spec), station.angle)
        found.append(Cove(seam.FIRST, station.at, station.angle, radius, why))
    if spec.kind == seam.BULKHEAD:
        for station in stations:
            angle = bulkhead.other_angle(station.angle)
            radius, why = cove.sized(seam.rule(spec, seam.SECOND), angle)
            found.append(Cove(seam.SECOND, station.at, angle, radius, why))
    return found


def size(one: Cove) -> Size:
    """What a cove measures.

    >>> [round(value * 1000, 2) for value in size(Cove("first", 0.0, 1.5707963267948966, 0.012, OWN))]
    [12.0, 4.97, 12.0, 18.85]
    """
    return Size(one.radius, fillet.throat(one.radius, one.angle), fillet.tangent_length(one.radius, one.angle),
                fillet.arc(one.radius, one.angle))

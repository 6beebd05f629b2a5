"""Coves: the cove at each station of a seam and on each side, and what it measures."""
from collections import namedtuple
from math import pi

from ..equations import bulkhead, cove, fillet
from . import seam

# side: seam.FIRST, or seam.SECOND beyond a bulkhead; at [m] along the seam; angle [rad]; radius [m], 0 where flat tape
# alone is laid; why: what decided, RULE to OWN
Cove = namedtuple("Cove", ("side", "at", "angle", "radius", "why"))
# of a cove that is there [m]: throat on the bisector, leg from the corner along each panel, straight width, arc
Size = namedtuple("Size", ("radius", "throat", "leg", "width", "arc"))
RULE, WIDTH, LEAST, TAPE, ROOM, FLAT, OWN = cove.RULE, cove.WIDTH, cove.LEAST, cove.TAPE, cove.ROOM, cove.FLAT, cove.OWN


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
    [12.0, 4.97, 12.0, 16.97, 18.85]
    """
    return Size(one.radius, fillet.throat(one.radius, one.angle), fillet.tangent_length(one.radius, one.angle),
                fillet.chord(one.radius, one.angle), fillet.arc(one.radius, one.angle))


def flank(spec: seam.Spec, found: list) -> "float | None":
    """Tape on bare panel each side of the coves that were `found`, where it is least [m]; None without cove or tape."""
    least = None
    for one in found:
        rows = seam.layers_of(spec, one.side)
        if one.radius and rows:
            here = (min([row.width for _, row in rows]) - one.radius * (pi - one.angle)) / 2
            least = here if least is None else min(least, here)
    return least

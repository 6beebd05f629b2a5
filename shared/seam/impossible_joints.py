"""Impossible joints: joints that cannot be, each refused at the field that can put it right, with the reason."""
from math import cos, pi, tan

from ..catalogue.joints import FLATTEST, MOST_TAPES, NARROWEST
from ..equations import bulkhead, changing_angle, cove, outer_edge, tape
from ..equations.fillet import tangent_length
from ..forms.errors import InputError
from ..forms.types import Said, Values
from ..words.messages import along, length, message, number, quantity
from ..words.numbers import DOWN, UP, bare, shown
from ..words.units import METRIC, US
from . import seam

SLACK = 1e-9  # relative: computed lengths differ in their last bits between runtimes


def check(spec: seam.Spec, units: str) -> None:
    """Refuse what cannot be built; InputError at the field."""
    _check_tape(spec)
    if spec.kind not in seam.CORNERS:
        return
    _check_angles(spec)
    if spec.kind in seam.COVED:
        for side in (seam.FIRST, seam.SECOND) if spec.kind == seam.BULKHEAD else (seam.FIRST,):
            for station in spec.stations:
                _check_cove(spec, side, station.angle)
    if spec.kind in (seam.OUTSIDE, seam.BOTH):
        for station in spec.stations:
            _check_outside(spec, station.angle, units)


def refuse(field: str, why: Said) -> None:
    """Raise the error at that field."""
    raise InputError(field, why)


def _check_tape(spec: seam.Spec) -> None:
    if spec.kind == seam.STRIP and not spec.layers:
        refuse("layers", "joint-strip-bare")
    least = spec.overlap + 2 * spec.stagger
    if spec.layers and spec.reach <= least:
        refuse("reach", message("joint-reach-short", least=length(least, UP)))
    if spec.layers and tape.count(changing_angle.length(spec.stations), spec.reach, spec.overlap) > MOST_TAPES:
        refuse("reach", message("joint-reach-many", reach=along(spec.reach), overlap=length(spec.overlap, UP),
                                most=MOST_TAPES))


def _check_angles(spec: seam.Spec) -> None:
    stations = spec.stations
    for place, (here, there) in enumerate(zip(stations, stations[1:])):
        if there.at <= here.at:
            refuse("stations.{}.at".format(place + 1), "joint-station-order")
    for place, station in enumerate(stations):
        field = "angle" if len(stations) == 2 and stations[0].angle == stations[1].angle else (
            "stations.{}.angle".format(place))
        degrees = station.angle * 180 / pi
        if degrees >= 180 - 0.999:
            refuse(field, "joint-angle-flat")
        if degrees < NARROWEST - SLACK:
            refuse(field, message("joint-angle-narrow", least=number(bare(NARROWEST, 1))))
        if spec.kind == seam.BULKHEAD and not FLATTEST - SLACK <= degrees <= 180 - FLATTEST + SLACK:
            refuse(field, message("joint-bulkhead-flat", least=number(bare(FLATTEST, 1)),
                                  most=number(bare(180 - FLATTEST, 1))))


def _check_cove(spec: seam.Spec, side: str, angle: float) -> None:
    if side == seam.SECOND:
        angle = bulkhead.other_angle(angle)
    size = seam.rule(spec, side)
    rows = seam.layers_of(spec, side)
    if spec.sized in (seam.BY_RULE, seam.BY_FLANK) and not rows and angle >= seam.FLAT - SLACK:
        refuse("layers", message("joint-cove-alone", angle=_at(angle)))
    radius, why = cove.sized(size, angle)
    if not radius:
        return
    if rows:
        place, row = min(rows, key=lambda each: (each[1].width, each[0]))
        needs = radius * (pi - angle)
        if row.width < needs * (1 - SLACK):
            refuse("layers.{}.width".format(place), message(
                "joint-tape-narrow", width=length(row.width, DOWN), radius=length(radius, UP), angle=_at(angle),
                needs=length(needs, UP)))
    leg = tangent_length(radius, angle)
    room = spec.clear
    if room is not None and leg > room * (1 + SLACK):
        if why == cove.LEAST:
            refuse("clear", message("joint-room-little", takes=length(leg, UP), angle=_at(angle)))
        refuse("radius", message(
            "joint-radius-large", angle=_at(angle), reaches=length(leg, UP), free=length(room, DOWN),
            most=length(room * tan(angle / 2), DOWN)))
    if spec.kind == seam.BULKHEAD:
        bare = bulkhead.bare_foot(angle, spec.thickness, spec.gap)
    else:
        bare = outer_edge.bare_corner(angle, spec.thickness, spec.gap, spec.bevel)
    if leg <= bare * (1 + SLACK):
        field = "gap" if spec.gap > 0 else "bevel" if spec.bevel else "radius" if spec.radius else "angle"
        refuse(field, message("joint-opening-wide", angle=_at(angle), reaches=length(leg, DOWN),
                              opening=length(bare, UP)))


def _check_outside(spec: seam.Spec, angle: float, units: str) -> None:
    t, radius = spec.thickness, seam.round_over(spec)
    if spec.touch == "outer" and 2 * spec.bevel < pi - angle - SLACK:
        refuse("touch", message("joint-edges-overlap", cut=number(shown((pi - angle) * 90 / pi, 1, UP)),
                                angle=_at(angle), overlap=small_area(t * t * tan((pi - angle) / 2), units)))
    if spec.finish == seam.ROUND:
        if outer_edge.cover(angle, t, radius) <= t * SLACK:
            most = t / (1 - cos((pi - angle) / 2))
            refuse("round_over", message("joint-rounding-through", angle=_at(angle), most=length(most, DOWN)))
        for place, row in seam.layers_of(spec, seam.SECOND if spec.kind == seam.BOTH else seam.FIRST):
            if row.width < radius * (pi - angle) * (1 - SLACK):
                refuse("layers.{}.width".format(place), message(
                    "joint-tape-short", width=length(row.width, DOWN), angle=_at(angle),
                    least=length(radius * (pi - angle), UP)))


def _at(angle: float) -> Said:
    return quantity(angle, "deg", places=0)


def small_area(value: float, units: str = METRIC) -> Said:
    """A small area [m2] for people: square millimetres to a tenth, or square inches.

    >>> from ..words.texts import said
    >>> from ..words.written import reader
    >>> [said(small_area(0.0000256, units), reader(units)) for units in ("metric", "us")]
    ['25.6 mm²', '0.0397 in²']
    """
    return quantity(value, "mm2", places=None if units == US else 1)


def check_stations(rows: list) -> None:
    """At least two stations; their order is checked with the joint."""
    if len(rows) < 2:
        raise InputError("stations", "joint-stations-few")


def stations_of(values: Values) -> tuple:
    """The stations that were typed or the one angle, and the length."""
    if values["kind"] not in seam.CORNERS:
        return changing_angle.steady(pi, values["length"])
    if values["angle_is"] == "constant":
        return changing_angle.steady(values["angle"], values["length"])
    check_stations(values["stations"])
    return tuple([changing_angle.Station(row["at"], row["angle"]) for row in values["stations"]])

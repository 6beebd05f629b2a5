"""Impossible: joints that cannot be, each refused at the field that can put it right, with the reason."""
from math import cos, pi, tan

from ..catalogue.joints import FLATTEST, MOST_TAPES, NARROWEST
from ..equations import bulkhead, changing_angle, cove, outer_edge, tape
from ..equations.fillet import tangent_length
from ..forms.errors import InputError
from ..forms.types import Values
from ..words import lengths
from ..words.numbers import DOWN, UP, bare, shown
from ..words.units import METRIC, US, told
from . import seam

SLACK = 1e-9  # relative: computed lengths differ in their last bits between runtimes


def check(spec: seam.Spec, units: str) -> None:
    """Refuse what cannot be built; InputError at the field."""
    _check_tape(spec, units)
    if spec.kind not in seam.CORNERS:
        return
    _check_angles(spec)
    if spec.kind in seam.COVED:
        for side in (seam.FIRST, seam.SECOND) if spec.kind == seam.BULKHEAD else (seam.FIRST,):
            for station in spec.stations:
                _check_cove(spec, side, station.angle, units)
    if spec.kind in (seam.OUTSIDE, seam.BOTH):
        for station in spec.stations:
            _check_outside(spec, station.angle, units)


def refuse(field: str, why: str) -> None:
    """Raise the error at that field."""
    raise InputError(field, why)


def _mm(value: float, units: str, toward: str = UP) -> str:
    return lengths.mm(value, units, toward)


def _check_tape(spec: seam.Spec, units: str) -> None:
    if spec.kind == seam.STRIP and not spec.layers:
        refuse("layers", "A reinforcement strip is tape: add a layer")
    least = spec.overlap + 2 * spec.stagger
    if spec.layers and spec.reach <= least:
        refuse("reach", "Pieces must be longer than their overlap and twice the stagger: more than "
               + _mm(least, units))
    length = changing_angle.length(spec.stations)
    if spec.layers and tape.count(length, spec.reach, spec.overlap) > MOST_TAPES:
        refuse("reach", "In pieces of {}, each overlapping {}, one layer takes more than {} of them. Type longer "
               "pieces or a shorter overlap, or the seam in shorter stretches".format(
                   lengths.metres(spec.reach, units), _mm(spec.overlap, units), MOST_TAPES))


def _check_angles(spec: seam.Spec) -> None:
    stations = spec.stations
    for place, (here, there) in enumerate(zip(stations, stations[1:])):
        if there.at <= here.at:
            refuse("stations.{}.at".format(place + 1), "Stations in the order along the seam, please: this one must "
                   "lie beyond the one before it")
    for place, station in enumerate(stations):
        field = "angle" if len(stations) == 2 and stations[0].angle == stations[1].angle else (
            "stations.{}.angle".format(place))
        degrees = station.angle * 180 / pi
        if degrees >= 180 - 0.999:
            refuse(field, "On its inside a corner has less than 180°. Type the inside angle for the outside too; "
                          "panels in line are a butt joint")
        if degrees < NARROWEST - SLACK:
            refuse(field, "Below " + bare(NARROWEST, 1) + "° no spreader and no tape gets into the corner: change the "
                          "joint, or fill it")
        if spec.kind == seam.BULKHEAD and not FLATTEST - SLACK <= degrees <= 180 - FLATTEST + SLACK:
            refuse(field, "A bulkhead stands at {}° to {}° on its panel: flatter than that it is an inside "
                          "corner".format(bare(FLATTEST, 1), bare(180 - FLATTEST, 1)))


def _check_cove(spec: seam.Spec, side: str, angle: float, units: str) -> None:
    if side == seam.SECOND:
        angle = bulkhead.other_angle(angle)
    size = seam.rule(spec, side)
    rows = seam.layers_of(spec, side)
    if spec.sized == "rule" and not rows and angle >= seam.FLAT - SLACK:
        refuse("layers", "At " + _at(angle) + " a cove alone carries nothing: flat tape does. Add a layer of tape")
    radius, why = cove.sized(size, angle)
    if not radius:
        return
    if rows:
        place, row = min(rows, key=lambda each: (each[1].width, each[0]))
        needs = radius * (pi - angle) + (2 * spec.flank if spec.sized == "rule" else 0.0)
        if row.width < needs * (1 - SLACK):
            refuse("layers.{}.width".format(place), "Tape of {} is too narrow here: a cove of radius {} at {} needs at "
                   "least {}".format(_mm(row.width, units, DOWN), _mm(radius, units), _at(angle), _mm(needs, units)))
    leg = tangent_length(radius, angle)
    room = spec.clear
    if room is not None and leg > room * (1 + SLACK):
        fits = _mm(room * tan(angle / 2), units, DOWN)
        if why == cove.LEAST:
            refuse("clear", "Too little room: the smallest cove takes {} of each panel at {}".format(
                _mm(leg, units), _at(angle)))
        refuse("radius", "Too large for this corner: at {} it reaches {} up each panel and {} is free. Radius at most "
               "{}".format(_at(angle), _mm(leg, units), _mm(room, units, DOWN), fits))
    if spec.kind == seam.BULKHEAD:
        bare = bulkhead.bare_foot(angle, spec.thickness, spec.gap)
    else:
        bare = outer_edge.bare_corner(angle, spec.thickness, spec.gap, spec.bevel)
    if leg <= bare * (1 + SLACK):
        field = "gap" if spec.gap > 0 else "bevel" if spec.bevel else "radius" if spec.radius else "angle"
        refuse(field, "At {} the cove reaches {} up each panel, the opening {}: close it, back it with wood, or "
               "take a larger radius".format(_at(angle), _mm(leg, units, DOWN), _mm(bare, units)))


def _check_outside(spec: seam.Spec, angle: float, units: str) -> None:
    t, radius = spec.thickness, seam.round_over(spec)
    if spec.touch == "outer" and 2 * spec.bevel < pi - angle - SLACK:
        over = told_area(t * t * tan((pi - angle) / 2), units)
        refuse("touch", "Edges cut at less than {}° off square cannot touch at their outer corners at {}: square "
               "edges would overlap by {}".format(shown((pi - angle) * 90 / pi, 1, UP), _at(angle), over))
    if spec.finish == seam.ROUND:
        if outer_edge.cover(angle, t, radius) <= t * SLACK:
            most = t / (1 - cos((pi - angle) / 2))
            refuse("round_over", "This rounding breaks through to the inside at {}: less than {}, please".format(
                _at(angle), _mm(most, units, DOWN)))
        for place, row in seam.layers_of(spec, seam.SECOND if spec.kind == seam.BOTH else seam.FIRST):
            if row.width < radius * (pi - angle) * (1 - SLACK):
                refuse("layers.{}.width".format(place), "Tape of {} does not reach round the edge at {}: at least "
                       "{}".format(_mm(row.width, units, DOWN), _at(angle), _mm(radius * (pi - angle), units)))


def _at(angle: float) -> str:
    return shown(angle * 180 / pi, 0) + "°"


def told_area(value: float, units: str = METRIC) -> str:
    """A small area for people, in mm², in US units in square inches.

    >>> told_area(0.0000256), told_area(0.0000256, "us")
    ('25.6 mm²', '0.0397 in²')
    """
    return told(value, "mm2", units, places=None if units == US else 1)


def check_stations(rows: list) -> None:
    """At least two stations; their order is checked with the joint."""
    if len(rows) < 2:
        raise InputError("stations", "Type the angle in two places at least, or choose the same angle all along")


def stations_of(values: Values) -> tuple:
    """The stations that were typed or the one angle, and the length."""
    if values["kind"] not in seam.CORNERS:
        return changing_angle.steady(pi, values["length"])
    if values["angle_is"] == "constant":
        return changing_angle.steady(values["angle"], values["length"])
    check_stations(values["stations"])
    return tuple([changing_angle.Station(row["at"], row["angle"]) for row in values["stations"]])

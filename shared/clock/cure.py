"""Cure: from the system and the coming temperatures to when a seam may be peeled, coated, sanded, turned and loaded."""
from collections import namedtuple

from ..catalogue.cure_times import CLOSES_AT, ENERGY, OPENS_AT, POINTS_GAP, STAGES
from ..equations.kinetics import rate_factor
from ..equations.maturity import LONGEST, between_points, equivalent_age, reached, through_days
from ..equations.rounding import DOWN, UP, to_step
from ..forms.clock_times import HOURS, Clock
from ..forms.errors import InputError
from ..forms.inputs import Choice, Group, Number, Pick
from ..forms.types import Function, Values
from ..things.label_cure import ROWS, ages
from ..things.label_cure import check as check_label
from ..things.lowest_temperature import lowest
from ..things.records import SYSTEM
from . import cure_stops
from .cure_lines import STEP, gap, say

GAP = POINTS_GAP[0]
FOLD = "cure-fold"
# name, (fast, medium, slow) [h], whether it closes a window; told only where a label gives it: nothing is remembered
HANDLE = ("handle", (), False)
ORDER = tuple([(row[0], row[2], row[3]) for row in STAGES[:-3]] + [HANDLE]
              + [(row[0], row[2], row[3]) for row in STAGES[-3:]])
SPEEDS = {"fast": 0, "medium": 1, "slow": 2}

INPUTS = (
    Pick("system", "cure-system", SYSTEM, default="3-1"),
    Choice("course", "cure-course", (("same", "cure-course.same"), ("day", "cure-course.day"),
                                     ("points", "cure-course.points")), fold=FOLD),
    Number("air", "cure-air", unit="degC", low=-10, high=50, when=(("course", ("same",)),)),
    Number("high", "cure-high", unit="degC", low=-10, high=50, when=(("course", ("day",)),), fold=FOLD),
    Number("low", "cure-low", unit="degC", low=-20, high=50, when=(("course", ("day",)),), fold=FOLD),
    Group("points", "cure-points", (
        Number("hours", "cure-points.hours", unit="h", low=0, high=720),
        Number("temperature", "cure-points.temperature", unit="degC", low=-20, high=60),
    ), most=24, each="cure-points.temperature", when=(("course", ("points",)),), fold=FOLD),
    Clock("mixed_at", "cure-mixed-at", optional=True, fold=FOLD, help="cure-mixed-at.help"),
    HOURS,
) + cure_stops.INPUTS


def check(values: Values) -> None:
    """A day needs its clock and its high above its low; typed points must follow each other without a gap."""
    if values["course"] == "day":
        if values["mixed_at"] is None:
            raise InputError("mixed_at", "cure-mixed-at.missing")
        if values["high"] < values["low"]:
            raise InputError("high", "cure-high.cold")
    if values["course"] == "points":
        _check_points(values["points"])


def _check_points(rows: list) -> None:
    if not rows:
        raise InputError("points", "cure-points.missing")
    first = rows[0]
    if first["hours"] > 0:
        raise InputError("points.{}.hours".format(first["place"]), "cure-points.late")
    before = first["hours"]
    for row in rows[1:]:
        field, hours = "points.{}.hours".format(row["place"]), row["hours"]
        if hours <= before:
            raise InputError(field, "cure-points.order")
        if hours - before > GAP * (1 + 1e-9):
            raise InputError(field, gap(before, hours, GAP))
        before = hours


CHECKS = (check, check_label, cure_stops.check)

# time: after mixing [s], None where it is never reached
Stage = namedtuple("Stage", ("name", "time"))
# opens, closes: after mixing [s], None where it is never reached; cold: one of them is; shut: it may close before it is
# sure to be open
Recoat = namedtuple("Recoat", ("opens", "closes", "cold", "shut"))
# recoat: `Recoat`, None where nothing tells of it; stages: the other ones, in the order of the work; lowest: working
# temperature [K]; lost: how long it is colder, counted until the last stage [s]; stops: it may never cure; day_counts:
# the first 24 h as hours at OPENS_AT [s]; labelled: names of the stages whose hours are the label's own; held: the last
# typed temperature [K] where a stage comes after its point, else None; limit: `cure_stops.Stops`; by_post: the warmth
# after the cure brings the full strength that the room does not
CureResult = namedtuple("CureResult", ("recoat", "stages", "lowest", "lost", "stops", "day_counts", "labelled", "held",
                                       "limit", "by_post"))


def course(values: Values) -> Function:
    """The seam's temperature [K] at any time after mixing [s]."""
    if values["course"] == "day":
        return through_days(values["low"], values["high"], values["mixed_at"])
    if values["course"] == "points":
        return between_points([(row["hours"], row["temperature"]) for row in values["points"]])
    return lambda time: values["air"]


def stages_of(system: dict) -> tuple:
    """Rows of ORDER that are told: what the label gives, and with the speed known what is remembered."""
    given = [stage for name, _, stage in ROWS if system[name] is not None]
    return tuple([row for row in ORDER if row[0] in given or (system["speed"] and row[1])])


def wanted_ages(speed: str, energy: float, label: "dict | tuple" = (), stages: tuple = ORDER) -> "list[float]":
    """Equivalent age at 25 degC at which each stage is reached [s]: openings as at 25, closings as at 20 degC.

    energy: E [J/mol]; label: the label's own, by stage, as `label_cure.ages` gives them; they go before the remembered
    stages: rows of ORDER, each with remembered hours or hours on the label
    >>> [round(age / 3600, 1) for age in wanted_ages("fast", 55000.0, {"handle": 0.0})][:3]
    [2.0, 5.5, 4.0]
    """
    place, early = SPEEDS.get(speed), rate_factor(energy, CLOSES_AT, OPENS_AT)
    return [label[name] if name in label else hours[place] * 3600 * (early if closes else 1.0)
            for name, hours, closes in stages]


def reckon(values: Values) -> CureResult:
    """When a seam may be coated, peeled, sanded, turned and loaded, and what the cold costs."""
    system, at = values["system"], course(values)
    least, stages = lowest(system), stages_of(system)
    times, lost = stage_times(values, least)
    found = by_name(values, times)
    recoat = None
    if "recoat_opens" in found and "recoat_closes" in found:
        recoat = _recoat(found["recoat_opens"], found["recoat_closes"])
    rest = [Stage(row[0], found[row[0]]) for row in stages if not row[0].startswith("recoat")]
    day = equivalent_age([(at((hour + 0.5) * 3600.0), 3600.0) for hour in range(24)], ENERGY[0], OPENS_AT, least)
    own = ages(system, ENERGY[0], OPENS_AT)
    limit = cure_stops.stops(values, _coming(values, least))
    never = [one for one in rest if one.time is None and one.name != "full"]
    return CureResult(recoat, tuple(rest), least, lost, bool(never) or values["course"] == "same", day,
                      tuple([row[0] for row in stages if row[0] in own]), _held(values, times), limit,
                      "full" in found and found["full"] is None and _full_by(limit.post, values))


def _coming(values: Values, least: float) -> list:
    """(temperature [K], duration [s]) of the weeks to come, in hours; a temperature without credit is left out."""
    whole = cure_stops.WITHIN
    if values["course"] == "same":
        found = [(values["air"], whole)]
    else:
        at, hours = course(values), 24
        each = whole / 24
        if values["course"] == "points":
            last = values["points"][-1]
            hours, each = int(min(last["hours"], whole) / 3600), 3600.0
        found = [(at((hour + 0.5) * 3600.0), each) for hour in range(hours)]
        if values["course"] == "points":
            found.append((last["temperature"], whole - hours * 3600.0))
    return [step for step in found if step[0] >= least - 1e-9]


def _full_by(post: "cure_stops.Post | None", values: Values) -> bool:
    """Whether the warmth afterwards alone cures as much as the label's days, by the slowest of the band."""
    if post is None or not post.counts or post.to < cure_stops.FULL_FROM:
        return False
    for energy in cure_stops.SLOWEST:
        aim, = wanted_ages(values["system"]["speed"], energy, ages(values["system"], energy, OPENS_AT), ORDER[-1:])
        if post.lasting * rate_factor(energy, post.to, OPENS_AT) < aim:
            return False
    return True


def _recoat(opens: "float | None", closes: "float | None") -> Recoat:
    if opens is None or closes is None:
        return Recoat(opens, closes, True, False)
    return Recoat(opens, closes, False, to_step(opens, STEP, UP) >= to_step(closes, STEP, DOWN))


def _held(values: Values, times: list) -> "float | None":
    if values["course"] != "points":
        return None
    last = values["points"][-1]
    late = [time for time in times if time is None or time > last["hours"] + 1]
    return last["temperature"] if late else None


def stage_times(values: Values, least: float) -> tuple:
    """When each stage is reached -> (times after mixing [s] or None, by `stages_of`; seconds without credit).

    How much warmth hastens a cure is known within a band: a window opens as the slowest of it says, and closes as the
    quickest.
    """
    found = [_stage_times(values, least, energy) for energy in ENERGY[:3]]
    times = []
    for place, row in enumerate(stages_of(values["system"])):
        each = [one[place] for one, _ in found]
        known = [time for time in each if time is not None]
        if row[2]:
            times.append(min(known) if known else None)
        else:
            times.append(max(known) if len(known) == len(each) else None)
    return times, found[0][1]


def by_name(values: Values, times: list) -> dict:
    """Stage -> its time, of `stage_times`."""
    return dict(zip([row[0] for row in stages_of(values["system"])], times))


def _stage_times(values: Values, least: float, energy: float) -> tuple:
    """The same by one activation energy. A window that opens gets no credit below the lowest temperature, full strength
    none below FULL_FROM either; one that closes goes on closing there."""
    stages = stages_of(values["system"])
    wanted = wanted_ages(values["system"]["speed"], energy, ages(values["system"], energy, OPENS_AT), stages)
    if values["course"] == "same":
        rate = rate_factor(energy, values["air"], OPENS_AT)
        cold = values["air"] < least - 1e-9
        cool = cold or values["air"] < cure_stops.FULL_FROM - 1e-9
        times = [None if not row[2] and (cool if row[0] == "full" else cold) else age / rate
                 for row, age in zip(stages, wanted)]
        return times, LONGEST if cold else 0.0
    opening = [age for row, age in zip(stages, wanted) if not row[2]]
    closing = [age for row, age in zip(stages, wanted) if row[2]]
    opened, lost = reached(course(values), opening, energy, OPENS_AT, least)
    closed, _ = reached(course(values), closing, energy, OPENS_AT, 0.0)
    if opening and stages[-1][0] == "full" and least < cure_stops.FULL_FROM and opened[-1] is not None:
        opened[-1], = reached(course(values), opening[-1:], energy, OPENS_AT, cure_stops.FULL_FROM)[0]
    return [(closed if row[2] else opened).pop(0) for row in stages], lost


def answer(values: Values) -> list:
    """The windows in the order of the work, what the cold costs, and how it was counted."""
    return say(reckon(values), values)

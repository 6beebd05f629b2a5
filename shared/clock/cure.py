"""Cure: from the system and the coming temperatures to when a seam may be peeled, coated, sanded, turned and loaded."""
from ..catalogue.cure_times import CLOSES_AT, ENERGY, OPENS_AT, STAGES
from ..equations.kinetics import rate_factor
from ..equations.maturity import LONGEST, between_points, equivalent_age, reached, through_days
from ..forms.clock_times import HOURS, Clock, clock_text
from ..forms.errors import InputError
from ..forms.inputs import Choice, Group, Number, Pick
from ..things.label_cure import ROWS, ages
from ..things.label_cure import check as check_label
from ..things.lowest_temperature import least_warmth
from ..things.records import SYSTEM
from ..words.lines import ANSWER, ASK, BESIDE, MORE, WARN, line, words
from ..words.numbers import DOWN, UP, shown, small, to_step
from ..words.units import told

STEP = 1800.0  # s; in which windows are told
GAP = 12 * 3600.0  # s; between two typed points, more is a gap (own judgement)
FOLD = "Cure: the temperature to come"
# told only where a label gives it: nothing is remembered of it
HANDLE = ("handle", "Handle it", (), False, "to move it, not to load it")
SPEEDS = {"fast": 0, "medium": 1, "slow": 2}

INPUTS = (
    Pick("system", "Resin system", SYSTEM, default="3-1"),
    Choice("course", "Temperature of the seam", (
        ("same", "stays as it is now"), ("day", "a day's high and low"), ("points", "hour by hour")), fold=FOLD),
    Number("air", "Air temperature", unit="degC", low=-10, high=50, when=(("course", ("same",)),)),
    Number("high", "Warmest, in the afternoon", unit="degC", low=-10, high=50, when=(("course", ("day",)),), fold=FOLD),
    Number("low", "Coldest, at dawn", unit="degC", low=-20, high=50, when=(("course", ("day",)),), fold=FOLD),
    Group("points", "Temperatures to come", (
        Number("hours", "Hours after mixing", unit="h", low=0, high=720),
        Number("temperature", "Temperature", unit="degC", low=-20, high=60),
    ), most=24, each="Temperature", when=(("course", ("points",)),), fold=FOLD),
    Clock("mixed_at", "Mixed at", optional=True, fold=FOLD, help="Then the windows are told on the clock too."),
    HOURS,
)


def check(values):
    """A day needs its clock and its high above its low; typed points must follow each other without a gap."""
    if values["course"] == "day":
        if values["mixed_at"] is None:
            raise InputError("mixed_at", "Mixed at: type the clock time; the night must be put where it belongs")
        if values["high"] < values["low"]:
            raise InputError("high", "Warmest: it must not be colder than the coldest")
    if values["course"] == "points":
        _check_points(values["points"])


def _check_points(rows):
    if not rows:
        raise InputError("points", "Temperatures to come: type at least the one at mixing, hour 0")
    first = rows[0]
    if first["hours"] > 0:
        raise InputError("points.{}.hours".format(first["place"]), "Start with the temperature at mixing, hour 0")
    before = first["hours"]
    for row in rows[1:]:
        field, hours = "points.{}.hours".format(row["place"]), row["hours"]
        if hours <= before:
            raise InputError(field, "The hours must grow from one point to the next")
        if hours - before > GAP * (1 + 1e-9):
            raise InputError(field, "A gap: between hour {} and hour {} nothing is known. Type a point at least every "
                             "{} hours.".format(*[shown(time / 3600, 0) for time in (before, hours, GAP)]))
        before = hours


CHECKS = (check, check_label)


def course(values):
    """The seam's temperature [K] at any time after mixing [s]."""
    if values["course"] == "day":
        return through_days(values["low"], values["high"], values["mixed_at"])
    if values["course"] == "points":
        return between_points([(row["hours"], row["temperature"]) for row in values["points"]])
    return lambda time: values["air"]


def stages_of(system):
    """Rows of the stages that are told: what the label gives, and with the speed known what is remembered."""
    given = [stage for name, _, stage in ROWS if system[name] is not None]
    rows = STAGES[:-3] + (HANDLE,) + STAGES[-3:]
    return tuple([row for row in rows if row[0] in given or (system["speed"] and row[2])])


def wanted_ages(speed: str, energy: float, label=(), stages=STAGES):
    """Equivalent age at 25 degC at which each stage is reached [s]: openings as at 25, closings as at 20 degC.

    energy: E [J/mol]; label: the label's own, by stage, as `label_cure.ages` gives them; they go before the remembered
    >>> [round(age / 3600, 1) for age in wanted_ages("fast", 55000.0)][:3]
    [2.0, 5.5, 4.0]
    """
    place, early = SPEEDS.get(speed), rate_factor(energy, CLOSES_AT, OPENS_AT)
    return [label[row[0]] if row[0] in label else row[2][place] * 3600 * (early if row[3] else 1.0) for row in stages]


def answer(values):
    """The windows in the order of the work, what the cold costs, and how it was counted."""
    system, units = values["system"], values["units"]
    least, remembered = least_warmth(system)
    at = course(values)
    times, lost = stage_times(values, least)
    stages = stages_of(system)
    found = dict([(row[0], time) for row, time in zip(stages, times)])
    lines = [_recoat(values, found)] if "recoat_opens" in found and "recoat_closes" in found else []
    for row in stages:
        if not row[0].startswith("recoat"):
            lines.append(_stage(values, row, found[row[0]]))
    lines.extend(_cold(values, at, least, remembered, lost, found))
    day = equivalent_age([(at((hour + 0.5) * 3600.0), 3600.0) for hour in range(24)], ENERGY[0], OPENS_AT, least)
    lines.append(line("day_counts", "The first 24 h count as", day, "s", shown(day / 3600, 1, DOWN) + " h", rank=MORE,
                      rough="at " + told(OPENS_AT, "degC", units, places=0)
                            + ", activation energy 55 kJ/mol from memory; the hours above count 45 to 65, openings "
                              "by the later and closings by the earlier of them"))
    lines.append(words("counted", "Where the hours come from", _from_where(system, units) + " A witness puck tells the "
                       "truth.", rank=MORE))
    if values["course"] == "points":
        last = values["points"][-1]
        late = [time for time in times if time is None or time > last["hours"] + 1]
        if late:
            lines.append(words("held", "After the last point", "The last temperature, "
                               + told(last["temperature"], "degC", units, places=0) + ", is taken to hold on. Type the "
                               "coming night too.", rank=ASK))
    return lines


def _from_where(system, units):
    own = ages(system, ENERGY[0], OPENS_AT)
    text = "For a " + system["speed"] + " hardener at {20 to 25 degC}, from memory."
    if not system["speed"]:
        text = "not known: choose the hardener's speed, and typical hours are told."
    if not own:
        return text + " Your label's hours go before them: type them with the system."
    names = [small(row[1].partition(",")[0]) for row in stages_of(system) if row[0] in own]
    names = [name for place, name in enumerate(names) if name not in names[:place]]
    return "The label's own for {}, at {}. The rest: {}".format(
        ", ".join(names), told(system["cure_temperature"], "degC", units, places=0), small(text[:1]) + text[1:])


def stage_times(values, least):
    """When each stage is reached -> (times after mixing [s] or None, by `stages_of`; seconds without credit).

    How much warmth hastens a cure is known within a band: a window opens as the slowest of it says, and closes as the
    quickest.
    """
    found = [_stage_times(values, least, energy) for energy in ENERGY[:3]]
    times = []
    for place, row in enumerate(stages_of(values["system"])):
        each = [one[place] for one, _ in found]
        known = [time for time in each if time is not None]
        if row[3]:
            times.append(min(known) if known else None)
        else:
            times.append(max(known) if len(known) == len(each) else None)
    return times, found[0][1]


def _stage_times(values, least, energy):
    """The same by one activation energy. A window that opens gets no credit below the lowest temperature; one that
    closes goes on closing there."""
    stages = stages_of(values["system"])
    wanted = wanted_ages(values["system"]["speed"], energy, ages(values["system"], energy, OPENS_AT), stages)
    if values["course"] == "same":
        rate = rate_factor(energy, values["air"], OPENS_AT)
        cold = values["air"] < least - 1e-9
        times = [None if cold and not row[3] else age / rate for row, age in zip(stages, wanted)]
        return times, LONGEST if cold else 0.0
    opening = [age for row, age in zip(stages, wanted) if not row[3]]
    closing = [age for row, age in zip(stages, wanted) if row[3]]
    opened, lost = reached(course(values), opening, energy, OPENS_AT, least)
    closed, _ = reached(course(values), closing, energy, OPENS_AT, 0.0)
    return [(closed if row[3] else opened).pop(0) for row in stages], lost


def after(seconds: float, toward: str) -> str:
    """A time after mixing in steps of half an hour, above two days in half days; UP for an opening, DOWN for a closing.

    >>> after(5000.0, UP), after(5000.0, DOWN), after(260000.0, UP)
    ('1.5 h', '1.0 h', '3.5 days')
    """
    if seconds > 48 * 3600:
        return shown(to_step(seconds / 86400, 0.5, toward), 1) + " days"
    return shown(to_step(seconds / 3600, 0.5, toward), 1) + " h"


def _clock(values, seconds, toward):
    return clock_text(to_step(values["mixed_at"] + seconds, STEP, toward), values["hours"], toward)


def _on_clock(values, seconds, toward):
    return "" if values["mixed_at"] is None else " (" + _clock(values, seconds, toward) + ")"


def _recoat(values, found):
    opens, closes = found["recoat_opens"], found["recoat_closes"]
    rows = dict([(row[0], row) for row in STAGES])
    if opens is None or closes is None:
        return words("recoat", "Recoat without sanding", "not at these temperatures", rank=ANSWER, rough="see below")
    if to_step(opens, STEP, UP) >= to_step(closes, STEP, DOWN):
        return words("recoat", "Recoat without sanding", "no window to count on", rank=ANSWER,
                     rough="it may close before it is sure to be open: wash, sand, then coat")
    hours = after(opens, UP) + " to " + after(closes, DOWN)
    rough = "opens late, closes early; " + rows["recoat_closes"][4]
    if values["mixed_at"] is None:
        return line("recoat", "Recoat without sanding", closes, "s", hours + " after mixing", rank=ANSWER, rough=rough)
    return line("recoat", "Recoat without sanding", closes, "s", _clock(values, opens, UP) + " to "
                + _clock(values, closes, DOWN), rank=ANSWER, rough=hours + " after mixing; " + rough)


def _stage(values, row, time):
    if time is None:
        return words(row[0], row[1], "not at these temperatures", rank=BESIDE, rough="it may stay soft for good")
    return line(row[0], row[1], time, "s", "after " + after(time, UP) + _on_clock(values, time, UP),
                rank=MORE if row[0] == "tack_free" else BESIDE, rough="at the earliest; " + row[4])


def _cold(values, at, least, remembered, lost, found):
    if not lost:
        return []
    units = values["units"]
    bound = told(least, "degC", units, places=0) + (" (" + remembered + ")" if remembered else "")
    if found.get("full") is None or values["course"] == "same":
        text = "Below " + bound + " no cure is counted, and a hardener may stop for good."
    else:
        text = "For " + shown(lost / 3600, 0, UP) + " h it is below " + bound + "; no cure is counted there."
    return [words("too_cold", "Too cold for this hardener", text + " Warm the seam, not only the air: a tent over it "
                  "and a gentle electric heater outside the vapours; no open flame. Or wait for warmer days "
                  "before mixing.", rank=WARN)]

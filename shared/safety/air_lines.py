"""Air lines: what is said of a room's air, and of solvent and dust in it."""
from ..catalogue.airing import DRAUGHTS, RULES
from ..catalogue.dusts import MASKS, region
from ..catalogue.marks import OWN
from ..catalogue.tasks_mixing import MIXING
from ..forms.types import Found, Values
from ..words.lines import ANSWER, ASK, BESIDE, MORE, SAY, WARN, Line, line, words
from ..words.numbers import DOWN, NEAREST, UP, bare, ceiling, fraction, places_for, shown, to_step
from ..words.provenance import provenance
from ..words.units import from_si, to_si, told, unit_for

DRAUGHT_MARKS = dict([(row[0], row[3]) for row in DRAUGHTS])


def say(found: "Found | None", values: Values) -> list[Line]:
    """found: `air.AirResult`, None inside a hull: no figures then, but what must be there before."""
    if found is None:
        return _hull()
    lines = _room(found, values) + (_fan(found.fan, values["units"]) if found.fan else [])
    if found.solvent:
        lines.extend(_solvent(found.solvent, values))
    elif values["solvent"] != "none":
        lines.append(words("solvent_asked", "Solvent", "Type the grams and the minutes to see the vapour in this "
                           "room.", rank=ASK))
    if found.dust:
        lines.extend(_dust(found.dust))
    lines.append(words("air_first", "The room's average", "Near the work it is several times that. Local codes and the "
                       "product's sheet decide.", rank=SAY))
    return lines


def _hull() -> list[Line]:
    """Do not; and the list that a permit to enter would ask for."""
    lines = [words("hull", "Do not", "No figures for the inside of a hull or tank: it needs its own plan, tested air "
                   "and licensed practice.", rough="common practice", rank=WARN)]
    for name, tasks, _, text, mark, source in MIXING:
        if tasks == ("confined",):
            lines.append(words("permit_" + name, "Before anybody goes in", text, rough=provenance(mark, source)))
    return lines


def _room(found: Found, values: Values) -> list[Line]:
    """Air changes and the time to clear."""
    time = found.clearing
    return [
        line("clear", "To clear, " + _plain(100 * values["clear"], 2) + "%", time, "s", _minutes(time),
             rough=_hours(time) + "rounded up to the minute, mixing factor " + _plain(values["mixing"], 1)
             + ", once nothing more comes into the air", rank=ANSWER),
        line("changes", "Air changes", found.changes, "1/s", shown(found.changes * 3600, 1, DOWN) + " an hour",
             rough="from the fan" if found.by_fan
             else "a draught, " + DRAUGHT_MARKS[values["draught"]] + ": still air gives less"),
        line("room_volume", "Room", found.volume, "m3", told(found.volume, "m3", values["units"]), rank=MORE),
    ]


def _minutes(time: float) -> str:
    return shown(ceiling(time / 60)) + " min"


def _hours(time: float) -> str:
    """Many minutes in hours, in front of what is said about them.

    >>> _hours(2763.1), _hours(17272)
    ('', '4 h 48 min; ')
    """
    minutes = ceiling(time / 60)
    return "{} h {} min; ".format(minutes // 60, minutes % 60) if minutes > 120 else ""


def _plain(value: float, places: int, toward: str = NEAREST) -> str:
    """A number as it would be typed: no zeros behind its decimals.

    >>> _plain(99.0, 2), _plain(99.9, 2), _plain(10.0, 1), _plain(1.25, 3, DOWN), _plain(0.02, 3, DOWN)
    ('99', '99.9', '10', '1.25', '0.02')
    """
    text = shown(value, places, toward)
    while "." in text and text[-1] in ".0":
        text = text[:-1]
    return text


def _fan(found: Found, units: str) -> list[Line]:
    """The opening a fan needs, and what it means when there is none."""
    text = told(found.opening, "m2", units, UP, 2)
    lines = [line("make_up", "Make-up opening", found.opening, "m2", text + " at least",
                  rough="rounded up; " + bare(found.pressure, 1) + " Pa and a plain opening, " + RULES[2][3])]
    if found.closed:
        lines.append(words("no_make_up", "No air to replace it", "A fan moves next to nothing without an opening on "
                           "the far side. Open " + text + " there; the figures here are without the fan.", rank=WARN))
    elif found.small:
        lines.append(line("small_make_up", "Opening too small", found.passes, "m3/s", "It lets through about "
                          + told(found.passes, "m3/h", units, DOWN, 0) + " of the fan's "
                          + told(found.flow, "m3/h", units, DOWN, 0) + ". Open " + text + ".", rank=WARN))
    return lines


def _solvent(found: Found, values: Values) -> list[Line]:
    """Vapour at the end against the lowest limit and a tenth of the explosive limit; the flow it needs."""
    share, limit, lower, units = found.vapour, found.limit, found.lower, values["units"]
    where = "lowest limit, " + provenance(*found.limit_of) if found.limit_of else OWN
    lines = [
        line("needed_flow", "Air needed", found.needed, "m3/s", _needed(found.needed, units),
             rough="rounded up, mixing factor " + _plain(values["mixing"], 1) + "; " + where, rank=ANSWER),
        line("vapour", "Vapour at the end", share, "", _ppm(share, UP), rough="room's average, evaporating evenly"),
        line("of_limit", "Of the limit, " + _ppm(limit, DOWN), share / limit, "",
             shown(100 * share / limit, 0, UP) + "%", rough=where),
        line("of_lower", "Of the lower explosive limit", share / lower, "", shown(100 * share / lower, 1, UP) + "%",
             rough="stay under " + bare(found.most * 100, 1) + "%, lowest of the sources"),
    ]
    if found.explosive:
        lines.insert(0, words("explosive", "It can catch fire", "Over " + fraction(found.most) + " of the lower "
                              "explosive limit: do not. Take less, outdoors, no spark near.", rank=WARN))
    elif found.over:
        lines.insert(0, words("over_limit", "Over the limit", "Too much vapour for this room and this air. Do it "
                              "outdoors, take less, or move more air.", rank=WARN))
    if values["fan_runs"] == "out":
        lines.append(words("fan_spark", "Fan's motor", "Vapour must not pass a motor that can spark: let an ordinary "
                           "fan blow clean air in instead.", rough="common practice", rank=WARN))
    if found.handbook is not None:
        lines.append(line("manual", "By the handbook's 403 rule", found.handbook, "m3/s",
                          _needed(found.handbook, units),
                          rough="a second way to the same flow, at {21 degC}; for health only", rank=MORE))
    return lines


def _needed(flow: float, units: str) -> str:
    """A flow to have, to two figures and rounded up: more of them would claim what no such reckoning knows."""
    unit, step = unit_for("m3/h", units), 1.0
    value = from_si(flow, unit)
    while value * (1 + 1e-9) >= 100 * step:
        step *= 10
    return told(to_si(to_step(value, step, UP), unit), "m3/h", units, UP, 0)


def _ppm(share: float, toward: str) -> str:
    return shown(share * 1e6, 0, toward) + " ppm"


def _dust(found: Found) -> list[Line]:
    """How little floating dust fills the room to the lowest limit. A caution, no promise."""
    row = found.row
    return [
        dust_limit(row[1], found.limit),
        line("dust_room", "That is, in this room", found.floating, "kg",
             shown(found.floating * 1e6, places_for(found.floating * 1e6, 2), DOWN) + " mg afloat",
             rough="a pinch; rounded down, a caution and no promise", rank=BESIDE),
        words("dust_mask", "Dust", row[3] + " A particle mask on first; a half mask that fits is rated for "
              + shown(MASKS[0][2]) + " times the limit.", rough=provenance(row[4], row[5]), rank=WARN),
    ]


def dust_limit(label: str, limit: Found) -> Line:
    """The strictest limit of a dust, where it holds and who set it. limit: of catalogue.dusts"""
    return line("dust_limit", label, limit.value, "kg/m3",
                _plain(limit.value * 1e6, 3, DOWN) + " mg/m³",
                rough="lowest limit, " + limit.fraction + ", " + region(limit) + ", "
                + provenance(limit.mark, limit.source))

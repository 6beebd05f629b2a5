"""Air lines: what is said of a room's air, and of solvent and dust in it."""
from ..catalogue.airing import DRAUGHTS, RULES
from ..catalogue.dusts import MASKS, region
from ..catalogue.marks import COMMON, OWN
from ..catalogue.tasks_mixing import MIXING
from ..forms.types import Found, Said, Values
from ..words.lines import ANSWER, ASK, BESIDE, MORE, SAY, WARN, Line, line, words
from ..words.messages import message, number, quantity
from ..words.numbers import DOWN, NEAREST, UP, bare, ceiling, places_for, shown, to_step
from ..words.provenance import marked
from ..words.sourced import sourced
from ..words.units import from_si, to_si, unit_for

DRAUGHT_MARKS = dict([(row[0], row[3]) for row in DRAUGHTS])


def say(found: "Found | None", values: Values) -> list[Line]:
    """found: `air.AirResult`, None inside a hull: no figures then, but what must be there before."""
    if found is None:
        return _hull()
    lines = _room(found, values) + (_fan(found.fan) if found.fan else [])
    if found.solvent:
        lines.extend(_solvent(found.solvent, values))
    elif values["solvent"] != "none":
        lines.append(words("solvent_asked", "air-solvent-asked", "air-solvent-asked.text", rank=ASK))
    if found.dust:
        lines.extend(_dust(found.dust))
    lines.append(words("air_first", "air-average", "air-average.text", rank=SAY))
    return lines


def _hull() -> list[Line]:
    """Do not; and the list that a permit to enter would ask for."""
    lines = [words("hull", "air-hull", "air-hull.text", rough=marked(COMMON), rank=WARN)]
    for name, tasks, _, text, mark, source in MIXING:
        if tasks == ("confined",):
            lines.append(words("permit_" + name, "air-permit", text, rough=sourced(mark, source)))
    return lines


def _room(found: Found, values: Values) -> list[Line]:
    """Air changes and the time to clear."""
    time = found.clearing
    return [
        line("clear", message("air-cleared", share=_plain(100 * values["clear"], 2)), time, "s", _minutes(time),
             rough=_cleared(time, values["mixing"]), rank=ANSWER),
        line("changes", "air-changes", found.changes, "1/s",
             message("air-changes.text", changes=number(shown(found.changes * 3600, 1, DOWN))),
             rough="air-changes.fan" if found.by_fan
             else message("air-changes.draught", mark=marked(DRAUGHT_MARKS[values["draught"]]))),
        line("room_volume", "air-volume", found.volume, "m3", quantity(found.volume, "m3"), rank=MORE),
    ]


def _minutes(time: float) -> Said:
    return message("air-cleared.text", minutes=ceiling(time / 60))


def _cleared(time: float, mixing: float) -> Said:
    """How the time to clear was reckoned, in front of it many minutes in hours."""
    minutes = ceiling(time / 60)
    if minutes <= 120:
        return message("air-cleared.rough", mixing=_plain(mixing, 1))
    return message("air-cleared.rough-hours", hours=minutes // 60, minutes=minutes % 60, mixing=_plain(mixing, 1))


def _plain(value: float, places: int, toward: str = NEAREST) -> Said:
    """A number as it would be typed: no zeros behind its decimals.

    >>> [_plain(value, 2)[1] for value in (99.0, 99.9, 10.0)], _plain(1.25, 3, DOWN)[1], _plain(0.02, 3, DOWN)[1]
    (['99', '99.9', '10'], '1.25', '0.02')
    """
    text = shown(value, places, toward)
    while "." in text and text[-1] in ".0":
        text = text[:-1]
    return number(text)


def _fan(found: Found) -> list[Line]:
    """The opening a fan needs, and what it means when there is none."""
    area = quantity(found.opening, "m2", UP, 2)
    lines = [line("make_up", "air-make-up", found.opening, "m2", message("air-make-up.text", area=area),
                  rough=message("air-make-up.rough", pressure=number(bare(found.pressure, 1)),
                                mark=marked(RULES[2][3])))]
    if found.closed:
        lines.append(words("no_make_up", "air-no-make-up", message("air-no-make-up.text", area=area), rank=WARN))
    elif found.small:
        lines.append(line("small_make_up", "air-small-make-up", found.passes, "m3/s",
                          message("air-small-make-up.text", passes=quantity(found.passes, "m3/h", DOWN, 0),
                                  flow=quantity(found.flow, "m3/h", DOWN, 0), area=area), rank=WARN))
    return lines


def _solvent(found: Found, values: Values) -> list[Line]:
    """Vapour at the end against the lowest limit and a tenth of the explosive limit; the flow it needs."""
    share, limit, lower, units = found.vapour, found.limit, found.lower, values["units"]
    where = message("air-lowest-limit", where=sourced(*found.limit_of)) if found.limit_of else marked(OWN)
    lines = [
        line("needed_flow", "air-needed", found.needed, "m3/s", _needed(found.needed, units),
             rough=message("air-needed.rough", mixing=_plain(values["mixing"], 1), where=where), rank=ANSWER),
        line("vapour", "air-vapour", share, "", _ppm(share, UP), rough="air-vapour.rough"),
        line("of_limit", message("air-of-limit", limit=_ppm(limit, DOWN)), share / limit, "",
             _percent(100 * share / limit, 0), rough=where),
        line("of_lower", "air-of-lower", share / lower, "", _percent(100 * share / lower, 1),
             rough=message("air-of-lower.rough", most=number(bare(found.most * 100, 1)))),
    ]
    if found.explosive:
        lines.insert(0, words("explosive", "air-explosive",
                              message("air-explosive.text", share=number(bare(found.most * 100, 1))), rank=WARN))
    elif found.over:
        lines.insert(0, words("over_limit", "air-over-limit", "air-over-limit.text", rank=WARN))
    if values["fan_runs"] == "out":
        lines.append(words("fan_spark", "air-fan-spark", "air-fan-spark.text", rough=marked(COMMON), rank=WARN))
    if found.handbook is not None:
        lines.append(line("manual", "air-handbook", found.handbook, "m3/s", _needed(found.handbook, units),
                          rough="air-handbook.rough", rank=MORE))
    return lines


def _needed(flow: float, units: str) -> Said:
    """A flow to have, to two figures and rounded up: more of them would claim what no such reckoning knows."""
    unit, step = unit_for("m3/h", units), 1.0
    value = from_si(flow, unit)
    while value * (1 + 1e-9) >= 100 * step:
        step *= 10
    return quantity(to_si(to_step(value, step, UP), unit), "m3/h", UP, 0)


def _ppm(share: float, toward: str) -> Said:
    return message("air-ppm", share=number(shown(share * 1e6, 0, toward)))


def _percent(share: float, places: int) -> Said:
    return message("air-percent", share=number(shown(share, places, UP)))


def _dust(found: Found) -> list[Line]:
    """How little floating dust fills the room to the lowest limit. A caution, no promise."""
    row, mass = found.row, found.floating * 1e6
    return [
        dust_limit(row[1], found.limit),
        line("dust_room", "air-dust-room", found.floating, "kg",
             message("air-dust-room.text", mass=number(shown(mass, places_for(mass, 2), DOWN))),
             rough="air-dust-room.rough", rank=BESIDE),
        words("dust_mask", "air-dust-mask",
              message("air-dust-mask.text", about=row[3], times=number(shown(MASKS[0][2]))),
              rough=sourced(row[4], row[5]), rank=WARN),
    ]


def dust_limit(label: Said, limit: Found) -> Line:
    """The strictest limit of a dust, where it holds and who set it. limit: of catalogue.dusts"""
    return line("dust_limit", label, limit.value, "kg/m3",
                message("dust-limit", limit=_plain(limit.value * 1e6, 3, DOWN)),
                rough=message("dust-limit.rough", fraction=limit.fraction, region=region(limit),
                              where=sourced(limit.mark, limit.source)))

"""Cure lines: what is said of when a seam may be coated, peeled, sanded, turned and loaded."""
from ..catalogue.cure_times import CLOSES_AT, ENERGY, OPENS_AT, STAGES
from ..forms.clock_times import clock_said
from ..forms.types import Found, Said, Values
from ..things.lowest_temperature import lowest_said
from ..words.lines import ANSWER, ASK, BESIDE, MORE, WARN, Line, line, words
from ..words.messages import fact, listed, message, number, quantity, sentences
from ..words.numbers import DOWN, UP, bare, shown, to_step
from . import cure_stops_lines

STEP = 1800.0  # s; in which windows are told
LABELS = dict([(row[0], row[1]) for row in STAGES], handle="cure-handle")
LOOK_FOR = dict([(row[0], row[4]) for row in STAGES], handle="cure-handle.look")


def gap(before: float, after: float, most: float) -> Said:
    """What is said of points too far apart. before, after: the points beside the gap; most: that may lie between [s]"""
    last, following, every = [number(shown(time / 3600, 0)) for time in (before, after, most)]
    return message("cure-points.gap", last=last, following=following, most=every)


def say(found: Found, values: Values) -> list[Line]:
    """found: `cure.CureResult`"""
    lines = [_recoat(found.recoat, values)] if found.recoat else []
    never = "full" in [one.name for one in found.stages if one.time is None]
    lines.extend([_full(found, values, one) if one.name == "full" and never else _stage(values, one)
                  for one in found.stages])
    lines.extend(cure_stops_lines.say(found.limit, values, never and not found.by_post))
    lines.extend(_cold(found, values))
    energy, least, most = [number(bare(one / 1000, 1)) for one in ENERGY[:3]]
    lines.append(line("day_counts", "cure-day-counts", found.day_counts, "s",
                      quantity(found.day_counts, "h", DOWN, 1), rank=MORE,
                      rough=message("cure-day-counts.rough", temperature=quantity(OPENS_AT, "degC", places=0),
                                    energy=energy, least=least, most=most)))
    lines.append(words("counted", "cure-counted", _from_where(found.labelled, values["system"]), rank=MORE))
    if found.held is not None:
        lines.append(words("held", "cure-held", message("cure-held.text", temperature=quantity(found.held, "degC",
                                                                                               places=0)), rank=ASK))
    return lines


def _from_where(labelled: tuple, system: dict) -> Said:
    values = {"speed": system["speed"], "temperatures": fact("degC", CLOSES_AT, OPENS_AT)}
    if not labelled:  # then the speed is known
        return message("cure-counted.typical", **values)
    names = ["recoat" if name.startswith("recoat") else name for name in labelled]
    names = [name for place, name in enumerate(names) if name not in names[:place]]
    stages = ["cure-recoat" if name == "recoat" else LABELS[name] for name in names]
    rest = message("cure-counted.rest", **values) if system["speed"] else "cure-counted.rest-unknown"
    return sentences([message("cure-counted.label", stages=listed(stages, "plain"),
                              temperature=quantity(system["cure_temperature"], "degC", places=0)), rest])


def after(seconds: float, toward: str) -> Said:
    """A time after mixing in steps of half an hour, above two days in half days; UP for an opening, DOWN for a closing.

    >>> after(260000.0, UP), after(5000.0, UP)[:3], after(5000.0, DOWN)[:3]
    (('cure-days', {'days': (4, '3.5')}), (1, 5400.0, 'h'), (1, 3600.0, 'h'))
    """
    if seconds > 48 * 3600:
        return message("cure-days", days=number(shown(to_step(seconds / 86400, 0.5, toward), 1)))
    return quantity(to_step(seconds / 3600, 0.5, toward) * 3600, "h", places=1)


def _clock(values: Values, seconds: float, toward: str) -> Said:
    return clock_said(to_step(values["mixed_at"] + seconds, STEP, toward), values["hours"], toward)


def _recoat(recoat: Found, values: Values) -> Line:
    opens, closes = recoat.opens, recoat.closes
    if recoat.cold:
        return words("recoat", "cure-recoat", "cure-never", rank=ANSWER, rough="cure-recoat.cold")
    if recoat.shut:
        return words("recoat", "cure-recoat", "cure-recoat.shut", rank=ANSWER, rough="cure-recoat.shut-rough")
    opening, closing, look = after(opens, UP), after(closes, DOWN), LOOK_FOR["recoat_closes"]
    if values["mixed_at"] is None:
        return line("recoat", "cure-recoat", closes, "s",
                    message("cure-recoat.after", opens=opening, closes=closing), rank=ANSWER,
                    rough=message("cure-recoat.rough", look=look))
    return line("recoat", "cure-recoat", closes, "s",
                message("cure-recoat.clock", opens=_clock(values, opens, UP), closes=_clock(values, closes, DOWN)),
                rank=ANSWER, rough=message("cure-recoat.clock-rough", opens=opening, closes=closing, look=look))


def _stage(values: Values, stage: Found) -> Line:
    name, time = stage.name, stage.time
    if time is None:
        return words(name, LABELS[name], "cure-never", rank=BESIDE, rough="cure-never.rough")
    said = message("cure-stage", time=after(time, UP))
    if values["mixed_at"] is not None:
        said = message("cure-stage.clock", time=after(time, UP), clock=_clock(values, time, UP))
    return line(name, LABELS[name], time, "s", said, rank=MORE if name == "tack_free" else BESIDE,
                rough=message("cure-stage.rough", look=LOOK_FOR[name]))


def _full(found: Found, values: Values, stage: Found) -> Line:
    """In place of a time that the room's warmth never brings."""
    limit, label = found.limit, LABELS["full"]
    if limit.after is None:
        return _stage(values, stage)
    if found.by_post:
        return words("full", label, "cure-full.by-post", rank=BESIDE, rough="cure-full.by-post-rough")
    text, rough = cure_stops_lines.hard_but(limit)
    return words("full", label, text, rank=BESIDE, rough=rough)


def _cold(found: Found, values: Values) -> list[Line]:
    if not found.lost:
        return []
    lowest = lowest_said(values["system"])
    text = message("cure-cold.lost", time=quantity(found.lost, "h", UP, 0), lowest=lowest)
    if found.stops:
        text = message("cure-cold.stops", lowest=lowest)
    return [words("too_cold", "cure-cold", sentences([text, "cure-cold.do"]), rank=WARN)]

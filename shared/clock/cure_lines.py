"""Cure lines: what is said of when a seam may be coated, peeled, sanded, turned and loaded."""
from ..catalogue.cure_times import CLOSES_AT, ENERGY, OPENS_AT, STAGES
from ..forms.clock_times import clock_text
from ..forms.types import Found, Values
from ..things.lowest_temperature import lowest_mark
from ..words.lines import ANSWER, ASK, BESIDE, MORE, WARN, Line, line, words
from ..words.numbers import DOWN, UP, bare, shown, small, to_step
from ..words.units import braces, told
from . import cure_stops_lines

STEP = 1800.0  # s; in which windows are told
LABELS = dict([(row[0], row[1]) for row in STAGES], handle="Handle it")
LOOK_FOR = dict([(row[0], row[4]) for row in STAGES], handle="to move it, not to load it")


def say(found: Found, values: Values) -> list[Line]:
    """found: `cure.CureResult`"""
    units = values["units"]
    lines = [_recoat(found.recoat, values)] if found.recoat else []
    never = "full" in [one.name for one in found.stages if one.time is None]
    lines.extend([_full(found, values, one) if one.name == "full" and never else _stage(values, one)
                  for one in found.stages])
    lines.extend(cure_stops_lines.say(found.limit, values, never and not found.by_post))
    lines.extend(_cold(found, values))
    lines.append(line("day_counts", "The first 24 h count as", found.day_counts, "s",
                      shown(found.day_counts / 3600, 1, DOWN) + " h", rank=MORE,
                      rough="at " + told(OPENS_AT, "degC", units, places=0)
                            + ", activation energy {} kJ/mol; the hours above count {} to {}, openings "
                              "by the later and closings by the earlier of them".format(
                                  *[bare(one / 1000, 1) for one in ENERGY[:3]])))
    lines.append(words("counted", "Where the hours come from", _from_where(found.labelled, values["system"], units)
                       + " A witness puck shows it.", rank=MORE))
    if found.held is not None:
        lines.append(words("held", "After the last point", "The last temperature, "
                           + told(found.held, "degC", units, places=0) + ", is taken to hold on. Type the "
                           "coming night too.", rank=ASK))
    return lines


def _from_where(labelled: tuple, system: dict, units: str) -> str:
    text = "For a " + system["speed"] + " hardener at " + braces("degC", CLOSES_AT, OPENS_AT) + ", from memory."
    if not system["speed"]:
        text = "not known: choose the hardener's speed to see typical hours."
    if not labelled:
        return text + " Your label's hours go before them: type them with the system."
    names = [small(LABELS[name].partition(",")[0]) for name in labelled]
    names = [name for place, name in enumerate(names) if name not in names[:place]]
    return "The label's own for {}, at {}. The rest: {}".format(
        ", ".join(names), told(system["cure_temperature"], "degC", units, places=0), small(text[:1]) + text[1:])


def after(seconds: float, toward: str) -> str:
    """A time after mixing in steps of half an hour, above two days in half days; UP for an opening, DOWN for a closing.

    >>> after(5000.0, UP), after(5000.0, DOWN), after(260000.0, UP)
    ('1.5 h', '1.0 h', '3.5 days')
    """
    if seconds > 48 * 3600:
        return shown(to_step(seconds / 86400, 0.5, toward), 1) + " days"
    return shown(to_step(seconds / 3600, 0.5, toward), 1) + " h"


def _clock(values: Values, seconds: float, toward: str) -> str:
    return clock_text(to_step(values["mixed_at"] + seconds, STEP, toward), values["hours"], toward)


def _on_clock(values: Values, seconds: float, toward: str) -> str:
    return "" if values["mixed_at"] is None else " (" + _clock(values, seconds, toward) + ")"


def _recoat(recoat: Found, values: Values) -> Line:
    opens, closes = recoat.opens, recoat.closes
    if recoat.cold:
        return words("recoat", "Recoat without sanding", "not at these temperatures", rank=ANSWER, rough="see below")
    if recoat.shut:
        return words("recoat", "Recoat without sanding", "no window to count on", rank=ANSWER,
                     rough="it may close before it is sure to be open: wash, sand, then coat")
    hours = after(opens, UP) + " to " + after(closes, DOWN)
    rough = "opens late, closes early; " + LOOK_FOR["recoat_closes"]
    if values["mixed_at"] is None:
        return line("recoat", "Recoat without sanding", closes, "s", hours + " after mixing", rank=ANSWER, rough=rough)
    return line("recoat", "Recoat without sanding", closes, "s", _clock(values, opens, UP) + " to "
                + _clock(values, closes, DOWN), rank=ANSWER, rough=hours + " after mixing; " + rough)


def _stage(values: Values, stage: Found) -> Line:
    name, time = stage.name, stage.time
    if time is None:
        return words(name, LABELS[name], "not at these temperatures", rank=BESIDE, rough="it may stay soft for good")
    return line(name, LABELS[name], time, "s", "after " + after(time, UP) + _on_clock(values, time, UP),
                rank=MORE if name == "tack_free" else BESIDE, rough="at the earliest; " + LOOK_FOR[name])


def _full(found: Found, values: Values, stage: Found) -> Line:
    """In place of a time that the room's warmth never brings."""
    limit, label = found.limit, LABELS["full"]
    if limit.after is None:
        return _stage(values, stage)
    if found.by_post:
        return words("full", label, "once it is warmed as typed", rank=BESIDE, rough="that counts as much as its days")
    text, rough = cure_stops_lines.hard_but(limit, values["units"])
    return words("full", label, text, rank=BESIDE, rough=rough)


def _cold(found: Found, values: Values) -> list[Line]:
    if not found.lost:
        return []
    mark = lowest_mark(values["system"])
    bound = told(found.lowest, "degC", values["units"], places=0) + (" (" + mark + ")" if mark else "")
    if found.stops:
        text = "Below " + bound + " no cure is counted, and a hardener may stop for good."
    else:
        text = "For " + shown(found.lost / 3600, 0, UP) + " h it is below " + bound + "; no cure is counted there."
    return [words("too_cold", "Too cold for this hardener", text + " Warm the seam, not only the air: a tent over it "
                  "and a gentle electric heater outside the vapours; no open flame. Or wait for warmer days "
                  "before mixing.", rank=WARN)]

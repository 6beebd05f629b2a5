"""Pot lines: what is said of a running pot, on the screen and aloud, and what rings."""
from ..catalogue.cautions import STANDING
from ..catalogue.containers import CONTAINERS
from ..catalogue.pots import AGAIN
from ..forms.clock_times import clock_text
from ..forms.types import Found, Values
from ..words.lines import ANSWER, ASK, MORE, WARN, Line, line, words
from ..words.messages import row, typed
from ..words.numbers import DOWN, UP, shown
from . import elapsed_lines, pot_doubt_lines, sun_lines
from .pot_spans import left_text, spoken

HEAT = next(text for name, _, text, _, _ in STANDING if name == "heat")


def say(found: Found, values: Values) -> list[Line]:
    """found: `pot.PotResult`"""
    now, container = found.state, dict([row[:2] for row in CONTAINERS])[values["container"]]
    lines = _left(found) + _step(now, values) + _clock(found, values) + pot_doubt_lines.say(found.doubts, values)
    if values["share"] is not None and now.left > 0:
        lines.append(words("meaning", "What the minutes are", "{}% of the time until it is thick; the rest is kept "
                           "back".format(shown(values["share"] * 100)), rank=MORE))
    place = [typed(values["place"])] if values["place"] else []
    lines.append(words("place", values["batch"], row([sun_lines.in_sun(container, values)] + place, " · ")))
    lines.append(words("say", "Said aloud", aloud(now, values), rank=MORE))
    lines.append(line("passed", "Since it was mixed", now.passed, "s", left_text(now.passed), rank=MORE))
    lines.append(words("used", "For the log", "used " + spoken(now.passed) + " after mixing", rank=MORE))
    lines.append(line("again", "If it is still good", found.again, "s", "looked at again in " + spoken(AGAIN),
                      rank=MORE))
    if found.typed is not None:
        lines.append(line("set", "Passed, as typed", found.typed, "s", left_text(found.typed), rank=MORE))
    lines.extend(elapsed_lines.kept(now.doubt))
    if now.step is not None:
        lines.append(words("step", "Place of the next step", str(now.step), rank=MORE))
    if found.ring:
        # a key that stays the same while it is due
        key = str(now.step + 1) if found.ring == "step" else shown(found.duration / 60, 1)
        lines.append(words("ring", found.ring + " " + key, aloud(now, values), rank=MORE))
    return lines


def _left(found: Found) -> list[Line]:
    now = found.state
    if now.left > 0:
        return [line("left", "Left", now.left, "s", left_text(now.left), rank=ANSWER,
                     span=[float(shown(100 * now.passed / found.duration, 2)), 100.0],
                     rough="last minutes: finish what is placed, mix nothing in" if found.soon
                     else "rounded down, to be sure")]
    return [line("over", "Over for", now.over, "s", left_text(now.over, UP), rank=ANSWER,
                 rough="since it should have been used"),
            words("stop", "Time is up", "Use no more of it. " + HEAT, rank=WARN)]


def _step(now: Found, values: Values) -> list[Line]:
    if now.step is None:
        return []
    name = values["steps"][now.step]["name"]
    if now.due >= 0:
        return [line("next", "Next", now.due, "s", name, rough="due in " + left_text(now.due))]
    late = "should be done since " + left_text(-now.due, UP)
    return [line("next", "Next", now.due, "s", name, rough=late, rank=WARN)]


def _clock(found: Found, values: Values) -> list[Line]:
    """The end and the steps as a clock on the wall shows them."""
    end, hours = clock_text(found.end.time, values["hours"], DOWN), values["hours"]
    change = _change(found.end, hours)
    lines = [line("end", "Ends", found.state.end, "s", end,
                  rough=change or "rounded down to the minute, to be sure")]
    if found.state.left > 0:
        lines.append(words("alarm", "For the phone's own alarm", end, rank=MORE,
                           rough=change or "a page cannot ring while the screen is off; set it there too"))
        for one in found.alarms:
            lines.append(line("alarm_" + str(one.place + 1), values["steps"][one.place]["name"], one.due, "s",
                              clock_text(one.at.time, hours, DOWN),
                              rough=_change(one.at, hours) or "for the phone's own alarm", rank=MORE))
        if change:
            lines.append(words("clocks_change", "Summer time", "It ends at " + end + ": " + change + ".", rank=ASK))
    return lines


def _change(at: Found, hours: str) -> str:
    """What is said of a change of the clocks before that `pot.Wall`; "" where there is none."""
    if not at.change:
        return ""
    before, after = [clock_text(one, hours, DOWN, False) for one in at.change]
    return "before that the clocks go from " + before + " to " + after


def aloud(now: Found, values: Values) -> str:
    """What a voice says: the pot, what is left, what comes next; short, and figures as words can carry them.

    now: `pot.State`
    """
    said = values["batch"] + ": "
    if now.left > 0:
        said += spoken(now.left) + " left."
    else:
        said += "time is up, " + spoken(now.over, UP) + " ago. Use no more of it."
    if now.step is not None and (now.left > 0 or now.due > 0):
        name = values["steps"][now.step]["name"]
        said += " Next: " + name + (", in " + spoken(now.due) if now.due > 0 else ", now") + "."
    return said

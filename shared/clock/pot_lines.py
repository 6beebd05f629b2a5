"""Pot lines: what is said of a running pot, on the screen and aloud, and what rings."""
from ..catalogue.cautions import STANDING
from ..catalogue.containers import CONTAINERS
from ..catalogue.pots import AGAIN
from ..forms.clock_times import clock_said
from ..forms.types import Found, Said, Values
from ..things.piece_names import pieces_said
from ..words.lines import ANSWER, ASK, MORE, WARN, Line, line, words
from ..words.messages import message, quantity, row, sentences, typed
from ..words.numbers import DOWN, UP, shown
from . import elapsed_lines, pot_doubt_lines, sun_lines
from .pot_names import batch_said, step_said
from .pot_spans import left_text, spoken

HEAT = next(text for name, _, text, _, _ in STANDING if name == "heat")


def say(found: Found, values: Values) -> list[Line]:
    """found: `pot.PotResult`"""
    now, loud = found.state, aloud(found.state, values)
    lines = _left(found) + _step(now, values) + _clock(found, values) + pot_doubt_lines.say(found.doubts, values)
    if values["share"] is not None and now.left > 0:
        lines.append(words("meaning", "pot-meaning", message("pot-meaning.text", share=quantity(values["share"], "%",
                                                                                                 places=0)), rank=MORE))
    lines.append(words("place", batch_said(values["batch"]), _place(values)))
    lines.append(words("say", "pot-aloud", loud, rank=MORE))
    lines.append(line("passed", "pot-passed", now.passed, "s", _span(now.passed), rank=MORE))
    lines.append(line("again", "pot-again", found.again, "s", message("pot-again.text", span=spoken(AGAIN)), rank=MORE))
    if found.typed is not None:
        lines.append(line("set", "pot-set", found.typed, "s", _span(found.typed), rank=MORE))
    lines.extend(elapsed_lines.kept(now.doubt))
    if now.step is not None:
        lines.append(words("step", "pot-step-place", typed(str(now.step)), rank=MORE))
    if found.ring:
        # a key that stays the same while it is due
        key = str(now.step + 1) if found.ring == "step" else shown(found.duration / 60, 1)
        lines.append(words("ring", "pot-aloud", loud, part=found.ring + " " + key, rank=MORE))
    return lines


def _span(seconds: float, toward: str = DOWN) -> Said:
    """Minutes and seconds, as they are written in all languages."""
    return typed(left_text(seconds, toward))


def _place(values: Values) -> Said:
    """What the pot is in, and where that goes."""
    container = dict([each[:2] for each in CONTAINERS])[values["container"]]
    said = [sun_lines.in_sun(container, values)]
    if values["place"] or values["pieces"]:
        said.append(typed(values["place"]) if values["place"] else pieces_said(values["pieces"], True))
    return row(said, " · ")


def _left(found: Found) -> list[Line]:
    now = found.state
    if now.left > 0:
        return [line("left", "pot-remaining", now.left, "s", _span(now.left), rank=ANSWER,
                     span=[float(shown(100 * now.passed / found.duration, 2)), 100.0],
                     rough="pot-remaining.soon" if found.soon else "pot-remaining.rough")]
    return [line("over", "pot-over", now.over, "s", _span(now.over, UP), rank=ANSWER, rough="pot-over.rough"),
            words("stop", "pot-stop", sentences(["pot-stop.text", HEAT]), rank=WARN)]


def _step(now: Found, values: Values) -> list[Line]:
    if now.step is None:
        return []
    name = step_said(values["steps"][now.step]["name"])
    if now.due >= 0:
        return [line("next", "pot-next", now.due, "s", name, rough=message("pot-next.due", span=_span(now.due)))]
    late = message("pot-next.late", span=_span(-now.due, UP))
    return [line("next", "pot-next", now.due, "s", name, rough=late, rank=WARN)]


def _clock(found: Found, values: Values) -> list[Line]:
    """The end and the steps as a clock on the wall shows them."""
    hours, change = values["hours"], found.end.change
    end = clock_said(found.end.time, hours, DOWN)
    changed = message("pot-clocks-change.rough", **_changed(change, hours)) if change else ""
    lines = [line("end", "pot-ends", found.state.end, "s", end, rough=changed or "pot-ends.rough")]
    if found.state.left > 0:
        lines.append(words("alarm", "pot-alarm", end, rank=MORE, rough=changed or "pot-alarm.rough"))
        for one in found.alarms:
            rough = "pot-alarm.of-step"
            if one.at.change:
                rough = message("pot-clocks-change.rough", **_changed(one.at.change, hours))
            step = step_said(values["steps"][one.place]["name"])
            lines.append(line("alarm_" + str(one.place + 1), step, one.due, "s", clock_said(one.at.time, hours, DOWN),
                              rough=rough, rank=MORE))
        if change:
            lines.append(words("clocks_change", "pot-clocks-change",
                               message("pot-clocks-change.text", end=end, **_changed(change, hours)), rank=ASK))
    return lines


def _changed(change: tuple, hours: str) -> dict:
    """What the clocks show before and after a change of them, as values of a message. change: of a `pot.Wall`"""
    before, after = [clock_said(one, hours, DOWN, False) for one in change]
    return {"before": before, "after": after}


def aloud(now: Found, values: Values) -> Said:
    """What a voice says: the pot, what is left, what comes next; short, and figures as words can carry them.

    now: `pot.State`
    """
    batch = batch_said(values["batch"])
    if now.left > 0:
        said = [message("pot-aloud.left", batch=batch, span=spoken(now.left))]
    else:
        said = [message("pot-aloud.over", batch=batch, span=spoken(now.over, UP))]
    if now.step is not None and (now.left > 0 or now.due > 0):
        name = step_said(values["steps"][now.step]["name"])
        said.append(message("pot-aloud.next-in", step=name, span=spoken(now.due)) if now.due > 0
                    else message("pot-aloud.next-now", step=name))
    return sentences(said)

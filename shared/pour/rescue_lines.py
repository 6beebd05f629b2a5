"""Rescue lines: what is said of a pour that went wrong."""
from ..clock.usable_lines import questions
from ..forms.late import late
from ..forms.types import Found, Said, Values
from ..mix.label_words import parts_said
from ..mix.ratio_error_lines import aim, cost_lines, off_by, percent
from ..words.lines import ANSWER, ASK, MORE, SAY, WARN, Line, line, words
from ..words.messages import message, quantity, sentences
from ..words.numbers import DOWN, NEAREST, UP
from .by_scale_lines import to_add, weighed
from .measure_lines import in_cup
from .time_in_cup_lines import minutes, told_by

SPREAD_OUT = "rescue-spread-out"
# state of a clock that knows no time: name, label and text of what is asked
ASKED = {
    "half_told": ("pot_life_whole", "rescue-half-told", "rescue-half-told.text"),
    "untold": ("no_pot_life", "rescue-untold", "rescue-untold.text"),
    "no_warmth": ("no_warmth", "rescue-no-warmth", "rescue-no-warmth.text"),
}


def say(found: Found, values: Values) -> list[Line]:
    """Whether it is worth it, what to add, and what then is in the cup. found: in_cup.RescueResult"""
    names = parts_said(values["system"])
    too_late = found.clock.state == "late"
    lines = _clock(found.clock, values) + [in_cup(found.held, "measure-in-cup" if too_late else "measure-in-cup.then")]
    if too_late:
        return lines
    lines.append(_state(found, names))
    if found.off and found.off.off:
        lines.extend(cost_lines(found.off))
    lines.extend(_to_add(found, names, values))
    lines.append(line("new_total", "rescue-total", found.total, found.unit,
                      quantity(found.total, "g" if found.unit == "kg" else "mL"), part="mix",
                      rough="rescue-total.pumped" if found.strokes else "rescue-total.rough"))
    if found.filler:
        lines.extend(_filler(found, values))
    if found.fit:
        lines.append(_fit(found.fit, values))
    return lines


def _amount_text(amount: float, unit: str, toward: str, values: Values) -> Said:
    """On the scale's own steps where it is weighed; never fewer than the figure where it is rounded up."""
    if unit == "m3":
        return quantity(amount, "mL", toward)
    return to_add(amount, values, toward) if values.get("scale") else quantity(amount, "g", toward)


def _state(found: Found, names: tuple[Said, ...]) -> Line:
    off = found.off
    if off is None:
        return words("off", "rescue-missing", "rescue-missing.text", rank=WARN)
    return line("off", "rescue-off", off.error, "", percent(off.error), rank=WARN if off.off else MORE,
                rough=message("rescue-off.rough", aim=aim(off.most), off=off_by(names, off)))


def _to_add(found: Found, names: tuple[Said, ...], values: Values) -> list[Line]:
    lines, most = [], aim(found.most)
    if found.stays:
        lines.append(words("least", "rescue-stays", message("rescue-stays.text", aim=most), rank=SAY))
    if found.strokes:
        pumped = [count - more for count, more in zip(found.strokes.counts, found.more)]
        lines.extend(late("by_pumps_lines").more_lines(names, found.more, pumped))
    for place, amount in enumerate(found.exact):
        if amount is not None:
            lines.append(line("add_" + "abcde"[place], message("rescue-add", part=names[place]), amount, found.unit,
                              _amount_text(amount, found.unit, NEAREST, values), part="abcde"[place],
                              rank=ANSWER if found.needed and not found.strokes else MORE, rough="rescue-add.rough"))
    if not lines:
        return [words("add", "rescue-nothing", "rescue-nothing.text", rank=SAY)]
    for place, amount in enumerate(found.least):
        if amount is not None:
            lines.append(line("least_" + "abcde"[place], message("rescue-least", part=names[place]), amount, found.unit,
                              _amount_text(amount, found.unit, UP, values), part="abcde"[place],
                              rough=message("rescue-least.rough", aim=most)))
    if found.unit == "kg" and values["way"] == "scale":
        lines.append(words("how", "rescue-how", "rescue-how.text"))
    return lines


def _filler(found: Found, values: Values) -> list[Line]:
    """The dose stays: filler grows with the liquids, or the putty comes out softer."""
    more = found.filler
    lines = [line("add_filler", "rescue-filler", more.exact, "kg", weighed(more.exact, values),
                  part="filler", rank=ANSWER if found.needed else MORE,
                  rough="rescue-filler.rough")]
    if found.needed:
        lines.append(line("least_filler", "rescue-filler.least", more.least, "kg", weighed(more.least, values),
                          part="filler", rank=MORE))
    lines.append(words("stirred_in", "rescue-stirred", "rescue-stirred.text", rank=ASK,
                       rough="rescue-stirred.rough"))
    return lines


def _fit(fit: Found, values: Values) -> Line:
    """Whether the new total fits a cup that was chosen. fit: in_cup.Fit"""
    volume, room = quantity(fit.volume, "mL", UP), quantity(fit.usable, "mL", DOWN)
    if not fit.fits:
        return line("cup_too_small", "rescue-no-room", fit.volume, "m3",
                    message("rescue-no-room.text", volume=volume, room=room), rank=WARN, rough="rescue-no-room.rough")
    return line("fits", "rescue-fits", fit.volume, "m3", message("rescue-fits.text", volume=volume, room=room),
                rank=MORE, rough="rescue-fits.filler" if values["filler_in"] else "rescue-fits.rough")


def _clock(clock: Found, values: Values) -> list[Line]:
    """Minutes left since first contact, and whether there is time to add and stir. clock: in_cup.Clock"""
    signs = words("signs", "rescue-signs", sentences(["rescue-signs.text", SPREAD_OUT]), rank=MORE,
                  rough="rescue-signs.rough")
    if clock.state in ASKED:
        name, label, text = ASKED[clock.state]
        return [words(name, label, text, rank=ASK), signs]
    life, rests = minutes(clock.usable.time), told_by(values, clock)
    if clock.state == "no_times":
        first = line("pot_life", "rescue-usable", clock.usable.time, "s", life,
                     rough=message("rescue-usable.rough", rest=rests))
    elif clock.state == "late":
        first = line("past_saving", "rescue-late", clock.left, "s", sentences(["rescue-late.text", SPREAD_OUT]),
                     rank=WARN, rough=message("rescue-late.rough", usable=life, rest=rests))
    else:
        first = line("left", "rescue-left", clock.left, "s", minutes(clock.left), rank=ANSWER,
                     rough=message("rescue-left.rough", stir=quantity(clock.stir, "min", places=0), usable=life,
                                   rest=rests))
    return [first, signs] + questions(clock.apart)

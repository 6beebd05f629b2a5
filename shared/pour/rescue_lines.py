"""Rescue lines: what is said of a pour that went wrong."""
from ..clock.usable_lines import questions
from ..forms.types import Found, Values
from ..mix.label_words import part_names
from ..mix.ratio_error_lines import aim, cost_lines, off_by, percent
from ..words.lines import ANSWER, ASK, MORE, SAY, WARN, Line, line, words
from ..words.messages import message, quantity
from ..words.numbers import DOWN, NEAREST, UP
from ..words.units import told
from .by_scale_lines import to_add, weighed
from .measure_lines import in_cup
from .time_in_cup_lines import minutes, told_by

SPREAD_OUT = ("Do not wait for it: spread it thin, outdoors, on bare ground or in a tray, never under a lid. If it "
              "smokes or is too hot to hold, leave it alone and keep away. Then mix a new batch.")
# state of a clock that knows no time: name, label and text of what is asked
ASKED = {
    "half_told": ("pot_life_whole", "At what mass and temperature?",
                  "A pot life holds for one mass and one temperature: type both from the label. "
                  "Until then: warm or stringy means past saving."),
    "untold": ("no_pot_life", "How long is left?",
               "Type the label's pot life, or go by hand: warm or stringy means past saving."),
    "no_warmth": ("no_warmth", "How warm is it?",
                  "Type the temperature of the mix: the minutes depend on it. Until then: warm or stringy means past "
                  "saving."),
}


def say(found: Found, values: Values) -> list[Line]:
    """Whether it is worth it, what to add, and what then is in the cup. found: in_cup.RescueResult"""
    names, units = part_names(values["system"]), values["units"]
    lines = _clock(found.clock, values) + [in_cup(found.held, values)]
    if found.clock.state == "late":
        return lines
    lines.append(_state(found, names))
    if found.off and found.off.off:
        lines.extend(cost_lines(found.off))
    lines.extend(_to_add(found, names, values))
    lines.append(line("new_total", "Then in the cup, liquids", found.total, found.unit,
                      told(found.total, "g" if found.unit == "kg" else "mL", units), part="mix",
                      rough="after adding exactly"))
    if found.filler:
        lines.extend(_filler(found, values))
    if found.fit:
        lines.append(_fit(found.fit, values))
    return lines


def _amount_text(amount: float, unit: str, toward: str, values: Values) -> str:
    """On the scale's own steps where it is weighed; never fewer than the figure where it is rounded up."""
    if unit == "m3":
        return told(amount, "mL", values["units"], toward)
    return to_add(amount, values, toward) if values.get("scale") else told(amount, "g", values["units"], toward)


def _state(found: Found, names: tuple[str, ...]) -> Line:
    off = found.off
    if off is None:
        return words("off", "A part is missing", "Nothing of it is in the cup yet.", rank=WARN)
    return line("off", "In the cup: off ratio by", off.error, "", percent(off.error), rank=WARN if off.off else MORE,
                rough=aim(off.most) + " is wanted; " + off_by(names, off))


def _to_add(found: Found, names: tuple[str, ...], values: Values) -> list[Line]:
    lines, most = [], aim(found.most)
    if found.stays:
        lines.append(words("least", "It may stay as it is", "within " + most + " already", rank=SAY))
    for place, amount in enumerate(found.exact):
        if amount is not None:
            lines.append(line("add_" + "abcde"[place], names[place] + ", to add", amount, found.unit,
                              _amount_text(amount, found.unit, NEAREST, values), part="abcde"[place],
                              rank=ANSWER if found.needed else MORE, rough="comes back exactly into ratio"))
    if not lines:
        return [words("add", "Nothing to add", "it is in ratio", rank=SAY)]
    for place, amount in enumerate(found.least):
        if amount is not None:
            lines.append(line("least_" + "abcde"[place], names[place] + ", at the least", amount, found.unit,
                              _amount_text(amount, found.unit, UP, values), part="abcde"[place],
                              rough="comes within " + most + "; rounded up"))
    if found.unit == "kg" and values["way"] == "scale":
        lines.append(words("how", "How", "Set the scale to 0 with the cup on it, add, then stir all of it again."))
    return lines


def _filler(found: Found, values: Values) -> list[Line]:
    """The dose stays: filler grows with the liquids, or the putty comes out softer."""
    more = found.filler
    lines = [line("add_filler", "Filler, for the same stiffness", more.exact, "kg", weighed(more.exact, values),
                  part="filler", rank=ANSWER if found.needed else MORE,
                  rough="filler never counts in the ratio; stir the liquids in well before it")]
    if found.needed:
        lines.append(line("least_filler", "Filler with the least", more.least, "kg", weighed(more.least, values),
                          part="filler", rank=MORE))
    lines.append(words("stirred_in", "With filler in", "Liquid mixes slowly into putty: work it through until no "
                       "streak is left, bottom and corners too.", rank=ASK, rough="common practice"))
    return lines


def _fit(fit: Found, values: Values) -> Line:
    """Whether the new total fits a cup that was chosen. fit: in_cup.Fit"""
    volume, takes = told(fit.volume, "mL", values["units"], UP), told(fit.usable, "mL", values["units"], DOWN)
    if not fit.fits:
        return line("cup_too_small", "Does not fit the cup", fit.volume, "m3", volume + ", the cup takes " + takes,
                    rank=WARN, rough="with room to stir. Tip all of it into a larger cup first, scrape it clean, then "
                    "add.")
    return line("fits", "Fits the cup", fit.volume, "m3", volume + " of " + takes, rank=MORE,
                rough="with room to stir" + ("; the filler's volume comes on top" if values["filler_in"] else ""))


def _clock(clock: Found, values: Values) -> list[Line]:
    """Minutes left since first contact, and whether there is time to add and stir. clock: in_cup.Clock"""
    signs = words("signs", "Whatever the clock says", "Warm to the hand, stringy or lumpy: it is past saving. "
                  + SPREAD_OUT, rank=MORE, rough="common practice")
    if clock.state in ASKED:
        name, label, text = ASKED[clock.state]
        return [words(name, label, text, rank=ASK), signs]
    life, rests = minutes(clock.usable.time), told_by(values, clock)
    if clock.state == "no_times":
        first = line("pot_life", "Usable since first contact", clock.usable.time, "s", life,
                     rough=message("rescue-clock.no-times", rests=rests))
    elif clock.state == "late":
        first = line("past_saving", "Past saving", clock.left, "s", "No time to add and stir. " + SPREAD_OUT, rank=WARN,
                     rough=message("rescue-clock.late", life=life, rests=rests))
    else:
        first = line("left", "Left since first contact", clock.left, "s", minutes(clock.left),
                     rough=message("rescue-clock.left", stir=quantity(clock.stir, "min", places=0), life=life,
                                   rests=rests), rank=ANSWER)
    return [first, signs] + questions(clock.apart)

"""Rescue lines: what is said of a pour that went wrong."""
from ..catalogue.measuring import DENSEST
from ..clock.usable import contradictions, known, usable
from ..clock.usable_lines import questions
from ..equations.stirring import stirring_time
from ..equations.weighing import ratio_error
from ..forms.late import late
from ..mix import ratio
from ..mix.ratio_error import aim, off_by, percent, tolerance
from ..words.lines import ANSWER, ASK, MORE, SAY, WARN, line, words
from ..words.numbers import DOWN, UP
from ..words.units import told
from . import time_in_cup
from .by_scale import to_add, weighed
from .chosen_cup import cup_chosen
from .in_cup import additions, contents, least_additions

SPREAD_OUT = ("Do not wait for it: spread it thin, outdoors, on bare ground or in a tray, never under a lid. If it "
              "smokes or is too hot to hold, leave it alone and keep away. Then mix a new batch.")


def lines(values):
    """Whether it is worth it, what to add, and what then is in the cup."""
    names = ratio.part_names(values["system"])
    found = ratio.basis(values["system"])
    in_cup, unit = contents(values, len(names))
    parts = found.weight_parts if unit == "kg" else found.volume_parts
    exact, error = additions(in_cup, parts), tolerance(values)
    least = least_additions(in_cup, parts, error)
    total = sum(in_cup) + sum(exact)
    per = 1.0 if unit == "kg" else DENSEST  # kg: more is shorter
    said = _clock(values, sum(in_cup) * per, total * per)
    if "past_saving" in [one.name for one in said]:
        return said
    said.append(_state(names, in_cup, parts, error))
    said.extend(_to_add(values, names, in_cup, exact, least, unit, error))
    said.append(_total(values, "new_total", "Then in the cup, liquids", total, unit))
    said.extend(_filler(values, in_cup, exact, least, parts))
    said.extend(_fits(values, found, total, unit))
    return said


def _amount_text(values, amount, unit, toward):
    """On the scale's own steps where it is weighed; never fewer than the figure where it is rounded up."""
    if unit == "m3":
        return told(amount, "mL", values["units"], toward)
    return to_add(amount, values, toward) if values.get("scale") else told(amount, "g", values["units"], toward)


def _state(names, in_cup, parts, error):
    if min(in_cup) <= 0:
        return words("off", "A part is missing", "Nothing of it is in the cup yet.", rank=WARN)
    off = ratio_error(in_cup, parts)
    rank = WARN if abs(off) > error + 1e-9 else MORE
    return line("off", "In the cup: off ratio by", off, "", percent(off), rank=rank,
                rough=aim(error) + " is wanted; " + off_by(names, in_cup, parts))


def _to_add(values, names, in_cup, exact, least, unit, error):
    lines, whole = [], sum(in_cup)
    needed = sum(least) > 1e-9 * whole
    if not needed and sum(exact) > 1e-9 * whole:
        lines.append(words("least", "It may stay as it is", "within " + aim(error) + " already", rank=SAY))
    for place, amount in enumerate(exact):
        if amount > 1e-9 * whole:
            lines.append(line("add_" + "abcde"[place], names[place] + ", to add", amount, unit,
                              _amount_text(values, amount, unit, "nearest"), part="abcde"[place],
                              rank=ANSWER if needed else MORE, rough="comes back exactly into ratio"))
    if not lines:
        return [words("add", "Nothing to add", "it is in ratio", rank=SAY)]
    for place, amount in enumerate(least):
        if amount > 1e-9 * whole:
            lines.append(line("least_" + "abcde"[place], names[place] + ", at the least", amount, unit,
                              _amount_text(values, amount, unit, UP), part="abcde"[place],
                              rough="comes within " + aim(error) + "; rounded up"))
    if unit == "kg" and values["way"] == "scale":
        lines.append(words("how", "How", "Set the scale to 0 with the cup on it, add, then stir all of it again."))
    return lines


def _total(values, name, label, amount, unit):
    return line(name, label, amount, unit, told(amount, "g" if unit == "kg" else "mL", values["units"]), part="mix",
                rough="after adding exactly")


def _filler(values, in_cup, exact, least, parts):
    """The dose stays: filler grows with the liquids, or the putty comes out softer."""
    filler = values["filler_in"]
    if not filler:
        return []
    before = sum(in_cup)
    more = filler * sum(exact) / before
    lines = [line("add_filler", "Filler, for the same stiffness", more, "kg", weighed(more, values),
                  part="filler", rank=ANSWER if sum(least) > 1e-9 * before else MORE,
                  rough="filler never counts in the ratio; stir the liquids in well before it")]
    if sum(least) > 1e-9 * before:
        fewer = filler * sum(least) / before
        lines.append(line("least_filler", "Filler with the least", fewer, "kg", weighed(fewer, values),
                          part="filler", rank=MORE))
    lines.append(words("stirred_in", "With filler in", "Liquid mixes slowly into putty: work it through until no "
                       "streak is left, bottom and corners too.", rank=ASK, rough="common practice"))
    return lines


def _fits(values, found, total, unit):
    """Whether the new total fits a cup that was chosen."""
    if not cup_chosen(values):
        return []
    volume = total
    if unit == "kg":
        if not found.densities:
            return []
        volume = total / ratio.mixed_density(found.weight_parts, found.densities)
    filler = values["filler_in"]
    usable = late("by_stick").usable_volume(values["cup"])
    if volume > usable * (1 + 1e-9):
        return [line("cup_too_small", "Does not fit the cup", volume, "m3", told(volume, "mL", values["units"], UP)
                     + ", the cup takes " + told(usable, "mL", values["units"], DOWN), rank=WARN,
                     rough="with room to stir. Tip all of it into a larger cup first, scrape it clean, then add.")]
    return [line("fits", "Fits the cup", volume, "m3", told(volume, "mL", values["units"], UP) + " of "
                 + told(usable, "mL", values["units"], DOWN), rank=MORE,
                 rough="with room to stir" + ("; the filler's volume comes on top" if filler else ""))]


def _clock(values, mass_in, mass):
    """Minutes left since first contact, and whether there is time to add and stir.

    mass_in, mass: of the liquids now and once they are in ratio [kg]; the filler that keeps the stiffness comes on top
    """
    start, now, system = values["first_contact"], values["now"], values["system"]
    signs = words("signs", "Whatever the clock says", "Warm to the hand, stringy or lumpy: it is past saving. "
                  + SPREAD_OUT, rank=MORE, rough="common practice")
    if system["pot_time"] and not (system["pot_mass"] and system["pot_temperature"]):
        return [words("pot_life_whole", "At what mass and temperature?", "A pot life counts with the mass and the "
                      "temperature it was told for: type both from the label. Until then: warm or stringy means past "
                      "saving.", rank=ASK), signs]
    if not known(system):
        return [words("no_pot_life", "How long is left?", "Type the label's pot life, or go by hand: warm or stringy "
                      "means past saving.", rank=ASK), signs]
    if system["pot_temperature"] is None and not time_in_cup.measured(values):
        return [words("no_warmth", "How warm is it?", "Type the temperature of the mix: minutes hang on it. Until "
                      "then: warm or stringy means past saving.", rank=ASK), signs]
    dose = (values["filler_in"] or 0.0) / mass_in
    here = time_in_cup.of_cup(values, mass * (1 + dose), dose / (1 + dose))
    found = usable(here)
    life, mark = found.time, time_in_cup.told_by(values, here, found)
    asked = questions(contradictions(here), values["units"])
    stir = stirring_time(mass, values["temperature"])
    if start is None or now is None:
        return [line("pot_life", "Usable since first contact", life, "s", time_in_cup.minutes_text(life),
                     rough=mark + "; rounded down. Type both times to see what is left."), signs] + asked
    left = life - (now - start)
    if left <= stir + 1e-6:
        return [line("past_saving", "Past saving", left, "s", "No time to add and stir. " + SPREAD_OUT, rank=WARN,
                     rough=time_in_cup.minutes_text(life) + " since first contact: " + mark), signs] + asked
    return [line("left", "Left since first contact", left, "s", time_in_cup.minutes_text(left),
                 rough="for the new total, stirring {} included; {} of it in all: {}; rounded down".format(
                     told(stir, "min", "metric", places=0), time_in_cup.minutes_text(life), mark), rank=ANSWER),
            signs] + asked

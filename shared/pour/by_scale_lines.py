"""By scale lines: what is said of the readings on a scale, and how a mass is told as a scale shows it."""
from ..forms.types import Found, Values
from ..mix import ratio_doubt, ratio_doubt_lines
from ..mix.label_words import is_example, part_names
from ..mix.ratio_error_lines import ROUGH_AIM, aim, cost_lines, off_by, percent, poured_line, remembered, within
from ..words.lines import ANSWER, BESIDE, MORE, WARN, Line, line, spans, words
from ..words.numbers import DOWN, NEAREST, UP, decimals, shown, to_step
from ..words.units import from_si, sign, told

NOT_AGAIN = "do not zero again: this is the total in the cup"


def say(found: Found, values: Values) -> list[Line]:
    """The readings in the order of pouring, then how far they can be trusted. found: by_scale.ScaleResult"""
    names, rezeroed = part_names(values["system"]), found.display.rezeroed
    lines = [words("tare", "Cup on the scale", "zero it before each part" if rezeroed else
                   "zero it once; then add each part until it shows this total", part="tool", rank=MORE)]
    lines.extend(readings(found.display, values))
    if found.over:
        lines.append(words("over_scale", "More than the scale weighs", "The mix alone is "
                           + weighed(sum(found.display.masses), values) + ", the scale ends at "
                           + weighed(values["scale"]["most"], values, DOWN) + ". Weigh in two cups.", rank=WARN))
    if found.poured:
        lines.extend([poured_line(names, found.poured)] + cost_lines(found.poured))
    if found.rounding:
        lines.append(line("rounding", "Off ratio by rounding", found.rounding.error, "", percent(found.rounding.error),
                          rank=MORE, rough="what the scale's step alone brings; " + off_by(names, found.rounding)))
    if found.spread is not None:
        lines.append(line("spread", "The scale holds the ratio within", found.spread, "", within(found.spread),
                          rough="in about 95 of 100 pours, from its step of "
                          + on_scale(values["scale"]["step"], values["scale"]["step_unit"], values) + _beside(values)))
    least = told(found.least, "g", values["units"], UP)
    lines.append(line("smallest", "Smallest batch in ratio", found.least, "kg", least, rank=BESIDE,
                      rough="rounded up, for " + aim(found.most) + " by reading alone, rounding comes on top"
                            + ("; " + ROUGH_AIM if remembered(values) else "")))
    if found.too_small:
        lines.append(words("too_small", "Too small for this scale", "Below " + least
                           + " this scale cannot hold the ratio. Mix more, or take a finer scale.", rank=WARN))
    return lines


def _beside(values: Values) -> str:
    """What else than its step a scale's hold on the ratio rests on."""
    own = values["scale"].get("own_error")
    named = ["its own error of ±" + told(own, "g", values["units"], UP)] if own else []
    if not values["system"]["by_weight"]:
        named.append("the densities")
    return " and ".join([""] + named) if named else " alone; its own error is not typed"


def readings(display: Found, values: Values) -> list[Line]:
    """What the scale must show after each part. display: by_scale.Display"""
    doubt = ratio_doubt_lines.in_short(ratio_doubt.doubt(values["system"], ratio_doubt.WEIGHT))
    if is_example(values["system"]):
        doubt = "example" + (", " + doubt if doubt else "")
    return [_reading(display, place, name, span, doubt if place else "", values)
            for place, (name, span) in enumerate(zip(part_names(values["system"]), spans(display.masses)))]


def _reading(display: Found, place: int, name: str, span: list[float], doubt: str,
             values: Values) -> Line:
    done = place < display.done
    if done:
        verb, rough = " poured", "as you read it; planned " + weighed(display.planned[place], values)
    else:
        verb = ", from zero, until it shows" if display.rezeroed else ", until it shows"
        said = ["follows what was really poured"] if display.done else []
        rough = "; ".join(said + ([doubt] if doubt else []) + ([NOT_AGAIN] if place and not display.rezeroed else []))
    reading = display.readings[place]
    return line("reading_" + "abcde"[place], name + verb, reading, "kg",
                on_scale(reading, values["scale"]["step_unit"], values), rough=rough, part="abcde"[place],
                rank=BESIDE if done else ANSWER, span=span)


def on_scale(mass: float, unit: str, values: Values) -> str:
    """A reading as the scale shows it: in the unit of its step and with the decimals of its step."""
    places = decimals(from_si(values["scale"]["step"], unit), 4)
    return shown(from_si(mass, unit), places) + " " + sign(unit)


def weighed(mass: float, values: Values, toward: str = NEAREST) -> str:
    """What is weighed, to three figures: in the unit that the scale shows, or where none is asked in the user's."""
    scale = values.get("scale")
    return told(mass, scale["step_unit"], toward=toward) if scale else told(mass, "g", values["units"], toward)


def to_add(mass: float, values: Values, toward: str = NEAREST, where: str = "") -> str:
    """What is to be added, as the scale shows it; where that would be nothing, how much it is and that it cannot.

    where: said behind what the scale shows
    """
    step = values["scale"]["step"]
    shows = to_step(mass, step, toward)
    if shows < step / 2:
        return weighed(mass, values) + ", less than the scale shows"
    return on_scale(shows, values["scale"]["step_unit"], values) + where

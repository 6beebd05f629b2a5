"""By scale lines: what is said of the readings on a scale, and how a mass is told as a scale shows it."""
from ..forms.types import Found, Said, Values
from ..mix import ratio_doubt, ratio_doubt_lines
from ..mix.label_words import is_example, parts_said
from ..mix.ratio_error_lines import (
    ROUGH_AIM,
    aim,
    cost_lines,
    off_by,
    percent,
    poured_line,
    remembered,
    within,
)
from ..words.lines import ANSWER, BESIDE, MORE, WARN, Line, line, spans, words
from ..words.messages import in_unit, message, noted, quantity, with_unit
from ..words.numbers import DOWN, NEAREST, UP, decimals, shown, to_step
from ..words.units import from_si
from .measured_lines import told_as_example


def say(found: Found, values: Values) -> list[Line]:
    """The readings in the order of pouring, then how far they can be trusted. found: by_scale.ScaleResult"""
    names, rezeroed = parts_said(values["system"]), found.display.rezeroed
    lines = [words("tare", "scale-tare", "scale-tare.each" if rezeroed else "scale-tare.once", part="tool", rank=MORE)]
    lines.extend(readings(found.display, values))
    if found.over:
        lines.append(words("over_scale", "scale-over", message(
            "scale-over.text", mix=weighed(sum(found.display.masses), values),
            most=weighed(values["scale"]["most"], values, DOWN)), rank=WARN))
    if found.poured:
        lines.extend([poured_line(names, found.poured)] + cost_lines(found.poured))
    if found.fix:
        lines.append(fix_line(found, values))
    if found.rounding:
        lines.append(line("rounding", "scale-rounding", found.rounding.error, "", percent(found.rounding.error),
                          rank=MORE, rough=message("scale-rounding.rough", off=off_by(names, found.rounding))))
    if found.spread is not None:
        lines.append(line("spread", "scale-spread", found.spread, "", within(found.spread),
                          rough=_rests_on(values)))
    least, rough = quantity(found.least, "g", UP), message("scale-smallest.rough", aim=aim(found.most))
    lines.append(line("smallest", "measure-smallest", found.least, "kg", least, rank=BESIDE,
                      rough=noted([rough, ROUGH_AIM]) if remembered(values) else rough))
    if found.too_small:
        lines.append(words("too_small", "scale-too-small", message("scale-too-small.text", least=least), rank=WARN))
    return lines


def written(found: Found, values: Values) -> list[Said]:
    """What the scale must show after each part, for the ear and the log. found: by_scale.ScaleResult"""
    return [on_scale(reading, values["scale"]["step_unit"], values)
            for reading in found.display.readings + found.display.added]


def fix_line(found: Found, values: Values) -> Line:
    """What to add so that a pour that is off stands in ratio again. found: by_scale.ScaleResult with a Fix"""
    fix, unit = found.fix, values["scale"]["step_unit"]
    mass = on_scale(fix.mass, unit, values)
    name = parts_said(values["system"])[fix.place]
    if found.display.rezeroed:
        return line("fix", message("fix-part", part=name), fix.mass, "kg", mass, part="abcde"[fix.place],
                    rank=ANSWER, rough="pouring-zero")
    return line("fix", message("fix-until", part=name, mass=mass), fix.shows, "kg",
                on_scale(fix.shows, unit, values), part="abcde"[fix.place], rank=ANSWER)


def _rests_on(values: Values) -> Said:
    """What a scale's hold on the ratio rests on: its step and what else."""
    scale = values["scale"]
    said = message("scale-spread.own" if values["system"]["by_weight"] else "scale-spread.both",
                   step=on_scale(scale["step"], scale["step_unit"], values),
                   error=quantity(ratio_doubt.own_error(scale), "g", UP))
    return noted([said, "scale-spread.guess"]) if scale.get("own_error") is None else said


def readings(display: Found, values: Values) -> list[Line]:
    """What the scale must show after each part. display: by_scale.Display"""
    doubt = ratio_doubt_lines.in_short(ratio_doubt.doubt(values["system"], ratio_doubt.WEIGHT))
    if is_example(values["system"]):
        doubt = told_as_example(doubt)
    return [_reading(display, place, name, span, doubt if place else "", values)
            for place, (name, span) in enumerate(zip(parts_said(values["system"]), spans(display.masses)))]


def _reading(display: Found, place: int, name: str, span: list[float], doubt: Said,
             values: Values) -> Line:
    done = place < display.done
    if done:
        label, rough = "scale-poured", message("scale-poured.rough", mass=weighed(display.planned[place], values))
    else:
        label = "scale-reading.zeroed" if display.rezeroed else "scale-reading"
        notes = ["scale-reading.follows"] if display.done else []
        notes += ([doubt] if doubt else []) + (["scale-reading.not-again"] if place and not display.rezeroed else [])
        rough = noted(notes)
    reading = display.readings[place]
    return line("reading_" + "abcde"[place], message(label, part=name), reading, "kg",
                on_scale(reading, values["scale"]["step_unit"], values), rough=rough, part="abcde"[place],
                rank=BESIDE if done else ANSWER, span=span)


def on_scale(mass: float, unit: str, values: Values) -> Said:
    """A reading as the scale shows it: in the unit of its step and with the decimals of its step."""
    places = decimals(from_si(values["scale"]["step"], unit), 4)
    return with_unit(shown(from_si(mass, unit), places), unit)


def weighed(mass: float, values: Values, toward: str = NEAREST) -> Said:
    """What is weighed, to three figures: in the unit that the scale shows, or where none is asked in the user's."""
    scale = values.get("scale")
    return in_unit(mass, scale["step_unit"], toward) if scale else quantity(mass, "g", toward)


def to_add(mass: float, values: Values, toward: str = NEAREST, named: bool = False) -> Said:
    """What is to be added, as the scale shows it; where that would be nothing, how much it is and that it cannot.

    named: whether it says that it is on the scale
    """
    step = values["scale"]["step"]
    shows = to_step(mass, step, toward)
    if shows < step / 2:
        return message("scale-add.nothing", mass=weighed(mass, values))
    found = on_scale(shows, values["scale"]["step_unit"], values)
    return message("scale-add", mass=found) if named else found

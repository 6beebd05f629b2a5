"""By pumps lines: what is said of whole strokes, what they cost, and the top-up."""
from ..forms.types import Found, Values
from ..mix.label_words import part_names
from ..mix.ratio_error_lines import aim, off_by, percent
from ..things.records import PUMPS
from ..words.lines import ASK, BESIDE, MORE, WARN, Line, line, spans, words
from ..words.numbers import UP
from ..words.units import told
from .by_scale_lines import to_add
from .measured_lines import outcome_lines, rank_of, told_of


def say(found: Found, values: Values) -> list[Line]:
    """The strokes of each pump, then what whole strokes cost. found: by_pumps.PumpsResult"""
    names, units, strokes = part_names(values["system"]), values["units"], found.strokes
    lines = []
    for place, (count, span) in enumerate(zip(strokes.counts, spans(strokes.volumes))):
        lines.append(line("strokes_" + "abcde"[place], names[place], count, "",
                          str(count) + (" stroke" if count == 1 else " strokes"),
                          rough=told_of(place, found.done, told(strokes.volumes[place], "mL", units)
                                        + ", " + told(strokes.volumes[place] / count, "mL", units) + " a stroke",
                                        values["system"]),
                          part="abcde"[place], rank=rank_of(place, found.done), span=span))
    volume = sum(strokes.volumes)
    text = told(volume, "mL", units) + ("" if found.mass is None else " · " + told(found.mass, "g", units))
    lines.append(line("pumped", "Pumped, in all", volume, "m3", text, part="mix",
                      rough="wanted " + told(found.wanted, "mL", units)))
    off, which = found.off, off_by(names, found.off)
    lines.append(line("strokes_error", "Off ratio by whole strokes", off.error, "", percent(off.error),
                      rank=WARN if off.off else BESIDE,
                      rough=which + ", more than " + aim(off.most) + ": top up as below, or mix another amount"
                      if off.off else which + "; full, even strokes taken for granted"))
    lines.extend(outcome_lines(names, found.outcome))
    lines.extend(_top_up(found, names, values))
    lines.append(_smallest(found, units))
    if PUMPS.from_memory(values["pumps"], "strokes"):
        lines.append(words("pumps_from_memory", "Are these your pumps?", "Two equal ones, to start from. Pumps that "
                           "give the ratio stroke for stroke are others: type what one stroke of each "
                           "gives.", rank=ASK))
    return lines


def _top_up(found: Found, names: tuple[str, ...], values: Values) -> list[Line]:
    lines = []
    for place, lack in enumerate(found.top_up):
        if lack is None:
            continue
        text = told(lack.volume, "mL", values["units"])
        if lack.mass is not None:
            text = to_add(lack.mass, values, where=" on the scale")
        lines.append(line("top_up_" + "abcde"[place], "Exactly in ratio: add " + names[place], lack.volume, "m3", text,
                          part="abcde"[place], rough="after the strokes above"))
    return lines


def _smallest(found: Found, units: str) -> Line:
    if found.least is None:
        return words("smallest", "Smallest batch in ratio", "none with these pumps", rank=ASK,
                     rough="up to {} strokes no whole numbers come within ".format(found.tried) + aim(found.off.most)
                           + ". Were the strokes measured? Top up on a scale, or weigh.")
    volume = sum(found.least.volumes)
    return line("smallest", "Smallest batch in ratio", volume, "m3",
                " : ".join([str(count) for count in found.least.counts]) + " strokes, " + told(volume, "mL", units, UP),
                rank=MORE, rough="for " + aim(found.off.most) + " with these pumps, by whole, even strokes alone; "
                "rounded up")

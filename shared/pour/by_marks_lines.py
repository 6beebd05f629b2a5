"""By marks lines: what is said of syringes and graduated cups, and how a mark is told."""
from ..forms.types import Found, Values
from ..mix.label_words import part_names
from ..mix.ratio_error_lines import aim, off_by, percent, wanted_text, within
from ..words.lines import ASK, BESIDE, MORE, WARN, Line, line, spans, words
from ..words.numbers import DOWN, UP, decimals, shown
from ..words.units import from_si, sign, told
from .by_marks import MOST_DECIMALS
from .measured_lines import outcome_lines, rank_of, told_of

READ_TO = "read to one mark, eyes level with it; in about 95 of 100 pours"


def say(found: Found, values: Values) -> list[Line]:
    """What each syringe or the cup must show, then how far it can be trusted.

    found: by_marks.SyringesResult or by_marks.CupResult
    """
    return _syringes(found, values) if values["way"] == "syringes" else _graduated(found, values)


def mark_text(volume: float, step: float, unit: str) -> str:
    """A volume that ends on a mark, in the unit that stands there and with the decimals that the marks have.

    volume: [m3]; step: from mark to mark [m3]; unit: key of the unit at the marks
    >>> mark_text(60.2e-6, 0.2e-6, "mL"), mark_text(60e-6, 5e-6, "mL")
    ('60.2 mL', '60 mL')
    """
    return shown(from_si(volume, unit), decimals(from_si(step, unit), MOST_DECIMALS)) + " " + sign(unit)


def _syringes(found: Found, values: Values) -> list[Line]:
    marks, names, lines = found.marks, part_names(values["system"]), []
    for place, (volume, span) in enumerate(zip(marks.volumes, spans(marks.volumes))):
        step, fill = marks.steps[place], found.fills[place]
        rough = "wanted " + told(marks.wanted[place], marks.unit)
        if fill.times > 1:
            rough = "{} × {} + {}".format(fill.times - 1, mark_text(fill.full, step, marks.unit),
                                          mark_text(fill.last, step, marks.unit))  # what is off stands below
        lines.append(line("drawn_" + "abcde"[place], names[place] + ", in its own syringe", volume, "m3",
                          mark_text(volume, step, marks.unit), part="abcde"[place],
                          rough=told_of(place, marks.done, rough, values["system"]),
                          rank=rank_of(place, marks.done), span=span))
    lines.extend(outcome_lines(names, marks.outcome))
    return lines + _trust(marks, "these syringes", names, values)


def _graduated(found: Found, values: Values) -> list[Line]:
    if found.marks is None:
        return [_too_coarse(found, values["units"])]
    marks, names, lines = found.marks, part_names(values["system"]), []
    for place, (level, span) in enumerate(zip(found.levels, spans(marks.volumes))):
        rough = "wanted " + told(found.each[place], found.unit) + ", here " + told(marks.volumes[place], found.unit)
        lines.append(line("level_" + "abcde"[place], names[place] + ", up to the mark", level, "m3",
                          mark_text(level, found.step, found.unit), part="abcde"[place],
                          rank=rank_of(place, marks.done), span=span,
                          rough=told_of(place, marks.done, rough, values["system"])))
    lines.extend(outcome_lines(names, marks.outcome))
    whole = told(found.times * sum(marks.volumes), "mL", values["units"])
    if found.times > 1:
        lines.append(line("pours", "Cup too small for all of it", found.times, "", str(found.times) + " equal pours",
                          rank=WARN, rough="the cup ends at "
                          + told(values["graduated"]["holds"], found.unit, toward=DOWN)
                          + "; the marks above are for one pour"
                          + ("" if marks.done else ", all of them are " + whole)))
    if found.much_more:
        lines.append(words("much_more", "Much more than wanted", "{} for {}: less of it ends on no marks. Take finer "
                           "marks or a scale.".format(whole, told(sum(marks.wanted), "mL", values["units"])),
                           rank=WARN))
    return lines + _trust(marks, "this graduated cup", names, values)


def _too_coarse(found: Found, units: str) -> Line:
    """No mark is better than a mark that is not there, or one that puts the ratio off."""
    text = "No marks of this cup come within {} of the ratio.".format(aim(found.limit))
    if found.finer:
        text += " With marks {} apart a cup must hold {} for it.".format(
            mark_text(found.step, found.step, found.unit), told(sum(found.finer.volumes), "mL", units, UP))
    text += " Take a cup with finer marks, syringes or a scale."
    return words("too_coarse", "These marks are too coarse", text, rank=WARN)


def _trust(marks: Found, tool: str, names: tuple[str, ...], values: Values) -> list[Line]:
    """The rounding to marks, the reading, and the smallest batch in ratio with this tool. marks: by_marks.Marks"""
    units, whole = values["units"], sum(marks.volumes)
    lines = [line("marks_error", "Off ratio by whole marks", marks.off.error, "", percent(marks.off.error),
                  rank=WARN if marks.off.off else BESIDE, rough=off_by(names, marks.off)),
             line("spread", "Reading holds the ratio within", marks.spread, "", within(marks.spread), rough=READ_TO),
             line("measured", "Measured, one pour", whole, "m3", told(whole, "mL", units),
                  part="mix", rank=MORE, rough="wanted in all " + told(sum(marks.wanted), "mL", units))]
    for place in marks.coarse:
        here, apart = told(marks.wanted[place], marks.unit), told(marks.steps[place], marks.unit)
        lines.append(words("coarse_" + "abcde"[place], "Marks coarser than the part",
                           "{} is {}, the marks are {} apart. Take finer marks or a scale, or mix more.".format(
                               names[place], here, apart), rank=WARN, part="abcde"[place]))
    if marks.least is None:
        return lines + [words("smallest", "Smallest batch in ratio", "none with " + tool, rank=ASK,
                              rough="for " + wanted_text(marks.off.most, values) + ". Take finer marks or a scale.")]
    least = told(marks.least, "mL", units, UP)
    lines.append(line("smallest", "Smallest batch in ratio", marks.least, "m3", least,
                      rough="for {} by marks and by reading, each alone, with {}; rounded up".format(
                          wanted_text(marks.off.most, values), tool)))
    if marks.too_small:
        lines.append(words("too_small", "Too small for these marks", "Below {} they cannot hold the ratio. Mix more, "
                           "or take finer marks or a scale.".format(least), rank=WARN))
    return lines

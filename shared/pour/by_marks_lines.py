"""By marks lines: what is said of syringes and graduated cups, and how a mark is told."""
from ..forms.types import Found, Said, Values
from ..mix.label_words import parts_said
from ..mix.ratio_error_lines import aim, aimed_at, off_by, percent, within
from ..words.lines import ANSWER, ASK, BESIDE, MORE, WARN, Line, line, spans, words
from ..words.messages import in_unit, message, quantity, with_unit
from ..words.numbers import DOWN, NEAREST, UP, decimals, shown
from ..words.units import from_si
from .by_marks import MOST_DECIMALS
from .measured_lines import outcome_lines, rank_of, told_of


def say(found: Found, values: Values) -> list[Line]:
    """What each syringe or the cup must show, then how far it can be trusted.

    found: by_marks.SyringesResult or by_marks.CupResult
    """
    return _syringes(found, values) if values["way"] == "syringes" else _graduated(found, values)


def written(found: Found, values: Values) -> list[Said]:
    """The mark of each part, for the ear and the log.

    found: by_marks.SyringesResult, or a by_marks.CupResult with marks
    """
    marks = found.marks
    levels = marks.volumes if values["way"] == "syringes" else found.levels
    return [_mark(level, step, marks.unit) for level, step in zip(levels, marks.steps)]


def _mark(volume: float, step: float, unit: str) -> Said:
    """A volume that ends on a mark, in the unit that stands there and with the decimals that the marks have.

    volume: [m3]; step: from mark to mark [m3]; unit: key of the unit at the marks
    >>> _mark(60.2e-6, 0.2e-6, "mL"), _mark(60e-6, 5e-6, "mL")
    ((13, '60.2', 'mL'), (13, '60', 'mL'))
    """
    return with_unit(shown(from_si(volume, unit), decimals(from_si(step, unit), MOST_DECIMALS)), unit)


def _near(volume: float, unit: str, toward: str = NEAREST) -> Said:
    """Any volume in the unit that stands at the marks, to three figures."""
    return in_unit(volume, unit, toward)


def _syringes(found: Found, values: Values) -> list[Line]:
    marks, names, lines = found.marks, parts_said(values["system"]), []
    for place, (volume, span) in enumerate(zip(marks.volumes, spans(marks.volumes))):
        step, fill = marks.steps[place], found.fills[place]
        rough = message("marks-drawn.wanted", volume=_near(marks.wanted[place], marks.unit))
        if fill.times > 1:  # what is off stands below
            rough = message("marks-drawn.fills", times=fill.times - 1, full=_mark(fill.full, step, marks.unit),
                            last=_mark(fill.last, step, marks.unit))
        lines.append(line("drawn_" + "abcde"[place], message("marks-drawn", part=names[place]), volume, "m3",
                          _mark(volume, step, marks.unit), part="abcde"[place],
                          rough=told_of(place, marks.done, rough, values["system"]),
                          rank=rank_of(place, marks.done), span=span))
    lines.extend(outcome_lines(names, marks.outcome))
    if found.fix:
        lines.append(fix_line(found, values))
    return lines + _trust(marks, names, values)


def fix_line(found: Found, values: Values) -> Line:
    """What to draw up so that a pour that is off stands in ratio again. found: by_marks.SyringesResult with a Fix"""
    fix, marks = found.fix, found.marks
    return line("fix", message("fix-draw", part=parts_said(values["system"])[fix.place]), fix.volume, "m3",
                _mark(fix.volume, marks.steps[fix.place], marks.unit), part="abcde"[fix.place],
                rank=ANSWER, rough=message("fix-draw.all", volume=drawn_in_all(found)))


def drawn_in_all(found: Found) -> Said:
    """What is drawn up of the part that was short, with what is added. found: by_marks.SyringesResult with a Fix"""
    fix, marks = found.fix, found.marks
    return _mark(fix.total, marks.steps[fix.place], marks.unit)


def _graduated(found: Found, values: Values) -> list[Line]:
    if found.marks is None:
        return [_too_coarse(found)]
    marks, names, lines = found.marks, parts_said(values["system"]), []
    for place, (level, span) in enumerate(zip(found.levels, spans(marks.volumes))):
        rough = message("marks-level.rough", volume=_near(found.each[place], found.unit),
                        marked=_near(marks.volumes[place], found.unit))
        lines.append(line("level_" + "abcde"[place], message("marks-level", part=names[place]), level, "m3",
                          _mark(level, found.step, found.unit), part="abcde"[place],
                          rank=rank_of(place, marks.done), span=span,
                          rough=told_of(place, marks.done, rough, values["system"])))
    lines.extend(outcome_lines(names, marks.outcome))
    whole = quantity(found.times * sum(marks.volumes), "mL")
    if found.times > 1:
        holds = _near(values["graduated"]["holds"], found.unit, DOWN)
        lines.append(line("pours", "measure-pours", found.times, "", message("measure-pours.text", count=found.times),
                          rank=WARN, rough=message("marks-pours.one", holds=holds) if marks.done else
                          message("marks-pours.all", holds=holds, volume=whole)))
    if found.much_more:
        lines.append(words("much_more", "marks-more", message(
            "marks-more.text", marked=whole, wanted=quantity(sum(marks.wanted), "mL")), rank=WARN))
    return lines + _trust(marks, names, values)


def _too_coarse(found: Found) -> Line:
    """No mark is better than a mark that is not there, or one that puts the ratio off."""
    text = message("marks-none.text", aim=aim(found.limit))
    if found.finer:
        text = message("marks-none.finer", aim=aim(found.limit), step=_mark(found.step, found.step, found.unit),
                       volume=quantity(sum(found.finer.volumes), "mL", UP))
    return words("too_coarse", "marks-none", text, rank=WARN)


def _trust(marks: Found, names: tuple[Said, ...], values: Values) -> list[Line]:
    """The rounding to marks, the reading, and the smallest batch in ratio with this tool. marks: by_marks.Marks"""
    whole, tool = sum(marks.volumes), values["way"]
    lines = [line("marks_error", "marks-error", marks.off.error, "", percent(marks.off.error),
                  rank=WARN if marks.off.off else BESIDE, rough=off_by(names, marks.off)),
             line("spread", "marks-spread", marks.spread, "", within(marks.spread), rough="marks-spread.rough"),
             line("measured", "marks-measured", whole, "m3", quantity(whole, "mL"), part="mix", rank=MORE,
                  rough=message("marks-measured.rough", volume=quantity(sum(marks.wanted), "mL")))]
    for place in marks.coarse:
        lines.append(words("coarse_" + "abcde"[place], "marks-coarse", message(
            "marks-coarse.text", part=names[place], volume=_near(marks.wanted[place], marks.unit),
            step=_near(marks.steps[place], marks.unit)), rank=WARN, part="abcde"[place]))
    wanted = aimed_at(marks.off.most, values)
    if marks.least is None:
        return lines + [words("smallest", "measure-smallest", message("marks-smallest.none", tool=tool), rank=ASK,
                              rough=message("marks-smallest.why", wanted=wanted))]
    least = quantity(marks.least, "mL", UP)
    lines.append(line("smallest", "measure-smallest", marks.least, "m3", least,
                      rough=message("marks-smallest.rough", tool=tool, wanted=wanted)))
    if marks.too_small:
        lines.append(words("too_small", "marks-too-small", message("marks-too-small.text", least=least), rank=WARN))
    return lines

"""By pumps lines: what is said of whole strokes, what they cost, and the top-up."""
from ..forms.types import Found, Said, Values
from ..mix.label_words import parts_said
from ..mix.ratio_error_lines import aim, off_by, percent
from ..things.records import PUMPS
from ..words.lines import ANSWER, ASK, BESIDE, MORE, WARN, Line, line, spans, words
from ..words.messages import message, quantity, row, with_unit
from ..words.numbers import UP
from .by_scale_lines import to_add
from .measured_lines import outcome_lines, rank_of, told_of


def say(found: Found, values: Values) -> list[Line]:
    """The strokes of each pump, then what whole strokes cost. found: by_pumps.PumpsResult"""
    names, strokes = parts_said(values["system"]), found.strokes
    lines = []
    for place, (count, span) in enumerate(zip(strokes.counts, spans(strokes.volumes))):
        each = message("pumps-strokes.rough", volume=quantity(strokes.volumes[place], "mL"),
                       each=quantity(strokes.volumes[place] / count, "mL"))
        lines.append(line("strokes_" + "abcde"[place], names[place], count, "", message("pumps-strokes", count=count),
                          rough=told_of(place, found.done, each, values["system"]),
                          part="abcde"[place], rank=rank_of(place, found.done), span=span))
    lines.extend(more_lines(names, found.more, strokes.counts))
    volume = sum(strokes.volumes)
    text = quantity(volume, "mL")
    lines.append(line("pumped", "pumps-pumped", volume, "m3",
                      text if found.mass is None else row([text, quantity(found.mass, "g")], " · "), part="mix",
                      rough=message("pumps-pumped.rough", volume=quantity(found.wanted, "mL"))))
    off, which = found.off, off_by(names, found.off)
    lines.append(line("strokes_error", "pumps-error", off.error, "", percent(off.error),
                      rank=WARN if off.off else BESIDE,
                      rough=message("pumps-error.much", off=which, aim=aim(off.most)) if off.off else
                      message("pumps-error.rough", off=which)))
    lines.extend(outcome_lines(names, found.outcome))
    lines.extend(_top_up(found, names, values))
    lines.append(_smallest(found))
    if PUMPS.from_memory(values["pumps"], "strokes"):
        lines.append(words("pumps_from_memory", "pumps-yours", "pumps-yours.text", rank=ASK))
    return lines


def written(found: Found, values: Values) -> list[Said]:
    """The strokes of each pump, for the ear and the log. found: by_pumps.PumpsResult"""
    return [with_unit(str(count), "strokes") for count in found.strokes.counts]


def more_lines(names: tuple[Said, ...], more: tuple[int, ...], pumped: "tuple[int, ...] | list[int]") -> list[Line]:
    """The strokes that mend what was pumped, of each part that takes some. names, more, pumped: of each part"""
    return [line("more_" + "abcde"[place], message("fix-strokes", part=names[place]), count, "",
                 message("pumps-strokes", count=count), part="abcde"[place], rank=ANSWER,
                 rough=message("fix-strokes.all", count=pumped[place] + count))
            for place, count in enumerate(more) if count]


def _top_up(found: Found, names: tuple[Said, ...], values: Values) -> list[Line]:
    lines = []
    for place, lack in enumerate(found.top_up):
        if lack is None:
            continue
        text = quantity(lack.volume, "mL")
        if lack.mass is not None:
            text = to_add(lack.mass, values, named=True)
        lines.append(line("top_up_" + "abcde"[place], message("pumps-top-up", part=names[place]), lack.volume, "m3",
                          text, part="abcde"[place], rough="pumps-top-up.rough"))
    return lines


def _smallest(found: Found) -> Line:
    wanted = aim(found.off.most)
    if found.least is None:
        return words("smallest", "measure-smallest", "pumps-smallest.none", rank=ASK,
                     rough=message("pumps-smallest.tried", strokes=found.tried, aim=wanted))
    volume = sum(found.least.volumes)
    return line("smallest", "measure-smallest", volume, "m3",
                message("pumps-smallest", counts=row(found.least.counts, " : "), volume=quantity(volume, "mL", UP)),
                rank=MORE, rough=message("pumps-smallest.rough", aim=wanted))

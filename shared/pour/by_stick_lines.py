"""By stick lines: what is said of the marks on a stick, and of the room in a cup."""
from ..catalogue.measuring import MARK_ERROR
from ..forms.types import Found, Said, Values
from ..mix.label_words import parts_said
from ..mix.ratio_error_lines import aimed_at, off_by, percent, within
from ..things.records import CUP
from ..words.lines import ASK, BESIDE, MORE, WARN, Line, line, spans, words
from ..words.messages import fact, message, quantity
from ..words.numbers import DOWN, NEAREST, UP
from ..words.units import US
from .measured_lines import outcome_lines, rank_of, told_of

EACH_ERROR = fact("mm", MARK_ERROR)


def height_text(height: float, units: str) -> Said:
    """A height as a ruler shows it: to half a millimetre, or to a hundredth of an inch."""
    return quantity(height, "mm", NEAREST, _places(units))


def written(found: Found, values: Values) -> list[Said]:
    """The mark of each part on the stick, for the ear and the log. found: by_stick.StickResult"""
    return [height_text(mark, values["units"]) for mark in found.marks]


def _places(units: str) -> int:
    """Decimals of a height."""
    return 2 if units == US else 1


def say(found: Found, values: Values) -> list[Line]:
    """The marks from the bottom, then what a millimetre on each of them costs. found: by_stick.StickResult"""
    names, units = parts_said(values["system"]), values["units"]
    lines = outcome_lines(names, found.outcome)
    for place, (mark, span) in enumerate(zip(found.marks, spans(found.volumes))):
        lines.append(line("mark_" + "abcde"[place], message("stick-mark", part=names[place]), mark, "m",
                          height_text(mark, units), part="abcde"[place], rank=rank_of(place, found.done), span=span,
                          rough=told_of(place, found.done, "" if place else "stick-mark.rough", values["system"])))
    if found.times > 1:
        lines.append(_pours(found, "stick-pours.rough"))
    lines.extend(_trust(found, names, values))
    if found.narrower:
        lines.append(_narrower(found.narrower, units))
    lines.extend(_questions(found, values))
    return lines


def _trust(found: Found, names: tuple[Said, ...], values: Values) -> list[Line]:
    """What MARK_ERROR on each mark and on one alone does, and the smallest batch in ratio."""
    wanted = aimed_at(found.wanted, values)
    lines = [line("spread", message("stick-spread", error=EACH_ERROR), found.spread, "", within(found.spread),
                  rank=WARN if found.wide else BESIDE,
                  rough=message("stick-spread.rough", worst=within(found.worst), wanted=wanted))]
    for place, off in enumerate(found.costs):
        label = message("stick-cost", part=names[place], error=EACH_ERROR)
        rough = message("stick-cost.rough", off=off_by(names, off))
        lines.append(line("mark_cost_" + "abcde"[place], label, off.error, "", percent(off.error), part="abcde"[place],
                          rank=MORE, rough=rough))
    if found.least is None:
        lines.append(words("smallest", "measure-smallest", "stick-smallest.none", rank=ASK,
                           rough=message("stick-smallest.why", error=EACH_ERROR, wanted=wanted)))
    else:
        lines.append(line("smallest", "measure-smallest", found.least, "m3",
                          quantity(found.least, "mL", UP), rough=message("stick-smallest.rough", wanted=wanted)))
    return lines


def _narrower(found: Found, units: str) -> Line:
    """found: by_stick.Narrower"""
    places = 0 if units != US else 1
    if found.stirs:
        text = message("stick-narrower.text", width=quantity(found.width, "mm", DOWN, places),
                       height=quantity(found.height, "mm", UP, places))
    else:
        text = "stick-narrower.none"
    return line("narrow", "stick-narrower", found.width, "m", text, rank=ASK,
                rough=message("stick-narrower.rough", error=EACH_ERROR))


def _questions(found: Found, values: Values) -> list[Line]:
    """What looks like a slip, and where a cup's size is only remembered."""
    lines = []
    if found.narrows:
        lines.append(words("narrows", "stick-narrows", "stick-narrows.text", rank=ASK))
    if CUP.from_memory(values["cup"], "bottom", "top", "height"):
        lines.append(words("cup_from_memory", "stick-yours", "stick-yours.text", rank=ASK))
    return lines


def room(found: "Found | None", values: Values) -> list[Line]:
    """Whether the batch fits a cup that was chosen. found: by_stick.RoomResult or None"""
    units = values["units"]
    if found is None:
        return []
    if found.height is not None:
        return [line("stands", "stick-stands", found.height, "m", height_text(found.height, units), rank=MORE,
                     rough=message("stick-stands.rough", height=height_text(values["cup"]["height"], units)))]
    return [_pours(found, "stick-pours.room")]


def _pours(found: Found, rough: Said) -> Line:
    """In how many pours the batch fits. found: by_stick.StickResult or RoomResult; rough: key of what is said below"""
    return line("pours", "measure-pours", found.times, "", message("measure-pours.text", count=found.times), rank=WARN,
                rough=message(rough, volume=quantity(found.usable, "mL", DOWN)))

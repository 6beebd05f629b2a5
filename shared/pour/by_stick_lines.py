"""By stick lines: what is said of the marks on a stick, and of the room in a cup."""
from ..catalogue.measuring import MARK_ERROR
from ..forms.types import Found, Values
from ..mix.label_words import part_names
from ..mix.ratio_error_lines import off_by, percent, wanted_text, within
from ..things.records import CUP
from ..words.lines import ASK, BESIDE, MORE, WARN, Line, line, spans, words
from ..words.numbers import DOWN, UP
from ..words.units import US, braces, told
from .measured_lines import outcome_lines, rank_of, told_of

EACH_MARK, TOO_HIGH = braces("mm", MARK_ERROR) + " on each mark", " " + braces("mm", MARK_ERROR) + " too high"


def height_text(height: float, units: str) -> str:
    """A height as a ruler shows it: to half a millimetre, or to a hundredth of an inch."""
    if units == US:
        return told(height, "mm", units, places=2)
    return told(height, "mm", units, places=1)


def say(found: Found, values: Values) -> list[Line]:
    """The marks from the bottom, then what a millimetre on each of them costs. found: by_stick.StickResult"""
    names, units = part_names(values["system"]), values["units"]
    lines = outcome_lines(names, found.outcome)
    for place, (mark, span) in enumerate(zip(found.marks, spans(found.volumes))):
        lines.append(line("mark_" + "abcde"[place], names[place] + ", up to", mark, "m",
                          height_text(mark, units), part="abcde"[place], rank=rank_of(place, found.done), span=span,
                          rough=told_of(place, found.done, "" if place else
                                        "from the inside bottom, the stick upright in the middle", values["system"])))
    if found.times > 1:
        lines.append(line("pours", "Cup too small for all of it", found.times, "", str(found.times) + " equal pours",
                          rank=WARN, rough="it takes {} with room to stir; the marks are for one pour, or take a "
                          "larger cup".format(told(found.usable, "mL", units, DOWN))))
    lines.extend(_trust(found, names, values))
    if found.narrower:
        lines.append(_narrower(found.narrower, units))
    lines.extend(_questions(found, values))
    return lines


def _trust(found: Found, names: tuple[str, ...], values: Values) -> list[Line]:
    """What MARK_ERROR on each mark and on one alone does, and the smallest batch in ratio."""
    wanted = wanted_text(found.wanted, values)
    lines = [line("spread", EACH_MARK + ": ratio off by", found.spread, "", within(found.spread),
                  rank=WARN if found.wide else BESIDE,
                  rough="usual, the marks off independently of each other; at worst {}; {} is wanted".format(
                      within(found.worst), wanted))]
    for place, off in enumerate(found.costs):
        lines.append(line("mark_cost_" + "abcde"[place], names[place] + TOO_HIGH, off.error, "",
                          percent(off.error), part="abcde"[place], rank=MORE,
                          rough="of the ratio; " + off_by(names, off)))
    if found.least is None:
        lines.append(words("smallest", "Smallest batch in ratio", "none in this cup", rank=ASK,
                           rough="even full, " + EACH_MARK + " costs more than " + wanted))
    else:
        lines.append(line("smallest", "Smallest batch in ratio", found.least, "m3",
                          told(found.least, "mL", values["units"], UP),
                          rough="for {} in this cup, by the usual error; rounded up".format(wanted)))
    return lines


def _narrower(found: Found, units: str) -> Line:
    """found: by_stick.Narrower"""
    places = 0 if units != US else 1
    if found.stirs:
        text = "A straight cup at most {} wide inside holds the ratio; it would stand {} high. Or weigh it.".format(
            told(found.width, "mm", units, DOWN, places=places), told(found.height, "mm", units, UP, places=places))
    else:
        text = "No cup is narrow enough and still wide enough to stir: weigh it, or draw it up in syringes."
    return line("narrow", "A narrower cup", found.width, "m", text, rank=ASK, rough="for " + EACH_MARK)


def _questions(found: Found, values: Values) -> list[Line]:
    """What looks like a slip, and where a cup's size is only remembered."""
    lines = []
    if found.narrows:
        lines.append(words("narrows", "Does it narrow upwards?", "The rim is narrower than the bottom. If the two were "
                           "swapped, swap them back. If it is so, hold the stick upright in the middle, not along the "
                           "wall.", rank=ASK))
    if CUP.from_memory(values["cup"], "bottom", "top", "height"):
        lines.append(words("cup_from_memory", "Is this your cup?", "Its size is only one to start from. Measure "
                           "yours inside: bottom, rim, height.", rank=ASK))
    return lines


def room(found: "Found | None", values: Values) -> list[Line]:
    """Whether the batch fits a cup that was chosen. found: by_stick.RoomResult or None"""
    units = values["units"]
    if found is None:
        return []
    if found.height is not None:
        return [line("stands", "Stands in the cup", found.height, "m", height_text(found.height, units), rank=MORE,
                     rough="of {}; filler comes on top".format(height_text(values["cup"]["height"], units)))]
    return [line("pours", "Cup too small for all of it", found.times, "", str(found.times) + " equal pours", rank=WARN,
                 rough="it takes {} with room to stir; or take a larger cup".format(
                     told(found.usable, "mL", units, DOWN)))]

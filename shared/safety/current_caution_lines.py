"""In place, lines: the caution that matters now in a sentence or two."""
from ..catalogue.cautions import REMINDER
from ..forms.types import Found, Values
from ..words.lines import Line
from . import cautions_lines

ALWAYS = "gloves"  # what always stands is told in the reminder's own words


def say(found: Found, values: Values) -> str:
    """found: `current_caution.CurrentResult`. A pot that can run away is told beside the most urgent."""
    told = [found.first] + ([found.heats] if found.heats else [])
    lines = cautions_lines.say(told, found.known, values["units"])
    text = REMINDER if found.first == ALWAYS else _short(lines[0])
    if not found.heats:
        return text
    # what must be on before a pot is opened is not kept back by what the pot does once it is mixed: both are told
    if found.first == ALWAYS:
        text = text.partition(". ")[0] + "."
    return text + " " + _short(lines[1], named=False)  # what it can do says it all; room is scarce


def _short(line: Line, named: bool = True) -> str:
    first, stop, _ = line.text.partition(". ")  # the rest is one tap away
    return (line.label + ". " if named else "") + first + ("." if stop else "")

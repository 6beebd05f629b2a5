"""First aid, lines: the official statement large, its code and what else it rests on under it."""
from ..catalogue.first_aid import EMERGENCY
from ..catalogue.sources import SOURCES
from ..forms.types import Found, Said, Values
from ..words.lines import MORE, SAY, Line, words
from ..words.messages import message, noted, number, quantity, sentences, typed
from ..words.numbers import UP, shown
from ..words.sourced import sourced

HOT = "hot"  # part of the answer that folds away


def say(found: Found, values: Values) -> list[Line]:
    """found: `aid.AidResult`"""
    minutes = number(shown(found.minutes / 60, 0, UP))
    lines = [_step(step, added, minutes) for step, added in found.steps]
    for name, text, mark, source in EMERGENCY:
        lines.append(words("aid_" + name, "aid-112", text, rough=sourced(mark, source), rank=SAY))
    lines.append(words("aid_sheet", "aid-sheet", "aid-sheet.text",
                       rough=message("aid-sheet.rough", source=typed(SOURCES["ghs"])), rank=SAY))
    for place, (key, text, mark, source) in enumerate(found.hot):
        lines.append(words("hot_" + key, place + 1, text, rough=sourced(mark, source), rank=MORE, part=HOT))
    lines.append(words("aid_water", "aid-water",
                       message("aid-water.text", minutes=minutes, water=quantity(found.water, "L", UP, 0)),
                       rough=message("aid-water.rough", source=typed(SOURCES["eyewash"])), rank=MORE, part=HOT))
    return lines


def _step(step: tuple, added: "list[tuple]", minutes: Said) -> Line:
    """One step: when it is done, what is done and what is added to it."""
    key, code, when, do, _, _ = step
    where: list = []
    for each in [one[2:] for one in added]:
        if each not in where:
            where.append(each)
    return words("aid_" + key, when, sentences([do] + [message(one[1], minutes=minutes) for one in added]),
                 rough=noted([typed(code)] + [sourced(mark, source) for mark, source in where]), rank=SAY)

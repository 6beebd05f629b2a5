"""Own rates lines: how fast these hands are, step by step, and what a crew keeps of it."""
from ..catalogue.rates import RATES
from ..forms.types import Found, Values
from ..things.learned_rates import learned_text
from ..things.work_rates import Pace, told
from ..words.lines import MORE, SAY, Line, line, words
from ..words.messages import message, quantity


def say(found: "list[Found]", values: Values) -> list[Line]:
    """found: `own_rates.OwnRate` of each step"""
    if not found:
        return [words("none", "own-rates", "own-rates.none", rank=SAY)]
    paces = [Pace(name, one.rate, "", one) for name, one in found]
    lines = [words("summary", "own-rates", message("own-rates.text", rates=told(paces)[0]), rank=SAY)]
    labels = {row[0]: row[1] for row in RATES}
    for name, one in found:
        lines.append(line(name, labels[name], one.rate, "m/s", quantity(one.rate, "m/min"), rank=MORE,
                          rough=message("own-rates.rough", count=one.count, low=quantity(one.low, "m/min"),
                                        high=quantity(one.high, "m/min"))))
    return lines


def leads(found: "list[Found]") -> list:
    """found: as `say` takes it"""
    text = learned_text(found)
    return [{"label": "own-rates.use", "screen": "plan", "pairs": [["crew.learned", text]]}] if text else []

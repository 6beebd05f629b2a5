"""Own rates lines: how fast these hands are, step by step, and what a crew keeps of it."""
from ..catalogue.rates import RATES
from ..forms.types import Found, Values
from ..things.learned_rates import learned_text
from ..things.work_rates import Pace, told
from ..words.lines import MORE, SAY, Line, line, words
from ..words.units import told as told_in


def say(found: "list[Found]", values: Values) -> list[Line]:
    """found: `own_rates.OwnRate` of each step"""
    if not found:
        return [words("none", "Own rates", "none yet: tap each step in Plan as you finish it", rank=SAY)]
    paces = [Pace(name, one.rate, "", one) for name, one in found]
    lines = [words("summary", "Own rates", "From own batches: " + told(paces, values["units"])[0], rank=SAY)]
    labels = {row[0]: row[1] for row in RATES}
    for name, one in found:
        lines.append(line(name, labels[name], one.rate, "m/s", told_in(one.rate, "m/min", values["units"]), rank=MORE,
                          rough="from {}, {} to {}; the fewer, the nearer to what is remembered".format(
                              "1 own batch" if one.count == 1 else str(one.count) + " own batches",
                              told_in(one.low, "m/min", values["units"]), told_in(one.high, "m/min", values["units"]))))
    return lines


def leads(found: "list[Found]") -> list:
    """found: as `say` takes it"""
    text = learned_text(found)
    return [{"label": "Use my rates", "screen": "plan", "pairs": [["crew.learned", text]]}] if text else []

"""Own rates: the laid batches of the log to how fast these hands are, step by step."""
from ..catalogue.rates import RATES
from ..forms.inputs import Group, Number
from ..things.learned_rates import learned, learned_text
from ..things.work_rates import Pace, told
from ..words.lines import MORE, SAY, line, words
from ..words.units import told as told_in

MOST_ROWS = 60
LAID = "Laid by a plan: how fast it went"

# what a laid batch keeps, in the log and here
METRES = Number("laid", "Metres laid", unit="m", low=0, high=1000, above=True, optional=True,
                fold=LAID, help="As if all were downhand: a standing one counts as more.")


def minutes(fold=""):
    """The minutes of each step of a laid batch."""
    return tuple([Number(row[0], row[1], unit="min", low=0, high=2880, above=True, optional=True, fold=fold)
                  for row in RATES])


INPUTS = (
    Group("rows", "Laid batches", (METRES,) + minutes(), most=MOST_ROWS, each="Batch"),
)
CHECKS = ()


def found(values):
    """What is learned of each step: (name, Learned), those that no batch tells of left out."""
    learnt = []
    for name, _, usual, least, most, _ in RATES:
        rates = [row["laid"] / row[name] for row in values["rows"] if row["laid"] and row[name]]
        one = learned(rates, usual / 60, least / 60, most / 60)
        if one:
            learnt.append((name, one))
    return learnt


def answer(values):
    """Each rate with its range and how many batches it rests on."""
    learnt = found(values)
    if not learnt:
        return [words("none", "Own rates", "no laid batch tells of one yet: tap its steps in Plan", rank=SAY)]
    paces = [Pace(name, one.rate, "", one) for name, one in learnt]
    lines = [words("summary", "Own rates", "From own batches: " + told(paces, values["units"])[0], rank=SAY)]
    labels = {row[0]: row[1] for row in RATES}
    for name, one in learnt:
        lines.append(line(name, labels[name], one.rate, "m/s", told_in(one.rate, "m/min", values["units"]), rank=MORE,
                          rough="from {}, {} to {}; the fewer, the nearer to what is remembered".format(
                              "1 own batch" if one.count == 1 else str(one.count) + " own batches",
                              told_in(one.low, "m/min", values["units"]), told_in(one.high, "m/min", values["units"]))))
    return lines


def leads(values):
    """To the plan's crew, or to one of the kit."""
    text = learned_text(found(values))
    return [{"label": "Take own rates", "screen": "plan", "pairs": [["crew.learned", text]]}] if text else []

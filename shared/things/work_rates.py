"""Paces: how fast these hands are along a seam: typed, the crew's own, learned from own batches, or remembered."""
from collections import namedtuple

from ..catalogue.rates import HANDS, RATES
from ..words.numbers import shown
from ..words.units import from_si, sign, unit_for
from .learned_rates import SHORT, read_learned
from .records_shed import PEOPLE

TYPED, CREW, OWN, REMEMBERED = "typed", "the crew's own", "own batches", "from memory"

# name: of RATES; rate [m/s] as the plan counts it; whence: TYPED ..; learned: `Learned` where it is from own batches
Pace = namedtuple("Pace", ("name", "rate", "whence", "learned"))


def paces(values):
    """How fast each step goes, downhand and for one person: typed in the plan, the crew's own, learned, remembered."""
    crew = values["crew"]
    own = read_learned(crew["learned"]) if crew["learned"] else {}
    hand = dict([(row[0], row[2]) for row in HANDS])[values["hand"]]
    found = []
    for row in RATES:
        name, typed, kept = row[0], values[row[0] + "_rate"], crew[row[0]]
        if typed:
            found.append(Pace(name, typed, TYPED, None))
        elif kept and not PEOPLE.from_memory(crew, name):
            found.append(Pace(name, kept, CREW, None))
        elif name in own:
            found.append(Pace(name, own[name].rate, OWN, own[name]))
        else:
            found.append(Pace(name, row[2] / 60 * hand, REMEMBERED, None))
    return found


def told(found, units):
    """(rates in the order of the work, where each is from), in words."""
    unit = unit_for("m/min", units)
    text = ", ".join([SHORT[one.name] + " " + _short(one.rate, unit) for one in found]) + " " + sign(unit)
    said = []
    for one in found:
        if one.learned:
            said.append("{} from {} own {}, {} to {}".format(
                SHORT[one.name], one.learned.count, "batch" if one.learned.count == 1 else "batches",
                _short(one.learned.low, unit), _short(one.learned.high, unit)))
    for whence in (TYPED, CREW, REMEMBERED):
        names = [SHORT[one.name] for one in found if one.whence == whence]
        if names:
            said.append((", ".join(names) if len(names) < len(found) else "all") + " " + whence)
    return text, "; ".join(said)


def _short(rate, unit):
    text = shown(from_si(rate, unit), 2)
    while text[-1] == "0":
        text = text[:-1]
    return text[:-1] if text[-1] == "." else text

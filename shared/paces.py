"""Paces: how fast these hands are along a seam: typed, the crew's own, learned from own batches, or remembered."""
from collections import namedtuple
from math import log, sqrt

from .calibration import calibrated
from .catalogue.rates import HANDS, RATES
from .errors import InputError
from .numbers import DOWN, UP, digits, number, shown
from .records_shed import PEOPLE
from .units import from_si, sign, unit_for

# how differently the same hands work from batch to batch, the whole minute of a tap in it (own judgement)
BATCH_DEVIATION = 0.2
FAR = 4.0  # times faster or slower than remembered: a step that was told late, or two told at once (own judgement)
TYPED, CREW, OWN, REMEMBERED = "typed", "the crew's own", "own batches", "from memory"
LIKE = "From own batches: like 'roll 0.5, 0.41 to 0.6, from 3', the next behind a semicolon"
SHORT = dict([(row[0], row[0]) for row in RATES], wet="wet out", peel="peel ply")

# rate, low, high [m/s]; count: of batches
Learned = namedtuple("Learned", ("rate", "low", "high", "count"))
# name: of RATES; rate [m/s] as the plan counts it; whence: TYPED ..; learned: `Learned` where it is from own batches
Pace = namedtuple("Pace", ("name", "rate", "whence", "learned"))


def learned(rates, usual: float, least: float, most: float):
    """A rate of one's own, shrunk to the remembered one while the batches are few; those that stand out are left out:
        ln v = ln v0 + w mean(ln(v_i / v0)),  w = n / (n + s**2 / t**2),  t = ln(most / least) / sqrt(12)

    rates: v_i [m/s] of each batch; usual: v0, remembered, evenly likely in ln v from least to most [m/s]
    returns: Learned, its range two deviations wide to each side, or None; as `calibration.calibrated`, whose s starts
    at BATCH_DEVIATION; t after JCGM 100:2008, 4.3.7
    >>> [round(one, 2) for one in learned((0.5, 0.5, 0.5), 0.8, 0.5, 1.2)]
    [0.53, 0.44, 0.63, 3]
    """
    ratios = [rate / usual for rate in rates if 1 / FAR <= rate / usual <= FAR]
    found = calibrated(ratios, (), log(most / least) / sqrt(12), BATCH_DEVIATION)
    if not found.counted:
        return None
    rate, spread = usual * found.factor, 1 + found.spread
    return Learned(rate, rate / spread, rate * spread, len(found.counted))


def learned_text(found):
    """Learned rates as typed text [m/min], to the safe side. found: (name, Learned)

    >>> learned_text([("roll", Learned(0.5 / 60, 0.41 / 60, 0.6 / 60, 3))])
    'roll 0.50, 0.41 to 0.60, from 3'
    """
    return "; ".join(["{} {}, {} to {}, from {}".format(
        name, shown(one.rate * 60, 2, DOWN), shown(one.low * 60, 2, DOWN), shown(one.high * 60, 2, UP), one.count)
        for name, one in found])


def read_learned(text):
    """The inverse of `learned_text`: {name: Learned}.

    >>> read_learned("roll 0.60, 0.50 to 0.70, from 3")["roll"].count
    3
    """
    found = {}
    for piece in text.split(";"):
        words = [word[:-1] if word[-1] == "," else word for word in piece.split(" ") if word]
        figures = [number(words[place]) for place in (1, 2, 4)] if len(words) == 7 else [None]
        if None in figures or words[0] not in SHORT or not digits(words[6], 4) or not int(words[6]):
            raise InputError("learned", LIKE)
        rate, low, high = figures
        if not 0 < low <= rate <= high <= 20:
            raise InputError("learned", LIKE)
        found[words[0]] = Learned(*([figure / 60 for figure in figures] + [int(words[6])]))
    return found


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

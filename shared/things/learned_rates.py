"""Learned rates: how fast own batches say that these hands are, and that as the few words a crew keeps."""
from collections import namedtuple
from math import log, sqrt

from ..catalogue.rates import DEVIATION, FAR, RATES
from ..equations.dose_calibration import calibrated
from ..forms.errors import InputError
from ..words.numbers import DOWN, UP, digits, number, shown

LIKE = "learned-rates-like"
NAMES = tuple([row[0] for row in RATES])

# rate, low, high [m/s]; count: of batches
Learned = namedtuple("Learned", ("rate", "low", "high", "count"))


def learned(rates: "list | tuple", usual: float, least: float, most: float) -> "Learned | None":
    """A rate of one's own, shrunk to the remembered one while the batches are few; those that stand out are left out:
        ln v = ln v0 + w mean(ln(v_i / v0)),  w = n / (n + s**2 / t**2),  t = ln(most / least) / sqrt(12)

    rates: v_i [m/s] of each batch; usual: v0, remembered, evenly likely in ln v from least to most [m/s]
    returns: Learned, its range two deviations wide to each side, or None; as `calibration.calibrated`, whose s starts
    at DEVIATION; t after JCGM 100:2008, 4.3.7
    >>> [round(one, 2) for one in learned((0.5, 0.5, 0.5), 0.8, 0.5, 1.2)]
    [0.53, 0.44, 0.63, 3]
    """
    ratios = [rate / usual for rate in rates if 1 / FAR <= rate / usual <= FAR]
    found = calibrated(ratios, (), log(most / least) / sqrt(12), DEVIATION)
    if not found.counted:
        return None
    rate, spread = usual * found.factor, 1 + found.spread
    return Learned(rate, rate / spread, rate * spread, len(found.counted))


def learned_text(found: list) -> str:
    """Learned rates as typed text [m/min], to the safe side. found: (name, Learned)

    >>> learned_text([("roll", Learned(0.5 / 60, 0.41 / 60, 0.6 / 60, 3))])
    'roll 0.50, 0.41 to 0.60, from 3'
    """
    return "; ".join(["{} {}, {} to {}, from {}".format(
        name, shown(one.rate * 60, 2, DOWN), shown(one.low * 60, 2, DOWN), shown(one.high * 60, 2, UP), one.count)
        for name, one in found])


def read_learned(text: str) -> dict:
    """The inverse of `learned_text`: {name: Learned}.

    >>> read_learned("roll 0.60, 0.50 to 0.70, from 3")["roll"].count
    3
    """
    found = {}
    for piece in text.split(";"):
        words = [word[:-1] if word[-1] == "," else word for word in piece.split(" ") if word]
        if len(words) != 7 or words[0] not in NAMES or not digits(words[6], 4) or not int(words[6]):
            raise InputError("learned", LIKE)
        figures = [number(words[place]) for place in (1, 2, 4)]
        rate, low, high = figures
        if rate is None or low is None or high is None or not 0 < low <= rate <= high <= 20:
            raise InputError("learned", LIKE)
        found[words[0]] = Learned(rate / 60, low / 60, high / 60, int(words[6]))
    return found

"""Calibrate heat: the rate of cure that meets the label's times and the builder's own.

Two unknowns, the rate k2 at 25 degC and the activation energy E. Every fact is a time to the end of use in some pot.
They are met by least squares in the logarithm of time, E held to what is published for such amines (45 to 65 kJ/mol,
evenly likely).
"""
from collections import namedtuple
from math import exp, log, sqrt

from ..catalogue import cure_times
from ..catalogue.containers import CURE
from .integrate import LONGEST, Pot, Rates, pot_run
from .kinetics import isothermal_time, rate_factor
from .rounding import to_step

CURE_VALUES = {row[0]: row for row in CURE}
REFERENCE = 298.15  # K; at this temperature its rates are told
USABLE = CURE_VALUES["usable_conversion"][1]
TOO_HOT = CURE_VALUES["too_hot"][1]
UNCATALYSED = CURE_VALUES["uncatalysed"][1]
ENERGY, LEAST, MOST = cure_times.ENERGY[:3]
HALF = (MOST - LEAST) / 2
SPREAD = HALF / sqrt(3)  # standard deviation of an even spread over the range

GRID = 1e-7  # every turn ends on such a step, or the last bit in which two runtimes differ would grow until it shows
MET = 0.004  # of a time, as near as another chemistry is made to meet it
ABOUT, AT_LEAST, AT_MOST = "about", "at least", "at most"

# pot: an integrate.Pot, or None for a film that keeps its temperature [K]; time [s]; kind: as above; doubt [-]
Fact = namedtuple("Fact", ("name", "pot", "temperature", "time", "kind", "doubt"))
# rates: integrate.Rates; slow, fast: the ends of what else fits, its least energy and its most; misses: (name, model
# time / fact time) for each fact
Calibration = namedtuple("Calibration", ("rates", "slow", "fast", "misses"))


def rates_of(log_rate: float, energy: float, uncatalysed: float = UNCATALYSED) -> Rates:
    """Rates with one activation energy [J/mol] for both paths; log_rate: ln of k2 [1/s] at 25 degC.

    uncatalysed: k1/k2 [-]
    """
    grown = exp(log_rate)
    return Rates(grown * uncatalysed, grown, energy, energy, REFERENCE)


def usable_time(rates: Rates, pot: Pot, tolerance: float = 1e-3, hot: float = TOO_HOT) -> float:
    """Time until a mix is too thick to use or too hot to hold [s]; LONGEST where it never is. hot: too hot, from [K]"""
    reached = pot_run(rates, pot, USABLE, hot, tolerance=tolerance).reached
    return LONGEST if reached is None else reached


def film_time(rates: Rates, temperature: float) -> float:
    """Time until a film that keeps the temperature [K] is too thick to use [s]; closed form."""
    factor = rate_factor(rates.grown_energy, temperature, rates.reference)
    return isothermal_time(USABLE, rates.first * factor, rates.grown * factor)


def _log_time(fact: Fact, log_rate: float, energy: float) -> float:
    rates = rates_of(log_rate, energy)
    return log(film_time(rates, fact.temperature) if fact.pot is None else usable_time(rates, fact.pot))


def calibrated(facts: tuple) -> Calibration:
    """Rates that meet the facts, at least one of them of the kind ABOUT.

    facts: Fact rows; a bound (AT_LEAST, AT_MOST) counts only while it is broken
    returns: Calibration; `slow` and `fast` have E at the ends of what the facts leave open, each k2 so that the facts
        together are met as well as by the rates in the middle
    """
    log_rate, shift = _first_guess(facts), 0.0  # shift: (E - ENERGY) / SPREAD, so that its own weight is 1
    most = HALF / SPREAD
    by_rate, by_shift = [], []
    times = [_log_time(fact, log_rate, ENERGY) for fact in facts]
    for fact, time in zip(facts, times):
        by_rate.append((_log_time(fact, log_rate + 0.05, ENERGY) - time) / 0.05)
        by_shift.append((_log_time(fact, log_rate, ENERGY + 0.2 * SPREAD) - time) / 0.2)
    for _ in range(8):
        a = b = g = 0.0
        c, h = 1.0, -shift  # the prior on E
        for place, fact in enumerate(facts):
            miss = times[place] - log(fact.time)
            if not _counts(fact, times[place]):
                continue
            weight = 1 / (fact.doubt * fact.doubt)
            dk, de = by_rate[place], by_shift[place]
            a += weight * dk * dk
            b += weight * dk * de
            c += weight * de * de
            g -= weight * dk * miss
            h -= weight * de * miss
        move = (a * h - b * g) / (a * c - b * b)
        move = max(-most, min(most, shift + move)) - shift
        turn = (g - b * move) / a
        turn = max(-2.0, min(2.0, turn))
        shift, log_rate = to_step(shift + move, GRID), to_step(log_rate + turn, GRID)
        if abs(turn) + abs(move) < 1e-4:
            break
        energy = ENERGY + shift * SPREAD
        times = [_log_time(fact, log_rate, energy) for fact in facts]
    wide = sqrt(3.0 * a / (a * c - b * b))
    ends = []
    for end in (max(-most, shift - wide), min(most, shift + wide)):
        moved, energy = log_rate - b / a * (end - shift), ENERGY + end * SPREAD
        off = 0.0  # the straight line to there misses the bend
        for place, fact in enumerate(facts):
            if _counts(fact, times[place]):
                off += by_rate[place] / (fact.doubt * fact.doubt) * (_log_time(fact, moved, energy) - times[place])
        ends.append(rates_of(to_step(moved - off / a, GRID), energy))
    misses = tuple([(fact.name, exp(time) / fact.time) for fact, time in zip(facts, times)])
    return Calibration(rates_of(log_rate, ENERGY + shift * SPREAD), ends[0], ends[1], misses)


def _counts(fact: Fact, log_time: float) -> bool:
    """Whether a fact tells anything of a chemistry that makes its pot last so long: a bound only while it is broken."""
    miss = log_time - log(fact.time)
    return not ((fact.kind == AT_LEAST and miss > 0) or (fact.kind == AT_MOST and miss < 0))


def refitted(rates: Rates, fact: Fact, pot: Pot, uncatalysed: float) -> Rates:
    """Rates of another k1/k2 that make a pot which sheds otherwise last as long as these make the fact's own last; the
    energy stays.

    fact: one of the kind ABOUT; pot: its pot as it may be too, None for a film; uncatalysed: k1/k2 [-]
    """
    energy = rates.grown_energy
    # at one temperature it is a plain factor; a pot that warms itself moves it a little further
    log_rate = (log(rates.grown) + log(isothermal_time(USABLE, uncatalysed, 1.0))
                - log(isothermal_time(USABLE, rates.first / rates.grown, 1.0)))
    if pot is None:
        return rates_of(log_rate, energy, uncatalysed)
    wanted = log(usable_time(rates, fact.pot))
    slope, turn, before = -0.9, 0.0, 0.0
    for _ in range(8):
        miss = log(usable_time(rates_of(log_rate, energy, uncatalysed), pot)) - wanted
        if abs(miss) < MET:
            break
        if turn:
            slope = min(-0.2, (miss - before) / turn)
        before, turn = miss, max(-1.0, min(1.0, -miss / slope))
        log_rate += turn
    return rates_of(log_rate, energy, uncatalysed)


def _first_guess(facts: tuple) -> float:
    """ln k2: from the first fact that says how long, a pot taken as three times as fast as a film."""
    for fact in facts:
        if fact.kind == ABOUT:
            temperature, hurry = (fact.temperature, 1.0) if fact.pot is None else (fact.pot.start, 3.0)
            factor = rate_factor(ENERGY, temperature, REFERENCE)
            return log(isothermal_time(USABLE, UNCATALYSED, 1.0) / fact.time / factor / hurry)
    raise ValueError("a calibration needs a time")

"""Fit a pot: the rate, the loss and the heat of the lumped balance that a thermometer in one cup showed.

Bayes' rule with normal densities: each reading has its doubt, each remembered figure its range, and the curve is taken
as straight near the best fit (Gauss and Newton, steps shortened where it is not).
"""
from collections import namedtuple
from math import exp, log, sqrt

from ..catalogue.trials import (
    HEAT_SPREAD,
    LAG,
    LOSS_SPREAD,
    MINUTE,
    MOMENT,
    OFF_MODEL,
    OFF_TIME,
    READING,
    STRINGY,
    STRINGY_SPREAD,
)
from .calibrate_heat import (
    CURE_VALUES,
    ENERGY,
    HALF,
    LEAST,
    MOST,
    REFERENCE,
    SPREAD,
    TOO_HOT,
    UNCATALYSED,
    USABLE,
    usable_time,
)
from .integrate import LONGEST, Pot, Rates, pot_run
from .kinetics import isothermal_time, rate_factor
from .rounding import to_step
from .types import Figures

# of the share that cures without help, in the logarithm: its remembered range is four deviations wide
FIRST_SPREAD = log(CURE_VALUES["uncatalysed"][3] / CURE_VALUES["uncatalysed"][2]) / 4
TOLERANCE, MOST_BROKEN = 3e-3, 2
# how many times the doubt of a moment counts, turn by turn: near a runaway a minute is forty degrees, and a fit that
# starts a few minutes off would find no way there
LOOSE = (8.0, 8.0, 3.0, 3.0, 1.0, 1.0, 1.0, 1.0, 1.0, 1.0)
RATE_STEP, STEP = 0.05, 0.3  # for the slopes, in units of the unknowns
MOST_MOVE = 1.5  # of them, in one turn
STILL = 0.14  # of them: nearer, and the slopes before still hold; below a tenth of MOST_MOVE, so no last bit decides
# every turn ends on such a step of each unknown, finer than any is known: or the last bit, in which two runtimes
# differ, would grow from turn to turn until it shows
GRID = 0.001
RATE_TRIES = (0.2, -0.2, 0.06, -0.06)  # where the curve is not straight enough the rate alone is tried
MOST_SHIFT = HALF / SPREAD  # E stays in its published range
BOUND = 0.05  # of the time: how exact a bound is

# readings: (time [s], temperature [K]) in the order of time; stringy, hottest, good, gone: [s], None where not seen
Seen = namedtuple("Seen", ("readings", "stringy", "hottest", "good", "gone"))
# of another pot: pot: integrate.Pot; time [s]; least: it lasted at least so long, else at most
Bound = namedtuple("Bound", ("pot", "time", "least"))
# at: the unknowns, covariance: theirs; rates: integrate.Rates; pot, run: integrate.Pot and Run of the cup
# end: until it is too thick or too hot [s], end_doubt: deviation of its logarithm; misses: deviations of each reading,
# then of stringy and hottest where they were seen
PotFit = namedtuple("PotFit", ("at", "covariance", "rates", "pot", "run", "end", "end_doubt", "misses"))


def made(at: Figures, pot: Pot) -> tuple:
    """Rates and balance of the unknowns -> (Rates, Pot). pot: as it is estimated

    at: ln k2 at 25 degC; the logarithms of loss and heat against the estimated ones, E, and ln k1 / k2, each in
    deviations of what is remembered
    >>> rates, one = made((-8.0, 0.0, 0.0, 0.0, 0.0), Pot(200.0, 1e-3, 293.15, 293.15))
    >>> round(rates.grown / exp(-8.0), 6), one.rise, one.loss
    (1.0, 200.0, 0.001)
    """
    energy, grown = max(LEAST, min(MOST, ENERGY + SPREAD * at[3])), exp(at[0])
    rates = Rates(grown * UNCATALYSED * exp(FIRST_SPREAD * at[4]), grown, energy, energy, REFERENCE)
    return rates, Pot(pot.rise * exp(HEAT_SPREAD * at[2]), pot.loss * exp(LOSS_SPREAD * at[1]), pot.air, pot.start)


def fitted(pot: Pot, seen: Seen, middle: float, bounds: "list | tuple" = ()) -> PotFit:
    """The best fit of a cup, and how sure it is.
        least of sum(((y - f) / s)**2 + 2 ln s) + sum(u**2)        covariance (J^T J + 1)**-1

    pot: as it is estimated; middle: how much further than the mean its middle is from the air, where the thermometer
    is, of that rise [-]; bounds: of other pots, the two that are broken most count
    returns: PotFit; the covariance is widened where the misses are larger than their doubts
    """
    at = _start(pot, seen, middle)
    found = _settled(at, pot, seen, middle, ())
    broken = []
    for bound in bounds:
        off = log(_time_in(found.at, bound.pot) / bound.time)
        off = -off if bound.least else off
        if off > 0.01:
            broken.append((-off, len(broken), bound))
    if broken:
        worst = tuple([one[2] for one in sorted(broken)[:MOST_BROKEN]])
        found = _settled(found.at, pot, seen, middle, worst, LOOSE[-4:])
    return found


def time_and_doubt(found: PotFit, pot: Pot) -> "tuple[float, float]":
    """How long another pot lasts by the fit [s], and the deviation of its logarithm. pot: as it is estimated"""
    base = _time_in(found.at, pot)
    slopes = [log(_time_in(_moved(found.at, place), pot) / base) / _step(place) for place in range(5)]
    return base, sqrt(max(0.0, _spread(found.covariance, slopes)))


def doubt(found: PotFit, place: int) -> float:
    """Deviation of one of the unknowns."""
    return sqrt(found.covariance[place][place])


def _time_in(at: Figures, pot: Pot) -> float:
    rates, here = made(at, pot)
    return usable_time(rates, here, TOLERANCE)


def _step(place: int) -> float:
    return STEP if place else RATE_STEP


def _moved(at: tuple, place: int) -> tuple:
    """The unknowns with one of them a step on, toward where E may go."""
    return tuple([one + (_step(here) if here == place else 0.0) for here, one in enumerate(at)])


def _start(pot: Pot, seen: Seen, middle: float) -> tuple:
    """ln k2 on a grid around what the latest moment says, the rest as remembered."""
    latest = max([time for time, _ in seen.readings] + [seen.hottest or 0.0, (seen.stringy or 0.0) * 1.1])
    factor = rate_factor(ENERGY, pot.start, REFERENCE)
    guess = log(isothermal_time(USABLE, UNCATALYSED, 1.0) / max(latest, 60.0) / factor / 3)
    tried = []
    for offset in (-3.2, -2.8, -2.4, -2.0, -1.6, -1.2, -0.8, -0.4, 0.0, 0.4, 0.8):
        at = (to_step(guess + offset, GRID), 0.0, 0.0, 0.0, 0.0)
        cost = _told(at, pot, seen, middle, (), LOOSE[0])[1]
        tried.append((cost, at))
    return min(tried)[1]


def _settled(at: tuple, pot: Pot, seen: Seen, middle: float, bounds: tuple, turns: tuple = LOOSE) -> PotFit:
    """Gauss and Newton from a start; slopes are taken anew where it has moved, a step that makes it worse is cut."""
    loose, moved = 0.0, 9.0
    for turn in turns:
        if turn != loose:
            loose, gained = turn, 1.0
            told, cost, run, end = _told(at, pot, seen, middle, bounds, loose)
        elif gained < 0.05:
            continue  # it has settled at this one
        if moved > STILL:
            slopes, ends = _slopes(at, told, end, pot, seen, middle, bounds, loose)
        matrix, right = _normal(at, told, slopes)
        covariance = _inverse(matrix)
        move = [sum([one * other for one, other in zip(row, right)]) for row in covariance]
        moved = 9.0
        share, gained = min(1.0, MOST_MOVE / max([abs(one) for one in move] + [1e-9])), 0.0
        ways = [[part * share * one for one in move] for part in (1.0, 0.3, 0.1)]
        for way in ways + [[one, 0.0, 0.0, 0.0, 0.0] for one in RATE_TRIES]:
            tried = [to_step(one + further, GRID) for one, further in zip(at, way)]
            tried[3] = max(-MOST_SHIFT, min(MOST_SHIFT, tried[3]))
            better = _told(tried, pot, seen, middle, bounds, loose)
            if better[1] < cost:
                gained, moved = cost - better[1], max([abs(one) for one in way])
                at, (told, cost, run, end) = tuple(tried), better
                break
    misses = [(y - f) / s for y, f, s, _ in told]
    facts = len(seen.readings) + (seen.stringy is not None) + (seen.hottest is not None)
    wide = max(1.0, sum([one * one for one in misses]) / max(1, len(misses) - 2))
    covariance = [[one * wide for one in row] for row in covariance]
    rates, here = made(at, pot)
    return PotFit(at, covariance, rates, here, run, end, sqrt(max(0.0, _spread(covariance, ends))),
                  tuple(misses[:facts]))


def _slopes(at: tuple, told: list, end: float, pot: Pot, seen: Seen, middle: float, bounds: tuple,
            loose: float) -> tuple:
    """How each told figure, and the logarithm of the end, goes with each unknown."""
    columns, ends = [], []
    for place in range(5):
        other, _, _, its = _told(_moved(at, place), pot, seen, middle, bounds, loose)
        columns.append([(after[1] - before[1]) / _step(place) if before[3] else 0.0
                        for before, after in zip(told, other)])
        ends.append(log(its / end) / _step(place))
    return columns, ends


def _normal(at: tuple, told: list, columns: list) -> tuple:
    """The normal equations, with what is remembered of all but the rate."""
    matrix, right = [], []
    for place, one in enumerate(columns):
        row = [sum([a * b / (fact[2] * fact[2]) for a, b, fact in zip(one, other, told)]) for other in columns]
        row[place] += 1.0 if place else 1e-6
        matrix.append(row)
        right.append(sum([a * (fact[0] - fact[1]) / (fact[2] * fact[2]) for a, fact in zip(one, told)])
                     - (at[place] if place else 0.0))
    return matrix, right


def _inverse(matrix: list) -> list:
    """By elimination; it has ones on its diagonal at least, but for the rate, whose row the facts fill."""
    size = len(matrix)
    rows = [list(row) + [1.0 if here == place else 0.0 for here in range(size)] for place, row in enumerate(matrix)]
    for place in range(size):
        over = rows[place][place]
        rows[place] = [one / over for one in rows[place]]
        for other in range(size):
            if other != place:
                share = rows[other][place]
                rows[other] = [one - share * mine for one, mine in zip(rows[other], rows[place])]
    return [row[size:] for row in rows]


def _spread(covariance: list, slopes: list) -> float:
    return sum([a * b * covariance[i][j] for i, a in enumerate(slopes) for j, b in enumerate(slopes)])


def _told(at: "list | tuple", pot: Pot, seen: Seen, middle: float, bounds: tuple, loose: float) -> tuple:
    """What the unknowns say of each fact -> ([(seen, told, deviation, whether it counts)], cost, run, end [s])."""
    rates, here = made(at, pot)
    run = pot_run(rates, here, USABLE, TOO_HOT, whole=True, tolerance=TOLERANCE)
    end = run.reached or LONGEST
    found = []
    for time, temperature in seen.readings:
        above, slope = _above(run.points, max(0.0, time - LAG), here)
        rise, late = above * (1 + middle), slope * loose
        off = (OFF_MODEL * OFF_MODEL + middle * middle) * above * above  # nobody knows how near the middle the tip is
        late = late * late * (MINUTE * MINUTE + OFF_TIME * OFF_TIME * time * time)
        found.append((temperature, here.air + rise, sqrt(READING * READING + late + off), True))
    if seen.stringy is not None:
        time, slope = _cured(run.points, STRINGY)
        found.append(_moment(seen.stringy, time, STRINGY_SPREAD * slope, loose))
    if seen.hottest is not None:
        found.append(_moment(seen.hottest, max(run.peak_time, 1.0), 2 * OFF_TIME, loose))
    for bound, time, least in ((seen.good, end, True), (seen.gone, end, False)) + tuple(
            [(one.time, _time_in(at, one.pot), one.least) for one in bounds]):
        if bound is not None:
            off = log(bound / time)
            counts = off > 0 if least else off < 0
            found.append((log(bound), log(time) if counts else log(bound), BOUND, counts))
    cost = sum([one * one for one in at[1:]])
    for y, f, s, _ in found:
        cost += (y - f) * (y - f) / (s * s) + 2 * log(s)
    return found, cost, run, end


def _moment(seen: float, told: float, further: float, loose: float) -> tuple:
    """A moment that was seen, by the logarithm of its time. further: what else is in doubt [-]"""
    late = MINUTE / seen
    return log(seen), log(told), loose * sqrt(MOMENT * MOMENT + late * late + further * further), True


def _above(points: list, time: float, here: Pot) -> tuple:
    """How far a pot is above its air at a time [K], and how fast that grows [K/s]; behind the last point it cools."""
    before = points[0]
    for point in points[1:]:
        if time <= point[0]:
            slope = (point[1] - before[1]) / (point[0] - before[0])
            return before[1] + slope * (time - before[0]) - here.air, slope
        before = point
    left = (before[1] - here.air) * exp(-here.loss * (time - before[0]))
    return left, -here.loss * left


def _cured(points: list, wanted: float) -> tuple:
    """When a pot has cured so far [s], and how its logarithm goes with the conversion [-]; LONGEST where never."""
    before = points[0]
    for point in points[1:]:
        if point[2] >= wanted:
            slope = (point[0] - before[0]) / max(1e-9, point[2] - before[2])
            time = before[0] + slope * (wanted - before[2])
            return time, slope / time
        before = point
    return LONGEST, 0.0

"""Weighing on one scale: the running readings, their rounding, and how far the ratio can be trusted."""
from math import sqrt

from ..catalogue.measuring import ALIKE
from .rounding import DOWN, UP, to_step
from .types import Figures

COVERAGE = 2  # k: about 95 % of cases, JCGM 100:2008, 6.2.1


def running(masses: tuple, step: float, actual: tuple = (), rezeroed: bool = False) -> tuple:
    """What is in the cup after each part by the scale: each part to a step of it, in ratio with those told before it.

    masses: planned parts [kg], in the order of pouring; step: readability d [kg], above 0
    actual: readings so far [kg], cumulated; the ones to come follow them just as they follow those that are told
    rezeroed: each part is read from zero, and is a whole number of steps by itself
    returns: cumulated [kg], as many as parts; of two steps about equally near the one nearer to the plan
    >>> running((0.1804, 0.0601), 0.001), running((0.163462, 0.049038), 0.001)  # 163 g take 48.9 g
    ((0.18, 0.24), (0.163, 0.212))
    """
    told, planned = list(actual), sum(masses[:len(actual)])
    for place in range(len(told), len(masses)):
        planned += masses[place]
        if told and told[-1] > 0:
            before, target = told[-1], told[-1] + corrected(masses, told)[place]
        else:  # nothing yet that shows on this scale
            before, target = 0.0, planned
        start = before if rezeroed else 0.0
        told.append(start + _near(target - start, planned - start, step))
    return tuple(told)


def _near(target: float, planned: float, step: float) -> float:
    low, high = to_step(target, step, DOWN), to_step(target, step, UP)
    nearer = (high - target) - (target - low)
    if abs(planned - target) < 1e-6 * step or abs(nearer) > ALIKE * step * (1 + 1e-6):
        return high if nearer < 1e-6 * step else low
    return high if planned > target else low


def corrected(masses: "list | tuple", actual: "list | tuple") -> tuple:
    """The parts that stay in ratio with what was really poured before them:
        m_j = M p_j,  M = (poured so far) / (its share of the ratio)

    masses: planned parts [kg]; actual: readings of the scale so far [kg], cumulated, fewer than or as many as the parts
    returns: masses of all parts [kg]: those poured as they are, the others following them
    >>> [round(mass, 4) for mass in corrected((0.18, 0.06), (0.19,))]
    [0.19, 0.0633]
    """
    if not actual:
        return tuple(masses)
    poured = tuple([after - before for before, after in zip((0.0,) + tuple(actual), actual)])
    scale = actual[-1] / sum(masses[:len(actual)])
    return poured + tuple([mass * scale for mass in masses[len(actual):]])


def ratio_uncertainty(part: float, other: float, step: float, shared: bool = True, rezeroed: bool = False) -> float:
    """Relative standard uncertainty of a ratio of two parts weighed on one scale:
        (u_R / R)**2 = 2 u**2 (1/a**2 + 1/b**2 + 1/(a b)),  u = d / sqrt(12)

    part, other: a, b [kg], above 0; step: readability d [kg]
    shared: the two parts share the reading between them (they are poured one right after the other)
    rezeroed: the scale was set to zero before each part: two independent roundings for each and none shared
    returns: u_R / R [-], standard (k = 1); JCGM 100:2008, 4.3.7, F.2.2.1, 5.1.2 and 5.2.2
    >>> round(ratio_uncertainty(0.1, 0.03, 0.001), 8)
    0.01604392
    """
    variance = 2 * (1 / part**2 + 1 / other**2)
    if shared and not rezeroed:
        variance += 2 / (part * other)
    return step / sqrt(12) * sqrt(variance)


def doubted_step(step: float, own: float) -> float:
    """A step so wide that it holds a scale's own error too, for the doubt of what is read on it:
        d' = sqrt(d**2 + 4 E**2)

    step: d; own: E, linearity and drift of zero, at most so much either way [kg]
    returns: d' [kg], of which d' / sqrt(12) is the root of d**2 / 12 + E**2 / 3; each reading taken as independent of
        the others, to the safe side; JCGM 100:2008, 4.3.7 and 5.1.2
    >>> round(doubted_step(0.001, 0.0005), 6), doubted_step(0.001, 0.0)
    (0.001414, 0.001)
    """
    return sqrt(step * step + 4 * own * own)


def smallest_batch(parts: tuple, step: float, tolerance: float, rezeroed: bool = False) -> float:
    """The least batch whose ratio the scale holds within the tolerance, at k = 2:
        the worst pair of parts decides; u_R / R goes with 1 / batch

    parts: shares or parts by weight [-], at least two; step: d [kg]; tolerance: of the ratio [-], above 0
    returns: batch [kg]; from the equation of `ratio_uncertainty`
    >>> round(smallest_batch((100, 30), 0.001, 0.05) * 1000, 3)
    83.428
    """
    whole = sum(parts)
    return COVERAGE / tolerance * worst_uncertainty([part / whole for part in parts], step, rezeroed)


def worst_uncertainty(masses: "list | tuple", step: float, rezeroed: bool = False) -> float:
    """The largest `ratio_uncertainty` of any part against the first, in the order of pouring.

    masses [kg], at least two; step [kg]
    returns: u_R / R [-]
    """
    worst = 0.0
    for place in range(1, len(masses)):
        found = ratio_uncertainty(masses[0], masses[place], step, place == 1, rezeroed)
        worst = max(worst, found)
    return worst


def ratio_error(poured: Figures, parts: Figures) -> float:
    """How far a pour is off its ratio: the largest relative error of any part against the first.

    poured: amounts [any unit], above 0; parts: the label's, in the same basis
    returns: signed error [-] of the part that is furthest off; above 0: too much of it (hardener, say)
    >>> round(ratio_error((0.18, 0.063), (3, 1)), 3)
    0.05
    """
    return furthest_off(poured, parts)[1]


def furthest_off(poured: Figures, parts: Figures) -> tuple:
    """Which part is furthest off its ratio to the first, and by how much: (its place, signed error [-]).

    poured: amounts [any unit], above 0; parts: the label's, in the same basis
    >>> place, error = furthest_off((200, 70, 5), (100, 30, 5))
    >>> place, round(error, 3)
    (2, -0.5)
    """
    found, worst = 1, 0.0
    for place in range(1, len(parts)):
        error = (poured[place] / poured[0]) / (parts[place] / parts[0]) - 1
        if abs(error) > abs(worst) + 1e-12:  # equal errors: the earlier part, on every runtime
            found, worst = place, error
    return found, worst

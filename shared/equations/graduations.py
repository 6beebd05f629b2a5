"""Graduations: how far marks on syringes and cups hold a ratio, and the smallest batch they measure well."""
from math import sqrt

from .pumping import FURTHEST, SLACK, Strokes, best_strokes, following, smallest_strokes
from .rounding import DOWN, ceiling, to_step
from .types import Function
from .weighing import COVERAGE

FINEST = 400  # graduations of the smallest part beyond which rounding to one of them is no longer looked at
MOST_MARKS = 2000  # of one cup that are tried one by one; with so many of them nearly any amount is held


def for_each(numbers: tuple, count: int) -> tuple:
    """One number for all parts, or one for each.

    >>> for_each((60,), 2), for_each((60, 20), 2)
    ((60, 60), (60, 20))
    """
    return tuple(numbers) * count if len(numbers) == 1 else tuple(numbers)


def fills(volumes: "list | tuple", holds: tuple) -> tuple:
    """How often each syringe is filled.

    >>> fills((0.00018, 0.00006), (0.00006, 0.00002))
    (3, 3)
    """
    return tuple([max(1, ceiling(volume / each)) for volume, each in zip(volumes, holds)])


def on_marks(wanted: "list | tuple", steps: tuple, tolerance: float) -> Strokes:
    """The amounts at or above the wanted ones that end on marks: the least within tolerance, else the nearest.

    wanted: volume of each part [m3]; steps: from mark to mark, for each part [m3]; tolerance [-]
    returns: pumping.Strokes, its counts in graduations. Where every part has more than FINEST of them the search ends
    with the first: a tolerance below that rounding would only cost time.
    >>> on_marks((31e-6, 10.3e-6), (1e-6, 1e-6), 0.02).counts
    (33, 11)
    """
    least = min([volume / step for volume, step in zip(wanted[1:], steps[1:])])
    return best_strokes(wanted, steps, max(tolerance, 1 / least) if least > FINEST else tolerance)


def in_one_cup(wanted: tuple, step: float, holds: float, tolerance: float, limit: float) -> "tuple | None":
    """Marks that one cup has, in how many equal pours: (pours, pumping.Strokes), or None where none holds the ratio.

    wanted: volume of each part in all [m3]; step: from mark to mark [m3]; holds: the highest mark [m3]
    tolerance: of the ratio, aimed at [-]; limit: no marks are told beyond it [-]
    The pours together are never less than wanted: the fewest within tolerance; else the nearest to the ratio; and only
    where neither goes, much more than wanted.
    >>> in_one_cup((675e-6, 225e-6), 10e-6, 100e-6, 0.02, 0.05)[0]  # 90 mL of 100 leave no mark for the third of it
    12
    >>> in_one_cup((33e-6, 7e-6), 25e-6, 100e-6, 0.02, 0.05) is None
    True
    """
    whole, steps = sum(wanted), (step,) * len(wanted)
    top = to_step(holds, step, DOWN)
    if top < step:
        return None
    least = max(1, ceiling(whole / top))
    for pours in (least, least + 1):
        found = on_marks([volume / pours for volume in wanted], steps, tolerance)
        fine = min(found.counts) > FINEST  # one mark more or less is not looked at there
        if sum(found.volumes) <= top * (1 + SLACK) and (fine or abs(found.error) <= tolerance + SLACK):
            return pours, found
    best: "tuple | None" = None
    best_key: tuple = ()
    for count in range(1, min(ceiling(top / step), MOST_MARKS) + 1):
        found = following(count, wanted, steps)
        volume, error = sum(found.volumes), abs(found.error)
        if volume > top * (1 + SLACK) or error > limit + SLACK:
            continue
        pours = ceiling(whole / volume)
        held = error <= tolerance + SLACK
        if pours * volume <= FURTHEST * whole * (1 + SLACK):
            key = (0, pours, pours * volume) if held else (1, error, pours)
        else:
            key = (2 if held else 3, pours * volume, pours)
        if best is None or _before(key, best_key):
            best, best_key = (pours, found), key
    return best


def _before(key: tuple, other: tuple) -> bool:
    """Whether a key comes first; figures that agree to their last bits count as equal on every runtime."""
    for own, theirs in zip(key, other):
        if abs(own - theirs) > SLACK * max(abs(own), abs(theirs)):
            return own < theirs
    return False


def syringe_spread(volumes: "list | tuple", steps: tuple, times: tuple) -> float:
    """How far the ratio may be off by reading, k = 2, each fill read on its own to one graduation:
        (u_R / R)**2 = (d1 / sqrt(12))**2 n1 / a**2 + (d2 / sqrt(12))**2 n2 / b**2

    volumes [m3]; steps: d, from mark to mark [m3]; times: n, fills of each
    returns: of the ratio [-], the worst part against the first; JCGM 100:2008, 4.3.7, F.2.2.1 and 5.1.2
    >>> round(syringe_spread((30e-6, 10e-6), (1e-6, 1e-6), (1, 1)), 5)
    0.06086
    """
    first = steps[0] ** 2 / 12 * times[0] / volumes[0] ** 2
    return COVERAGE * max([sqrt(first + steps[j] ** 2 / 12 * times[j] / volumes[j] ** 2)
                           for j in range(1, len(volumes))])


def cup_spread(volumes: "list | tuple", step: float) -> float:
    """How far the ratio may be off by reading, k = 2, the parts poured one on the other in one graduated cup:
    the bottom is exact, each mark is read once and shared by the parts above and below it.
        second part: (u_R / R)**2 = u**2 ((1/a + 1/b)**2 + 1/b**2);  later: u**2 (1/a**2 + 2/b**2),  u = d / sqrt(12)

    volumes [m3]; step: d [m3]
    returns: of the ratio [-], the worst part; JCGM 100:2008, 4.3.7, F.2.2.1 and 5.2.2
    >>> round(cup_spread((30e-6, 10e-6), 1e-6), 5)
    0.09623
    """
    first, worst = volumes[0], 0.0
    for place in range(1, len(volumes)):
        own = volumes[place]
        if place == 1:
            variance = (1 / first + 1 / own) ** 2 + 1 / own**2
        else:
            variance = 1 / first**2 + 2 / own**2
        worst = max(worst, variance)
    return COVERAGE * step / sqrt(12) * sqrt(worst)


def smallest_read(parts: tuple, spread: Function, tolerance: float, start: float) -> float:
    """The least batch whose reading spread is within tolerance.

    parts: by volume [-]; spread: function of the volumes -> [-], falling about as 1 / batch
    tolerance [-]; start: a first guess [m3]
    returns: batch [m3], never too small: the search ends on the side that holds
    >>> at = smallest_read((3, 1), lambda v: cup_spread(v, 1e-6), 0.02, 100e-6)
    >>> round(at * 1e6, 2), round(cup_spread((0.75 * at, 0.25 * at), 1e-6), 6)
    (192.45, 0.02)
    """
    whole, batch = sum(parts), start
    for _ in range(12):
        over = spread([part / whole * batch for part in parts]) / tolerance
        if abs(over - 1) < 1e-9:
            break
        batch *= over
    while spread([part / whole * batch for part in parts]) > tolerance * (1 + 1e-6):
        batch *= 1.02
    return batch


def smallest_on_marks(parts: tuple, steps: tuple, tolerance: float, at_least: float) -> "Strokes | None":
    """The least batch that ends on marks within tolerance and is at least so large, or None.

    parts: by volume [-]; steps [m3]; at_least [m3]
    returns: pumping.Strokes
    >>> smallest_on_marks((3, 1), (1e-6, 1e-6), 0.02, 50e-6).counts
    (39, 13)
    """
    whole = sum(parts)
    wanted = [part / whole * at_least for part in parts]
    if at_least <= 0:
        return smallest_strokes(parts, steps, tolerance, FINEST)
    found = on_marks(wanted, steps, tolerance)
    return found if abs(found.error) <= tolerance + 1e-9 else smallest_strokes(parts, steps, tolerance, FINEST)

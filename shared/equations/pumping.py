"""Pumping: whole strokes nearest to the ratio, what whole strokes cost."""
from collections import namedtuple

from ..catalogue.measuring import FURTHEST
from .rounding import ceiling
from .weighing import ratio_error

# counts: strokes of each pump; volumes [m3]; error: of the ratio, signed [-]
Strokes = namedtuple("Strokes", ("counts", "volumes", "error"))

MOST_FURTHER = 60  # strokes; with that many a whole one weighs little, and a phone answers at once
SLACK = 1e-9  # computed volumes differ in their last bits between runtimes


def best_strokes(wanted: "list | tuple", strokes: tuple, tolerance: float) -> Strokes:
    """Whole strokes at or above the wanted amount: the fewest that are within tolerance, else the nearest to the ratio.

    wanted: volume of each part [m3], in ratio; strokes: volume of one stroke of each pump [m3]; tolerance [-]
    Looks at batches up to FURTHEST times the wanted one, at least 3 and at most MOST_FURTHER strokes further.
    >>> best_strokes((30e-6, 10e-6), (10e-6, 10e-6), 0.02).counts
    (3, 1)
    >>> best_strokes((100e-6, 34e-6), (10e-6, 10e-6), 0.02).counts
    (12, 4)
    >>> best_strokes((1e-3, 2.8e-3), (1e-7, 2e-3), 0.02).counts  # too coarse beside the first
    (10000, 2)
    """
    whole = sum(wanted)
    first = max(1, ceiling(wanted[0] / strokes[0]))
    last = min(max(first + 3, ceiling(FURTHEST * wanted[0] / strokes[0])), first + MOST_FURTHER)
    best = None
    for count in range(max(1, first - 1), last + 1):
        found = following(count, wanted, strokes)
        if sum(found.volumes) < whole * (1 - SLACK):
            continue
        if abs(found.error) <= tolerance + SLACK:
            return found
        if best is None or abs(found.error) < abs(best.error) - SLACK:
            best = found
    if best is None:  # fine strokes of the first beside coarse ones of another: each rounded down, all are too few
        counts = tuple([ceiling(volume / stroke) for volume, stroke in zip(wanted, strokes)])
        volumes = tuple([count * stroke for count, stroke in zip(counts, strokes)])
        best = Strokes(counts, volumes, ratio_error(volumes, wanted))
    return best


def following(count: int, wanted: "list | tuple", strokes: tuple) -> Strokes:
    """The strokes of the other pumps nearest to the ratio with `count` strokes of the first."""
    counts, volumes, worst = [count], [count * strokes[0]], 0.0
    for place in range(1, len(strokes)):
        exact = volumes[0] * wanted[place] / wanted[0] / strokes[place]
        other = max(1, int(exact + 0.5 + SLACK))
        counts.append(other)
        volumes.append(other * strokes[place])
        error = other / exact - 1
        if abs(error) > abs(worst):
            worst = error
    return Strokes(tuple(counts), tuple(volumes), worst)


def smallest_strokes(parts: tuple, strokes: tuple, tolerance: float, most: int = 60) -> "Strokes | None":
    """The fewest strokes within tolerance, or None when no batch up to `most` strokes of the first pump is.

    parts: by volume [-]; strokes: volume of one stroke of each pump [m3]; tolerance [-]
    >>> smallest_strokes((3, 1), (10e-6, 10e-6), 0.02).counts
    (3, 1)
    """
    for count in range(1, most + 1):
        found = following(count, parts, strokes)
        if abs(found.error) <= tolerance + SLACK:
            return found
    return None

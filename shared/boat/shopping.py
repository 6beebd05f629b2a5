"""Shopping: from what a boat takes to what is bought, each line with how it was reckoned."""
from ..catalogue.losses import BY_KEY
from ..forms.types import Found
from ..plan import batch_counts
from ..words.numbers import ceiling

TRIED = 5000  # ways to add up the two largest packs


def packs(need: float, sizes: tuple, prices: tuple = ()) -> tuple:
    """Packs that cover a need with the least left over, then the fewest of them; with prices the cheapest ones.

    need, sizes: same unit; at most three sizes, each above 0. Of a large need the bulk goes into the largest packs, or
    those of the best price, and the best is looked for among so many ways to cover the rest. prices: of each size
    returns: (how many of each size, in the order given; what they hold)
    >>> packs(6.2, (1.0, 5.0)), packs(6.2, (1.0, 5.0), (30.0, 70.0))
    (((2, 1), 7.0), ((2, 1), 7.0))
    >>> packs(3.2, (1.0, 5.0), (30.0, 70.0))
    ((0, 1), 5.0)
    """
    order = sorted(range(len(sizes)), key=lambda place: (
        prices[place] / sizes[place] if prices else -sizes[place], place))
    big = [sizes[place] for place in order]
    largest = big[0]
    # the rest of a large need, in the largest packs: their number times that of the next is what is tried
    kept = max(2, int((TRIED * (big[1] if len(big) > 1 else largest) / largest) ** 0.5)) - 1
    bulk = max(0, int(need / largest) - kept)
    need -= bulk * largest
    while len(big) < 3:
        big.insert(0, None)
    best = ()  # type: tuple
    for first in range(_most(need, big[0]) + 1):
        for second in range(_most(need, big[1]) + 1):
            rest = need - first * (big[0] or 0) - second * (big[1] or 0)
            third = ceiling(rest / big[2]) if rest > 0 else 0
            held = first * (big[0] or 0) + second * (big[1] or 0) + third * big[2]
            if held < need - 1e-9 * need:
                continue
            cost = (int(held * 1e6 + 0.5), first + second + third)  # type: tuple
            if prices:
                own = [prices[place] for place in order]
                paid = sum([count * price for count, price in zip((first, second, third)[3 - len(own):], own)])
                cost = (int(paid * 1e6 + 0.5),) + cost
            if not best or cost < best[0]:
                best = (cost, (first, second, third), held)
    counts = [0] * len(sizes)
    for place, count in zip(order, best[1][3 - len(sizes):]):
        counts[place] = count
    counts[order[0]] += bulk
    return tuple(counts), best[2] + bulk * largest


def _most(need: float, size: "float | None") -> int:
    return ceiling(need / size) if size else 0


def batches(mass: float, batch: float, kept: float) -> int:
    """Batches that leave a mass in hand when each leaves something behind.

    mass [kg]; batch: mixed at a time [kg]; kept: left behind in each [kg], less than the batch
    >>> batches(1.0, 0.3, 0.026)
    4
    """
    return ceiling(mass / (batch - kept)) if mass > 0 else 0


def consumables(batch: Found, people: int, radii: int, backed: float, seams: float, taped: float) -> list[tuple]:
    """What else is bought: (key, how many), keys as `boat_lines.BOUGHT` has them.

    batch: counts as `hull.mixed` gives them; people; radii: different spreaders; backed: seams with a gap [m]
    seams: all corners [m]; taped [m2]
    """
    putty_batches, liquid_batches, both = batch.putty_batches, batch.liquid_batches, batch.mixes
    return [
        ("gloves", batch_counts.gloves(people, batch.batches)), ("bags", putty_batches), ("cups", both),
        ("sticks", both), ("tray", liquid_batches), ("brushes", liquid_batches), ("blanks", radii),
        ("backing", ceiling(backed * (1 + BY_KEY["backing"].value))),
        ("ties", ceiling(seams / BY_KEY["tie_spacing"].value)),
        ("abrasive", ceiling(taped / BY_KEY["abrasive"].value) if taped else 0), ("cartridges", people)]

"""Cups: how high a volume stands in a straight or tapered cup, and what a badly read mark costs in ratio."""
from math import exp, log, pi, sqrt

NEARLY_STRAIGHT = 1e-5  # taper below which the closed form of the height loses more digits than the series


def frustum_volume(height: float, bottom: float, taper: float) -> float:
    """Volume below a level in a round cup:
        V = pi h / 3 (r0**2 + r0 r + r**2),  r = r0 + t h

    height: h [m], from the bottom, 0 or more; bottom: r0 [m], inside radius, above 0
    taper: t [-], growth of the radius with height; below 0 in a cup that narrows upwards; r must stay above 0
    returns: V [m3]; Machinery's Handbook, Volumes of Solids, frustum of a cone (from memory)
    >>> round(frustum_volume(0.1, 0.03, 0.1) * 1e6, 4)
    387.4631
    """
    radius = bottom + taper * height
    return pi * height / 3 * (bottom * bottom + bottom * radius + radius * radius)


def fill_height(volume: float, bottom: float, taper: float) -> float:
    """Height at which a volume stands, the inverse of `frustum_volume`:
        h = ((3 V t / pi + r0**3)**(1/3) - r0) / t;  t -> 0: h0 (1 - s + 5/3 s**2), h0 = V / (pi r0**2), s = h0 t / r0

    volume: V [m3], 0 or more, no more than the cone above the cup could hold where t < 0
    bottom: r0 [m], above 0; taper: t [-]
    returns: h [m]; one Newton step on V(h) gives back the digits that the cube root and the series lose
    >>> round(fill_height(100e-6, 0.03, 0.1) * 1000, 5), round(fill_height(200e-6, 0.04, -0.08) * 1000, 4)
    (31.86364, 43.4562)
    """
    straight = volume / (pi * bottom * bottom)
    slope = straight * taper / bottom
    if abs(slope) < NEARLY_STRAIGHT:
        height = straight * (1 - slope + 5 * slope * slope / 3)
    else:
        cube = 3 * volume * taper / pi + bottom**3
        if cube < 0:
            raise ValueError("more than the cone above this cup holds")
        height = (cube ** (1 / 3) - bottom) / taper
    area = level_area(height, bottom, taper)
    return height - (frustum_volume(height, bottom, taper) - volume) / area if area > 0 else height


def level_area(height: float, bottom: float, taper: float) -> float:
    """Free surface at a level, A = pi (r0 + t h)**2 [m2]; plane geometry. A mark that is dh off is off by A dh.

    >>> round(level_area(0.1, 0.03, 0.1) * 1e4, 4)  # cm2
    50.2655
    """
    radius = bottom + taper * height
    return pi * radius * radius


def taper_of(cup: dict) -> float:
    """Growth of the radius with height [-]. cup: values of records.CUP

    >>> round(taper_of({"bottom": 0.06, "top": 0.08, "height": 0.1}), 6)
    0.1
    """
    return (cup["top"] - cup["bottom"]) / 2 / cup["height"]


def full_volume(cup: dict) -> float:
    """What a cup holds to the rim [m3]. cup: values of records.CUP

    >>> round(full_volume({"bottom": 0.06, "top": 0.08, "height": 0.1}) * 1e6, 4)
    387.4631
    """
    return frustum_volume(cup["height"], cup["bottom"] / 2, taper_of(cup))


def stick_marks(volumes: "list | tuple", cup: dict) -> tuple:
    """Height of each mark from the bottom [m], the parts poured one on the other.

    volumes: of each part [m3], in the order of pouring; cup: values of records.CUP
    >>> [round(h * 1000, 1) for h in stick_marks((75e-6, 25e-6), {"bottom": 0.06, "top": 0.08, "height": 0.1})]
    [24.5, 31.9]
    """
    bottom, taper, total, marks = cup["bottom"] / 2, taper_of(cup), 0.0, []
    for volume in volumes:
        total += volume
        marks.append(fill_height(total, bottom, taper))
    return tuple(marks)


def mark_costs(volumes: "list | tuple", areas: "list | tuple", error: float) -> tuple:
    """What an error of each mark alone does to the ratio of each later part to the first:
        b / a with a = V(h1), b = V(hj) - V(hi): d(b/a) / (b/a) = Aj e / b - Ai e / b - (A1 e / a where it is mark 1)

    volumes: of each part [m3]; areas: free surface at each mark [m2]; error: e [m], the mark read too high
    returns: one row for each part after the first, in it the relative change of its ratio for each mark, signed [-]
    >>> [[round(c, 4) for c in row] for row in mark_costs((75e-6, 25e-6), (0.003, 0.003), 0.001)]
    [[-0.16, 0.12]]
    """
    rows = []
    for part in range(1, len(volumes)):
        row = [0.0] * len(volumes)
        row[part] += areas[part] * error / volumes[part]
        row[part - 1] -= areas[part - 1] * error / volumes[part]
        row[0] -= areas[0] * error / volumes[0]
        rows.append(tuple(row))
    return tuple(rows)


def stick_spread(volumes: "list | tuple", cup: dict, error: float) -> float:
    """How far the ratio may be off with every mark off by its own error, independent of the others:
        root of the sum of squares of `mark_costs`, the worst part

    volumes [m3]; cup: values of records.CUP; error [m], of each mark: the result is at the same coverage as the error
    returns: of the ratio [-]; JCGM 100:2008, 5.1.2
    >>> round(stick_spread((75e-6, 25e-6), {"bottom": 0.06, "top": 0.06, "height": 0.1}, 0.001), 4)
    0.1885
    """
    bottom, taper = cup["bottom"] / 2, taper_of(cup)
    areas = [level_area(mark, bottom, taper) for mark in stick_marks(volumes, cup)]
    return max([sqrt(sum([cost * cost for cost in row])) for row in mark_costs(volumes, areas, error)])


def stick_worst(volumes: tuple, cup: dict, error: float) -> float:
    """How far the ratio is off at worst, every mark off by its own error and all of them the bad way:
        sum of the sizes of `mark_costs`, the worst part

    volumes, cup, error: as for `stick_spread`, which is what is usual; returns: of the ratio [-], to the first order
    >>> round(stick_worst((75e-6, 25e-6), {"bottom": 0.06, "top": 0.06, "height": 0.1}, 0.001), 4)
    0.2639
    """
    bottom, taper = cup["bottom"] / 2, taper_of(cup)
    areas = [level_area(mark, bottom, taper) for mark in stick_marks(volumes, cup)]
    return max([sum([abs(cost) for cost in row]) for row in mark_costs(volumes, areas, error)])


def smallest_stick_batch(parts: tuple, cup: dict, error: float, tolerance: float) -> "float | None":
    """The least batch that a stick measures within the tolerance in this cup, or None when not even a full cup is.

    parts: by volume [-]; cup: values of records.CUP; error: of each mark [m]; tolerance: of the ratio [-], above 0
    returns: batch [m3], on the side that holds; the logarithm of the spread is nearly a straight line in that of the
    batch, so that a secant through two of them finds it in a few steps
    >>> cup = {"bottom": 0.02, "top": 0.02, "height": 0.2}
    >>> round(smallest_stick_batch((1, 1), cup, 0.001, 0.05) * 1e6, 1)
    28.1
    """
    whole, full = sum(parts), full_volume(cup)

    def excess(batch: float) -> float:
        return log(stick_spread([part / whole * batch for part in parts], cup, error) / tolerance)

    last, last_excess = full, excess(full)
    if last_excess > 0:
        return None
    batch = full * exp(last_excess)
    for _ in range(8):
        found = excess(batch)
        if abs(found) < 1e-7 or found == last_excess:
            break
        step = found * log(batch / last) / (found - last_excess)
        last, last_excess, batch = batch, found, min(full, batch * exp(-step))
    while excess(batch) > 1e-9:
        batch = min(full, batch * (1 + 1e-6) if excess(batch) < 1e-6 else batch * 1.01)
    return batch


def widest_cup(volumes: tuple, error: float, tolerance: float) -> float:
    """The widest straight cup in which a stick still holds the ratio: `stick_spread` solved for the diameter.

    volumes: of each part [m3]; error: of each mark [m]; tolerance [-]
    returns: inside diameter [m]
    >>> round(widest_cup((75e-6, 25e-6), 0.001, 0.1885) * 1000, 1)
    60.0
    """
    ones = mark_costs(volumes, [1.0] * len(volumes), error)
    worst = max([sqrt(sum([cost * cost for cost in row])) for row in ones])
    return 2 * sqrt(tolerance / worst / pi)

"""Compare tools: which of the tools here measures this batch best, with figure and smallest batch in ratio of each."""
from collections import namedtuple
from math import sqrt

from ..catalogue.measuring import MARK_ERROR, STROKE_DEVIATION
from ..equations.cups import smallest_stick_batch, stick_spread
from ..equations.graduations import cup_spread, fills, for_each, syringe_spread
from ..equations.pumping import smallest_strokes
from ..equations.rounding import ceiling
from ..equations.weighing import COVERAGE, ratio_error, running, smallest_batch, worst_uncertainty
from ..forms.types import Values
from ..mix import ratio, ratio_doubt
from ..mix.ratio_error import limit, tolerance
from . import by_marks, by_pumps
from .by_scale import is_rezeroed
from .by_stick import pours

ORDER = ("scale", "syringes", "graduated", "stick", "pumps")  # where two agree

# way: of ORDER; error: rounding and reading together, k = 2 [-]; least: smallest in ratio, or None
# unit: of least
Standing = namedtuple("Standing", ("way", "error", "least", "unit"))
# standings: the most accurate first; wanted: the ratio error to aim for [-]; limit: the one beyond which no tool holds
# the ratio [-]; none_holds: whether even the best is beyond it; unfit: ways that cannot measure this batch
CompareResult = namedtuple("CompareResult", ("standings", "wanted", "limit", "none_holds", "unfit"))


def stroke_spread(counts: tuple[int, ...], deviation: float = STROKE_DEVIATION) -> float:
    """How far uneven strokes put the ratio off, k = 2: u_R / R = s sqrt(1/n1 + 1/n2), the worst part.

    counts: strokes of each pump; deviation: s [-], of one stroke
    returns: of the ratio [-]; JCGM 100:2008, 5.1.2
    >>> round(stroke_spread((3, 1), 0.03), 5)
    0.06928
    """
    return COVERAGE * deviation * max([sqrt(1 / counts[0] + 1 / count) for count in counts[1:]])


def reckon(values: Values) -> CompareResult:
    """Every tool that can measure this batch, the most accurate first, and whether one is good enough."""
    batch, found, most = ratio.mix(values), standings(values), limit(values)
    ways = [one.way for one in found]
    unfit = [way for way in ("syringes", "pumps") if way not in ways]
    if batch.masses and "scale" not in ways:
        unfit.append("scale")
    if batch.volumes and "graduated" not in ways:
        unfit.append("graduated")
    return CompareResult(tuple(found), tolerance(values), most, found[0].error > most + 1e-9, tuple(unfit))


def standings(values: Values) -> list[Standing]:
    """Every tool that can measure this batch, the most accurate first."""
    batch = ratio.mix(values)
    found = []
    if batch.masses:
        found.append(_scale(values, batch))
    if batch.volumes:
        for standing in (_syringes(values, batch), _graduated(values, batch), _stick(values, batch),
                         _pumps(values, batch)):
            if standing is not None:
                found.append(standing)
    found = [one for one in [_with_doubt(one, values["system"]) for one in found] if one]
    # errors that agree to a millionth count as equal on every runtime; the order decides then
    return sorted(found, key=lambda one: (ceiling(one.error * 1e6), ORDER.index(one.way)))


def _with_doubt(one: Standing, system: Values) -> "Standing | None":
    """The same with the doubt of the ratio that it measures; None where that is too much for any reading."""
    found = ratio_doubt.doubt(system, ratio_doubt.basis_of(one.way))
    if found and found.stops:
        return None
    return Standing(one.way, ratio_doubt.combined(one.error, found), one.least, one.unit)


def _scale(values: Values, batch: ratio.Mix) -> Standing:
    step, rezeroed = values["scale"]["step"], is_rezeroed(values)
    readings = running(batch.masses, step, (), rezeroed)
    rounded = [after - before for before, after in zip((0.0,) + readings, readings)]
    rounding = abs(ratio_error(rounded, batch.masses)) if min(rounded) > 0 else 1.0
    error = rounding + COVERAGE * worst_uncertainty(batch.masses, ratio_doubt.doubted(values["scale"]), rezeroed)
    least = smallest_batch(batch.masses, ratio_doubt.step_of(values["scale"]), tolerance(values), rezeroed)
    return Standing("scale", error, least, "kg")


def _pumps(values: Values, batch: ratio.Mix) -> "Standing | None":
    found = ratio.basis(values["system"])
    pumps, count = values["pumps"], len(batch.volumes)
    if len(pumps["ten_strokes"] or pumps["strokes"]) != count or (pumps["ten_strokes"] and not found.densities):
        return None
    strokes = ratio.strokes_volumes(pumps, found.densities)
    best = by_pumps.told_strokes(values)
    least = smallest_strokes(found.volume_parts, strokes, tolerance(values))
    return Standing("pumps", abs(best.error) + stroke_spread(best.counts), sum(least.volumes) if least else None, "m3")


def _syringes(values: Values, batch: ratio.Mix) -> "Standing | None":
    count = len(batch.volumes)
    if len(values["syringes"]["holds"]) not in (1, count):
        return None
    holds, steps = for_each(values["syringes"]["holds"], count), for_each(values["syringes"]["steps"], count)
    best = by_marks.told_draws(values)
    error = abs(best.error) + syringe_spread(best.volumes, steps, fills(best.volumes, holds))
    return Standing("syringes", error, by_marks.smallest_drawn(values), "m3")


def _graduated(values: Values, batch: ratio.Mix) -> "Standing | None":
    plan = by_marks.cup_plan(values)
    if plan is None:
        return None
    best = plan[1]
    error = abs(best.error) + cup_spread(best.volumes, values["graduated"]["step"])
    return Standing("graduated", error, by_marks.smallest_in_cup(values), "m3")


def _stick(values: Values, batch: ratio.Mix) -> Standing:
    cup = values["cup"]
    times = pours(batch.volumes, cup)
    spread = stick_spread([volume / times for volume in batch.volumes], cup, MARK_ERROR)
    return Standing("stick", spread, smallest_stick_batch(batch.volumes, cup, MARK_ERROR, tolerance(values)), "m3")

"""Bench: which of the tools here measures this batch best, with the figure and the smallest honest batch of each."""
from collections import namedtuple
from math import sqrt

from ..catalogue.measuring import MARK_ERROR, STROKE_DEVIATION
from ..equations.cups import smallest_stick_batch, stick_spread
from ..equations.graduations import cup_spread, fills, for_each, syringe_spread
from ..equations.pumping import smallest_strokes
from ..equations.weighing import COVERAGE, ratio_error, running, smallest_batch, worst_uncertainty
from ..mix import ratio
from ..mix.ratio_error import limit, tolerance, wanted_text, within
from ..words.lines import MORE, WARN, line, words
from ..words.numbers import UP, bare, ceiling, shown
from ..words.units import told
from . import by_marks, by_pumps
from .by_stick import EACH_MARK, pours

BY_READING = "here rounding and reading together, the smallest batch by reading alone"
EACH = "here rounding and reading together, the smallest batch by each alone"

# error: rounding and reading together, k = 2 [-]; least: smallest honest batch, None where there is none; unit of least
# rough: what the smallest batch counts, where that is less than the error does
Standing = namedtuple("Standing", ("way", "label", "error", "least", "unit", "rough"))


def stroke_spread(counts, deviation: float = STROKE_DEVIATION) -> float:
    """How far uneven strokes put the ratio off, k = 2: u_R / R = s sqrt(1/n1 + 1/n2), the worst part.

    counts: strokes of each pump; deviation: s [-], of one stroke
    returns: of the ratio [-]; JCGM 100:2008, 5.1.2
    >>> round(stroke_spread((3, 1), 0.03), 5)
    0.06928
    """
    return COVERAGE * deviation * max([sqrt(1 / counts[0] + 1 / count) for count in counts[1:]])


def standings(values):
    """Every tool that can measure this batch, the most accurate first."""
    batch, wanted = ratio.mix(values), tolerance(values)
    found = []
    if batch.masses:
        found.append(_scale(values, batch, wanted))
    if batch.volumes:
        for standing in (_syringes(values, batch), _graduated(values, batch), _stick(values, batch, wanted),
                         _pumps(values, batch, wanted)):
            if standing is not None:
                found.append(standing)
    order = ("scale", "syringes", "graduated", "stick", "pumps")
    # errors that agree to a millionth count as equal on every runtime; the order above decides then
    return sorted(found, key=lambda one: (ceiling(one.error * 1e6), order.index(one.way)))


def _scale(values, batch, wanted):
    step = values["scale"]["step"]
    rezeroed = values.get("zeroing") == "each"
    readings = running(batch.masses, step, (), rezeroed)
    rounded = [after - before for before, after in zip((0.0,) + readings, readings)]
    rounding = abs(ratio_error(rounded, batch.masses)) if min(rounded) > 0 else 1.0
    error = rounding + COVERAGE * worst_uncertainty(batch.masses, step, rezeroed)
    return Standing("scale", "Scale", error, smallest_batch(batch.masses, step, wanted, rezeroed), "kg",
                    BY_READING)


def _pumps(values, batch, wanted):
    found = ratio.basis(values["system"])
    pumps, count = values["pumps"], len(batch.volumes)
    if len(pumps["ten_strokes"] or pumps["strokes"]) != count or (pumps["ten_strokes"] and not found.densities):
        return None
    strokes = ratio.strokes_volumes(pumps, found.densities)
    best = by_pumps.told_strokes(values)
    least = smallest_strokes(found.volume_parts, strokes, wanted)
    return Standing("pumps", "Pumps", abs(best.error) + stroke_spread(best.counts),
                    sum(least.volumes) if least else None, "m3",
                    "strokes taken to differ by " + bare(STROKE_DEVIATION * 100, 1)
                    + "% (s), from memory; the smallest batch by whole strokes alone")


def _syringes(values, batch):
    count = len(batch.volumes)
    if len(values["syringes"]["holds"]) not in (1, count):
        return None
    holds, steps = for_each(values["syringes"]["holds"], count), for_each(values["syringes"]["steps"], count)
    best = by_marks.told_draws(values)
    error = abs(best.error) + syringe_spread(best.volumes, steps, fills(best.volumes, holds))
    least = by_marks.smallest(values, batch, steps, lambda v: syringe_spread(v, steps, fills(v, holds)))
    return Standing("syringes", "Syringes", error, least, "m3", EACH)


def _graduated(values, batch):
    cup = values["graduated"]
    steps = (cup["step"],) * len(batch.volumes)
    plan = by_marks.cup_plan(values)
    if plan is None:
        return None
    best = plan[1]
    least = by_marks.smallest(values, batch, steps, lambda v: cup_spread(v, cup["step"]), cup["holds"])
    error = abs(best.error) + cup_spread(best.volumes, cup["step"])
    return Standing("graduated", "Graduated cup", error, least, "m3", EACH)


def _stick(values, batch, wanted):
    cup = values["cup"]
    times = pours(batch.volumes, cup)
    spread = stick_spread([volume / times for volume in batch.volumes], cup, MARK_ERROR)
    least = smallest_stick_batch(batch.volumes, cup, MARK_ERROR, wanted)
    return Standing("stick", "Cup and stick", spread, least, "m3", EACH_MARK)


def answer(values):
    """The best way first, then each with its figure and its smallest honest batch."""
    found = standings(values)
    best = found[0]
    lines = [line("best_way", "Most accurate here", best.error, "", best.label + ", " + within(best.error),
                  rough="rounding and reading of this batch together; wanted " + wanted_text(values))]
    most = limit(values)
    if best.error > most + 1e-9:
        lines.append(words("no_way", "None holds the ratio", "No tool of this bench holds ±{}% for so small a batch. "
                           "Mix more, or take a finer tool.".format(shown(most * 100, 1)), rank=WARN))
    for one in found:
        if one.least is None:
            least = "no honest batch for " + wanted_text(values)
        else:
            least = "honest from " + told(one.least, "g" if one.unit == "kg" else "mL", values["units"], UP)
        lines.append(line("way_" + one.way, one.label, one.error, "", within(one.error) + " here; " + least,
                          rough=one.rough, rank=MORE))
    for way, label in (("syringes", "Syringes"), ("pumps", "Pumps")):
        if way not in [one.way for one in found]:
            lines.append(words("unfit_" + way, label, "not for this label: one is needed for each part, and the "
                               "figures that give volumes", rank=MORE))
    if ratio.mix(values).volumes and "graduated" not in [one.way for one in found]:
        lines.append(words("unfit_graduated", "Graduated cup", "its marks are too coarse for this ratio", rank=MORE))
    return lines

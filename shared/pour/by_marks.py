"""By marks: syringes and graduated cups, each part drawn or poured to a graduation."""
from collections import namedtuple

from ..equations.graduations import (
    FINEST,
    cup_spread,
    fills,
    for_each,
    in_one_cup,
    on_marks,
    smallest_on_marks,
    smallest_read,
    syringe_spread,
)
from ..equations.pumping import FURTHEST, Strokes, smallest_strokes
from ..equations.rounding import ceiling, decimals, to_places, to_step
from ..equations.top_up import most_short, top_up
from ..forms.errors import InputError
from ..forms.memo import once
from ..forms.types import Values
from ..mix import ratio
from ..mix.label_words import no_densities
from ..mix.ratio_error import limit, off_ratio, tolerance
from ..words.messages import message
from ..words.units import from_si, to_si
from .measured_out import levels_of, outcome, readings, whole_levels, whole_steps

MOST_DECIMALS = 3  # at a mark

# volumes: of each part, in one pour [m3]; wanted: the same, in all pours [m3]; done: how many parts are taken
# steps: from mark to mark, for each part [m3]; unit: key of the unit that stands at the marks
# off: Off by whole marks; outcome: Off of a finished pour, or None; spread: how far reading may be off, k = 2 [-]
# coarse: places of the parts that are less than one mark; least: smallest batch with this tool [m3], or None
# too_small: whether this batch is smaller
Marks = namedtuple("Marks", (
    "volumes", "wanted", "done", "steps", "unit", "off", "outcome", "spread", "coarse", "least", "too_small"))
# marks: Marks; fills: Fill of each part
# fix: Fix of a finished pour that is off ratio, else None
SyringesResult = namedtuple("SyringesResult", ("marks", "fills", "fix"))
# what mends it: place of the part that lacks most, what to draw up of it [m3], and that with what was drawn [m3]
Fix = namedtuple("Fix", ("place", "volume", "total"))
# times: how often a syringe is filled; full: what it holds [m3]; last: drawn in the last fill [m3]
Fill = namedtuple("Fill", ("times", "full", "last"))
# marks: Marks, None where no marks of this cup hold the ratio; levels: where each part ends in the cup [m3]
# times: in how many equal pours; each: of each part, wanted in one pour [m3]; much_more: whether the marks give much
# more than is wanted; finer: pumping.Strokes that marks so far apart could hold, only where `marks` is None
# step: from mark to mark [m3]; unit: key of the unit at the marks; limit: error beyond which no mark is told [-]
CupResult = namedtuple("CupResult", ("marks", "levels", "times", "each", "much_more", "finer", "step", "unit", "limit"))


def check(values: Values, batch: ratio.Mix) -> None:
    """Volumes must be known, and there must be a syringe for each part."""
    if not batch.volumes:
        raise InputError("system.densities", message(
            "marks-densities", why=no_densities(values["system"], "weight")))
    if values["way"] == "syringes" and len(values["syringes"]["holds"]) not in (1, len(batch.volumes)):
        raise InputError("syringes.holds", message(
            "marks-for-each", parts=len(batch.volumes), syringes=len(values["syringes"]["holds"])))


def reckon(values: Values) -> "SyringesResult | CupResult":
    """What each syringe or the cup must show, and how far it can be trusted."""
    return _by_syringes(values) if values["way"] == "syringes" else _by_graduated(values)


def unit_of_marks(values: Values) -> str:
    """The unit that stands at the marks of the tool."""
    return values["syringes"]["steps_unit"] if values["way"] == "syringes" else values["graduated"]["step_unit"]


def _by_syringes(values: Values) -> SyringesResult:
    batch = ratio.mix(values)
    count = len(batch.volumes)
    holds, steps = for_each(values["syringes"]["holds"], count), for_each(values["syringes"]["steps"], count)
    done = readings(values)
    best = told_draws(values)
    if done and as_told(values, best.volumes, steps):
        done = best.volumes[:len(done)]
    elif done:
        best = whole_steps(batch.volumes, done, steps)
    times = fills(best.volumes, holds)
    marks = _marks(values, best, len(done), steps, batch.volumes, syringe_spread(best.volumes, steps, times),
                   smallest_drawn(values))
    return SyringesResult(marks, tuple([Fill(often, full, volume - (often - 1) * full)
                                        for volume, often, full in zip(best.volumes, times, holds)]), _fix(marks))


def _fix(marks: Marks) -> "Fix | None":
    """What to draw up next of a pour that is off, to the nearest mark, at least one."""
    if not (marks.outcome and marks.outcome.off):
        return None
    place = most_short(marks.volumes, marks.wanted)
    step = marks.steps[place]
    volume = max(step, to_step(top_up(marks.volumes, marks.wanted)[place], step))
    return Fix(place, volume, marks.volumes[place] + volume)


def _by_graduated(values: Values) -> CupResult:
    batch, cup = ratio.mix(values), values["graduated"]
    step, unit, wanted = cup["step"], cup["step_unit"], batch.volumes
    steps = (step,) * len(wanted)
    done = levels_of(readings(values))
    plan = cup_plan(values)
    if plan is None and not done:
        finer = smallest_strokes(wanted, steps, tolerance(values), FINEST)
        return CupResult(None, (), 0, (), False, finer, step, unit, limit(values))
    times = plan[0] if plan else max(1, ceiling(sum(wanted) / cup["holds"]))
    each = tuple([volume / times for volume in wanted])
    if plan and (not done or told_in_cup(values)):
        best = plan[1]
        done = best.volumes[:len(done)]
    else:
        best = whole_levels(each, done, step)
    levels, total = [], 0.0
    for volume in best.volumes:
        total += volume
        levels.append(total)
    much_more = not done and times * sum(best.volumes) > FURTHEST * sum(wanted) * (1 + 1e-9)
    marks = _marks(values, best, len(done), steps, wanted, cup_spread(best.volumes, step), smallest_in_cup(values))
    return CupResult(marks, tuple(levels), times, each, much_more, None, step, unit, limit(values))


def told_volume(values: Values) -> "float | None":
    """What comes together by the marks that are told [m3], in all pours; None where no marks are."""
    if values["way"] == "graduated":
        plan = cup_plan(values)
        return plan and plan[0] * sum(plan[1].volumes)
    return sum(told_draws(values).volumes)


def told_draws(values: Values) -> Strokes:
    """The marks of the syringes that are told while nothing is drawn, its counts in marks."""
    volumes = ratio.mix(values).volumes
    steps = for_each(values["syringes"]["steps"], len(volumes))
    return once(values, "draws", lambda: on_marks(volumes, steps, tolerance(values)))


def cup_plan(values: Values) -> "tuple[int, Strokes] | None":
    """The marks of the graduated cup and in how many equal pours, or None: graduations.in_one_cup."""
    cup, most = values["graduated"], limit(values)
    return once(values, "cup_plan", lambda: in_one_cup(
        ratio.mix(values).volumes, cup["step"], cup["holds"], tolerance(values), most))


def as_told(values: Values, told_marks: "list[float] | tuple[float, ...]", steps: tuple[float, ...]) -> bool:
    """Whether what was typed of each part is the mark that was told, as it is or in the figures it was told in: then it
    is that mark, and the rest stays as it was told too.

    told_marks: where each part ends on its tool [m3]; steps: from mark to mark there [m3]
    """
    unit = unit_of_marks(values)
    return all([min(abs(typed - mark), abs(typed - typed_back(mark, step, unit))) <= 1e-6 * mark
                for typed, mark, step in zip(readings(values), told_marks, steps)])


def told_in_cup(values: Values) -> bool:
    """Whether the levels that were typed are the marks of the graduated cup that are told."""
    plan, step = cup_plan(values), values["graduated"]["step"]
    if plan is None:
        return False
    volumes = plan[1].volumes
    levels = [sum(volumes[:place + 1]) for place in range(len(volumes))]
    return as_told(values, levels, (step,) * len(levels))


def typed_back(mark: float, step: float, unit: str) -> float:
    """A mark as it is read when somebody types what tells it: rounded to the decimals that the marks have [m3].

    mark, step: [m3]; unit: key of the unit that stands at the marks
    """
    return to_si(to_places(from_si(mark, unit), decimals(from_si(step, unit), MOST_DECIMALS)), unit)


def _marks(values: Values, best: Strokes, done: int, steps: tuple[float, ...], wanted: tuple[float, ...],
           spread: float, least: "float | None") -> Marks:
    """The rounding to marks, the reading, and the smallest batch with this tool."""
    return Marks(
        volumes=best.volumes, wanted=wanted, done=done, steps=steps, unit=unit_of_marks(values),
        off=off_ratio(best.volumes, wanted, tolerance(values), best.error),
        outcome=outcome(values, best.volumes, wanted, done), spread=spread,
        coarse=tuple([place for place, volume in enumerate(wanted) if volume < steps[place] * (1 - 1e-9)]),
        least=least, too_small=least is not None and sum(best.volumes) < least * (1 - 1e-9))


def smallest_drawn(values: Values) -> "float | None":
    """The least batch that these syringes measure within the ratio error to aim for [m3], or None."""
    parts = ratio.mix(values).volumes
    holds, steps = for_each(values["syringes"]["holds"], len(parts)), for_each(values["syringes"]["steps"], len(parts))
    at_least = smallest_read(parts, lambda volumes: syringe_spread(volumes, steps, fills(volumes, holds)),
                             tolerance(values), sum(parts))
    found = smallest_on_marks(parts, steps, tolerance(values), at_least)
    return sum(found.volumes) if found else None


def smallest_in_cup(values: Values) -> "float | None":
    """The least batch that this graduated cup measures within the ratio error to aim for [m3]; None where not even a
    full cup is."""
    parts, step, holds = ratio.mix(values).volumes, values["graduated"]["step"], values["graduated"]["holds"]
    at_least = smallest_read(parts, lambda volumes: cup_spread(volumes, step), tolerance(values), sum(parts))
    found = smallest_on_marks(parts, (step,) * len(parts), tolerance(values), at_least)
    return sum(found.volumes) if found and sum(found.volumes) <= holds * (1 + 1e-9) else None

"""Plan found: what a plan tells, as figures: how many batches, until when, what binds, what helps, what to question."""
from collections import namedtuple
from math import floor

from ..catalogue.plans import LONG_DAY, MOST_TOLD, POINTS_GAP
from ..clock import sun
from ..clock.usable import contradictions, in_other_sun
from ..equations.laying import CUP, FILM, POT, SIZE, SOFT, bounds_of, in_one_container, in_pot
from ..forms.types import Values
from ..mix import ratio, ratio_doubt
from ..things import work_rates
from ..things.lowest_temperature import lowest
from ..things.own_timings import read_timings
from . import advice, batch_counts, batches, day, layers, progress, smallest_mix
from .working_times import Window, timed

MOST_HELPS = 3

# cold: `Cold`, or None; cuts: `Cuts` of each kind; none: `NoPlan` or `smallest_mix.TooLarge`, None where there is a
# plan; summary: `Summary`, asked: `Asked`, batches: `batches.Described` of each, where there is one; close: {minute on
# the clock: the last moment [s] in it that is in time, though its limit lies there too}; layers: a `layers.Layer` of
# each coat. Without seams none, summary and asked are None
Found = namedtuple("Found", ("cold", "cuts", "none", "summary", "asked", "batches", "close", "layers"))
# coldest: of the day [K]; least: the hardener's lowest [K]
Cold = namedtuple("Cold", ("coldest", "least"))
# parts: into how many each is cut; limit, wet: what binds it whole, and its wet-out resin [kg]; names: `day.Named`
Cuts = namedtuple("Cuts", ("parts", "limit", "wet", "names"))
# why: "late"; limit: what binds the piece that fails, None: the changing temperature; wet: its wet-out resin [kg];
# name: its `day.Named`, or None; over: too late by [s]; whole: pieces are not to be cut; helps: `advice.Change` that
# let it be laid
NoPlan = namedtuple("NoPlan", ("why", "limit", "wet", "name", "over", "whole", "helps"))
# count: of batches; crews; end: of the last step [s]; wet: whether tape goes on; memory: which figures are from memory,
# of "rule", "windows", "rates"; own: whether own timings count; binding: `advice.Binding`; bound: the `Window` that
# binds, None where the largest mix does; slack: least left of a window [s]; share: used of a window [-]; largest: mix
# in one container [kg]; why: `day.WhyLargest`; over: surplus of all batches [kg], 0 where there is none; least: the
# smallest mix that the scale measures [kg]; ready: `Ready`; paces: of things/work_rates; windows: `Window` of each
# limit; helps: `advice.Help`, the best few, None where there is nothing to make fewer
Summary = namedtuple("Summary", ("count", "crews", "end", "wet", "memory", "own", "binding", "bound", "slack", "share",
                                 "largest", "why", "over", "least", "ready", "paces", "windows", "helps"))
# to lay ready: cups, bags of putty, pairs of gloves
Ready = namedtuple("Ready", ("cups", "bags", "gloves"))
# gaps: (from, to) [s] with no temperature for long; after: the last temperature [s], where the work goes on after it,
# or None; long: how long the day is [s], late: by how much it ends after its finish [s], where that is too much, or
# None; own: timings typed here; apart: pairs of timings that cannot both be; done: (batch, step) told done that the
# plan has not; step "": there is no such batch; other_sun: how many own timings stood in another sun
Asked = namedtuple("Asked", ("gaps", "after", "long", "late", "own", "apart", "done", "other_sun"))


def left_of(span: float) -> float:
    """What is left of long spans [s], to the microsecond: the rest are their last bits, which no two runtimes share.

    >>> left_of(0.18736256474412002) == left_of(0.1873625647434769) == 0.187363
    True
    """
    return floor(span * 1e6 + 0.5) / 1e6


def found_of(values: Values, plan: day.Plan) -> Found:
    """All that is told of a plan."""
    cold, cuts = _cold(values, plan), _cuts(plan)
    if not plan.crews:
        return Found(cold, cuts, _none(values, plan) if values["pieces"] else None, None, None, [], {},
                     layers.reckoned(values, plan))
    standing = plan.followed()
    end = max([batch.steps[-1].end for batch in standing])
    left, described = MOST_TOLD, []  # type: int, list
    doubt = ratio_doubt.doubt(values["system"], ratio_doubt.WEIGHT)
    shares = () if doubt and doubt.stops else ratio.mass_shares(values["system"])
    for batch in standing:
        described.append(batches.described(batch, values["finish"], shares, left > 0))
        left -= not batch.finished
    return Found(cold, cuts, None, _summary(values, plan, standing, end), _asked(values, plan, standing, end),
                 described, _close(standing), layers.reckoned(values, plan))


def minute(time: float) -> int:
    """The minute in which a time [s] lies, as a clock shows it.

    >>> minute(119.0), minute(120.0)
    (1, 2)
    """
    return floor(time / 60 + 1e-6)


def in_time(close: "dict[int, float]", time: float) -> bool:
    """Whether a moment [s] is in time in the very minute that its limit is told by. close: of `Found`"""
    return time <= close.get(minute(time), 0.0)


def _close(standing: "list[progress.Batch]") -> "dict[int, float]":
    found: dict[int, float] = {}
    for batch in standing:
        for time, by in progress.bounded(batch):
            last = minute(time)
            if time <= by + progress.LATE and last == minute(by):
                found[last] = max(time, found.get(last, time))
    return found


def _summary(values: Values, plan: day.Plan, standing: "list[progress.Batch]", end: float) -> Summary:
    binding, over = advice.binding(plan.crews), sum([smallest_mix.surplus(one.work, one.laid) for one in standing])
    ready = batch_counts.of_plan(plan)
    return Summary(
        len(standing), len(plan.crews), end, bool([1 for one in standing if one.laid.wet]), _memory(values),
        bool(plan.times.own), binding, None if binding.limit == SIZE else _window(plan, binding.limit, standing),
        left_of(min([one.slack for one in standing])), values["share"],
        max([in_one_container(one.laid.putty, one.laid.wet, one.laid.one_mix, values["filler"]) for one in standing]),
        day.why_largest(values, plan.limit), over if over > smallest_mix.TOLD else 0.0, standing[0].work.mixing.least,
        Ready(ready.mixes, ready.bags, batch_counts.gloves(plan.people, ready.batches)), work_rates.paces(values),
        [_window(plan, limit, standing) for limit in (POT, CUP, SOFT, FILM) if _bounded(limit, standing)],
        _helps(plan, len(standing)))


def _bounded(limit: str, standing: "list[progress.Batch]") -> "list[progress.Batch]":
    """The batches that a window bounds."""
    return [batch for batch in standing if limit in bounds_of(batch.laid)]


def _window(plan: day.Plan, limit: str, standing: "list[progress.Batch]") -> Window:
    """How long a window is at the warmest of the day, for the largest mass that hangs on it."""
    most = max([in_pot(batch.laid) for batch in _bounded(limit, standing)])
    return plan.times.told(limit, most, plan.profile.warmest, plan.fillers().get(most, 0.0))


def _memory(values: Values) -> "list[str]":
    """Which figures of the plan are from memory."""
    found = [] if values["exponent"] is not None else ["rule"]
    if values["soft"] is None or (values["film"] is None and values["system"]["film_time"] is None):
        found.append("windows")
    if [1 for one in work_rates.paces(values) if one.whence == work_rates.REMEMBERED]:
        found.append("rates")
    return found


def _helps(plan: day.Plan, count: int) -> "list[advice.Help] | None":
    if count <= len(plan.crews):
        return None
    return advice.helps([work for work, _, _ in plan.crews], [starts[0] for _, _, starts in plan.crews], plan.times,
                        count)[:MOST_HELPS]


def _cold(values: Values, plan: day.Plan) -> "Cold | None":
    least = lowest(values["system"])
    coldest = min([point[1] for point in plan.profile.points])
    return Cold(coldest, least) if coldest < least else None


def _cuts(plan: day.Plan) -> "list[Cuts]":
    alike, order = {}, []
    for cut in plan.cuts:
        kind = cut.parts, cut.limit
        if kind not in alike:
            order.append(kind)
            alike[kind] = Cuts(cut.parts, cut.limit, cut.wet, [])
        alike[kind].names.append(cut.name)
    return [alike[kind] for kind in order]


def _none(values: Values, plan: day.Plan) -> "NoPlan | smallest_mix.TooLarge":
    """No grouping holds: which piece, which limit, and what would let it be laid, one change at a time."""
    failed = plan.hopeless[0] if plan.hopeless else plan.failed
    # of the crew that failed: the places of its pieces are its own
    work = plan.stuck or plan.work()
    if failed and failed.limit == SIZE:
        return smallest_mix.too_large(work, failed)
    whole = values["long"] == "whole"
    if not failed:
        return NoPlan("late", None, 0.0, None, 0.0, whole, [])
    return NoPlan("late", failed.limit, failed.wet, work.pieces[failed.first].name, -failed.slack, whole,
                  [one for one in advice.changes(work, plan.times) if one.work.one_piece(failed.first)[1]])


def _asked(values: Values, plan: day.Plan, standing: "list[progress.Batch]", end: float) -> Asked:
    """What is asked back or warned of."""
    points, finish = plan.profile.points, values["finish"]
    gaps = [] if plan.profile.constant else [
        (before[0], after[0]) for before, after in zip(points, points[1:]) if after[0] - before[0] > POINTS_GAP]
    last = points[-1][0]
    return Asked(gaps, last if values["temperature_is"] == "points" and end > last + 60 else None,
                 end - values["start"] if end - values["start"] > LONG_DAY else None,
                 end - finish if finish is not None and end > finish + 1 else None,
                 len(read_timings(values["timings"])), contradictions(timed(values)), _unknown(values, standing),
                 in_other_sun(dict(timed(values), **sun.declared(values))))


def _unknown(values: Values, standing: "list[progress.Batch]") -> "list[tuple[int, str]]":
    """Steps that are told done of a batch that has no such step, or of none."""
    found = []
    for row in values["done"]:
        number = int(row["batch"])
        if number > len(standing):
            found.append((number, ""))
        elif row["step"] not in [step.key for step in standing[number - 1].steps]:
            found.append((number, row["step"]))
    return found

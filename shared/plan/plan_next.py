"""Plan, next: what is done next of a plan: the first step of each batch begun, pours of the next batch, its clock."""
from collections import namedtuple

from ..equations.laying import FILM, POT, in_pot
from ..forms.types import Values
from . import batch_record, batches
from .day import Plan
from .progress import Batch, time_now

AT_ONCE = 2  # batches that are under way side by side, at most

# begin: whether the day is only planned, and there is one to begin; place: of the next row of what was done; taps:
# `Tap` of each; number: of the next batch, None where all are finished; air: when it is mixed [K]; mixes: (name, mass
# as it is poured [kg]) of it; clock: `Clock`, None where it is begun
Next = namedtuple("Next", ("begin", "place", "taps", "number", "air", "mixes", "clock"))
# number: of the batch; step: its key; after: the time now from the start of the plan [s]; record: `batch_record.Record`
# of the whole batch where it is the last step, else None
Tap = namedtuple("Tap", ("number", "step", "after", "record"))
# start: of its mixing [s on the clock]; limit: POT of the bag, of tape alone FILM; mass: in it [kg]; filler: share of
# it [-]; span: usable [s]; share: used of the window [-]; names: `day.Named` of its pieces; ends: (key, from the start
# of the mixing [s]) of each step
Clock = namedtuple("Clock", ("start", "limit", "mass", "filler", "span", "share", "names", "ends"))


def next_of(values: Values, plan: Plan) -> Next:
    """What is done next, in the order in which it is wanted."""
    standing, place = plan.followed(), max([row["place"] for row in values["done"]] + [-1]) + 1
    running, left = values["running"] == "yes", [batch for batch in standing if not batch.finished]
    taps = _taps(values, left[:AT_ONCE], time_now(values)) if running else []
    begin = bool(standing or values["surfaces"]) and not running
    if not left:
        return Next(begin, place, taps, None, None, [], None)
    batch = left[0]
    return Next(begin, place, taps, batch.number, batch.work.profile.at(batch.start),
                [(name, batches.poured(mass)) for name, mass in batches.liquids(batch)],
                None if batch.begun else clock_of(plan, batch))


def _taps(values: Values, left: "list[Batch]", now: "float | None") -> "list[Tap]":
    """A tap for the next step of each batch under way, told with the minute it is now."""
    found: list[Tap] = []
    if now is None:
        return found
    for batch in left:
        step = next(iter([step for step in batch.steps if not step.done]))
        last = step.key == batch.steps[-1].key
        found.append(Tap(batch.number, step.key, now - values["start"],
                         batch_record.record(values, batch, now) if last else None))
        if not batch.begun:
            break
    return found


def clock_of(plan: Plan, batch: Batch) -> Clock:
    """The clock of a batch's bag, of tape alone of the wet film: usable as long as the plan counts. The cup of tape
    alone is empty as soon as it is mixed; what has to be watched is on the tape."""
    laid, mass = batch.laid, in_pot(batch.laid)
    limit = POT if laid.putty else FILM
    return Clock(batch.start, limit, mass, plan.fillers().get(mass, 0.0), dict(batch.deadlines)[limit] - batch.start,
                 plan.times.share(limit), [piece.name for piece in batch.work.pieces[laid.first:laid.last]],
                 [(step.key, step.end - batch.start) for step in batch.steps])

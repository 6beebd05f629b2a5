"""Plan, next: what is done next of a plan: the first step of each batch begun, pours of the next batch, its clock."""
from collections import namedtuple

from ..equations.laying import FILM, POT, in_pot
from ..forms.types import Values
from . import batch_record, batches, layers
from .day import Plan
from .done_so_far import MIXED, ON
from .progress import Batch, now_of_coats, time_now

AT_ONCE = 2  # batches that are under way side by side, at most

# begin: whether the day is only planned, and there is one to begin; place: of the next row of what was done; taps:
# `Tap` of each; number: of the next batch, None where all are finished; air: when it is mixed [K]; mixes: (name, mass
# as it is poured [kg]) of it; clock: `Clock`, None where it is begun; coat: `CoatNext`, None while seams are left
Next = namedtuple("Next", ("begin", "place", "taps", "number", "air", "mixes", "clock", "coat"))
# layer: the next `layers.Layer`, air: when it is mixed [K]; told: the first that nobody told, step: its key, after: the
# time now from the start of the plan [s], None where no day is under way; place: of the next row of what was told
CoatNext = namedtuple("CoatNext", ("layer", "air", "told", "step", "after", "place"))
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
    coats = layers.reckoned(values, plan)
    begin = bool(standing or coats) and not running
    if not left:
        return Next(begin, place, taps, None, None, [], None, _coat(values, plan, coats))
    batch = left[0]
    return Next(begin, place, taps, batch.number, batch.work.profile.at(batch.start),
                [(name, batches.poured(mass)) for name, mass in batches.liquids(batch)],
                None if batch.begun else clock_of(plan, batch), None)


def _coat(values: Values, plan: Plan, coats: "list[layers.Layer]") -> "CoatNext | None":
    """The next coat, and the step of a coat that is told next; None where all are on."""
    left, now = [one for one in coats if not one.finished], now_of_coats(values)
    if not left:
        return None
    coming = (layers.ahead(coats, values) or left)[0]
    return CoatNext(coming, plan.profile.at(coming.starts[0]), left[0], ON if left[0].begun else MIXED,
                    None if now is None or values["running"] == "no" else now - values["start"],
                    max([row["place"] for row in values["coated"]] + [-1]) + 1)


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

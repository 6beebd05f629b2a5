"""Progress: what was done, and when, shifts what is left and tells when a batch should not be started any more."""

from collections import namedtuple

from ..catalogue.plans import BEFORE
from ..equations.laying import CUP, FILM, POT, SOFT, Laid, Laying, bounds_of, in_pot
from ..equations.shelf import day_number, iso
from ..equations.temperature_profile import Profile
from ..forms.clock_times import DAY
from ..forms.types import Values
from .steps import Step, steps

LATE = 1.0  # s; less than this is no delay
SOON = 3  # batches of a crew whose latest start is looked for; the later ones hang on these
AHEAD = 12 * 3600.0  # s; how far a latest start is looked for

# number from 1; crew: which; work: `Laying`; start: of its mixing [s on the clock]; begun, finished; steps;
# deadlines: (limit, by when) in the order of the work; latest: start [s] after which it is not to be begun, None where
# nothing tells; slack, limit: as it now stands
Batch = namedtuple(
    "Batch",
    ("number", "crew", "work", "laid", "start", "begun", "finished", "steps", "deadlines", "latest", "slack", "limit"),
)
TAPE = ("wet_mix", "wet", "roll")
LAST_STEP = {POT: "place", CUP: "wet_mix", SOFT: "roll", FILM: "peel"}


def time_now(values: Values) -> "float | None":
    """The time now [s after the first midnight]; None where the day is only planned, and on another day: there what was
    told lies ahead."""
    start = values["start"]
    if values["now"] is not None:
        return start + values["now"]
    if values["running"] == "no" or values["clock"] is None:
        return None
    ahead = (values["clock"] - start) % DAY
    if ahead <= DAY - BEFORE:
        return start + ahead
    ahead -= DAY
    return None if [1 for row in values["done"] if row["minute"] > ahead + 60] else start + ahead


def dated(values: Values) -> "tuple[int, int] | None":
    """(the first day as days since 1970-01-01, how many days later it is now), by the phone's date; None where the day
    is only planned or no date was told: the day of the first step that was told, today where none was."""
    today, now = day_number(values["today"]), time_now(values)
    if today is None or values["running"] == "no" or values["clock"] is None or values["now"] is not None:
        return None
    if values["done"] or values["coated"]:
        first = day_number(values["day"])
        return None if first is None or today < first else (first, today - first)
    return None if now is None else (today - int(now // DAY), int(now // DAY))


def now_of_coats(values: Values) -> "float | None":
    """The time now, days after the start too [s after the first midnight]; None where nothing tells it."""
    known = dated(values)
    return known[1] * DAY + values["clock"] if known else time_now(values)


def day_pairs(values: Values) -> "list[list[str]]":
    """What a step that is told says of the day it is counted from."""
    known = dated(values)
    return [["day", iso(known[0])]] if known else []


def followed(crews: "list[tuple[Laying, list[Laid], list[float]]]", values: Values) -> "list[Batch]":
    """All batches as they stand: planned times where nothing is told, real ones and their consequences where it is."""
    start, now = values["start"], time_now(values)
    done: dict[int, dict[str, float]] = {}
    for row in values["done"]:
        done.setdefault(int(row["batch"]), {})[row["step"]] = start + row["minute"]
    found: list[Batch] = []
    for place, (work, groups, starts) in enumerate(crews):
        following, soon = starts[0], SOON
        for laid in groups:
            number = len(found) + 1
            ended = done.get(number, {})
            looks = not ended and soon > 0
            soon -= looks
            batch, following = _followed(number, place, work, laid, following, ended, now, values["finish"], looks)
            found.append(batch)
    return found


def _followed(number: int, crew: int, work: Laying, laid: Laid, start: float, done: "dict[str, float]",
              now: "float | None", finish: "float | None", looks: bool) -> "tuple[Batch, float]":
    """A batch as it stands, and when the next one of its crew may be mixed [s]. start: its own at the earliest [s]

    done: when each step was done [s], by its key; looks: whether its latest start is wanted
    """
    first = "mix" if laid.putty else "wet_mix"
    if first in done:
        start = done[first] - (work.crew.mix_putty if laid.putty else work.crew.mix_wet)
    begun = bool(done)
    ready = start
    if now is not None and not begun:
        start = max(start, now)
    taken, late = _taken(work, laid, start, done, now)
    ends = dict([(step.key, step.end - start) for step in taken])
    wet = [step.start - start for step in taken if step.key == "wet_mix"]
    since = wet[0] if wet else 0.0
    # when each window's work is done; of what this batch has not it does not matter
    ended = [ends[last_step(limit, laid)] if limit in bounds_of(laid) else 0.0 for limit in (SOFT, FILM)]
    slack, limit = work.slack(start, laid, ends[last_step(bounds_of(laid)[0], laid)], ended[0], ended[1], since)
    deadlines = _deadlines(work, laid, start, since)
    latest = None
    if not begun and (looks or work.profile.constant) and not (work.profile.constant and finish is None):
        latest = latest_start(work, laid, ready, finish)
    batch = Batch(number, crew, work, laid, start, begun, taken[-1].done, taken, deadlines, latest, slack, limit)
    return batch, work.next_start(laid, start) + late


def _taken(work: Laying, laid: Laid, start: float, done: "dict[str, float]",
           now: "float | None") -> "tuple[list[Step], float]":
    """The steps of a batch on the clock, as they were done or as they shift, and how late the last one is [s]."""
    late, taken, begun = 0.0, [], bool(done)
    for step in steps(work, laid):
        before = late
        end = start + step.end + late
        if step.key in done:
            end = done[step.key]
        elif begun and now is not None and end < now:
            end = now
        late = end - start - step.end
        taken.append(Step(step.key, step.who, min(start + step.start + before, end), end, step.key in done))
    return taken, late


def last_step(limit: str, laid: Laid) -> str:
    """The step of a batch that must be done within a window: where no tape is rolled on the cove, it is tooled."""
    return "clean" if limit == SOFT and not laid.wet else LAST_STEP[limit]


def _deadlines(work: Laying, laid: Laid, start: float, since: float) -> "tuple[tuple[str, float], ...]":
    return tuple([(limit, done_by(work, laid, limit, start + (since if limit == FILM else 0.0)))
                  for limit in bounds_of(laid)])


def done_by(work: Laying, laid: Laid, limit: str, begun: float) -> float:
    """By when a window's work is to be done [s on the clock]. begun: when its resin met its hardener, on it too"""
    windows = work.windows
    lasts = windows.film if limit == FILM else windows.soft if limit == SOFT else (
        windows.cup(in_pot(laid)) if limit == CUP else windows.pot(in_pot(laid)))
    return begun + work.profile.span(begun, windows.share * lasts)


def missed(batch: Batch) -> "list[tuple[str, float, float]]":
    """The windows that a batch misses as it stands: (limit, by when, when)."""
    found = []
    for limit, by in batch.deadlines:
        for step in batch.steps:
            if step.key == last_step(limit, batch.laid) and step.end > by + LATE:
                found.append((limit, by, step.end))
    return found


def bounded(batch: Batch) -> "list[tuple[float, float]]":
    """What a batch does and by when it must: (when, by when) of each window, the first tape and its start [s]."""
    ends = dict([(step.key, step.end) for step in batch.steps])
    found = [(ends[last_step(limit, batch.laid)], by) for limit, by in batch.deadlines]
    tape = tape_begun_by(batch)
    if tape is not None:
        found.append((min([step.start for step in batch.steps if step.key in TAPE]), tape))
    if batch.latest is not None:
        found.append((batch.start, batch.latest))
    return found


def tape_begun_by(batch: Batch) -> "float | None":
    """Until when the tape of a batch must be begun, mixing its resin first, to be rolled in time [s on the clock].

    None where no soft cove waits for it.
    """
    if not (batch.laid.putty and batch.laid.wet):
        return None
    laid, by = batch.laid, dict(batch.deadlines)
    begun = laid.wet_start
    if laid.one_mix:
        return min(by[SOFT] - (laid.rolled - begun), by[FILM] - (laid.covered - begun))
    return by[SOFT] - (laid.rolled - begun)


def latest_start(work: Laying, laid: Laid, start: float, finish: "float | None" = None) -> "float | None":
    """Until when a batch may still be mixed [s on the clock], or None where nothing stops it for the next twelve hours.

    laid: as planned; start: from when on; finish: when the peel ply must be down [s], or None
    A start before `start` in the answer means: not any more.
    """
    found = None if finish is None else finish - laid.covered
    if work.profile.constant:
        return found if work.slack_of(laid, start)[0] >= -LATE else start - 2 * LATE
    good, bad = None, None
    for moment in _moments(work.profile, start, laid.covered):
        if found is not None and moment > found:
            break
        if work.slack_of(laid, moment)[0] < -1e-3:
            bad = moment
            break
        good = moment
    if bad is None:
        return found
    if good is None:
        return start - 2 * LATE
    for _ in range(10):
        middle = (good + bad) / 2
        if work.slack_of(laid, middle)[0] < -1e-3:
            bad = middle
        else:
            good = middle
    return good


def _moments(profile: Profile, start: float, length: float) -> "list[float]":
    """Starts to look at: between two of them the temperature that a batch meets only rises or only falls, nearly."""
    found = [start, start + AHEAD]
    for time, _ in profile.points:
        for moment in (time - length, time - length / 2, time):
            if start < moment < start + AHEAD:
                found.append(moment)
    return sorted(found)

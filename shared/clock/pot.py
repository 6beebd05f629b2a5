"""Pot: a running pot told from what was stored about it and the time now. The page only lays this out and rings.

Stored are the wall time of the start, the duration, and every few seconds what has passed, so that a killed page, a
reload or a clock that was changed loses nothing: `elapsed` says what has passed by what the page measured. A pot that a
link brings was last seen on another phone, when the link was made, by a clock that may differ from this one's.
"""

from collections import namedtuple
from math import floor

from ..catalogue.containers import CONTAINERS as KNOWN
from ..catalogue.pots import AGAIN, ON_WAY, SOON
from ..forms.clock_times import DAY, HOURS
from ..forms.errors import InputError
from ..forms.inputs import Choice, Group, Number, Text
from ..forms.types import Values
from ..words.messages import message, typed
from . import elapsed, pot_air, pot_doubt, sun
from .elapsed import FUTURE
from .pot_lines import say
from .pot_spans import left_text, span_typed

CONTAINERS = tuple([row[:2] for row in KNOWN])

INPUTS = (
    Number("started", "pot-started", unit="s", low=0, high=FUTURE, help="pot-started.help"),
    Number("duration", "pot-duration", unit="min", low=0, high=2880, above=True),
    Number("share", "pot-share", unit="%", low=10, high=100, optional=True),
    Number("zone", "pot-zone", unit="min", low=-840, high=840, default=0),
    Number("zone_next", "pot-zone-next", unit="s", low=0, high=FUTURE, optional=True,
           help="pot-zone-next.help"),
    Number("zone_then", "pot-zone-then", unit="min", low=-840, high=840, default=0),
    Number("sent", "pot-sent", unit="s", low=0, high=FUTURE, optional=True, help="pot-sent.help"),
    Text("by", "pot-by", help="pot-by.help"),
    Text("left_now", "pot-left-now", help="pot-left-now.help"),
    Text("batch", "pot-batch", stands="pot-unnamed"),
    Choice("container", "pot-container", CONTAINERS, default="cup"),
    sun.inputs()[0],
    Text("place", "pot-place"),
    Text("pieces", "pot-place", most=200, unseen=True),  # of a plan: the first and the last
    Group(
        "steps",
        "pot-steps",
        (
            Text("name", "pot-steps.name"),
            Number("minute", "pot-steps.minute", unit="min", low=0, high=2880),
            Choice("done", "pot-steps.done", (("no", "pot-steps.not-yet"), ("yes", "pot-steps.is-done"))),
        ),
        most=24,
        each="pot-steps.each",
    ),
    pot_air.CHANGES,
    HOURS,
) + elapsed.INPUTS

# passed, left, over [s]: left and over are never below nought; apart: by how much the wall clock jumped ahead of what
# passed, or is behind it (below nought) [s], 0 where it did not or only one clock is known; end: when it ends [s, wall
# clock as it now stands]; step: index of the next step not done, or None; due: how long until then [s], below nought
# when it should have been done; doubt: `elapsed.Passed`
State = namedtuple("State", ("passed", "left", "over", "apart", "end", "step", "due", "doubt"))
# state: `State`; duration: usable for so long, its changes of air counted [s]; soon: only the last minutes are left
# ring: END, STEP or LAST_MINUTES where a sound is due now, or None; end: `Wall` of its end; alarms: `Alarm` of each
# step that is not done, none when the pot is over; again: when it is looked at again if it is still good, from the
# start [s]; typed: what has passed by the time typed as left [s], or None; doubts: `pot_doubt.Doubts`
PotResult = namedtuple("PotResult", ("state", "duration", "soon", "ring", "end", "alarms", "again", "typed", "doubts"))
# time: what a clock on the wall here shows, from its midnight of today on [s]; change: what it shows before and after
# a change of the clocks between now and then, (s, s), or None
Wall = namedtuple("Wall", ("time", "change"))
# place: of the step; due: wall time in UTC [s]; at: its `Wall`
Alarm = namedtuple("Alarm", ("place", "due", "at"))
END, STEP, LAST_MINUTES = "end", "step", "soon"


def state(started: float, duration: float, now: float, steady: "float | None" = None, steps: tuple = ()) -> State:
    """How a pot stands.
        left = duration - passed

    started, now: wall times [s]; duration [s]; steady: what passed by a steady clock [s], or None
    steps: (minute [s from the start], done) in the order of the work
    A wall clock set back before the start counts as no time passed: the steady clock then decides alone.
    >>> state(1000.0, 600.0, 1360.0)[:2], state(1000.0, 600.0, 1360.0, 420.0)[:4]
    ((360.0, 240.0), (420.0, 180.0, 0.0, -60.0))
    """
    return standing(duration, now, elapsed.passed(started, now, steady), steps)


def standing(duration: float, now: float, doubt: elapsed.Passed, steps: tuple = ()) -> State:
    """`state` of what has passed: `elapsed.Passed`."""
    gone = doubt.seconds
    step, due = None, 0.0
    for place, (minute, done) in enumerate(steps):
        if not done:
            step, due = place, minute - gone
            break
    apart = doubt.jumped or -doubt.behind
    left = duration - gone
    return State(gone, max(0.0, left), max(0.0, -left), apart, now + left, step, due, doubt)


def check(values: Values) -> None:
    """Steps in the order of their times, each with a name."""
    before = 0.0
    for row in values["steps"]:
        path = "steps.{}.".format(row["place"])
        if not row["name"]:
            raise InputError(path + "name", "pot-steps.unnamed")
        if row["minute"] < before:
            raise InputError(path + "minute", "pot-steps.order")
        before = row["minute"]


def check_left(values: Values) -> None:
    """What is typed as left now is a time, and no longer than the pot lasts."""
    if not values["left_now"]:
        return
    left, duration = span_typed(values["left_now"]), pot_air.usable(values)
    if left is None:
        raise InputError("left_now", "pot-left-now.unread")
    if left > duration:
        raise InputError("left_now", message("pot-left-now.long", span=typed(left_text(duration))))


CHECKS = (check, pot_air.check, check_left)


def reckon(values: Values) -> PotResult:
    """How the pot stands, what is due, and when on the clock here it ends."""
    duration, rows = pot_air.usable(values), values["steps"]
    now = standing(duration, values["now"], _passed(values), tuple([(row["minute"], row["done"] == "yes")
                                                                    for row in rows]))
    alarms, left = [], values["left_now"]
    if now.left > 0:
        for place, row in enumerate(rows):
            if row["done"] == "no":
                due = now.end - duration + row["minute"]
                alarms.append(Alarm(place, due, _wall(values, due)))
    return PotResult(now, duration, now.left <= SOON, _to_ring(now, duration), _wall(values, now.end), alarms,
                     max(duration, now.passed + AGAIN), duration - (span_typed(left) or 0.0) if left else None,
                     pot_doubt.reckon(values, now))


def _passed(values: Values) -> elapsed.Passed:
    """What has passed; a pot that a link brings was last seen when the link was made."""
    sent, started = values["sent"], values["started"]
    if sent is None:
        return elapsed.of(values, started)
    if values["seen"] is not None or pot_doubt.unfit(values):
        return elapsed.of(values, started, ON_WAY)
    return elapsed.of(dict(values, seen=max(0.0, sent - started), seen_at=sent), started, ON_WAY)


def _to_ring(now: State, duration: float) -> "str | None":
    """What is to be told by sound now. The page rings each once, on whichever of its tabs comes first."""
    if now.left <= 0:
        return END
    if now.step is not None and now.due <= 0:
        return STEP
    return LAST_MINUTES if now.left <= SOON and duration > 2 * SOON else None


def _local(values: Values, moment: float) -> float:
    """A wall time in UTC [s] -> what a clock on the wall here shows then [s], also behind a change of the clocks."""
    change = values["zone_next"]
    return moment + (values["zone"] if change is None or moment < change else values["zone_then"])


def _wall(values: Values, moment: float) -> Wall:
    """A wall time in UTC [s] as a clock on the wall shows it."""
    change, time = values["zone_next"], _local(values, moment) - floor(_local(values, values["now"]) / DAY) * DAY
    if change is None or not values["now"] < change <= moment:
        return Wall(time, None)
    return Wall(time, (change + values["zone"], change + values["zone_then"]))


def answer(values: Values) -> list:
    """What is left, the next step, the end on the clock, the time for the phone's own alarm, and what to say aloud."""
    return say(reckon(values), values)


def first_to_ring(states: "list[State]") -> "tuple[int, int, float] | None":
    """Which of several pots rings first: (index, 0 for its end or 1 for its next step, in how long [s]), or None.

    states: `State` of each running pot; what is already over or late rings at once, the longest ago first
    >>> first_to_ring([state(0.0, 600.0, 60.0), state(0.0, 900.0, 60.0, None, ((300.0, False),))])
    (1, 1, 240.0)
    """
    found = None
    for place, one in enumerate(states):
        moments = [(one.left - one.over, 0)]
        if one.step is not None:
            moments.append((one.due, 1))
        for due, kind in moments:
            if found is None or due < found[2]:
                found = (place, kind, due)
    return found

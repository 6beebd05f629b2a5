"""Pot: a running pot told from what was stored about it and the time now. The page only lays this out and rings.

Stored are the wall time of the start, the duration, and every few seconds what has passed, so that a killed page, a
reload or a clock that was changed loses nothing: `elapsed` says what has passed by what the page measured. A pot that a
link brings was last seen on another phone, when the link was made, by a clock that may differ from this one's.
"""

from collections import namedtuple
from math import floor

from ..catalogue.cautions import STANDING
from ..catalogue.containers import CONTAINERS as KNOWN
from ..catalogue.pots import AGAIN, ON_WAY, SOON
from ..forms.clock_times import DAY, HOURS, clock_text
from ..forms.errors import InputError
from ..forms.inputs import Choice, Group, Number, Text
from ..words.lines import ANSWER, ASK, MORE, WARN, line, words
from ..words.numbers import DOWN, UP, shown
from . import elapsed, elapsed_lines, pot_air, pot_doubt
from .elapsed import APART, FUTURE
from .pot_spans import left_text, span_typed, spoken

CONTAINERS = tuple([row[:2] for row in KNOWN])
HEAT = next(text for name, _, text, _, _ in STANDING if name == "heat")

INPUTS = (
    Number("started", "Started", unit="s", low=0, high=FUTURE, help="Wall time, seconds since 1970 in UTC."),
    Number("duration", "Usable for", unit="min", low=0, high=2880, above=True),
    Number("share", "That is, of the time until it is thick", unit="%", low=10, high=100, optional=True),
    Number("zone", "Clock here ahead of UTC", unit="min", low=-840, high=840, default=0),
    Number("zone_next", "The clocks change at", unit="s", low=0, high=FUTURE, optional=True,
           help="Wall time, seconds since 1970 in UTC, of the first change after the start; empty: none."),
    Number("zone_then", "Clock here ahead of UTC from then on", unit="min", low=-840, high=840, default=0),
    Number("sent", "The link was made", unit="s", low=0, high=FUTURE, optional=True,
           help="Wall time on the phone that made it, seconds since 1970 in UTC."),
    Text("by", "Made by", help="What made the link: its release, and the build's id behind a point."),
    Text("left_now", "Left now", help="As another phone or your own watch says: minutes, or minutes and seconds."),
    Text("batch", "Batch", default="Pot"),
    Choice("container", "Container", CONTAINERS, default="cup"),
    Text("place", "Where it goes"),
    Group(
        "steps",
        "Steps",
        (
            Text("name", "Step"),
            Number("minute", "Due after", unit="min", low=0, high=2880),
            Choice("done", "Done", (("no", "not yet"), ("yes", "done"))),
        ),
        most=24,
        each="Step",
    ),
    pot_air.CHANGES,
    HOURS,
) + elapsed.INPUTS

# passed, left, over [s]: left and over are never below nought; apart: by how much the wall clock jumped ahead of what
# passed, or is behind it (below nought) [s], 0 where it did not or only one clock is known; end: when it ends [s, wall
# clock as it now stands]; step: index of the next step not done, or None; due: how long until then [s], below nought
# when it should have been done; doubt: `elapsed.Passed`
State = namedtuple("State", ("passed", "left", "over", "apart", "end", "step", "due", "doubt"))


def state(started: float, duration: float, now: float, steady=None, steps=(), **seen) -> State:
    """How a pot stands.
        left = duration - passed

    started, now: wall times [s]; duration [s]; steady: what passed by a steady clock [s], or None
    steps: (minute [s from the start], done) in the order of the work; seen: more of `elapsed.passed`
    A wall clock set back before the start counts as no time passed: the steady clock then decides alone.
    >>> state(1000.0, 600.0, 1360.0)[:2], state(1000.0, 600.0, 1360.0, 420.0)[:4]
    ((360.0, 240.0), (420.0, 180.0, 0.0, -60.0))
    """
    return standing(started, duration, now, elapsed.passed(started, now, steady, **seen), steps)


def standing(started, duration, now, doubt, steps=()):
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


def seen_by(values):
    """The values; where a link brings the pot, it was last seen when the link was made."""
    sent = values["sent"]
    if sent is None or values["seen"] is not None or sent < values["started"] - APART:
        return values
    return dict(values, seen=max(0.0, sent - values["started"]), seen_at=sent)


def check(values):
    """Steps in the order of their times, each with a name."""
    before = 0.0
    for row in values["steps"]:
        path = "steps.{}.".format(row["place"])
        if not row["name"]:
            raise InputError(path + "name", "Step: give it a name, it will be told aloud")
        if row["minute"] < before:
            raise InputError(path + "minute", "Due after: the steps come in the order of their times")
        before = row["minute"]


def check_left(values):
    """What is typed as left now is a time, and no longer than the pot lasts."""
    if not values["left_now"]:
        return
    left, duration = span_typed(values["left_now"]), pot_air.followed(values)["duration"]
    if left is None:
        raise InputError("left_now", "Left now: type minutes, or minutes and seconds, like 12 or 12:30")
    if left > duration:
        raise InputError("left_now", "Left now: this pot lasts " + left_text(duration) + " in all")


CHECKS = (check, pot_air.check, check_left)


def answer(values):
    """What is left, the next step, the end on the clock, the time for the phone's own alarm, and what to say aloud."""
    values, rows = seen_by(pot_air.followed(values)), values["steps"]
    now = standing(values["started"], values["duration"], values["now"],
                   elapsed.of(values, values["started"], ON_WAY if values["sent"] is not None else elapsed.AWAY),
                   [(row["minute"], row["done"] == "yes") for row in rows])
    container = dict(CONTAINERS)[values["container"]]
    found = []
    if now.left > 0:
        found.append(
            line("left", "Left", now.left, "s", left_text(now.left), rank=ANSWER,
                 span=[float(shown(100 * now.passed / values["duration"], 2)), 100.0],
                 rough="last minutes: finish what is placed, mix nothing in" if now.left <= SOON
                 else "rounded down, to be sure")
        )
    else:
        rough = "since it should have been used"
        found.append(line("over", "Over for", now.over, "s", left_text(now.over, UP), rank=ANSWER, rough=rough))
        found.append(words("stop", "Time is up", "Use no more of it. " + HEAT, rank=WARN))
    found.extend(_step_lines(now, rows))
    found.extend(_clock_lines(values, now))
    found.extend(pot_doubt.lines(values, now))
    if values["share"] is not None and now.left > 0:
        found.append(words("meaning", "What the minutes are", "{}% of the time until it is thick; the rest is kept "
                           "back".format(shown(values["share"] * 100)), rank=MORE))
    found.append(words("place", values["batch"], container + (" · " + values["place"] if values["place"] else "")))
    found.append(words("say", "Said aloud", aloud(values, now), rank=MORE))
    found.append(line("passed", "Since it was mixed", now.passed, "s", left_text(now.passed), rank=MORE))
    found.append(words("used", "For the log", "used " + spoken(now.passed) + " after mixing", rank=MORE))
    again = max(values["duration"], now.passed + AGAIN)
    found.append(line("again", "If it is still good", again, "s", "looked at again in " + spoken(AGAIN), rank=MORE))
    if values["left_now"]:
        typed = values["duration"] - span_typed(values["left_now"])
        found.append(line("set", "Passed, as typed", typed, "s", left_text(typed), rank=MORE))
    found.extend(elapsed_lines.kept(now.doubt))
    if now.step is not None:
        found.append(words("step", "Place of the next step", str(now.step), rank=MORE))
    ring = to_ring(values, now)
    if ring:
        found.append(words("ring", ring[0], ring[1], rank=MORE))
    return found


def to_ring(values, now: State):
    """What is to be told by sound now: (a key that stays the same while it is due, what is said), or None.

    The page rings each key once, on whichever of its tabs comes first.
    """
    if now.left <= 0:
        return "end " + shown(values["duration"] / 60, 1), aloud(values, now)
    if now.step is not None and now.due <= 0:
        return "step " + str(now.step + 1), aloud(values, now)
    if now.left <= SOON and values["duration"] > 2 * SOON:
        return "soon " + shown(values["duration"] / 60, 1), aloud(values, now)
    return None


def _step_lines(now, rows):
    if now.step is None:
        return []
    name = rows[now.step]["name"]
    if now.due >= 0:
        return [line("next", "Next", now.due, "s", name, rough="due in " + left_text(now.due))]
    late = "should be done since " + left_text(-now.due, UP)
    return [line("next", "Next", now.due, "s", name, rough=late, rank=WARN)]


def local(values, moment: float) -> float:
    """A wall time in UTC [s] -> what a clock on the wall here shows then [s], also behind a change of the clocks."""
    change = values["zone_next"]
    return moment + (values["zone"] if change is None or moment < change else values["zone_then"])


def _clock_lines(values, now):
    """The end and the steps as a clock on the wall shows them."""
    hours, change = values["hours"], values["zone_next"]
    today = floor(local(values, values["now"]) / DAY) * DAY

    def text(moment):
        return clock_text(local(values, moment) - today, hours, DOWN)

    def between(moment):
        if change is None or not values["now"] < change <= moment:
            return ""
        before, after = change + values["zone"], change + values["zone_then"]
        return ("before that the clocks go from " + clock_text(before, hours, DOWN, False) + " to "
                + clock_text(after, hours, DOWN, False))

    found = [line("end", "Ends", now.end, "s", text(now.end),
                  rough=between(now.end) or "rounded down to the minute, to be sure")]
    if now.left > 0:
        found.append(
            words("alarm", "For the phone's own alarm", text(now.end), rank=MORE,
                  rough=between(now.end) or "a page cannot ring while the screen is off; set it there too")
        )
        for place, row in enumerate(values["steps"]):
            if row["done"] == "no":
                due = now.end - values["duration"] + row["minute"]
                found.append(
                    line("alarm_" + str(place + 1), row["name"], due, "s", text(due),
                         rough=between(due) or "for the phone's own alarm", rank=MORE)
                )
        if between(now.end):
            found.append(words("clocks_change", "Summer time", "It ends at " + text(now.end) + ": "
                               + between(now.end) + ".", rank=ASK))
    return found


def aloud(values, now: State) -> str:
    """What a voice says: the pot, what is left, what comes next; short, and figures as words can carry them."""
    said = values["batch"] + ": "
    if now.left > 0:
        said += spoken(now.left) + " left."
    else:
        said += "time is up, " + spoken(now.over, UP) + " ago. Use no more of it."
    if now.step is not None and (now.left > 0 or now.due > 0):
        name = values["steps"][now.step]["name"]
        said += " Next: " + name + (", in " + spoken(now.due) if now.due > 0 else ", now") + "."
    return said


def first_to_ring(states):
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

"""Pot: a running pot told from what was stored about it and the time now. The page only lays this out and rings.

Stored are the wall time of the start and the duration, so that a killed page or a reload loses nothing. Where the page
also knows by its own steady clock how long it has been, and the two disagree, the phone's clock was changed: the later
of the two ages counts, which is the earlier alarm.
"""

from collections import namedtuple
from math import floor

from . import pot_air
from .catalogue.cautions import STANDING
from .catalogue.containers import CONTAINERS as KNOWN
from .clock import DAY, HOURS, clock_text
from .errors import InputError
from .inputs import Choice, Group, Number, Text
from .lines import ANSWER, ASK, MORE, WARN, line, words
from .numbers import DOWN, UP, shown

CONTAINERS = tuple([row[:2] for row in KNOWN])
APART = 2.0  # s; two clocks of one phone that differ by more were changed
SOON = 180.0  # s; told as the last minutes
AGAIN = 300.0  # s; after "still good" the pot is looked at again (own judgement)
FUTURE = 4102444800.0  # s; the year 2100
HEAT = next(text for name, _, text, _, _ in STANDING if name == "heat")

INPUTS = (
    Number("started", "Started", unit="s", low=0, high=FUTURE, help="Wall time, seconds since 1970 in UTC."),
    Number("duration", "Usable for", unit="min", low=0, high=2880, above=True),
    Number("share", "That is, of the time until it is thick", unit="%", low=10, high=100, optional=True),
    Number("now", "Now", unit="s", low=0, high=FUTURE, help="Wall time, seconds since 1970 in UTC."),
    Number("elapsed", "By the steady clock", unit="s", low=0, high=1e7, optional=True,
           help="Seconds since the start by a clock that nobody sets; left empty after a reload."),
    Number("zone", "Clock here ahead of UTC", unit="min", low=-840, high=840, default=0),
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
)

# passed, left, over [s]: left and over are never below nought; apart: by how much the wall clock is ahead of the steady
# one [s], 0 where they agree or only one is known; end: when it ends [s, wall clock as it now stands]; step: index of
# the next step not done, or None; due: how long until then [s], below nought when it should have been done
State = namedtuple("State", ("passed", "left", "over", "apart", "end", "step", "due"))


def state(started: float, duration: float, now: float, elapsed=None, steps=()) -> State:
    """How a pot stands.
        passed = max(now - started, elapsed);  left = duration - passed

    started, now: wall times [s]; duration [s]; elapsed: by a steady clock [s], or None
    steps: (minute [s from the start], done) in the order of the work
    A wall clock set back before the start counts as no time passed: the steady clock then decides alone.
    >>> state(1000.0, 600.0, 1360.0)[:2], state(1000.0, 600.0, 1360.0, 420.0)[:4]
    ((360.0, 240.0), (420.0, 180.0, 0.0, -60.0))
    """
    wall = now - started
    passed = max(wall, 0.0)
    apart = 0.0
    if elapsed is not None:
        if abs(wall - elapsed) > APART:
            apart = wall - elapsed
        passed = max(passed, elapsed)
    elif wall < -APART:
        apart = wall
    step, due = None, 0.0
    for place, (minute, done) in enumerate(steps):
        if not done:
            step, due = place, minute - passed
            break
    return State(
        passed, max(0.0, duration - passed), max(0.0, passed - duration), apart, now + duration - passed, step, due
    )


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


CHECKS = (check, pot_air.check)


def left_text(seconds: float, toward=DOWN) -> str:
    """A span as minutes and seconds: what is left rounded down, what is over rounded UP.

    >>> left_text(754.9), left_text(59.2), left_text(3725.0), left_text(59.2, UP)
    ('12:34', '0:59', '62:05', '1:00')
    """
    whole = floor(seconds + 1e-6) if toward == DOWN else -floor(1e-6 - seconds)
    return str(whole // 60) + ":" + ("0" if whole % 60 < 10 else "") + str(whole % 60)


def spoken(seconds: float, toward=DOWN) -> str:
    """A span for the ear: whole minutes, or seconds when there is less than one.

    >>> spoken(754.0), spoken(60.0), spoken(59.0), spoken(61.0, UP)
    ('12 minutes', '1 minute', '59 seconds', '2 minutes')
    """
    if seconds < 60:
        count, unit = int(shown(seconds, 0, toward)), "second"
    else:
        count, unit = int(shown(seconds / 60, 0, toward)), "minute"
    return str(count) + " " + unit + ("" if count == 1 else "s")


def answer(values):
    """What is left, the next step, the end on the clock, the time for the phone's own alarm, and what to say aloud."""
    values, rows = pot_air.followed(values), values["steps"]
    now = state(values["started"], values["duration"], values["now"], values["elapsed"],
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
    if values["share"] is not None and now.left > 0:
        found.append(words("meaning", "What the minutes are", "{}% of the time until it is thick; the rest is kept "
                           "back".format(shown(values["share"] * 100)), rank=MORE))
    found.append(words("place", values["batch"], container + (" · " + values["place"] if values["place"] else "")))
    found.append(words("say", "Said aloud", aloud(values, now), rank=MORE))
    found.append(line("passed", "Since it was mixed", now.passed, "s", left_text(now.passed), rank=MORE))
    found.append(words("used", "For the log", "used " + spoken(now.passed) + " after mixing", rank=MORE))
    again = max(values["duration"], now.passed + AGAIN)
    found.append(line("again", "If it is still good", again, "s", "looked at again in " + spoken(AGAIN), rank=MORE))
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


def _clock_lines(values, now):
    here = now.end + values["zone"]
    hours = values["hours"]
    today = floor((values["now"] + values["zone"]) / DAY) * DAY
    text = clock_text(here - today, hours, DOWN)
    found = [line("end", "Ends", now.end, "s", text, rough="rounded down to the minute, to be sure")]
    if now.left > 0:
        found.append(
            words("alarm", "For the phone's own alarm", text, rank=MORE,
                  rough="a page cannot ring while the screen is off; set it there too")
        )
        for place, row in enumerate(values["steps"]):
            if row["done"] == "no":
                due = now.end - values["duration"] + row["minute"] + values["zone"] - today
                found.append(
                    line("alarm_" + str(place + 1), row["name"], due + today - values["zone"], "s",
                         clock_text(due, hours, DOWN), rough="for the phone's own alarm", rank=MORE)
                )
    if now.apart:
        found.append(
            line("clock_changed", "The phone's clock changed", now.apart, "s", "It is " + spoken(abs(now.apart), UP)
                 + (" ahead" if now.apart > 0 else " behind") + " of what has passed here. The earlier alarm counts.",
                 rank=WARN, rough="" if values["elapsed"] is not None
                 else "it now shows a time before the start; what has "
                 "passed is not known: take the pot as used up if in doubt")
        )
    elif values["elapsed"] is None and now.over > 6 * 3600:
        found.append(
            words("long_ago", "Long ago",
                  "This pot ended while the page was closed. If it is not this pot, or the clock was changed, end it.",
                  rank=ASK)
        )
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

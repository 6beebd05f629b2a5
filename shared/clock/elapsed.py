"""Elapsed: how much time has passed by the two clocks of a phone: its own, which can be set, and a steady one.

The phone's own clock goes on while it sleeps, but a hand or the network can set it. The steady clock cannot be set, but
it may stand still in sleep and starts anew with each page. What was passed when somebody last looked is kept with the
phone's time of that moment, and time never goes back behind it, whatever either clock says. The page measures; what
has passed, and what of it is in doubt, is decided here.
"""

from collections import namedtuple

from ..catalogue.pots import AWAY
from ..catalogue.pots import CLOCKS_APART as APART
from ..forms.inputs import Choice, Number
from ..forms.types import Values

FUTURE = 4102444800.0  # s; the year 2100
YES = (("no", "elapsed-lost.no"), ("yes", "elapsed-lost.yes"))

INPUTS = (
    Number("now", "elapsed-now", unit="s", low=0, high=FUTURE, help="elapsed-now.help"),
    Number("elapsed", "elapsed-steady", unit="s", low=0, high=1e7, optional=True,
           help="elapsed-steady.help"),
    Number("seen", "elapsed-seen", unit="s", low=0, high=1e7, optional=True, help="elapsed-seen.help"),
    Number("seen_at", "elapsed-seen-at", unit="s", low=0, high=FUTURE, optional=True, help="elapsed-seen-at.help"),
    Choice("watched", "elapsed-watched", (("yes", "elapsed-watched.yes"), ("no", "elapsed-watched.no")), default="yes"),
    Number("jumped", "elapsed-jumped", unit="s", low=0, high=FUTURE, default=0, help="elapsed-jumped.help"),
    Number("unseen", "elapsed-unseen", unit="s", low=0, high=FUTURE, default=0, help="elapsed-unseen.help"),
    Choice("lost", "elapsed-lost", YES, default="no", help="elapsed-lost.help"),
)

# seconds: passed; behind: how far the phone's clock is behind them; jumped: how much of them the phone's clock jumped
# ahead in sight; unseen: how much of them passed by the phone's clock alone: page closed, phone asleep [s]; lost: the
# clock was set back while nobody looked, so that more may have passed than is counted
Passed = namedtuple("Passed", ("seconds", "behind", "jumped", "unseen", "lost"))


def passed(started: "float | None", now: float, elapsed: "float | None" = None, seen: "float | None" = None,
           seen_at: "float | None" = None, watched: bool = True, jumped: float = 0.0, unseen: float = 0.0,
           lost: bool = False, away: float = AWAY, early: bool = True) -> Passed:
    """What has passed since the start: never less than was seen, and the most that a clock asks for.
        t = max(seen, now - started, elapsed), and seen + (now - seen_at) where the steady clock cannot know

    started: wall time [s], or None where only `seen` counts; now, seen_at: wall times [s]; elapsed, seen: since the
    start [s], or None; away: longer than that unseen is said [s]
    early: True where more time is the safe side (an end comes earlier); False where less is (stirred long enough)
    A page that was just opened has no steady clock; one that was hidden may have had it stand still. What nobody can
    see: a clock set back, while the page was closed, by just as much as passed.

    >>> passed(1000.0, 1360.0)[0], passed(1000.0, 1360.0, 420.0)[:2], passed(1000.0, 1200.0, None, 720.0, 1720.0)[:2]
    (360.0, (420.0, 60.0), (720.0, 520.0))
    >>> passed(1000.0, 1200.0, None, 720.0, 1720.0).lost, passed(1000.0, 1900.0, None, 720.0, 1720.0).unseen
    (True, 180.0)
    """
    base, known = 0.0, False
    wall = None if started is None else now - started
    apart = wall  # by the phone's clock, since it was last seen
    if seen is not None and seen_at is not None:
        base, apart, known = seen, now - seen_at, True
    found = max(seen or 0.0, elapsed or 0.0)
    if wall is not None and early:
        found = max(found, wall)
    if apart is None:
        pass
    elif elapsed is None:
        found = max(found, base + apart)
        lost = lost or apart < -APART
        unseen += apart if known and apart > away else 0.0
    elif apart > elapsed - base + APART:
        if early or not watched:
            found = max(found, base + apart)
        gained = apart - elapsed + base
        if not watched:
            unseen += gained if gained > away else 0.0
        elif early:
            jumped += gained
    elif apart < elapsed - base - APART and not watched:
        lost = True
    behind = 0.0 if wall is None or found - wall <= APART else found - wall
    return Passed(found, behind, jumped, unseen, lost)


def of(values: Values, started: "float | None" = None, away: float = AWAY, early: bool = True) -> Passed:
    """`passed` of the values of INPUTS."""
    return passed(started, values["now"], values["elapsed"], values["seen"], values["seen_at"],
                  values["watched"] == "yes", values["jumped"], values["unseen"], values["lost"] == "yes", away, early)

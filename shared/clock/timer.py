"""Timer: what is left of a step that is done for a time, told from what was seen of it and the clocks now."""
from collections import namedtuple

from ..forms.inputs import Choice, Number
from ..forms.types import Values
from . import elapsed
from .elapsed import INPUTS as CLOCKS
from .timer_lines import say

LEAST, MOST = "least", "most"

INPUTS = (
    Number("lasts", "timer-lasts", unit="min", low=0, high=2880, above=True),
    Choice("bound", "timer-bound", ((LEAST, "timer-bound.least"), (MOST, "timer-bound.most")), default=LEAST),
) + CLOCKS
CHECKS = ()

# left: of the step, never below nought [s]; passed: `elapsed.Passed`, with what of it is in doubt
TimerResult = namedtuple("TimerResult", ("left", "passed"))


def reckon(values: Values) -> TimerResult:
    """What is left, and what has passed.

    A clock that was set ahead ends nothing early that has to last (stirring), and nothing late that must not.
    """
    now = elapsed.of(values, early=values["bound"] == MOST)
    return TimerResult(max(0.0, values["lasts"] - now.seconds), now)


def answer(values: Values) -> list:
    """What is left, what has passed, and what of it is in doubt."""
    return say(reckon(values), values)

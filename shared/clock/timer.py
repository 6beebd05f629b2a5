"""Timer: what is left of a step that is done for a time, told from what was seen of it and the clocks now."""

from ..forms.inputs import Choice, Number
from ..words.lines import ANSWER, ASK, MORE, WARN, line, words
from ..words.numbers import UP
from . import elapsed
from .elapsed import INPUTS as CLOCKS
from .pot_spans import left_text, spoken

LEAST, MOST = "least", "most"

INPUTS = (
    Number("lasts", "Lasts", unit="min", low=0, high=2880, above=True),
    Choice("bound", "It is done", ((LEAST, "at least so long"), (MOST, "at most so long")), default=LEAST),
) + CLOCKS
CHECKS = ()


def answer(values):
    """What is left, what has passed, and what of it is in doubt.

    A clock that was set ahead ends nothing early that has to last (stirring), and nothing late that must not.
    """
    now = elapsed.of(values, early=values["bound"] == MOST)
    left = max(0.0, values["lasts"] - now.seconds)
    found = [line("left", "Left", left, "s", left_text(left, UP), rank=ANSWER, rough="rounded up")]
    if now.lost:
        found.append(words("lost", "In doubt", "The phone's clock was set back while nobody looked: it counts on from"
                           " what was seen last.", rank=WARN))
    elif now.unseen:
        found.append(words("unseen", "In doubt", spoken(now.unseen, UP) + " passed by the phone's clock alone:"
                           " page closed, or phone asleep.", rank=ASK))
    found.append(line("passed", "Passed", now.seconds, "s", left_text(now.seconds), rank=MORE))
    return found + elapsed.kept(now)

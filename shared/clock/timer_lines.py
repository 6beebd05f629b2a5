"""Timer lines: what is said of a step that is done for a time."""
from ..forms.types import Found, Values
from ..words.lines import ANSWER, ASK, MORE, WARN, Line, line, words
from ..words.numbers import UP
from . import elapsed_lines
from .pot_spans import left_text, spoken


def say(found: Found, values: Values) -> list[Line]:
    """found: `timer.TimerResult`"""
    now = found.passed
    lines = [line("left", "Left", found.left, "s", left_text(found.left, UP), rank=ANSWER, rough="rounded up")]
    if now.lost:
        lines.append(words("lost", "In doubt", "The phone's clock was set back while nobody looked: it counts on from"
                           " what was seen last.", rank=WARN))
    elif now.unseen:
        lines.append(words("unseen", "In doubt", spoken(now.unseen, UP) + " passed by the phone's clock alone:"
                           " page closed, or phone asleep.", rank=ASK))
    lines.append(line("passed", "Passed", now.seconds, "s", left_text(now.seconds), rank=MORE))
    return lines + elapsed_lines.kept(now)

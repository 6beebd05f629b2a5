"""Timer lines: what is said of a step that is done for a time."""
from ..forms.types import Found, Values
from ..words.lines import ANSWER, ASK, MORE, WARN, Line, line, words
from ..words.messages import message, typed
from ..words.numbers import UP
from . import elapsed_lines
from .pot_spans import left_text, spoken


def say(found: Found, values: Values) -> list[Line]:
    """found: `timer.TimerResult`"""
    now = found.passed
    lines = [line("left", "timer-left", found.left, "s", typed(left_text(found.left, UP)), rank=ANSWER,
                  rough="timer-left.rough")]
    if now.lost:
        lines.append(words("lost", "timer-doubt", "timer-doubt.lost", rank=WARN))
    elif now.unseen:
        lines.append(words("unseen", "timer-doubt", message("timer-doubt.unseen", span=spoken(now.unseen, UP)),
                           rank=ASK))
    lines.append(line("passed", "timer-passed", now.seconds, "s", typed(left_text(now.seconds)), rank=MORE))
    return lines + elapsed_lines.kept(now)

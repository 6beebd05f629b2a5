"""Pot doubt lines: what is said of what a running pot cannot know."""
from ..forms import recall
from ..forms.types import Found, Values
from ..words.lines import ASK, WARN, Line, line, words
from ..words.messages import message
from ..words.numbers import NEAREST, UP
from .pot_spans import spoken

# what is said of each `pot_doubt.Doubts.clock` of this phone
CLOCKS = {"ahead": "pot-clock-changed.ahead", "before": "pot-clock-changed.before",
          "behind": "pot-clock-changed.behind"}


def say(found: Found, values: Values) -> list[Line]:
    """What is in doubt, in plain words. found: `pot_doubt.Doubts`; values: of the move pot"""
    lines = _of_a_link(found) if found.link else _of_this_phone(found)
    made = recall.warning(values["by"]) if values["by"] else ""
    if made:
        lines.append(words("made_by", "pot-recalled", made, rank=ASK))
    if found.long_ago:
        lines.append(words("long_ago", "pot-long-ago", "pot-long-ago.text", rank=ASK))
    return lines


def _of_a_link(found: Found) -> list[Line]:
    lines = []
    if found.unfit:
        lines.append(words("link_times", "pot-link-times", "pot-link-times.text", rank=WARN))
    if found.clock:
        lines.append(line("clocks_differ", "pot-clocks-differ", found.apart, "s",
                          message("pot-clocks-differ.text", span=spoken(found.apart, NEAREST)), rank=WARN))
    elif found.unseen:
        lines.append(line("unseen", "pot-on-its-way", found.unseen, "s",
                          message("pot-on-its-way.text", span=spoken(found.unseen)), rank=ASK))
    return lines


def _of_this_phone(found: Found) -> list[Line]:
    lines = []
    if found.clock:
        lines.append(line("clock_changed", "pot-clock-changed",
                          found.apart if found.clock == "ahead" else -found.apart, "s",
                          message(CLOCKS[found.clock], span=spoken(found.apart, NEAREST)), rank=WARN))
    if found.lost:
        lines.append(words("lost", "pot-lost", "pot-lost.text", rank=WARN))
    elif found.unseen:
        lines.append(line("unseen", "pot-unseen", found.unseen, "s",
                          message("pot-unseen.text", span=spoken(found.unseen, UP)), rank=ASK))
    return lines

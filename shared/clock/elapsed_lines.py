"""Elapsed lines: what the page keeps of what has passed, and hands in again with the next question."""
from ..forms.types import Found
from ..words.lines import MORE, Line, words
from ..words.messages import quantity
from ..words.numbers import shown


def kept(found: Found) -> list[Line]:
    """Lines whose part the page keeps and asks with again, under the name behind "keep_": doubts outlive a page.

    found: `elapsed.Passed`
    """
    lines = []
    for name in ("jumped", "unseen"):
        seconds = getattr(found, name)
        if seconds:
            lines.append(words("keep_" + name, "elapsed-kept", quantity(seconds, "s"), part=shown(seconds, 1),
                               rank=MORE))
    if found.lost:
        lines.append(words("keep_lost", "elapsed-kept", "elapsed-lost.yes", part="yes", rank=MORE))
    return lines

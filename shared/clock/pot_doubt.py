"""Pot doubt: what a running pot cannot know: a clock was changed, nobody looked, or two phones' clocks differ."""
from collections import namedtuple

from ..catalogue.pots import LONG_AGO
from ..forms.types import Found, Values
from .elapsed import APART

# what is wrong with a clock: two phones' clocks differ; this one's is ahead of what has passed, shows a time before
# the pot was mixed, or is behind of what has passed
DIFFER, AHEAD, BEFORE, BEHIND = "differ", "ahead", "before", "behind"
# link: a link brought the pot; unfit: by the link's own times it was made before its pot was mixed; clock: one of the
# above, or None; apart: by how much [s]; unseen: what nobody saw pass, where that is in doubt [s]; lost: more may have
# passed than is counted; long_ago: the pot ended long ago, while the page was closed
Doubts = namedtuple("Doubts", ("link", "unfit", "clock", "apart", "unseen", "lost", "long_ago"))


def unfit(values: Values) -> bool:
    """Whether the link that brings the pot was made, by its own times, before the pot was mixed."""
    return values["sent"] is not None and values["sent"] < values["started"] - APART


def reckon(values: Values, now: Found) -> Doubts:
    """What is in doubt. values: of the move pot; now: `pot.State`"""
    doubt, link = now.doubt, values["sent"] is not None
    behind = doubt.behind if doubt.behind > doubt.jumped + APART else 0.0  # set ahead, then right again: no news
    long_ago = bool(doubt.unseen or values["elapsed"] is None) and not doubt.lost and now.over > LONG_AGO
    if link:
        return Doubts(True, unfit(values), DIFFER if behind else None, behind, 0.0 if behind else doubt.unseen, False,
                      long_ago)
    clock = BEHIND if behind else None
    if doubt.jumped:
        clock = AHEAD
    elif behind and values["seen"] is None and values["elapsed"] is None:
        clock = BEFORE
    return Doubts(False, False, clock, doubt.jumped or behind,
                  doubt.unseen if now.left > 0 and not doubt.lost else 0.0, doubt.lost, long_ago)

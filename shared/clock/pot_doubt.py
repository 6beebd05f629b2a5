"""Pot doubt: what a running pot cannot know: a clock was changed, nobody looked, or two phones' clocks differ."""

from ..catalogue.pots import LONG_AGO
from ..forms import recall
from ..words.lines import ASK, WARN, line, words
from ..words.numbers import NEAREST, UP
from .elapsed import APART
from .pot_spans import spoken

SET_IT = " Set what is left below, by the other phone."
IN_DOUBT = " Take the pot as used up if in doubt."
EARLIER = " The earlier alarm counts."


def lines(values, now):
    """What is in doubt, in plain words. values: of the move pot; now: `pot.State`"""
    doubt, sent = now.doubt, values["sent"]
    behind = doubt.behind if doubt.behind > doubt.jumped + APART else 0.0  # set ahead, then right again: no news
    made = recall.warning(values["by"]) if values["by"] else ""
    if sent is not None:
        found = _of_a_link(sent < values["started"] - APART, behind, doubt)
    else:
        found = _of_this_phone(values, behind, now)
    if made:
        found.append(words("made_by", "Made by a recalled build", made, rank=ASK))
    if (doubt.unseen or values["elapsed"] is None) and not doubt.lost and now.over > LONG_AGO:
        found.append(
            words("long_ago", "Long ago",
                  "This pot ended while the page was closed. If it is not this pot, or the clock was changed, end it.",
                  rank=ASK)
        )
    return found


def _of_a_link(unfit, behind, doubt):
    found = []
    if unfit:
        found.append(words("link_times", "The link does not fit", "By its own times it was made before its pot was"
                           " mixed." + IN_DOUBT + SET_IT, rank=WARN))
    if behind:
        found.append(line("clocks_differ", "The phones' clocks differ", behind, "s", "This one is at least "
                          + spoken(behind, NEAREST) + " behind. It counts from when the link was made; how long the"
                          " link was on its way is not known." + SET_IT, rank=WARN))
    elif doubt.unseen:
        found.append(line("unseen", "On its way", doubt.unseen, "s", spoken(doubt.unseen) + " since the link was made,"
                          " by the two phones' clocks. If you have it only just now, the clocks differ, and this"
                          " one ends too early." + SET_IT, rank=ASK))
    return found


def _of_this_phone(values, behind, now):
    found, doubt = [], now.doubt
    if doubt.jumped:
        found.append(line("clock_changed", "The phone's clock changed", doubt.jumped, "s", "It is "
                          + spoken(doubt.jumped, NEAREST) + " ahead of what has passed here." + EARLIER, rank=WARN))
    elif behind and values["seen"] is None and values["elapsed"] is None:
        found.append(line("clock_changed", "The phone's clock changed", -behind, "s", "It shows a time "
                          + spoken(values["started"] - values["now"], NEAREST) + " before this pot was mixed, or the"
                          " pot was begun on a phone whose clock differs." + EARLIER, rank=WARN))
    elif behind:
        found.append(line("clock_changed", "The phone's clock changed", -behind, "s", "It is " + spoken(behind, NEAREST)
                          + " behind of what has passed here." + EARLIER, rank=WARN))
    if doubt.lost:
        found.append(words("lost", "What has passed is in doubt", "The phone's clock was set back while nobody looked:"
                           " more may have passed than is counted." + IN_DOUBT, rank=WARN))
    elif doubt.unseen and now.left > 0:
        found.append(line("unseen", "While nobody looked", doubt.unseen, "s", spoken(doubt.unseen, UP) + " passed by"
                          " the phone's clock alone: page closed, or phone asleep. If it was set back then, less is"
                          " left.", rank=ASK))
    return found

"""Pot doubt lines: what is said of what a running pot cannot know."""
from ..forms import recall
from ..forms.types import Found, Values
from ..words.lines import ASK, WARN, Line, line, words
from ..words.numbers import NEAREST, UP
from .pot_spans import spoken

SET_IT = " Set what is left below, by the other phone."
IN_DOUBT = " Take the pot as used up if in doubt."
EARLIER = " The earlier alarm counts."
# `pot_doubt.Doubts.clock` of this phone: what stands before and behind the span
CLOCKS = {
    "ahead": ("It is ", " ahead of what has passed here."),
    "before": ("It shows a time ", " before this pot was mixed, or the pot was begun on a phone whose clock differs."),
    "behind": ("It is ", " behind of what has passed here."),
}


def say(found: Found, values: Values) -> list[Line]:
    """What is in doubt, in plain words. found: `pot_doubt.Doubts`; values: of the move pot"""
    lines = _of_a_link(found) if found.link else _of_this_phone(found)
    made = recall.warning(values["by"]) if values["by"] else ""
    if made:
        lines.append(words("made_by", "Made by a recalled build", made, rank=ASK))
    if found.long_ago:
        lines.append(
            words("long_ago", "Long ago",
                  "This pot ended while the page was closed. If it is not this pot, or the clock was changed, end it.",
                  rank=ASK)
        )
    return lines


def _of_a_link(found: Found) -> list[Line]:
    lines = []
    if found.unfit:
        lines.append(words("link_times", "The link does not fit", "By its own times it was made before its pot was"
                           " mixed." + IN_DOUBT + SET_IT, rank=WARN))
    if found.clock:
        lines.append(line("clocks_differ", "The phones' clocks differ", found.apart, "s", "This one is at least "
                          + spoken(found.apart, NEAREST) + " behind. It counts from when the link was made; how long"
                          " the link was on its way is not known." + SET_IT, rank=WARN))
    elif found.unseen:
        lines.append(line("unseen", "On its way", found.unseen, "s", spoken(found.unseen) + " since the link was made,"
                          " by the two phones' clocks. If you have it only just now, the clocks differ, and this"
                          " one ends too early." + SET_IT, rank=ASK))
    return lines


def _of_this_phone(found: Found) -> list[Line]:
    lines = []
    if found.clock:
        before, behind = CLOCKS[found.clock]
        lines.append(line("clock_changed", "The phone's clock changed",
                          found.apart if found.clock == "ahead" else -found.apart, "s",
                          before + spoken(found.apart, NEAREST) + behind + EARLIER, rank=WARN))
    if found.lost:
        lines.append(words("lost", "What has passed is in doubt", "The phone's clock was set back while nobody looked:"
                           " more may have passed than is counted." + IN_DOUBT, rank=WARN))
    elif found.unseen:
        lines.append(line("unseen", "While nobody looked", found.unseen, "s", spoken(found.unseen, UP) + " passed by"
                          " the phone's clock alone: page closed, or phone asleep. If it was set back then, less is"
                          " left.", rank=ASK))
    return lines

"""Timings lines: what own working times say beside the label's."""
from ..forms.types import Found, Values
from ..words.lines import SAY, Line, line, words
from ..words.numbers import DOWN, shown
from ..words.units import from_si
from .log_lines import against


def say(found: "Found | None", values: Values) -> list[Line]:
    """found: `timings.TimingsResult`, None where no batch has a time"""
    if found is None:
        return [words("none", "Your times", "no batch has a time yet: note in the log when one stiffens",
                      rank=SAY)]
    lines = [line("shortest", "The shortest yet", found.shortest, "s",
                  shown(from_si(found.shortest, "min"), 0, DOWN) + " min",
                  rough="of " + str(found.count) + " timed; mass and warmth differ from pot to pot")]
    if found.share is not None:
        lines.append(line("share", "Yours against the label", found.share, "1", against(found.share),
                          rough="half of " + str(found.labelled) + " batches lie to each side"))
    return lines

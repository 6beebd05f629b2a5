"""Timings lines: what own working times say beside the label's."""
from ..forms.types import Found, Values
from ..words.lines import SAY, Line, line, words
from ..words.messages import message, quantity
from ..words.numbers import DOWN
from .log_lines import against


def say(found: "Found | None", values: Values) -> list[Line]:
    """found: `timings.TimingsResult`, None where no batch has a time"""
    if found is None:
        return [words("none", "timings-none", "timings-none.text", rank=SAY)]
    lines = [line("shortest", "timings-shortest", found.shortest, "s", quantity(found.shortest, "min", DOWN, 0),
                  rough=message("timings-shortest.rough", count=found.count))]
    if found.share is not None:
        lines.append(line("share", "timings-share", found.share, "1", against(found.share),
                          rough=message("timings-share.rough", count=found.labelled)))
    return lines

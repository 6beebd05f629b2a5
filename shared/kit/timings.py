"""Timings: own working times of the poured batches against the label's, over time."""
from collections import namedtuple

from ..equations.dose_calibration import middle
from ..forms.inputs import Group, Number
from ..forms.types import Values
from . import timings_drawing
from .log import against_label
from .timings_lines import say

MOST_ROWS = 200

INPUTS = (
    Group("rows", "timings-rows", (
        # as the log calls them, which hands its batches on
        Number("own_time", "log-own-time", unit="min", low=0, high=2880, above=True, was=("own",)),
        Number("label_time", "log-label-time", unit="min", low=0, high=2880, above=True, optional=True, was=("label",)),
    ), most=MOST_ROWS, each="batch-each"),
)
CHECKS = ()

# shortest: of the own times [s]; count: of them; share: the middle of them against the label [1], None where no label's
# time is known; labelled: of how many batches it is
TimingsResult = namedtuple("TimingsResult", ("shortest", "count", "share", "labelled"))


def reckon(values: Values) -> "TimingsResult | None":
    """The shortest time, which is the one to plan with, and the middle against the label; None without any."""
    rows = values["rows"]
    if not rows:
        return None
    shares = [against_label(row["own_time"], row["label_time"]) for row in rows if row["label_time"]]
    shortest = min([row["own_time"] for row in rows])
    return TimingsResult(shortest, len(rows), middle(shares) if shares else None, len(shares))


def answer(values: Values) -> list:
    """The middle of the own times against the label, and the shortest, which is the one to plan with."""
    return say(reckon(values), values)


def figures(values: Values) -> list:
    """The last batches side by side."""
    return timings_drawing.figures(values)

"""Timeline: the day of a plan as a figure."""

from .clock import clock_text
from .figures import box, figure, note, path
from .laying import SOFT
from .numbers import DOWN, UP

WIDE, ROW, LABEL = 320.0, 12.0, 26.0
ROLES = {
    "mix": "mix",
    "wet_mix": "mix",
    "place": "putty",
    "tool": "putty",
    "clean": "putty",
    "wet": "tape",
    "lay": "tape",
    "roll": "tape",
    "peel": "peel",
}


def timeline(values, plan):
    """The day from left to right, a row for each batch and hand, and where each cove stops being soft."""
    batches = plan.followed()
    start = min([batch.start for batch in batches])
    end = max([batch.steps[-1].end for batch in batches])
    scale = (WIDE - LABEL - 4) / (end - start)
    shapes, down = [], 4.0
    for batch in batches:
        hands = sorted(set([step.who for step in batch.steps]))
        shapes.append(note("label", 2, down + ROW - 3, str(batch.number), "start"))
        for who in hands:
            shapes.extend(_bars([step for step in batch.steps if step.who == who], down, start, scale))
            down += ROW
        by = LABEL + (dict(batch.deadlines)[SOFT] - start) * scale
        if by <= WIDE:
            shapes.append(path("limit", ((by, down - ROW * len(hands)), (by, down - 2))))
        down += 3
    for time in (start, end):
        shapes.append(
            note(
                "dimension",
                LABEL + (time - start) * scale,
                down + 9,
                clock_text(time, values["hours"], UP if time == end else DOWN, False),
                "start" if time == start else "end",
            )
        )
    told_so = "; ".join(
        [
            "batch {} from {} to {}".format(
                batch.number, clock_text(batch.start, values["hours"]), clock_text(batch.steps[-1].end, values["hours"])
            )
            for batch in batches
        ]
    )
    return figure("plan", "The day's batches", WIDE, down + 14, shapes, told_so)


def _bars(steps, down, start, scale):
    """Steps of one hand as bars; those of one kind that follow each other are one bar."""
    found, role, begun, ended = [], None, 0.0, 0.0
    for step in sorted(steps, key=lambda step: (step.start, step.end)):
        own = ROLES[step.key]
        if own == role and step.start < ended + 1:
            ended = max(ended, step.end)
            continue
        if role:
            found.append(box(role, LABEL + (begun - start) * scale, down, (ended - begun) * scale, ROW - 2))
        role, begun, ended = own, step.start, step.end
    found.append(box(role, LABEL + (begun - start) * scale, down, (ended - begun) * scale, ROW - 2))
    return found

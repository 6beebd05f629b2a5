"""Timeline: the day of a plan as a figure."""

from ..drawing.shapes import box, figure, note, path
from ..forms.types import Said, Values
from ..words.messages import message, noted
from .batch_lines import moment
from .plan_found import FILM, SOFT, Found
from .steps import Step

WIDE, ROW, LABEL = 320.0, 18.0, 26.0
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


LEGEND = (("mix", "plan-timeline.mix"), ("putty", "plan-timeline.putty"), ("tape", "plan-timeline.tape"),
          ("peel", "plan-timeline.peel"))
HARD = {SOFT: "plan-timeline.cove", FILM: "plan-timeline.film"}


def timeline(values: Values, found: Found) -> Values:
    """The day from left to right, a row for each batch and hand, and where each cove stops being soft; of tape alone,
    where its film stiffens."""
    batches, close = [one.batch for one in found.batches], found.close
    start = min([batch.start for batch in batches])
    end = max([batch.steps[-1].end for batch in batches])
    ends = [dict(batch.deadlines) for batch in batches]
    hard = [one[SOFT] if SOFT in one else one[FILM] for one in ends]
    kinds = [limit for limit in (SOFT, FILM) if [1 for one in ends if (SOFT in one) == (limit == SOFT)]]
    limit = HARD[kinds[0]] if len(kinds) == 1 else "plan-timeline.both"
    scale = (WIDE - LABEL - 4) / (max(end, max(hard)) - start)
    shapes, down = [], 4.0
    for batch, by in zip(batches, hard):
        hands = sorted(set([step.who for step in batch.steps]))
        shapes.append(note("label", 2, down + ROW - 3, str(batch.number), "start"))
        for who in hands:
            shapes.extend(_bars([step for step in batch.steps if step.who == who], down, start, scale))
            down += ROW
        shapes.append(_upright(LABEL + (by - start) * scale, down - ROW * len(hands), down - 2))
        down += 3
    first, last = moment(values, close, start, False), moment(values, close, end, False)
    shapes.append(note("dimension", LABEL, down + 12, first, "start"))
    shapes.append(note("dimension", LABEL + (end - start) * scale, down + 12, last, "end"))
    shapes.extend(_legend(down + 20, limit))
    said = []
    for batch in batches:
        said.append(message("plan-timeline.batch", number=batch.number, start=moment(values, close, batch.start),
                            end=moment(values, close, batch.steps[-1].end)))
    return figure("plan", "plan-timeline", WIDE, down + 52, shapes, noted(said))


def _upright(x: float, top: float, bottom: float) -> Values:
    return path("limit", ((x, top), (x, bottom)))


def _legend(down: float, limit: Said) -> "list[Values]":
    found, x = [], 2.0
    for place, (role, label) in enumerate(LEGEND + (("limit", limit),)):
        if place == 3:
            x, down = 2.0, down + 18
        found.append(_upright(x + 4, down, down + 8) if role == "limit" else box(role, x, down - 2, 12, 12))
        found.append(note("legend", x + 17, down + 8, label, "start"))
        x += 100
    return found


def _bars(steps: "list[Step]", down: float, start: float, scale: float) -> "list[Values]":
    """Steps of one hand as bars; those of one kind that follow each other are one bar."""
    found, role, begun, ended = [], "", 0.0, 0.0
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

"""Timings: own working times of the poured batches against the label's, over time."""
from ..drawing.shapes import box, figure, note, path
from ..equations.dose_calibration import middle
from ..forms.inputs import Group, Number
from ..words.lines import SAY, line, words
from ..words.numbers import DOWN, shown
from ..words.units import from_si
from .log import against_label

MOST_ROWS = 200
DRAWN = 12  # batches in the picture: more bars than that are hairlines on a phone
WIDTH, HEIGHT, FLOOR, TOP = 360, 170, 146, 26

INPUTS = (
    Group("rows", "Batches with a time, oldest first", (
        Number("own", "It stiffened after", unit="min", low=0, high=2880, above=True),
        Number("label", "The label says", unit="min", low=0, high=2880, above=True, optional=True),
    ), most=MOST_ROWS, each="Batch"),
)
CHECKS = ()


def answer(values):
    """The middle of the own times against the label, and the shortest, which is the one to plan with."""
    rows = values["rows"]
    if not rows:
        return [words("none", "Your times", "no batch has a time yet: note when one stiffens, and it stands here",
                      rank=SAY)]
    shortest = min([row["own"] for row in rows])
    lines = [line("shortest", "The shortest yet", shortest, "s", shown(from_si(shortest, "min"), 0, DOWN) + " min",
                  rough="of " + str(len(rows)) + " timed; mass and warmth differ from pot to pot")]
    shares = [against_label(row["own"], row["label"]) for row in rows if row["label"]]
    if shares:
        share = middle(shares)
        lines.append(line("share", "Yours against the label", share, "1", shown(abs(share) * 100) + " % " + (
            "sooner" if share < 0 else "longer"), rough="half of " + str(len(shares)) + " batches lie to each side"))
    return lines


def figures(values):
    """A bar for each of the last batches, as tall as it lasted; the label's time stands across it."""
    rows = values["rows"][-DRAWN:]
    if not rows:
        return []
    tallest = max([row["own"] for row in rows] + [row["label"] or 0 for row in rows])
    slot = WIDTH / max(len(rows), 4)
    scale = (FLOOR - TOP) / tallest
    shapes = [path("datum", ((0, FLOOR), (WIDTH, FLOOR)))]
    for place, row in enumerate(rows):
        left, tall = slot * (place + 0.2), row["own"] * scale
        shapes.append(box("mix", left, FLOOR - tall, slot * 0.6, tall))
        if row["label"]:
            level = FLOOR - row["label"] * scale
            shapes.append(path("end", ((slot * (place + 0.05), level), (slot * (place + 0.95), level))))
        shapes.append(note("strong" if len(rows) <= 6 else "minutes", left + slot * 0.3, FLOOR + 18,
                           shown(from_si(row["own"], "min"), 0, DOWN)))
    told = "Minutes until each of the last {} batches stiffened, oldest first: {}.".format(
        len(rows), ", ".join([shown(from_si(row["own"], "min"), 0, DOWN) for row in rows]))
    return [figure("timings", "Minutes until it stiffened, oldest first. Bar: yours. Thick line: the label.",
                   WIDTH, HEIGHT, shapes, told)]

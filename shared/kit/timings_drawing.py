"""Timings drawing: a bar for each of the last batches."""
from ..drawing.shapes import box, figure, note, path
from ..forms.types import Values
from ..words.numbers import DOWN, shown
from ..words.units import from_si

DRAWN = 12  # batches in the picture: more bars than that are hairlines on a phone
WIDTH, HEIGHT, FLOOR, TOP = 360, 170, 146, 26


def figures(values: Values) -> list:
    """A bar for each of the last batches, as tall as it lasted; the label's time stands across it."""
    rows = values["rows"][-DRAWN:]
    if not rows:
        return []
    tallest = max([row["own_time"] for row in rows] + [row["label_time"] or 0 for row in rows])
    slot = WIDTH / max(len(rows), 4)
    scale = (FLOOR - TOP) / tallest
    shapes = [path("datum", ((0, FLOOR), (WIDTH, FLOOR)))]
    for place, row in enumerate(rows):
        left, tall = slot * (place + 0.2), row["own_time"] * scale
        shapes.append(box("mix", left, FLOOR - tall, slot * 0.6, tall))
        if row["label_time"]:
            level = FLOOR - row["label_time"] * scale
            shapes.append(path("end", ((slot * (place + 0.05), level), (slot * (place + 0.95), level))))
        shapes.append(note("strong" if len(rows) <= 6 else "minutes", left + slot * 0.3, FLOOR + 18,
                           shown(from_si(row["own_time"], "min"), 0, DOWN)))
    told = "Minutes until each of the last {} batches stiffened, oldest first: {}.".format(
        len(rows), ", ".join([shown(from_si(row["own_time"], "min"), 0, DOWN) for row in rows]))
    return [figure("timings", "Minutes until it stiffened, oldest first. Bar: yours. Thick line: the label.",
                   WIDTH, HEIGHT, shapes, told)]

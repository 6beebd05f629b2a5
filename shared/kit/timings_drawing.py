"""Timings drawing: a bar for each of the last batches."""
from ..drawing.shapes import box, figure, note, path
from ..forms.types import Said, Values
from ..words.messages import figure_of, listed, message, quantity
from ..words.numbers import DOWN

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
                           _minutes(row)))
    told = message("timings-drawing.told", count=len(rows), minutes=listed([_minutes(row) for row in rows], "plain"))
    return [figure("timings", "timings-drawing", WIDTH, HEIGHT, shapes, told)]


def _minutes(row: Values) -> Said:
    return figure_of(quantity(row["own_time"], "min", DOWN, 0))

"""Air drawing: a room from above, with its air, its fan and who works in it."""
from ..drawing import shapes as draw
from ..forms.types import Values


def figures(values: Values) -> list:
    """Where to put the fan: the room from above, clean air from behind the worker, out on the far side."""
    room = values["room"]
    sides = (room["length"] or 5, room["width"] or 3)  # a room known by its volume only is drawn 5 by 3
    longer, shorter = max(sides), min(sides)
    width, left, top = 200.0, 50.0, 30.0
    deep = max(60.0, min(200.0, width * shorter / longer))
    middle, right = top + deep / 2, left + width
    fan_at = left if values["fan_runs"] == "in" else right
    shapes = [
        draw.box("panel", left, top, width, deep),
        draw.path("gap", ((left, middle - 15), (left, middle + 15))),
        draw.path("gap", ((right, middle - 15), (right, middle + 15))),
        _arrow(left - 40, left + 20, middle), _arrow(right - 20, right + 40, middle),
        draw.note("note", left + width * 0.4, middle + 4, "air-drawing.you"),
        draw.note("note", left + width * 0.65, middle + 4, "air-drawing.work"),
        draw.note("note", left - 8, top - 8, "air-drawing.in"),
        draw.note("note", right + 8, top - 8, "air-drawing.out"),
    ]
    said = "air-drawing.told"
    if values["fan_runs"] != "off":
        shapes.append(draw.box("fan", fan_at - 5, middle - 15, 10, 30))
        shapes.append(draw.note("note", fan_at, middle + 30, "air-drawing.fan"))
        said = "air-drawing.told-in" if values["fan_runs"] == "in" else "air-drawing.told-out"
    return [draw.figure("fan_place", "air-drawing", 300, deep + 60, shapes, said)]


def _arrow(start: float, end: float, y: float) -> dict:
    return draw.path("dimension", ((start, y), (end, y), (end - 6, y - 4), (end, y), (end - 6, y + 4)))

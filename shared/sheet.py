"""Sheet: metres set onto a drawing 360 units wide, which is a narrow phone, and what all sections draw alike."""
from math import cos, pi, sin

from .figures import path
from .lengths import mm
from .numbers import ceiling

WIDTH, TALL, EDGE = 360, 230, 12
LAYER = 3.5  # units from one layer of tape to the next: seen, not to scale
ARC_STEPS = 8
VENEERS = 5  # layers of the plywood as drawn, whatever the sheet has
TICK = 4  # half of a tick at the end of a dimension line


class Sheet:
    """Metres to units of the drawing: the scale and where the origin lies."""

    def __init__(self, points, left=EDGE, top=40, width=WIDTH - 2 * EDGE, height=TALL, scale=None):
        xs, ys = [x for x, _ in points], [y for _, y in points]
        across, rise = max(xs) - min(xs), max(ys) - min(ys)
        self.scale = scale or min(width / across, height / rise)
        self.zero_x = left + (width - across * self.scale) / 2 - min(xs) * self.scale
        self.zero_y = top + max(ys) * self.scale
        self.bottom = ceiling(top + rise * self.scale)

    def at(self, points):
        scale, x0, y0 = self.scale, self.zero_x, self.zero_y
        return [(x0 + x * scale, y0 - y * scale) for x, y in points]

    def one(self, x, y):
        return self.zero_x + x * self.scale, self.zero_y - y * self.scale


def tick(point):
    """The slash that ends a dimension line, in units of the drawing."""
    x, y = point
    return path("tick", [(x - TICK, y + TICK), (x + TICK, y - TICK)])


def mirrored(points):
    """The same outline on the left, walked back."""
    return [(-x, y) for x, y in reversed(points)]


def bow(h, radius, centre, steps=ARC_STEPS):
    """Points of a circle about (0, centre) [m], from the tangent point on the right panel to that on the left."""
    step = (pi - 2 * h) / steps
    return [(radius * cos(-h - step * k), centre + radius * sin(-h - step * k)) for k in range(steps + 1)]


def told_tape(spec):
    """The layers of tape in words."""
    if not spec["layers"]:
        return ". No tape."
    rows = ", ".join([mm(row["width"], spec["units"]) for row in spec["layers"]])
    return ". Tape " + rows + " wide, drawn thicker than it is."

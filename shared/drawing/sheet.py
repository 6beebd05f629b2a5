"""Sheet: metres set onto a drawing 360 units wide, which is a narrow phone, and what all sections draw alike."""
from math import cos, floor, pi, sin

from ..words.messages import length, lengths, listed, message
from ..words.numbers import ceiling
from .shapes import note, strokes

WIDTH, TALL, EDGE = 360, 158, 12
LAYER = 3.5  # units from one layer of tape to the next: seen, not to scale
ARC_STEPS = 8
VENEERS = 3  # layers of the plywood as drawn, whatever the sheet has
TICK = 4  # half of a tick at the end of a dimension line


class Sheet:
    """Metres to units of the drawing: the scale and where the origin lies."""

    def __init__(self, points: list, left: float = EDGE, top: float = 30, width: float = WIDTH - 2 * EDGE,
                 height: float = TALL, scale: "float | None" = None) -> None:
        xs, ys = [x for x, _ in points], [y for _, y in points]
        across, rise = max(xs) - min(xs), max(ys) - min(ys)
        self.scale = scale or min(width / across, height / rise)
        self.zero_x = left + (width - across * self.scale) / 2 - min(xs) * self.scale
        self.zero_y = top + max(ys) * self.scale
        self.bottom = ceiling(top + rise * self.scale)

        self.ruled = [("veneer", []), ("leader", []), ("dimension", []), ("tick", [])]  # type: list
        self.notes = []  # type: list
        self.curves = []  # type: list

    def one(self, x: float, y: float) -> tuple:
        """A point in units of the drawing."""
        return self.zero_x + x * self.scale, self.zero_y - y * self.scale

    def _set(self, kind: str, role: str, points: list) -> dict:
        scale = self.scale * 10
        x0, y0 = self.zero_x * 10 + 0.500001, self.zero_y * 10 + 0.500001
        return {"kind": kind, "role": role,
                "points": [[floor(x0 + x * scale) / 10, floor(y0 - y * scale) / 10] for x, y in points]}

    def area(self, role: str, points: list) -> dict:
        """A closed polygon from points in metres, to a tenth of a unit: a phone shows no more."""
        return self._set("area", role, points)

    def path(self, role: str, points: list) -> dict:
        """An open line from points in metres."""
        return self._set("path", role, points)

    def rule(self, role: str, *points: tuple) -> None:
        """Straight lines from point to point in units of the drawing: "veneer", "leader", "dimension"."""
        for known, ends in self.ruled:
            if known == role:
                for k in range(len(points) - 1):
                    ends.extend((points[k], points[k + 1]))

    def ticks(self, *points: tuple) -> None:
        """The slashes that end a dimension line, in units of the drawing."""
        ends = self.ruled[3][1]
        for x, y in points:
            ends.extend(((x - TICK, y + TICK), (x + TICK, y - TICK)))

    def write(self, role: str, x: float, y: float, text: "str | tuple", anchor: str = "middle") -> None:
        """Words, in units of the drawing."""
        self.notes.append(note(role, x, y, text, anchor))

    def write_tape(self, widths: list, y: float) -> None:
        """How wide the tape is, at the left edge. widths: of its layers [m]"""
        if widths:
            self.write("dimension", EDGE, y, message("sheet-tape", width=lengths(widths)), "start")

    def measures(self) -> list:
        """All that was ruled and written, straight lines one shape for each role, the words on top."""
        return self.curves + [strokes(role, ends) for role, ends in self.ruled[1:] if ends] + self.notes

    def veneers(self) -> list:
        """The glue lines of the plywood."""
        return [strokes("veneer", self.ruled[0][1])]


def mirrored(points: list) -> list:
    """The same outline on the left, walked back."""
    return [(-x, y) for x, y in reversed(points)]


def bow(h: float, radius: float, centre: float, steps: int = ARC_STEPS) -> list:
    """Points of a circle about (0, centre) [m], from the tangent point on the right panel to that on the left."""
    step = (pi - 2 * h) / steps
    return [(radius * cos(-h - step * k), centre + radius * sin(-h - step * k)) for k in range(steps + 1)]


def told_tape(widths: list) -> "str | tuple":
    """The layers of tape in a sentence. widths: of each [m]"""
    if not widths:
        return "sheet-tape.none"
    return message("sheet-tape.told", widths=listed([length(width) for width in widths], "plain"))

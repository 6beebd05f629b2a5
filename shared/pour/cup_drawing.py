"""Cup drawing: a cup from the side, to scale, with the level after each part."""
from ..drawing.shapes import area, figure, note, path
from ..equations.cups import taper_of
from ..forms.types import Found, Said, Values
from ..mix.label_words import parts_said
from ..words.messages import listed, message
from .by_stick_lines import height_text

WIDEST, HIGHEST, NOTE = 220.0, 260.0, 16.0  # of the drawing, and the height of a line of words in it


def figures(levels: "Found | None", values: Values) -> list[dict]:
    """The cup from the side, where volumes are known. levels: by_stick.Levels or None"""
    if levels is None:
        return []
    return [cup_figure(levels.marks, parts_said(values["system"]), values["cup"], values["units"])]


def cup_figure(marks: tuple[float, ...], names: tuple[Said, ...], cup: Values, units: str) -> dict:
    """The cup and its levels in one scale for both directions, drawn from the numbers of the lines.

    marks: height of each level from the inside bottom [m]
    """
    side = max(cup["bottom"], cup["top"])
    scale = min(WIDEST / side, HIGHEST / cup["height"])
    height, centre = cup["height"] * scale, side * scale / 2 + 2
    bottom, taper = cup["bottom"] / 2 * scale, taper_of(cup)
    ups, up = [], 0.0  # notes of marks that lie close together stand apart, each at the end of its own line
    for mark in marks:
        up = max(up + NOTE, mark * scale)
        ups.append(up)
    rim = 2 + max(0.0, up + NOTE / 2 - height)
    edge = rim + height

    def wall(level: float) -> float:
        return bottom + taper * level

    shapes, below, told_marks = [], 0.0, []
    for place, mark in enumerate(marks):
        level = mark * scale
        shapes.append(area("abcde"[place], (
            (centre - wall(below), edge - below), (centre + wall(below), edge - below),
            (centre + wall(level), edge - level), (centre - wall(level), edge - level))))
        note_at = edge - ups[place]
        shapes.append(path("level", ((centre - wall(level), edge - level), (side * scale + 8, edge - level),
                                     (side * scale + 18, note_at))))
        shapes.append(note("level", side * scale + 22, note_at + 4, height_text(mark, units), anchor="start"))
        told_marks.append(message("stick-drawing.mark", part=names[place], height=height_text(mark, units)))
        below = level
    shapes.append(path("cup", ((centre - wall(height), rim), (centre - wall(0.0), edge), (centre + wall(0.0), edge),
                               (centre + wall(height), rim))))
    return figure("cup", "stick-drawing", side * scale + 90, edge + 2, shapes,
                  message("stick-drawing.told", height=height_text(cup["height"], units),
                          marks=listed(told_marks, "plain")))

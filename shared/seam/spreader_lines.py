"""Spreader lines: what is said of the templates, and the sheet they are printed on."""
from ..drawing.shapes import area, enlarged, figure, note, path
from ..forms.types import Found, Said, Values
from ..words.lines import ANSWER, SAY, WARN, Line, line, words
from ..words.messages import figure_of, length, listed, message, unit_of


def too_many(largest: float) -> Said:
    """Why templates do not fit. largest: the radius that a sheet takes [m]"""
    return message("spreader-too-many", largest=length(largest, "down"))


def say(found: Found, values: Values) -> list[Line]:
    """How to print and check the template. found: a `spreader.SpreaderResult`"""
    lines = [words("measure", "spreader-measure", "spreader-measure.text" if values["printed"] is None
                   else "spreader-measure.again", rank=WARN)]
    for place, radius in enumerate(values["radii"]):
        lines.append(line("radius_" + str(place + 1), "spreader-radius", radius, "m", length(radius), rank=ANSWER,
                          rough=message("spreader-radius.rough", width=length(2 * radius))))
    lines.append(words("cut", "spreader-cut", "spreader-cut.text", rank=SAY))
    return lines


def sheet(found: Found, values: Values) -> dict:
    """The sheet: printed with one unit to a millimetre, or as that printer does it, it is the tool itself."""
    left, right, y = found.bar
    shapes = [path("bar", [(left, y), (right, y)]),
              path("bar", [(left, y - 4), (left, y + 4)]),
              path("bar", [(right, y - 4), (right, y + 4)]),
              note("label", (left + right) / 2, y - 4, "spreader-sheet.bar"),
              note("dimension", left, 32.0, "spreader-sheet.print" if values["printed"] is None else message(
                  "spreader-sheet.corrected", printed=length(values["printed"])), "start")]
    for one in found.templates:
        (x, y), radius = one.centre, length(one.radius / 1000)
        shapes.append(area("template", one.outline))
        shapes.append(note("label", x, one.top + 14, message("spreader-sheet.radius", radius=figure_of(radius))))
        shapes.append(note("dimension", x, one.top + 23, unit_of(radius)))
        shapes.append(path("leader", [(x - 2, y), (x + 2, y)]))
        shapes.append(path("leader", [(x, y - 2), (x, y + 2)]))
    told = message("spreader-sheet.told",
                   radii=listed([length(one.radius / 1000) for one in found.templates], "plain"))
    return figure("template_" + values["paper"], "spreader-sheet", found.width, found.height,
                  enlarged(shapes, found.drawn), told,
                  size=1 / found.drawn)

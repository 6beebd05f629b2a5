"""Spreader lines: what is said of the templates, and the sheet they are printed on."""
from ..drawing.shapes import area, figure, note, path
from ..forms.types import Found, Values
from ..words.lengths import mm
from ..words.lines import ANSWER, SAY, WARN, Line, line, words
from ..words.units import in_system


def too_many(largest: float, units: str) -> str:
    """Why templates do not fit. largest: the radius that a sheet takes [m]"""
    return "These do not fit on one sheet: fewer at a time, and none above " + mm(largest, units, "down") + (
        ". A larger cove is drawn with a bent batten")


def say(found: Found, values: Values) -> list[Line]:
    """How to print and check the template. found: a `spreader.SpreaderResult`"""
    units, lines = values["units"], []
    lines.append(words("measure", "First measure the bar", "It must be {100 mm} long on the paper. If it is not, print "
                       "again at 100%, without fitting to the page.", rank=WARN))
    for place, radius in enumerate(values["radii"]):
        lines.append(line("radius_" + str(place + 1), "Spreader, radius", radius, "m", mm(radius, units), rank=ANSWER,
                          rough="a round tip " + mm(2 * radius, units) + " wide"))
    lines.append(words("cut", "Then", "Glue it to a stiff sheet, cut outside the line, sand to the line, round no "
                       "corner of the tip. Try it at the sharpest and the flattest place before mixing.", rank=SAY))
    return lines


def sheet(found: Found, values: Values) -> dict:
    """The sheet in millimetres: printed with one unit to a millimetre it is the tool itself."""
    units, (left, right, y) = values["units"], found.bar
    shapes = [path("bar", [(left, y), (right, y)]),
              path("bar", [(left, y - 4), (left, y + 4)]),
              path("bar", [(right, y - 4), (right, y + 4)]),
              note("label", (left + right) / 2, y - 4, in_system("measure me: {100 mm}", units)),
              note("dimension", left, 32.0, "Print at 100 %. Cut to the line.", "start")]
    for one in found.templates:
        x, y = one.centre
        shapes.append(area("template", one.outline))
        size, _, unit = mm(one.radius / 1000, units).partition(" ")
        shapes.append(note("label", x, one.top + 14, "R " + size))
        shapes.append(note("dimension", x, one.top + 23, unit))
        shapes.append(path("leader", [(x - 2, y), (x + 2, y)]))
        shapes.append(path("leader", [(x, y - 2), (x, y + 2)]))
    told = (in_system("A sheet to print at true size: a bar of {100 mm} to measure, ", units)
            + "and a template with a round tip of radius "
            + ", ".join([mm(one.radius / 1000, units) for one in found.templates]) + ".")
    return figure("template_" + values["paper"], "Spreaders at true size", found.width, found.height, shapes, told)

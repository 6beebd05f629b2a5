"""Spreader: templates at true size for one or several cove radii, to print, measure and cut.

The figures are in millimetres: printed with one unit to a millimetre they are the tool itself.
"""
from math import acos, cos, pi, sin

from ..drawing.shapes import area, figure, note, path
from ..forms.errors import InputError
from ..forms.inputs import Choice, Parts
from ..words.lengths import mm
from ..words.lines import ANSWER, SAY, WARN, line, words
from ..words.numbers import ceiling
from ..words.units import in_system

PAPERS = (("a4", "A4"), ("letter", "Letter"))
SIZES = {"a4": (210.0, 297.0), "letter": (215.9, 279.4)}  # mm: ISO 216; 8 1/2 by 11 in
MARGIN = 12.0  # mm that a printer may leave white
BAR = 100.0  # mm
HANDLE = 45.0  # mm of straight sides above the round tip
BETWEEN = 6.0  # mm from one template to the next
NARROWEST = 24.0  # mm of sheet for a narrow one: its words need as much
FINE = 0.01  # mm: the outline is nowhere further from the true arc

INPUTS = (
    Parts("radii", "Radius of each spreader", unit="mm", low=2, high=200, least=1, most=9, default="10 : 15 : 20",
          help="Several with a colon between them."),
    Choice("paper", "Paper", PAPERS),
)


def tip(radius: float):
    """Points of a half circle about the origin, from right to left through below, within FINE of it.

    radius [mm]
    returns: (x, y) [mm], y down; every point lies on the arc
    >>> [round(side, 6) for side in tip(10.0)[0]], [round(side, 6) for side in tip(10.0)[-1]]
    ([10.0, 0.0], [-10.0, 0.0])
    """
    steps = ceiling(pi / (2 * acos(1 - FINE / radius)))
    return [(radius * cos(pi * k / steps), radius * sin(pi * k / steps)) for k in range(steps + 1)]


def placed(radii, paper: str):
    """Where each template goes: (radius, left, top) [mm], row by row; None where the sheet is too small.

    >>> placed((10.0, 15.0), "a4")
    [(10.0, 12.0, 40.0), (15.0, 42.0, 40.0)]
    """
    wide, tall = SIZES[paper]
    left, top, deep, found = MARGIN, 40.0, 0.0, []
    for radius in radii:
        if left > MARGIN and left + 2 * radius > wide - MARGIN:
            left, top, deep = MARGIN, top + deep + BETWEEN, 0.0
        if left + 2 * radius > wide - MARGIN or top + HANDLE + radius > tall - MARGIN:
            return None
        found.append((radius, left, top))
        left += max(2 * radius, NARROWEST) + BETWEEN
        deep = max(deep, HANDLE + radius)
    return found


def check(values):
    """All of them must fit on one sheet."""
    if placed([radius * 1000 for radius in values["radii"]], values["paper"]) is None:
        wide = SIZES[values["paper"]][0]
        raise InputError("radii", "These do not fit on one sheet: fewer at a time, and none above " + mm(
            (wide - 2 * MARGIN) / 2000, values["units"], "down") + ". A larger cove is drawn with a bent batten")


CHECKS = (check,)


def answer(values):
    """How to print and check the template."""
    units, lines = values["units"], []
    lines.append(words("measure", "First measure the bar", "It must be {100 mm} long on the paper. If it is not, print "
                       "again at 100%, without fitting to the page.", rank=WARN))
    for place, radius in enumerate(values["radii"]):
        lines.append(line("radius_" + str(place + 1), "Spreader, radius", radius, "m", mm(radius, units), rank=ANSWER,
                          rough="a round tip " + mm(2 * radius, units) + " wide"))
    lines.append(words("cut", "Then", "Glue it to a stiff sheet, cut outside the line, sand to the line, round no "
                       "corner of the tip. Try it at the sharpest and the flattest place before mixing.", rank=SAY))
    return lines


def figures(values):
    """One sheet in millimetres."""
    units, paper = values["units"], values["paper"]
    wide, tall = SIZES[paper]
    shapes = [path("bar", [(MARGIN, 18.0), (MARGIN + BAR, 18.0)]),
              path("bar", [(MARGIN, 14.0), (MARGIN, 22.0)]),
              path("bar", [(MARGIN + BAR, 14.0), (MARGIN + BAR, 22.0)]),
              note("label", MARGIN + BAR / 2, 14.0, in_system("measure me: {100 mm}", units)),
              note("dimension", MARGIN, 32.0, "Print at 100 %. Cut to the line.", "start")]
    radii = [radius * 1000 for radius in values["radii"]]
    for radius, left, top in placed(radii, paper):
        middle, centre = left + radius, top + HANDLE
        outline = [(left, top), (left + 2 * radius, top)] + [(middle + x, centre + y) for x, y in tip(radius)]
        shapes.append(area("template", outline))
        size, _, unit = mm(radius / 1000, units).partition(" ")
        shapes.append(note("label", middle, top + 14, "R " + size))
        shapes.append(note("dimension", middle, top + 23, unit))
        shapes.append(path("leader", [(middle - 2, centre), (middle + 2, centre)]))
        shapes.append(path("leader", [(middle, centre - 2), (middle, centre + 2)]))
    told = (in_system("A sheet to print at true size: a bar of {100 mm} to measure, ", units)
            + "and a template with a round tip of radius "
            + ", ".join([mm(radius / 1000, units) for radius in radii]) + ".")
    return [figure("template_" + paper, "Spreaders at true size", wide, tall, shapes, told)]

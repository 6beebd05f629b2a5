"""Spreader: templates at true size for one or several cove radii, to print, measure and cut.

The figures are in millimetres: printed with one unit to a millimetre they are the tool itself.
"""
from collections import namedtuple
from math import acos, cos, pi, sin

from ..catalogue.starts import RADII
from ..forms.errors import InputError
from ..forms.inputs import Choice, Number, Parts
from ..forms.memo import once
from ..forms.remembered import starts
from ..forms.types import Values
from ..words.messages import typed
from ..words.numbers import ceiling
from . import spreader_lines

PAPERS = (("a4", typed("A4")), ("letter", typed("Letter")))  # names of the formats
SIZES = {"a4": (210.0, 297.0), "letter": (215.9, 279.4)}  # mm: ISO 216; 8 1/2 by 11 in
MARGIN = 12.0  # mm that a printer may leave white
BAR = 100.0  # mm
HANDLE = 45.0  # mm of straight sides above the round tip
BETWEEN = 6.0  # mm from one template to the next
NARROWEST = 24.0  # mm of sheet for a narrow one: its words need as much
FINE = 0.01  # mm: the outline is nowhere further from the true arc

INPUTS = (
    Parts("radii", "spreader-radii", unit="mm", low=2, high=200, least=1, most=9, default=starts(RADII, "mm"),
          help="spreader-radii.help"),
    Choice("paper", "spreader-paper", PAPERS),
    Number("printed", "spreader-printed", unit="mm", low=70, high=150, optional=True),
)


# all in mm, as they are to be on paper. width, height: of the sheet; bar: (left, right, y) of what is measured first
# templates: a `Template` each, None where the sheet is too small for them
# drawn: times that size, so that a printer which does not hold it prints it
SpreaderResult = namedtuple("SpreaderResult", ("width", "height", "bar", "templates", "drawn"))
# radius; top: of the handle; centre: (x, y) of the tip's circle; outline: (x, y) points, y down
Template = namedtuple("Template", ("radius", "top", "centre", "outline"))


def tip(radius: float) -> list:
    """Points of a half circle about the origin, from right to left through below, within FINE of it.

    radius [mm]
    returns: (x, y) [mm], y down; every point lies on the arc
    >>> [round(side, 6) for side in tip(10.0)[0]], [round(side, 6) for side in tip(10.0)[-1]]
    ([10.0, 0.0], [-10.0, 0.0])
    """
    steps = ceiling(pi / (2 * acos(1 - FINE / radius)))
    return [(radius * cos(pi * k / steps), radius * sin(pi * k / steps)) for k in range(steps + 1)]


def drawn(printed: "float | None") -> float:
    """How many times its size a thing must be drawn for a printer that does not hold it.

    printed: what the bar of 0.1 m measures on paper [m], None where it is right
    >>> drawn(None), drawn(0.08)
    (1.0, 1.25)
    """
    return 1.0 if printed is None else BAR / (printed * 1000)


def placed(radii: "list | tuple", paper: str, drawn: float = 1.0) -> "list | None":
    """Where each template goes: (radius, left, top) [mm], row by row; None where the sheet is too small.

    drawn: times its size; a printer that shrinks leaves less of the sheet
    >>> placed((10.0, 15.0), "a4")
    [(10.0, 12.0, 40.0), (15.0, 42.0, 40.0)]
    """
    wide, tall = [side / max(1.0, drawn) for side in SIZES[paper]]
    left, top, deep = MARGIN, 40.0, 0.0
    found = []
    for radius in radii:
        if left > MARGIN and left + 2 * radius > wide - MARGIN:
            left, top, deep = MARGIN, top + deep + BETWEEN, 0.0
        if left + 2 * radius > wide - MARGIN or top + HANDLE + radius > tall - MARGIN:
            return None
        found.append((radius, left, top))
        left += max(2 * radius, NARROWEST) + BETWEEN
        deep = max(deep, HANDLE + radius)
    return found


def check(values: Values) -> None:
    """All of them must fit on one sheet."""
    found = reckoned(values)
    if found.templates is None:
        raise InputError("radii", spreader_lines.too_many((found.width / max(1.0, found.drawn) - 2 * MARGIN) / 2000))


CHECKS = (check,)


def reckon(values: Values) -> SpreaderResult:
    """Where each template lies on the sheet, and its outline at true size."""
    width, height = SIZES[values["paper"]]
    times = drawn(values["printed"])
    places = placed([radius * 1000 for radius in values["radii"]], values["paper"], times)
    return SpreaderResult(width, height, (MARGIN, MARGIN + BAR, 18.0),
                          None if places is None else [_template(*place) for place in places], times)


def reckoned(values: Values) -> SpreaderResult:
    """The same, once for the check, the lines and the drawing."""
    return once(values, "spreader", lambda: reckon(values))


def _template(radius: float, left: float, top: float) -> Template:
    middle, centre = left + radius, top + HANDLE
    return Template(radius, top, (middle, centre), [(left, top), (left + 2 * radius, top)]
                    + [(middle + x, centre + y) for x, y in tip(radius)])


def answer(values: Values) -> list:
    """How to print and check the template."""
    return spreader_lines.say(reckoned(values), values)


def figures(values: Values) -> list:
    """One sheet in millimetres."""
    return [spreader_lines.sheet(reckoned(values), values)]

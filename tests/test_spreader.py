"""The spreader's template: true size, on the sheet, none over another."""
from itertools import combinations
from math import pi

import pytest
from covemix.shared.door import moves
from covemix.shared.forms import links
from covemix.shared.seam import spreader
from shapely.geometry import Polygon, box


def sheet(*pairs):
    found = moves.answer("spreader", links.tree(pairs))
    assert found["errors"] == []
    return found["figures"][0]


@pytest.mark.parametrize(("paper", "size"), (("a4", (210, 297)), ("letter", (215.9, 279.4))))
def test_templates_fit_the_paper_and_stand_apart(outside, paper, size):
    """ISO 216: A4 is 210 by 297 mm; Letter is 8 1/2 by 11 in. shapely sees whether anything overlaps."""
    drawn = sheet(("radii", "8 : 12 : 20 : 27.5 : 40"), ("paper", paper))
    outside.printed("spreader " + paper,
            "ISO 216: A4 is 210 by 297 mm" if paper == "a4" else "ANSI/ASME Y14.1: Letter is 8 1/2 by 11 in",
            list(size), [drawn["width"], drawn["height"]])
    shapes = [Polygon(shape["points"]) for shape in drawn["shapes"] if shape["role"] == "template"]
    assert len(shapes) == 5
    for shape in shapes:
        assert box(10, 35, size[0] - 10, size[1] - 10).contains(shape)
    assert all(not one.intersects(other) for one, other in combinations(shapes, 2))


@pytest.mark.parametrize("radius", (3.0, 12.0, 27.5, 60.0))
def test_the_tip_has_its_radius(outside, radius):
    """shapely: a half disc of that radius below a straight handle, to a hundredth of a millimetre in the outline."""
    drawn = sheet(("radii", str(radius)),)
    shape = Polygon(next(s["points"] for s in drawn["shapes"] if s["role"] == "template"))
    left, _, right, _ = shape.bounds
    measured = "shapely (library), the outline as drawn"
    outside.own(f"spreader R {radius:g} width", measured, right - left, 2 * radius,
            absolute=0.02)
    outside.own(f"spreader R {radius:g} area", measured, shape.area, 2 * radius * spreader.HANDLE + pi * radius**2 / 2,
            rel=2e-3)
    middle = ((left + right) / 2, shape.bounds[3] - radius)
    for x, y in shape.exterior.coords:
        if y > middle[1] + 0.02:
            assert ((x - middle[0])**2 + (y - middle[1])**2) ** 0.5 == pytest.approx(radius, abs=0.02)


def test_the_bar_is_a_hundred_millimetres():
    bar = next(shape for shape in sheet()["shapes"] if shape["role"] == "bar")
    (x1, y1), (x2, y2) = bar["points"]
    assert (x2 - x1, y2 - y1) == (100, 0)
    assert any("measure me" in shape.get("text", "") for shape in sheet()["shapes"])


def test_what_does_not_fit_is_refused():
    for radii in ("150", "60 : 60 : 60 : 60 : 60 : 60", "0"):
        found = moves.answer("spreader", links.tree((("radii", radii),)))
        assert [error["field"] for error in found["errors"]] == ["radii"]

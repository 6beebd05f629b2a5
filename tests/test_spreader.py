"""The spreader's template: true size, on the sheet, none over another."""
import re
from itertools import combinations
from math import pi

import pytest
from covemix.shared.door import moves
from covemix.shared.door.saved_file import filed
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


@pytest.mark.parametrize("paper", ["a4", "letter"])
@pytest.mark.parametrize("printed", [76, 92, 103.5, 120])
def test_a_printer_that_does_not_hold_its_size_is_corrected(printed, paper):
    """What it prints of the sheet, drawn so, is as long as its name says, and stays on the paper: by shapely."""
    drawn = sheet(("radii", "12 : 27.5"), ("paper", paper), ("printed", f"{printed} mm"))
    on_paper = [[(x * printed / 100, y * printed / 100) for x, y in shape["points"]]
                for shape in drawn["shapes"] if shape["role"] in ("bar", "template")]
    assert on_paper[0][1][0] - on_paper[0][0][0] == pytest.approx(100, abs=0.02)
    wide = [Polygon(points).bounds[2] - Polygon(points).bounds[0] for points in on_paper[3:]]
    assert wide == pytest.approx([24, 55], abs=0.03)
    sheet_there = box(0, 0, drawn["width"] * min(1, printed / 100), drawn["height"] * min(1, printed / 100))
    assert all(sheet_there.contains(Polygon(points)) for points in on_paper[3:])
    assert any(str(printed) in shape.get("text", "") for shape in drawn["shapes"])  # sheets are told apart


def test_a_printer_that_shrinks_has_less_room():
    """95 mm wide is too large for A4 at its size, 90 is not; shrunk to 76 in 100 it is."""
    assert moves.answer("spreader", links.tree((("radii", "90"),)))["errors"] == []
    assert moves.answer("spreader", links.tree((("radii", "90"), ("printed", "120"))))["errors"] == []
    found = moves.answer("spreader", links.tree((("radii", "90"), ("printed", "76"))))
    assert [error["field"] for error in found["errors"]] == ["radii"]


def test_a_file_at_true_size_takes_no_correction_of_a_printer():
    """The units of the SVG are that much smaller; the cutter's file is drawn of what is to be."""
    for printed in (92, 120):
        asked = {"pairs": [["radii", "10 : 20"], ["printed", str(printed)]], "decimal": ".", "day": "", "now": 0}
        svg = filed({**asked, "file": "spreader.template.svg"})["text"]
        wide, units = re.search(r'width="([\d.]+)mm"', svg), re.search(r'viewBox="0 0 ([\d.]+) ', svg)
        bar = re.search(r'class="bar" d="M([\d.]+) [\d.]+L([\d.]+) ', svg)
        mm = (float(bar[2]) - float(bar[1])) * float(wide[1]) / float(units[1])
        assert mm == pytest.approx(100, abs=0.02)
        assert 'stroke-width="0.2"' in svg
        dxf = filed({**asked, "file": "spreader.template.dxf"})["text"]
        assert dxf == filed({**asked, "pairs": asked["pairs"][:1], "file": "spreader.template.dxf"})["text"]

"""Reckon, then say: a move reckons from SI values to a result with names that knows no text, and says it in another
module that knows no formula."""
import ast
import math
from pathlib import Path

import pytest
from covemix import shared
from covemix.shared.door import moves
from covemix.shared.forms import inputs

HOUSE = Path(shared.__file__).parent
# room, modules that reckon (also for moves of other names), modules that say it
SPLIT = {
    "clock": (("dew", "timer", "elapsed", "cure", "usable", "heat", "heat_found", "heat_model",
               "heat_table", "hot_pot", "pot_heat"),
              ("dew_lines", "timer_lines", "elapsed_lines", "cure_lines", "usable_lines", "heat_lines", "pot_start")),
    "seam": (("coves", "joint", "seam", "spreader"), ("joint_leads", "joint_lines", "spreader_lines")),
}
RECKONING = [HOUSE / room / f"{name}.py" for room, (names, _) in SPLIT.items() for name in names]
SAYING = [HOUSE / room / f"{name}.py" for room, (_, names) in SPLIT.items() for name in names]
MADE_TEXT = {"lines", "lengths", "speech", "provenance"}  # modules of words that a reckoning has no use for
TEXT_OF = {"told", "shown", "capital", "small", "clock_text"}  # only a message of an error may use these there


def plain(move, **si):
    """The values of a move as a notebook has them: its inputs at their defaults, SI values put in place."""
    asked = moves.module(move).INPUTS
    values, _ = inputs.read(asked, {})
    for name, value in si.items():
        if name not in {one.name for one in asked}:
            raise TypeError(f"{move} declares no input {name}")
        values[name] = value
    return values


def reckon(move, **si):
    return moves.module(move).reckon(plain(move, **si))


def is_check(node):
    return isinstance(node, ast.FunctionDef) and node.name.lstrip("_").startswith("check")


def functions(path):
    """The functions of a module, the messages of its checks left out."""
    tree = ast.parse(path.read_text(encoding="utf-8"))
    return [node for node in tree.body if isinstance(node, ast.FunctionDef) and not is_check(node)]


def imports(path):
    """[(module, name)] that a module imports."""
    tree = ast.parse(path.read_text(encoding="utf-8"))
    return [(node.module or "", alias.name) for node in ast.walk(tree) if isinstance(node, ast.ImportFrom)
            for alias in node.names]


def ids(path):
    return f"{path.parent.name}/{path.stem}"


@pytest.mark.parametrize("path", RECKONING, ids=ids)
def test_what_reckons_holds_no_text(path):
    assert [name for module, name in imports(path) if module.split(".")[-1] in MADE_TEXT] == []
    for function in functions(path):
        docs = ast.get_docstring(function, clean=False)
        called = {node.id for node in ast.walk(function) if isinstance(node, ast.Name)}
        assert called & TEXT_OF == set(), f"{function.name} makes text"
        annotations = [node for part in (function.returns, *[one.annotation for one in ast.walk(function)
                                                              if isinstance(one, ast.arg)])
                       if part for node in ast.walk(part)]
        texts = [node.value for node in ast.walk(function) if isinstance(node, ast.Constant) and node not in annotations
                 and isinstance(node.value, str) and node.value != docs]
        assert [text for text in texts if " " in text or text[:1].isupper()] == [], function.name


@pytest.mark.parametrize("path", SAYING, ids=ids)
def test_what_says_holds_no_formula(path):
    assert [module for module, _ in imports(path) if "equations" in module or module == "math"] == []


@pytest.mark.parametrize("path", [path for path in SAYING if path.stem.removesuffix("_lines") in moves.names()],
                         ids=ids)
def test_what_says_does_not_reach_back(path):
    own = path.stem.removesuffix("_lines")
    assert [module for module, _ in imports(path) if module.split(".")[-1] == own] == []


def test_a_name_that_is_not_declared_is_refused():
    with pytest.raises(TypeError):
        plain("dew", wind=3.0)


# one of each, against figures that stand in the move's own tests -----------------------------------------------------


def test_joint():
    """0.215 r2 (Machinery's Handbook, 31st ed., p. 80; as in tests/test_joint.py): 12 mm along 3.6 m, twice."""
    found = reckon("joint", sized="radius", radius=0.012, length=3.6, copies=2)
    assert found.shares.in_place == pytest.approx(222.4992e-6, rel=1e-6)
    assert found.sizes[0].leg == pytest.approx(0.012) and found.sizes[0].throat == pytest.approx(0.004970563)
    assert (found.passes, found.edge, found.slips.wide_gap, found.slips.flank) == (1, None, False, None)
    thick = reckon("joint", kind="outside", thickness=0.006, round_over=0.012, angle=math.radians(70), gap=0.008)
    assert thick.edge.thin and thick.slips.wide_gap and thick.coves == []


def test_spreader():
    """A4 is 210 by 297 mm (ISO 216); the tip is half a circle of its radius, as in tests/test_spreader.py."""
    found = reckon("spreader", radii=(0.010, 0.015), paper="a4")
    assert (found.width, found.height, found.bar[1] - found.bar[0]) == (210.0, 297.0, 100.0)
    for one in found.templates:
        assert [math.dist(one.centre, point) for point in one.outline[2:]] == pytest.approx(
            [one.radius] * (len(one.outline) - 2))
    assert reckon("spreader", radii=(0.150,)).templates is None


def test_dew():
    """20 degC and 60 %: dew point 12.00 degC (psychrolib, ASHRAE 2017 ch. 1; as in tests/test_dew.py)."""
    found = reckon("dew", air=293.15, humidity=0.60, night=284.15, sky="open")
    assert found.dew_point == pytest.approx(285.15, abs=0.05)
    assert found.margin == pytest.approx(8.0, abs=0.05) and not found.near and not found.wet
    assert found.night.margin == pytest.approx(284.15 - 3.0 - found.dew_point) and found.night.wet and found.in_danger
    assert found.night.keep_above == pytest.approx(288.15)  # 12.0 + 3, half degrees up
    assert reckon("dew", air=293.15) is None


def test_timer():
    found = reckon("timer", lasts=180.0, now=1000.0, elapsed=75.0)
    assert (found.left, found.passed.seconds, found.passed.lost) == (105.0, 75.0, False)


def test_cure():
    """From memory, a medium hardener: sandable 24 h after mixing at 25 degC, coated until 14 h at 20 degC."""
    warm, mild = reckon("cure", air=298.15), reckon("cure", air=293.15)
    assert {one.name: one.time for one in warm.stages}["sand"] == pytest.approx(24 * 3600)
    assert mild.recoat.closes == pytest.approx(14 * 3600) and not mild.recoat.cold and not mild.recoat.shut
    assert (warm.lost, warm.labelled, warm.held) == (0.0, (), None)
    cold = reckon("cure", air=273.15)
    assert cold.stops and cold.lowest > 273.15 and {one.time for one in cold.stages} == {None} and cold.recoat.cold


def test_heat():
    """240 g at 30 degC in a cup run away, 20 g in the tray stay cool; half of a batch lasts no shorter."""
    warm = reckon("heat", air=303.15, batch=0.24)
    assert warm.peak.hot == 2 and warm.peak.temperature > 373.15 and not warm.peak.hardly
    assert warm.best.time == pytest.approx(warm.best.share * warm.best.end)
    assert warm.half.time >= warm.best.time and warm.tray.time > warm.best.time and warm.tray_gain >= warm.half_gain
    cool = reckon("heat", air=283.15, batch=0.02, container="tray", wanted=600.0)
    assert cool.peak.hot == 0 and cool.tray is None and cool.largest.mass > 0.02 and not cool.largest.too_much

"""A limit that a verdict rests on is a row of the catalogue; any other figure in a move says here what it is."""
import ast
from pathlib import Path

import pytest
from covemix.server.build import HOUSE

ROOMS = ("boat", "clock", "door", "files", "kit", "mix", "pour", "plan", "safety", "seam", "surface", "things")
SLACK = 1e-5  # whatever is smaller keeps two runtimes from differing in their last bits
PLAIN = {0, 1, 2, 3, 10, 60, 90, 180, 360, 600, 1000, 3600, 86400}  # counts, minutes, hours, a day, turns
LAYOUT = ("drawing", "section", "timeline", "spreader")  # modules that draw: their figures are places on a sheet
# module: figures that are no facts of the trade, and what each of them is
OTHERS = {
    "boat/shopping": {5000: "combinations that are tried"},
    "boat/boat_lines": {0.001: "a gram is no surplus"},
    "boat/hull": {10000.0: "to a tenth of a gram on the square metre two cloths are one"},
    "clock/cure_lines": {1800.0: "times are told by half hours", 48: "then in days"},
    "clock/elapsed": {4102444800.0: "the year 2100: no clock of a phone"},
    "clock/heat_found": {0.02: "a time is met within", 0.01: "times that are one"},
    "clock/heat_model": {0.005: "the least batch that is looked for", 20.0: "the largest",
                         4: "pi / 4: as wide as it is full", 0.1: "times that are one"},
    "clock/heat_table": {0.985: "of lines between the points of a table (tested)", 0.005: "its least mass"},
    "clock/hot_pot": {0.01: "a search ends within one percent"},
    "clock/peak_band": {64: "peaks that are kept"},
    "clock/trial": {172800.0: "as the clock asks for an own timing: seconds"},
    "clock/usable": {0.001: "pots that are told alike: mass", 0.06: "and warmth", 128: "runs that are kept"},
    "files/calendar": {75: "bytes of a line, RFC 5545", 4294967291: "a prime"},
    "files/drawn": {20.0: "units between two drawings", 1.5: "units of a line", 0.2: "mm of a line"},
    "files/tables": {9: "figures of a number"},
    "door/handover": {46649: "a prime", 5: "values told", 4: "names told", 40: "letters of them"},
    "kit/kit_lines": {4: "names told"},
    "kit/timings": {200: "rows"},
    "kit/sources_lines": {0.001: "then in mg", 0.005: "then in %", 1e6: "milligrams", 100: "percent"},
    "mix/filler_dose": {4: "a quarter of half a turn", 0.005: "thirds come to 99.9"},
    "mix/ratio_cost": {0.005: "less is beyond every source"},
    "mix/ratio_error_lines": {0.001: "a gram"},
    "plan/plan_lines": {4: "pieces named"},
    "plan/progress": {12: "how far ahead is looked", 0.001: "a thousandth of a second"},
    "plan/smallest_mix": {1e-4: "a tenth of a gram is no surplus"},
    "plan/working_times": {0.97: "what filler changes of a pot in the sun (tested)", 0.1: "any mass"},
    "pour/in_cup": {0.5: "whole strokes, to the nearest"},
    "pour/measure": {0.001: "a gram"},
    "pour/putty": {0.005: "short of a packing without room"},
    "safety/aid": {0.005: "water is told by 5 L"},
    "safety/air_lines": {100: "percent", 120: "then in hours"},
    "seam/impossible_joints": {0.999: "of a degree: typed degrees are whole"},
    "seam/joint_leads": {0.0021: "what a sheet of paper takes", 0.09: "at most"},
    "surface/sheathing": {0.9: "a tenth less, as the choice says"},
    "surface/pots": {0.2: "any pot that becomes a film", 0.01: "room that is left in any cup"},
    "things/piece_names": {30: "pieces kept of a batch"},
    "things/learned_rates": {7: "words of a kept rate", 20: "times: no more is read"},
    "things/own_timings": {
        6: "that are kept", 172800: "as the clock asks for it: seconds", 0.001: "kilograms", 20: "kilograms",
        263.15: "kelvins of the air", 323.15: "at most", 268.15: "of the resin", 333.15: "at most", 0.8: "filler",
        50: "kg/m3 of it", 8000: "at most"},
    "things/trials": {
        172800: "as the clock asks for it: seconds", 0.001: "kilograms", 20: "kilograms", 0.01: "doubt", 0.1: "loss",
        0.3: "heat", 0.02: "metres of width", 0.4: "at most", 6: "needed figures", 263.15: "kelvins of the air",
        323.15: "at most", 268.15: "of the mix", 333.15: "at most"},
    "things/statements": {40: "codes", 5: "figures of a code", 4: "letters of one"},
}


def modules():
    for room in ROOMS:
        for path in sorted((Path(HOUSE) / "shared" / room).glob("*.py")):
            if not any(word in path.stem for word in LAYOUT):
                yield f"{room}/{path.stem}", path.read_text(encoding="utf-8")


def figures(node):
    """The figures in an expression, without their signs and but for places in a row."""
    if isinstance(node, ast.Subscript):
        return figures(node.value)
    if isinstance(node, ast.Constant) and isinstance(node.value, int | float) and not isinstance(node.value, bool):
        return [node.value]
    return [one for below in ast.iter_child_nodes(node) for one in figures(below)]


def stated(source):
    """Figures that a module gives a name of its own, and those that it compares with."""
    tree = ast.parse(source)
    named = [node.value for node in tree.body if isinstance(node, ast.Assign)
             and not any(isinstance(one, ast.Call) for one in ast.walk(node.value))]  # a declaration's own limits
    compared = [side for node in ast.walk(tree) if isinstance(node, ast.Compare)
                for side in (node.left, *node.comparators)]
    return {one for node in (*named, *compared) for one in figures(node) if one not in PLAIN and one > SLACK}


def test_a_figure_in_a_move_is_no_limit():
    """Such a limit is a row of shared/catalogue, with its mark."""
    found = {name: stated(source) - OTHERS.get(name, {}).keys() for name, source in modules()}
    assert {name: figures for name, figures in found.items() if figures} == {}


def test_nothing_is_excused_that_is_gone():
    known = dict(modules())
    for name, excused in OTHERS.items():
        assert excused.keys() <= stated(known[name]), name


@pytest.mark.parametrize("source", ["MOST = 0.3\n", "def f(mass):\n    return mass > 0.3\n", "A, B = 1, 30 * 60.0\n",
                                    "def f(x, row):\n    return row[0] * 0.85 <= x\n"])
def test_a_limit_that_is_typed_in_is_seen(source):
    assert stated(source)

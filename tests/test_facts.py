"""Each fact once: texts and verdicts follow the catalogue."""
import ast
import json
import re
import subprocess
import sys
from pathlib import Path

import facts
import pytest
from covemix import shared
from covemix.shared.catalogue.damp import TABLES as DAMP_ROWS
from covemix.shared.catalogue.losses import BY_KEY
from covemix.shared.catalogue.sources import SOURCES
from covemix.shared.door import moves
from covemix.shared.kit import sources

ENGINE = Path(shared.__file__).parent
FILES = sorted(path for path in ENGINE.rglob("*.py") if path.parent.name != "catalogue")
JOINT = {"kind": "inside", "thickness": "30 mm", "angle": "90", "length": "2 m",
         "layers": [{"width": "200 mm", "weight": "300 g/m2"}]}
DEW = {"air": "20", "humidity": "99"}
STICK = {"way": "stick", "amount": "200 g", "cup": "medium"}

DAMP_MARK = DAMP_ROWS[0][1][1][-1]

# run in a process of its own: one number of the catalogue is another before anything else is imported
CHANGED = """
import importlib, json, sys, types
module, old, new, move, typed = json.loads(sys.argv[1])
importlib.import_module("covemix.shared.catalogue")
name = "covemix.shared.catalogue." + module
found = importlib.util.find_spec(name)
text = open(found.origin, encoding="utf-8").read()
assert text.count(old) == 1, (old, text.count(old))
made = importlib.util.module_from_spec(found)
sys.modules[name] = made
exec(compile(text.replace(old, new), found.origin, "exec"), made.__dict__)
from covemix.shared.door import moves
from covemix.shared.words.texts import said as read
from covemix.shared.words.written import reader
said = [read(value, reader()) for item in moves.module(move).INPUTS for value in (item.label, item.help)]
print(json.dumps([said, moves.answer(move, typed)]))
"""

# module, its source, changed, what is asked, what is not said any more, what is said instead
FOLLOWS = [
    ("losses", 'one-pass", 0.012,', 'one-pass", 0.009,', "joint", JOINT, "deeper than 12 mm", "deeper than 9 mm"),
    ("pot_life", '("soft", 2.0,', '("soft", 2.4,', "plan", {}, " 2 times the pot life", " 2.4 times the pot life"),
    ("pot_life", '("film", 3.5,', '("film", 3.1,', "plan", {}, "or 3.5 times", "or 3.1 times"),
    ("pot_life", '("exponent", 1 / 3,', '("exponent", 0.4,', "plan", {}, "a third (", "empty: 0.4 ("),
    ("ratios", "AIM, STOP = 0.02", "AIM, STOP = 0.03", "measure", {}, "or 2% (", "or 3% ("),
    ("damp", "DAMP = 0.85", "DAMP = 0.8", "dew", DEW, "Above 85%", "Above 80%"),
    ("damp", "MARGIN = 3.0", "MARGIN = 4.0", "dew", DEW, "surface to 3.0 °C above", "surface to 4.0 °C above"),
    ("joints", "NARROWEST = 20.0", "NARROWEST = 25.0", "joint", dict(JOINT, angle="10"), "Below 20°", "Below 25°"),
    ("joints", "FLATTEST = 30.0", "FLATTEST = 35.0", "joint", dict(JOINT, kind="bulkhead", angle="25"),
     "30° to 150°", "35° to 145°"),
    ("measuring", "MARK_ERROR = 0.001", "MARK_ERROR = 0.002", "measure", STICK, "1 mm on each mark",
     "2 mm on each mark"),
    ("cautions", '"caution-from-big", 0.3,', '"caution-from-big", 0.35,', "plan", {}, "If empty: 300 g",
     "If empty: 350 g"),
    ("containers", '("heat_per_epoxide", 106600.0, 100000.0,', '("heat_per_epoxide", 106600.0, 90000.0,', "heat",
     {"air": "20"}, "100 to 118 kJ/mol", "90 to 118 kJ/mol"),
    ("cure_times", "ENERGY = (55000.0,", "ENERGY = (56000.0,", "cure", {"air": "20"}, "energy 55 kJ", "energy 56 kJ"),
    ("glass", "FOR_BUYING = (0.45,", "FOR_BUYING = (0.42,", "heat", {"air": "20"}, "tape 45% glass", "tape 42% glass"),
    ("plans", "WARMTH = 293.15", "WARMTH = 295.15", "boat", {}, "empty: 20 °C", "empty: 22 °C"),
    ("airing", '"air-rule-pressure", 5,', '"air-rule-pressure", 6,', "air", {"fan_runs": "in"}, "up, 5 Pa", "up, 6 Pa"),
]

# figures that a text may hold, though no row has them: how to type, what a unit is, what a word means
MAY_SAY = re.compile(
    r"like |since 1970|W/\(m2|m2 K|hour 0|0 where|scale to 0|100 of |100 \{|100 AHEW|^\{100 g\}|"
    r"\{100 g\} of epoxy|of 100 pours|\d mm\}? (to measure|long on)|measure me|100 ?%|403 rule|21 degC|at \{20|"
    r"less than 1 min|often \{20|first 24 h|24 h$|Dougherty|1 own batch|1 joint|: 1?\d\d|\d : \d|1\.15|"
    r"batches \+ 1|less than 180°|"
    r"air mixes perfectly|\{0\}|\{10 K\}|\{\{10 K\}\}|H317|Stiffening 31|^0 m(in)?$|^\d[\d.]* (m|g/m|mm|g/m2)$|"
    r"A4|type 0 |^ 4 $|: \d:\d|^ ?g/m2$|section 2")


def constants(path):
    """[(line, text)] of the strings of a module that are told and hold a figure."""
    tree = ast.parse(path.read_text(encoding="utf-8"))
    docs = {id(node.body[0].value) for node in ast.walk(tree)
            if isinstance(node, (ast.Module, ast.FunctionDef, ast.ClassDef)) and node.body
            and isinstance(node.body[0], ast.Expr)}
    return [(node.lineno, node.value) for node in ast.walk(tree)
            if isinstance(node, ast.Constant) and isinstance(node.value, str) and id(node) not in docs
            and " " in node.value and re.search(r"\d", node.value)]


@pytest.mark.parametrize("path", [path for path in FILES if path.name != "drawn.py"],  # the marks of two formats
                         ids=lambda path: f"{path.parent.name}/{path.name}")
def test_no_text_holds_a_figure_of_its_own(path):
    """A figure that is told comes from a row of the catalogue; what explains how to type is named above."""
    told = [f"{path.name}:{line}: {text!r}" for line, text in constants(path) if not MAY_SAY.search(text)]
    assert told == [], "take it from the catalogue"


@pytest.mark.parametrize("path", FILES, ids=lambda path: f"{path.parent.name}/{path.name}")
def test_what_is_remembered_or_judged_stands_in_the_catalogue(path):
    """A constant beside which a comment says whose figure it is belongs into a row, where its mark is seen."""
    rows = path.read_text(encoding="utf-8").split("\n")
    found = [row for before, row in zip(["", *rows], rows, strict=False)
             if re.match(r"_?[A-Z][A-Z_, ]* = [^\"]*\d", row)
             and any(mark in (before if before.startswith("#") else "") + row.partition("#")[2]
                     for mark in ("own judgement", "from memory", "common practice"))]
    assert found == []


def said_with(module, old, new, move, typed):
    """Everything that a move says and asks with one number of the catalogue changed."""
    asked = json.dumps([module, old, new, move, typed])
    run = subprocess.run([sys.executable, "-c", CHANGED, asked], capture_output=True, text=True, check=False)
    assert run.returncode == 0, run.stderr
    return json.dumps(json.loads(run.stdout), ensure_ascii=False)


@pytest.mark.parametrize("module, old, new, move, typed, before, after", FOLLOWS, ids=lambda one: str(one)[:30])
def test_what_is_said_follows_the_row(module, old, new, move, typed, before, after):
    assert before in said_with(module, old, old, move, typed)  # it is said today
    changed = said_with(module, old, new, move, typed)
    assert after in changed
    assert before not in changed


# rows that nobody has looked up or judged: the count only falls. What is left is said on the screen where it counts
MOST_FROM_MEMORY = 59


def test_no_more_rows_are_from_memory():
    marks = [one.mark for one in sources.facts()]
    assert marks.count("from memory") <= MOST_FROM_MEMORY


def test_a_published_row_names_a_source_and_nothing_else_does_without_one():
    for one in sources.facts():
        assert (one.mark == "published") <= (one.source in SOURCES), one.row
        assert one.mark != "from memory" or not one.source, one.row


@pytest.mark.parametrize(("move", "typed", "name", "said"), [
    ("dew", {"air": "20", "humidity": "90"}, "humid", DAMP_MARK), ("boat", {}, "buy_abrasive", BY_KEY["abrasive"].mark),
    ("boat", {}, "buy_ties", BY_KEY["tie_spacing"].mark)])
def test_a_line_says_the_mark_of_its_row(move, typed, name, said):
    told = json.dumps([line for line in moves.answer(move, typed)["lines"] if line["name"] == name])
    assert told != "[]" and said in told, told


def remembered(module):
    """The figures of a module's rows from memory, as facts_asked.json calls them."""
    tree = ast.parse((facts.CATALOGUE / f"{module}.py").read_text(encoding="utf-8"))
    lines, named, others = set(), set(), set()
    for node in ast.walk(tree):
        held = node.elts if isinstance(node, ast.Tuple) else node.args if isinstance(node, ast.Call) else []
        marks = {getattr(one, "id", "") for one in held} & {"MEMORY", "JUDGED", "COMMON", "PUBLISHED"}
        if marks:
            used = {one.id for one in ast.walk(node) if isinstance(one, ast.Name)}
            if "MEMORY" in marks:
                lines.update(range(node.lineno, node.end_lineno + 1))
            named, others = (named | used, others) if "MEMORY" in marks else (named, others | used)
        if isinstance(node, ast.GeneratorExp | ast.ListComp) and "MEMORY" in ast.unparse(node.elt):
            named.update(one.id for one in ast.walk(node.generators[0].iter) if isinstance(one, ast.Name))
    for node in tree.body:
        if isinstance(node, ast.Assign) and (named - others) & {one.id for one in ast.walk(node.targets[0])
                                                     if isinstance(one, ast.Name)}:
            lines.update(range(node.lineno, node.end_lineno + 1))
    return [facts.name(figure) for figure in facts.figures(module) if figure.line in lines]


def test_an_answer_that_hangs_on_a_remembered_row_says_so():
    """The question that shows a figure at work (facts_asked.json) has "from memory" in its answer or on its form."""
    asked = json.loads(facts.ASKED.read_text(encoding="utf-8"))
    rows = [name for module in facts.MODULES for name in remembered(module)]
    questions = {asked["of"][name][0]: name for name in rows if name in asked["of"]}
    assert len(rows) > 100 and len(questions) > 15
    silent = [(name, asked["questions"][place]) for place, name in questions.items()
              if "memory" not in facts.ask(asked["questions"][place])]
    assert silent == []

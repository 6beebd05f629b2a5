"""The rooms of the engine: who may import whom, no circle, also none hidden by an import inside a function."""
import ast
from pathlib import Path

import pytest
from covemix import shared
from covemix.shared.forms.late import LATE

HOUSE = Path(shared.__file__).parent
ROOMS = ("door", "boat", "plan", "surface", "seam", "pour", "kit", "safety", "clock", "mix", "things", "forms",
         "files", "drawing", "words", "equations", "catalogue")  # from the door down
PLAIN = {"equations": {"catalogue"}, "files": {"words", "equations"}, "drawing": {"words"},
         "words": {"equations", "catalogue"}, "catalogue": set()}
FILES = sorted(path for path in HOUSE.glob("*/*.py"))
STANDARD = {"collections", "functools", "itertools", "json", "math", "re"}


def imported(path):
    """[(room, module)] that a file imports, wherever in the file; a name of the standard library has the room ""."""
    found = []
    for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
        if isinstance(node, ast.Import):
            found += [("", alias.name) for alias in node.names]
        elif isinstance(node, ast.ImportFrom) and node.level == 0:
            found.append(("", node.module))
        elif isinstance(node, ast.ImportFrom):
            steps = node.module.split(".") if node.module else []
            room = path.parent.name if node.level == 1 else steps.pop(0)
            found += [(room, steps[0])] if steps else [(room, alias.name) for alias in node.names]
    return found


BY_NAME = {"door/moves", "forms/late", "kit/catalogue_tables"}  # each says in one place what it imports by name
MOST_LINES = 60  # of a function
ON_A_SERVER = {"written.py": {"functools", "pathlib", "fluent.syntax"}}  # a phone has another in its place


def functions(path):
    return [node for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))) if isinstance(node, ast.FunctionDef)]


def late_asked(path):
    """[(room, module)] that a file asks `forms/late.py` for by a name that stands there."""
    calls = [node for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))) if isinstance(node, ast.Call)
             and isinstance(node.func, ast.Name) and node.func.id == "late"]
    names = [node.args[0].value for node in calls if isinstance(node.args[0], ast.Constant)]
    return [(room, module) for room, module in LATE if module in names]


def test_every_module_lives_in_a_room():
    assert [path.name for path in HOUSE.glob("*.py")] == ["__init__.py"]
    assert {path.parent.name for path in FILES} == set(ROOMS)


@pytest.mark.parametrize("room", ROOMS)
def test_a_room_says_what_it_is_for_and_what_it_may_import(room):
    words = ast.get_docstring(ast.parse((HOUSE / room / "__init__.py").read_text(encoding="utf-8")))
    assert words and len(words) > 40
    assert "import" in words


@pytest.mark.parametrize("path", FILES, ids=lambda path: f"{path.parent.name}/{path.stem}")
def test_a_module_says_what_it_is_for_and_by_no_other_name_than_its_files(path):
    """Who reads "Under way: ..." at the top of a file looks for that file, and it is called otherwise."""
    words = ast.get_docstring(ast.parse(path.read_text(encoding="utf-8")))
    assert words and len(words) > 20
    label, colon, _ = words.partition(": ")
    given = label.lower().replace(",", "").replace("'", " ").split()
    if colon and len(given) <= 4 and path.stem != "__init__":
        assert set(path.stem.split("_")) <= set(given), label


@pytest.mark.parametrize("path", FILES, ids=lambda path: f"{path.parent.name}/{path.stem}")
def test_the_arrows_point_down(path):
    room = path.parent.name
    below = PLAIN.get(room, set(ROOMS[ROOMS.index(room) + 1:])) | {room}
    for other, module in imported(path) + late_asked(path):
        allowed = STANDARD | ON_A_SERVER.get(path.name, set())
        assert other in below if other else module in allowed, f"{room}/{path.stem} imports {other}/{module}"


@pytest.mark.parametrize("path", FILES, ids=lambda path: f"{path.parent.name}/{path.stem}")
def test_no_import_hides_in_a_function(path):
    """What a phone loads late is said in `forms/late.py`, and nowhere else."""
    hidden = [node.lineno for function in functions(path) for node in ast.walk(function)
              if isinstance(node, ast.Import | ast.ImportFrom)]
    by_name = [node.lineno for node in ast.walk(ast.parse(path.read_text(encoding="utf-8")))
               if isinstance(node, ast.Name) and node.id == "__import__"]
    assert hidden == []
    assert by_name == [] or f"{path.parent.name}/{path.stem}" in BY_NAME


@pytest.mark.parametrize("path", FILES, ids=lambda path: f"{path.parent.name}/{path.stem}")
def test_a_long_function_says_why(path):
    for one in functions(path):
        assert one.end_lineno - one.lineno < MOST_LINES or "One function: " in (ast.get_docstring(one) or ""), one.name


def test_no_circle_of_modules():
    arrows = {(path.parent.name, path.stem): {(room, name) for room, name in imported(path) + late_asked(path) if room}
              for path in FILES}
    left = dict(arrows)
    while True:
        free = [one for one, to in left.items() if not any(other in left for other in to)]
        if not free:
            break
        for one in free:
            del left[one]
    assert sorted(left) == []

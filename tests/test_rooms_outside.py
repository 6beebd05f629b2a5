"""The rooms outside the engine: server, library and bench. Who may import whom, no circle, also none hidden by an
import inside a function, and no long function. The engine's own rooms: test_rooms.py. The page's: test_page_rooms.py.
"""
import ast
import re
import sys

import pytest
from covemix.server.build import HOUSE
from test_rooms import MOST_LINES

# room: other rooms of the house that it may import. Tests import all of them, the engine none.
MAY = {"library": {"server", "shared"}, "server": {"shared"}, "bench": {"server", "shared"}}
FILES = sorted(path for room in MAY for path in (HOUSE / room).rglob("*.py"))
LATE = {"server/command.py"}  # loads what a command needs when it is asked for, and says so


def ids(path):
    return path.relative_to(HOUSE).as_posix()


def place(node, path):
    """The dotted places below the house that an import names, the room first; () of what is not ours."""
    if isinstance(node, ast.Import):
        found = [alias.name.split(".") for alias in node.names]
    elif isinstance(node, ast.ImportFrom) and node.level == 0:
        found = [[*node.module.split("."), alias.name] for alias in node.names]
    elif isinstance(node, ast.ImportFrom):
        own = ids(path).removesuffix(".py").split("/")[:-node.level]
        found = [[*own, *(node.module.split(".") if node.module else ()), alias.name] for alias in node.names]
    else:
        return []
    plain = [names[1:] if names[0] == "covemix" else names for names in found]
    return [names for names in plain if names and names[0] in {"shared", "tests", *MAY}]


def imported(path, source=""):
    """Every place below the house that a file imports, wherever in the file."""
    tree = ast.parse(source or path.read_text(encoding="utf-8"))
    return [names for node in ast.walk(tree) for names in place(node, path)]


def module_of(names):
    """The file that a dotted place is or lies in, as `ids` has it; "" where there is none outside the engine."""
    for end in (len(names), len(names) - 1):
        for path in (f"{'/'.join(names[:end])}.py", f"{'/'.join(names[:end])}/__init__.py"):
            if path in {ids(one) for one in FILES}:
                return path
    return ""


def functions(path):
    kinds = ast.FunctionDef | ast.AsyncFunctionDef
    return [node for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))) if isinstance(node, kinds)]


@pytest.mark.parametrize(("source", "found"), [
    ("from .running import serve", ["server/running.py"]), ("from . import authority", ["server/authority.py"]),
    ("def f():\n    from .lan import serve_lan", ["server/lan.py"]), ("import covemix.server.lan", ["server/lan.py"]),
    ("from covemix import library", ["library/__init__.py"]), ("from covemix.shared.door import moves", [""]),
    ("import json", []),
])
def test_every_way_to_import_is_seen(source, found):
    assert [module_of(names) for names in imported(HOUSE / "server" / "app.py", source)] == found


@pytest.mark.parametrize("path", FILES, ids=ids)
def test_the_arrows_point_one_way(path):
    room = ids(path).partition("/")[0]
    assert {names[0] for names in imported(path)} - {room} <= MAY[room]


def test_the_library_comes_in_by_the_doors_that_the_guide_names():
    row = re.search(r"^\| `library/` \|.*$", (HOUSE / "DEVELOPERS.md").read_text(encoding="utf-8"), re.M)[0]
    used = {module_of(names) for path in FILES if ids(path).startswith("library/") for names in imported(path)
            if names[0] == "server"}
    assert used == set(re.findall(r"`(server/\w+\.py)`", row))


def test_the_server_takes_no_package_that_the_guide_does_not_name():
    row = re.search(r"^\| `server/` \|.*$", (HOUSE / "DEVELOPERS.md").read_text(encoding="utf-8"), re.M)[0]
    trees = [ast.parse(path.read_text(encoding="utf-8")) for path in FILES if ids(path).startswith("server/")]
    nodes = [node for tree in trees for node in ast.walk(tree)]
    used = {alias.name for node in nodes if isinstance(node, ast.Import) for alias in node.names}
    used |= {node.module for node in nodes if isinstance(node, ast.ImportFrom) and not node.level}
    packages = {name.partition(".")[0] for name in used} - sys.stdlib_module_names - {"covemix"}
    assert packages and packages == {name for name in packages if re.search(rf"\b{name}\b", row, re.I)}


@pytest.mark.parametrize("path", FILES, ids=ids)
def test_no_import_hides_in_a_function(path):
    hidden = [node.lineno for function in functions(path) for node in ast.walk(function)
              if isinstance(node, ast.Import | ast.ImportFrom)]
    assert hidden == [] or ids(path) in LATE


@pytest.mark.parametrize("path", FILES, ids=ids)
def test_a_long_function_says_why(path):
    for one in functions(path):
        assert one.end_lineno - one.lineno < MOST_LINES or "One function: " in (ast.get_docstring(one) or ""), one.name


def test_no_circle_of_modules():
    arrows = {ids(path): {module_of(names) for names in imported(path)} - {"", ids(path)} for path in FILES}
    while True:
        free = [one for one, to in arrows.items() if not to & arrows.keys()]
        if not free:
            break
        for one in free:
            del arrows[one]
    assert sorted(arrows) == []

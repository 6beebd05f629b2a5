"""What no module of the engine mentions: equations of the library, what pages of a server ask for. A phone has none."""
import ast
import re
from collections.abc import Iterator
from typing import NamedTuple

SAYS = ("message", "number", "quantity", "fact", "bare", "shown", "dict", "zip")  # to make a message does nothing else
Definition = ast.FunctionDef | ast.Assign


def without_unmentioned(modules: dict[str, str], known: str = "") -> dict[str, str]:
    """The same program without functions, methods and values whose names stand nowhere but where they are made.

    modules: lean sources by their path, a statement a line; known: texts of the page's scripts, which may call by name

    >>> without_unmentioned({"a.py": "B=2\\nC=B\\ndef f():\\n return 1\\ndef g():\\n return f()\\n"}, "g")["a.py"]
    'def f():\\n return 1\\ndef g():\\n return f()\\n'
    """
    seen = {path: _seen(path, source) for path, source in modules.items()}
    while True:
        there = set(re.findall(r"\w+", known)).union(*(one.mentioned for one in seen.values()))
        kept = {path: _kept(source, seen[path], there) for path, source in modules.items()}
        if kept == modules:
            return kept
        seen.update({path: _seen(path, source) for path, source in kept.items() if source != modules[path]})
        modules = kept


class Seen(NamedTuple):
    """What a module mentions; and what it makes under a name: the names, the first line, the last."""

    mentioned: set[str]
    made: list[tuple[list[str], int, int]]


def _seen(path: str, source: str) -> Seen:
    tree = ast.parse(source)
    made = [(_names(node), node.lineno, node.end_lineno or node.lineno) for node in _definitions(tree)]
    return Seen(mentioned(tree) | listed(path, tree), made)


def mentioned(tree: ast.Module) -> set[str]:
    """Every name that a module uses: values, attributes, imports, keywords, and the words of its texts."""
    found: set[str] = set()
    for node in ast.walk(tree):
        if isinstance(node, ast.Name) and isinstance(node.ctx, ast.Load):
            found.add(node.id)
        elif isinstance(node, ast.Attribute):
            found.add(node.attr)
        elif isinstance(node, ast.alias):
            found.add(node.name)
        elif isinstance(node, ast.AugAssign) and isinstance(node.target, ast.Name):
            found.add(node.target.id)
        elif isinstance(node, ast.keyword):
            found.add(node.arg or "")
        elif isinstance(node, ast.Constant) and isinstance(node.value, str):
            found.update(re.findall(r"\w+", node.value))
    return found


def listed(path: str, tree: ast.Module) -> set[str]:
    """Every name of a catalogue's module that declares no TABLES: its facts are found by their marks."""
    made = {name for node in _definitions(tree) for name in _names(node)}
    return made if "/catalogue/" in path and "TABLES" not in made else set()


def _kept(source: str, seen: Seen, there: set[str]) -> str:
    lines = source.splitlines(keepends=True)
    for names, first, last in seen.made:
        if not there.intersection(names):
            lines[first - 1:last] = [""] * (last - first + 1)
    return "".join(lines)


def _definitions(tree: ast.Module) -> Iterator[Definition]:
    """What a module or a class of it makes under a name, but for what Python itself asks for."""
    for node in tree.body:
        for one in node.body[1:] if isinstance(node, ast.ClassDef) else [node]:  # a class keeps a body
            if isinstance(one, Definition) and _names(one) and not any(name.startswith("__") for name in _names(one)):
                yield one


def _names(node: Definition) -> list[str]:
    """The names that it makes; none where it makes more than names."""
    if isinstance(node, ast.FunctionDef):
        return [] if node.decorator_list else [node.name]
    targets = [each for one in node.targets for each in (one.elts if isinstance(one, ast.Tuple) else [one])]
    calls = [one.func for one in ast.walk(node.value) if isinstance(one, ast.Call)]
    does = any(not isinstance(one, ast.Name) or one.id not in SAYS for one in calls)
    return [] if does else [one.id for one in targets if isinstance(one, ast.Name)]

"""The engine's program with short names for what no text, no page and no other program calls by its name."""
import ast
import builtins
import io
import itertools
import keyword
import re
import string
import token
import tokenize
from collections import Counter
from pathlib import PurePath

LEAST = 3  # letters of a name that is worth another


def short(modules: dict[str, str], known: str = "") -> dict[str, str]:
    """The same modules, each name of `renamed` in the place of its own: 4 kB of a first visit.

    modules: lean sources by their path; known: texts of the page's scripts, whose words keep their meaning

    >>> short({"a.py": "def mass_of(x):\\n return x\\n", "b.py": "from.a import mass_of\\nmass_of(1)\\n"})["b.py"]
    'from.a import c\\nc(1)\\n'
    """
    names = renamed(modules, known)
    return {path: _with(source, names) for path, source in modules.items()}


def renamed(modules: dict[str, str], known: str = "") -> dict[str, str]:
    """Another name for functions, classes and values of modules and for arguments, the most used first; one name has
    one other everywhere, and no two the same.

    What may be reached by its name keeps it: attributes, what a call names, what is a text of its own, modules.
    """
    trees = [ast.parse(source) for source in modules.values()]
    nodes = [node for tree in trees for node in ast.walk(tree)]
    mentions = Counter(word for node in nodes for word in _mentioned(node))
    kept = {*dir(builtins), *keyword.kwlist, *re.findall(r"\w+", known)}
    for path in modules:
        kept |= {part.removesuffix(".py") for part in PurePath(path).parts}
    for node in nodes:
        kept |= _by_name(node)
    own = {node.arg for node in nodes if isinstance(node, ast.arg)}
    for path, tree in zip(modules, trees, strict=True):
        given = {name for node in tree.body for name in _given(node)}
        own |= given
        if "catalogue" in PurePath(path).parts and "TABLES" not in given:
            kept |= given  # the page of sources makes titles of their names
    ours = sorted(name for name in own - kept if len(name) >= LEAST and not name.startswith("__"))
    taken = kept | mentions.keys()
    free = (itertools.product(string.ascii_letters, repeat=count) for count in (1, 2, 3))
    unused = (name for name in map("".join, itertools.chain.from_iterable(free)) if name not in taken)
    return {name: next(unused) for name in sorted(ours, key=lambda one: -mentions[one])}


def _given(node: ast.stmt) -> set[str]:
    """Names that a statement of a module gives it."""
    if isinstance(node, ast.FunctionDef | ast.ClassDef):
        return {node.name}
    targets = node.targets if isinstance(node, ast.Assign) else []
    return {one.id for target in targets for one in ast.walk(target) if isinstance(one, ast.Name)}


def _mentioned(node: ast.AST) -> list[str]:
    """Names that a node says itself."""
    if isinstance(node, ast.Name):
        return [node.id]
    if isinstance(node, ast.FunctionDef | ast.ClassDef):
        return [node.name]
    if isinstance(node, ast.arg):
        return [node.arg]
    return [node.name, *([node.asname] if node.asname else [])] if isinstance(node, ast.alias) else []


def _by_name(node: ast.AST) -> set[str]:
    """Names that a node reaches something by that another place may have named."""
    if isinstance(node, ast.Attribute):
        return {node.attr}
    if isinstance(node, ast.keyword):
        return {node.arg or ""}
    if isinstance(node, ast.Constant) and isinstance(node.value, str) and node.value.isidentifier():
        return {node.value}
    if isinstance(node, ast.Import):
        return {word for one in node.names for word in one.name.split(".")}
    if isinstance(node, ast.ImportFrom):
        return {*(node.module or "").split("."), *([] if node.level else [one.name for one in node.names])}
    return set()


def _with(source: str, names: dict[str, str]) -> str:
    lines = source.splitlines(keepends=True)
    for one in reversed(list(tokenize.generate_tokens(io.StringIO(source).readline))):
        if one.type == token.NAME and one.string in names:
            row, start = one.start
            lines[row - 1] = lines[row - 1][:start] + names[one.string] + lines[row - 1][one.end[1]:]
    return "".join(lines)

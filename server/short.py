"""The engine's program with short names for what no text, no page and no other program calls by its name."""
import ast
import builtins
import itertools
import keyword
import re
import string
from collections import Counter
from pathlib import PurePath

LEAST = 3  # letters of a name that is worth another
TEXT = r"""(?s:"{3}.*?"{3}|'(?:\\.|[^'\\])*'|"(?:\\.|[^"\\])*")"""
# a text, a figure or a name of a source without comments: the first two are taken whole, and are no name
WORD = re.compile(rf"[rbfRBF]{{0,2}}{TEXT}|\d[\w.]*|[^\W\d]\w*")


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
    said: list[str] = []
    kept = {*dir(builtins), *keyword.kwlist, *re.findall(r"\w+", known)}
    own: set[str] = set()
    for path, source in modules.items():
        tree = ast.parse(source)  # is kept no longer: that of all would be a tenth of a gigabyte
        kept.update(part.removesuffix(".py") for part in PurePath(path).parts)
        for node in ast.walk(tree):
            said += _mentioned(node)
            kept.update(_by_name(node))
            if isinstance(node, ast.arg):
                own.add(node.arg)
        given = {name for node in tree.body for name in _given(node)}
        own |= given
        if "catalogue" in PurePath(path).parts and "TABLES" not in given:
            kept |= given  # the page of sources makes titles of their names
    mentions = Counter(said)
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


def _by_name(node: ast.AST) -> list[str]:
    """Names that a node reaches something by that another place may have named."""
    if isinstance(node, ast.Attribute):
        return [node.attr]
    if isinstance(node, ast.keyword):
        return [node.arg or ""]
    if isinstance(node, ast.Constant):
        return [node.value] if isinstance(node.value, str) and node.value.isidentifier() else []
    if isinstance(node, ast.Import):
        return [word for one in node.names for word in one.name.split(".")]
    if isinstance(node, ast.ImportFrom):
        return [*(node.module or "").split("."), *([] if node.level else [one.name for one in node.names])]
    return []


def _with(source: str, names: dict[str, str]) -> str:
    """A lean source with other names; what looks like one in a text is none.

    >>> _with("mass=f(1e3,'mass')", {"mass": "a", "e3": "b"})
    "a=f(1e3,'mass')"
    """
    return WORD.sub(lambda found: names.get(found[0], found[0]), source)

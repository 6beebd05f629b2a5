"""What a phone loads is the same program as the repository's."""
import ast

import pytest
from covemix.server.build import HOUSE
from covemix.server.lean import DOCUMENTED, lean

MODULES = sorted((HOUSE / "shared").rglob("*.py"))


def undocumented(source: str) -> ast.Module:
    """The program as a tree, its docstrings, its annotations, what is imported for them alone, and the names that named
    tuples call themselves by, taken out."""
    tree = ast.parse(source)
    before = mentioned(tree)
    for node in ast.walk(tree):
        if isinstance(node, DOCUMENTED) and node.body and ast.get_docstring(node, clean=False) is not None:
            node.body = node.body[1:] or ([] if isinstance(node, ast.Module) else [ast.Pass()])
        if isinstance(node, ast.arg):
            node.annotation = None
        if isinstance(node, ast.FunctionDef):
            node.returns = None
        if isinstance(node, ast.Call) and isinstance(node.func, ast.Name) and node.func.id == "namedtuple":
            node.args[0] = ast.Constant("_")
        for field in ("body", "orelse", "finalbody"):
            if isinstance(getattr(node, field, None), list):
                setattr(node, field, [
                    ast.Assign([one.target], one.value) if isinstance(one, ast.AnnAssign) and one.value else one
                    for one in getattr(node, field)])
    for_types = before - mentioned(tree)
    for node in list(tree.body):
        if isinstance(node, ast.ImportFrom):
            node.names = [one for one in node.names if (one.asname or one.name) not in for_types]
            if not node.names:
                tree.body.remove(node)
    return tree


def mentioned(tree):
    """Names that stand in a tree, also in annotations that are quoted."""
    found = {node.id for node in ast.walk(tree) if isinstance(node, ast.Name)}
    for node in ast.walk(tree):
        for kind in (getattr(node, "annotation", None), getattr(node, "returns", None)):
            if isinstance(kind, ast.AST):
                for text in [one.value for one in ast.walk(kind) if isinstance(one, ast.Constant)]:
                    found |= mentioned(ast.parse(text)) if isinstance(text, str) else set()
    return found


def test_what_a_lean_module_imports_from_another_is_still_there():
    """No name that is dropped, because one module needs it for annotations alone, was taken from there by another."""
    shared = HOUSE / "shared"
    trees = {path: ast.parse(lean(path.read_text(encoding="utf-8"))) for path in MODULES}
    looked = 0
    for path, tree in trees.items():
        for node in ast.walk(tree):
            if isinstance(node, ast.ImportFrom) and node.level:
                base = path.parents[node.level - 1].joinpath(*(node.module or "").split("."))
                target = base.with_suffix(".py")
                if target in trees:
                    there = {child.id for child in ast.walk(trees[target]) if isinstance(child, ast.Name)} | {
                        getattr(child, "name", "") for child in trees[target].body} | {
                        one.asname or one.name for child in ast.walk(trees[target]) if isinstance(
                            child, ast.ImportFrom | ast.Import) for one in child.names}
                    missing = [one.name for one in node.names if one.name not in there]
                    assert missing == [], (path.relative_to(shared), target.relative_to(shared))
                    looked += 1
    assert looked > 300


@pytest.mark.parametrize("path", MODULES, ids=lambda path: path.relative_to(HOUSE).as_posix())
def test_a_lean_module_is_the_same_program(path):
    source = path.read_text(encoding="utf-8")
    before, after = undocumented(source), ast.parse(lean(source))
    private = {one.name: other.name for one, other in zip(before.body, after.body, strict=True)
               if isinstance(one, ast.FunctionDef) and one.name != other.name}
    assert len(set(private.values())) == len(private) and not set(private.values()) & mentioned(before)
    assert_same(before, after, {}, private)


def assert_same(before, after, names, private):
    """Node by node alike, but for variables of a function: each has one other name there, and no two have the same.

    names: of the function around, old to new; private: of functions that only this module knows, old to new
    """
    assert type(before) is type(after)
    if isinstance(before, ast.FunctionDef) and not names:
        names = {"": ""}  # of this function, and of those inside it
    for kind, field in ((ast.Name, "id"), (ast.arg, "arg")):
        if isinstance(before, kind) and names:
            old, new = getattr(before, field), getattr(after, field)
            assert names.setdefault(old, private.get(old, new)) == new
            assert list(names.values()).count(new) == 1
    for name in before._fields:
        old, new = getattr(before, name), getattr(after, name)
        if name in ("id", "arg") and names and isinstance(before, ast.Name | ast.arg):
            continue
        if isinstance(old, str) and (name == "id" or isinstance(before, ast.FunctionDef)):
            old = private.get(old, old)
        olds, news = (old, new) if isinstance(old, list) else ([old], [new])
        assert len(olds) == len(news)
        for one, other in zip(olds, news, strict=True):
            if isinstance(one, ast.AST):
                assert_same(one, other, names, private)
            else:
                assert one == other


@pytest.mark.parametrize("path", MODULES, ids=lambda path: path.relative_to(HOUSE).as_posix())
def test_what_others_know_keeps_its_name(path):
    """Arguments, functions, what a module gives and takes; of one with an underscore nobody else knows."""
    source = path.read_text(encoding="utf-8")
    private = [node for node in undocumented(source).body if isinstance(node, ast.FunctionDef) and node.name[0] == "_"]
    own_names = {node.name for node in private}
    own_args = {(one.lineno, one.col_offset) for node in private for one in node.args.args}
    for before, after in zip(*(list(ast.walk(tree)) for tree in (undocumented(source), ast.parse(lean(source)))),
                             strict=True):
        if isinstance(before, ast.arg | ast.FunctionDef | ast.alias | ast.Attribute | ast.keyword | ast.Module):
            own = {"arg": "arg", "FunctionDef": "name", "alias": "name", "Attribute": "attr", "keyword": "arg"}
            field = own.get(type(before).__name__)
            if isinstance(before, ast.FunctionDef) and before.name in own_names:
                assert after.name[0] == "_"
            elif not isinstance(before, ast.arg) or (before.lineno, before.col_offset) not in own_args:
                assert not field or getattr(before, field) == getattr(after, field)
    whole, short = outermost(undocumented(source)), outermost(ast.parse(lean(source)))
    for before, after in zip(whole, short, strict=True):
        names = [{one.id for one in ast.walk(tree) if isinstance(one, ast.Name)} for tree in (before, after)]
        stored = {one.id for one in ast.walk(before) if isinstance(one, ast.Name) and isinstance(one.ctx, ast.Store)}
        if before.name in own_names:
            stored |= {one.arg for one in before.args.args}
        assert names[0] - stored - own_names <= names[1], "what is not its own keeps its name"


def test_no_module_takes_a_private_function_of_another():
    """Or the short name that it has on a phone would not be found there."""
    for path in MODULES:
        for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
            if isinstance(node, ast.ImportFrom):
                assert [one.name for one in node.names if one.name[0] == "_"] == [], path


def outermost(tree):
    """Functions of a module and methods of its classes."""
    inside = [inner for node in tree.body for inner in (node.body if isinstance(node, ast.ClassDef) else [node])]
    return [one for one in inside if isinstance(one, ast.FunctionDef)]

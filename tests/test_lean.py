"""What a phone loads is the same program as the repository's."""
import ast

import pytest
from covemix.server.build import HOUSE
from covemix.server.lean import DOCUMENTED, lean

MODULES = sorted((HOUSE / "shared").rglob("*.py"))


def undocumented(source: str) -> ast.Module:
    """The program as a tree, its docstrings and annotations taken out."""
    tree = ast.parse(source)
    for node in ast.walk(tree):
        if isinstance(node, DOCUMENTED) and node.body and ast.get_docstring(node, clean=False) is not None:
            node.body = node.body[1:] or ([] if isinstance(node, ast.Module) else [ast.Pass()])
        if isinstance(node, ast.arg):
            node.annotation = None
        if isinstance(node, ast.FunctionDef):
            node.returns = None
    return tree


@pytest.mark.parametrize("path", MODULES, ids=lambda path: path.relative_to(HOUSE).as_posix())
def test_a_lean_module_is_the_same_program(path):
    source = path.read_text(encoding="utf-8")
    assert_same(undocumented(source), ast.parse(lean(source)), {})


def assert_same(before, after, names):
    """Node by node alike, but for variables of a function: each has one other name there, and no two have the same.

    names: of the function around, old to new
    """
    assert type(before) is type(after)
    if isinstance(before, ast.FunctionDef) and not names:
        names = {"": ""}  # of this function, and of those inside it
    if isinstance(before, ast.Name) and names:
        assert names.setdefault(before.id, after.id) == after.id
        assert list(names.values()).count(after.id) == 1
    for name in before._fields:
        old, new = getattr(before, name), getattr(after, name)
        if name == "id" and names:
            continue
        olds, news = (old, new) if isinstance(old, list) else ([old], [new])
        assert len(olds) == len(news)
        for one, other in zip(olds, news, strict=True):
            if isinstance(one, ast.AST):
                assert_same(one, other, names)
            else:
                assert one == other


@pytest.mark.parametrize("path", MODULES, ids=lambda path: path.relative_to(HOUSE).as_posix())
def test_what_others_know_keeps_its_name(path):
    """Arguments, functions, what a module gives and takes."""
    source = path.read_text(encoding="utf-8")
    for before, after in zip(*(list(ast.walk(tree)) for tree in (undocumented(source), ast.parse(lean(source)))),
                             strict=True):
        if isinstance(before, ast.arg | ast.FunctionDef | ast.alias | ast.Attribute | ast.keyword | ast.Module):
            own = {"arg": "arg", "FunctionDef": "name", "alias": "name", "Attribute": "attr", "keyword": "arg"}
            field = own.get(type(before).__name__)
            assert not field or getattr(before, field) == getattr(after, field)
    whole, short = outermost(undocumented(source)), outermost(ast.parse(lean(source)))
    for before, after in zip(whole, short, strict=True):
        names = [{one.id for one in ast.walk(tree) if isinstance(one, ast.Name)} for tree in (before, after)]
        stored = {one.id for one in ast.walk(before) if isinstance(one, ast.Name) and isinstance(one.ctx, ast.Store)}
        assert names[0] - stored <= names[1], "what is not its own keeps its name"


def outermost(tree):
    """Functions of a module and methods of its classes."""
    inside = [inner for node in tree.body for inner in (node.body if isinstance(node, ast.ClassDef) else [node])]
    return [one for one in inside if isinstance(one, ast.FunctionDef)]

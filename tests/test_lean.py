"""What a phone loads is the same program as the repository's."""
import ast

import pytest
from covemix.server.build import HOUSE
from covemix.server.lean import DOCUMENTED, lean

MODULES = sorted((HOUSE / "shared").rglob("*.py"))


def undocumented(source: str) -> str:
    """The program as a tree, its docstrings and annotations taken out."""
    tree = ast.parse(source)
    for node in ast.walk(tree):
        if isinstance(node, DOCUMENTED) and node.body and ast.get_docstring(node, clean=False) is not None:
            node.body = node.body[1:] or ([] if isinstance(node, ast.Module) else [ast.Pass()])
        if isinstance(node, ast.arg):
            node.annotation = None
        if isinstance(node, ast.FunctionDef):
            node.returns = None
    return ast.dump(tree)


@pytest.mark.parametrize("path", MODULES, ids=lambda path: path.relative_to(HOUSE).as_posix())
def test_a_lean_module_is_the_same_program(path):
    source = path.read_text(encoding="utf-8")
    assert ast.dump(ast.parse(lean(source))) == undocumented(source)

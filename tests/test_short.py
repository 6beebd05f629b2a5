"""Short names in the engine that a phone gets: the same program, and what is reached by its name keeps it."""
import ast

import house
import pytest
from covemix.server.build import HOUSE
from covemix.server.lean import lean
from covemix.server.short import renamed, short
from covemix.server.unmentioned import without_unmentioned

SCRIPTS = "".join(path.read_text(encoding="utf-8") for path in sorted((HOUSE / "webui/js/engine").glob("*.js")))
FIELDS = {"Name": "id", "FunctionDef": "name", "ClassDef": "name", "arg": "arg", "alias": "name"}


@pytest.fixture(scope="module")
def modules():
    """The program before its names are short, by path."""
    return without_unmentioned({path: lean(text) for path, text in house.build().program.items()}, SCRIPTS)


@pytest.fixture(scope="module")
def new_names(modules):
    """Each name that becomes another one."""
    return renamed(modules, SCRIPTS)


def test_each_name_has_one_other_everywhere_and_no_two_the_same(modules, new_names):
    assert len(new_names) > 900 and len(set(new_names.values())) == len(new_names)
    before = {getattr(node, field) for source in modules.values() for node in ast.walk(ast.parse(source))
              for field in ("id", "name", "arg", "attr", "asname", "module") if hasattr(node, field)}
    assert not before & set(new_names.values())  # no short name means anything yet


def test_the_program_is_the_same_node_by_node(modules, new_names):
    """Only where a name itself stands is it another; texts, attributes, what a call names and modules are as before."""
    sent, changed = short(modules, SCRIPTS), 0
    assert {path: text for path, text in sent.items() if text} == house.build().engine
    for path, source in modules.items():
        nodes = zip(ast.walk(ast.parse(source)), ast.walk(ast.parse(sent[path])), strict=True)
        for before, after in nodes:
            assert type(before) is type(after)
            for field in before._fields:
                old, new = getattr(before, field), getattr(after, field)
                if isinstance(old, ast.AST | list):
                    continue
                if FIELDS.get(type(before).__name__) == field or field == "asname":
                    assert new == new_names.get(old, old)
                    changed += old != new
                else:
                    assert new == old, (path, field, old)
    assert changed > 5000


def test_what_is_reached_by_its_name_keeps_it():
    """An attribute, a name that a call gives, a text that is a name (`getattr`, an import of what a text says)."""
    program = {
        "shared/a.py": "def mass_of(resin,more=1):\n return resin.weight\ndef figures(values):\n return values\n",
        "shared/b.py": "from.a import mass_of\nfound=getattr(mass_of,'figures')(mass_of(2,more=3)).mass_of_cup\n",
        "shared/catalogue/c.py": "WALLS=((1,'from memory'),)\n", "shared/catalogue/d.py": "DOORS=1\nTABLES=(DOORS,)\n",
    }
    names = renamed(program, "from shared.b import found")
    assert names.keys() == {"mass_of", "resin", "values", "DOORS", "TABLES"}
    sent = short(program, "from shared.b import found")
    assert "getattr({0},'figures')({0}(2,more=3)).mass_of_cup".format(names["mass_of"]) in sent["shared/b.py"]

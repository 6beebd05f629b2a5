"""The engine keeps to what runs alike on CPython and on MicroPython."""
from pathlib import Path

import portable
import pytest
from covemix import shared

ON_A_SERVER = ("written.py",)  # a phone has another in its place: `written.on_a_phone`
FILES = [path for path in sorted(Path(shared.__file__).parent.rglob("*.py")) if path.name not in ON_A_SERVER]


@pytest.mark.parametrize("path", FILES, ids=lambda path: path.name)
def test_the_engine_keeps_to_the_portable_subset(path):
    found = portable.broken(path.read_text(encoding="utf-8"))
    told = [f"{path.name}:{line}: {name}; write instead: {instead}" for line, name, instead in found]
    assert not told, "\n".join(told)


def _sample_can_be_parsed(sample):
    try:
        compile(sample, "sample", "exec")
    except SyntaxError:
        return False
    return True


@pytest.mark.parametrize("rule", portable.RULES, ids=lambda rule: rule[0])
def test_every_rule_finds_what_it_is_for(rule):
    if not _sample_can_be_parsed(rule[3]):
        pytest.skip("newer syntax than this Python knows: it cannot be written here either")
    assert portable.broken(rule[3], (rule,))


@pytest.mark.parametrize("rule", portable.RULES, ids=lambda rule: rule[0])
def test_no_rule_finds_fault_with_plain_code(rule):
    plain = '''
"""A docstring may say f"{x:.2f}", round() and anything else."""
from math import floor, sqrt
from .numbers import shown

def area(width, *, height=1.0):
    first, *rest = width
    parts = [w * height for w in rest if w % 2]
    name = "{} by {}".format(shown(first, 1), shown(height))
    if isinstance(first, (int, float)) and first is not True:
        parts = parts[1:] + parts[:-1] + list(reversed(parts))
    return sqrt(sum(parts)), floor(first), name.strip(" "), name.split(":"), dict(zip("ab", parts)), max(*parts)
'''
    assert not portable.broken(plain, (rule,))


def test_an_f_string_inside_a_docstring_is_no_code():
    assert portable.broken('def f():\n    """f"{x}" """\n') == []

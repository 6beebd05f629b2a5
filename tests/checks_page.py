"""Writes docs/CHECKS.md from what the tests recorded: `make checks`. Never edited by hand.

The first table counts the values by how they are known, the second holds them, the third the tests that say what they
were held against, the last what tests and equations take from memory.
"""
import ast
import json
import re
import sys
from collections import Counter
from pathlib import Path

HERE = Path(__file__).resolve().parent
sys.path.insert(0, str(HERE))
from conftest import KINDS  # noqa: E402 - as a script it is found beside it

LONGEST = 60  # letters of a text that is compared
NAMED = re.compile(r"\b(1[89]|20)\d\d\b|\b(ISO|EN|RFC|CFR|IEC)[ /]?\d|\b(NIOSH|OSHA|ACGIH|CDC|UNECE|GHS|WCAG)\b|"
                   r"\b(scipy|shapely|metpy|pint|chemicals|psychrolib|num2words|uncertainties)\b", re.I)
REMEMBERED = re.compile(r"from memory", re.I)
HEAD = """# What is checked against what

Built by the tests (`make checks`), never by hand. A value from memory is marked so where it is used; plain geometry,
algebra and definitions are sound checks of the code whoever recalls them. A value says how it is known:
"""


def told(value) -> str:
    """A number as it is read, a list of them in a row."""
    if isinstance(value, list):
        return ", ".join(told(one) for one in value)
    text = f"{value:.10g}" if isinstance(value, float) else str(value)
    return text if len(text) <= LONGEST else text[:LONGEST] + "…"


def cell(text: str) -> str:
    return " ".join(str(text).split()).replace("|", "\\|")


def row(*cells) -> str:
    return "| " + " | ".join(cell(one) for one in cells) + " |"


def counts_table(recorded: list[dict]) -> list[str]:
    """How many values of each kind, how many of them from memory, and how many remain without the largest family."""
    family, largest = Counter(source_of(one) for one in recorded).most_common(1)[0]
    heads = ("how it is known", "what that means", "values", "of them from memory", f"without {family}")
    lines = [row(*heads), "|---|---|---|---|---|"]
    for kind, means in KINDS.items():
        mine = [one for one in recorded if one["kind"] == kind]
        others = [one for one in mine if source_of(one) != family]
        lines.append(row(kind, means, len(mine), sum(bool(one["known"]) for one in mine), len(others)))
    lines.append(row("all", "", len(recorded), sum(bool(one["known"]) for one in recorded), len(recorded) - largest))
    return lines


def source_of(one: dict) -> str:
    """The work or library that a value is from, without the place in it."""
    return one["source"].split(",")[0].split(" (")[0]


def values_table(recorded: list[dict]) -> list[str]:
    lines = [row("test", "check", "kind", "source", "expected", "got", "tolerance"), "|---|---|---|---|---|---|---|"]
    for one in sorted(recorded, key=lambda one: (one["test"], one["check"])):
        test = one["test"].partition("::")[0].rpartition("/")[2]
        kind = ", ".join([one["kind"]] + ([one["known"]] if one["known"] else []))
        lines.append(row(test, one["check"], kind, one["source"], told(one["expected"]), told(one["got"]),
                         one["tolerance"]))
    return lines


def functions(path: Path):
    """(name, docstring) of all functions of a file that say something of themselves."""
    for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
        if isinstance(node, ast.FunctionDef) and ast.get_docstring(node):
            yield node.name, ast.get_docstring(node).split("\n\n")[0]


def tests_table() -> list[str]:
    """Every test whose docstring names what it was held against: a work and its year, a standard, a library."""
    lines = [row("file", "test", "held against"), "|---|---|---|"]
    for path in sorted(HERE.glob("test_*.py")):
        for name, words in functions(path):
            if name.startswith("test_") and NAMED.search(words):
                lines.append(row(path.name, name.removeprefix("test_").replace("_", " "), words))
    return lines


def memory_table() -> list[str]:
    """What tests and the engine's functions say they take from memory; the catalogue's rows say so on the screen."""
    lines = [row("file", "where", "what is said of it"), "|---|---|---|"]
    for path in [*sorted(HERE.glob("test_*.py")), *sorted((HERE.parent / "shared").rglob("*.py"))]:
        if path.parent.name == "catalogue":
            continue
        for name, words in functions(path):
            if REMEMBERED.search(words):
                lines.append(row(path.name, name.removeprefix("test_").replace("_", " "), words))
    return lines


def page(recorded: list[dict]) -> str:
    """The whole page; what was recorded twice stands once."""
    unique = list({(one["test"], one["check"], told(one["expected"])): one for one in recorded}.values())
    remembered = memory_table()
    return "\n".join([HEAD, *counts_table(unique), f"\n## Values ({len(unique)})\n", *values_table(unique),
                      "\n## Tests that name their source\n", *tests_table(),
                      f"\n## From memory, in tests and in what functions say of themselves ({len(remembered) - 2})\n",
                      *remembered]) + "\n"


if __name__ == "__main__":
    Path(sys.argv[2]).write_text(page(json.loads(Path(sys.argv[1]).read_text(encoding="utf-8"))), encoding="utf-8")

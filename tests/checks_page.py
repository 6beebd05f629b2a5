"""Writes docs/CHECKS.md from what the tests recorded: `make checks`. Never edited by hand.

The first table holds values compared with a published source, the second the tests that say what they were held
against.
"""
import ast
import json
import re
import sys
from pathlib import Path

HERE = Path(__file__).resolve().parent
LONGEST = 60  # letters of a text that is compared
NAMED = re.compile(r"\b(1[89]|20)\d\d\b|\b(ISO|EN|RFC|CFR|IEC)[ /]?\d|\b(NIOSH|OSHA|ACGIH|CDC|UNECE|GHS|WCAG)\b|"
                   r"\b(scipy|shapely|metpy|pint|chemicals|psychrolib|num2words|uncertainties)\b", re.I)
HEAD = """# What is checked against what

Built by the tests (`make checks`), never by hand. A value from memory is marked so where it is used; plain geometry,
algebra and definitions are sound checks of the code whoever recalls them.
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


def values_table(recorded: list[dict]) -> list[str]:
    lines = [row("test", "check", "source", "expected", "got", "tolerance"), "|---|---|---|---|---|---|"]
    for one in sorted(recorded, key=lambda one: (one["test"], one["check"])):
        test = one["test"].partition("::")[0].rpartition("/")[2]
        lines.append(row(test, one["check"], one["source"], told(one["expected"]), told(one["got"]), one["tolerance"]))
    return lines


def tests_table() -> list[str]:
    """Every test whose docstring names what it was held against: a work and its year, a standard, a library."""
    lines = [row("file", "test", "held against"), "|---|---|---|"]
    for path in sorted(HERE.glob("test_*.py")):
        for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
            if isinstance(node, ast.FunctionDef) and node.name.startswith("test_") and NAMED.search(
                    ast.get_docstring(node) or ""):
                name = node.name.removeprefix("test_").replace("_", " ")
                lines.append(row(path.name, name, ast.get_docstring(node).split("\n\n")[0]))
    return lines


if __name__ == "__main__":
    recorded = json.loads(Path(sys.argv[1]).read_text(encoding="utf-8"))
    unique = list({(one["test"], one["check"], told(one["expected"])): one for one in recorded}.values())
    page = [HEAD, f"## Values ({len(unique)})\n", *values_table(unique), "\n## Tests that name their source\n",
            *tests_table()]
    Path(sys.argv[2]).write_text("\n".join(page) + "\n", encoding="utf-8")

"""What the pages say and a command can check: README, DEVELOPERS, SECURITY and docs against the house as it stands.

Paths, names, commands and figures are read, and not how a page words them.
"""
import importlib.util
import re
import shlex
import subprocess
import tomllib
from pathlib import Path

import facts
import house
import mutants
import pytest
from covemix.server import command
from covemix.shared.catalogue.marks import PUBLISHED
from covemix.shared.door import moves
from covemix.shared.kit import sources
from covemix.shared.words.languages import LANGUAGES
from starlette.testclient import TestClient

from bench import weight
from bench.__main__ import in_short

HERE = Path(__file__).parents[1]
PAGES = {path.relative_to(HERE).as_posix(): path.read_text(encoding="utf-8") for path in (
    HERE / "README.md", HERE / "DEVELOPERS.md", HERE / "SECURITY.md", *sorted((HERE / "docs").glob("*.md")))}
MADE = ("docs/CHECKS.md", "docs/PROOF.md", "docs/MUTANTS.md")  # written by tests, of which they quote texts
LISTS = "docs/WEIGHT.md"  # of what is sent, by the paths a browser asks; tests/test_weight.py holds it
SAYS = {name: text for name, text in PAGES.items() if name not in (*MADE, LISTS)}
ROOMS = ("shared", "server", "webui", "tests", "bench", "docs", ".ci", ".github")
FILES = {path.relative_to(HERE).as_posix() for room in ROOMS for path in (HERE / room).rglob("*")
         if "__pycache__" not in path.parts} | {path.name for path in HERE.iterdir()}
MADE_UP = {"sand.py", "sand_lines.py", "test_sand.py"}  # the move that the guide adds
SENT = {"sw.nl.js", "sw.de.js", "sw.js", "app.bin", "app.css"}  # what a server makes
CODE = (".py", ".js", ".html", ".toml", ".ftl")
SOURCE = "\n".join(path.read_text(encoding="utf-8") for room in ("shared", "server", "webui", "tests", "bench", ".ci")
                   for path in sorted((HERE / room).rglob("*"))
                   if path.suffix in CODE and path.name != Path(__file__).name)


def ticks(text):
    """What a page sets as code, in a line or in a block."""
    blocks = re.findall(r"^```\n(.*?)^```", text, re.M | re.S)
    inline = re.findall(r"`([^`\n]+)`", re.sub(r"^```\n.*?^```", "", text, flags=re.M | re.S))
    return [*inline, *[line for block in blocks for line in block.splitlines()]]


def named(pattern):
    """(page, match) of what all pages set as code."""
    return sorted({(page, found) for page, text in SAYS.items() for tick in ticks(text)
                   for found in re.findall(pattern, tick)})


@pytest.mark.parametrize("page", PAGES)
def test_each_link_and_picture_of_a_page_is_there(page):
    for target in re.findall(r"\]\(([^)#\s]+)\)", PAGES[page]):
        if not target.startswith(("http:", "https:", "mailto:")):
            assert (HERE / page).parent.joinpath(target).exists(), target


PATH = (r"(?<![\w<>.{/-])((?:\.?[\w-]+/)*[\w.-]+\.(?:py|js|ftl|html|md|json|css|c|sh|pyi|toml|txt)"
        r"|(?:\.?[\w-]+/)+)(?![\w<>/])")


@pytest.mark.parametrize("page, path", named(PATH))
def test_each_file_and_folder_that_is_named_is_there(page, path):
    """By its whole path, or by the end of it."""
    name = path.rpartition("/")[2]
    if name in MADE_UP | SENT or path.startswith((".venv/", "../")) or "<" in path:
        return
    found = path.rstrip("/")
    assert any(one == found or one.endswith("/" + found) for one in FILES), path


def targets():
    return set(re.findall(r"^([.\w/-]+):", (HERE / "Makefile").read_text(encoding="utf-8"), re.M))


@pytest.mark.parametrize("page, target", named(r"\bmake ([a-z.][\w./]*)"))
def test_each_make_that_is_named_is_there(page, target):
    assert target in targets()


@pytest.mark.parametrize("target", sorted(targets() - {".PHONY"}))
def test_make_can_read_each_of_its_recipes(target):
    """Old main: `make checks` ended with "unterminated call to function 'shell'", so nobody could renew the page."""
    found = subprocess.run(["make", "--dry-run", target], cwd=HERE, capture_output=True, text=True, check=False)
    assert found.returncode == 0, found.stderr


def test_each_variable_that_a_make_is_given_is_one():
    recipe = (HERE / "Makefile").read_text(encoding="utf-8") + (HERE / "tests/mutants.py").read_text(encoding="utf-8")
    for page, name in named(r"\b([A-Z]+)=\S* ?make|make \w+ ([A-Z]+)=") + named(r"^([A-Z]+)=$"):
        for one in filter(None, [name] if isinstance(name, str) else name):
            room = (HERE / "webui/interpreter/room.sh").read_text(encoding="utf-8")
            assert re.search(rf"\b{one}\b", recipe + room), (page, one)


@pytest.mark.parametrize("page, module", named(r"python -m ([\w.]+)"))
def test_each_module_that_is_run_is_there(page, module):
    assert importlib.util.find_spec(module) is not None


@pytest.mark.parametrize("page, words", named(r"python -m pytest ([^`]*)"))
def test_what_pytest_is_asked_for_is_there(page, words):
    for word in shlex.split(words):
        if "/" in word and "<" not in word:
            assert (HERE / word.partition("::")[0]).exists(), words


SCRIPTS = named(r"python (?:tests/)?(\w+)\.py (\w+)")


@pytest.mark.parametrize("page, script, word", [(page, *found) for page, found in SCRIPTS])
def test_a_script_of_the_tests_takes_the_word_that_it_is_given(page, script, word):
    known = {"facts": facts.MODULES, "pseudo": moves.names()}
    assert word in known[script]


@pytest.mark.parametrize("page, one", named(r"^\.?[\w./]*covemix ([a-z-]+)"))
def test_the_command_line_knows_what_a_page_asks_of_it(page, one, capsys):
    """`covemix export DIR`, `covemix --version`: both end before they do anything."""
    with pytest.raises(SystemExit) as left:
        command.main([one, "--help"] if not one.startswith("-") else [one])
    assert left.value.code == 0 and capsys.readouterr().out


@pytest.mark.parametrize("page, path", named(r"curl '?localhost:\d+(\S+?)'?$"))
def test_each_request_that_is_printed_is_answered(page, path):
    answer = TestClient(house.app()).get(path)
    assert answer.status_code == 200 and answer.json()["errors"] == [] and answer.json()["lines"]


@pytest.mark.parametrize("page, method, path", [(page, *found) for page, found in named(r"^(GET|POST) (/api/\S+)")])
def test_each_route_that_is_named_is_one(page, method, path):
    asked = path.replace("<move>", "ratio").replace("?...", "?amount=240")
    typed = {"amount": "240 g"} if asked.endswith("ratio") else {}
    got = TestClient(house.app()).request(method, asked, **({"json": typed} if method == "POST" else {}))
    assert got.status_code == 200


@pytest.mark.parametrize("page, name", named(r"^([a-z_]+\.[a-z_]+|[A-Z][A-Z_]{2,}|[A-Z][a-z]+\.[a-z]+)$"))
def test_each_name_of_the_code_is_there(page, name):
    """A constant, or what a module or a class has: by its definition, somewhere in the house."""
    if name.rpartition(".")[2] in ("py", "js", "ftl", "md", "c", "json", "html", "sh", "toml", "pyi", "text", "txt"):
        return
    own = name.rpartition(".")[2]
    defined = rf"\b(def|class|const|let|function) {own}\b|^\s*(self\.)?{own}\b.*[=:]|\b{own}\b ?[=:(]"
    assert re.search(defined, SOURCE, re.M), name


# an example of each kind of input, as DEVELOPERS.md prints it: where it is typed
TYPED = {"1,5 kg": ("heat", "batch"), "3 1/2 in": ("heat", "cup_width"), "pumps": ("measure", "way"),
         "port chine": ("log", "seam"), "100 : 30": ("measure", "system.by_weight"), "240": ("ratio", "amount"),
         "2-1": ("ratio", "system"), "181": ("measure", "readings.0.shown"), "part_a": ("ratio", "amount_is")}


def test_the_examples_of_typed_text_are_read():
    table = PAGES["DEVELOPERS.md"].split("## Inputs")[1].split("\n\n")[0]
    printed = [cell for row in table.splitlines() if row.count("|") > 3
               for cell in re.findall(r"`([^`]+)`", row.split("|")[3])]
    assert len(printed) > 6
    for one in printed:
        given, text = (one if "=" in one else "=" + one).split("=")
        move, name = TYPED[text] if not given else ((TYPED.get(text) or TYPED["100 : 30"])[0], given)
        pairs = [[name, text]] + ([["system.by_weight", "100:30"], ["amount", "240"]] if move == "measure"
                                  and name != "system.by_weight" else [])
        found = moves.asked(move, pairs) if move in dict(moves.SCREENS) else moves.answer(move, tree(pairs))
        errors = [error for _, answer in found["answers"] for error in answer["errors"]] if "answers" in found else (
            found["errors"])
        assert not [error for error in errors if error["field"].startswith(name.split(".")[0])], (one, errors)


def tree(pairs):
    from covemix.shared.forms import links
    return links.tree([tuple(pair) for pair in pairs])


def test_python_languages_and_parts_are_as_the_readme_has_them():
    text = PAGES["README.md"]
    project = tomllib.loads((HERE / "pyproject.toml").read_text(encoding="utf-8"))["project"]
    assert project["requires-python"] == ">=" + re.search(r"Python (\d\.\d+) or newer", text)[1]
    assert {one.name for one in LANGUAGES.values()} == {"en", "de"} and "English or German" in text
    count = {"two": 2, "three": 3, "four": 4, "five": 5, "six": 6}
    least, most = re.search(r"(\w+) to (\w+) parts", text).groups()
    label = next(item for item in moves.module("ratio").INPUTS if item.name == "system").record.fields
    parts = next(item for item in label if item.name == "by_weight")
    assert (count[least], count[most]) == (parts.least, parts.most)


# figures

def test_every_fact_stands_in_the_table_of_sources_with_its_mark_and_what_is_published_with_its_source():
    """Figures, statements and words of statements: one line of the screen Sources for each row of the catalogue."""
    rows = list(sources.facts())
    assert len(moves.answer("sources", {})["lines"]) == len(rows)
    assert [one.row for one in rows if one.mark == PUBLISHED and not one.source] == []
    assert [one.row for one in rows if not one.mark] == []


def test_the_rows_from_memory_are_as_many_as_the_page_of_trust_says():
    """All of them, and group by group."""
    whole = " ".join(PAGES["docs/TRUST.md"].split())
    told = re.search(r"catalogue's (?:some )?(\d+) rows (\d+) are from memory[^:]*: (.*?)\.", whole)
    rows = list(sources.facts())
    assert abs(int(told[1]) - len(rows)) <= 10
    assert int(told[2]) == sum(one.mark == "from memory" for one in rows)
    one_each = len(re.split(r",| and ", told[3].partition("one each for ")[2])) if "one each" in told[3] else 0
    assert sum(map(int, re.findall(r"\((\d+)\)", told[3]))) + one_each == int(told[2])


def test_the_mutants_add_up():
    """What was not seen stands in the list, each with how it was looked at; a share is that of its own counts."""
    page = PAGES["docs/MUTANTS.md"]
    rows = [[cell.strip() for cell in row.split("|")[1:-1]] for row in re.findall(
        r"^\| (?:engine|scripts|sw)[^\n]*", page, re.M)]
    assert len(rows) == 5
    unseen = 0
    for _, places, tried, seen, share, same, without, _ in rows:
        assert int(places.replace(",", "")) >= int(tried) >= int(seen) + int(same)
        assert share == mutants.said(int(seen), int(tried))
        assert without == mutants.said(int(seen), int(tried) - int(same))
        unseen += int(tried) - int(seen)
    listed = [row.rpartition(" | ")[2] for row in page.partition("looked at one by one")[2].splitlines()
              if re.match(r"\| (shared|webui)/", row)]
    assert len(listed) == unseen
    assert [row for row in listed if "not yet" in row] == []
    assert sum(row.startswith("same") for row in listed) == sum(int(row[5]) for row in rows)


NEAR = 0.02  # of a size: a page that is off by more is written anew


def test_sizes_of_weight_and_bench_are_those_of_the_house_and_of_each_other():
    """`python -m bench.weight` and `python -m bench wire` write them anew."""
    build = house.build()
    bundle = build.bundle(weight.Pages(build).kept())
    listed = dict(re.findall(r"^\| ([\w./]+) \| [\d,]* \| ([\d,]+) \|", PAGES["docs/WEIGHT.md"], re.M))
    sent = {name: int(size.replace(",", "")) for name, size in listed.items()}
    assert sent["app.bin"] == pytest.approx(len(bundle.body), rel=NEAR)
    assert sent["js/main.js"] == pytest.approx(len(build.files["js/main.js"].br), rel=NEAR)
    wire = {name: int(size.replace(",", "")) for name, size in re.findall(
        r"^\| ([\w ]+) \| \d+ \| ([\d,]+) \| \d+ % \|", PAGES["docs/BENCH.md"], re.M)}
    assert wire["engine and all pages"] == pytest.approx(sent["app.bin"], rel=NEAR)
    interpreter = re.search(r"micropython\.bin` \| [\d,]+ \| ([\d,]+)", PAGES["docs/WEIGHT.md"])[1]
    assert wire["MicroPython"] == pytest.approx(int(interpreter.replace(",", "")), rel=NEAR)
    told = int(re.search(r"^([\d,]+) bytes in all", PAGES["docs/BENCH.md"], re.M)[1].replace(",", ""))
    assert told == sum(wire.values())


def test_the_readmes_figures_are_those_of_the_bench():
    """Its short block is what the page's own figures come to, each ratio with its spread."""
    block = PAGES["README.md"].split("<!-- bench -->\n")[1].split("<!-- /bench -->")[0]
    assert block == in_short(PAGES["docs/BENCH.md"])
    assert len(re.findall(r"[\d.]+ \([\d.]+ to [\d.]+\)", block)) == 4
    assert len(re.findall(r"\.(?=\s)", block)) == 3  # sentences


def test_each_ratio_of_the_bench_has_its_spread():
    """A ratio that stands alone would be read as a fact; below 1 % of spread it is said too."""
    page = PAGES["docs/BENCH.md"]
    tables = page.split("## What stands still without it")[1].split("## Over the wire")[0] + page.split(
        "## Heavy moves")[1]
    cells = [cell.strip() for row in tables.splitlines() if row.startswith("|") for cell in row.split("|")[2:-1]]
    found = [cell for cell in cells if re.match(r"\d", cell) and not re.match(r"\d+x", cell)]
    assert len(found) > 15
    for cell in found:
        assert re.match(r"[\d.,]+ \([\d.,]+ to [\d.,]+\)", cell), cell

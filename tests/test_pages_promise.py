"""What the pages promise in words, and a command can check: the sentence stands there, and the house keeps it.

A sentence is looked up word by word: who changes it changes the check with it, and who changes the house is told by it.
"""
import re
from pathlib import Path

import house
import pytest
from covemix.server.build import Build
from covemix.server.export import export
from covemix.shared.catalogue import damp, solvents
from covemix.shared.door import moves
from covemix.shared.safety import air
from starlette.testclient import TestClient
from test_sun import label_rates, minutes
from waits import in_own_thread

from bench.__main__ import BUSY

HERE = Path(__file__).parents[1]
TEXT = {name: " ".join((HERE / name).read_text(encoding="utf-8").split()) for name in (
    "README.md", "DEVELOPERS.md", "SECURITY.md", "docs/LANGUAGES.md", "docs/LOOK.md", "docs/TRUST.md", "docs/WEIGHT.md",
    "docs/BENCH.md")}


def read(path):
    return (HERE / path).read_text(encoding="utf-8")


def says(page, sentence):
    """That a page still promises it."""
    assert sentence in TEXT[page], f"{page} says it otherwise now: mend its check here"


# README

def test_the_api_answers_in_the_language_that_a_program_asks_for():
    says("README.md", "The API answers in English, or in German where `Accept-Language` asks for it.")
    says("docs/LANGUAGES.md", "The command line, and what `/openapi.json` says of the API.")
    client = TestClient(house.app())
    asked = [client.post("/api/ratio", json={"amount": "240 g"}, headers=headers).json()["lines"][0]["label"]
             for headers in ({}, {"Accept-Language": "fr"}, {"Accept-Language": "de"})]
    assert asked[0] == asked[1] != asked[2]
    specs = [client.get("/openapi.json", headers=headers).json() for headers in ({}, {"Accept-Language": "de"})]
    assert specs[0] == specs[1]


def test_an_export_is_files_alone_and_has_no_api(tmp_path):
    says("README.md", "whole app as static files. Put them on any https host, in any folder. There is no API then.")
    assert export(tmp_path, Build()) > 20
    names = {path.relative_to(tmp_path).parts[0] for path in tmp_path.rglob("*") if path.is_file()}
    assert "index.html" in names and not names & {"api", "openapi.json"}


def test_the_python_that_is_asked_for_is_the_one_that_the_venv_wants():
    newest = re.search(r"Python (\d)\.(\d+) or newer", TEXT["README.md"])
    assert f"sys.version_info < ({newest[1]}, {newest[2]})" in read(".ci/venv")


def test_who_reads_a_ratio_of_a_busy_machine_is_told_so():
    """What spreads with the machine is no fact by itself: the README says it where the bench's page does."""
    assert (BUSY[0] in read("docs/BENCH.md")) == ("on a machine busy with other things" in TEXT["README.md"])


# DEVELOPERS

def test_make_test_installs_a_browser_and_node_where_they_are_missing():
    says("DEVELOPERS.md", "need Debian's Chromium and Node: `make test` installs them if they are missing")
    recipe = re.search(r"^test:.*\n((?:\t.*\n)+)", read("Makefile"), re.M)
    assert recipe[0].startswith("test: .venv/test\n") and ".ci/browser" in recipe[1]
    assert "lint > .venv/lint.txt" in recipe[1] and "wait $$lint" in recipe[1]  # what it needs is installed there
    assert "need\" chromium" in read(".ci/browser") and ".ci/need npm npm" in read(".ci/js")


def test_make_lint_looks_at_what_the_page_lists():
    says("DEVELOPERS.md", "## What `make lint` looks at - ruff; - mypy on every function of engine and server")
    says("DEVELOPERS.md", "- tsc and eslint on the page's scripts by `.ci/js`")
    recipe = re.search(r"^lint:.*\n((?:\t.*\n)+)", read("Makefile"), re.M)[1]
    assert [word for word in ("/ruff", "/mypy", ".ci/js") if word not in recipe] == []
    assert 'packages = ["covemix.library", "covemix.shared", "covemix.server"]' in read("pyproject.toml")
    assert all(f"node_modules/.bin/{tool}" in read(".ci/js") for tool in ("tsc", "eslint"))


def test_the_picture_of_the_memory_is_made_ten_seconds_after_a_start():
    says("DEVELOPERS.md", "It is made once for a build, ten seconds after a start")
    assert re.search(r"^const UNHURRIED = 10_000; // ms", read("webui/js/engine/engine.js"), re.M)


def test_a_kind_is_made_up_in_some_thirty_lines():
    says("DEVELOPERS.md", "`tests/switch.py` makes a kind up in thirty lines.")
    assert 25 <= len(read("tests/switch.py").splitlines()) <= 35


def test_a_missing_key_of_a_language_is_told_and_no_number_of_them_is_promised():
    """Keys come with every sentence: a page that counts them is wrong the next day."""
    assert not re.search(r"[\d,]+ missing keys", TEXT["DEVELOPERS.md"])


def test_parity_asks_as_many_questions_as_make_says():
    says("DEVELOPERS.md", "`make parity` asks both runtimes thousands of questions.")
    by_day, asked = (int(one) for one in re.findall(r"COVEMIX_CASES=(\d+)", read("Makefile")))
    usual = int(re.search(r'"COVEMIX_CASES", "(\d+)"', read("tests/browser/test_both_runtimes.py"))[1])
    assert (f"# {asked:,} generated questions, answered alike by both runtimes; `make test` asks a twentieth, "
            "`make night` a third") in read("Makefile")
    assert (round(asked / by_day), round(asked / usual)) == (20, 3)


OF_TIME = re.compile(r"(?:half|third|quarter|tenth|twice|times)(?: of)?(?: the| a)? "
                     r"(?:time\b|as long|as fast|quicker|faster)|second of work", re.I)


@pytest.mark.parametrize("page", [name for name in TEXT if name not in ("docs/BENCH.md", "docs/TRUST.md")])
def test_how_much_quicker_is_said_with_its_spread_or_not_at_all(page):
    """What a busy machine moves is no fact: its ratio stands in docs/BENCH.md, and in the README with its spread.
    (docs/TRUST.md speaks of the minutes of a pot.)"""
    for found in OF_TIME.finditer(TEXT[page]):
        sentence = TEXT[page][found.start() - 100:found.end() + 90]
        assert re.search(r"[\d.]+ \([\d.]+ to [\d.]+\)", sentence), sentence


# docs/LANGUAGES.md

def test_a_sentence_is_as_long_as_the_test_of_words_allows():
    found = re.search(r"at most ([\d.]+) times the English letters, plus (\d+)", TEXT["docs/LANGUAGES.md"])
    assert f"> {found[1]} * letters(ENGLISH[key]) + {found[2]}}}" in read("tests/test_words.py")


def test_a_cookie_is_written_in_one_place_and_never_by_the_server():
    says("SECURITY.md", "One cookie is set, only if somebody chooses a language, and holds only that.")
    says("docs/LANGUAGES.md", "Only a choice sets a cookie (`language`).")
    scripts = [path for path in (HERE / "webui").rglob("*") if path.suffix in (".js", ".html")
               and "document.cookie =" in path.read_text(encoding="utf-8")]
    assert [path.name for path in scripts] == ["language.js"]
    served = "\n".join(path.read_text(encoding="utf-8") for path in (HERE / "server").glob("*.py"))
    assert not re.search(r"set_cookie|set-cookie", served, re.I)


def test_the_log_holds_no_address_and_no_query(monkeypatch):
    """uvicorn writes a line for each request at "info": it is started above that. Here it serves nobody, and ends."""
    says("SECURITY.md", "The server stores nothing and writes no address or query to its log.")
    import uvicorn
    from covemix.server import command, running
    asked = []

    async def served(self, sockets=None):
        asked.append(self.config)

    monkeypatch.setattr(uvicorn.Server, "serve", served)  # all that starts one comes by it
    monkeypatch.setattr(running, "create_app", lambda origins: house.app())
    in_own_thread(command.main, ["serve", "--port", "0"])
    assert [(one.log_level, one.access_log) for one in asked] == [("warning", False)]


# docs/LOOK.md

COLOUR = re.compile(r"#[0-9a-f]{3,8}\b|\b(?:rgb|hsl|oklch|oklab|color)\(", re.I)


def test_colours_stand_in_one_file():
    says("docs/LOOK.md", "Colours are named by role and stand in `webui/css/tokens.css` only, each for light and dark.")
    says("docs/LOOK.md", "(The paper of a template is white on every screen, and has its two in `template.css`.)")
    found = {path.name for path in (HERE / "webui/css").glob("*.css")
             if COLOUR.search(re.sub(r"/\*.*?\*/|url\([^)]*\)", "", path.read_text(encoding="utf-8"), flags=re.S))}
    assert found == {"tokens.css", "template.css"}
    bars = re.findall(r'theme-color" content="(#\w+)"', read("webui/templates/base.html"))
    assert len(bars) == 2 and all(colour in read("webui/css/tokens.css") for colour in bars)


def test_keys_are_as_large_as_the_page_says():
    found = re.search(r"Keys are at least (\d+) px, (\d+) where a glove works", TEXT["docs/LOOK.md"])
    assert f"--touch: max(3rem, {found[1]}px)" in read("webui/css/tokens.css")
    assert f"--touch-glove: max(3.5rem, {found[2]}px)" in read("webui/css/tokens.css")


# docs/TRUST.md

LABEL = {"by_weight": "100:30", "pot_time": "30", "pot_mass": "100", "pot_temperature": "25"}


def test_what_a_meter_may_be_off_is_the_catalogues():
    says("docs/TRUST.md", f"{damp.METER_OFF:g} K are said beside the margin, and no verdict counts them")
    usual, least, most = re.search(r"the mixing factor of your room \((\d+) until it is typed; (\d+), own judgement, "
                                   r"to (\d+)\)", TEXT["docs/TRUST.md"]).groups()
    [field] = [one for one in moves.module("air").INPUTS if one.name == "mixing"]
    assert float(usual) == float(field.default)
    assert (float(least), float(most)) == (air.MIXING_LEAST, air.MIXING_MOST)


def test_the_limits_of_butanone_are_the_strictest_of_the_catalogue():
    counted = re.search(r"The app counts (\d+) and (\d+) ppm", TEXT["docs/TRUST.md"]).groups()
    for told, kind in zip(counted, (solvents.DAY, solvents.SHORT), strict=True):
        assert float(told) * 1e-6 == pytest.approx(min(one.value for one in solvents.rows("butanone", kind)))


def test_the_model_of_a_cup_in_the_shade_is_the_engines():
    """What the balance of one temperature gives, before the shorter of the two is taken and a fifth kept back."""
    told = float(re.search(r"([\d.]+) min here, 28\.6 to 29\.1 by our own model", TEXT["docs/TRUST.md"])[1])
    lines = moves.answer("heat", {"air": "25", "batch": "240", "container": "cup", "system": LABEL})["lines"]
    by_heat = next(line for line in lines if line["name"] == "by_heat")["value"] / 60
    assert by_heat == pytest.approx(told, abs=0.05)


SUN_ROWS = re.findall(r"^\| (cup|tray), [^|]*\| (\d+)[^|]*\| (\d+)(?: to (\d+))?[^|]*\|", read("docs/TRUST.md"), re.M)


@pytest.mark.parametrize(("kind", "flux", "least", "most"), SUN_ROWS)
def test_the_minutes_in_the_sun_are_the_engines(kind, flux, least, most):
    """240 g at 25 degC by the same label, the activation energy open, 45 to 65 kJ/mol."""
    found = [minutes(kind, 0.24, float(flux), label_rates(350e3, energy=energy), 350e3) for energy in (45e3, 65e3)]
    assert (round(min(found)), round(max(found))) == (int(least), int(most or least))


def test_the_table_of_the_sun_is_read():
    assert len(SUN_ROWS) == 6

"""The knock detector in Node, on modelled signals (`tests/node/knocks.mjs`): docs/KNOCK.md says what is felt."""
import re
import shutil
import subprocess
from pathlib import Path

import pytest
from covemix.server.build import HOUSE

SCRIPT = Path(__file__).parent / "node" / "knocks.mjs"
PAGE = HOUSE / "docs" / "KNOCK.md"
NODE = shutil.which("node") or shutil.which("nodejs")
NONE = ("hammering, 3 to 12", "hammering without", "a sander", "sanding", "walking with", "the phone", "a dropped")
KNOCKED, NEVER = "double knock, 0.2 to 0.5 s apart", 0
TOLD = dict(re.findall(r"^\| ([^|]+?) \| ([\d of]+?) \|$", PAGE.read_text(encoding="utf-8"), re.M))


@pytest.fixture(scope="module")
def found():
    """{signal: what was felt of it}"""
    if NODE is None:
        pytest.skip("there is no Node here: `make test` installs it where it may")
    run = subprocess.run([NODE, str(SCRIPT), str(HOUSE / "webui")], capture_output=True, text=True, check=False,
                         timeout=300)
    rows = dict(row.split("\t") for row in run.stdout.splitlines() if "\t" in row)
    assert rows, run.stderr
    return rows


def test_the_page_says_what_is_felt(found):
    assert found == TOLD


def test_a_double_knock_is_felt_and_what_is_none_is_not(found):
    felt, tried = map(int, found[KNOCKED].split(" of "))
    assert felt >= 0.9 * tried
    for signal in ("one knock", "two knocks 0.1 s apart", "two knocks 0.8 s apart", "three knocks"):
        assert int(found[signal].split(" of ")[0]) == NEVER, signal


def test_an_hour_of_hammering_sanding_or_dropping_goes_on_by_nothing(found):
    """Trains of blows at any rate: never. A hammer that strikes twice and rests is a double knock, to any rule."""
    for signal, felt in found.items():
        if signal.startswith(NONE):
            assert int(felt) == NEVER, signal
    assert int(found["hammering, 1 to 12 blows for a nail, 3 a second"]) <= 2
    assert int(found["walking past, 1.8 steps a second"]) <= 10

"""The recorder of outside checks itself: it must be able to fail, and it must write what it saw.

The demonstrations here carry the id "demo"; the record leaves them out.
"""
import json
import os
import subprocess
import sys
from pathlib import Path

import pytest
from conftest import KINDS
from covemix.shared.door import moves

# short names of checks
STANDS_ON = {"ratio": "ra-1", "dew": "dw", "own_rates": "rates-1", "timer": "pot", "run": "plan"}


def test_a_value_outside_its_tolerance_fails(outside):
    with pytest.raises(AssertionError, match="demo"):
        outside.worked("demo", "plane arithmetic", 2.0, 2.1, rel=1e-3)


def test_the_tolerance_may_be_absolute_relative_or_exact(outside):
    outside.worked("demo", "plane arithmetic", 0.105, 0.1052, absolute=0.0005)
    outside.worked("demo", "plane arithmetic", (1.0, 2.0), (1.0, 2.0 + 1e-12))
    outside.worked("demo", "plane arithmetic", "3 : 1", "3 : 1")
    with pytest.raises(AssertionError):
        outside.worked("demo", "plane arithmetic", 0.105, 0.106, absolute=0.0005)
    with pytest.raises(AssertionError):
        outside.worked("demo", "plane arithmetic", (1.0, 2.0), (1.0, 2.1))
    with pytest.raises(AssertionError):
        outside.worked("demo", "plane arithmetic", 0.0, 1e-9)


def test_a_value_says_how_it_is_known(outside):
    with pytest.raises(AttributeError, match="printed, library, solved, worked, own"):
        outside.guessed("demo", "plane arithmetic", 1, 1)
    with pytest.raises(TypeError):
        outside("demo", "plane arithmetic", 1, 1)


def test_a_check_without_a_source_fails(outside):
    with pytest.raises(AssertionError, match="source"):
        outside.worked("demo", "", 1, 1)


@pytest.mark.parametrize("move", moves.names())
def test_every_move_that_reckons_has_its_value_on_the_page(move):
    """docs/CHECKS.md has a row for each move, under its own name or that of the equations it stands on."""
    page = (Path(__file__).parents[1] / "docs" / "CHECKS.md").read_text(encoding="utf-8")
    listed = {row.split("|")[2].split()[0] for row in page.partition("## Tests")[0].splitlines() if row.count("|") > 7}
    # those keep, sum up or quote; nothing is reckoned
    if move not in ("kit", "log", "timings", "aid", "calls", "safety", "sources"):
        assert STANDS_ON.get(move, move) in listed, (
            f"no check of docs/CHECKS.md begins with {STANDS_ON.get(move, move)!r}: name one so, then `make checks`")


def test_the_page_counts_its_values_by_how_they_are_known():
    """docs/CHECKS.md: each value says one of KINDS, and the table above counts them as they stand below."""
    page = (Path(__file__).parents[1] / "docs" / "CHECKS.md").read_text(encoding="utf-8")
    counts, _, values = page.partition("## Values")[0], 0, page.partition("## Values")[2].partition("\n## ")[0]
    kinds = [row.split("|")[3].split(",")[0].strip() for row in values.splitlines() if row.startswith("| test_")]
    told = {row.split("|")[1].strip(): int(row.split("|")[3]) for row in counts.splitlines() if row.startswith("| ")
            and row.split("|")[3].strip().isdecimal()}
    assert told == {**{kind: kinds.count(kind) for kind in KINDS}, "all": len(kinds)}


def test_a_printed_value_is_held_to_its_digits(outside):
    """Half of the last digit that is printed, unless it says what a wider tolerance stands on."""
    outside.printed("demo", "a table", 138, 138.4, absolute=0.5)
    outside.printed("demo", "a table", 138, 139.9, absolute=2, why="another formula")
    with pytest.raises(AssertionError, match=r"half of its last digit is 0\.5"):
        outside.printed("demo", "a table", 138, 138.4, rel=0.04)


def test_the_record_is_written_as_json(recorded):
    rows = recorded('def test_a(outside):\n    outside.printed("x-1", "a book", 1.0, 1.0, rel=1e-6)\n')
    assert [(row["check"], row["kind"], row["source"], row["expected"], row["got"], row["agrees"]) for row in rows] == [
        ("x-1", "printed", "a book", 1.0, 1.0, True)]
    assert rows[0]["tolerance"] == "1e-06 of the value"


@pytest.fixture
def recorded(tmp_path):
    """Runs a small test file with our conftest beside it, and reads the record it wrote."""
    def run(source):
        for name in ("conftest.py", "by_day.py", "dealt.py", "made_once.py"):
            (tmp_path / name).write_text((Path(__file__).parent / name).read_text(encoding="utf-8"), encoding="utf-8")
        (tmp_path / "test_small.py").write_text(source, encoding="utf-8")
        pytest_here = [sys.executable, "-m", "pytest", "-q", "-p", "no:cacheprovider", "--rootdir", str(tmp_path)]
        alone = {**os.environ, "PYTEST_DISABLE_PLUGIN_AUTOLOAD": "1"}  # plugins take longer to load than it runs
        done = subprocess.run([*pytest_here, "--outside", "out.json"], cwd=tmp_path, capture_output=True, text=True,
                              timeout=300, env=alone)
        assert done.returncode == 0, done.stdout
        return json.loads((tmp_path / "out.json").read_text(encoding="utf-8"))

    return run

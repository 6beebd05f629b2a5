"""docs/TRUST.md: what it names is there, and the figures it gives are those of the catalogue and of the engine."""
import re
from pathlib import Path

import pytest
from covemix.shared.catalogue.marks import MEMORY
from covemix.shared.catalogue.ratios import AIM, HARDENER_DENSITY, LOST_PER_PERCENT, RESIN_DENSITY, STOP
from covemix.shared.clock import peak_band
from covemix.shared.door import moves
from covemix.shared.forms.inputs import read
from covemix.shared.kit.sources import facts

HOUSE = Path(__file__).parents[1]
PAGE = (HOUSE / "docs" / "TRUST.md").read_text(encoding="utf-8")
WHOLE = " ".join(PAGE.split())


@pytest.mark.parametrize("named", sorted(set(re.findall(r"`([\w/.]+)`|(docs/[\w.]+)", PAGE))), ids=str)
def test_each_file_that_is_named_is_there_and_checks_something(named):
    path = HOUSE / (named[0] or named[1])
    assert path.exists()
    if path.name.startswith("test_"):
        assert re.search(r"^def test_", path.read_text(encoding="utf-8"), re.M)


def test_every_file_of_tests_with_an_outside_check_of_a_model_is_named():
    """A model that is held against something outside is one that people ask about."""
    with_checks = {path.name for path in (HOUSE / "tests").glob("test_*.py")
                   if re.search(r"^ +outside\.", path.read_text(encoding="utf-8"), re.M)}
    # clocks, words, colours and the spreader reckon nothing that could be off; the others are pieces of those named
    pieces = {"test_pot.py", "test_pouring.py", "test_laminate.py", "test_units.py", "test_spreader.py", "test_cups.py",
              "test_integrate.py", "test_numbers.py", "test_seam.py", "test_generated.py", "test_plan_grouping.py",
              "test_outside.py", "test_elapsed.py", "test_rescue.py", "test_languages.py"}
    missing = {name for name in with_checks - pieces if f"`tests/{name}`" not in PAGE}
    assert missing == set()


def test_its_figures_of_a_ratio_are_the_catalogues():
    ends = [f"{one / 1000:.2f}" for one in RESIN_DENSITY + HARDENER_DENSITY]
    assert "{} to {} and {} to {} g/mL".format(*ends) in WHOLE
    usual, least, most = LOST_PER_PERCENT
    assert f"{usual:g} K for each percent, {least:g} to {most:g}" in WHOLE
    assert f"limits of {AIM * 100:g} and {STOP * 100:g} %" in WHOLE
    bought = next(line for line in moves.answer("boat", {"system": "3-1"})["lines"] if line["name"] == "resin")
    assert "±8.1% by densities" in bought["rough"] and "±8.1 %" in WHOLE
    [refused] = moves.answer("measure", {"amount": "240", "system": "3-1", "way": "scale"})["errors"]
    assert "12.1% more or 7.6% less" in refused["message"] and "12 % more to 8 % less hardener" in WHOLE
    drawn = next(line for line in moves.answer("measure", {"amount": "240", "system": "3-1", "compare": "yes"})["lines"]
                 if line["name"] == "way_syringes")
    assert drawn["text"].startswith("±2.6%") and "(±2.6 % for 240 g at 3 : 1)" in WHOLE


def test_it_counts_the_rows_from_memory_as_they_are():
    """Old main: "632 rows 79 are from memory"; there were 653 by then."""
    rows = facts()
    remembered = [one for one in rows if one.mark == MEMORY]
    assert f"Of the catalogue's some {round(len(rows), -1)} rows {len(remembered)} are from memory" in WHOLE
    told = WHOLE.partition("are from memory, and an answer that depends on one")[2].partition("We found no open")[0]
    figures = [int(one) for one in re.findall(r"[(](\d+)[)]", told)]
    assert sum(figures) + told.count("one each for how a cure speeds itself up and for a pump") * 2 == len(remembered)


def test_its_cup_in_the_shade_is_the_engines():
    """240 g at 25 degC, label 30 min in 100 g: 80 % of what the quick rule gives, which is less than the model's 29."""
    system = {"by_weight": "100:30", "pot_time": "30", "pot_mass": "100", "pot_temperature": "25"}
    told = moves.answer("heat", {"air": "25", "batch": "240", "container": "cup", "system": system})["lines"]
    minutes = next(line for line in told if line["name"] == "usable")["value"] / 60
    rule = 30 * (100 / 240) ** (1 / 3)
    assert minutes == pytest.approx(0.8 * rule)
    assert f"{rule:.1f} min" in WHOLE and f"{int(minutes)} min are shown" in WHOLE


@pytest.mark.parametrize(("grams", "celsius"), [(grams, celsius) for celsius in (15, 25) for grams in (20, 60, 100)])
def test_its_small_pots_are_the_engines(grams, celsius):
    label = {"by_weight": "100:44", "pot_time": "30", "pot_mass": "100", "pot_temperature": "25"}
    values, errors = read(moves.module("heat").INPUTS, {"air": str(celsius), "batch": f"{grams}", "system": label})
    found = peak_band.band(values, "cup", grams / 1000)
    assert not errors
    assert f"| {grams} g at {celsius} °C | {found.hot - 273.15:.0f} to {found.cool - 273.15:.0f} °C |" in PAGE

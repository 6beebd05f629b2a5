"""The shelf: what is left, what it still mixes, its last day, what a batch takes off it, what the boat buys then."""
from datetime import date, timedelta

import numpy as np
import pytest
from covemix.shared.boat import boat
from covemix.shared.door import moves
from covemix.shared.equations import shelf
from covemix.shared.forms import links
from covemix.shared.forms.inputs import read
from covemix.shared.kit import kit
from dateutil.relativedelta import relativedelta
from hypothesis import given
from hypothesis import strategies as st
from scipy import optimize, special

OWN = {"name": "Slow", "by_weight": "3:1", "on_shelf": "800 : 300 g"}


def told(own=(), **more):
    """The lines of a system in the kit, by name."""
    tree = {"kind": "system", "system": {**OWN, **dict(own)}, **more}
    found = moves.answer("kit", tree)
    assert found["errors"] == []
    return {row["name"]: row for row in found["lines"]}


def bought(left, **more):
    tree = {"system": {"by_weight": "3:1", "on_shelf": left, **more}}
    values, errors = read(boat.INPUTS, tree)
    assert not errors
    return boat.reckon(values)


def test_what_is_left_mixes_as_much_as_the_scarcer_part_lets(outside):
    """By hand: 800 g of resin at 3 parts of 4 make 1066.7 g; 300 g of hardener would make 1200 g."""
    outside.worked("kit, what 800 : 300 g of 3:1 still mix, g", "by hand: 800 / 0.75", 800 / 0.75,
                   told()["mixes"]["value"] * 1000)
    assert told({"on_shelf": "900 : 200 g"})["mixes"]["value"] == pytest.approx(0.8)  # 200 / 0.25


def test_a_batch_takes_its_parts_off_the_shelf_and_gives_them_back():
    """By hand: 400 g at 3:1 are 300 and 100 g."""
    assert told(off_shelf="400 g")["on_shelf"]["text"] == "500.0 g : 200.0 g"
    assert told(off_shelf="-400 g")["on_shelf"]["text"] == "1100.0 g : 400.0 g"
    assert told(off_shelf="4 kg")["on_shelf"]["text"] == "0.0 g : 0.0 g"
    again = told({"on_shelf": told(off_shelf="400 g")["on_shelf"]["text"]})  # it is typed text
    assert again["mixes"]["value"] == pytest.approx(0.5 / 0.75)
    assert "on_shelf" not in told({"by_weight": "", "by_volume": "3:1", "densities": ""}, off_shelf="400 g")


def test_the_earlier_day_is_the_last_one_and_a_word_comes_before_it():
    """By hand: made 2026-01-31 + 12 months is 2027-01-31; opened 2026-08-31 + 6 months is 2027-02-28."""
    own = {"made": "2026-01-31", "shelf_life": "12", "opened": "2026-08-31", "open_life": "6"}
    assert "2027-01-31" in told(own)["last_day"]["text"]
    assert "2027-02-28" in told({**own, "shelf_life": "18"})["last_day"]["text"]
    for day, rank, word in (("2026-11-29", "say", "by"), ("2026-12-01", "say", "by"), ("2026-12-02", "warn", "first"),
                            ("2027-01-30", "warn", "first"), ("2027-01-31", "warn", "first"),
                            ("2027-02-01", "warn", "Ended")):
        line = told(own, day=day)["last_day"]
        assert line["rank"] == rank and word in line["text"], day
    assert "last_day" not in told({"made": "2026-01-31"})  # nobody said how long it keeps


def test_a_can_is_warm_through_as_the_series_of_a_cylinder_has_it(outside):
    """Against the zeros of the Bessel function: the middle of an endless cylinder, its whole series."""
    radius, diffusivity = (1 / (2 * np.pi * 1100)) ** (1 / 3), 0.2 / 1100 / 2000
    zeros = special.jn_zeros(0, 40)

    def cold(time):
        return (2 / (zeros * special.j1(zeros)) * np.exp(-zeros**2 * diffusivity * time / radius**2)).sum()

    outside.library("kit, an unstirred kilogram warm through, h", "scipy.special, root of the series",
                    optimize.brentq(lambda time: cold(time) - 0.1, 1, 1e6) / 3600,
                    shelf.warm_through(1.0, 1100.0, 0.2, 2000.0) / 3600, rel=1e-3)
    assert "50 °C" in told()["crystals"]["text"] and "4 h" in told()["crystals"]["text"]  # 800 g: 3.5 h, rounded up
    assert "4 h" not in told({"on_shelf": "8 : 3 kg"})["crystals"]["text"]


def test_a_date_is_read_with_its_year_first():
    for typed in ("2026-13", "2026-02-30", "3/2026", "soon", "2026-3", "1969-12-31"):
        found = moves.answer("kit", {"kind": "system", "system": {**OWN, "made": typed}})
        assert [error["field"] for error in found["errors"]] == ["system.made"], typed


@given(st.integers(0, 80_000), st.integers(1, 120))
def test_days_and_months_are_those_of_the_calendar(number, months):
    """Against datetime and dateutil."""
    day = date(1970, 1, 1) + timedelta(number)
    assert shelf.day_number(day.isoformat()) == number
    assert shelf.iso(number) == day.isoformat()
    assert shelf.iso(shelf.months_after(number, months)) == (day + relativedelta(months=months)).isoformat()


def test_the_boat_buys_what_the_shelf_does_not_mix():
    """By hand: what is mixed less 1066.7 g, three quarters of it resin."""
    none, some, much = bought(""), bought("800 : 300 g"), bought("90 : 40 kg")
    assert none.shelf is None and some.mixed.all == none.mixed.all
    need = (some.mixed.all - 0.8 / 0.75) * 0.75
    assert some.packs.held - some.packs.over == pytest.approx(need)
    assert none.packs.held - none.packs.over == pytest.approx(none.mixed.all * 0.75)
    assert much.packs.rows == [] and much.packs.held == 0


def test_the_boat_says_what_is_on_the_shelf_and_until_when():
    pairs = (("system.by_weight", "3:1"), ("system.on_shelf", "800 : 300 g"), ("prices", "30 : 120"))
    lines = {row["name"]: row for row in moves.answer("boat", links.tree(pairs))["lines"]}
    assert lines["shelf"]["text"] == "0.800 kg + 0.300 kg" and "1.06 kg" in lines["shelf"]["rough"]
    more = (("system.opened", "2026-05"), ("system.open_life", "6"))
    lines = {row["name"]: row for row in moves.answer("boat", links.tree(pairs + more))["lines"]}
    assert "2026-11-01" in lines["shelf"]["rough"]
    lines = {row["name"]: row for row in moves.answer("boat", links.tree(
        (*pairs[:1], ("system.on_shelf", "90 : 40 kg"), pairs[2])))["lines"]}
    assert "shelf is enough" in lines["packs"]["text"] and "cost" not in lines


def test_no_link_takes_along_what_stands_on_a_shelf():
    fields = {field.name: field for field in dict((pick.name, pick) for pick in kit.INPUTS)["system"].record.fields}
    assert all(fields[name].private and fields[name].learned
               for name in ("on_shelf", "made", "shelf_life", "opened", "open_life"))

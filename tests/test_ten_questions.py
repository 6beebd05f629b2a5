"""Ten questions of a bench, put by a program and answered by named figures alone: no text of an answer is read.

Each expected value is worked by hand here, or is an independent library's own answer; where another test holds the
same against something outside, the file is named.
"""
import itertools
import math

import house
import psychrolib
import pytest
from starlette.testclient import TestClient

LABEL = {"by_weight": [100, 30]}


@pytest.fixture(scope="module")
def ask():
    with TestClient(house.app()) as client:
        def answer(move, **body):
            told = client.post(f"/api/{move}", json=body)
            assert told.status_code == 200, told.text
            return told.json()["data"]

        yield answer


def test_how_much_hardener_belongs_to_240_g(ask):
    """100:30: three thirteenths of the mix are hardener (the definition of a ratio)."""
    hardener = ask("ratio", system=LABEL, amount_g=240)["parts"][1]
    assert hardener["part"] == "b" and hardener["mass"] == pytest.approx(0.240 * 30 / 130)


def test_what_must_the_scale_show_after_163_g_of_resin(ask):
    """212 g (tests/test_measure.py)."""
    told = ask("measure", system=LABEL, way="scale", amount_g=212.5, readings=[{"shown_g": 163}])
    assert told["parts"][1]["scale_reading"] == pytest.approx(0.212) and told["parts_done"] == 1


def test_what_mends_120_g_and_40_g_in_the_cup(ask):
    """13.333 g of resin (tests/test_rescue.py)."""
    told = ask("rescue", system=LABEL, way="scale", in_cup=[{"mass_g": 120}, {"mass_g": 40}])
    assert told["parts"][0]["add_mass"] == pytest.approx(0.0133333, rel=1e-5) and told["must_add"]


def test_does_it_last_as_long_as_its_label_says_and_longer_in_a_tray(ask):
    """Asked for what the label was measured at, 100 g at 25 °C, it is thick when the label says: after 30 min. A thin
    layer loses its heat and lasts longer (tests/test_heat.py); no batch gets hotter than all its heat could make it:
    what is set free, over the least that warms a resin (1.5 kJ/kg K)."""
    label = {**LABEL, "densities_g_per_mL": [1.12, 0.98], "pot_time_min": 30, "pot_mass_g": 100,
             "pot_temperature_degC": 25}
    told = ask("heat", system=label, batch_g=100, air_degC=25)
    assert told["thick_time"] == pytest.approx(1800, rel=0.01)
    assert told["usable_time_in_tray"] > told["usable_time"] and told["usable_time"] < told["thick_time"]
    assert 298.15 < told["highest_peak_temperature"] < 298.15 + told["heat_of_mix"] / 1500


def test_when_may_it_be_coated_at_the_warmth_of_its_label(ask):
    """At the label's own 20 °C its own hours: from 4 h on, until 24 h; 10 K warmer sooner, by Arrhenius with the
    activation energies of cures, 45 to 65 kJ/mol."""
    label = {**LABEL, "cure_recoat_h": 4, "cure_until_h": 24, "cure_temperature_degC": 20}
    window = ask("cure", system=label, air_degC=20)["windows"][0]
    assert window["window"] == "recoat"
    assert (window["from"], window["to"]) == pytest.approx((4 * 3600, 24 * 3600), rel=1e-6)
    warmer = ask("cure", system=label, air_degC=30)["windows"][0]
    quick, slow = [math.exp(energy / 8.314462618 * (1 / 303.15 - 1 / 293.15)) for energy in (65e3, 45e3)]
    assert quick * 4 * 3600 * 0.999 <= warmer["from"] <= slow * 4 * 3600 * 1.001
    assert quick * 24 * 3600 * 0.999 <= warmer["to"] <= slow * 24 * 3600 * 1.001


@pytest.mark.parametrize(("surface", "danger"), [(14, True), (17, False)])
def test_is_the_panel_dry_enough(ask, surface, danger):
    """By psychrolib: the dew point of 18 °C at 70 %, and 3 K above it as common practice wants."""
    psychrolib.SetUnitSystem(psychrolib.SI)
    dew = psychrolib.GetTDewPointFromRelHum(18, 0.7)
    told = ask("dew", air_degC=18, humidity_percent=70, surface_degC=surface)
    assert told["dew_point"] - 273.15 == pytest.approx(dew, abs=0.1)
    assert told["above_dew_point"] == pytest.approx(surface - dew, abs=0.1)
    assert told["dew_danger"] is danger is (surface - dew < told["wanted_above_dew_point"])


def test_which_radius_and_how_much_putty_has_a_right_angled_seam(ask):
    """A throat of 6 mm at 90 degrees: r (sqrt 2 - 1) = 6 mm; what lies under the arc of it is r² (1 - pi / 4)."""
    told = ask("joint", thickness_mm=6, angle_deg=90, length_m=2, gap_mm=0)
    (cove,) = told["coves"]
    radius = 0.006 / (2**0.5 - 1)
    assert cove["radius"] == pytest.approx(radius) and cove["throat"] == pytest.approx(0.006)
    section = radius**2 * (1 - math.pi / 4)
    assert told["area"] == pytest.approx(section, rel=1e-6)
    assert told["placed_volume"] == pytest.approx(2 * section, rel=1e-6) and told["putty_volume"] > 2 * section


def test_what_has_to_be_bought_for_two_seams(ask):
    told = ask("boat", joints=[{"name": "Keel", "thickness_mm": 6, "length_m": 3, "copies": 2}], system=LABEL)
    items = {row["item"]: row for row in told["shopping"]}
    assert items["part_a"]["mass"] / items["part_b"]["mass"] == pytest.approx(100 / 30)
    assert items["part_a"]["mass"] + items["part_b"]["mass"] == pytest.approx(told["mixed_mass"])
    tapes = [row for row in told["cuts"] if row["material"] == "tape"]
    assert {row["face"] for row in tapes} == {"inside"} and sum(row["length"] for row in tapes) >= 2 * 3
    assert told["glass_mass"] == pytest.approx(sum(row["length"] * row["width"] * row["areal_weight"]
                                                   for row in tapes), rel=1e-6), "length, width, weight by area"
    assert items["tape"]["length"] == pytest.approx(sum(row["length"] for row in tapes))
    assert told["packs_hold"] >= items["part_a"]["mass"]


def test_when_is_the_day_over_and_in_how_many_batches(ask):
    """3 m with 90 g of putty and 60 g of wet epoxy to the metre, and 50 mm more for each time it is cut; what stays in
    cup, bag and tray comes on top. Nobody does two things at once, and the day ends with the last of them."""
    told = ask("plan", pieces=[{"name": "Keel", "length_m": 3, "putty_g_per_m": 90, "wet_g_per_m": 60}],
               temperature_degC=20, start="8:00", people=1)
    assert told["possible"] and told["batch_count"] == len(told["batches"])
    laid = 3 + 0.05 * (told["batch_count"] - 1)
    assert sum(row["length"] for row in told["batches"]) == pytest.approx(laid)
    for batch, mix in zip(told["batches"], told["mixes"], strict=True):  # one mix for both
        putty = mix["measured_mass"] - mix["tray_mass"] + mix["filler_mass"]
        assert 0 < putty - 0.090 * batch["length"] < 0.05 and 0 < mix["tray_mass"] - 0.060 * batch["length"] < 0.05
    steps = sorted(told["steps"], key=lambda step: step["start"])
    assert steps[0]["start"] == 8 * 3600 and told["end"] == max(step["end"] for step in steps)
    assert all(one["end"] <= two["start"] + 1e-6 for one, two in itertools.pairwise(steps))


def test_how_much_filler_makes_the_putty_stand(ask):
    """7.5 of silica for 100 (tests/test_reckon.py)."""
    told = ask("thicken", system={**LABEL, "densities_g_per_mL": [1.12, 0.98]}, amount_g=130, filler="silica",
               stiffness="stands")
    assert told["fillers"][0]["mass"] == pytest.approx(0.00975) and told["stands"] is True

"""Ten questions of a bench, put by a program and answered by named figures alone: no text of an answer is read.

Each expected value is one that another test holds against something outside; the file is named.
"""
import house
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


def test_how_much_longer_does_it_last_in_a_tray_and_how_hot_can_it_get(ask):
    """A thin layer loses its heat: longer, and the pot's peak can pass 150 °C (tests/test_heat.py)."""
    told = ask("heat", air_degC=25, batch_g=240)
    assert told["usable_time_in_tray"] > told["usable_time"] > 600
    assert told["highest_peak_temperature"] > 423.15


def test_may_it_be_coated_eight_hours_after_mixing_at_18_degrees(ask):
    window = ask("cure", system="3-1", air_degC=18)["windows"][0]
    assert window["window"] == "recoat" and window["from"] < 8 * 3600 < window["to"]


def test_is_the_panel_dry_enough(ask):
    """12.4 °C is the dew point of 18 °C at 70 % (tests/test_dew.py): 14 °C is too near, 17 °C is not."""
    assert ask("dew", air_degC=18, humidity_percent=70, surface_degC=14)["dew_danger"] is True
    assert ask("dew", air_degC=18, humidity_percent=70, surface_degC=17)["dew_danger"] is False


def test_which_radius_and_how_much_putty_has_a_right_angled_seam(ask):
    """A throat of 6 mm at 90°: r (sqrt 2 - 1) = 6 mm; twice as long takes twice the putty in place."""
    told = ask("joint", thickness_mm=6, angle_deg=90, length_m=2)
    (cove,) = told["coves"]
    assert cove["radius"] == pytest.approx(0.006 / (2**0.5 - 1)) and cove["throat"] == pytest.approx(0.006)
    assert ask("joint", thickness_mm=6, angle_deg=90, length_m=4)["putty_mass"] > 1.5 * told["putty_mass"]


def test_what_has_to_be_bought_for_two_seams(ask):
    told = ask("boat", joints=[{"name": "Keel", "thickness_mm": 6, "length_m": 3, "copies": 2}], system=LABEL)
    items = {row["item"]: row for row in told["shopping"]}
    assert items["part_a"]["mass"] / items["part_b"]["mass"] == pytest.approx(100 / 30)
    assert items["tape"]["length"] > 6 and items["gloves"]["count"] >= 1
    assert told["packs_hold"] >= items["part_a"]["mass"]


def test_when_is_the_day_over_and_in_how_many_batches(ask):
    told = ask("plan", pieces=[{"name": "Keel", "length_m": 3, "putty_g_per_m": 90, "wet_g_per_m": 60}],
               temperature_degC=20, start="8:00")
    assert told["possible"] and told["batch_count"] == len(told["batches"])
    assert told["end"] == max(step["end"] for step in told["steps"]) > 8 * 3600


def test_how_much_filler_makes_the_putty_stand(ask):
    """7.5 of silica for 100 (tests/test_reckon.py)."""
    told = ask("thicken", system={**LABEL, "densities_g_per_mL": [1.12, 0.98]}, amount_g=130, filler="silica",
               stiffness="stands")
    assert told["fillers"][0]["mass"] == pytest.approx(0.00975) and told["stands"] is True

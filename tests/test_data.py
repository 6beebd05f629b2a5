"""Data beside words: each name one quantity in one unit, all of it documented, and the figures those of the lines."""
import itertools
import json
import math

import cases
import house
import pytest
from covemix.server import examples
from covemix.server.data import FUNCTIONS, SHAPES, data
from covemix.server.data_names import COUNT, DIFFERENCE, FLAG, KEY, MONEY, NAMES, TEXT
from covemix.shared.door import moves
from covemix.shared.forms import inputs, links
from covemix.shared.words.written import reader
from starlette.testclient import TestClient

UNITS = {"kg", "m3", "m", "m2", "rad", "s", "K", "kg/m3", "kg/m2", "Pa", "W/m2", "m/s", "m3/s", "1/s", "J/kg", "1",
         MONEY, COUNT, DIFFERENCE, FLAG, KEY, TEXT}
PLAIN = {TEXT: str, KEY: str, FLAG: bool, COUNT: int}


@pytest.fixture(scope="module")
def client():
    with TestClient(house.app()) as client:
        yield client


def asked(client, move, **body):
    answer = client.post(f"/api/{move}", json=body or examples.BODIES[move])
    assert answer.status_code == 200, answer.text
    return answer.json()


def line(answer, name):
    return next(one for one in answer["lines"] if one["name"] == name)


def test_every_name_is_documented_and_told_somewhere():
    told = set()
    for singles, tables in SHAPES.values():
        told.update(singles.split(), *(columns.split() for columns in tables.values()))
    assert told == set(NAMES)
    assert set(SHAPES) == set(FUNCTIONS) == set(moves.names())


@pytest.mark.parametrize("name", NAMES)
def test_a_name_has_one_unit_of_si_and_says_what_it_is(name):
    unit, meaning = NAMES[name]
    assert unit in UNITS and len(meaning) > 8 and not meaning.endswith(".")
    absolute = name.endswith("temperature") or name == "dew_point"
    assert (unit == "K") == absolute, "a temperature says so, and a difference never looks like one"
    assert (unit == DIFFERENCE) == ("above_dew_point" in name or name == "dew_point_error")
    for end, own in (("mass", "kg"), ("volume", "m3"), ("time", "s"), ("length", "m"), ("density", "kg/m3"),
                     ("weight", "kg/m2"), ("rate", "m/s")):
        if name.endswith(end) and name not in ("parts_by_weight", "parts_by_volume"):
            assert unit == own, name


def fits(name, value):
    unit = NAMES[name].unit
    if value is None:
        return True
    if unit in PLAIN:
        return type(value) is PLAIN[unit]
    return isinstance(value, (int, float)) and not isinstance(value, bool) and math.isfinite(value)


@pytest.mark.parametrize("move", moves.names())
def test_every_generated_answer_has_its_whole_shape_and_nothing_else(move):
    """Whatever is typed: the names of the shape, each of its kind, in JSON; an undocumented one raises."""
    singles, tables = SHAPES[move]
    module, looked = moves.module(move), 0
    for request in cases.requests(move, {"heat": 8, "plan": 8, "boat": 8, "sources": 2}.get(move, 40), seed=5):
        tree = request["typed"] if "typed" in request else links.tree(request["pairs"])
        values, errors = inputs.read(module.INPUTS, tree)
        if errors or inputs.checked(module.CHECKS, values):
            continue
        found = data(move, values, reader())
        looked += 1
        assert set(found) == {*singles.split(), *tables}
        assert all(fits(one, found[one]) for one in singles.split()), found
        for table, columns in tables.items():
            for row in found[table]:
                assert list(row) == columns.split()
                assert all(fits(one, row[one]) for one in row), row
        json.dumps(found, allow_nan=False)
    assert looked


def test_an_undocumented_name_is_refused(monkeypatch):
    values, _ = inputs.read(moves.module("ratio").INPUTS, {})
    monkeypatch.setitem(FUNCTIONS, "ratio", lambda found, values, who: {"weight": 1.0})
    with pytest.raises(KeyError, match="weight"):
        data("ratio", values, reader())
    monkeypatch.setitem(FUNCTIONS, "ratio", lambda found, values, who: {"parts": [{"grams": 1.0}]})
    with pytest.raises(KeyError, match="grams"):
        data("ratio", values, reader())


@pytest.mark.parametrize("move", moves.names())
def test_an_answer_is_what_its_schema_says(client, move):
    schema = client.get("/openapi.json").json()["components"]["schemas"]
    own = schema["".join(word.capitalize() for word in move.split("_")) + "Data"]
    told = asked(client, move)["data"]
    assert set(told) == set(own["properties"]) == set(own["required"])
    for name, one in own["properties"].items():
        unit = NAMES[name].unit if name in NAMES else KEY
        assert unit in PLAIN or (one["x-unit"] == unit.removesuffix(" difference") and unit in one["description"])
    link = client.get(f"/api/{move}")
    assert link.status_code == 422 or link.json()["data"] == client.post(f"/api/{move}", json={}).json()["data"]


def test_windows_have_both_their_ends(client):
    """The recoat line has the window's end alone; a hundredth of a day apart they would be told apart."""
    answer = asked(client, "cure")
    recoat = answer["data"]["windows"][0]
    assert recoat["window"] == "recoat" and 0 < recoat["from"] < recoat["to"]
    assert line(answer, "recoat")["value"] == recoat["to"]
    for one in answer["data"]["windows"][1:]:
        assert one["from"] == line(answer, one["window"])["value"] and one["to"] is None


def test_parts_have_masses_and_volumes_and_a_scale_its_readings(client):
    """100:30 with 1.12 and 0.98 g/mL, 130 g (ISO 80000-4; tests/test_ratio.py)."""
    answer = asked(client, "ratio", system={"by_weight": [100, 30], "densities": "1.120 : 0.980 g/mL"}, amount_g=130)
    first, second = answer["data"]["parts"]
    assert (first["mass"], second["mass"]) == pytest.approx((0.1, 0.03))
    assert (first["volume"], second["volume"]) == pytest.approx((0.1 / 1120, 0.03 / 980))
    assert answer["data"]["density"] == pytest.approx(1084.255, rel=1e-6)
    scale = asked(client, "measure", way="scale", system={"by_weight": "100:30"}, amount_g=130)
    readings = [one["scale_reading"] for one in scale["data"]["parts"]]
    assert readings == pytest.approx([0.1, 0.13])
    assert [line(scale, f"reading_{one}")["text"].split()[0] for one in "ab"] == ["100", "130"]


@pytest.mark.parametrize(("way", "column"), [("scale", "scale_reading"), ("pumps", "strokes"),
                                             ("syringes", "last_fill"), ("graduated", "level_volume"),
                                             ("stick", "level_height")])
def test_every_way_of_measuring_tells_its_column(client, way, column):
    system = {"by_volume": [3, 1], "densities": "1.12 : 0.98 g/mL"}
    told = asked(client, "measure", way=way, system=system, amount_g=200)["data"]
    assert told["way"] == way and all(row[column] for row in told["parts"])


def test_the_heat_tells_minutes_and_band_as_its_lines_do(client):
    answer = asked(client, "heat")
    told = answer["data"]
    usable = line(answer, "usable")["value"]
    assert 0 <= told["usable_time"] - usable < 300, "the line rounds down, to whole minutes or to five"
    assert told["lowest_peak_temperature"] < told["highest_peak_temperature"] > 273.15 + 100
    assert told["curve"][0] == {"time": 0.0, "temperature": 298.15}
    assert told["curve"] == sorted(told["curve"], key=lambda row: row["time"])


def test_a_boat_is_tables_that_add_up(client):
    told = asked(client, "boat", joints=[{"name": "Keel", "kind": "both", "thickness_mm": 6, "length_m": 3.05},
                                         {"name": "Chine", "thickness_mm": 6, "length_m": 2, "copies": 2}])["data"]
    assert sum(row["mass"] for row in told["parts"]) == pytest.approx(told["mixed_mass"])
    assert sum(row["length"] for row in told["joints"]) == pytest.approx(told["length"]) == pytest.approx(7.05)
    for row in told["shopping"]:
        if row["item"] in ("tape", "ply"):
            cut = [one["length"] for one in told["cuts"] if one["material"] == row["item"]
                   and one["width"] == row["width"]]
            assert sum(cut) == pytest.approx(row["length"])
        assert sum(row[one] is not None for one in ("mass", "length", "count")) >= 1
    assert {row["joint"] for row in told["cuts"]} == {"Keel", "Chine"}


def test_a_plan_is_batches_and_steps_on_one_clock(client):
    told = asked(client, "plan")["data"]
    assert told["batch_count"] == len(told["batches"]) and told["batches"][0]["start"] == 8 * 3600
    for batch in told["batches"]:
        own = [step for step in told["steps"] if step["batch"] == batch["batch"]]
        assert own[0]["start"] == batch["start"] and max(step["end"] for step in own) == batch["end"]
        mixes = [mix for mix in told["mixes"] if mix["batch"] == batch["batch"]]
        parts = [row["mass"] for row in told["parts"] if row["batch"] == batch["batch"]]
        assert not parts or sum(parts) <= sum(mix["mass"] for mix in mixes) + 1e-9
    overlaps = 0.05 * (len(told["batches"]) - 1)  # the 50 mm of the form, wherever the seam is cut
    assert sum(batch["length"] for batch in told["batches"]) == pytest.approx(3.0 + overlaps)


def test_a_boat_of_surfaces_tells_each_of_them_and_its_phases_add_up(client):
    told = asked(client, "boat", joints=[{"name": "Keel", "thickness_mm": 6, "length_m": 3}], surfaces=[
        {"name": "Hull", "work": "sheathe", "length_m": 3, "widths_m": [0.8]},
        {"name": "Deck", "work": "coat", "length_m": 2, "widths_m": [0.5]}])["data"]
    assert [row["surface"] for row in told["surfaces"]] == ["Hull", "Deck"]
    assert [row["work"] for row in told["surfaces"]] == ["sheathe", "coat"]
    for column in ("mixed_mass", "glass_mass", "added_mass"):
        whole = sum(row[column] for row in told["phases"])
        assert whole == pytest.approx(told["mixed_mass" if column == "mixed_mass" else column], rel=1e-6), column
    assert told["cloth_saves_mass"] > sum(row["glass_mass"] for row in told["surfaces"]) > 0
    assert all(row["radius"] > 0 for row in told["spreaders"])


def test_one_coat_on_a_weave_is_one_and_its_laps_lie_a_net_width_apart(client):
    """So many coats fill what one of them does not; laps of 50 mm on cloth of 0.5 m lie 0.45 m apart."""
    told = asked(client, "sheathing", **{**examples.BODIES["sheathing"], "cloth_width_mm": 500, "lap_mm": 50,
                                         "fill_coat_g_per_m2": 60})["data"]
    assert told["fill_coats"] > 1
    assert told["fill_coats"] * told["fill_coat"] * told["area"] == pytest.approx(told["fill_mass"])
    places = [row["join_at"] for row in told["joins"]]
    assert len(places) == told["cloths"][0]["strips"] - 1 > 0
    assert [after - before for before, after in itertools.pairwise(places)] == pytest.approx(
        [0.45] * (len(places) - 1))


def test_a_run_tells_the_ages_of_its_windows_and_steps(client):
    told = asked(client, "run")["data"]
    done = [row for row in told["steps"] if row["done"]]
    assert done and all(row["done_age"] is not None for row in done)
    assert all(row["done_age"] is None for row in told["steps"] if not row["done"])
    for row in told["windows"]:
        assert row["until_age"] - row["begun_age"] == pytest.approx(row["usable_time"])
        assert row["time_left"] == pytest.approx(max(0.0, row["until_age"] - told["run_age"]))
        assert row["outlook"] in ("plenty", "hurry", "late", "over")
        assert (row["ready_age"] > row["until_age"]) is (row["outlook"] in ("late", "over"))


def test_a_difference_of_temperatures_is_none_itself(client):
    """18 degC at 70 %: 12.4 degC (tests/test_dew.py, from a reference library); a surface of 14 is 1.6 K above."""
    told = asked(client, "dew")["data"]
    assert told["dew_point"] == pytest.approx(285.6, abs=0.1)
    assert told["above_dew_point"] == pytest.approx(287.15 - told["dew_point"])
    us = asked(client, "dew", units="us", **examples.BODIES["dew"])["data"]
    assert us == told, "whatever the words are in"


def test_a_figure_that_no_line_tells_is_not_told_as_data_either(client):
    """Weighed too coarsely for a mass: the line has no figure."""
    system = {"by_volume": [3, 1], "weighed": "1 : 1 g"}
    answer = asked(client, "ratio", system=system, amount="100 mL")
    assert line(answer, "part_a")["unit"] == "m3"
    assert [one["mass"] for one in answer["data"]["parts"]] == [None, None] and answer["data"]["mass"] is None

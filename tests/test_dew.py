"""Dew point against reference libraries, the margin, and the order of work against blush."""
import psychrolib
import pytest
from covemix.shared.catalogue import damp
from covemix.shared.door import moves
from covemix.shared.equations import dewpoint
from hypothesis import given, settings
from hypothesis import strategies as st

psychrolib.SetUnitSystem(psychrolib.SI)
ASHRAE = "ASHRAE Handbook Fundamentals (2017), ch. 1 (Hyland and Wexler 1983)"


def lines(tree):
    answer = moves.answer("dew", tree)
    assert answer["errors"] == []
    return {row["name"]: row for row in answer["lines"]}


@pytest.mark.parametrize(("air", "humidity", "dew", "magnus"), [
    (20, 50, 9.27239, 9.25517), (15, 80, 11.5816, 11.5755), (30, 70, 23.9279, 23.9272)])
def test_dew_points(outside, air, humidity, dew, magnus):
    """ASHRAE Handbook Fundamentals (2017), ch. 1, within 0.1 K; Magnus form of WMO-No. 8, Annex 4.B, to its digits."""
    found = dewpoint.dew_point(air + 273.15, humidity / 100) - 273.15
    outside.worked(f"dw {air} degC {humidity} %", ASHRAE, dew, found, absolute=0.1)
    outside.worked(f"dw {air} degC {humidity} % Magnus", "WMO-No. 8, Annex 4.B, the Magnus form", magnus, found,
            absolute=1e-4)


@pytest.mark.parametrize(("celsius", "pascal"), [(20, 2338.8), (10, 1228)])
def test_saturation_pressure(outside, celsius, pascal):
    """ASHRAE Handbook Fundamentals ch. 1 (Hyland and Wexler 1983): the Magnus form is within 0.3 % of it."""
    outside.printed(f"dw saturation {celsius} degC", ASHRAE, pascal, dewpoint.saturation_pressure(celsius + 273.15),
                    rel=0.003, why="another formula than the table's")


@settings(max_examples=300, deadline=None, derandomize=True)
@given(air=st.floats(0, 40), humidity=st.floats(0.30, 0.95))
def test_dew_points_agree_with_psychrolib(air, humidity):
    """psychrolib (ASHRAE equations), dew points above 0 degC; below it tells the frost point over ice."""
    expected = psychrolib.GetTDewPointFromRelHum(air, humidity)
    if expected > 0.01:
        assert dewpoint.dew_point(air + 273.15, humidity) - 273.15 == pytest.approx(expected, abs=0.045)


def test_dew_points_agree_with_metpy(outside):
    """metpy.calc.dewpoint_from_relative_humidity, within 0.1 K up to 35 degC (at 40 it parts from ASHRAE by 0.1 K)."""
    import metpy.calc as calc  # slow to load, and for this test only
    from metpy.units import units
    for air in range(5, 36, 5):
        for humidity in (0.4, 0.6, 0.8, 0.95):
            expected = calc.dewpoint_from_relative_humidity(units.Quantity(air, "degC"), humidity).to("degC").magnitude
            if expected > 0:
                outside.library(f"dw metpy {air} degC {humidity:.0%}",
                        "MetPy (library), dew point from relative humidity",
                        float(expected), dewpoint.dew_point(air + 273.15, humidity) - 273.15, absolute=0.1)


def test_saturated_air_is_at_its_dew_point():
    for air in (-10, 0, 12.5, 40):
        assert dewpoint.dew_point(air + 273.15, 1.0) == pytest.approx(air + 273.15, abs=1e-9)


@pytest.mark.parametrize(("air", "humidity", "surface", "margin", "enough"), [
    ("18", "85", "17.5", 2.058, False), ("20", "60", "18", 5.993, True)])
def test_three_degrees_above_the_dew_point(outside, air, humidity, surface, margin, enough):
    """ISO 8502-4 with ISO 12944-7: the surface at least 3 degC above the dew point (from secondary texts)."""
    found = lines({"air": air, "humidity": humidity, "surface": surface})
    outside.worked(f"dw margin {surface} degC",
            "ISO 8502-4 with ISO 12944-7, dew points of ASHRAE (from secondary texts)",
            margin,
            found["margin"]["value"], absolute=0.15)
    assert ("damp" not in found) == enough
    assert float(found["margin"]["text"].split()[0]) <= found["margin"]["value"]


def test_a_margin_is_rounded_down_and_the_dew_point_up():
    found = lines({"air": "18", "humidity": "85", "surface": "17.5"})
    assert found["margin"]["text"] == "2.0 °C"
    assert float(found["dew_point"]["text"].split()[0]) >= found["dew_point"]["value"] - 273.15


def test_the_night_is_warned_of_where_its_air_comes_near_to_the_dew_point():
    tree = {"air": "20", "humidity": "60"}
    assert "night_margin" not in lines(tree)
    mild = lines(dict(tree, night="16"))
    assert "night_damp" not in mild
    open_sky = lines(dict(tree, night="16", sky="open"))
    assert open_sky["night_margin"]["value"] == pytest.approx(mild["night_margin"]["value"] - 5)
    assert open_sky["night_damp"]["rank"] == "warn"
    assert lines(dict(tree, night="8"))["night_damp"]["label"] == "Dew at night"


def test_blush_is_washed_before_it_is_sanded():
    """Common practice: water first, then dry, then sand."""
    for tree in ({"air": "20", "humidity": "60"}, {"air": "18", "humidity": "90"}, {"air": "18"}):
        names = [row["name"] for row in moves.answer("dew", tree)["lines"]]
        assert names.index("blush_1") < names.index("blush_2") < names.index("blush_3")
        found = lines(tree)
        assert "wash" in found["blush_1"]["text"] and "water" in found["blush_1"]["text"]
        assert "sand" not in (found["blush_1"]["text"] + found["blush_2"]["text"]).lower()
    assert lines({"air": "18", "humidity": "90"})["blush_1"]["rank"] == "beside"


def test_damp_air_is_told_however_warm_the_surface():
    assert lines({"air": "20", "humidity": "90", "surface": "30"})["humid"]["rank"] == "warn"


def test_a_night_without_humidity_is_refused_at_its_field():
    answer = moves.answer("dew", {"air": "20", "night": "10"})
    assert [row["field"] for row in answer["errors"]] == ["humidity"]


# air 20 degC at 60 %: dew at 12.00 degC (psychrolib, ASHRAE 2017 ch. 1); 3 K of margin are wanted
@pytest.mark.parametrize("surface, said", [
    ("11.9", "The surface is wet"), ("12.1", "Too near the dew point"), ("14.9", "Too near the dew point"),
    ("15.1", None)])
def test_a_surface_is_told_wet_or_too_near_by_its_margin(surface, said):
    found = lines({"air": "20", "humidity": "60", "surface": surface})
    assert (found["damp"]["label"] if said else "damp" in found) == (said or False)
    assert (found["blush_1"]["rank"] == "beside") == bool(said), "the order against blush is in sight with the danger"


@pytest.mark.parametrize("night, label", [("11", "Dew at night"), ("12.5", "Nearly dew at night")])
def test_the_night_says_how_warm_a_seam_must_be_kept(night, label):
    """3 K above a dew point just under 12 degC, rounded up to half a degree."""
    found = lines({"air": "20", "humidity": "60", "night": night})
    assert found["night_damp"]["label"] == label
    assert "above 15.0 °C until" in found["night_damp"]["text"]
    assert found["dew_point"]["text"] == "12.0 °C"


def test_a_hygrometer_s_error_is_what_a_cheap_sensor_s_sheet_allows(outside):
    """5 points of humidity, the larger way round, at 20 degC and from 55 % on; rounded up to half a degree."""
    moved = [psychrolib.GetTDewPointFromRelHum(20, humidity) - psychrolib.GetTDewPointFromRelHum(20, humidity - 0.05)
             for humidity in (0.55, 0.7, 0.85, 1)]
    outside.library("dew point of a hygrometer 5 points off",
            "psychrolib, at 20 degC and 55 %; data sheets of cheap sensors", max(moved), damp.METER_OFF, absolute=0.1)
    assert max(moved) <= damp.METER_OFF


def test_a_hygrometer_s_error_is_told_in_the_unit_that_is_read():
    """1.5 K is 2.7 degF: in steps of half a degree, rounded up, 3."""
    typed = {"air": "20 °C", "humidity": "60"}
    assert lines(typed)["margin"]["rough"].endswith("off by 1.5 °C.")
    assert lines(dict(typed, units="us"))["margin"]["rough"].endswith("off by 3.0 °F.")

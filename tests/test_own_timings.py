"""Own timings kept with a system: read as people write them, and reckoned with by Clock and Plan alike."""
from itertools import pairwise

import pytest
from covemix.shared.door import moves
from covemix.shared.forms import inputs, links
from covemix.shared.forms.declared import with_units
from covemix.shared.plan import plan
from covemix.shared.plan.plan import INPUTS
from covemix.shared.things.own_timings import counted, read_timings, timings_text
from covemix.shared.words import lines
from covemix.shared.words.written import reader
from test_plan import HAND, by_name

SYSTEM = HAND["system"]
FREE = {key: value for key, value in HAND.items() if key not in ("exponent", "soft", "film", "smallest")}
ROW = {"said": "stiffening", "after": "22 min", "mass": "240 g", "in": "cup", "at": "20 °C"}


def heat(system, **more):
    found = moves.answer("heat", dict({"air": "22", "batch": "240", "system": system}, **more))
    assert not found["errors"], found["errors"]
    return found


@pytest.mark.parametrize("text", [
    "stiffening 22 min 240 g cup 20 °C", "22 min, 240 g, cup, 20 °C", "cup 0,24 kg at 68 °F stiffening after 1320 s",
    "  Stiffening after 22min with 240g in a Cup at 20C ;", "22 min , 240 g , cup , 20 °C"])
def test_a_timing_reads_however_it_is_written(text):
    [row] = read_timings(text)
    assert row["said"] == "stiffening" and row["in"] == "cup"
    assert [row["after"], row["mass"], row["at"]] == pytest.approx([1320, 0.24, 293.15])


@pytest.mark.parametrize("text", [
    "22 min", "22 min 240 g cup", "22 240 g cup 20 °C", "3 s 240 g cup 20 °C", "22 min 21 min 240 g cup 20 °C",
    "22 min 240 g pail 20 °C", "22 min 240 g cup 20 °C 5", "melted 22 min 240 g cup 20 °C"])
def test_what_is_no_timing_is_told_at_its_field(text):
    found = moves.answer("heat", {"air": "22", "system": dict(SYSTEM, timings=text)})
    assert [error["field"] for error in found["errors"]] == ["system.timings"]


def test_the_newest_six_count_and_come_back_through_text():
    rows = read_timings("; ".join(f"{20 + place} min 240 g cup 20 °C" for place in range(9)))
    assert [row["after"] / 60 for row in rows] == [23, 24, 25, 26, 27, 28]
    assert timings_text(read_timings(timings_text(rows))) == timings_text(rows)


def test_kept_and_typed_timings_are_the_same_to_the_clock():
    """Both ways round: kept with the system or typed beside it, every figure is the same."""
    kept = heat(dict(SYSTEM, timings="stiffening 22 min 240 g cup 20 °C"))["lines"]
    typed = heat(SYSTEM, timings=[ROW])["lines"]
    assert kept == typed


@pytest.mark.parametrize("count", [0, 1, 2])
def test_clock_and_plan_say_how_many_own_timings_they_rest_on(count):
    system = dict(SYSTEM, timings="; ".join(["22 min 240 g cup 20 °C", "25 min 120 g cup 21 °C"][:count]))
    usable = by_name(heat(system))["usable"]["rough"]
    found = by_name(moves.answer("plan", dict(FREE, system=system, temperature="22")))
    windows = found["window_pot"]["rough"] + found["window_soft"]["rough"]
    said = lines.said(counted(count), reader())
    assert (said in usable, said in windows) == (count > 0, count > 0)
    assert said == {0: "from 0 own timings", 1: "from 1 own timing", 2: "from 2 own timings"}[count]
    assert ("own timing" in usable) == ("own timing" in windows) == (count > 0)


@pytest.mark.parametrize("mass", [90, 240, 500])
def test_plan_and_clock_count_the_same_minutes_from_own_timings(mass):
    """The very same minutes on either screen; no pot life on the label."""
    system = {"by_weight": "100:30", "timings": "12 min 240 g cup 20 °C; good 9 min 100 g bag 25 °C"}
    pieces = [{"length": "1", "putty": str(mass), "wet": "30"}]
    found = moves.answer("plan", dict(FREE, system=system, temperature="18", pieces=pieces, smallest="0",
                                      **{"share": "80"}))
    assert not found["errors"], found["errors"]
    lead = next(one for one in found["leads"] if one["label"].startswith("Start the clock"))
    clock = by_name(heat(system, batch=str(mass), container="bag", air="18", filler=dict(lead["pairs"])["filler"]))
    assert by_name(found)["window_pot"]["value"] == pytest.approx(clock["usable"]["value"], rel=1e-4)


def test_a_larger_mass_never_lasts_longer_whatever_the_pots_told():
    """A small pot that went early and a large one that lasted: the plan's rule still falls with mass."""
    system = dict(SYSTEM, timings="10 min 50 g cup 25 °C; 40 min 400 g cup 25 °C; 20 min 900 g cup 25 °C")
    values, errors = inputs.read(INPUTS, dict(FREE, system=system, exponent="0.3"))
    assert not errors
    times = plan.planned(values).times
    lasts = [times.rule_pot(mass / 1000) for mass in range(20, 1500, 10)]
    assert all(after <= before * (1 + 1e-12) for before, after in pairwise(lasts))


def test_a_typed_timing_goes_on_to_the_plan_with_its_system():
    """Beside those that the system has of its own, so that a system of the kit is still itself there."""
    for system, count in ((dict(SYSTEM, timings="12 min 240 g cup 20 °C"), 2), (SYSTEM, 1), ("3-1", 1)):
        lead = next(one for one in heat(system, timings=[ROW])["leads"] if one["screen"] == "plan")
        assert read_timings(dict(lead["pairs"])["timings"])[0]["after"] == 1320
        values, errors = inputs.read(INPUTS, dict(FREE, **links.tree(lead["pairs"])))
        assert not errors and len(plan.planned(values).times.own) == count
        known = system if isinstance(system, dict) else plan.SYSTEM_INPUT.record.row("3-1") | {"id": "3-1"}
        handed = with_units(plan.SYSTEM_INPUT.record.fields, known, "metric")  # each number says its unit on the way
        assert values["system"]["_tree"] == (handed if isinstance(system, dict) else known)
    none = next(one for one in heat(SYSTEM)["leads"] if one["screen"] == "plan")
    assert dict(none["pairs"])["timings"] == ""  # those of another system do not stay there
    refused = moves.answer("plan", dict(FREE, timings="half an hour"))
    assert [error["field"] for error in refused["errors"]] == ["timings"]


@pytest.mark.parametrize(("typed", "count"), [
    ("", None), (" ; ", None), ("40 min 240 g cup 20 °C", "1 own timing "),
    ("40 min 240 g cup 20 °C; 50 min 100 g bag 20 °C", "2 own timings ")])
def test_timings_typed_on_a_plan_are_questioned_in_sight(typed, count):
    """They stay when another system is picked; those that are kept with the system go with it and need no question."""
    kept = dict(SYSTEM, timings="30 min 240 g cup 20 °C")
    asked = by_name(moves.answer("plan", dict(FREE, system=kept, temperature="22", timings=typed))).get("own_typed")
    assert (asked is not None) == (count is not None)
    assert asked is None or (asked["rank"] == "ask" and "from " + count in asked["text"])


@pytest.mark.parametrize(("system", "field"), [
    ({"by_weight": "100:30"}, "system.pot_time"),
    ({"by_weight": "100:30", "timings": "gone 12 min 240 g cup 20 °C"}, "system.pot_time"),
    ({"by_weight": "100:30", "film_time": "90", "timings": "12 min 240 g cup 20 °C"}, "system.pot_temperature"),
])
def test_a_plan_without_any_time_asks_for_one(system, field):
    found = moves.answer("plan", dict(FREE, system=system, smallest="0"))
    assert [error["field"] for error in found["errors"]] == [field]


def usable(system, **more):
    return by_name(heat(system, **more))["usable"]["value"]


@pytest.mark.parametrize("said", ["stiffening", "gone"])
@pytest.mark.parametrize(("beside", "asked"), [
    ("filler 40 %", {"filler": "40"}), ("resin 30 °C", {"resin_temperature": "30"}),
    ("resin 12 °C", {"resin_temperature": "12"})])
def test_a_timing_keeps_the_filler_and_the_warmth_it_was_seen_with(said, beside, asked):
    """What was seen of a filled pot bounds one without, which is hotter; seen again it is the same."""
    bare = dict(SYSTEM, timings=f"{said} 12 min 240 g cup 20 °C")
    seen = dict(SYSTEM, timings=f"{said} 12 min 240 g cup 20 °C {beside}")
    at = {"air": "20", "batch": "240"}
    assert usable(seen, **at, **asked) <= 12 * 60
    if beside != "resin 30 °C":  # it slowed that pot: one without it lasts no longer than was told of it
        assert usable(seen, **at) <= usable(bare, **at)
    if said == "stiffening":
        assert usable(seen, **at, **asked) == pytest.approx(usable(bare, **at), rel=1e-6)


def test_a_clock_that_is_started_hands_on_the_filler_and_the_warmth_of_its_resin():
    found = heat(SYSTEM, filler="35", resin_temperature="25")
    [lead] = [one for one in found["leads"] if one["label"] == "Start the clock"]
    assert {"timing.filler": "35.0 %", "timing.resin": "25.0 °C"}.items() <= dict(lead["pairs"]).items()
    row = {name[7:]: text for name, text in lead["pairs"] if name.startswith("timing.")}
    told = " ".join(["stiffening", "12 min", *row.values()])  # as the page joins it to what is kept
    assert usable(dict(SYSTEM, timings=told)) == usable(SYSTEM, timings=[dict(row, said="stiffening", after="12 min")])


def test_a_timing_says_what_was_in_it():
    """Two that contradict each other are shown side by side, each with its filler."""
    system = dict(SYSTEM, timings="good 30 min 500 g cup 25 °C; gone 9 min 100 g cup 20 °C filler 20 %")
    assert any("20% filler" in line["text"] for line in heat(system)["lines"])


# in the sun

SUNNY = {"sun": "full", "looks": "black"}
AT = {"air": "20", "batch": "240"}


@pytest.mark.parametrize(("text", "sun"), [
    ("gone 12 min 240 g cup 20 °C", ("", "unknown", "open")),
    ("12 min 240 g cup 20 °C in the sun", ("full", "unknown", "open")),
    ("12 min in full sun, 240 g, black cup, 20 °C", ("full", "black", "open")),
    ("12 min 240 g cup 20 °C some sun white glass", ("some", "white", "glass")),
    ("12 min 240 g cup 20 °C sun some", ("some", "unknown", "open")),
    ("12 min 240 g cup 20 °C in the shade", ("shade", "unknown", "open"))])
def test_a_timing_says_whether_it_stood_in_the_sun(text, sun):
    """Old main: "in the sun" was refused, and a pot timed there counted as one of the shade."""
    [row] = read_timings(text)
    assert (row["sun"], row["looks"], row["cover"]) == sun and row["after"] == 720
    again = timings_text([row])
    assert timings_text(read_timings(again)) == again and ("sun" in again) == (sun[0] not in ("", "shade"))


@pytest.mark.parametrize("said", ["stiffening", "gone", "good"])
def test_what_was_seen_in_the_sun_sets_no_time_of_the_shade(said):
    """A pot that the sun made stiff in 6 min told 6 min of the shade; how much sun it took up nobody knows."""
    seen = dict(SYSTEM, timings=f"{said} 6 min 240 g cup 20 °C in full sun")
    found = by_name(heat(seen, **AT))
    plain = by_name(heat(SYSTEM, **AT))
    assert found["usable"]["value"] == plain["usable"]["value"]
    assert "1 own timing was in other sun" in found["other_sun"]["text"] and found["other_sun"]["rank"] == "ask"
    assert "own timing" not in found["usable"]["rough"] and "other_sun" not in plain


@pytest.mark.parametrize(("said", "after"), [("stiffening", 25), ("stiffening", 4), ("gone", 4), ("good", 25)])
def test_the_same_pot_in_the_same_sun_is_told_as_it_was_seen(said, after):
    seen = dict(SYSTEM, timings=f"{said} {after} min 240 g cup 20 °C full sun black")
    found = by_name(heat(seen, **AT, **SUNNY))
    assert found["usable"]["value"] == pytest.approx(0.8 * after * 60)
    assert "in full sun" in found["usable"]["rough"] and "other_sun" not in found


def test_a_weaker_sun_bounds_a_stronger_one_and_never_lengthens_it():
    seen = dict(SYSTEM, timings="stiffening 4 min 240 g cup 20 °C some sun white")
    assert usable(seen, **AT, **SUNNY) == pytest.approx(0.8 * 240)
    late = dict(SYSTEM, timings="good 60 min 240 g cup 20 °C some sun white")
    assert usable(late, **AT, **SUNNY) == usable(SYSTEM, **AT, **SUNNY)
    lasted = dict(SYSTEM, timings="good 60 min 240 g cup 20 °C full sun black")
    assert usable(lasted, **AT) == pytest.approx(0.8 * 3600)  # what the sun did not end, the shade does not


@pytest.mark.parametrize("said", ["good", "gone"])
@pytest.mark.parametrize("after", range(1016, 1026))
def test_one_pot_seen_twice_in_one_second_rests_on_what_set_its_time(said, after):
    """At 1020 s the last bit of the fit once told which of the two was named, and at 1021 s the other."""
    system = {"by_weight": "100:30", "densities": "1.15 : 0.98",
              "pot_time": "30", "pot_mass": "100", "pot_temperature": "25"}
    kept = dict(system, timings=f"stiffening {after} s 240 g cup 22 °C; {said} {after} s 240 g cup 22 °C")
    assert "from 2 own timings" in by_name(heat(kept))["usable"]["rough"]


@pytest.mark.parametrize("beside", ["", " in the shade"])
def test_what_was_seen_in_the_shade_counts_in_the_sun_as_before(beside):
    seen = dict(SYSTEM, timings="stiffening 12 min 240 g cup 20 °C" + beside)
    assert usable(seen, **AT, **SUNNY) < usable(SYSTEM, **AT, **SUNNY)
    assert usable(seen, **AT) == pytest.approx(0.8 * 720, rel=0.02)


def test_a_clock_that_is_started_in_the_sun_hands_it_on():
    found = heat(SYSTEM, **AT, **SUNNY)
    [lead] = [one for one in found["leads"] if one["label"] == "Start the clock"]
    row = {name[7:]: text for name, text in lead["pairs"] if name.startswith("timing.")}
    assert (row["sun"], row["looks"]) == ("full", "black") and "cover" not in row
    told = " ".join(["gone", "4 min", *row.values()])  # as the page joins it to what is kept
    assert usable(dict(SYSTEM, timings=told), **AT, **SUNNY) == pytest.approx(0.8 * 240)
    assert usable(SYSTEM, timings=[dict(row, said="gone", after="4 min")], **AT, **SUNNY) == pytest.approx(0.8 * 240)
    shade = next(one for one in heat(SYSTEM, **AT, sun="shade")["leads"] if one["label"] == "Start the clock")
    assert not [name for name, _ in shade["pairs"] if name.startswith("timing.sun")]


@pytest.mark.parametrize("sun", ["", "full"])
def test_plan_and_clock_count_a_timing_of_the_sun_alike(sun):
    kept = dict(SYSTEM, timings="gone 25 min 60 g bag 18 °C full sun")
    pieces = [{"length": "1", "putty": "60", "wet": "0"}]
    found = by_name(moves.answer("plan", dict(FREE, system=kept, temperature="18", pieces=pieces, smallest="0",
                                              sun=sun, share="80")))
    assert ("other_sun" in found) == (sun == "")
    if sun:
        assert found["window_pot"]["value"] == pytest.approx(0.8 * 1500)
    else:
        assert "own timing" not in found["window_pot"]["rough"]


def test_a_plan_starts_its_clock_in_the_sun_of_the_day():
    pieces = [{"length": "0.2", "putty": "60", "wet": "0"}]
    found = moves.answer("plan", dict(FREE, temperature="12", pieces=pieces, smallest="0", sun="open", looks="white"))
    lead = next(one for one in found["leads"] if one["label"].startswith("Start the clock"))
    assert {"timing.sun": "open", "timing.looks": "white"}.items() <= dict(lead["pairs"]).items()


def test_two_timings_contradict_each_other_only_where_the_harder_one_lasted():
    hard = dict(SYSTEM, timings="good 30 min 240 g cup 20 °C full sun; gone 9 min 240 g cup 20 °C")
    easy = dict(SYSTEM, timings="good 30 min 240 g cup 20 °C; gone 9 min 240 g cup 20 °C full sun")
    assert "contradict_1" in by_name(heat(hard, **AT)) and "contradict_1" not in by_name(heat(easy, **AT))


def test_a_system_known_by_the_sun_alone_is_not_known():
    found = moves.answer("heat", {"air": "20", "system": {"by_weight": "100:30",
                                                          "timings": "9 min 240 g cup 20 °C in sun"}})
    assert [error["field"] for error in found["errors"]] == ["system.pot_time"]
    planned = moves.answer("plan", dict(FREE, system={"by_weight": "100:30",
                                                      "timings": "9 min 240 g cup 20 °C in sun"}, smallest="0"))
    assert [error["field"] for error in planned["errors"]] == ["system.pot_time"]

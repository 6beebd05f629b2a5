"""One truth: the same batch has the same usable minutes on Pour, Rescue, Clock, Plan and in a running pot."""
import json
from math import floor

import cases
import pytest
from covemix.shared.clock import heat
from covemix.shared.clock.usable import batch, contradictions, usable
from covemix.shared.door import moves
from covemix.shared.door.call import call
from covemix.shared.forms import inputs, links
from hypothesis import given, settings
from hypothesis import strategies as st

LABEL = {"by_weight": "100:30", "densities": "1.15:0.98", "pot_time": "30", "pot_mass": "100", "pot_temperature": "25"}
GONE = "gone 12 min 240 g cup 20 °C"
SYSTEMS = {"label only": "", "own timings": "stiffening 12 min 240 g cup 20 °C", "gone after": GONE}
WORK = {"start": "8:00", "mix_putty": "1", "mix_wet": "1", "left_putty": "0", "left_wet": "0", "spare": "0",
        "filler": "0", "smallest": "0", "one_mix": "never", "long": "whole", "place_rate": "20", "tool_rate": "20",
        "clean_rate": "20", "wet_rate": "20", "lay_rate": "20", "roll_rate": "20", "cover_rate": "20"}
SCREENS = ("pour", "rescue", "clock", "plan", "pot", "pot of the plan")


def answered(move, tree):
    found = moves.answer(move, tree)
    assert not found["errors"], found["errors"]
    return {row["name"]: row for row in found["lines"] if row["part"] in ("", "batch_1")}, found


def led(found, start):
    return next(lead["pairs"] for lead in found["leads"] if lead["label"].startswith(start))


def pot_of(pairs):
    tree = links.tree([[name[4:], text] for name, text in pairs if name.startswith("pot.")])
    tree.update(started="1700000000", now="1700000000")
    return answered("pot", tree)[0]["left"]["value"]


def minutes(system, mass, air):
    """Usable minutes of one batch as each screen tells them: {screen: minutes, None where it tells none}."""
    pour = answered("measure", {"system": system, "amount": f"{mass} g", "air": f"{air}"})[0].get("usable")
    shares = [mass / 1.3, 0.3 * mass / 1.3]
    rescue = answered("rescue", {"system": system, "rescue": "yes", "temperature": f"{air}",
                                 "in_cup": [{"mass": str(share)} for share in shares]})[0]["pot_life"]
    clock, told = answered("heat", {"system": system, "batch": f"{mass} g", "air": f"{air}", "cup_width": ""})
    plan, planned = answered("plan", dict(WORK, system=system, temperature=f"{air}", pieces=[
        {"length": "1", "putty": str(mass), "wet": "20"}]))
    return dict(zip(SCREENS, [
        one if one is None else one / 60 for one in (
            pour and pour["value"], rescue["value"], clock["usable"]["value"], plan["by_pot"]["value"] - 8 * 3600,
            pot_of(led(told, "Start the clock")), pot_of(led(planned, "Start the clock")))], strict=True))


def test_a_cup_that_was_chosen_is_as_wide_on_the_clock_as_in_its_middle():
    """By hand: 80 mm at its bottom, 120 mm at its top. The one that stands there by itself is nobody's choice."""
    typed = {"system": LABEL, "amount": "240 g", "air": "20"}
    for cup, width in (({"bottom": "80 mm", "top": "120 mm", "height": "90 mm"}, "100.0 mm"), ({}, "")):
        found = answered("thicken", typed | ({"cup": cup} if cup else {}))[1]
        pairs = next(lead["pairs"] for lead in found["leads"] if lead["screen"] == "clock")
        assert dict(pairs)["cup_width"] == width


@pytest.mark.parametrize("mass", [240, 1000])
@pytest.mark.parametrize("name", list(SYSTEMS))
def test_six_cases_have_one_answer_on_every_screen(name, mass):
    """Two masses, three systems: label only, own timings, gone after."""
    told = minutes(dict(LABEL, timings=SYSTEMS[name]), mass, 20)
    assert len({floor(one + 1e-6) for one in told.values()}) == 1, told
    if name == "gone after":
        assert told["clock"] < 12


TIMINGS = st.lists(st.builds(
    "{} {} min {} g {} {} °C".format, st.sampled_from(("stiffening", "good", "gone")), st.integers(6, 90),
    st.integers(50, 1500), st.sampled_from(("cup", "bag", "tray")), st.integers(12, 30)), max_size=3).map("; ".join)


@settings(max_examples=40, deadline=None)
@given(TIMINGS, st.integers(60, 1500), st.integers(12, 30), st.sampled_from(("open", "gel", "work")))
def test_any_batch_has_one_answer_on_pour_rescue_clock_and_pot(timings, mass, air, means):
    system = dict(LABEL, timings=timings, pot_meaning=means)
    pour = answered("measure", {"system": system, "amount": f"{mass} g", "air": f"{air}"})[0]["usable"]["value"]
    rescue = answered("rescue", {"system": system, "rescue": "yes", "temperature": f"{air}", "in_cup": [
        {"mass": str(mass / 1.3)}, {"mass": str(0.3 * mass / 1.3)}]})[0]["pot_life"]["value"]
    clock, found = answered("heat", {"system": system, "batch": f"{mass} g", "air": f"{air}"})
    assert [pour, rescue] == pytest.approx([clock["usable"]["value"]] * 2, rel=2e-4)
    left = pot_of(led(found, "Start the clock"))
    assert clock["usable"]["value"] - 60 < left <= max(6.0, clock["usable"]["value"]) + 1e-6


def read(timings, **typed):
    values, errors = inputs.read(heat.INPUTS, dict({"air": "20", "system": dict(LABEL, timings=timings)}, **typed))
    assert not errors
    return values


def of(timings, container="cup", mass=240, air=20):
    """`Usable` of a batch of the label's system. mass: [g]; air: [degC]"""
    return usable(batch(read(timings)["system"], container, mass / 1000, air + 273.15))


@settings(max_examples=200, deadline=None)
@given(TIMINGS, st.sampled_from(("cup", "bag", "tray", "bead", "film", "roll")), st.integers(50, 2000),
       st.integers(10, 35))
def test_no_pot_is_told_longer_than_an_easier_one_that_was_gone(timings, container, mass, air):
    """Of pots in the same container: not larger, not warmer, so not deeper."""
    found = of(timings, container, mass, air)
    for row in read(timings)["system"]["timed"]:
        easier = row["in"] == container and row["mass"] * 1000 <= mass and row["at"] - 273.15 <= air
        if row["said"] == "gone" and easier:
            assert found.time < found.end <= row["after"]


@pytest.mark.parametrize(("container", "mass", "air", "bound"), [
    ("bag", 240, 20, True), ("cup", 240, 20, True), ("cup", 500, 20, True), ("cup", 240, 28, True),
    ("bag", 900, 20, True),
    ("cup", 100, 20, False), ("cup", 240, 12, False), ("tray", 240, 20, False), ("film", 500, 25, False)])
def test_gone_after_bounds_a_pot_as_large_as_warm_and_as_deep(container, mass, air, bound):
    assert (of(GONE, container, mass, air).end <= 720) == bound


def test_still_good_bounds_the_end_of_this_and_easier_pots_and_lengthens_no_harder_one():
    good = "good 50 min 240 g cup 20 °C"
    same, plain = of(good), of("")
    assert plain.end < 3000 <= same.end and same.time == pytest.approx(0.8 * same.end)
    for container, mass, air in (("cup", 100, 20), ("cup", 240, 14), ("tray", 240, 20)):
        assert of(good, container, mass, air).end >= max(3000, of("", container, mass, air).end)
    for container, mass, air in (("cup", 400, 20), ("cup", 240, 27), ("bag", 1000, 20)):
        # it is counted, and changes nothing else
        assert of(good, container, mass, air)._replace(timed=0) == of("", container, mass, air)


def test_two_that_contradict_each_other_are_side_by_side_and_the_shorter_is_used():
    both = "good 15 min 240 g cup 20 °C; " + GONE
    assert of(both).end == 720
    rows = contradictions(read(both))
    assert [(one["said"], other["said"]) for one, other in rows] == [("good", "gone")]
    system = dict(LABEL, timings=both)
    asked = [
        answered("heat", {"system": system, "air": "20"})[0],
        answered("measure", {"system": system, "amount": "240 g"})[0],
        answered("rescue", {"system": system, "rescue": "yes", "in_cup": [{"mass": "200"}, {"mass": "60"}]})[0],
        answered("plan", dict(WORK, system=system, temperature="20", pieces=[
            {"length": "1", "putty": "240", "wet": "20"}]))[0]]
    for found in asked:
        text = found["contradict_1"]["text"]
        assert "usable after 15 min" in text and "too stiff to use after 12 min" in text
        assert found["contradict_1"]["rank"] == "ask"
    assert not contradictions(read("good 9 min 240 g cup 20 °C; " + GONE))
    assert not contradictions(read("good 15 min 240 g tray 20 °C; " + GONE))  # an easier pot may last
    assert contradictions(read("good 15 min 300 g cup 22 °C; " + GONE))  # a harder one may not


def test_a_good_that_is_gainsaid_by_one_that_stiffened_lifts_nothing():
    assert of("stiffening 20 min 240 g cup 20 °C; good 40 min 240 g cup 20 °C").end < 1500


@pytest.mark.parametrize(("means", "words"), [
    ("open", "the label's pot life taken as the end of use"), ("gel", "the label's gel time"),
    ("work", "the label's working time")])
def test_each_screen_says_what_its_minutes_mean(means, words):
    system = dict(LABEL, pot_meaning=means)
    rough = [
        answered("heat", {"system": system, "air": "20"})[0]["usable"]["rough"],
        answered("measure", {"system": system, "amount": "240 g"})[0]["usable"]["rough"],
        answered("rescue", {"system": system, "rescue": "yes", "in_cup": [{"mass": "200"}, {"mass": "60"}]})[0][
            "pot_life"]["rough"],
        answered("plan", dict(WORK, system=system, temperature="20", pieces=[
            {"length": "1", "putty": "240", "wet": "20"}]))[0]["window_pot"]["rough"]]
    for one in rough:
        assert one.startswith("80% of ") and words in one
    film = answered("heat", {"system": system, "air": "20", "container": "film"})[0]["usable"]["rough"]
    assert film.startswith({"gel": "50% of "}.get(means, "80% of "))
    _, found = answered("heat", {"system": system, "air": "20"})
    tree = links.tree([[name[4:], text] for name, text in led(found, "Start the clock") if name.startswith("pot.")])
    pot = answered("pot", dict(tree, started="1700000000", now="1700000000"))[0]
    assert pot["meaning"]["text"].startswith("80% of the time until it is thick")


def test_the_last_step_of_a_pour_tells_its_minutes():
    tree = {"system": LABEL, "amount": "240 g", "air": "20", "thicken": "yes"}
    told = answered("measure", tree)[0]["usable"]
    last = moves.answer("pouring", tree)["steps"][-1]
    assert last["figure"] == told["text"] and cases.aloud(told["text"]) in last["said"]


BESIDE = [["rescue", "yes"], ["in_cup.0.mass", "46"], ["in_cup.1.mass", "14"]]


@pytest.mark.parametrize("typed", [
    [], [["thicken", "yes"]], [["air", "23"]], [*BESIDE, ["temperature", "28"], ["air", "15"]],
    [*BESIDE, ["thicken", "yes"], ["temperature", "12"]],
    [["cup.bottom", "120"], ["cup.top", "140"], ["cup.height", "150"], ["air", "30"]]])
def test_start_its_clock_carries_all_that_the_time_depends_on(typed):
    """What the pour tells is what the clock tells once the lead has filled in its form, whatever stood there before."""
    system = [["system." + name, text] for name, text in dict(LABEL, timings=SYSTEMS["own timings"]).items()]
    screen = dict(json.loads(call(json.dumps({"screen": "pour", "pairs": [
        *system, ["amount", "60 g"], *typed]})))["answers"])
    told = {row["name"]: row for row in screen["measure"]["lines"]}["usable"]["value"]
    pairs = led(screen["thicken"], "Start the clock")
    before = [["air", "25"], ["filler", "60 %"], ["resin_temperature", "50"], ["cup_width", "300 mm"],
              ["container", "film"], ["batch", "5 kg"]]
    names = [name for name, _ in pairs]
    form = [pair for pair in before if pair[0] not in names] + [pair for pair in pairs if pair[0][:4] != "pot."]
    assert answered("heat", links.tree(form))[0]["usable"]["value"] == pytest.approx(told, rel=3e-3)


def test_the_plan_hands_its_filler_to_the_clock_and_its_warmth_to_the_pour():
    _, found = answered("plan", dict(WORK, system=LABEL, temperature="19.5", filler="40 %", pieces=[
        {"length": "1", "putty": "70", "wet": "20"}]))
    clock = led(found, "Start the clock")
    assert ["filler", "28.5 %"] in clock and ["batch", "70 g"] in clock  # 40/140, rounded down: filler cools
    asked = links.tree([pair for pair in clock if pair[0].partition(".")[0] not in ("pot", "timing")])
    assert answered("heat", asked)[0]["usable"]["value"] == pytest.approx(pot_of(clock), abs=61)
    assert ["air", "19.5 °C"] in led(found, "Pour batch 1: Putty")


def test_the_error_of_a_stick_is_told_as_what_is_usual_and_what_it_is_at_worst():
    """By hand, 75 and 25 mL in a straight cup of 60 mm: 1 mm is 2.827 mL; usual the root of (2.827/25)**2 +
    (2.827/25 + 2.827/75)**2, at worst 2.827/25 + 2.827/25 + 2.827/75 = 26.4 %."""
    found = answered("measure", {"system": "3-1", "amount": "100 mL", "way": "stick",
                                 "cup": {"bottom": "60", "top": "60", "height": "100"}})[0]["spread"]
    each = 2.827433 / 25
    assert found["value"] == pytest.approx((each**2 + (each + each / 3) ** 2) ** 0.5, rel=1e-5)
    assert found["rough"].startswith("usual, ") and "At worst ±26.4%" in found["rough"]


def test_strokes_that_were_weighed_weigh_what_they_weighed():
    """10 strokes of 118 and 31 g, weighed: 8 and 8 strokes put 94.4 + 24.8 = 119.2 g into the cup, whatever density is
    remembered; 1 : 1 by volume they would be another mass."""
    masses = []
    for densities in ("1.15:0.98", "1.30:0.80"):
        tree = {"system": {"by_volume": "3:1", "densities": densities}, "amount": "100 g", "way": "pumps",
                "pumps": {"ten_strokes": "118:31"}, "counted": [{"strokes": "8"}, {"strokes": "8"}]}
        masses.append(dict(map(tuple, led(moves.answer("thicken", tree), "Start the clock")))["batch"])
        assert answered("measure", tree)[1]["lines"] and "119 g" in str(
            [row["text"] for row in moves.answer("measure", tree)["lines"] if row["name"] == "pumped"])
    assert masses == ["119 g", "119 g"]


@pytest.mark.parametrize("long", [9, 24])
@pytest.mark.parametrize("kind", ["inside", "both"])
def test_the_putty_of_a_boat_is_what_its_plans_mix(kind, long):
    """With losses, spare and what no scale measures finer; the filler that is bought is the filler in it: 38 to 100."""
    boat = moves.answer("boat", {"joints": [{"kind": kind, "length": f"{long} m", "name": "Chine"}], "surfaces": [],
                                 "temperature": "20"})
    told = {row["name"]: row["value"] for row in boat["lines"]}
    plans = [moves.answer("plan", dict(links.tree(lead["pairs"]), temperature="20")) for lead in boat["leads"]
             if lead["screen"] == "plan"]
    assert plans and [one["errors"] for one in plans] == [[]] * len(plans)
    epoxy = sum(row["value"] for one in plans for row in one["lines"] if row["name"] == "amount_putty")
    assert told["putty"] * 1100 == pytest.approx(1.38 * epoxy, rel=2e-3)
    assert told["filler"] == pytest.approx(0.38 * told["putty"] * 1100 / 1.38, rel=1e-9)

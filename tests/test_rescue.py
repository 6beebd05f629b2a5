"""Rescue: what to add, how little is enough, how long is left; and that nothing ever comes out of a cup."""
import pytest
from covemix.shared.door import moves
from covemix.shared.equations.stirring import stirring_time
from covemix.shared.equations.top_up import top_up
from covemix.shared.pour.in_cup import least_additions
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.optimize import linprog

LABEL = {"by_weight": "100:30", "densities": "1.12:0.98"}
TIMED = dict(LABEL, pot_time="30 min", pot_mass="100 g", pot_temperature="25")

RATIO = "definition of a ratio, worked by hand: 120 g and 40 g at 100 : 30"

masses = st.floats(0, 500)
parts = st.lists(st.floats(1, 100), min_size=2, max_size=4)


def answered(system=None, **typed):
    return moves.answer("rescue", dict({"rescue": "yes", "system": system or LABEL}, **typed))


def lines(**typed):
    found = answered(**typed)
    assert found["errors"] == []
    return {one["name"]: one for one in found["lines"]}


def errors(**typed):
    return {one["field"]: one["message"] for one in answered(**typed)["errors"]}


def cup(*weights):
    return [{"mass": str(weight)} for weight in weights]


def test_what_the_cup_holds_after_adding_is_not_told_as_what_it_holds():
    """185 and 50 g are 235 g now; 5.5 g of hardener more make 240.5."""
    found = lines(in_cup=cup(185, 50))
    assert found["in_cup"]["value"] == pytest.approx(0.2405, rel=1e-3)
    assert found["in_cup"]["label"] == "In the cup then, with filler"


def test_an_over_poured_hardener_is_mended_with_resin(outside):
    """The definition of a ratio (constructed): 100:30, 120 g and 40 g in the cup -> 13.33333 g of resin, 173.3333 g."""
    found = lines(in_cup=cup(120, 40))
    outside.worked("rescue add resin", RATIO, 13.33333, found["add_a"]["value"] * 1000, rel=1e-6)
    outside.worked("rescue new total", RATIO, 173.3333, found["new_total"]["value"] * 1000, rel=1e-6)
    assert "add_b" not in found


@settings(max_examples=200, deadline=None)
@given(parts, st.data())
def test_adding_exactly_comes_back_into_ratio_and_only_adds(label, data):
    in_cup = [data.draw(masses) for _ in label]
    if max(in_cup) <= 0:
        in_cup[0] = 1.0
    added = top_up(in_cup, label)
    after = [have + more for have, more in zip(in_cup, added, strict=True)]
    assert min(added) >= 0
    assert [have / part for have, part in zip(after, label, strict=True)] == pytest.approx(
        [after[0] / label[0]] * len(label), rel=1e-9)


@settings(max_examples=100, deadline=None)
@given(parts, st.floats(0.005, 0.2), st.data())
def test_the_least_is_what_a_linear_programme_finds(label, error, data):
    """scipy.optimize.linprog (HiGHS): the least sum of additions with every part within the error of its ratio."""
    in_cup = [data.draw(st.floats(1, 500)) for _ in label]
    added = least_additions(in_cup, label, error)
    rows, bounds = [], []
    for j in range(1, len(label)):
        share = label[j] / label[0]
        for sign, limit in ((1, 1 + error), (-1, 1 - error)):
            row = [0.0] * len(label)
            row[j], row[0] = sign, -sign * share * limit
            rows.append(row)
            bounds.append(-sign * in_cup[j] + sign * share * limit * in_cup[0])
    best = linprog([1.0] * len(label), A_ub=rows, b_ub=bounds, bounds=[(0, None)] * len(label))
    assert best.success
    assert sum(added) == pytest.approx(best.fun, rel=1e-6, abs=1e-6)


def test_the_least_of_one_cup_is_the_programmes(outside):
    """scipy.optimize.linprog (HiGHS): 100 g and 50 g at 100:30 within 2 %: the least sum that must be added."""
    best = linprog([1.0, 1.0], A_ub=[[-0.306, 1.0], [0.294, -1.0]], b_ub=[0.306 * 100 - 50, 50 - 0.294 * 100])
    outside.solved("rescue least", "scipy.optimize.linprog (library), HiGHS", best.fun,
            sum(least_additions((100.0, 50.0), (100.0, 30.0), 0.02)), rel=1e-9)


def test_the_least_is_never_more_than_exactly_and_ends_on_the_edge_of_the_tolerance():
    found = lines(in_cup=cup(120, 40))
    least = found["least_a"]["value"]
    assert least < found["add_a"]["value"]
    assert 0.040 / (0.120 + least) / 0.3 == pytest.approx(1.02, rel=1e-9)
    assert found["least_a"]["text"] == "11 g"  # 10.72 g on a scale that shows 1 g, rounded up


def test_a_pour_within_tolerance_may_stay_as_it_is():
    found = lines(in_cup=cup(100, 30.3))
    assert "Can stay" in found["least"]["label"]
    assert found["least"]["rank"] == "say"
    assert found["add_a"]["rank"] == "more"
    assert "Nothing to add" in lines(in_cup=cup(100, 30))["add"]["label"]


def test_a_part_left_out_altogether_is_added_in_full():
    found = lines(in_cup=cup(120, 0))
    assert found["add_b"]["value"] == pytest.approx(0.036)
    assert found["off"]["label"] == "A part is missing"


def test_strokes_counted_are_as_good_as_a_weight():
    """By the definition of density: 12 and 5 strokes of 10 mL are 134.4 g and 49 g of 1.12 and 0.98 g/mL."""
    found = lines(way="pumps", pumps={"strokes": "10:10"}, in_cup=[{"strokes": "12"}, {"strokes": "5"}])
    assert found["add_a"]["value"] == pytest.approx(0.049 / 0.3 - 0.1344)


def test_strokes_alone_do_for_a_label_by_volume_without_densities():
    found = lines(system={"by_volume": "3:1"}, way="pumps", amount="100 mL", pumps={"strokes": "10:10"},
                  in_cup=[{"strokes": "8"}, {"strokes": "3"}])
    assert found["add_a"]["value"] == pytest.approx(10e-6)
    assert found["add_a"]["unit"] == "m3"


def test_readings_of_the_scale_stand_in_where_nothing_is_typed():
    found = lines(readings=[{"shown": "120"}, {"shown": "160"}])
    assert found["add_a"]["value"] * 1000 == pytest.approx(13.33333, rel=1e-6)


def test_readings_do_not_stand_in_where_the_label_gives_no_weights():
    said = errors(system={"by_volume": "3:1"}, amount="100 mL", readings=[{"shown": "120"}, {"shown": "160"}])
    assert list(said) == ["in_cup"]


def test_after_filler_the_dose_stays():
    found = lines(in_cup=cup(120, 40), filler_in="48")
    before = 48 / 160
    after = (48 + found["add_filler"]["value"] * 1000) / (found["new_total"]["value"] * 1000)
    assert after == pytest.approx(before, rel=1e-9)
    assert found["add_a"]["value"] == lines(in_cup=cup(120, 40))["add_a"]["value"]


def test_a_cup_that_cannot_take_it_is_said_with_the_way_out():
    small = {"bottom": "50", "top": "50", "height": "80"}
    found = lines(in_cup=cup(120, 40), cup=small)
    assert found["cup_too_small"]["rank"] == "warn"
    assert "larger cup" in found["cup_too_small"]["rough"]
    assert "fits" in lines(in_cup=cup(120, 40), cup=dict(small, height="200"))


def test_minutes_left_are_the_labels_by_the_quick_rule_and_rounded_down():
    """The trade's quick rule, from memory: 173.33 g against 100 g shorten 30 min to 30 (1.7333)**(-1/3) = 24.97 min;
    a fifth of it is kept back."""
    found = lines(system=TIMED, in_cup=cup(120, 40), first_contact="600", now="610")
    assert found["left"]["value"] == pytest.approx((0.8 * 30 * 1.733333 ** (-1 / 3) - 10) * 60, rel=1e-6)
    assert found["left"]["text"] == "9 min"


@pytest.mark.parametrize("degrees", ["12", "25", "34"])
@pytest.mark.parametrize("mass", ["60", "100", "240", "770"])
@pytest.mark.parametrize("timings", ["", "stiffening 12 min 240 g cup 20 °C", "gone 12 min 240 g cup 20 °C"])
def test_rescue_and_clock_tell_the_same_minutes_of_the_same_cup(degrees, mass, timings):
    """With filler, with own timings, at any warmth: what the clock tells of this cup is told here."""
    in_cup = cup(mass, 0.3 * float(mass))
    system = dict(TIMED, timings=timings)
    found = lines(system=system, in_cup=in_cup, temperature=degrees, filler_in=str(0.2 * float(mass)))["pot_life"]
    heat = moves.answer("heat", {"system": system, "batch": str(1.5 * float(mass)), "air": degrees,
                                 "filler": str(20 / 1.5)})
    heat = {row["name"]: row["value"] for row in heat["lines"]}
    assert found["value"] == pytest.approx(heat["usable"], rel=1e-4)


@pytest.mark.parametrize(("lacks", "asked"), [
    (("pot_mass",), "pot_life_whole"), (("pot_temperature",), "pot_life_whole"),
    (("pot_mass", "pot_temperature"), "pot_life_whole"), (("pot_time", "pot_mass", "pot_temperature"), "no_pot_life")])
def test_what_the_label_lacks_is_what_is_asked_for_before_any_minutes(lacks, asked):
    """Half a pot life asks for its other half; none at all asks for the pot life."""
    label = {name: text for name, text in TIMED.items() if name not in lacks}
    found = lines(system=label, in_cup=cup(120, 40), first_contact="0", now="5")
    assert {"pot_life_whole", "no_pot_life"} & set(found) == {asked}
    assert "minutes_left" not in found


def test_past_saving_says_what_then_and_adds_nothing():
    found = lines(system=TIMED, in_cup=cup(120, 40), first_contact="600", now="619")
    said = found["past_saving"]["text"]
    assert found["past_saving"]["rank"] == "warn"
    assert "Spread it thin at once, outdoors" in said
    assert "never under a lid" in said
    assert not [name for name in found if name.startswith(("add", "least"))]


def test_stirring_is_longer_for_more_and_in_the_cold():
    """Common practice: 2 min up to 200 g, 3 min above that or in the cold."""
    assert [stirring_time(m) for m in (0.1, 0.2, 0.25)] == [120, 120, 180]
    assert stirring_time(0.1, 280.15) == 180


@settings(max_examples=60, deadline=None)
@given(st.floats(0, 900), st.floats(1, 900), st.booleans(), st.sampled_from(["", "3", "20", "500"]))
def test_no_answer_ever_takes_something_out(resin, hardener, filled, minutes):
    found = answered(system=TIMED, in_cup=cup(round(resin, 1), round(hardener, 1)), filler_in="20" if filled else "",
                     first_contact="0" if minutes else "", now=minutes, cup="small")
    assert found["errors"] == []
    text = " ".join([one["label"] + " " + one["text"] + " " + one["rough"] for one in found["lines"]]).lower()
    for word in ("take out", "remove", "pour off", "scoop out", "pour out", "discard", "less resin", "less hardener"):
        assert word not in text
    for one in found["lines"]:
        if one["name"].startswith(("add", "least")) and one["value"] is not None:
            assert one["value"] >= 0


def test_what_is_missing_is_asked_at_its_field():
    assert "in_cup" in errors()
    assert "in_cup.1.mass" in errors(in_cup=cup(120))
    assert "in_cup.2.mass" in errors(in_cup=cup(120, 40, 5))
    assert "in_cup.0.strokes" in errors(in_cup=[{"strokes": "12"}, {"mass": "40"}])
    assert "in_cup.1.strokes" in errors(in_cup=[{"mass": "12"}, {"mass": "40", "strokes": "3"}])
    assert "in_cup" in errors(in_cup=cup(0, 0))
    assert "in_cup.0.mass" in errors(in_cup=cup(-3, 40))
    assert "now" in errors(in_cup=cup(120, 40), first_contact="610", now="600")
    assert "in_cup.0.mass" in errors(system={"by_volume": "3:1"}, amount="100 mL", way="pumps", in_cup=cup(120, 40))


def test_nothing_is_answered_until_it_is_asked():
    assert moves.answer("rescue", {})["lines"] == []


def test_the_part_that_is_off_is_the_one_that_is_named():
    """By hand, 100:30:5: 200 g take 60 and 10; 70 is 16.7 % too much, 5 is half of it: Part 3 is furthest off."""
    found = lines(system={"by_weight": "100:30:5"}, in_cup=cup(200, 70, 5))
    assert (found["off"]["text"], found["off"]["rough"]) == ("-50.0%", "too little Part 3, wanted ±2.0%")
    found = lines(system={"by_weight": "100:30:5"}, in_cup=cup(200, 70, 10))
    assert (found["off"]["text"], found["off"]["rough"]) == ("+16.7%", "too much Hardener, wanted ±2.0%")
    assert lines(in_cup=cup(200, 60))["off"]["rough"].startswith("in ratio")


def test_an_addition_that_the_scale_cannot_show_is_never_told_as_nothing():
    """By hand: 100 g take 30; 29.7 are 0.3 g short, on a scale of 1 g."""
    assert lines(in_cup=cup(100, 29.7))["add_b"]["text"] == "0.300 g, less than the scale can show"

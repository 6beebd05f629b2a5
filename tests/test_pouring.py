"""Pouring: steps in order, words for the ear, and the rest that follows what was really taken."""
import pytest
from covemix.shared.door import moves
from covemix.shared.pour.measured_out import follow, levels_of, whole_steps
from covemix.shared.words import speech
from hypothesis import given
from hypothesis import strategies as st
from num2words import num2words
from scipy.integrate import quad

WAYS = ("scale", "pumps", "syringes", "graduated", "stick")
FIRST = {"scale": "readings.0.shown", "pumps": "counted.0.strokes", "syringes": "drawn.0.volume",
         "graduated": "levels.0.volume", "stick": "heights.0.height"}


# by weight and by volume, so that each way measures it
LABEL = {"by_weight": "345:98", "by_volume": "3:1", "densities": "1.15:0.98", "pot_time": "30 min", "pot_mass": "100 g",
         "pot_temperature": "25 °C"}


def steps_of(**typed):
    answer = moves.answer("pouring", typed)
    assert answer["errors"] == []
    return answer["steps"]


@given(st.integers(0, 999_999))
def test_whole_numbers_are_said_as_a_reference_library_says_them(number):
    """num2words, the reference library, English. It sets a comma after the thousands, which is not heard."""
    assert speech.whole_words(number) == num2words(number).replace(",", "")


@given(st.integers(0, 9999), st.integers(1, 999))
def test_decimals_are_said_digit_by_digit(whole, decimals):
    """num2words says the decimals of a number one by one as well."""
    text = f"{whole}.{decimals:03d}"
    while text.endswith("0"):
        text = text[:-1]
    assert speech.number_words(text) == num2words(text).replace(",", "")


@pytest.mark.parametrize("number", [0, 13, 100, 187, 999_021])
def test_numbers_are_said_as_english_says_them(outside, number):
    """num2words, the reference library, English, without its comma."""
    outside.library(f"pouring {number} in words", "num2words (library), English", num2words(number).replace(",", ""),
            speech.whole_words(number))


@pytest.mark.parametrize("way", WAYS)
def test_liquids_then_stirring_then_filler(way):
    """Common practice: both liquids are one before any filler goes in, and most of it first."""
    names = [one["name"] for one in steps_of(system=LABEL, way=way, thicken="yes")]
    stir = names.index("stir")
    assert names[stir + 1:stir + 3] == ["first_filler", "rest"]
    assert names[-1] == "done"
    assert next(one["field"] for one in steps_of(system=LABEL, way=way) if one["field"]) == FIRST[way]


@given(st.floats(10, 500), st.floats(10, 500), st.floats(0.2, 3))
def test_what_follows_stands_in_the_ratio_of_what_was_taken(first, second, slip):
    """Plain proportion: b' / a' = b / a."""
    taken = first * slip
    found = follow((first, second), (taken,))
    assert found[0] == pytest.approx(taken)
    assert found[1] / found[0] == pytest.approx(second / first)


def test_heights_are_volumes_of_a_turned_wall(outside):
    """scipy.integrate.quad over the disc at each height of a tapered cup."""
    cup = {"bottom": 0.06, "top": 0.08, "height": 0.1}
    found = levels_of((0.03, 0.05), cup)
    disc = lambda h: 3.141592653589793 * (0.03 + 0.1 * h) ** 2  # noqa: E731
    turned = "scipy.integrate.quad (library), the disc at each height of a tapered cup"
    outside.solved("pouring first level", turned, quad(disc, 0, 0.03)[0] * 1e6, found[0] * 1e6)
    outside.solved("pouring second level", turned, quad(disc, 0.03, 0.05)[0] * 1e6, found[1] * 1e6)


def test_strokes_of_the_second_pump_follow_one_too_many_of_the_first():
    """By hand: 3 : 1 with equal pumps; 20 strokes ask for 6.67, so 7, with one more of the first."""
    assert whole_steps((180e-6, 60e-6), (200e-6,), (10e-6, 10e-6)).counts == (20, 7)
    typed = {"way": "pumps", "counted": {"0": {"strokes": "20"}}}
    assert [one["figure"] for one in steps_of(**typed)][:3] == ["20 strokes", "1 stroke", "7 strokes"]


@pytest.mark.parametrize(("way", "typed"), [
    ("graduated", {"levels": {"0": {"volume": "180"}, "1": {"volume": "280"}}}),
    ("stick", {"heights": {"0": {"height": "49.3"}, "1": {"height": "75"}}}),
])
def test_a_pour_that_is_off_offers_the_rescue_with_its_readings(way, typed):
    """Half as much hardener again is off at any tolerance; resin is what is short then."""
    off = next(one for one in steps_of(system=LABEL, way=way, **typed) if one["name"] == "off")
    rescue = moves.answer("rescue", dict(typed, system=LABEL, way=way, **dict(off["lead"])))
    assert rescue["errors"] == []
    assert "add_a" in [line["name"] for line in rescue["lines"]]


@pytest.mark.parametrize(("way", "typed", "field"), [
    ("graduated", {"levels": {"0": {"volume": "180"}, "1": {"volume": "170"}}}, "levels.1.volume"),
    ("stick", {"heights": {"0": {"height": "900"}}}, "heights.0.height"),
    ("syringes", {"drawn": {"1": {"volume": "60"}}}, "drawn.0.volume"),
    ("pumps", {"counted": {"0": {"strokes": "1.5"}}}, "counted.0.strokes"),
])
def test_readings_that_cannot_be_are_refused_at_their_field(way, typed, field):
    assert field in [error["field"] for error in moves.answer("pouring", dict(typed, way=way))["errors"]]


def test_a_large_or_cold_batch_is_stirred_longer():
    """Common practice: 2 min up to 200 g, 3 min above it or in the cold."""
    times = [next(one["seconds"] for one in steps_of(**typed) if one["name"] == "stir")
             for typed in ({"amount": "150"}, {"amount": "400"}, {"amount": "150", "temperature": "8"})]
    assert times == [120, 180, 180]


def test_too_much_of_the_second_of_three_parts_is_told_before_the_third():
    """100:30:10, 143 g and then 210 g in all: 67 g where 42.9 belong, 56.2 % too much."""
    typed = {"amount": "200 g", "system": {"by_weight": "100:30:10"}, "readings": [{"shown": "143"}, {"shown": "210"}]}
    found = steps_of(**typed)
    names = [one["name"] for one in found]
    assert names.index("reading_b") + 1 == names.index("off") == names.index("reading_c") - 1
    off = found[names.index("off")]
    assert off["figure"] == "+56.2%" and "too much Hardener" in off["under"]
    lines = {line["name"]: line for line in moves.answer("measure", typed)["lines"]}
    assert lines["poured"]["rank"] == "warn" and "rounding" not in lines
    well = {**typed, "readings": [{"shown": "143"}, {"shown": "186"}]}
    assert "off" not in [one["name"] for one in steps_of(**well)]


@pytest.mark.parametrize("tool, batch", [
    ({}, "414 g"),
    ({"way": "graduated", "graduated": {"holds": "400 mL", "step": "10 mL"}}, "475 g"),
    ({"way": "pumps", "pumps": {"strokes": "10:10"}}, "476 g"),
])
def test_filler_and_clock_go_by_what_is_told_and_not_by_what_was_wanted(tool, batch):
    """By hand: 125 / (100 / 1.15 + 25 / 0.98) = 1.1115 g/mL; 300 g are wanted, marks and strokes tell 240 + 70 mL,
    which are 344.6 g; 38 g of wood flour to 100 g. Strokes are weighed part by part: 475.5 g with filler."""
    typed = {"amount": "300 g", "system": {"by_weight": "100:25", "densities": "1.15:0.98"}, "thicken": "yes", **tool}
    lead = next(one for one in moves.answer("thicken", typed)["leads"] if one["screen"] == "clock")
    assert dict(map(tuple, lead["pairs"]))["batch"] == batch


def test_of_several_equal_pours_one_is_stirred_and_thickened_at_a_time():
    """3:1 by volume in a cup of 100 mL: 60 + 20 mL, four times. Typing what was told changes nothing that follows."""
    # a label that was typed: of a built-in one the first step says that it is an example
    typed = {"amount": "300 mL", "system": {"by_volume": "3:1", "densities": "1.15:0.98"}, "way": "graduated",
             "thicken": "yes", "graduated": {"holds": "100 mL", "step": "10 mL"}}
    told = {one["name"]: one for one in steps_of(**typed)}
    assert told["level_a"]["under"].startswith("One of 4 equal batches")
    after = {one["name"]: one for one in steps_of(**typed, levels=[{"volume": "60 mL"}, {"volume": "80 mL"}])}
    for name in ("first_filler", "rest", "stir"):
        assert told[name]["figure"] == after[name]["figure"], name
    assert float(told["first_filler"]["figure"].split()[0]) < 30


def test_a_batch_is_written_down_with_what_was_read_and_what_the_label_says():
    """By hand: 3 : 1 by weight, 244 g: 183 read is as planned, 245 read in all; lot and pot time are the label's."""
    system = {"name": "Shed mix", "by_weight": "3:1", "lot": "A7", "pot_time": "25", "pot_mass": "100"}
    done = steps_of(system=system, amount="244", temperature="17", readings=[{"shown": "183"}, {"shown": "245"}])[-1]
    assert dict(done["logs"]) == {"mixture": "Shed mix", "lot": "A7", "readings": "183 g, 245 g", "mass": "245 g",
                                  "temperature": "17 °C", "label_time": "25 min"}
    kept = moves.answer("log", dict(done["logs"]))
    assert kept["errors"] == []
    assert kept["lines"][0]["label"] == "245 g Shed mix"
    assert kept["lines"][0]["text"] == "245 g, 17 °C, lot A7, read 183 g, 245 g"


@pytest.mark.parametrize("way", WAYS)
def test_each_way_leaves_a_batch_that_the_log_reads(way):
    """A round trip: what the last step writes down, the log reads without an error."""
    logs = dict(steps_of(system=LABEL, way=way, thicken="yes")[-1]["logs"])
    assert moves.answer("log", logs)["errors"] == []
    assert moves.answer("log", logs)["lines"][0]["label"].endswith(", thickened")


def test_an_empty_batch_is_no_batch():
    """A rule of ours: a question back instead of a line that says nothing."""
    assert [line["name"] for line in moves.answer("log", {})["lines"]] == ["empty"]
    assert [line["name"] for line in moves.answer("log", {"note": "runny"})["lines"]] == ["summary"]

"""The ways of measuring beside scale and pumps: marks, sticks, and which of a bench is the best."""
from math import hypot, sqrt

import numpy as np
import pytest
from covemix.shared.door import moves
from covemix.shared.equations import graduations
from covemix.shared.mix import ratio
from covemix.shared.pour import compare_tools, measured_out
from hypothesis import given
from hypothesis import strategies as st
from uncertainties import ufloat

SYSTEM = {"by_volume": "3:1", "densities": "1.15:0.98"}
PROPAGATED = "uncertainties (library); a reading deviates by d / sqrt(12), JCGM 100:2008, F.2.2.1"


def asked(**typed):
    return moves.answer("measure", dict({"system": SYSTEM}, **typed))


def lines(**typed):
    found = asked(**typed)
    assert found["errors"] == []
    return {one["name"]: one for one in found["lines"]}


def errors(**typed):
    return {one["field"]: one["message"] for one in asked(**typed)["errors"]}


# --- graduations

def test_syringe_spread_agrees_with_propagated_errors(outside):
    """PyPI `uncertainties`; a reading to one graduation d deviates by d / sqrt(12), JCGM 100:2008, F.2.2.1."""
    full = [ufloat(60, 1 / sqrt(12)), ufloat(60, 1 / sqrt(12)), ufloat(30, 1 / sqrt(12))]
    other = [ufloat(20, 0.5 / sqrt(12)), ufloat(20, 0.5 / sqrt(12)), ufloat(10, 0.5 / sqrt(12))]
    found = sum(other) / sum(full)
    outside.library("measure syringes", PROPAGATED, 2 * found.s / found.n,
            graduations.syringe_spread((150, 50), (1, 0.5), (3, 3)))


@pytest.mark.parametrize("volumes", [(30, 10), (100, 30, 5), (100, 5, 30), (20, 20)])
def test_cup_spread_agrees_with_propagated_errors(outside, volumes):
    """PyPI `uncertainties`: cumulated marks, each read once; its correlations come out of the shared marks."""
    marks = [ufloat(sum(volumes[:n + 1]), 2.5 / sqrt(12)) for n in range(len(volumes))]
    parts = [after - before for before, after in zip([0, *marks], marks, strict=False)]
    worst = max([(part / parts[0]).s / (part / parts[0]).n for part in parts[1:]])
    outside.library(f"measure marked cup {volumes}", PROPAGATED, 2 * worst, graduations.cup_spread(volumes, 2.5))


def test_monte_carlo_of_a_graduated_cup_scatters_as_the_equation_says(outside):
    """JCGM 101:2008: 400,000 draws of uniform reading errors at each mark; the ratio's deviation beside ours."""
    draw = np.random.default_rng(20240229)
    first, second, step = 90.0, 30.0, 2.5
    low = first + draw.uniform(-step / 2, step / 2, 400_000)
    high = first + second + draw.uniform(-step / 2, step / 2, 400_000)
    ratios = (high - low) / low
    outside.solved("measure marked cup Monte Carlo", "JCGM 101:2008, Monte Carlo with numpy, 400,000 draws",
            float(2 * ratios.std() / (second / first)), graduations.cup_spread((first, second), step), rel=0.01)


def test_marks_are_at_or_above_the_wanted_amount_and_end_on_graduations():
    for amount in ("60", "101", "240", "777"):
        found = lines(way="syringes", amount=amount, amount_is="total", syringes={"holds": "60:20", "steps": "1:0.5"})
        wanted = ratio.mix_of_mass({"by_weight": (), "by_volume": (3, 1), "densities": (1150, 980), "parts": ""},
                                   float(amount) / 1000)
        drawn = found["drawn_a"]["value"], found["drawn_b"]["value"]
        assert sum(drawn) >= sum(wanted.volumes) * (1 - 1e-9)
        assert drawn[0] * 1e6 == pytest.approx(round(drawn[0] * 1e6), abs=1e-9)
        assert drawn[1] * 2e6 == pytest.approx(round(drawn[1] * 2e6), abs=1e-9)
        error = drawn[1] / drawn[0] * 3 - 1
        assert found["marks_error"]["value"] == pytest.approx(error, abs=1e-12)


def test_a_syringe_too_small_is_filled_more_than_once_and_says_how():
    found = lines(way="syringes", amount="240", syringes={"holds": "60:20", "steps": "1:1"})
    assert found["drawn_a"]["rough"].startswith("2 × 60 mL + 43 mL")


def test_a_graduated_cup_is_told_by_running_levels():
    found = lines(way="graduated", amount="400 mL", graduated={"holds": "500", "step": "10"})
    assert (found["level_a"]["text"], found["level_b"]["text"]) == ("300 mL", "400 mL")
    assert found["marks_error"]["value"] == pytest.approx(0, abs=1e-12)


def test_a_cup_too_small_is_poured_more_than_once():
    found = lines(way="graduated", amount="400 mL", graduated={"holds": "150", "step": "10"})
    assert found["pours"]["rank"] == "warn"
    assert found["level_b"]["value"] <= 150e-6 * (1 + 1e-9)
    assert found["pours"]["value"] * found["level_b"]["value"] >= 400e-6 * (1 - 1e-9)


def test_marks_coarser_than_the_part_are_said_with_the_way_out():
    found = lines(way="graduated", amount="16 mL", graduated={"holds": "400", "step": "10"})
    assert found["coarse_b"]["rank"] == "warn"
    assert "finer marks" in found["coarse_b"]["text"]
    assert "coarse_a" not in found


def marks_within(ratio_of, marks, most):
    """Brute force: all pairs of whole marks of a cup whose ratio is off by no more than `most`."""
    pairs = [(a, b) for a in range(1, marks) for b in range(1, marks - a + 1)]
    return [(a, b) for a, b in pairs if abs(b / a * ratio_of - 1) <= most + 1e-9]


@pytest.mark.parametrize("holds", [100, 300])
@pytest.mark.parametrize("step", [5, 10, 25])
def test_no_mark_above_what_the_cup_holds_is_ever_told(holds, step):
    """Every level is a mark that the cup has; where it says too coarse, no pair of its marks is within 5 %."""
    for ratio_of in (1, 1.5, 2, 3, 4, 5):
        held = marks_within(ratio_of, holds // step, 0.05)
        for amount in range(40, 901, 55):
            found = lines(way="graduated", amount=f"{amount} mL", graduated={"holds": str(holds), "step": str(step)},
                          system={"by_volume": f"{ratio_of}:1", "densities": "1.15:0.98"})
            if "too_coarse" in found:
                assert not held, (ratio_of, amount)
                assert "level_a" not in found
                continue
            a, b = found["level_a"]["value"] * 1e6, found["level_b"]["value"] * 1e6
            assert (round(a / step), round(b / step) - round(a / step)) in held
            assert (a / step, b / step) == pytest.approx((round(a / step), round(b / step)), abs=1e-6)
            assert 0 < a < b <= holds + 1e-6
            pours = found["pours"]["value"] if "pours" in found else 1
            assert pours * b >= amount * (1 - 1e-9)
            assert pours * b <= 1.5 * amount + 1e-6 or "much_more" in found


def test_a_cup_whose_marks_hold_no_such_ratio_says_so_and_what_would_help():
    """By hand: 5:1 with marks 25 mL apart is 125 + 25 = 150 mL at the least, and the cup ends at 100 mL."""
    coarse = {"way": "graduated", "amount": "40 mL", "graduated": {"holds": "100", "step": "25"},
              "system": {"by_volume": "5:1", "densities": "1.15:0.98"}}
    found = lines(**coarse, compare="yes")
    assert found["too_coarse"]["rank"] == "warn"
    assert "a cup must hold 150 mL" in found["too_coarse"]["text"]
    assert "level_a" not in found and "way_graduated" not in found and "unfit_graduated" in found
    steps = moves.answer("pouring", coarse)["lines"]
    assert (steps[0]["name"], steps[0]["rank"]) == ("too_coarse", "warn")


def test_a_cup_is_filled_to_marks_that_it_has_in_equal_pours_that_suffice():
    """By hand: 3:1 in steps of 10 mL below 100 is 60 + 20; 900 mL are 12 such pours, not 10 of 120 mL."""
    cup = {"way": "graduated", "amount": "900 mL", "graduated": {"holds": "100", "step": "10"}}
    found = lines(**cup)
    assert (found["level_a"]["text"], found["level_b"]["text"], found["pours"]["value"]) == ("60 mL", "80 mL", 12)
    assert "960 mL" in found["pours"]["rough"]
    assert lines(**cup, levels={"0": {"volume": "60"}})["level_b"]["text"] == "80 mL"  # as told: nothing changes
    # 63 mL taken want 21 more, 84 in all: the nearest mark is 80
    assert lines(**cup, levels={"0": {"volume": "63"}})["level_b"]["text"] == "80 mL"
    # a cup that ends at 105 mL has no mark above 100: what must stand above it is refused where it was typed
    odd = {"holds": "105", "step": "10"}
    assert "levels.0.volume" in errors(way="graduated", amount="90 mL", graduated=odd, levels={"0": {"volume": "78"}})


def test_the_smallest_honest_batch_by_marks_is_read_and_rounded_within_the_tolerance():
    found = lines(way="syringes", tolerance="5", amount="60", syringes={"holds": "60:20", "steps": "1:1"})
    least = found["smallest"]["value"]
    volumes = (0.75 * least, 0.25 * least)
    assert graduations.syringe_spread(volumes, (1e-6, 1e-6), graduations.fills(volumes, (60e-6, 20e-6))) <= 0.0501
    again = lines(way="syringes", tolerance="5", amount=str(least * 1e6) + " mL",
                  syringes={"holds": "60:20", "steps": "1:1"})
    assert abs(again["marks_error"]["value"]) <= 0.05
    assert "too_small" not in again


def test_syringes_and_cups_that_cannot_be_are_refused_at_their_field():
    assert "syringes.holds" in errors(way="syringes", syringes={"holds": "60:20:10", "steps": "1"})
    assert "syringes.steps" in errors(way="syringes", syringes={"holds": "60:20", "steps": "1:25"})
    assert "syringes.steps" in errors(way="syringes", syringes={"holds": "60:20", "steps": "1:1:1"})
    assert "graduated.step" in errors(way="graduated", graduated={"holds": "30", "step": "40"})
    for way in ("syringes", "graduated", "stick"):
        assert "system.densities" in errors(way=way, system={"by_weight": "100:30"})


# --- the stick

STRAIGHT = {"bottom": "50", "top": "50", "height": "90"}


def test_a_stick_in_a_straight_cup_is_a_cylinder(outside):
    """Machinery's Handbook, cylinder: 50 mL in a 50 mm cup stand 25.46479 mm high (from memory; plane geometry)."""
    found = lines(way="stick", amount="50 mL", cup=STRAIGHT)
    outside.worked("measure stick", "Machinery's Handbook, cylinder (from memory; plane geometry)", 25.46479,
            found["mark_b"]["value"] * 1000, rel=1e-6)
    assert found["mark_a"]["value"] * 1000 == pytest.approx(0.75 * 25.46479, rel=1e-6)
    assert found["mark_b"]["text"] == "25.5 mm"


def test_a_wide_cup_recommends_a_narrow_one_and_a_narrow_one_does_not():
    wide = lines(way="stick", amount="200 mL", tolerance="10", cup={"bottom": "120", "top": "130", "height": "120"})
    assert wide["spread"]["rank"] == "warn"
    width = wide["narrow"]["value"] * 1000
    narrow = lines(way="stick", amount="200 mL", tolerance="10",
                   cup={"bottom": str(width * 0.999), "top": str(width * 0.999), "height": "400"})
    assert narrow["spread"]["rank"] == "beside"
    assert "narrow" not in narrow


def test_a_cup_that_narrows_upwards_is_questioned_and_still_answered():
    found = lines(way="stick", amount="200 mL", cup={"bottom": "80", "top": "64", "height": "100"})
    assert found["narrows"]["rank"] == "ask"
    assert "upright in the middle" in found["narrows"]["text"]
    assert found["mark_b"]["value"] * 1000 == pytest.approx(43.4562, rel=1e-6)
    assert "narrows" not in lines(way="stick", amount="100 mL", cup={"bottom": "64", "top": "80", "height": "100"})


def test_a_cup_too_small_for_a_stick_gives_the_marks_of_one_pour():
    found = lines(way="stick", amount="500 mL", cup=STRAIGHT)
    assert found["pours"]["rank"] == "warn"
    assert found["mark_b"]["value"] <= 0.85 * 0.09 * (1 + 1e-9)
    cup = 3.141592653589793 * 0.025**2
    assert found["pours"]["value"] * found["mark_b"]["value"] * cup == pytest.approx(500e-6, rel=1e-9)


def test_a_chosen_cup_that_is_too_small_warns_on_the_scale_too_and_an_unchosen_one_does_not():
    assert lines(way="scale", amount="2000", cup=STRAIGHT)["pours"]["rank"] == "warn"
    for untouched in ({}, {"cup": "medium"}, {"cup": {"id": "medium", "bottom": ""}}):
        assert "pours" not in lines(way="scale", amount="2000", **untouched)
    assert lines(way="scale", amount="2000", cup="small")["pours"]["rank"] == "warn"
    assert "stands" in lines(way="scale", amount="60", cup=STRAIGHT)


def test_one_millimetre_on_a_mark_is_told_for_each_mark():
    """By hand in a straight cup: 1 mm of 30 and 10 mm moves 3:1 to 9/31 and 11/30 of the first."""
    area = 3.141592653589793 * 0.025**2 * 1e6
    found = lines(way="stick", amount=str(40 * area / 1000) + " mL", cup=STRAIGHT)
    assert found["mark_cost_a"]["value"] == pytest.approx((9 / 31) * 3 - 1, rel=1e-9)
    assert found["mark_cost_b"]["value"] == pytest.approx((11 / 30) * 3 - 1, rel=1e-9)


def test_a_millimetre_too_high_names_the_part_that_it_puts_off():
    """Three parts: 1 mm too much of the hardener leaves too little of the thin part above it, which is 1 mm high."""
    found = lines(way="stick", amount="100 mL", system={"by_volume": "100:40:5", "densities": "1.15:0.98:0.9"})
    ends = [found["mark_cost_" + part]["rough"].partition(", ")[2] for part in "abc"]
    assert ends == ["too little Hardener", "too little Part 3", "too much Part 3"]


def test_the_picture_of_the_cup_is_to_scale_and_its_levels_are_those_of_the_lines():
    found = asked(way="stick", amount="50 mL", cup=STRAIGHT)
    drawn = {one["role"]: one for one in found["figures"][0]["shapes"] if one["kind"] != "note"}
    xs, ys = zip(*drawn["cup"]["points"], strict=True)
    scale = (max(xs) - min(xs)) / 50
    assert (max(ys) - min(ys)) / scale == pytest.approx(90, abs=0.02)
    top = min(y for _, y in drawn["b"]["points"])
    assert (max(ys) - top) / scale == pytest.approx(25.46479, abs=0.02)
    between = min(y for _, y in drawn["a"]["points"])
    assert (max(ys) - between) / scale == pytest.approx(0.75 * 25.46479, abs=0.02)
    assert "25.5 mm" in found["figures"][0]["told"]
    assert asked(way="scale")["figures"] == []


# --- what a cup can hold

def test_what_does_not_fit_the_cup_any_more_is_refused_at_the_reading():
    """A cup of 100 mm that narrows to a point at 200 mm: 90 mm of resin at 3:1 leave no room for the hardener."""
    narrow = {"bottom": "80", "top": "40", "height": "100"}
    for heights in ({"0": {"height": "90"}}, {"0": {"height": "90"}, "1": {"height": ""}}):
        assert list(errors(way="stick", cup=narrow, heights=heights)) == ["heights.0.height"]
    assert "rim" in errors(way="stick", cup=narrow, heights={"0": {"height": "90"}})["heights.0.height"]
    assert "mark_b" in lines(way="stick", cup=narrow, heights={"0": {"height": "40"}})
    assert "Above the rim" in errors(way="stick", cup=narrow, heights={"0": {"height": "101"}})["heights.0.height"]
    tub = {"holds": "400", "step": "10"}
    assert "level_b" in lines(way="graduated", graduated=tub, levels={"0": {"volume": "300"}})
    assert list(errors(way="graduated", graduated=tub, levels={"0": {"volume": "310"}})) == ["levels.0.volume"]
    assert "highest mark" in errors(way="graduated", graduated=tub, levels={"0": {"volume": "401"}})["levels.0.volume"]


def test_very_coarse_marks_beside_very_fine_ones_still_hold_the_amount():
    """Every part rounded up to its own mark where no nearest count reaches the amount: never less than is wanted."""
    syringes = {"holds": "20:100", "steps": "0.05:100"}
    system = {"by_volume": "1:1.2", "densities": "1.10:1.00"}  # "1.1 : 1" may be 5 % off: a scale gives no reading then
    for amount in ("253 mL", "258 mL", "262 mL"):
        found = lines(way="syringes", amount=amount, system=system, syringes=syringes)
        assert found["drawn_a"]["value"] + found["drawn_b"]["value"] >= float(amount[:3]) * 1e-6 * (1 - 1e-9)
    assert "way_syringes" in lines(compare="yes", amount="253 mL", system=system, syringes=syringes)


# --- the bench

def test_a_bench_lists_every_way_best_first_and_says_why():
    found = [one for one in asked(compare="yes", amount="1000")["lines"] if one["name"].startswith("way_")]
    figures = [one["value"] for one in found]
    assert {one["name"] for one in found} == {"way_scale", "way_syringes", "way_graduated", "way_stick", "way_pumps"}
    assert figures == sorted(figures)
    assert all("never in ratio for" in one["text"] or "in ratio from" in one["text"] for one in found)
    assert lines(compare="yes", amount="1000")["best_way"]["text"].startswith("Scale")


def test_a_smallest_batch_says_what_it_leaves_out():
    """At 3:1 on 1 g, 240 g are read within 1.8 % and rounded by 0.25 % (187 g and 53 g): beyond 2 % together.

    Beside both stands what the two densities' last digits leave open: rectangular, JCGM 100:2008, F.2.2.1, k = 2.
    """
    found = lines(way="scale", compare="yes", amount="240")
    densities = 2 * hypot(0.01 / 1.15, 0.01 / 0.98) / sqrt(12)
    reading = sqrt(found["spread"]["value"] ** 2 - densities ** 2)
    assert reading < found["spread"]["value"] < reading + densities
    assert found["way_scale"]["value"] == pytest.approx(hypot(reading + abs(found["rounding"]["value"]), densities))
    assert found["rounding"]["value"] == pytest.approx(53 / 187 * 3 * 1.15 / 0.98 - 1)
    assert found["way_scale"]["value"] > 0.02 and found["smallest"]["value"] < 0.240
    assert "reading alone" in found["way_scale"]["rough"] and "reading alone" in found["smallest"]["rough"]
    for way in ("syringes", "graduated", "pumps"):
        assert "alone" in found["way_" + way]["rough"]


def test_for_a_tiny_batch_fine_syringes_beat_a_coarse_scale():
    found = lines(compare="yes", amount="12", scale={"step": "5"}, syringes={"holds": "10", "steps": "0.1"})
    assert found["best_way"]["text"].startswith("Syringes")


def test_a_bench_on_which_nothing_holds_says_so():
    found = lines(compare="yes", amount="3", scale={"step": "5"}, syringes={"holds": "60", "steps": "5"})
    assert found["no_way"]["rank"] == "warn"


def test_uneven_strokes_agree_with_propagated_errors(outside):
    """PyPI `uncertainties`: every stroke its own error, summed."""
    first = sum([ufloat(10, 0.3) for _ in range(6)])
    other = sum([ufloat(10, 0.3) for _ in range(2)])
    found = other / first
    outside.library("measure strokes", "uncertainties (library), every stroke its own error", 2 * found.s / found.n,
            compare_tools.stroke_spread((6, 2), 0.03))


def test_without_densities_a_label_by_weight_leaves_the_scale_alone_on_the_bench():
    found = lines(compare="yes", system={"by_weight": "100:30"})
    assert [name for name in found if name.startswith("way_")] == ["way_scale"]


@given(st.lists(st.floats(5, 500), min_size=3, max_size=3), st.integers(1, 2), st.floats(0.5, 2),
       st.lists(st.floats(1, 12), min_size=3, max_size=3))
def test_whole_strokes_to_come_follow_what_was_pumped(wanted, many, off, steps):
    """Brute force: of all whole counts the one whose volume is nearest to the ratio with what is in the cup."""
    done = tuple(volume * off for volume in wanted[:many])
    found = measured_out.whole_steps(wanted, done, steps)
    scale = sum(done) / sum(wanted[:many])
    assert found.volumes[:many] == done
    for place in range(many, 3):
        exact = wanted[place] * scale
        nearest = min(range(1, int(exact / steps[place]) + 3), key=lambda count: abs(count * steps[place] - exact))
        assert abs(found.volumes[place] - exact) == pytest.approx(abs(nearest * steps[place] - exact), abs=1e-6)
        assert found.volumes[place] == pytest.approx(found.counts[place] * steps[place])


# way: (group, field, the first part as planned, twice as much of it)
TAKEN = {"pumps": ("counted", "strokes", "9", "18"), "syringes": ("drawn", "volume", "90", "180"),
         "graduated": ("levels", "volume", "90", "180"), "stick": ("heights", "height", "20", "40")}


@pytest.mark.parametrize("way", TAKEN)
def test_what_was_taken_of_one_part_leaves_the_next_one_to_be_done(way):
    """What was read stands beside, what is to come is large; twice of the first part asks for twice of the next."""
    group, field, once, twice = TAKEN[way]

    def lines_of(text):
        typed = {"way": way, "amount": "150 mL", "system": {"by_volume": "3:1", "densities": "1.1:1.0"},
                 "cup": {"bottom": "90", "top": "90", "height": "300"}, group: [{field: text}]}
        found = moves.answer("measure", typed)
        assert found["errors"] == []
        return {line["name"]: line for line in found["lines"] if line["part"] in ("a", "b")}

    parts = [name for name in lines_of(once) if name.endswith(("_a", "_b"))]
    first, second = lines_of(once), lines_of(twice)
    ranks = [first[name]["rank"] for name in parts][:2]
    assert ranks == ["beside", "answer"], first
    _a, b = parts[:2]
    grown = second[b]["value"] / first[b]["value"]
    assert grown == pytest.approx(2, rel=0.15)  # whole strokes and marks

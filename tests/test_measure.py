"""Measure on one scale and with pumps: readings and their doubt against the GUM, whole strokes by brute force."""

from fractions import Fraction
from itertools import product
from math import sqrt

import numpy as np
import pytest
from covemix.shared.door import moves
from covemix.shared.equations import pumping, top_up, weighing
from covemix.shared.mix import ratio_doubt
from hypothesis import given, settings
from hypothesis import strategies as st
from uncertainties import ufloat

GUM = "JCGM 100:2008 (GUM), 4.3.7 and F.2.2.1 (u = d / sqrt(12)), 5.1.2 eq. 10, 5.2.2 eq. 13"
THREE_TO_ONE = {"by_weight": "3:1"}


def asked(**typed):
    return moves.answer("measure", dict({"system": THREE_TO_ONE}, **typed))


def answered(**typed):
    found = asked(**typed)
    assert found["errors"] == []
    return {line["name"]: line for line in found["lines"]}


def refused(**typed):
    found = asked(**typed)
    assert found["lines"] == []
    return {error["field"]: error["message"] for error in found["errors"]}


# the doubt of a ratio ------------------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    "check, cup, resin, all_of_it, step, doubt, relative",
    [("uc-1", 12, 112, 142, 1, 0.05347974, 0.01604392), ("uc-2", 8.4, 28.4, 34.4, 0.1, 0.02673987, 0.008021961)],
)
def test_two_parts_that_share_a_reading_doubt_each_other(outside, check, cup, resin, all_of_it, step, doubt, relative):
    """GUM 5.2.2 for R = (m1 - m0) / (m2 - m1); propagated by the library uncertainties, and as printed."""
    a, b = resin - cup, all_of_it - resin
    got = weighing.ratio_uncertainty(a, b, step)
    outside.worked(check, GUM, relative, got, rel=1e-6)
    outside.worked(check + " absolute", GUM, doubt, got * a / b, rel=1e-6)
    m0, m1, m2 = (ufloat(reading, step / sqrt(12)) for reading in (cup, resin, all_of_it))
    propagated = (m1 - m0) / (m2 - m1)
    outside.library(check + " propagated", "uncertainties (library), linear propagation", propagated.s / propagated.n,
            got)


def test_setting_to_zero_between_parts_shares_nothing(outside):
    """GUM 5.1.2 for two independent roundings of each part."""
    outside.worked("uc-3", GUM, 0.04735819, weighing.ratio_uncertainty(100, 30, 1, rezeroed=True) * 100 / 30, rel=1e-6)
    a, b = (ufloat(part, sqrt(2 / 12)) for part in (100, 30))
    outside.library(
        "uc-3 propagated",
        "uncertainties (library), linear propagation",
        (a / b).s,
        weighing.ratio_uncertainty(100, 30, 1, rezeroed=True) * 100 / 30,
    )


def test_the_smallest_batch_is_the_equation_solved_for_the_batch(outside):
    """GUM, expanded uncertainty k = 2, 5 % of the ratio, solved for the batch."""
    outside.worked("uc-4", GUM, 83.42839, weighing.smallest_batch((100, 30), 1, 0.05), rel=1e-6)
    least = weighing.smallest_batch((100, 30), 1, 0.05)
    outside.worked("uc-4 hardener", GUM, 19.25271, least * 30 / 130, rel=1e-6)


@pytest.mark.parametrize("rezeroed", [False, True])
def test_rounded_readings_scatter_as_the_equation_says(outside, rezeroed):
    """JCGM 101, Monte Carlo: 400,000 pours of 100 g and 30 g on a scale of 1 g, where they begin being even chance."""
    draw, size = np.random.default_rng(12), 400_000
    start, resin, hardener = (draw.uniform(low, low + 1, size) for low in (0, 99.5, 29.5))
    between = draw.uniform(0, 1, size) if rezeroed else start + resin
    shown_resin = np.round(start + resin) - np.round(start)
    shown_hardener = np.round(between + hardener) - np.round(between)
    ratios = (shown_resin / resin) / (shown_hardener / hardener)
    spread = np.std(ratios) / np.mean(ratios)
    outside.solved(
        f"uc Monte Carlo {'re-zeroed' if rezeroed else 'shared'}",
        "JCGM 101:2008, Monte Carlo with numpy, seed 12",
        spread,
        weighing.ratio_uncertainty(100, 30, 1, rezeroed=rezeroed),
        rel=0.02,
    )


@given(st.lists(st.floats(1, 100), min_size=2, max_size=5), st.floats(0.001, 0.2), st.booleans())
def test_the_smallest_batch_is_on_the_edge_of_the_tolerance(parts, tolerance, rezeroed):
    least = weighing.smallest_batch(parts, 1.0, tolerance, rezeroed)
    masses = [least * part / sum(parts) for part in parts]
    assert weighing.COVERAGE * weighing.worst_uncertainty(masses, 1.0, rezeroed) == pytest.approx(tolerance, rel=1e-12)


# readings ------------------------------------------------------------------------------------------------------------


def test_the_scale_shows_running_readings_in_its_own_steps():
    found = answered(amount="240.6")  # 180.45 is read 180, a third of it is 60
    assert [found[name]["text"] for name in ("reading_a", "reading_b")] == ["180 g", "240 g"]
    found = answered(amount="240.6", scale="0.1g")  # 180.5 and a third of it, 60.17
    assert [found[name]["text"] for name in ("reading_a", "reading_b")] == ["180.5 g", "240.7 g"]
    found = answered(amount="242", scale="5g")
    assert [found[name]["text"] for name in ("reading_a", "reading_b")] == ["180 g", "240 g"]
    assert found["reading_a"]["label"].startswith("Resin")


def test_set_to_zero_between_parts_each_part_is_read_alone():
    found = answered(amount="240", zeroing="each")
    assert [found[name]["text"] for name in ("reading_a", "reading_b")] == ["180 g", "60 g"]
    assert ", zero, pour" in found["reading_b"]["label"]


@given(st.floats(50, 5000), st.lists(st.floats(1, 50), min_size=2, max_size=5), st.booleans(),
       st.sampled_from((0.0001, 0.001, 0.005)))
def test_every_part_is_the_step_nearest_to_the_ratio_with_those_told_before_it(mass, parts, rezeroed, step):
    """Plain proportion: a part is to the sum of those before it as on the label, and no nearer step is on the scale."""
    masses = [mass / 1000 * part / sum(parts) for part in parts]
    told = np.array(weighing.running(masses, step, (), rezeroed))
    if told[0] == 0:
        return
    poured, planned = np.diff(told, prepend=0.0), np.cumsum(masses)
    assert abs(poured[0] - masses[0]) <= step / 2 * (1 + 1e-5)
    for place in range(1, len(masses)):
        target = masses[place] * told[place - 1] / planned[place - 1]
        assert abs(poured[place] - target) <= 0.55 * step * (1 + 1e-5)  # about equally near: the one nearer to the plan
    assert told / step == pytest.approx(np.round(told / step), abs=1e-4)


@given(st.floats(20, 5000), st.floats(1, 10), st.lists(st.floats(0.02, 1), min_size=1, max_size=4), st.booleans())
def test_what_is_poured_in_all_is_within_a_step_per_part_of_what_was_wanted(mass, resin, others, rezeroed):
    """The resin comes first and is half of the mix or more: its half step is at most doubled by what follows it."""
    parts = [max(resin, sum(others)), *others]
    masses = [mass * part / sum(parts) for part in parts]
    assert abs(weighing.running(masses, 1.0, (), rezeroed)[-1] - mass) <= len(parts) * (1 + 1e-6)


def test_rounding_one_part_is_made_good_by_the_next():
    """By hand, 212.5 g at 100:30: 163.46 is read 163, which takes 48.9: 212 (+0.2 %), not 213 (+2.2 %)."""
    found = answered(system={"by_weight": "100:30"}, amount="212.5")
    assert [found[name]["text"] for name in ("reading_a", "reading_b")] == ["163 g", "212 g"]
    assert found["rounding"]["value"] == pytest.approx(49 / 163 / 0.3 - 1)


def test_of_two_steps_about_equally_near_the_one_that_gives_what_was_wanted_is_told():
    """By hand, 300 g at 2:1 by volume: 210 g take 89.48, 0.48 above 299 and 0.52 below 300: 300 were wanted."""
    found = answered(system={"by_volume": "2:1", "densities": "1.15:0.98"}, way="scale", amount="300")
    assert [found[name]["text"] for name in ("reading_a", "reading_b")] == ["210 g", "300 g"]


@pytest.mark.parametrize("zeroing", ["once", "each"])
@pytest.mark.parametrize("label, amount, scale", [
    ("100:30", "212.5", "1g"), ("100:30", "240", "1g"), ("100:30:5", "333", "1g"), ("3:1", "77.7", "5g"),
    ("100:45:12", "123.4", "0.1g")])
def test_typing_what_was_told_changes_nothing_that_follows(label, amount, scale, zeroing):
    """Readings, filler, steps: all as they were, but for the line that was typed."""
    typed = {"system": {"by_weight": label}, "amount": amount, "scale": scale, "zeroing": zeroing}
    told = [one["text"] for one in moves.answer("measure", typed)["lines"] if one["name"].startswith("reading_")]
    for count in range(1, len(told)):
        readings = [{"shown": text} for text in told[:count]]
        for move in ("measure", "thicken", "pouring"):
            plain = {one["name"]: (one["text"], one["value"]) for one in moves.answer(move, typed)["lines"]}
            again = moves.answer(move, dict(typed, readings=readings))
            assert again["errors"] == []
            done = ["reading_" + "abcde"[place] for place in range(count)] + ["done_parts", "done"]
            assert plain.keys() == {one["name"] for one in again["lines"]}
            for one in again["lines"]:
                if one["name"] not in done:
                    assert (one["text"], one["value"]) == plain[one["name"]], (move, one["name"])


def test_the_later_parts_follow_what_was_really_poured():
    found = answered(amount="240", readings=[{"shown": "190"}])
    assert [found[name]["text"] for name in ("reading_a", "reading_b")] == ["190 g", "253 g"]
    assert (found["reading_a"]["rank"], found["reading_b"]["rank"]) == ("beside", "answer")
    assert "planned 180 g" in found["reading_a"]["rough"]
    again = answered(amount="240", zeroing="each", readings=[{"shown": "190"}])
    assert again["reading_b"]["text"] == "63 g"


@given(st.floats(10, 2000), st.lists(st.floats(1, 50), min_size=3, max_size=5), st.floats(0.7, 1.4), st.integers(1, 2))
def test_what_is_still_to_come_stands_in_ratio_with_all_that_was_poured(mass, parts, slip, poured):
    masses = [mass * part / sum(parts) for part in parts]
    actual = [slip * reading for reading in np.cumsum(masses)[:poured]]
    found = np.array(weighing.corrected(masses, actual))
    assert found[:poured].sum() == pytest.approx(actual[-1], rel=1e-12)
    assert found[poured:] / actual[-1] == pytest.approx(np.array(masses[poured:]) / sum(masses[:poured]), rel=1e-12)


def test_a_finished_pour_is_judged_by_its_ratio():
    good = answered(amount="240", readings=[{"shown": "180"}, {"shown": "240"}])
    assert (good["poured"]["text"], good["poured"]["rank"]) == ("0.0%", "beside")
    assert "rounding" not in good
    off = answered(amount="240", readings=[{"shown": "180"}, {"shown": "246"}])
    assert (off["poured"]["text"], off["poured"]["rank"]) == ("+10.0%", "warn")
    short = answered(amount="240", readings=[{"shown": "180"}, {"shown": "237"}])
    assert short["poured"]["text"] == "-5.0%"


def test_the_part_that_rounding_puts_furthest_off_is_named():
    """By hand, 40 g at 100:30:5: 29.6, 8.9 and 1.48 g are read 30, 9 and 1: Part 3 is a third short, hardener exact."""
    found = answered(system={"by_weight": "100:30:5"}, amount="40")["rounding"]
    assert found["text"] == "-33.4%"  # 33.33..., its size rounded up
    assert found["rough"].endswith("too little Part 3")
    over = answered(amount="240", readings=[{"shown": "180"}, {"shown": "246"}])["poured"]
    assert over["rough"].endswith("too much Hardener")


def test_an_error_is_never_told_smaller_than_it_is():
    """By hand, 212.5 g at 100:30, as read 163 and 212: 49 / 163 / 0.3 - 1 = 0.2045 %."""
    found = answered(system={"by_weight": "100:30"}, readings=[{"shown": "163"}, {"shown": "212"}])
    assert found["poured"]["value"] == pytest.approx(49 / 163 / 0.3 - 1)
    assert found["poured"]["text"] == "+0.3%"


@pytest.mark.parametrize(
    "readings, zeroing, field",
    [
        ([{"shown": "190"}, {"shown": "180"}], "once", "readings.1.shown"),
        ({"1": {"shown": "240"}}, "once", "readings.0.shown"),
        ({"1": {"shown": "60"}}, "each", "readings.0.shown"),
        ([{"shown": "180"}, {"shown": "240"}, {"shown": "250"}], "once", "readings.2.shown"),
        ([{"shown": "0"}], "once", "readings.0.shown"),
        ([{"shown": "-1"}, {"shown": "x"}], "once", "readings.0.shown"),
    ],
)
def test_readings_that_cannot_be_are_refused_at_the_reading(readings, zeroing, field):
    assert next(iter(refused(amount="240", readings=readings, zeroing=zeroing))) == field


def test_a_second_reading_smaller_than_the_first_is_fine_where_each_starts_from_zero():
    assert "poured" in answered(amount="240", zeroing="each", readings=[{"shown": "180"}, {"shown": "60"}])


def test_a_batch_too_small_for_the_scale_is_warned_about_and_named():
    """uc-4 in the form: 100:30 within 5 % on 1 g takes 83.43 g, told rounded up."""
    label = {"by_weight": "100:30", "tolerance": "5"}
    small = answered(system=label, amount="83")
    assert small["too_small"]["rank"] == "warn" and small["smallest"]["text"] == "83.5 g"
    assert "too_small" not in answered(system=label, amount="83.5")
    assert "too_small" not in answered(system=label, amount="83", scale="0.1g")
    assert "our own judgement" in answered(amount="240")["smallest"]["rough"]
    assert "our own judgement" not in answered(system=label, amount="240")["smallest"]["rough"]


def test_a_batch_poured_larger_than_planned_is_judged_by_what_was_poured():
    label = {"by_weight": "100:30", "tolerance": "5"}
    assert "too_small" not in answered(system=label, amount="50", readings=[{"shown": "100"}])


def test_more_than_the_scale_weighs_is_said():
    assert answered(amount="600", scale="0.1g")["over_scale"]["rank"] == "warn"
    assert "over_scale" not in answered(amount="400", scale="0.1g")


def test_a_scale_without_densities_asks_for_them():
    found = refused(system={"by_volume": "3:1"}, way="scale", amount="300 mL")
    assert "A scale needs them" in found["system.densities"]
    found = refused(system={"by_volume": "3:1", "by_weight": "100:30"}, amount="300 mL")
    assert found["system.densities"].startswith("Densities: The amount is by volume")


# pumps ---------------------------------------------------------------------------------------------------------------


def pumps(strokes="10:10", system=None, **typed):
    return answered(
        system=system or {"by_volume": "3:1", "densities": "1.15:0.98"},
        way="pumps",
        pumps={"strokes": strokes},
        **typed,
    )


@given(
    st.lists(st.floats(0.5, 10), min_size=2, max_size=3),
    st.lists(st.floats(2e-6, 30e-6), min_size=3, max_size=3),
    st.floats(20e-6, 300e-6),
    st.sampled_from((0.005, 0.02, 0.05)),
)
@settings(max_examples=60)
def test_whole_strokes_are_those_that_brute_force_finds(parts, strokes, volume, tolerance):
    """Every combination of whole strokes: at or above what is wanted, the first in tolerance, else the nearest."""
    strokes = strokes[: len(parts)]
    wanted = [volume * part / sum(parts) for part in parts]
    found = pumping.best_strokes(wanted, strokes, tolerance)
    assert sum(found.volumes) >= volume * (1 - 1e-8)
    assert found.volumes == pytest.approx([count * stroke for count, stroke in zip(found.counts, strokes, strict=True)])
    near = [
        sorted(
            {
                max(1, int(count * want / wanted[0] * strokes[0] / stroke) + step)
                for count in (found.counts[0],)
                for step in (0, 1)
            }
        )
        for want, stroke in zip(wanted[1:], strokes[1:], strict=True)
    ]

    def error(counts):
        ratios = [
            counts[n] * strokes[n] / (counts[0] * strokes[0]) / (wanted[n] / wanted[0]) - 1
            for n in range(1, len(parts))
        ]
        return max(map(abs, ratios))

    best_here = min(error((found.counts[0], *others)) for others in product(*near))
    assert abs(found.error) == pytest.approx(best_here, rel=1e-9, abs=1e-12)
    if abs(found.error) > tolerance:  # then none of the batches it may look at is within, or nearer
        first = int(np.ceil(wanted[0] / strokes[0] * (1 - 1e-9)))
        for count in range(max(1, first), int(max(first + 3, 1.5 * wanted[0] / strokes[0])) + 1):
            exact = [
                count * strokes[0] * want / wanted[0] / stroke
                for want, stroke in zip(wanted[1:], strokes[1:], strict=True)
            ]
            counts = (count, *(max(1, int(x + 0.5)) for x in exact))
            if sum(c * s for c, s in zip(counts, strokes, strict=True)) >= volume and count <= first + 60:
                assert error(counts) >= abs(found.error) - 1e-8


def test_equal_pumps_and_a_whole_ratio_are_exact():
    found = pumps(amount="40 mL")
    assert [found[name]["text"] for name in ("strokes_a", "strokes_b")] == ["3 strokes", "1 stroke"]
    assert found["strokes_error"]["text"] == "0.0%"
    assert not [name for name in found if name.startswith("top_up")]
    assert pumps(amount="41 mL")["strokes_a"]["text"] == "6 strokes", "at or above the wanted amount"


def test_what_whole_strokes_leave_out_of_ratio_is_told_and_mended_on_the_scale():
    """10 mL and 3 mL at 3:1: three strokes of each give 30 mL to 9 mL, 10 % short: 1 mL, 0.98 g, is missing."""
    found = pumps("10:3", amount="30 mL", tolerance="20")
    assert (found["strokes_a"]["value"], found["strokes_b"]["value"]) == (3, 3)
    assert found["strokes_error"]["text"] == "-10.0%"
    assert found["top_up_b"]["value"] == pytest.approx(1e-6)
    assert found["top_up_b"]["text"] == "1 g on the scale"


def test_a_top_up_that_the_scale_cannot_show_is_never_told_as_nothing():
    """By hand: 19 strokes of 8 mL take 30.4 mL at 5:1, 6 of 5 mL are 30: 0.4 mL, 0.392 g, on a scale of 1 g."""
    found = pumps("8:5", amount="150 mL", system={"by_volume": "5:1", "densities": "1.15:0.98"})
    assert found["top_up_b"]["value"] == pytest.approx(0.4e-6)
    assert found["top_up_b"]["text"] == "0.392 g, less than the scale can show"
    fine = pumps("8:5", amount="150 mL", system={"by_volume": "5:1", "densities": "1.15:0.98"}, scale="0.1g")
    assert fine["top_up_b"]["text"] == "0.4 g on the scale"


@given(st.lists(st.floats(1, 100), min_size=2, max_size=5), st.lists(st.floats(1, 100), min_size=5, max_size=5))
def test_after_the_top_up_all_stands_in_ratio_and_nothing_was_taken_out(parts, volumes):
    volumes = volumes[: len(parts)]
    added = top_up.top_up(volumes, parts)
    assert min(added) >= 0 and min(added) == pytest.approx(0, abs=1e-9)
    full = np.array(volumes) + np.array(added)
    assert full / full[0] == pytest.approx(np.array(parts) / parts[0], rel=1e-12)


def test_ten_weighed_strokes_go_before_the_pumps_own_figure():
    found = answered(
        system={"by_volume": "3:1", "densities": "1.15:0.98"},
        way="pumps",
        amount="40 mL",
        pumps={"strokes": "20:20", "ten_strokes": "115:98"},
    )
    assert [found[name]["value"] for name in ("strokes_a", "strokes_b")] == [3, 1]


def test_pumps_that_never_come_into_ratio_are_asked_back():
    found = pumps("10:100", amount="100 mL", tolerance="0.5", system={"by_volume": "37:1", "densities": "1.1:1"})
    assert found["strokes_error"]["rank"] == "warn" and found["smallest"]["rank"] == "ask"


def test_a_tiny_stroke_does_not_keep_the_phone_busy():
    assert pumps("0.001:1000", amount="900 L")["strokes_a"]["value"] > 0


@pytest.mark.parametrize(
    "system, strokes, field, words",
    [
        ({"by_volume": "3:1"}, "10:10:10", "pumps.strokes", "2 parts"),
        ({"by_weight": "100:30"}, "10:10", "system.densities", "Pumps need"),
        ({"by_weight": "100:30", "by_volume": "3:1"}, "10:10", "system.densities", "The amount is by weight"),
    ],
)
def test_pumps_that_do_not_fit_the_label_are_refused(system, strokes, field, words):
    amount = "40 mL" if system == {"by_volume": "3:1"} else "40 g"
    assert words in refused(system=system, way="pumps", pumps={"strokes": strokes}, amount=amount)[field]


def test_weighed_strokes_without_densities_ask_for_them():
    found = refused(system={"by_volume": "3:1"}, way="pumps", pumps={"ten_strokes": "115:33"}, amount="40 mL")
    assert "weighed strokes" in found["system.densities"]


@pytest.mark.parametrize("parts, strokes, tolerance", [
    ((3, 1), (10e-6, 10e-6), 0.0), ((2, 1), (9e-6, 7e-6), 0.02), ((10, 4, 1), (10e-6, 6e-6, 3e-6), 0.02),
    ((59, 1), (10e-6, 10e-6), 0.001), ((60, 1), (10e-6, 10e-6), 0.001), ((61, 1), (10e-6, 10e-6), 0.001)])
def test_the_smallest_whole_strokes_are_those_that_brute_force_finds(parts, strokes, tolerance):
    """Every combination of up to 60 strokes of the first pump, by fractions: the fewest of it that hold the ratio."""

    def off(counts):
        return max(abs(Fraction(n) * Fraction(stroke) / (counts[0] * Fraction(strokes[0])) * parts[0] / part - 1)
                   for n, stroke, part in zip(counts[1:], strokes[1:], parts[1:], strict=True))

    others = [range(1, 1 + int(61 * strokes[0] * part / parts[0] / stroke) + 1)
              for part, stroke in zip(parts[1:], strokes[1:], strict=True)]
    least = next((first for first in range(1, 61) for rest in product(*others)
                  if off((first, *rest)) <= tolerance + 1e-9), None)
    found = pumping.smallest_strokes(parts, strokes, tolerance)
    assert (found.counts[0] if found else None) == least
    if found:
        assert off(found.counts) <= tolerance + 1e-9
        assert found.volumes == pytest.approx([n * stroke for n, stroke in zip(found.counts, strokes, strict=True)])


def test_coarse_strokes_beside_fine_ones_are_counted_up_and_give_what_they_pump():
    found = pumping.best_strokes((1e-3, 2.8e-3), (1e-7, 2e-3), 0.02)
    assert found.counts == (10000, 2) and found.volumes == pytest.approx((1e-3, 4e-3))
    assert found.error == pytest.approx(4 / 2.8 - 1)


@pytest.mark.parametrize("own", [0.5, 1.0])
def test_a_scales_own_error_widens_what_its_step_alone_leaves_open(outside, own):
    """Monte Carlo, JCGM 101:2008: each of three readings is off by half a step of rounding and by its own error."""
    dice = np.random.default_rng(76)
    off = dice.uniform(-0.5, 0.5, (3, 400_000)) + dice.uniform(-own, own, (3, 400_000))
    ratio = (240 - 187 + off[2] - off[1]) / (187 + off[1] - off[0])
    outside.solved(f"doubt of 187 g and 53 g on a 1 g scale with ±{own} g of its own",
            "Monte Carlo, JCGM 101:2008, 400 000 draws of numpy from rectangles", float(np.std(ratio) / np.mean(ratio)),
            weighing.worst_uncertainty((187, 53), weighing.doubted_step(1, own)), rel=0.01)


def test_a_scales_own_error_counts_where_the_scale_is_doubted_and_is_said():
    def asked(move, **scale):
        label = {"by_weight": "345:98"}
        found = moves.answer(move, {"amount": "240 g", "way": "scale", "system": label, "scale": scale})
        assert found["errors"] == []
        return {one["name"]: one for one in found["lines"]}

    plain, guessed, wide = (asked("measure", step="1 g", **own)
                            for own in ({"own_error": "0 g"}, {}, {"own_error": "1 g"}))
    assert plain["spread"]["rough"].endswith("and its own error of ±0 g")
    assert guessed["spread"]["rough"].endswith("and its own error of ±0.500 g; own error: our estimate")
    assert wide["spread"]["rough"].endswith("and its own error of ±1.00 g")
    assert guessed["spread"]["value"] == pytest.approx(plain["spread"]["value"] * 2 ** 0.5)
    assert wide["spread"]["value"] == pytest.approx(plain["spread"]["value"] * 5 ** 0.5)
    assert guessed["smallest"]["value"] == plain["smallest"]["value"], "a guess makes nobody mix more"
    assert wide["smallest"]["value"] > 2 * plain["smallest"]["value"] and "too_small" in wide


def test_what_is_guessed_of_a_scale_is_half_of_what_the_law_allows_in_use(outside):
    """Directive 90/384/EEC (now 2014/31/EU), Annex I, 4.1 and 4.2, as UK SI 1995/1907, schedule 2, prints it: class
    III, to 500 steps, 0.5 step when verified, corrected for rounding, and twice of it in use."""
    outside.printed("scale's own error guessed", "SI 1995/1907, schedule 2, 4.1 and 4.2: class III, up to 500 e, in "
                    "use 1.0 e; half of it", 0.5 * (2 * 0.5), ratio_doubt.own_error({"step": 1.0}))


@pytest.mark.parametrize(("step", "own"), [("20 g", "20 g"), ("20 g", "60 g"), ("100 g", "300 g"), ("3 oz", "10 oz")])
def test_a_coarse_scale_may_be_off_by_three_of_its_steps(step, own):
    """Old main: no more than 10 g could be typed, half a step of a scale that shows 20 g. In service a verified scale
    may be off by as much as three steps (OIML R 76-1, 3.5, from memory: twice one and a half)."""
    found = moves.answer("measure", {"amount": "9 kg", "way": "scale", "system": {"by_weight": "345:98"},
                                     "scale": {"step": step, "own_error": own}})
    assert found["errors"] == []
    spread = next(one for one in found["lines"] if one["name"] == "spread")
    assert "its own error of" in spread["rough"]

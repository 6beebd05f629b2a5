"""Calibration: the builder's own batches move the dose; shrinkage, spread, outliers, contradictions."""
import itertools
from math import exp, log

import numpy as np
import pytest
from covemix.shared.door import moves
from covemix.shared.equations.dose_calibration import (
    BATCH_DEVIATION,
    BATCH_WORTH,
    DEFAULT_DEVIATION,
    calibrated,
    middle,
    standing_out,
)
from hypothesis import given, settings
from hypothesis import strategies as st


def batch(mixed, used, came_out="stands", **more):
    return dict({"mixed": str(mixed), "before": "500", "after": str(500 - used), "came_out": came_out}, **more)


def answered(batches, **typed):
    weighed = {"by_weight": "345:98", "densities": "1.15:0.98"}  # 100 g, where syringes draw whole marks
    return moves.answer("thicken", dict({"thicken": "yes", "amount": "100", "batches": batches, "system": weighed},
                                        **typed))


def lines(batches, **typed):
    found = answered(batches, **typed)
    assert found["errors"] == []
    return {one["name"]: one for one in found["lines"]}


@pytest.mark.parametrize("ratios", [(1.3,), (1.1, 1.2), (1.2, 1.25, 1.3, 1.22), (0.8,) * 6])
def test_the_shrunk_dose_is_the_posterior_of_a_normal_mean(ratios):
    """numpy on a fine grid: prior times likelihood of log dose, its mean and deviation by summation, not by formula."""
    logs = np.log(ratios)
    scatter = ((logs - logs.mean()) ** 2).sum()
    variance = (BATCH_WORTH * BATCH_DEVIATION**2 + scatter) / (BATCH_WORTH + len(ratios) - 1)
    grid = np.linspace(-1.5, 1.5, 300_001)
    weight = -grid**2 / (2 * DEFAULT_DEVIATION**2)
    for value in logs:
        weight = weight - (value - grid) ** 2 / (2 * variance)
    weight = np.exp(weight - weight.max())
    weight /= weight.sum()
    mean = (grid * weight).sum()
    deviation = np.sqrt(((grid - mean) ** 2 * weight).sum())
    found = calibrated(ratios)
    assert log(found.factor) == pytest.approx(mean, rel=1e-6)
    assert found.spread == pytest.approx(exp(2 * deviation) - 1, rel=1e-6)


def test_a_default_off_by_30_percent_is_a_rectangular_spread():
    """JCGM 100:2008, 4.3.7: half-width a gives the standard deviation a / sqrt(3); numpy's uniform draw agrees."""
    drawn = np.random.default_rng(7).uniform(-0.3, 0.3, 400_000)
    assert pytest.approx(drawn.std(), rel=0.005) == DEFAULT_DEVIATION


@settings(max_examples=150, deadline=None)
@given(st.lists(st.floats(0.5, 2), min_size=1, max_size=12))
def test_the_dose_lies_between_the_table_and_the_own_batches_and_the_spread_never_grows(ratios):
    found = calibrated(ratios, ["yes"] * len(ratios))
    mean = sum([log(ratio) for ratio in ratios]) / len(ratios)
    low, high = min(0, mean), max(0, mean)
    assert low - 1e-12 <= log(found.factor) <= high + 1e-12
    assert found.spread <= calibrated(()).spread + 1e-12


def test_the_median_is_numpys():
    for numbers in ((3, 1, 2), (1, 2, 3, 10), (5,), (2.5, 2.5, -1, 7, 0.1, 3)):
        assert middle(numbers) == np.median(numbers)


def test_six_batches_move_the_dose_step_by_step_towards_the_own_figure():
    """A builder whose wood flour takes 20 % more than the table (constructed): 45.6 g for 100 g instead of 38."""
    history = [batch(100, used) for used in (45.0, 46.5, 45.2, 46.0, 45.4, 45.5)]
    doses = [lines(history[:count])["filler"]["value"] * 1000 for count in range(7)]
    assert doses[0] == pytest.approx(38)
    assert all(later > earlier for earlier, later in itertools.pairwise(doses))
    assert [abs(dose - 45.6) for dose in doses][6] < 0.5
    assert abs(doses[1] - 45.6) < abs(doses[0] - 45.6)
    assert "6 own batches" in lines(history)["filler"]["rough"]
    assert "30%" in lines([])["filler"]["rough"]


def test_batches_of_another_stiffness_count_for_this_one():
    """The table's column goes before the ratio: 25 g of 25 g (clings) says the same as 38 of 38."""
    assert lines([batch(100, 25, "clings")])["own"]["value"] == pytest.approx(0, abs=1e-12)
    assert lines([batch(100, 30, "clings")])["own"]["value"] > 0.1


def test_an_outlier_is_questioned_left_out_and_counts_again_when_the_builder_says_so():
    usual = [batch(100, used) for used in (38, 39, 40, 38.5)]
    found = lines([*usual, batch(100, 90)])
    assert found["odd_5"]["rank"] == "ask"
    assert found["batch_5"]["rough"] == "left out"
    assert found["filler"]["value"] == pytest.approx(lines(usual)["filler"]["value"])
    kept = lines([*usual, batch(100, 90, count="yes")])
    assert "odd_5" not in kept
    assert kept["filler"]["value"] > 1.05 * found["filler"]["value"]


def test_a_batch_can_be_left_out_by_hand():
    found = lines([batch(100, 45), batch(100, 30, count="no")])
    assert found["filler"]["value"] == lines([batch(100, 45)])["filler"]["value"]
    assert found["batch_2"]["rough"] == "left out"


def test_two_that_contradict_are_both_kept_and_questioned():
    assert standing_out([log(0.8), log(1.6)]) == []
    found = lines([batch(100, 30), batch(100, 60)])
    assert found["contradiction"]["rank"] == "ask"
    assert "100% more" in found["contradiction"]["text"]
    assert "contradiction" not in lines([batch(100, 38), batch(100, 42)])


def test_a_first_batch_far_from_the_table_is_questioned():
    assert "contradiction" in lines([batch(100, 100)])


def test_a_tub_that_grew_or_shrank_beyond_sense_is_refused_at_its_row():
    for used in (0, -20, 450):
        found = answered([batch(100, 38), batch(100, used)])["errors"]
        assert [one["field"] for one in found] == ["batches.1.after"]


def test_every_batch_stands_in_sight():
    found = lines([batch(100, 38), batch(120, 50), batch(80, 33)])
    assert [found["batch_" + str(n)]["value"] for n in (1, 2, 3)] == pytest.approx([0.38, 50 / 120, 33 / 80])

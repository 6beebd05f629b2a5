"""Cut lists against scipy's mixed-integer solver on generated cases."""
import random
from math import ceil

import numpy as np
import pytest
from covemix.shared.equations import cutting
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.optimize import Bounds, LinearConstraint, milp


def by_milp(pieces, roll, remnants, most_rolls):
    """scipy.optimize.milp (HiGHS): fewest rolls first, then the least length on rolls. Returns (rolls, mm on rolls)."""
    bins = list(remnants) + [roll] * most_rolls
    n, m, r = len(pieces), len(bins), len(remnants)
    # x[i, j]: piece i from stock j; y[k]: roll k is opened
    cost = np.zeros(n * m + most_rolls)
    for i in range(n):
        for j in range(r, m):
            cost[i * m + j] = pieces[i]
    cost[n * m:] = sum(pieces) + 1
    rows, low, high = [], [], []
    for i in range(n):
        row = np.zeros(len(cost))
        row[i * m:(i + 1) * m] = 1
        rows.append(row), low.append(1), high.append(1)
    for j in range(m):
        row = np.zeros(len(cost))
        for i in range(n):
            row[i * m + j] = pieces[i]
        if j >= r:
            row[n * m + j - r] = -roll
        rows.append(row), low.append(-np.inf), high.append(bins[j] if j < r else 0)
    found = milp(cost, constraints=LinearConstraint(np.array(rows), low, high), integrality=np.ones(len(cost)),
                 bounds=Bounds(0, 1), options={"mip_rel_gap": 0})
    assert found.success
    rolls = round(found.x[n * m:].sum())
    on_rolls = sum(pieces[i] for i in range(n) for j in range(r, m) if found.x[i * m + j] > 0.5)
    return rolls, on_rolls


def lawful(found, pieces, roll, remnants):
    """Every piece cut once, no stock cut longer than it is or twice."""
    assert sorted(place for each in found.cuts for place in each.pieces) == list(range(len(pieces)))
    stock = [(each.stock, each.place) for each in found.cuts]
    assert len(set(stock)) == len(stock)
    for each in found.cuts:
        assert sum(pieces[place] for place in each.pieces) <= each.length
        assert each.length == (roll if each.stock == "roll" else remnants[each.place])
    on_rolls = sum(pieces[place] for each in found.cuts if each.stock == "roll" for place in each.pieces)
    assert on_rolls == found.from_rolls
    assert found.rolls == sum(each.stock == "roll" for each in found.cuts)


@settings(max_examples=25, deadline=None)
@given(st.lists(st.integers(3, 30), min_size=1, max_size=8), st.lists(st.integers(4, 60), max_size=3))
def test_small_lists_are_cut_as_the_solver_cuts_them(lengths, leftovers):
    """scipy.optimize.milp on generated lists with rolls hardly longer than the pieces: the hardest kind."""
    pieces, roll = [100 * length for length in lengths], 4500
    remnants = [100 * length for length in leftovers]
    found = cutting.cut(pieces, roll, remnants, effort=50000)
    lawful(found, pieces, roll, remnants)
    assert found.proven
    assert (found.rolls, found.from_rolls) == by_milp(pieces, roll, remnants, ceil(sum(pieces) / roll) + 3)


def test_one_list_is_cut_as_the_solver_cuts_it(outside):
    """scipy.optimize.milp (HiGHS): rolls, and what is cut from them beside two remnants."""
    pieces, remnants = [1750, 1750, 1550, 1550, 1480, 1480, 970, 800, 450, 450], [2000, 3100]
    found = cutting.cut(pieces, 4500, remnants, effort=50000)
    outside.solved("boat cut list", "scipy.optimize.milp (library), HiGHS", list(by_milp(pieces, 4500, remnants, 5)),
            [found.rolls, found.from_rolls])


@settings(max_examples=15, deadline=None)
@given(st.lists(st.integers(700, 2500), min_size=4, max_size=12),
       st.lists(st.integers(600, 5200), min_size=1, max_size=3))
def test_a_boat_is_cut_as_the_solver_cuts_it(pieces, remnants):
    """scipy.optimize.milp; a roll of 50 m and a few remnants, any millimetre: what a builder has at hand."""
    found = cutting.cut(pieces, 50000, remnants, effort=20000)
    lawful(found, pieces, 50000, remnants)
    rolls, on_rolls = by_milp(pieces, 50000, remnants, 1)
    if found.proven:
        assert (found.rolls, found.from_rolls) == (rolls, on_rolls)
    assert found.least_from_rolls <= on_rolls <= found.from_rolls
    assert found.least_rolls <= rolls <= found.rolls


@pytest.mark.parametrize("seed", range(8))
def test_generated_cut_lists_are_as_good_as_the_solver_finds_them(outside, seed):
    """scipy.optimize.milp (HiGHS) on lists drawn by a seed, so that what was compared can be looked up."""
    draw = random.Random(seed)
    pieces = [draw.randint(7, 25) * 100 for _ in range(draw.randint(5, 10))]
    roll, remnants = draw.choice((4500, 6000, 25000)), [draw.randint(6, 40) * 100 for _ in range(draw.randint(0, 3))]
    found = cutting.cut(pieces, roll, remnants, effort=50000)
    lawful(found, pieces, roll, remnants)
    assert found.proven
    outside.solved(f"cut list {seed}: rolls, mm from rolls", "scipy.optimize.milp (library)",
            by_milp(pieces, roll, remnants, ceil(sum(pieces) / roll) + 3), (found.rolls, found.from_rolls))


@settings(max_examples=40, deadline=None)
@given(st.lists(st.integers(500, 2500), min_size=1, max_size=80), st.lists(st.integers(400, 6000), max_size=6))
def test_what_is_told_of_a_large_list_is_true(pieces, remnants):
    """Bounds and sums only: the lower bounds stand below what was found, and every cut is lawful."""
    found = cutting.cut(pieces, 25000, remnants)
    lawful(found, pieces, 25000, remnants)
    assert found.least_rolls <= found.rolls
    assert sum(pieces) - sum(remnants) <= found.from_rolls
    if found.proven:
        assert found.least_from_rolls == found.from_rolls
    elif found.rolls == found.least_rolls:
        assert found.least_from_rolls < found.from_rolls
    assert cutting.cut(pieces, 25000, remnants) == found  # the same again


def test_the_search_gives_up_honestly():
    """With no effort allowed the first good cut stands, and it is not called the best unless a bound says so."""
    pieces, remnants = [2100, 1900, 1800, 1700, 1500, 1300, 1100], [5000, 4000]
    hasty = cutting.cut(pieces, 6000, remnants, effort=0)
    best = cutting.cut(pieces, 6000, remnants, effort=50000)
    lawful(hasty, pieces, 6000, remnants)
    assert (best.rolls, best.from_rolls) <= (hasty.rolls, hasty.from_rolls)
    assert hasty.least_from_rolls <= best.from_rolls
    assert best.proven


def test_nothing_to_cut():
    assert cutting.cut([], 5000, [1000]).cuts == ()


@pytest.mark.parametrize(("pieces", "length", "expected"), (([5, 5, 5], 11, 10), ([7, 4, 3], 10, 10), ([8], 5, 0)))
def test_the_fullest_filling(pieces, length, expected):
    """Worked by hand."""
    assert sum(pieces[place] for place in cutting.fullest(pieces, length)) == expected


def test_long_remnants_are_filled_whole_and_cheaply():
    """Twelve remnants of 80 m and 180 unlike pieces took 400 ms of a phone's engine: each sum of them is a bit."""
    pieces = [1000 + 7 * place for place in range(180)]
    found = cutting.cut(pieces, 50000, [30000 - place for place in range(9)] + [12000])
    cut_off = sorted(place for each in found.cuts for place in each.pieces)
    assert cut_off == list(range(180))
    for each in found.cuts:
        assert sum(pieces[place] for place in each.pieces) <= each.length
        if each.stock == cutting.REMNANT:
            assert sum(pieces[place] for place in each.pieces) > each.length - 7  # no piece is a better fit
    assert found.least_from_rolls <= found.from_rolls


@pytest.mark.parametrize("length", [10001, 23456, 80000])
def test_the_sums_of_a_long_remnant_are_no_longer_than_its_end(monkeypatch, length):
    seen, top = [], cutting.top_bit
    monkeypatch.setattr(cutting, "top_bit", lambda number: seen.append(number.bit_length()) or top(number))
    places = cutting.fullest(sorted([3000 + 7 * place for place in range(60)], reverse=True), length)
    assert seen and max(seen) <= cutting.LONG + 1 and len(set(places)) == len(places)

"""Hot pot: how hot a mass gets that is left in its container, and how much of it stays calm."""
import json
import re
from math import ceil

import pytest
from covemix.shared.catalogue.pots import SIZES
from covemix.shared.clock import heat
from covemix.shared.clock.hot_pot import (
    BIG,
    BIG_WARM,
    RUNS_AWAY,
    largest_calm_mass,
    largest_pot,
    peak_temperature,
)
from covemix.shared.door.call import call
from covemix.shared.equations.runaway import SEMENOV
from covemix.shared.forms import inputs


def system(name="3-1", **typed):
    values, errors = inputs.read(heat.INPUTS, {"system": dict(typed) if typed else name, "air": "20"})
    assert not errors
    return values["system"]


@pytest.mark.parametrize("container", ["cup", "bag", "tray", "roll"])
@pytest.mark.parametrize("celsius", [8, 20, 30])
def test_the_largest_calm_mass_is_the_last_whose_peak_stays_below_the_limit(container, celsius):
    air = celsius + 273.15
    mass = largest_calm_mass(system(), container, air)
    if mass:
        assert peak_temperature(system(), mass, container, air) < RUNS_AWAY
    assert peak_temperature(system(), (mass or 0.005) * 1.02 + 0.001, container, air) >= RUNS_AWAY


def test_warmer_is_less_and_a_tray_holds_more_than_a_bag_or_a_cup():
    masses = [largest_calm_mass(system(), "bag", celsius + 273.15) for celsius in (8, 14, 20, 26)]
    assert masses == sorted(masses, reverse=True)
    assert masses[0] > masses[-1]
    cup, bag, tray = [largest_calm_mass(system(), kind, 288.15) for kind in ("cup", "bag", "tray")]
    assert cup < bag < tray
    assert largest_calm_mass(system(), "tray", 288.15, sizes=dict(SIZES, tray_length=0.6)) > 1.5 * tray
    assert largest_calm_mass(system(), "bag", 288.15, filler=0.3) > bag
    assert largest_calm_mass(system(), "bag", 288.15, moving="moving") > bag
    assert largest_calm_mass(system(), "bag", 278.15, resin=308.15) < largest_calm_mass(system(), "bag", 278.15)


def test_semenov_calls_the_same_pots_calm(outside):
    """Semenov (1928), no reactant used up: a pot whose number stays below 1/e with its fastest rate cannot run away."""
    from covemix.shared.clock.heat_model import mixed_resin
    from covemix.shared.clock.peak_band import corners
    from covemix.shared.clock.pot_heat import HOT_END, pot
    from covemix.shared.equations.kinetics import fastest_rate, rate_factor
    from covemix.shared.equations.runaway import semenov_number
    air = 283.15
    known = []  # at the hot end, by which the calm mass goes
    for rates in corners({"system": system(), "timings": ()}, HOT_END):
        factor = rate_factor(rates.grown_energy, air, rates.reference)
        known.append((rates.grown_energy, fastest_rate(rates.first * factor, rates.grown * factor)))

    def number(mass):
        here = pot("tray", mass, SIZES, mixed_resin(system()), 0.0, air, air, end=HOT_END)
        return max(semenov_number(energy, here.rise, here.loss, rate, air) for energy, rate in known)

    bound = max(mass / 1000 for mass in range(10, 3000, 10) if number(mass / 1000) < SEMENOV)
    assert bound <= largest_calm_mass(system(), "tray", air)
    outside.own("hot pot, Semenov's bound lies below the calm mass", "Semenov, Z. Phys. 48 (1928) 571", 1.0,
            float(bound <= largest_calm_mass(system(), "tray", air)), rel=0)


def test_a_plan_may_fill_a_pot_as_far_as_the_trade_does_not_call_it_big():
    assert largest_pot(system(), "bag", 293.15) == BIG
    assert largest_pot(system(), "bag", 303.15) == BIG_WARM
    assert largest_pot(system(), "bag", 293.15, resin=303.15) == BIG_WARM
    cold = largest_calm_mass(system(), "tray", 278.15)
    assert largest_pot(system(), "tray", 278.15) == cold > BIG
    assert largest_pot(system(by_weight="100:30"), "bag", 293.15) == BIG


def screen(name, *pairs):
    return json.loads(call(json.dumps({"screen": name, "pairs": [list(pair) for pair in pairs]})))


LABEL = [("system.by_weight", "100:30"), ("system.densities", "1.15:0.98"), ("system.pot_time", "30"),
         ("system.pot_mass", "100"), ("system.pot_temperature", "25")]


def test_the_live_caution_warns_of_a_pot_that_can_run_away_long_before_it_is_big():
    """The mass whose peak may pass 100 degC, at the hot end of the band, in place of 300 g; whichever warns earlier."""
    small, pot, big = [screen("pour", *LABEL, ("amount", amount), ("air", "20"))["caution"]
                       for amount in ("9 g", "120 g", "320 g")]
    assert "left in one pot" not in small
    assert pot == "Gloves and goggles on before you open a can. 120 g left in one pot can smoke and burn."
    assert big.startswith("A big batch. 320 g")


@pytest.mark.parametrize("celsius", ["8", "14", "20"])
def test_the_live_caution_goes_by_the_peak_for_this_mass_container_and_air(celsius):
    """Where the hot end of the clock's own peak passes 100 degC the caution stands, and nowhere below it."""
    for container in ("cup", "bag", "tray"):
        for grams in (15, 32, 60, 100, 250):
            told = screen("clock", *LABEL, ("batch", f"{grams} g"), ("container", container), ("air", celsius))
            peak = next(row["value"] for row in dict(told["answers"])["heat"]["lines"] if row["name"] == "peak")
            if container in ("cup", "bag"):
                assert ("left in one pot" in told["caution"]) == (peak >= RUNS_AWAY)


def test_who_thickens_is_told_of_the_mask_and_of_the_hot_pot():
    told = screen("pour", *LABEL, ("amount", "150 g"), ("air", "20"), ("thicken", "yes"))["caution"]
    assert "left in one pot" in told and "ask" in told


def test_the_plan_warns_of_its_bags_by_their_peak():
    piece = [("pieces.0.length", "1"), ("pieces.0.putty", "100"), ("pieces.0.wet", "60"), ("temperature", "22"),
             ("smallest", "10 g")]
    assert screen("plan", *LABEL, *piece)["caution"].endswith("left in one pot can smoke and burn.")


PUMPED = [("system.by_volume", "2:1"), ("way", "pumps")]  # as on most labels: no densities
OVERSHOT = [("readings.0.shown", "400 g")]
WRONG = [("rescue", "yes"), ("in_cup.0.mass", "300"), ("in_cup.1.mass", "50")]


@pytest.mark.parametrize(("pour", "grams"), [
    ([*LABEL, ("amount", "290 g")], 290),
    ([*LABEL, ("amount", "240 g"), ("thicken", "yes")], 240),
    ([*LABEL, ("amount", "280 mL"), ("amount_is", "putty")], None),
    ([*LABEL, ("amount", "240 g"), *OVERSHOT], 520),
    ([*LABEL, ("amount", "240 g"), ("thicken", "yes"), *OVERSHOT], 520),
    ([*PUMPED, ("amount", "1 L")], None),
])
def test_what_a_cup_holds_is_the_same_mass_in_the_caution_of_a_pour_and_of_its_clock(pour, grams):
    """Filler, what was really poured, a volume whose densities nobody typed: all that is in the cup counts, on both.

    grams: of resin and hardener, by hand: 400 : 100 x 130; the filler comes on top
    """
    told = screen("pour", *pour, ("air", "20"))
    dose = [row["value"] for _, answer in told["answers"] for row in answer["lines"] if row["name"] == "dose"] or [0.0]
    leads = [one for _, answer in told["answers"] for one in answer["leads"] if one["label"] == "Start the clock"]
    said = re.search(r"(\d+) g (left in one pot|in one cup)", told["caution"])
    assert said, told["caution"]
    if grams:
        assert int(said[1]) == pytest.approx(grams * (1 + dose[0]), abs=1)
    for lead in leads:
        clock = screen("clock", *[pair for pair in lead["pairs"] if pair[0] != "pot.started"])["caution"]
        again = re.search(r"(\d+) g (left in one pot|in one cup)", clock)
        assert again and int(again[1]) == pytest.approx(int(said[1]), abs=1) and again[2] == said[2]


def test_a_litre_of_a_label_by_volume_is_a_big_pot():
    """Without densities: it weighs at least a kilogram (SCIENCE: epoxy is denser than water)."""
    assert screen("pour", *PUMPED, ("amount", "1 L"))["caution"].startswith("A big batch. 1")


def test_a_pour_that_went_wrong_counts_what_it_comes_to():
    """300 and 50 g come back into 100 : 30 as 390 g, plain proportion; with 40 g of filler in it, 434."""
    plain = screen("pour", *LABEL, ("amount", "100 g"), *WRONG)["caution"]
    assert plain.startswith("A big batch. 390 g")
    filled = screen("pour", *LABEL, ("amount", "100 g"), *WRONG, ("filler_in", "40 g"))["caution"]
    assert filled.startswith(f"A big batch. {ceil(390 * (1 + 40 / 350))} g")


@pytest.mark.parametrize("more", [[("thicken", "yes")], [("system.statements", "H334")]])
def test_a_big_pot_hides_no_mask_and_is_hidden_by_no_code(more):
    small, big = [screen("pour", *LABEL, ("amount", amount), *more)["caution"] for amount in ("150 g", "600 g")]
    assert big.partition(". ")[0] == small.partition(". ")[0]
    assert big.endswith("g in one cup can smoke.") and small.endswith("left in one pot can smoke and burn.")


@pytest.mark.parametrize("filler", ["0", "35"])
def test_the_plan_counts_what_one_bag_or_cup_holds_with_its_filler(filler):
    """One mix of putty alone: the largest mix is the caution's mass and never more than the trade calls big."""
    piece = [("pieces.0.length", "4"), ("pieces.0.putty", "250"), ("pieces.0.wet", "0"), ("temperature", "20"),
             ("filler", filler), ("smallest", "20 g")]
    told = screen("plan", *LABEL, *piece)
    largest = next(row["value"] for row in dict(told["answers"])["plan"]["lines"] if row["name"] == "largest")
    assert largest <= BIG + 1e-9
    assert f"{ceil(largest * 1000 - 1e-6)} g " in told["caution"]

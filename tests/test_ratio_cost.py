"""What a wrong ratio costs: the gel limit and what binds to nothing, against networks that are built at random."""
import numpy as np
import pytest
from covemix.shared.catalogue.ratios import AIM, LOST_PER_PERCENT, STOP
from covemix.shared.door import moves
from covemix.shared.equations.ratio_cost import gel_conversion, sol_fraction
from scipy.sparse import coo_matrix
from scipy.sparse.csgraph import connected_components

BUILT = "random networks of 400 000 molecules (numpy, scipy.sparse.csgraph), each scarcer end bound to a random other"
FLORY = "Flory, Principles of Polymer Chemistry (1953), IX: the product of both extents is 1/3 for A4 and B2"


def built(ratio, conversion=1.0):
    """(share of the resins outside the largest molecule, the same of the hardeners, share of all inside it).

    ratio: hydrogens to epoxides; conversion: of the scarcer ends
    """
    dice = np.random.default_rng(6)
    resins = 260_000
    hardeners = round(2 * resins * ratio / 4)
    bonds = int(conversion * min(2 * resins, 4 * hardeners))
    ends = dice.permutation(2 * resins)[:bonds] // 2
    hydrogens = dice.permutation(4 * hardeners)[:bonds] // 4
    whole = resins + hardeners
    _, found = connected_components(
        coo_matrix((np.ones(bonds), (ends, resins + hydrogens)), (whole, whole)), directed=False)
    inside = found == np.bincount(found).argmax()
    return 1 - inside[:resins].mean(), 1 - inside[resins:].mean(), inside.mean()


@pytest.mark.parametrize("ratio", [0.6, 0.8, 0.9, 0.95])
def test_too_little_hardener_leaves_resin_unbound(outside, ratio):
    """Four standard deviations of the count, the smallest of which is some 1e-4."""
    outside.own(f"sol of the resin at {ratio}", BUILT, built(ratio)[0], sol_fraction(ratio, 0.0), absolute=2e-3)


@pytest.mark.parametrize("ratio", [1.1, 1.25, 1.5])
def test_too_much_hardener_leaves_hardener_unbound(outside, ratio):
    outside.own(f"sol of the hardener at {ratio}", BUILT, built(ratio)[1], sol_fraction(ratio, 1.0), absolute=2e-3)


def test_it_gels_where_the_largest_molecule_appears(outside):
    outside.worked("gel of A4 and B2", FLORY, (1 / 3) ** 0.5, gel_conversion(1.0))
    limit = gel_conversion(1.0)
    assert built(1.0, 0.93 * limit)[2] < 0.02 and built(1.0, 1.07 * limit)[2] > 0.1
    for ratio in (0.32, 0.34):  # short of hardener all of which reacts: from a third on it gels
        assert (gel_conversion(ratio) <= ratio) is (ratio > 1 / 3)
    assert sol_fraction(0.3, 0.2) == sol_fraction(3.1, 0.2) == 1.0


def cost_of(hardener):
    """Its line and the whole answer, of so many grams to 200 of resin at 100 : 30."""
    typed = {"system": {"by_weight": "100:30"}, "way": "scale", "scale": {"step": "0.1 g"}, "amount": "260 g",
             "readings": [{"shown": "200"}, {"shown": str(200 + hardener)}]}
    found = moves.answer("measure", typed)
    assert found["errors"] == []
    return next((line for line in found["lines"] if line["name"] == "ratio_cost"), None)


def test_the_verdict_says_what_it_costs_its_worst_end_first():
    short, over = cost_of(57), cost_of(63)
    assert short["text"] == "softening point up to 10 °C lower" and short["value"] == pytest.approx(10.0)
    assert "usually 5 °C" in short["rough"] and "Up to 0.3% of the resin never binds" in short["rough"]
    assert "no heat can cure" in short["rough"] and "blush" in over["rough"]
    assert "From memory" in short["rough"] and "No table of strength" in short["rough"]
    assert cost_of(60) is None


def test_an_error_beyond_what_is_known_is_told_no_usual_loss():
    """Old main: "at least 40 degC lower, usually 20 degC, at least 10 degC", one against the other."""
    for hardener in (40, 80):
        told = cost_of(hardener)
        assert told["text"] == "softening point over 40 °C lower at worst"
        assert told["rough"].startswith("20% off already costs usually 20 °C, at least 10 °C. Up to ")


def test_the_limits_of_a_ratio_are_tied_to_what_they_cost():
    rows = moves.answer("sources", {"find": "glass temperature lost"})["lines"]
    told = " ".join(line["label"] + line["text"] + line["rough"] for line in rows)
    assert "from memory" in told
    for limit in (AIM, STOP):
        assert f"{limit * 100 * max(LOST_PER_PERCENT):.0f}" in told

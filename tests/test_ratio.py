"""Ratio: stoichiometry and densities against published values, mass balance, and what a label may say."""

import chemicals
import numpy as np
import pytest
from covemix.shared.catalogue.containers import MATTER
from covemix.shared.door import moves
from covemix.shared.mix import ratio
from hypothesis import given
from hypothesis import strategies as st

DENSITY = "ISO 80000-4, definition of density: m = rho V"
LEE = "Lee & Neville, Handbook of Epoxy Resins (1967), equivalent-weight arithmetic"


def asked(system="", amount="240", **typed):
    return moves.answer("ratio", dict({"system": system, "amount": amount}, **typed))


def answered(*given, **typed):
    found = asked(*given, **typed)
    assert found["errors"] == []
    return {line["name"]: line for line in found["lines"]}


def refused(*given, **typed):
    found = asked(*given, **typed)
    assert found["lines"] == []
    return {error["field"]: error["message"] for error in found["errors"]}


# stoichiometry -------------------------------------------------------------------------------------------------------


def test_diethylenetriamine_by_the_book(outside):
    """A chemistry encyclopedia on epoxy hardeners: MW 103, five active H, equivalent 20.6, 10.3 parts on EEW 200."""
    source = "chemistry encyclopedia, epoxy hardeners: MW 103, five active hydrogens, EEW 200"
    outside.printed("st-1", source, 20.6, ratio.amine_equivalent(103, 5))
    outside.printed("st-1 phr", source, 10.3, ratio.stoichiometric_phr(20.6, 200))


def test_p_xylylenediamine_by_its_data_sheet(outside):
    """Published data sheet: AHEW 34.0 on EEW 190 is 17.9 phr (three digits)."""
    outside.printed(
        "st-2",
        "p-xylylenediamine, published data sheet: AHEW 34.0, EEW 190, 17.9 phr",
        17.9,
        ratio.stoichiometric_phr(34, 190),
        absolute=0.05,
    )


def test_a_blend_with_filler_counts_all_of_its_mass(outside):
    """Published worked example: blend 80/10/10, the last a filler: EEW 209, with AHEW 43 20.6 phr (three digits)."""
    source = "published worked example, blend 80/10/10 with filler: EEW 209, 20.6 phr"
    eew = ratio.blend_equivalent((80, 10, 10), (189, 183, None))
    outside.printed("st-3", source, 209, eew, absolute=0.5)
    outside.printed("st-3 phr", source, 20.6, ratio.stoichiometric_phr(43, eew), absolute=0.05)


def test_triethylenetetramine_on_a_common_resin(outside):
    """Lee & Neville (1967): TETA, six active H, on EEW 190; 13 phr in a published DSC paper (two digits)."""
    outside.worked("st-4", LEE, 12.8275438596, ratio.stoichiometric_phr(ratio.amine_equivalent(146.234, 6), 190),
            rel=1e-6)
    outside.printed(
        "st-4 paper",
        "published DSC study of DGEBA and TETA: 13 phr is stoichiometric",
        13,
        ratio.stoichiometric_phr(ratio.amine_equivalent(146.234, 6), 190),
        absolute=0.5,
    )


@pytest.mark.parametrize("cas, active, weight", [("111-40-0", 5, 20.6), ("112-24-3", 6, 24.37)])
def test_molar_masses_are_those_of_a_chemical_library(outside, cas, active, weight):
    """chemicals, a general-purpose library of published constants: molar masses of DETA and TETA by CAS number."""
    outside.library(
        "st molar " + cas,
        "chemicals (library), molar mass by CAS number; equivalent from Lee & Neville (1967)",
        weight,
        ratio.amine_equivalent(chemicals.MW(cas), active),
        absolute=0.05,
    )


def test_the_label_is_held_against_the_chemistry_where_both_weights_are_known():
    label = {"by_weight": "100:13", "eew": "190", "ahew": "24.37"}
    assert answered(label)["stoichiometry"]["value"] == pytest.approx(13 / (100 * 24.37 / 190))
    assert "stoichiometry_off" not in answered(label)
    assert answered(label)["stoichiometry"]["text"] == "101% of 12.8 phr"
    assert answered({**label, "by_weight": "100:40"})["stoichiometry_off"]["rank"] == "ask"
    by_volume = answered({"by_volume": "3:1", "eew": "190", "ahew": "24"}, "240 mL")
    assert "density" in by_volume["stoichiometry"]["text"]


# weight and volume ---------------------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    "check, parts, resin, hardener, phr",
    [("ra-1", 2, 1.15, 0.97, 42.17391), ("ra-2", 5, 1.16, 1.03, 17.75862), ("ra-3", 1, 1.17, 0.98, 83.76068)],
)
def test_parts_by_volume_become_parts_by_weight(outside, check, parts, resin, hardener, phr):
    """Definition of density, ISO 80000-4; values computed from it, from memory."""
    outside.worked(check, DENSITY, phr, ratio.phr_by_volume(parts, 1000 * resin, 1000 * hardener), rel=1e-6)
    label = {"by_volume": f"{parts}:1", "densities": f"{resin}:{hardener}"}
    outside.worked(check + " on the screen", DENSITY, phr, answered(label)["phr"]["value"], rel=1e-6)


def test_parts_by_weight_become_parts_by_volume_and_a_density(outside):
    """Definition of density, ISO 80000-4; values computed from it, from memory."""
    found = answered({"by_weight": "100:30", "densities": "1.12:0.98"}, "130")
    outside.worked("ra-4", DENSITY, 1084.255, found["mixed_density"]["value"], rel=1e-6)
    batch = ratio.mix_of_mass({"by_weight": (100, 30), "by_volume": (), "densities": (1120, 980), "parts": ""}, 0.13)
    outside.worked("ra-4 volumes", DENSITY, 2.916667, batch.volumes[0] / batch.volumes[1], rel=1e-6)


LABEL = st.integers(2, 5).flatmap(
    lambda count: st.tuples(
        st.lists(st.floats(0.5, 200), min_size=count, max_size=count),
        st.lists(st.floats(0.5, 3.5), min_size=count, max_size=count),
    )
)


@given(LABEL, st.floats(1, 50000), st.booleans(), st.sampled_from(("total", "part_a", "part_b")), st.booleans())
def test_nothing_is_lost_between_the_parts_and_the_whole(label, amount, by_weight, known, in_grams):
    """Conservation of mass and, for an ideal mix, of volume, with numpy, for two to five parts."""
    parts, densities = label
    basis = "by_weight" if by_weight else "by_volume"
    system = {
        basis: tuple(parts),
        "by_volume" if by_weight else "by_weight": (),
        "parts": "",
        "densities": tuple(1000 * rho for rho in densities),
    }
    batch = ratio.mix(
        {"system": system, "amount": (known, amount / (1e3 if in_grams else 1e6), "mass" if in_grams else "volume")}
    )
    masses, volumes = np.array(batch.masses), np.array(batch.volumes)
    assert masses.sum() == pytest.approx(batch.mass, rel=1e-12)
    assert volumes.sum() == pytest.approx(batch.volume, rel=1e-12)
    assert masses / volumes == pytest.approx(np.array(system["densities"]), rel=1e-12)
    poured = masses if by_weight else volumes
    assert poured / poured[0] == pytest.approx(np.array(parts) / parts[0], rel=1e-12)
    asked_for = {
        "total": (batch.mass, batch.volume),
        "part_a": (masses[0], volumes[0]),
        "part_b": (masses[1], volumes[1]),
    }
    assert asked_for[known][0 if in_grams else 1] * (1e3 if in_grams else 1e6) == pytest.approx(amount, rel=1e-12)


def test_strokes_are_a_volume_of_the_first_part():
    found = answered(
        {"by_volume": "3:1", "densities": "1.15:0.98"}, "6", amount_is="strokes", pumps={"strokes": "10:3.3"}
    )
    assert found["part_a"]["value"] == pytest.approx(6 * 10e-6 * 1150)
    weighed = answered(
        {"by_volume": "3:1", "densities": "1.15:0.98"}, "6", amount_is="strokes", pumps={"ten_strokes": "115:33"}
    )
    assert weighed["part_a"]["value"] == pytest.approx(6 * 0.0115)


def test_100_to_n_and_n_to_1_are_one_notation():
    assert answered({"by_weight": "100:25"})["part_b"]["value"] == pytest.approx(
        answered({"by_weight": "4:1"})["part_b"]["value"]
    )
    assert answered({"by_weight": "4:1"})["by_weight"]["text"] == "100 : 25"


def test_several_parts_are_told_by_the_names_on_the_label():
    found = answered({"by_weight": "100:30:5", "parts": "Base : Curing agent : Accelerator"}, "135")
    assert [found["part_" + place]["label"] for place in "abc"] == ["Base", "Curing agent", "Accelerator"]
    assert [found["part_" + place]["text"] for place in "abc"] == ["100 g", "30.0 g", "5.00 g"]


# labels without densities --------------------------------------------------------------------------------------------


def test_without_densities_the_answer_stays_in_the_basis_of_the_label_and_says_why():
    weight, volume = answered({"by_weight": "100:30"}, "130"), answered({"by_volume": "3:1"}, "400 mL")
    assert (weight["part_a"]["text"], weight["part_a"]["unit"]) == ("100 g", "kg")
    assert (volume["part_a"]["text"], volume["part_a"]["unit"]) == ("300 mL", "m3")
    assert "by weight only" in weight["part_a"]["rough"] and "by volume only" in volume["part_a"]["rough"]
    for found in (weight, volume):
        assert "mixed_density" not in found
    assert "mixed_volume" not in weight and "mixed_mass" not in volume


def test_both_ratios_without_densities_do_not_say_that_one_is_missing():
    found = answered({"by_weight": "100:30", "by_volume": "3:1"}, "130")
    assert found["part_a"]["text"] == "100 g"
    assert found["part_a"]["rough"].startswith("The amount is by weight. For volumes, type the density")


OTHER_BASIS = [({"by_weight": "100:30"}, "100 mL"), ({"by_volume": "3:1"}, "100 g")]


@pytest.mark.parametrize("label, amount", OTHER_BASIS)
def test_an_amount_of_a_part_in_the_other_basis_is_refused_at_the_amount(label, amount):
    """Its density is what the ratio would hang on."""
    for part in ("part_a", "part_b"):
        assert "type the density of each part" in refused(label, amount, amount_is=part)["amount"]


@pytest.mark.parametrize("label, amount", OTHER_BASIS)
def test_an_amount_in_the_other_basis_is_counted_and_the_ratio_stays_the_labels(label, amount):
    """Old main: a label by volume had no answer to the 240 g that the screen begins with."""
    found = answered(label, amount)
    [usual] = [row[1] for row in MATTER if row[0] == "density"]
    share = 100 / 130 if "by_weight" in label else 0.75
    whole = 1e-4 * usual if "by_weight" in label else 0.1 / usual
    assert found["part_a"]["value"] == pytest.approx(share * whole, rel=1e-9)
    assert found["part_b"]["value"] == pytest.approx((1 - share) * whole, rel=1e-9)
    told = found["usual"]
    assert told["rank"] == "ask" and told["rough"] == "own judgement" and f"{usual / 1000:.1f} g/mL" in told["text"]
    assert amount in told["text"] and "The ratio does not depend on that." in told["text"]
    assert "usual" not in answered(label, amount.replace(amount.split()[1], "mL" if "by_volume" in label else "g"))


def test_the_first_screen_answers_a_label_by_volume_at_once():
    """Nothing but the ratio typed, 240 g as the screen begins: by syringes, and no reading of a scale."""
    typed = {"system": {"by_volume": "3:1"}}
    answers = dict(moves.screen("pour", typed)["answers"])
    assert [answer["errors"] for answer in answers.values()] == [[], [], [], []]
    assert [row["name"] for row in answers["measure"]["lines"]][:2] == ["drawn_a", "drawn_b"]
    assert "usual" in [row["name"] for row in answers["ratio"]["lines"]]
    scale = dict(moves.screen("pour", dict(typed, way="scale"))["answers"])["measure"]
    assert [one["field"] for one in scale["errors"]] == ["system.densities"]


@pytest.mark.parametrize(
    "label, field",
    [
        ({"name": "Mine"}, "system.by_weight"),
        ({"by_weight": "3:1", "by_volume": "3:1:1"}, "system.by_volume"),
        ({"by_weight": "3:1", "densities": "1:1:1"}, "system.densities"),
        ({"by_weight": "3:0"}, "system.by_weight"),
    ],
)
def test_a_label_that_does_not_fit_itself_is_refused_at_the_figure_to_change(label, field):
    assert list(refused(label)) == [field]


# questions -----------------------------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    "parts, asked_back", [("1:3", True), ("30:100", True), ("1:1", False), ("3:1", False), ("1:1.2", False)]
)
def test_a_ratio_the_wrong_way_round_is_questioned_and_still_answered(parts, asked_back):
    found = answered({"by_weight": parts})
    assert ("wrong_way" in found) == asked_back
    assert found["part_a"]["value"] > 0
    if asked_back:
        assert found["wrong_way"]["rank"] == "ask"


def test_a_label_that_is_a_little_off_itself_is_asked_back():
    label = {"by_weight": "100:28.4", "by_volume": "3:1", "densities": "1.15:0.98"}
    assert "label_apart" not in answered(label)
    assert answered({**label, "by_weight": "100:29"})["label_apart"]["rank"] == "ask"


def test_how_far_a_label_is_apart_is_told_of_hardener_to_resin_and_rounded_up():
    """By hand: (30/0.98) / (100/1.15) * 3 = 1.05612; the label's own tolerance goes before 2 % and 5 %."""
    label = {"by_weight": "100:30", "by_volume": "3:1", "densities": "1.15:0.98"}
    found = answered({**label, "tolerance": "5.7"}, "240")
    assert "label_apart" not in found  # 5.61 %
    assert "part 2 is 5.7% off" in refused(label)["system.by_volume"]
    found = answered({**label, "by_weight": "100:29"})["label_apart"]
    assert found["value"] == pytest.approx(29 / 0.98 / (100 / 1.15) * 3 - 1)
    assert "Hardener to Resin is 2.1% off" in found["text"]
    assert "label_apart" not in answered({**label, "tolerance": "6"})
    # 100:29 is 2.1 % apart: beyond the 2 % that are aimed at; 100:27 is 4.96 % short, 5.2 % the other way round
    assert "look at" not in answered({**label, "by_weight": "100:29"})["label_apart"]["text"]
    assert "part 2 is 5.3% off" in refused({**label, "by_weight": "100:27"})["system.by_volume"]
    assert answered({**label, "by_weight": "100:27.1"})["label_apart"]["value"] == pytest.approx(0.0482, abs=1e-4)


def test_a_thousand_with_a_comma_is_seen_in_the_answer():
    assert answered("3-1", "1,000")["mixed_mass"]["text"] == "1.00 g"


def test_figures_from_memory_are_marked_and_ones_own_are_not():
    assert "not verified" in answered("3-1")["mixed_volume"]["rough"]
    assert answered({"by_volume": "3:1", "densities": "1.15:0.98"})["mixed_volume"]["rough"] == ""


@pytest.mark.parametrize(("system", "remembered"), [
    ("2-1", True),
    ({"by_volume": "2:1", "densities": "1.15 : 0.98 g/mL", "name": "Mine"}, True),
    ({"id": "2-1", "densities": "1.14 : 0.97"}, False),
    ({"by_volume": "2:1", "densities": "1.14 : 0.97", "name": "Mine"}, False),
])
def test_densities_stay_from_memory_until_they_are_typed(system, remembered):
    # the second one started from a row and left them as they came
    found = {line["name"]: line for line in moves.answer("ratio", {"system": system})["lines"]}
    assert ("not verified" in found["mixed_volume"]["rough"]) is remembered


def test_putty_without_densities_is_refused_with_what_it_needs():
    why = refused({"by_weight": "3:1"}, amount_is="putty", amount="200")["system.densities"]
    assert "the density of each part" in why and "A volume of putty needs them." in why

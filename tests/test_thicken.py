"""Thicken: filler, putty, sag and packing against published values and independent libraries."""
from math import pi, radians, sin

import pytest
from covemix.shared.catalogue import fillers
from covemix.shared.door import moves
from covemix.shared.equations import putty
from covemix.shared.mix.filler_dose import blended_dose
from hypothesis import given, settings
from hypothesis import strategies as st
from pint import UnitRegistry

SYSTEM = {"by_volume": "3:1", "densities": "1.15:0.98"}
MEZGER = "Mezger, The Rheology Handbook, 3.3.4.2.1: tau = a rho g on a vertical wall"
LIQUID = (3 * 1.15 + 0.98) / 4  # g/mL


def answered(**typed):
    return moves.answer("thicken", dict({"thicken": "yes", "system": SYSTEM, "way": "scale", "amount": "100"}, **typed))


def lines(**typed):
    found = answered(**typed)
    assert found["errors"] == []
    return {one["name"]: one for one in found["lines"]}


def errors(**typed):
    return {one["field"]: one["message"] for one in answered(**typed)["errors"]}


# --- sag and suspensions

@pytest.mark.parametrize("density, layer, expected", [(1100, 0.010, 107.8731), (950, 0.006, 55.89791)])
def test_yield_stress_that_holds_a_layer_on_a_wall(outside, density, layer, expected):
    """Mezger, The Rheology Handbook, 3.3.4.2.1: tau = a rho g for a layer of thickness a on a vertical wall."""
    outside.worked(f"thicken sag {layer * 1000:g} mm", MEZGER, expected,
            putty.yield_stress_needed(density, layer, pi / 2),
            rel=1e-6)


def test_the_thickest_layer_on_a_slope(outside):
    """The same with g sin(slope) (statics, from memory): 80 Pa, 1100 kg/m3, 45 degrees -> 10.48797 mm."""
    outside.worked("thicken layer at 45 degrees", MEZGER + "; statics of the slope", 10.48797,
            putty.thickest_layer(80, 1100, radians(45)) * 1000, rel=1e-6)


def test_sag_in_units_is_a_pressure(outside):
    """PyPI pint: kg/m3 times m/s2 times m is Pa, with its own standard gravity."""
    unit = UnitRegistry()
    found = (1100 * unit.kg / unit.m**3 * unit.standard_gravity * 10 * unit.mm * sin(radians(30))).to("Pa").magnitude
    outside.worked("thicken sag in units", "pint (library), its standard gravity", found,
            putty.yield_stress_needed(1100, 0.01, radians(30)), rel=1e-12)


@pytest.mark.parametrize("share, expected", [(0.3, 2.751197), (0.45, 6.98043), (0.01, 1.025518)])
def test_relative_viscosity_of_spheres(outside, share, expected):
    """Krieger & Dougherty, Trans. Soc. Rheol. 3 (1959) 137, [eta] = 2.5, packing 0.64; Einstein's 1 + 2.5 phi below."""
    outside.worked(f"thicken spheres {share:g}", "Krieger and Dougherty, Trans. Soc. Rheol. 3 (1959) 137", expected,
            putty.relative_viscosity(share, 0.64), rel=1e-6)
    if share < 0.05:
        assert putty.relative_viscosity(share, 0.64) == pytest.approx(1 + 2.5 * share, rel=1e-3)


def test_krieger_and_dougherty_are_asked_for_spheres_only():
    assert "thicker" in lines(filler="glass-spheres", stiffness="clings", purpose="fairing")
    for row in ("wood-flour", "silica", "cotton", "milled-glass", "talc"):
        assert "thicker" not in lines(filler=row)
    half = [{"filler": "glass-spheres", "share": "50"}, {"filler": "silica", "share": "50"}]
    assert "thicker" not in lines(blend=half)


# --- filler and putty

def test_every_dose_of_the_table_comes_out_for_100_grams():
    for row, _, mark, typed in fillers.FILLERS:
        doses = [float(dose) for dose in dict(typed)["doses"].split(":")]
        assert mark == "from memory"
        for dose, (stiffness, _, _, _) in zip(doses, fillers.STIFFNESSES, strict=True):
            found = lines(filler=row, stiffness=stiffness)
            assert found["filler"]["value"] * 1000 == pytest.approx(dose, rel=1e-9)
            assert "from memory" in found["filler"]["rough"]


def test_putty_volume_is_what_the_volumes_and_the_air_add_up_to(outside):
    """PyPI pint, by the definition of density: 100 g of liquid, 38 g of wood flour of 1.3 g/mL, 5 % air."""
    unit = UnitRegistry()
    liquid = 100 * unit.g / (LIQUID * unit.g / unit.mL)
    solid = 38 * unit.g / (1.3 * unit.g / unit.cm**3)
    found = lines()
    outside.worked("thicken putty volume", "ISO 80000-4, definition of density, with pint (library)",
            ((liquid + solid) / 0.95).to("m^3").magnitude, found["putty"]["value"])
    assert found["putty_density"]["value"] == pytest.approx(0.138 / found["putty"]["value"], rel=1e-12)


def test_scoops_and_loose_volume_follow_from_the_loose_density():
    found = lines(scoop="20")
    assert found["filler_loose"]["value"] * 1e6 == pytest.approx(38 / 0.22, rel=1e-9)
    assert found["filler_scoops"]["value"] == 8.5  # 8.64 to half a scoop
    assert found["first_filler"]["value"] * 1000 == pytest.approx(38 * 2 / 3)


@settings(max_examples=60, deadline=None)
@given(st.floats(20, 5000), st.sampled_from([row[0] for row in fillers.FILLERS]),
       st.sampled_from([row[0] for row in fillers.STIFFNESSES]))
def test_from_wanted_putty_back_to_the_mix_and_forth_again(wanted, filler, stiffness):
    found = lines(amount_is="putty", amount=str(wanted), filler=filler, stiffness=stiffness)
    assert found["putty"]["value"] * 1e6 == pytest.approx(wanted, rel=1e-9)
    mixed = moves.answer("ratio", {"system": SYSTEM, "amount_is": "putty", "amount": str(wanted), "filler": filler,
                                   "stiffness": stiffness})["lines"]
    mass = {one["name"]: one for one in mixed}["mixed_mass"]["value"]
    assert lines(amount=str(mass * 1000), filler=filler, stiffness=stiffness)["putty"]["value"] * 1e6 == pytest.approx(
        wanted, rel=1e-9)


def test_filler_follows_what_the_scale_really_showed():
    found = lines(readings=[{"shown": "90"}])
    share = 3 * 1.15 / (3 * 1.15 + 0.98)
    assert found["filler"]["value"] == pytest.approx(0.38 * 0.090 / share, rel=1e-9)


def test_a_blend_counts_each_filler_by_its_own_dose():
    """By hand: half and half of 38 and 7.5 g for 100 g stiffen alike at 1 / (0.5/38 + 0.5/7.5) = 12.5275 g."""
    assert blended_dose((0.5, 0.5), (38, 7.5)) == pytest.approx(12.5274725, rel=1e-8)
    found = lines(blend=[{"filler": "wood-flour", "share": "50"}, {"filler": "silica", "share": "50"}])
    assert found["filler"]["value"] == found["filler_2"]["value"] == pytest.approx(0.0125274725 / 2, rel=1e-8)


def test_a_blend_of_one_filler_is_that_filler():
    blend = lines(blend=[{"filler": "talc", "share": "100"}])
    assert blend["filler"]["value"] == lines(filler="talc")["filler"]["value"]


def test_a_blend_that_does_not_sum_is_refused_with_the_figure():
    said = errors(blend=[{"filler": "talc", "share": "60"}, {"filler": "silica", "share": "30"}])
    assert "90.0%, 10.0% short" in said["blend.1.share"]
    said = errors(blend=[{"filler": "talc", "share": "60"}, {"filler": "silica", "share": "50"}])
    assert "10.0% too much" in said["blend.1.share"]
    thirds = [{"filler": name, "share": "33.3"} for name in ("talc", "silica", "cotton")]
    assert errors(blend=thirds) == {}


# --- what it must not do

def test_hollow_spheres_and_talc_are_flagged_in_a_structural_seam_only():
    for row in ("glass-spheres", "phenolic-balloons", "talc"):
        assert lines(filler=row)["fairing_only"]["rank"] == "warn"
        assert "fairing_only" not in lines(filler=row, purpose="fairing")
    for row in ("wood-flour", "silica", "cotton", "milled-glass"):
        assert "fairing_only" not in lines(filler=row)


def test_milled_glass_does_not_stand_alone():
    assert "not_alone" in lines(filler="milled-glass", stiffness="stands")
    assert "not_alone" not in lines(filler="milled-glass", stiffness="slumps")
    blend = [{"filler": "milled-glass", "share": "80"}, {"filler": "silica", "share": "20"}]
    assert "not_alone" not in lines(blend=blend)


def test_solids_beyond_packing_are_refused_with_the_most_that_goes_in():
    """By hand: spheres of 0.12 g/mL, 28 g for 100 g: 233 mL of solids beside 90 mL of liquid, 72 %."""
    light = {"id": "glass-spheres", "density": "0.12 g/mL"}
    found = lines(filler=light, stiffness="dry-edged", purpose="fairing")
    assert list(found) == ["packed"]
    assert "72%" in found["packed"]["text"]
    most = 0.62 / 0.38 * 0.12 / LIQUID * 100
    assert f"at most {int(most)} for 100" in found["packed"]["text"]
    assert "stiffness" in errors(filler=light, stiffness="dry-edged", amount_is="putty", amount="300")
    for row in ("glass-spheres", "phenolic-balloons"):
        assert "packed" not in lines(filler=row, stiffness="dry-edged", purpose="fairing")


def test_too_soft_for_the_wall_says_what_holds():
    """Mezger's wall rule, doubled because the yield stresses are from memory: 12 mm upright asks for about 283 Pa."""
    found = lines(stiffness="clings", position="upright", layer="12")
    assert found["sags"]["rank"] == "warn"
    assert found["needed"]["value"] == pytest.approx(138 / (100 / LIQUID + 38 / 1.3) * 1000 * 9.80665 * 0.012, rel=0.02)
    passes = found["pass"]["value"]
    assert "sags" not in lines(stiffness="clings", position="upright", layer=str(passes * 1000 * 0.999))
    assert "sags" in lines(stiffness="clings", position="upright", layer=str(passes * 1000 * 1.001))


def test_putty_that_outgrows_a_chosen_cup_is_said_with_the_way_out():
    cup = {"bottom": "50", "top": "50", "height": "70"}  # 137 mL to the rim, 117 mL with room to stir
    found = lines(cup=cup)
    assert found["cup_too_small"]["rank"] == "warn"
    assert found["cup_too_small"]["value"] == found["putty"]["value"]
    assert "cup_too_small" not in lines(cup=dict(cup, height="90"))
    assert "cup_too_small" not in lines(amount="3000")


def test_a_level_seam_asks_for_less_than_a_wall():
    level, wall = lines(position="level"), lines(position="upright")
    assert wall["needed"]["value"] / level["needed"]["value"] == pytest.approx(2**0.5, rel=1e-9)
    assert lines(position="overhead")["needed"]["value"] == wall["needed"]["value"]


def test_what_cannot_be_is_refused_at_its_field():
    assert "system.densities" in errors(system={"by_weight": "100:30"})
    assert "system.densities" in errors(system={"by_weight": "100:30"}, amount_is="putty", amount="300")
    assert "filler.doses" in errors(filler={"id": "talc", "doses": "20 : 15 : 75 : 110 : 150"})
    assert "filler.doses" in errors(filler={"id": "talc", "doses": "20 : 45"})
    assert "filler" in errors(filler="sawdust of the moon")
    assert "layer" in errors(layer="0")
    assert "stiffness" in errors(stiffness="bouncy")


def test_nothing_is_answered_until_it_is_asked():
    assert moves.answer("thicken", {})["lines"] == []
    found = moves.screen("pour", {})
    assert [name for name, own in found["answers"] if own["lines"]] == ["measure", "ratio"]


def test_readings_that_cannot_be_are_refused_with_and_without_filler():
    """What was poured leads on to the clock, also where no putty is asked for: it must be a pour that can be."""
    rounded_away = {"system": {"by_volume": "2 : 44 : 1/2"}, "amount": "3 mL", "way": "scale",
                    "readings": [{"shown": "1"}]}
    assert moves.answer("thicken", rounded_away)["errors"]
    uncounted = {"way": "pumps", "pumps": {"ten_strokes": "9 : 5.4 : 0.3"}, "counted": [{"strokes": "8"}]}
    assert moves.answer("thicken", uncounted)["errors"][0]["field"] == "system.densities"

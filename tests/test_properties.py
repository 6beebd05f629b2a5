"""Properties that hold whatever is typed: nothing is lost, more is never less, and a unit is only a way of writing.

Conservation of mass, monotony and the limits of the geometry need no source; hypothesis looks for the case that breaks.
"""
import json
from math import isclose, pi, radians, sin, tan

import cases
import pytest
from covemix.shared.door import moves
from covemix.shared.equations import fillet, kinetics, outer_edge, quick_rule, ventilation
from covemix.shared.equations.pumping import best_strokes
from covemix.shared.equations.weighing import corrected, smallest_batch
from covemix.shared.forms import inputs, links
from covemix.shared.words import numbers, units
from hypothesis import assume, given, settings
from hypothesis import strategies as st

FEW, SOME = settings(max_examples=20), settings(max_examples=50)
AIRS, MASSES = st.integers(2, 40), st.integers(20, 3000)
PART, STEP = st.floats(0.5, 100), st.sampled_from((0.1, 0.5, 1, 5))
JOINT = {"kind": st.sampled_from(("inside", "both", "outside")), "angle": st.integers(25, 170),
         "length": st.integers(2, 80), "thickness": st.integers(3, 15)}
RANKS = ("answer", "beside", "more")


def values(move, typed):
    """The numbers of a move's lines by name; nothing where it refuses."""
    found = moves.answer(move, typed)
    return {line["name"]: line["value"] for line in found["lines"] if line["value"] is not None
            and line["rank"] in RANKS}


def joint(given, **more):
    found = values("joint", {name: value if isinstance(value, list) else str(value)
                             for name, value in {**given, **more}.items()})
    assume("putty" in found)
    return found


# --- nothing is lost

@SOME
@given(PART, PART, st.integers(60, 20000), st.sampled_from(("total", "part_a", "part_b")))
def test_the_parts_of_a_mix_are_the_mix(a, b, amount, of):
    found = values("ratio", {"system": {"by_weight": f"{a:.4f}:{b:.4f}"}, "amount": f"{amount} g", "amount_is": of})
    parts = [found["part_a"], found["part_b"]]
    assert parts[0] / parts[1] == pytest.approx(float(f"{a:.4f}") / float(f"{b:.4f}"), rel=1e-9)
    assert amount / 1000 == pytest.approx({"total": sum(parts), "part_a": parts[0], "part_b": parts[1]}[of], rel=1e-9)
    assert found["mixed_mass"] == pytest.approx(sum(parts), rel=1e-9)


@FEW
@given(st.integers(50, 2000), st.sampled_from(("runs", "sags", "stands", "dry")))
def test_liquids_and_filler_are_the_putty(amount, stiffness):
    typed = {"system": {"by_weight": "345:98", "densities": "1.150:0.980"}, "amount_is": "putty",
             "amount": f"{amount} mL", "thicken": "yes", "stiffness": stiffness}
    putty, mix = values("thicken", typed), values("ratio", typed)
    assume("putty" in putty)
    assert putty["putty"] * putty["putty_density"] == pytest.approx(mix["mixed_mass"] + putty["filler"], rel=1e-9)
    assert putty["filler"] == pytest.approx(putty["dose"] * mix["mixed_mass"], rel=1e-9)
    assert putty["putty"] == pytest.approx(amount * 1e-6, rel=1e-9)


@SOME
@given(PART, PART, st.integers(20, 500), st.floats(0.2, 5))
def test_what_is_added_brings_the_cup_into_ratio_and_nothing_leaves_it(a, b, first, off):
    ratio = float(f"{b:.3f}") / float(f"{a:.3f}")
    second = round(first * ratio * off, 3)
    assume(second >= 1 and not 0.95 < off < 1.05)
    found = values("rescue", {"rescue": "yes", "system": {"by_weight": f"{a:.3f}:{b:.3f}"},
                              "readings": [{"shown": str(first)}, {"shown": str(first + second)}]})
    added = [found.get("add_a", 0.0) * 1000, found.get("add_b", 0.0) * 1000]
    assert (second + added[1]) / (first + added[0]) == pytest.approx(ratio, rel=1e-6)
    assert min(added) == 0.0 and found["new_total"] * 1000 == pytest.approx(first + second + sum(added), rel=1e-9)


@FEW
@given(st.fixed_dictionaries(JOINT))
def test_all_that_is_mixed_for_a_joint_is_laid_taken_off_or_left_over(given):
    typed = {"putty_density": "1.1 g/mL", "tray": "40 g/m2", "roller": "30", "cup": "6", "bag": "20",
             "layers": [{"width": "200", "weight": "300"}]}
    found = joint(given, weave="once", prime="edges", **typed)
    assume("tape_1" in found)
    area = sum(length for name, length in found.items() if name.startswith("tape_")) * 0.2
    liquid = found["wet_out"] + found["ply_takes"] + found["spare_kept"] + 0.04 * area + 0.036
    assert found["liquid"] == pytest.approx(liquid, rel=1e-9)
    placed = found["putty_in_place"] * 1100
    assert found["putty"] * 1100 == pytest.approx(placed + found["tooled"] + found["kept"], rel=1e-9)
    added = placed + 0.3 * area + found["wet_out"] + found["prime"] + found["weave"]
    assert found["added"] == pytest.approx(added, rel=1e-9)


@SOME
@given(st.lists(PART, min_size=2, max_size=4), st.floats(0.5, 2))
def test_what_follows_a_slip_stays_in_ratio(parts, slip):
    masses = corrected(parts, (parts[0] * slip,))
    for part, mass in zip(parts, masses, strict=True):
        assert mass / masses[0] == pytest.approx(part / parts[0], rel=1e-9)


@SOME
@given(st.lists(st.integers(1, 4000), min_size=2, max_size=4), st.data())
def test_whole_strokes_never_fall_short_of_the_amount(wanted, data):
    strokes = data.draw(st.lists(st.floats(0.05, 100), min_size=len(wanted), max_size=len(wanted)))
    found = best_strokes([part * 1e-6 for part in wanted], [stroke * 1e-6 for stroke in strokes], 0.02)
    assert sum(found.volumes) >= sum(wanted) * 1e-6 * (1 - 1e-8) and min(found.counts) >= 1


# --- more is never less

@SOME
@given(MASSES, MASSES, AIRS, AIRS)
def test_the_quick_rule_gives_no_more_time_to_more_or_warmer(mass, other, air, warmer):
    small, large = sorted((mass, other))
    cool, warm = sorted((air, warmer))
    for longest in (None, 1200):
        longer = quick_rule.pot_time(small / 1000, 273.15 + cool, 1800, 0.1, 298.15, longest=longest)
        assert quick_rule.pot_time(large / 1000, 273.15 + warm, 1800, 0.1, 298.15, longest=longest) <= longer


@FEW
@given(st.integers(20, 1500), st.integers(20, 1500), st.integers(5, 38), st.integers(5, 38),
       st.sampled_from(("cup", "bag", "tray", "film")))
def test_there_is_no_more_time_in_a_hotter_or_a_larger_pot(mass, other, air, warmer, container):
    cool, warm = sorted((air, warmer))
    small, large = sorted((mass, other))
    asked = {"air": str(cool), "batch": str(small), "container": container}
    longer = values("heat", asked).get("usable")
    for more in ({"air": str(warm)}, {"batch": str(large)} if container in ("cup", "bag") else {}):
        shorter = values("heat", {**asked, **more}).get("usable")
        if longer is not None and shorter is not None:
            assert shorter <= longer * 1.001


@FEW
@given(st.integers(5, 35), st.integers(5, 35))
def test_what_cures_in_a_warmer_shed_is_never_later(air, other):
    cool, warm = sorted((air, other))
    early, late = values("cure", {"air": str(warm)}), values("cure", {"air": str(cool)})
    for name in ("peel", "sand", "light", "full"):
        if name in early and name in late:
            assert early[name] <= late[name]


@SOME
@given(st.integers(0, 40), st.integers(10, 99), st.integers(10, 99), st.integers(0, 40))
def test_damper_air_is_nearer_to_its_dew_point(air, humidity, other, surface):
    dry, damp = sorted((humidity, other))
    near = values("dew", {"air": str(air), "humidity": str(damp), "surface": str(surface)})
    far = values("dew", {"air": str(air), "humidity": str(dry), "surface": str(surface)})
    assert near["dew_point"] >= far["dew_point"]
    assert near["dew_point"] <= 273.15 + air + 0.01


@FEW
@given(st.fixed_dictionaries(JOINT), st.data())
def test_a_wider_gap_never_takes_less_putty(given, data):
    """Up to 2 t sin h tan h: beyond it the edges of a sharp corner stand so far out that less is left between them."""
    half = radians(given["angle"]) / 2
    most = min(8.0, 2 * given["thickness"] * sin(half) * tan(half))
    gap = most * data.draw(st.floats(0, 1))
    wider = data.draw(st.floats(gap, most))
    narrow, wide = joint(given, gap=gap), joint(given, gap=wider)
    assert wide["putty"] >= narrow["putty"] * (1 - 1e-9)


@FEW
@given(st.fixed_dictionaries(JOINT), st.integers(1, 60), st.integers(1, 3))
def test_a_longer_seam_and_more_tape_never_take_less_resin(given, more, layers):
    rows = [{"width": "300", "weight": "300"}] * layers
    base = {**given, "layers": rows[:1]}

    plain, longer, taped = joint(base), joint(base, length=given["length"] + more), joint(base, layers=rows)
    assume("liquid" in plain)
    for found in (longer, taped):
        assert found["liquid"] >= plain["liquid"] * (1 - 1e-9)
    assert longer.get("putty", 0) >= plain.get("putty", 0) * (1 - 1e-9)


@SOME
@given(PART, PART, STEP, STEP, st.floats(0.005, 0.2))
def test_a_finer_scale_never_asks_for_a_larger_batch(a, b, step, other, tolerance):
    fine, coarse = sorted((step, other))
    least = smallest_batch((a, b), fine / 1000, tolerance)
    assert least <= smallest_batch((a, b), coarse / 1000, tolerance)
    assert least >= smallest_batch((a, b), fine / 1000, tolerance * 1.5)


@SOME
@given(st.floats(0.5, 60), st.floats(0.5, 60), st.floats(0.001, 0.5), st.floats(1, 10))
def test_more_air_is_never_slower_and_cleaner_air_never_sooner(changes, other, left, mixing):
    slow, fast = sorted((changes, other))
    time = ventilation.clearing_time(slow / 3600, left, mixing)
    assert ventilation.clearing_time(fast / 3600, left, mixing) <= time
    assert ventilation.clearing_time(slow / 3600, left / 2, mixing) > time


@SOME
@given(st.floats(2e4, 9e4), st.floats(260, 400), st.floats(260, 400))
def test_a_rate_grows_with_temperature(energy, temperature, other):
    low, high = sorted((temperature, other))
    assert kinetics.rate_factor(energy, low, 298.15) <= kinetics.rate_factor(energy, high, 298.15)


# --- limits

@SOME
@given(st.floats(0.002, 0.1), st.floats(0.001, 0.999))
def test_a_cove_vanishes_as_the_corner_opens_flat(radius, share):
    """Up to 180 degrees no putty is needed, however the radius; before that, each degree less takes more."""
    angle = radians(20 + 159 * share)
    assert fillet.area(radius, angle) > fillet.area(radius, angle + radians(0.5)) > 0
    assert fillet.area(radius, pi - 1e-4) < 1e-12 + radius * radius * 1e-12
    assert fillet.throat(radius, pi - 1e-4) < radius * 1e-8
    assert fillet.arc(radius, angle) <= 2 * fillet.tangent_length(radius, angle)
    assert fillet.chord(radius, angle) <= fillet.arc(radius, angle)
    depth = fillet.throat(radius, angle)
    assert fillet.radius_for_throat(depth, angle) == pytest.approx(radius, rel=1e-6)


@SOME
@given(st.floats(0.003, 0.02), st.floats(90, 178))
def test_an_outside_v_closes_as_the_panels_come_into_line(thickness, degrees):
    assert outer_edge.v_area(radians(degrees), thickness) > outer_edge.v_area(radians(degrees + 1), thickness) > 0
    assert outer_edge.v_area(pi - 1e-6, thickness) < thickness * thickness * 1e-5


@FEW
@given(st.integers(100, 5000))
def test_putty_without_filler_is_the_liquids_and_one_batch_loses_one_cup(amount):
    typed = {"system": {"by_weight": "100:30", "densities": "1.12:0.98"}, "amount": f"{amount} g"}
    mix = values("ratio", typed)
    assert mix["mixed_volume"] == pytest.approx(amount / 1000 / mix["mixed_density"], rel=1e-9)
    one, three = (values("joint", {"batches": count}) for count in ("1", "3"))
    assert three["kept"] == pytest.approx(3 * one["kept"], rel=1e-9)


# --- units and links

@SOME
@given(st.sampled_from([unit.name for unit in units.UNITS if unit.name]), st.floats(1e-3, 1e5))
def test_every_unit_comes_back_from_si(name, value):
    assert units.from_si(units.to_si(value, name), name) == pytest.approx(value, rel=1e-12)


@SOME
@given(st.floats(1e-4, 1e5), st.integers(0, 4))
def test_a_number_that_is_shown_reads_as_itself(value, places):
    text = numbers.shown(value, places)
    assert isclose(numbers.number(text), value, abs_tol=0.5000001 * 10**-places)
    assert numbers.shown(numbers.number(text), places) == text


QUESTIONS = (  # a move, what is typed into it, and its lengths, masses and volumes
    ("ratio", {"system": {"by_weight": "100:30"}}, {"amount": ("300 g", "10.5821885848741 oz")}),
    ("ratio", {"system": "3-1"}, {"amount": ("200 mL", "6.76280453681406 US fl oz")}),
    ("joint", {"kind": "inside"}, {"length": ("4 m", "13.1233595800525 ft"), "gap": ("1.5 mm", "0.0590551181102362 in"),
                                   "thickness": ("9 mm", "0.354330708661417 in")}),
    ("joint", {"kind": "bulkhead"}, {"length": ("300 cm", "118.110236220472 in")}),
    ("dew", {"humidity": "60"}, {"air": ("20 °C", "68 °F"), "surface": ("15 °C", "59 °F")}),
    ("cure", {}, {"air": ("18 °C", "64.4 °F")}),
    ("heat", {}, {"air": ("20 °C", "68 °F"), "batch": ("300 g", "10.5821885848741 oz")}),
    ("air", {"solvent": "acetone", "wiping": "1 h"}, {"solvent_mass": ("100 g", "3.52739619495804 oz")}),
)


@pytest.mark.parametrize("move, typed, fields", QUESTIONS)
def test_an_answer_does_not_care_for_the_unit_it_was_asked_in(move, typed, fields):
    first = values(move, {**typed, **{name: pair[0] for name, pair in fields.items()}})
    other = values(move, {**typed, **{name: pair[1] for name, pair in fields.items()}})
    assert first and first.keys() == other.keys()
    for name, value in first.items():
        assert other[name] == pytest.approx(value, rel=1e-6, abs=1e-12), name


@pytest.mark.parametrize("move, typed, fields", QUESTIONS)
def test_an_answer_does_not_care_for_the_units_that_are_shown(move, typed, fields):
    """Defaults of the other units are rounded to what a ruler shows, to half a percent."""
    asked = {**typed, **{name: pair[0] for name, pair in fields.items()}}
    first, other = values(move, asked), values(move, {**asked, "units": "us"})
    for name in first.keys() & other.keys():
        assert other[name] == pytest.approx(first[name], rel=0.006, abs=1e-5), name


@pytest.mark.parametrize("move", moves.names())
def test_what_is_typed_into_any_move_means_the_same_after_its_journey(move):
    asked = moves.module(move).INPUTS
    for request in cases.requests(move, 40, seed=11):
        tree = links.tree(request["pairs"] if "pairs" in request else cases.pairs(request["typed"]))
        values, errors = inputs.read(asked, tree)
        pairs = links.pairs(asked, tree)
        again, _ = inputs.read(asked, links.tree(pairs))
        assert links.pairs(asked, links.tree(pairs)) == pairs
        if not errors:
            assert _bare(again) == _bare(values), json.dumps(request)


BESIDE = ("_tree", "_understood", "_memo", "place")  # what a row of values keeps beside its values


def _bare(value):
    """What was read, without what only remembers how it came."""
    if isinstance(value, dict):
        return {key: _bare(inner) for key, inner in value.items() if key not in BESIDE}
    return [_bare(inner) for inner in value] if isinstance(value, list) else value

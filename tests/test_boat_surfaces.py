"""The boat with its surfaces: coats, cloth, glue and fairing beside the joints, phase by phase."""
import re
from math import pi, sqrt, tan

import cases
import numpy as np
import pytest
from covemix.shared.boat import boat, boat_surfaces, phases, shopping
from covemix.shared.catalogue.demo_boat import JOINTS, SURFACES
from covemix.shared.door import handover, moves
from covemix.shared.forms import inputs, links
from covemix.shared.forms.memo import Memo
from covemix.shared.surface import faces
from covemix.shared.words.numbers import ceiling
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.optimize import LinearConstraint, milp

ONE = (("joints.0.name", "Chine"), ("joints.0.angle", "110"), ("joints.0.length", "2 m"), ("joints.0.copies", "2"))
COATS = (("work", "coat"), ("area", "4 m2"), ("count", "2"), ("coats", "3"), ("edge_length", "6 m"),
         ("edge_thickness", "6 mm"))
CLOTH = (("work", "sheathe"), ("length", "3 m"), ("widths", "0.6 : 1 : 0.8 m"), ("cloth_weight", "200 g/m2"))
FAIR = (("work", "fair"), ("area", "2.5 m2"), ("fair_depth", "0.8 mm"))
SCARF = (("work", "scarf"), ("glued_thickness", "9 mm"), ("scarf_width", "300 mm"), ("scarf_ratio", "8"),
         ("glued_copies", "2"))
FILLET = (("work", "fillet"), ("fillet_panel", "6 mm"), ("fillet_angle", "90"), ("fillet_length", "4 m"))
ALL = (COATS, CLOTH, FAIR, SCARF, FILLET)


def rows(*surfaces):
    return tuple((f"surfaces.{place}.{name}", text) for place, row in enumerate(surfaces) for name, text in row)


def asked(*pairs, language="en", memo=None):
    return moves.answer("boat", links.tree(pairs), memo, language)


def lines_of(*pairs, language="en"):
    found = asked(*pairs, language=language)
    assert found["errors"] == []
    return {row["name"]: row for row in found["lines"]}


def found_of(*pairs):
    values, errors = inputs.read(boat.INPUTS, links.tree(pairs))
    assert not errors and not inputs.checked(boat.CHECKS, values)
    return boat.reckon(values), values


@pytest.mark.parametrize(("angle", "more"), [("90", 1), ("100", 2)])
def test_a_bare_fillet_has_its_spreaders_in_the_list(angle, more):
    """None smaller than the fillet that Faces tells; a radius that a joint has too is listed once."""
    row = dict(FILLET) | {"fillet_angle": angle}
    seams, found = lines_of(*ONE), lines_of(*ONE, *rows(tuple(row.items())))
    alone = moves.answer("fillets", links.tree(tuple(row.items())))["lines"]
    told = [line["value"] for line in alone if line["name"].startswith("radius_")]
    listed = [int(each) for each in re.findall(r"R (\d+)", found["spreaders"]["text"])]
    assert len(told) == more
    assert all(any(0 <= one / 1000 - radius < 0.001 for one in listed) for radius in told)
    assert found["buy_blanks"]["value"] == len(set(listed)) == len(listed)
    assert found["buy_blanks"]["value"] == seams["buy_blanks"]["value"] + more
    assert {line["name"]: line for line in asked(*ONE, *rows(FILLET, FILLET))["lines"]}["buy_blanks"]["value"] == (
        seams["buy_blanks"]["value"] + 1)


def test_a_boat_worked_by_hand():
    """Plane geometry, Simpson-free sums by numpy and the remembered amounts: phases and whole, once by hand."""
    found = lines_of(*ONE, *rows(*ALL), ("most", "500 g"))
    seams = lines_of(*ONE, ("most", "500 g"))["mixed"]["value"]
    spare, cup, roller, rho = 1.1, 0.006, 0.030, 1110.0
    # coats: two faces of 4 m2 and their edges; roller and tray keep some at each coat
    area, edge = 8.0, 6 * 0.006
    kept = roller + 0.040 * 0.08
    first = 0.110 * (area + 2.5 * edge)
    later = 0.080 * (area + edge)
    coat_pots = found["phase_seal"]["rough"].split("Cups: ")[1].split(";")[0]
    left = kept + cup * int(coat_pots)
    assert found["phase_seal"]["value"] == pytest.approx(first * spare + left, rel=1e-9)
    assert found["phase_coat"]["value"] == pytest.approx(2 * (later * spare + left), rel=1e-9)
    # cloth: the trapezoidal rule over the widths, resin for 45 % of glass by mass, 1200 mm wide: one strip along
    side = float(np.trapezoid([0.6, 1.0, 0.8], dx=1.5))
    glass = 0.200 * side
    assert found["cloth_1"]["value"] == pytest.approx(3 + 2 * 0.025)
    # fairing: 0.8 mm stay, 30 % of what is placed is sanded off; resin and spheres share it with 5 % of air
    placed = 2.5 * 0.0008 / 0.7
    per_resin = (1 / rho + 0.23 / 200) / 0.95
    resin = placed / per_resin
    fair_cups = int(found["phase_fair"]["rough"].split("Cups: ")[1].split(";")[0])
    fair = resin * spare + cup * fair_cups
    assert found["phase_fair"]["value"] == pytest.approx(fair, rel=1e-6)
    assert found["light"]["value"] == pytest.approx(fair * 0.23, rel=1e-6)
    # glue: two scarfs of 9 mm at 8 to 1
    bond = 2 * 0.009 * 0.3 * sqrt(1 + 64)
    neat = 2 * bond * 2 * 0.085
    glue = bond * 0.0003 / 0.8
    mixed = glue / ((1 / rho + 0.25 / 1300) / 0.95)
    assert found["phase_glue"]["value"] == pytest.approx((neat + mixed) * spare + cup, rel=1e-6)
    # two fillets at 90 degrees: the foot t + 2 R carries as the panel
    strength = sqrt(42.6 / 2)
    radius = 0.006 * (strength - 1) / 2
    volume = 2 * radius**2 * (1 - pi / 4) * tan(pi / 4) * 4 / 0.88
    bags = ceiling(volume * 1100 / (0.5 - 0.026))
    putty = (volume * 1100 + bags * 0.026) / 1.38 * spare
    assert found["surface_4"]["value"] == pytest.approx(putty, rel=1e-6)
    sheathe = found["phase_sheathe"]["value"]
    assert glass * 0.55 / 0.45 * spare < sheathe < 2.5 * glass * 0.55 / 0.45 * spare
    whole = (first + 2 * later) * spare + 3 * left + sheathe + fair + (neat + mixed) * spare + cup + putty
    assert found["mixed"]["value"] == pytest.approx(seams + whole, rel=1e-6)
    # what stays: cloth is wet by itself, soaked into bare wood and filled until sanding does not reach it
    assert found["saved_coat"]["value"] == pytest.approx(later, rel=1e-9)
    assert found["saved_fairing"]["value"] == pytest.approx(placed * 0.7 / per_resin * 1.23, rel=1e-6)


def test_what_each_surface_takes_worked_by_hand():
    """Filler, putty, what stays and the resin in it, brushes, trays and sheets: not the product's sum of its own parts.

    The amounts are those of the boat worked by hand above; a sheet of abrasive does half a square metre.
    """
    found, values = found_of(*ONE, *rows(*ALL), ("most", "500 g"))
    (seal, coat), (cloth,), (fair,), (glue,), (fillet,) = [phases.of_surface(one, values) for one in found.surfaces]

    def takes(one, **amounts):
        told = {"batches": one.cups, "resin": one.resin, "cups": one.cups, **amounts}
        assert one[1:] == pytest.approx(phases.phase(one.name, told)[1:], rel=1e-9), one.name

    first, later = 0.110 * (8 + 2.5 * 0.036), 0.080 * (8 + 0.036)
    takes(seal, stays=first, kept=first, trays=1, brushes=1, sheets=16)
    takes(coat, stays=2 * later, kept=2 * later, trays=2, brushes=2)  # sanded once, before the first
    area = float(np.trapezoid([0.6, 1.0, 0.8], dx=1.5))
    stays = found.surfaces[1].found.stays
    takes(cloth, glass=0.2 * 2.55, stays=stays, kept=stays - 0.2 * 2.55, brushes=1 + 2, sheets=ceiling(area / 0.5))
    placed = 2.5 * 0.0008 / 0.7
    resin = placed / ((1 / 1110 + 0.23 / 200) / 0.95)
    batches = ceiling(resin * 1.23 * 1.1 / (0.3 - 0.006 * 1.23))  # none is a big pot, with spare and cup
    takes(fair, putty=placed, light=0.23 * (resin * 1.1 + batches * 0.006), stays=0.7 * resin * 1.23, kept=0.7 * resin,
          sheets=5)
    bond = 2 * 0.009 * 0.3 * sqrt(1 + 64)
    neat, mixed = 2 * bond * 2 * 0.085, bond * 0.0003 / 0.8 / ((1 / 1110 + 0.25 / 1300) / 0.95)
    takes(glue, putty=bond * 0.0003 / 0.8, filler=0.25 * (mixed * 1.1 + 0.006), brushes=1,
          stays=neat + bond * 0.0003 * 1100, kept=neat + bond * 0.0003 * 1100 / 1.25)
    radius = 0.006 * (sqrt(42.6 / 2) - 1) / 2
    mass = 2 * radius**2 * (1 - pi / 4) * 4 / 0.88 * 1100
    resin = (mass + 0.026) / 1.38
    takes(fillet, resin=resin * 1.1, putty=(mass + 0.026) / 1100 * 1.1, filler=0.38 * resin * 1.1, bags=1,
          stays=0.88 * mass, kept=0.88 * mass / 1.38)


@pytest.mark.parametrize("units", ("metric", "us"))
def test_each_surface_is_the_one_that_its_own_screen_reckons(units):
    """The same figures as its move gives, phase totals put together again."""
    for place, row in enumerate(ALL[:4]):
        typed = dict(row)
        work = typed["work"]
        if work in ("coat", "sheathe", "fair"):
            own = {name: typed.pop(name) for name in ("length", "widths", "area", "count") if name in typed}
            typed["faces"] = [own]
        move = boat_surfaces.MOVES[work].__name__.rpartition(".")[2]
        values, errors = inputs.read(moves.module(move).INPUTS, dict(typed, units=units))
        assert not errors
        here = moves.module(move).reckon(values)
        there = lines_of(*ONE, *rows(*ALL), ("units", units))[f"surface_{place}"]
        assert there["value"] == pytest.approx(here.mix, rel=1e-9)


def test_the_phases_of_generated_boats_add_up_to_the_whole():
    """Whatever a boat is made of: resin, filler, glass, weight, batches, cups and bags of all phases are the whole."""
    counted = 0
    for request in cases.requests("boat", 260, seed=11):
        typed = [pair for pair in request["pairs"] if not pair[0].startswith("surfaces")]
        count = counted % 6
        pairs = [*typed, *rows(*(ALL + ALL[::-1])[count:count + 1 + count])]
        values, errors = inputs.read(boat.INPUTS, links.tree(pairs))
        if errors or inputs.checked(boat.CHECKS, values):
            continue
        found = boat.reckon(values)
        whole, counted = phases.together(found.phases), counted + 1
        assert [one.name for one in found.phases] == [name for name in phases.PHASES
                                                      if name in [one.name for one in found.phases]]
        for ours, sums in ((whole.resin, found.mixed.all), (whole.filler, found.mixed.filler),
                           (whole.stays, found.added), (whole.batches, found.mixed.batches),
                           (whole.cups, found.mixed.mixes)):
            assert ours == pytest.approx(sums, rel=1e-9, abs=1e-12), pairs
        bought = dict(found.bought)
        for name, key in (("bags", "bags"), ("cups", "cups"), ("trays", "tray"), ("brushes", "brushes"),
                          ("sheets", "abrasive"), ("ties", "ties"), ("backing", "backing")):
            assert getattr(whole, name) == pytest.approx(bought[key]), (name, pairs)
        people = int(values["people"])
        assert bought["gloves"] == people * (whole.batches + 1)
        assert all(amount >= 0 for one in found.phases for amount in one[1:])
    assert counted > 60


def test_a_boat_of_joints_alone_is_told_as_before():
    """Not a line more, whatever stands beside: an old link says nothing of surfaces, an emptied list says none."""
    before = lines_of(*ONE)
    assert not [name for name in before if name.startswith(("phase", "surface", "saved", "cloth"))]
    assert lines_of(*ONE, ("surfaces", "none")) == before
    joints = tuple((f"joints.{place}.{name}", text) for place, row in enumerate(JOINTS) for name, text in row)
    assert "phase_coat" not in lines_of(*joints)
    assert "phase_coat" in lines_of(), "the demo boat has surfaces"


def test_surfaces_alone_are_a_boat():
    """A repair: one scarf, no joint; nothing of the demo boat stands beside it."""
    found, _ = found_of(*rows(SCARF))
    assert found.joints == [] and [one.name for one in found.phases] == ["glue"]
    lines = lines_of(*rows(SCARF))
    assert lines["mixed"]["value"] == pytest.approx(found.phases[0].resin)
    assert [error["field"] for error in asked(("joints", "none"), ("surfaces", "none"))["errors"]] == ["joints"]


@pytest.mark.parametrize(("row", "field", "says"), (
    ((("work", "coat"), ("coats", "2")), "surfaces.0.length", "Type length and width"),
    ((("work", "fair"), ("name", "Deck"), ("length", "2 m")), "surfaces.0.widths", "Deck: Type length and width"),
    ((("work", "scarf"), ("glued_thickness", "150 mm"), ("scarf_ratio", "30")), "surfaces.0.work", ""),
    ((("work", "sheathe"), ("area", "0 m2")), "surfaces.0.area", "more than 0"),
    ((("work", "sheathe"), ("length", "9 m"), ("widths", "9 m"), ("cloth_width", "110 mm")),
     "surfaces.0.cloth_width", "wider cloth"),
))
def test_what_is_wrong_stands_at_its_row(row, field, says):
    error, = asked(*ONE, *rows(row))["errors"]
    assert error["field"] == field and says in error["message"]


def test_rows_that_a_phone_kept_are_read_anew_when_the_boat_changes():
    memo, pairs = Memo(), (*ONE, *rows(*ALL))
    asked(*pairs, memo=memo)
    for more in ((("spare", "30"),), (("first_coat", "200 g/m2"),), (("temperature", "31"),), (("lap", "150 mm"),),
                 (("surfaces.1.wood", "sealed"),), (("system", "2-1"),), (("bag", "60 g"),), (("people", "2"),)):
        kept, fresh = asked(*pairs, *more, memo=memo), asked(*pairs, *more)
        assert kept == fresh, more


@pytest.mark.parametrize("language", ("en", "de"))
def test_the_journey_of_a_link_and_what_it_leaves_out(language):
    """Only what differs travels: nothing of the demo boat, all of it beside a joint of one's own."""
    declared = moves.screen_inputs("boat")
    joints = tuple((f"joints.{place}.{name}", text) for place, row in enumerate(JOINTS) for name, text in row)
    demo = (*joints, *rows(*SURFACES))
    assert links.pairs(declared, links.tree(demo)) == []
    for pairs in ((*ONE, *rows(*ALL)), (*ONE, *rows(*SURFACES)), (*joints, *rows(SCARF)), joints, rows(*SURFACES),
                  (*joints, ("surfaces", "none")), (("joints", "none"), *rows(*SURFACES)), (*ONE, ("surfaces", "none")),
                  (("joints", "none"), ("surfaces", "none")), (("surfaces", "none"),)):
        link = links.pairs(declared, links.tree(pairs))
        assert asked(*link, language=language) == asked(*pairs, language=language), pairs
        assert links.pairs(declared, links.tree(link)) == link
        known, refused = handover.opened(declared, handover.sealed(link), 100)
        assert not refused and asked(*known, language=language) == asked(*pairs, language=language)
    assert "surfaces" not in [name for name, _ in links.pairs(declared, links.tree((*ONE, ("surfaces", "none"))))]


def test_the_same_boat_in_both_units_and_languages():
    metric = lines_of(*ONE, *rows(*ALL))
    german = lines_of(*ONE, *rows(*ALL), language="de")
    us = lines_of(*ONE, *rows(*ALL), ("units", "us"))
    assert german.keys() == metric.keys()
    for name, line in metric.items():
        assert german[name]["value"] == line["value"]
        if name.startswith(("phase", "saved")):
            assert us[name]["value"] == pytest.approx(line["value"], rel=0.01), name
            assert german[name]["label"] != line["label"]
    assert " oz" in us["phase_seal"]["text"] and "Epoxid" in german["phase_seal"]["text"]


def test_a_surface_put_into_the_boat_is_the_same_there():
    """By the lead of its screen, whatever was typed: its resin and what stays are those of its own screen."""
    carried = dict.fromkeys(boat_surfaces.MOVES, 0)
    for request in cases.requests("surface", 500, seed=23):
        tree = links.tree(request["pairs"])
        for move in ("coats", "sheathing", "fairing", "gluing"):
            module = moves.module(move)
            values, errors = inputs.read(module.INPUTS, tree)
            if errors or inputs.checked(module.CHECKS, values) or not module.reckon(values):
                continue
            lead, = [one for one in moves.answer(move, tree)["leads"] if one.get("adds") == "surfaces"]
            shared = [pair for pair in request["pairs"] if pair[0] in (
                *boat_surfaces.SHARED, *boat_surfaces.FOR_ALL, "units") and pair[0] in values]
            own = {name for name in values if name not in boat_surfaces.OWN[values["work"]]} & set(tree)
            if own - {"work", "faces", "units", "filler", *boat_surfaces.SHARED, *boat_surfaces.FOR_ALL}:
                continue  # what the boat does not ask
            if "faces" in values and faces.whole_area(values) > 5000:
                continue  # more than any boat has
            there, _ = found_of(*lead["pairs"], *shared)
            here = module.reckon(values)
            assert {one.row["work"] for one in there.surfaces} == {values["work"]}
            if len(there.surfaces) == 1:
                found = there.surfaces[0].found
                stays = "on_wood" if move == "coats" else "stays"
                assert getattr(found, stays) == pytest.approx(getattr(here, stays), rel=1e-3, abs=1e-9)
                assert found.mix == pytest.approx(here.mix, rel=1e-3), (request["pairs"], lead)
            carried[values["work"]] += 1
    assert min(carried[work] for work in ("coat", "sheathe", "fair", "scarf")) > 0 and sum(carried.values()) > 12


OWN_FILLER = (("filler.name", "Shed lightweight"), ("filler.doses", "5 : 10 : 18 : 30 : 36"),
              ("filler.density", "0.31 g/mL"), ("filler.loose", "0.2 g/mL"), ("filler.grain", "other"))


def test_a_fairing_row_counts_with_the_builder_s_own_filler():
    """30 g to 100 g at 0.31 g/mL, by hand: a compound of 5 % air whose grains and resin fill the rest."""
    tree = links.tree([["work", "fair"], ["faces.0.area", "4"], ["fair_depth", "1 mm"], *map(list, OWN_FILLER)])
    here, _ = inputs.read(moves.module("fairing").INPUTS, tree)
    lead, = [one for one in moves.answer("fairing", tree)["leads"] if one.get("adds") == "surfaces"]
    own, _ = found_of(*lead["pairs"])
    typed, _ = found_of(("surfaces.0.work", "fair"), ("surfaces.0.area", "4"), ("surfaces.0.fair_depth", "1 mm"),
                        ("surfaces.0.light_filler", "talc"), ("surfaces.0.light_dose", "30"),
                        ("surfaces.0.light_density", "0.31"))
    ours, _ = found_of(("surfaces.0.work", "fair"), ("surfaces.0.area", "4"), ("surfaces.0.fair_depth", "1 mm"))
    resin = here["resin_density"]
    placed = 4 * 0.001 / (1 - here["fair_sanded"])
    liquid = placed * 0.95 / (1 / resin + 0.30 / 310)
    for found in (own, typed):
        fair = found.surfaces[0].found
        assert (fair.resin, fair.filler) == (pytest.approx(liquid), pytest.approx(0.30 * liquid))
        assert sum(one.light for one in found.phases) == pytest.approx(0.30 * fair.mix)
    assert ours.surfaces[0].found.filler != pytest.approx(0.30 * liquid, rel=0.05)


PACKS = st.lists(st.tuples(st.sampled_from([0.5, 0.9, 1.0, 2.5, 5.0]), st.integers(5, 150)), min_size=1, max_size=3,
                 unique_by=lambda pack: pack[0])


@settings(deadline=None, max_examples=60)
@given(st.floats(0.1, 30), PACKS)
def test_the_cheapest_packs_are_the_solver_s(need, packs):
    """scipy.optimize.milp (HiGHS) finds none that cost less, whatever the sizes and their prices."""
    sizes, prices = [size for size, _ in packs], [float(price) for _, price in packs]
    best = milp(prices, constraints=LinearConstraint([sizes], need, np.inf), integrality=[1] * len(sizes))
    counts, held = shopping.packs(need, tuple(sizes), tuple(prices))
    assert held >= need - 1e-9 * need and held == pytest.approx(np.dot(counts, sizes))
    assert np.dot(counts, prices) == pytest.approx(best.fun)


def test_what_a_boat_costs_ends_on_it_in_the_bin_or_on_the_shelf():
    """Both choices of packs stand side by side; without a price nothing is said of money."""
    pairs = (*ONE, *rows(*ALL), ("packs", "1 : 5 kg"), ("prices", "20 : 130"))
    found, _ = found_of(*pairs)
    lines = lines_of(*pairs)
    assert lines["cheapest"]["value"] == found.cheapest.cost == 20 * ceiling(found.parts[0])
    assert lines["cost"]["value"] >= lines["cheapest"]["value"]
    boat_, waste, left = (float(word) for word in lines["cost"]["rough"].replace(",", "").split()
                          if word.replace(".", "").isdigit())
    assert boat_ + waste + left == pytest.approx(found.packs.cost, abs=0.02)
    assert left == pytest.approx(found.packs.cost * found.packs.over / found.packs.held, abs=0.01)
    assert 0 < found.kept < found.added and boat_ < found.packs.cost
    assert "cost" not in lines_of(*ONE, *rows(*ALL)) and "cheapest" not in lines_of()
    error, = asked(*ONE, ("prices", "20"))["errors"]
    assert error["field"] == "prices" and "as many prices" in error["message"]

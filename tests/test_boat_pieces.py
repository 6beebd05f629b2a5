"""The boat's seams as pieces of a plan: each face the work it is, and nothing lost on the way."""
import cases
import pytest
from covemix.shared import boat, boat_pieces, hull, links, moves
from covemix.shared.inputs import checked, read

SEAM = (("joints.0.angle", "90"), ("joints.0.length", "2.4"))


def plans_of(*pairs):
    """The pieces of each plan that the boat leads to, as dicts of typed text, with the lead's label."""
    found = moves.answer("boat", links.tree(pairs))
    assert not found["errors"], found["errors"]
    leads = [lead for lead in found["leads"] if lead["screen"] == "plan"]
    return [(lead["label"], list(links.tree(lead["pairs"])["pieces"].values())) for lead in leads]


def planned(pieces, **typed):
    found = moves.answer("plan", dict(typed, pieces=pieces))
    assert not found["errors"], found["errors"]
    return {row["name"]: row for row in found["lines"]}


def test_a_bulkhead_is_two_coves_to_place_and_roll():
    """Remembered rates, min/m: p + q + c = 0.5 + 1 + 0.8 = 2.3, w + d + r = 0.8 + 0.5 + 1.25 = 2.55.

    In one batch it would be rolled at 6 + 2.3 x 4.8 + 3 + 2.55 x 4.8 = 32.3 min, at 33 degC beyond its window, which
    ends at 27: two batches, each of 6 + 3 + (4.85 + 0.8) x 2.4 = 22.6 min where putty and wet-out are mixed apart.
    """
    (label, pieces), = plans_of(("joints.0.kind", "bulkhead"), *SEAM)
    assert label == "Plan these seams"
    assert [piece["name"] for piece in pieces] == ["Joint 1 one side", "Joint 1 other side"]
    assert [(piece["length"], piece["putty"], piece["wet"]) for piece in pieces] == [("2.40 m", "57 g/m", "39 g/m")] * 2
    found = planned(pieces, temperature="33", one_mix="never")
    assert found["batches"]["value"] == 2
    assert found["end"]["value"] == pytest.approx(8 * 3600 + 60 * (2 * (6 + 3 + 5.65 * 2.4) + 5))


def test_the_outside_is_a_plan_of_its_own_since_the_hull_is_turned_in_between():
    inside, outside = plans_of(("joints.0.kind", "both"), *SEAM)
    assert [inside[0], outside[0]] == ["Plan these seams, the insides", "Plan the outsides, hull turned"]
    assert [piece["name"] for piece in inside[1] + outside[1]] == ["Joint 1 inside", "Joint 1 outside"]
    assert inside[1][0]["putty"] == "57 g/m" and inside[1][0]["wet"] == outside[1][0]["wet"] == "39 g/m"
    (label, pieces), = plans_of(("joints.0.kind", "outside"), *SEAM)
    assert label == "Plan these seams" and pieces[0]["name"] == "Joint 1"


def test_a_second_layer_is_wet_out_laid_and_rolled_again():
    """w + d + r = 2.55 min/m twice over 2.4 m, peel ply once: 6 + 2.3 x 2.4 + 3 + 2 x 2.55 x 2.4 + 0.8 x 2.4 min."""
    (_, pieces), = plans_of(("joints.0.layers", "2"), *SEAM)
    assert pieces[0]["layers"] == "2"
    found = planned(pieces, temperature="20", one_mix="never")
    assert found["end"]["value"] == pytest.approx(8 * 3600 + 60 * (6 + 5.52 + 3 + 12.24 + 1.92))


def test_a_list_that_is_too_long_for_a_plan_says_so():
    """40 bulkheads are 80 pieces, and a plan takes 60."""
    (label, pieces), = plans_of(("joints.0.kind", "bulkhead"), ("joints.0.copies", "40"), *SEAM)
    assert label == "Plan these seams: the first 60 of 80 pieces" and len(pieces) == 60


def test_tape_without_putty_is_in_no_plan_and_the_boat_says_so():
    rows = {row["name"]: row for row in moves.answer("boat", {})["lines"]}
    assert rows["not_planned"]["text"] == "Side panel butt one face; Side panel butt other face; Skeg strip"
    alone = moves.answer("boat", links.tree((("joints.0.kind", "strip"),)))
    assert "not_planned" not in [row["name"] for row in alone["lines"]]  # there is no plan either
    assert [lead for lead in alone["leads"] if lead["screen"] == "plan"] == []


def test_the_plans_pour_what_the_boat_counts():
    """Putty to place and liquid resin, each copy and each face: what is in the plans and what is in none is all."""
    compared = 0
    for request in cases.requests("boat", 120, seed=5):
        values, errors = read(boat.INPUTS, links.tree(request["pairs"]))
        if errors or checked(boat.CHECKS, values):
            continue
        work = hull.seams(values)
        for _, spec, made, _, _ in work:
            wet = sum(boat_pieces.wet_out(face, spec, values["tray"]) for face in made.faces)
            assert wet == pytest.approx(made.wet_out + made.ply_takes + values["tray"] * made.taped, rel=1e-9)
        work = [kept for kept in work if all(face.putty and face.layers for face in kept[2].faces)]
        sides, neither = boat_pieces.sorted_faces(work, values)
        assert not neither
        sums = hull.totals(values, work)
        putty = sum(piece[2] for side in sides for piece in side) * (1 - values["tooling"])
        assert putty == pytest.approx(sums["putty"] * values["putty_density"], rel=1e-9)
        wet = sum(piece[3] for side in sides for piece in side)
        assert wet == pytest.approx(sums["wet_out"] + sums["ply_takes"] + values["tray"] * sums["taped"], rel=1e-9)
        compared += len(work)
    assert compared > 20


def test_the_filler_that_is_bought_is_enough_for_the_putty_that_is_poured():
    """Two copies of 2.4 m at 110 degrees: 422 g of putty take 116 g of filler; the plan mixes a tenth more, 128 g."""
    asked = (("joints.0.angle", "110"), ("joints.0.length", "2.4"), ("joints.0.copies", "2"), ("batch", "500"))
    (_, pieces), = plans_of(*asked)
    bought = {row["name"]: row for row in moves.answer("boat", links.tree(asked))["lines"]}["filler"]
    poured = planned(pieces, temperature="20", one_mix="never")
    assert poured["batches"]["value"] == 1 and "128 g of filler" in poured["amount_putty"]["rough"]
    assert bought["value"] == pytest.approx(0.422 / 1.38 * 0.38 * 1.1, abs=0.0005) and bought["text"] == "128 g"

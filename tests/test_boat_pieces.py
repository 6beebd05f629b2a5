"""The boat's seams as pieces of a plan: each face the work it is, and nothing lost on the way."""
import random

import cases
import pytest
from covemix.shared.boat import batches_counted, boat, boat_pieces, hull
from covemix.shared.catalogue.demo_boat import JOINTS
from covemix.shared.door import moves
from covemix.shared.forms import links
from covemix.shared.forms.inputs import checked, read
from covemix.shared.plan import plan
from covemix.shared.seam import seam
from covemix.shared.words.written import reader

SEAM = (("joints.0.angle", "90"), ("joints.0.length", "2.4"))


def of_seams(lead):
    """Whether a lead of the boat goes to a plan of seams; the one of coats and cloth has a list of its own."""
    return lead["screen"] == "plan" and any(name.startswith("pieces.") for name, _ in lead["pairs"])


def plans_of(*pairs):
    """The pieces of each plan that the boat leads to, as dicts of typed text, with the lead's label."""
    found = moves.answer("boat", links.tree(pairs))
    assert not found["errors"], found["errors"]
    leads = [lead for lead in found["leads"] if of_seams(lead)]
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
    assert [(piece["name"], piece["face"]) for piece in pieces] == [("nth 1", "one_side"), ("nth 1", "other_side")]
    assert [(piece["length"], piece["putty"], piece["wet"]) for piece in pieces] == [("2.40 m", "57 g/m", "39 g/m")] * 2
    found = planned(pieces, temperature="33", one_mix="never")
    assert found["batches"]["value"] == 2
    assert found["end"]["value"] == pytest.approx(8 * 3600 + 60 * (2 * (6 + 3 + 5.65 * 2.4) + 5))


def test_the_outside_is_a_plan_of_its_own_since_the_hull_is_turned_in_between():
    inside, outside = plans_of(("joints.0.kind", "both"), *SEAM)
    assert [inside[0], outside[0]] == ["Plan the insides", "Plan the outsides, hull turned"]
    assert [(piece["name"], piece["face"]) for piece in inside[1] + outside[1]] == [
        ("nth 1", "inside"), ("nth 1", "outside")]
    assert inside[1][0]["putty"] == "57 g/m" and inside[1][0]["wet"] == outside[1][0]["wet"] == "39 g/m"
    (label, pieces), = plans_of(("joints.0.kind", "outside"), *SEAM)
    assert label == "Plan these seams" and pieces[0]["name"] == "nth 1" and "face" not in pieces[0]


def test_a_second_layer_is_wet_out_laid_and_rolled_again():
    """w + d + r = 2.55 min/m twice over 2.4 m, peel ply once: 6 + 2.3 x 2.4 + 3 + 2 x 2.55 x 2.4 + 0.8 x 2.4 min."""
    (_, pieces), = plans_of(("joints.0.layers", "2"), *SEAM)
    assert pieces[0]["layers"] == "2"
    found = planned(pieces, temperature="20", one_mix="never")
    assert found["end"]["value"] == pytest.approx(8 * 3600 + 60 * (6 + 5.52 + 3 + 12.24 + 1.92))


def test_a_list_that_is_too_long_for_a_plan_says_so():
    """40 bulkheads are 80 pieces, and a plan takes 60: the rest has a plan of its own."""
    found = plans_of(("joints.0.kind", "bulkhead"), ("joints.0.copies", "40"), *SEAM)
    assert [(label, len(pieces)) for label, pieces in found] == [
        ("Plan these seams: pieces 1 to 60 of 80", 60), ("Plan these seams: pieces 61 to 80 of 80", 20)]


def plans_as_led(*pairs, **typed):
    """(lines of the boat, lines of each plan that it leads to as the link has it, with what is typed there)."""
    found = moves.answer("boat", links.tree(pairs))
    assert not found["errors"], found["errors"]
    made = [moves.answer("plan", links.tree(lead["pairs"] + list(typed.items())))
            for lead in found["leads"] if of_seams(lead)]
    return {row["name"]: row for row in found["lines"]}, [{row["name"]: row for row in one["lines"]} for one in made]


@pytest.mark.parametrize(("typed", "count"), (
    ((), 12),
    ((("people", "2"), ("temperature", "30")), None),
    ((("most", "800"), ("temperature", "12")), None),
    ((("most", "250"), ("system", "2-1"), ("spare", "20"), ("bag", "20"), ("filler", "50")), None),
    ((("units", "us"), ("most", "20 oz"), ("temperature", "70")), None),
))
def test_boat_and_plan_count_the_same_batches(typed, count):
    boat_says, plans = plans_as_led(*typed, **({} if dict(typed).get("temperature") else {"temperature": "20 °C"}))
    total = sum(one["batches"]["value"] for one in plans)
    assert boat_says["batches"]["rough"].startswith(f"{total} by the seam plan")
    assert count in (None, total)
    amounts = [name for one in plans for name in one if name.startswith("amount_")]
    assert amounts
    # coats and the faces that are in no plan are mixed beside them
    assert boat_says["batches"]["value"] >= total
    assert boat_says["buy_gloves"]["value"] == int(dict(typed).get("people", 1)) * (boat_says["batches"]["value"] + 1)
    assert boat_says["buy_cups"]["value"] >= boat_says["batches"]["value"]


def test_the_shopping_list_of_seams_that_are_all_planned_is_what_their_plan_uses():
    """Each mix of the plan is a cup and a stick, each of putty a bag, each of liquid a sheet of tray film."""
    seams = (("joints.0.angle", "90"), ("joints.0.length", "1.5"), ("joints.0.copies", "9"), ("weave", "no"))
    boat_says, (planned,) = plans_as_led(*seams, temperature="20 °C")
    values, _ = read(moves.module("plan").INPUTS, links.tree(
        [pair for lead in moves.answer("boat", links.tree(seams))["leads"] if of_seams(lead)
         for pair in lead["pairs"]] + [["temperature", "20 °C"]]))
    laid = [one for _, groups, _ in moves.module("plan").planned(values).crews for one in groups]
    assert planned["batches"]["value"] == len(laid) == boat_says["batches"]["value"] > 1
    assert boat_says["buy_cups"]["value"] == sum(1 if one.one_mix else 2 for one in laid)
    assert boat_says["buy_bags"]["value"] == len(laid) == boat_says["buy_tray"]["value"]
    poured = sum(one.putty / (1 + values["filler"]) + one.wet for one in laid)
    assert boat_says["mixed"]["value"] >= poured * (1 - 1e-9)  # what is bought is enough to pour


@pytest.mark.parametrize("seed", range(8))
def test_generated_boats_count_what_their_plans_count(seed):
    """Seams and work as they fall; each plan as the boat's link has it. What is bought is enough for what is poured."""
    rng = random.Random(seed)
    kinds = ("inside", "both", "bulkhead", "outside")
    typed = {"joints": [{"kind": rng.choice(kinds), "copies": str(rng.randint(1, 4)),
                         "thickness": rng.choice(("4", "6", "9")), "angle": str(rng.randint(80, 140)),
                         "length": str(rng.randint(5, 60) / 10), "layers": rng.choice(("1", "2"))} for _ in range(4)]}
    typed.update({"people": str(rng.randint(1, 4)), "temperature": str(rng.randint(14, 30)), "weave": "no",
                  "spare": str(rng.choice((0, 10, 25))), "system": rng.choice(("2-1", "3-1", "1-1"))})
    if rng.random() < 0.4:
        typed["most"] = str(rng.randint(400, 900))
    found = moves.answer("boat", typed)
    assert not found["errors"], found["errors"]
    boat_says = {row["name"]: row for row in found["lines"]}
    total, poured, cups = 0, 0.0, 0
    for lead in found["leads"]:
        if of_seams(lead):
            values, errors = read(moves.module("plan").INPUTS, links.tree(lead["pairs"]))
            assert not errors
            crews = moves.module("plan").planned(values).crews
            laid = [one for _, groups, _ in crews for one in groups]
            total += len(laid)
            poured += sum(one.putty / (1 + values["filler"]) + one.wet for one in laid)
            cups += sum(1 if one.one_mix else 2 for one in laid)
    assert total and boat_says["batches"]["rough"].startswith(f"{total} by the seam plan")
    assert boat_says["buy_bags"]["value"] >= total and boat_says["buy_cups"]["value"] >= cups
    assert boat_says["buy_gloves"]["value"] == int(typed["people"]) * (boat_says["batches"]["value"] + 1)
    assert boat_says["mixed"]["value"] >= poured * (1 - 1e-9)


def test_a_limit_that_nobody_typed_refuses_no_plan():
    """60 seams of 6 m, each more than stays calm by itself: cut for that they were more than 120 pieces, refused."""
    pieces = [{"name": f"Seam {place}", "length": "6", "putty": "60", "wet": "80"} for place in range(60)]
    found = planned(pieces, temperature="20")
    assert found["batches"]["value"] == 60
    assert "more only where one piece needs it" in found["largest"]["rough"]


def test_the_limit_is_never_below_what_the_scale_measures_and_says_so():
    pieces = [{"length": "1", "putty": "60", "wet": "50"}] * 4
    rough = planned(pieces, temperature="30")["largest"]["rough"]
    assert "Above 150 g, one bag or cup can overheat" in rough and "This scale cannot measure a smaller mix" in rough
    fine = planned(pieces, temperature="30", scale="0.1g")["largest"]
    assert fine["value"] <= 0.15 and "scale" not in fine["rough"]


def test_few_large_batches_rather_than_many_that_the_scale_makes_larger():
    """Under one limit each batch takes as many seams as it may: two of 0.9 m go into one, not into two made larger."""
    pieces = [{"length": "0.9", "putty": "90", "wet": "75"}] * 4
    found = planned(pieces, temperature="18", people="2")
    assert found["batches"]["value"] == 2


def test_no_mix_is_larger_than_stays_calm_and_the_reason_and_another_limit_are_told():
    """The seams of one go were one batch of 1,640 g under a caution that 300 g can smoke."""
    pieces = [{"name": f"Seam {place}", "length": "2", "putty": "90", "wet": "75"} for place in range(5)]
    found = planned(pieces, temperature="12", people="2")
    assert found["largest"]["value"] <= 0.3 + 1e-9 or "stays calm" in found["largest"]["rough"]
    assert "can overheat" in found["largest"]["rough"] and "Largest mix wanted" in found["largest"]["rough"]
    assert found["batches"]["value"] > 3
    own = planned(pieces, temperature="12", people="2", most="2000 g")
    assert own["batches"]["value"] < found["batches"]["value"]
    assert "as you typed" in own["largest"]["rough"]


def test_a_boat_whose_system_has_no_pot_life_is_counted_by_mass_and_says_so():
    rows = {row["name"]: row for row in moves.answer("boat", {"system": {"by_weight": "3:1"}})["lines"]}
    assert rows["batches"]["rough"].startswith("no plan covers all seams")
    assert rows["batches"]["value"] > 0


def test_tape_without_putty_is_a_piece_of_a_plan():
    (_, insides), (_, outsides) = plans_of()
    own = {(piece["name"], piece.get("face")): piece for piece in insides + outsides
           if piece["name"].startswith(("Side panel butt", "Skeg strip"))}
    assert len(own) == 5 and {piece["putty"] for piece in own.values()} == {"0 g/m"}
    (label, (strip,)), = plans_of(("joints.0.kind", "strip"), ("joints.0.length", "2"))
    assert (label, strip["putty"]) == ("Plan these seams", "0 g/m")
    found = planned([strip], temperature="20")
    assert found["batches"]["value"] == 1 and "amount_putty" not in found


def test_of_as_many_batches_those_are_taken_that_mix_least():
    """The demo boat in mixes of 320 g at most: twelve batches, which took 1,186 g more than needed when the smallest
    largest batch decided first. What is mixed only for the scale is surplus: the rest is the seams' own. Each throat
    is typed, as deep as its panel: then no cove is limited by its width."""
    rows = [dict(row, throat=dict(row)["thickness"]) for row in JOINTS]
    values, _ = read(boat.INPUTS, {"most": "320", "joints": rows})
    counted = boat_pieces.counts(values, hull.seams(values))
    assert counted.batches == 12 and counted.surplus < 0.5


@pytest.mark.parametrize("typed", (
    {}, {"temperature": "71.3 °F", "most": "1 lb", "units": "us", "people": "9"},
    {"filler": "33.333", "spare": "12.345", "bag": "21.5", "cup": "3.25", "temperature": "12.345"},
))
def test_a_boat_asks_its_plans_with_what_their_own_screens_read(typed):
    """Pieces and numbers go in SI, rounded as they are handed over: both screens count the same work."""
    values, _ = read(boat.INPUTS, typed)
    for _, shared, some in boat_pieces.plans(values, hull.seams(values)):
        asked = batches_counted.plan_values(values, tuple([own for own, _ in some]))
        pairs = boat_pieces._pairs([own for own, _ in some]) + shared
        if values["temperature"] is None:
            pairs = [*pairs, ["temperature", "20 °C"]]
        (lead,) = moves.in_text([{"pairs": pairs}], reader(values["units"]))
        own, errors = read(plan.INPUTS, links.tree([*lead["pairs"], ["units", values["units"]]]))
        assert errors == []
        for name in ("people", "temperature", "most", "filler", "left_putty", "left_wet", "spare"):
            assert asked[name] == own[name], name
        fields = ("length", "putty", "wet", "layers", "position", "place")
        assert [[row[one] for one in fields] for row in asked["pieces"]] == [
            [row[one] for one in fields] for row in own["pieces"]]
    assert batches_counted.plan_values(values, (batches_counted.Piece("", 101.0, 0.1, 0.1, 1.0),)) is None


def test_what_one_question_counted_is_not_kept_for_the_next(monkeypatch):
    """Each question makes its plans, each once for lines, drawings and leads; nothing of it stays in the engine."""
    made, real = [], batches_counted.day.Plan
    monkeypatch.setattr(batches_counted.day, "Plan", lambda *asked, **more: made.append(1) or real(*asked, **more))
    counts = []
    for _ in range(2):
        made.clear()
        leads = [lead for lead in moves.answer("boat", {})["leads"] if of_seams(lead)]
        counts.append(len(made))
    assert counts == [len(leads)] * 2


def test_putty_without_tape_is_a_piece_of_a_plan():
    (_, (piece,)), = plans_of(*SEAM, ("joints.0.layers", "0"))
    assert piece["wet"] == "0 g/m"
    found = planned([piece], temperature="20")
    assert found["batches"]["value"] == 1 and "amount_wet" not in found


def test_a_boat_of_tape_alone_buys_no_bags_and_no_filler():
    asked = (("joints.0.kind", "strip"), ("joints.0.length", "2"), ("joints.0.copies", "3"), ("weave", "no"))
    rows = {row["name"]: row for row in moves.answer("boat", links.tree(asked))["lines"]}
    (_, pieces), = plans_of(*asked)
    count = planned(pieces, temperature="20")["batches"]["value"]
    assert rows["batches"]["value"] == count
    assert rows["batches"]["rough"].startswith(f"{count:.0f} by the seam plan")
    assert rows["buy_cups"]["value"] == rows["buy_tray"]["value"] == count
    assert "buy_bags" not in rows and "filler" not in rows


def test_the_plans_pour_what_the_boat_counts():
    """Putty to place and liquid resin, each copy and each face: all of it is in the plans, and each piece takes its own
    there, rounded up to a gram a metre."""
    compared, taped, puttied = 0, 0, 0
    for request in cases.requests("boat", 120, seed=5):
        values, errors = read(boat.INPUTS, links.tree(request["pairs"]))
        if errors or checked(boat.CHECKS, values):
            continue
        work = hull.seams(values)
        for _, spec, made, _, _ in work:
            wet = sum(seam.wet_out(face, spec, values["tray"]) for face in made.faces)
            assert wet == pytest.approx(made.wet_out + made.ply_takes + values["tray"] * made.taped, rel=1e-9)
        sides = boat_pieces.sorted_faces(work, values)
        sums = hull.totals(work)
        putty = sum(piece[2] for side in sides for piece in side) * (1 - values["tooling"])
        assert putty == pytest.approx(sums.putty * values["putty_density"], rel=1e-9)
        wet = sum(piece[3] for side in sides for piece in side)
        assert wet == pytest.approx(sums.wet_out + sums.ply_takes + values["tray"] * sums.taped, rel=1e-9)
        compared += len(work)
        for name, length, placed, laid, layers, planned in [piece for side in sides for piece in side]:
            assert (planned.name, planned.layers) == (name, layers)
            assert 0 <= planned.length - length <= 0.01 + 1e-9
            assert -1e-9 <= planned.putty - placed / length <= 0.001 + 1e-9
            assert -1e-9 <= planned.wet - laid / length <= 0.001 + 1e-9
            taped, puttied = taped + (planned.wet > planned.putty), puttied + (planned.putty > planned.wet)
    assert compared > 20 and taped > 5 and puttied > 5


def test_the_filler_that_is_bought_is_enough_for_the_putty_that_is_poured():
    """Two copies of 2.4 m at 110 degrees: 422 g of putty take 116 g of filler; the plan mixes a tenth more, 128 g."""
    asked = (("joints.0.angle", "110"), ("joints.0.length", "2.4"), ("joints.0.copies", "2"), ("most", "500"))
    (_, pieces), = plans_of(*asked)
    bought = {row["name"]: row for row in moves.answer("boat", links.tree(asked))["lines"]}["filler"]
    poured = planned(pieces, temperature="20", one_mix="never", most="500")
    assert poured["batches"]["value"] == 1 and "128 g of filler" in poured["amount_putty"]["rough"]
    assert bought["value"] == pytest.approx(0.422 / 1.38 * 0.38 * 1.1, abs=0.0005) and bought["text"] == "128 g"

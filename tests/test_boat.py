"""The boat: sums over joints, packs, cut lists and what is refused."""
from itertools import product
from math import pi, radians, sin, tan

import cases
import pseudo
import pytest
from covemix.shared.boat import boat, boat_lines, boat_pieces, boat_rows, hull, shopping
from covemix.shared.catalogue.demo_boat import JOINTS, SURFACES
from covemix.shared.door import moves
from covemix.shared.forms import inputs, links
from covemix.shared.forms.inputs import read
from covemix.shared.kit import kit
from covemix.shared.seam import joint, seam
from covemix.shared.words.lines import as_data
from covemix.shared.words.written import reader
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.optimize import LinearConstraint, milp

ONE = (("joints.0.name", "Chine"), ("joints.0.angle", "110"), ("joints.0.length", "2"), ("joints.0.copies", "2"))


def asked(*pairs):
    return moves.answer("boat", links.tree(pairs))


def lines_of(*pairs):
    found = asked(*pairs)
    assert found["errors"] == []
    return {row["name"]: row for row in found["lines"]}


def values_of(*pairs):
    values, errors = read(boat.INPUTS, links.tree(pairs))
    assert not errors
    boat.check(values)
    return values


def test_the_demo_boat_opens_ready():
    found = lines_of()
    for name in ("resin", "packs", "putty", "tape_1", "ply_1", "added", "buy_gloves", "spreaders"):
        assert name in found
    assert sum(name.startswith("joint_") for name in found) == len(JOINTS)
    for row in found.values():
        if row["part"] in ("buy", "cut"):
            assert row["rough"], row["name"]  # each line says how it was reckoned


def test_one_joint_twice_is_the_joint_move_twice():
    """The same seam through both moves: what stays in place and what is laid are equal."""
    one = {row["name"]: row for row in moves.answer("joint", links.tree((
        ("angle", "110"), ("length", "2"), ("copies", "2"))))["lines"]}
    found = lines_of(*ONE)
    assert found["joint_0"]["value"] == pytest.approx(one["putty_in_place"]["value"], rel=1e-12)
    assert found["added"]["value"] == pytest.approx(one["added"]["value"], rel=1e-12)
    assert found["tape_1"]["value"] == pytest.approx(one["tape_1"]["value"], rel=1e-12)


def test_a_joint_put_into_the_boat_is_the_same_seam_there():
    """Everything of its own travels: faces of the layers, bevel, throat, edges. What holds for the whole boat stays."""
    carried, names = 0, {"units", *(item.name for item in boat.INPUTS)}
    for request in cases.requests("joint", 150, seed=17):
        values, errors = read(joint.INPUTS, links.tree(request["pairs"]))
        if errors or inputs.checked(joint.CHECKS, values):
            continue
        leads = moves.in_text(joint.leads(values), reader())
        row = next(lead["pairs"] for lead in leads if lead.get("adds") == "joints")
        shared = [pair for pair in request["pairs"] if pair[0] in names and pair[0] in values]
        (_, spec, there, _, _), = hull.seams(values_of(*row, *shared, ("roll", "500 m"), ("ply_roll", "500 m"),
                                                       ("batch", "5000 g")))
        here = joint.reckoned(values).seam
        assert [one.side for one in spec.layers] == [one["side"] for one in values["layers"]]
        assert there.glass == pytest.approx(here.glass, rel=1e-4)
        assert there.putty == pytest.approx(here.putty, rel=1e-4, abs=1e-10)
        assert there.taped == pytest.approx(here.taped, rel=1e-4)
        carried += 1
    assert carried > 40


def test_the_faces_of_layers_are_words_and_others_are_refused():
    layers = (("joints.0.layers", "2"), ("joints.0.kind", "both"))
    two = {row["name"]: row for row in asked(*ONE, *layers)["lines"]}
    one = {row["name"]: row for row in asked(*ONE, *layers, ("joints.0.faces", "In : out"))["lines"]}
    assert one["tape_1"]["value"] == pytest.approx(two["tape_1"]["value"] / 2)
    error, = asked(*ONE, ("joints.0.faces", "in : up"))["errors"]
    assert error["field"] == "joints.0.faces" and "Chine" in error["message"] and "each, in or out" in error["message"]


def test_the_epoxy_of_one_seam_worked_by_hand():
    """Plane geometry and arithmetic from the remembered losses: every gram of the list written out once."""
    a, t = radians(110), 0.006
    h = a / 2
    r = t * sin(h) / (1 - sin(h))
    area = r * r * (1 / tan(h) - (pi - a) / 2)
    placed = area * 4 * 1100 / 0.88
    batches = 1  # 356 g of putty and 190 g of wet-out, so much may be mixed at a time; the weave is filled later
    putty = placed + batches * 0.026
    tape_area = 0.075 * 4
    wet = 0.3 * tape_area * 0.55 / 0.45 + 0.115 * 4 * 0.07 + 0.04 * tape_area + 0.12 * tape_area
    wet += (batches + 1) * 0.036
    asked = (*ONE, ("most", "500 g"))
    found, values = lines_of(*asked), values_of(*asked)
    # 258 g and 190 g of liquids go into one mix for both: a scale of 1 g would measure no less wet-out by itself
    surplus = boat_pieces.counts(values, hull.seams(values)).surplus
    assert abs(surplus) < 1e-9
    assert found["mixed"]["value"] == pytest.approx((putty / 1.38 + wet) * 1.1 + surplus, rel=1e-9)
    assert found["filler"]["value"] == pytest.approx(putty * 0.38 / 1.38 * 1.1, rel=1e-9)
    assert found["filler"]["rough"].endswith("with 10% spare")
    assert found["batches"]["value"] == batches + 1
    assert found["buy_gloves"]["value"] == batches + 1 + 1


def test_angles_along_a_row_are_integrated():
    """A row's angles and stretches are the joint's stations."""
    row = lines_of(("joints.0.angle", "95 : 120 : 150"), ("joints.0.length", "0.4 : 1.1"))["joint_0"]
    same = {line["name"]: line for line in moves.answer("joint", links.tree((
        ("angle_is", "stations"), ("stations.0.at", "0"), ("stations.0.angle", "95"), ("stations.1.at", "0.4"),
        ("stations.1.angle", "120"), ("stations.2.at", "1.5"), ("stations.2.angle", "150"))))["lines"]}
    assert row["value"] == pytest.approx(same["putty_in_place"]["value"], rel=1e-9)


@settings(deadline=None, max_examples=60)
@given(st.floats(0.1, 12), st.lists(st.sampled_from([0.5, 0.9, 1.0, 2.5, 5.0]), min_size=1, max_size=3, unique=True))
def test_packs_leave_the_least_over(need, sizes):
    """Every combination counted out (brute force): none covers the need with less."""
    counts, held = shopping.packs(need, tuple(sizes))
    least = min(total for total in (sum(c * s for c, s in zip(some, sizes, strict=True))
                                    for some in product(*(range(int(need / s) + 2) for s in sizes)))
                if total >= need - 1e-9 * need)
    assert held == pytest.approx(least, abs=2e-6)
    assert sum(c * s for c, s in zip(counts, sizes, strict=True)) == pytest.approx(held)


def test_packs_of_one_boat_are_the_solvers(outside):
    """scipy.optimize.milp (HiGHS): 7.3 kg in packs of 1, 2.5 and 5 kg with the least left over."""
    sizes = (1.0, 2.5, 5.0)
    best = milp(sizes, constraints=LinearConstraint([sizes], 7.3, 50), integrality=[1, 1, 1])
    outside.solved("boat packs", "scipy.optimize.milp (library), HiGHS", best.fun, shopping.packs(7.3, sizes)[1],
            absolute=2e-6)


def test_pieces_are_numbered_in_laying_order_and_all_cut_once():
    """Inside before the hull is turned, outside after; each number once over all cut lists of tape."""
    values = values_of()
    work = boat.seams(values)
    pieces = hull.tape_pieces(work)
    assert [piece[0] for piece in pieces] == list(range(1, len(pieces) + 1))
    late = [piece[2] in seam.LATE for piece in pieces]
    assert late == sorted(late)
    cut = sorted(rows[place][0] for _, _, rows, _, found, _ in hull.cut_lists(pieces, values, "tape")
                 for each in found.cuts for place in each.pieces)
    assert cut == list(range(1, len(pieces) + 1))


def test_pieces_of_one_length_are_told_once_with_their_count_and_numbers():
    """Twelve copies of 1.2 m off one roll; a single piece needs no count."""
    asked = links.tree((("joints.0.kind", "inside"), ("joints.0.length", "1.2"), ("joints.0.copies", "12"),
                        ("joints.1.kind", "inside"), ("joints.1.length", "0.7")))
    rows = {row["name"]: row for row in moves.answer("boat", asked)["lines"]}
    assert rows["cut_t_1_roll_1"]["text"] == "12 × 1.2 m: 1 to 12; 0.7 m: 13"


def test_remnants_go_first_where_they_fit():
    rows = lines_of(*ONE, ("remnants.0.length", "2.1"), ("remnants.0.width", "75"))
    assert rows["cut_t_1_remnant_1"]["value"] == pytest.approx(2.0)
    assert rows["cut_t_1_roll_1"]["value"] == pytest.approx(2.0)
    other = lines_of(*ONE, ("remnants.0.length", "2.1"), ("remnants.0.width", "100"))
    assert "cut_t_1_remnant_1" not in other  # another width is another tape


def test_a_row_that_changes_changes_the_answer_and_only_its_own():
    """What a phone keeps from the last key press must never be the answer to another question."""
    first = lines_of()
    changed = [(f"{group}.{place}.{name}", text) for group, rows in (("joints", JOINTS), ("surfaces", SURFACES))
               for place, row in enumerate(rows) for name, text in row]
    thicker = [(name, "9 mm" if name == "joints.0.thickness" else text) for name, text in changed]
    second = lines_of(*thicker)
    assert second["joint_0"]["value"] > first["joint_0"]["value"]
    assert second["joint_1"] == first["joint_1"]
    assert lines_of(*changed) == first
    other = lines_of(*changed, ("flank", "25"))
    assert other["joint_0"]["value"] < first["joint_0"]["value"]  # a wider flank caps the cove sooner
    us = lines_of(*changed, ("units", "us"))
    assert us["joint_1"]["value"] == pytest.approx(first["joint_1"]["value"], rel=2e-3)
    assert " in" in us["joint_1"]["text"]


def test_no_densities_no_weights_but_words():
    found = lines_of(*ONE, ("system.by_volume", "3:1"), ("system.by_weight", ""), ("system.id", ""))
    assert found["resin"]["text"]


@pytest.mark.parametrize(("pairs", "field", "words"), (
    ((("joints.0.name", ""),), "joints", "No joints yet"),
    ((("joints.0.thickness", "0"),), "joints.0.thickness", "more than 0"),
    ((("joints.0.name", "Keel"), ("joints.0.angle", "95 : 100 : 105"), ("joints.0.length", "1 : 1 : 1")),
     "joints.0.length", "Keel: type one length"),
    ((("joints.0.angle", "90"), ("joints.1.angle", "185")), "joints.1.angle", "less than 180°"),
    ((("joints.0.width", "20"), ("joints.0.angle", "60")), "joints.0.width", "too narrow"),
    ((("joints.0.radius", "80"),), "joints.0.width", "too narrow"),
    ((("joints.0.angle", "90"), ("joints.0.gap", "50")), "joints.0.gap", "Opening too wide"),
    ((("joints.0.kind", "strip"), ("joints.0.layers", "0")), "joints.0.layers", "add a layer"),
    ((("joints.0.angle", "170"), ("joints.0.layers", "0")), "joints.0.layers", "Add a layer"),
    ((("joints.0.angle", "90"), ("batch", "60"), ("bag", "60")), "most", "bag and cup"),
    ((("joints.0.angle", "90"), ("roll", "2")), "reach", "roll"),
    ((("joints.0.angle", "90"), ("reach", "0.2")), "reach", "stagger"),
))
def test_bad_input_is_told_at_its_field(pairs, field, words):
    found = asked(*pairs)
    assert found["lines"] == []
    assert [(error["field"], words in error["message"]) for error in found["errors"]] == [(field, True)]


def test_a_boat_travels_as_a_link():
    """Round trip: pairs to tree to pairs, nothing lost, and the same answer."""
    pairs = [(f"joints.{place}.{name}", text) for place, row in enumerate(JOINTS) for name, text in row]
    again = links.pairs(boat.INPUTS, links.tree(pairs))
    assert lines_of(*again) == lines_of(*pairs)


def test_defaults_of_the_boat_are_those_of_the_joint():
    for item in boat.INPUTS:
        for other in joint.INPUTS:
            if item.name == other.name and item.name != "radius":
                assert getattr(item, "default", "") == getattr(other, "default", "")
    for name, value in seam.ASSUMED.items():
        declared = next((item for item in joint.INPUTS if item.name == name and item.kind == "number"), None)
        if declared is not None and declared.default is not None and name not in ("gap", "bevel", "radius"):
            values = {"units": "metric", "_understood": []}
            assert declared.read(None, name, values) == pytest.approx(value), name


def test_only_what_holds_for_the_whole_boat_gets_from_it_into_a_seam():
    """A seam is made from the row and these: another input of the boat of the same name would slip in."""
    names = {item.name for item in boat.INPUTS if item.name != "joints"}
    assert names & set(seam.Spec._fields) == set(boat_rows.OWN)


def numbers_of(text):
    """Numbers as they are told: "1 to 4, 7"."""
    for run in text.split(", "):
        first, _, last = run.partition(" to ")
        yield from range(int(first), int(last or first) + 1)


def test_cards_for_the_wall_hold_every_piece_of_tape_and_the_putty_once():
    """Each joint's card names its pieces as the cut list numbers them; together the cards place the boat's putty."""
    values = values_of()
    work = hull.seams(values)
    tapes = hull.cut_lists(hull.tape_pieces(work), values, "tape")
    cards = [one for one in as_data(boat.answer(values), reader()) if one["part"] == "wall"]
    joints = as_data(boat_lines.joint_lines(work, values), reader())
    assert [card["label"] for card in cards] == [one["label"] for one in joints]
    named = sorted(number for card in cards for group in card["rough"].split("; ")
                   for number in numbers_of(group.partition(": ")[2]))
    assert named == sorted(piece[0] for _, _, rows, _, _, _ in tapes for piece in rows)
    placed = sum(float(card["text"].partition("putty to place ")[2].partition(" g")[0] or 0) for card in cards)
    found = seam.placed(hull.totals(work).putty * values["putty_density"], values["tooling"]) * 1000
    assert found <= placed <= found + len(cards)  # each card is rounded up


STOCK = (("remnants.0.length", "30 m"), ("remnants.0.name", "Long roll"), ("remnants.1.length", "3.2 m"),
         ("remnants.0.width", "75 mm"), ("remnants.0.weight", "300 g/m2"), ("remnants.1.width", "75 mm"),
         ("remnants.1.weight", "300 g/m2"), ("remnants.2.of", "ply"), ("remnants.2.width", "150 mm"),
         ("remnants.2.length", "12.5 m"), ("remnants.3.width", "60 mm"), ("remnants.3.length", "9 m"))


def test_what_is_cut_off_the_remnants_and_what_is_left_make_their_length():
    """Nothing is lost between the cut list and the rolls: pieces by list, new rolls and what is left add up."""
    lines = lines_of(*STOCK)
    lengths = {"0": 30, "1": 3.2, "2": 12.5}
    cut = sum(one["value"] for name, one in lines.items() if name.startswith("cut_") and "_remnant_" in name)
    left = sum(lines["remnant_" + place]["value"] for place in lengths)
    assert cut + left == pytest.approx(sum(lengths.values()), abs=1e-9)
    without = lines_of()
    assert sum(one["value"] for name, one in lines.items() if name.startswith("cut_")) == pytest.approx(
        sum(one["value"] for name, one in without.items() if name.startswith("cut_")))
    assert lines["remnant_0"]["label"] == "Rest of Long roll"
    assert lines["remnant_3"]["text"] == "not cut" and lines["remnant_3"]["unit"] == ""
    assert any("Long roll, 30 m" in one["label"] for one in lines.values())


def test_what_is_left_can_be_typed_as_it_is_told():
    """The text of a line is what stands in the kit from then on: read back it is the length, down to the centimetre."""
    for units in ("metric", "us"):
        lines = lines_of(*STOCK, ("units", units))
        for place in ("0", "1", "2"):
            told = lines["remnant_" + place]
            typed = {"kind": "roll", "roll": {"name": "x", "of": "ply", "width": "75 mm", "length": told["text"]}}
            values, errors = inputs.read(kit.INPUTS, typed)
            assert not errors
            assert told["value"] - 0.0101 < values["roll"]["length"] <= told["value"] + 1e-9


def test_names_are_the_same_in_every_language():
    """Lines, drawings and leads are known by names that are no text: a cut was once called by the first letter of its
    label."""
    answers = [moves.answer("boat", links.tree(STOCK), language=one) for one in ("en", pseudo.speak())]
    english, other = answers
    assert english["lines"][0]["rough"] != other["lines"][0]["rough"]
    for part in ("lines", "figures"):
        assert [one["name"] for one in english[part]] == [one["name"] for one in other[part]]
    assert [[name for name, _ in one["pairs"]] for one in english["leads"]] == [
        [name for name, _ in one["pairs"]] for one in other["leads"]]


def test_another_screen_reads_the_same_in_every_language(german):
    """What a lead fills in stands there in the reader's own marks and words."""
    answers = [moves.answer("boat", links.tree(STOCK), language=one)["leads"] for one in ("en", german)]
    assert [one["pairs"] for one in answers[0]] != [one["pairs"] for one in answers[1]]
    for mine, other in zip(*answers, strict=True):
        read = [inputs.read(moves.screen_inputs(one["screen"]), links.tree(one["pairs"])) for one in (mine, other)]
        assert [error.field for error in read[0][1]] == [error.field for error in read[1][1]]
        assert without(read[0][0]) == without(read[1][0])


def without(values):
    """What was read of a tree, without the tree itself."""
    if isinstance(values, dict):
        return {key: without(value) for key, value in values.items() if key[0] != "_"}
    return [without(one) for one in values] if isinstance(values, list) else values


def test_wide_peel_ply_serves_the_wide_pieces_first_and_then_the_narrow_ones():
    lines = lines_of(("remnants.0.of", "ply"), ("remnants.0.width", "150"), ("remnants.0.length", "12.5"))
    assert lines["cut_p_2_remnant_1"]["value"] == pytest.approx(6.9, abs=0.1)
    assert lines["cut_p_1_remnant_1"]["value"] + lines["cut_p_2_remnant_1"]["value"] <= 12.5
    assert "cut_p_3_remnant_1" not in lines  # 190 mm is wider than it is


def test_the_shortest_remnant_that_serves_is_cut_first():
    lines = lines_of(*ONE, ("remnants.0.length", "40"), ("remnants.1.length", "4.1"))
    assert lines["remnant_0"]["text"] == "not cut"
    assert lines["remnant_1"]["value"] == pytest.approx(0.1)


def test_a_roll_of_the_kit_is_tape_or_cloth_by_its_weight():
    typed = {"kind": "roll", "roll": {"name": "Blue", "width": "75 mm", "length": "7.2 m"}}
    assert inputs.read(kit.INPUTS, typed)[1][0].field == "roll.of"
    typed["roll"]["of"] = "tape"
    assert inputs.read(kit.INPUTS, typed)[1][0].field == "roll.weight"
    typed["roll"]["of"] = "ply"
    assert not inputs.read(kit.INPUTS, typed)[1]


@pytest.mark.parametrize(("left", "used_up"), [("0.00 m", True), ("0", True), ("0,01", False), ("7.2 m", False)])
def test_a_roll_of_which_nothing_is_left_says_so(left, used_up):
    typed = {"kind": "roll", "roll": {"name": "Blue", "of": "ply", "width": "75 mm", "length": left}}
    lines = moves.answer("kit", typed)["lines"]
    assert [row["name"] for row in lines] == ["summary"] + ["used_up"] * used_up


def test_tape_to_buy_is_what_is_cut_of_the_roll():
    """Pieces are cut to the full millimetre above: what is bought and what comes off the roll are the same feet."""
    for length in ("2.926 m", "2.9257 m", "7.77 ft"):
        row = lines_of(("units", "us"), ("joints.0.length", length))["tape_1"]
        feet = row["text"].partition(" of ")[0]
        assert "; 1 roll, " + feet + " cut from it" in row["rough"]


@pytest.mark.parametrize(("wanted", "width", "told"), (
    (8, 50, False), (12, 50, False), (15, 50, False), (18, 50, True), (22, 50, True), (15, 75, False), (22, 75, False)))
def test_tape_that_is_short_on_bare_panel_is_told_and_no_other(wanted, width, told):
    """By hand at 90 degrees: half of what a tape has left beside a cove of pi/2 R; where the cove gives way to the tape
    it has just what is wanted, which is not short."""
    found = lines_of(("joints.0.angle", "90"), ("joints.0.length", "2"), ("joints.0.width", str(width)),
                     ("flank", str(wanted)))["joint_0"]
    radius = float(found["text"].split("R ")[1].split(" mm")[0])
    left = (width - radius * pi / 2) / 2
    assert (left < wanted - 0.1) == told
    assert (f"only {left:.1f} mm of tape" in found["rough"]) == ("only" in found["rough"]) == told

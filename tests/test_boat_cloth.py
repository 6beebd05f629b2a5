"""Cloth of the boat: its strips cut from rolls and remnants as tape is, told on screen, in tables and in data."""
import pytest
from covemix.shared.boat import boat
from covemix.shared.catalogue.demo_boat import SURFACES
from covemix.shared.door import moves, saved_file
from covemix.shared.files import table_rows
from covemix.shared.forms import inputs, links
from test_cutting import by_milp, lawful

NO_SEAMS = ("joints", "none")
BOTTOM = (("name", "Bottom"), ("work", "sheathe"), ("length", "3 m"), ("widths", "1 : 1.4 : 0.8 m"), ("count", "2"),
          ("cloth_width", "1 m"), ("way", "across"))
DECK = (("name", "Deck"), ("work", "sheathe"), ("area", "9.5 m2"), ("cloth_width", "1 m"))


def typed(*surfaces, also=()):
    return (NO_SEAMS, *((f"surfaces.{place}.{name}", text) for place, row in enumerate(surfaces) for name, text in row),
            *also)


def remnants(*rows):
    return tuple((f"remnants.{place}.{name}", text) for place, row in enumerate(rows)
                 for name, text in zip(("of", "width", "weight", "length", "name"), row, strict=False))


def found_of(*surfaces, also=()):
    values, errors = inputs.read(boat.INPUTS, links.tree(typed(*surfaces, also=also)))
    assert not errors and not inputs.checked(boat.CHECKS, values)
    return boat.reckon(values), values


def told(*surfaces, also=(), language="en"):
    answer = moves.answer("boat", links.tree(typed(*surfaces, also=also)), None, language)
    assert answer["errors"] == []
    return {row["name"]: row for row in answer["lines"]}, answer


ENDS = remnants(("cloth", "1 m", "200", "2.95 m", "Blue end"), ("cloth", "1 m", "200", "1.6 m"),
                ("cloth", "1 m", "160", "9 m", "Light"), ("cloth", "0.9 m", "200", "9 m", "Narrow"),
                ("tape", "1 m", "200", "9 m", "Tape"))


def test_cloth_is_cut_from_remnants_and_rolls_as_the_solver_cuts_it(outside):
    """scipy.optimize.milp (HiGHS): two faces, strips across, two remnants of that width and weight."""
    found, _ = found_of(BOTTOM, also=(*ENDS, ("roll", "4 m")))
    (material, lists), = [one for one in found.cuts if one[1]]
    (width, areal, rows, lengths, cuts, own), = lists
    assert (material, width, areal) == ("cloth", 1.0, 0.2)
    assert [rest["place"] for rest in own] == [0, 1]
    lawful(cuts, lengths, 4000, [2950, 1600])
    assert cuts.proven
    outside.solved("cloth of two faces: rolls, mm from rolls", "scipy.optimize.milp (library), HiGHS",
                   list(by_milp(lengths, 4000, [2950, 1600], 6)), [cuts.rolls, cuts.from_rolls])
    assert sum(piece[5] for piece in rows) == pytest.approx(found.surfaces[0].found.cloth)
    assert [piece[0] for piece in rows] == list(range(1, len(rows) + 1))


def test_the_cut_list_says_what_comes_off_which_and_what_is_left():
    """1 m wide, laps of 50 mm, 25 mm over each edge: strips from -0.025, 0.925, 1.875 and 2.825 m on."""
    lines, answer = told(BOTTOM, also=ENDS)
    each = (1 + 0.4 * 0.975 / 1.5, 1.4, 1.4 - 0.6 * 0.375 / 1.5, 1.4 - 0.6 * 1.325 / 1.5)
    assert lines["cloth_1"]["value"] == pytest.approx(2 * sum(one + 0.05 for one in each))
    assert lines["cloth_1"]["label"] == "Cloth" and "8 pieces; 1 roll, " in lines["cloth_1"]["rough"]
    cut = {name: one for name, one in lines.items() if name.startswith("cut_c_1_")}
    assert sum(one["value"] for one in cut.values()) == pytest.approx(lines["cloth_1"]["value"], abs=0.008)
    assert cut["cut_c_1_remnant_1"]["label"] == "Cloth, 1000 mm wide, 200 g/m²: Blue end, 2.95 m"
    assert lines["remnant_0"]["value"] == pytest.approx(2.95 - cut["cut_c_1_remnant_1"]["value"])
    assert [lines[f"remnant_{place}"]["text"] for place in (2, 3, 4)] == ["not cut"] * 3
    assert lines["surface_0"]["text"].endswith("Cut list: 1 to 8")
    drawn, = [one for one in answer["figures"] if one["name"] == "cut_c_1"]
    assert drawn["title"] == "Cloth, 1000 mm wide, 200 g/m²"
    assert {text for shape in drawn["shapes"] if shape["kind"] == "notes" for text in shape["texts"]} >= set("12345678")
    german, _ = told(BOTTOM, also=ENDS, language="de")
    assert german["cut_c_1_remnant_1"]["label"] == "Glasgewebe, 1000 mm breit, 200 g/m²: Blue end, 2,95 m"


def test_a_strip_that_is_longer_than_a_roll_is_laid_in_pieces_that_lap():
    long = (("work", "sheathe"), ("length", "11.95 m"), ("widths", "0.9 m"), ("cloth_width", "1 m"), ("way", "along"))
    found, _ = found_of(long, also=(("roll", "10 m"),))
    (_, _, rows, _, cuts, _), = found.cuts[2][1]
    assert [piece[5] for piece in rows] == pytest.approx([(12 + 0.05) / 2] * 2) and cuts.rolls == 2
    assert [piece[2] for piece in rows] == ["along", "along"]


def test_of_an_area_the_metres_are_cut_as_they_come():
    """9.5 m2 at 0.95 m a metre are 10 m; two layers are 20 m: off a roll of 50 m, or two pieces that lap by 50 mm."""
    for roll, pieces in (("50 m", [20.0]), ("12 m", [10.025, 10.025])):
        found, _ = found_of((*DECK, ("cloth_layers", "2")), also=(("roll", roll),))
        (_, _, rows, _, cuts, _), = found.cuts[2][1]
        assert [piece[5] for piece in rows] == pytest.approx(pieces) and cuts.rolls == len(pieces)


@pytest.mark.parametrize(("row", "also", "field", "says"), (
    ((*BOTTOM[:-3], ("cloth_width", "110 mm"), ("count", "60")), (), "surfaces.0.cloth_width", "wider cloth"),
    ((("work", "sheathe"), ("area", "5000 m2")), (), "surfaces.0.cloth_width", "wider cloth"),
))
def test_too_much_cloth_is_refused_at_its_field(row, also, field, says):
    error, = moves.answer("boat", links.tree(typed(row, also=also)))["errors"]
    assert error["field"] == field and says in error["message"]


def test_a_table_and_a_program_get_each_piece_of_cloth():
    found, _ = found_of(BOTTOM, DECK, also=ENDS)
    rows = [row for row in table_rows.cuts(found) if row["material"] == "cloth"]
    assert len(rows) == 8 + 1 and {row["joint"] for row in rows} == {"Bottom", "Deck"}
    assert {row["face"] for row in rows if row["joint"] == "Bottom"} == {"across"}
    bought, = [row for row in table_rows.shopping(found) if row["item"] == "cloth"]
    assert bought["length"] == pytest.approx(sum(row["length"] for row in rows)) and bought["count"] == 1
    made = saved_file.filed({"file": "boat.cuts.csv", "pairs": typed(BOTTOM, DECK, also=ENDS), "decimal": "."})
    cloth = [line for line in made["text"].splitlines() if "across the length" in line]
    assert len(cloth) == 8 and all(";Cloth;" in line or ",Cloth," in line for line in cloth), made["text"]


def test_the_demo_boat_cuts_its_cloth():
    (_, _, rows, _, _, _), = boat.reckon(inputs.read(boat.INPUTS, {})[0]).cuts[2][1]
    assert {piece[1]["name"] for piece in rows} == {dict(SURFACES[2])["name"]}

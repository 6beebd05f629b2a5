"""Labels: a thing of the kit is what was typed, and nothing else; what it does not know it does not claim."""
import pytest
from covemix.shared.clock import cure
from covemix.shared.door import handover, moves
from covemix.shared.forms import inputs, links
from covemix.shared.forms.inputs import Choice, Number, Parts, Pick
from covemix.shared.mix import ratio
from covemix.shared.things.records_shed import RECORDS
from covemix.shared.words import written
from covemix.shared.words.texts import said
from covemix.shared.words.written import reader

KINDS = {record.name: record for record in RECORDS}
MINE = {"name": "Mine", "by_weight": "100:44"}


def answer(move, **typed):
    return moves.answer(move, typed)


def fields(found):
    return [error["field"] for error in found["errors"]]


def lines(found):
    assert found["errors"] == []
    return {line["name"]: line for line in found["lines"]}


# a new thing starts empty --------------------------------------------------------------------------------------------


@pytest.mark.parametrize("record", RECORDS, ids=lambda record: record.name)
def test_a_new_thing_of_the_kit_starts_with_nothing_claimed(record):
    """With nothing but a name typed no number, no parts and no choice has a value of its own."""
    tree = {"name": "Mine"}
    values = {"units": "metric", "_tree": tree, "_understood": []}
    errors = []
    inputs.read_into(values, record.fields, tree, "", errors)
    asked = [error.field for error in errors]
    for field in record.fields:
        if isinstance(field, (Number, Parts)):
            assert field.name in asked or not values[field.name], field.name
        if isinstance(field, Choice):
            assert values[field.name] in ("", "open"), field.name  # "open": the label does not say
    pick = next(item for item in moves.module("kit").INPUTS if item.name == record.name)
    assert pick.default == ""


@pytest.mark.parametrize("record", RECORDS, ids=lambda record: record.name)
def test_a_thing_kept_from_a_name_alone_is_asked_for_its_figures(record):
    found = answer("kit", kind=record.name, **{record.name: {"name": "Mine"}})
    assert fields(found) and all(field.startswith(record.name + ".") for field in fields(found))


def test_a_system_that_was_typed_and_kept_says_what_was_typed():
    told = lines(answer("kit", kind="system", system=MINE))["summary"]
    assert told["text"] == "Parts by weight: 100:44" and told["rough"] == ""


@pytest.mark.parametrize("way", ["pumps", "syringes", "graduated", "stick"])
@pytest.mark.parametrize("system", [MINE, dict(MINE, id="1-1"), dict(MINE, id="3-1")])
def test_a_way_that_needs_volumes_asks_for_them_and_gives_no_figure(way, system):
    """Old main: "11 strokes each, in ratio" by the built-in row's 1 : 1."""
    found = answer("measure", system=system, way=way)
    assert fields(found) == ["system.densities"] and found["lines"] == []


def test_by_weight_it_is_answered_from_what_was_typed_alone():
    """By hand: 240 g of 100 : 44 are 166.7 g and 73.3 g."""
    found = lines(answer("ratio", system=dict(MINE, id="1-1"), amount="240"))
    assert found["part_a"]["value"] == pytest.approx(0.24 * 100 / 144)
    assert found["part_b"]["value"] == pytest.approx(0.24 * 44 / 144)
    assert "mixed_volume" not in found and "by_volume" not in found


@pytest.mark.parametrize(("move", "typed", "field"), [
    ("heat", {"air": "20"}, "system.pot_time"),
    ("cure", {"air": "20"}, "system.speed"),
    ("plan", {"temperature": "20", "start": "9:00", "pieces": [{"length": "4", "putty": "150", "wet": "90"}]},
     "system.pot_time"),
])
def test_what_a_screen_needs_and_the_label_does_not_say_is_asked_for(move, typed, field):
    found = answer(move, system=dict(MINE, id="3-1"), **typed)
    assert field in fields(found) and found["lines"] == []


# built in or typed, told apart ---------------------------------------------------------------------------------------


def test_an_answer_says_whether_its_label_is_built_in_or_typed():
    told = [lines(answer("ratio", system=system))["whose_label"] for system in (
        "3-1", MINE, dict(MINE, id="3-1"), {"id": "3-1", "densities": "1.1:1"})]
    assert [line["text"] for line in told] == ["Three to one: built in, figures from memory", "Mine: as typed",
                                              "Mine: as typed", "Three to one: built in, figures from memory"]
    assert told[3]["rough"] == "changed: Densities"


def test_the_kit_says_what_still_stands_as_built_in():
    row = dict(KINDS["system"].row("3-1"), name="Mine")
    told = lines(answer("kit", kind="system", system=row))["as_built_in"]["text"]
    assert "Densities" in told and "Pot life" in told
    assert "as_built_in" not in lines(answer("kit", kind="system", system=MINE))
    assert "as_built_in" not in lines(answer("kit", kind="system", system=dict(MINE, densities="1.15 : 0.98 g/mL")))


# typed over a built-in row -------------------------------------------------------------------------------------------


def picks():
    return [(record, row, name) for record in RECORDS for row in record.rows for name in record.own]


@pytest.mark.parametrize(("record", "row", "name"), picks())
def test_typed_over_a_row_the_thing_is_what_was_typed(record, row, name):
    """Each field that makes it another thing, over each built-in row: nothing of the row is left, also on a link."""
    field = next(one for one in record.fields if one.name == name)
    typed = {"parts": "7 : 2", "choice": "cloth" if row[0] == "ply" else "ply", "number": "7.77", "phone": "112",
             "text": "Anna"}[field.kind]
    pick = Pick("thing", "Thing", record)
    assert pick.tree({"id": row[0], name: typed}, "thing") == {name: typed}
    assert links.pairs((pick,), {"thing": {"id": row[0], name: typed}}) == [("thing." + name, typed)]
    same = dict(row[3]).get(name)
    if same:  # word for word what the row says: still the row
        assert pick.tree({"id": row[0], name: same}, "thing")["id"] == row[0]


def test_what_does_not_make_it_another_thing_is_read_over_the_row():
    system = moves.module("ratio").INPUTS[0].tree({"id": "3-1", "densities": "1.12:0.97"}, "system")
    assert system["by_volume"] == "3 : 1" and system["densities"] == "1.12:0.97"


# a label that contradicts itself -------------------------------------------------------------------------------------

OFF = {"name": "Mine", "by_weight": "100:44", "by_volume": "1:1", "densities": "1.15:0.98"}


@pytest.mark.parametrize("system", [OFF, dict(OFF, densities="")])
@pytest.mark.parametrize("way", [way for way, _ in ratio.WAYS])
def test_a_label_that_contradicts_itself_gives_no_strokes_marks_or_readings(way, system):
    found = answer("measure", system=system, way=way)
    assert fields(found) == ["system.by_volume"] and found["lines"] == [] and found["figures"] == []


@pytest.mark.parametrize("screen", [name for name, _ in moves.SCREENS if "system" in [
    item.name for item in moves.screen_inputs(name)]])
def test_no_screen_gives_a_figure_by_it(screen):
    """Safety has no figure that rests on a ratio: what a product can do to somebody is told whatever its label."""
    pairs = [["system." + name, text] for name, text in OFF.items()] + [["kind", "system"]]
    for move, found in moves.screen(screen, links.tree(pairs))["answers"]:
        if move == "safety":
            assert not fields(found) and not [row for row in found["lines"] if row["value"] is not None]
        elif "system" in [item.name for item in moves.module(move).INPUTS]:
            assert "system.by_volume" in fields(found) and not found["lines"], move


def test_the_kit_says_so_on_keeping():
    found = answer("kit", kind="system", system=OFF)
    assert fields(found) == ["system.by_volume"]
    assert "off the ratio by volume: too much for any batch" in found["errors"][0]["message"]


def test_a_label_within_the_limit_of_the_trade_is_used():
    """By hand: 100 : 28.4 by weight is 2.9998 : 1 by volume at 1.15 and 0.98 g/mL."""
    agrees = {"by_weight": "100:28.4", "by_volume": "3:1", "densities": "1.15:0.98"}
    assert lines(answer("measure", system=agrees, way="pumps"))["strokes_a"]
    assert lines(answer("measure", system=dict(agrees, densities=""), way="scale"))["reading_a"]


# the rest of the label -----------------------------------------------------------------------------------------------


def test_handle_after_has_its_place_and_is_told():
    label = dict(MINE, cure_handle="12", cure_temperature="20")
    found = lines(answer("cure", air="20", system=label))
    assert found["handle"]["value"] == pytest.approx(12 * 3600)
    assert "recoat" not in found and "full" not in found  # nobody said them, and the hardener's speed is not known
    known = lines(answer("cure", air="20", system=dict(label, speed="medium")))
    assert known["handle"]["value"] == found["handle"]["value"] and known["full"]["value"]


def test_only_labels_with_it_are_told_a_time_to_handle():
    assert "handle" not in lines(answer("cure", air="20", system="3-1"))
    assert [row[0] for row in cure.stages_of({**dict.fromkeys(
        [name for name, _, _ in cure.ROWS]), "speed": ""})] == []


def parts_of(declared):
    found = [item for item in declared if isinstance(item, Parts)]
    for item in declared:
        found += parts_of(item.record.fields) if item.kind == "pick" else []
        found += parts_of(item.fields) if item.kind == "group" else []
    return found


PARTS = {item.name: item for screen, _ in moves.SCREENS for item in parts_of(moves.screen_inputs(screen))}


@pytest.mark.parametrize("name", sorted(PARTS))
@pytest.mark.parametrize("between", [" ", "  ", ", ", "\u00a0", "\t", " ; ", " to "])
def test_numbers_in_a_row_are_read_with_whatever_stands_between_them(name, between):
    item = PARTS[name]
    texts = [["1.15", "0.98"], ["1,15", "0,98"], ["1 1/2", "1"], ["1½", "½"]]
    if item.low > 0.5:
        texts = [["51.5", "39.8"], ["51,5", "39,8"], ["50 1/2", "51"], ["50½", "61"]]
    for numbers in texts:
        numbers = (numbers * item.most)[:max(2, item.least)]
        values = {"units": "metric", "_understood": []}
        plain = item.read(":".join(numbers), name, {"units": "metric", "_understood": []})
        assert item.read(between.join(numbers), name, values) == plain, numbers
        if between.strip() in ("", ","):
            assert [name, " : ".join(numbers)] in moves.understood(values, reader())


def test_a_unit_behind_the_last_holds_for_all_with_a_blank_between_too():
    item = PARTS["densities"]
    for text in ("1.15 0.98 g/mL", "1.15 g/mL 0.98 g/mL", "1150 980 kg/m3"):
        assert item.read(text, "d", {"units": "us", "_understood": []}) == pytest.approx((1150, 980))


def test_a_filler_of_which_nobody_said_it_may_carry_load_is_asked_about():
    own = {"doses": "8:15:25:38:50", "density": "1.3", "loose": "0.2", "name": "Dust"}
    found = lines(answer("thicken", thicken="yes", filler=own))
    assert found["may_it_carry"]["rank"] == "ask" and "Dust" in found["may_it_carry"]["text"]
    assert "may_it_carry" not in lines(answer("thicken", thicken="yes", filler=dict(own, carries="yes")))
    assert "may_it_carry" not in lines(answer("thicken", thicken="yes"))


def origin_of(pairs):
    return [text for name, text in pairs if name == "system.origin"]


def test_what_a_link_brings_says_so_and_no_link_takes_it_along():
    """Old main: a system that came by a link was "as typed"."""
    pairs = [["system.name", "Harbour mix"], ["system.by_weight", "100:44"]]
    assert origin_of(handover.brought("pour", pairs, 60)["pairs"]) == ["link"]
    confirmed = [*pairs, ["system.origin", "label"]]
    link = handover.handed("pour", confirmed)["link"]
    assert not origin_of(link), "an older build knows no such name"
    declared = moves.screen_inputs("pour")
    assert handover.opened(declared, link, 60)[0][-1] == ["system.origin", "link"]
    assert not handover.brought("pour", [["system", "2-1"]], 10)["pairs"][1:], "a row is no figure of the link"
    assert handover.opened(declared, pairs, 60)[0] == pairs, "a form without scripts says what was typed"


@pytest.mark.parametrize(("origin", "whose"), [("", "as typed"), ("label", "compared with its label"),
                                               ("row", "started from built-in figures"), ("link", "from a link")])
def test_the_answer_says_where_a_label_is_from(origin, whose):
    told = lines(answer("ratio", system={"name": "Mine", "by_weight": "100:44", "origin": origin}))
    assert told["whose_label"]["text"] == "Mine: " + whose
    assert ("by_link" in told) == (origin == "link")


@pytest.mark.parametrize("record", RECORDS, ids=lambda record: record.name)
def test_every_kind_of_thing_says_where_it_is_from_and_an_old_one_reads_on(record):
    row = dict(record.rows[0][3]) or {"ambulance": "112"}
    kept = moves.answer("kit", {"kind": record.name, record.name: dict(row, name="Mine", origin="link")})
    assert kept["lines"][0]["text"].endswith(" · from a link")
    old = moves.answer("kit", {"kind": record.name, record.name: dict(row, name="Mine")})
    assert old["errors"] == []
    assert " · " not in old["lines"][0]["text"]


def test_where_it_is_from_alone_is_no_figure():
    assert answer("ratio", system={"origin": "link"})["errors"] == []


@pytest.mark.parametrize("record", RECORDS, ids=lambda record: record.name)
def test_a_built_in_thing_is_called_by_a_message_and_ones_own_by_its_name(record):
    """In English the message is the very name that a thing started from the row keeps as text."""
    for row, _, _, typed in record.rows:
        name = dict(typed).get("name")
        if name:
            called = record.called({"id": row, "name": name})
            assert called in written.sentences("en") and said(called, written.reader()) == name
        assert record.called({"id": row, "name": "Mine"}) == record.called({"id": "", "name": "Mine"}) == (0, "Mine")

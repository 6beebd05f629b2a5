"""Inputs: each kind reads what is meant, refuses the rest at its field, and is described by its declaration."""
import re

import pytest
from covemix.shared.door import moves
from covemix.shared.forms import inputs, links
from covemix.shared.forms.errors import InputError
from covemix.shared.forms.inputs import Amount, Choice, Group, Number, Parts, Pick, Text
from covemix.shared.things.records import Record
from covemix.shared.words.texts import said
from covemix.shared.words.units import SYSTEMS
from covemix.shared.words.written import reader
from house import app
from starlette.testclient import TestClient

WIDTH = Number("width", "Width", unit="mm", low=1, high=100, default=25)
JAR = Record(
    "jar",
    "Jar",
    (
        Text("name", "Name"),
        Number("size", "Size", unit="mL", low=1, high=1000),
        Number("lid", "Lid", unit="g", low=0, high=50, optional=True),
    ),
    rows=(("small", "Small jar", "from memory", (("name", "Small"), ("size", "100 mL"))),),
)


def plain(what):
    """What is said, as a reader of English reads it."""
    return said(what, reader())


def read(item, typed, **others):
    """One input asked alone: its value, or {field: message}."""
    tree = dict({item.name: typed}, **others)
    values, errors = inputs.read((item,), tree)
    return values.get(item.name) if not errors else {error.field: plain(error.message) for error in errors}


def refused(item, typed, **others):
    found = read(item, typed, **others)
    assert isinstance(found, dict) and list(found), found
    return found


@pytest.mark.parametrize("typed", ["1e400", "1e308", "1e-9", "2.5E+3", "1 e3"])
def test_a_number_as_machines_write_it_is_asked_for_in_plain_digits(typed):
    assert "plain digits, like 1500 or 0.001" in refused(WIDTH, typed)["width"]


@pytest.mark.parametrize(
    "typed, metres",
    [
        ("12,5", 0.0125),
        ("12.5", 0.0125),
        ("1/2 in", 0.0127),
        ('3 1/2"', 0.0889),
        ("½ in", 0.0127),
        ("1.2 cm", 0.012),
        ("12.5mm", 0.0125),
        ("12.5 MM", 0.0125),
        (12.5, 0.0125),
        (30, 0.03),
        ("", 0.025),
        ("  ", 0.025),
        (None, 0.025),
    ],
)
def test_a_number_reads_in_its_unit_or_the_one_behind_it(typed, metres):
    assert read(WIDTH, typed) == pytest.approx(metres, rel=1e-12)


@pytest.mark.parametrize(
    "typed",
    [
        "abc",
        "1e400",
        "NaN",
        "-5",
        "0",
        "101",
        "٣",
        "1,500.2",
        "12 g",
        "12 furlongs",
        "9" * 300,
        True,
        [],
        {"a": "b"},
        1e300,
        5e-324,
        float("inf"),
        "0.99 mm",
        "4 in",
    ],
)
def test_a_number_that_cannot_be_is_refused_in_one_sentence_at_its_field(typed):
    found = refused(WIDTH, typed)
    assert list(found) == ["width"]
    assert found["width"].startswith("Width: ") and len(found["width"]) < 120


def test_a_number_in_us_units_has_its_default_and_its_limits_in_inches():
    assert read(WIDTH, "1", units="us") == pytest.approx(0.0254)
    assert read(WIDTH, "", units="us") == pytest.approx(0.025, abs=0.00002)
    assert "in" in refused(WIDTH, "40", units="us")["width"]


def test_the_limits_that_a_message_names_are_themselves_read():
    for item in (
        WIDTH,
        Number("heat", "Heat", unit="degC", low=-10, high=50),
        Number("mass", "Mass", unit="g", low=5, high=5000),
    ):
        for system in ("metric", "us"):
            low, high = refused(item, "99999999", units=system)[item.name].partition(": type ")[2].split(" to ")
            for limit in (low, high):
                read_back = read(item, limit, units=system)
                if isinstance(read_back, dict):
                    pytest.fail(f"{item.name} in {system}: {limit} is named and refused: {read_back}")


def test_optional_whole_and_above():
    assert read(Number("n", "N", optional=True), "") is None
    assert refused(Number("n", "N"), "") == {"n": "N: type a number"}
    assert refused(Number("n", "N", unit="g"), None) == {"n": "N: type a number (g)"}
    assert read(Number("n", "N", whole=True), "3") == 3
    assert refused(Number("n", "N", whole=True), "3.5") == {"n": "N: type a whole number"}
    assert "more than 0" in refused(Number("n", "N", above=True), "0")["n"]


def test_a_field_of_the_past_is_still_read_and_the_new_name_goes_first():
    renamed = Number("width", "Width", unit="mm", low=1, high=100, default=25, was=("breadth",))
    assert inputs.read((renamed,), {"breadth": "30"})[0]["width"] == pytest.approx(0.03)
    assert inputs.read((renamed,), {"breadth": "30", "width": "40"})[0]["width"] == pytest.approx(0.04)


def test_a_choice_takes_its_values_only():
    side = Choice("side", "Side", (("in", "Inside"), ("out", "Outside", "seen from the keel")))
    assert [read(side, typed) for typed in ("in", "out", "", None)] == ["in", "out", "in", "in"]
    for typed in ("up", "IN", 1, True, [], {}):
        assert refused(side, typed) == {"side": "Side: choose “Inside” or “Outside”"}


def test_a_text_keeps_words_and_drops_control_characters():
    name = Text("name", "Name", most=10)
    assert read(name, " Bow \x00seam\n") == "Bow seam"
    assert read(name, "Öse <b>") == "Öse <b>"
    assert refused(name, "x" * 11) == {"name": "Name: too long, type at most 10 characters"}
    assert refused(name, "x" * 100000) == {"name": "Name: too long, type at most 10 characters"}
    assert refused(name, ["a"]) == {"name": "Name: type a few words"}


def test_parts_read_as_labels_write_them():
    ratio = Parts("ratio", "Ratio")
    assert [read(ratio, typed) for typed in ("100:30", " 2 : 1 ", "3 to 1", "100;28,4", "1:1/2", "100:30:5")] == [
        (100, 30),
        (2, 1),
        (3, 1),
        (100, 28.4),
        (1, 0.5),
        (100, 30, 5),
    ]


@pytest.mark.parametrize(
    "typed",
    [
        "",
        "3",
        "3:",
        ":1",
        "a:b",
        "0:1",
        "-3:1",
        "1:2:3:4:5:6",
        "3:1 g",
        "1e400:1",
        "NaN:1",
        3,
        True,
        ["3", "1"],
        ":" * 1000,
    ],
)
def test_parts_that_are_none_are_refused(typed):
    assert refused(Parts("ratio", "Ratio"), typed)["ratio"].startswith("Ratio: ")


def test_densities_are_held_against_their_limits_in_any_unit():
    densities = Parts("rho", "Densities", unit="g/mL", low=0.3, high=4)
    expected = pytest.approx((1150, 980))
    assert read(densities, "1.15 : 0.98") == expected
    assert read(densities, "1.15 : 0.98 kg/L") == expected
    assert read(densities, "1150 : 980 kg/m3") == expected
    assert read(densities, "1150 kg/m3 : 0.98 g/mL") == expected
    assert read(densities, "9.5972 : 8.1785 lb/US gal") == pytest.approx((1150, 980), rel=1e-4)
    assert "0.3" in refused(densities, "1150 : 980")["rho"]
    assert "kg/m³" in refused(densities, "1.15 : 0.98 kg/m3")["rho"]


AMOUNT = Amount(
    "amount", "Amount", (("total", "in all", ("g", "mL")), ("strokes", "strokes", ("strokes",))), default=240
)


def test_an_amount_is_one_of_several_in_one_of_its_units():
    assert read(AMOUNT, "") == ("total", pytest.approx(0.24), "mass")
    assert read(AMOUNT, "250") == ("total", pytest.approx(0.25), "mass")
    assert read(AMOUNT, "250 mL") == ("total", pytest.approx(0.00025), "volume")
    assert read(AMOUNT, "8 oz") == ("total", pytest.approx(0.226796185), "mass")
    assert read(AMOUNT, "8 US fl oz") == ("total", pytest.approx(8 * 29.5735295625e-6), "volume")
    assert read(AMOUNT, "12", amount_is="strokes") == ("strokes", 12, "count")


def test_the_amount_that_stands_there_by_itself_is_the_same_pour_in_us_units():
    """To the digits that stand there: the pour is that of the figure on the screen."""
    shown = AMOUNT.default_in("us")
    assert read(AMOUNT, "", units="us") == read(AMOUNT, shown + " oz") == (
        "total", pytest.approx(float(shown) * 0.028349523125), "mass")
    assert float(shown) * 0.028349523125 == pytest.approx(0.24, rel=1e-3)


@pytest.mark.parametrize(
    "typed, others, field, words",
    [
        ("8 fl oz", {}, "amount", "type the exact unit: US fl oz or imp fl oz"),
        ("8 US oz", {}, "amount", "oz for weight, or US fl oz"),
        ("5 mm", {}, "amount", "length"),
        ("0", {}, "amount", "more than zero"),
        ("-4", {}, "amount", "more than zero"),
        ("1e-300", {}, "amount", "plain digits"),
        (1e-300, {}, "amount", "too small"),
        ("2000000", {}, "amount", "at most"),
        ("", {"amount_is": "strokes"}, "amount", "type how much"),
        ("5", {"amount_is": "buckets"}, "amount_is", "choose “"),
        ("5", {"amount_is": 7}, "amount_is", "choose “"),
        (None, {"amount_is": ["total"]}, "amount_is", "choose “"),
    ],
)
def test_an_amount_that_cannot_be_is_refused_at_its_field(typed, others, field, words):
    found = refused(AMOUNT, typed, **others)
    assert list(found) == [field] and words in found[field]


def test_a_pick_is_a_row_of_the_catalogue_or_ones_own_figures_before_it():
    jar = Pick("jar", "Jar", JAR, default="small")
    assert read(jar, None)["size"] == pytest.approx(1e-4)
    assert list(refused(jar, "")) == ["jar.size"]  # figures are chosen, and none is typed yet
    assert read(jar, "small")["id"] == "small"
    own = read(jar, {"id": "small", "size": "250"})
    assert (own["size"], own["name"]) == (pytest.approx(2.5e-4), "Small")
    assert read(jar, {"size": "80", "name": "Mine"})["size"] == pytest.approx(8e-5)
    assert read(Pick("jar", "Jar", JAR, optional=True), "") is None


@pytest.mark.parametrize(
    "typed, fields",
    [
        ("huge", ["jar"]),
        (7, ["jar"]),
        (["small"], ["jar"]),
        ({"id": "huge"}, ["jar"]),
        ({"id": {"a": "b"}}, ["jar"]),
        ({"size": "x"}, ["jar.size"]),
        ({"name": "Mine"}, ["jar.size"]),
        ({"size": "0", "lid": "-1"}, ["jar.size", "jar.lid"]),
    ],
)
def test_a_pick_that_cannot_be_is_refused_at_the_field_inside(typed, fields):
    assert list(refused(Pick("jar", "Jar", JAR, default="small"), typed)) == fields


def test_what_a_pick_keeps_as_read_is_never_another_answer():
    jar = Pick("jar", "Jar", JAR)
    assert read(jar, {"size": 1})["size"] == pytest.approx(1e-6)
    assert list(refused(jar, {"size": True})) == ["jar.size"]  # True == 1, and is no size
    assert read(jar, {"size": "5"})["size"] != read(jar, {"size": "5"}, units="us")["size"]


ROWS = (
    Number("shown", "Shown", unit="g", low=0, high=1000, optional=True),
    Number("lid", "Lid", unit="g", optional=True),
)


def test_a_group_reads_a_list_or_numbered_rows():
    group = Group("rows", "Rows", ROWS, most=3)
    for typed in ([{"shown": "1"}, {"shown": "2"}], {"0": {"shown": "1"}, "1": {"shown": "2"}}):
        assert [row["shown"] for row in read(group, typed)] == [pytest.approx(0.001), pytest.approx(0.002)]
    assert read(group, None) == [] and read(group, {}) == [] and read(group, []) == []


def test_a_gap_is_kept_where_the_place_has_meaning_and_left_out_elsewhere():
    typed = {"1": {"shown": "90"}}
    assert [row and row["shown"] for row in read(Group("rows", "Rows", ROWS, gaps=True), typed)] == [
        None,
        pytest.approx(0.09),
    ]
    assert [row["shown"] for row in read(Group("rows", "Rows", ROWS), typed)] == [pytest.approx(0.09)]


@pytest.mark.parametrize(
    "typed, fields",
    [
        ("text", ["rows"]),
        (5, ["rows"]),
        (["text"], ["rows"]),
        ([None], ["rows"]),
        ([{}] * 4, ["rows"]),
        ({"7": {"shown": "1"}}, ["rows"]),
        ([{"shown": "x"}, {"lid": "y", "shown": "z"}], ["rows.0.shown", "rows.1.shown", "rows.1.lid"]),
        ({"0": "text"}, ["rows"]),
    ],
)
def test_a_group_that_cannot_be_is_refused_at_the_field_inside(typed, fields):
    assert list(refused(Group("rows", "Rows", ROWS, most=3), typed)) == fields


def test_what_a_row_keeps_as_read_is_never_another_answer():
    group = Group("rows", "Rows", ROWS)
    assert read(group, [{"shown": 1}])[0]["shown"] == pytest.approx(0.001)
    assert list(refused(group, [{"shown": True}])) == ["rows.0.shown"]


def test_too_few_rows_are_asked_for():
    assert refused(Group("rows", "Rows", ROWS, least=2), [{"shown": "1"}]) == {"rows": "Rows: add at least 2"}


def test_all_errors_are_told_at_once_in_the_order_of_the_form():
    form = (
        WIDTH,
        Choice("side", "Side", (("in", "In"),)),
        Pick("jar", "Jar", JAR),
        AMOUNT,
        Group("rows", "Rows", ROWS),
    )
    tree = {
        "rows": [{"lid": "-"}],
        "amount": "x",
        "jar": {"size": "x", "lid": "y"},
        "side": "up",
        "width": "z",
        "units": "old",
    }
    _, errors = inputs.read(form, tree)
    assert [error.field for error in errors] == [
        "units",
        "width",
        "side",
        "jar.size",
        "jar.lid",
        "amount",
        "rows.0.lid",
    ]


def test_what_a_choice_rules_out_is_neither_asked_nor_read():
    way = Choice("way", "Way", (("scale", "Scale"), ("pumps", "Pumps")))
    only = Number("only", "Only", unit="g", when=(("way", ("pumps",)),))
    assert inputs.read((way, only), {"way": "scale", "only": "nonsense"})[1] == []
    assert [error.field for error in inputs.read((way, only), {"way": "pumps", "only": "nonsense"})[1]] == ["only"]


@pytest.mark.parametrize(
    "typed, understood",
    [
        ("1,000", "1 mm (decimals after the comma). For thousands type 1000."),
        ("1.000", "1 mm (decimals after the point). For thousands type 1000."),
        ("12.500 mm", "12.5 mm (decimals after the point). For thousands type 12500."),
        ("0.125 in", None),
        ("12,5", "12.5 mm"),
        ("1/2 in", "0.5 in"),
        ("12.5", None),
        (12.5, None),
    ],
)
def test_what_could_be_read_in_two_ways_is_echoed(typed, understood):
    values, errors = inputs.read((WIDTH,), {"width": typed})
    assert errors == []
    assert moves.understood(values, reader()) == ([["width", understood]] if understood else [])
    again = inputs.read((WIDTH,), {"width": typed})[0]
    assert again["_understood"] == values["_understood"], "the second key press says the same"


def test_a_check_raises_at_the_field_to_change():
    def check(values):
        raise InputError("width", "Too wide for the jar")

    assert [(error.field, error.message) for error in inputs.checked((check,), {})] == [
        ("width", "Too wide for the jar")
    ]


@pytest.mark.parametrize(
    "item",
    [
        WIDTH,
        AMOUNT,
        Pick("jar", "Jar", JAR),
        Group("rows", "Rows", ROWS),
        Parts("r", "R"),
        Text("t", "T"),
        Choice("c", "C", (("a", "A"),)),
    ],
    ids=lambda item: item.kind,
)
@pytest.mark.parametrize("system", ["metric", "us"])
def test_a_declaration_describes_itself_in_both_systems(item, system):
    facts = item.about(reader(system))
    assert facts["kind"] == item.kind and facts["name"] == item.name and facts["label"] == item.label
    assert "default" in facts


def test_a_number_read_before_brings_its_unit_again():
    """Also a plain count, whose unit is no word at all."""
    count = Number("count", "How many", unit="", low=1, high=10, whole=True, default=3)
    for item in (count, WIDTH):
        first = inputs.read((item,), {item.name: "4"})[0]
        again = inputs.read((item,), {item.name: "4"})[0]
        assert again[item.name + "_unit"] == first[item.name + "_unit"] == item.unit


@pytest.mark.parametrize("screen", [screen for screen, _ in moves.SCREENS])
def test_a_text_of_three_megabytes_is_refused_at_its_field_before_anything_reads_it(screen):
    """Every declared field, so that a new one is in it; a phone's patience ended before one of them was read."""
    for item in moves.screen_inputs(screen):
        if item.when:
            continue
        errors = inputs.read((item,), {item.name: "1" * 3_000_000})[1]
        assert [error.field for error in errors] == [item.name]
        assert "too long" in plain(errors[0].message) or "at most" in plain(errors[0].message)


@pytest.mark.parametrize("screen", [name for name, _ in moves.SCREENS])
def test_what_is_far_too_long_is_refused_as_too_long_at_every_field(screen):
    """Text, numbers, choices, and those of rows and things alike: in the same words, and at once."""
    for path, item in fields_of(moves.screen_inputs(screen)):
        if item.kind in ("pick", "group"):
            continue
        _, errors = inputs.read(moves.screen_inputs(screen), links.tree([(path, "1" * 1000)]))
        told = {one.field: plain(one.message) for one in errors}
        if path in told:
            assert "too long" in told[path], path
        else:  # it is not asked with the choices as they stand
            assert item.when or path.count(".") or item.fold, path


def fields_of(declared, prefix=""):
    for item in declared:
        inner = item.record.fields if item.kind == "pick" else getattr(item, "fields", ())
        yield from fields_of(inner, prefix + item.name + (".0." if item.kind == "group" else "."))
        yield prefix + item.name, item


def test_a_field_that_takes_more_than_a_bare_number_has_the_keys_for_it():
    """A phone's keypad for decimals has digits and one mark: no minus, no blank, no / and no sign of feet or inches."""
    for screen, _ in moves.SCREENS:
        for path, item in fields_of(moves.screen_inputs(screen)):
            if item.kind != "number":
                continue
            for units in SYSTEMS:
                about = item.about(reader(units))
                inches = about["unit"] in ("in", "ft")
                assert about["keypad"] == ("text" if inches or about["low"] < 0 else "decimal"), (screen, path)
    page = TestClient(app()).get("/joint/", params={"units": "us"}).text
    assert re.search(r'<input[^>]*inputmode="text"[^>]*name="thickness"', page)
    page = TestClient(app()).get("/joint/").text
    assert re.search(r'<input[^>]*inputmode="decimal"[^>]*name="thickness"[^>]*"keypad":"text"', page)

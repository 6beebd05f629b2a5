"""Links: what was typed travels as short pairs and comes back the same, whatever somebody makes of the address."""

import json

import cases
import pytest
from covemix.shared.door import handover, moves
from covemix.shared.door.call import call
from covemix.shared.forms import declared, inputs, links
from covemix.shared.forms.inputs import Amount, Group, Number, Pick, Text
from covemix.shared.things.records import SCALE, SYSTEM
from hypothesis import given, settings
from hypothesis import strategies as st

SCREENS = [name for name, _ in moves.SCREENS]
FORM = (
    Pick("system", "System", SYSTEM, default="3-1"),
    Amount("amount", "Amount", (("total", "in all", ("g", "mL")), ("part_a", "of resin", ("g", "mL"))), default=240),
    Number("radius", "Radius", unit="mm", low=1, high=100, default=12, was=("r",)),
    Text("name", "Name"),
    Group("readings", "Readings", (Number("shown", "Shown", unit="g", optional=True),), most=5, gaps=True),
)


def travelled(form, typed):
    """What arrives when a typed tree goes out as a link."""
    return links.tree([tuple(pair) for pair in json.loads(json.dumps(links.pairs(form, typed)))])


def read(form, typed):
    """What the form makes of it: values without what only remembers how they came, and the errors."""
    values, errors = inputs.read(form, typed)
    return _bare(values), [(error.field, error.message) for error in errors]


BESIDE = ("_tree", "_understood", "_memo", "place")  # what a row of values keeps beside its values


def _bare(value):
    if isinstance(value, dict):
        return {key: _bare(inner) for key, inner in value.items() if key not in BESIDE}
    return [_bare(inner) for inner in value] if isinstance(value, list) else value


TEXTS = st.one_of(
    st.sampled_from(["", " ", "240", "1,5", "3 1/2", "8 oz", "abc", "total", "2:1", "a=b&c#d", "Öse"]),
    st.text(max_size=12),
)


@given(
    st.fixed_dictionaries(
        {},
        optional={
            "units": st.sampled_from(["metric", "us", "old"]),
            "amount": TEXTS,
            "name": TEXTS,
            "radius": TEXTS,
            "amount_is": st.sampled_from(["", "total", "part_a", "buckets"]),
            "system": st.one_of(
                st.sampled_from(["", "3-1", "2-1", "none"]),
                st.fixed_dictionaries(
                    {},
                    optional={
                        "id": st.sampled_from(["", "3-1", "2-1"]),
                        "by_weight": TEXTS,
                        "by_volume": TEXTS,
                        "densities": TEXTS,
                    },
                ),
            ),
            "readings": st.lists(st.fixed_dictionaries({}, optional={"shown": TEXTS}), max_size=5),
        },
    )
)
@settings(deadline=None)
def test_what_was_typed_means_the_same_after_its_journey(typed):
    assert read(FORM, travelled(FORM, typed)) == read(FORM, _trailing_blanks_dropped(typed))


def _trailing_blanks_dropped(typed):
    """Empty rows at the end of a group say nothing and do not travel; those between do."""
    rows = list(typed.get("readings", []))
    while rows and not rows[-1].get("shown", ""):
        rows.pop()
    return {**typed, "readings": rows}


@given(st.text(max_size=30), TEXTS)
def test_a_second_journey_changes_nothing(name, text):
    once = links.pairs(FORM, links.tree([(name, text), ("amount", text), ("system.densities", text)]))
    assert links.pairs(FORM, links.tree(once)) == once


@pytest.mark.parametrize("screen", SCREENS)
def test_every_screen_means_the_same_after_the_journey_of_its_link(screen):
    """Generated forms of every screen: same answers, and the same link again."""
    for request in cases.requests(screen, 60, seed=7):
        typed = links.tree(request["pairs"])
        asked = moves.screen(screen, typed)
        link = links.pairs(moves.screen_inputs(screen), typed)
        again = moves.screen(screen, links.tree(link))
        assert links.pairs(moves.screen_inputs(screen), links.tree(link)) == link
        if not any(answer["errors"] for _, answer in asked["answers"]):  # nonsense need not travel
            assert again["answers"] == asked["answers"], request["pairs"]


def test_defaults_and_blanks_are_left_out():
    typed = {
        "units": "metric",
        "system": "3-1",
        "amount": "240",
        "amount_is": "total",
        "radius": "12",
        "name": "",
        "readings": [{}],
    }
    assert links.pairs(FORM, typed) == []


def test_a_default_figure_beside_another_kind_of_amount_travels():
    typed = {"amount": "240", "amount_is": "part_a"}
    assert links.pairs(FORM, typed) == [("amount_is", "part_a"), ("amount", "240")]


def test_a_default_of_the_other_units_travels():
    assert links.pairs(FORM, {"units": "us", "radius": "12"}) == [("units", "us"), ("radius", "12")]
    assert links.pairs(FORM, {"units": "us", "radius": "0.472"}) == [("units", "us")]


def test_a_row_and_ones_own_figures_before_it_travel_together():
    typed = {"system": {"id": "2-1", "densities": "1.1 : 1", "by_volume": "2 : 1"}}
    assert links.pairs(FORM, typed) == [("system", "2-1"), ("system.densities", "1.1 : 1")]
    assert travelled(FORM, typed) == {"system": {"id": "2-1", "densities": "1.1 : 1"}}


def test_ones_own_figure_travels_where_a_row_says_otherwise_even_if_it_is_the_usual_one():
    """The 4:1 row is fast; "medium" is what an empty field means, and not what this row means."""
    typed = {"system": {"id": "4-1", "speed": "medium"}}
    assert links.pairs(FORM, typed) == [("system", "4-1"), ("system.speed", "medium")]
    assert inputs.read(FORM, travelled(FORM, typed))[0]["system"]["speed"] == "medium"


def test_ones_own_thing_made_of_usual_figures_only_is_not_taken_for_the_row_that_stands_there_by_itself():
    form = (Pick("scale", "Scale", SCALE, default="1g"),)
    typed = {"scale": {"step": "1"}}
    assert read(form, travelled(form, typed)) == read(form, typed)


@pytest.mark.parametrize(("pairs", "way"), [
    ([["amount", "200"]], ["scale"]), ([["amount", "200"], ["way", "pumps"]], ["pumps"]),
])
def test_a_link_of_an_early_build_that_says_no_way_meant_the_one_of_then(pairs, way):
    link = [["v", "1"], *pairs, ["end", handover.mark(pairs)]]
    brought, why = handover.opened(moves.module("measure").INPUTS, link, 40)
    assert why == "" and [text for name, text in brought if name == "way"] == way


def test_the_order_of_the_pairs_is_that_of_the_form():
    typed = {"readings": [{"shown": "1"}], "name": "x", "radius": "3", "amount": "5", "system": "1-1", "units": "us"}
    assert [name for name, _ in links.pairs(FORM, typed)] == [
        "units",
        "system",
        "amount",
        "radius",
        "name",
        "readings.0.shown",
    ]


def test_a_gap_keeps_its_place():
    typed = {"readings": [{}, {}, {"shown": "90"}]}
    assert links.pairs(FORM, typed) == [("readings.2.shown", "90")]
    assert [row is None for row in inputs.read(FORM, travelled(FORM, typed))[0]["readings"]] == [True, True, False]


def test_a_link_of_the_past_is_read_and_written_with_todays_name():
    assert links.pairs(FORM, links.tree([("r", "30")])) == [("radius", "30")]


def test_what_the_form_does_not_declare_stays_behind():
    assert links.pairs(FORM, {"colour": "red", "system": {"id": "3-1", "colour": "red"}, "units": "metric"}) in (
        [],
        [("system", "3-1")],
    )


HOSTILE = (
    [("__proto__.x", "1")],
    [("constructor", "1")],
    [("a" * 5000, "b" * 100000)],
    [(".", "1")],
    [("..", "1")],
    [("", "1")],
    [("amount.", "1")],
    [(".amount", "1")],
    [("a.b.c.d.e.f.g.h", "1")],
    [("amount.x", "1"), ("amount", "2")],
    [("amount", "2"), ("amount.x", "1")],
    [("units.x", "us")],
    [("units", "us"), ("units.x", "us")],
    [("readings.0", "text")],
    [("readings", "text")],
    [("readings.999999999.shown", "1")],
    [("readings.-1.shown", "1")],
    [("readings.٣.shown", "1")],
    [("readings.1e9.shown", "1")],
    [("readings.0.shown.x", "1")],
    [("system.id.x", "1")],
    [("system._tree", "1"), ("_tree", "2"), ("_tree.amount_is", "part_a")],
    [("_understood", "x"), ("amount", "1,5")],
    [("amount", "1")] * 10000,
    [("system.units", "us"), ("system.id", "none")],
    [("amount_is.x", "total")],
)


@pytest.mark.parametrize("pairs", HOSTILE, ids=lambda pairs: ascii(pairs[-1][0])[:25])
def test_no_path_breaks_the_reader(pairs):
    typed = links.tree(pairs)
    values, errors = inputs.read(FORM, typed)
    assert all(error.field and error.message for error in errors)
    out = links.pairs(FORM, typed)
    assert all(isinstance(name, str) and isinstance(text, str) for name, text in out)
    assert len(call(json.dumps({"screen": "pour", "pairs": pairs}))) < 200_000
    assert values["_tree"] is typed


@given(st.lists(st.tuples(st.text(alphabet="ab.0_9", max_size=8), st.text(max_size=4)), max_size=12))
def test_any_pairs_make_a_tree_of_text(pairs):
    def texts(tree):
        return all(isinstance(inner, str) or texts(inner) for inner in tree.values())

    assert texts(links.tree(pairs))


@pytest.mark.parametrize(
    "sent, text", [(240, "240"), (240.0, "240"), (1.5, "1.5"), (1e-7, "0.0000001"), (0.1 + 0.2, "0.3"), (-0.0, "0")]
)
def test_a_number_of_the_api_travels_as_plain_text(sent, text):
    assert declared.text_of(sent) == text


def test_what_is_no_number_travels_without_breaking():
    assert links.pairs(FORM, {"radius": float("inf"), "units": {"x": "us"}, "readings": 5, "amount_is": True}) == [
        ("amount_is", "True"),
        ("radius", "inf"),
    ]


def test_rows_that_stand_there_by_themselves_stay_out_of_a_link():
    """A form sends its default stations with every key press; a link carries them only where one was changed."""
    asked = moves.screen_inputs("joint")
    stations = [["stations.0.at", "0 m"], ["stations.0.angle", "95"], ["stations.1.at", "1.2 m"],
                ["stations.1.angle", "120"], ["stations.2.at", "2.4 m"], ["stations.2.angle", "150"]]
    assert links.pairs(asked, links.tree([["angle_is", "stations"], *stations])) == [("angle_is", "stations")]
    changed = [*stations[:-1], ["stations.2.angle", "151"]]
    assert links.pairs(asked, links.tree(changed)) == [tuple(pair) for pair in changed]
    assert links.pairs(asked, links.tree(stations[:4])) == [tuple(pair) for pair in stations[:4]]


def test_one_row_of_nothing_but_defaults_is_not_the_rows_of_the_group():
    """One joint as the form starts it is one joint, and not the boat that stands for an untouched form."""
    typed = links.tree([("joints.0.pour", "later")])
    again = links.tree(links.pairs(moves.screen_inputs("boat"), typed))
    assert moves.screen("boat", again)["answers"] == moves.screen("boat", typed)["answers"]

"""Pouring along says what the engine knows of the batch: a mark that is told is never refused when it is typed, nothing
behind it moves, and a batch that the tool cannot hold in ratio is said so before the first part goes in."""
import itertools

import pytest
from covemix.shared.door import moves
from covemix.shared.pour.measured_out import FIELDS

KEYS = {"scale": "reading_", "pumps": "strokes_", "syringes": "drawn_", "graduated": "level_", "stick": "mark_"}
CUPS = (("400 mL", "10 mL"), ("1 L", "50 mL"), ("30 mL", "2.5 mL"), ("95 mL", "10 mL"), ("1000 mL", "25 mL"),
        ("16 US fl oz", "1 US fl oz"))
SYRINGES = (("60 mL", "1 mL"), ("10 mL", "0.5 mL"), ("20 mL", "0.25 mL"))
LABELS = ("100:44", "3:1", "40:100", "100:30:10", "100:50:25")
AMOUNTS = ("60 g", "333 mL", "900 g", "2 kg")
DENSITIES = ("1.15", "0.98", "1.0")


def told(typed, **more):
    """The lines of a batch by name."""
    found = moves.answer("measure", {**typed, **more})
    assert found["errors"] == [], (typed, more, found["errors"])
    return {line["name"]: line for line in found["lines"]}


def steps(typed, **more):
    found = moves.answer("pouring", {**typed, **more})
    assert found["errors"] == [], (typed, more, found["errors"])
    return found["steps"]


def batches(way):
    tools = ([{"graduated": {"holds": holds, "step": step}} for holds, step in CUPS] if way == "graduated" else
             [{"syringes": {"holds": holds, "steps": step}} for holds, step in SYRINGES])
    for tool, label, amount, units in itertools.product(tools, LABELS, AMOUNTS, ("metric", "us")):
        densities = ":".join(DENSITIES[:label.count(":") + 1])
        yield {"way": way, "units": units, "amount": amount,
               "system": {"by_weight": label, "densities": densities}, **tool}


@pytest.mark.parametrize("way", ["graduated", "syringes"])
def test_a_told_mark_is_accepted_when_typed_and_moves_nothing_behind_it(way):
    """333 mL of 100 : 44 in a cup of 95 mL, marks 10 apart: 60 and 90 are told, and 60 was refused, because 60 and what
    follows it exactly come to 91. In US units 20 mL are told as 0.676 US fl oz, and that was refused too."""
    group, field, _ = FIELDS[way]
    seen = 0
    for typed in batches(way):
        lines = told(typed)
        marks = [lines[KEYS[way] + letter]["text"] for letter in "abc" if KEYS[way] + letter in lines]
        for count in range(1, len(marks) + 1):
            after = told(typed, **{group: [{field: text} for text in marks[:count]]})
            assert [after[KEYS[way] + "abc"[place]]["text"] for place in range(len(marks))] == marks, (typed, count)
            seen += 1
        if marks and lines["marks_error"]["rank"] != "warn":  # and what was in ratio as told is not off as poured
            assert after["poured"]["rank"] != "warn", typed
    assert seen > 150


@pytest.mark.parametrize("typed, name", [
    ({"amount": "60 g", "system": {"by_weight": "345:98"}}, "too_small"),
    ({"amount": "8 kg", "system": {"by_weight": "345:98"}}, "over_scale"),
    ({"amount": "60 g", "zeroing": "each", "system": {"by_weight": "345:98"}}, "too_small"),
    ({"amount": "30 g", "way": "graduated", "system": "4-1"}, "much_more"),
    ({"amount": "30 g", "way": "graduated", "system": "4-1"}, "coarse_b"),
    ({"amount": "30 g", "way": "syringes", "system": "5-1"}, "too_small"),
    ({"amount": "200 g", "way": "stick"}, "spread"),
])
def test_what_the_tool_cannot_hold_is_said_before_the_first_part_goes_in(typed, name):
    warned = told(typed)[name]
    assert warned["rank"] == "warn"
    first = steps(typed)[0]
    assert first["rank"] == "warn"
    assert warned["label"] in first["under"] and warned["text"] in first["under"]
    assert (warned["label"] in first["said"]) == (warned["value"] is None)  # a figure with its sign is not for the ear


def test_a_batch_the_tool_holds_is_not_warned_of():
    label = {"by_volume": "3:1", "densities": "1.15:0.98"}  # typed: a built-in one warns that it is an example
    for way in ("scale", "syringes"):
        assert [one["rank"] for one in steps({"amount": "600 g", "way": way, "system": label})].count("warn") == 0


@pytest.mark.parametrize("zeroing", ["once", "each"])
def test_a_part_of_which_the_scale_shows_nothing_is_no_step_to_wait_for(zeroing):
    """15 g of 100 : 3 on a scale of 1 g: 0.44 g of hardener. "Until it shows 15 g" stood there twice, for ever."""
    found = steps({"amount": "15 g", "system": {"by_weight": "100:3"}, "zeroing": zeroing})
    assert [one["name"] for one in found] == ["too_small"] and found[0]["rank"] == "warn"

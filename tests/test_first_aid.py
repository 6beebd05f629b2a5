"""First aid and emergency numbers: the steps in their order, and what is dialled."""
import pytest
import safety_table as table
from covemix.server.build import Build
from covemix.server.pages import Pages
from covemix.shared.door import handover, moves
from covemix.shared.words.texts import said
from covemix.shared.words.written import reader


def told(move, **typed):
    found = moves.answer(move, typed)
    assert found["errors"] == []
    return found["lines"]


def test_first_aid_stands_in_its_order_with_its_statement_and_its_source():
    lines = told("aid")
    steps = lines[:len(table.FIRST_AID)]
    assert tuple((line["label"], line["text"]) for line in steps) == table.FIRST_AID
    for line in steps:
        assert line["rough"].split("; ")[0] in table.PRECAUTIONS
    skin = next(line for line in steps if line["name"] == "aid_skin")
    assert "ICSC 0620" in skin["rough"] and "WAC 296-800-15030" in skin["rough"]


def test_a_pot_that_smokes_step_by_step():
    steps = [line for line in told("aid") if line["name"].startswith("hot_")]
    assert tuple(line["text"] for line in steps) == table.HOT_STEPS
    assert [line["label"] for line in steps] == [str(place + 1) for place in range(len(steps))]
    for line in steps:  # water stands under its source, or is said to be practice
        if "water" in line["text"].lower():
            assert line["rough"] == "common practice" or "ICSC 0620" in line["rough"]


def test_water_to_have_at_hand(outside):
    found = moves.module("aid").reckon({"units": "metric"})
    rule = table.RINSING
    outside.printed("minutes of rinsing", "WAC 296-800-15030, emergency eyewash", rule["minutes"], found.minutes / 60)
    outside.worked("water for it, L, rounded up to 5", "WAC 296-800-15030, 15 min at 1.5 L a minute: 22.5 L",
            rule["at hand L"], found.water * 1000)
    assert found.water * 1000 >= rule["minutes"] * rule["L/min"]


NUMBERS = {"name": "Yard", "ambulance": "112", "poison": "+49 (0)30-192 40", "who": "Anna", "person": "(030) 12 34"}


def test_own_numbers_are_told_large_and_as_they_are_dialled():
    lines = told("calls", numbers=NUMBERS)
    assert [(line["label"], line["text"]) for line in lines if line["rank"] == "call"] == [
        ("Ambulance", "112"), ("Poison centre", "+49 30 192 40"), ("Anna", "030 12 34")]
    assert {line["rough"] for line in lines if line["rank"] == "call"} == {"your own figure"}


def test_no_number_is_built_in():
    lines = told("calls")
    assert [line["rank"] for line in lines] == ["ask"] and not any(c.isdigit() for c in lines[0]["text"])


@pytest.mark.parametrize("typed", ["112/144", "112 or 999", "one", "1", "+", "9" * 16, "112,999", "11+2"])
def test_what_would_be_dialled_wrongly_is_refused_at_its_field(typed):
    found = moves.answer("calls", {"numbers": {"name": "Yard", "poison": typed}})
    assert [error["field"] for error in found["errors"]] == ["numbers.poison"]


def test_the_kit_takes_them_and_no_link_takes_them_along():
    typed = {"kind": "numbers", "numbers": NUMBERS}
    lines = told("kit", **typed)
    assert lines[0]["label"] == "Yard" and "192 40" in lines[0]["text"]
    pairs = [["numbers." + name, text] for name, text in NUMBERS.items()] + [["task", "mix"]]
    handed = handover.handed("safety", pairs, "1")
    assert not any(own in str(handed) for own in ("192", "Anna", "030 12", "Yard"))


@pytest.mark.parametrize("field", ["ambulance", "poison", "person", "who"])
def test_a_link_that_brings_a_number_to_dial_is_refused(field):
    """A stranger's number would stand there as the ambulance."""
    inputs = moves.screen_inputs("safety")
    pairs = [["task", "mix"], ["numbers." + field, NUMBERS[field]]]
    assert "numbers." + field in said(handover.opened(inputs, pairs, 40)[1], reader())
    assert handover.opened(inputs, [["task", "mix"], ["numbers." + field, ""]], 40)[1] == ""


def test_the_kept_page_has_first_aid_before_the_engine_is_there():
    page = Pages(Build()).kept()["safety/"]
    for heading, text in table.FIRST_AID:
        assert heading in page and text.split(". ")[0] in page
    for text in table.HOT_STEPS:
        assert text in page.replace("\u00a0", " ")
    assert page.index("IF IN EYES") < page.index("data-form")

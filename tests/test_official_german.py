"""Official statements in German: de.ftl beside tests/official_german.csv, letter by letter.

They are quotations of the law (Regulation (EC) 1272/2008, CLP, Annexes III and IV in German): nobody words them anew.
How a row is known stands in it: `read`, seen in the copies that its source names, or `memory`, where no official German
was found. The second kind may become less and never more.
"""
import csv

import pytest
from covemix.server.build import HOUSE
from covemix.shared.catalogue import first_aid, hazards
from covemix.shared.door import moves
from covemix.shared.words.written import of_file

GERMAN = of_file("de")
with (HOUSE / "tests" / "official_german.csv").open(encoding="utf-8", newline="") as file:
    TABLE = {row["code"]: row for row in csv.DictReader(file)}

# no German of P316 and P317 was found; the other rows are made with these words
REMEMBERED = {"P310 other", "P313", "P316", "P317", "P333+P313", "P333+P317", "aid skin", "aid eyes", "aid inhaled"}
SIGNALS = {"signal word danger": "ghs-danger", "signal word warning": "ghs-warning"}
TOGETHER = {"aid skin": "ghs-aid-skin", "aid eyes": "ghs-aid-eyes", "aid inhaled": "ghs-aid-inhaled",
            "H317 sentence": "ghs-h317.sentence"}


def keys():
    """{code of the table: key of its sentence}, as the catalogue has them."""
    found = {**SIGNALS, **TOGETHER, **dict(hazards.JOINED)}
    for code, words, *_ in hazards.HAZARDS:
        found[code] = words
    for code, words, other, *_ in hazards.PRECAUTIONS:
        found[code] = words
        if other:
            found[code + " other"] = other
    for _, code, when, do, *_ in first_aid.STEPS:
        if when.startswith("ghs-"):
            found[code + " when"] = when
        if do != found[code]:
            found[code + " do"] = do
    return found


KEYS = keys()


def test_each_official_sentence_has_its_row_and_each_row_its_sentence():
    assert {key for key in GERMAN if key.startswith("ghs-")} == set(KEYS.values())
    assert set(TABLE) == set(KEYS)


@pytest.mark.parametrize("code", sorted(KEYS))
def test_a_statement_stands_as_in_the_law_letter_by_letter(code):
    assert GERMAN[KEYS[code]] == TABLE[code]["text"]


def test_what_is_from_memory_is_said_and_grows_no_more():
    assert {code for code, row in TABLE.items() if row["mark"] == "memory"} <= REMEMBERED
    assert {row["mark"] for row in TABLE.values()} <= {"read", "memory"}
    assert [code for code, row in TABLE.items() if not row["source"].strip()] == []


@pytest.mark.parametrize("code", [row[0] for row in hazards.HAZARDS] + [row[0] for row in hazards.JOINED])
def test_a_code_of_the_product_s_sheet_is_said_in_the_words_of_the_law(code):
    told = moves.answer("safety", {"system": {"by_weight": "100:30", "statements": code}}, language="de")
    said = [line["text"] for line in told["lines"] if line["name"] == "own_0"]
    assert said == [TABLE[code]["text"].rstrip(".") + "."]

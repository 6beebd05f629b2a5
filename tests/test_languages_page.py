"""docs/LANGUAGES.md: the files, the sentences and the trade words that it shows are those of the app."""
import csv
import re

import pytest
from covemix.server.build import HOUSE
from covemix.shared.words.written import of_file, patterns, unread

PAGE = (HOUSE / "docs" / "LANGUAGES.md").read_text(encoding="utf-8")
GERMAN = (HOUSE / "shared" / "words" / "de.ftl").read_text(encoding="utf-8").lower()
ROWS = [cell for row in re.findall(r"^\| [a-z, ]+ \| (.+) \| (.+) \|$", PAGE, re.M)[1:] for cell in row]
PAIRS = [pair for cell in ROWS for pair in cell.split(", ")]


@pytest.mark.parametrize("named", sorted(set(re.findall(r"`((?:shared|tests)/[\w/.]+)`", PAGE))))
def test_each_file_that_is_named_is_there(named):
    assert (HOUSE / named).is_file()


def test_its_example_is_in_the_file():
    shown = patterns(PAGE.split("```\n")[3])
    assert len(shown) == 4
    assert {key: of_file("de")[key] for key in shown} == shown


def test_its_trade_words_are_the_apps():
    """A pair is English and German, of one word or more each: the end of it is in the German file."""
    assert len(PAIRS) > 70
    ends = {pair: [pair[found.end():].lower() for found in re.finditer(" ", pair)] for pair in PAIRS}
    assert [pair for pair, each in ends.items() if not any(end in GERMAN for end in each)] == []


def test_its_count_of_official_statements_is_the_files():
    count = sum(key.startswith("ghs-") for key in of_file("de"))
    with (HOUSE / "tests/official_german.csv").open(encoding="utf-8", newline="") as file:
        read = [row["mark"] for row in csv.DictReader(file)].count("read")
    assert f"{read} of {count} were read" in " ".join(PAGE.split())


def test_it_warns_while_nobody_has_read_the_german():
    assert ("No native boatbuilder has read the German yet" in PAGE) == bool(unread("de"))

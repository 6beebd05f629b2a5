"""What answers tell hands to do, beside tests/safety_told.py, typed a second time; and its German forbids as well."""
import re
from pathlib import Path

import safety_told
from covemix.shared.words.written import of_file


def texts(language):
    """Each sentence of a language as one text, all its numbers together."""
    return {key: words if isinstance(words, str) else " ".join(pieces(words))
            for key, words in of_file(language).items()}


def pieces(words):
    """All texts inside a sentence that has several."""
    if isinstance(words, str):
        return [words]
    inside = words.values() if isinstance(words, dict) else words if isinstance(words, tuple | list) else ()
    return [one for each in inside for one in pieces(each)]


ENGLISH, GERMAN = texts("en"), texts("de")
HURTS = re.compile(r"\b(never|do not|no solvent|masks?|gloves|goggles|smokes?|burns?|catch fire|outdoors|hot pot|"
                   r"heats itself|bare ground)\b", re.IGNORECASE)
FORBIDS = re.compile(r"\b(never|do not|must not|not|no|without)\b", re.IGNORECASE)
VERBOTEN = re.compile(r"\b(nie|niemals|nicht|kein\w*|nichts|ohne)\b", re.IGNORECASE)
# the word stands there, and no hand follows it; and what tests/safety_table.py holds as it is said, with its figures
NAMES = {"spreader-too-many", "plan-pause.help", "error-cost.short", "error-cost.over", "air-explosive.text"}


def flat(text):
    """A table of Python as the sentences in it, wherever they are broken."""
    return " ".join(re.sub(r'"\s*"', "", text).split())


def test_each_sentence_is_as_it_was_typed_a_second_time():
    typed = {**safety_told.TOLD, **safety_told.WITHOUT_NOT}
    differs = {key: (ENGLISH.get(key), words) for key, words in typed.items() if ENGLISH.get(key) != words}
    assert differs == {}, "en.ftl says the first, tests/safety_told.py the second"


def test_no_sentence_that_hands_follow_is_left_out():
    """Every sentence that names a danger or what keeps it off stands in one of the two tables."""
    known = flat(Path(__file__).with_name("safety_table.py").read_text(encoding="utf-8"))
    left = {key: words for key, words in ENGLISH.items() if HURTS.search(words) and words.rstrip().endswith(".")
            and key not in safety_told.TOLD and words not in known and key not in NAMES}
    assert left == {}


def test_what_english_forbids_german_forbids_as_well():
    """Of every sentence that names a danger, in all of the app: a `not` that is lost turns it round."""
    asked = {key: words for key, words in ENGLISH.items() if key in safety_told.TOLD or HURTS.search(words)}
    lost = {key: (words, GERMAN[key]) for key, words in asked.items()
            if FORBIDS.search(words) and not VERBOTEN.search(GERMAN[key])}
    assert lost == {}
    assert len(asked) > 150

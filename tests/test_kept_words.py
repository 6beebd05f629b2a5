"""What is kept, or goes to another phone, holds no words of ours; what an earlier build kept is read for ever.

What the user typed stays as typed, and so does what a lead fills into a field of words: it is his from then on.
"""
import re

import cases
import pseudo
import pytest
from covemix.server.models import request_model
from covemix.server.pages import Pages
from covemix.shared.boat.boat_rows import faces
from covemix.shared.clock.pot_names import BEFORE, KNOWN
from covemix.shared.door import card, moves
from covemix.shared.things.own_timings import read_timings
from covemix.shared.things.records import FILLER, SYSTEM
from covemix.shared.words.languages import LANGUAGES
from covemix.shared.words.texts import said
from covemix.shared.words.written import reader
from house import build

# names of pieces, with their faces; the pieces that a batch took; from which to which a bag goes: fields of words
IN_WORDS = re.compile(r"pieces\.\d+\.name|joints\.\d+\.name|log\.seam|pot\.place")
SPOKEN = tuple(LANGUAGES)  # before another test makes one up
POT = {"started": "1000", "duration": "30", "now": "1300", "elapsed": "300"}


def pairs_of(answer):
    """(name, text) of all that an answer hands on or gives to be kept."""
    for one in [one for _, one in answer["answers"]] if "answers" in answer else [answer]:
        for lead in one["leads"]:
            yield from lead["pairs"]
        for step in one.get("steps", ()):
            yield from (*step["keeps"], *step["logs"], *step["lead"])


def in_no_marks(text):
    """A text without the decimal marks and the units' words of its language."""
    return text.replace("٫", ".").replace("\u00a0", "").replace(" strokes", "").replace(" stroke", "")


@pytest.mark.parametrize("name", [name for name in (*moves.names(), *dict(moves.SCREENS)) if name != "sources"])
def test_what_is_handed_on_is_the_same_in_every_language(name):
    """Also in one that nobody speaks: keys, figures, and what was typed."""
    for request in cases.requests(name, 8 if name in ("plan", "boat") else 40):
        plain = (moves.asked(request["screen"], request["pairs"]) if "screen" in request
                 else moves.answer(request["move"], request["typed"]))
        both = zip(pairs_of(plain), pairs_of(pseudo.answered(request)), strict=True)
        for (key, english), (same, other) in both:
            assert key == same
            if not IN_WORDS.fullmatch(key):
                assert in_no_marks(english) == in_no_marks(other), key


def said_of(move, typed, name, language="en"):
    """(label, text) of a line."""
    answer = moves.answer(move, typed, language=language)
    assert answer["errors"] == []
    return next((line["label"], line["text"]) for line in answer["lines"] if line["name"] == name)


@pytest.mark.parametrize("kept, said", [
    ("3", "Batch 3"), ("Batch 3", "Batch 3"), ("240 g; 20 °C", "240 g at 20 °C"), ("", "Pot"),
    ("240 g at 20 °C", "240 g at 20 °C"), ("7.05 oz; -4 °F", "7.05 oz at -4 °F"), ("Bow at noon", "Bow at noon"),
    ("Batch of Ole", "Batch of Ole"),
])
def test_a_pot_is_called_by_what_is_kept_of_it(kept, said):
    """By a number or by figures since, in English words before."""
    assert said_of("pot", {**POT, "batch": kept}, "place")[0] == said
    assert kept[:1] in "B" or said_of("pot", {**POT, "batch": kept}, "place", pseudo.speak())[0] != said


def test_a_batch_that_was_kept_in_english_is_said_in_the_language_of_the_page():
    who = pseudo.speak()
    for before, since in (("Batch 3", "3"), ("240 g at 20 °C", "240 g; 20 °C")):
        told = said_of("pot", {**POT, "batch": before}, "place", who)
        assert told == said_of("pot", {**POT, "batch": since}, "place", who) and before not in told[0]
    assert said_of("pot", {**POT, "batch": "Bow at noon"}, "place", who)[0] == "Bow at noon"


@pytest.mark.parametrize("before", sorted(BEFORE))
def test_steps_of_a_pot_that_were_kept_in_english_are_read(before):
    """The names as they stood in links and pots, typed once more: they may be said otherwise today."""
    assert set(BEFORE.values()) == set(KNOWN)
    pot = {**POT, "steps": [{"name": before, "minute": "20"}]}
    key = {**POT, "steps": [{"name": BEFORE[before], "minute": "20"}]}
    for language in ("en", pseudo.speak()):
        assert said_of("pot", pot, "next", language) == said_of("pot", key, "next", language)
    assert said_of("pot", pot, "next", pseudo.speak())[1].startswith(pseudo.OPEN)
    mine = {**POT, "steps": [{"name": "Eyelets in", "minute": "20"}]}
    assert said_of("pot", mine, "next", pseudo.speak())[1] == "Eyelets in"


@pytest.mark.parametrize("kept, said", [
    ({"what": "240 g Shed mix, thickened"}, "240 g Shed mix, thickened"),
    ({"what": "Batch 3 of the plan"}, "Batch 3 of the plan"),
    ({"planned": "3"}, "Batch 3 of the plan"), ({"what": "Batch 3 of the plans"}, "Batch 3 of the plans"),
    ({"mixture": "Shed mix", "mass": "240 g"}, "240 g Shed mix"),
    ({"mixture": "mixed", "volume": "90 mL"}, "90.0 mL mixed"),
    ({"mixture": "Three to one", "mass": "240 g", "thicken": "yes"}, "240 g Three to one, thickened"),
    ({"batch": "3", "used": "750 s"}, "Batch 3"), ({"batch": "240 g; 20 °C"}, "240 g at 20 °C"),
    ({"note": "x"}, "A batch"),
])
def test_a_batch_of_the_log_is_called_by_what_is_kept_of_it(kept, said):
    assert said_of("log", kept, "summary")[0] == said
    told = said_of("log", kept, "summary", pseudo.speak())[0]
    words = " ".join(kept.values())
    assert pseudo.english(told, words if kept.get("what", "").endswith(("thickened", "plans")) else
                          kept.get("mixture", "").replace("mixed", "").replace("Three to one", "")) == []


def test_how_long_a_pot_was_used_is_a_figure_and_a_note_is_as_typed():
    assert said_of("log", {"used": "750 s", "note": "used 9 minutes after mixing"}, "summary")[1] == (
        "used 12 minutes after mixing, used 9 minutes after mixing")


def test_what_no_form_shows_is_read_all_the_same():
    page = Pages(build()).render("log", [("planned", "3"), ("what", "")])
    assert '<input type="hidden" name="planned" value="3">' in page and 'for="field-planned"' not in page
    assert "planned" in request_model("log", moves.module("log").INPUTS).model_fields


def test_a_built_in_filler_of_a_putty_batch_is_kept_by_its_key():
    steps = moves.answer("pouring", {"thicken": "yes", "filler": {"id": "silica"}, "amount": "240"})["steps"]
    keeps = [dict(step["keeps"]) for step in steps if step["keeps"]]
    assert keeps[0]["filler"] == "silica"
    own = {"name": "Mine", "doses": "8 : 15 : 25 : 38 : 50", "density": "1.3", "loose": "0.2"}
    steps = moves.answer("pouring", {"thicken": "yes", "filler": own, "amount": "240"})["steps"]
    assert next(dict(step["keeps"]) for step in steps if step["keeps"])["filler"] == "Mine"


def test_a_filler_whose_label_is_another_by_now_says_which_it_had():
    """By it an earlier build kept the batches of one."""
    was = {"wood-flour": "Wood flour", "silica": "Fumed silica", "cotton": "Cotton fibre", "talc": "Talc",
           "milled-glass": "Milled glass", "glass-spheres": "Glass microspheres, hollow",
           "phenolic-balloons": "Phenolic microballoons"}
    assert {row[0]: FILLER.was(row[0], "Füllstoff") for row in FILLER.rows} == was
    assert FILLER.was("talc", "Talc") == "" and SYSTEM.was("3-1", "another") == ""


KEPT = {
    "timings": "gone 1860 s 240 g cup 20.0 °C filler 30.0 % resin 25.0 °C; stiffening 22 min 100 g bag 18 °C",
    "trials": "thick 1800 s, doubt 8 %, mass 100 g, air 20.0 °C, loss 90 %, heat 97 %, width 70 mm, mix 21.0 °C",
}
SAID = {
    "timings": "too stiff to use 1860 s 240 g Cup 20.0 °C Filler 30.0 % Resin 25.0 °C; "
               "stiffening 22 min 100 g Bag 18 °C",
    "trials": KEPT["trials"],
}


@pytest.mark.parametrize("name", KEPT)
def test_what_a_system_keeps_in_words_is_said_in_those_of_the_page(name):
    """The English words are keys, which are read for ever."""
    pairs = [["system.by_weight", "3:1"], [f"system.{name}", KEPT[name]]]
    inputs = moves.screen_inputs("pour")
    assert card.told(inputs, pairs)[1][1] == SAID[name]
    (_, _), (label, text) = card.told(inputs, pairs, pseudo.speak())
    assert label[0] == pseudo.OPEN and pseudo.english(text, "") == []
    assert [figure.replace("٫", ".") for figure in re.findall(r"[\d٫]+", text)] == re.findall(r"[\d.]+", KEPT[name])


def test_what_hands_have_learned_is_said_in_the_words_of_the_page():
    pairs = [["crew.learned", "roll 0.50, 0.41 to 0.60, from 3; lay 0.80, 0.70 to 0.90, from 4"]]
    assert card.told(moves.screen_inputs("plan"), pairs)[0][1] == pairs[0][1]
    assert pseudo.english(card.told(moves.screen_inputs("plan"), pairs, pseudo.speak())[0][1], "") == []


@pytest.mark.parametrize("text", [
    "fest 31 Minuten 240 g Becher 20 °C", "Fest nach 31 min, 240 g im Becher bei 20 °C", "gone 31 min 240 g cup 20 °C"])
def test_own_timings_typed_in_german_are_understood(text):
    assert read_timings(text) == read_timings("gone 31 min 240 g cup 20 °C")


def test_braces_that_somebody_typed_are_no_figures_on_a_card():
    assert card.told(moves.screen_inputs("pour"), [["units", "us"], ["system.name", "{100 mm}"]])[0][1] == "{100 mm}"


@pytest.mark.parametrize("key", ["kind-system-timings.help", "plan-timings.help", "own-timings-like"])
@pytest.mark.parametrize("language", SPOKEN)
def test_a_timing_is_understood_as_the_help_of_its_language_has_it(key, language):
    """And behind it where the sun shone."""
    text = said(key, reader(language=language))
    like = re.search("(?i)(stiffening|anziehend) 31 min .*? .*? .*?°C", text)[0]
    plain = read_timings("stiffening 31 min 240 g cup 20 °C")
    assert read_timings(like) == plain
    behind = {"en": " in sun", "de": " in der Sonne"}[language]
    assert read_timings(like + behind) == read_timings("stiffening 31 min 240 g cup 20 °C in sun") != plain


@pytest.mark.parametrize("language", SPOKEN)
def test_the_faces_of_layers_are_understood_as_the_help_of_its_language_has_them(language):
    text = said("boat-joint-faces.help", reader(language=language))
    words = {"en": ("each", "in", "out"), "de": ("beide", "innen", "außen")}[language]
    assert all(word in text for word in words) and faces(" : ".join(words)) == ["all", "first", "second"]

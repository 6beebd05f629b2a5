"""What is kept, or goes to another phone, holds no words of ours; what an earlier build kept is read for ever.

What the user typed stays as typed, and so does what a lead fills into a field of words: it is his from then on.
"""
import csv
import functools
import html
import re

import cases
import pseudo
import pytest
from covemix.server.build import Build
from covemix.server.models import request_model
from covemix.server.pages import Pages
from covemix.shared.boat.boat_rows import faces
from covemix.shared.catalogue.demo_boat import NAMES as DEMO
from covemix.shared.clock.pot_names import BEFORE, KNOWN
from covemix.shared.door import card, handover, moves, saved_file
from covemix.shared.forms.declared import find_in
from covemix.shared.things.learned_rates import read_learned
from covemix.shared.things.own_timings import read_timings
from covemix.shared.things.records import FILLER, SYSTEM
from covemix.shared.things.trials import read_trials
from covemix.shared.words.languages import LANGUAGES
from covemix.shared.words.texts import said
from covemix.shared.words.written import reader
from house import build

# names of the example's joints and faces, which are the user's own from the tap on
IN_WORDS = re.compile(r"(pieces|joints|surfaces)\.\d+\.name")
EXAMPLE = tuple(DEMO)
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
            if not (IN_WORDS.fullmatch(key) and english.startswith(EXAMPLE)):
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
    "timings": KEPT["timings"].replace("gone", "stiff"),
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
    "stiff 31 min 240 g cup 20 °C", "steif 31 min 240 g Becher 20,0 °C",
    "fest 31 Minuten 240 g Becher 20 °C", "Fest nach 31 min, 240 g im Becher bei 20 °C", "gone 31 min 240 g cup 20 °C"])
def test_own_timings_typed_in_any_language_are_understood(text):
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


def kept_texts(inputs, path=""):
    """(dotted name, field) of each field whose words are keys, one of each kind."""
    for field in inputs:
        name = path + field.name
        if getattr(field, "keys", None):
            yield name, field
        yield from kept_texts(field.inner(), name + (".0." if field.repeats else "."))


KEYED = {name: (screen, field) for screen in dict(moves.SCREENS)
         for name, field in kept_texts(moves.screen_inputs(screen))}


def test_the_fields_whose_words_are_keys_are_these():
    """Own timings of a system and of a day, test cups, learned rates, faces of layers, and joints without a name."""
    assert {name.rpartition(".")[2] for name in KEYED} == {"timings", "trials", "learned", "faces", "name"}
    assert "timings" in KEYED


@pytest.mark.parametrize("language", SPOKEN)
@pytest.mark.parametrize("name", KEYED)
def test_each_key_has_a_word_of_its_own_in_a_form_which_is_read_back(name, language):
    _, field = KEYED[name]
    words = {key: said(field.keys[key], reader(language=language)) for key in field.keys}
    assert len(set(words.values())) == len(words)
    behind = " 3" if name.endswith("name") else ""  # a name alone is as typed
    for key, word in words.items():
        assert word.isalpha()
        assert field.keyed(word + behind) == key + behind
        assert behind or field.keyed(word + ",") == key + ","


@functools.cache
def pages(language):
    return Pages(Build(language=language))


def test_what_is_kept_as_a_list_has_the_whole_width_of_a_phone():
    page = pages("de").render("pour", [])
    wide = set(re.findall(r'field-wide" data-field="(system\.[a-z_]+)"', page))
    assert {"system.timings", "system.trials"} <= wide and "system.lot" not in wide


def shown(screen, pairs, name, language):
    """What stands in a field of a page that was opened by a link."""
    page = pages(language).render(screen, pairs)
    return html.unescape(re.search(rf'name="{re.escape(name)}".*? value="([^"]*)"', page)[1])


IN_GERMAN = {
    "system.timings": ("gone 1860 s 240 g cup 20.5 °C filler 30.0 % sun full black; good 22 min 100 g bag 18 °C",
                       "steif 1860 s 240 g Becher 20,5 °C Füllstoff 30,0 % Sonne voll schwarz; "
                       "brauchbar 22 min 100 g Spritzbeutel 18 °C"),
    "system.trials": (KEPT["trials"], "dick 1800 s, Zweifel 8 %, Masse 100 g, Luft 20,0 °C, Verlust 90 %, Wärme 97 %, "
                                      "Breite 70 mm, Mischung 21,0 °C"),
    "crew.learned": ("roll 0.50, 0.41 to 0.60, from 3; wet 0.80, 0.70 to 0.90, from 4",
                     "entlüften 0,50, 0,41 bis 0,60, aus 3; tränken 0,80, 0,70 bis 0,90, aus 4"),
    "timings": (KEPT["timings"], "steif 1860 s 240 g Becher 20,0 °C Füllstoff 30,0 % Harz 25,0 °C; "
                                 "anziehend 22 min 100 g Spritzbeutel 18 °C"),
    "joints.0.faces": ("each : out", "beide : außen"),
}


@pytest.mark.parametrize("name", IN_GERMAN)
def test_a_german_form_shows_what_is_kept_in_german_and_reads_it_back(name):
    """And a link that is made of it holds keys and figures again, whoever opens it."""
    kept, german = IN_GERMAN[name]
    screen, field = KEYED[name]
    base = [["system.by_weight", "3:1"]] if name.startswith("system") else []
    assert shown(screen, [*base, [name, kept]], name, "de") == german
    values = {"units": "metric", "_understood": [], "_tree": {}}
    read = field.read(german, name, values)
    assert re.sub(r"(\d),(?=\d)", r"\1.", read) == kept
    handed = handover.handed(screen, [*base, [name, german]], "", "de")
    assert [text for key, text in handed["link"] if key == name] == [read]
    assert shown(screen, [*base, [name, read]], name, "en") == read.replace("gone", "stiff").replace("good", "usable")


@pytest.mark.parametrize("name", ["system.timings", "system.trials", "crew.learned"])
def test_what_a_german_form_shows_counts_as_what_is_kept(name):
    kept, german = IN_GERMAN[name]
    read = {"timings": read_timings, "trials": read_trials, "learned": read_learned}[name.rpartition(".")[2]]
    _, field = KEYED[name]
    assert read(field.read(german, name, {})) == read(kept)


@pytest.mark.parametrize("screen", [name for name, _ in moves.SCREENS if name != "sources"])
def test_what_a_lead_fills_into_a_form_is_shown_in_the_words_of_the_page(screen):
    """No English key stands in a field of another language: what is a word there is one of the page, or was typed."""
    for request in cases.requests(screen, 6 if screen in ("plan", "boat") else 30):
        own = " ".join(str(text) for _, text in request["pairs"])
        for _, one in pseudo.answered(request)["answers"]:
            for lead in one["leads"]:
                inputs = moves.screen_inputs(lead["screen"])
                for (label, text), (name, _) in zip(card.told(inputs, lead["pairs"], pseudo.speak()),
                                                    [pair for pair in lead["pairs"]
                                                     if find_in(inputs, pair[0].split("."))], strict=True):
                    assert pseudo.english(text, own) == [], (name, label, text)


@pytest.mark.parametrize("language", SPOKEN)
def test_a_piece_of_a_boat_is_kept_by_its_name_and_the_key_of_its_face(language):
    """The face is said where the plan is read; "Keel inside", as an earlier build kept it, stays as it is."""
    pairs = [["joints.0.name", "Stem"], ["joints.0.kind", "both"], ["joints.0.length", "2.4"], ["joints.0.copies", "2"]]
    [[_, boat]] = moves.asked("boat", pairs, language=language)["answers"]
    led = [lead["pairs"] for lead in boat["leads"] if lead["screen"] == "plan"]
    kept = [[text for name, text in one if re.fullmatch(r"pieces\.\d\.(name|face)", name)] for one in led]
    assert kept == [["Stem 1", "inside", "Stem 2", "inside"], ["Stem 1", "outside", "Stem 2", "outside"]]
    [[_, plan]] = moves.asked("plan", [*led[0], ["pieces.2.name", "Bow inside"], ["pieces.2.length", "1"],
                                       ["pieces.2.putty", "60"], ["pieces.2.wet", "40"], ["system.by_weight", "100:30"],
                                       ["temperature", "18"], *LABEL], language=language)["answers"]
    assert plan["errors"] == []
    told = " ".join(line["rough"] for line in plan["lines"])
    inside = {"en": "inside", "de": "innen"}[language]
    assert f"Stem 1 {inside}" in told and f"Stem 2 {inside}" in told and "Bow inside" in told


LABEL = [["system.pot_time", "30"], ["system.pot_mass", "100"], ["system.pot_temperature", "25"]]


@pytest.mark.parametrize("language", SPOKEN)
def test_a_joint_that_nobody_named_goes_to_a_plan_by_its_number(language):
    """A plan says it in its own words, and what a form of any language shows is read back; another name is as typed."""
    pairs = [["joints.0.name", "Joint at bow"], ["joints.0.length", "1"], ["joints.1.length", "2.4"],
             ["joints.1.copies", "2"]]
    [[_, boat]] = moves.asked("boat", pairs, language=language)["answers"]
    led = next(lead["pairs"] for lead in boat["leads"] if lead["screen"] == "plan")
    assert [text for name, text in led if name.endswith(".name")] == ["Joint at bow", "nth 2 1", "nth 2 2"]
    [[_, plan]] = moves.asked("plan", [*led, ["system.by_weight", "100:30"], ["temperature", "18"], *LABEL],
                              language=language)["answers"]
    word = {"en": "Joint", "de": "Verbindung"}[language]
    told = " ".join(line["rough"] for line in plan["lines"])
    assert plan["errors"] == [] and f"{word} 2 1" in told and f"{word} 2 2" in told and "nth" not in told
    assert shown("plan", led, "pieces.1.name", language) == f"{word} 2 1"
    assert shown("plan", led, "pieces.0.name", language) == "Joint at bow"
    _, field = KEYED["pieces.0.name"]
    for kept, typed in (("nth 2 1", "Joint 2 1"), ("nth 2 1", "Verbindung 2 1"), ("Joint at bow", "Joint at bow"),
                        ("Rib 1.5", "Rib 1.5"), ("Joint", "Joint")):
        assert field.read(typed, "pieces.0.name", {}) == kept


PIECES = "Stem|inside||nth 2 1|outside|1/2|5||"


@pytest.mark.parametrize("language, log, pot", [
    ("en", "Stem inside, Joint 2 1 outside (1 of 2), Piece 5", "Stem inside to Piece 5"),
    ("de", "Stem innen, Verbindung 2 1 außen (1 von 2), Stück 5", "Stem innen bis Stück 5"),
])
def test_the_pieces_of_a_batch_are_kept_by_name_face_and_part(language, log, pot):
    """A log and a pot say them in the language of the page; what an earlier build kept is said as it stands."""
    assert said_of("log", {"planned": "3", "pieces": PIECES}, "summary", language)[1] == log
    assert said_of("pot", {**POT, "pieces": PIECES}, "place", language)[1].endswith(" · " + pot)
    assert said_of("log", {"planned": "3", "seam": "Stem inside"}, "summary", language)[1] == "Stem inside"
    assert said_of("pot", {**POT, "place": "Keel to Stem"}, "place", language)[1].endswith(" · Keel to Stem")
    rows = [["2026-06-01 08:30", {"planned": "3", **one}] for one in ({"pieces": PIECES}, {"seam": "Bow"}, {})]
    made = saved_file.filed({"file": "log.log.csv", "rows": rows, "units": "metric", "decimal": "."}, None, language)
    seams = [row[2] for row in csv.reader(made["text"].splitlines()[1:])]
    assert seams == [log, "Bow", ""]
    for text in ("|||", "Stem", "||2/", "nth 2", "Stem|roof|1/x"):
        assert said_of("log", {"planned": "3", "pieces": text}, "summary", language)


@pytest.mark.parametrize("language", SPOKEN)
def test_what_a_plan_hands_to_log_and_pot_names_its_pieces_by_keys(language):
    running = [["running", "yes"], ["now", "500"], ["pieces.0.name", "Stem"], ["pieces.0.face", "inside"],
               ["pieces.0.length", "1"], ["pieces.0.putty", "60"], ["pieces.0.wet", "40"], ["pieces.1.length", "1"],
               ["pieces.1.putty", "60"], ["pieces.1.wet", "40"], ["system.by_weight", "100:30"], ["temperature", "18"],
               *LABEL]
    [[_, plan]] = moves.asked("plan", running, language=language)["answers"]
    pairs = [pair for lead in plan["leads"] for pair in lead["pairs"]]
    assert ["pot.pieces", "Stem|inside||2||"] in pairs and not [name for name, _ in pairs if name == "pot.place"]

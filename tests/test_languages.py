"""Languages: marks, plurals, units and voice of each; what is typed is understood whatever language a page is in."""
import json
import re

import cases
import pytest
from covemix.server.build import HOUSE
from covemix.server.put_in import own_row
from covemix.shared.catalogue.sources import SOURCES
from covemix.shared.door import moves
from covemix.shared.door.call import call
from covemix.shared.forms import links
from covemix.shared.forms.clock_times import clock_time
from covemix.shared.words.languages import LANGUAGES, SPELT, Language, Reader
from covemix.shared.words.messages import (
    fact,
    in_unit,
    length,
    lengths,
    listed,
    message,
    noted,
    number,
    quantity,
    spoken,
    typed,
    unit,
    unit_of,
    with_unit,
)
from covemix.shared.words.texts import said
from covemix.shared.words.units import AMBIGUOUS, BY_NAME, find
from covemix.shared.words.written import FIRST, reader, sentences, unread

ENGLISH = sentences("en")
SPOKEN = tuple(LANGUAGES)  # before another test makes one up
GERMAN = Reader(ENGLISH, LANGUAGES["de"], "metric", False)
NBSP = "\u00a0"


@pytest.mark.parametrize("one", LANGUAGES.values(), ids=LANGUAGES)
def test_a_language_has_all_of_its_own(one):
    """A row that lacks a unit says its sign, so nothing would fail: it is asked here."""
    assert LANGUAGES[one.name] is one and isinstance(one, Language)
    assert all(isinstance(text, str) and text for text in (
        one.name, one.label, one.decimal, one.to, one.both, one.either, one.apart))
    assert len(one.decimal) == 1 and one.apart[-1] == " "
    assert {text[at] for text in (one.to, one.both, one.either) for at in (0, -1)} == {" "}
    assert one.spelt in (True, False)
    assert set(one.tails) - {"%"} == set(LANGUAGES["en"].tails) and set(one.aloud) == set(LANGUAGES["en"].aloud)
    assert set(one.tails) | set(one.aloud) <= set(BY_NAME)
    for words in [*one.tails.values(), *one.aloud.values()]:
        assert len(words) == 2 and all(words)
    assert all(text[0] in (" ", NBSP) and text[1:].strip() == text[1:] for pair in one.tails.values() for text in pair)


CLDR = "Unicode CLDR, Language Plural Rules, cardinals: one if i = 1 and v = 0"
# the samples that it gives for each case
RULES = {
    "en": {"one": ("1",), "other": ("0", "2", "10", "100", "0.0", "0.1", "1.0", "1.5", "10.0", "1000000")},
    "de": {"one": ("1",), "other": ("0", "2", "10", "100", "0.0", "0.1", "1.0", "1.5", "10.0", "1000000")},
}


def test_plurals_are_those_of_the_published_rule(outside):
    """i is the whole part of the absolute value, v the count of decimals in sight: one where i = 1 and v = 0."""
    assert set(RULES) == set(SPOKEN)
    for name, rule in RULES.items():
        for case, samples in rule.items():
            for digits in samples:
                outside.printed(f"plural {name} {digits}", CLDR, case, LANGUAGES[name].plural(digits))


def test_every_spelling_of_every_language_finds_its_unit():
    """Also with a capital, or in capitals only; never another unit of the same quantity."""
    for name, spellings in SPELT:
        for words in spellings:
            capitals = words.replace("ß", "ẞ").upper().replace("ẞ", "ß")
            for text in (words, words.capitalize(), capitals, f" {words} ", words + "."):
                assert find(text, BY_NAME[name].quantity)[0] is BY_NAME[name], text


@pytest.mark.parametrize("text, quantity, name", [
    ("Gramm", "mass", "g"), ("Kilo", "mass", "kg"), ("Kilogramm", "mass", "kg"), ("Unze", "mass", "oz"),
    ("Milliliter", "volume", "mL"), ("Liter", "volume", "L"), ("Kubikmeter", "volume", "m3"), ("ccm", "volume", "mL"),
    ("Millimeter", "length", "mm"), ("Zentimeter", "length", "cm"), ("Meter", "length", "m"), ("Zoll", "length", "in"),
    ("Fuß", "length", "ft"), ("FUSS", "length", "ft"), ("Quadratmeter", "area", "m2"), ("Grad", "angle", "deg"),
    ("Grad", "temperature", "degC"), ("Grad Celsius", "temperature", "degC"), ("Sek.", "time", "s"),
    ("Minuten", "time", "min"), ("Std.", "time", "h"), ("Stunde", "time", "h"), ("Tage", "time", "day"),
    ("Hub", "count", "strokes"), ("HÜBE", "count", "strokes"), ("Prozent", "share", "%"),
])
def test_german_units_are_understood(text, quantity, name):
    assert find(text, quantity)[0].name == name


def test_a_german_pound_is_asked_back():
    """Half a kilogram, or 453.6 g."""
    for text in ("Pfund", "pfund", "PFD"):
        found, why = find(text, "mass")
        assert (found, why) == (None, ("unit-which", {"units": "unit-which-pfund"}))
    assert find("pounds", "mass")[0].name == "lb"
    for spellings, _ in AMBIGUOUS:
        assert not {word for _, words in SPELT for word in words} & set(spellings)


@pytest.mark.parametrize("move, field, text, si", [
    ("ratio", "amount", "240 Gramm", 0.24), ("ratio", "amount", "1,5 Kilo", 1.5),
    ("ratio", "amount", "½ Liter", 0.0005), ("joint", "thickness", "6 Millimeter", 0.006),
    ("joint", "length", "7 Fuß 10 Zoll", 2.3876),
    ("joint", "length", "2,5 Meter", 2.5), ("heat", "air", "18 Grad", 291.15), ("heat", "wanted", "1 Std 30 Min", 5400),
    ("heat", "filler", "20 Prozent", 0.2), ("timer", "lasts", "2 Tage", 172800),
])
def test_a_field_reads_the_units_of_every_language(move, field, text, si):
    values, errors = moves.inputs.read(moves.module(move).INPUTS, {field: text})
    assert [error.message for error in errors if error.field == field] == []
    read = values[field][1] if isinstance(values[field], tuple) else values[field]
    assert read == pytest.approx(si)


def test_parts_stand_apart_by_the_word_between_them_in_each_language():
    lines = moves.answer("ratio", {"system": {"by_weight": "100:30"}})["lines"]
    for text in ("100 to 30", "100 zu 30"):
        found = moves.answer("ratio", {"system": {"by_weight": text}})
        assert not found["errors"] and found["lines"] == lines


ECHO = {".": "field-read.point", ",": "field-read.comma"}


@pytest.mark.parametrize("move, tree, path, read", [
    ("ratio", {"amount": "1{}500"}, "amount", "1.5 g"),  # one of several amounts
    ("ratio", {"amount": "1{}125 kg"}, "amount", "1.125 kg"),  # as it is told, and all the same two ways to read it
    ("heat", {"batch": "1{}500"}, "batch", "1.5 g"),  # a number
    ("heat", {"batch": "1{}500 kg"}, "batch", "1.5 kg"),
    ("heat", {"filler": "12{}500"}, "filler", "12.5%"),
    ("ratio", {"system": {"by_weight": "1{}500:500"}}, "system.by_weight", "1.5 : 500"),  # numbers in a row
    ("ratio", {"system": {"by_weight": "500 1{}500"}}, "system.by_weight", "500 : 1.5"),
    ("ratio", {"system": {"by_volume": "3:1", "densities": "1{}150 : 0.98 g/mL"}}, "system.densities",
     "1.15 g/mL : 0.98 g/mL"),
    ("measure", {"way": "scale", "readings": [{"shown": "1{}500"}]}, "readings.0.shown", "1.5 g"),  # of a list
    ("boat", {"joints": [{"length": "2{}125"}]}, "joints.0.length", "2.125 m"),  # a row of a list
    ("measure", {"way": "pumps", "pumps": {"strokes": "30:10"}, "counted": [{"strokes": "12{}000"}]},
     "counted.0.strokes", "12 strokes"),
])
def test_three_digits_behind_a_mark_are_always_echoed(german, move, tree, path, read):
    """A point or a comma, in every kind of field, in each language: in its own marks."""
    own = read.replace(".", ",").replace("%", NBSP + "%").replace("strokes", "Hübe")
    for mark, why in ECHO.items():
        typed_ = json.loads(json.dumps(tree).replace("{}", mark))
        whole = re.search(r"\d+[.,]\d{3}", json.dumps(typed_))[0].replace(mark, "")
        for language, told in (("en", read), (german, own)):
            text = said(message(why, read=typed(told), whole=typed(whole)), reader())
            assert [path, text] in moves.answer(move, typed_, language=language)["understood"]


@pytest.mark.parametrize("text, english, own", [
    ("1,5", "1.5 g", None), ("1.5", None, None), ("1,5 g", "1.5 g", None), ("1.5 kg", None, None),
    ("1,5kg", "1.5 kg", "1,5 kg"), ("240", None, None), ("240 Gramm", "240 g", "240 g"), ("½ kg", "0.5 kg", "0,5 kg"),
    ("1 lb 4 oz", None, None),
])
def test_a_number_in_the_reader_s_own_marks_is_not_echoed(german, text, english, own):
    for language, told in (("en", english), (german, own)):
        found = moves.answer("ratio", {"amount": text}, language=language)
        assert dict(found["understood"]).get("amount") == told


@pytest.mark.parametrize("text, english, own", [
    ("1.15 : 0.98 g/mL", [], []), ("1,15 : 0,98 g/mL", ["1.15 g/mL : 0.98 g/mL"], []),
    ("1,15 0,98", ["1,15 : 0,98", "1.15 g/mL : 0.98 g/mL"], ["1,15 : 0,98"]),
])
def test_numbers_in_a_row_in_the_reader_s_own_marks_are_not_echoed(german, text, english, own):
    """What parts them is, where it was a blank."""
    for language, told in (("en", english), (german, own)):
        found = moves.answer("ratio", {"system": {"by_volume": "3:1", "densities": text}}, language=language)
        assert [one for path, one in found["understood"] if path == "system.densities"] == told


def test_a_mistake_names_limits_in_the_reader_s_marks(german):
    read = moves.answer("measure", {"way": "scale", "scale": {"step": "200 g"}}, language=german)["errors"]
    text, = [one["message"] for one in read if one["field"] == "scale.step"]
    assert " 0,001 " in text and text.endswith(" 100 g")
    read = moves.answer("rescue", {"rescue": "yes", "in_cup": [{"strokes": "20000"}]}, language=german)["errors"]
    text, = [one["message"] for one in read if one["field"] == "in_cup.0.strokes"]
    assert text.endswith(" 10000 Hübe")


DECIMALS = re.compile(r"(?<![\d.])\d+\.\d+(?![\d.])")
# ids of rows; what a page keeps and hands back; texts that the kit keeps, the same in every language
DATA = re.compile(r".*(?:\.id|\.value|\.name|\.ring\.part|\.keep_\w+\.part|\.low|\.high)"
                  r"|.*timings.*|.*trials.*|.*learned.*")


def told_of(data, path=""):
    """(place, text) of all texts of an answer."""
    if isinstance(data, dict):
        path = f"{path}.{data['name']}" if isinstance(data.get("name"), str) else path
        for key, value in data.items():
            yield from told_of(value, f"{path}.{key}")
    elif isinstance(data, list | tuple):
        if len(data) == 2 and isinstance(data[0], str) and isinstance(data[1], str):
            yield f"{path}.{data[0]}", data[1]
        else:
            for one in data:
                yield from told_of(one, path)
    elif isinstance(data, str):
        yield path, data


def literal(pattern):
    """What of a pattern stands in it as it is: a translator writes it in his own marks."""
    if isinstance(pattern, str):
        return re.sub(r"\{[^}]*\}", " ", pattern)
    return " ".join(literal(piece) if isinstance(piece, str) else " ".join(map(literal, piece[1].values()))
                    for piece in pattern[1:])


OURS = set(DECIMALS.findall(" ".join(map(literal, ENGLISH.values())) + " ".join(SOURCES.values())))


@pytest.mark.parametrize("name", [*moves.names(), *dict(moves.SCREENS)])
def test_no_figure_keeps_the_decimal_point_of_english(german, name):
    """In answers, errors, leads, labels, options, defaults and built-in rows: what has a point is a sentence's own."""
    found = [("about", moves.about(name, reader(language=german)), "")] if name in moves.names() else []
    for request in cases.requests(name, {"sources": 2, "plan": 6, "boat": 6}.get(name, 20)):
        own = json.dumps(request, ensure_ascii=False)
        if "screen" in request:
            found.append((name, moves.asked(request["screen"], request["pairs"], language=german), own))
        else:
            found.append((name, moves.answer(request["move"], request["typed"], language=german), own))
    left = {place: text for start, data, own in found for place, text in told_of(data, start)
            if not DATA.fullmatch(place) and not all(one in OURS or one in own for one in DECIMALS.findall(text))}
    assert left == {}


def test_a_form_starts_in_the_reader_s_marks(german):
    about = {item["name"]: item for item in moves.about("boat", reader(language=german))["inputs"]}
    keel = about["joints"]["default"][0]
    assert keel["length"] == "3,05 m" and keel["name"] == "Keel"
    scale = {one["name"]: one for one in moves.about("ratio", reader(language=german))["inputs"]}["scale"]
    assert {row["id"]: row["typed"]["step"] for row in scale["rows"]}["0.1g"] == "0,1 g"
    amount = {one["name"]: one for one in moves.about("ratio", reader(language=german))["inputs"]}["amount"]
    assert {one["value"]: one["unit"] for one in amount["options"]}["strokes"] == "Hübe"


@pytest.mark.parametrize("screen", [name for name in dict(moves.SCREENS) if name != "sources"])
def test_an_untouched_form_of_any_language_is_an_empty_link(german, screen):
    """What it starts with is no input, in whatever marks it stands there."""
    pairs = []
    for item in moves.screen_inputs(screen):
        facts = item.about(reader(language=german))
        if facts["kind"] in ("number", "parts", "amount") and facts["default"]:
            pairs.append((item.name, facts["default"]))
        if facts["kind"] == "group":
            pairs += [(f"{item.name}.{place}.{name}", text) for place, row in enumerate(facts["default"])
                      for name, text in row.items()]
    inputs_ = moves.screen_inputs(screen)
    if screen != "boat":
        assert links.pairs(inputs_, links.tree(pairs)) == links.pairs(inputs_, {})


def test_a_thing_that_starts_from_a_row_still_stands_as_that_row(german):
    """The figures of a row, typed with a comma: nobody has measured them."""
    for step in ("2.5 mL", "2,5 mL"):
        tree = {"kind": "graduated", "graduated": {"name": "x", "holds": "30 mL", "step": step, "origin": "row"}}
        found = {line["name"] for line in moves.answer("kit", tree, language=german)["lines"]}
        assert found == {line["name"] for line in moves.answer("kit", tree)["lines"]}
        assert moves.inputs.read(moves.module("kit").INPUTS, tree)[1] == []
    asked = [moves.answer("measure", {"way": "graduated", "graduated": {"id": "30mL", "step": step}})["lines"]
             for step in ("2.5 mL", "2,5 mL")]
    assert asked[0] == asked[1]


def test_a_phone_has_its_own_row_and_english_where_that_stands_beside_it():
    """And what it is sent asks for no other by its name."""
    source = (HOUSE / "shared" / "words" / "languages.py").read_text(encoding="utf-8")
    for name in SPOKEN:
        found: dict = {}
        exec(own_row(source, name), found)
        assert set(found["LANGUAGES"]) == {name, *([FIRST] if unread(name) else [])} and found["SPELT"] == SPELT
        assert found["LANGUAGES"][name][:6] == LANGUAGES[name][:6]


def test_figures_stand_in_the_marks_and_units_of_german():
    each = {
        quantity(0.0125, "g", places=1): "12,5 g", lengths((0.012, 0.0295)): "12 bis 29,5 mm",
        quantity(0.125, "%", places=1): f"12,5{NBSP}%", fact("%", 0.05): f"5{NBSP}%", length(0.0145): "14,5 mm",
        quantity(1, "deg", places=0): "57°", with_unit("1", "strokes"): "1 Hub", with_unit("3", "strokes"): "3 Hübe",
        with_unit("1.0", "strokes"): "1,0 Hübe",
        with_unit("1", "day"): "1 Tag", with_unit("2", "day"): "2 Tage", unit("strokes"): "Hübe", unit("%"): "%",
        unit_of(with_unit("1", "strokes")): "Hub", unit_of(with_unit("1", "%")): "%", unit("g"): "g",
        in_unit(0.00025, "mL"): "250 mL", number("0.5"): "0,5",
        typed("1.5"): "1.5",  # somebody's own words
    }
    assert {said(what, GERMAN) for what in each} == set(each.values())
    for what, text in each.items():
        assert said(what, GERMAN) == text
    assert said(listed([number("1"), number("2.5")]), GERMAN) == "1 und 2,5"
    assert said(listed([number("1"), number("2.5"), number("3")]), GERMAN) == "1; 2,5 und 3"
    assert said(noted([number("1"), number("2.5")]), GERMAN) == "1; 2,5" and noted([]) == ""
    assert said(fact("g", 0.01, 0.0355), GERMAN) == "10 bis 35,5 g"


def test_english_says_one_stroke():
    who = reader()
    assert [said(with_unit(digits, "strokes"), who) for digits in "120"] == ["1 stroke", "2 strokes", "0 strokes"]
    assert said(with_unit("1", "day"), who) == "1 day"


@pytest.mark.parametrize("digits, name, english, own", [
    ("243", "g", "two hundred and forty-three grams", "243 Gramm"), ("1", "strokes", "one stroke", "1 Hub"),
    ("31", "strokes", "thirty-one strokes", "31 Hübe"), ("1", "min", "one minute", "1 Minute"),
    ("60.2", "mL", "sixty point two millilitres", "60,2 Milliliter"),
    ("2.00", "US fl oz", "two point zero zero fluid ounces", "2,00 Flüssigunzen"),
    ("1", "kg", "one kilogram", "1 Kilogramm"), ("0.5", "US pt", "zero point five US pt", "0,5 US pt"),
])
def test_a_figure_is_said_aloud_in_words_or_in_the_reader_s_marks(digits, name, english, own):
    assert said(spoken(with_unit(digits, name)), reader()) == english
    assert said(spoken(with_unit(digits, name)), GERMAN) == own


def test_a_pour_is_said_step_by_step_in_the_reader_s_units(german):
    steps = moves.answer("pouring", {"amount": "240", "way": "pumps"}, language=german)["steps"]
    assert [one["figure"] for one in steps][:2] and any("Hübe" in one["said"] or "Hub" in one["said"] for one in steps)
    assert not any(word in one["said"] for one in steps for word in ("stroke ", "strokes", "minutes", "twenty"))
    logs = dict(steps[-1]["logs"])
    assert logs["mass"].endswith(" g") and "." not in logs["mass"]
    thick = moves.answer("pouring", {"amount": "240", "way": "pumps", "thicken": "yes"}, language=german)["steps"]
    kept, = [dict(one["keeps"]) for one in thick if one["keeps"]]
    assert kept["filler"] == "wood-flour" and kept["mixed"].endswith(" g")


CLOCK = (("14:05", 14, 5), ("14.05", 14, 5), ("14h05", 14, 5), ("14 h 05", 14, 5), ("14H", 14, 0), ("14 Uhr 05", 14, 5),
         ("8 Uhr", 8, 0), ("8uhr", 8, 0), ("8:30 Uhr", 8, 30), ("8.30 UHR", 8, 30), ("8:30 h", 8, 30), ("8,30", 8, 30),
         ("0 Uhr", 0, 0), ("2.15 pm", 14, 15), ("12 am", 0, 0), ("7 p.m.", 19, 0))


@pytest.mark.parametrize("text, hour, minute", CLOCK)
def test_a_clock_time_is_understood_as_people_write_it(text, hour, minute):
    assert clock_time(text) == hour * 3600 + minute * 60


@pytest.mark.parametrize("text", ["Uhr", "h", "24 Uhr", "14 Uhr 60", "8 Uhr 5 Uhr 1", "halb neun", "14::05"])
def test_what_is_no_clock_time_is_refused(text):
    assert clock_time(text) is None


def test_a_clock_time_is_read_in_its_own_field_alone():
    """A number that looks like one stays a number."""
    assert moves.answer("heat", {"wanted": "8 Uhr"})["errors"]
    assert moves.answer("cure", {"air": "18", "mixed_at": "14 Uhr 05"})["errors"] == []


def test_the_door_speaks_the_language_that_is_asked(german):
    """As a phone asks: by JSON."""
    asked = json.dumps({"screen": "pour", "pairs": [["amount", "1.500"]]})
    assert "1.5 g" in json.dumps(json.loads(call(asked))["understood"])
    assert message("x")[0] == "x"

"""Words: every sentence stands in the file of its language, under a key that is used, with the values it is given.

A key that is joined from pieces is found by a server alone: a phone has sentences in the places of their keys.
"""
import ast
import re

import cases
import pseudo
import pytest
from covemix.server.build import HOUSE
from covemix.shared.door import card, moves
from covemix.shared.words.languages import LANGUAGES
from covemix.shared.words.messages import (
    along,
    fact,
    length,
    lengths,
    listed,
    message,
    number,
    quantity,
    row,
    typed,
)
from covemix.shared.words.texts import said
from covemix.shared.words.written import Refused, ends, names, of_file, patterns, reader, sentences, unread
from test_page_names import TEXT
from test_page_rooms import code

ENGLISH = sentences("en")
OTHERS = [one for one in LANGUAGES if one != "en"]
MODULES = sorted((HOUSE / "shared").rglob("*.py")) + sorted((HOUSE / "server").glob("*.py"))
PAGES = sorted((HOUSE / "webui").rglob("*.html"))
SCRIPTS = [*sorted((HOUSE / "webui" / "js").rglob("*.js")), HOUSE / "webui" / "sw.js"]
ASKED = re.compile(r"""(?<![\w.])(?:t|bold)\(["']([\w.-]+)["']""")


def trees():
    return {path: ast.parse(path.read_text(encoding="utf-8")) for path in MODULES}


TREES = trees()


def texts(tree):
    return {node.value for node in ast.walk(tree) if isinstance(node, ast.Constant) and isinstance(node.value, str)}


def calls():
    """(where, key, names of its values) of each message whose key stands in the call."""
    for path, tree in TREES.items():
        for node in ast.walk(tree):
            if (isinstance(node, ast.Call) and isinstance(node.func, ast.Name) and node.func.id == "message"
                    and node.args and isinstance(node.args[0], ast.Constant) and all(one.arg for one in node.keywords)):
                yield f"{path.parent.name}/{path.name}:{node.lineno}", node.args[0].value, {
                    one.arg for one in node.keywords}


def test_every_sentence_is_used():
    used = set().union(*map(texts, TREES.values()))
    for path in [*PAGES, *SCRIPTS]:
        used |= set(ASKED.findall(path.read_text(encoding="utf-8")))
    assert sorted(ENGLISH.keys() - used) == []


def cases_of(pattern):
    """The names of the cases of a pattern."""
    if isinstance(pattern, str):
        return set()
    choices = [piece[1] for piece in pattern[1:] if not isinstance(piece, str)]
    return set().union(*choices, *(cases_of(case) for one in choices for case in one.values()))


def test_no_key_is_a_word_that_the_program_decides_by():
    """On a phone each text that is a key is another: a key has a hyphen, and no case has its name."""
    assert [key for key in ENGLISH if "-" not in key.partition(".")[0]] == []
    assert set().union(*map(cases_of, ENGLISH.values())) & ENGLISH.keys() == set()


def test_every_message_has_its_sentence_and_the_values_that_it_takes():
    found = list(calls())
    assert len(found) > 500
    assert [(where, key) for where, key, _ in found if key not in ENGLISH] == []
    assert [(where, key, sorted(given ^ names(ENGLISH[key]))) for where, key, given in found
            if given != names(ENGLISH[key])] == []


@pytest.mark.parametrize("path", [*PAGES, *SCRIPTS], ids=lambda path: path.name)
def test_what_a_page_asks_for_is_there(path):
    asked = set(ASKED.findall(path.read_text(encoding="utf-8")))
    assert sorted(asked - ENGLISH.keys()) == []


@pytest.mark.parametrize("path", SCRIPTS, ids=lambda path: path.name)
def test_a_script_says_nothing_of_its_own(path):
    """No text with two words, and none that ends a sentence."""
    texts = [plain or re.sub(r"\$\{[^}]*\}", "0", filled)
             for plain, filled in TEXT.findall(code(path.read_text(encoding="utf-8")))]
    assert [text for text in texts
            if re.search(r"[A-Z][a-z]* [a-z]|0: [a-z]+\.|[a-z]{2}[.!?] [A-Z]|^0, [a-z]{3}", text)] == []


def test_no_script_has_words_of_its_own_for_what_went_wrong():
    """An error's text stands behind a notice: three small words in a row are a sentence. No screen shows these:
    they end a start, a walk to another screen, or a question, which then has failed on our side."""
    found = set()
    for path in SCRIPTS:
        for plain, filled in TEXT.findall(code(path.read_text(encoding="utf-8"))):
            text = plain or re.sub(r"\$\{[^}]*\}", "0", filled)
            if re.search(r"(^|[ \"'])[a-z]{2,} [a-z]{2,} [a-z]{2,}", text):
                found.add((path.name, text.partition("\\n")[0]))
    assert found == {("interpreter.js", "0: too many modules"), ("interpreter.js", "there is no memory left"),
                     ("navigation.js", "not this build"), ("worker.js", "from shared.door import call as door")}


def test_no_script_puts_a_mark_of_a_language_between_texts():
    """A comma, a semicolon, a colon or a stop between things is a sentence's own: "page-list", "card-line". The timings
    that a system keeps have a semicolon in all languages, a spreadsheet's cells and a drawing's points a comma."""
    marks = {(path.name, one) for path in SCRIPTS for line in code(path.read_text(encoding="utf-8")).split("\n")
             if "throw new" not in line
             for one in re.findall(r'join\("[,;:.] ?"\)|\}: \$\{|endsWith\("[?.]"\)|replace\(/\\\.\$/', line)}
    assert marks == {("clock.js", 'join("; ")'), ("figure.js", 'join(",")')}


@pytest.mark.parametrize("name", [*moves.names(), *dict(moves.SCREENS)])
def test_nothing_is_said_outside_of_a_message(name):
    """In a language that nobody speaks no English is left: in no line, label, help, error, drawing or caution."""
    count = {"sources": 2, "plan": 12, "boat": 12}.get(name, 30)
    left = pseudo.unsaid(name, cases.requests(name, count))
    assert {place: text for place, (text, _) in left.items()} == {}


def test_a_figure_is_told_in_the_reader_s_units():
    metric, us = reader(), reader("us")
    each = (quantity(0.24, "g", places=1), length(0.01449), lengths((0.012, 0.0295)), along(2.4), fact("K", 3.0))
    assert [said(one, metric) for one in each] == ["240.0 g", "14.5 mm", "12 to 29.5 mm", "2.4 m", "3 °C"]
    assert [said(one, us) for one in each] == ["8.5 oz", "0.57 in", "0.47 to 1.16 in", "7.87 ft", "5.4 °F"]


def test_the_user_s_own_words_stand_as_typed():
    """Braces too: they are figures in our sentences only."""
    us = reader("us")
    assert said(typed("{100 mm}"), us) == "{100 mm}"
    assert said("spreader-measure.text", us).startswith("The bar must be 3.94 in long")
    assert (said(message("unit-unknown", typed=typed("{10 K}")), us)
            == "unknown unit '{10 K}'. Type the number alone, or another unit.")


def test_things_stand_in_a_row_or_a_list():
    each = [number("1"), number("2"), number("3")]
    assert said(listed(each), reader()) == "1, 2 and 3" and said(listed(each[:1]), reader()) == "1"
    assert said(listed(each, "plain"), reader()) == "1, 2, 3" and said(row(each, " : "), reader()) == "1 : 2 : 3"


def test_no_code_makes_a_letter_small_or_a_capital_in_what_is_said():
    """German has its nouns in capitals: only what was typed, and what it is compared with, is made small."""
    made = {f"{path.parent.name}/{path.name}" for path, tree in TREES.items() if "shared" in path.parts
            for node in ast.walk(tree) if isinstance(node, ast.Call) and (
                getattr(node.func, "id", "") in ("small", "capital")
                or getattr(node.func, "attr", "") in ("lower", "upper", "title", "capitalize", "casefold", "swapcase"))}
    assert made == {"boat/boat_rows.py", "forms/choices.py", "forms/clock_times.py", "kit/catalogue_tables.py",
                    "kit/sources_lines.py", "mix/ratio_doubt.py", "safety/powders.py", "things/own_timings.py",
                    "things/trials.py", "words/units.py"}


BETWEEN = {"", " ", " + ", " × ", " : ", " · "}  # signs of every language; a comma is none, nor what parts notes


def test_things_in_a_row_stand_between_signs_of_every_language():
    """What parts things in a list, or notes, is a matter of the reader's language."""
    rows = {(f"{path.parent.name}/{path.name}", node.args[1].value) for path, tree in TREES.items()
            for node in ast.walk(tree) if isinstance(node, ast.Call) and len(node.args) == 2
            and getattr(node.func, "id", "") in ("row", "words_of") and isinstance(node.args[1], ast.Constant)}
    assert len(rows) > 10
    assert {one for one in rows if one[1] not in BETWEEN} == set()


def test_a_language_that_nobody_speaks_is_seen_as_such():
    who = reader(language=pseudo.speak())
    text = said(message("field-refused", label="spreader-paper", why="number-plain"), who)
    assert text[0] == pseudo.OPEN and text[-1] == pseudo.SHUT and pseudo.english(text, "") == []
    assert pseudo.english("Paper: " + text, "") == ["Paper"]  # joined
    assert pseudo.english(text[:-4] + " more" + text[-4:], "") == []  # inside is inside
    assert said(number("1.5"), who) == "1٫5"


@pytest.mark.parametrize("source", [
    "a = { NUMBER($x) }", "a = { other }",
    "a = one\n  # why\n  .b = two\n", "a = one\n  two", "a = one\na = two", "a = } {",
    "-t = x { $y }\na = { -t(y: 1) }",
])
def test_what_we_do_not_use_of_the_format_is_refused(source):
    with pytest.raises(Refused):
        patterns(source)


@pytest.mark.parametrize("language", OTHERS)
def test_a_language_says_all_that_english_says(language):
    own = of_file(language)
    assert sorted(own.keys() ^ ENGLISH.keys()) == []
    assert {key for key in own if names(own[key]) != names(ENGLISH[key])} == set()
    assert {key: (figures(ENGLISH[key]), figures(own[key])) for key in own
            if figures(own[key]) != figures(ENGLISH[key])} == {}


def figures(pattern):
    """The figures of a sentence that are told in the reader's units."""
    return {one for text in texts_of(pattern) for one in re.findall(r"\{(\d[^}]*)\}", text)}


def texts_of(pattern):
    """All texts of a pattern, also those of its choices."""
    if isinstance(pattern, str):
        return [pattern]
    return [text for piece in pattern[1:]
            for one in ([piece] if isinstance(piece, str) else piece[1].values()) for text in texts_of(one)]


def letters(pattern):
    """Its letters, with the longest of its choices; a value is taken for six."""
    if isinstance(pattern, str):
        return len(re.sub(r"\{[^}]*\}", "12 mm.", pattern))
    return sum(letters(piece) if isinstance(piece, str) else max(map(letters, piece[1].values()))
               for piece in pattern[1:])


@pytest.mark.parametrize("language", OTHERS)
def test_no_sentence_of_a_language_is_english_or_too_long_for_its_place(language):
    own = of_file(language)
    same = {key: own[key] for key in own if own[key] == ENGLISH[key] and len(re.findall(r"[a-z]{3,}", "".join(
        re.sub(r"\{[^}]*\}", "", text) for text in texts_of(own[key])))) > 2}
    assert same == {}
    assert {key: (letters(ENGLISH[key]), letters(own[key])) for key in own
            if letters(own[key]) > 1.6 * letters(ENGLISH[key]) + 12} == {}


@pytest.mark.parametrize("language", OTHERS)
def test_what_keeps_from_harm_stands_with_its_english_until_a_native_has_read_it(language):
    own, said_as = of_file(language), sentences(language)
    beside = [key for key in own if key.startswith(unread(language))
              and (key.startswith("ghs-") or ends(ENGLISH[key]))]
    assert beside or not unread(language)
    for key in beside:
        text = said(message(key, **{name: number("15") for name in names(ENGLISH[key])}), reader(language=language))
        english = said(message(key, **{name: number("15") for name in names(ENGLISH[key])}), reader())
        assert text.endswith(f" [{english}]") and text != f"{english} [{english}]", key
    official = [key for key in own if key.startswith("ghs-") and key not in beside]
    assert len(official) > 80 and all(said_as[key] == own[key] for key in official)


BRACKETS = re.compile(r"\[([^\]]*)\]")


@pytest.mark.parametrize("language", OTHERS)
@pytest.mark.parametrize("name", ["aid", "safety", "air", "heat", "thicken", "pour", "clock", "joint"])
def test_the_english_beside_it_is_what_an_english_reader_reads(name, language):
    """With its figures: none of them in the marks of another language, and no half of it."""
    beside = 0
    for request in cases.requests(name, 40):
        of = [[text for _, text in pseudo.said(asked(request, one)) if "[" in text or one == "en"]
              for one in (language, "en")]
        plain = " ".join(of[1])
        for text in of[0]:
            for english in BRACKETS.findall(text):
                beside += 1
                assert english in plain, (request, text)
    assert beside or name == "air"


def asked(request, language):
    if "screen" not in request:
        return moves.answer(request["move"], request["typed"], language=language)
    found = moves.asked(request["screen"], request["pairs"], language=language)
    return dict(found, text=found["caution"])


@pytest.mark.parametrize("language", OTHERS)
def test_the_caution_of_every_screen_stands_with_its_english(language):
    """The short one at the bottom too: an official statement alone stands by itself."""
    for screen in dict(moves.SCREENS):
        for request in cases.requests(screen, 12):
            text, english = (moves.asked(screen, request["pairs"], language=one)["caution"] for one in (language, "en"))
            assert "[" in text or "your product" in english or "goggles on" in english, text


@pytest.mark.parametrize("language", LANGUAGES)
def test_no_word_of_a_label_is_wider_than_half_a_phone(language):
    """A browser would break it anywhere, without a hyphen: a soft one says where."""
    def labels(data):
        if isinstance(data, dict):
            own = [data["label"]] if {"kind", "label"} <= data.keys() else []
            return own + [one for each in data.values() for one in labels(each)]
        return [one for each in data for one in labels(each)] if isinstance(data, list) else []

    found = {word for name in moves.names() for label in labels(moves.about(name, reader(language=language))["inputs"])
             for word in re.findall(r"\w+", label)}
    assert len(found) > 100 and [word for word in found if len(word) > 17] == []


def asked_back():
    """{name of a line: key of its label} of each question back whose name and label stand in its call."""
    found = {}
    for tree in TREES.values():
        for node in ast.walk(tree):
            rank = [one.value for one in node.keywords if one.arg == "rank"] if isinstance(node, ast.Call) else []
            if rank and isinstance(rank[0], ast.Name) and rank[0].id == "ASK" and len(node.args) > 1:
                name, label = node.args[0], node.args[1]
                label = label.args[0] if isinstance(label, ast.Call) and label.args else label
                if isinstance(name, ast.Constant) and isinstance(label, ast.Constant):
                    found[name.value] = label.value
    return found


def test_a_card_knows_which_labels_are_questions():
    """No colon stands behind their mark."""
    found = asked_back()
    assert len(found) > 20
    questions = {name for name, key in found.items() if ENGLISH[key].endswith("?")}
    assert questions - set(card.QUESTIONS) == set()
    assert {name for name in card.QUESTIONS if name in found} == questions


WIDE = 108  # letters of the bar in two rows of a phone 360 px wide; an official statement is as long as it is


@pytest.mark.parametrize("language", LANGUAGES)
def test_the_bar_says_the_caution_in_one_language_and_two_rows(language):
    """What it leaves out is the English in brackets, which stands one tap away."""
    without, beside, wide = 0, 0, set()
    for screen in dict(moves.SCREENS):
        for request in cases.requests(screen, 12):
            found = moves.asked(screen, request["pairs"], language=language)
            bar, whole = found["bar"], found["caution"]
            assert "[" not in bar and BRACKETS.sub("", whole).replace("  ", " ").strip().endswith(bar)
            without, beside = without + (bar == whole), beside + (bar != whole)
            if len(bar) > WIDE and not found["signs"]:
                wide.add(bar)
    assert wide == set()
    assert without > 20 if language == "en" else beside > 20

"""Written: the sentences of each language as its file has them. CPython only: a phone gets them in the place of their
keys (`server/put_in.py`), and this module in the form of `on_a_phone`.

Of Fluent (projectfluent.org) we use messages, attributes (`key.attribute`), terms, values, figures in quotes
(`{ "100 mm" }`: told in the reader's units) and choices by a value; anything else is refused with its place.
"""
import re
from functools import cache
from pathlib import Path

from fluent.syntax import FluentParser, ast

from .languages import FIRST, LANGUAGES, Reader

HERE = Path(__file__).parent


class Refused(ValueError):
    """A sentence that we cannot use."""


@cache
def reader(units: str = "metric", language: str = "en") -> Reader:
    """Who reads: a language of LANGUAGES, and METRIC or US."""
    return Reader(sentences(language), LANGUAGES[language], units, False)


# how the keys begin whose words keep from harm. Until native boatbuilders of a language have read them, each sentence
# stands with its English behind it; official statements are quoted and stand alone, but for those whose official words
# in other languages nobody has found
HARM = ("do-", "aid-", "smoking-pot-", "caution-", "hot-pot-caution", "thicken-filler.caution",
        "ghs-p310.other", "ghs-p313", "ghs-p316", "ghs-p317", "ghs-p333-", "ghs-aid-")
OFFICIAL = "ghs-"  # how the keys of official statements begin
ON_BAR = "caution-"  # how those begin that the bar below every screen says alone: its English is one tap away
READ: dict[str, tuple[str, ...]] = {FIRST: HARM}  # by language: those of them that a native has read


def unread(language: str) -> tuple[str, ...]:
    """How the keys begin that stand with their English.

    >>> unread("en"), unread("de") == HARM
    ((), True)
    """
    return tuple(begin for begin in HARM if begin not in READ.get(language, ()))


@cache
def sentences(language: str) -> dict:
    """The patterns of a language by key, as they are said."""
    own, english = of_file(language), of_file(FIRST)
    beside = {key: both(own[key], english[key], key.startswith(ON_BAR)) for key in own
              if key.startswith(unread(language)) and (key.startswith(OFFICIAL) or ends(english[key]))}
    return english | own | beside


@cache
def of_file(language: str) -> dict:
    """The patterns of a language by key, as they stand in its file."""
    return patterns((HERE / f"{language}.ftl").read_text(encoding="utf-8"))


def both(own: str, english: str, apart: bool = False) -> "str | tuple":
    """A sentence with the English one behind it, its values in English marks.

    apart: the sentence is also said without it
    >>> both("Handschuhe an.", "Gloves on.")
    'Handschuhe an. [Gloves on.]'
    >>> both("Handschuhe an.", "Gloves on.", True), both("Höchstens {mass}.", "At most {mass}.")
    ((None, 'Handschuhe an.', ('', 'Gloves on.')), (None, 'Höchstens {mass}.', ('', 'At most {mass}.')))
    """
    if not apart and isinstance(own, str) and isinstance(english, str) and "{" not in english:
        return f"{own} [{english}]"
    return (None, *pieces_of(own), ("", english))


def ends(pattern: "str | tuple") -> bool:
    """Whether a pattern is a whole sentence of ours, and no name of something, nor a statement that is filled in."""
    last = pieces_of(pattern)[-1]
    return isinstance(last, str) and last.endswith(".") and any(
        letter.isalpha() for letter in re.sub(r"\{[^}]*\}", "", "".join(texts_of(pattern))))


def texts_of(pattern: "str | tuple") -> list[str]:
    """All texts of a pattern, also those of its choices."""
    if isinstance(pattern, str):
        return [pattern]
    return [text for piece in pattern[1:] for one in ([piece] if isinstance(piece, str) else cases_of(piece))
            for text in texts_of(one)]


def cases_of(piece: tuple) -> list:
    """The cases of a choice; what is said in English marks has one."""
    return [piece[1]] if piece[0] == "" else list(piece[1].values())


def pieces_of(pattern: "str | tuple") -> tuple:
    """What a pattern is made of."""
    return (pattern,) if isinstance(pattern, str) else pattern[1:]


def patterns(source: str) -> dict:
    """The patterns of a file by key: a text with values and figures in braces, or None and pieces (see `texts`).

    Raises Refused with what we do not use, and where a key is there twice.

    >>> patterns('thin = Only { $radius } here\\n  .why = at { "100 mm" }')
    {'thin': 'Only {radius} here', 'thin.why': 'at {100 mm}'}
    """
    terms: dict = {}
    found: dict = {}
    body = FluentParser(with_spans=False).parse(source).body
    for entry in body:
        if isinstance(entry, ast.Junk):
            raise Refused(f"not understood: {(entry.content or '').strip()[:60]!r}")
        if isinstance(entry, ast.Term):
            terms[entry.id.name] = _pieces(entry.value, terms)
    for entry in body:
        if isinstance(entry, ast.Message):
            key = entry.id.name
            each = [(key, entry.value)] if entry.value else []
            for name, value in each + [(f"{key}.{one.id.name}", one.value) for one in entry.attributes]:
                if name in found:
                    raise Refused(f"twice: {name}")
                found[name] = _pattern(value, terms)
    return found


def _pattern(value: ast.Pattern, terms: dict) -> "str | tuple":
    pieces = _pieces(value, terms)
    return pieces[0] if len(pieces) == 1 and isinstance(pieces[0], str) else (None, *pieces)


def _pieces(value: ast.Pattern, terms: dict) -> list:
    pieces: list = []
    for element in value.elements:
        made = [element.value] if isinstance(element, ast.TextElement) else _placed(element.expression, terms)
        if isinstance(element, ast.TextElement) and any(mark in element.value for mark in "{\n"):
            raise Refused(f"a brace or a second line in a text: {element.value[:60]!r}")  # a comment there is one too
        for piece in made:
            if isinstance(piece, str) and pieces and isinstance(pieces[-1], str):
                pieces[-1] += piece
            else:
                pieces.append(piece)
    return pieces or [""]


def _placed(found: ast.SyntaxNode, terms: dict) -> list:
    if isinstance(found, ast.StringLiteral):
        said = found.parse()["value"]
        return ["{" + said + "}"] if any(letter.isalnum() for letter in said) else [said]  # or a blank
    if isinstance(found, ast.VariableReference):
        return ["{" + found.id.name + "}"]
    if isinstance(found, ast.TermReference) and not found.arguments:
        return terms[found.id.name]
    if isinstance(found, ast.SelectExpression) and isinstance(found.selector, ast.VariableReference):
        cases: dict = {}
        for variant in found.variants:
            name = variant.key.name if isinstance(variant.key, ast.Identifier) else "=" + variant.key.value
            cases["other" if variant.default else name] = _pattern(variant.value, terms)
        return [(found.selector.id.name, cases)]
    raise Refused(f"not used here: {type(found).__name__}")


def names(pattern: "str | tuple") -> set[str]:
    """The values that a pattern takes.

    >>> sorted(names((None, "{name}: ", ("count", {"one": "{count} roll of {100 mm}", "other": "rolls"}))))
    ['count', 'name']
    """
    if isinstance(pattern, str):
        return set(re.findall(r"\{([a-z_]\w*)\}", pattern))
    found = set()
    for piece in pattern[1:]:
        found |= names(piece) if isinstance(piece, str) else {piece[0]}.union(*map(names, cases_of(piece)))
    return found - {""}


def on_a_phone(language: str) -> str:
    """This module as a phone has it, with the sentences of one language in the place of their keys."""
    return ("from .languages import LANGUAGES, Reader\n"
            "def reader(units=\"metric\", language=\"\"):\n"
            f" return Reader(None, LANGUAGES[{language!r}], units, False)\n")

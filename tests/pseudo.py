"""A language that nobody speaks: English with accents, longer, and a mark at each end, so that a text which is joined,
cut or never was a message is seen.

    python tests/pseudo.py pour joint      what these screens or moves still say outside of a message
"""
import functools
import itertools
import json
import re
import sys
from typing import ClassVar

import cases
from covemix.server import build
from covemix.shared.door import moves
from covemix.shared.words import languages, written
from covemix.shared.words.languages import Language, one_alone
from covemix.shared.words.units import UNITS, sign

NAME = "xx"
OPEN, SHUT = "⟦", "⟧"
ACCENTS = str.maketrans("aeinousAEIOUcy", "áéíñóúšÁÉÍÓÚçý")
MORE = "····· " * 12
# what stands outside of a message and is of no language: units, signs, a name of a hazard statement or of a part
OTHER_SIGNS = {"C", "F", "J", "K", "Pa", "R", "W", "W/m", "bit", "g/mol", "i", "kJ", "mg", "mg/m³", "mol", "ppm",
               "x", "EUH", "H", "P", "D", "FD", "Fd", "Df", "d", "f", "fd",  # units; of hazard codes
               "A", "Letter"}  # sizes of paper
SIGNS = {word for unit in UNITS for word in sign(unit.name).split(" ")} | OTHER_SIGNS
WORD = re.compile(r"[^\W\d_]+(?:[²³]|/[a-z²³]+)?")
KEYS = ("label", "text", "rough", "caution", "title", "told", "message", "help", "fold", "each", "under", "said", "how",
        "texts", "figure", "asks")


def dressed(pattern):
    """A pattern in false clothes: what is a figure or a value stays."""
    more = MORE[:longer(pattern)].rstrip() + SHUT
    if isinstance(pattern, str):
        return OPEN + _dressed(pattern) + more
    return (None, OPEN, *[_piece(piece) for piece in pattern[1:]], more)


def _piece(piece):
    if isinstance(piece, str):
        return _dressed(piece)
    return piece[0], {name: _dressed(case) if isinstance(case, str) else (None, *map(_piece, case[1:]))
                      for name, case in piece[1].items()}


def _dressed(text):
    return "".join(piece if piece[:1] == "{" else piece.translate(ACCENTS) for piece in re.split(r"(\{[^}]*\})", text))


def longer(pattern) -> int:
    """Two fifths of the letters of its longest form."""
    return int(0.4 * _letters(pattern))


def _letters(pattern):
    if isinstance(pattern, str):
        return len(pattern)
    return sum(len(piece) if isinstance(piece, str) else max(map(_letters, piece[1].values())) for piece in pattern[1:])


class Sentences(dict):
    """Patterns that remember what was asked for and is none of them: plain English, also as a value of a message."""

    missed: ClassVar[list[str]] = []

    def get(self, key, default=None):
        if key not in self:
            self.missed.append(key)
        return dict.get(self, key, default)


def speak() -> str:
    """Makes it a language of this process; gives its name."""
    if NAME not in languages.LANGUAGES:
        languages.LANGUAGES[NAME] = Language(NAME, "Pseudo", "٫", " – ", " & ", " / ", " ¦ ", one_alone,
                                             {"%": ("\u00a0%", "\u00a0%")}, {}, False)
        dress()
    return NAME


def hush() -> None:
    """It is none any more: other tests count the languages."""
    languages.LANGUAGES.pop(NAME, None)


@functools.cache
def dress() -> None:
    """Its sentences, and the row that a phone has."""
    english, plain, rows = written.sentences("en"), written.sentences, build.own_row
    table = Sentences({key: dressed(pattern) for key, pattern in english.items()})
    written.sentences = build.sentences = lambda language: table if language == NAME else plain(language)
    build.own_row = lambda source, language: rows(source, language) if language != NAME else (
        rows(source, "de").replace('"de", "Deutsch", ","', f'"{NAME}", "Pseudo", "٫"'))


def outside(text: str) -> str:
    """What of a text stands outside of all messages."""
    found, depth = [], 0
    for letter in text:
        depth += (letter == OPEN) - (letter == SHUT)
        if depth == 0 and letter != SHUT:
            found.append(letter)
    return "".join(found)


def english(text: str, own: str) -> list[str]:
    """The words of a text that no message says. own: all that the user typed"""
    return [word for word in WORD.findall(outside(text)) if word not in SIGNS and word not in own]


def said(data, path=""):
    """(place, text) of all that an answer says."""
    if isinstance(data, dict):
        path = f"{path}.{data['name']}" if isinstance(data.get("name"), str) else path
        for key, value in data.items():
            if key in KEYS and isinstance(value, str):
                yield f"{path}.{key}", data.get("head", "") + value if key == "how" else value  # half of a label
            elif key in KEYS and isinstance(value, list) and value and isinstance(value[0], str):
                yield from ((f"{path}.{key}", text) for text in value)
            else:
                yield from said(value, path)
    elif isinstance(data, list | tuple):
        for one in data:
            yield from said(one, path)


def answered(request):
    """The answer of a request of `cases` in this language."""
    language = speak()
    if "screen" in request:
        return moves.asked(request["screen"], request["pairs"], language=language)
    return moves.answer(request["move"], request["typed"], language=language)


def unsaid(name: str, requests) -> dict[str, tuple[str, str]]:
    """By place: a text of a move or a screen that is no message, and what was asked."""
    found: dict[str, tuple[str, str]] = {}
    for request in requests:
        own = json.dumps(request, ensure_ascii=False)
        own += own.replace("\\n", "")  # text of one line keeps no other
        Sentences.missed.clear()
        for place, text in said(answered(request)):
            if text and english(text, own):
                found.setdefault(re.sub(r"\d+", "#", place), (text, own))
        for text in Sentences.missed:
            if isinstance(text, str) and english(text, own):
                found.setdefault(f"in a message: {text}", (text, own))
    about = [{"inputs": moves.about(name, written.reader(language=speak()))["inputs"]}] if name in moves.names() else []
    for place, text in said(about, "inputs"):
        if english(text, "") and not place.endswith(".told"):  # of a group: how names of its lines begin
            found.setdefault(place, (text, ""))
    return found


def main(names) -> int:
    count = 0
    for name in names:
        asked = cases.requests(name, 12 if name == "sources" else 300)
        for place, (text, _) in sorted(unsaid(name, asked).items()):
            print(f"{name} {place}: {text[:110]}")
            count += 1
    print(count, "places left")
    return count


if __name__ == "__main__":
    main(sys.argv[1:] or list(itertools.chain(moves.names(), dict(moves.SCREENS))))

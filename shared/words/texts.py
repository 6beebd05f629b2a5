"""Texts: what is said, as one reader reads it. Called at the door and nowhere else."""
from .languages import FIRST, LANGUAGES, Language, Reader
from .numbers import bare
from .speech import number_words
from .types import Said
from .units import FOOT, INCH, METRIC, TAILS, TO, US, in_figure, known, parted, sign, unit_for

NOTHING: dict = {}


def said(what: Said, reader: Reader) -> str:
    """What is said, as this reader reads it."""
    if isinstance(what, tuple):
        head = what[0]
        if isinstance(head, int):
            return FIGURES[head](what, reader)
        if head is None:
            return _pieces(what, NOTHING, reader)
        return _sentence(head if reader.messages is None else reader.messages.get(head, head), what[1], reader)
    if isinstance(what, int) or not what:
        return str(what)
    return _sentence(what if reader.messages is None else reader.messages.get(what, what), NOTHING, reader)


def _sentence(pattern: "str | tuple", values: dict, reader: Reader) -> str:
    """A pattern: a text with values and figures in braces, or None and pieces: such texts, and (name, cases), a choice
    by a value."""
    if not isinstance(pattern, str):
        return _pieces(pattern, values, reader)
    if "{" not in pattern:
        return pattern
    first, *rest = pattern.split("{")
    return first + "".join([_placed(piece, values, reader) for piece in rest])


def _placed(piece: str, values: dict, reader: Reader) -> str:
    name, _, after = piece.partition("}")
    return (said(values[name], reader) if name in values else _in_units(name, reader) or "{" + name + "}") + after


def _pieces(pattern: tuple, values: dict, reader: Reader) -> str:
    found = ""
    for piece in pattern:
        if isinstance(piece, str):
            found += _sentence(piece, values, reader)
        elif piece is not None and not piece[0]:  # beside the reader's own language
            if not reader.alone:
                first = Reader(reader.messages, LANGUAGES[FIRST], reader.units, False)
                found += " [" + _sentence(piece[1], values, first) + "]"
        elif piece is not None:
            found += _sentence(_chosen(piece[1], values[piece[0]], reader), values, reader)
    return found


def _chosen(cases: dict, value: Said, reader: Reader) -> str:
    """The case of a value: by its exact digits, by the plural of its language, or by its name."""
    if isinstance(value, str):
        return cases.get(value, cases["other"])
    digits = value[1] if isinstance(value, tuple) else str(value)
    exact = cases.get("=" + digits)
    return cases.get(reader.language.plural(digits), cases["other"]) if exact is None else exact


def figure(digits: str, language: Language) -> str:
    """ASCII digits with the decimal mark of a language.

    >>> from .languages import LANGUAGES
    >>> figure("-12.5", LANGUAGES["en"])
    '-12.5'
    """
    return digits if language.decimal == "." else digits.replace(".", language.decimal)


def in_two(what: Said, reader: Reader) -> tuple:
    """A label's name, and what is to be done: the first comma of its own sentence parts them, none of a value.

    >>> from .languages import LANGUAGES, Reader
    >>> who = Reader(None, LANGUAGES["en"], "metric", False)
    >>> in_two(("{part}, until it shows", {"part": (0, "Resin, clear")}), who)
    ('Resin, clear', 'until it shows')
    """
    key, values = what if isinstance(what, tuple) and isinstance(what[0], str) else (what, NOTHING)
    pattern = _pattern(key, reader) if isinstance(key, str) else key
    if not isinstance(pattern, str):
        return said(what, reader), ""
    name, _, how = pattern.partition(", ")
    return _sentence(name, values, reader), _sentence(how, values, reader)


def large(what: Said, reader: Reader) -> tuple:
    """The figure that a text begins with, and what stands behind it; no figure where it begins with a word.

    >>> from .languages import LANGUAGES, Reader
    >>> [large(one, Reader(None, LANGUAGES["en"], "metric", False)) for one in ((3, 2.4, ""), "see below")]
    [('2.4', ' m'), ('', 'see below')]
    """
    text, figure = said(what, reader), _begun(what, reader)
    return figure, text[len(figure):]


def _begun(what: Said, reader: Reader) -> str:
    """The figure that what is said begins with, or ""."""
    if not isinstance(what, tuple):
        return str(what) if isinstance(what, int) else ""
    head, inner = what[0], what[1]
    if head is None:
        return ""
    if isinstance(head, int):  # a phone has patterns in the place of keys, which are no keys of a table
        if head in (7, 8):  # without a sign between them they are one
            return "".join([_begun(one, reader) for one in (inner[:1] if what[2] else inner)])
        return said(what, reader).replace("\u00a0", " ").partition(" ")[0] if head in PARTS or head in (0, 4) else ""
    pattern = _pattern(head, reader)
    while isinstance(pattern, tuple):
        pattern = pattern[1] if isinstance(pattern[1], str) else _chosen(pattern[1][1], inner[pattern[1][0]], reader)
    name = pattern.partition("}")[0][1:]
    return _begun(inner[name], reader) if name in inner else ""


def _pattern(key: str, reader: Reader) -> "str | tuple":
    return key if reader.messages is None else reader.messages.get(key, key)


def tail(name: str, digits: str, language: Language) -> str:
    """What stands behind a figure: its unit, as a sign or as a word. digits: the figure, in ASCII

    >>> from .languages import LANGUAGES
    >>> [tail(*one, LANGUAGES["en"]) for one in (("g", "1"), ("%", "1"), ("strokes", "1"), ("strokes", "1.5"))]
    [' g', '%', ' stroke', ' strokes']
    """
    own = language.tails.get(name)
    return TAILS[name] if own is None else own[0 if language.plural(digits) == "one" else 1]


def unit_text(name: str, language: Language) -> str:
    """A unit alone.

    >>> from .languages import LANGUAGES
    >>> [unit_text(one, LANGUAGES["en"]) for one in ("degC", "strokes")]
    ['°C', 'strokes']
    """
    own = language.tails.get(name)
    return sign(name) if own is None else own[1][1:]


def _typed(what: Said, reader: Reader) -> str:
    return what[1]


def _measured(what: Said, reader: Reader) -> str:
    digits, name = PARTS[what[0]](what, reader)
    language = reader.language
    behind = tail(name, digits, language) if name in language.tails else TAILS[name]  # few have one, and all ask
    return (digits if language.decimal == "." else figure(digits, language)) + behind


def _quantity(what: Said, reader: Reader) -> tuple:
    _, value, name, toward, places, digits = what
    return parted(value, name, reader.units, toward, places, digits)


def _length(what: Said, reader: Reader) -> tuple:
    _, values, toward = what
    us = reader.units == US
    each = [bare(value / INCH, 2, toward) if us else bare(value * 1000, 1, toward)
            for value in (values if len(values) == 1 else (min(values), max(values)))]
    if each[0] == each[-1]:
        each = each[:1]
    return reader.language.to.join(each), "in" if us else "mm"


def _along(what: Said, reader: Reader) -> tuple:
    _, value, toward = what
    us = reader.units == US
    return bare(value / FOOT if us else value, 2, toward), "ft" if us else "m"


def _with_unit(what: Said, reader: Reader) -> tuple:
    return what[1], what[2]


def _in_unit(what: Said, reader: Reader) -> tuple:
    _, value, name, toward = what
    return parted(value, name, METRIC, toward, None, 3)


def _number(what: Said, reader: Reader) -> str:
    return figure(what[1], reader.language)


def _fact(what: Said, reader: Reader) -> str:
    return _in_units(known(what[1], *what[2]), reader)


def _in_units(text: str, reader: Reader) -> str:
    """The text of a figure between braces, or "" where it is none."""
    found = in_figure(text, reader.units)
    if found is None:
        return ""
    each, between, name = found
    if not each:
        return unit_text(name, reader.language)
    digits = (reader.language.to if between == TO else between).join(each)
    return figure(digits, reader.language) + tail(name, digits, reader.language)


def _unit(what: Said, reader: Reader) -> str:
    return unit_text(unit_for(what[1], reader.units), reader.language)


def _row(what: Said, reader: Reader) -> str:
    return what[2].join([said(one, reader) for one in what[1]])


def _listed(what: Said, reader: Reader) -> str:
    _, all_of, kind = what
    language, between = reader.language, ", "
    each = [said(one, reader) for one in all_of]
    # a comma between two that hold one would be read as decimals: "2,5; 3"
    if kind == "notes" or (kind != "or" and language.decimal == "," and "," in "".join(each)):
        between = language.apart
    if kind in ("plain", "notes") or len(each) < 2:
        return between.join(each)
    return between.join(each[:-1]) + (language.either if kind == "or" else language.both) + each[-1]


def _figure_of(what: Said, reader: Reader) -> str:
    return figure(PARTS[what[1][0]](what[1], reader)[0], reader.language)


def _unit_of(what: Said, reader: Reader) -> str:
    digits, name = PARTS[what[1][0]](what[1], reader)
    found = tail(name, digits, reader.language)
    return found[1:] if found[:1] in (" ", "\u00a0") else found


def _cut(what: Said, reader: Reader) -> str:
    return said(what[1], reader)[:what[2]]


def _spoken(what: Said, reader: Reader) -> str:
    digits, name = PARTS[what[1][0]](what[1], reader)
    language = reader.language
    aloud = language.aloud.get(name)
    unit = sign(name) if aloud is None else aloud[0 if language.plural(digits) == "one" else 1]
    return (number_words(digits) if language.spelt else figure(digits, language)) + (" " + unit if unit else "")


FIGURES = (_typed, _measured, _measured, _measured, _number, _fact, _unit, _row, _listed, _figure_of, _unit_of,
           _cut, _spoken, _measured, _measured)
PARTS = {1: _quantity, 2: _length, 3: _along, 13: _with_unit, 14: _in_unit}  # (ASCII digits, name of the unit)

"""Numbers in and out: what a thumb types becomes a float, a float becomes text that is alike on every runtime."""
from math import floor, isfinite, log

from ..equations.rounding import DOWN, NEAREST, UP, bare, ceiling, decimals, shown, to_step  # noqa: F401

DIGITS = "0123456789"
PLAINEST = DIGITS + "."
FRACTIONS = (("½", "1/2"), ("¼", "1/4"), ("¾", "3/4"), ("⅓", "1/3"), ("⅔", "2/3"), ("⅛", "1/8"), ("⅜", "3/8"))
LONGEST = 40  # characters; a number somebody typed is shorter
TEN = log(10)
LEAST, MOST = 1e-9, 1e12  # what a number may be beside 0: squares and quotients of it stay finite
BLANKS = " \t\r\n"  # given to every strip(): without them the runtimes disagree on what is blank
SPACES = "\t\r\n\u00a0\u2009\u202f"  # what a keyboard or a copied page puts for a space

PLAIN = "number-plain"
TOO_SMALL = "number-too-small"
WRITTEN_OUT = "number-written-out"
ONE_MARK = "number-one-mark"


def places_for(value: float, digits: int = 3) -> int:
    """Decimals that leave `digits` significant figures, never fewer than 0 nor more than 4.

    >>> places_for(240.0), places_for(18.2), places_for(0.054), places_for(0.0)
    (0, 1, 4, 0)
    """
    if not value:
        return 0
    return max(0, min(4, digits - 1 - floor(log(abs(value)) / TEN + 1e-9)))


def warmth_typed(kelvin: float) -> str:
    """A temperature as typed text, to the tenth of a degree.

    >>> warmth_typed(291.15)
    '18.0 °C'
    """
    return shown(kelvin - 273.15, 1) + " °C"


def number(typed: str) -> "float | None":
    """Typed text -> finite float, or None. ASCII digits, a decimal comma is a point, fractions are understood.

    >>> number("1,5"), number(" 3 1/2 "), number("½"), number("1e400"), number("1,500.2")
    (1.5, 3.5, 0.5, None, None)
    """
    value, rest, _ = reading(typed)
    return None if rest else value


def reading(typed: "dict | float | str") -> tuple:
    """What was typed -> (value, the words behind it, why not). The value is None where there is none to be had.

    typed: text, or a number that came in as one (the API)

    >>> reading("8 oz"), reading("3 1/2in"), reading("1,500.2")[2]
    ((8.0, 'oz', ''), (3.5, 'in', ''), 'number-one-mark')
    """
    if typed is True or typed is False or typed is None:
        return None, "", PLAIN
    if isinstance(typed, (int, float)):
        if (isinstance(typed, float) and not isfinite(typed)) or abs(typed) > MOST:
            return None, "", PLAIN
        return (None, "", TOO_SMALL) if 0 < abs(typed) < LEAST else (float(typed), "", "")
    if not isinstance(typed, str):
        return None, "", PLAIN
    if 0 < len(typed) < 12 and not typed.strip(PLAINEST) and typed.count(".") < 2 and typed != ".":
        return float("0" + typed), "", ""  # nearly all that is typed, and cheaper than letter by letter
    text = _tidied(typed)
    if not text or len(text) > LONGEST:
        return None, "", PLAIN
    figures, rest = _split(text)
    if not figures:
        return None, rest, PLAIN
    if rest[0:1] in ("e", "E") and digits(rest[1:].strip("+-")):  # "1e-9": no unit, a number as machines write it
        return None, rest, WRITTEN_OUT
    value, why = _value(figures)
    if value is not None and 0 < abs(value) < LEAST:
        return None, rest, TOO_SMALL
    return value, rest, why


def thousands(typed: str) -> str:
    """The mark in a number that another country would take for the thousands': "1,000" and "1.000"; else "".

    >>> thousands("1,000 g"), thousands("1.000"), thousands("0.125"), thousands("12.5"), thousands("1,0000")
    (',', '.', '', '', '')
    """
    behind = [typed.partition(mark)[2][:3] for mark in ",."]
    if not [three for three in behind if len(three) == 3 and digits(three)]:
        return ""  # as most is typed
    figures = _split(_tidied(typed))[0].lstrip("+-")
    for mark in ",.":
        before, found, behind = figures.partition(mark)
        if found and digits(before, 3) and before[0] != "0" and len(behind) == 3 and digits(behind):
            return mark
    return ""


def _tidied(typed: str) -> str:
    text = typed.replace("\u2212", "-").replace("\u2044", "/")
    for space in SPACES:
        text = text.replace(space, " ")
    for sign, spelt in FRACTIONS:
        text = text.replace(sign, " " + spelt)
    return " ".join([word for word in text.split(" ") if word])


def small(text: str) -> str:
    """Text in lower case, for A to Z and the letters of western Europe, À to Þ: alike on every runtime.

    >>> small("US Fl Oz"), small("HÜBE, 2 × Maß")
    ('us fl oz', 'hübe, 2 × maß')
    """
    return "".join([c if "Z" < c < "À" or not ("A" <= c <= "Z" or ("À" <= c <= "Þ" and c != "×"))
                    else chr(ord(c) + 32) for c in text])


def _split(text: str) -> tuple:
    """Figures in front, words behind: "3 1/2 in" -> ("3 1/2", "in")."""
    end = 0
    while end < len(text) and (text[end] in DIGITS or text[end] in ".,/-+ "):
        end += 1
    return text[:end].strip(" "), text[end:].strip(" ")


def _value(figures: str) -> tuple:
    sign = 1.0
    if figures[0] in "+-":
        sign = -1.0 if figures[0] == "-" else 1.0
        figures = figures[1:].strip(" ")
    words = figures.split(" ")
    if len(words) == 2 and "/" in words[1] and digits(words[0]):
        part, why = _fraction(words[1])
        return (None, why) if part is None else (sign * (float(words[0]) + part), "")
    if len(words) > 1:
        return None, "number-spaces"
    if "/" in figures and digits(figures.partition("-")[0]):
        return _value(figures.replace("-", " ", 1))  # "10-1/2", as it stands on a drawing
    if "/" in figures:
        part, why = _fraction(figures)
        return (None, why) if part is None else (sign * part, "")
    marks = figures.count(",") + figures.count(".")
    plain = figures.replace(",", ".")
    if marks > 1:
        return None, ONE_MARK
    whole, _, tail = plain.partition(".")
    if not (digits(whole) or (not whole and tail)) or (tail and not digits(tail)) or len(whole) > 12:
        return None, PLAIN
    return sign * float((whole or "0") + "." + (tail or "0")), ""


def digits(text: str, most: int = 1000) -> bool:
    """Whether a text is ASCII digits and nothing else, at most so many; isdigit takes what int refuses.

    >>> digits("12"), digits("\u00b2"), digits(""), digits("1234", 3)
    (True, False, False, False)
    """
    return 0 < len(text) <= most and all(c in DIGITS for c in text)


def _fraction(text: str) -> tuple:
    above, _, below = text.partition("/")
    if not (digits(above) and digits(below)) or len(above) > 6 or len(below) > 6:
        return None, PLAIN
    if float(below) == 0:
        return None, "number-over-zero"
    return float(above) / float(below), ""

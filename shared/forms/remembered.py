"""Remembered: a number whose default is what the catalogue of losses remembers, its range and mark in the help."""
from ..catalogue.losses import BY_KEY
from ..words.numbers import capital, shown
from ..words.units import from_si
from .declared import plain
from .inputs import Number


def remembered(keys, name, label, unit, low, high, before="", **more):
    """The number of one row, or of several added up. before: words ahead of mark and range.

    >>> remembered("bag", "bag", "Left in each bag", "g", 0, 500).help
    'From memory, {10 to 35 g}.'
    >>> remembered("filler", "filler", "Filler to 100 g of epoxy", "g", 0, 200, before="Wood flour. ").help
    'Wood flour. From memory, {27 to 49 g}.'
    """
    rows = [BY_KEY[key] for key in keys.split(" ")]

    def own(column):
        value = sum([row[column] for row in rows])
        return from_si(value, unit) if rows[0].unit else value * (100 if unit in ("%", "g") else 1)

    return Number(name, label, unit=unit, low=low, high=high, default=float(shown(own(2), 4)),
                  help=before + capital(rows[0].mark) + ", " + _range(_short(own(3)) + " to " + _short(own(4)), unit)
                  + ".", **more)


def start(value: "float | None", unit: str = "") -> float:
    """What a form starts with, as its number in the form's unit. value: SI, of a row of the catalogue

    >>> start(0.006, "mm"), start(0.24, "g"), start(0.99, "%"), start(15e-6, "mL")
    (6.0, 240.0, 99.0, 15.0)
    """
    return float(shown(from_si(value or 0.0, unit), 4))


def starts(values: "tuple[float, ...]", unit: str) -> str:
    """Several of them, as they would be typed.

    >>> starts((0.010, 0.015), "mm")
    '10 : 15'
    """
    return " : ".join([plain(start(value, unit)) for value in values])


def _range(text, unit):
    """A range goes by the user's units, as the field does."""
    return "{" + text + " " + unit + "}" if unit else text


def _short(value):
    text = shown(value, 2)
    while text.endswith("0") and "." in text:
        text = text[:-1]
    return text[:-1] if text.endswith(".") else text

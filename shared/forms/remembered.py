"""Remembered: a number whose default is what the catalogue of losses remembers, its range and mark in the help."""
from ..catalogue.losses import BY_KEY
from ..words.messages import fact, message, number, sentences
from ..words.numbers import shown
from ..words.provenance import marked
from ..words.units import from_si
from .declared import plain
from .inputs import Number
from .types import Given


def remembered(keys: str, name: str, label: str, unit: str, low: float, high: float, before: str = "",
               of: dict = BY_KEY, **more: Given) -> Number:
    """The number of one row, or of several added up. before: a sentence ahead of mark and range; of: the rows by key

    >>> from ..words.texts import said
    >>> from ..words.written import reader
    >>> said(remembered("bag", "bag", "Left in each bag", "g", 0, 500).help, reader())
    '10 to 35 g, from memory.'
    >>> filler = remembered("filler", "filler", "Filler to 100 g of epoxy", "g", 0, 200, before="Wood flour.")
    >>> said(filler.help, reader())
    'Wood flour. 27 to 49 g, from memory.'
    """
    rows = [of[key] for key in keys.split(" ")]

    to_100 = 10 if not rows[0].unit and unit == "g" else 1  # grams to 100 g

    def own(column: int) -> float:
        return sum([row[column] for row in rows]) / to_100

    between = fact(unit, own(3), own(4)) if unit else message(
        "remembered-range", low=number(shown(own(3), 1)), high=number(shown(own(4), 1)))
    text = message("remembered-help", mark=marked(rows[0].mark), range=between)
    return Number(name, label, unit=unit, low=low, high=high, default=float(shown(from_si(own(2), unit), 4)),
                  help=sentences([before, text]), **more)


def start(value: Given, unit: str = "") -> float:
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

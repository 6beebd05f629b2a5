"""Messages: what is to be said, as a key with its values. It becomes text once, at the door, for one reader.

The sentence behind a key stands in a file of its language (`en.ftl`). Wherever something is said, in the label of a
line or as a value of another message, it is one of these:
    text       a key
    message    a key with values by name: `message("cove-thin", radius=length(0.003))`
    number     a whole count, which also chooses between "1 roll" and "2 rolls"
    a figure   what `quantity`, `length`, `along`, `number`, ... below return: SI inside, the reader's unit and marks
               outside
    typed(...) words of the user's own, and signs that are the same in all languages
No part of the engine joins, cuts or compares what is said; a test asks every screen in a language that nobody speaks.
A key of no language stands as it is.
"""
from ..equations.rounding import NEAREST
from ..equations.types import Figures
from .types import Said


def message(key: str, **values: object) -> Said:
    """A sentence with its values, each of them something that is said."""
    return (key, values)


# A figure: the number of its row in `texts.FIGURES`, then what it is made of.
def typed(text: str) -> Said:
    """The user's own words, as they stand."""
    return (0, text)


def quantity(value: float, unit: str, toward: str = NEAREST, places: "int | None" = None, digits: int = 3) -> Said:
    """An SI value in a metric unit, or in the one that a reader with US units expects.

    value: SI; toward: UP or DOWN where that is the safe side; places: decimals, or None for so many `digits`
    """
    return (1, value, unit, toward, places, digits)


def length(value: float, toward: str = NEAREST) -> Said:
    """A short length [m]: millimetres to a tenth, or inches."""
    return (2, (value,), toward)


def lengths(values: Figures, toward: str = NEAREST) -> Said:
    """The least and the most of some short lengths [m]."""
    return (2, tuple(values), toward)


def along(value: float, toward: str = NEAREST) -> Said:
    """A length along a seam [m]: metres to a hundredth, or feet."""
    return (3, value, toward)


def number(digits: str) -> Said:
    """A number as `numbers` rounds it, in ASCII digits: `number(shown(2.5, 1))`."""
    return (4, digits)


def fact(unit: str, *values: float) -> Said:
    """Figures of the catalogue, so many as stand there and no more: the least and the most where there are two.

    unit: metric; "K" for a difference of temperatures; values: SI
    """
    return (5, unit, values)


def unit(name: str) -> Said:
    """A unit alone, the reader's own where that differs."""
    return (6, name)


def row(said: Figures, between: str) -> Said:
    """Things side by side. between: a sign that is the same in all languages, with its blanks: " + ", " · " """
    return (7, said, between)


def listed(said: Figures, kind: str = "and") -> Said:
    """Things in a list as the reader's language makes one: "a, b and c".

    kind: "and", "or", or "plain" without any; "or" takes things that stand in quotes
    """
    return (8, said, kind)


def noted(said: Figures) -> Said:
    """Notes one after the other, none of them a sentence; "" where there are none."""
    return (8, said, "notes") if said else ""


def sentences(said: Figures) -> Said:
    """Whole sentences one after the other; what is empty is left out."""
    return (7, [one for one in said if one != ""], " ")


def figure_of(quantity: Said) -> Said:
    """The figure of a quantity, a length or a number with its unit, without that unit."""
    return (9, quantity)


def unit_of(quantity: Said) -> Said:
    """The unit that stands behind such a figure."""
    return (10, quantity)


def with_unit(digits: str, unit: str) -> Said:
    """A number as `numbers` rounds it with a unit that stands whatever the reader's are: of a tool, or as typed.

    digits: ASCII, "" for the unit alone by `unit_of`
    """
    return (13, digits, unit)


def in_unit(value: float, unit: str, toward: str = NEAREST) -> Said:
    """An SI value to three figures in a unit that stands whatever the reader's are."""
    return (14, value, unit, toward)


def cut(said: Said, most: int) -> Said:
    """So many letters of it at most: what stands in a field that takes no more."""
    return (11, said, most)


def spoken(quantity: Said) -> Said:
    """A figure with its unit for the ear, as the reader's language says it."""
    return (12, quantity)

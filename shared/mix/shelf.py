"""Shelf: what is left of a system of one's own, what it still mixes, and the last day that its cans promise."""
from collections import namedtuple

from ..catalogue.containers import MATTER
from ..equations.shelf import after, day_number, iso, mixable, months_after, warm_through
from ..forms.types import Values
from . import ratio

OF = dict([row[:2] for row in MATTER])
# left: of each part [kg], () where nobody typed it; mixes: what they make [kg], None where no weights are known;
# last: the last day as it is typed, "" where no date has its shelf life
# through: how long the first part takes to be warm through in a bath, unstirred [s], None where there is none
Shelf = namedtuple("Shelf", ("left", "mixes", "last", "through"))


def shelf(system: Values) -> Shelf:
    """The earlier of both days counts."""
    each, left = ratio.mass_shares(system), system["on_shelf"] or ()
    days = [months_after(day_number(system[name]) or 0, int(system[months]))
            for name, months in (("made", "shelf_life"), ("opened", "open_life")) if system[name] and system[months]]
    return Shelf(left, mixable(left, each) if left and each else None, iso(min(days)) if days else "",
                 warm_through(left[0], OF["density"], OF["conductivity"], OF["specific_heat"]) if left else None)


def less(system: Values, mixed: float) -> tuple:
    """What is left of each part [kg] once so much was mixed; () where it is not known. mixed [kg], below 0: back"""
    each = ratio.mass_shares(system)
    return after(system["on_shelf"], each, mixed) if system["on_shelf"] and each else ()

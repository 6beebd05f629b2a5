"""Ratio doubt lines: how a doubt of a ratio is said, beside a reading or in its place."""
from ..forms.errors import InputError
from ..forms.types import Found, Values
from ..words.lines import ASK, Line, line
from ..words.numbers import UP, shown
from .label_words import DOUBT
from .ratio_doubt import REMEMBERED, TYPED, WEIGHT, basis_of, doubt

WHENCE = {REMEMBERED: "remembered densities", TYPED: "densities with so few digits",
          "weighed": "equal volumes weighed so coarsely"}
OUTCOME = {WEIGHT: "Type the label's parts by weight, its densities, or equal volumes of both in one syringe, weighed.",
           "volume": "Measure it on a scale, or type the densities from its data sheet."}


def whole_percent(part: float) -> str:
    """A doubt in percent, rounded up.

    >>> whole_percent(0.0809)
    '8.1%'
    """
    return shown(part * 100, 1, UP) + "%"


def corners(found: Found) -> str:
    """Between which ends the right amount of a part lies: more of it first, because too little never cures through.

    found: ratio_doubt.Doubt
    """
    return "{} more to {} less".format(whole_percent(found.high), whole_percent(-found.low))


def not_by(found: Found, basis: str) -> str:
    """Why there is no reading in that basis, and what ends it. found: ratio_doubt.Doubt; basis: of the reading"""
    return "no reading by {} yet: it would rest on {}. The right amount of hardener may be {}. {}".format(
        basis, WHENCE[found.whence], corners(found), OUTCOME[basis])


def stopped(found: "Found | None") -> bool:
    """Whether a doubt is too much for any figure. found: ratio_doubt.Doubt or None"""
    return found is not None and found.stops


def no_figure(found: Found, basis: str) -> str:
    """Why a part has no figure in a basis, in a few words. found: ratio_doubt.Doubt"""
    return "no " + basis + ": it would rest on " + WHENCE[found.whence]


def in_short(found: "Found | None") -> str:
    """The doubt in a few words, under the figure itself; "" where it is to be passed over. found: Doubt or None"""
    return "±" + whole_percent(found.spread) + " by densities" if found and found.marked else ""


def beside(found: "Found | None", basis: str) -> list[Line]:
    """The doubt beside a reading, where it is more than to be passed over. found: ratio_doubt.Doubt or None"""
    if not found or not found.marked:
        return []
    return [line("ratio_doubt", "Ratio in doubt", found.spread, "",
                 "±" + whole_percent(found.spread) + " by " + WHENCE[found.whence],
                 rank=ASK, rough="hardener {}; type the label's {}s".format(corners(found), basis), part=DOUBT)]


def check(system: Values, way: str) -> None:
    """A ratio in too much doubt gives no reading on a tool that goes by it: InputError at the field that ends it."""
    basis = basis_of(way)
    found = doubt(system, basis)
    if stopped(found):
        raise InputError("system.densities", "Densities: " + not_by(found, basis))

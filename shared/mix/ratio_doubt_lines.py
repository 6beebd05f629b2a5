"""Ratio doubt lines: how a doubt of a ratio is said, beside a reading or in its place."""
from ..forms.errors import InputError
from ..forms.types import Found, Said, Values
from ..words.lines import ASK, Line, line
from ..words.messages import message, quantity, sentences
from ..words.numbers import UP
from .label_words import DOUBT
from .ratio_doubt import WEIGHT, basis_of, doubt


def whole_percent(part: float) -> Said:
    """A doubt in percent, rounded up."""
    return quantity(part, "%", UP, 1)


def not_by(found: Found, basis: str) -> Said:
    """Why there is no reading in that basis, and what ends it: more of the part first, because too little never cures
    through. found: ratio_doubt.Doubt; basis: of the reading
    """
    return sentences([
        message("doubt-no-reading.weight" if basis == WEIGHT else "doubt-no-reading.volume", whence=found.whence),
        message("doubt-right-amount", more=whole_percent(found.high), less=whole_percent(-found.low)),
        message("doubt-way-out", basis=basis)])


def stopped(found: "Found | None") -> bool:
    """Whether a doubt is too much for any figure. found: ratio_doubt.Doubt or None"""
    return found is not None and found.stops


def no_figure(found: Found, basis: str) -> Said:
    """Why a part has no figure in a basis, in a few words. found: ratio_doubt.Doubt"""
    return message("doubt-no-figure.weight" if basis == WEIGHT else "doubt-no-figure.volume", whence=found.whence)


def in_short(found: "Found | None") -> Said:
    """The doubt in a few words, under the figure itself; "" where it is to be passed over. found: Doubt or None"""
    return message("doubt-in-short", off=whole_percent(found.spread)) if found and found.marked else ""


def beside(found: "Found | None", basis: str) -> list[Line]:
    """The doubt beside a reading, where it is more than to be passed over. found: ratio_doubt.Doubt or None"""
    if not found or not found.marked:
        return []
    return [line("ratio_doubt", "doubt-beside", found.spread, "",
                 message("doubt-beside.text", off=whole_percent(found.spread), whence=found.whence), rank=ASK,
                 rough=message("doubt-beside.rough", more=whole_percent(found.high), less=whole_percent(-found.low),
                               basis=basis), part=DOUBT)]


def check(system: Values, way: str) -> None:
    """A ratio in too much doubt gives no reading on a tool that goes by it: InputError at the field that ends it."""
    basis = basis_of(way)
    found = doubt(system, basis)
    if stopped(found):
        raise InputError("system.densities",
                         message("field-refused", label="kind-system-densities", why=not_by(found, basis)))

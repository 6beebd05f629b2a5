"""Measured lines: what is said alike of a part that was measured out, whatever with."""
from ..forms.types import Found, Said, Values
from ..mix.label_words import is_example
from ..mix.ratio_error_lines import cost_lines, poured_line
from ..words.lines import ANSWER, BESIDE, Line
from ..words.messages import message


def outcome_lines(names: tuple[Said, ...], outcome: "Found | None") -> list[Line]:
    """How far a finished pour is off ratio; no line while parts are missing. outcome: ratio_error.Off or None"""
    return [poured_line(names, outcome)] + cost_lines(outcome) if outcome else []


def told_of(place: int, done: int, rough: Said, system: Values) -> Said:
    """What stands under a figure: whether it was read, or follows what was; that its ratio is an example's. done: how
    many parts are"""
    if place < done:
        return "measure-as-read"
    told = "measure-follows" if done else rough
    return told_as_example(told) if place and is_example(system) else told


def told_as_example(told: Said) -> Said:
    """That a figure comes from an example's ratio, before what else is said of it. told: that, or nothing"""
    return message("measure-example.with", said=told) if told != "" else "measure-example"


def rank_of(place: int, done: int) -> str:
    """A part that is done steps back."""
    return BESIDE if place < done else ANSWER

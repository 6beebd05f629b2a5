"""Measured lines: what is said alike of a part that was measured out, whatever with."""
from ..forms.types import Found, Values
from ..mix.label_words import is_example
from ..mix.ratio_error_lines import cost_lines, poured_line
from ..words.lines import ANSWER, BESIDE, Line


def outcome_lines(names: tuple[str, ...], outcome: "Found | None") -> list[Line]:
    """How far a finished pour is off ratio; no line while parts are missing. outcome: ratio_error.Off or None"""
    return [poured_line(names, outcome)] + cost_lines(outcome) if outcome else []


def told_of(place: int, done: int, rough: str, system: Values) -> str:
    """What stands under a figure: whether it was read, or follows what was; that its ratio is an example's. done: how
    many parts are"""
    if place < done:
        return "as you read it"
    told = "follows what was really taken" if done else rough
    if not (place and is_example(system)):
        return told
    return "example" + (", " + told if told else "")


def rank_of(place: int, done: int) -> str:
    """A part that is done steps back."""
    return BESIDE if place < done else ANSWER

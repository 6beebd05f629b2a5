"""Measured lines: what is said alike of a part that was measured out, whatever with."""
from ..forms.types import Found
from ..mix.ratio_error_lines import cost_lines, poured_line
from ..words.lines import ANSWER, BESIDE, Line


def outcome_lines(names: tuple[str, ...], outcome: "Found | None") -> list[Line]:
    """How far a finished pour is off ratio; no line while parts are missing. outcome: ratio_error.Off or None"""
    return [poured_line(names, outcome)] + cost_lines(outcome) if outcome else []


def told_of(place: int, done: int, rough: str) -> str:
    """What stands under a figure: whether it was read, or follows what was. done: how many parts are"""
    if place < done:
        return "as you read it"
    return "follows what was really taken" if done else rough


def rank_of(place: int, done: int) -> str:
    """A part that is done steps back."""
    return BESIDE if place < done else ANSWER

"""Provenance: where a statement or a figure comes from, as a screen says it."""
from ..catalogue.marks import COMMON, JUDGED, LABEL, MEMORY, OWN, PUBLISHED

MARKS = {PUBLISHED: "mark-published", COMMON: "mark-common-practice", MEMORY: "mark-from-memory",
         JUDGED: "mark-own-judgement", LABEL: "mark-from-label", OWN: "mark-own-figure"}


def marked(mark: str) -> str:
    """A mark of the catalogue as it is said; "" is none.

    >>> marked("from memory")
    'mark-from-memory'
    """
    return MARKS[mark] if mark else ""

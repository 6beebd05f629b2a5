"""Provenance: where a statement or a figure comes from, as a screen says it."""
from ..catalogue.marks import COMMON, JUDGED, LABEL, MEMORY, OWN, PUBLISHED
from ..catalogue.sources import SOURCES
from .messages import message, typed
from .types import Said

MARKS = {PUBLISHED: "mark-published", COMMON: "mark-common-practice", MEMORY: "mark-from-memory",
         JUDGED: "mark-own-judgement", LABEL: "mark-from-label", OWN: "mark-own-figure"}


def marked(mark: str) -> str:
    """A mark of the catalogue as it is said; "" is none.

    >>> marked("from memory")
    'mark-from-memory'
    """
    return MARKS[mark] if mark else ""


def sourced(mark: str, source: str = "") -> Said:
    """The mark, and the source where there is one, as they are said. Names of sources are the same in all languages.

    source: key of `catalogue.sources`, or ""
    """
    said = marked(mark)
    return message("mark-with-source", mark=said, source=typed(SOURCES[source])) if source else said

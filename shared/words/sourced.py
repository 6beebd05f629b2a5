"""Sourced: a mark with the source behind it; apart from the marks, since no start needs the table of sources."""
from ..catalogue.sources import SOURCES
from .messages import message, typed
from .provenance import marked
from .types import Said


def sourced(mark: str, source: str = "") -> Said:
    """The mark, and the source where there is one, as they are said. Names of sources are the same in all languages.

    source: key of `catalogue.sources`, or ""
    """
    said = marked(mark)
    return message("mark-with-source", mark=said, source=typed(SOURCES[source])) if source else said

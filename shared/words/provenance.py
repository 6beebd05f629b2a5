"""Provenance: where a statement or a figure comes from, as a screen says it."""
from ..catalogue.sources import SOURCES


def provenance(mark, source):
    """The mark, and the source where there is one.

    >>> provenance("common practice", "")
    'common practice'
    """
    return mark + ": " + SOURCES[source] if source else mark

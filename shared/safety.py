"""Safety: the standing cautions, each with where it comes from."""
from .catalogue.cautions import FIRST, STANDING
from .catalogue.sources import SOURCES
from .lines import SAY, WARN, words

INPUTS = ()
CHECKS = ()


def provenance(mark, source):
    """Where a statement comes from, as the screen says it.

    >>> provenance("common practice", "")
    'common practice'
    """
    return mark + ": " + SOURCES[source] if source else mark


def answer(values):
    """The product's own sheet first, then the standing cautions in the order of the work."""
    lines = [words("first", "First of all", FIRST, rank=SAY)]
    for name, heading, text, mark, source in STANDING:
        lines.append(words(name, heading, text, rough=provenance(mark, source), rank=WARN))
    return lines

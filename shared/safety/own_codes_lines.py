"""Own codes, lines: what the codes of a product's own sheet say, in the official words."""
from ..catalogue.hazards import NO_POINT
from ..catalogue.marks import LABEL, PUBLISHED
from ..forms.types import Found, Said
from ..words.lines import MORE, SAY, WARN, Line, words
from ..words.messages import message, sentences, typed
from ..words.provenance import marked
from ..words.sourced import sourced

PRODUCTS = "products"  # part of the answer that folds away


def say(own: "list[Found]", signal: Said) -> list[Line]:
    """Each code, then the signal word of the label. own: own_codes.Statement of each; signal: "" where there is none"""
    lines = [_own(place, one) for place, one in enumerate(own)]
    if signal:
        lines.append(words("signal", "own-code-signal", signal, rough=sourced(PUBLISHED, "ghs-label"), rank=SAY))
    return lines


def _own(place: int, found: Found) -> Line:
    """What a typed code says; one that is not held here is said to be unknown, and asked to be looked up."""
    row, code = found.row, found.code
    text, where = "own-code.unknown", marked(LABEL)
    if row:
        said = message("own-code-ended", words=row[1]) if found.hazard or row[0] in NO_POINT else row[1]
        more = ""
        if not found.hazard and row[2]:
            more = message("own-code-others", words=row[2])
        elif found.hazard and row[0] != code:
            more = "own-code.letters"
        text, where = sentences([said, more]), message("own-code.rough", where=sourced(*row[-2:]))
    return words("own_" + str(place), message("own-code", code=typed(code)), text, rough=where,
                 rank=WARN if found.hazard else MORE, part="" if found.hazard else PRODUCTS)

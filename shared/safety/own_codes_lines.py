"""Own codes, lines: what the codes of a product's own sheet say, in the official words."""
from ..catalogue.marks import LABEL, PUBLISHED
from ..forms.types import Found
from ..words.lines import MORE, SAY, WARN, Line, words
from ..words.provenance import provenance

PRODUCTS = "products"  # part of the answer that folds away


def say(own: "list[Found]", signal: str) -> list[Line]:
    """Each code, then the signal word of the label. own: own_codes.Statement of each; signal: "" where there is none"""
    lines = [_own(place, one) for place, one in enumerate(own)]
    if signal:
        lines.append(words("signal", "Signal word", signal, rough=provenance(PUBLISHED, "ghs-label"), rank=SAY))
    return lines


def _own(place: int, found: Found) -> Line:
    """What a typed code says; one that is not held here is said to be unknown, and asked to be looked up."""
    row, code, where = found.row, found.code, LABEL
    text = "This code is not known here. It is kept: look up its words and its sign on the sheet."
    if row:
        text, where = row[1] + ("." if row[1][-1:] not in "./" else ""), LABEL + "; words " + provenance(*row[-2:])
        if not found.hazard and row[2]:
            text += " On other labels: " + row[2]
        elif found.hazard and row[0] != code:
            text += " The letters behind it are not known here: look them up on the sheet."
    return words("own_" + str(place), "Your product, " + code, text, rough=where,
                 rank=WARN if found.hazard else MORE, part="" if found.hazard else PRODUCTS)

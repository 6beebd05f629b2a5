"""Limit lines: what the limits of a plan, its pieces and the largest mix are called, and why each binds."""
from ..words.numbers import DOWN
from ..words.units import told
from .advice import CUP, FILM, POT, SIZE, SOFT
from .day import ALONE, CALM, COARSE, NOT, TYPED, Named, WhyLargest

# limit: (what, why)
LIMITS = {
    POT: ("the putty in the bag", "The bag must be empty before it stiffens."),
    CUP: ("the wet-out resin in its cup", "The cup must be empty, onto the tray, before it stiffens."),
    SOFT: ("the soft cove", "The tape must be rolled while the cove is soft."),
    FILM: ("the wet-out resin", "The peel ply must be down while the resin on the tape is wet."),
    SIZE: ("the largest mix wanted", "No mix is larger than the largest wanted."),
}
OTHER = ". Another limit can be typed under Largest mix wanted"
WHY = {
    TYPED: "at most {}, as you typed",
    CALM: "at most {}, because more in one bag or cup can run away (from memory)" + OTHER,
    COARSE: "at most {}: above {} one bag or cup can run away (from memory), but this scale measures no smaller mix {}"
            "in ratio. A finer scale makes smaller ones" + OTHER,
    ALONE: "at most {}, more only where one piece takes it by itself: more in one bag or cup can run away (from "
           "memory), use it up at once. Shorter pieces make smaller mixes" + OTHER,
    NOT: "no plan holds with {} at most, and more in one bag or cup can run away (from memory): use it up at once. "
         "Fewer seams at a time, more hands or cooler hours make smaller mixes",
}


def limit_words(limit: str, wet: float) -> "tuple[str, str]":
    """A limit as the screen says it: (what, why). A cove without tape is only tooled while it is soft."""
    what, why = LIMITS[limit]
    return (what, "The cove must be tooled while it is soft.") if limit == SOFT and not wet else (what, why)


def why_text(why: WhyLargest, units: str) -> str:
    """Why no mix is larger, or why it is, all the same."""
    return WHY[why.why].format(told(why.most, "g", units, DOWN), told(why.calm, "g", units, DOWN),
                               "of putty " if why.putty else "")


def piece_name(name: Named) -> str:
    """A piece by the name that was typed, else by its place.

    >>> piece_name(Named("Keel", 0, 1, 3)), piece_name(Named("", 4, 0, 1))
    ('Keel (2 of 3)', 'Piece 5')
    """
    text = name.typed or "Piece " + str(name.place + 1)
    return text + " ({} of {})".format(name.part + 1, name.parts) if name.parts > 1 else text


def named(names: "list[Named]") -> str:
    """All of them, with commas."""
    return ", ".join([piece_name(name) for name in names])


def count_text(count: int) -> str:
    """So many batches, in words.

    >>> count_text(1), count_text(4)
    ('1 batch', '4 batches')
    """
    return str(count) + (" batch" if count == 1 else " batches")

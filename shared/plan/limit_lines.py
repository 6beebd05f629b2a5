"""Limit lines: what the limits of a plan, its pieces and the largest mix are called, and why each binds."""
from ..forms.types import Said
from ..things.piece_names import piece_said
from ..words.messages import listed, message, quantity
from ..words.numbers import DOWN
from .advice import CUP, FILM, POT, SIZE, SOFT
from .day import ALONE, CALM, COARSE, NOT, TYPED, Named, WhyLargest

# limit: (what, why)
LIMITS = {
    POT: ("plan-limit-bag", "plan-limit-bag.why"),
    CUP: ("plan-limit-cup", "plan-limit-cup.why"),
    SOFT: ("plan-limit-cove", "plan-limit-cove.why"),
    FILM: ("plan-limit-film", "plan-limit-film.why"),
    SIZE: ("plan-limit-size", "plan-limit-size.why"),
}
WHY = {TYPED: "plan-largest-typed", CALM: "plan-largest-calm", COARSE: "plan-largest-coarse",
       ALONE: "plan-largest-alone", NOT: "plan-largest-not"}


def limit_words(limit: str, wet: float) -> "tuple[Said, Said]":
    """A limit as the screen says it: (what, why). A cove without tape is only tooled while it is soft."""
    what, why = LIMITS[limit]
    return (what, "plan-limit-cove.why-bare") if limit == SOFT and not wet else (what, why)


def why_said(why: WhyLargest) -> Said:
    """Why no mix is larger, or why it is, all the same."""
    key = "plan-largest-coarse.putty" if why.why == COARSE and why.putty else WHY[why.why]
    return message(key, most=quantity(why.most, "g", DOWN), calm=quantity(why.calm, "g", DOWN))


def piece_name(name: Named) -> Said:
    """A piece by the name that was typed, else by its place; with its face, where its seam has several.

    >>> piece_name(Named("Keel", 0, 0, 1, "")), piece_name(Named("", 4, 0, 1, ""))
    ((0, 'Keel'), ('plan-piece', {'number': 5}))
    """
    return piece_said(*as_kept(name))


def as_kept(name: Named) -> "tuple[str, str, str]":
    """A piece as a log or a pot keeps it: its name or its place, its face, its part."""
    part = "{}/{}".format(name.part + 1, name.parts) if name.parts > 1 else ""
    return name.typed or str(name.place + 1), name.face, part


def named(names: "list[Named]") -> Said:
    """All of them, with commas."""
    return listed([piece_name(name) for name in names], "plain")


def count_said(count: int) -> Said:
    """So many batches."""
    return message("plan-batches", count=count)

"""Rescue: from what is really in the cup to what has to be added. Nothing comes out of a cup."""
from ..forms.errors import InputError
from ..forms.inputs import Choice, Group, Number
from ..forms.late import late
from ..forms.memo import once
from ..forms.types import Found, Values
from ..mix import ratio
from ..mix.label_words import count_of
from . import measure

RESCUE_FOLD = "rescue-fold"
WHEN = (("rescue", ("yes",)),)

INPUTS = measure.INPUTS + (
    Choice("rescue", "rescue-asked", (("no", "rescue-asked.no"), ("yes", "rescue-asked.yes")), fold=RESCUE_FOLD),
    Group("in_cup", "rescue-in-cup", (
        Number("mass", "rescue-in-cup.mass", unit="g", low=0, high=200000, optional=True, tool="scale"),
        Number("strokes", "rescue-in-cup.strokes", unit="strokes", low=0, high=10000, optional=True),
    ), most=5, rows=2, gaps=True, each="measure-row", fold=RESCUE_FOLD, when=WHEN,
        help="rescue-in-cup.help"),
    Number("filler_in", "rescue-filler-in", unit="g", low=0, high=100000, optional=True, fold=RESCUE_FOLD, when=WHEN,
           tool="scale"),
    Number("first_contact", "rescue-first-contact", unit="min", low=0, high=1e9, optional=True,
           fold=RESCUE_FOLD, when=WHEN),
    Number("now", "rescue-now", unit="min", low=0, high=1e9, optional=True, fold=RESCUE_FOLD, when=WHEN),
)


def check(values: Values) -> None:
    """What is in the cup must be known, and time runs forwards."""
    if values["rescue"] == "no":
        return
    late("in_cup").contents(values, count_of(values["system"]))
    start, now = values["first_contact"], values["now"]
    if start is not None and now is not None and now < start:
        raise InputError("now", "rescue-now.before")


CHECKS = (ratio.check, check)


def reckon(values: Values) -> "Found | None":
    """What to add and whether it is worth it, an in_cup.RescueResult; None where nothing went wrong."""
    return late("in_cup").reckon(values) if values["rescue"] == "yes" else None


def reckoned(values: Values) -> "Found | None":
    """What `reckon` finds, once for one question."""
    return once(values, "rescue", lambda: reckon(values))


def answer(values: Values) -> list:
    """What to add, first whether it is worth it; no lines where nothing went wrong."""
    found = reckoned(values)
    return late("rescue_lines").say(found, values) if found else []

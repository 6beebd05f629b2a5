"""Rescue: from what is really in the cup to what has to be added. Nothing comes out of a cup."""
from ..forms.errors import InputError
from ..forms.inputs import Choice, Group, Number
from ..forms.late import late
from ..forms.memo import once
from ..forms.types import Found, Values
from ..mix import ratio
from . import measure

RESCUE_FOLD = "Rescue a bad pour"
WHEN = (("rescue", ("yes",)),)

INPUTS = measure.INPUTS + (
    Choice("rescue", "The pour went wrong", (("no", "No"), ("yes", "Yes, what now?")), fold=RESCUE_FOLD),
    Group("in_cup", "In the cup now", (
        Number("mass", "By weight", unit="g", low=0, high=200000, optional=True, tool="scale"),
        Number("strokes", "or strokes counted", unit="strokes", low=0, high=10000, optional=True),
    ), most=5, rows=2, gaps=True, each="Part", fold=RESCUE_FOLD, when=WHEN,
        help="In the order of the parts, filler left out. Left empty: the readings above."),
    Number("filler_in", "Filler already in", unit="g", low=0, high=100000, optional=True, fold=RESCUE_FOLD, when=WHEN,
           tool="scale"),
    Number("first_contact", "First contact of the two, at minute", unit="min", low=0, high=1e9, optional=True,
           fold=RESCUE_FOLD, when=WHEN),
    Number("now", "Now, minute", unit="min", low=0, high=1e9, optional=True, fold=RESCUE_FOLD, when=WHEN),
)


def check(values: Values) -> None:
    """What is in the cup must be known, and time runs forwards."""
    if values["rescue"] == "no":
        return
    late("in_cup").contents(values, ratio.count_of(values["system"]))
    start, now = values["first_contact"], values["now"]
    if start is not None and now is not None and now < start:
        raise InputError("now", "Now: it comes before the first contact")


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

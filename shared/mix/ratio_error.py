"""How exact a ratio is wanted, and how far off it a pour is."""
from collections import namedtuple

from ..catalogue.ratios import AIM, STOP
from ..equations.weighing import furthest_off
from ..forms.types import Values

SLACK = 1e-9  # computed errors differ in their last bits between runtimes

# error: of the part that is furthest off its ratio to the first, above 0: too much of it [-]
# place: of that part in the order of the label, None where all are in ratio
# short: whether there is too little of it, not too much; most: the error to aim for [-]; off: whether it is more
Off = namedtuple("Off", ("error", "place", "short", "most", "off"))


def tolerance(values: Values) -> float:
    """The ratio error to aim for [-]: typed, else the label's, else what is remembered."""
    return values["tolerance"] or values["system"]["tolerance"] or AIM


def limit(values: Values) -> float:
    """The ratio error beyond which no mark is told [-]: typed, else the label's, else what is remembered."""
    return values["tolerance"] or values["system"]["tolerance"] or STOP


def off_ratio(poured: "list[float] | tuple[float, ...]", parts: "list[float] | tuple[float, ...]", most: float,
              error: "float | None" = None) -> Off:
    """How far parts that were measured out are off their ratio.

    poured: of each part, in the order of the label, above 0; parts: wanted, in the same basis
    most: the error to aim for [-]; error: where it is known already [-]
    >>> off_ratio((200, 70, 5), (100, 30, 5), 0.02).place, off_ratio((200, 60), (100, 30), 0.02).place
    (2, None)
    """
    place, furthest = furthest_off(poured, parts)
    error = furthest if error is None else error
    return Off(error, None if abs(furthest) < SLACK else place, furthest < 0, most, abs(error) > most + SLACK)

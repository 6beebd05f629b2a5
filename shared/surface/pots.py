"""Pots: how far one pot reaches that is poured out at once, and how many it takes."""
from collections import namedtuple

from ..catalogue.cautions import FROM
from ..catalogue.rates import MIXING, POSITIONS
from ..clock.usable import batch, known, usable
from ..equations import surfaces
from ..forms.types import Values
from ..words.numbers import ceiling
from .faces import LEANS, LEVEL, UPRIGHT

MIX_PUTTY, MIX_LIQUID = [row[2] * 60.0 for row in MIXING]  # s
BIG, BIG_WARM, WARM = FROM[0][1], FROM[1][1], FROM[4][1]  # kg, kg, K
SOME = 0.2  # kg; a film is as thick whatever the pot held
SMALLEST = 0.01  # kg
EASE = {LEVEL: POSITIONS[0][2], LEANS: POSITIONS[0][2], UPRIGHT: POSITIONS[1][2]}  # under: the last of them

# reach: of one pot [m2]; count: of pots; mass: of each, all that is mixed [kg]; window: of a film [s]; big: a larger
# pot would still be laid in time, but from so much on is too big for one cup [kg], 0 where the film binds
Pots = namedtuple("Pots", ("reach", "count", "mass", "window", "big"))


def pace_of(pace: float, lie: str) -> float:
    """Time for a square metre as it lies [s/m2]. pace: on the level

    >>> pace_of(70.0, "level"), round(pace_of(70.0, "upright"), 6), pace_of(70.0, "under")
    (70.0, 100.0, 140.0)
    """
    return pace / EASE.get(lie, POSITIONS[2][2])


def film_window(values: Values) -> "float | None":
    """How long a film of the system is worked at this air [s], or None where nothing tells it."""
    if not known(values["system"]):
        return None
    return usable(batch(values["system"], "film", SOME, values["air"])).time


def pots_for(values: Values, area: float, mix: float, pace: float) -> "Pots | None":
    """Pots for an area, each poured out as soon as it is mixed; None where the film's time is not known.

    mix: for all of the area, but for what stays in cups [kg]; pace: of all hands [s/m2]
    A pot is smaller than the cautions call big, whatever a film would allow.
    """
    window = film_window(values)
    if window is None:
        return None
    reach = max(1e-6, surfaces.reach(window, MIX_LIQUID, pace))
    air, by_time = values["air"], ceiling(area / reach)
    by_heat = cups_for(mix, air, values["cup"])
    count = max(1, by_time, by_heat)
    return Pots(area / count, count, mix / count + values["cup"], window, big(air) if by_heat > by_time else 0)


def big(air: float) -> float:
    """What the cautions call a big batch, from so much on [kg]. air [K]

    >>> big(293.15), big(303.15)
    (0.3, 0.15)
    """
    return BIG_WARM if air >= WARM else BIG


def cups_for(mix: float, air: float, left: float) -> int:
    """Into how many cups a mix goes, so that none holds what the cautions call big. left: in each cup [kg]

    >>> cups_for(0.293, 293.15, 0.006), cups_for(0.295, 293.15, 0.006), cups_for(0.2, 303.15, 0.006)
    (1, 2, 2)
    """
    return max(1, ceiling(mix / max(big(air) - left, SMALLEST) * (1 + 1e-6)))

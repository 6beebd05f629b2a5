"""Peak band: how hot a mass can get that is left in its container, hottest end first. All that tells a peak asks here.

A label's minutes leave open how much heat there is, what the pot sheds, how the rate goes with temperature and how it
speeds itself up. A peak follows all four. Each end takes them where they make it hottest or coolest, and each of its
two chemistries, one at either end of the activation energy, is made to meet the same minutes.
"""
from collections import namedtuple

from ..catalogue.containers import CURE
from ..catalogue.pots import HARDLY_ABOVE
from ..equations.calibrate_heat import ABOUT, USABLE, refitted
from ..equations.integrate import Pot, Rates, pot_run
from ..equations.rounding import to_step
from ..forms.memo import memo_of
from ..forms.types import Values
from .heat_model import ends_of, facts, pot_of, warmer
from .pot_heat import COOL_END, HOT_END, too_hot
from .sun import Sun, least_sun

# k1/k2 at the hot and at the cool end: what starts slowly goes all at once
SHARES = dict([(row[0], {HOT_END: row[2], COOL_END: row[3]}) for row in CURE])["uncatalysed"]

ANY = float("inf")  # K; a peak of any height
PEAKS, MOST_PEAKS = "peaks", 64  # heading of the memo, (rates, pot, too hot, top): (peak [K], when [s]); how many
# hot, cool: highest mean temperature at either end [K]; the middle gets hotter; time: of the earliest peak of the hot
# end [s]; hardly, cool_hardly: that end is hardly above the warmer of air and mix
Band = namedtuple("Band", ("hot", "cool", "time", "hardly", "cool_hardly"))


def corners(values: Values, end: int) -> "list[Rates]":
    """The chemistries of an end, each meeting the system's minutes; worked out once for a system.

    values: as `usable.batch` makes them; end: HOT_END or COOL_END
    """
    rows = facts(values)
    return memo_of(values["system"]).once("corners", (rows, end), lambda: _corners(values, rows, end))


def _corners(values: Values, rows: tuple, end: int) -> "list[Rates]":
    # of what is known the surest: an own timing goes before the label
    place = min([(row.doubt, place) for place, row in enumerate(rows) if row.kind == ABOUT])[1]
    there = facts(values, end)[place].pot
    return [refitted(rates, rows[place], there, SHARES[end]) for rates in ends_of(values)]


def peaks(values: Values, container: str, mass: float, end: int,
          sun: "Sun | None" = None) -> "list[tuple[float, float]]":
    """(peak [K], when [s]) of each chemistry of an end, for a mass [kg] of everything in a container.

    values: as `corners` takes them; sun: where it is not what they declare, at the cool end the least of that
    """
    if sun is None and end == COOL_END:
        sun = least_sun(values)
    here = pot_of(values, container, mass, end, sun)
    hot, found = too_hot(container, here, values["air"]), []
    for rates in corners(values, end):
        found.append(_peak(values, rates, here, hot, ANY))
    return found


def _peak(values: Values, rates: Rates, here: Pot, hot: float, top: float) -> "tuple[float, float]":
    """A peak [K] and when [s]; a hand that types elsewhere asks for the same few again with every key."""
    def told() -> "tuple[float, float]":
        run = pot_run(rates, here, USABLE, hot, whole=True, top=top)
        return to_step(run.peak, 0.01), run.peak_time  # finer than it is known, coarser than the runtimes differ

    return memo_of(values).once(PEAKS, tuple(rates) + tuple(here) + (hot, top), told, MOST_PEAKS)


def reaches(values: Values, container: str, mass: float, limit: float, sun: "Sun | None" = None) -> bool:
    """Whether the hot end of a mass [kg] of everything in a container gets as hot as a limit [K].

    values, sun: as for `peaks`, of whose hot end this is the answer, in less time
    """
    here = pot_of(values, container, mass, HOT_END, sun)
    hot = too_hot(container, here, values["air"])
    for rates in corners(values, HOT_END):
        if _peak(values, rates, here, hot, limit)[0] >= limit:
            return True
    return False


def hottest(values: Values, container: str, mass: float, sun: "Sun | None" = None) -> float:
    """The hot end of the band alone [K]: what a caution goes by. The arguments are those of `peaks`."""
    return max([peak for peak, _ in peaks(values, container, mass, HOT_END, sun)])


def band(values: Values, container: str, mass: float) -> Band:
    """Both ends of the peak of a mass [kg] of everything in a container, and when it may come.

    values: as `usable.batch` makes them, or as the move heat reads them
    """
    found = peaks(values, container, mass, HOT_END)
    hot, cool = max([peak for peak, _ in found]), min([peak for peak, _ in peaks(values, container, mass, COOL_END)])
    hardly = warmer(values) + HARDLY_ABOVE
    return Band(hot, cool, min([time for _, time in found]), hot <= hardly, cool <= hardly)

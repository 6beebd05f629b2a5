"""Hot pot: how hot a mass of this system can get if it stays in its container, and how much of it stays calm there. The
hot end of the band is what counts."""
from math import exp, log

from ..catalogue.cautions import FROM
from ..catalogue.containers import HOT
from ..catalogue.pots import SIZES
from ..equations.rounding import DOWN, to_step
from ..forms.memo import memo_of
from ..forms.types import Function
from .heat_model import LEAST_BATCH, MOST_BATCH, facts, mixed_resin
from .peak_band import hottest, reaches
from .sun import NO_SUN, Sun
from .usable import batch, known

RUNS_AWAY = HOT[-1][0]  # K; from this peak on a pot smokes, foams, melts its cup
BIG, BIG_WARM, _, _, WARM = [row[1] for row in FROM[:5]]


def peak_temperature(system: dict, mass: float, container: str, air: float, resin: "float | None" = None,
                     filler: float = 0.0, sizes: dict = SIZES, moving: str = "still", timings: tuple = (),
                     sun: Sun = NO_SUN) -> float:
    """The hot end of the highest mean temperature of a mass that is left in its container [K], as `peak_band` has it.

    system: values of records.SYSTEM, its times `known`; mass: of everything in it [kg]; container: of CONTAINERS
    air, resin: [K], resin None where it is as warm as the air; filler: share of the mass [-]; sizes: as SIZES [m]
    moving: of AIR; timings: own ones beside the system's, as `heat` reads them; sun: of `sun.sun_of`
    """
    here = batch(system, container, mass, air, resin, filler, sizes, moving, timings)
    return hottest(here, container, mass, sun)


def known_peak(system: dict, mass: float, container: str, air: float, sun: Sun = NO_SUN) -> "float | None":
    """`peak_temperature` [K], None where nothing tells how long the system lasts."""
    return peak_temperature(system, mass, container, air, sun=sun) if known(system) else None


def largest_calm_mass(system: dict, container: str, air: float, resin: "float | None" = None, filler: float = 0.0,
                      sizes: dict = SIZES, moving: str = "still", timings: "list | tuple" = (),
                      limit: float = RUNS_AWAY,
                      sun: Sun = NO_SUN) -> float:
    """The largest mass whose predicted peak stays below a limit when it is left in its container [kg].

    The arguments are those of `peak_temperature`; limit: [K], 100 degC from memory: there it runs away
    returns: [kg], whole grams, rounded down; MOST_BATCH where even that stays below, 0.0 where LEAST_BATCH does not
    It says what may be forgotten in the container, so it is small: in the warm a few tens of grams in a cup or a bag.
    A plan that uses its pots up in time may mix more: `largest_pot` is its cap.
    """
    asked = (facts({"system": system, "timings": timings}), mixed_resin(system), container, air, resin, filler,
             tuple([sizes[name] for name in SIZES]), moving, limit, sun)

    def over(log_mass: float) -> bool:
        mass = exp(log_mass)
        return reaches(batch(system, container, mass, air, resin, filler, sizes, moving, timings), container, mass,
                       limit, sun)

    return memo_of(system).once("calm_mass", asked, lambda: _largest_below(over))


def _largest_below(over: Function) -> float:
    """The largest mass [kg] that is not `over` a limit; over: asked of the logarithm of a mass, false before true."""
    low, high = log(LEAST_BATCH), log(MOST_BATCH)
    if over(low):
        return 0.0
    if not over(high):
        return MOST_BATCH
    while high - low > 0.01:
        middle = (low + high) / 2
        low, high = (low, middle) if over(middle) else (middle, high)
    return to_step(exp(low), 0.001, DOWN)


def largest_pot(system: dict, container: str, air: float, resin: "float | None" = None, filler: float = 0.0,
                sizes: dict = SIZES, moving: str = "still", timings: "list | tuple" = (), sun: Sun = NO_SUN) -> float:
    """The largest mass that a plan puts into one container, to be used up in time [kg]: what stays calm there even when
    it is forgotten, and otherwise what the trade does not call a big pot (from memory), on a warm day or else.

    The arguments are those of `largest_calm_mass`. Above the calm mass a pot that is forgotten runs away, so that the
    caution stands all the same.
    """
    rule = BIG if max(air, air if resin is None else resin) < WARM and not sun.flux else BIG_WARM  # sun: as a warm day
    if not known(system, timings) or reaches(batch(system, container, rule, air, resin, filler, sizes, moving, timings),
                                             container, rule, RUNS_AWAY, sun):
        return rule  # more of it only gets hotter
    return max(rule, largest_calm_mass(system, container, air, resin, filler, sizes, moving, timings,
                                       sun=sun))

"""Heat table: usable times of one system by the heat balance, reckoned where they are asked for and kept.

A plan looks at hundreds of batches. The time of a bag falls smoothly with its mass, so it is reckoned at masses a
factor apart, the logarithms are joined by straight lines, and a little is taken off for the bend between them.
"""
from math import exp, floor, log

from ..catalogue.pots import SIZES
from ..equations.calibrate_heat import usable_time
from ..equations.integrate import Pot, Rates
from ..equations.rounding import to_step
from ..forms.memo import memo_of
from .heat_model import FINEST, ends_of, facts, mixed_resin
from .pot_heat import pot, too_hot
from .sun import NO_SUN, Sun

PER_MASS = 2 / log(2)  # two masses for each doubling
BEND = 0.985  # of the joined lines; they lie above the true curve by less than 1.5 % (tested)
LEAST = 0.005  # kg; a smaller mass is taken as this much


class HeatTable:
    """Usable times [s] at one air temperature [K], resin and container as warm as the air.

    rates: chemistries that fit, of which the first to end counts; mix: as `mixed_resin`; sun: what all of them take up
    """

    def __init__(self, rates: "tuple[Rates, ...]", mix: "tuple[float, float]", sun: Sun = NO_SUN) -> None:
        self.rates, self.mix, self.times, self.sun = rates, mix, {}, sun

    def _time(self, kind: str, mass: float, temperature: float, filler: float = 0.0) -> float:
        key = (kind, mass, temperature, filler)
        if key not in self.times:
            vessel = pot(kind, mass, SIZES, self.mix, filler, temperature, temperature, sun=self.sun)
            hot = too_hot(kind, vessel, temperature)
            time = min([usable_time(rates, vessel, hot=hot) for rates in self.rates])
            self.times[key] = to_step(time, FINEST)
        return self.times[key]

    def at_least(self, temperature: float) -> float:
        """What any mass lasts: a pot that loses no heat. In the sun there is no such bound: it warms it without end."""
        if self.sun.flux:
            return 0.0
        if temperature not in self.times:
            rise = pot("bag", 1.0, SIZES, self.mix, 0.0, temperature, temperature).rise
            alone = Pot(rise, 0.0, temperature, temperature)
            self.times[temperature] = to_step(min([usable_time(rates, alone) for rates in self.rates]), FINEST)
        return self.times[temperature]

    def bag(self, mass: float, temperature: float, kind: str = "bag") -> float:
        """A bag, or a cup, of a mass [kg]; filler, which would take up heat, is left out: to the safe side."""
        place = log(max(mass, LEAST)) * PER_MASS
        low = floor(place)
        before, after = [self._time(kind, exp(one / PER_MASS), temperature) for one in (low, low + 1)]
        return before * (after / before) ** (place - low) * BEND

    def bead(self, temperature: float, filler: float) -> float:
        """A cove on wood; filler: share of the whole mass [-]. Its length does not matter."""
        return self._time("bead", 0.1, temperature, filler)

    def film(self, temperature: float) -> float:
        """A film on wood."""
        return self._time("film", 0.1, temperature)


def heat_table(system: dict, timings: "list | tuple" = (), sun: Sun = NO_SUN) -> HeatTable:
    """The table of a system, calibrated once and kept. timings: own ones, as `heat` reads them; sun: of `sun.sun_of`"""
    values, mix = {"system": system, "timings": timings}, mixed_resin(system)
    return memo_of(system).once("heat_table", (facts(values), mix, sun),
                                lambda: HeatTable(ends_of(values), mix, sun))

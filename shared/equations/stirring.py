"""Stirring: how long to stir."""
from ..catalogue.measuring import COLD, SMALL, STIR_LONG, STIR_SHORT


def stirring_time(mass: float, temperature: "float | None" = None) -> float:
    """How long to stir, scraping bottom and corners, before the filler goes in.

    mass: [kg]; temperature: of the mix [K], or None where it is not known
    returns: [s]; common practice: 2 min up to 200 g, 3 min above that or in the cold
    >>> stirring_time(0.2), stirring_time(0.201), stirring_time(0.1, 280)
    (120, 180, 180)
    """
    cold = temperature is not None and temperature < COLD
    return STIR_LONG if cold or mass > SMALL * (1 + 1e-9) else STIR_SHORT

"""Mixing: how long to stir."""

STIR_SHORT, STIR_LONG = 120, 180  # s, common practice: up to SMALL, and above it or in the cold
SMALL = 0.2  # kg, common practice
DENSEST = 1200.0  # kg/m3, from memory: liquids of no known density are taken for the larger batch, stirred longer
COLD = 288.15  # K, below which it is stirred longer (own judgement)


def stirring_time(mass: float, temperature=None) -> float:
    """How long to stir, scraping bottom and corners, before the filler goes in.

    mass: [kg]; temperature: of the mix [K], or None where it is not known
    returns: [s]; common practice: 2 min up to 200 g, 3 min above that or in the cold
    >>> stirring_time(0.2), stirring_time(0.201), stirring_time(0.1, 280)
    (120, 180, 180)
    """
    cold = temperature is not None and temperature < COLD
    return STIR_LONG if cold or mass > SMALL * (1 + 1e-9) else STIR_SHORT

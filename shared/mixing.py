"""Mixing: how long to stir, and how long a mix may be used by the trade's quick rule."""

from .quick_rule import pot_time

STIR_SHORT, STIR_LONG = 120, 180  # s, common practice: up to SMALL, and above it or in the cold
SMALL = 0.2  # kg, common practice
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


def pot_life(mass: float, label_time: float, label_mass: float, temperature=None, label_temperature=None) -> float:
    """How long a mix can be used in its cup, from the label's figure, never longer than that figure:
        t = t0 (m / m0)**(-1/3) 2**(-(T - T0) / 10)

    mass: m [kg]; label_time, label_mass: t0 [s], m0 [kg]; temperature, label_temperature: T, T0 [K], or None
    returns: t [s], the shorter of the rule and the label's own; the rule is from memory, halving common practice
    >>> round(pot_life(0.8, 1800, 0.1)), round(pot_life(0.05, 1800, 0.1))
    (900, 1800)
    >>> round(pot_life(0.1, 1800, 0.1, 308.15, 298.15))
    900
    """
    if temperature is None or label_temperature is None:
        temperature = label_temperature = 0.0  # as warm as the label's
    return min(pot_time(mass, temperature, label_time, label_mass, label_temperature), label_time)

"""Softening: the glass temperature of a cured mix, the conversion at which warmth leaves it, and a hull in the sun."""
from math import sqrt

STEFAN_BOLTZMANN = 5.670374419e-8  # W/(m2 K4), CODATA 2018, exact


def glass_temperature(conversion: float, uncured: float, cured: float, bend: float) -> float:
    """Glass temperature of a partly cured mix, DiBenedetto:
        Tg = Tg0 + (Tg1 - Tg0) l a / (1 - (1 - l) a)

    conversion: a [-], 0 to 1; uncured, cured: Tg0, Tg1 [K]; bend: l [-], above 0 to 1
    returns: Tg [K]; Nielsen, J. Macromol. Sci. C3 (1969) 69; Pascault and Williams, J. Polym. Sci. B 28 (1990) 85
    >>> round(glass_temperature(0.73, 233.15, 345.15, 0.45) - 273.15, 2)
    21.47
    """
    return uncured + (cured - uncured) * bend * conversion / (1 - (1 - bend) * conversion)


def conversion_at(glass: float, uncured: float, cured: float, bend: float) -> float:
    """Conversion that has a glass temperature, the inverse of `glass_temperature`:
        a = x / (l + (1 - l) x)        x = (Tg - Tg0) / (Tg1 - Tg0), held within 0 and 1

    glass: Tg [K]; uncured, cured: Tg0, Tg1 [K]; bend: l [-], above 0 to 1
    returns: a [-], 0 to 1: with Tg = T + D where a cure at T stops, for its own glass temperature then is D above it
    >>> [round(conversion_at(t + 15 + 273.15, 233.15, 345.15, 0.45), 2) for t in (6, 12, 20, 25, 40)]
    [0.73, 0.77, 0.82, 0.85, 0.93]
    """
    part = min(1.0, max(0.0, (glass - uncured) / (cured - uncured)))
    return part / (bend + (1 - bend) * part)


def expanded(middle: float, found: "list[tuple[float, float]]") -> "tuple[float, float]":
    """A band from what one figure at a time does at its two ends, each rectangular, coverage factor 2:
        U = 2 sqrt(sum((half width)**2 / 3))

    middle: with every figure at its value; found: (at its least, at its most) of each
    returns: (middle - U, middle + U); JCGM 100:2008, 4.3.7 and 6.2.1
    >>> [round(end, 4) for end in expanded(1.0, [(0.9, 1.1), (1.2, 0.8)])]
    [0.7418, 1.2582]
    """
    wide = 2 * sqrt(sum([(most - least) * (most - least) / 12 for least, most in found]))
    return middle - wide, middle + wide


def sunlit_surface(sunlight: float, absorbed: float, air: float, sky: float, convection: float,
                   emittance: float) -> float:
    """Temperature of a surface in the sun that gives no heat to its back, by halving:
        a G = e s (T**4 - T_sky**4) + h (T - T_air)

    sunlight: G [W/m2]; absorbed: a [-]; air, sky: [K]; convection: h [W/(m2 K)], above 0; emittance: e [-]
    returns: T [K], to 0.01; ASTM E1980; a bare panel that sheds heat inwards too is cooler
    >>> [round(sunlit_surface(1000, a, 310, 300, h, 0.9) - 273.15) for a in (0.2, 0.95) for h in (5, 12, 30)]
    [49, 45, 41, 104, 82, 61]
    """
    low, high = min(air, sky), max(air, sky) + absorbed * sunlight / convection
    gained = absorbed * sunlight + emittance * STEFAN_BOLTZMANN * sky**4 + convection * air
    while high - low > 0.01:
        middle = (low + high) / 2
        if emittance * STEFAN_BOLTZMANN * middle**4 + convection * middle < gained:
            low = middle
        else:
            high = middle
    return (low + high) / 2

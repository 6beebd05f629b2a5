"""Quick rule of the trade: how pot life goes with the mass in the pot and with temperature. From memory, and rough."""

from math import sqrt

from ..catalogue.pot_life import WINDOWS

REFERENCE = 298.15  # K; at this temperature the windows of a mix are given and known pots are compared
RULE = {row[0]: row[1] for row in WINDOWS}


def pot_time(
    mass: float,
    temperature: float,
    label_time: float,
    label_mass: float,
    label_temperature: float,
    exponent: float = RULE["exponent"],
    doubling: float = RULE["doubling"],
    longest: "int | None" = None,
) -> float:
    """Pot life of another mass at another temperature than the label's, no longer than a cap:
        t = t_label (m / m_label)**-n  f**(-(T - T_label) / 10)

    mass, label_mass: m [kg], above 0; temperature, label_temperature: T [K]; label_time: t_label [s]
    exponent: n [-], 0.2 to 0.45, from memory; doubling: f [-], 1.8 to 2.3 for each 10 degC, common practice
    longest: [s], or None; a small mass lasts no longer than a film, and a mix to be rescued no longer than the label's
    returns: t [s], rough
    >>> round(pot_time(0.8, 298.15, 1800, 0.1, 298.15) / 60, 3)
    15.0
    >>> round(pot_time(0.1, 308.15, 1800, 0.1, 298.15) / 60, 3)
    15.0
    >>> pot_time(0.05, 288.15, 1800, 0.1, 298.15, longest=1800)
    1800
    """
    time = label_time * (mass / label_mass) ** -exponent * doubling ** ((label_temperature - temperature) / 10)
    return time if longest is None else min(time, longest)


def film_time(system: dict, temperature: float, hundred: "float | None" = None,
              doubling: float = RULE["doubling"]) -> "float | None":
    """Usable time of a thin film: the label's, else the rule's multiple of the pot life of 100 g.

    temperature: T [K]; hundred: pot life of 100 g there [s], or None; doubling as in pot_time
    returns: [s], or None where there is nothing to start from
    >>> round(film_time({"film_time": 3600, "pot_temperature": 298.15}, 308.15))
    1800
    >>> film_time({"film_time": None}, 308.15, 1000.0)
    3500.0
    """
    if system["film_time"] is not None:
        return system["film_time"] * doubling ** ((system["pot_temperature"] - temperature) / 10)
    return None if hundred is None else RULE["film"] * hundred


def ranges(known: list, exponent: float = RULE["exponent"], doubling: float = RULE["doubling"]) -> list:
    """From which known pot the rule starts, at 25 degC:
        (up to this mass [kg], what 1 kg would last [s], no longer than [s])

    known: (time [s], mass [kg], temperature [K]) of each pot, and what else
    The nearest in mass; a larger mass never lasts longer than a smaller one, whatever the pots told.
    >>> ranges([(1800, 0.1, 298.15)])[0][0]
    1e+30
    """
    pots = sorted([(one[1], pot_time(1.0, REFERENCE, one[0], one[1], one[2], exponent, doubling)) for one in known])
    found, longest = [], 1e30
    for place, (mass, scale) in enumerate(pots):
        upper = sqrt(mass * pots[place + 1][0]) if place + 1 < len(pots) else 1e30
        found.append((upper, scale, longest))
        longest = min(longest, scale * upper**-exponent)
    return found


def by_ranges(found: list, mass: float, exponent: float = RULE["exponent"]) -> float:
    """By the rule from the pot that is nearest in mass [s at 25 degC]. found: as `ranges` gives them; mass: [kg]

    >>> round(by_ranges(ranges([(1800, 0.1, 298.15)]), 0.8))
    900
    """
    one = found[0]
    for following in found:
        if one[0] < mass:
            one = following
    return min(one[1] * mass**-exponent, one[2])

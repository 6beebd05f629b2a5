"""The trade's quick rule: how pot life goes with the mass in the pot and with temperature. From memory, and rough."""


def pot_time(
    mass: float,
    temperature: float,
    label_time: float,
    label_mass: float,
    label_temperature: float,
    exponent: float = 1 / 3,
    doubling: float = 2.0,
) -> float:
    """Pot life of another mass at another temperature than the label's:
        t = t_label (m / m_label)**-n  f**(-(T - T_label) / 10)

    mass, label_mass: m [kg], above 0; temperature, label_temperature: T [K]; label_time: t_label [s]
    exponent: n [-], 0.2 to 0.45, from memory; doubling: f [-], 1.8 to 2.3 for each 10 degC, common practice
    returns: t [s]; rough, and long for masses far below the label's: a film's own time goes before it
    >>> round(pot_time(0.8, 298.15, 1800, 0.1, 298.15) / 60, 3)
    15.0
    >>> round(pot_time(0.1, 308.15, 1800, 0.1, 298.15) / 60, 3)
    15.0
    """
    return label_time * (mass / label_mass) ** -exponent * doubling ** ((label_temperature - temperature) / 10)

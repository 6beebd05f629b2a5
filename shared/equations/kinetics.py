"""Kinetics: how fast an amine cures an epoxide, when it gels, and what heat that sets free.

The mix speeds itself up: the hydroxyls that the reaction makes are its catalyst.
"""
from math import exp, log, sqrt

GAS_CONSTANT = 8.314462618  # J/(mol K), CODATA 2018, exact


def rate_factor(energy: float, temperature: float, reference: float) -> float:
    """How much faster a reaction runs than at the reference temperature, Arrhenius:
        f = exp(-E/R (1/T - 1/T_ref))

    energy: E [J/mol]; temperature, reference: T, T_ref [K], above 0
    returns: f [-]; R = 8.314462618 J/(mol K), CODATA 2018
    >>> round(rate_factor(58600, 303.15, 293.15), 6)
    2.210189
    """
    return exp(-energy / GAS_CONSTANT * (1 / temperature - 1 / reference))


def cure_rate(conversion: float, first: float, grown: float) -> float:
    """Rate of cure, autocatalytic:
        da/dt = (k1 + k2 a) (1 - a)**2

    conversion: a [-], 0 to 1; first, grown: k1, k2 [1/s], 0 or more
    returns: da/dt [1/s]; Horie, Hiura, Sawada, Mita and Kambe, J. Polym. Sci. A-1 8 (1970) 1357 (rate form)
    >>> round(cure_rate(0.5, 1e-5, 3e-4) * 1e6, 9)
    40.0
    """
    return (first + grown * conversion) * (1 - conversion) * (1 - conversion)


def isothermal_time(conversion: float, first: float, grown: float) -> float:
    """Time to a conversion at one temperature, the integral of `cure_rate` in closed form:
        t = a / ((1 - a) (k1 + k2)) + k2 / (k1 + k2)**2 ln((k1 + k2 a) / (k1 (1 - a)))

    conversion: a [-], 0 up to below 1; first: k1 [1/s], above 0; grown: k2 [1/s], 0 or more
    returns: t [s]; derived from the rate form, checked by quadrature
    >>> round(isothermal_time(0.5, 1e-5, 3e-4), 2)
    14044.96
    """
    both, left = first + grown, 1 - conversion
    return conversion / (left * both) + grown / (both * both) * log((first + grown * conversion) / (first * left))


def fastest_rate(first: float, grown: float) -> float:
    """The largest rate of cure at one temperature, at the conversion where the derivative is nought:
        a = (k2 - 2 k1) / (3 k2), but not below 0

    first, grown: k1, k2 [1/s]; returns: da/dt [1/s]
    >>> round(fastest_rate(1e-5, 3e-4) / cure_rate(0, 1e-5, 3e-4), 2)
    4.9
    """
    conversion = max(0.0, (grown - 2 * first) / (3 * grown)) if grown else 0.0
    return cure_rate(conversion, first, grown)


def gel_conversion(epoxide_arms: float, amine_arms: float, ratio: float = 1.0) -> "float | None":
    """Epoxide conversion at the gel point; None where the ratio is so far out that no gel forms:
        p = sqrt(r / ((f_e - 1) (f_a - 1)))

    epoxide_arms, amine_arms: f_e, f_a [-], functionality, above 1; ratio: r [-], amine hydrogen per epoxide
    returns: p [-]; Flory, Principles of Polymer Chemistry (1953), ch. 9; equal reactivity and no rings are assumed,
    and rings delay the real gel, so the figure is early, the safe side of a working time
    >>> round(gel_conversion(2, 4), 7), round(gel_conversion(2, 4, 0.8), 7), gel_conversion(2, 4, 3.5)
    (0.5773503, 0.5163978, None)
    """
    low, high = gel_limits(epoxide_arms, amine_arms)
    if ratio < low * (1 - 1e-9) or ratio > high * (1 + 1e-9):
        return None
    return sqrt(ratio * low)


def gel_limits(epoxide_arms: float, amine_arms: float) -> tuple:
    """The ratios of amine hydrogen to epoxide between which a gel forms, amine addition alone:
        1 / ((f_e - 1) (f_a - 1)) .. (f_e - 1) (f_a - 1)

    epoxide_arms, amine_arms: f_e, f_a [-], above 1; Stockmayer, J. Polym. Sci. 9 (1952) 69 and 11 (1953) 424
    >>> gel_limits(2, 4)[1]
    3
    """
    product = (epoxide_arms - 1) * (amine_arms - 1)
    return 1 / product, product


def heat_of_mix(heat_per_epoxide: float, epoxide_weight: float, phr: float, filler: float = 0.0) -> float:
    """Heat that a mix sets free when all of its epoxide reacts:
        q = dH / (EEW (1 + phr / 100)) (1 - w)

    heat_per_epoxide: dH [J/mol]; epoxide_weight: EEW [kg/eq]; phr: hardener per hundred of resin by weight
    filler: w [-], share of the whole mass
    returns: q [J/kg of everything in the pot]; the first law
    >>> round(heat_of_mix(100000, 0.190, 10.86) / 1000, 4)
    474.7572
    """
    return heat_per_epoxide / (epoxide_weight * (1 + phr / 100)) * (1 - filler)


def adiabatic_rise(heat: float, specific_heat: float) -> float:
    """How much warmer a pot gets that loses no heat: dT = q / c

    heat: q [J/kg]; specific_heat: c [J/(kg K)], above 0; returns: [K]; the first law
    >>> round(adiabatic_rise(350877.2, 2000), 2)
    175.44
    """
    return heat / specific_heat

"""Runaway: the sizes and temperatures beyond which a pour cannot shed the heat it makes. Bounds, not predictions.

Both forms take the exponential approximation and no consumption of reactant, which is on the safe side; an amine cure
speeds itself up, so put in its fastest rate, not its first.
"""
from math import sqrt

from .kinetics import GAS_CONSTANT

# Frank-Kamenetskii's critical numbers, fixed wall temperature; after Boddington, Gray and Robinson to three digits
CRITICAL = {"slab": 0.878458, "cylinder": 2.0, "sphere": 3.32199}
SEMENOV = 0.36787944117144233  # 1/e, well mixed; Semenov (1928)


def critical_rise(energy: float, air: float) -> float:
    """How far a well mixed pot may rise above the air before it runs away: dT = R T**2 / E

    energy: E [J/mol]; air: T [K]; returns: [K]; Semenov (1928)
    >>> round(critical_rise(50000, 293.15), 5)
    14.29039
    """
    return GAS_CONSTANT * air * air / energy


def critical_half_size(shape: str, energy: float, conductivity: float, density: float, heat: float, rate: float,
                       air: float) -> float:
    """Half the thickness of a slab, or the radius, from which on the middle runs away:
        r = sqrt(delta_c lambda R T**2 / (E rho Q k))

    shape: slab, cylinder or sphere; energy: E [J/mol]; conductivity: lambda [W/(m K)]; density: rho [kg/m3]
    heat: Q [J/kg]; rate: k [1/s] at the air's temperature T [K]
    returns: r [m]; Frank-Kamenetskii (1938), surface held at the air's temperature
    >>> round(critical_half_size("cylinder", 55000, 0.2, 1100, 450000, 1e-5, 298.15) * 1000, 4)
    32.9532
    """
    return sqrt(CRITICAL[shape] * conductivity * GAS_CONSTANT * air * air / (energy * density * heat * rate))


def semenov_number(energy: float, rise: float, loss: float, rate: float, air: float) -> float:
    """Heat made against heat shed, well mixed; above 1/e the pot runs away:
        psi = E / (R T**2) rise k / loss

    energy: E [J/mol]; rise: Q m / C [K]; loss: UA / C [1/s]; rate: k [1/s] at the air's temperature T [K]
    returns: psi [-]; Semenov (1928)
    >>> round(semenov_number(50000, 200.0, 1e-3, 1e-5, 293.15), 5)
    0.13995
    """
    return energy / (GAS_CONSTANT * air * air) * rise * rate / loss

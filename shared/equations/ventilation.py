"""Ventilation: air changes, clearing a room, vapour in the air, and the flow that keeps it down."""
from math import exp, log, sqrt

from .kinetics import GAS_CONSTANT

ATMOSPHERE = 101325.0  # Pa
AIR_DENSITY = 1.2  # kg/m3, at 20 degC
SLACK = 1e-9


def molar_volume(temperature: float, pressure: float = ATMOSPHERE) -> float:
    """Volume of one mole of any gas:
        Vm = R T / p

    temperature: T [K], above 0; pressure: p [Pa], above 0
    returns: Vm [m3/mol]; the ideal gas; 29 CFR 1910.1000 uses the rounded 24.45 L/mol at 25 degC and 760 torr
    >>> round(molar_volume(298.15) * 1000, 4)
    24.4654
    """
    return GAS_CONSTANT * temperature / pressure


def air_changes(flow: float, volume: float) -> float:
    """How often a fan moves the room's air, in the same time unit as the flow:
        N = Q / V

    flow: Q [m3/s]; volume: V [m3], above 0
    returns: N [1/s]; CDC/HICPAC (2003), Appendix B
    >>> round(air_changes(240 / 3600, 40) * 3600, 9)
    6.0
    """
    return flow / volume


def clearing_time(changes: float, left: float, mixing: float = 1.0) -> float:
    """Time until a share `left` of what was in the air is still there, once nothing more comes into it:
        t = -ln(left) K / N

    changes: N [1/s], above 0; left: C2/C1 [-], 0 < left <= 1; mixing: K [-], 1 for perfect mixing, 3 to 10 in rooms
    returns: t [s]; CDC/HICPAC (2003), Table B.1 (which is for K = 1)
    >>> round(clearing_time(6 / 3600, 0.01) / 60, 3)
    46.052
    """
    return -log(left) * mixing / changes


def vapour_share(mass: float, molar_mass: float, volume: float, temperature: float) -> float:
    """Share of the air that a mass of solvent makes up once all of it has evaporated into a closed room:
        y = (m / M) Vm / V

    mass: m [kg]; molar_mass: M [kg/mol]; volume: V [m3], above 0; temperature: T [K]
    returns: y [-], by volume; ideal gas, small shares; times 1e6 it is ppm
    >>> round(vapour_share(0.05, 0.05808, 30, 293.15) * 1e6, 3)
    690.287
    """
    return mass / molar_mass * molar_volume(temperature) / volume


def aired_share(mass: float, time: float, molar_mass: float, volume: float, changes: float, temperature: float,
                mixing: float = 1.0) -> float:
    """Share in the air at the end of a time over which the mass evaporates evenly, while the room is aired:
        y = G Vm K / (M Q) (1 - exp(-N t / K)), G = m / t, Q = N V;  N = 0: `vapour_share`

    mass: m [kg]; time: t [s], above 0; changes: N [1/s], 0 or more; mixing: K [-]; the rest as in `vapour_share`
    returns: y [-]; the mass balance of one well-mixed room; ACGIH, Industrial Ventilation, dilution
    >>> round(aired_share(0.05, 600, 0.05808, 30, 6 / 3600, 293.15) * 1e6, 2)
    436.34
    """
    whole = vapour_share(mass, molar_mass, volume, temperature)
    gone = changes * time / mixing
    return whole if gone < SLACK else whole * (1 - exp(-gone)) / gone


def flow_for_share(rate: float, molar_mass: float, share: float, temperature: float, mixing: float = 1.0) -> float:
    """Flow that keeps a steady evaporation at a share of the air:
        Q = (G / M) Vm K / y

    rate: G [kg/s]; molar_mass: M [kg/mol]; share: y [-], above 0; temperature: T [K]; mixing: K [-]
    returns: Q [m3/s]; ideal gas; ACGIH, Industrial Ventilation, dilution for health (share = the limit in the air)
    >>> round(flow_for_share(0.1 / 3600, 0.05808, 250e-6, 298.15, 5) * 3600, 3)
    842.473
    """
    return rate / molar_mass * molar_volume(temperature) * mixing / share


def flow_for_health_403(gravity: float, pints: float, molar_mass: float, limit: float, mixing: float) -> float:
    """The same in the manual's customary units, as a cross-check:
        Q = 403 SG ER K 1e6 / (MW TLV)

    gravity: SG [-]; pints: ER [US pints per minute]; molar_mass: MW [g/mol]; limit: TLV [ppm]; mixing: K [-]
    returns: Q [ft3/min] at 70 degF; ACGIH, Industrial Ventilation
    >>> round(flow_for_health_403(1.32, 1.5 / 60, 133.4, 350, 5), 1)
    1424.2
    """
    return 403 * gravity * pints * mixing * 1e6 / (molar_mass * limit)


def flow_for_fire_403(gravity: float, pints: float, molar_mass: float, percent: float, safety: float = 4.0,
                      hot: float = 1.0) -> float:
    """Flow that keeps vapour at 1 / C of the lower explosive limit, in the manual's customary units:
        Q = 403 SG ER 100 C / (MW LEL B)

    gravity: SG [-]; pints: ER [US pints per minute]; molar_mass: MW [g/mol]; percent: LEL [% by volume]
    safety: C [-], 4 keeps a quarter of the limit, 10 a tenth; hot: B [-], 1 below 250 degF, 0.7 above
    returns: Q [ft3/min] at 70 degF; ACGIH, Industrial Ventilation
    >>> round(flow_for_fire_403(0.79, 2 / 60, 58.1, 2.5), 3)
    29.225
    """
    return 403 * gravity * pints * 100 * safety / (molar_mass * percent * hot)


def opening_area(flow: float, pressure: float, coefficient: float) -> float:
    """Free area through which a flow of air comes in at a pressure difference:
        A = Q / (Cd sqrt(2 dp / rho))

    flow: Q [m3/s]; pressure: dp [Pa], above 0; coefficient: Cd [-], 0.6 for a plain opening
    returns: A [m2]; the orifice equation (Bernoulli), air of 1.2 kg/m3
    >>> round(opening_area(240 / 3600, 5, 0.6), 4)
    0.0385
    """
    return flow / (coefficient * sqrt(2 * pressure / AIR_DENSITY))


def opening_flow(area: float, pressure: float, coefficient: float) -> float:
    """The flow that an opening lets in at a pressure difference: the inverse of `opening_area`.

    area: A [m2]; pressure: dp [Pa]; coefficient: Cd [-]
    returns: Q [m3/s]
    >>> round(opening_flow(0.0385, 5, 0.6) * 3600)
    240
    """
    return area * coefficient * sqrt(2 * pressure / AIR_DENSITY)

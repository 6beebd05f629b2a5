"""Dewpoint: when water settles on a surface, from the air's temperature and humidity."""
from math import exp, log

ZERO = 273.15
A, B, FIRST = 17.62, 243.12, 611.2  # Magnus over water, WMO-No. 8: -, degC, Pa


def saturation_pressure(temperature: float) -> float:
    """Pressure of water vapour in saturated air, Magnus over water:
        e = 611.2 Pa exp(17.62 t / (243.12 degC + t))        t = T - 273.15 K

    temperature: T [K], 233 to 333
    returns: e [Pa]; WMO-No. 8, Guide to Instruments and Methods of Observation, Annex 4.B (from memory)
    >>> round(saturation_pressure(293.15))
    2333
    """
    t = temperature - ZERO
    return FIRST * exp(A * t / (B + t))


def dew_point(temperature: float, humidity: float) -> float:
    """Temperature at which this air is saturated, the inverse of `saturation_pressure`:
        T_d = 243.12 g / (17.62 - g) + 273.15 K        g = ln(RH) + 17.62 t / (243.12 degC + t)

    temperature: [K]; humidity: RH [-], above 0 up to 1
    returns: T_d [K]; within 0.04 K of the ASHRAE equations from 0 to 40 degC and 30 to 95 %, dew points above 0 degC
    >>> round(dew_point(293.15, 0.5) - 273.15, 3)
    9.255
    """
    t = temperature - ZERO
    g = log(humidity) + A * t / (B + t)
    return B * g / (A - g) + ZERO


def margin(surface: float, temperature: float, humidity: float) -> float:
    """How far a surface is above the dew point [K]; below 0 it is wet.

    surface, temperature: of surface and air [K]; humidity: [-]
    >>> round(margin(290.65, 291.15, 0.85), 1)
    2.1
    """
    return surface - dew_point(temperature, humidity)

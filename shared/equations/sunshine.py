"""Sunshine: how much of it there is, and how much warmer than the air it holds what it shines on."""
from math import cos, exp


def clear_sky(zenith: float) -> float:
    """Sun and sky together on the level under a clear sky:
        G = 1098 cos z exp(-0.059 / cos z)

    zenith: z, of the sun from the point overhead [rad]; at pi/2 and below the horizon none
    returns: G [W/m2], within some 5 to 10 % of what is measured under a clear sky, more on a mountain
    Haurwitz, J. Meteorology 2 (1945) 154 and 3 (1946) 123, as given in Reno, Hansen and Stein, SAND2012-2389
    >>> from math import pi
    >>> round(clear_sky(pi / 9)), round(clear_sky(pi / 3)), clear_sky(pi / 2)
    (969, 488, 0.0)
    """
    height = cos(zenith)
    return 1098.0 * height * exp(-0.059 / height) if height > 1e-9 else 0.0


def sun_rise(flux: float, area: float, loss: float) -> float:
    """How far above the air the sun alone holds what it shines on, in the end:
        dT = a G A / UA

    flux: a G, the sun that is taken up [W/m2]; area: A, as the sun sees it [m2]; loss: UA [W/K], above 0
    returns: [K]. Heat shed goes with T - T_air, so sun is the same as air that is warmer by this (the sol-air
    temperature of building physics, ASHRAE Fundamentals); radiation to a clear sky is left out, to the safe side
    >>> sun_rise(540.0, 0.06, 0.9)
    36.0
    """
    return flux * area / loss


def uneven(flux: float, scale: float) -> float:
    """What the sun on a deep pot counts for, where one temperature stands for all of it:
        q' = q (1 + q / q0)

    flux: q, the sun that is taken up [W/m2], 0 to 1000; scale: q0 [W/m2]; returns: q' [W/m2]
    The sun warms the skin, and what is warmer ages faster than the mean does. No theory: fitted to a model in two
    dimensions (tests/sun_model.py) of cups of 60 g to 1 kg, labels of 15 to 60 min, heats of 300 to 440 kJ/kg: within
    about 10 % of its times.
    >>> uneven(850.0, 850.0), uneven(0.0, 850.0)
    (1700.0, 0.0)
    """
    return flux * (1 + flux / scale)


def mean_rise(rise: float, loss: float, time: float) -> float:
    """How far above the air what begins as warm as the air is on the mean of its time in the sun:
        mean = dT (1 - (1 - exp(-x)) / x)        x = loss time

    rise: dT, in the end [K]; loss: UA / C [1/s]; time: [s], 0 or more; returns: [K]
    The lumped balance without reaction, integrated: dT/dt = loss (T_air + dT - T)
    >>> round(mean_rise(36.0, 1e-3, 1000.0), 3), mean_rise(36.0, 1e-3, 0.0), round(mean_rise(36.0, 1.0, 1e6), 3)
    (13.244, 0.0, 36.0)
    """
    x = loss * time
    if x < 1e-4:
        return rise * x / 2
    return rise * (1 - (1 - exp(-x)) / x)

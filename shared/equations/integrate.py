"""Integrate: conversion and temperature of a pot over time, by a stiff method with its own step control.

RODAS3, a Rosenbrock method of order 3 with an embedded one of order 2, stiffly accurate and L-stable: Sandu, Verwer,
Blom, Spee, Carmichael and Potra, Atmos. Environ. 31 (1997) 3459. A thin film sheds heat a thousand times faster than it
cures; an explicit method would creep there, this one does not. Plain floats and local names: a phone runs this.
"""
from collections import namedtuple
from math import exp

from .kinetics import GAS_CONSTANT

MOST_STEPS = 3000
NEAR_TOP = 0.02  # of the time that passed: the longest step across a top
LONGEST = 30 * 86400.0  # s; what has not happened in a month is not a pot

# first, grown: k1, k2 [1/s] at the reference temperature [K]; first_energy, grown_energy: E1, E2 [J/mol]
Rates = namedtuple("Rates", ("first", "grown", "first_energy", "grown_energy", "reference"))
# rise: Q m / C [K], of full conversion; loss: UA / C [1/s]; air, start: [K]
Pot = namedtuple("Pot", ("rise", "loss", "air", "start"))
# reached: time to the wanted conversion or heat [s], or None; temperature_then [K]; peak [K], peak_time [s]
# points: (time, temperature, conversion); steps: taken and refused
Run = namedtuple("Run", ("reached", "temperature_then", "peak", "peak_time", "conversion", "points", "steps"))


def pot_run(rates: Rates, pot: Pot, wanted: float, hot: float = 1e9, whole: bool = False, until: float = LONGEST,
            tolerance: float = 1e-3, top: "float | None" = None) -> Run:
    """A pot from mixing on, conversion a and temperature T:
        da/dt = (k1(T) + k2(T) a) (1 - a)**2        k(T) = k exp(-E/R (1/T - 1/T_ref))
        dT/dt = rise da/dt - loss (T - T_air)

    wanted: conversion [-] whose time is asked, 0 to below 1
    hot: temperature [K] that ends it before that conversion does, above the start
    whole: go on past it, until the peak is well behind; otherwise stop there
    until: [s], the latest time; tolerance: of one step, relative, 1e-6 to 1e-2
    top: where it is whole for its peak alone: it ends there, or at this temperature [K]. Beyond a third converted,
    where no rate grows any more, a mix that cools gets no hotter again.
    returns: a Run; at the usual tolerance times are good to 1 %, against LSODA, for k1/k2 of 0.02 to 0.2: peak_time
    too, of a whole run whose peak stands 3 K or more above air and start. A pot that sheds hardly any heat still climbs
    when it is 97 % converted: its run ends there, its peak is too low by up to 3 % of the rise, its time too early.
    One function: its loop is most of the time of a key press, and on a phone each call in it costs as much as its sums.
    >>> rates = Rates(1e-5, 3e-4, 58600, 50000, 296.15)
    >>> run = pot_run(rates, Pot(175.0, 0.15 / 600, 293.15, 293.15), 0.577, whole=True)
    >>> abs(run.peak - 273.15 - 168.69) < 0.6, abs(run.reached / 5868.04 - 1) < 0.004
    (True, True)
    """
    k1_ref, k2_ref, reference = rates.first, rates.grown, rates.reference
    e1, e2 = rates.first_energy / GAS_CONSTANT, rates.grown_energy / GAS_CONSTANT
    one_energy = e1 == e2
    rise, loss, air = pot.rise, pot.loss, pot.air
    inverse, tiny = 1 / reference, k1_ref / k2_ref if k2_ref else 1.0
    if tiny < 1e-3:
        tiny = 1e-3
    a, temp, time = 0.0, pot.start, 0.0
    base = (air if air > temp else temp) + 1  # a top below it is none
    peak, peak_time, peaked = temp, 0.0, False
    reached, temperature_then = None, None
    points, steps = [(0.0, temp, 0.0)], 0
    f1 = exp(e1 * (inverse - 1 / temp))
    k1 = k1_ref * f1
    k2 = k2_ref * (f1 if one_energy else exp(e2 * (inverse - 1 / temp)))
    rate = k1
    slope = rise * rate - loss * (temp - air)
    # the first step: a tenth of the time to the first turning of the curve, or of the time the pot follows the air
    step = 0.1 * tiny / rate if rate > 0 else 1.0
    if step > until:
        step = until
    while steps < MOST_STEPS and time < until:
        if time + step > until:
            step = until - time
        steps += 1
        left = 1 - a
        # the Jacobian, by hand
        rate_a = (k2 * left - 2 * (k1 + k2 * a)) * left
        rate_t = (k1 * e1 + k2 * e2 * a) * left * left / (temp * temp)
        diagonal = 2 / step
        m11, m12 = diagonal - rate_a, -rate_t
        m21, m22 = -rise * rate_a, diagonal - rise * rate_t + loss
        over = 1 / (m11 * m22 - m12 * m21)
        m11, m12, m21, m22 = m22 * over, -m12 * over, -m21 * over, m11 * over
        per = 1 / step
        # stage 1, and stage 2 at the same place
        u1, v1 = m11 * rate + m12 * slope, m21 * rate + m22 * slope
        x, y = rate + 4 * per * u1, slope + 4 * per * v1
        u2, v2 = m11 * x + m12 * y, m21 * x + m22 * y
        # stage 3
        b, t = a + 2 * u1, temp + 2 * v1
        if t < 100:
            t = 100.0
        f1 = exp(e1 * (inverse - 1 / t))
        f2 = f1 if one_energy else exp(e2 * (inverse - 1 / t))
        left = 1 - b
        r = (k1_ref * f1 + k2_ref * f2 * b) * left * left
        x, y = r + per * (u1 - u2), rise * r - loss * (t - air) + per * (v1 - v2)
        u3, v3 = m11 * x + m12 * y, m21 * x + m22 * y
        # stage 4, whose increment is the error
        b, t = b + u3, t + v3
        if t < 100:
            t = 100.0
        f1 = exp(e1 * (inverse - 1 / t))
        f2 = f1 if one_energy else exp(e2 * (inverse - 1 / t))
        left = 1 - b
        r = (k1_ref * f1 + k2_ref * f2 * b) * left * left
        x = r + per * (u1 - u2 - 2.6666666666666665 * u3)
        y = rise * r - loss * (t - air) + per * (v1 - v2 - 2.6666666666666665 * v3)
        u4, v4 = m11 * x + m12 * y, m21 * x + m22 * y
        miss_a, miss_t = u4 / (tiny + a), v4 / 20
        if miss_a < 0:
            miss_a = -miss_a
        if miss_t < 0:
            miss_t = -miss_t
        miss = (miss_a if miss_a > miss_t else miss_t) / tolerance
        grow = 0.9 * miss ** -0.3333333333333333 if miss > 1e-6 else 5.0
        if miss > 1.0:
            step *= grow if grow > 0.2 else 0.2
            continue
        b, t = b + u4, t + v4
        f1 = exp(e1 * (inverse - 1 / t))
        k1 = k1_ref * f1
        k2 = k2_ref * (f1 if one_energy else exp(e2 * (inverse - 1 / t)))
        left = 1 - b
        new_rate = (k1 + k2 * b) * left * left
        new_slope = rise * new_rate - loss * (t - air)
        if slope > 0 >= new_slope and t > base and step > NEAR_TOP * time:
            step *= 0.25  # the top lies in it: again in small steps, so that its time is known as well as the others
            continue
        if reached is None and (b >= wanted or t >= hot):
            part = _crossing(a, b, rate, new_rate, step, wanted) if b >= wanted else 1.0
            # a step far longer than the pot takes to follow the air has ends that hold, and a cubic that does not
            smooth = step * loss < 1
            if t >= hot > temp:
                warm = _crossing(temp, t, slope, new_slope, step, hot) if smooth else (hot - temp) / (t - temp)
                part = min(part, warm)
            reached = time + part * step
            temperature_then = (_cubic(temp, t, slope, new_slope, step, part) if smooth
                                else temp + part * (t - temp))
            if not whole:
                a = _cubic(a, b, rate, new_rate, step, part)
                points.append((reached, temperature_then, a))
                if temperature_then > peak:
                    peak, peak_time = temperature_then, reached
                break
        if slope > 0 >= new_slope and step * loss < 1:
            part = _top(temp, t, slope, new_slope, step)
            top = _cubic(temp, t, slope, new_slope, step, part)
            if top > peak:
                peak, peak_time, peaked = top, time + part * step, True
                points.append((peak_time, peak, a + part * (b - a)))
        elif t > peak:
            peak, peak_time = t, time + step
        elif slope > 0 >= new_slope:
            peaked = True
        time += step
        a, temp, rate, slope = b, t, new_rate, new_slope
        points.append((time, temp, a))
        if top is not None and (temp >= top or (slope <= 0 and 3 * a > 1)):
            break
        if whole and reached is not None and (a > 0.97 or (peaked and time > 2 * peak_time)) and time > 1.6 * reached:
            break
        step *= grow if grow < 5.0 else 5.0
    return Run(reached, temperature_then, peak, peak_time, a, points, steps)


def _cubic(before: float, after: float, slope: float, new_slope: float, step: float, part: float) -> float:
    """The Hermite cubic through both ends of a step, at a part 0..1 of it."""
    rest = 1 - part
    return (before * rest * rest * (1 + 2 * part) + after * part * part * (1 + 2 * rest)
            + step * part * rest * (slope * rest - new_slope * part))


def _crossing(before: float, after: float, slope: float, new_slope: float, step: float, wanted: float) -> float:
    """Where in a step the cubic passes `wanted`, by halving: it does not matter how it bends."""
    low, high = 0.0, 1.0
    for _ in range(20):
        middle = (low + high) / 2
        if _cubic(before, after, slope, new_slope, step, middle) < wanted:
            low = middle
        else:
            high = middle
    return (low + high) / 2


def _top(before: float, after: float, slope: float, new_slope: float, step: float) -> float:
    """Where in a step the cubic is highest: the slope goes from above nought to below it."""
    low, high = 0.0, 1.0
    for _ in range(16):
        middle = (low + high) / 2
        rest = 1 - middle
        steep = (6 * (after - before) / step * middle * rest + slope * rest * (rest - 2 * middle)
                 + new_slope * middle * (middle - 2 * rest))
        if steep > 0:
            low = middle
        else:
            high = middle
    return (low + high) / 2

"""Maturity: time at changing temperatures counted as time at one, and when a wanted age is reached."""
from math import cos, exp, pi

from ..catalogue.cure_times import COLDEST, WARMEST
from .kinetics import GAS_CONSTANT, rate_factor
from .types import Figures, Function

DAY = 86400.0
FINE, COARSE = 900.0, 3600.0  # s, steps of the sum within the first day and after it
LONGEST = 30 * DAY


def equivalent_age(steps: "list | tuple", energy: float, reference: float, lowest: float = 0.0) -> float:
    """Time at the reference temperature that cures as much, Arrhenius:
        t_e = sum(exp(-E/R (1/T - 1/T_ref)) dt)

    steps: (temperature [K], duration [s]) pairs; energy: E [J/mol]; reference: T_ref [K]
    lowest: [K], a colder step counts nothing
    returns: t_e [s]; Freiesleben Hansen and Pedersen (1977), ASTM C1074 (there for concrete, with Q = E/R)
    >>> round(equivalent_age(((283.15, 36000.0),), 5000 * GAS_CONSTANT, 293.15) / 3600, 6)
    5.475123
    """
    total = 0.0
    for temperature, duration in steps:
        if temperature >= lowest - 1e-9:
            total += rate_factor(energy, temperature, reference) * duration
    return total


def reached(temperature_at: Function, wanted: "list | tuple", energy: float, reference: float, lowest: float,
            until: float = LONGEST) -> tuple:
    """When each wanted equivalent age is reached -> (times [s] or None, as `wanted` goes; seconds without credit).

    temperature_at: time [s] -> [K]; wanted: ages [s]; a time without credit counts until the last age, or `until`
    The sum of `equivalent_age` in steps of a quarter of an hour, after a day of an hour, temperature at their middle.
    >>> [round(time / 3600, 3) for time in reached(lambda time: 298.15, (3600.0, 7200.0), 55000, 298.15, 285.15)[0]]
    [1.0, 2.0]
    """
    if not wanted:
        return [], 0.0
    times, lost = [None] * len(wanted), 0.0
    time, age, left = 0.0, 0.0, len(wanted)
    steepness, inverse = energy / GAS_CONSTANT, 1 / reference
    following = min(wanted)
    while left and time < until:
        step = FINE if time < DAY else COARSE
        temperature = temperature_at(time + step / 2)
        if temperature < lowest - 1e-9:
            lost += step
            time += step
            continue
        rate = exp(steepness * (inverse - 1 / temperature))
        after = age + rate * step
        if after >= following * (1 - 1e-12):
            for place, aim in enumerate(wanted):
                if times[place] is None and after >= aim * (1 - 1e-12):
                    times[place] = time + (aim - age) / rate
                    left -= 1
            if left:
                following = min([aim for aim, found in zip(wanted, times) if found is None])
        time, age = time + step, after
    return times, lost


def warmest_held(steps: "list | tuple", wanted: float, energies: tuple, reference: float) -> "float | None":
    """The highest temperature that was held: what was cured at it and above it adds up to a wanted age.

    steps: (temperature [K], duration [s]) pairs; wanted: [s] at the reference temperature
    energies: E [J/mol], the slowest of them counts at each temperature; reference: T_ref [K]
    returns: [K], None where all of it is not enough; the sum of `equivalent_age` from the warmest down
    >>> steps = ((290.0, 400 * 3600.0), (323.15, 5 * 3600.0), (300.0, 60 * 3600.0))
    >>> warmest_held(steps, 8 * 3600.0, (55000.0,), 323.15), warmest_held(steps, 4 * 3600.0, (55000.0,), 323.15)
    (300.0, 323.15)
    """
    age = 0.0
    for temperature, duration in sorted(steps, key=lambda step: (-step[0], step[1])):
        age += min([rate_factor(energy, temperature, reference) for energy in energies]) * duration
        if age >= wanted * (1 - 1e-9):
            return temperature
    return None


def between_points(points: Figures) -> Function:
    """Temperature at any time: straight between typed points, the last one held.

    points: (time [s], temperature [K]) pairs, times growing, the first at 0
    >>> between_points(((0.0, 290.0), (3600.0, 280.0)))(1800.0)
    285.0
    """
    def at(time: float) -> float:
        before = points[0]
        for after in points[1:]:
            if time < after[0]:
                return before[1] + (after[1] - before[1]) * (time - before[0]) / (after[0] - before[0])
            before = after
        return before[1]

    return at


def through_days(low: float, high: float, start: float) -> Function:
    """Temperature at any time of days that are all alike: half a cosine from the coldest hour to the warmest, and back.

    low, high: [K]; start: of the time [s after midnight]; coldest at 5, warmest at 15 o'clock
    >>> at = through_days(280.0, 290.0, 5 * 3600.0)
    >>> at(0.0), round(at(10 * 3600.0), 9), round(at(5 * 3600.0), 9)
    (280.0, 290.0, 285.0)
    """
    rising = WARMEST - COLDEST

    def at(time: float) -> float:
        since = (start + time - COLDEST) % DAY
        part = since / rising if since <= rising else 1 + (since - rising) / (DAY - rising)
        return low + (high - low) * (1 - cos(pi * part)) / 2

    return at

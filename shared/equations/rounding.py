"""Rounding: decimals and whole counts that are alike on every runtime, and to the side that is asked for."""
from math import floor

NEAREST, DOWN, UP = "nearest", "down", "up"
TENS = (1, 10, 100, 1000, 10000, 100000, 1000000, 10000000, 100000000, 1000000000)
FIGURES = 15  # a float holds no more: the digits behind them are noise, and not the same on every runtime


def shown(value: float, places: int = 0, toward: str = NEAREST) -> str:
    """Decimal text, alike on every runtime: DOWN for a limit, UP for an amount to have, ties away from zero.

    value: finite, any unit; places: decimals, 0 to 9; toward: NEAREST, DOWN or UP
    A value within a millionth of the last digit of a step counts as on it: the runtimes' last bit decides
    nothing.

    >>> shown(0.25, 1), shown(2.675, 2), shown(-0.04, 1), shown(0.29, 2, DOWN)
    ('0.3', '2.68', '0.0', '0.29')
    """
    scaled, slack = abs(value) * TENS[places], 1e-6
    if toward == NEAREST:
        whole = floor(scaled + 0.5 + slack)
    elif (toward == UP) == (value >= 0):
        whole = -floor(slack - scaled)  # away from zero
    else:
        whole = floor(scaled + slack)
    digits = str(whole)
    if len(digits) > FIGURES:
        digits = digits[:FIGURES] + "0" * (len(digits) - FIGURES)
    if places:
        if len(digits) <= places:
            digits = "0" * (places + 1 - len(digits)) + digits
        digits = digits[:-places] + "." + digits[-places:]
    return "-" + digits if value < 0 and whole else digits


def to_step(value: float, step: float, toward: str = NEAREST) -> float:
    """The multiple of `step` beside a value: what a display or a graduation can show.

    value, step: same unit, step above 0; toward: NEAREST (ties away from zero), DOWN or UP

    >>> to_step(184.6, 1.0), to_step(55.4, 5.0, UP), to_step(0.29, 0.1, DOWN)
    (185.0, 60.0, 0.2)
    """
    count = float(shown(value / step, 0, toward))
    per = 1 / step
    nearest = floor(per + 0.5)
    # a step of 0.1 is a tenth: count / 10 is exact where count * 0.1 is not
    return count / nearest if nearest and abs(per - nearest) < 1e-9 * per else count * step


def to_places(value: float, places: int) -> float:
    """A value as it is told with so many decimals, read back: what somebody types who reads it.

    >>> to_places(59.147, 1), to_places(59.147, 0)
    (59.1, 59.0)
    """
    return float(shown(value, places))


def decimals(step: float, most: int) -> int:
    """How many decimals the steps of a display or of marks have, at most so many.

    step: from one reading to the next, in the unit that is shown, above 0
    >>> decimals(0.1, 4), decimals(5.0, 4), decimals(1 / 3, 4)
    (1, 0, 4)
    """
    places = 0
    while places < most and abs(to_places(step, places) - step) > 1e-6 * step:
        places += 1
    return places


def ceiling(value: float) -> int:
    """The least whole number at or above a computed value, blind to the runtimes' last bits.

    >>> ceiling(3.0000000001), ceiling(3.01)
    (3, 4)
    """
    return int(shown(value, 0, UP))


def bare(value: float, places: int, toward: str = NEAREST) -> str:
    """`shown` without noughts behind the last figure that says something.

    >>> bare(75.0, 1), bare(0.25, 2)
    ('75', '0.25')
    """
    text = shown(value, places, toward)
    if places:
        while text.endswith("0"):
            text = text[:-1]
        if text.endswith("."):
            text = text[:-1]
    return text

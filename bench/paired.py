"""Two things measured in turn, so that whatever else the machine does falls on both of them alike."""
from collections.abc import Callable
from dataclasses import dataclass
from statistics import median, quantiles


@dataclass(frozen=True)
class Ratio:
    """How many times as long one thing takes as the other: the median over the pairs, and its middle half."""

    middle: float
    low: float
    high: float

    def __str__(self):
        return f"{short(self.middle)} ({short(self.low)} to {short(self.high)})"


def ratio(pairs: list[tuple[float, float]]) -> Ratio:
    """The ratio of times measured in pairs: (of the thing, of what it is held against).

    >>> print(ratio([(2.0, 1.0), (3.0, 1.0), (40.0, 10.0), (2.0, 1.0), (6.0, 2.0)]))
    3.0 (2.0 to 3.0)
    """
    found = [one / other for one, other in pairs]
    low, _, high = quantiles(found, n=4, method="inclusive")
    return Ratio(median(found), low, high)


def in_turn(one: Callable[[], float], other: Callable[[], float], times: int) -> Ratio:
    """Both asked `times` times in turn, each answering how long it took; a first time of each is not counted."""
    one(), other()
    return ratio([(one(), other()) for _ in range(times)])


def short(value: float) -> str:
    """Two figures that mean something.

    >>> short(1234.5), short(56.7), short(1.234), short(0.0567)
    ('1200', '57', '1.2', '0.057')
    """
    text = f"{value:.2g}"
    return f"{float(text):.0f}" if value >= 10 else text if "." in text else text + ".0"

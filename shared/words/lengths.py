"""Lengths as a builder reads them off a rule: tenths of a millimetre, centimetres of a metre, no empty noughts."""
from .numbers import NEAREST, bare
from .units import FOOT, INCH, US


def mm(value: float, system: str, toward: str = NEAREST) -> str:
    """A short length [m] in mm, in US units in inches.

    >>> mm(0.075, "metric"), mm(0.01449, "metric"), mm(0.075, "us")
    ('75 mm', '14.5 mm', '2.95 in')
    """
    if system == US:
        return bare(value / INCH, 2, toward) + " in"
    return bare(value * 1000, 1, toward) + " mm"


def ranged(values, system, toward=NEAREST):
    """The least and the most of some short lengths: "16.2 to 29.5 mm"."""
    low, high = mm(min(values), system, toward), mm(max(values), system, toward)
    return low if low == high else low.partition(" ")[0] + " to " + high


def radii(sizes, system: str) -> str:
    """Radii of spreaders, whole millimetres.

    >>> radii((12, 15), "metric"), radii((12, 15), "us")
    ('R 12, R 15 mm', 'R 0.47, R 0.59 in')
    """
    each = [mm(size / 1000, system).partition(" ") for size in sizes]
    return ", ".join(["R " + size for size, _, _ in each]) + " " + each[0][2]


def metres(value: float, system: str, toward: str = NEAREST) -> str:
    """A length along a seam [m] in m, in US units in feet.

    >>> metres(2.4, "metric"), metres(2.4, "us"), metres(12.3456, "metric", "up")
    ('2.4 m', '7.87 ft', '12.35 m')
    """
    if system == US:
        return bare(value / FOOT, 2, toward) + " ft"
    return bare(value, 2, toward) + " m"

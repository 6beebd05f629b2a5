"""Density doubt: how far a ratio may be off that goes from volumes to weights, or back, by densities of two liquids."""
from math import sqrt

from .weighing import COVERAGE


def ratio_doubt(widths: "list[float] | tuple[float, ...]") -> float:
    """Expanded uncertainty of a ratio of two amounts, from the densities that lead to it:
        U / R = k sqrt(sum(w_i**2) / 12),  k = 2

    widths: w_i [-], of all between which each density (or mass of an equal volume) may lie, over its middle
    returns: U / R [-]; each is taken as a rectangle and as independent of the others; below some 0.2, where a quotient
        is still straight; JCGM 100:2008, 4.3.7 and 5.1.2
    >>> round(ratio_doubt((0.08 / 1.14, 0.12 / 0.99)), 4)
    0.0809
    """
    return COVERAGE * sqrt(sum([width * width for width in widths]) / 12)


def furthest(first: tuple[float, float], other: tuple[float, float], told: float) -> tuple[float, float]:
    """How far the ratio of the other to the first lies off the one that is told, at the corners: (least, most) [-].

    first, other: (least, most) of each density [kg/m3]; told: the ratio of the other to the first [-]
    >>> low, high = furthest((1100.0, 1180.0), (930.0, 1050.0), 980 / 1150)
    >>> round(low, 3), round(high, 3)
    (-0.075, 0.12)
    """
    return other[0] / first[1] / told - 1, other[1] / first[0] / told - 1

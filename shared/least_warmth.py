"""Least warmth: the temperature below which a hardener may stop for good."""
from .catalogue.windows import LOWEST


def least_warmth(system):
    """The lowest working temperature [K] and whether it is only remembered.

    >>> least_warmth({"lowest": None, "speed": "fast"})
    (278.15, True)
    """
    if system["lowest"] is not None:
        return system["lowest"], False
    return dict([(row[0], row[1]) for row in LOWEST])[system["speed"]], True

"""Lowest: the temperature below which a hardener may stop for good."""
from .catalogue.windows import LOWEST


def lowest(system):
    """The lowest working temperature [K] and whether it is only remembered.

    >>> lowest({"lowest": None, "speed": "fast"})
    (278.15, True)
    """
    if system["lowest"] is not None:
        return system["lowest"], False
    return dict([(row[0], row[1]) for row in LOWEST])[system["speed"]], True

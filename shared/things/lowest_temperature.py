"""Least warmth: the temperature below which a hardener may stop for good."""
from ..catalogue.windows import LOWEST


def least_warmth(system):
    """The lowest working temperature [K] and how it is known where the label does not give it, "" where it does.

    Of a hardener whose speed is not known it is the highest of all, the safe side.
    >>> least_warmth({"lowest": None, "speed": "fast"}), least_warmth({"lowest": None, "speed": ""})[0]
    ((278.15, 'from memory'), 291.15)
    """
    if system["lowest"] is not None:
        return system["lowest"], ""
    known = dict([(row[0], row[1]) for row in LOWEST])
    if system["speed"]:
        return known[system["speed"]], "from memory"
    return max(known.values()), "a slow hardener's, from memory; type the label's"

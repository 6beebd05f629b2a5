"""Lowest temperature: the temperature below which a hardener may stop for good."""
from ..catalogue.pot_life import LOWEST
from ..forms.types import Said
from ..words.messages import message, quantity


def lowest(system: dict) -> float:
    """The lowest working temperature [K]; of a hardener whose speed is not known the highest of all, the safe side.

    >>> lowest({"lowest": None, "speed": "fast"}), lowest({"lowest": None, "speed": ""})
    (278.15, 291.15)
    """
    if system["lowest"] is not None:
        return system["lowest"]
    known = dict([(row[0], row[1]) for row in LOWEST])
    return known[system["speed"]] if system["speed"] else max(known.values())


def lowest_mark(system: dict) -> Said:
    """How it is known where the label does not give it, "" where it does.

    >>> lowest_mark({"lowest": None, "speed": "fast"}), lowest_mark({"lowest": 278.15, "speed": ""})
    ('mark-from-memory', '')
    """
    if system["lowest"] is not None:
        return ""
    return "mark-from-memory" if system["speed"] else "lowest-known-by.slow"


def lowest_said(system: dict) -> Said:
    """The lowest working temperature, and how it is known where the label does not give it."""
    told, mark = quantity(lowest(system), "degC", places=0), lowest_mark(system)
    return message("lowest-known-by", temperature=told, mark=mark) if mark else told

"""Powders: the row of a powder, by what a filler is called."""
from ..catalogue.dusts import POWDERS
from ..words.numbers import small


def powder(name: str) -> "tuple | None":
    """The row of a powder by its key or the first words of its label, or None.

    >>> powder("Fumed silica")[0], powder("silica")[0], powder("glass-spheres")[0], powder("flour of nothing")
    ('silica', 'silica', 'glass-spheres', None)
    """
    asked = " ".join([word for word in small(name).replace("_", " ").replace("-", " ").split(" ") if word])
    for row in POWDERS:
        label = small(row[1])
        if asked and (asked == row[0].replace("-", " ") or asked == label or asked[:len(label) + 1] == label + ","):
            return row
    return None

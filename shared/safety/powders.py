"""Powders: the row of a powder, by what a filler is called."""
from ..catalogue.dusts import CALLED, POWDERS
from ..words.numbers import small


def powder(name: str) -> "tuple | None":
    """The row of a powder by its key, by its label, or by a word in what a builder calls it; or None.

    >>> [powder(name) and powder(name)[0] for name in ("Fumed silica", "glass-spheres", "Flocks of cotton", "flour")]
    ['silica', 'glass-spheres', 'cotton', None]
    """
    asked = [word for word in small(name.replace("_", " ").replace("-", " ").replace(",", " ")).split(" ") if word]
    rows = dict([(row[0], row) for row in POWDERS])
    key = "-".join(asked)
    if key in rows:
        return rows[key]
    for key, words in CALLED:
        if [word for word in asked if word in words or word.rstrip("s") in words]:
            return rows[key]
    return None

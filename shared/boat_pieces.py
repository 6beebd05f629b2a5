"""Boat pieces: the seams of the boat as pieces of a plan, in the order in which the boat lists them."""
from . import seam
from .numbers import UP, shown

MOST = 60  # what a plan takes


def lead(values, work):
    """To a plan of these seams. work: as `hull.seams` gives it; every copy is a piece; a seam without putty or tape
    is none, the plan has nothing to time there. None where nothing is left."""
    pairs, place = [], 0
    for row, _, made, _, _ in work:
        wet = made.wet_out + made.ply_takes + values["tray"] * made.taped
        if made.putty <= 0 or wet <= 0 or made.length <= 0:
            continue
        putty = seam.placed(made.putty * values["putty_density"], values["tooling"])
        copies = int(row["copies"])
        for copy in range(copies):
            if place == MOST:
                break
            own = "pieces.{}.".format(place)
            name = (row["name"] or "Joint " + str(row["place"] + 1)) + (" " + str(copy + 1) if copies > 1 else "")
            pairs += [[own + "name", name], [own + "length", shown(made.length, 2, UP) + " m"],
                      [own + "putty", per_metre(putty, made.length)], [own + "wet", per_metre(wet, made.length)]]
            place += 1
    return {"label": "Plan these seams", "screen": "plan", "pairs": pairs} if pairs else None


def per_metre(mass: float, length: float) -> str:
    """A mass over a length as typed text, rounded up.

    >>> per_metre(0.3333, 2.0)
    '167 g/m'
    """
    return shown(mass / length * 1000, 0, UP) + " g/m"

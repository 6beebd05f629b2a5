"""Boat rows: a row of the boat, as it was read, to the spec of its seam."""
from math import pi

from ..equations import changing_angle
from ..forms.memo import once
from ..forms.types import Values
from ..seam import seam
from ..words.numbers import small

OWN = ("flank", "least", "overlap", "stagger", "reach", "fraction", "fibre_density", "resin_density", "ply",
       "ply_margin", "ply_takes", "prime", "weave")  # inputs of the joint that hold for the whole boat


def faces(text: str) -> list[str]:
    """The faces that layers go on, from typed words; "" for a word that names none, each face where nothing is typed.

    >>> faces("each : Out"), faces("innen"), faces(""), faces("up")
    (['all', 'second'], ['first'], ['all'], [''])
    """
    return [dict(seam.SPELT).get(small(word.strip(" ")), "") for word in text.split(":")] if text else [seam.EACH]


def spec_of(row: Values, values: Values) -> seam.Spec:
    """The seam's spec of one row, made once to be checked and to be worked out."""
    return once(values, "spec " + str(row["place"]), lambda: _spec_of(row, values))


def _spec_of(row: Values, values: Values) -> seam.Spec:
    sides, given = faces(row["faces"]), dict(values)
    given.update(row)
    if row.get("radius"):
        given["sized"] = "radius"
    layers = [seam.Tape(_nth(row["width"], place), _nth(row["weight"], place), _nth(sides, place))
              for place in range(int(row["layers"]))]
    stations = changing_angle.spread(row["angle"] if row["kind"] in seam.CORNERS else (pi,), row["length"])
    return seam.spec_of(given, stations, tuple(layers))


def _nth(given: "tuple | list", place: int) -> "float | str":
    """One for each layer; the last stands for the rest."""
    return given[min(place, len(given) - 1)]

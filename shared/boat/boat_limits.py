"""Counting: what of a boat is told one by one, and how many of it one answer takes.

Each limit is on a product of inputs (copies x layers x length by reach, joints x angles), because each input by itself
is within its own. An answer within them is worked out on a slow phone in a second.
"""
from ..catalogue.plans import MOST_ANGLES, MOST_CUT, MOST_FACES, MOST_ROLLS, WIDEST_PACKS
from ..equations import tape
from ..forms.errors import InputError
from ..forms.types import Values
from ..seam import seam
from ..words.lengths import metres

SPLIT = "or split the boat in two, each half a boat by itself"


def grouped(number: int) -> str:
    """A whole number for people, its thousands apart.

    >>> grouped(999), grouped(65600), grouped(1000000)
    ('999', '65,600', '1,000,000')
    """
    text, found = str(number), ""
    while len(text) > 3:
        text, found = text[:-3], "," + text[-3:] + found
    return text + found


def _heaviest(counts: list, rows: list) -> tuple:
    """The row that counts most, and how it is called."""
    place = max(range(len(rows)), key=lambda place: (counts[place], -place))
    return rows[place], rows[place]["name"] or "Joint {}".format(rows[place]["place"] + 1)


def angles(rows: list) -> None:
    """Each angle along a seam is worked out by itself; InputError where the rows have too many of them in all."""
    counts = [len(row["angle"]) if row["kind"] in seam.CORNERS else 0 for row in rows]
    if sum(counts) > MOST_ANGLES:
        row, name = _heaviest(counts, rows)
        raise InputError("joints.{}.angle".format(row["place"]), "{}: all joints together have {} angles, at most {} "
                         "are worked out at once. Type fewer along a seam, {}".format(
                             name, grouped(sum(counts)), MOST_ANGLES, SPLIT))


def pieces_of(row: Values, spec: seam.Spec, made: seam.Seam) -> int:
    """Pieces of tape and peel ply of one joint, every copy."""
    taped = [face for face in made.faces if face.layers]
    tapes = sum([len(layer.pieces) for face in taped for layer in face.layers])
    plies = tape.count(made.length, spec.reach, 0.0) * len(taped) if spec.ply == "yes" else 0
    return (tapes + plies) * int(row["copies"])


def pieces(values: Values, work: list) -> None:
    """What is cut and laid one by one; InputError where it is too much. work: as `hull.seams` gives it"""
    rows = [kept[0] for kept in work]
    for what, most, counts in (
        ("pieces of tape and peel ply", MOST_CUT, [pieces_of(row, spec, made) for row, spec, made, _, _ in work]),
        ("faces to work on", MOST_FACES, [len(made.faces) * int(row["copies"]) for row, _, made, _, _ in work]),
    ):
        if sum(counts) > most:
            row, name = _heaviest(counts, rows)
            field, change = ("copies", "fewer of it") if row["copies"] > 1 else ("length", "a shorter seam")
            raise InputError("joints.{}.{}".format(row["place"], field), "{}: all joints together make {} {}, one list "
                             "takes at most {}. Type {}, {}".format(
                                 name, grouped(sum(counts)), what, grouped(most), change, SPLIT))
    taped = [(row, spec, made, face) for row, spec, made, _, _ in work for face in made.faces if face.layers]
    for field, what, length in (
        ("roll", "tape", sum([sum(layer.pieces) * row["copies"] for row, _, _, face in taped
                              for layer in face.layers])),
        ("ply_roll", "peel ply", sum([made.length * row["copies"] for row, spec, made, _ in taped
                                      if spec.ply == "yes"])),
    ):
        if length > values[field] * MOST_ROLLS:
            raise InputError(field, "{} of {} are more than {} rolls of {}. Type longer rolls, {}".format(
                metres(length, values["units"]), what, MOST_ROLLS, metres(values[field], values["units"]), SPLIT))


def packs(values: Values) -> None:
    """Packs within reason of each other: each way to add them up is tried."""
    sizes = values["packs"]
    if max(sizes) > min(sizes) * WIDEST_PACKS:
        raise InputError("packs", "Resin is sold in packs of: the largest is more than {} times the smallest. Leave "
                         "one of them out".format(WIDEST_PACKS))

"""Boat limits: what of a boat is told one by one, and how many of it one answer takes.

Each limit is on a product of inputs (copies x layers x length by reach, joints x angles), because each input by itself
is within its own. An answer within them is worked out on a slow phone in a second.
"""
from ..catalogue.demo_boat import NAMES
from ..catalogue.plans import MOST_ANGLES, MOST_CUT, MOST_FACES, MOST_ROLLS, WIDEST_PACKS
from ..equations import tape
from ..forms.errors import InputError
from ..forms.types import Said, Values
from ..seam import seam
from ..surface.faces import SHEATHE
from ..words.messages import along, message, number, typed


def grouped(number: int) -> str:
    """A whole number for people, its thousands apart.

    >>> grouped(999), grouped(65600), grouped(1000000)
    ('999', '65,600', '1,000,000')
    """
    text, found = str(number), ""
    while len(text) > 3:
        text, found = text[:-3], "," + text[-3:] + found
    return text + found


def thousands(count: int) -> Said:
    """The same as it is said, with the mark of the reader's language between the thousands."""
    if count < 1000:
        return count
    return message("boat-thousands", thousands=thousands(count // 1000), rest=number(str(count + 1000)[-3:]))


def called(row: Values) -> Said:
    """How a joint is called: by its name, or by its place."""
    if row["name"] in NAMES:  # nobody typed it
        return message(NAMES[row["name"]])
    return typed(row["name"]) if row["name"] else message("boat-joint.nth", count=row["place"] + 1)


def _heaviest(counts: list, rows: list) -> Values:
    """The row that counts most."""
    return rows[max(range(len(rows)), key=lambda place: (counts[place], -place))]


def angles(rows: list) -> None:
    """Each angle along a seam is worked out by itself; InputError where the rows have too many of them in all."""
    counts = [len(row["angle"]) if row["kind"] in seam.CORNERS else 0 for row in rows]
    if sum(counts) > MOST_ANGLES:
        row = _heaviest(counts, rows)
        raise InputError("joints.{}.angle".format(row["place"]), message(
            "boat-many-angles", joint=called(row), count=thousands(sum(counts)), most=MOST_ANGLES))


def pieces_of(row: Values, spec: seam.Spec, made: seam.Seam) -> int:
    """Pieces of tape and peel ply of one joint, every copy."""
    taped = [face for face in made.faces if face.layers]
    tapes = sum([len(layer.pieces) for face in taped for layer in face.layers])
    plies = tape.count(made.length, spec.reach, 0.0) * len(taped) if spec.ply == "yes" else 0
    return (tapes + plies) * int(row["copies"])


def pieces(values: Values, work: list, laid: list) -> None:
    """What is cut and laid one by one; InputError where it is too much. work: as `hull.seams` gives it

    laid: as `boat_surfaces.laid` does
    """
    rows = [kept[0] for kept in work]
    for keys, most, counts in (
        (("boat-many-pieces.copies", "boat-many-pieces.length"), MOST_CUT,
         [pieces_of(row, spec, made) for row, spec, made, _, _ in work]),
        (("boat-many-faces.copies", "boat-many-faces.length"), MOST_FACES,
         [len(made.faces) * int(row["copies"]) for row, _, made, _, _ in work]),
    ):
        if sum(counts) > most:
            row = _heaviest(counts, rows)
            field, key = ("copies", keys[0]) if row["copies"] > 1 else ("length", keys[1])
            raise InputError("joints.{}.{}".format(row["place"], field), message(
                key, joint=called(row), count=thousands(sum(counts)), most=thousands(most)))
    strips = metres = 0.0
    for row, given, found in laid:
        if row["work"] == SHEATHE:
            strips += sum([len(cut.lengths) * cut.faces for cut in found.cuts]) * given["cloth_layers"]
            metres += found.cloth
            if strips > MOST_CUT or metres > values["roll"] * MOST_ROLLS:
                raise InputError("surfaces.{}.cloth_width".format(row["place"]), "sheathing-cloth-width.narrow")
    taped = [(row, spec, made, face) for row, spec, made, _, _ in work for face in made.faces if face.layers]
    for field, what, length in (
        ("roll", "kind-roll-of.tape",
         sum([sum(layer.pieces) * row["copies"] for row, _, _, face in taped for layer in face.layers])),
        ("ply_roll", "kind-roll-of.ply",
         sum([made.length * row["copies"] for row, spec, made, _ in taped if spec.ply == "yes"])),
    ):
        if length > values[field] * MOST_ROLLS:
            raise InputError(field, message("boat-many-rolls", length=along(length), what=what, most=MOST_ROLLS,
                                            roll=along(values[field])))


def packs(values: Values) -> None:
    """Packs within reason of each other: each way to add them up is tried."""
    sizes = values["packs"]
    if max(sizes) > min(sizes) * WIDEST_PACKS:
        raise InputError("packs", message("boat-packs-sold.wide", most=WIDEST_PACKS))

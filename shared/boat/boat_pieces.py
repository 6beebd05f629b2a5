"""Boat pieces: the seams of the boat as pieces of a plan, face by face, in the order in which the boat lists them.

Each face is a piece of its own: its cove is placed, tooled, taped and rolled by itself, so a bulkhead is twice its
length of work. A face that takes tape and no putty, or putty and no tape, is a piece too. The
outside is another plan: the hull is turned in between, when the inside has cured.
"""
from ..catalogue.plans import MOST_PIECES
from ..forms.memo import memo_of, once
from ..forms.types import Found, Values
from ..plan.batch_counts import Counted, together
from ..seam import seam
from ..things.piece_names import NTH
from ..words.messages import message, number, typed
from ..words.messages import row as words_of
from ..words.numbers import UP, ceiling, shown
from . import batches_counted
from .batches_counted import Piece, rounded
from .boat_limits import called


def leads(values: Values, work: list) -> list:
    """To the plans of these seams: the outside has its own, and so have the pieces beyond what one plan takes.

    work: as `hull.seams` gives it
    """
    return [{"label": label, "screen": "plan", "pairs": _pairs([own for own, _ in some]) + shared}
            for label, shared, some in plans(values, work)]


def plans(values: Values, work: list) -> list:
    """(label, pairs of what the boat says of its work, (as planned, piece) of each) of each plan, made once for all."""
    return once(values, "plans", lambda: _plans(values, work))


def _plans(values: Values, work: list) -> list:
    sides, shared = _sorted_once(values, work), batches_counted.handed(values)
    found = []  # type: list
    labels = ("boat-plan.insides", "boat-plan.outsides")
    if not (sides[0] and sides[1]):
        labels = ("boat-plan", "boat-plan")
    for label, pieces in zip(labels, sides):
        for first in range(0, len(pieces), MOST_PIECES):
            some, own = pieces[first:first + MOST_PIECES], label
            if len(pieces) > MOST_PIECES:
                own = message("boat-plan.part", plan=label, first=first + 1, last=first + len(some),
                              all=len(pieces))
            found.append((own, shared, [(piece[5], piece) for piece in some]))
    return found


def counts(values: Values, work: list) -> Counted:
    """How many batches all plans take: `batch_counts.Counted`."""
    return together(_each_counted(values, work))


def side_counts(values: Values, work: list) -> "tuple[Counted, Counted]":
    """The same of the insides and of the outsides."""
    each, first = _each_counted(values, work), ceiling(len(_sorted_once(values, work)[0]) / MOST_PIECES)
    return together(each[:first]), together(each[first:])


def _each_counted(values: Values, work: list) -> "list[Counted]":
    return once(values, "counted", lambda: batches_counted.each_counted(values, [
        ([own for own, _ in some], sum([piece[2] for _, piece in some]), sum([piece[3] for _, piece in some]))
        for _, _, some in plans(values, work)]))


def _sorted_once(values: Values, work: list) -> tuple:
    return once(values, "faces", lambda: sorted_faces(work, values))  # for the lines and the leads


def sorted_faces(work: list, values: Values) -> tuple:
    """Faces of all joints and copies that take putty or tape: (pieces of the first plan, pieces of the second), each
    with the `Piece` that its plan has."""
    shared, before = [values[name] for name in ("putty_density", "tooling", "tray")], memo_of(values).under("faces")
    sides = ([], [])  # type: tuple
    for kept in work:
        place = kept[0]["place"]  # on a phone one joint changes at a time
        known = before.get(place)
        if not known or known[0] is not kept or known[1] != shared:
            known = before[place] = kept, shared, _faces_of(kept, values)
        for side, own in zip(sides, known[2]):
            side.extend(own)
    return sides


def _faces_of(kept: Found, values: Values) -> tuple:
    """The same of one joint. kept: a `hull.Joint`"""
    row, spec, made, _, _ = kept
    copies, own, sides = int(row["copies"]), [], ([], [])  # type: int, list, tuple
    for face in made.faces:
        side = face.name if len(made.faces) > 1 else ""
        putty = seam.placed(face.putty * values["putty_density"], values["tooling"])
        wet = seam.wet_out(face, spec, values["tray"])
        if putty > 0 or wet > 0:
            own.append((1 if face.name in seam.LATE else 0, side, made.length, putty, wet, len(face.layers)))
    for copy in range(copies):
        name = words_of([called(row) if row["name"] else typed(NTH + " " + str(row["place"] + 1))] + (
            [copy + 1] if copies > 1 else []), " ")
        for late, side, length, putty, wet, layers in own:
            sides[late].append(((name, side), length, putty, wet, layers, _planned(
                (name, side), length, putty, wet, layers)))
    return sides


def _planned(name: tuple, length: float, putty: float, wet: float, layers: int) -> Piece:
    """A piece as its plan has it, rounded up."""
    return Piece(name, rounded(length, 2, "m", UP), _per_metre(putty, length), _per_metre(wet, length), float(layers))


def _per_metre(mass: float, length: float) -> float:
    return rounded(mass / length * 1000, 0, "g/m", UP)


def _pairs(pieces: "list[Piece]") -> list:
    """Pieces as the rows of a plan's screen are typed."""
    pairs = []
    for place, one in enumerate(pieces):
        name, face = one.name
        said = [("name", name)] + ([("face", face)] if face else [])
        said += [("length", number(shown(one.length, 2) + " m")),
                  ("putty", shown(one.putty * 1000) + " g/m"), ("wet", shown(one.wet * 1000) + " g/m")]
        said += [("layers", shown(one.layers))] if one.layers > 1 else []
        pairs += [["pieces.{}.{}".format(place, field), text] for field, text in said]
    return pairs

"""Boat pieces: the seams of the boat as pieces of a plan, face by face, in the order in which the boat lists them.

Each face is a piece of its own: its cove is placed, tooled, taped and rolled by itself, so a bulkhead is twice its
length of work. The outside is another plan: the hull is turned in between, when the inside has cured.
"""
from . import along, laminate, seam
from .lines import MORE, words
from .numbers import UP, shown
from .once import once

MOST = 60  # what a plan takes
NAMED = 3  # faces left out that are named; more are counted
LATE = ("outside", "other face")  # faces that are done when the hull or the panel is turned


def leads(values, work):
    """To the plan of these seams; where there is an outside too, to a second one. work: as `hull.seams` gives it."""
    sides = _sorted_once(values, work)[0]
    labels = ("Plan these seams, the insides", "Plan the outsides, hull turned")
    if not (sides[0] and sides[1]):
        labels = ("Plan these seams", "Plan these seams")
    return [_lead(label, pieces) for label, pieces in zip(labels, sides) if pieces]


def _sorted_once(values, work):
    return once(values, "faces", lambda: sorted_faces(work, values))  # for the lines and the leads


def sorted_faces(work, values):
    """Faces of all joints and copies: ((pieces of the first plan, pieces of the second), names of those in neither).

    A face without putty or without tape is in no plan: there the tape has no soft cove to be laid on in time.
    """
    sides, neither = ([], []), []
    for row, spec, made, _, _ in work:
        copies = int(row["copies"])
        name = row["name"] or "Joint " + str(row["place"] + 1)
        own = []
        for face in made.faces:
            side = " " + face.name if len(made.faces) > 1 else ""
            putty = seam.placed(face.putty * values["putty_density"], values["tooling"])
            wet = wet_out(face, spec, values["tray"])
            if putty > 0 and wet > 0 and made.length > 0:
                own.append((1 if face.name in LATE else 0, side, made.length, putty, wet, len(face.layers)))
            elif putty > 0 or wet > 0:
                neither.append(name + side)
        for copy in range(copies):
            number = " " + str(copy + 1) if copies > 1 else ""
            for late, side, length, putty, wet, layers in own:
                sides[late].append((name + number + side, length, putty, wet, layers))
    return sides, neither


def wet_out(face, spec, tray: float) -> float:
    """Liquid resin that one face takes [kg]: in the glass, in its peel ply, and left in the tray [kg/m2]."""
    over, length = seam.over(face, spec), along.length(spec["stations"])
    return (laminate.resin_taken_up(over.glass, spec["fraction"]) + over.ply_width * length * spec["ply_takes"]
            + tray * over.taped)


def _lead(label, pieces):
    pairs = []
    for place, (name, length, putty, wet, layers) in enumerate(pieces[:MOST]):
        own = "pieces.{}.".format(place)
        pairs += [[own + "name", name], [own + "length", shown(length, 2, UP) + " m"],
                  [own + "putty", per_metre(putty, length)], [own + "wet", per_metre(wet, length)]]
        if layers > 1:
            pairs.append([own + "layers", str(layers)])
    if len(pieces) > MOST:  # a day's work is less; who plans one must know that these are not all
        label += ": the first {} of {} pieces".format(MOST, len(pieces))
    return {"label": label, "screen": "plan", "pairs": pairs}


def lines(values, work):
    """Which faces a plan leaves out, if any."""
    sides, neither = _sorted_once(values, work)
    if not neither or not (sides[0] or sides[1]):
        return []
    text = "; ".join(neither[:NAMED])
    if len(neither) > NAMED:
        text += " and {} more".format(len(neither) - NAMED)
    return [words("not_planned", "In no plan", text, rank=MORE, part="joint",
                  rough="tape without putty or putty without tape: no soft cove to be in time for")]


def per_metre(mass: float, length: float) -> str:
    """A mass over a length as typed text, rounded up.

    >>> per_metre(0.3333, 2.0)
    '167 g/m'
    """
    return shown(mass / length * 1000, 0, UP) + " g/m"

"""Boat surfaces: coats, cloth, fairing, glue and bare fillets of a boat, each as its own move works it out."""
from collections import namedtuple

from ..catalogue.demo_boat import NAMES
from ..catalogue.demo_boat import SURFACES as DEMO
from ..catalogue.plans import WARMTH
from ..forms.errors import InputError
from ..forms.inputs import Choice, Group, Number, Text, read
from ..forms.memo import memo_of
from ..forms.types import Found, Said, Values
from ..surface import coats, faces, fairing, fillets, gluing, sheathing
from ..surface.boat_row import LIGHT, LIGHTS, OWN
from ..surface.faces import COAT, FAIR, FILLET, GAP, LAMINATE, SCARF, SHEATHE
from ..words.messages import message, typed

MOVES = {COAT: coats, SHEATHE: sheathing, FAIR: fairing, SCARF: gluing, LAMINATE: gluing, GAP: gluing,
         FILLET: fillets}
LABELS = dict(faces.WORKS)
SIZES = faces.sizes(faces.ON_FACES)
# of the boat, under the names of the surfaces
SHARED = ("resin_density", "putty_density", "tooling", "cup", "tray", "roller", "spare", "ply_takes")
FOR_ALL = ("first_coat", "later_coat", "lap", "glass_share", "fair_sanded", "bond_line")
FOLD = "boat-fold.faces"
OF_FAIRING = faces.only(FAIR)
ALSO = ("units", "system", "temperature")


def _item(name: str) -> Found:
    """An input of a surface's move, by its name."""
    for move in (coats, sheathing, fairing, gluing, fillets):
        for item in move.INPUTS:
            if item.name == name:
                return item
    raise KeyError(name)


def _fields() -> tuple:
    names = []  # type: list
    for work in (COAT, SHEATHE, FAIR, SCARF, LAMINATE, GAP, FILLET):
        names.extend([name for name in OWN[work] if name not in names])
    return (Text("name", "boat-joint-name", most=40, ours=NAMES), faces.WORK) + SIZES + tuple(
        [_item(name) for name in names]) + (
            Choice("light_filler", "fairing-light", LIGHTS, default=LIGHT, when=OF_FAIRING),
            Number("light_dose", "thicken-dose", low=0.1, high=500, optional=True, when=OF_FAIRING),
            Number("light_density", "kind-filler-density", unit="g/mL", low=0.05, high=8, optional=True,
                   when=OF_FAIRING))


ROWS = Group("surfaces", "boat-surfaces", _fields(), most=20, rows=0, each="boat-surface", numbered="surface_",
             apart=("name",), default=tuple([dict(row) for row in DEMO]))
INPUTS = tuple([_item(name).again(when=(), fold=FOLD) for name in FOR_ALL])  # for all surfaces of the boat

# row: as it was read; given: the values that its move was asked with; found: what that move found
Laid = namedtuple("Laid", ("row", "given", "found"))


def called(row: Values) -> Said:
    """How a surface is called: by its name, or by its place and work."""
    if row["name"] in NAMES:  # nobody typed it
        return message(NAMES[row["name"]])
    if row["name"]:
        return typed(row["name"])
    return message("boat-surface.nth", count=row["place"] + 1, work=LABELS[row["work"]])


def laid(values: Values) -> "list[Laid]":
    """Every surface of the boat, checked by its own move."""
    shared = [values.get(name) for name in SHARED + FOR_ALL + ALSO]
    seen, found = memo_of(values).under("surfaces"), []  # by place: on a phone one row changes at a time
    for row in values["surfaces"]:
        known = seen.get(row["place"])
        if not (known and known[0].row is row and known[1] == shared):
            known = seen[row["place"]] = _laid(row, values), shared
        found.append(known[0])
    return found


def spreaders(work: "list[Laid]") -> "list[int]":
    """The radii of the spreaders of bare fillets [mm]."""
    return [radius for one in work if one.row["work"] == FILLET for radius in fillets.spreaders(one.found)]


def _laid(row: Values, values: Values) -> Laid:
    move, given = MOVES[row["work"]], values_of(row, values)
    error = None
    try:
        for check in move.CHECKS:
            check(given)
    except InputError as caught:
        error = caught
    if error:
        raise InputError(_field(error.field, row, values),
                         message("boat-joint-refused", joint=called(row), why=error.message))
    return Laid(row, given, move.reckon(given))


def _field(name: str, row: Values, values: Values) -> str:
    """Where the boat asks what a move asks under that name."""
    own, name = "surfaces.{}.".format(row["place"]), name.split(".")[-1]
    return own + name if name in row else name if name in values else own + "work"


def values_of(row: Values, values: Values) -> Values:
    """What a move of a surface is asked for one row: its own, what holds for the boat, and what a form starts with."""
    work, units = row["work"], values["units"]
    light = row.get("light_filler", "")
    given = dict(memo_of(values).once("started surfaces", (work, units, light), lambda: read(
        MOVES[work].INPUTS, {"work": work, "units": units, "filler": light}, memo_of(values))[0]))
    for name in SHARED + FOR_ALL:
        if name in values:
            given[name] = values[name]
    for name in OWN[work]:
        given[name] = row[name]
    if work == FAIR:  # the builder's own figures go before those of the row that was chosen
        filler = given["filler"] = dict(given["filler"])
        if row["light_dose"]:
            filler["doses"] = (row["light_dose"],) * len(filler["doses"])
        filler["density"] = row["light_density"] or filler["density"]
    if "length" in row:
        given["faces"] = [row]
    given["system"] = values["system"]
    given["air"] = WARMTH if values["temperature"] is None else values["temperature"]
    given["_made"] = {}
    return given

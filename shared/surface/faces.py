"""Faces: what all moves of a surface ask: the work, the faces and how they lie, the system and the air."""
from ..catalogue.starts import AIR
from ..catalogue.surfaces import FACE, LEAN, PLY_SHEET, PLYWOOD
from ..equations.surfaces import girth_area
from ..forms.errors import InputError
from ..forms.inputs import Choice, Group, Number, Parts, Pick
from ..forms.remembered import remembered, start
from ..forms.types import Values
from ..things.records import SYSTEM
from ..words.messages import fact, message

COAT, SHEATHE, SCARF, LAMINATE, GAP, FAIR, FILLET = ("coat", "sheathe", "scarf", "laminate", "gap", "fair", "fillet")
WORKS = (
    (COAT, "surface-work.coat"), (SHEATHE, "surface-work.sheathe"), (FAIR, "surface-work.fair"),
    (SCARF, "surface-work.scarf"), (LAMINATE, "surface-work.laminate"), (GAP, "surface-work.gap"),
    (FILLET, "surface-work.fillet"))
GLUED = (SCARF, LAMINATE, GAP)
LEVEL, LEANS, UPRIGHT, UNDER = "level", "leans", "upright", "under"
SLOPES = {LEVEL: 0.0, LEANS: LEAN, UPRIGHT: 90.0, UNDER: 90.0}  # degrees
LOSSES = "joint-fold.losses"
AMOUNTS, CLOCK = "surface-fold.amounts", "surface-fold.clock"


STRENGTH_HELP = message("gluing-panel-strength.help", range=fact("MPa", *PLYWOOD[1:]))


def only(*works: str) -> tuple:
    """Asked for these works alone."""
    return (("work", works),)


WORK = Choice("work", "surface-work", WORKS)  # each move answers where it is asked
ON_FACES = only(COAT, SHEATHE, FAIR)


def sizes(when: tuple = ()) -> tuple:
    """What tells how large a face is, and how many there are of it."""
    return (
        Number("length", "surface-length", unit="m", low=0, high=100, above=True, optional=True, when=when),
        Parts("widths", "surface-widths", unit="m", low=0, high=50, least=1, most=15, optional=True, when=when,
              help="surface-widths.help"),
        Number("area", "surface-area", unit="m2", low=0, high=5000, above=True, optional=True, when=when,
               help="surface-area.help"),
        Number("count", "surface-count", low=1, high=200, whole=True, optional=True, when=when,
               help="surface-count.help"),
    )


FACES = Group("faces", "surface-faces", sizes(), most=20, least=1, each="surface-face", when=ON_FACES, default=(
    {"length": "{} m".format(PLY_SHEET), "widths": "{} m".format(FACE)},))
LIE = Choice("lie", "surface-lie", (
    (LEVEL, "surface-lie.level"), (LEANS, "surface-lie.leans"), (UPRIGHT, "surface-lie.upright"),
    (UNDER, "surface-lie.under")), when=ON_FACES)
WOOD = Choice("wood", "surface-wood", (("bare", "surface-wood.bare"), ("sealed", "surface-wood.sealed")),
              when=only(COAT, SHEATHE))
SYSTEM_USED = Pick("system", "cure-system", SYSTEM, default="3-1", when=only(COAT, SHEATHE, *GLUED))
WARMTH = Number("air", "cure-air", unit="degC", low=-10, high=50, default=start(AIR, "degC"),
                when=only(COAT, SHEATHE, *GLUED))
DENSITY = remembered("resin_density", "resin_density", "joint-resin-density", "g/mL", 0.8, 1.6, fold=AMOUNTS,
                     when=ON_FACES)
ROLLER = remembered("roller", "roller", "joint-roller", "g", 0, 500, fold=LOSSES, when=only(COAT, SHEATHE))
CUP = remembered("cup", "cup", "joint-cup", "g", 0, 500, fold=LOSSES)
SPARE = remembered("spare", "spare", "joint-spare", "%", 0, 100, fold=LOSSES)


def check_faces(values: Values) -> None:
    """A face is known by its length and width, or by its area."""
    for row in values.get("faces") or ():
        if row["area"] is None:
            for name in ("length", "widths"):
                if not row[name]:
                    raise InputError("faces.{}.{}".format(row["place"], name), "surface-faces.no-size")


def count_of(row: Values) -> int:
    """How many faces a row stands for: one, if nobody says."""
    return int(row["count"] or 1)


def area_of(row: Values) -> float:
    """Area of one of the faces of a row [m2]."""
    return row["area"] if row["area"] is not None else girth_area(row["length"], row["widths"])


def whole_area(values: Values) -> float:
    """Area of all faces [m2]."""
    return sum([area_of(row) * count_of(row) for row in values["faces"]])

"""Boat: from all its joints to what is bought, what is cut from which roll, and what it adds to the hull."""
from collections import namedtuple

from ..catalogue.demo_boat import JOINTS
from ..catalogue.glass import PLY_ROLL, TAPE_ROLL, TAPE_WEIGHT, TAPE_WIDTH
from ..catalogue.pots import SIZES
from ..catalogue.starts import BOAT_SEAM, PACKS
from ..forms.errors import InputError
from ..forms.inputs import Choice, Group, Number, Parts, Pick, Text
from ..forms.memo import memo_of, once
from ..forms.remembered import remembered, start, starts
from ..forms.types import Values
from ..mix import ratio
from ..plan import plan
from ..seam import impossible_joints, joint, seam
from ..things.records import SYSTEM
from ..words.units import braces
from . import batches_counted, boat_limits, boat_lines, boat_pieces, cut_drawing, shopping
from .boat_rows import OWN, faces, spec_of
from .hull import Totals, cuts_of, mixed, seams, totals

STOCK, WORK = "Rolls and remnants", "How it is worked"
PUTTY = ("putty_density", "tooling", "bag", "cup", "tray", "roller", "spare")


EDGES = ("clear", "bevel", "touch", "finish", "round_over")  # of one joint, and seldom asked


def _of_joint(names: tuple) -> tuple:
    return tuple([item for item in joint.INPUTS if item.name in names])


LATER, NOW = "later", "now"
FOLDS = (("buy", "Shopping list"), ("cut", "Cut list"), ("joint", "Joint by joint"), ("wall", "Cards for the wall"))
KIND = _of_joint(("kind",))[0]

INPUTS = (
    Group("joints", "Joints", (
        Text("name", "Name", most=40),
        Choice("kind", "Kind of joint", KIND.options),
        Number("thickness", "Panel thickness", unit="mm", low=0, high=60, default=start(SIZES["panel"], "mm"),
               above=True),
        Parts("angle", "Angle inside", unit="deg", low=0, high=359, least=1, most=9, default="90",
              help="One, or several along the seam: 95 : 120 : 150"),
        Parts("length", "Length", unit="m", low=0, high=200, least=1, most=8, default=starts((BOAT_SEAM,), "m"),
              help="In all, or the stretches between the angles: {0.8 : 1.4 m}"),
        Number("gap", "Gap", unit="mm", low=0, high=60, default=0),
        Number("copies", "How many", low=1, high=100, default=1, whole=True, help="Mirror images too."),
        Number("layers", "Layers of tape", low=0, high=8, default=1, whole=True),
        Parts("width", "Tape width", unit="mm", low=4, high=2000, least=1, most=8, default=str(TAPE_WIDTH),
              help="One for all layers, or one for each: {75 : 100 mm}"),
        Parts("weight", "Dry weight", unit="g/m2", low=5, high=3000, least=1, most=8, default=str(TAPE_WEIGHT)),
        Text("faces", "Faces of the layers", help="One for each layer, each, in or out: each : out. Left empty: each."),
        Number("radius", "Cove radius", unit="mm", low=1, high=300, optional=True, help="Left empty: by the rule.",
               when=joint.ROUNDED),
        Number("throat", "Throat wanted", unit="mm", low=0, high=100, above=True, optional=True,
               when=joint.ROUNDED, help="Left empty: the panel thickness."),
    ) + _of_joint(EDGES) + (
        Choice("pour", "Next batch", ((LATER, "not in it"), (NOW, "goes into it"))),
    ), most=60, each="Joint", default=tuple([dict(row) for row in JOINTS])),
    Pick("system", "Resin system", SYSTEM, default="3-1"),
    Parts("packs", "Resin is sold in packs of", unit="kg", low=0, high=500, least=1, most=3,
          default=starts(PACKS, "kg"), help="Each with its hardener in ratio."),
    Number("people", "People", low=1, high=20, default=1, whole=True, fold=WORK),
    Number("temperature", "Wood and air", unit="degC", low=-10, high=50, optional=True, fold=WORK,
           help="The batches are counted for it. Left empty: " + braces("degC", batches_counted.WARMTH) + "."),
    Number("most", "Largest mix wanted", unit="g", low=10, high=20000, optional=True, fold=WORK, was=("batch",),
           help=plan.MOST_HELP),
    remembered("filler", "filler", "Filler to {100 g} of epoxy", "g", 0, 200, fold=WORK,
               before="Wood flour for a cove. "),
    Number("roll", "Tape comes in rolls of", unit="m", low=1, high=500, default=TAPE_ROLL, fold=STOCK),
    Number("ply_roll", "Peel ply comes in rolls of", unit="m", low=1, high=500, default=PLY_ROLL, fold=STOCK),
    Group("remnants", "Remnants at hand", (
        Choice("of", "Of", (("tape", "tape"), ("ply", "peel ply"))),
        Number("width", "Width", unit="mm", low=5, high=2000, default=TAPE_WIDTH),
        Number("weight", "Dry weight", unit="g/m2", low=10, high=3000, default=TAPE_WEIGHT,
               when=(("of", ("tape",)),)),
        Number("length", "Length", unit="m", low=0, high=500),
        Text("name", "Name"),
    ), most=12, rows=0, each="Remnant", fold=STOCK,
        kept={"as": "roll", "by": "name of width weight", "left": "length"}),
    remembered("least_radius", "least", "Smallest cove radius", "mm", 1, 100, fold=WORK),
    remembered("flank", "flank", "Tape on bare panel, each side", "mm", 0, 200, fold=WORK),
) + _of_joint(OWN[2:] + PUTTY)


def check(values: Values) -> None:
    """A boat has joints, and each of them can be built."""
    if not values["joints"]:
        raise InputError("joints", "No joints yet: add the first seam. What was typed elsewhere stays")
    boat_limits.angles(values["joints"])
    for row in values["joints"]:
        _check_row(row, values)
    if values["most"] is not None and values["most"] <= values["bag"] + values["cup"]:
        raise InputError("most", "Largest mix wanted: more than what bag and cup keep")
    if values["tooling"] >= 1:
        raise InputError("tooling", "Tooling: less than everything, please")
    longest = values["roll"]
    if values["reach"] > longest:
        raise InputError("reach", "Pieces cannot be longer than a roll of tape")
    if values["ply"] == "yes" and values["reach"] > values["ply_roll"]:
        raise InputError("reach", "Pieces cannot be longer than a roll of peel ply")
    work = seams(values)
    boat_limits.pieces(values, work)
    boat_limits.packs(values)


def _check_row(row: Values, values: Values) -> None:
    """On a phone one row changes at a time: the others are known to be sound."""
    shared, sound = [values.get(name) for name in OWN], memo_of(values).under("sound joints")  # by place
    known = sound.get(row["place"])
    if known and known[0] is row and known[1] == shared:
        return
    _check_new_row(row, values)
    sound[row["place"]] = row, shared


def _check_new_row(row: Values, values: Values) -> None:
    own = "joints.{}.".format(row["place"])
    called = row["name"] or "Joint {}".format(row["place"] + 1)
    corner = row["kind"] in seam.CORNERS
    if corner and len(row["length"]) > 1 and len(row["length"]) != len(row["angle"]) - 1:
        raise InputError(own + "length", called + ": one length, or one stretch between each two angles")
    if row["kind"] == seam.STRIP and not row["layers"]:
        raise InputError(own + "layers", called + ": a reinforcement strip is tape, add a layer")
    for word in faces(row["faces"]):
        if not word:
            raise InputError(own + "faces", called + ": each, in or out for each layer, with a colon between them")
    error = None
    try:
        impossible_joints.check(spec_of(row, values), values["units"])
    except InputError as caught:
        error = caught
    if error:
        field = error.field
        if field.startswith("layers."):
            field = "width"
        elif field.startswith("stations."):
            field = "angle"
        if field not in ("angle", "gap", "layers", "width", "radius", "throat") + EDGES:
            raise InputError(field if field in values else own + "thickness", called + ": " + error.message)
        raise InputError(own + field, called + ": " + error.message)


CHECKS = (check,)


# joints: a `hull.Joint` each; sums: `hull.Totals`; mixed: `hull.Mixed`; planned: `batch_counts.Counted`
# putty: volume to mix [m3]; parts: masses to buy [kg], None where no weights are known; packs: `Packs`, None likewise
# tapes, plies: as `hull.cut_lists` gives them; added: stays on the hull [kg]; copies: seams in all; chosen: joints that
# go into the next batch; next: (putty [m3], liquid [kg]) to pour next, nothing of what one batch cannot hold
# bought: (key, how many) of what else; radii: spreaders [mm], in order
BoatResult = namedtuple("BoatResult", ("joints", "sums", "mixed", "planned", "putty", "parts", "packs", "tapes",
                                       "plies", "added", "copies", "chosen", "next", "bought", "radii"))
# rows: (how many, masses of its parts [kg]) of each size that is bought; held: of the first part [kg]; over: left of it
Packs = namedtuple("Packs", ("rows", "held", "over"))


def reckon(values: Values) -> BoatResult:
    """All joints to what is mixed, bought and cut. The plans of the seams count the batches."""
    work = seams(values)
    sums, planned = totals(work), boat_pieces.counts(values, work)
    batch = mixed(values, sums, planned, batches_counted.largest(values))
    tapes, plies = cuts_of(values, work)
    parts = ratio.basis(values["system"]).weight_parts
    shares = list(ratio.shares(parts)) if parts else []
    masses = [share * batch.all for share in shares]
    chosen = [one for one in work if one.row["pour"] == NOW]
    radii = {}  # type: dict
    for one in work:
        for radius in one.radii:
            radii[radius] = True
    return BoatResult(
        work, sums, batch, planned, batch.putty / values["putty_density"], masses or None,
        _packs(masses, list(shares), values["packs"]) if masses else None, tapes, plies,
        sums.putty * values["putty_density"] + sums.glass + sums.wet_out + sums.prime + sums.weave,
        sum([int(one.row["copies"]) for one in work]), chosen,
        _next(values, totals(chosen) if chosen else sums, bool(chosen)),
        shopping.consumables(batch, int(values["people"]), len(radii), sums.backed, sums.corners, sums.taped),
        sorted(radii))


def reckoned(values: Values) -> BoatResult:
    """The same, once for the lines, the drawings and the leads."""
    return once(values, "boat", lambda: reckon(values))


def _packs(masses: list, shares: list, sizes: tuple) -> Packs:
    counts, held = shopping.packs(masses[0], sizes)
    rows = [(count, [size * share / shares[0] for share in shares]) for count, size in zip(counts, sizes) if count]
    return Packs(rows, held, max(0.0, held - masses[0]))


def _next(values: Values, sums: Totals, chosen: bool) -> tuple:
    putty = seam.placed(sums.putty, values["tooling"])
    if putty:
        putty += (values["bag"] + values["cup"]) / values["putty_density"]
    liquid = sums.wet_out + sums.ply_takes
    if liquid:
        liquid = (liquid * (1 + values["spare"]) + values["tray"] * sums.taped + values["roller"] + values["cup"])
    if not chosen:
        most = batches_counted.largest(values) * (1 + 1e-9)
        putty = putty if putty * values["putty_density"] <= most else 0.0
        liquid = liquid if liquid <= most else 0.0
    return putty, liquid


def answer(values: Values) -> list:
    """What to buy and what it adds, then each joint, then the cut lists."""
    return boat_lines.say(reckoned(values), values)


def figures(values: Values) -> list:
    """The cut lists as strips."""
    found = reckoned(values)
    return cut_drawing.cut_figures(found.tapes, found.plies, values["units"])


def leads(values: Values) -> list:
    """The joints chosen for the next batch go to Pour; with none chosen all of them, where they make one batch. All of
    them go to the plan of a day."""
    found = reckoned(values)
    return boat_lines.pours(found) + boat_pieces.leads(values, found.joints)

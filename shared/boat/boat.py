"""Boat: from its joints and surfaces to what is bought, what is cut from which roll, and what it adds to the hull."""
from collections import namedtuple

from ..catalogue.demo_boat import JOINTS, NAMES
from ..catalogue.glass import PLY_ROLL, TAPE_ROLL, TAPE_WEIGHT, TAPE_WIDTH
from ..catalogue.pots import SIZES
from ..catalogue.starts import BOAT_SEAM, PACKS
from ..forms.errors import InputError
from ..forms.inputs import Choice, Group, Number, Parts, Pick, Text, stand_together
from ..forms.late import late
from ..forms.memo import memo_of, once
from ..forms.remembered import remembered, start, starts
from ..forms.types import Said, Values
from ..mix import ratio
from ..plan import plan
from ..seam import impossible_joints, joint, seam
from ..things.kept_words import FACES as KEPT_FACES
from ..things.kept_words import SPELT
from ..things.records import SYSTEM
from ..words.messages import fact, message
from . import batches_counted, boat_limits, boat_lines, boat_pieces, boat_surfaces, cut_drawing, phases, shopping
from .boat_layers import to_plan
from .boat_limits import called
from .boat_rows import OWN, faces, spec_of
from .hull import Totals, cuts_of, mixed, seams, side_totals, totals

STOCK, WORK = "boat-fold.stock", "boat-fold.work"
PUTTY = ("putty_density", "tooling", "bag", "cup", "tray", "roller", "spare")


EDGES = ("clear", "bevel", "touch", "finish", "round_over")  # of one joint, and seldom asked


def _of_joint(names: tuple) -> tuple:
    return tuple([item for item in joint.INPUTS if item.name in names])


LATER, NOW = "later", "now"
FOLDS = (("phase", "boat-fold.phase"), ("buy", "boat-fold.buy"), ("cut", "boat-fold.cut"), ("joint", "boat-fold.joint"),
         ("surface", "boat-surfaces"), ("wall", "boat-fold.wall"))
KIND = _of_joint(("kind",))[0]

INPUTS = (
    Group("joints", "boat-joints", (
        Text("name", "boat-joint-name", most=40, ours=NAMES),
        Choice("kind", "joint-kind", KIND.options),
        Number("thickness", "joint-thickness", unit="mm", low=0, high=60, default=start(SIZES["panel"], "mm"),
               above=True),
        Parts("angle", "joint-angle", unit="deg", low=0, high=359, least=1, most=9, default="90",
              help="boat-joint-angle.help"),
        Parts("length", "boat-joint-length", unit="m", low=0, high=200, least=1, most=8,
              default=starts((BOAT_SEAM,), "m"), help="boat-joint-length.help"),
        Number("gap", "boat-joint-gap", unit="mm", low=0, high=60, default=0),
        Number("copies", "boat-joint-copies", low=1, high=100, default=1, whole=True, help="joint-copies.help"),
        Number("layers", "joint-layers", low=0, high=8, default=1, whole=True),
        Parts("width", "boat-joint-width", unit="mm", low=4, high=2000, least=1, most=8, default=str(TAPE_WIDTH),
              help="boat-joint-width.help"),
        Parts("weight", "joint-layer-weight", unit="g/m2", low=5, high=3000, least=1, most=8,
              default=str(TAPE_WEIGHT)),
        Text("faces", "boat-joint-faces", keys=KEPT_FACES, spelt=SPELT, help="boat-joint-faces.help"),
        Number("radius", "joint-radius", unit="mm", low=1, high=300, optional=True, help="boat-joint-radius.help",
               when=joint.ROUNDED),
        Number("throat", "joint-throat-wanted", unit="mm", low=0, high=100, above=True, optional=True,
               when=joint.ROUNDED, help="joint-round-over-typed.help"),
        Number("cove_width", "joint-cove-width", unit="mm", low=1, high=500, optional=True, when=joint.ROUNDED,
               help=joint.COVE_HELP),
    ) + _of_joint(EDGES) + (
        Choice("pour", "boat-pour", ((LATER, "boat-pour.later"), (NOW, "boat-pour.now"))),
    ), most=60, each="boat-joint", numbered="joint_", apart=("name", "pour"),
        default=tuple([dict(row) for row in JOINTS])),
    boat_surfaces.ROWS,
    Pick("system", "boat-system", SYSTEM, default="3-1"),
    Parts("packs", "boat-packs-sold", unit="kg", low=0, high=500, least=1, most=3,
          default=starts(PACKS, "kg"), help="boat-packs-sold.help"),
    Parts("prices", "boat-prices", low=0, high=1000000, least=1, most=3, optional=True, help="boat-prices.help"),
    Number("people", "boat-people", low=1, high=20, default=1, whole=True, fold=WORK),
    Number("temperature", "boat-temperature", unit="degC", low=-10, high=50, optional=True, fold=WORK,
           help=message("boat-temperature.help", warmth=fact("degC", batches_counted.WARMTH))),
    Number("most", "boat-most", unit="g", low=10, high=20000, optional=True, fold=WORK, was=("batch",),
           help=plan.MOST_HELP),
    remembered("filler", "filler", "boat-filler-dose", "g", 0, 200, fold=WORK,
               before="remembered-filler.cove"),
    Number("roll", "boat-roll", unit="m", low=1, high=500, default=TAPE_ROLL, fold=STOCK),
    Number("ply_roll", "boat-ply-roll", unit="m", low=1, high=500, default=PLY_ROLL, fold=STOCK),
    Group("remnants", "boat-remnants", (
        Choice("of", "kind-roll-of", (("tape", "kind-roll-of.tape"), ("ply", "kind-roll-of.ply"),
                                      ("cloth", "kind-roll-of.cloth"))),
        Number("width", "joint-layer-width", unit="mm", low=5, high=3000, default=TAPE_WIDTH),
        Number("weight", "joint-layer-weight", unit="g/m2", low=10, high=3000, default=TAPE_WEIGHT,
               when=(("of", ("tape", "cloth")),)),
        Number("length", "boat-remnant-length", unit="m", low=0, high=500),
        Text("name", "boat-remnant-name"),
    ), most=12, rows=0, each="boat-remnant", numbered="remnant_", fold=STOCK,
        kept={"as": "roll", "by": "name of width weight", "left": "length"}),
    remembered("least_radius", "least", "boat-least", "mm", 1, 100, fold=WORK),
    remembered("flank", "flank", "joint-flank", "mm", 0, 200, fold=WORK),
) + boat_surfaces.INPUTS + _of_joint(OWN[2:] + PUTTY)
stand_together(INPUTS[0], boat_surfaces.ROWS)


def check(values: Values) -> None:
    """A boat has joints or surfaces, and each of them can be built."""
    if not (values["joints"] or values["surfaces"]):
        raise InputError("joints", "boat-joints.none")
    boat_limits.angles(values["joints"])
    shared, sound = [values.get(name) for name in OWN], memo_of(values).under("sound joints")  # by place
    for row in values["joints"]:
        known = sound.get(row["place"])  # on a phone one row changes at a time: the others are known to be sound
        if not known or known[0] is not row or known[1] != shared:
            _check_row(row, values)
            sound[row["place"]] = row, shared
    if values["most"] is not None and values["most"] <= values["bag"] + values["cup"]:
        raise InputError("most", "boat-most.little")
    if values["tooling"] >= 1:
        raise InputError("tooling", "joint-tooling-all")
    longest = values["roll"]
    if values["reach"] > longest:
        raise InputError("reach", message("boat-reach-long", what="kind-roll-of.tape"))
    if values["ply"] == "yes" and values["reach"] > values["ply_roll"]:
        raise InputError("reach", message("boat-reach-long", what="kind-roll-of.ply"))
    work = seams(values)
    boat_limits.pieces(values, work, boat_surfaces.laid(values))
    boat_limits.packs(values)
    if values["prices"] and len(values["prices"]) != len(values["packs"]):
        raise InputError("prices", "boat-prices.many")


def _check_row(row: Values, values: Values) -> None:
    own = "joints.{}.".format(row["place"])
    corner = row["kind"] in seam.CORNERS
    if corner and len(row["length"]) > 1 and len(row["length"]) != len(row["angle"]) - 1:
        raise InputError(own + "length", _of(row, "boat-joint-length.stretches"))
    if row["kind"] == seam.STRIP and not row["layers"]:
        raise InputError(own + "layers", _of(row, "boat-joint-strip-bare"))
    for word in faces(row["faces"]):
        if not word:
            raise InputError(own + "faces", _of(row, "boat-joint-faces.words"))
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
            raise InputError(field if field in values else own + "thickness", _of(row, error.message))
        raise InputError(own + field, _of(row, error.message))


def _of(row: Values, why: Said) -> Said:
    return message("boat-joint-refused", joint=called(row), why=why)


CHECKS = (check,)


# joints: a `hull.Joint` each; sums: `hull.Totals`; mixed: `hull.Mixed`; planned: `batch_counts.Counted`
# putty: volume to mix [m3]; parts: masses to buy [kg], None where no weights are known; packs: `Packs`, None likewise
# cuts: as `hull.cuts_of` gives them; added: stays on the hull [kg]; copies: seams in all; chosen: joints that
# go into the next batch; next: (putty [m3], liquid [kg]) to pour next, nothing of what one batch cannot hold
# bought: (key, how many) of what else; radii: spreaders [mm], in order; alone: `hull.Mixed` of the seams, mixed: of all
# of the boat; surfaces: a `boat_surfaces.Laid` each; phases: in order, [] of seams alone; saved: a `phases.Saved`
# cheapest: `Packs` that cost least, None without prices; kept: resin that stays on the boat [kg]
# shelf: `mix.shelf.Shelf` of what is there already, None where nobody typed it; packs are bought for the rest
BoatResult = namedtuple("BoatResult", ("joints", "sums", "mixed", "planned", "putty", "parts", "packs", "cuts",
                                       "added", "copies", "chosen", "next", "bought", "radii", "alone",
                                       "surfaces", "phases", "saved", "cheapest", "kept", "shelf"))
# rows: (how many, masses of its parts [kg]) of each size that is bought; held: of the first part [kg]; over: left of it
# cost: of all, in the money of the prices, None without prices
Packs = namedtuple("Packs", ("rows", "held", "over", "cost"))


def reckon(values: Values) -> BoatResult:
    """All joints and surfaces to what is mixed, bought and cut. The plans of the seams count their batches."""
    work, laid, people = seams(values), boat_surfaces.laid(values), int(values["people"])
    sums, planned = totals(work), boat_pieces.counts(values, work)
    alone = mixed(values, sums, planned, batches_counted.largest(values))
    parts = [part for one in laid for part in phases.of_surface(one, values)]
    more, batch = phases.together(parts), phases.whole(alone, parts, values)
    shares = ratio.mass_shares(values["system"])
    masses = [share * batch.all for share in shares]
    shelf = late("shelf").shelf(values["system"]) if shares and values["system"]["on_shelf"] else None
    rest = max(0.0, batch.all - shelf.mixes) if shelf else batch.all
    needed = [share * rest for share in shares]
    chosen = [one for one in work if one.row["pour"] == NOW]
    radii = dict([(radius, True) for one in work for radius in one.radii] +
                 [(radius, True) for radius in boat_surfaces.spreaders(laid)])
    bought = shopping.consumables(alone, people, len(radii), sums.backed, sums.corners, sums.taped)
    ordered = []  # type: list
    if laid:
        ordered = phases.in_order(phases.of_seams(
            values, side_totals(work), boat_pieces.side_counts(values, work), alone, bought) + parts)
        bought = phases.with_surfaces(bought, more, people)
    return BoatResult(
        work, sums, batch, planned, batch.putty / values["putty_density"], masses or None,
        _packs(needed, shares, values) if needed else None, cuts_of(values, work, laid),
        phases.added(sums, values) + more.stays, sum([int(one.row["copies"]) for one in work]), chosen,
        _next(values, totals(chosen) if chosen else sums, bool(chosen)), bought, sorted(radii), alone, laid, ordered,
        phases.saved(laid), _packs(needed, shares, values, True) if needed and values["prices"] else None,
        phases.resin_kept(sums, values) + more.kept, shelf)


def reckoned(values: Values) -> BoatResult:
    """The same, once for the lines, the drawings and the leads."""
    return once(values, "boat", lambda: reckon(values))


def _packs(masses: list, shares: tuple, values: Values, cheapest: bool = False) -> Packs:
    sizes, prices = values["packs"], values["prices"] or ()
    if not masses[0]:
        return Packs([], 0.0, 0.0, 0.0)
    counts, held = shopping.packs(masses[0], sizes, prices if cheapest else ())
    rows = [(count, [size * share / shares[0] for share in shares]) for count, size in zip(counts, sizes) if count]
    cost = sum([count * price for count, price in zip(counts, prices)]) if prices else None
    return Packs(rows, held, max(0.0, held - masses[0]), cost)


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
    return cut_drawing.cut_figures(reckoned(values).cuts)


def leads(values: Values) -> list:
    """The joints chosen for the next batch go to Pour; with none chosen all of them, where they make one batch. All of
    them go to the plan of a day."""
    found = reckoned(values)
    return boat_lines.pours(found) + boat_pieces.leads(values, found.joints) + to_plan(values, found.surfaces)

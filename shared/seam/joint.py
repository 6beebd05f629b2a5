"""Joint: from two panels and an angle to the cove, the other face, the tape and all the resin of one seam."""
from collections import namedtuple

from ..catalogue.glass import EQUAL_MASSES, FIBRE_DENSITY, FOR_BUYING, SKILLED, TAPE_WEIGHT, TAPE_WIDTH
from ..catalogue.joints import COVE_WIDTH, THIN_COVER
from ..catalogue.losses import BY_KEY
from ..catalogue.pots import SIZES
from ..catalogue.starts import SEAM
from ..catalogue.strength import KNOCK, SOLID, VENEER
from ..catalogue.surfaces import PLYWOOD
from ..equations import laminate, outer_edge
from ..forms.errors import InputError
from ..forms.inputs import Choice, Group, Number
from ..forms.memo import once
from ..forms.remembered import remembered, start, starts
from ..forms.types import Said, Values
from ..words.messages import fact, message, number
from ..words.numbers import bare, ceiling
from . import coves, impossible_joints, joint_leads, joint_lines, seam, section, strength

ALONG, COVE, EDGES, GLASS = "joint-fold.along", "joint-fold.cove", "joint-fold.edges", "joint-fold.glass"
ON_TOP, LOSSES, STRENGTH = "joint-fold.on-top", "joint-fold.losses", "joint-fold.strength"

CORNER = (("kind", seam.CORNERS),)
ROUNDED = (("kind", seam.COVED),)
EDGED = (("kind", (seam.INSIDE, seam.OUTSIDE, seam.BOTH)),)
OUTER = (("kind", (seam.OUTSIDE, seam.BOTH)),)
OPEN = (("kind", (seam.INSIDE, seam.OUTSIDE, seam.BOTH, seam.BULKHEAD, seam.BUTT)),)


def _whole(row: tuple) -> Said:
    return number(bare(row[0] * 100, 1))


COVE_HELP = message("joint-cove-width.help", **dict([
    (name, number(bare(value, 2))) for name, value in zip(("times", "low", "high"), COVE_WIDTH)]))

INPUTS = (
    Choice("kind", "joint-kind", (
        (seam.INSIDE, "joint-kind.inside", "joint-kind.inside-help"),
        (seam.OUTSIDE, "joint-kind.outside", "joint-kind.outside-help"),
        (seam.BOTH, "joint-kind.both"),
        (seam.BULKHEAD, "joint-kind.bulkhead", "joint-kind.bulkhead-help"),
        (seam.BUTT, "joint-kind.butt", "joint-kind.butt-help"),
        (seam.STRIP, "joint-kind.strip", "joint-kind.strip-help"),
    )),
    Number("thickness", "joint-thickness", unit="mm", low=0, high=60, default=start(SIZES["panel"], "mm"), above=True,
           help="joint-thickness.help"),
    Choice("angle_is", "joint-angle-is", (("constant", "joint-angle-is.constant"),
                                          ("stations", "joint-angle-is.stations")), fold=ALONG, when=CORNER),
    Number("angle", "joint-angle", unit="deg", low=1, high=359, default=90,
           when=(("angle_is", ("constant",)),)),
    Group("stations", "joint-stations", (
        Number("at", "joint-station-at", unit="m", low=0, high=100),
        Number("angle", "joint-angle", unit="deg", low=1, high=359),
    ), most=20, each="joint-station", numbered="station_", fold=ALONG, when=(("angle_is", ("stations",)),), default=(
        {"at": "0 m", "angle": "95"}, {"at": starts((SEAM / 2,), "m") + " m", "angle": "120"},
        {"at": starts((SEAM,), "m") + " m", "angle": "150"}),
        help="joint-stations.help"),
    Number("length", "joint-length", unit="m", low=0, high=200, default=start(SEAM, "m"), above=True,
           when=(("angle_is", ("constant",)), ("kind", (seam.BUTT, seam.STRIP)))),
    Number("gap", "joint-gap", unit="mm", low=0, high=60, default=0, when=OPEN),
    Number("copies", "joint-copies", low=1, high=100, default=1, whole=True, fold=ALONG, help="joint-copies.help"),
    Group("layers", "joint-layers", (
        Number("width", "joint-layer-width", unit="mm", low=5, high=2000, default=TAPE_WIDTH),
        Number("weight", "joint-layer-weight", unit="g/m2", low=10, high=3000, default=TAPE_WEIGHT),
        Choice("side", "joint-layer-side", (
            (seam.EACH, "joint-layer-side.each"), (seam.FIRST, "joint-layer-side.first"),
            (seam.SECOND, "joint-layer-side.second"))),
    ), most=8, each="joint-layer", fold=GLASS, default=(
        {"width": "{} mm".format(TAPE_WIDTH), "weight": str(TAPE_WEIGHT) + " g/m2"},),
        help="joint-layers.help"),
    Choice("sized", "joint-sized", ((seam.BY_RULE, "joint-sized.rule"), (seam.BY_FLANK, "joint-sized.flank"),
                                    ("radius", "joint-sized.radius"), ("spreader", "joint-sized.spreader")),
           fold=COVE, when=ROUNDED),
    Number("radius", "joint-radius-typed", unit="mm", low=1, high=300, default=start(SIZES["radius"], "mm"), fold=COVE,
           when=(("sized", ("radius", "spreader")),), help="joint-radius-typed.help"),
    Number("throat", "joint-throat-wanted", unit="mm", low=0, high=100, above=True, optional=True, fold=COVE,
           when=(("sized", (seam.BY_RULE,)),), help="joint-throat-wanted.help"),
    Number("cove_width", "joint-cove-width", unit="mm", low=1, high=500, optional=True, fold=COVE,
           when=(("sized", (seam.BY_RULE,)),), help=COVE_HELP),
    remembered("least_radius", "least", "joint-least", "mm", 1, 100, fold=COVE,
               when=(("sized", (seam.BY_RULE, seam.BY_FLANK)),)),
    remembered("flank", "flank", "joint-flank", "mm", 0, 200, fold=COVE, when=ROUNDED),
    Number("clear", "joint-clear", unit="mm", low=1, high=2000, optional=True, fold=COVE, when=ROUNDED,
           help="joint-clear.help"),
    Number("bevel", "joint-bevel", unit="deg", low=0, high=75, default=0, fold=EDGES, when=EDGED,
           help="joint-bevel.help"),
    Choice("touch", "joint-touch", (("cut", "joint-touch.cut"), ("outer", "joint-touch.outer")), fold=EDGES,
           when=OUTER),
    Choice("finish", "joint-finish", ((seam.ROUND, "joint-finish.round"), (seam.SHARP, "joint-finish.sharp"),
                                      (seam.CHORD, "joint-finish.chord")), fold=EDGES, when=OUTER),
    Number("round_over", "joint-round-over-typed", unit="mm", low=0, high=200, above=True, optional=True, fold=EDGES,
           when=(("finish", (seam.ROUND,)),), help="joint-round-over-typed.help"),
    remembered("overlap", "overlap", "joint-overlap", "mm", 0, 500, fold=GLASS),
    remembered("stagger", "stagger", "joint-stagger", "mm", 0, 1000, fold=GLASS),
    Number("reach", "joint-reach", unit="m", low=0.1, high=100, default=BY_KEY["reach"].value,
           fold=GLASS, help="joint-reach.help"),
    Number("fraction", "joint-fraction", unit="%", low=20, high=75, default=FOR_BUYING[0] * 100, fold=GLASS,
           help=message("joint-fraction.help", buying=_whole(FOR_BUYING), skilled=_whole(SKILLED),
                        equal=_whole(EQUAL_MASSES))),
    Number("fibre_density", "joint-fibre-density", unit="g/mL", low=1, high=4, default=FIBRE_DENSITY / 1000,
           fold=GLASS, help="joint-fibre-density.help"),
    remembered("resin_density", "resin_density", "joint-resin-density", "g/mL", 0.8, 1.6, fold=GLASS),
    Choice("ply", "joint-ply-wanted", (("yes", "joint-ply-wanted.yes"), ("no", "joint-ply-wanted.no")), fold=ON_TOP),
    remembered("ply_margin", "ply_margin", "joint-ply-margin", "mm", 0, 300, fold=ON_TOP,
               when=(("ply", ("yes",)),)),
    remembered("peel_ply", "ply_takes", "joint-ply-takes-up", "g/m2", 0, 500, fold=ON_TOP, when=(("ply", ("yes",)),)),
    Choice("prime", "joint-primed", (("no", "joint-primed.no"), ("faces", "joint-primed.faces"),
                                     ("edges", "joint-primed.edges")), fold=ON_TOP),
    Choice("weave", "joint-weave-filled", (("once", "joint-weave-filled.once"), ("twice", "joint-weave-filled.twice"),
                                           ("no", "joint-weave-filled.no")), fold=ON_TOP),
    remembered("putty_density", "putty_density", "joint-putty-density", "g/mL", 0.3, 2.5, fold=LOSSES),
    remembered("tooling", "tooling", "joint-tooling", "%", 0, 60, fold=LOSSES),
    remembered("bag", "bag", "joint-bag", "g", 0, 500, fold=LOSSES),
    remembered("cup", "cup", "joint-cup", "g", 0, 500, fold=LOSSES),
    remembered("tray", "tray", "joint-tray", "g/m2", 0, 1000, fold=LOSSES),
    remembered("roller", "roller", "joint-roller", "g", 0, 500, fold=LOSSES),
    remembered("spare", "spare", "joint-spare", "%", 0, 100, fold=LOSSES),
    Number("batches", "joint-batches", low=1, high=100, default=1, whole=True, fold=LOSSES),
    Choice("panel", "joint-panel", ((strength.PLY, "joint-panel.ply"), (strength.SOLID, "joint-panel.solid")),
           fold=STRENGTH, when=OPEN),
    Choice("grain", "joint-grain", ((strength.UNKNOWN, "joint-grain.unknown"), (strength.ALONG, "joint-grain.along"),
                                    (strength.ACROSS, "joint-grain.across")), fold=STRENGTH, when=OPEN,
           help="joint-grain.help"),
    Number("plies", "joint-plies", low=3, high=25, whole=True, optional=True, fold=STRENGTH,
           when=(("panel", (strength.PLY,)), ("grain", (strength.ALONG,))),
           help=message("joint-plies.help", ply=fact("mm", VENEER))),
    Number("panel_strength", "gluing-panel-strength", unit="MPa", low=1, high=200, optional=True, fold=STRENGTH,
           when=OPEN, help=message("joint-panel-strength.help", ply=fact("MPa", PLYWOOD[0]), solid=fact("MPa", SOLID),
                                   range=fact("MPa", *PLYWOOD[1:]))),
    Number("knock", "joint-knock", unit="%", low=10, high=100, default=start(KNOCK[0], "%"), fold=STRENGTH, when=OPEN,
           help=message("joint-knock.help", range=fact("%", *KNOCK[1:]))),
)


# spec: what the seam is made from; coves: a `coves.Cove` at each station and side; sizes: a `coves.Size` of each that
# is there; passes: in which the putty is laid, 0 without a cove; tape_carries: the cove is capped or left out somewhere
# edge: the outer edge, None where it is not rounded; seam: a `seam.Seam`, one copy; mix, tapes, ply_length [m], shares:
# of all copies; flank: tape on bare panel beside the coves, the least [m], or None; slips: what looks like one
# strength: a `strength.Strength`, or None
JointResult = namedtuple("JointResult", ("spec", "coves", "sizes", "passes", "tape_carries", "edge", "seam", "mix",
                                         "tapes", "ply_length", "shares", "flank", "slips",
                                         "strength"))
# the rounded outer edge [m]: radius; cover: left over the inner corner, the least; thin: too little; flank: tape on the
# flat each side of the bend, the least, None without tape
Edge = namedtuple("Edge", ("radius", "cover", "thin", "flank"))
# to mix for all copies with the three allowances: putty [kg], volume of it [m3], liquid [kg]
ToMix = namedtuple("ToMix", ("putty", "volume", "liquid"))
# one layer of one face: the face's key, width [m], areal [kg/m2], pieces: lengths of one copy [m], length of all copies
# [m]
Laid = namedtuple("Laid", ("face", "width", "areal", "pieces", "length"))
# what the amounts are made of: section [m2], the mean across one seam; of all copies in_place [m3], and [kg] what is
# tooled off, kept in bag and cup, glass, wet_out, ply_takes, spare, prime, weave, and added: what stays on the hull
Shares = namedtuple("Shares", ("section", "in_place", "tooled", "kept", "glass", "wet_out", "ply_takes", "spare",
                               "prime", "weave", "added"))
# wide_gap: wider than the panel is thick; flank: tape on bare panel beside the cove where it is less than was wanted
# [m], else None; heavy_glass: one layer is thicker than the panel
Slips = namedtuple("Slips", ("wide_gap", "flank", "heavy_glass"))


def spec_of(values: Values) -> seam.Spec:
    """What the seam is made from, completed by what is assumed where it was not asked."""
    return once(values, "spec", lambda: _completed(values))


def _completed(values: Values) -> seam.Spec:
    layers = tuple([seam.Tape(row["width"], row["weight"], row["side"]) for row in values["layers"]])
    return seam.spec_of(values, impossible_joints.stations_of(values), layers)


def check(values: Values) -> None:
    """Joints that cannot be."""
    impossible_joints.check(spec_of(values), values["units"])
    if values["tooling"] >= 1:
        raise InputError("tooling", "joint-tooling-all")


CHECKS = (check,)


def reckon(values: Values) -> JointResult:
    """The cove, the other face, the tape and all the resin of one seam."""
    return _of_spec(_completed(values), values)


def reckoned(values: Values) -> JointResult:
    """The same, once for the lines and the leads: a fifth of a key press on a phone."""
    return once(values, "joint", lambda: _of_spec(spec_of(values), values))


def _of_spec(spec: seam.Spec, values: Values) -> JointResult:
    made, found, copies = seam.seam(spec), coves.coves(spec), int(values["copies"])
    there = [one for one in found if one.radius]
    sizes = [coves.size(one) for one in there]
    carries = len(there) < len(found) or bool([1 for one, size in zip(there, sizes) if one.why in (
        coves.WIDTH, coves.TAPE, coves.ROOM) and size.throat < spec.thickness * (1 - 1e-9)])
    tapes = [Laid(face.name, layer.width, layer.areal, layer.pieces, sum(layer.pieces) * copies)
             for face in made.faces for layer in face.layers]
    ply = made.length * copies * len([face for face in made.faces if face.layers]) if made.ply_area else 0.0
    flank = coves.flank(spec, found)
    passes = [ceiling(size.throat / BY_KEY["one_pass"].value) for size in sizes]
    return JointResult(spec, found, sizes, max(passes or [0]), carries, _edge(spec), made, to_mix(made, values), tapes,
                       ply, _shares(made, values), flank, _slips(spec, flank), strength.reckon(spec, values))


def to_mix(made: seam.Seam, values: Values) -> ToMix:
    """Putty and resin to mix for all copies, with the three allowances."""
    copies, density = values["copies"], values["putty_density"]
    putty = seam.placed(made.putty * density, values["tooling"]) * copies
    if putty:
        putty += (values["bag"] + values["cup"]) * values["batches"]
    liquid = (made.wet_out + made.ply_takes) * copies
    if liquid:
        liquid = liquid * (1 + values["spare"]) + values["tray"] * made.taped * copies
        liquid += (values["roller"] + values["cup"]) * values["batches"]
    return ToMix(putty, putty / density, liquid)


def _edge(spec: seam.Spec) -> "Edge | None":
    if spec.kind not in (seam.OUTSIDE, seam.BOTH) or spec.finish != seam.ROUND:
        return None
    t, radius, angles = spec.thickness, seam.round_over(spec), [station.angle for station in spec.stations]
    cover = min([outer_edge.cover(angle, t, radius) for angle in angles])
    rows = seam.layers_of(spec, seam.SECOND if spec.kind == seam.BOTH else seam.FIRST)
    flanks = [outer_edge.outside_flank(row.width, angle, radius) for _, row in rows for angle in angles]
    return Edge(radius, cover, cover < THIN_COVER * t, min(flanks) if flanks else None)


def _shares(made: seam.Seam, values: Values) -> Shares:
    copies, density = values["copies"], values["putty_density"]
    tooled = (seam.placed(made.putty, values["tooling"]) - made.putty) * copies * density
    added = (made.putty * density + made.glass + made.wet_out + made.prime + made.weave) * copies
    return Shares(made.putty / made.length, made.putty * copies, tooled,
                  (values["bag"] + values["cup"]) * values["batches"], made.glass * copies, made.wet_out * copies,
                  made.ply_takes * copies, values["spare"] * (made.wet_out + made.ply_takes) * copies,
                  made.prime * copies, made.weave * copies, added)


def _slips(spec: seam.Spec, flank: "float | None") -> Slips:
    narrow = flank if flank is not None and flank < spec.flank * (1 - 1e-9) else None
    thick = max([laminate.thickness(row.weight, spec.fraction, spec.fibre_density, spec.resin_density)
                 for row in spec.layers] or [0.0])
    return Slips(spec.gap > spec.thickness * (1 + 1e-9), narrow, bool(spec.layers) and thick > spec.thickness)


def answer(values: Values) -> list:
    """The cove, putty and resin first; then what belongs beside them; the allowances fold away."""
    return joint_lines.say(reckoned(values), values)


def leads(values: Values) -> list:
    """Where the answer goes next: its pours, the boat as a row of it, a template for the spreader."""
    return joint_leads.leads(reckoned(values), values)


def first(values: Values) -> tuple:
    """What a hand that types sees before the rest: the drawing."""
    return [], [drawing(values)]


def drawing(values: Values) -> dict:
    """The cross-section to scale, which follows each key press before the rest."""
    return once(values, "drawing", lambda: section.across(spec_of(values)))


def figures(values: Values) -> list:
    """The cross-section; for a changing angle also a strip of sections at the stations."""
    return [drawing(values)] + section.along(spec_of(values))

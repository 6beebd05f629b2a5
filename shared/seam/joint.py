"""Joint: from two panels and an angle to the cove, the other face, the tape and all the resin of one seam."""
from math import pi

from ..catalogue.glass import FIBRE_DENSITY, FOR_BUYING
from ..forms.errors import InputError
from ..forms.inputs import Choice, Group, Number
from ..forms.memo import once
from ..forms.remembered import remembered
from ..words.lengths import bare
from ..words.lines import ANSWER, line
from ..words.numbers import UP, shown
from ..words.units import told
from . import impossible_joints, seam, section
from .joint_lines import cove_lines, coves, outside_lines, questions, share_lines, tape_lines

ALONG, COVE, EDGES, GLASS = "Angle along it, copies", "How the cove is sized", "Panel edges", "Tape and glass"
ON_TOP, LOSSES = "What goes on it", "What stays behind"

CORNER = (("kind", seam.CORNERS),)
ROUNDED = (("kind", seam.COVED),)
EDGED = (("kind", (seam.INSIDE, seam.OUTSIDE, seam.BOTH)),)
OUTER = (("kind", (seam.OUTSIDE, seam.BOTH)),)
OPEN = (("kind", (seam.INSIDE, seam.OUTSIDE, seam.BOTH, seam.BULKHEAD, seam.BUTT)),)

INPUTS = (
    Choice("kind", "Kind of joint", (
        (seam.INSIDE, "Inside corner", "Cove and tape"),
        (seam.OUTSIDE, "Outside corner", "The open V filled, the edge rounded, tape round it"),
        (seam.BOTH, "Both faces of a corner"),
        (seam.BULKHEAD, "Bulkhead", "Two inside corners"),
        (seam.BUTT, "Butt", "Panels in line"),
        (seam.STRIP, "Reinforcement strip", "Tape on a flat face"),
    )),
    Number("thickness", "Panel thickness", unit="mm", low=0, high=60, default=6, above=True,
           help="Of the thinner one."),
    Choice("angle_is", "The angle", (("constant", "is the same all along"), ("stations", "changes along the seam")),
           fold=ALONG, when=CORNER),
    Number("angle", "Angle inside", unit="deg", low=1, high=359, default=90,
           when=(("angle_is", ("constant",)),)),
    Group("stations", "Angles along the seam", (
        Number("at", "At", unit="m", low=0, high=100),
        Number("angle", "Angle inside", unit="deg", low=1, high=359),
    ), most=20, each="Station", fold=ALONG, when=(("angle_is", ("stations",)),), default=(
        {"at": "0 m", "angle": "95"}, {"at": "1.2 m", "angle": "120"}, {"at": "2.4 m", "angle": "150"}),
        help="From the first to the last is the length of the seam; between two the angle changes evenly."),
    Number("length", "Seam length", unit="m", low=0, high=200, default=2.4, above=True,
           when=(("angle_is", ("constant",)), ("kind", (seam.BUTT, seam.STRIP)))),
    Number("gap", "Gap between", unit="mm", low=0, high=60, default=0, when=OPEN),
    Number("copies", "How many of it", low=1, high=100, default=1, whole=True, fold=ALONG, help="Mirror images too."),
    Group("layers", "Layers of tape", (
        Number("width", "Width", unit="mm", low=5, high=2000, default=75),
        Number("weight", "Dry weight", unit="g/m2", low=10, high=3000, default=300),
        Choice("side", "Goes on", ((seam.EACH, "each face"), (seam.FIRST, "inside, or the first side"),
                                   (seam.SECOND, "outside, or the other side"))),
    ), most=8, each="Layer", fold=GLASS, default=({"width": "75 mm", "weight": "300 g/m2"},),
        help="The first lies on the putty."),
    Choice("sized", "The cove", (("rule", "by the rule of the throat"), ("radius", "of this radius"),
                                 ("spreader", "by a spreader that is there")), fold=COVE, when=ROUNDED),
    Number("radius", "Radius", unit="mm", low=1, high=300, default=12, fold=COVE,
           when=(("sized", ("radius", "spreader")),), help="Of the spreader's tip."),
    Number("throat", "Throat wanted", unit="mm", low=0, high=100, above=True, optional=True, fold=COVE,
           when=(("sized", ("rule",)),), help="Left empty: the panel thickness (common practice)."),
    remembered("least_radius", "least", "Smallest radius", "mm", 1, 100, fold=COVE, when=(("sized", ("rule",)),)),
    remembered("flank", "flank", "Tape on bare panel, each side", "mm", 0, 200, fold=COVE, when=ROUNDED),
    Number("clear", "Panel free each side", unit="mm", low=1, high=2000, optional=True, fold=COVE, when=ROUNDED,
           help="Where a stringer or a sole stands near. Left empty: enough."),
    Number("bevel", "Edges cut off square by", unit="deg", low=0, high=75, default=0, fold=EDGES, when=EDGED,
           help="Each; the outer corner stands forward."),
    Choice("touch", "Edges touch", (("cut", "as they are cut"), ("outer", "at the outer corners")), fold=EDGES,
           when=OUTER),
    Choice("finish", "Outer edge", ((seam.ROUND, "rounded over"), (seam.SHARP, "filled to a sharp edge"),
                                    (seam.CHORD, "filled flush, corner to corner")), fold=EDGES, when=OUTER),
    Number("round_over", "Radius of the round-over", unit="mm", low=0, high=200, above=True, optional=True, fold=EDGES,
           when=(("finish", (seam.ROUND,)),), help="Left empty: the panel thickness."),
    remembered("overlap", "overlap", "Ends overlap", "mm", 0, 500, fold=GLASS),
    remembered("stagger", "stagger", "Ends of layers apart", "mm", 0, 1000, fold=GLASS),
    Number("reach", "Longest piece laid in one go", unit="m", low=0.1, high=100, default=2.5, fold=GLASS,
           help="From memory: what one pair of arms lays."),
    Number("fraction", "Glass by weight", unit="%", low=20, high=75, default=FOR_BUYING[0] * 100, fold=GLASS,
           help="From memory: 45 for buying, 50 when skilled; 50, equal masses, is common practice."),
    Number("fibre_density", "Density of the glass", unit="g/mL", low=1, high=4, default=FIBRE_DENSITY / 1000,
           fold=GLASS, help="From memory."),
    remembered("resin_density", "resin_density", "Density of mixed resin", "g/mL", 0.8, 1.6, fold=GLASS),
    Choice("ply", "Peel ply", (("yes", "over the tape"), ("no", "none")), fold=ON_TOP),
    remembered("ply_margin", "ply_margin", "Wider than the tape, each side", "mm", 0, 300, fold=ON_TOP,
               when=(("ply", ("yes",)),)),
    remembered("peel_ply", "ply_takes", "Peel ply takes up", "g/m2", 0, 500, fold=ON_TOP, when=(("ply", ("yes",)),)),
    Choice("prime", "Bare wood primed", (("no", "no"), ("faces", "under the tape"), ("edges", "and the edges")),
           fold=ON_TOP),
    Choice("weave", "Weave filled", (("once", "once"), ("twice", "twice"), ("no", "no")), fold=ON_TOP),
    remembered("putty_density", "putty_density", "Density of the putty", "g/mL", 0.3, 2.5, fold=LOSSES),
    remembered("tooling", "tooling", "Taken off by tooling", "%", 0, 60, fold=LOSSES),
    remembered("bag", "bag", "Left in each bag", "g", 0, 500, fold=LOSSES),
    remembered("cup", "cup", "Left in each cup", "g", 0, 500, fold=LOSSES),
    remembered("tray", "tray", "Left in the tray, per area wetted", "g/m2", 0, 1000, fold=LOSSES),
    remembered("roller", "roller", "Left in the roller", "g", 0, 500, fold=LOSSES),
    remembered("spare", "spare", "Spare on liquids", "%", 0, 100, fold=LOSSES),
    Number("batches", "Mixed in how many batches", low=1, high=100, default=1, whole=True, fold=LOSSES),
)


def spec_of(values):
    """The seam's spec: what was read, completed by what is assumed where it was not asked."""
    return once(values, "spec", lambda: _completed(values))


def _completed(values):
    spec = dict(seam.ASSUMED)
    spec.update(values)
    spec["stations"] = impossible_joints.stations_of(values)
    return spec


def seam_of(values):
    """The seam of these values, reckoned once for the lines and the leads: a fifth of a key press on a phone."""
    return once(values, "seam", lambda: seam.seam(spec_of(values)))


def check(values):
    """Joints that cannot be."""
    impossible_joints.check(spec_of(values))
    if values["tooling"] >= 1:
        raise InputError("tooling", "Tooling: less than everything, please")


CHECKS = (check,)


def to_mix(values, found):
    """Putty and resin to mix for all copies, with the three allowances: (putty [kg], putty [m3], liquid [kg])."""
    copies, density = values["copies"], values["putty_density"]
    putty = seam.placed(found.putty * density, values["tooling"]) * copies
    if putty:
        putty += (values["bag"] + values["cup"]) * values["batches"]
    liquid = (found.wet_out + found.ply_takes) * copies
    if liquid:
        liquid = liquid * (1 + values["spare"]) + values["tray"] * found.taped * copies
        liquid += (values["roller"] + values["cup"]) * values["batches"]
    return putty, putty / density, liquid


def answer(values):
    """The cove, putty and resin first; then what belongs beside them; the allowances fold away."""
    spec = spec_of(values)
    found, units = seam_of(values), values["units"]
    putty, volume, liquid = to_mix(values, found)
    lines = []
    sized = cove_lines(spec, values) if values["kind"] in seam.COVED else []
    lines.extend([one for one in sized if one.rank == ANSWER])
    if found.putty:
        lines.append(line("putty", "Putty to mix", volume, "m3", told(volume, "mL", units, UP) + " · "
                          + told(putty, "g", units, UP), rank=ANSWER,
                          rough="rounded up; with what tooling, bag and cup keep; density from memory"))
    if liquid:
        lines.append(line("liquid", "Resin for tape", liquid, "kg", told(liquid, "g", units, UP), rank=ANSWER,
                          rough="resin and hardener, mixed; rounded up, with tray, roller, cup and spare"))
    lines.extend(tape_lines(found, values))
    if values["kind"] in (seam.OUTSIDE, seam.BOTH):
        lines.extend(outside_lines(spec, values))
    lines.extend([one for one in sized if one.rank != ANSWER])
    lines.extend(share_lines(found, values))
    lines.extend(questions(spec, values))
    return lines


def to_pour(putty, liquid, which=""):
    """Leads to Pour: putty [m3] as a volume to make, liquid [kg] as a mass to mix; nothing of either: no lead."""
    found = []
    if putty:
        found.append({"label": "Pour this putty" if not which else "Putty of " + which, "screen": "pour", "pairs": [
            ["amount_is", "putty"], ["amount", shown(putty * 1e6, 0, UP) + " mL"], ["thicken", "yes"],
            ["stiffness", "stands"]]})
    if liquid:
        found.append({"label": "Pour the wet-out resin" if not which else "Wet-out of " + which, "screen": "pour",
                      "pairs": [["amount_is", "total"], ["amount", shown(liquid * 1000, 0, UP) + " g"],
                                ["thicken", "no"]]})
    return found


def leads(values):
    """Where the answer goes next: its pours, the boat as a row of it, a template for the spreader."""
    spec = spec_of(values)
    _, putty, liquid = to_mix(values, seam_of(values))
    found = to_pour(putty, liquid)
    found.append({"label": "Into the boat", "screen": "boat", "adds": "joints", "pairs": _as_row(spec, values)})
    radii = []
    for _, _, _, size in coves(spec) if values["kind"] in seam.COVED else ():
        text = bare(size[0] * 1000, 1)
        if LEAST_SPREADER <= size[0] <= MOST_SPREADER and text not in radii:
            radii.append(text)
    if radii:
        found.append({"label": "Spreader template", "screen": "spreader", "pairs": [
            ["radii", " : ".join(radii[:9]) + " mm"]]})
    return found


LEAST_SPREADER, MOST_SPREADER = 0.0021, 0.09  # what a sheet of paper takes


def _as_row(spec, values):
    """This joint as typed text of a row of the boat."""
    stations, layers = spec["stations"], spec["layers"]
    angles = [station.angle for station in stations]
    steady = max(angles) - min(angles) < 1e-12
    lengths = [there.at - here.at for here, there in zip(stations, stations[1:])]
    row = [("kind", values["kind"]), ("thickness", bare(spec["thickness"] * 1000, 6) + " mm")]
    if values["kind"] in seam.CORNERS:
        row.append(("angle", " : ".join([bare(angle * 180 / pi, 6) for angle in angles[:1 if steady else 99]])))
    row.append(("length", " : ".join([bare(one, 6) for one in ([sum(lengths)] if steady else lengths)]) + " m"))
    row.append(("gap", bare(spec["gap"] * 1000, 6) + " mm"))
    row.append(("copies", shown(values["copies"])))
    row.append(("layers", str(len(layers))))
    if layers:
        row.append(("width", " : ".join([bare(one["width"] * 1000, 4) for one in layers]) + " mm"))
        row.append(("weight", " : ".join([bare(one["weight"] * 1000, 4) for one in layers]) + " g/m2"))
    if [1 for one in layers if one["side"] != seam.EACH]:
        words = dict([(side, word) for word, side in seam.FACES])
        row.append(("faces", " : ".join([words[one["side"]] for one in layers])))
    own = ("radius",) if spec["sized"] != "rule" else ("throat",)
    for name in own + ("clear", "round_over"):
        if values.get(name) is not None:
            row.append((name, bare(values[name] * 1000, 6) + " mm"))
    if values.get("bevel"):
        row.append(("bevel", bare(values["bevel"] * 180 / pi, 6)))
    for name in ("touch", "finish"):
        if name in values:
            row.append((name, values[name]))
    return [["joints.0." + name, text] for name, text in row]


def first(values):
    """What a hand that types sees before the rest: the drawing."""
    return [], [drawing(values)]


def drawing(values):
    """The cross-section to scale, which follows each key press before the rest."""
    return once(values, "drawing", lambda: section.across(spec_of(values)))


def figures(values):
    """The cross-section; for a changing angle also a strip of sections at the stations."""
    return [drawing(values)] + section.along(spec_of(values))

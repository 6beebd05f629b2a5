"""Joint: from two panels and an angle to the cove, the other face, the tape and all the resin of one seam."""
from math import pi

from . import cove, fillet, impossible, laminate, outside, seam, section
from .bulkhead import other_angle
from .catalogue.glass import FIBRE_DENSITY, FOR_BUYING
from .catalogue.losses import BY_KEY
from .errors import InputError
from .inputs import Choice, Group, Number
from .lengths import bare, metres, mm
from .lines import ANSWER, ASK, BESIDE, MORE, WARN, line, words
from .numbers import DOWN, NEAREST, UP, ceiling, shown
from .units import from_si, told

COVE, EDGES, GLASS = "How the cove is sized", "Panel edges", "Tape and glass"
ON_TOP, LOSSES = "What goes on it", "What stays behind"


def remembered(key, name, label, unit, low, high, **more):
    """A number whose default is a row of the catalogue of losses, its range and mark in the help."""
    row = BY_KEY[key]
    own = (lambda value: value) if not row.unit else (lambda value: from_si(value, unit))
    scale = 100 if unit == "%" else 1
    told_range = " to ".join([_short(own(value) * scale if not row.unit else own(value)) for value in
                              (row.low, row.high)])
    default = float(shown(row.value * scale if not row.unit else own(row.value), 4))
    return Number(name, label, unit=unit, low=low, high=high, default=default,
                  help=row.mark[0].upper() + row.mark[1:] + ", " + told_range + ".", **more)


def _short(value):
    text = shown(value, 2)
    while text.endswith("0") and "." in text:
        text = text[:-1]
    return text[:-1] if text.endswith(".") else text


CORNER = (("kind", seam.CORNERS),)
COVED = (("kind", seam.COVED),)
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
           help="Of the thinner panel; of a bulkhead its own."),
    Choice("angle_is", "The angle", (("constant", "is the same all along"), ("stations", "changes along the seam")),
           when=CORNER),
    Number("angle", "Angle inside", unit="deg", low=1, high=359, default=90, when=(("angle_is", ("constant",)),),
           help="Between the panels, measured on the inside, for the outside too."),
    Group("stations", "Angles along the seam", (
        Number("at", "At", unit="m", low=0, high=100),
        Number("angle", "Angle inside", unit="deg", low=1, high=359),
    ), most=20, each="Station", when=(("angle_is", ("stations",)),), default=(
        {"at": "0 m", "angle": "95"}, {"at": "1.2 m", "angle": "120"}, {"at": "2.4 m", "angle": "150"}),
        help="From the first to the last is the length of the seam; between two the angle changes evenly."),
    Number("length", "Seam length", unit="m", low=0, high=200, default=2.4, above=True,
           when=(("angle_is", ("constant",)), ("kind", (seam.BUTT, seam.STRIP)))),
    Number("gap", "Gap between the panels", unit="mm", low=0, high=60, default=0, when=OPEN,
           help="Where they are nearest. Taped off behind, it is filled with the cove."),
    Number("copies", "How many of it", low=1, high=100, default=1, whole=True, help="Mirror images too."),
    Group("layers", "Layers of tape", (
        Number("width", "Width", unit="mm", low=5, high=2000, default=75),
        Number("weight", "Dry weight", unit="g/m2", low=10, high=3000, default=300),
        Choice("side", "Goes on", ((seam.EACH, "each face"), (seam.FIRST, "inside, or the first side"),
                                   (seam.SECOND, "outside, or the other side"))),
    ), most=8, each="Layer", default=({"width": "75 mm", "weight": "300 g/m2"},), help="The first lies on the putty."),
    Choice("sized", "The cove", (("rule", "throat as deep as the panel is thick"), ("radius", "of this radius"),
                                 ("spreader", "by a spreader that is there")), fold=COVE, when=COVED),
    Number("radius", "Radius", unit="mm", low=1, high=300, default=12, fold=COVE,
           when=(("sized", ("radius", "spreader")),), help="Of the spreader's tip."),
    Number("throat", "Throat wanted", unit="mm", low=0, high=100, above=True, optional=True, fold=COVE,
           when=(("sized", ("rule",)),), help="Left empty: the panel thickness (common practice)."),
    remembered("least_radius", "least", "Smallest radius", "mm", 1, 100, fold=COVE, when=(("sized", ("rule",)),)),
    remembered("flank", "flank", "Tape on bare panel, each side", "mm", 0, 200, fold=COVE, when=COVED),
    Number("clear", "Panel free each side", unit="mm", low=1, high=2000, optional=True, fold=COVE, when=COVED,
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
    Number("fibre_density", "Density of the glass", unit="g/mL", low=1, high=4, default=FIBRE_DENSITY / 1000, fold=GLASS,
           help="From memory."),
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
    spec = dict(seam.ASSUMED)
    spec["touch"] = "cut"
    for name in values:
        spec[name] = values[name]
    spec["stations"] = impossible.stations_of(values)
    return spec


def check(values):
    """Joints that cannot be."""
    impossible.check(spec_of(values))
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
    found, units = seam.seam(spec), values["units"]
    putty, volume, liquid = to_mix(values, found)
    lines = []
    if values["kind"] in seam.COVED:
        lines.extend(_cove_lines(spec, values))
    if found.putty:
        lines.append(line("putty", "Putty to mix", volume, "m3", told(volume, "mL", units, UP) + " · "
                          + told(putty, "g", units, UP), rank=ANSWER,
                          rough="rounded up; with what tooling, bag and cup keep; density from memory"))
    if liquid:
        lines.append(line("liquid", "Resin for the tape", liquid, "kg", told(liquid, "g", units, UP), rank=ANSWER,
                          rough="resin and hardener, mixed; rounded up, with tray, roller, cup and spare"))
    if values["kind"] in (seam.OUTSIDE, seam.BOTH):
        lines.extend(_outside_lines(spec, values))
    lines.extend(_tape_lines(found, values))
    lines.extend(_share_lines(found, values))
    lines.extend(_questions(spec, values))
    return lines


WHY = {
    cove.RULE: "throat as deep as the panel is thick (common practice)",
    cove.LEAST: "the smallest that glass and tool bend to (from memory)",
    cove.TAPE: "capped by the tape: it must keep its flanks on bare panel",
    cove.ROOM: "capped by the panel that is free each side",
    cove.FLAT: "from 160° on flat tape alone (common practice)",
    cove.OWN: "as you say",
}


def coves(spec):
    """The cove at each station and on each side: (label, station, angle, radius, what decided)."""
    found = []
    steady = len(spec["stations"]) == 2 and spec["stations"][0].angle == spec["stations"][1].angle
    for station in spec["stations"][:1] if steady else spec["stations"]:
        angle = station.angle
        found.append(("", station, angle, cove.sized(seam.rule(spec), angle)))
    if spec["kind"] == seam.BULKHEAD:
        for station in spec["stations"][:1] if steady else spec["stations"]:
            angle = other_angle(station.angle)
            found.append(("other side", station, angle, cove.sized(seam.rule(spec, seam.SECOND), angle)))
    return found


def ranged(values, units, toward=NEAREST):
    """The least and the most of some short lengths: "16.2 to 29.5 mm"."""
    low, high = mm(min(values), units, toward), mm(max(values), units, toward)
    return low if low == high else low.partition(" ")[0] + " to " + high


def _cove_lines(spec, values):
    units, found = values["units"], coves(spec)
    radii = [size[0] for _, _, _, size in found if size[0]]
    reasons = []
    for _, _, _, size in found:
        if WHY[size[1]] not in reasons:
            reasons.append(WHY[size[1]])
    if not radii:
        return [words("cove", "Cove", "none: flat tape", rough=WHY[cove.FLAT], rank=ANSWER)]
    sizes = [(size[0], angle) for _, _, angle, size in found if size[0]]
    throats = [fillet.throat(radius, angle) for radius, angle in sizes]
    legs = [fillet.tangent_length(radius, angle) for radius, angle in sizes]
    lines = [
        line("radius", "Cove radius", radii[0], "m", ranged(radii, units), rough="; ".join(reasons),
             rank=ANSWER),
        line("throat", "Throat", throats[0], "m", ranged(throats, units, DOWN), rough="on the bisector, rounded down"),
        line("tack", "Tack no further than", min(legs), "m", mm(min(legs), units, DOWN),
             rough="from the corner; clean to this line too" + (
                 ", here at the narrowest place" if len(legs) > 1 else "") + "; rounded down"),
        line("arc", "Across the cove", radii[0] * (pi - sizes[0][1]), "m",
             ranged([fillet.arc(radius, angle) for radius, angle in sizes], units, UP), rank=MORE),
    ]
    if len(found) > 1:
        for place, (side, station, angle, size) in enumerate(found):
            text = "flat tape" if not size[0] else "radius " + mm(size[0], units)
            label = side if side and len(found) == 2 else metres(station.at, units) + (", " + side if side else "")
            lines.append(line("station_" + str(place), "At " + label if not side or len(found) > 2 else "Other side",
                              size[0], "m", shown(angle * 180 / pi, 0) + "°: " + text, rough=WHY[size[1]], rank=MORE))
    passes = max([ceiling(depth / BY_KEY["one_pass"].value) for depth in throats])
    if passes > 1:
        lines.append(line("passes", "Passes", passes, "", str(passes), rough="a throat above 12 mm heats and sags: let "
                          "the first pass stiffen (from memory)"))
    thin = [1 for (_, _, _, size), depth in zip([each for each in found if each[3][0]], throats)
            if size[1] in (cove.TAPE, cove.ROOM)]
    if thin or len(radii) < len(found):
        lines.append(words("tape_carries", "What carries the seam", "the tape, where the cove is capped or left out",
                           rough="the throat is thinner than the panel there"))
    return lines


def _outside_lines(spec, values):
    units, t = values["units"], values["thickness"]
    angles = [station.angle for station in spec["stations"]]
    if spec["finish"] != seam.ROUND:
        return []
    radius = seam.round_over(spec)
    covers = min([outside.cover(angle, t, radius) for angle in angles])
    lines = [line("round_over", "Round the outer edge to", radius, "m", mm(radius, units),
                  rough="the panel thickness" if spec["round_over"] is None else "as you say"),
             line("cover", "Left over the inner corner", covers, "m", mm(covers, units, DOWN), rank=MORE,
                  rough="wood and putty on the bisector, at the thinnest place")]
    if covers < 0.75 * t:
        lines.append(words("thin_cover", "A thin edge", "Rounding to " + mm(radius, units) + " leaves only "
                           + mm(covers, units, DOWN) + " over the inner corner.", rank=WARN))
    rows = seam.layers_of(spec, seam.SECOND if spec["kind"] == seam.BOTH else seam.FIRST)
    if rows:
        flank = min([outside.outside_flank(row["width"], angle, radius) for _, row in rows for angle in angles])
        lines.append(line("outside_flank", "Tape on the flat outside", flank, "m", mm(flank, units, DOWN),
                          rank=MORE, rough="each side of the bend, the narrowest layer"))
    return lines


def _tape_lines(found, values):
    units, lines, number = values["units"], [], 0
    copies = int(values["copies"])
    for face in found.faces:
        for layer in face.layers:
            number += 1
            text = _pieces_text(layer.pieces, units, copies) + " of " + mm(layer.width, units) + ", " + told(
                layer.areal, "g/m2", units)
            lines.append(line("tape_" + str(number), "Tape, " + face.name if len(found.faces) > 1 else "Tape",
                              sum(layer.pieces) * copies, "m", text,
                              rough="in laying order; ends overlap " + mm(values["overlap"], units)
                              if len(layer.pieces) > 1 else ""))
    if found.laminate:
        lines.append(line("laminate", "Laminate thickness", found.laminate, "m", bare(found.laminate * 1000, 2) + " mm",
                          rough="without air in it, so at least; also the step at the tape's edge"))
    if found.ply_area:
        length = found.length * copies * len([face for face in found.faces if face.layers])
        lines.append(line("ply", "Peel ply", length, "m", metres(length, units, UP) + " of "
                          + mm(found.ply_width, units), rough="rounded up"))
    return lines


def _pieces_text(lengths, units, copies):
    """"3 × 1.55 m" or "2.13 m + 1.93 m": pieces of one layer for all copies."""
    texts, counts = [], []
    for piece in lengths:
        text = metres(piece, units, UP)
        if texts and texts[-1] == text:
            counts[-1] += 1
        else:
            texts.append(text)
            counts.append(1)
    row = " + ".join([(str(count) + " × " if count > 1 else "") + text for text, count in zip(texts, counts)])
    if copies > 1:
        row = str(copies) + " × (" + row + ")" if " " in row[:-2].strip() and len(lengths) > 1 else (
            str(copies) + " × " + row)
    return row


def _share_lines(found, values):
    """What the amounts are made of."""
    units, copies, lines = values["units"], values["copies"], []
    if found.putty:
        each = found.putty / found.length
        lines.append(line("section", "Putty across the seam", each, "m2", shown(each * 1e6, 1) + " mm²", rank=MORE,
                          rough="in place, both faces; the mean along the seam" if len(found.faces) > 1
                          else "in place; the mean along the seam"))
        in_place = found.putty * copies
        lines.append(line("putty_in_place", "Putty in place", in_place, "m3", told(in_place, "mL", units), rank=MORE,
                          rough="by the drawing, nothing added"))
        tooled = (seam.placed(found.putty, values["tooling"]) - found.putty) * copies * values["putty_density"]
        lines.append(line("tooled", "Taken off by tooling", tooled, "kg", told(tooled, "g", units), rank=MORE,
                          rough="of what is placed; from memory"))
        kept = (values["bag"] + values["cup"]) * values["batches"]
        lines.append(line("kept", "Stays in bag and cup", kept, "kg", told(kept, "g", units), rank=MORE,
                          rough="each batch the same; from memory"))
    if found.glass:
        mass = found.wet_out * copies
        lines.append(line("wet_out", "Resin in the glass", mass, "kg", told(mass, "g", units), rank=MORE,
                          rough="for " + told(found.glass * copies, "g", units) + " of glass"))
        if found.ply_takes:
            lines.append(line("ply_takes", "Taken up by peel ply", found.ply_takes * copies, "kg",
                              told(found.ply_takes * copies, "g", units), rank=MORE, rough="from memory"))
        spare = values["spare"] * (found.wet_out + found.ply_takes) * copies
        lines.append(line("spare_kept", "Spare on it", spare, "kg", told(spare, "g", units), rank=MORE))
    if found.prime:
        lines.append(line("prime", "Primer on bare wood", found.prime * copies, "kg",
                          told(found.prime * copies, "g", units, UP), rough="a batch of its own; from memory"))
    if found.weave:
        lines.append(line("weave", "To fill the weave", found.weave * copies, "kg",
                          told(found.weave * copies, "g", units, UP), rank=MORE,
                          rough="a batch of its own, later; from memory"))
    added = (found.putty * values["putty_density"] + found.glass + found.wet_out + found.prime + found.weave) * copies
    lines.append(line("added", "Added to the hull", added, "kg", told(added, "g", units), rank=MORE,
                      rough="what stays on it: putty, glass, resin"))
    return lines


def _questions(spec, values):
    """What looks like a slip: asked back, never refused."""
    lines, units = [], values["units"]
    if spec["gap"] > spec["thickness"] * (1 + 1e-9):
        lines.append(words("wide_gap", "Such a gap?", "The gap, " + mm(spec["gap"], units)
                           + ", is wider than the panel is thick. A strip of wood in it saves putty and heat.",
                           rank=ASK))
    if spec["kind"] in seam.COVED and spec["sized"] != "rule" and spec["layers"]:
        flank = min([(min([row["width"] for _, row in seam.layers_of(spec, side)] or [9.9])
                      - spec["radius"] * (pi - (angle if side == seam.FIRST else other_angle(angle)))) / 2
                     for angle in [station.angle for station in spec["stations"]]
                     for side in ((seam.FIRST, seam.SECOND) if spec["kind"] == seam.BULKHEAD else (seam.FIRST,))])
        if flank < spec["flank"] * (1 - 1e-9):
            lines.append(words("narrow_flank", "Wider tape?", "Only " + mm(flank, units, DOWN)
                               + " of tape lie on bare panel each side of this cove; "
                               + mm(spec["flank"], units) + " were wanted.", rank=ASK))
    thick = max([laminate.thickness(row["weight"], spec["fraction"], spec["fibre_density"], spec["resin_density"])
                 for row in spec["layers"]] or [0.0])
    if spec["layers"] and thick > spec["thickness"]:
        lines.append(words("heavy_glass", "Such heavy glass?", "One layer is thicker than the panel. Were the weights "
                           "typed in the right unit?", rank=ASK))
    return lines


def figures(values):
    """The cross-section to scale; for a changing angle also a strip of sections at the stations."""
    return section.figures(spec_of(values))

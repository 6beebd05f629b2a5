"""Seam: everything that goes onto one seam, face by face, from its panels, its angle along it and its layers."""
from collections import namedtuple
from math import pi

from ..catalogue.glass import FIBRE_DENSITY, FOR_BUYING
from ..catalogue.joints import COVE_WIDTH, FLAT_FROM
from ..catalogue.losses import BY_KEY
from ..equations import bulkhead, changing_angle, cove, fillet, laminate, outer_edge, tape
from ..forms.types import Values
from ..words.units import to_si

INSIDE, OUTSIDE, BOTH, BULKHEAD, BUTT, STRIP = "inside", "outside", "both", "bulkhead", "butt", "strip"
CORNERS = (INSIDE, OUTSIDE, BOTH, BULKHEAD)
COVED = (INSIDE, BOTH, BULKHEAD)
ROUND, SHARP, CHORD = "round", "sharp", "chord"
BY_RULE, BY_FLANK = "rule", "flank"  # a cove that has no radius of its own
FIRST, SECOND, EACH = "first", "second", "all"
FACES = (("each", EACH), ("in", FIRST), ("out", SECOND))  # as they are typed
SPELT = FACES + (  # in any language
    ("beide", EACH), ("jede", EACH), ("innen", FIRST), ("außen", SECOND), ("aussen", SECOND))
FLAT = to_si(FLAT_FROM, "deg")
INNER, OUTER, ONE_SIDE, OTHER_SIDE, ONE_FACE, OTHER_FACE, ON_STRIP = (
    "inside", "outside", "one_side", "other_side", "one_face", "other_face", "strip")
LATE = (OUTER, OTHER_FACE)  # faces that are done when the hull or the panel is turned

# what a seam is made from, under the names of the inputs of the joint move: lengths [m], angles [rad], densities
# [kg/m3], shares [-]; stations: as `changing_angle` has them; layers: a `Tape` each, in laying order; least: the
# smallest radius; flank: tape on bare panel, each side; ply_takes [kg/m2]; radius, throat, cove_width, clear,
# round_over: None where the rule decides, or where there is room enough
Spec = namedtuple("Spec", ("kind", "thickness", "gap", "bevel", "stations", "layers", "sized", "radius", "throat",
                           "cove_width", "clear", "flank", "least", "finish", "round_over", "touch", "overlap",
                           "stagger", "reach", "fraction", "fibre_density", "resin_density", "ply", "ply_margin",
                           "ply_takes", "prime", "weave"))
# width [m], weight [kg/m2], side: FIRST, SECOND or EACH
Tape = namedtuple("Tape", ("width", "weight", "side"))
# name: key of the face, INNER to ON_STRIP; turned: the angle is the one beyond a bulkhead; putty [m3], in place, one
# copy
Face = namedtuple("Face", ("name", "side", "turned", "putty", "layers"))
# width [m], areal [kg/m2], pieces: lengths [m] in laying order, area [m2] with its overlaps
Layer = namedtuple("Layer", ("place", "width", "areal", "pieces", "area"))
# of one face: glass [kg], taped [m2], its widest tape [m], its peel ply's width [m], 0 where there is none
Over = namedtuple("Over", ("glass", "taped", "widest", "ply_width"))
# of one copy [kg, m2, m, m3]: what stays on the boat, and what only goes through the hands
Seam = namedtuple("Seam", ("length", "faces", "putty", "glass", "wet_out", "taped", "ply_area", "ply_width",
                           "ply_takes", "prime", "weave", "laminate"))

# what a spec may leave out, from the catalogue; the joint move declares the same defaults as inputs
ASSUMED = {"gap": 0.0, "bevel": 0.0, "layers": (), "sized": "rule", "radius": None, "throat": None,
           "cove_width": None, "clear": None,
           "flank": BY_KEY["flank"].value, "least": BY_KEY["least_radius"].value, "finish": ROUND, "round_over": None,
           "touch": "cut",
           "overlap": BY_KEY["overlap"].value, "stagger": BY_KEY["stagger"].value, "reach": BY_KEY["reach"].value,
           "fraction": FOR_BUYING[0], "fibre_density": FIBRE_DENSITY, "resin_density": BY_KEY["resin_density"].value,
           "ply": "yes", "ply_margin": BY_KEY["ply_margin"].value, "ply_takes": BY_KEY["peel_ply"].value,
           "prime": "no", "weave": "once"}


def spec_of(given: Values, stations: tuple, layers: tuple) -> Spec:
    """The spec of what was read, completed by what is assumed where it was not asked."""
    found = dict(ASSUMED)
    found.update(given)
    return Spec(kind=found["kind"], thickness=found["thickness"], gap=found["gap"], bevel=found["bevel"],
                stations=stations, layers=layers, sized=found["sized"], radius=found["radius"],
                throat=found["throat"], cove_width=found["cove_width"], clear=found["clear"], flank=found["flank"],
                least=found["least"], finish=found["finish"], round_over=found["round_over"], touch=found["touch"],
                overlap=found["overlap"], stagger=found["stagger"], reach=found["reach"], fraction=found["fraction"],
                fibre_density=found["fibre_density"], resin_density=found["resin_density"], ply=found["ply"],
                ply_margin=found["ply_margin"], ply_takes=found["ply_takes"], prime=found["prime"],
                weave=found["weave"])


def of_kind(spec: Spec, kind: str) -> Spec:
    """The same seam as if it were of another kind."""
    return Spec(kind, *list(spec)[1:])


def taped(spec: Spec, kind: str, layers: tuple) -> Spec:
    """The same seam as another kind and with other layers."""
    own = list(spec)
    return Spec(kind, *(own[1:5] + [layers] + own[6:]))


def widths(spec: Spec) -> list:
    """How wide each layer of tape is [m]."""
    return [row.width for row in spec.layers]


def layers_of(spec: Spec, side: str) -> list:
    """The layers on one face, in laying order: (place in the list, layer)."""
    return [(place, row) for place, row in enumerate(spec.layers) if row.side in (EACH, side)]


def rule(spec: Spec, side: str = FIRST) -> cove.Rule:
    """How the cove on a face is sized."""
    wide = [row.width for _, row in layers_of(spec, side)]
    spread = min(wide) - 2 * spec.flank if wide else None
    own = None if spec.sized in (BY_RULE, BY_FLANK) else spec.radius
    throat, width = spec.throat, spec.cove_width
    if spec.sized == BY_FLANK and wide:
        throat, width = None, min(wide)  # wider than its flanks leave: the tape decides
    elif throat is None and width is None:
        throat, width = spec.thickness, COVE_WIDTH[0] * spec.thickness
    return cove.Rule(own, throat, width, spec.least, spread, spec.clear, FLAT if wide else 2 * FLAT)


def pressed_through(spec: Spec, angle: float) -> bool:
    """Whether the putty of the inside also fills what stands open between the edges: a gap, or an inward V."""
    return spec.gap > 0 or 2 * spec.bevel > pi - angle + 1e-12


def round_over(spec: Spec) -> float:
    """Radius of the rounded outer edge [m]: typed, else the panel thickness."""
    return spec.thickness if spec.round_over is None else spec.round_over


def inside_section(spec: Spec, size: cove.Rule, angle: float) -> float:
    """Putty of an inside corner across the seam [m2]."""
    radius = cove.sized(size, angle)[0]
    if spec.kind == BULKHEAD:
        return fillet.area(radius, angle)
    through = pressed_through(spec, angle)
    if not radius:
        return outer_edge.v_area(angle, spec.thickness, spec.gap, spec.bevel) if through else 0.0
    found = fillet.area(radius, angle)
    if through:
        found += outer_edge.filled_from_inside(angle, spec.thickness, spec.gap, spec.bevel)
    return found


def outside_section(spec: Spec, angle: float) -> float:
    """Putty of an outside corner across the seam [m2], less what the inside work has pressed through already."""
    t, gap, bevel = spec.thickness, spec.gap, spec.bevel
    edges = outer_edge.opening(angle, t, gap, bevel)
    found = opened = (edges.inner + edges.outer) * edges.depth  # as `outer_edge.v_area`
    if spec.finish != CHORD:
        found = outer_edge.rounded_area(angle, t, round_over(spec) if spec.finish == ROUND else 0.0, gap, bevel,
                                        edges)
    inward = 2 * bevel > pi - angle + 1e-12  # the opening lies inside and is not the outside's work
    if inward or (spec.kind == BOTH and pressed_through(spec, angle)):
        found = max(0.0, found - opened)
    return found


def _alike(spec: Spec, shapes: "dict | None", more: tuple) -> "dict | None":
    """What was found of the sections of this shape, to be added to: shapes of one boat are often alike."""
    return None if shapes is None else shapes.setdefault((spec.kind, spec.thickness, spec.gap, spec.bevel,
                                                          more), {})


def _putty_inside(spec: Spec, size: cove.Rule, turned: bool, shapes: "dict | None") -> float:
    def section(angle: float) -> float:
        return inside_section(spec, size, bulkhead.other_angle(angle) if turned else angle)

    def regime(angle: float) -> str:
        return cove.sized(size, bulkhead.other_angle(angle) if turned else angle)[1]

    splits = (pi - size.flat, size.flat, pi - 2 * spec.bevel)
    return changing_angle.summed(section, spec.stations, splits, regime, _alike(spec, shapes, (size, turned)))


def _putty_outside(spec: Spec, shapes: "dict | None") -> float:
    def regime(angle: float) -> bool:
        return round_over(spec) > outer_edge.largest_round(angle, spec.thickness, spec.gap, spec.bevel) + 1e-9

    return changing_angle.summed(lambda angle: outside_section(spec, angle), spec.stations,
                                 (pi - 2 * spec.bevel,), regime,
                                 _alike(spec, shapes, (spec.finish, spec.round_over)))


def _foot(spec: Spec) -> float:
    return changing_angle.summed(lambda angle: bulkhead.foot_area(angle, spec.thickness, spec.gap),
                                 spec.stations, (pi / 2,))


def faces(spec: Spec, shapes: "dict | None" = None) -> list:
    """The faces of a seam in the order of the work, each with its putty and its layers. shapes: as for `seam`"""
    kind, length = spec.kind, changing_angle.length(spec.stations)
    found = []
    if kind in (INSIDE, BOTH):
        found.append((INNER, FIRST, False, _putty_inside(spec, rule(spec), False, shapes)))
    if kind in (OUTSIDE, BOTH):
        found.append((OUTER, SECOND if kind == BOTH else FIRST, False, _putty_outside(spec, shapes)))
    if kind == BULKHEAD:
        found.append((ONE_SIDE, FIRST, False, _putty_inside(spec, rule(spec), False, shapes) + _foot(spec)))
        found.append((OTHER_SIDE, SECOND, True, _putty_inside(spec, rule(spec, SECOND), True, shapes)))
    if kind == BUTT:
        found.append((ONE_FACE, FIRST, False, spec.gap * spec.thickness * length))
        found.append((OTHER_FACE, SECOND, False, 0.0))
    if kind == STRIP:
        found.append((ON_STRIP, FIRST, False, 0.0))
    return [Face(name, side, turned, putty, laid(spec, length, side)) for name, side, turned, putty in found]


def laid(spec: Spec, length: float, side: str) -> list:
    """The layers of one face, cut into pieces."""
    found = []
    for order, (place, row) in enumerate(layers_of(spec, side)):
        lengths = tape.pieces(length, spec.reach, spec.overlap, spec.stagger, order)
        found.append(Layer(place, row.width, row.weight, lengths, row.width * sum(lengths)))
    return found


def over(face: Face, spec: Spec) -> Over:
    """What lies over one face: its layers of tape, and the peel ply over the widest of them."""
    glass = taped = widest = 0.0
    for layer in face.layers:
        glass += layer.area * layer.areal
        taped += layer.area
        widest = max(widest, layer.width)
    return Over(glass, taped, widest, widest + 2 * spec.ply_margin if widest and spec.ply == "yes" else 0.0)


def seam(spec: Spec, shapes: "dict | None" = None) -> Seam:
    """All that goes onto one copy of a seam. shapes: a dict that the seams of one question share, None for one alone"""
    work = faces(spec, shapes)
    length = changing_angle.length(spec.stations)
    glass = taped = ply_area = ply_width = weave_area = thickest = 0.0
    for face in work:
        lies = over(face, spec)
        glass += lies.glass
        taped += lies.taped
        weave_area += lies.widest * length
        ply_area += lies.ply_width * length
        ply_width = max(ply_width, lies.ply_width)
        thickest = max(thickest, sum([laminate.thickness(
            layer.areal, spec.fraction, spec.fibre_density, spec.resin_density) for layer in face.layers]))
    wet_out = laminate.resin_taken_up(glass, spec.fraction)
    prime = 0.0
    if spec.prime != "no":
        prime = weave_area * BY_KEY["first_coat"].value
        if spec.prime == "edges":
            edges = 1 if spec.kind == BULKHEAD else 0 if spec.kind == STRIP else 2
            prime += edges * spec.thickness * length * BY_KEY["first_coat"].value * BY_KEY["edges"].value
    coats = {"no": 0, "once": 1, "twice": 2}[spec.weave]
    return Seam(length, work, sum([face.putty for face in work]), glass, wet_out, taped, ply_area, ply_width,
                ply_area * spec.ply_takes, prime, coats * weave_area * BY_KEY["weave"].value, thickest)


def placed(in_place: float, tooling: float) -> float:
    """What must be placed so that enough is left after tooling:
        V / (1 - s)

    in_place: V [m3 or kg]; tooling: s, taken off, of what is placed [-], below 1
    >>> round(placed(0.88, 0.12), 6)
    1.0
    """
    return in_place / (1 - tooling)


def wet_out(face: Face, spec: Spec, tray: float) -> float:
    """Liquid resin that one face takes [kg]: in the glass, in its peel ply, and left in the tray [kg/m2]."""
    above, length = over(face, spec), changing_angle.length(spec.stations)
    return (laminate.resin_taken_up(above.glass, spec.fraction) + above.ply_width * length * spec.ply_takes
            + tray * above.taped)

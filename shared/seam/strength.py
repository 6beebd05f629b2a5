"""Strength: whether a seam carries what its panel carries, bent both ways and pulled. An estimate by textbook models.

All of it for one metre of seam: bending in N m per metre, pull in N per metre. What is not known of the panel counts
as its stronger value, what is not known of the seam as its weaker.
"""
from collections import namedtuple
from math import cos, pi, sin

from ..catalogue import strength as facts
from ..catalogue.glass import TAPE_WEIGHT
from ..catalogue.surfaces import BY_KEY, PLYWOOD
from ..equations import bulkhead, cove, fillet, laminate, outer_edge
from ..equations import strength as carries
from ..forms.types import Values
from . import seam

PLY, SOLID = "ply", "solid"
UNKNOWN, ALONG, ACROSS = "unknown", "along", "across"  # how the face grain runs, by the seam
# what is done to the seam: bent so that a face is stretched, pulled; a bulkhead bent sideways, pulled off
INNER, OUTER, PULL, SIDEWAYS, OFF = "inner", "outer", "pull", "sideways", "off"
TEARS, CRUSHED, SHEARS, CRACKS, PRESSED, PEELS = "tears", "crushed", "shears", "cracks", "pressed", "peels"

# key: INNER to OFF; seam, panel: what each carries [N]; share: of the panel; limit: TEARS to PEELS
Case = namedtuple("Case", ("key", "seam", "panel", "share", "limit"))
# cases: the worst first; flank: tape on wood each side, the least, useful: more of it gains nothing, wanted: so that
# the glass tears first, lap: where pieces meet end to end [m], all None without tape; would: a `Would`, None where the
# seam carries, or where no tape would; strength: of the panel in bending along its grain [Pa]
Strength = namedtuple("Strength", ("cases", "flank", "useful", "wanted", "lap", "would", "strength"))
# so many layers on each face [m, kg/m2]; pulls: they carry the pull too, not the bending alone
Would = namedtuple("Would", ("layers", "width", "areal", "pulls"))
# the panel: strength in bending along its grain [Pa], what it carries across the seam bent, pulled [N], its stiffness
# in pull E t [N/m], layer: one ply [m]
Panel = namedtuple("Panel", ("strength", "bends", "pulls", "stiff", "layer"))
# the glass of one face: thickness [m], stiff [Pa], what limits its pull and its push [Pa, TEARS to SHEARS], flank,
# useful, wanted [m]
Skin = namedtuple("Skin", ("thickness", "stiff", "pull", "push", "flank", "useful", "wanted"))


def reckon(spec: seam.Spec, values: Values) -> "Strength | None":
    """How strong a seam is, beside its panel; None where there is no seam, or nothing on it to be reckoned."""
    if spec.kind == seam.STRIP:
        return None
    panel, knock = _panel(spec, values), values["knock"]
    sections = {}  # type: dict
    cases, skins = _worst(spec, panel, knock, sections)
    if not cases:
        return None
    flank = useful = wanted = lap = None
    if skins:
        tight = min(skins, key=lambda skin: (min(skin.flank, skin.useful) - skin.wanted, skin.flank))
        flank, useful, wanted = tight.flank, tight.useful, tight.wanted
        lap = max([skin.thickness for skin in skins]) * carries.laminate_pull(spec.fraction) / (
            carries.layer_shear(spec.fraction))
    would = None
    if _short(cases[0]) and spec.kind != seam.BULKHEAD:
        weak = bool([case for case in cases if _short(case) and case.key != PULL])
        would = _would(spec, panel, knock, sections, weak)
    return Strength(cases, flank, useful, wanted, lap, would, panel.strength)


def _panel(spec: seam.Spec, values: Values) -> Panel:
    kind, along = values["panel"], values["grain"] == ALONG
    strength = values["panel_strength"] or (PLYWOOD[0] if kind == PLY else facts.SOLID)
    t, bends, pulls, plies = spec.thickness, 1.0, 1.0, 1
    if kind == PLY:
        counted = int(values.get("plies") or t / facts.VENEER + 0.5)
        plies = max(3, counted - 1 + counted % 2)
        if along:
            bends = carries.across_bends(plies, facts.PLY_ACROSS)
            pulls = carries.across_pulls(plies, facts.PLY_ACROSS)
    elif along:
        bends = pulls = facts.SOLID_ACROSS
    return Panel(strength, carries.plate_moment(strength * bends, t), strength * facts.PULLS[kind] * pulls * t,
                 facts.PANEL_STIFF * pulls * t, min(t / plies, facts.VENEER))


def _short(case: Case) -> bool:
    """Whether the seam carries less than its panel."""
    return case.share < 1


def _angles(spec: seam.Spec) -> list:
    """Each angle of a seam once."""
    angles = []  # type: list
    for station in spec.stations:
        if station.angle not in angles:
            angles.append(station.angle)
    return angles


def _worst(spec: seam.Spec, panel: Panel, knock: float, sections: dict) -> "tuple[list, list]":
    """The cases of a seam at the place where each is worst, the worst first; the glass of each face and place.

    sections: those that were bent before, which are those of wider tape too
    """
    found, skins = {}, []  # type: dict, list
    for angle in _angles(spec):
        cases, here = (_bulkhead(spec, angle, panel) if spec.kind == seam.BULKHEAD else
                       _cases(spec, angle, panel, knock, sections))
        skins.extend(here)
        for case in cases:
            if case.key not in found or case.share < found[case.key].share:
                found[case.key] = case
    return sorted(found.values(), key=lambda case: (case.share, case.key)), skins


def _skins(spec: seam.Spec, angle: float, radius: float, panel: Panel, knock: float) -> tuple:
    """The glass inside and outside, None where there is none. radius: of the cove, 0 without one"""
    inner = seam.FIRST if spec.kind != seam.OUTSIDE else ""
    outer = {seam.INSIDE: "", seam.OUTSIDE: seam.FIRST}.get(spec.kind, seam.SECOND)
    return (_skin(spec, inner, radius * (pi - angle) if spec.kind != seam.BUTT else spec.gap, panel, knock),
            _skin(spec, outer, _round(spec, angle), panel, knock))


def _radius(spec: seam.Spec, angle: float) -> float:
    return cove.sized(seam.rule(spec), angle)[0] if spec.kind in seam.COVED else 0.0


def _pulled(skins: tuple, panel: Panel) -> list:
    """The pull that the glass of a place carries, as a case, none without glass."""
    there = [skin for skin in skins if skin]
    if not there:
        return []
    carried = sum([skin.pull[0] * skin.thickness for skin in there])
    weak = min(there, key=lambda skin: skin.pull[0] * skin.thickness)
    return [Case(PULL, carried, panel.pulls, carried / panel.pulls, weak.pull[1])]


def _cases(spec: seam.Spec, angle: float, panel: Panel, knock: float, sections: dict) -> "tuple[list, list]":
    radius = _radius(spec, angle)
    inside, outside = _skins(spec, angle, radius, panel, knock)
    depth = _depth(spec, angle, radius)
    cases = []
    for key, stretched, pressed in ((INNER, inside, outside), (OUTER, outside, inside)):
        carried, limit = _bends(depth, stretched, pressed, knock, sections)
        cases.append(Case(key, carried, panel.bends, carried / panel.bends, limit))
    return cases + _pulled((inside, outside), panel), [skin for skin in (inside, outside) if skin]


def _bulkhead(spec: seam.Spec, angle: float, panel: Panel) -> "tuple[list, list]":
    """The foot of a bulkhead, coves and all, on the face veneer of the other panel. Tape on it peels and counts as
    nothing."""
    foot = spec.thickness
    for side, here in ((seam.FIRST, angle), (seam.SECOND, bulkhead.other_angle(angle))):
        foot += fillet.tangent_length(cove.sized(seam.rule(spec, side), here)[0], here)
    pull = BY_KEY["face_pull"].value
    bends, off = carries.plate_moment(pull, foot), pull * foot
    return [Case(SIDEWAYS, bends, panel.bends, bends / panel.bends, PEELS),
            Case(OFF, off, panel.pulls, off / panel.pulls, PEELS)], []


def _round(spec: seam.Spec, angle: float) -> float:
    """What a tape spends on the outer edge before it lies on the panels [m]."""
    if spec.kind == seam.BUTT:
        return spec.gap
    if spec.finish == seam.ROUND:
        return seam.round_over(spec) * (pi - angle)
    return 2 * spec.thickness * cos(angle / 2) if spec.finish == seam.CHORD else 0.0


def _depth(spec: seam.Spec, angle: float, radius: float) -> float:
    """How deep the seam is on its bisector, between the glass [m]."""
    t, h = spec.thickness, angle / 2
    if spec.kind == seam.BUTT:
        return t
    depth = fillet.throat(radius, angle) if radius else 0.0
    if spec.kind == seam.INSIDE:
        return depth + (t * sin(h) if seam.pressed_through(spec, angle) else 0.0)
    if spec.finish == seam.ROUND:
        return depth + outer_edge.cover(angle, t, seam.round_over(spec))
    return depth + (t / sin(h) if spec.finish == seam.SHARP else t * sin(h))


def _skin(spec: seam.Spec, side: str, bent: float, panel: Panel, knock: float) -> "Skin | None":
    rows = [row for _, row in seam.layers_of(spec, side)] if side else []
    if not rows:
        return None
    p = spec.fraction
    thickness = laminate.thickness(sum([row.weight for row in rows]), p, spec.fibre_density, spec.resin_density)
    stiff = carries.laminate_stiffness(p)
    flank = max(0.0, (max([row.width for row in rows]) - bent) / 2)
    useful = 3 / carries.shear_lag(facts.ROLLS_STIFF, panel.layer, stiff * thickness, panel.stiff)
    held = facts.ROLLS * min(flank, useful) / thickness
    tears, crushed = carries.laminate_pull(p) * knock, carries.laminate_push(p) * knock
    return Skin(thickness, stiff, min((tears, TEARS), (held, SHEARS)), min((crushed, CRUSHED), (held, SHEARS)), flank,
                useful, tears * thickness / facts.ROLLS)


def _bends(depth: float, stretched: "Skin | None", pressed: "Skin | None", knock: float,
           sections: dict) -> "tuple[float, str]":
    """What bending the section carries: whole or with its putty cracked, whichever is more."""
    if depth <= 0:
        return 0.0, CRACKS
    found = []
    for skin in (pressed, None) if pressed else (None,):
        found.append(_section(depth, stretched, skin, False, knock, sections))
        if stretched:
            found.append(_section(depth, stretched, skin, True, knock, sections))
    return max(found)


def _bent(depth: float, stretched: "Skin | None", pressed: "Skin | None", cracked: bool) -> tuple:
    """(how deep the putty counts, the axis [m], the stiffness EI) of a section in bending, from the pressed face on."""
    core, parts, reach = facts.PUTTY_STIFF, [], depth
    if cracked and stretched:
        reach = carries.cracked_axis(core, stretched.stiff, pressed.thickness if pressed else 0.0, stretched.thickness,
                                     depth)
    if pressed:
        parts.append((pressed.stiff, -pressed.thickness, 0.0))
    if reach > 0:
        parts.append((core, 0.0, reach))
    if stretched:
        parts.append((stretched.stiff, depth, depth + stretched.thickness))
    axis = carries.neutral_axis(parts)
    return reach, axis, carries.bending_stiffness(parts, axis)


def _section(depth: float, stretched: "Skin | None", pressed: "Skin | None", cracked: bool, knock: float,
             sections: dict) -> "tuple[float, str]":
    """The bending at the first limit of: a pressed skin, the putty, a stretched skin. sections: of `_worst`; a
    skin is as stiff as it is thick, however wide its tape"""
    key = (depth, stretched.thickness if stretched else 0.0, pressed.thickness if pressed else 0.0, cracked)
    if key not in sections:
        sections[key] = _bent(depth, stretched, pressed, cracked)
    core, limits = facts.PUTTY_STIFF, []
    reach, axis, stiffness = sections[key]
    if pressed:
        limits.append((pressed.push[1], pressed.stiff, -pressed.thickness, pressed.push[0]))
    if reach > 0 and axis > 0:
        limits.append((PRESSED, core, 0.0, facts.PUTTY_PUSH * knock))
    if not cracked and axis < depth:
        limits.append((CRACKS, core, depth, facts.PUTTY_BENDS * knock))
    if stretched:
        limits.append((stretched.pull[1], stretched.stiff, depth + stretched.thickness, stretched.pull[0]))
    return carries.moment(stiffness, axis, limits)


def _would(spec: seam.Spec, panel: Panel, knock: float, sections: dict, weak: bool) -> "Would | None":
    """The fewest layers, then the narrowest, on each face, that carry what the panel carries; else the bending alone,
    if the seam does not. Never less than there is. A wider tape carries no less, so the widest is tried first.

    sections: of `_worst`; weak: the seam as it is does not carry the bending
    """
    areal = max([row.weight for row in spec.layers] or [TAPE_WEIGHT / 1000])
    least, narrow = max(1, len(spec.layers)), max(seam.widths(spec) or [0.0])
    kind = spec.kind if spec.kind == seam.BUTT else seam.BOTH
    widths = [one for one in facts.TAPES if one >= narrow * (1 - 1e-9)]
    bends = None

    def short_of(layers: int, width: float) -> list:
        taped = seam.taped(spec, kind, (seam.Tape(width, areal, seam.EACH),) * layers)
        if bends or not weak:  # what is short in pull is out, however it bends
            for angle in _angles(taped):
                if _short(_pulled(_skins(taped, angle, _radius(taped, angle), panel, knock), panel)[0]):
                    return [PULL]
        return [case.key for case in _worst(taped, panel, knock, sections)[0] if _short(case)]

    for layers in range(least, facts.MOST_LAYERS + 1 if widths else 0):
        widest = short_of(layers, widths[-1])
        if widest and (bends or not weak or widest != [PULL]):
            continue
        for width in widths:
            short = widest if width == widths[-1] else short_of(layers, width)
            if not short:
                return Would(layers, width, areal, True)
            if bends is None and short == [PULL] and weak:
                bends = Would(layers, width, areal, False)
    return bends

"""Joint lines: what the joint move says of a seam, from what was reckoned of it. found: a `joint.JointResult`"""
from ..catalogue.joints import FLAT_FROM
from ..catalogue.losses import BY_KEY
from ..forms.types import Found, Values
from ..words.lengths import metres, mm, ranged
from ..words.lines import ANSWER, ASK, MORE, WARN, line, words
from ..words.numbers import DOWN, UP, bare
from ..words.units import INCH, US, braces, told
from . import coves, seam
from .impossible_joints import told_area

WHY = {
    coves.RULE: "throat as deep as the panel is thick (common practice)",
    coves.LEAST: "the smallest that glass and tool bend to (from memory)",
    coves.TAPE: "capped by the tape: it must keep its flanks on bare panel",
    coves.ROOM: "capped by the panel that is free each side",
    coves.FLAT: "from " + bare(FLAT_FROM, 1) + "° on flat tape alone (common practice)",
    coves.OWN: "as you say",
}
CALLED = {
    seam.INNER: "inside", seam.OUTER: "outside", seam.ONE_SIDE: "one side", seam.OTHER_SIDE: "other side",
    seam.ONE_FACE: "one face", seam.OTHER_FACE: "other face", seam.ON_STRIP: "strip",
}


def say(found: Found, values: Values) -> list:
    """The cove, putty and resin first; then what belongs beside them; the allowances fold away."""
    units, mix, lines = values["units"], found.mix, []
    sized = cove_lines(found, units) if found.coves else []
    lines.extend([one for one in sized if one.rank == ANSWER])
    if mix.putty:
        lines.append(line("putty", "Putty to mix", mix.volume, "m3", told(mix.volume, "mL", units, UP) + " · "
                          + told(mix.putty, "g", units, UP), rank=ANSWER,
                          rough="rounded up; with what tooling, bag and cup keep; density from memory"))
    if mix.liquid:
        lines.append(line("liquid", "Resin for tape", mix.liquid, "kg", told(mix.liquid, "g", units, UP), rank=ANSWER,
                          rough="resin and hardener, mixed; rounded up, with tray, roller, cup and spare"))
    lines.extend(tape_lines(found, values))
    if found.edge:
        lines.extend(outside_lines(found, units))
    lines.extend([one for one in sized if one.rank != ANSWER])
    lines.extend(putty_lines(found, units))
    lines.extend(resin_lines(found, units))
    lines.extend(questions(found, units))
    return lines


def cove_lines(found: Found, units: str) -> list:
    """The cove: its radius, throat and tack limit, and what decided."""
    reasons = []  # type: list
    for one in found.coves:
        if WHY[one.why] not in reasons:
            reasons.append(WHY[one.why])
    if not found.sizes:
        return [words("cove", "Cove", "none: flat tape", rough=WHY[coves.FLAT], rank=ANSWER)]
    radii, throats = [size.radius for size in found.sizes], [size.throat for size in found.sizes]
    legs, arcs = [size.leg for size in found.sizes], [size.arc for size in found.sizes]
    lines = [
        line("radius", "Cove radius", radii[0], "m", ranged(radii, units), rough="; ".join(reasons),
             rank=ANSWER),
        line("throat", "Throat", throats[0], "m", ranged(throats, units, DOWN), rough="on the bisector, rounded down"),
        line("tack", "Tack no further than", min(legs), "m", mm(min(legs), units, DOWN),
             rough="from the corner; clean to this line too" + (
                 ", here at the narrowest place" if len(legs) > 1 else "") + "; rounded down"),
        line("arc", "Across the cove", arcs[0], "m", ranged(arcs, units, UP), rank=MORE),
    ]
    if len(found.coves) > 1:
        lines.extend(station_lines(found.coves, units))
    if found.passes > 1:
        lines.append(line("passes", "Passes", found.passes, "", str(found.passes), rough="a throat above "
                          + braces("mm", BY_KEY["one_pass"].value) + " heats and sags: let the first "
                          "pass stiffen (our own judgement)"))
    if found.tape_carries:
        lines.append(words("tape_carries", "What carries the seam", "the tape, where the cove is capped or left out",
                           rough="the throat is thinner than the panel there"))
    return lines


def station_lines(several: list, units: str) -> list:
    """The cove at each station, of a bulkhead on both sides."""
    lines = []
    for place, one in enumerate(several):
        text = "flat tape" if not one.radius else "radius " + mm(one.radius, units)
        label = "At " + metres(one.at, units)
        if one.side == seam.SECOND:
            label = "Other side" if len(several) == 2 else label + ", other side"
        lines.append(line("station_" + str(place), label, one.radius, "m",
                          told(one.angle, "deg", units, places=0) + ": " + text, rough=WHY[one.why], rank=MORE))
    return lines


def outside_lines(found: Found, units: str) -> list:
    """The outer edge: its round-over and what is left over the corner."""
    edge = found.edge
    lines = [line("round_over", "Round the outer edge to", edge.radius, "m", mm(edge.radius, units, DOWN),
                  rough="the panel thickness" if found.spec.round_over is None else "as you say"),
             line("cover", "Left over the inner corner", edge.cover, "m", mm(edge.cover, units, DOWN), rank=MORE,
                  rough="wood and putty on the bisector, at the thinnest place")]
    if edge.thin:
        lines.append(words("thin_cover", "A thin edge", "Rounding to " + mm(edge.radius, units, DOWN) + " leaves only "
                           + mm(edge.cover, units, DOWN) + " over the inner corner.", rank=WARN))
    if edge.flank is not None:
        lines.append(line("outside_flank", "Tape on the flat outside", edge.flank, "m", mm(edge.flank, units, DOWN),
                          rank=MORE, rough="each side of the bend, the narrowest layer"))
    return lines


def tape_lines(found: Found, values: Values) -> list:
    """Tape in laying order, the laminate it makes, peel ply."""
    units, lines, made, copies = values["units"], [], found.seam, int(values["copies"])
    for number, laid in enumerate(found.tapes):
        text = _pieces_text(laid.pieces, units, copies) + " of " + mm(laid.width, units) + ", " + told(
            laid.areal, "g/m2", units)
        lines.append(line("tape_" + str(number + 1), "Tape, " + CALLED[laid.face] if len(made.faces) > 1 else "Tape",
                          laid.length, "m", text, rough="in laying order; ends overlap "
                          + mm(found.spec.overlap, units) if len(laid.pieces) > 1 else ""))
    if made.laminate:
        lines.append(line("laminate", "Laminate thickness", made.laminate, "m", _thin(made.laminate, units),
                          rough="without air in it, so at least; also the step at the tape's edge"))
    if made.ply_area:
        lines.append(line("ply", "Peel ply", found.ply_length, "m", metres(found.ply_length, units, UP) + " of "
                          + mm(made.ply_width, units), rough="rounded up"))
    return lines


def _pieces_text(lengths: list, units: str, copies: int) -> str:
    """"3 × 1.55 m" or "2.13 m + 1.93 m": pieces of one layer for all copies."""
    texts, counts = [], []  # type: list, list
    for piece in lengths:
        text = metres(piece, units, UP)
        if texts and texts[-1] == text:
            counts[-1] += 1
        else:
            texts.append(text)
            counts.append(1)
    row = " + ".join([(str(count) + " × " if count > 1 else "") + text for text, count in zip(texts, counts)])
    if copies > 1:
        row = str(copies) + " × (" + row + ")" if " " in row[:-2].strip(" ") and len(lengths) > 1 else (
            str(copies) + " × " + row)
    return row


def _thin(thickness: float, units: str) -> str:
    """A laminate [m] to a hundredth of a millimetre, in US units to a thousandth of an inch."""
    return bare(thickness / INCH, 3) + " in" if units == US else bare(thickness * 1000, 2) + " mm"


def putty_lines(found: Found, units: str) -> list:
    """What the putty is made of."""
    if not found.seam.putty:
        return []
    each = found.shares
    return [
        line("section", "Putty across the seam", each.section, "m2", told_area(each.section, units), rank=MORE,
             rough="in place, both faces; the mean along the seam" if len(found.seam.faces) > 1
             else "in place; the mean along the seam"),
        line("putty_in_place", "Putty in place", each.in_place, "m3", told(each.in_place, "mL", units), rank=MORE,
             rough="by the drawing, nothing added"),
        line("tooled", "Taken off by tooling", each.tooled, "kg", told(each.tooled, "g", units), rank=MORE,
             rough="of what is placed; from memory"),
        line("kept", "Stays in bag and cup", each.kept, "kg", told(each.kept, "g", units), rank=MORE,
             rough="each batch the same; from memory")]


def resin_lines(found: Found, units: str) -> list:
    """What the resin is made of, and what all of it weighs."""
    made, each, lines = found.seam, found.shares, []
    if made.glass:
        lines.append(line("wet_out", "Resin in the glass", each.wet_out, "kg", told(each.wet_out, "g", units),
                          rank=MORE, rough="for " + told(each.glass, "g", units) + " of glass"))
        if made.ply_takes:
            lines.append(line("ply_takes", "Taken up by peel ply", each.ply_takes, "kg",
                              told(each.ply_takes, "g", units), rank=MORE, rough="from memory"))
        lines.append(line("spare_kept", "Spare on it", each.spare, "kg", told(each.spare, "g", units), rank=MORE))
    if made.prime:
        lines.append(line("prime", "Primer on bare wood", each.prime, "kg", told(each.prime, "g", units, UP),
                          rough="a batch of its own; from memory"))
    if made.weave:
        lines.append(line("weave", "To fill the weave", each.weave, "kg", told(each.weave, "g", units, UP), rank=MORE,
                          rough="a batch of its own, later; from memory"))
    lines.append(line("added", "Added to the hull", each.added, "kg", told(each.added, "g", units), rank=MORE,
                      rough="what stays on it: putty, glass, resin"))
    return lines


def questions(found: Found, units: str) -> list:
    """What looks like a slip: asked back, never refused."""
    lines, spec, slips = [], found.spec, found.slips
    if slips.wide_gap:
        lines.append(words("wide_gap", "Such a gap?", "The gap, " + mm(spec.gap, units)
                           + ", is wider than the panel is thick. A strip of wood in it saves putty and heat.",
                           rank=ASK))
    if slips.flank is not None:
        lines.append(words("narrow_flank", "Wider tape?", "Only " + mm(slips.flank, units, DOWN)
                           + " of tape lie on bare panel each side of this cove; "
                           + mm(spec.flank, units) + " were wanted.", rank=ASK))
    if slips.heavy_glass:
        lines.append(words("heavy_glass", "Such heavy glass?", "One layer is thicker than the panel. Were the weights "
                           "typed in the right unit?", rank=ASK))
    return lines

"""Joint lines: what the joint move says of a seam, from what was reckoned in `seam`."""
from math import pi

from ..catalogue.losses import BY_KEY
from ..equations import cove, fillet, laminate, outer_edge
from ..equations.bulkhead import other_angle
from ..words.lengths import bare, metres, mm, ranged
from ..words.lines import ANSWER, ASK, MORE, WARN, line, words
from ..words.numbers import DOWN, UP, ceiling, shown
from ..words.units import INCH, US, told
from . import seam
from .impossible_joints import told_area

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


def cove_lines(spec, values):
    """The cove: its radius, throat and tack limit, and what decided."""
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
        lines.append(line("passes", "Passes", passes, "", str(passes), rough="a throat above {12 mm} heats and sags: "
                          "let the first pass stiffen (from memory)"))
    thin = [1 for (_, _, _, size), depth in zip([each for each in found if each[3][0]], throats)
            if size[1] in (cove.TAPE, cove.ROOM)]
    if thin or len(radii) < len(found):
        lines.append(words("tape_carries", "What carries the seam", "the tape, where the cove is capped or left out",
                           rough="the throat is thinner than the panel there"))
    return lines


def outside_lines(spec, values):
    """The outer edge: its round-over and what is left over the corner."""
    units, t = values["units"], values["thickness"]
    angles = [station.angle for station in spec["stations"]]
    if spec["finish"] != seam.ROUND:
        return []
    radius = seam.round_over(spec)
    covers = min([outer_edge.cover(angle, t, radius) for angle in angles])
    lines = [line("round_over", "Round the outer edge to", radius, "m", mm(radius, units, DOWN),
                  rough="the panel thickness" if spec["round_over"] is None else "as you say"),
             line("cover", "Left over the inner corner", covers, "m", mm(covers, units, DOWN), rank=MORE,
                  rough="wood and putty on the bisector, at the thinnest place")]
    if covers < 0.75 * t:
        lines.append(words("thin_cover", "A thin edge", "Rounding to " + mm(radius, units, DOWN) + " leaves only "
                           + mm(covers, units, DOWN) + " over the inner corner.", rank=WARN))
    rows = seam.layers_of(spec, seam.SECOND if spec["kind"] == seam.BOTH else seam.FIRST)
    if rows:
        flank = min([outer_edge.outside_flank(row["width"], angle, radius) for _, row in rows for angle in angles])
        lines.append(line("outside_flank", "Tape on the flat outside", flank, "m", mm(flank, units, DOWN),
                          rank=MORE, rough="each side of the bend, the narrowest layer"))
    return lines


def tape_lines(found, values):
    """Tape in laying order, the laminate it makes, peel ply."""
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
        lines.append(line("laminate", "Laminate thickness", found.laminate, "m", _thin(found.laminate, units),
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
        row = str(copies) + " × (" + row + ")" if " " in row[:-2].strip(" ") and len(lengths) > 1 else (
            str(copies) + " × " + row)
    return row


def _thin(thickness, units):
    """A laminate [m] to a hundredth of a millimetre, in US units to a thousandth of an inch."""
    return bare(thickness / INCH, 3) + " in" if units == US else bare(thickness * 1000, 2) + " mm"


def share_lines(found, values):
    """What the amounts are made of."""
    units, copies, lines = values["units"], values["copies"], []
    if found.putty:
        each = found.putty / found.length
        lines.append(line("section", "Putty across the seam", each, "m2", told_area(each, units), rank=MORE,
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


def questions(spec, values):
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

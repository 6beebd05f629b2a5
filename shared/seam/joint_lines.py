"""Joint lines: what the joint move says of a seam, from what was reckoned of it. found: a `joint.JointResult`"""
from ..catalogue.glass import WEIGHED
from ..catalogue.joints import COVE_WIDTH, FACES, FLAT_FROM
from ..catalogue.losses import BY_KEY
from ..forms.types import Found, Said, Values
from ..words.lines import ANSWER, ASK, MORE, WARN, Line, line, words
from ..words.messages import along, fact, length, lengths, message, noted, number, quantity, row, unit
from ..words.numbers import DOWN, NEAREST, UP, bare, shown
from ..words.units import FOOT, INCH, US
from . import coves, seam, strength_lines
from .impossible_joints import small_area

WHY = {
    coves.RULE: "joint-why.rule",
    coves.WIDTH: message("joint-why.width", times=number(bare(COVE_WIDTH[0], 2))),
    coves.LEAST: "joint-why.least",
    coves.TAPE: "joint-why.tape",
    coves.ROOM: "joint-why.room",
    coves.FLAT: message("joint-why.flat", angle=number(bare(FLAT_FROM, 1))),
    coves.OWN: "joint-why.own",
}
CALLED = dict(FACES)


def say(found: Found, values: Values) -> list[Line]:
    """The cove, putty and resin first; then what belongs beside them; the allowances fold away."""
    units, mix, lines = values["units"], found.mix, []
    sized = cove_lines(found) if found.coves else []
    lines.extend([one for one in sized if one.rank == ANSWER])
    if mix.putty:
        lines.append(line("putty", "joint-putty", mix.volume, "m3",
                          row([quantity(mix.volume, "mL", UP), quantity(mix.putty, "g", UP)], " · "), rank=ANSWER,
                          rough="joint-putty.rough"))
    if mix.liquid:
        lines.append(line("liquid", "joint-liquid", mix.liquid, "kg", quantity(mix.liquid, "g", UP), rank=ANSWER,
                          rough="joint-liquid.rough"))
    lines.extend(tape_lines(found, values))
    if found.edge:
        lines.extend(outside_lines(found))
    lines.extend([one for one in sized if one.rank != ANSWER])
    lines.extend(strength_lines.say(found.strength, found.spec, values))
    lines.extend(putty_lines(found, units))
    lines.extend(resin_lines(found))
    lines.extend(questions(found))
    return lines


def cove_lines(found: Found) -> list[Line]:
    """The cove: its radius, throat and tack limit, and what decided."""
    reasons = []  # type: list
    for one in found.coves:
        if one.why not in reasons:
            reasons.append(one.why)
    if not found.sizes:
        return [words("cove", "joint-cove", "joint-cove.none", rough=WHY[coves.FLAT], rank=ANSWER)]
    radii, throats = [size.radius for size in found.sizes], [size.throat for size in found.sizes]
    legs, arcs = [size.leg for size in found.sizes], [size.arc for size in found.sizes]
    widths = [size.width for size in found.sizes]
    lines = [
        line("radius", "joint-radius", radii[0], "m", lengths(radii), rough=noted([
            WHY[coves.OWN if why == coves.WIDTH and found.spec.cove_width else why] for why in reasons]), rank=ANSWER),
        line("width", "joint-cove-width", widths[0], "m", lengths(widths), rough="joint-cove-width.rough"),
        line("throat", "joint-throat", throats[0], "m", lengths(throats, DOWN), rough="joint-throat.rough"),
        line("tack", "joint-tack", min(legs), "m", length(min(legs), DOWN),
             rough="joint-tack.rough-narrowest" if len(legs) > 1 else "joint-tack.rough"),
        line("arc", "joint-arc", arcs[0], "m", lengths(arcs, UP), rank=MORE),
    ]
    if len(found.coves) > 1:
        lines.extend(station_lines(found.coves))
    if found.passes > 1:
        lines.append(line("passes", "joint-passes", found.passes, "", found.passes,
                          rough=message("joint-passes.rough", throat=fact("mm", BY_KEY["one_pass"].value))))
    if found.tape_carries:
        lines.append(words("tape_carries", "joint-tape-carries", "joint-tape-carries.text",
                           rough="joint-tape-carries.rough"))
    return lines


def station_lines(several: list) -> list[Line]:
    """The cove at each station, of a bulkhead on both sides."""
    lines = []
    for place, one in enumerate(several):
        angle = quantity(one.angle, "deg", places=0)
        text = message("joint-station-line.cove", angle=angle, radius=length(one.radius)) if one.radius else message(
            "joint-station-line.flat", angle=angle)
        label = message("joint-station-line", at=along(one.at))
        if one.side == seam.SECOND:
            label = "joint-other-side" if len(several) == 2 else message("joint-other-side.at", at=along(one.at))
        lines.append(line("station_" + str(place), label, one.radius, "m", text, rough=WHY[one.why], rank=MORE))
    return lines


def outside_lines(found: Found) -> list[Line]:
    """The outer edge: its round-over and what is left over the corner."""
    edge = found.edge
    lines = [line("round_over", "joint-round-over", edge.radius, "m", length(edge.radius, DOWN),
                  rough="joint-round-over.panel" if found.spec.round_over is None else WHY[coves.OWN]),
             line("cover", "joint-cover", edge.cover, "m", length(edge.cover, DOWN), rank=MORE,
                  rough="joint-cover.rough")]
    if edge.thin:
        lines.append(words("thin_cover", "joint-thin-cover", message(
            "joint-thin-cover.text", radius=length(edge.radius, DOWN), cover=length(edge.cover, DOWN)), rank=WARN))
    if edge.flank is not None:
        lines.append(line("outside_flank", "joint-outside-flank", edge.flank, "m", length(edge.flank, DOWN),
                          rank=MORE, rough="joint-outside-flank.rough"))
    return lines


def tape_lines(found: Found, values: Values) -> list[Line]:
    """Tape in laying order, the laminate it makes, peel ply."""
    units, lines, made, copies = values["units"], [], found.seam, int(values["copies"])
    for place, laid in enumerate(found.tapes):
        text = message("joint-tape.text", pieces=_pieces(laid.pieces, units, copies), width=length(laid.width),
                       weight=quantity(laid.areal, "g/m2"))
        lines.append(line("tape_" + str(place + 1), message("joint-tape.of-face", face=CALLED[laid.face])
                          if len(made.faces) > 1 else "joint-tape", laid.length, "m", text,
                          rough=message("joint-tape.rough", overlap=length(found.spec.overlap))
                          if len(laid.pieces) > 1 else ""))
    if made.laminate:
        lines.append(line("laminate", "joint-laminate", made.laminate, "m", _thin(made.laminate, units),
                          rough="joint-laminate.rough"))
    if made.ply_area:
        lines.append(line("ply", "joint-ply", found.ply_length, "m", message(
            "joint-ply.text", length=along(found.ply_length, UP), width=length(made.ply_width)),
            rough="joint-ply.rough"))
    return lines


def _pieces(pieces: list, units: str, copies: int) -> Said:
    """"3 × 1.55 m" or "2.13 m + 1.93 m": pieces of one layer for all copies."""
    each, counts = [], []  # type: list, list
    for piece in pieces:
        if each and _hundredth(each[-1], units) == _hundredth(piece, units):
            counts[-1] += 1
        else:
            each.append(piece)
            counts.append(1)
    laid = row([row([count, along(piece, UP)], " × ") if count > 1 else along(piece, UP)
                for piece, count in zip(each, counts)], " + ")
    if copies == 1:
        return laid
    return message("joint-pieces.several" if len(pieces) > 1 else "joint-pieces", copies=copies, pieces=laid)


def _hundredth(piece: float, units: str) -> str:
    """To which hundredth of a metre or foot a piece is cut: two of the same are alike."""
    return shown(piece / FOOT if units == US else piece, 2, UP)


def _thin(thickness: float, units: str) -> Said:
    """A laminate [m] to a hundredth of a millimetre, in US units to a thousandth of an inch."""
    digits = bare(thickness / INCH, 3) if units == US else bare(thickness * 1000, 2)
    return message("joint-laminate.text", thickness=number(digits), unit=unit("mm"))


def putty_lines(found: Found, units: str) -> list[Line]:
    """What the putty is made of."""
    if not found.seam.putty:
        return []
    each = found.shares
    return [
        line("section", "joint-section", each.section, "m2", small_area(each.section, units), rank=MORE,
             rough="joint-section.rough-faces" if len(found.seam.faces) > 1 else "joint-section.rough"),
        line("putty_in_place", "joint-putty-in-place", each.in_place, "m3", quantity(each.in_place, "mL"), rank=MORE,
             rough="joint-putty-in-place.rough"),
        line("tooled", "joint-tooling", each.tooled, "kg", quantity(each.tooled, "g"), rank=MORE,
             rough="joint-tooling.rough"),
        line("kept", "joint-kept", each.kept, "kg", quantity(each.kept, "g"), rank=MORE,
             rough="joint-kept.rough")]


def resin_lines(found: Found) -> list[Line]:
    """What the resin is made of, and what all of it weighs."""
    made, each, lines = found.seam, found.shares, []
    if made.glass:
        lines.append(line("wet_out", "joint-wet-out", each.wet_out, "kg", quantity(each.wet_out, "g"), rank=MORE,
                          rough=message("joint-wet-out.rough", glass=quantity(each.glass, "g"))))
        if made.ply_takes:
            lines.append(line("ply_takes", "joint-ply-takes", each.ply_takes, "kg", quantity(each.ply_takes, "g"),
                              rank=MORE, rough="joint-ply-takes.rough"))
        lines.append(line("spare_kept", "joint-spare-kept", each.spare, "kg", quantity(each.spare, "g"), rank=MORE))
        on = each.wet_out + each.weave
        lines.append(line("resin_on", "joint-resin-on", on, "kg", row([quantity(on, "g"), message(
            "joint-resin-on.times", times=_times(on / each.glass))], " · "), rough=message(
                "joint-resin-on.rough", mixed=_times((found.mix.liquid + each.weave) / each.glass, UP),
                low=number(bare(WEIGHED[0], 1)), high=number(bare(WEIGHED[1], 1)))))
    if made.prime:
        lines.append(line("prime", "joint-prime", each.prime, "kg", quantity(each.prime, "g", UP),
                          rough="joint-prime.rough"))
    if made.weave:
        lines.append(line("weave", "joint-weave", each.weave, "kg", quantity(each.weave, "g", UP), rank=MORE,
                          rough="joint-weave.rough"))
    lines.append(line("added", "joint-added", each.added, "kg", quantity(each.added, "g"), rank=MORE,
                      rough="joint-added.rough"))
    return lines


def _times(ratio: float, toward: str = NEAREST) -> Said:
    return number(shown(ratio, 1, toward))


def questions(found: Found) -> list[Line]:
    """What looks like a slip: asked back, never refused."""
    lines, spec, slips = [], found.spec, found.slips
    if slips.wide_gap:
        lines.append(words("wide_gap", "joint-wide-gap", message("joint-wide-gap.text", gap=length(spec.gap)),
                           rank=ASK))
    if slips.flank is not None:
        lines.append(words("narrow_flank", "joint-narrow-flank", message(
            "joint-narrow-flank.text", flank=length(slips.flank, DOWN), wanted=length(spec.flank)), rank=ASK))
    if slips.heavy_glass:
        lines.append(words("heavy_glass", "joint-heavy-glass", "joint-heavy-glass.text", rank=ASK))
    return lines

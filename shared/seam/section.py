"""Section: the drawing of a joint across the seam, to scale, and a strip of sections along a changing one.

Everything is worked in metres with the inside up and the corner of the inner faces in the origin, then set on a sheet.
Only the tape is drawn thicker than it is; the words say so.
"""
from math import cos, pi, sin, sqrt

from ..drawing.shapes import figure, note, path
from ..drawing.sheet import ARC_STEPS, EDGE, LAYER, VENEERS, WIDTH, Sheet, bow, mirrored, told_tape
from ..equations import cove, outer_edge
from ..forms.types import Said
from ..words.messages import along as along_seam
from ..words.messages import figure_of, length, message, noted, quantity, sentences
from ..words.numbers import DOWN
from . import seam
from .bulkhead_section import bulkhead_figure


def corner(spec: seam.Spec, angle: float, near: bool = False) -> dict:
    """Outlines of a corner in metres: {"panel", "inside", "outside", "edge", ...}; near: short panels."""
    h, t = angle / 2, spec.thickness
    s, c = sin(h), cos(h)
    found = outer_edge.opening(angle, t, spec.gap, spec.bevel)
    top = found.inner * c / s
    inner, outer = (found.inner, top), (found.outer, top - found.depth)
    radius = cove.sized(seam.rule(spec), angle)[0] if spec.kind != seam.OUTSIDE else 0.0
    leg = radius * c / s
    widest = max(seam.widths(spec) or [0.0])
    flank = 0.0 if near else max(0.0, (widest - radius * (pi - angle)) / 2)
    far = max(leg + flank + t / 2, 3 * t)
    shape = {"h": h, "radius": radius, "leg": leg, "far": far, "inner": inner, "outer": outer, "edge": [outer],
             "round": None, "inside": [], "outside": []}
    if spec.kind != seam.INSIDE:
        _outer_edge(spec, angle, shape)
    shape["panel"] = [inner, (far * s, far * c), (far * s + t * c, far * c - t * s)] + shape["edge"]
    through = seam.pressed_through(spec, angle)
    if spec.kind != seam.OUTSIDE:
        if radius:
            shape["inside"] = bow(h, radius, radius / s) + ([(-inner[0], top)] if inner[0] else [])
            if through:
                shape["inside"] += [(-outer[0], outer[1]), outer]
            shape["inside"] += [inner]
        elif through:
            shape["inside"] = [(-inner[0], top), (-outer[0], outer[1]), outer, inner]
    return shape


def _outer_edge(spec: seam.Spec, angle: float, shape: dict) -> None:
    """The outer edge as it is finished: the panel's own outline there, and the filling's."""
    h, t, inner, outer = shape["h"], spec.thickness, shape["inner"], shape["outer"]
    s = sin(h)
    inward = 2 * spec.bevel > pi - angle + 1e-12
    filled = spec.kind == seam.BOTH and seam.pressed_through(spec, angle)
    start = [outer] if inward or filled else [inner, outer]
    if spec.finish == seam.CHORD:
        edge = []
    elif spec.finish == seam.SHARP:
        edge = [(0.0, -t / s)]
    else:
        r = seam.round_over(spec)
        centre = (r - t) / s
        shape["round"] = (r, centre)
        edge = bow(h, r, centre)
        if r > outer_edge.largest_round(angle, t, spec.gap, spec.bevel) + 1e-9:
            x, y = outer_edge.round_meets_edge(angle, t, r, spec.gap, spec.bevel)
            kept = [point for point in edge if point[0] > x + 1e-9]
            shape["edge"] = kept + [(x, y)]
            edge = [(x, y)] + [point for point in edge if abs(point[0]) < x - 1e-9] + [(-x, y)]
            start = [] if filled or inward else [inner]
    outline = start + edge + mirrored(start)
    shape["outside"] = outline if len(outline) > 2 and spec.kind != seam.INSIDE else []


def _tapes(spec: seam.Spec, shape: dict, sheet: Sheet, side: str) -> list:
    """Layers on the inside (on the cove) or on the outside (round the edge), each a little off the one below."""
    h, found = shape["h"], []
    s, c = sin(h), cos(h)
    turn = pi - 2 * h
    for order, (_, row) in enumerate(seam.layers_of(spec, side)):
        off = (1.8 + LAYER * order) / sheet.scale
        if side == seam.FIRST and spec.kind != seam.OUTSIDE:
            radius = max(shape["radius"] - off, 0.0)
            centre = max(shape["radius"], off) / s
            steps = 1 if not radius else ARC_STEPS
        else:
            r, centre = shape["round"] or (0.0, -spec.thickness / s)
            radius, steps = r + off, ARC_STEPS
        points = bow(h, radius, centre, steps)
        flank = max(0.0, (row.width - radius * turn) / 2)
        first = points[0]
        right = (first[0] + flank * s, first[1] + flank * c)
        found.append(sheet.path("tape", [right] + points + [(-right[0], right[1])]))
    return found


def _points(shape: dict, reach: float) -> list:
    return list(shape["panel"]) + mirrored(shape["panel"]) + list(shape["outside"]) + [(0.0, -reach)]


def measures(spec: seam.Spec, angle: float, shape: dict) -> dict:
    """The numbers of a corner as the drawing and its words give them; "" where there is none."""
    radius = shape["radius"]
    depth = radius / sin(angle / 2) - radius
    return {"angle": quantity(angle, "deg", places=0), "thickness": length(spec.thickness), "depth": depth,
            "gap": length(spec.gap) if spec.gap else "", "radius": length(radius) if radius else "",
            "throat": length(depth, DOWN), "tack": length(shape["leg"], DOWN)}


def corner_figure(spec: seam.Spec, angle: float) -> dict:
    """A corner, inside up: panels, putty, tape and what is measured."""
    t = spec.thickness
    shape = corner(spec, angle)
    s, c = sin(angle / 2), cos(angle / 2)
    sheet = Sheet(_points(shape, t / s))
    size = measures(spec, angle, shape)
    shapes = []
    for role, outline in (("putty", shape["inside"]), ("outside-putty", shape["outside"])):
        if outline:
            shapes.append(sheet.area(role, outline))
    shapes.append(sheet.area("panel", shape["panel"]))
    shapes.append(sheet.area("panel", mirrored(shape["panel"])))
    _veneers(shape, t, s, c, sheet)
    shapes.extend(sheet.veneers())
    if spec.kind != seam.OUTSIDE:
        shapes.extend(_tapes(spec, shape, sheet, seam.FIRST))
    if spec.kind != seam.INSIDE:
        shapes.extend(_tapes(spec, shape, sheet, seam.SECOND if spec.kind == seam.BOTH else seam.FIRST))
    reach = t + (LAYER * (len(spec.layers) + 1) + 6) / sheet.scale  # dimension lines end outside wood and tape
    over = _dimension_cove(sheet, shape, size, s, c, reach) if shape["radius"] else 6
    _dimension_angle(sheet, shape, size, angle, over)
    far = shape["far"] * 0.62
    face = sheet.one(-far * s, far * c)
    x, y = tip = sheet.one(-far * s - reach * c, far * c - reach * s)
    sheet.rule("dimension", face, tip)
    sheet.ticks(face, sheet.one(-far * s - t * c, far * c - t * s))
    sheet.write("dimension", max(x - 2, 52), y + 12, size["thickness"], "end")
    sheet.write_tape(seam.widths(spec), sheet.bottom + 24)
    if spec.gap:
        sheet.write("dimension", WIDTH / 2 + 14, sheet.bottom + 40, message("section-gap", gap=size["gap"]))
    return figure("section", "section-corner", WIDTH,
                  sheet.bottom + (46 if spec.gap else 32), shapes + sheet.measures(), _told_corner(spec, size),
                  size=1000 / sheet.scale)


def _veneers(shape: dict, t: float, s: float, c: float, sheet: Sheet) -> None:
    """The glue lines of plywood, along both panels, from the edge as it is cut or rounded."""
    (ix, iy), (ox, oy), far = shape["inner"], shape["outer"], shape["far"]
    scale, x0, y0 = sheet.scale, sheet.zero_x, sheet.zero_y
    for k in range(1, VENEERS):
        share = k / VENEERS
        x, y = ix + (ox - ix) * share, iy + (oy - iy) * share
        if shape["round"]:
            r, centre = shape["round"]
            along, off = x * s + (y - centre) * c, x * c - (y - centre) * s
            back = -sqrt(max(r * r - off * off, 0.0))
            if off < r and along < back and x * x + (y - centre) * (y - centre) > r * r:
                x, y = x + (back - along) * s, y + (back - along) * c
        x, y = x * scale, y0 - y * scale
        across, up = (far * s + t * c * share) * scale, y0 - (far * c - t * s * share) * scale
        sheet.rule("veneer", (x0 + x, y), (x0 + across, up))
        sheet.rule("veneer", (x0 - x, y), (x0 - across, up))


def _dimension_angle(sheet: Sheet, shape: dict, size: dict, angle: float, over: float) -> None:
    """The angle with its arc between the panels where there is room `over` the cove's radius, else in the corner of
    the sheet."""
    x, y = sheet.one(0.0, 0.0)
    far = min(0.66 * shape["far"] * sheet.scale, y - 26)
    if far > 2 * HALF_WORDS and sqrt(far * far - HALF_WORDS * HALF_WORDS) > over:
        turns = [angle * (k / ARC_STEPS - 0.5) for k in range(ARC_STEPS + 1)]
        points = [(x + far * sin(turn), y - far * cos(turn)) for turn in turns]
        sheet.curves.append(path("dimension", points))
        sheet.ticks(points[0], points[-1])
        sheet.write("label", x, y - far - 6, size["angle"])
    else:
        sheet.write("label", EDGE, 18, size["angle"], "start")


HALF_WORDS = 36  # units: half of "R 12.3 mm"


def _dimension_cove(sheet: Sheet, shape: dict, size: dict, s: float, c: float, reach: float) -> float:
    """Radius, throat and tack limit with their lines; returns how high over the corner that reaches."""
    x, y = bottom = sheet.one(0.0, size["depth"])
    zero = sheet.one(0.0, 0.0)
    # so high that the words lie between the panels and not on them
    up = max(min(shape["radius"] * sheet.scale, 34), min(HALF_WORDS * c / s - zero[1] + y, y - 34))
    sheet.rule("dimension", (x, y - up), bottom, zero)
    sheet.ticks(bottom, zero)
    sheet.write("dimension", x, y - up - 5, message("section-radius", radius=size["radius"]))
    sheet.rule("leader", zero, (x, sheet.bottom + 12))
    sheet.write("dimension", x + 14, sheet.bottom + 24, message("section-throat", length=size["throat"]))
    # along the panel from the corner: the tack limit, measured outside wood and tape
    leg = shape["leg"]
    foot, tip = sheet.one(reach * c, -reach * s), sheet.one(leg * s + reach * c, leg * c - reach * s)
    sheet.rule("leader", sheet.one(leg * s, leg * c), tip)
    sheet.rule("dimension", foot, tip)
    sheet.ticks(foot, tip)
    x, y = tip
    # flat panels leave room below, steep ones beside; five letters and a length take about 90 units
    beside = c >= 0.5 or x >= WIDTH - 120
    sheet.write("dimension", min(x + 4, WIDTH - 95) if beside else x + 6, y + 14,
                message("section-tack", length=size["tack"]), "start" if beside else "middle")
    return zero[1] - y + up + 22


def _told_corner(spec: seam.Spec, size: dict) -> Said:
    thickness, angle = size["thickness"], figure_of(size["angle"])
    told = ["section-inside-up", message("section-corner.apart", thickness=thickness, angle=angle, gap=size["gap"])
            if size["gap"] else message("section-corner.told", thickness=thickness, angle=angle)]
    if size["radius"]:
        told.append(message("section-cove", radius=size["radius"], throat=size["throat"], tack=size["tack"]))
    elif spec.kind != seam.OUTSIDE:
        told.append("section-cove.none")
    if spec.kind != seam.INSIDE:
        if spec.finish == seam.ROUND:
            told.append(message("section-outside.round", radius=length(seam.round_over(spec))))
        else:
            told.append("section-outside.flush" if spec.finish == seam.CHORD else "section-outside.sharp")
    return sentences(told + [told_tape(seam.widths(spec))])


def flat_figure(spec: seam.Spec) -> dict:
    """Panels in line, or one face with a strip on it."""
    t = spec.thickness
    widest = max(seam.widths(spec) or [0.0])
    ground = max(widest / 2 + t, 4 * t)
    gap = spec.gap / 2 if spec.kind == seam.BUTT else 0.0
    sheet = Sheet([(-ground, t), (ground, -t)])
    shapes = []
    for way in (1, -1) if spec.kind == seam.BUTT else ():
        shapes.append(sheet.area("panel", [(way * gap, 0.0), (way * ground, 0.0), (way * ground, -t), (way * gap, -t)]))
    if spec.kind == seam.STRIP:
        shapes.append(sheet.area("panel", [(-ground, 0.0), (ground, 0.0), (ground, -t), (-ground, -t)]))
    for k in range(1, VENEERS):
        for start, end in ((-ground, -gap), (gap, ground)):
            sheet.rule("veneer", sheet.one(start, -t * k / VENEERS), sheet.one(end, -t * k / VENEERS))
    shapes.extend(sheet.veneers())
    if gap:
        shapes.append(sheet.area("putty", [(-gap, 0.0), (gap, 0.0), (gap, -t), (-gap, -t)]))
    for side, level, way in ((seam.FIRST, 0.0, 1), (seam.SECOND, -t, -1)):
        if spec.kind == seam.STRIP and side == seam.SECOND:
            continue
        for order, (_, row) in enumerate(seam.layers_of(spec, side)):
            y = level + way * (1.8 + LAYER * order) / sheet.scale
            shapes.append(sheet.path("tape", [(-row.width / 2, y), (row.width / 2, y)]))
    x, y = sheet.one(ground * 0.8, -t / 2)
    sheet.write("dimension", x, y + 4, length(t))
    sheet.write_tape(seam.widths(spec), sheet.bottom + 22)
    if gap:
        sheet.write("dimension", WIDTH / 2, sheet.bottom + 22, message("section-gap", gap=length(spec.gap)))
    if gap:
        told = message("section-flat.apart", thickness=length(t), gap=length(spec.gap))
    else:
        told = message("section-flat.butt" if spec.kind == seam.BUTT else "section-flat.strip", thickness=length(t))
    return figure("section", "section-across", WIDTH, sheet.bottom + 32, shapes + sheet.measures(),
                  sentences([told, told_tape(seam.widths(spec))]), size=1000 / sheet.scale)


MOST_IN_STRIP = 5


def strip_figure(spec: seam.Spec) -> dict:
    """Sections at the stations side by side, all to one scale."""
    stations = spec.stations
    if len(stations) > MOST_IN_STRIP:
        last = len(stations) - 1
        stations = [stations[place * last // (MOST_IN_STRIP - 1)] for place in range(MOST_IN_STRIP)]
    drawn = seam.of_kind(spec, seam.INSIDE) if spec.kind == seam.BULKHEAD else spec
    cell = (WIDTH - 8) / len(stations)
    outlines = [corner(drawn, station.angle, True) for station in stations]
    reach = spec.thickness / min([sin(station.angle / 2) for station in stations])
    scale = min([Sheet(_points(shape, reach), 0, 0, cell - 8, 110).scale for shape in outlines])
    shapes, texts, told, bottom = [], [], [], 0.0
    for place, (station, shape) in enumerate(zip(stations, outlines)):
        sheet = Sheet(_points(shape, reach), 4 + place * cell + 4, 8, cell - 8, 110, scale)
        bottom = max(bottom, sheet.bottom)
        for role, outline in (("putty", shape["inside"]), ("outside-putty", shape["outside"]),
                              ("panel", shape["panel"]), ("panel", mirrored(shape["panel"]))):
            if outline:
                shapes.append(sheet.area(role, outline))
        at, opens = along_seam(station.at), quantity(station.angle, "deg", places=0)
        if shape["radius"]:
            texts.append((at, opens, length(shape["radius"])))
            told.append(message("section-station.cove", at=at, angle=opens, radius=length(shape["radius"])))
        else:
            texts.append((at, opens, "section-station.short"))
            told.append(message("section-station.flat", at=at, angle=opens))
    for place, rows in enumerate(texts):
        for line, text in enumerate(rows):
            shapes.append(note("dimension", 4 + (place + 0.5) * cell, bottom + 16 + 15 * line, text))
    return figure("stations", "section-along", WIDTH, bottom + 54, shapes,
                  message("section-along.told", stations=noted(told)), "along")


def across(spec: seam.Spec) -> dict:
    """The drawing across the seam, at its first station."""
    if spec.kind not in seam.CORNERS:
        return flat_figure(spec)
    return (bulkhead_figure if spec.kind == seam.BULKHEAD else corner_figure)(spec, spec.stations[0].angle)


def along(spec: seam.Spec) -> list:
    """The strip of sections of a seam whose angle changes: a list of one drawing, or none."""
    stations = spec.stations
    if spec.kind not in seam.CORNERS or (len(stations) == 2 and abs(stations[0].angle - stations[1].angle) < 1e-9):
        return []
    return [strip_figure(spec)]

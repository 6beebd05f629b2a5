"""Bulkhead section: the drawing of a panel standing on another, a cove on either side."""
from math import cos, pi, sin

from ..drawing.shapes import figure
from ..drawing.sheet import ARC_STEPS, EDGE, LAYER, VENEERS, WIDTH, Sheet, bow, told_tape
from ..equations import cove
from ..equations.bulkhead import other_angle
from ..forms.types import Said
from ..words.messages import figure_of, length, message, quantity, sentences
from ..words.numbers import DOWN
from . import seam


def bulkhead_figure(spec: seam.Spec, angle: float) -> dict:
    """A bulkhead on its panel, a cove on either side."""
    t = spec.thickness
    u, n = (cos(angle), sin(angle)), (sin(angle), -cos(angle))
    half = t / 2 / sin(angle)
    sides = [(1, angle, seam.FIRST), (-1, other_angle(angle), seam.SECOND)]
    sizes = [cove.sized(seam.rule(spec, side), a)[0] for _, a, side in sides]
    widest = max(seam.widths(spec) or [0.0])
    tall = max([radius * cos(a / 2) / sin(a / 2) for radius, (_, a, _) in zip(sizes, sides)] + [widest / 2]) + 2 * t
    lift = spec.gap + t / 2 * abs(n[1])
    low, high = lift / u[1], tall / u[1]
    panel = [(n[0] * t / 2 + u[0] * low, n[1] * t / 2 + u[1] * low),
             (n[0] * t / 2 + u[0] * high, n[1] * t / 2 + u[1] * high),
             (-n[0] * t / 2 + u[0] * high, -n[1] * t / 2 + u[1] * high),
             (-n[0] * t / 2 + u[0] * low, -n[1] * t / 2 + u[1] * low)]
    ground = half + tall
    hull = [(-ground, 0.0), (ground, 0.0), (ground, -t), (-ground, -t)]
    sheet = Sheet(panel + hull)
    shapes = [sheet.area("putty", [(half, 0.0), panel[0], panel[3], (-half, 0.0)])]
    tapes, words = [], []
    for radius, (way, a, side) in zip(sizes, sides):
        outline = _turned(bow(a / 2, radius, radius / sin(a / 2)) + [(0.0, 0.0)], a, way, half) if radius else []
        if outline:
            shapes.append(sheet.area("putty", outline))
        shape = {"h": a / 2, "radius": radius, "round": None}
        tapes.extend(_turned_tapes(spec, shape, sheet, side, a, way, half))
        if radius:
            x, y = sheet.one(*_turned([(0.0, radius / sin(a / 2) - radius)], a, way, half)[0])
            sheet.write("dimension", x + way * 40, y - 26, message("section-radius", radius=length(radius)))
            sheet.rule("dimension", (x, y), (x + way * 26, y - 22))
            leg = radius * cos(a / 2) / sin(a / 2)
            x, y = sheet.one(way * (half + leg), -t)
            sheet.rule("dimension", (x, y - t * sheet.scale), (x, y + 6))
            sheet.write("dimension", x, y + 18, message("section-tack", length=length(leg, DOWN)))
            words.append(message("section-bulkhead.cove", radius=length(radius), angle=_degrees(a)))
        else:
            words.append(message("section-bulkhead.flat", angle=_degrees(a)))
    shapes.append(sheet.area("panel", panel))
    shapes.append(sheet.area("panel", hull))
    for k in range(1, VENEERS):
        share = k / VENEERS
        ends = [(a[0] + (b[0] - a[0]) * share, a[1] + (b[1] - a[1]) * share)
                for a, b in ((panel[0], panel[3]), (panel[1], panel[2]))]
        sheet.rule("veneer", sheet.one(*ends[0]), sheet.one(*ends[1]))
        sheet.rule("veneer", sheet.one(-ground, -t * share), sheet.one(ground, -t * share))
    shapes.extend(sheet.veneers() + tapes)
    sheet.write("label", WIDTH - EDGE, 16, message(
        "section-bulkhead.measures", angle=quantity(angle, "deg", places=0),
        other=quantity(other_angle(angle), "deg", places=0), thickness=length(t)), "end")
    sheet.write_tape(seam.widths(spec), 16)
    told = [message("section-bulkhead", thickness=length(t), one=words[0], other=words[1]),
            told_tape(seam.widths(spec))]
    return figure("section", "section-across", WIDTH, sheet.bottom + 30, shapes + sheet.measures(), sentences(told),
                  size=1000 / sheet.scale)


def _degrees(angle: float) -> Said:
    """Whole degrees, without their sign."""
    return figure_of(quantity(angle, "deg", places=0))


def _turned(points: list, angle: float, way: int, half: float) -> list:
    """From a corner with its bisector upright to one beside a bulkhead; way: 1 right, -1 left."""
    turn = angle / 2 - pi / 2
    s, c = sin(turn), cos(turn)
    return [(way * (half + x * c - y * s), x * s + y * c) for x, y in points]


def _turned_tapes(spec: seam.Spec, shape: dict, sheet: Sheet, side: str, angle: float, way: int,
                  half: float) -> list:
    found = []
    h = shape["h"]
    for order, (_, row) in enumerate(seam.layers_of(spec, side)):
        off = (1.8 + LAYER * order) / sheet.scale
        radius = max(shape["radius"] - off, 0.0)
        points = bow(h, radius, max(shape["radius"], off) / sin(h), ARC_STEPS if radius else 1)
        flank = max(0.0, (row.width - radius * (pi - angle)) / 2)
        right = (points[0][0] + flank * sin(h), points[0][1] + flank * cos(h))
        found.append(sheet.path("tape", _turned([right] + points + [(-right[0], right[1])], angle, way, half)))
    return found

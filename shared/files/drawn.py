"""Drawn: a drawing of an answer as a picture by itself (SVG), and spreaders for a cutter (DXF)."""
from ..words.numbers import bare, shown

CUT, MARKS = "CUT", "MARKS"  # layers of a DXF: what the cutter follows, and what it only draws
BETWEEN = 20.0  # units from one drawing to the next
LINE, FINE = 1.5, 0.2  # of a drawing on a screen [units], and of one in millimetres


def svg(figures: "list[dict]") -> str:
    """Drawings as one picture, one below the other; in millimetres where it says how large it is, as it is printed.

    figures: as an answer has them, all that is said in them as text
    """
    width = max([one["width"] for one in figures])
    height = sum([one["height"] for one in figures]) + BETWEEN * (len(figures) - 1)
    size, drawn, y = figures[0].get("size") or 0.0, [], 0.0  # type: float, list, float
    for one in figures:
        shapes = "".join([_shape(shape) for shape in one["shapes"]])
        drawn.append("<g transform=\"translate(0 " + bare(y, 2) + ")\">" + shapes + "</g>" if y else shapes)
        y += one["height"] + BETWEEN
    across = ["{}=\"{}{}\"".format(name, bare(value * (size or 1), 3), "mm" if size else "")
              for name, value in (("width", width), ("height", height))]
    fine = figures[0]["name"].startswith("template_")  # a sheet to print
    return ('<?xml version="1.0" encoding="UTF-8"?>\n<svg xmlns="http://www.w3.org/2000/svg" ' + " ".join(across)
            + ' viewBox="0 0 ' + bare(width, 2) + " " + bare(height, 2) + '" fill="none" stroke="#000" stroke-width="'
            + bare(FINE if fine else LINE, 1) + '" stroke-linejoin="round" font-family="sans-serif" font-size="'
            + ("4" if fine else "13") + '"><title>' + escaped(figures[0]["title"]) + "</title><desc>"
            + escaped(figures[0]["told"]) + "</desc>" + "".join(drawn) + "</svg>\n")


def escaped(text: str) -> str:
    """Text as XML has it.

    >>> escaped('a < b & "c"')
    'a &lt; b &amp; &quot;c&quot;'
    """
    for sign, name in (("&", "amp"), ("<", "lt"), (">", "gt"), ('"', "quot"), ("'", "#x27")):
        text = text.replace(sign, "&" + name + ";")
    return text


def _at(x: float, y: float) -> str:
    return bare(x, 2) + " " + bare(y, 2)


def _shape(shape: dict) -> str:
    kind, role = shape["kind"], 'class="' + shape["role"] + '"'
    if kind == "note":
        return _text(role, shape["points"][0][0], shape["points"][0][1], shape["text"], shape["anchor"])
    if kind == "notes":
        return "".join([_text(role, x, shape["y"], text, "middle") for x, text in zip(shape["xs"], shape["texts"])])
    if kind == "rungs":
        steps = "".join(["M" + _at(x, shape["top"]) + "V" + bare(shape["bottom"], 2) for x in shape["xs"]])
    else:
        lines = kind == "strokes"
        steps = "".join([("L" if (place % 2 if lines else place) else "M") + _at(point[0], point[1])
                         for place, point in enumerate(shape["points"])]) + ("Z" if kind == "area" else "")
    return "<path " + role + ' d="' + steps + '"/>' if steps else ""


def _text(role: str, x: float, y: float, text: str, anchor: str) -> str:
    return ("<text " + role + ' x="' + bare(x, 2) + '" y="' + bare(y, 2) + '" text-anchor="' + anchor
            + '" fill="#000" stroke="none">' + escaped(text) + "</text>")


def dxf(height: float, templates: list) -> str:
    """Spreaders as DXF R12, in millimetres, y up: three straight sides and one true arc each.

    height: of the sheet [mm]; templates: (radius, top of the handle, (x, y) of the tip's centre) [mm], y down
    """
    rows = [(0, "SECTION"), (2, "HEADER"), (9, "$ACADVER"), (1, "AC1009"), (9, "$INSUNITS"), (70, "4"), (0, "ENDSEC"),
            (0, "SECTION"), (2, "ENTITIES")]
    for radius, top, centre in templates:
        left, right, above, end = centre[0] - radius, centre[0] + radius, height - top, height - centre[1]
        for ends in ((left, end, left, above), (left, above, right, above), (right, above, right, end)):
            rows += [(0, "LINE"), (8, CUT)] + [(code, shown(one, 6)) for code, one in zip((10, 20, 11, 21), ends)]
        rows += [(0, "ARC"), (8, CUT)] + [(code, shown(one, 6)) for code, one in (
            (10, centre[0]), (20, end), (40, radius), (50, 180.0), (51, 360.0))]
        rows += [(0, "TEXT"), (8, MARKS)] + [(code, shown(one, 6)) for code, one in (
            (10, left + 2), (20, above - 8), (40, 4.0))] + [(1, "R " + bare(radius, 2))]
    rows += [(0, "ENDSEC"), (0, "EOF")]
    return "".join([("  " + str(code))[-3:] + "\n" + text + "\n" for code, text in rows])

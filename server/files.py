"""Files: tables as CSV, drawings as SVG, the spreader as DXF: what other programs open."""
from collections.abc import Iterable
from decimal import Decimal
from html import escape
from typing import Any

from covemix.shared.words.languages import LANGUAGES

from .data_names import COUNT, FLAG, KEY, NAMES, TEXT

LEADING = ("=", "+", "-", "@", "\t", "\r")  # what a spreadsheet takes for a formula (OWASP, CSV Injection)
FIGURES = 9  # of a number: more than any spreadsheet shows
CUT, MARKS = "CUT", "MARKS"  # layers of a DXF: what the cutter follows, and what it only draws


def csv(table: list[dict[str, Any]], columns: Iterable[str], language: str = "en") -> str:
    """Rows as CSV (RFC 4180), units in the headings, for a spreadsheet in the reader's language.

    Where the decimal mark is a comma, a semicolon parts the cells. Its first sign is the mark of UTF-8.

    >>> csv([{"name": "=1+1", "mass": 0.15}], ["name", "mass"], "de").split("\\r\\n")[1]
    "'=1+1;0,15"
    """
    decimal = LANGUAGES[language].decimal
    between = ";" if decimal == "," else ","
    names = list(columns)
    rows = [[_heading(name) for name in names]]
    rows += [[_cell(name, row[name], decimal) for name in names] for row in table]
    return "\ufeff" + "".join(between.join(_quoted(cell, between) for cell in row) + "\r\n" for row in rows)


def _heading(name: str) -> str:
    unit = NAMES[name].unit
    return name if unit in (TEXT, KEY, FLAG, COUNT) else f"{name} [{unit}]"


def _cell(name: str, value: Any, decimal: str) -> str:
    if value is None:
        return ""
    if isinstance(value, bool):
        return "1" if value else "0"
    if isinstance(value, (int, float)):
        return figure(value).replace(".", decimal)
    return "'" + value if value.startswith(LEADING) else value


def figure(value: float) -> str:
    """A number in plain digits, without an exponent.

    >>> figure(0.000137336869), figure(3), figure(28800.0)
    ('0.000137336869', '3', '28800')
    """
    text = format(Decimal(f"{value:.{FIGURES}g}"), "f")
    return text.rstrip("0").rstrip(".") if "." in text else text


def _quoted(cell: str, between: str) -> str:
    return '"' + cell.replace('"', '""') + '"' if any(sign in cell for sign in f'"{between}\r\n') else cell


def svg(drawing: dict[str, Any], true_size: bool = False) -> str:
    """A drawing of an answer as a picture of its own. true_size: its units are millimetres, and are printed as such"""
    width, height = drawing["width"], drawing["height"]
    unit = "mm" if true_size else ""
    inner = "".join(_shape(one) for one in drawing["shapes"])
    return ('<?xml version="1.0" encoding="UTF-8"?>\n'
            f'<svg xmlns="http://www.w3.org/2000/svg" width="{width:g}{unit}" height="{height:g}{unit}" '
            f'viewBox="0 0 {width:g} {height:g}" fill="none" stroke="#000" '
            f'stroke-width="{0.2 if true_size else 1.5}" stroke-linejoin="round" font-family="sans-serif" '
            f'font-size="{4 if true_size else 13}"><title>{escape(drawing["title"])}</title>'
            f"<desc>{escape(drawing['told'])}</desc>{inner}</svg>\n")


def _shape(shape: dict[str, Any]) -> str:
    kind, role = shape["kind"], f'class="{escape(shape["role"])}"'
    if kind == "note":
        (x, y), = shape["points"]
        return _text(role, x, y, shape["text"], shape["anchor"])
    if kind == "notes":
        return "".join(_text(role, x, shape["y"], text, "middle")
                       for x, text in zip(shape["xs"], shape["texts"], strict=True))
    if kind == "rungs":
        steps = "".join(f"M{x:g} {shape['top']:g}V{shape['bottom']:g}" for x in shape["xs"])
    elif kind == "strokes":
        points = shape["points"]
        steps = "".join(f"M{a:g} {b:g}L{c:g} {d:g}" for (a, b), (c, d) in zip(points[::2], points[1::2], strict=True))
    else:
        steps = "M" + "L".join(f"{x:g} {y:g}" for x, y in shape["points"]) + ("Z" if kind == "area" else "")
    return f'<path {role} d="{steps}"/>' if steps else ""


def _text(role: str, x: float, y: float, text: str, anchor: str) -> str:
    return (f'<text {role} x="{x:g}" y="{y:g}" text-anchor="{anchor}" fill="#000" stroke="none">{escape(text)}</text>')


def dxf(height: float, templates: Iterable[tuple[float, float, tuple[float, float]]]) -> str:
    """Spreaders as DXF R12, in millimetres, y up: three straight sides and one true arc each.

    height: of the sheet [mm]; templates: (radius, top of the handle, (x, y) of the tip's centre) [mm], y down
    """
    rows: list[tuple[int, Any]] = [(0, "SECTION"), (2, "HEADER"), (9, "$ACADVER"), (1, "AC1009"), (9, "$INSUNITS"),
                                   (70, 4), (0, "ENDSEC"), (0, "SECTION"), (2, "ENTITIES")]
    for radius, top, (x, y) in templates:
        left, right, above, tip = x - radius, x + radius, height - top, height - y
        for ends in ((left, tip, left, above), (left, above, right, above), (right, above, right, tip)):
            rows += [(0, "LINE"), (8, CUT), *zip((10, 20, 11, 21), ends, strict=True)]
        rows += [(0, "ARC"), (8, CUT), (10, x), (20, tip), (40, radius), (50, 180.0), (51, 360.0)]
        rows += [(0, "TEXT"), (8, MARKS), (10, left + 2), (20, above - 8), (40, 4.0), (1, f"R {radius:g}")]
    rows += [(0, "ENDSEC"), (0, "EOF")]
    return "".join(f"{code:>3}\n{value:.6f}\n" if isinstance(value, float) else f"{code:>3}\n{value}\n"
                   for code, value in rows)

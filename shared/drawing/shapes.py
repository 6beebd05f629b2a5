"""A figure is a list of shapes in its own plain coordinates (y down). Template and page turn shapes into SVG.

Roles name what a shape is ("panel", "resin", "tape", "level", "dimension", ...); the stylesheet gives each role its
line, fill and hatching, so that no part is told by colour alone.
"""
from math import floor


def figure(name: str, title: "str | tuple", width: float, height: float, shapes: list, told: "str | tuple",
           part: str = "", size: float = 0.0) -> dict:
    """A drawing: `told` describes it in words for those who do not see it; part: the fold of the answer it lies in;
    size: a unit of what is drawn [mm], 0 where it is not to scale."""
    return {"name": name, "title": title, "width": width, "height": height, "shapes": shapes, "told": told,
            "part": part, "size": size}


def area(role: str, points: "list | tuple") -> dict:
    """A closed polygon. points: (x, y) pairs"""
    return {"kind": "area", "role": role, "points": _shortened(points)}


def path(role: str, points: "list | tuple") -> dict:
    """An open line. points: (x, y) pairs"""
    return {"kind": "path", "role": role, "points": _shortened(points)}


def strokes(role: str, ends: "list | tuple") -> dict:
    """Straight lines, from, to, from, to, ... as one shape: a phone moves one element, not twenty. To a tenth."""
    return {"kind": "strokes", "role": role,
            "points": [[floor(x * 10 + 0.500001) / 10, floor(y * 10 + 0.500001) / 10] for x, y in ends]}


def note(role: str, x: float, y: float, text: "str | tuple", anchor: str = "middle") -> dict:
    """Words in the drawing. anchor: start, middle or end"""
    return {"kind": "note", "role": role, "points": _shortened(((x, y),)), "text": text, "anchor": anchor}


def rungs(role: str, xs: list, top: float, bottom: float) -> dict:
    """Upright lines of one height side by side as one shape. xs: to a tenth, as `tenth` gives them"""
    return {"kind": "rungs", "role": role, "xs": xs, "top": top, "bottom": bottom}


def notes(role: str, xs: list, y: float, texts: list) -> dict:
    """Words side by side as one shape, each about its x, as many as texts."""
    return {"kind": "notes", "role": role, "xs": xs, "y": y, "texts": texts}


def tenth(value: float) -> float:
    """A coordinate to a tenth of a unit, alike on every runtime."""
    return floor(value * 10 + 0.500001) / 10


def box(role: str, x: float, y: float, width: float, height: float) -> dict:
    """An upright rectangle as an area."""
    return area(role, ((x, y), (x + width, y), (x + width, y + height), (x, y + height)))


def enlarged(shapes: list, times: float) -> list:
    """Areas, paths and notes that many times their size, from the corner on."""
    for shape in shapes:
        shape["points"] = _shortened([(x * times, y * times) for x, y in shape["points"]])
    return shapes


def _shortened(points: "list | tuple") -> list:
    # a hundredth of a unit is finer than a screen: fewer bytes, and no last-bit difference between runtimes
    return [[floor(x * 100 + 0.500001) / 100, floor(y * 100 + 0.500001) / 100] for x, y in points]

"""Cut figure: the cut lists as strips to scale, each piece with its number in laying order.

A roll is drawn in lines of a few metres one below the other, as it comes off the roll.
"""
from ..drawing.shapes import box, figure, note, notes, rungs, strokes, tenth
from ..drawing.sheet import WIDTH
from ..equations import cutting
from ..words.lengths import metres, mm
from ..words.numbers import small
from ..words.units import told

REMNANT = cutting.REMNANT
LINE = 6000  # mm of tape to a line, or the longest piece
SIDE, HIGH, GAP = 6, 24, 8  # units of the drawing
LETTER = 8  # a figure of a number is about this wide


def cut_figures(tapes: list, plies: list, units: str) -> list:
    """One drawing for each width. tapes, plies: as `hull.cut_lists` gives them"""
    found = []
    for label, lists in (("Tape", tapes), ("Peel ply", plies)):
        for place, (width, areal, rows, lengths, cuts, own) in enumerate(lists):
            found.append(strips("cut_" + small(label[0]) + "_" + str(place + 1), named(label, width, areal, units),
                                rows, lengths, cuts, own, units))
    return found


def named(label: str, width: float, areal: float, units: str) -> str:
    """What is cut: "Tape 75 mm, 300 g/m²"; areal: 0 where there is only one kind."""
    return label + " " + mm(width, units) + (", " + told(areal, "g/m2", units) if areal else "")


def _side_by_side(y: float, ends: list, middles: list, numbers: list) -> list:
    """Pieces of one line: the tape, where it is cut, and their numbers."""
    return [box("piece", SIDE, y, ends[-1] - SIDE, HIGH), rungs("piece", ends[:-1], y, y + HIGH),
            notes("strip", middles, y + HIGH - 7, numbers)] if ends else []


def stock(each: cutting.Cut, own: list, units: str) -> str:
    """What is cut from, by its name where it has one. each: a `cutting.Cut`; own: the remnants of its list"""
    if each.stock != cutting.REMNANT:
        return "Roll " + str(each.place + 1)
    name = own[each.place]["name"]
    return (name + ", " if name else "Remnant of ") + metres(each.length / 1000, units)


def strips(name: str, title: str, rows: list, lengths: list, cuts: cutting.Cutting, own: list, units: str) -> dict:
    """Rolls and remnants of one width and what is cut from each; rows, lengths [mm]: the pieces; own: the remnants."""
    line = max([LINE] + list(lengths))
    scale, y, shapes = (WIDTH - 2 * SIDE) / line, 4, []
    for each in cuts.cuts:
        left = each.length - sum([lengths[place] for place in each.pieces])
        shapes.append(note("strip", SIDE, y + 12, stock(each, own, units), "start"))
        shapes.append(note("strip", WIDTH - SIDE, y + 12, metres(left / 1000, units) + " left", "end"))
        y += 18
        x, ends, middles, numbers = SIDE, [], [], []  # type: float, list, list, list
        for place in each.pieces:
            wide = lengths[place] * scale
            if ends and x + wide > WIDTH - SIDE + 0.01:
                shapes.extend(_side_by_side(y, ends, middles, numbers))
                x, y, ends, middles, numbers = SIDE, y + HIGH + GAP, [], [], []
            number = str(rows[place][0])
            if wide >= LETTER * len(number) + 2:
                middles.append(tenth(x + wide / 2))
                numbers.append(number)
            x += wide
            ends.append(tenth(x))
        shapes.extend(_side_by_side(y, ends, middles, numbers))
        if left > 0:
            end = min(x + left * scale, WIDTH - SIDE)
            shapes.append(strokes("left", ((x, y), (end, y), (x, y + HIGH), (end, y + HIGH))))
        y += HIGH + GAP
    words = title + ": " + str(len(rows)) + " pieces. The list below says which come from where."
    return figure(name, title, WIDTH, y, shapes, words, "cut")

"""Cut drawing: the cut lists as strips to scale, each piece with its number in laying order.

A roll is drawn in lines of a few metres one below the other, as it comes off the roll.
"""
from ..drawing.shapes import box, figure, note, notes, rungs, strokes, tenth
from ..drawing.sheet import WIDTH
from ..equations import cutting
from ..forms.types import Said
from ..words.messages import along, length, message, quantity, typed

REMNANT = cutting.REMNANT
NAMED = {"tape": "row-roll.tape", "ply": "row-roll.ply", "cloth": "row-roll.cloth"}
LINE = 6000  # mm of tape to a line, or the longest piece
SIDE, HIGH, GAP = 6, 24, 8  # units of the drawing
LETTER = 8  # a figure of a number is about this wide


def cut_figures(all_cuts: list, true_size: bool = False) -> list:
    """One drawing for each width. all_cuts: as `hull.cuts_of` gives them"""
    return [strips("cut_{}_{}".format(of[0], place + 1), named(of, width, areal), rows, lengths, cuts, own,
                   width * 1000 if true_size else 0)
            for of, lists in all_cuts for place, (width, areal, rows, lengths, cuts, own) in enumerate(lists)]


def named(of: str, width: float, areal: float) -> Said:
    """What is cut: "Tape, 75 mm, 300 g/m²"; of: "tape", "ply" or "cloth"."""
    return message(NAMED[of], width=length(width), weight=quantity(areal, "g/m2"))


def _side_by_side(y: float, high: float, ends: list, middles: list, numbers: list) -> list:
    """Pieces of one line: the tape, where it is cut, and their numbers."""
    return [box("piece", SIDE, y, ends[-1] - SIDE, high), rungs("piece", ends[:-1], y, y + high),
            notes("strip", middles, y + high - 7, numbers)] if ends else []


def stock(each: cutting.Cut, own: list) -> Said:
    """What is cut from, by its name where it has one. each: a `cutting.Cut`; own: the remnants of its list"""
    if each.stock != cutting.REMNANT:
        return message("cut-roll", count=each.place + 1)
    name, long = own[each.place]["name"], along(each.length / 1000)
    return message("cut-remnant.named", name=typed(name), length=long) if name else message("cut-remnant", length=long)


def strips(name: str, title: Said, rows: list, lengths: list, cuts: cutting.Cutting, own: list,
           true: float = 0) -> dict:
    """Rolls and remnants of one width and what is cut from each; rows, lengths [mm]: the pieces; own: the remnants.

    true: the width, where it is drawn at true size [mm]; 0: as a screen shows it
    """
    line, right, high = max([LINE] + list(lengths)), WIDTH, true or HIGH
    if true:
        right = 2 * SIDE + max([sum([lengths[place] for place in each.pieces]) for each in cuts.cuts])
    scale = 1.0 if true else (WIDTH - 2 * SIDE) / line
    y, shapes = 4, []  # type: float, list
    for each in cuts.cuts:
        left = each.length - sum([lengths[place] for place in each.pieces])
        shapes.append(note("strip", SIDE, y + 12, stock(each, own), "start"))
        shapes.append(note("strip", right - SIDE, y + 12, message("cut-left", length=along(left / 1000)),
                           "end"))
        y += 18
        x, ends, middles, numbers = SIDE, [], [], []  # type: float, list, list, list
        for place in each.pieces:
            wide = lengths[place] * scale
            if ends and x + wide > right - SIDE + 0.01:
                shapes.extend(_side_by_side(y, high, ends, middles, numbers))
                x, y, ends, middles, numbers = SIDE, y + high + GAP, [], [], []
            number = str(rows[place][0])
            if wide >= LETTER * len(number) + 2:
                middles.append(tenth(x + wide / 2))
                numbers.append(number)
            x += wide
            ends.append(tenth(x))
        shapes.extend(_side_by_side(y, high, ends, middles, numbers))
        if left > 0:
            end = min(x + left * scale, right - SIDE)
            shapes.append(strokes("left", ((x, y), (end, y), (x, y + high), (end, y + high))))
        y += high + GAP
    told = message("cut-strips", what=title, count=len(rows))
    return figure(name, title, right, y, shapes, told, "cut", 1 if true else 0)

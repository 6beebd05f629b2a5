"""Cut lines: the cut lists in words, which piece comes off which roll, and what is left of each remnant."""
from ..forms.types import Values
from ..words.lengths import metres
from ..words.lines import MORE, Line, line, words
from ..words.numbers import DOWN, UP, small
from .cut_drawing import REMNANT, named, stock


def lines(values: Values, tapes: list, plies: list) -> list[Line]:
    """tapes, plies: as `hull.cut_lists` gives them."""
    units = values["units"]
    return _cut(tapes, "Tape", units) + _cut(plies, "Peel ply", units) + _left(values, tapes + plies)


def _cut(lists: list, label: str, units: str) -> list[Line]:
    told = []
    for number, (width, areal, rows, lengths, found, own) in enumerate(lists):
        for each in found.cuts:
            used = sum([lengths[place] for place in each.pieces])
            told.append(line("cut_{}_{}_{}_{}".format(small(label[0]), number + 1, each.stock, each.place + 1),
                             named(label, width, areal, units) + ": " + stock(each, own, units), used / 1000, "m",
                             _numbered(rows, lengths, each.pieces, units), part="cut", rank=MORE,
                             rough="piece numbers in laying order; " + metres((each.length - used) / 1000, units)
                             + " left"))
    return told


def _left(values: Values, lists: list) -> list[Line]:
    """What is left of each remnant once all is cut; the text is what is typed for it from then on."""
    off, units = {}, values["units"]  # type: dict, str
    for _, _, _, lengths, found, own in lists:
        for each in found.cuts:
            if each.stock == REMNANT:
                place = own[each.place]["place"]
                off[place] = off.get(place, 0) + sum([lengths[piece] for piece in each.pieces])
    told = []
    for rest in values["remnants"] or []:
        name, label = "remnant_" + str(rest["place"]), rest["name"] or "Remnant " + str(rest["place"] + 1)
        used = off.get(rest["place"], 0) / 1000
        if used:
            left = max(0.0, rest["length"] - used)
            told.append(line(name, "Left of " + label, left, "m", metres(left, units, DOWN), part="cut", rank=MORE,
                             rough=metres(used, units) + " of " + metres(rest["length"], units) + " cut off"))
        else:
            told.append(words(name, label, "nothing comes off it", rank=MORE, part="cut"))
    return told


def _numbered(rows: list, lengths: list, places: tuple, units: str) -> str:
    """"2 × 2.03 m: 1, 2; 1.2 m: 5": how many of each length and their numbers, the longest first."""
    numbers = {}  # type: dict
    for place in places:
        numbers.setdefault(lengths[place], []).append(rows[place][0])
    told = []
    for length in sorted(numbers, key=lambda length: -length):
        count = "" if len(numbers[length]) == 1 else str(len(numbers[length])) + " × "
        told.append(count + metres(length / 1000, units, UP) + ": " + in_runs(numbers[length]))
    return "; ".join(told)


def in_runs(numbers: list) -> str:
    """Whole numbers for people, three and more in a row told by the first and the last.

    >>> in_runs([7, 1, 2, 3, 4, 9, 8]), in_runs([2, 1])
    ('1 to 4, 7 to 9', '1, 2')
    """
    runs = []  # type: list
    for number in sorted(numbers):
        if runs and number == runs[-1][1] + 1:
            runs[-1][1] = number
        else:
            runs.append([number, number])
    return ", ".join([str(first) if first == last else str(first) + (", " if last == first + 1 else " to ") + str(last)
                      for first, last in runs])

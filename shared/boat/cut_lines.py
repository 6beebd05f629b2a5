"""Cut lines: the cut lists in words, which piece comes off which roll, and what is left of each remnant."""
from ..forms.types import Said, Values
from ..words.lines import MORE, Line, line, words
from ..words.messages import along, figure_of, length, listed, message, noted, row, typed, unit_of
from ..words.numbers import DOWN, UP
from .cut_drawing import REMNANT, named, stock


def lines(values: Values, cuts: list) -> list[Line]:
    """cuts: as `hull.cuts_of` gives them."""
    told, lists = [], []  # type: list, list
    for of, some in cuts:
        told.extend(_cut(some, of))
        lists.extend(some)
    return told + _left(values, lists)


def _cut(lists: list, of: str) -> list[Line]:
    told = []
    for number, (width, areal, rows, lengths, found, own) in enumerate(lists):
        for each in found.cuts:
            used = sum([lengths[place] for place in each.pieces])
            label = message("cut-from", what=named(of, width, areal), stock=stock(each, own))
            told.append(line("cut_{}_{}_{}_{}".format(of[0], number + 1, each.stock, each.place + 1), label,
                             used / 1000, "m", _numbered(rows, lengths, each.pieces), part="cut", rank=MORE,
                             rough=message("cut-from.rough", left=along((each.length - used) / 1000))))
    return told


def _left(values: Values, lists: list) -> list[Line]:
    """What is left of each remnant once all is cut; the text is what is typed for it from then on."""
    off = {}  # type: dict
    for _, _, _, lengths, found, own in lists:
        for each in found.cuts:
            if each.stock == REMNANT:
                place = own[each.place]["place"]
                off[place] = off.get(place, 0) + sum([lengths[piece] for piece in each.pieces])
    told = []
    for rest in values["remnants"] or []:
        name = "remnant_" + str(rest["place"])
        label = typed(rest["name"]) if rest["name"] else message("cut-remnant.nth", count=rest["place"] + 1)
        used = off.get(rest["place"], 0) / 1000
        if used:
            left = max(0.0, rest["length"] - used)
            told.append(line(name, message("cut-remnant.left", remnant=label), left, "m", along(left, DOWN), part="cut",
                             rank=MORE, rough=message("cut-remnant.rough", used=along(used),
                                                      length=along(rest["length"]))))
        else:
            told.append(words(name, label, "cut-remnant.untouched", rank=MORE, part="cut"))
    return told


def _numbered(rows: list, lengths: list, places: tuple) -> Said:
    """"2 × 2.03 m: 1, 2; 1.2 m: 5": how many of each length and their numbers, the longest first."""
    numbers = {}  # type: dict
    for place in places:
        numbers.setdefault(lengths[place], []).append(rows[place][0])
    told = []
    for long in sorted(numbers, key=lambda long: -long):
        each, count = along(long / 1000, UP), len(numbers[long])
        told.append(message("cut-pieces", length=each if count == 1 else row([count, each], " × "),
                            numbers=in_runs(numbers[long])))
    return noted(told)


def in_runs(numbers: list) -> Said:
    """Whole numbers for people, three and more in a row told by the first and the last.

    >>> from ..words.texts import said
    >>> from ..words.written import reader
    >>> [said(in_runs(numbers), reader()) for numbers in ([7, 1, 2, 3, 4, 9, 8], [2, 1])]
    ['1 to 4, 7 to 9', '1, 2']
    """
    runs = []  # type: list
    for number in sorted(numbers):
        if runs and number == runs[-1][1] + 1:
            runs[-1][1] = number
        else:
            runs.append([number, number])
    told = []  # type: list
    for first, last in runs:
        if last > first + 1:
            told.append(message("cut-numbers", first=first, last=last))
        else:
            told.extend([first] if first == last else [first, last])
    return listed(told, "plain")


def radii_said(sizes: list) -> Said:
    """Radii of spreaders. sizes: whole millimetres

    >>> from ..words.texts import said
    >>> from ..words.written import reader
    >>> [said(radii_said([12, 15]), reader(units)) for units in ("metric", "us")]
    ['R 12, R 15 mm', 'R 0.47, R 0.59 in']
    """
    each = [length(size / 1000) for size in sizes]
    return message("boat-spreaders.text", unit=unit_of(each[0]),
                   radii=listed([message("boat-spreaders.each", radius=figure_of(one)) for one in each], "plain"))

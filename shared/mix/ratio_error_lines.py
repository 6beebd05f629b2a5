"""Ratio error lines: how an error of a ratio is said."""
from ..catalogue.ratios import AIM, STOP, TOLD_EVENLY
from ..forms.types import Found, Said, Values
from ..words.lines import BESIDE, WARN, Line, line
from ..words.messages import fact, message, noted, number, quantity, row, typed
from ..words.numbers import NEAREST, UP, bare, shown
from .ratio_cost import cost

ROUGH_AIM = message("aim-rough", good=number(bare(AIM * 100, 2)), much=number(bare(STOP * 100, 2)))


def remembered(values: Values) -> bool:
    """Whether the error to aim for is only our own: neither typed nor on the label."""
    return not (values["tolerance"] or values["system"]["tolerance"])


def aimed_at(error: float, values: Values) -> Said:
    """The ratio error to aim for [-], and where it comes from when it is only our own."""
    return message("aim-our-own", aim=aim(error)) if remembered(values) else aim(error)


def aim(error: float) -> Said:
    """A wanted ratio error in percent, with the decimals that a small one needs.

    >>> from ..words.texts import said
    >>> from ..words.written import reader
    >>> [said(aim(error), reader()) for error in (0.02, 0.0004)]
    ['±2.0%', '±0.04%']
    """
    return _either_way(quantity(error, "%", NEAREST, 1 if error >= 0.001 else 2))


def _either_way(figure: Said) -> Said:
    return row([typed("±"), figure], "")


def percent(error: float) -> Said:
    """A signed error in percent, its size rounded up: never told smaller than it is.

    >>> from ..words.texts import said
    >>> from ..words.written import reader
    >>> [said(percent(error), reader()) for error in (0.0213, -0.00224, 0)]
    ['+2.2%', '-0.3%', '0.0%']
    """
    none = not float(shown(abs(error) * 100, 1, UP))
    return row([typed("" if none else "-" if error < 0 else "+"), quantity(abs(error), "%", UP, 1)], "")


def within(spread: float) -> Said:
    """A spread in percent, rounded up."""
    return _either_way(quantity(spread, "%", UP, 1))


def off_by(names: "tuple[Said, ...]", off: Found) -> Said:
    """Which part is short or over, in words: of the one that is furthest off its ratio to the first.

    names: of each part, as `label_words.parts_said` gives them; off: ratio_error.Off

    >>> from .ratio_error import off_ratio
    >>> off_by(("Resin", "Hardener", "Part 3"), off_ratio((200, 70, 5), (100, 30, 5), 0.02))
    ('error-short', {'part': 'Part 3'})
    >>> names = ("Resin", "Hardener")
    >>> off_by(names, off_ratio((200, 70), (100, 30), 0.02))[0], off_by(names, off_ratio((200, 60), (100, 30), 0.02))
    ('error-too-much', 'error-in-ratio')
    """
    if off.place is None:
        return "error-in-ratio"
    return message("error-short" if off.short else "error-too-much", part=names[off.place])


def cost_lines(off: Found) -> list[Line]:
    """What an error of the ratio costs once it is cured, its worst end first. off: ratio_error.Off"""
    found = cost(off.error)
    if found is None:
        return []
    most, usual, least = [fact("K", float(shown(kelvin, 0, UP))) for kelvin in (found.most, found.usual, found.least)]
    text, costs = message("error-cost.text", most=most), message("error-cost.usual", usual=usual, least=least)
    if found.beyond:
        text = message("error-cost.beyond", most=most)
        costs = message("error-cost.already", off=quantity(TOLD_EVENLY, "%", places=0), usual=usual, least=least)
    return [line("ratio_cost", "error-cost", found.most, "K", text,
                 rough=message("error-cost.short" if found.short else "error-cost.over", costs=costs,
                               loose=quantity(found.loose, "%", UP, 1)))]


def poured_line(names: "tuple[Said, ...]", off: Found) -> Line:
    """How far the parts that were measured out are off their ratio; a warning where that is more than is wanted.

    names: of each part, in the order of the label; off: ratio_error.Off
    """
    how_far = message("error-poured.beyond" if off.off else "error-poured.within", aim=aim(off.most))
    return line("poured", "error-poured", off.error, "", percent(off.error), rank=WARN if off.off else BESIDE,
                rough=noted([how_far, off_by(names, off)]))

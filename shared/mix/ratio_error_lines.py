"""Ratio error lines: how an error of a ratio is said."""
from ..catalogue.limits import AIM, STOP
from ..forms.types import Found, Values
from ..words.lines import BESIDE, WARN, Line, line
from ..words.numbers import UP, bare, shown
from ..words.units import braces
from .ratio_cost import cost

ROUGH_AIM = "up to {}% off is good, {}% is too much (our own judgement); follow your label".format(
    bare(AIM * 100, 2), bare(STOP * 100, 2))


def remembered(values: Values) -> bool:
    """Whether the error to aim for is only our own: neither typed nor on the label."""
    return not (values["tolerance"] or values["system"]["tolerance"])


def wanted_text(wanted: float, values: Values) -> str:
    """The ratio error to aim for as text, and where it comes from when it is only our own."""
    return aim(wanted) + (" (our own judgement)" if remembered(values) else "")


def aim(wanted: float) -> str:
    """A wanted ratio error in percent, with the decimals that a small one needs.

    >>> aim(0.02), aim(0.0004)
    ('±2.0%', '±0.04%')
    """
    return "±" + shown(wanted * 100, 1 if wanted >= 0.001 else 2) + "%"


def percent(error: float) -> str:
    """A signed error in percent, its size rounded up: never told smaller than it is.

    >>> percent(0.0213), percent(-0.00224), percent(0)
    ('+2.2%', '-0.3%', '0.0%')
    """
    size = shown(abs(error) * 100, 1, UP)
    return ("" if not float(size) else "-" if error < 0 else "+") + size + "%"


def within(spread: float) -> str:
    """A spread in percent, rounded up.

    >>> within(0.0501)
    '±5.1%'
    """
    return "±" + shown(spread * 100, 1, UP) + "%"


def off_by(names: tuple[str, ...], off: Found) -> str:
    """Which part is short or over, in words: of the one that is furthest off its ratio to the first.

    names: of each part, in the order of the label; off: ratio_error.Off

    >>> from .ratio_error import off_ratio
    >>> off_by(("Resin", "Hardener", "Part 3"), off_ratio((200, 70, 5), (100, 30, 5), 0.02))
    'short of Part 3'
    >>> names = ("Resin", "Hardener")
    >>> off_by(names, off_ratio((200, 70), (100, 30), 0.02)), off_by(names, off_ratio((200, 60), (100, 30), 0.02))
    ('too much Hardener', 'in ratio')
    """
    if off.place is None:
        return "in ratio"
    return ("short of " if off.short else "too much ") + names[off.place]


def cost_lines(off: Found) -> list[Line]:
    """What an error of the ratio costs once it is cured, its worst end first. off: ratio_error.Off"""
    found = cost(off.error)
    if found is None:
        return []
    loose = shown(found.loose * 100, 1, UP) + "%"
    left = ("up to {} of the resin never binds, and what is left over no warmth can cure" if found.short else
            "up to {} of the hardener never binds, and what is left over blushes and takes up water").format(loose)
    most, usual, least = [braces("K", float(shown(kelvin, 0, UP))) for kelvin in (found.most, found.usual, found.least)]
    return [line("ratio_cost", "What that costs", found.most, "K",
                 "glass temperature {} {} lower".format("at least" if found.beyond else "up to", most),
                 rough="usually {}, at the least {}; {}; from memory and by an ideal network: no table of strength was "
                 "found".format(usual, least, left))]


def poured_line(names: tuple[str, ...], off: Found) -> Line:
    """How far the parts that were measured out are off their ratio; a warning where that is more than is wanted.

    names: of each part, in the order of the label; off: ratio_error.Off
    """
    return line("poured", "Poured: off ratio by", off.error, "", percent(off.error), rank=WARN if off.off else BESIDE,
                rough=("beyond " if off.off else "within ") + aim(off.most) + "; " + off_by(names, off))

"""How exact a ratio is wanted, and how an error is told."""
from ..catalogue.limits import AIM, STOP
from ..equations.weighing import furthest_off, ratio_error
from ..words.lines import BESIDE, WARN, line
from ..words.numbers import UP, bare, shown

ROUGH_AIM = "{}% off is good, {}% too much: from memory, the label goes first".format(
    bare(AIM * 100, 2), bare(STOP * 100, 2))


def tolerance(values) -> float:
    """The ratio error to aim for [-]: typed, else the label's, else what is remembered."""
    return values["tolerance"] or values["system"]["tolerance"] or AIM


def limit(values) -> float:
    """The ratio error beyond which no mark is told [-]: typed, else the label's, else what is remembered."""
    return values["tolerance"] or values["system"]["tolerance"] or STOP


def wanted_text(values) -> str:
    """The ratio error to aim for as text, and where it comes from when it is only remembered."""
    own = values["tolerance"] or values["system"]["tolerance"]
    return aim(tolerance(values)) + ("" if own else " (from memory)")


def aim(wanted: float) -> str:
    """A wanted ratio error in percent, with the decimals that a small one needs.

    >>> aim(0.02), aim(0.0004)
    ('±2.0%', '±0.04%')
    """
    return "±" + shown(wanted * 100, 1 if wanted >= 0.001 else 2) + "%"


def percent(error) -> str:
    """A signed error in percent, its size rounded up: never told smaller than it is.

    >>> percent(0.0213), percent(-0.00224), percent(0)
    ('+2.2%', '-0.3%', '0.0%')
    """
    size = shown(abs(error) * 100, 1, UP)
    return ("" if not float(size) else "-" if error < 0 else "+") + size + "%"


def off_by(names, poured, parts) -> str:
    """Which part is short or over, in words: of the one that is furthest off its ratio to the first.

    names, poured, parts: of each part, in the order of the label; poured above 0

    >>> off_by(("Resin", "Hardener", "Part 3"), (200, 70, 5), (100, 30, 5))
    'short of Part 3'
    >>> off_by(("Resin", "Hardener"), (200, 70), (100, 30)), off_by(("Resin", "Hardener"), (200, 60), (100, 30))
    ('too much Hardener', 'in ratio')
    """
    place, error = furthest_off(poured, parts)
    if abs(error) < 1e-9:
        return "in ratio"
    return ("short of " if error < 0 else "too much ") + names[place]


def poured_line(values, names, poured, parts):
    """How far the parts that were measured out are off their ratio; a warning where that is more than is wanted.

    names, poured, parts: of each part, in the order of the label; poured above 0
    """
    error, most = ratio_error(poured, parts), tolerance(values)
    off = abs(error) > most + 1e-9
    return line("poured", "Poured: off ratio by", error, "", percent(error), rank=WARN if off else BESIDE,
                rough=("beyond " if off else "within ") + aim(most) + "; " + off_by(names, poured, parts))


def within(spread) -> str:
    """A spread in percent, rounded up.

    >>> within(0.0501)
    '±5.1%'
    """
    return "±" + shown(spread * 100, 1, UP) + "%"

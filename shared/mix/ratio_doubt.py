"""Ratio doubt: how far a ratio may be off that is not the label's own, by weight from its volumes or by volume from its
weights. Its own is taken as it stands there."""
from collections import namedtuple
from math import sqrt

from ..catalogue.measuring import OWN_ERROR
from ..catalogue.ratios import AIM, HARDENER_DENSITY, RESIN_DENSITY, SAME_MARK, STOP
from ..equations.density_doubt import furthest, ratio_doubt
from ..equations.weighing import doubted_step
from ..forms.quantities import in_pieces
from ..forms.types import Values
from ..things.records import LABEL, ORIGIN, SYSTEM, relative_densities
from ..words.numbers import BLANKS, DIGITS, reading, small

WEIGHT, VOLUME = "weight", "volume"
REMEMBERED, TYPED, WEIGHED = "remembered", "typed", "weighed"
FRACTION = 3
SLACK = 1e-9  # computed doubts differ in their last bits between runtimes

# spread: U of the worst part to the first, k = 2 [-]; low, high: the same at the corners [-], of that part by weight
# whence: REMEMBERED, TYPED or WEIGHED; marked: whether it stands beside a reading; stops: whether there is no reading
Doubt = namedtuple("Doubt", ("spread", "low", "high", "whence", "marked", "stops"))


def basis_of(way: str) -> str:
    """The basis that a way of measuring goes by.

    >>> basis_of("scale"), basis_of("pumps")
    ('weight', 'volume')
    """
    return WEIGHT if way == "scale" else VOLUME


def doubt(system: Values, basis: str) -> "Doubt | None":
    """How far the ratio in that basis may be off; None where the label gives it itself, or nothing does.

    system: values of records.SYSTEM; basis: WEIGHT or VOLUME
    """
    if system["by_" + basis] or not relative_densities(system):
        return None
    whence, ranges = _ranges(system)
    middles = [(low + high) / 2 for low, high in ranges]
    widths = [(high - low) / middle for (low, high), middle in zip(ranges, middles)]
    relative = relative_densities(system)
    found = []
    for place in range(1, len(ranges)):
        low, high = furthest(ranges[0], ranges[place], relative[place] / relative[0])
        found.append((ratio_doubt((widths[0], widths[place])), low, high))
    spread, low, high = max(found)
    return Doubt(spread, low, high, whence, spread > AIM + SLACK, spread > STOP + SLACK)


def _ranges(system: Values) -> tuple[str, list[tuple[float, float]]]:
    """Between which densities [any unit] each part lies, and whence that is known."""
    if system.get("weighed"):
        return WEIGHED, [_within(one, width + SAME_MARK)
                         for one, width in zip(system["weighed"], last_digits(system["_tree"]["weighed"]))]
    densities = system["densities"]
    own = not system["id"] and system.get(ORIGIN.name) == LABEL  # the same figures, compared with a label of its own
    if SYSTEM.from_memory(system, "densities") and not own:
        return REMEMBERED, [RESIN_DENSITY] + [HARDENER_DENSITY] * (len(densities) - 1)
    return TYPED, [_within(one, width) for one, width in zip(densities, last_digits(system["_tree"]["densities"]))]


def _within(value: float, width: float) -> tuple[float, float]:
    return value * (1 - width / 2), value * (1 + width / 2)


def last_digits(typed: str) -> tuple[float, ...]:
    """How much one of the last digit is of each number that was typed [-]; zeros left away at an end count, where
    another number of the row has them.

    >>> [round(one, 4) for one in last_digits("1.15 : 1 g/mL")], [round(one, 4) for one in last_digits("23 : 19 g")]
    ([0.0087, 0.01], [0.0435, 0.0526])
    """
    read = [_number(piece) for piece in in_pieces(typed)]
    places = max([decimals for _, decimals in read])
    return tuple([10.0 ** -places / value for value, _ in read])


def _number(piece: str) -> tuple[float, int]:
    """The number of a piece and how many decimals it was typed with; a fraction says as much as FRACTION of them."""
    figures = ""
    for letter in piece.replace(",", "."):
        if "a" <= small(letter) <= "z":  # the unit begins
            break
        figures += letter
    decimals = [c for c in figures.partition(".")[2] if c in DIGITS]
    fraction = "." not in figures and not all([c in DIGITS + BLANKS for c in figures])
    return reading(piece)[0], FRACTION if fraction else len(decimals)


def step_of(scale: Values) -> float:
    """The step of a scale that decides the least batch [kg], its own error in it where it was typed: a guess makes
    nobody mix more than is needed. scale: values of records.SCALE"""
    return doubted_step(scale["step"], scale.get("own_error") or 0.0)


def doubted(scale: Values) -> float:
    """The step of a scale that its readings are doubted by [kg], its own error in it, typed or guessed."""
    return doubted_step(scale["step"], own_error(scale))


def own_error(scale: Values) -> float:
    """What a scale is off beyond its step, at most so much either way [kg]: as typed, else OWN_ERROR of a step.

    scale: values of records.SCALE
    >>> own_error({"step": 0.001}), own_error({"step": 0.001, "own_error": 0.0})
    (0.0005, 0.0)
    """
    typed = scale.get("own_error")
    return scale["step"] * OWN_ERROR if typed is None else typed


def combined(spread: float, found: "Doubt | None") -> float:
    """Doubt of a ratio as it is measured and as it is known, one beside the other: sqrt(a**2 + b**2), both k = 2 [-].

    spread: by measuring; JCGM 100:2008, 5.1.2
    >>> round(combined(0.03, Doubt(0.04, -0.04, 0.05, TYPED, True, False)), 6), combined(0.03, None)
    (0.05, 0.03)
    """
    return sqrt(spread * spread + found.spread * found.spread) if found else spread

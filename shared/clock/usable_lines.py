"""Usable lines: how long a batch can be used, and what that rests on, in words."""
from ..catalogue.pots import MOST_PEAK
from ..catalogue.windows import HUNDRED, WINDOWS
from ..forms.types import Found
from ..things.own_timings import counted_text
from ..words.lines import ASK, Line, words
from ..words.numbers import DOWN, UP, bare, capital, shown, to_step
from ..words.units import braces, told
from .heat_model import BEAD_POT, BY_MASS, FILM_LABEL, FILM_POT, LABEL_POT, OWN_POT, TRAY_POT
from .usable import BY_GONE, BY_GOOD, GEL, OPEN, WORK

MEANS = {OPEN: "the label's pot life taken as the end", GEL: "when it gels by the label",
         WORK: "that it can be worked by the label"}
OWN_TIMING = "your own timing"
WHOSE = {OWN_POT: OWN_TIMING, LABEL_POT: "the label's pot life"}
_RULE = {row[0]: row[1] for row in WINDOWS}
_EXPONENT, _DOUBLING = _RULE["exponent"], _RULE["doubling"]
WARMER = ", {} for each {{10 K}} warmer".format(
    "half as long" if _DOUBLING == 2 else bare(_DOUBLING, 2) + " times as short")


def _times(window: str) -> str:
    return bare(_RULE[window], 3) + " times the pot life of " + braces("g", HUNDRED) + ", from %" + WARMER


RULES = {FILM_LABEL: "the label's film time" + WARMER,
         FILM_POT: _times("film"),
         BEAD_POT: _times("soft"),
         TRAY_POT: "as a cup as thick as this layer, no longer than a film",
         BY_MASS: ("by the cube root of the mass" if abs(_EXPONENT - 1 / 3) < 1e-9 else
                   "by the mass to the power of " + bare(_EXPONENT, 2)) + ", from %" + WARMER}
OPEN_ENDS = "heat, hardener, cup and air leave that much open (from memory)"
MOST_ASKED = 2  # contradictions told at once


def rule_text(rule: Found) -> str:
    """How the quick rule reckoned a time. rule: `heat_model.Rule`"""
    return RULES[rule.by].replace("%", WHOSE.get(rule.whose, ""))


def peak_text(peak: float, units: str) -> str:
    """A peak [K] in words, rounded up; above MOST_PEAK only that.

    >>> peak_text(371.0, "metric"), peak_text(500.0, "metric")
    ('100 °C', 'over 150 °C')
    """
    if peak > MOST_PEAK:
        return "over " + told(MOST_PEAK, "degC", units, places=0)
    return told(to_step(peak - 273.15, 5.0, UP) + 273.15, "degC", units, UP, places=0)


def band_text(hot: float, cool: float, hardly: bool, units: str) -> str:
    """Both ends of a peak [K] in words, the hot one first and rounded up, the cool one down. hardly: the cool one is

    >>> band_text(425.0, 303.0, False, "metric"), band_text(371.0, 294.0, True, "metric")
    ('over 150 °C, or only 25 °C', '100 °C, or hardly above the air')
    """
    if cool > MOST_PEAK:
        return peak_text(hot, units)
    if hardly:
        return peak_text(hot, units) + ", or hardly above the air"
    least = to_step(cool - 273.15, 5.0, DOWN) + 273.15
    return peak_text(hot, units) + ", or only " + told(least, "degC", units, DOWN, places=0)


def seen_text(row: dict, units: str) -> str:
    """A timing in words: 'gone after 12 min, 240 g in a cup at 20 °C'."""
    said = {"good": "still good", "gone": "gone", "stiffening": "stiffening"}[row["said"]]
    text = "{} after {} min, {} in a {} at {}".format(
        said, shown(row["after"] / 60, 0 if row["after"] >= 600 else 1, DOWN), told(row["mass"], "g", units), row["in"],
        told(row["at"], "degC", units, places=0))
    if row["filler"]:
        text += ", " + shown(row["filler"] * 100) + "% filler"
    if row["resin"] is not None:
        text += ", resin at " + told(row["resin"], "degC", units, places=0)
    return text


def meaning(found: Found, units: str, end: "float | None" = None) -> str:
    """What the minutes mean: which share of what, like '80% of 30 min, when it gels by the label'.

    found: `usable.Usable`; end: [s], where another than the found one is told of
    """
    text = "{}% of {} min, ".format(shown(found.share * 100), shown((end or found.end) / 60, 0, DOWN))
    if found.by == BY_GONE:
        return text + "as a pot no harder than this was " + seen_text(found.seen, units)
    if found.by == BY_GOOD:
        return text + "as a pot no easier than this was " + seen_text(found.seen, units)
    if found.timed:
        return text + "when it is thick, " + counted_text(found.timed)
    return text + MEANS[found.means]


def questions(pairs: list, units: str) -> list[Line]:
    """Timings that contradict each other, side by side. pairs: as `usable.contradictions` gives them"""
    found = []
    for place, pair in enumerate(pairs[:MOST_ASKED]):
        texts = [seen_text(row, units) for row in pair]
        found.append(words("contradict_" + str(place + 1), "Both cannot be", capital(texts[0]) + "; and " + texts[1]
                           + ". The shorter counts. Take the wrong one out of your own timings.", rank=ASK))
    return found

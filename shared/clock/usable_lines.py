"""Usable lines: how long a batch can be used, and what that rests on, in words."""
from ..catalogue.pot_life import HUNDRED, WINDOWS
from ..catalogue.pots import MOST_PEAK
from ..forms.types import Found, Said
from ..things.own_timings import counted, in_sun
from ..words.lines import ASK, Line, words
from ..words.messages import fact, listed, message, number, quantity
from ..words.numbers import DOWN, UP, bare, shown, to_step
from .heat_model import BEAD_POT, BY_MASS, FILM_LABEL, FILM_POT, LABEL_POT, OWN_POT, TRAY_POT
from .sun_lines import WHERE
from .usable import BY_GONE, BY_GOOD, GEL, OPEN, WORK

MEANS = {OPEN: "usable-means.open", GEL: "usable-means.gel", WORK: "usable-means.work"}
OWN_TIMING = "usable-whose.own"
WHOSE = {OWN_POT: OWN_TIMING, LABEL_POT: "usable-whose.label"}
_RULE = {row[0]: row[1] for row in WINDOWS}
_EXPONENT, _DOUBLING = _RULE["exponent"], _RULE["doubling"]
WARMER = "usable-warmer" if _DOUBLING == 2 else message("usable-warmer.times", times=number(bare(_DOUBLING, 2)))
BY_ROOT = abs(_EXPONENT - 1 / 3) < 1e-9
WINDOW = {FILM_POT: "film", BEAD_POT: "soft"}  # how many times a pot life they are
OPEN_ENDS = "usable-open-ends"
MOST_ASKED = 2  # contradictions told at once


def rule_text(rule: Found) -> Said:
    """How the quick rule reckoned a time. rule: `heat_model.Rule`"""
    whose = WHOSE.get(rule.whose, "")
    if rule.by == FILM_LABEL:
        return message("usable-rule.film-label", warmer=WARMER)
    if rule.by == TRAY_POT:
        return "usable-rule.tray"
    if rule.by == BY_MASS and BY_ROOT:
        return message("usable-rule.root", whose=whose, warmer=WARMER)
    if rule.by == BY_MASS:
        return message("usable-rule.power", power=number(bare(_EXPONENT, 2)), whose=whose, warmer=WARMER)
    return message("usable-rule.multiple", times=number(bare(_RULE[WINDOW[rule.by]], 3)), hundred=fact("g", HUNDRED),
                   whose=whose, warmer=WARMER)


def peak_text(peak: float) -> Said:
    """A peak [K] in words, rounded up; above MOST_PEAK only that.

    >>> from ..words.texts import said
    >>> from ..words.written import reader
    >>> said(peak_text(371.0), reader()), said(peak_text(500.0), reader())
    ('100 °C', 'over 150 °C')
    """
    if peak > MOST_PEAK:
        return message("usable-peak.over", most=quantity(MOST_PEAK, "degC", places=0))
    return quantity(to_step(peak - 273.15, 5.0, UP) + 273.15, "degC", UP, 0)


def band_text(hot: float, cool: float, hardly: bool) -> Said:
    """Both ends of a peak [K] in words, the hot one first and rounded up, the cool one down. hardly: the cool one is

    >>> from ..words.texts import said
    >>> from ..words.written import reader
    >>> said(band_text(425.0, 303.0, False), reader()), said(band_text(371.0, 294.0, True), reader())
    ('over 150 °C, at best 25 °C', '100 °C, or hardly above the air')
    """
    if cool > MOST_PEAK:
        return peak_text(hot)
    if hardly:
        return message("usable-peak.or-hardly", hot=peak_text(hot))
    least = to_step(cool - 273.15, 5.0, DOWN) + 273.15
    return message("usable-peak.or-only", hot=peak_text(hot), cool=quantity(least, "degC", DOWN, 0))


def seen_text(row: dict) -> Said:
    """A timing in words: 'gone after 12 min, 240 g in a cup at 20 °C'."""
    found = [message("usable-seen", said=row["said"], container=row["in"], mass=quantity(row["mass"], "g"),
                     minutes=number(shown(row["after"] / 60, 0 if row["after"] >= 600 else 1, DOWN)),
                     air=quantity(row["at"], "degC", places=0))]
    if row["filler"]:
        found.append(message("usable-seen.filler", share=number(shown(row["filler"] * 100))))
    if row["resin"] is not None:
        found.append(message("usable-seen.resin", resin=quantity(row["resin"], "degC", places=0)))
    if in_sun(row):
        found.append(WHERE[row["sun"]])
    return listed(found, "plain")


def meaning(found: Found, end: "float | None" = None) -> Said:
    """What the minutes mean: which share of what, like '80% of 30 min, when it gels by the label'.

    found: `usable.Usable`; end: [s], where another than the found one is told of
    """
    share, minutes = number(shown(found.share * 100)), number(shown((end or found.end) / 60, 0, DOWN))
    if found.by == BY_GONE:
        return message("usable-means.gone", share=share, minutes=minutes, seen=seen_text(found.seen))
    if found.by == BY_GOOD:
        return message("usable-means.good", share=share, minutes=minutes, seen=seen_text(found.seen))
    if found.timed:
        return message("usable-means.timed", share=share, minutes=minutes, counted=counted(found.timed))
    return message(MEANS[found.means], share=share, minutes=minutes)


def other_sun(count: int) -> list[Line]:
    """Own timings that stood in another sun set no time, and that is said. count: of them"""
    return [words("other_sun", "usable-other-sun", message("usable-other-sun.text", count=count),
                  rank=ASK)] if count else []


def questions(pairs: list) -> list[Line]:
    """Timings that contradict each other, side by side. pairs: as `usable.contradictions` gives them"""
    return [words("contradict_" + str(place + 1), "usable-contradict",
                  message("usable-contradict.text", one=seen_text(one), other=seen_text(other)), rank=ASK)
            for place, (one, other) in enumerate(pairs[:MOST_ASKED])]

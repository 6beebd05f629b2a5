"""Sun lines: what the sun does to a mix, and where nobody said whether there is any."""
from ..forms.types import Found, Values
from ..words.lines import ASK, MORE, WARN, Line, line, words
from ..words.numbers import DOWN, UP, shown, small
from ..words.provenance import provenance
from ..words.units import told
from .sun import COVER_ROWS, LOOKS_ROWS, SUN_ROWS

IN_SUN = {"open": "in the shade under the open sky", "some": "in some sun", "full": "in full sun"}
SHADE_FIRST = "Shade first"
NOT_SAID = "Shade is what is counted. In the sun it lasts far less: say so under Sun on it."


def beside(values: Values) -> str:
    """Behind the air that minutes are told for; nothing in the shade.

    >>> beside({"sun": "full"}), beside({"sun": ""})
    (' in full sun', '')
    """
    text = IN_SUN.get(values.get("sun") or "")
    return " " + text if text else ""


def not_said() -> Line:
    """Nobody said whether there is sun."""
    return words("sun", "In the sun?", NOT_SAID, rank=ASK)


def say(found: Found, values: Values) -> list[Line]:
    """found: `heat_found.HeatResult`"""
    if found.asked_sun:
        return [not_said()]
    sun, units = found.sun, values["units"]
    if not sun:
        return []
    lines = []
    if sun.no_tray:
        lines.append(words("no_tray", SHADE_FIRST, "Not into a tray in this sun: it lasts {} there, this pot in the "
                           "shade {}. A tray helps in the shade only.".format(
                               _minutes(found.tray.time), _minutes(sun.shade.time)), rank=WARN))
    if sun.thin:
        lines.append(words("no_tray", SHADE_FIRST, "Spread thin it takes up the most sun: {} here, {} in the shade."
                           .format(_minutes(found.best.time), _minutes(sun.shade.time)), rank=WARN))
    lines.append(line("in_shade", "The same in the shade", sun.shade.time, "s", _minutes(sun.shade.time)))
    warm = "" if sun.warm is None else "; by itself it warms this to " + told(sun.warm, "degC", units, UP, places=0)
    lines.append(line("sun", "Sun taken up", sun.flux, "W/m2",
                      shown(sun.flux, 0, UP) + " W/m²" + warm, rank=MORE,
                      rough=_rests_on(values)))
    return lines


def _minutes(seconds: float) -> str:
    return shown(seconds / 60, 0, DOWN) + " min"


def _rests_on(values: Values) -> str:
    """What the sun that is taken up rests on: each figure with where it comes from and how far it may be off."""
    sun, looks, cover = SUN_ROWS[values["sun"]], LOOKS_ROWS[values["looks"]], COVER_ROWS[values["cover"]]
    text = "{} W/m² on the level, {} to {} ({}); of it {}% is taken up, {} to {} ({})".format(
        *[shown(float(one), 0) for one in sun[2:5]], provenance(*sun[5:]),
        *[shown(float(one) * 100, 0) for one in looks[2:5]], provenance(*looks[5:]))
    if cover[2] < 1:
        text += "; behind {} {}%, heat given off {}% ({})".format(
            small(cover[1]), *[shown(one * 100, 0) for one in cover[2:4]], provenance(*cover[4:]))
    return text + "; no wind counted"

"""Sun lines: what the sun does to a mix, and where nobody said whether there is any."""
from ..forms.types import Found, Said, Values
from ..words.lines import ASK, MORE, WARN, Line, line, words
from ..words.messages import message, noted, number, quantity
from ..words.numbers import DOWN, UP, shown
from ..words.sourced import sourced
from .sun import COVER_ROWS, LOOKS_ROWS, SUN_ROWS

IN_SUN = {"open": "sun-in.open", "some": "sun-in.some", "full": "sun-in.full"}
WHERE = {"open": "sun-where.open", "some": "sun-where.some", "full": "sun-where.full"}
SHADE_FIRST = "sun-shade-first"


def shines(values: Values) -> bool:
    """Whether any sun was declared.

    >>> shines({"sun": "full"}), shines({"sun": "shade"}), shines({"sun": ""})
    (True, False, False)
    """
    return (values.get("sun") or "") in IN_SUN


def in_sun(what: Said, values: Values) -> Said:
    """What minutes are told for, and the sun that was declared beside it; in the shade nothing is said of it.

    >>> in_sun("air", {"sun": "full"}), in_sun("air", {"sun": ""})
    (('sun-in.full', {'what': 'air'}), 'air')
    """
    return message(IN_SUN[values["sun"]], what=what) if shines(values) else what


def not_said() -> Line:
    """Nobody said whether there is sun."""
    return words("sun", "sun-not-said", "sun-not-said.text", rank=ASK)


def say(found: Found, values: Values) -> list[Line]:
    """found: `heat_found.HeatResult`"""
    if found.asked_sun:
        return [not_said()]
    sun = found.sun
    if not sun:
        return []
    lines, shade = [], _minutes(sun.shade.time)
    if sun.no_tray:
        lines.append(words("no_tray", SHADE_FIRST, message("sun-shade-first.tray", tray=_minutes(found.tray.time),
                                                           shade=shade), rank=WARN))
    if sun.thin:
        lines.append(words("no_tray", SHADE_FIRST, message("sun-shade-first.thin", sun=_minutes(found.best.time),
                                                           shade=shade), rank=WARN))
    lines.append(line("in_shade", "sun-in-shade", sun.shade.time, "s", shade))
    flux = number(shown(sun.flux, 0, UP))
    lines.append(line("sun", "sun-taken", sun.flux, "W/m2",
                      message("sun-taken.text", flux=flux) if sun.warm is None else
                      message("sun-taken.warm", flux=flux, warm=quantity(sun.warm, "degC", UP, 0)), rank=MORE,
                      rough=_rests_on(values)))
    return lines


def _minutes(seconds: float) -> Said:
    return quantity(seconds, "min", DOWN, 0)


def _rests_on(values: Values) -> Said:
    """What the sun that is taken up rests on: each figure with where it comes from and how far it may be off."""
    sun, looks, cover = SUN_ROWS[values["sun"]], LOOKS_ROWS[values["looks"]], COVER_ROWS[values["cover"]]
    level, taken = [number(shown(float(one), 0)) for one in sun[2:5]], [_percent(float(one)) for one in looks[2:5]]
    found = [message("sun-rests.level", sun=level[0], least=level[1], most=level[2], source=sourced(*sun[5:])),
             message("sun-rests.taken", share=taken[0], least=taken[1], most=taken[2], source=sourced(*looks[5:]))]
    if cover[2] < 1:
        found.append(message("sun-rests.cover", cover=cover[1], passes=_percent(cover[2]),
                             given=_percent(cover[3]), source=sourced(*cover[4:])))
    return noted(found + ["sun-rests.wind"])


def _percent(share: float) -> Said:
    return number(shown(float(share) * 100, 0))

"""In use, lines: what is said of the time that a mix can be used in its cup, and the way to its clock."""
from ..clock import sun, sun_lines
from ..clock.pot_start import NOW
from ..clock.usable_lines import OPEN_ENDS, band_text, meaning, questions
from ..forms import links
from ..forms.declared import Input
from ..forms.types import Found, Values
from ..things.records import SYSTEM
from ..words.lines import MORE, Line, line
from ..words.numbers import DOWN, shown
from ..words.units import told


def say(found: Found, values: Values) -> list[Line]:
    """How long the mix of this pour can be used in its cup. found: time_in_cup.InUse"""
    units, time, peak = values["units"], found.usable.time, found.peak
    return [line("usable", "Usable in the cup", time, "s", minutes_text(time),
                 rough=told_by(values, found) + "; from first contact, rounded down"),
            line("peak", "Hottest, if it is left in the cup", peak.hot, "K",
                 band_text(peak.hot, peak.cool, peak.cool_hardly, units), rank=MORE,
                 rough=OPEN_ENDS + "; the middle gets hotter")] + questions(found.apart, units)


def told_by(values: Values, found: Found) -> str:
    """What the minutes mean and what they rest on, in words. found: its `pot` and `usable`"""
    here = found.pot
    text = meaning(found.usable, values["units"])
    text += "; at " + told(here["air"], "degC", values["units"], places=0)
    if values["temperature"] is None and values["air"] is None:
        text += ", the label's: warmer is shorter"
    elif here["resin_temperature"] not in (None, here["air"]):
        text += " air, mix at " + told(here["resin_temperature"], "degC", values["units"], places=0)
    text += sun_lines.beside(values) if sun.said(values) else "; counted in the shade"
    if SYSTEM.from_memory(values["system"], "pot_time") and not values["system"]["timed"]:
        text += "; from a remembered pot life"
    return text


def minutes_text(seconds: float) -> str:
    """Whole minutes, rounded down."""
    return told(seconds, "min", "metric", DOWN, places=0)


def leads(found: Found, width: "float | None", values: Values, system_input: Input) -> list[dict]:
    """To the clock, from the moment of the tap, with all that the time depends on.

    found: time_in_cup.InCup; width: of a cup that was chosen [m]
    """
    if found.mass is None:
        return []
    pairs = links.handed_on(system_input, values)
    pairs += [["batch", shown(found.mass * 1000, 0) + " g"], ["container", "cup"],
              ["filler", shown(found.filler * 100, 1) + " %"],
              ["grain", "" if found.grain is None else shown(found.grain / 1000, 2) + " g/mL"]]
    mixed, air = values["temperature"], values["air"]
    pairs.append(["cup_width", "" if width is None else shown(width * 1000, 1) + " mm"])
    pairs.append(["resin_temperature", "" if mixed is None else shown(mixed - 273.15, 1) + " °C"])
    if air is not None or mixed is not None:
        pairs.append(["air", shown((mixed if air is None else air) - 273.15, 1) + " °C"])
    pairs += sun.pairs(values)
    return [{"label": "Start its clock", "screen": "clock", "pairs": pairs + [["pot.started", NOW]]}]

"""Time in cup, lines: what is said of the time that a mix can be used in its cup, and the way to its clock."""
from ..clock import sun, sun_lines
from ..clock.pot_start import NOW
from ..clock.usable_lines import OPEN_ENDS, band_text, meaning, questions
from ..forms import links
from ..forms.declared import Input
from ..forms.types import Found, Said, Values
from ..things.records import SYSTEM
from ..words.lines import MORE, Line, line
from ..words.messages import message, noted, number, quantity
from ..words.numbers import DOWN, shown, warmth_typed


def say(found: Found, values: Values) -> list[Line]:
    """How long the mix of this pour can be used in its cup. found: time_in_cup.InUse"""
    time, peak = found.usable.time, found.peak
    return [line("usable", "cup-time", time, "s", minutes(time),
                 rough=message("cup-time.rough", rests=told_by(values, found))),
            line("peak", "cup-time-peak", peak.hot, "K", band_text(peak.hot, peak.cool, peak.cool_hardly), rank=MORE,
                 rough=message("cup-time-peak.rough", open=OPEN_ENDS))] + questions(found.apart)


def told_by(values: Values, found: Found) -> Said:
    """What the minutes mean and what they rest on. found: its `pot` and `usable`"""
    here = found.pot
    air, mix = quantity(here["air"], "degC", places=0), here["resin_temperature"]
    if values["temperature"] is None and values["air"] is None:
        at = message("cup-time-at.label", air=air)
    elif mix not in (None, here["air"]):
        at = message("cup-time-at.mix", air=air, mix=quantity(mix, "degC", places=0))
    else:
        at = message("cup-time-at", air=air)
    rests = [meaning(found.usable), sun_lines.in_sun(at, values)]
    if not sun.said(values):
        rests.append("cup-time-rests.shade")
    if SYSTEM.from_memory(values["system"], "pot_time") and not values["system"]["timed"]:
        rests.append("cup-time-rests.memory")
    return noted(rests)


def minutes(seconds: float) -> Said:
    """Whole minutes, rounded down."""
    return quantity(seconds, "min", DOWN, 0)


def leads(found: Found, width: "float | None", values: Values, system_input: Input) -> list[dict]:
    """To the clock, from the moment of the tap, with all that the time depends on.

    found: time_in_cup.InCup; width: of a cup that was chosen [m]
    """
    if found.mass is None:
        return []
    mixed = values["temperature"]
    air = mixed if values["air"] is None else values["air"]
    pairs = links.handed_on(system_input, values)
    pairs += [["batch", shown(found.mass * 1000, 0) + " g"], ["container", "cup"],
              ["filler", number(shown(found.filler * 100, 1) + " %")],
              ["grain", "" if found.grain is None else number(shown(found.grain / 1000, 2) + " g/mL")],
              ["cup_width", "" if width is None else number(shown(width * 1000, 1) + " mm")],
              ["resin_temperature", "" if mixed is None else number(warmth_typed(mixed))]]
    if air is not None:
        pairs.append(["air", number(warmth_typed(air))])
    pairs += sun.pairs(values)
    return [{"label": "cup-time-clock", "screen": "clock", "pairs": pairs + [["pot.started", NOW]]}]

"""Pot start: what a clock is started with, from an answer about heat. `pot.*` is what the move pot reads; `timing.*` is
what an own timing of this batch would be typed as."""
from ..forms.types import Found, Values
from ..things.own_timings import sun_typed
from ..words.messages import number
from ..words.numbers import DOWN, shown, warmth_typed
from ..words.units import told
from .pot_names import PEEL, ROLLED, mixed

NOW = "now"  # for `pot.started`: the moment of the tap; the page knows the time, the engine has no clock
USES = (("any", "pot-use.any"), ("putty", "pot-use.putty"), ("wet", "pot-use.wet"))
NEXT = {"putty": ROLLED, "wet": PEEL}  # use: what comes next


def minutes_typed(seconds: float) -> str:
    """A time to be done by as typed text: whole minutes, rounded down; under ten with a tenth.

    >>> minutes_typed(1799.0), minutes_typed(430.0)
    ('29', '7.1')
    """
    return shown(seconds / 60, 0 if seconds >= 600 else 1, DOWN)


def timed_in(values: Values) -> "list[list[str]]":
    """The sun that a pot is started in, for an own timing of it; nothing in the shade."""
    return [["timing." + name, text] for name, text in sun_typed(values)]


def lead(found: Found, values: Values) -> dict:
    """The lead that starts a clock. found: `heat_found.HeatResult`"""
    span, mass = found.best.time, shown(values["batch"] * 1000, 0) + " g"
    pairs = [["pot.started", NOW], ["pot.duration", number(minutes_typed(max(span, 6.0)))],
             ["pot.batch", mixed(mass, told(values["air"], "degC", values["units"], places=0))],
             ["pot.share", shown(found.best.share * 100) + " %"],
             ["pot.container", values["container"]], ["pot.sun", values["sun"]], ["pot.place", values["where"]],
             ["timing.mass", mass], ["timing.in", values["container"]],
             ["timing.at", number(warmth_typed(values["air"]))]]
    if values["filler"] is not None:
        pairs.append(["timing.filler", number(shown(values["filler"] * 100, 1) + " %")])
        if values["grain"] is not None:
            pairs.append(["timing.grain", number(shown(values["grain"] / 1000, 2) + " g/mL")])
    if values["resin_temperature"] is not None:
        pairs.append(["timing.resin", number(warmth_typed(values["resin_temperature"]))])
    pairs += timed_in(values)
    if found.next_by is not None:
        pairs += [["pot.steps.0.name", NEXT[values["use"]]],
                  ["pot.steps.0.minute", number(minutes_typed(found.next_by))]]
    return {"label": "pot-start", "screen": "clock", "pairs": [pair for pair in pairs if pair[1]]}

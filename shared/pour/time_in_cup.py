"""In use: how long what is in the cup of a pour can be used, as `usable` tells it, and its clock."""
from ..catalogue.measuring import DENSEST
from ..catalogue.pots import SIZES
from ..clock.heat_model import calibration_of, pot_of
from ..clock.pot_start import NOW
from ..clock.usable import batch, contradictions, known, usable
from ..clock.usable_lines import meaning, peak_text, questions
from ..equations.calibrate_heat import TOO_HOT, USABLE
from ..equations.integrate import pot_run
from ..forms import links
from ..forms.errors import InputError
from ..forms.memo import once
from ..mix.filler_dose import dose_of
from ..things.records import SYSTEM
from ..words.lines import MORE, line
from ..words.numbers import DOWN, shown, to_step
from ..words.units import told
from . import poured_mix
from .chosen_cup import cup_chosen


def poured_mass(values):
    """(mass of all that a pour has in its cup [kg] or None where the label leaves it unknown, share of filler [-])"""
    mass, dose = poured_mix.poured(values).mass, 0.0
    if mass is None:
        return None, 0.0
    if poured_mix.asked(values):
        poured_mix.check(values)
        dose = sum([part for part, _ in dose_of(values).parts])
    return mass * (1 + dose), dose / (1 + dose)


def cup_width(values):
    """Width of a cup that was chosen [m], or None: then it is taken as wide as it is full."""
    return (values["cup"]["bottom"] + values["cup"]["top"]) / 2 if cup_chosen(values) else None


def of_cup(values, mass: float, filler: float = 0.0):
    """What is in a cup as `usable` reads it. mass: of all of it [kg]; filler: share [-]

    Where neither the air nor the mix was measured both are as warm as the label says; where one was, so is the other.
    """
    mixed, air = values["temperature"], values["air"]
    warm = mixed if air is None else air
    return batch(values["system"], "cup", mass, values["system"]["pot_temperature"] if warm is None else warm, mixed,
                 filler, dict(SIZES, cup_width=cup_width(values)))


def measured(values) -> bool:
    """Whether some temperature was typed."""
    return values["temperature"] is not None or values["air"] is not None


def told_by(values, here, found):
    """What the minutes mean and what they rest on, in words."""
    text = meaning(found, values["units"]) + "; at " + told(here["air"], "degC", values["units"], places=0)
    if not measured(values):
        text += ", the label's: warmer is shorter"
    elif here["resin_temperature"] not in (None, here["air"]):
        text += " air, mix at " + told(here["resin_temperature"], "degC", values["units"], places=0)
    if SYSTEM.from_memory(values["system"], "pot_time") and not values["system"]["timed"]:
        text += "; from a remembered pot life"
    return text


def found(values):
    """(the batch, its Usable, its peak [K]) of what a pour has in its cup; None where the label tells too little."""
    return once(values, "in_use", lambda: _found(values))


def _found(values):
    system = values["system"]
    if not known(system) or (system["pot_temperature"] is None and not measured(values)):
        return None
    try:
        mass, filler = poured_mass(values)
    except InputError:  # no filler that can be; `thicken` says so
        return None
    if mass is None:
            mass = poured_mix.poured(values).volume * DENSEST  # more is shorter
    here = of_cup(values, mass, filler)
    run = pot_run(calibration_of(here).rates, pot_of(here, "cup", mass), USABLE, TOO_HOT, whole=True)
    return here, usable(here, run=run), to_step(run.peak, 0.01)


def minutes_text(seconds: float) -> str:
    """Whole minutes, rounded down."""
    return told(seconds, "min", "metric", DOWN, places=0)


def lines(values):
    """How long the mix of this pour can be used in its cup."""
    said = found(values)
    if said is None:
        return []
    here, one, peak = said
    return [line("usable", "Usable in the cup", one.time, "s", minutes_text(one.time),
                 rough=told_by(values, here, one) + "; from first contact, rounded down"),
            line("peak", "Hottest, if it is left in the cup", peak, "K", peak_text(peak, values["units"]), rank=MORE,
                 rough="rounded up; the middle gets hotter")] + questions(contradictions(here), values["units"])


def leads(values, system_input):
    """To the clock, from the moment of the tap, with all that the time depends on."""
    mass, filler = poured_mass(values)
    if mass is None:
        return []
    pairs = links.handed_on(system_input, values)
    pairs += [["batch", shown(mass * 1000, 0) + " g"], ["container", "cup"], ["filler", shown(filler * 100, 1) + " %"]]
    width, mixed, air = cup_width(values), values["temperature"], values["air"]
    pairs.append(["cup_width", "" if width is None else shown(width * 1000, 1) + " mm"])
    pairs.append(["resin_temperature", "" if mixed is None else shown(mixed - 273.15, 1) + " °C"])
    if air is not None or mixed is not None:
        pairs.append(["air", shown((mixed if air is None else air) - 273.15, 1) + " °C"])
    return [{"label": "Start its clock", "screen": "clock", "pairs": pairs + [["pot.started", NOW]]}]

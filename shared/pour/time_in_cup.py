"""Time in cup: how long what is in the cup of a pour can be used, as `usable` tells it."""
from collections import namedtuple

from ..catalogue.measuring import DENSEST
from ..catalogue.pots import SIZES
from ..clock.peak_band import band
from ..clock.usable import batch, contradictions, known, usable
from ..forms.errors import InputError
from ..forms.memo import once
from ..forms.types import Values
from ..mix.filler_dose import components, dose_of
from ..mix.ratio import mixed_density
from . import poured_mix
from .chosen_cup import cup_chosen

# pot: what is in the cup as `usable` reads it; usable: usable.Usable; peak: peak_band.Band, if it is left in the cup
# apart: own timings that contradict each other, as usable.contradictions
InUse = namedtuple("InUse", ("pot", "usable", "peak", "apart"))
# mass: all that a pour has in its cup [kg], None where the label leaves it unknown; filler: share of it [-]
# grain: true density of that filler [kg/m3], None where there is none
InCup = namedtuple("InCup", ("mass", "filler", "grain"))


def poured_mass(values: Values) -> InCup:
    """All that a pour has in its cup, and how much of that is filler."""
    mass, dose, grain = poured_mix.poured(values).mass, 0.0, None
    if mass is None:
        return InCup(None, 0.0, None)
    if poured_mix.asked(values):
        poured_mix.check(values)
        dose, grain = sum([part for part, _ in dose_of(values).parts]), grain_of(values)
    return InCup(mass * (1 + dose), dose / (1 + dose), grain)


def grain_of(values: Values) -> "float | None":
    """True density of the filler that was chosen, or of the blend [kg/m3]; None where none is asked."""
    if not poured_mix.asked(values):
        return None
    fillers, shares = components(values)
    return mixed_density(shares, tuple([filler["density"] for filler in fillers]))


def held(values: Values) -> "InCup | None":
    """What the cup of a pour holds, its mass never None: a volume alone is taken as dense as any; None where no pour
    can be, which `thicken` says."""
    try:
        found = poured_mass(values)
    except InputError:
        return None
    if found.mass is None:
        return InCup(poured_mix.poured(values).volume * DENSEST, 0.0, None)  # more is shorter
    return found


def cup_width(values: Values) -> "float | None":
    """Width of a cup that was chosen [m], or None: then it is taken as wide as it is full."""
    return (values["cup"]["bottom"] + values["cup"]["top"]) / 2 if cup_chosen(values) else None


def of_cup(values: Values, mass: float, filler: float = 0.0, grain: "float | None" = None) -> Values:
    """What is in a cup as `usable` reads it. mass: of all of it [kg]; filler: share [-]; grain: its density [kg/m3]

    Where neither the air nor the mix was measured both are as warm as the label says; where one was, so is the other.
    """
    mixed, air = values["temperature"], values["air"]
    warm = mixed if air is None else air
    return batch(values["system"], "cup", mass, values["system"]["pot_temperature"] if warm is None else warm, mixed,
                 filler, dict(SIZES, cup_width=cup_width(values)), sun=values, grain=grain)


def measured(values: Values) -> bool:
    """Whether some temperature was typed."""
    return values["temperature"] is not None or values["air"] is not None


def found(values: Values) -> "InUse | None":
    """How long what a pour has in its cup can be used, once for one question; None where the label tells too little."""
    return once(values, "in_use", lambda: reckon(values))


def reckon(values: Values) -> "InUse | None":
    """How long what a pour has in its cup can be used; None where the label tells too little."""
    system = values["system"]
    if not known(system) or (system["pot_temperature"] is None and not measured(values)):
        return None
    inside = held(values)
    if inside is None:
        return None
    here = of_cup(values, *inside)
    return InUse(here, usable(here), band(here, "cup", inside.mass), contradictions(here))

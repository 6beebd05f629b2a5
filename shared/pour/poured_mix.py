"""Poured mix: what filler goes into, as strokes and marks are told, or as it follows from what was really taken."""
from ..forms.errors import InputError
from ..forms.late import late
from ..forms.types import Values
from ..mix import ratio
from ..mix.filler_dose import check as check_filling
from . import ways
from .by_scale import actual_readings, poured_masses
from .measured_out import follow, readings, volumes_taken


def asked(values: Values) -> bool:
    """Whether there is a putty to make."""
    return values["thicken"] == "yes" or values["amount"][0] == "putty"


def check(values: Values) -> None:
    """Filler goes by the weight of the mix; what was poured so far must be a pour that can be."""
    if asked(values):
        check_filling(values)
        if not values["system"]["densities"]:
            raise InputError("system.densities", "thicken-densities")
    if readings(values):
        ways.check(values)  # the mix follows from them, with filler or without


def _told_volume(values: Values) -> "float | None":
    try:
        ways.check(values)
    except InputError:  # tools that do not fit the label; `measure` says so
        return None
    return ways.way_of(values["way"]).told_volume(values)


def _parts_mass(values: Values, volumes: "tuple[float, ...] | None") -> "float | None":
    """Mass of parts that were measured one by one [kg], or of the strokes that are told; None where they cannot be."""
    by_pumps = late("by_pumps")
    if volumes:
        return by_pumps.mass_of(volumes, ratio.basis(values["system"]).densities)
    try:
        ways.check(values)
    except InputError:  # as above
        return None
    return by_pumps.told_mass(values)


def poured(values: Values) -> ratio.Mix:
    """The mix that filler goes into: as strokes and marks are told, or as it follows from what was really taken."""
    batch = ratio.mix(values)
    if values["way"] != "scale":
        done = volumes_taken(values)
        if not (batch.volumes and batch.density):
            return batch
        if done or values["way"] == "pumps":
            mass = _parts_mass(values, follow(batch.volumes, done) if done else None)
        else:
            volume = _told_volume(values)
            mass = volume * batch.density if volume else None
        return ratio.mix_of_mass(values["system"], mass) if mass else batch
    if not actual_readings(values):
        return batch
    return ratio.mix_of_mass(values["system"], sum(poured_masses(values)))

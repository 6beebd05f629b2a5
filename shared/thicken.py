"""Thicken: from a mix and a stiffness to the filler, the putty, and whether it stands where it is put."""
from math import pi

from . import measure, ratio
from .by_scale import actual_readings, poured_masses
from .errors import InputError
from .filling import PUTTY_FOLD
from .filling import check as check_filling
from .inputs import Choice, Number
from .taken import follow, readings, volumes_taken

WHEN = (("thicken", ("yes",)), ("amount_is", ("putty",)))

# key, label, slope of the steepest face from the horizontal [rad]
POSITIONS = (
    ("level", "Level seam, cove facing up", pi / 4),
    ("upright", "Upright seam or a wall", pi / 2),
    ("overhead", "Overhead", pi / 2),
)

INPUTS = measure.INPUTS + (
    Number("scoop", "A level scoop holds", unit="mL", low=0.5, high=2000, default=15, fold=PUTTY_FOLD, when=WHEN),
    Choice("position", "The seam", [row[:2] for row in POSITIONS], fold=PUTTY_FOLD, when=WHEN),
    Number("layer", "Putty in one pass, thickness", unit="mm", low=0.5, high=60, default=6, fold=PUTTY_FOLD, when=WHEN,
           help="From the corner out, the throat."),
    Choice("purpose", "For", (("seam", "A structural seam"), ("fairing", "Fairing only")), fold=PUTTY_FOLD, when=WHEN),
)


def asked(values) -> bool:
    """Whether there is a putty to make."""
    return values["thicken"] == "yes" or values["amount"][0] == "putty"


def check(values):
    """Filler goes by the weight of the mix; what was poured so far must be a pour that can be."""
    if asked(values):
        check_filling(values)
        if not values["system"]["densities"]:
            raise InputError("system.densities", "Densities: type that of each part; filler goes by weight, "
                             "putty by volume")
    if readings(values):
        measure.check(values)  # the mix follows from them, with filler or without


CHECKS = (ratio.check, check)


def answer(values):
    """Filler for the mix, how to add it, the putty, and whether it stands; no lines where none is asked."""
    if not asked(values):
        return []
    return lines_of(values, poured(values))


def lines_of(values, mix):
    """The lines of the filler that one mix takes, and of its putty."""
    from .thicken_lines import lines  # loaded only where there is a putty
    return lines(values, mix)


def leads(values):
    """To the clock, from the moment of the tap, with all that is in the cup: as poured, and the filler."""
    from . import in_use
    return in_use.leads(values, ratio.INPUTS[0])


def _told_volume(values):
    try:
        measure.check(values)
    except InputError:  # tools that do not fit the label; `measure` says so
        return None
    return measure.way_of(values["way"]).told_volume(values)


def _parts_mass(values, volumes):
    """Mass of parts that were measured one by one [kg], or of the strokes that are told; None where they cannot be."""
    from . import by_pumps
    if volumes:
        return by_pumps.mass_of(volumes, ratio.basis(values["system"]).densities)
    try:
        measure.check(values)
    except InputError:  # as above
        return None
    return by_pumps.told_mass(values)


def poured(values):
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

"""Putty: the filler that one mix takes, how it is measured, the putty it makes, and whether that stands."""
from collections import namedtuple

from ..catalogue.fillers import APART, FAR, SPHERE_PACKING, STIFFNESSES, SURE
from ..catalogue.starts import FIRST_PARTS
from ..equations.putty import putty_volume, relative_viscosity, solids_share, thickest_layer, yield_stress_needed
from ..equations.rounding import to_step
from ..forms.late import late
from ..forms.types import Values
from ..mix.filler_dose import POSITIONS, Dose, components, dose_of, overpacked, own_ratios, place_of, used
from ..mix.ratio import Mix
from .chosen_cup import cup_chosen

STANDS = place_of("stands")

# packed: filler_dose.Packed, then all else is None; None where the liquid wets the dose
# fillers: Scooped of each; first: filler to stir in first [kg]; volume [m3], mass [kg], density [kg/m3]: of the putty
# air: share of its volume [-]; dose: filler [kg/kg of mix]; counted: own batches that count in it
# spread: how far the dose may be off, k = 2 [-]; thicker: over the liquid's viscosity [-], None where it is not known
# room: what the cup chosen takes [m3], None where the putty fits it or none was chosen; stands: Stands
# soft, unknown: places of the fillers in a seam that may not carry load, and of those of which that is not known
# runny: whether all of them settle and flow in a putty that is to stand; own: OwnBatches, None where there are none
PuttyResult = namedtuple("PuttyResult", (
    "packed", "fillers", "first", "volume", "mass", "density", "air", "dose", "counted", "spread", "thicker", "room",
    "stands", "soft", "unknown", "runny", "own"))
# mass [kg], loose: its volume as it lies in the tub [m3], scoops: level ones, to half a scoop
Scooped = namedtuple("Scooped", ("mass", "loose", "scoops"))
# needed: yield stress so that it does not sag [Pa]; enough: place of the softest stiffness that has it, or None
# thickest: pass that holds [m]; holds: whether the stiffness chosen is enough
Stands = namedtuple("Stands", ("needed", "enough", "thickest", "holds"))
# moved: of the dose, by them [-]; weight: of the own figures in it [-]; doses [kg/kg of mix] and changes against the
# table [-]: of each, in the order typed; counted, questioned: places of them
# apart: how much more filler one of two took than the other [-], far: change of a single one; None where all is well
OwnBatches = namedtuple("OwnBatches", (
    "moved", "weight", "doses", "changes", "counted", "questioned", "apart", "far"))


def reckon(mix: Mix, values: Values) -> PuttyResult:
    """The filler that a mix takes, and its putty. mix: with its density known"""
    dose = dose_of(values)
    packed = overpacked(dose, mix.density)
    if packed:
        return PuttyResult(*([packed] + [None] * 16))
    masses = [part * mix.mass for part, _ in dose.parts]
    filler = sum(masses)
    volume, mass = putty_volume(mix.mass, mix.density, _trues(masses, dose), dose.air), mix.mass + filler
    seam = values["purpose"] == "seam"
    carries = [one["carries"] for one in dose.fillers]
    flows = [one["alone"] == "no" for one in dose.fillers]
    return PuttyResult(
        packed=None, fillers=tuple([_scooped(mass_of_one, one, values["scoop"])
                                    for mass_of_one, one in zip(masses, dose.fillers)]),
        first=FIRST_PARTS[0] * filler / FIRST_PARTS[1], volume=volume, mass=mass, density=mass / volume, air=dose.air,
        dose=filler / mix.mass,
        counted=len(dose.calibration.counted), spread=dose.calibration.spread, thicker=_thicker(mix, dose),
        room=_room(volume, values), stands=_stands(mix, masses, dose, values),
        soft=tuple([place for place, carry in enumerate(carries) if carry == "no" and seam]),
        unknown=tuple([place for place, carry in enumerate(carries) if not carry and seam]),
        runny=all(flows) and place_of(values["stiffness"]) >= STANDS, own=_own_batches(dose, values))


def _trues(masses: list[float], dose: Dose) -> list[tuple[float, float]]:
    """Mass [kg] and true density [kg/m3] of each filler."""
    return [(mass, true) for mass, (_, true) in zip(masses, dose.parts)]


def _scooped(mass: float, filler: Values, scoop: float) -> Scooped:
    loose = mass / filler["loose"]
    return Scooped(mass, loose, to_step(loose / scoop, 0.5))


def _thicker(mix: Mix, dose: Dose) -> "float | None":
    """How much thicker than the liquid a putty of spheres is; Krieger & Dougherty (1959)."""
    if not all([filler["grain"] == "sphere" for filler in dose.fillers]):
        return None
    share = solids_share(mix.density, dose.parts)
    return relative_viscosity(share, SPHERE_PACKING[0]) if share < SPHERE_PACKING[0] - 0.005 else None


def _room(volume: float, values: Values) -> "float | None":
    """What a cup that was chosen takes [m3], where the putty does not fit it."""
    if not cup_chosen(values):
        return None
    usable = late("by_stick").usable_volume(values["cup"])
    return None if volume <= usable * (1 + 1e-9) else usable


def stiffness_for(stress: float) -> "int | None":
    """The softest stiffness whose remembered yield stress reaches SURE times a needed one, as its place, or None.

    stress: [Pa]
    >>> STIFFNESSES[stiffness_for(30)][0], stiffness_for(1000)
    ('clings', None)
    """
    for place, row in enumerate(STIFFNESSES):
        if row[3] >= SURE * stress * (1 - 1e-9):
            return place
    return None


def _stands(mix: Mix, masses: list[float], dose: Dose, values: Values) -> Stands:
    """Whether the putty stays where it is put, by its weight against its yield stress."""
    # air left out: the heavier putty is the safe side
    density = (mix.mass + sum(masses)) / putty_volume(mix.mass, mix.density, _trues(masses, dose), 0.0)
    slope = dict([(row[0], row[2]) for row in POSITIONS])[values["position"]]
    needed = yield_stress_needed(density, values["layer"], slope)
    enough, chosen = stiffness_for(needed), place_of(values["stiffness"])
    return Stands(needed, enough, thickest_layer(STIFFNESSES[chosen][3] / SURE, density, slope),
                  enough is not None and enough <= chosen)


def _own_batches(dose: Dose, values: Values) -> "OwnBatches | None":
    """The builder's own batches, and what they did to the dose."""
    rows, found = values["batches"], dose.calibration
    if not rows:
        return None
    ratios = own_ratios(values, *components(values))
    counted = [ratios[place] for place in found.counted]
    apart = far = None
    if len(counted) == 2 and max(counted) > APART * min(counted):
        apart = max(counted) / min(counted) - 1
    if len(counted) == 1 and not FAR[0] <= counted[0] <= FAR[1]:
        far = counted[0] - 1
    return OwnBatches(found.factor - 1, found.own, tuple([used(row) / row["mixed"] for row in rows]),
                      tuple([one - 1 for one in ratios]), found.counted, found.questioned, apart, far)

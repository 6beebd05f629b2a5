"""Ratio: from a label and one known amount to every part, by weight and by volume."""
from collections import namedtuple

from ..catalogue.containers import MATTER
from ..catalogue.ratios import AIM, FAR_OFF, WRONG_WAY
from ..catalogue.starts import BATCH
from ..equations.putty import mass_for_putty
from ..forms.errors import InputError
from ..forms.inputs import Amount, Choice, Pick
from ..forms.memo import once
from ..forms.remembered import start
from ..forms.types import Values
from ..things.records import PUMPS, SCALE, SYSTEM, label_apart, relative_densities
from ..words.messages import message, sentences
from . import ratio_doubt, ratio_lines
from .filler_dose import FILLING, dose_of, overpacked
from .filler_words import packed_text
from .label_words import only_by

WAYS = (("scale", "ratio-way.scale"), ("pumps", "ratio-way.pumps"), ("syringes", "ratio-way.syringes"),
        ("graduated", "ratio-way.graduated"), ("stick", "ratio-way.stick"))

BENCH_FOLD = "ratio-bench-fold"

INPUTS = (
    Pick("system", "kind-system", SYSTEM, default="3-1"),
    Amount("amount", "ratio-amount", (
        ("total", "ratio-amount.total", ("g", "mL")),
        ("part_a", "ratio-amount.part-a", ("g", "mL")),
        ("part_b", "ratio-amount.part-b", ("g", "mL")),
        ("strokes", "ratio-amount.strokes", ("strokes",)),
        ("putty", "ratio-amount.putty", ("mL",)),
    ), default=start(BATCH, "g")),
    # a label by volume is drawn up by volume: the marks of syringes hold its ratio closest, and are mL on every syringe
    Choice("way", "ratio-way", WAYS, default="syringes", row=True, before="scale",
           follows=(("system.by_weight", "scale"), ("system.weighed", "scale"))),
    Choice("compare", "ratio-compare", (("no", "ratio-compare.no"), ("yes", "ratio-compare.yes")),
           fold="ratio-compare"),
    Pick("pumps", "ratio-pumps", PUMPS, default="equal", fold=BENCH_FOLD,
         when=(("way", ("pumps",)), ("amount_is", ("strokes",)), ("compare", ("yes",)))),
    # before all that it shows: own batches of a filler are weighed on it too
    Pick("scale", "kind-scale", SCALE, default="1g", fold=BENCH_FOLD, help="ratio-scale.help",
         when=(("way", ("scale", "pumps")), ("compare", ("yes",)))),
) + FILLING

# masses [kg], volumes [m3]: tuples in the order of the label, or () where the label's basis does not give them
# mass [kg], volume [m3], density [kg/m3]: of the whole mix, or None
Mix = namedtuple("Mix", ("masses", "volumes", "mass", "volume", "density"))
# weight_parts, volume_parts [-], densities [kg/m3]: in the order of the label, or () where nothing gives them
Basis = namedtuple("Basis", ("weight_parts", "volume_parts", "densities"))

# mix: Mix; by_weight: parts for 100 of resin [-], or (); phr: the parts after the first for 100 of resin, by weight,
# or None; by_volume: parts for 1 of the least [-], or ()
# ideal: phr that leaves neither over, None where no equivalent weights are known; of_ideal: the label's over that [-],
# None where the label gives no weights; far_off: whether the two are far apart
# weighs, fills: ratio_doubt.Doubt of the ratio by weight and by volume, or None
# usual: the density by which an amount in the label's other basis was counted, where it gives none [kg/m3], else None
# turned: whether there is more hardener than resin; apart: Apart, or None where the label agrees with itself
RatioResult = namedtuple("RatioResult", (
    "mix", "by_weight", "phr", "by_volume", "ideal", "of_ideal", "far_off", "turned", "apart", "weighs", "fills",
    "usual"))
# place: of the part whose two ratios are furthest apart; error: of the one by weight, from the one by volume [-]
Apart = namedtuple("Apart", ("place", "error"))

USUAL_DENSITY = dict([row[:2] for row in MATTER])["density"]  # of a mix [kg/m3], where the label gives none
SLACK = 1e-9  # computed figures differ in their last bits between runtimes


def phr_by_volume(parts: float, resin_density: float, hardener_density: float) -> float:
    """Hardener per hundred of resin by weight, from a ratio by volume:
        phr = 100 rho_h / (v rho_r)

    parts: v [-], volumes of resin to one of hardener, above 0
    resin_density, hardener_density: rho_r, rho_h [kg/m3], above 0
    returns: phr [g hardener per 100 g resin]; the definition of density, ISO 80000-4
    >>> round(phr_by_volume(2, 1150, 970), 5)
    42.17391
    """
    return 100 * hardener_density / (parts * resin_density)


def mixed_density(weight_parts: "list[float] | tuple[float, ...]", densities: tuple[float, ...]) -> float:
    """Density of a mix whose volumes add up:
        rho = sum(w) / sum(w_i / rho_i)

    weight_parts: w_i [any unit of mass], above 0; densities: rho_i [kg/m3], in the same order
    returns: rho [kg/m3]; the definition of density, ISO 80000-4; shrinkage in cure is left out
    >>> round(mixed_density((100, 30), (1120, 980)), 3)
    1084.255
    """
    return sum(weight_parts) / sum([part / rho for part, rho in zip(weight_parts, densities)])


def stoichiometric_phr(amine_weight: float, epoxide_weight: float) -> float:
    """Hardener per hundred of resin that leaves neither over:
        phr = 100 AHEW / EEW

    amine_weight: AHEW, epoxide_weight: EEW [kg per equivalent, or any one unit], above 0
    returns: phr [-]; Lee & Neville, Handbook of Epoxy Resins (1967), equivalent-weight arithmetic
    >>> round(stoichiometric_phr(34, 190), 4)
    17.8947
    """
    return 100 * amine_weight / epoxide_weight


def amine_equivalent(molar_mass: float, active_hydrogens: float) -> float:
    """Amine hydrogen equivalent weight:
        AHEW = MW / active hydrogens

    molar_mass: MW [g/mol]; active_hydrogens: on the amine's nitrogen, above 0
    returns: AHEW [g/eq]; Lee & Neville (1967)
    >>> amine_equivalent(103, 5)
    20.6
    """
    return molar_mass / active_hydrogens


def blend_equivalent(parts: tuple[float, ...], epoxide_weights: "tuple[float | None, ...]") -> float:
    """Epoxide equivalent weight of a blend, over all of its mass:
        EEW = sum(m) / sum(m_i / EEW_i)

    parts: m_i [any unit of mass]; epoxide_weights: EEW_i [g/eq], None for what holds no epoxide (filler)
    returns: EEW [g/eq]; Lee & Neville (1967)
    >>> round(blend_equivalent((80, 10, 10), (189, 183, None)), 3)
    209.238
    """
    return sum(parts) / sum([m / eew for m, eew in zip(parts, epoxide_weights) if eew])


def basis(system: Values) -> Basis:
    """The label's parts by weight and by volume, each from the other by the densities where the label leaves one out.

    system: values of records.SYSTEM; an empty tuple stands for what the label does not give
    """
    weight, volume, densities = system["by_weight"], system["by_volume"], system["densities"]
    relative = relative_densities(system)
    if densities and relative is not densities:  # what was weighed says how they are to each other
        densities = tuple([densities[0] * one / relative[0] for one in relative])
    if not weight and relative:
        weight = tuple([v * rho for v, rho in zip(volume, relative)])
    if not volume and relative:
        volume = tuple([w / rho for w, rho in zip(weight, relative)])
    return Basis(weight, volume, densities)


def shares(parts: tuple[float, ...]) -> tuple[float, ...]:
    """Parts as fractions of their sum.

    >>> shares((3, 1))
    (0.75, 0.25)
    """
    whole = sum(parts)
    return tuple([part / whole for part in parts])


def mass_shares(system: Values) -> "tuple[float, ...]":
    """Of each part in the mix by mass, () where the label and densities do not tell."""
    parts = basis(system).weight_parts
    return shares(parts) if parts else ()


def mix_of_mass(system: Values, mass: float) -> Mix:
    """The mix of a known mass [kg]; its volumes only where the label and the densities give them."""
    found = basis(system)
    masses = tuple([share * mass for share in shares(found.weight_parts)])
    if not found.densities:
        return Mix(masses, (), mass, None, None)
    density = mixed_density(found.weight_parts, found.densities)
    volume = mass / density
    volumes = tuple([share * volume for share in shares(found.volume_parts)])
    return Mix(masses, volumes, mass, volume, density)


def mix_of_volume(system: Values, volume: float) -> Mix:
    """The mix of a known volume [m3]; its masses only where the densities give them."""
    found = basis(system)
    if found.densities:
        return mix_of_mass(system, volume * mixed_density(found.weight_parts, found.densities))
    volumes = tuple([share * volume for share in shares(found.volume_parts)])
    return Mix((), volumes, None, volume, None)


def strokes_volumes(pumps: Values, densities: tuple[float, ...]) -> tuple[float, ...]:
    """Volume of one stroke of each pump [m3], from ten of them weighed where that was done.

    pumps: values of records.PUMPS; densities [kg/m3], needed for weighed strokes
    """
    if pumps["ten_strokes"]:
        if len(densities) != len(pumps["ten_strokes"]):
            raise InputError("system.densities", "ratio-weighed-strokes")
        return tuple([mass / 10 / rho for mass, rho in zip(pumps["ten_strokes"], densities)])
    return pumps["strokes"]


def mix(values: Values) -> Mix:
    """The mix that the label and the one known amount give; InputError at the field that can put it right."""
    return once(values, "mix", lambda: _mixed(values))


def _mixed(values: Values) -> Mix:
    system = values["system"]
    found = basis(system)
    key, amount, quantity = values["amount"]
    if key == "strokes":
        volumes = strokes_volumes(values["pumps"], found.densities)
        key, amount, quantity = "part_a", amount * volumes[0], "volume"
    if key == "putty":
        if not found.densities:
            why = sentences([only_by("volume"), "ratio-putty-needs"])
            raise InputError("system.densities", message("field-refused", label="kind-system-densities", why=why))
        dose = dose_of(values)
        density = mixed_density(found.weight_parts, found.densities)
        packed = overpacked(dose, density)
        if packed:
            raise InputError("stiffness",
                             message("field-refused", label="filling-stiffness", why=packed_text(packed)))
        key, amount, quantity = "total", mass_for_putty(amount, density, dose.parts, dose.air), "mass"
    if quantity == "mass" and not found.weight_parts:
        if key != "total":
            raise InputError("amount", sentences([only_by("volume"), "ratio-type-ml"]))
        return mix_of_volume(system, amount / USUAL_DENSITY)  # how much in all rests on it, the ratio does not
    if quantity == "volume" and not found.volume_parts:
        if key != "total":
            raise InputError("amount", sentences([only_by("weight"), "ratio-type-g"]))
        return mix_of_mass(system, amount * USUAL_DENSITY)
    if key != "total":
        parts = found.weight_parts if quantity == "mass" else found.volume_parts
        amount = amount / shares(parts)[0 if key == "part_a" else 1]
    return mix_of_mass(system, amount) if quantity == "mass" else mix_of_volume(system, amount)


def check(values: Values) -> None:
    """What no single field can know: an amount in a basis that the label does not give."""
    mix(values)


CHECKS = (check,)


def reckon(values: Values) -> RatioResult:
    """Every part of the mix, the label's ratio in each basis, and what is questionable about it.

    system, amount: as INPUTS; pumps, and what `dose_of` reads, where the amount is in strokes or putty
    InputError where the label does not give what the amount asks for
    """
    system, found = values["system"], basis(values["system"])
    hundred = tuple([100 * part / found.weight_parts[0] for part in found.weight_parts])
    least = min(found.volume_parts) if found.volume_parts else 1.0
    ideal = of_ideal = None
    if system["eew"] and system["ahew"]:
        ideal = stoichiometric_phr(system["ahew"], system["eew"])
        if found.weight_parts:
            of_ideal = 100 * sum(found.weight_parts[1:]) / found.weight_parts[0] / ideal
    parts = system["by_weight"] or system["by_volume"]
    whole = mix(values)
    return RatioResult(
        mix=whole, by_weight=hundred, phr=sum(hundred[1:]) if hundred else None,
        by_volume=tuple([part / least for part in found.volume_parts]),
        ideal=ideal, of_ideal=of_ideal, far_off=of_ideal is not None and abs(of_ideal - 1) > FAR_OFF,
        turned=len(parts) == 2 and parts[1] > WRONG_WAY * parts[0], apart=_apart(system),
        weighs=ratio_doubt.doubt(system, ratio_doubt.WEIGHT), fills=ratio_doubt.doubt(system, ratio_doubt.VOLUME),
        usual=_usual(values["amount"], whole))


def _usual(amount: tuple, whole: Mix) -> "float | None":
    other = {"mass": whole.mass, "volume": whole.volume}
    return USUAL_DENSITY if amount[0] == "total" and other[amount[2]] is None else None


def _apart(system: Values) -> "Apart | None":
    """How far two ratios in one label are apart, where that is further than a pour is to be."""
    if not (system["by_weight"] and system["by_volume"] and relative_densities(system)):
        return None
    place, error = label_apart(system)
    return Apart(place, error) if error > (system["tolerance"] or AIM) + SLACK else None


def reckoned(values: Values) -> RatioResult:
    """What `reckon` finds, once for one question."""
    return once(values, "ratio", lambda: reckon(values))


def answer(values: Values) -> list:
    """Every part, the whole, the notations of the label, and what is questionable about it."""
    return ratio_lines.say(reckoned(values), values)

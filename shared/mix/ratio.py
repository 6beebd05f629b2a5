"""Ratio: from a label and one known amount to every part, by weight and by volume."""
from collections import namedtuple

from ..catalogue.limits import AIM, WRONG_WAY
from ..equations.putty import mass_for_putty
from ..forms.choices import option_words
from ..forms.errors import InputError
from ..forms.inputs import Amount, Choice, Pick
from ..forms.memo import once
from ..things.records import LINK, ORIGIN, PUMPS, SCALE, SYSTEM, label_apart
from ..words.lines import ASK, MORE, line, words
from ..words.numbers import BLANKS, UP, shown
from ..words.units import told
from .filler_dose import FILLING, dose_of, overpacked

WAYS = (("scale", "Scale"), ("pumps", "Pumps"), ("syringes", "Syringes"), ("graduated", "Marked cup"),
        ("stick", "Stick"))

BENCH_FOLD = "Tools on the bench"

INPUTS = (
    Pick("system", "Resin system", SYSTEM, default="3-1"),
    Amount("amount", "Amount", (
        ("total", "mixed, in all", ("g", "mL")),
        ("part_a", "resin on hand", ("g", "mL")),
        ("part_b", "hardener on hand", ("g", "mL")),
        ("strokes", "resin pump strokes", ("strokes",)),
        ("putty", "putty wanted", ("mL",)),
    ), default=240),
    Choice("way", "Measured with", WAYS, row=True),
    Choice("compare", "Which way is the most accurate", (
        ("no", "Only the way chosen"), ("yes", "Compare all the tools of this bench")),
        fold="Which way is the most accurate"),
    Pick("pumps", "Pumps", PUMPS, default="equal", fold=BENCH_FOLD,
         when=(("way", ("pumps",)), ("amount_is", ("strokes",)), ("compare", ("yes",)))),
    # before all that it shows: own batches of a filler are weighed on it too
    Pick("scale", "Scale", SCALE, default="1g", fold=BENCH_FOLD, help="With pumps: only for the top-up.",
         when=(("way", ("scale", "pumps")), ("compare", ("yes",)))),
) + FILLING

# masses, volumes: tuples in the order of the label, or () where the label's basis does not give them
# mass [kg], volume [m3], density [kg/m3]: of the whole mix, or None
Mix = namedtuple("Mix", ("names", "masses", "volumes", "mass", "volume", "density"))
Basis = namedtuple("Basis", ("weight_parts", "volume_parts", "densities"))

NO_DENSITIES = "The label gives parts by {} only: without the density of each part there is no answer by {}."


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


def mixed_density(weight_parts, densities) -> float:
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


def blend_equivalent(parts, epoxide_weights) -> float:
    """Epoxide equivalent weight of a blend, over all of its mass:
        EEW = sum(m) / sum(m_i / EEW_i)

    parts: m_i [any unit of mass]; epoxide_weights: EEW_i [g/eq], None for what holds no epoxide (filler)
    returns: EEW [g/eq]; Lee & Neville (1967)
    >>> round(blend_equivalent((80, 10, 10), (189, 183, None)), 3)
    209.238
    """
    return sum(parts) / sum([m / eew for m, eew in zip(parts, epoxide_weights) if eew])


def basis(system) -> Basis:
    """The label's parts by weight and by volume, each from the other by the densities where the label leaves one out.

    system: values of records.SYSTEM; an empty tuple stands for what the label does not give
    """
    weight, volume, densities = system["by_weight"], system["by_volume"], system["densities"]
    if not weight and densities:
        weight = tuple([v * rho for v, rho in zip(volume, densities)])
    if not volume and densities:
        volume = tuple([w / rho for w, rho in zip(weight, densities)])
    return Basis(weight, volume, densities)


def part_names(system):
    """A name for every part: the label's, or what the trade calls the first two.

    >>> part_names({"by_weight": (100, 30, 5), "by_volume": (), "parts": "Resin : Hardener"})
    ('Resin', 'Hardener', 'Part 3')
    """
    given = [name.strip(BLANKS) for name in system["parts"].split(":")]
    count = len(system["by_weight"] or system["by_volume"])
    names = []
    for place in range(count):
        name = given[place] if place < len(given) else ""
        names.append(name or ("Resin", "Hardener")[place] if place < 2 else name or "Part " + str(place + 1))
    return tuple(names)


def shares(parts):
    """Parts as fractions of their sum.

    >>> shares((3, 1))
    (0.75, 0.25)
    """
    whole = sum(parts)
    return tuple([part / whole for part in parts])


def mix_of_mass(system, mass: float) -> Mix:
    """The mix of a known mass [kg]; its volumes only where the label and the densities give them."""
    found = basis(system)
    masses = tuple([share * mass for share in shares(found.weight_parts)])
    if not found.densities:
        return Mix(part_names(system), masses, (), mass, None, None)
    density = mixed_density(found.weight_parts, found.densities)
    volume = mass / density
    volumes = tuple([share * volume for share in shares(found.volume_parts)])
    return Mix(part_names(system), masses, volumes, mass, volume, density)


def mix_of_volume(system, volume: float) -> Mix:
    """The mix of a known volume [m3]; its masses only where the densities give them."""
    found = basis(system)
    if found.densities:
        return mix_of_mass(system, volume * mixed_density(found.weight_parts, found.densities))
    volumes = tuple([share * volume for share in shares(found.volume_parts)])
    return Mix(part_names(system), (), volumes, None, volume, None)


def strokes_volumes(pumps, densities):
    """Volume of one stroke of each pump [m3], from ten of them weighed where that was done.

    pumps: values of records.PUMPS; densities [kg/m3], needed for weighed strokes
    """
    if pumps["ten_strokes"]:
        if len(densities) != len(pumps["ten_strokes"]):
            raise InputError("system.densities", "Densities: weighed strokes need the density of each part")
        return tuple([mass / 10 / rho for mass, rho in zip(pumps["ten_strokes"], densities)])
    return pumps["strokes"]


def mix(values) -> Mix:
    """The mix that the label and the one known amount give; InputError at the field that can put it right."""
    return once(values, "mix", lambda: _mixed(values))


def _mixed(values):
    system = values["system"]
    found = basis(system)
    key, amount, quantity = values["amount"]
    if key == "strokes":
        volumes = strokes_volumes(values["pumps"], found.densities)
        key, amount, quantity = "part_a", amount * volumes[0], "volume"
    if key == "putty":
        if not found.densities:
            raise InputError("system.densities", "Densities: " + NO_DENSITIES.format("volume", "weight")
                             + " A volume of putty needs them.")
        dose = dose_of(values)
        density = mixed_density(found.weight_parts, found.densities)
        why = overpacked(dose, density)
        if why:
            raise InputError("stiffness", "How stiff: " + why)
        key, amount, quantity = "total", mass_for_putty(amount, density, dose.parts, dose.air), "mass"
    if quantity == "mass" and not found.weight_parts:
        raise InputError("amount", NO_DENSITIES.format("volume", "weight") + " Type mL, or the densities.")
    if quantity == "volume" and not found.volume_parts:
        raise InputError("amount", NO_DENSITIES.format("weight", "volume") + " Type g, or the densities.")
    if key != "total":
        parts = found.weight_parts if quantity == "mass" else found.volume_parts
        amount = amount / shares(parts)[0 if key == "part_a" else 1]
    return mix_of_mass(system, amount) if quantity == "mass" else mix_of_volume(system, amount)


def check(values):
    """What no single field can know: an amount in a basis that the label does not give."""
    mix(values)


CHECKS = (check,)


def answer(values):
    """Every part, the whole, the notations of the label, and what is questionable about it."""
    batch, system, units = mix(values), values["system"], values["units"]
    lines = [part_line(batch, place, units, system) for place in range(len(batch.names))]
    if batch.mass is not None:
        lines.append(line("mixed_mass", "Mixed, by weight", batch.mass, "kg", told(batch.mass, "g", units), part="mix"))
    if batch.volume is not None:
        lines.append(line("mixed_volume", "Mixed, by volume", batch.volume, "m3", told(batch.volume, "mL", units),
                          part="mix", rough=_densities_mark(system)))
    if batch.density is not None:
        lines.append(line("mixed_density", "Density of the mix", batch.density, "kg/m3",
                          told(batch.density, "g/mL", units, places=3), part="mix", rank=MORE,
                          rough="as mixed, before cure; volumes taken to add up"))
    lines.append(_whose(system))
    lines.extend(by_link(system, "ratio"))
    lines.extend(_notations(basis(system)))
    lines.extend(_chemistry(system))
    lines.extend(questions(system))
    return lines


def no_densities(system, known):
    """Why there is no answer in the other basis: the label lacks it, or only densities lead there from the amount."""
    other = "volume" if known == "weight" else "weight"
    if system["by_" + other]:
        return "The amount is by {}: without the density of each part there is no answer by {}.".format(known, other)
    return NO_DENSITIES.format(known, other)


def part_line(batch, place, units, system):
    """One part by weight and by volume, as far as the label goes."""
    name = "part_" + "abcde"[place]
    weight = told(batch.masses[place], "g", units) if batch.masses else ""
    volume = told(batch.volumes[place], "mL", units) if batch.volumes else ""
    value, unit = (batch.masses[place], "kg") if batch.masses else (batch.volumes[place], "m3")
    missing = "" if weight and volume else no_densities(system, "volume" if volume else "weight")
    return line(name, batch.names[place], value, unit, weight + (" · " if weight and volume else "") + volume,
                rough=missing, part="abcde"[place])


def notation(parts) -> str:
    """Parts as a label writes them: whole numbers as they are, otherwise two decimals.

    >>> notation((100, 28.4057)), notation((3, 1))
    ('100 : 28.41', '3 : 1')
    """
    texts = []
    for part in parts:
        text = shown(part, 2)
        while text.endswith("0"):
            text = text[:-1]
        texts.append(text[:-1] if text.endswith(".") else text)
    return " : ".join(texts)


def whence(system):
    """Where its figures are from, as its own choice says it; "" where nobody said so."""
    return option_words(ORIGIN.options, system.get(ORIGIN.name) or "", system["units"])


def by_link(system, what):
    """What is asked while the figures of a link stand that nobody has compared with a label.

    what: the figure of the label that counts here
    """
    if system.get(ORIGIN.name) != LINK:
        return []
    return [words("by_link", "From a link", (system["name"] or "This resin system") + " is from a link: compare its "
                  + what + " with the label. Then say so under its figures.", rank=ASK)]


def _whose(system):
    """Whether the label is one that was typed or a built-in row, and by which name."""
    marks = [row[2] for row in SYSTEM.rows if row[0] == system["id"]]
    whose = "built in, figures " + marks[0] if marks else whence(system) or "as typed"
    over = [field.label for field in SYSTEM.fields if marks and field.name != "name" and field.name in system["_tree"]
            and system["_tree"][field.name] != SYSTEM.row(system["id"]).get(field.name)]
    return words("whose_label", "Which label", (system["name"] or "No name") + ": " + whose,
                 rough="typed over it: " + ", ".join(over) if over else "", rank=MORE)


def _notations(found):
    lines = []
    if found.weight_parts:
        hundred = [100 * part / found.weight_parts[0] for part in found.weight_parts]
        lines.append(words("by_weight", "By weight", notation(hundred), rank=MORE))
        phr = sum(hundred[1:])
        lines.append(line("phr", "Parts per hundred of resin, phr", phr, "", shown(phr, 1), rank=MORE,
                          rough="the other parts for 100 of resin, by weight"))
    if found.volume_parts:
        least = min(found.volume_parts)
        lines.append(words("by_volume", "By volume", notation([part / least for part in found.volume_parts]),
                           rank=MORE))
    return lines


def _chemistry(system):
    if not (system["eew"] and system["ahew"]):
        return []
    found = basis(system)
    if not found.weight_parts:
        return [words("stoichiometry", "Against the chemistry", NO_DENSITIES.format("volume", "weight"), rank=MORE)]
    ideal = stoichiometric_phr(system["ahew"], system["eew"])
    share = 100 * sum(found.weight_parts[1:]) / found.weight_parts[0] / ideal
    lines = [line("stoichiometry", "Against the chemistry", share, "", shown(share * 100, 0) + "% of " + shown(ideal, 1)
                  + " phr", rank=MORE, rough="the label's ratio beside 100 AHEW / EEW; the label decides")]
    if abs(share - 1) > 0.25:
        lines.append(words("stoichiometry_off", "Equivalent weights", "These equivalent weights and the label's ratio "
                           "are far apart. Were they typed for this resin and this hardener?", rank=ASK))
    return lines


def questions(system):
    """What looks like a slip in the label's figures: asked back, never refused."""
    lines = []
    parts = system["by_weight"] or system["by_volume"]
    if len(parts) == 2 and parts[1] > WRONG_WAY * parts[0]:
        turned = notation((parts[1], parts[0]))
        lines.append(words("wrong_way", "The right way round?", "More hardener than resin: " + notation(parts)
                           + ". The resin comes first here. If the label means " + turned + ", type that.", rank=ASK))
    if system["by_weight"] and system["by_volume"] and system["densities"]:
        lines.extend(_apart(system))
    return lines


def _apart(system):
    """Two ratios in one label, asked back where they are further apart than a pour is to be."""
    place, apart = label_apart(system)
    if apart <= (system["tolerance"] or AIM) + 1e-9:
        return []
    names = part_names(system)
    text = "By weight and densities {} to {} is {} off the ratio by volume.".format(
        names[place], names[0], shown(apart * 100, 1, UP) + "%")
    return [line("label_apart", "Does the label agree with itself?", apart, "",
                 text + " Weights follow the first, volumes the second.", rank=ASK)]


def _densities_mark(system):
    return "densities from memory, by a few percent" if SYSTEM.from_memory(system, "densities") else ""

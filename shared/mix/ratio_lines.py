"""Ratio lines: what is said of a mix, of the label's ratio, and of what is questionable about it."""
from ..forms.types import Found, Values
from ..things.records import SYSTEM
from ..words.lines import ASK, MORE, Line, line, words
from ..words.numbers import UP, shown
from ..words.units import told
from .label_words import DOUBT, NO_DENSITIES, no_densities, notation, part_names, unconfirmed, whence
from .ratio_doubt_lines import no_figure, stopped


def say(found: Found, values: Values) -> list[Line]:
    """Every part, the whole, the notations of the label, and what is questionable about it. found: RatioResult"""
    system, names = values["system"], part_names(values["system"])
    lines = [_part(found, place, name, values) for place, name in enumerate(names)]
    lines.extend(_whole(found.mix, values))
    lines.append(_whose(system))
    lines.extend(unconfirmed(system, "ratio", DOUBT))
    lines.extend(_notations(found))
    lines.extend(_chemistry(found))
    lines.extend(_questions(found, system, names))
    return lines


def _part(found: Found, place: int, name: str, values: Values) -> Line:
    """One part by weight and by volume, as far as the label goes. found: RatioResult"""
    units, key = values["units"], "abcde"[place]
    batch = found.mix
    by_weight = batch.masses and not stopped(found.weighs)
    weight = told(batch.masses[place], "g", units) if by_weight else ""
    volume = told(batch.volumes[place], "mL", units) if batch.volumes and not stopped(found.fills) else ""
    if not (weight or volume):  # weighed too coarsely for a mass, and without a density for a volume
        return words("part_" + key, name, "no figure yet", rough=no_figure(found.weighs, "weight"), part=key)
    value, unit = (batch.masses[place], "kg") if by_weight else (batch.volumes[place], "m3")
    missing = ""
    if not (weight and volume):
        known, other = ("volume", "weight") if volume else ("weight", "volume")
        doubt = found.weighs if volume else found.fills
        missing = no_figure(doubt, other) if doubt else no_densities(values["system"], known)
    return line("part_" + key, name, value, unit, weight + (" · " if weight and volume else "") + volume,
                rough=missing, part=key)


def _whole(batch: Found, values: Values) -> list[Line]:
    lines, units = [], values["units"]
    if batch.mass is not None:
        lines.append(line("mixed_mass", "Mixed, by weight", batch.mass, "kg", told(batch.mass, "g", units), part="mix"))
    if batch.volume is not None:
        remembered = SYSTEM.from_memory(values["system"], "densities")
        lines.append(line("mixed_volume", "Mixed, by volume", batch.volume, "m3", told(batch.volume, "mL", units),
                          part="mix", rough="densities from memory, by a few percent" if remembered else ""))
    if batch.density is not None:
        lines.append(line("mixed_density", "Density of the mix", batch.density, "kg/m3",
                          told(batch.density, "g/mL", units, places=3), part="mix", rank=MORE,
                          rough="as mixed, before cure; volumes taken to add up"))
    return lines


def _whose(system: Values) -> Line:
    """Whether the label is one that was typed or a built-in row, and by which name."""
    marks = [row[2] for row in SYSTEM.rows if row[0] == system["id"]]
    whose = "built in, figures " + marks[0] if marks else whence(system) or "as typed"
    over = [field.label for field in SYSTEM.fields if marks and field.name != "name" and field.name in system["_tree"]
            and system["_tree"][field.name] != SYSTEM.row(system["id"]).get(field.name)]
    return words("whose_label", "Which label", (system["name"] or "No name") + ": " + whose,
                 rough="typed over it: " + ", ".join(over) if over else "", rank=MORE)


def _notations(found: Found) -> list[Line]:
    lines = []
    if found.by_weight and not stopped(found.weighs):
        lines.append(words("by_weight", "By weight", notation(found.by_weight), rank=MORE))
        lines.append(line("phr", "Parts per hundred of resin, phr", found.phr, "", shown(found.phr, 1), rank=MORE,
                          rough="the other parts for 100 of resin, by weight"))
    if found.by_volume and not stopped(found.fills):
        lines.append(words("by_volume", "By volume", notation(found.by_volume), rank=MORE))
    return lines


def _chemistry(found: Found) -> list[Line]:
    if found.ideal is None:
        return []
    if found.of_ideal is None:
        return [words("stoichiometry", "Against the chemistry", NO_DENSITIES.format("volume", "weight"), rank=MORE)]
    lines = [line("stoichiometry", "Against the chemistry", found.of_ideal, "", shown(found.of_ideal * 100, 0) + "% of "
                  + shown(found.ideal, 1) + " phr", rank=MORE,
                  rough="the label's ratio beside 100 AHEW / EEW; the label decides")]
    if found.far_off:
        lines.append(words("stoichiometry_off", "Equivalent weights", "These equivalent weights and the label's ratio "
                           "are far apart. Were they typed for this resin and this hardener?", rank=ASK))
    return lines


def _questions(found: Found, system: Values, names: tuple[str, ...]) -> list[Line]:
    """What looks like a slip in the label's figures: asked back, never refused."""
    lines = []
    if found.turned:
        first, second = system["by_weight"] or system["by_volume"]
        lines.append(words("wrong_way", "The right way round?", "More hardener than resin: "
                           + notation((first, second)) + ". The resin comes first here. If the label means "
                           + notation((second, first)) + ", type that.", rank=ASK))
    if found.apart:
        text = "By weight and densities {} to {} is {} off the ratio by volume.".format(
            names[found.apart.place], names[0], shown(found.apart.error * 100, 1, UP) + "%")
        lines.append(line("label_apart", "Does the label agree with itself?", found.apart.error, "",
                          text + " Weights follow the first, volumes the second.", rank=ASK))
    return lines

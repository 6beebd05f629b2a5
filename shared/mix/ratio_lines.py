"""Ratio lines: what is said of a mix, of the label's ratio, and of what is questionable about it."""
from ..catalogue.marks import JUDGED
from ..forms.types import Found, Said, Values
from ..things.records import AS_TYPED, SYSTEM
from ..words.lines import ASK, MORE, Line, line, words
from ..words.messages import listed, message, number, quantity, row
from ..words.numbers import NEAREST, UP, shown
from ..words.provenance import marked
from .label_words import DOUBT, no_densities, notation, only_by, parts_said, unconfirmed, whence
from .ratio_doubt_lines import no_figure, stopped


def say(found: Found, values: Values) -> list[Line]:
    """Every part, the whole, the notations of the label, and what is questionable about it. found: RatioResult"""
    system, names = values["system"], parts_said(values["system"])
    lines = [_part(found, place, name, values) for place, name in enumerate(names)]
    lines.extend(_whole(found.mix, system))
    if found.usual is not None:
        lines.append(_usual(found, values["amount"]))
    lines.append(_whose(system))
    lines.extend(unconfirmed(system, "ratio", DOUBT))
    lines.extend(_notations(found))
    lines.extend(_chemistry(found))
    lines.extend(_questions(found, system, names))
    return lines


def _part(found: Found, place: int, name: Said, values: Values) -> Line:
    """One part by weight and by volume, as far as the label goes. found: RatioResult"""
    key, batch = "abcde"[place], found.mix
    by_weight = batch.masses and not stopped(found.weighs)
    known = [quantity(batch.masses[place], "g")] if by_weight else []
    by_volume = batch.volumes and not stopped(found.fills)
    if by_volume:
        known.append(quantity(batch.volumes[place], "mL"))
    if not known:  # weighed too coarsely for a mass, and without a density for a volume
        return words("part_" + key, name, "ratio-no-figure", rough=no_figure(found.weighs, "weight"), part=key)
    value, unit = (batch.masses[place], "kg") if by_weight else (batch.volumes[place], "m3")
    missing: Said = ""
    if len(known) < 2:
        basis, other = ("volume", "weight") if by_volume else ("weight", "volume")
        doubt = found.weighs if by_volume else found.fills
        missing = no_figure(doubt, other) if doubt else no_densities(values["system"], basis)
    return line("part_" + key, name, value, unit, row(known, " · "), rough=missing, part=key)


def _whole(batch: Found, system: Values) -> list[Line]:
    lines = []
    if batch.mass is not None:
        lines.append(line("mixed_mass", "ratio-mixed-mass", batch.mass, "kg", quantity(batch.mass, "g"), part="mix"))
    if batch.volume is not None:
        remembered = SYSTEM.from_memory(system, "densities")
        lines.append(line("mixed_volume", "ratio-mixed-volume", batch.volume, "m3", quantity(batch.volume, "mL"),
                          part="mix", rough="ratio-mixed-volume.rough" if remembered else ""))
    if batch.density is not None:
        lines.append(line("mixed_density", "ratio-mixed-density", batch.density, "kg/m3",
                          quantity(batch.density, "g/mL", places=3), part="mix", rank=MORE,
                          rough="ratio-mixed-density.rough"))
    return lines


def _usual(found: Found, amount: tuple) -> Line:
    """How an amount in the other basis than the label's was counted. found: RatioResult"""
    density = quantity(found.usual, "g/mL", places=1)
    if amount[2] == "mass":
        text = message("ratio-usual.by-volume", typed=quantity(amount[1], "g"),
                       counted=quantity(found.mix.volume, "mL"), density=density)
    else:
        text = message("ratio-usual.by-weight", typed=quantity(amount[1], "mL"),
                       counted=quantity(found.mix.mass, "g"), density=density)
    return words("usual", "ratio-usual", text, rough=marked(JUDGED), rank=ASK)


def _whose(system: Values) -> Line:
    """Whether the label is one that was typed or a built-in row, and by which name."""
    marks = [one[2] for one in SYSTEM.rows if one[0] == system["id"]]
    whose = message("label-whose.built-in", mark=marked(marks[0])) if marks else whence(system) or AS_TYPED
    over = [field.label for field in SYSTEM.fields if marks and field.name != "name" and field.name in system["_tree"]
            and system["_tree"][field.name] != SYSTEM.row(system["id"]).get(field.name)]
    return words("whose_label", "label-whose",
                 message("label-whose.text", system=SYSTEM.called(system) or "label-whose.no-name", whose=whose),
                 rough=message("label-whose.over", fields=listed(over, "plain")) if over else "", rank=MORE)


def _notations(found: Found) -> list[Line]:
    lines = []
    if found.by_weight and not stopped(found.weighs):
        lines.append(words("by_weight", "ratio-by-weight", notation(found.by_weight), rank=MORE))
        lines.append(line("phr", "ratio-phr", found.phr, "", number(shown(found.phr, 1)), rank=MORE,
                          rough="ratio-phr.rough"))
    if found.by_volume and not stopped(found.fills):
        lines.append(words("by_volume", "ratio-by-volume", notation(found.by_volume), rank=MORE))
    return lines


def _chemistry(found: Found) -> list[Line]:
    if found.ideal is None:
        return []
    if found.of_ideal is None:
        return [words("stoichiometry", "ratio-chemistry", only_by("volume"), rank=MORE)]
    lines = [line("stoichiometry", "ratio-chemistry", found.of_ideal, "",
                  message("ratio-chemistry.text", share=quantity(found.of_ideal, "%", NEAREST, 0),
                          ideal=number(shown(found.ideal, 1))), rank=MORE, rough="ratio-chemistry.rough")]
    if found.far_off:
        lines.append(words("stoichiometry_off", "ratio-far-off", "ratio-far-off.text", rank=ASK))
    return lines


def _questions(found: Found, system: Values, names: "tuple[Said, ...]") -> list[Line]:
    """What looks like a slip in the label's figures: asked back, never refused."""
    lines = []
    if found.turned:
        first, second = system["by_weight"] or system["by_volume"]
        lines.append(words("wrong_way", "ratio-wrong-way", message(
            "ratio-wrong-way.text", typed=notation((first, second)), turned=notation((second, first))),
            rank=ASK))
    if found.apart:
        text = message("ratio-label-apart.text", part=names[found.apart.place], first=names[0],
                       off=quantity(found.apart.error, "%", UP, 1))
        lines.append(line("label_apart", "ratio-label-apart", found.apart.error, "", text, rank=ASK))
    return lines

"""Gluing lines: what is said of a glue-up. found: a `gluing.Glued`"""
from ..catalogue.surfaces import BEND_COLD, BUTT_REACHES, GAP_GLUE, SCARF_LEAST
from ..forms.types import Found, Values
from ..words.lines import ANSWER, ASK, MORE, SAY, Line, line, words
from ..words.messages import along, fact, length, message, number, quantity
from ..words.numbers import DOWN, UP, bare
from .surface_lines import warning, weight


def say(found: Found, values: Values) -> list[Line]:
    """What is too weak first, then what to mix and whether one pot does; then the bond."""
    lines = _warnings(found)
    lines.append(line("mixed_mass", "gluing-mix", found.mix, "kg", quantity(found.mix, "g", UP), rank=ANSWER,
                      rough="gluing-mix.rough"))
    lines.append(line("neat", "gluing-neat", found.neat, "kg", quantity(found.neat, "g", UP), rank=ANSWER,
                      rough="gluing-neat.rough"))
    lines.append(line("glue", "gluing-glue.stands" if found.wide else "gluing-glue", found.glue, "m3",
                      quantity(found.glue, "mL", UP), rank=ANSWER, rough="gluing-glue.rough"))
    if found.scarf:
        lines.extend(_scarf(found.scarf))
    if found.bent:
        lines.extend(_bent(found.bent))
    lines.extend(_pot(found.pot))
    lines.append(line("stays", "surface-stays", found.stays, "kg", weight(found.stays), rank=MORE,
                      rough="gluing-stays.rough"))
    lines.append(line("bond", "gluing-bond", found.bond, "m2", quantity(found.bond, "m2", UP, digits=2), rank=MORE))
    lines.append(line("resin", "gluing-resin", found.resin, "kg", quantity(found.resin, "g", UP), rank=MORE,
                      rough="gluing-resin.rough"))
    lines.append(words("lightly", "gluing-lightly", "gluing-lightly.text", rank=SAY))
    return lines


def _warnings(found: Found) -> list[Line]:
    lines = []
    if found.scarf and found.scarf.steep:
        lines.append(warning("steep", "gluing-steep", message(
            "gluing-steep.text", wanted=number(bare(found.scarf.wanted, 1)))))
    if found.wide:
        lines.append(warning("wide", "gluing-wide", message("gluing-wide.text", gap=fact("mm", GAP_GLUE))))
    if found.bent and found.bent.tight:
        lines.append(warning("tight", "gluing-tight", message(
            "gluing-tight.text", times=number(bare(BEND_COLD, 1)))))
    if found.pot and found.pot.big:
        lines.append(warning("big_pot", "gluing-two-pots", message(
            "gluing-two-pots.big", mass=fact("g", found.pot.big))))
    elif found.pot and not found.pot.enough:
        lines.append(warning("two_pots", "gluing-two-pots", message(
            "gluing-two-pots.text", needed=quantity(found.pot.needed, "min", UP, 0),
            lasts=quantity(found.pot.lasts, "min", DOWN, 0))))
    return lines


def _scarf(scarf: Found) -> list[Line]:
    return [
        line("bevel", "gluing-bevel", scarf.bevel, "m", length(scarf.bevel)),
        line("joined", "gluing-joined", scarf.joined, "m", along(scarf.joined, DOWN), rough="gluing-joined.rough"),
        line("shear", "gluing-shear", scarf.shear, "Pa", quantity(scarf.shear, "MPa", UP, digits=2),
             rough="gluing-shear.rough"),
        line("pull", "gluing-pull", scarf.pull, "Pa", quantity(scarf.pull, "MPa", UP, digits=2), rank=MORE),
        words("butt", "gluing-butt", message("gluing-butt.text", share=fact("%", BUTT_REACHES),
                                             times=number(bare(SCARF_LEAST, 1))), rank=MORE),
        words("plans", "gluing-plans", "gluing-plans.text", rank=SAY)]


def _bent(bent: Found) -> list[Line]:
    lines = [line("clamps", "gluing-clamps", bent.clamps, "", bent.clamps, rough="gluing-clamps.rough"),
             line("lines", "gluing-lines", bent.lines, "", bent.lines, rank=MORE)]
    if bent.former is not None:
        lines.append(line("former", "gluing-former", bent.former, "m", along(bent.former, DOWN),
                          rough="gluing-former.rough"))
        lines.append(line("strain", "gluing-strain", bent.strain, "%", quantity(bent.strain, "%", UP, digits=2),
                          rank=MORE))
    return lines


def _pot(pot: "Found | None") -> list[Line]:
    if pot is None:
        return [words("no_film_time", "surface-no-pot-life", "surface-no-pot-life.text", rank=ASK)]
    if not pot.enough:
        return []
    return [line("one_pot", "gluing-one-pot", pot.needed, "s", message(
        "gluing-one-pot.text", needed=quantity(pot.needed, "min", UP, 0), lasts=quantity(pot.lasts, "min", DOWN, 0)),
        rough="gluing-one-pot.rough")]

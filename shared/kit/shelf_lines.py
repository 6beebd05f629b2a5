"""Shelf lines: what a system on the shelf still mixes, how long it keeps, and what is left once some was poured."""
from ..catalogue.shelf import SOON, WARM
from ..forms.types import Found
from ..words.lines import SAY, WARN, Line, line, words
from ..words.messages import message, number, quantity, row, typed
from ..words.numbers import DOWN, UP, bare


def say(found: Found) -> list[Line]:
    """found: `kit.KitResult` of a system of whose shelf something is told"""
    lines, shelf, days = [], found.shelf, found.days
    if shelf.mixes is not None:
        lines.append(line("mixes", "shelf-mixes", shelf.mixes, "kg", quantity(shelf.mixes, "kg", DOWN), rank=SAY))
    if shelf.last:
        last = typed(shelf.last)
        if days is not None and days < 0:
            lines.append(words("last_day", "kit-shelf", message("shelf-last.past", day=last), rank=WARN))
        elif days is not None and days * 86400 <= SOON:
            lines.append(words("last_day", "kit-shelf", message("shelf-last.soon", day=last), rank=WARN))
        else:
            lines.append(words("last_day", "kit-shelf", message("shelf-last", day=last), rank=SAY))
    if shelf.through is not None:
        lines.append(words("crystals", "shelf-crystals", message(
            "shelf-crystals.text", warm=quantity(WARM, "degC", places=0),
            hours=quantity(shelf.through, "h", UP, 0)), rank=SAY))
    if found.less:
        left = [typed_mass(mass) for mass in found.less]
        lines.append(words("on_shelf", "kind-system-left", row(left, " : "), rank=SAY))
    return lines


def typed_mass(mass: float) -> tuple:
    """A mass as a form takes it, to a tenth of a gram, rounded down: no more is left than is told. mass [kg]"""
    return row([number(bare(int(mass * 1e4 + 1e-6) / 10, 1)), typed("g")], " ")

"""Fairing lines: what is said of fairing. found: a `fairing.Faired`"""
from ..catalogue.cautions import FROM
from ..forms.types import Found, Values
from ..words.lines import ANSWER, ASK, MORE, SAY, Line, line, words
from ..words.messages import fact, message, quantity, row
from ..words.numbers import UP
from .surface_lines import area_line, thin, warning, weight


def say(found: Found, values: Values) -> list[Line]:
    """Compound and resin first, then passes, dust and weight."""
    lines = [warning("dust", "fairing-dust", "fairing-dust.text")]
    lines.append(line("placed", "fairing-placed", found.placed, "m3", row([
        quantity(found.placed, "mL", UP), quantity(found.compound, "g", UP)], " · "), rank=ANSWER,
        rough="fairing-placed.rough"))
    lines.append(line("mix", "fairing-mix", found.mix, "kg", quantity(found.mix, "g", UP), rank=ANSWER,
                      rough=message("fairing-mix.rough", filler=quantity(found.filler, "g", UP))))
    lines.append(line("passes", "fairing-passes", found.passes, "", found.passes, rough=message(
        "fairing-passes.rough", most=thin(found.each))))
    lines.append(line("largest", "surface-pots.fair", found.pot, "kg", message(
        "surface-pots.text", count=found.batches, mass=quantity(found.pot, "g", UP)),
        rough=message("surface-pots.by-heat", mass=fact("g", FROM[0][1])), caution="fairing-pots.caution"))
    lines.append(line("stays", "surface-stays", found.stays, "kg", weight(found.stays),
                      rough=message("fairing-stays.rough", sanded=quantity(found.sanded, "kg", UP))))
    if found.heavy:
        lines.append(words("heavy_filler", "fairing-heavy", "fairing-heavy.text", rank=ASK))
    if found.dark:
        lines.append(warning("dark", "fairing-dark", "fairing-dark.text"))
    lines.append(words("never", "fairing-never", "fairing-never.text", rank=SAY))
    lines.append(line("mean", "fairing-mean", found.mean, "m", thin(found.mean), rank=MORE,
                      rough="fairing-mean.read" if values["depths"] else "fairing-mean.typed"))
    lines.append(line("density", "fairing-density", found.density, "kg/m3", quantity(found.density, "g/mL"), rank=MORE,
                      rough="fairing-density.rough"))
    lines.append(area_line(found.area))
    return lines

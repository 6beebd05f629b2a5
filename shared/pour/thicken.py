"""Thicken: from a mix and a stiffness to the filler, the putty, and whether it stands where it is put."""
from ..forms.inputs import Choice, Number
from ..forms.late import late
from ..mix import ratio
from ..mix.filler_dose import POSITIONS, PUTTY_FOLD
from . import measure
from .poured_mix import asked, check, poured

WHEN = (("thicken", ("yes",)), ("amount_is", ("putty",)))

INPUTS = measure.INPUTS + (
    Number("scoop", "A level scoop holds", unit="mL", low=0.5, high=2000, default=15, fold=PUTTY_FOLD, when=WHEN),
    Choice("position", "The seam", [row[:2] for row in POSITIONS], fold=PUTTY_FOLD, when=WHEN),
    Number("layer", "Putty in one pass, thickness", unit="mm", low=0.5, high=60, default=6, fold=PUTTY_FOLD, when=WHEN,
           help="From the corner out, the throat."),
    Choice("purpose", "For", (("seam", "A structural seam"), ("fairing", "Fairing only")), fold=PUTTY_FOLD, when=WHEN),
)
CHECKS = (ratio.check, check)


def answer(values):
    """Filler for the mix, how to add it, the putty, and whether it stands; no lines where none is asked."""
    if not asked(values):
        return []
    return lines_of(values, poured(values))


def lines_of(values, mix):
    """The lines of the filler that one mix takes, and of its putty."""
    return late("thicken_lines").lines(values, mix)


def leads(values):
    """To the clock, from the moment of the tap, with all that is in the cup: as poured, and the filler."""
    return late("time_in_cup").leads(values, ratio.INPUTS[0])

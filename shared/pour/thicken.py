"""Thicken: from a mix and a stiffness to the filler, the putty, and whether it stands where it is put."""
from ..catalogue.pots import SIZES
from ..catalogue.starts import SCOOP
from ..forms.inputs import Choice, Number
from ..forms.late import late
from ..forms.memo import once
from ..forms.remembered import start
from ..forms.types import Found, Values
from ..mix import ratio
from ..mix.filler_dose import POSITIONS, PUTTY_FOLD
from . import measure
from .poured_mix import asked, check, poured

WHEN = (("thicken", ("yes",)), ("amount_is", ("putty",)))

INPUTS = measure.INPUTS + (
    Number("scoop", "thicken-scoop", unit="mL", low=0.5, high=2000, default=start(SCOOP, "mL"), fold=PUTTY_FOLD,
           when=WHEN),
    Choice("position", "thicken-position", [row[:2] for row in POSITIONS], fold=PUTTY_FOLD, when=WHEN),
    Number("layer", "thicken-layer", unit="mm", low=0.5, high=60, default=start(SIZES["panel"], "mm"),
           fold=PUTTY_FOLD, when=WHEN, help="thicken-layer.help"),
    Choice("purpose", "thicken-purpose", (("seam", "thicken-purpose.seam"), ("fairing", "thicken-purpose.fairing")),
           fold=PUTTY_FOLD, when=WHEN),
)
CHECKS = (ratio.check, check)


def reckon(values: Values) -> "Found | None":
    """The filler for the mix of a pour and the putty it makes, a putty.PuttyResult; None where no putty is asked."""
    return late("putty").reckon(poured(values), values) if asked(values) else None


def reckoned(values: Values) -> "Found | None":
    """What `reckon` finds, once for one question."""
    return once(values, "thicken", lambda: reckon(values))


def answer(values: Values) -> list:
    """Filler for the mix, how to add it, the putty, and whether it stands; no lines where none is asked."""
    found = reckoned(values)
    return late("thicken_lines").say(found, values) if found else []


def leads(values: Values) -> list[dict]:
    """To the clock, from the moment of the tap, with all that is in the cup: as poured, and the filler."""
    of_cup = late("time_in_cup")
    return late("time_in_cup_lines").leads(of_cup.poured_mass(values), of_cup.cup_width(values), values,
                                           ratio.INPUTS[0])

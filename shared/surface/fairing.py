"""Fairing: from the depth under a batten to compound, passes, what is sanded off and what stays."""
from collections import namedtuple

from ..catalogue.fillers import AIR, PACKING
from ..catalogue.starts import AIR as WARMTH
from ..catalogue.surfaces import BY_KEY, PASS_FLAT, PASS_UPRIGHT
from ..equations import fairing
from ..equations.putty import mass_for_putty, solids_share
from ..forms.errors import InputError
from ..forms.inputs import Parts, Pick
from ..forms.memo import once
from ..forms.remembered import remembered
from ..forms.types import Values
from ..mix.filler_dose import place_of
from ..things.records import FILLER
from ..words.messages import message, quantity
from ..words.numbers import ceiling
from . import boat_row, faces, fairing_lines, pots, surface_leads
from .faces import FAIR

HERE = faces.only(FAIR)
STANDS = "stands"

INPUTS = (
    faces.WORK, faces.FACES, faces.LIE,
    Parts("depths", "fairing-depths", unit="mm", low=0, high=50, zero=True, least=1, most=60, optional=True, when=HERE,
          help="fairing-depths.help"),
    remembered("fair_depth", "fair_depth", "fairing-depth", "mm", 0.01, 50, of=BY_KEY, when=HERE),
    Pick("filler", "fairing-light", FILLER, default="glass-spheres", when=HERE),
    remembered("fair_sanded", "fair_sanded", "fairing-sanded", "%", 0, 90, of=BY_KEY, fold=faces.AMOUNTS, when=HERE),
    faces.DENSITY, faces.CUP, faces.SPARE,
)


def check(values: Values) -> None:
    """Faces with a size, and a compound with enough resin between its grains."""
    if values["work"] != FAIR:
        return
    faces.check_faces(values)
    share = solids_share(values["resin_density"], (dose_of(values),))
    if values["filler"]["grain"] == "sphere" and share > PACKING + 1e-9:
        raise InputError("filler.doses", message("fairing-light.dry", share=quantity(share, "%", digits=2),
                                                most=quantity(PACKING, "%", digits=2)))


CHECKS = (check,)

# all faces. area [m2]; mean, deepest: of the gap under the batten [m]; placed, kept: compound [m3]; compound, sanded,
# stays: [kg]; resin, filler: of what is placed [kg]; mix: resin to mix with cup and spare [kg]; pot: compound of one
# batch [kg]; density [kg/m3]; passes; each: at the most in one [m]; batches: of compound, so that none is a big pot
# heavy: the filler carries load and is hard to sand; dark: it softens in the sun
Faired = namedtuple("Faired", ("area", "mean", "deepest", "placed", "kept", "compound", "sanded", "stays", "resin",
                               "filler", "mix", "pot", "density", "passes", "each", "batches", "heavy", "dark"))


def dose_of(values: Values) -> tuple:
    """(filler by mass of mix [-], its true density [kg/m3])"""
    return values["filler"]["doses"][place_of(STANDS)] / 100, values["filler"]["density"]


def reckon(values: Values) -> "Faired | None":
    """The compound; None where another work is asked."""
    return once(values, "faired", lambda: _reckoned(values)) if values["work"] == FAIR else None


def _reckoned(values: Values) -> Faired:
    area, depths = faces.whole_area(values), values["depths"]
    mean = fairing.mean_depth(depths) if depths else values["fair_depth"]
    deepest = max(depths) if depths else mean
    placed = fairing.placed(area, mean, values["fair_sanded"])
    dose, true = dose_of(values)
    resin = mass_for_putty(placed, values["resin_density"], ((dose, true),), AIR)
    density = resin * (1 + dose) / placed if placed else 0.0
    each = PASS_FLAT if values["lie"] == faces.LEVEL else PASS_UPRIGHT
    passes = max(1, ceiling(deepest / (1 - values["fair_sanded"]) / each))
    kept = area * mean
    more = 1 + values["spare"]
    batches = max(passes, pots.cups_for(placed * density * more, WARMTH, values["cup"] * (1 + dose)))
    mix = resin * more + values["cup"] * batches
    return Faired(area, mean, deepest, placed, kept, placed * density, (placed - kept) * density, kept * density, resin,
                  resin * dose, mix, mix * (1 + dose) / batches, density, passes, each, batches,
                  values["filler"]["carries"] == "yes", values["filler"]["id"] == "phenolic-balloons")


def answer(values: Values) -> list:
    """Compound and resin first, then passes, dust and weight."""
    found = reckon(values)
    return fairing_lines.say(found, values) if found else []


def leads(values: Values) -> list:
    """One batch to Pour, and the cautions of sanding."""
    found = reckon(values)
    if not found or not found.placed:
        return []
    return surface_leads.thickened(found.pot / found.density, STANDS, values["filler"]["id"],
                                   "surface-to-pour.batch") + [dict(surface_leads.SANDING)] + (
                                       boat_row.leads(values, INPUTS))

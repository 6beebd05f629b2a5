"""Gluing: scarfs, laminations and gaps: the bond, the glue, neat first and then thickened, and what holds it."""
from collections import namedtuple

from ..catalogue.fillers import AIR
from ..catalogue.losses import BY_KEY as LEFT
from ..catalogue.pots import SIZES
from ..catalogue.starts import GLUED_LENGTH, GLUED_WIDTH
from ..catalogue.surfaces import (
    BEND_COLD,
    BY_KEY,
    FACE,
    GAP_GLUE,
    PLY_SHEET,
    PLYWOOD,
    SCARF_LEAST,
    SCARF_PLY,
    SCARF_WOOD,
)
from ..clock.usable import batch, known, usable
from ..equations import gluing
from ..equations.putty import GRAVITY, mass_for_putty
from ..forms.errors import InputError
from ..forms.inputs import Choice, Number, Parts
from ..forms.memo import once
from ..forms.remembered import remembered, start
from ..forms.types import Values
from ..mix.filler_dose import place_of
from ..things.records import FILLER
from ..words.messages import message, number
from ..words.numbers import bare
from . import boat_row, faces, gluing_lines, pots, surface_leads
from .faces import GAP, GLUED, LAMINATE, SCARF

BOND, CLAMPS = "gluing-fold.bond", "gluing-fold.clamps"
CLINGS, STANDS = "clings", "stands"
WOOD, PLY = "wood", "ply"
FLOUR = "wood-flour"  # the filler that the resin in the glue is counted with

INPUTS = (
    faces.WORK,
    Number("glued_thickness", "gluing-thickness", unit="mm", low=0, high=200,
           default=start(SIZES["panel"], "mm"), above=True,
           when=faces.only(SCARF, LAMINATE)),
    Number("scarf_width", "gluing-scarf-width", unit="mm", low=1, high=5000, default=start(FACE, "mm"),
           when=faces.only(SCARF)),
    Number("glued_width", "gluing-width", unit="mm", low=1, high=5000, default=start(GLUED_WIDTH, "mm"),
           when=faces.only(LAMINATE)),
    Choice("scarf_of", "gluing-scarf-of", ((PLY, "gluing-scarf-of.ply"), (WOOD, "gluing-scarf-of.wood")),
           when=faces.only(SCARF)),
    Number("scarf_ratio", "gluing-ratio", low=1, high=30, default=SCARF_PLY, when=faces.only(SCARF),
           help=message("gluing-ratio.help", ply=number(bare(SCARF_PLY, 1)), wood=number(bare(SCARF_WOOD, 1)))),
    Number("piece_one", "gluing-piece-one", unit="m", low=0, high=50, default=PLY_SHEET, above=True,
           when=faces.only(SCARF)),
    Number("piece_two", "gluing-piece-two", unit="m", low=0, high=50, default=PLY_SHEET, above=True,
           when=faces.only(SCARF)),
    Number("strips", "gluing-strips", low=2, high=60, default=4, whole=True, when=faces.only(LAMINATE)),
    Number("glued_length", "gluing-length", unit="m", low=0, high=50, default=start(GLUED_LENGTH, "m"), above=True,
           when=faces.only(LAMINATE, GAP)),
    Number("bend", "gluing-bend", unit="m", low=0.02, high=1000, optional=True, when=faces.only(LAMINATE),
           help="gluing-bend.help"),
    Choice("to_hull", "gluing-to-hull", (("no", "gluing-to-hull.no"), ("yes", "gluing-to-hull.yes")),
           when=faces.only(LAMINATE)),
    Parts("gaps", "gluing-gaps", unit="mm", low=0, high=60, least=1, most=15, default="0.5 : 2", when=faces.only(GAP),
          help="gluing-gaps.help"),
    Number("gap_depth", "gluing-gap-depth", unit="mm", low=0, high=500, default=9, above=True, when=faces.only(GAP)),
    Number("glued_copies", "gluing-copies", low=1, high=200, default=1, whole=True, when=faces.only(*GLUED)),
    faces.SYSTEM_USED, faces.WARMTH,
    remembered("glue_prime", "glue_prime", "gluing-prime", "g/m2", 0, 500, of=BY_KEY, fold=BOND,
               when=faces.only(*GLUED)),
    remembered("end_prime", "end_prime", "gluing-end-prime", "", 1, 5, of=BY_KEY, fold=BOND,
               when=faces.only(SCARF, GAP)),
    remembered("bond_line", "bond_line", "gluing-bond-line", "mm", 0.02, 5, of=BY_KEY, fold=BOND,
               when=faces.only(SCARF, LAMINATE)),
    remembered("squeezed", "squeezed", "gluing-squeezed", "%", 0, 80, of=BY_KEY, fold=BOND, when=faces.only(*GLUED)),
    remembered("putty_density", "putty_density", "joint-putty-density", "g/mL", 0.3, 2.5, fold=BOND,
               when=faces.only(*GLUED)),
    remembered("soak", "soak", "gluing-soak", "min", 0, 120, of=BY_KEY, fold=BOND, when=faces.only(*GLUED)),
    Number("panel_strength", "gluing-panel-strength", unit="MPa", low=1, high=200, default=start(PLYWOOD[0], "MPa"),
           fold=BOND, when=faces.only(SCARF), help=faces.STRENGTH_HELP),
    remembered("pressure", "pressure", "gluing-pressure", "MPa", 0.001, 2, of=BY_KEY, fold=CLAMPS,
               when=faces.only(LAMINATE)),
    remembered("clamp", "clamp", "gluing-clamp", "kg", 1, 5000, of=BY_KEY, fold=CLAMPS, when=faces.only(LAMINATE)),
    remembered("apart", "apart", "gluing-apart", "mm", 10, 1000, of=BY_KEY, fold=CLAMPS, when=faces.only(LAMINATE)),
    faces.CUP, faces.SPARE,
)


def check(values: Values) -> None:
    """A scarf no longer than what it joins, glue that is not all squeezed out."""
    if values["work"] == SCARF:
        bevel = values["scarf_ratio"] * values["glued_thickness"]
        for name in ("piece_one", "piece_two"):
            if bevel > values[name]:
                raise InputError(name, "gluing-piece.short")


CHECKS = (check,)

# bond: glued, all copies [m2]; primed: faces to prime [m2]; neat: to prime with [kg]; glue: [m3], resin: mixed epoxy in
# it, mix: all that is mixed [kg]; stiffness: key; wide: the widest gap is no gap for glue; scarf: `Scarf` or None
# bent: `Bent` or None; pot: `OnePot`, None where nothing tells how long a pot lasts; stays: kept in the bond [kg]
Glued = namedtuple("Glued", ("bond", "primed", "neat", "glue", "resin", "mix", "stiffness", "wide", "scarf", "bent",
                             "pot", "stays"))
# bevel [m]; joined [m]; shear, pull: in the bond when the panel breaks [Pa]; steep: less than the least for its wood
# wanted: ratio to 1
Scarf = namedtuple("Scarf", ("bevel", "joined", "shear", "pull", "steep", "wanted"))
# lines of glue; former: radius [m], None without a bend; strain [-]; tight: below what dry wood takes cold; clamps
Bent = namedtuple("Bent", ("lines", "former", "strain", "tight", "clamps"))
# needed: from mixing until the thickened rest is in place [s]; lasts: what is in the cup [s]; big: from so much on it
# is too much for one cup [kg], else 0; enough: one pot does
OnePot = namedtuple("OnePot", ("needed", "lasts", "big", "enough"))


def dose_of(stiffness: str) -> float:
    """Wood flour in the glue, by mass of its resin [-]."""
    return FILLER.figure(FLOUR, "doses")[place_of(stiffness)] / 100


def reckon(values: Values) -> "Glued | None":
    """The bond and its glue; None where another work is asked."""
    return once(values, "glued", lambda: _reckoned(values)) if values["work"] in GLUED else None


def _reckoned(values: Values) -> Glued:
    work, copies, wide = values["work"], values["glued_copies"], False
    scarf = bent = None
    times = values["end_prime"] if work in (SCARF, GAP) else 1.0
    if work == SCARF:
        scarf = _scarf(values)
        bond = gluing.scarf_area(values["glued_thickness"], values["scarf_width"], values["scarf_ratio"])
        volume = bond * values["bond_line"]
    elif work == LAMINATE:
        bent = _bent(values)
        bond = values["glued_length"] * values["glued_width"] * bent.lines
        volume = bond * values["bond_line"]
    else:
        bond = values["glued_length"] * values["gap_depth"]
        volume = gluing.wedge_volume(values["gaps"], values["gap_depth"], values["glued_length"])
        wide = max(values["gaps"]) > GAP_GLUE * (1 + 1e-9)
    bond, volume, density = bond * copies, volume * copies, values["putty_density"]
    stiffness = STANDS if wide else CLINGS
    neat = 2 * bond * times * values["glue_prime"]
    glue = gluing.glue_placed(volume, density, values["squeezed"]) / density
    flour = dose_of(stiffness), FILLER.figure(FLOUR, "density")
    resin = mass_for_putty(glue, LEFT["resin_density"].value, (flour,), AIR)
    mix = (neat + resin) * (1 + values["spare"]) + values["cup"]
    return Glued(bond, 2 * bond, neat, glue, resin, mix, stiffness, wide, scarf, bent, _one_pot(values, mix, bond),
                 neat + volume * density)


def _scarf(values: Values) -> Scarf:
    ratio, thickness = values["scarf_ratio"], values["glued_thickness"]
    shear, pull = gluing.scarf_stress(values["panel_strength"], ratio)
    wanted = SCARF_WOOD if values["scarf_of"] == WOOD else SCARF_PLY
    least = SCARF_LEAST if values["scarf_of"] == WOOD else SCARF_PLY
    return Scarf(ratio * thickness, gluing.scarf_joined(values["piece_one"], values["piece_two"], thickness, ratio),
                 shear, pull, ratio < least - 1e-9, wanted)


def _bent(values: Values) -> Bent:
    count, radius, thickness = int(values["strips"]), values["bend"], values["glued_thickness"]
    lines = count - 1 + (1 if values["to_hull"] == "yes" else 0)
    clamps = gluing.clamps_for(values["pressure"], values["glued_length"], values["glued_width"],
                               values["clamp"] * GRAVITY, values["apart"])
    if radius is None:
        return Bent(lines, None, None, False, clamps)
    former = radius if values["to_hull"] == "yes" else gluing.former_radius(radius, count)
    return Bent(lines, former, gluing.bend_strain(thickness, former), former < BEND_COLD * thickness * (1 - 1e-9),
                clamps)


def _one_pot(values: Values, mix: float, bond: float) -> "OnePot | None":
    """Whether one pot primes and is still good once the rest is thickened and spread."""
    if not known(values["system"]):
        return None
    spread = BY_KEY["coat_pace"].value * bond
    needed = pots.MIX_LIQUID + 2 * spread + values["soak"] + pots.MIX_PUTTY + spread
    lasts = usable(batch(values["system"], "cup", mix, values["air"])).time
    big = pots.big(values["air"])
    big = big if mix >= big else 0
    return OnePot(needed, lasts, big, needed <= lasts and not big)


def answer(values: Values) -> list:
    """What to mix, neat and thickened, then the bond and what holds it."""
    found = reckon(values)
    return gluing_lines.say(found, values) if found else []


def leads(values: Values) -> list:
    """The neat resin and the thickened glue, to Pour."""
    found = reckon(values)
    if not found:
        return []
    if found.pot and not found.pot.enough:
        led = surface_leads.poured(found.neat * (1 + values["spare"]) + values["cup"], "surface-to-pour.neat")
    else:
        led = surface_leads.poured(found.mix, "surface-to-pour.all")
    return led[:1] + surface_leads.thickened(found.glue, found.stiffness, FLOUR, "surface-to-pour.glue") + (
        boat_row.leads(values, INPUTS))

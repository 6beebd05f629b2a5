"""Sheathing: cloth over faces: strips and where they join, resin into the glass, the weave filled, what it adds."""
from collections import namedtuple

from ..catalogue.glass import CLOTH_WEIGHT, CLOTH_WIDTH, FIBRE_DENSITY, FOR_BUYING
from ..catalogue.joints import MOST_TAPES
from ..catalogue.surfaces import BY_KEY
from ..equations import laminate, surfaces
from ..forms.errors import InputError
from ..forms.inputs import Choice, Number
from ..forms.memo import once
from ..forms.remembered import remembered
from ..forms.types import Values
from ..words.messages import fact, message
from ..words.numbers import ceiling
from . import boat_row, faces, pots, sheathing_lines, strips_drawing, surface_leads
from .faces import SHEATHE

CLOTH, RESIN, WEAVE = "sheathing-fold.cloth", "sheathing-fold.glass", "sheathing-fold.weave"
HERE = faces.only(SHEATHE)
SHARE = BY_KEY["weave_share"]
ALONG, ACROSS, FEWEST = "along", "across", "fewest"

INPUTS = (
    faces.WORK, faces.FACES,
    Number("cloth_weight", "sheathing-cloth-weight", unit="g/m2", low=20, high=2000, default=CLOTH_WEIGHT, when=HERE),
    Number("cloth_width", "sheathing-cloth-width", unit="mm", low=50, high=3000, default=CLOTH_WIDTH, when=HERE),
    Number("cloth_layers", "sheathing-cloth-layers", low=1, high=8, default=1, whole=True, when=HERE),
    faces.WOOD, faces.LIE,
    Choice("cloth_ply", "joint-ply-wanted", (("no", "joint-ply-wanted.no"), ("yes", "sheathing-ply-wanted")),
           when=HERE),
    Choice("way", "sheathing-way", ((FEWEST, "sheathing-way.fewest"), (ALONG, "sheathing-way.along"),
                                    (ACROSS, "sheathing-way.across")), fold=CLOTH, when=HERE),
    remembered("cloth_lap", "lap", "sheathing-lap", "mm", 0, 500, of=BY_KEY, fold=CLOTH, when=HERE),
    remembered("cloth_spare", "edge_spare", "sheathing-edge-spare", "mm", 0, 500, of=BY_KEY, fold=CLOTH, when=HERE),
    Number("glass_share", "sheathing-glass-share", unit="%", low=15, high=75, default=FOR_BUYING[0] * 100, fold=RESIN,
           when=HERE, help=message("sheathing-glass-share.help", buying=fact("%", FOR_BUYING[0]))),
    Number("glass_volume", "sheathing-glass-volume", unit="%", low=5, high=65, optional=True, fold=RESIN, when=HERE,
           help="sheathing-glass-volume.help"),
    Number("cloth_density", "joint-fibre-density", unit="g/mL", low=1, high=4, default=FIBRE_DENSITY / 1000,
           fold=RESIN, when=HERE),
    remembered("wood_drinks", "drinks", "sheathing-drinks", "g/m2", 0, 300, of=BY_KEY, fold=RESIN, when=HERE),
    Number("weave_depth", "sheathing-weave-depth", unit="mm", low=0, high=5, optional=True, fold=WEAVE, when=HERE,
           help=message("sheathing-weave-depth.help", share=fact("%", SHARE.value), range=fact("%", *SHARE[3:5]))),
    remembered("weave_empty", "weave_empty", "sheathing-weave-empty", "%", 0, 100, of=BY_KEY, fold=WEAVE, when=HERE),
    remembered("sanded_off", "sanded_off", "sheathing-sanded-off", "mm", 0, 1, of=BY_KEY, fold=WEAVE, when=HERE),
    remembered("weave", "fill_coat", "sheathing-fill-coat", "g/m2", 20, 500, fold=WEAVE, when=HERE),
    faces.SYSTEM_USED, faces.WARMTH,
    remembered("wet_pace", "wet_pace", "sheathing-wet-pace", "min", 0.1, 120, of=BY_KEY, fold=faces.CLOCK, when=HERE),
    faces.DENSITY,
    remembered("peel_ply", "ply_takes", "joint-ply-takes-up", "g/m2", 0, 500, fold=faces.LOSSES, when=HERE),
    faces.ROLLER, faces.CUP, faces.SPARE,
)


def check(values: Values) -> None:
    """Faces with a size, and a cloth wider than its lap."""
    if values["work"] != SHEATHE:
        return
    faces.check_faces(values)
    if values["lap"] >= values["cloth_width"] / 2:
        raise InputError("lap", "sheathing-lap.wide")
    for row in values["faces"]:
        for cut in cuts_of(row, values):
            if len(cut.joins) >= MOST_TAPES:
                raise InputError("cloth_width", "sheathing-cloth-width.narrow")


CHECKS = (check,)

# strips of one layer on one face of a row: across: whether they run across it; lengths: of each [m]; joins: middle
# of each lap from the first edge [m]; lapped: [m2]; row: its place; faces: how many
Cut = namedtuple("Cut", ("across", "lengths", "joins", "lapped", "place", "faces"))
# of all faces. area [m2]; cuts: a `Cut` of each row with sizes; cloth: to cut, all layers [m]; lapped: [m2]; glass,
# wet: resin in it, drinks: into bare wood, fill: on the weave, ply: in the peel ply, mix: all that is mixed, stays: on
# the hull once sanded [kg]; thick: laminate [m]; depth: of the weave [m]; fill_areal [kg/m2], fills: coats of it
# fraction: glass by mass [-]; pots: `pots.Pots` of the wet-out, or None
Sheathed = namedtuple("Sheathed", ("area", "cuts", "cloth", "lapped", "glass", "wet", "drinks", "fill", "ply", "mix",
                                   "stays", "thick", "depth", "fill_areal", "fills", "fraction", "pots"))


def fraction_of(values: Values) -> float:
    """Glass by mass [-], from what was typed."""
    if values["glass_volume"] is None:
        return values["glass_share"]
    return surfaces.fraction_by_volume(values["glass_volume"], values["cloth_density"], values["resin_density"])


def cuts_of(row: Values, values: Values) -> "list[Cut]":
    """The strips of a row, [] where only its area is known. More joins have to save a tenth of the cloth."""
    if row["area"] is not None or not row["length"] or not row["widths"]:
        return []
    along, across = [_cut(way, row, values) for way in (False, True)]
    if values["way"] == FEWEST:
        return [across if sum(across.lengths) < sum(along.lengths) * 0.9 else along]
    return [across if values["way"] == ACROSS else along]


def _cut(across: bool, row: Values, values: Values) -> Cut:
    """Strips along the face are as long as it is, a strip across it as the face is wide under it."""
    width, lap, spare = values["cloth_width"], values["lap"], values["edge_spare"]
    run, widths = row["length"], row["widths"]
    starts = [(width - lap) * place - spare
              for place in range(surfaces.strips(run if across else max(widths), width, lap, spare))]
    bare = [surfaces.widest(run, widths, at, at + width) if across else run for at in starts]
    return Cut(across, [long + 2 * spare for long in bare], tuple([at + lap / 2 for at in starts[1:]]),
               lap * sum([min(pair) for pair in zip(bare, bare[1:])]), row["place"], faces.count_of(row))


def reckon(values: Values) -> "Sheathed | None":
    """The cloth, its resin and what they add; None where another work is asked."""
    return once(values, "sheathed", lambda: _reckoned(values)) if values["work"] == SHEATHE else None


def _reckoned(values: Values) -> Sheathed:
    """One function: every mass of the sum stands beside the others that make it."""
    areal, layers, density = values["cloth_weight"], values["cloth_layers"], values["resin_density"]
    area, fraction = faces.whole_area(values), fraction_of(values)
    cuts = [cut for row in values["faces"] for cut in cuts_of(row, values)]
    cloth = sum([sum(cut.lengths) * cut.faces for cut in cuts]) * layers
    lapped = sum([cut.lapped * cut.faces for cut in cuts]) * layers
    net = values["cloth_width"] - values["lap"]
    for row in values["faces"]:
        if row["place"] not in [cut.place for cut in cuts]:  # only its area is known
            metres = faces.area_of(row) * faces.count_of(row) / net * layers
            cloth, lapped = cloth + metres, lapped + metres * values["lap"]
    glass = areal * (area * layers + lapped)
    wet = laminate.resin_taken_up(glass, fraction)
    drinks = values["drinks"] * area if values["wood"] == "bare" else 0.0
    depth = values["weave_depth"]
    if depth is None:
        depth = surfaces.weave_depth(areal, fraction, values["cloth_density"], density, SHARE.value)
    fill_areal = surfaces.weave_fill(depth, values["weave_empty"], values["sanded_off"], density)
    fills = max(1, ceiling(fill_areal / values["fill_coat"]))
    ply = 0.0
    if values["cloth_ply"] == "yes":
        fill_areal, fills = fill_areal * (fills - 1) / fills, fills - 1
        ply = values["ply_takes"] * area
    fill = fill_areal * area
    laid = (wet + drinks + ply) * (1 + values["spare"]) + values["roller"]
    used = pots.pots_for(values, area, laid, pots.pace_of(values["wet_pace"], values["lie"]) * layers)
    mix = laid + fill * (1 + values["spare"]) + values["roller"] * fills
    mix += values["cup"] * ((used.count if used else 1) + fills)
    stays = glass + wet + drinks + max(0.0, fill - values["sanded_off"] * density * area)
    thick = laminate.thickness(areal, fraction, values["cloth_density"], density) * layers
    return Sheathed(area, cuts, cloth, lapped, glass, wet, drinks, fill, ply, mix, stays, thick, depth, fill_areal,
                    fills, fraction, used)


def answer(values: Values) -> list:
    """Resin and cloth first, then the pots, the joins and what they are made of."""
    found = reckon(values)
    return sheathing_lines.say(found, values) if found else []


def figures(values: Values) -> list:
    """The strips on the first face."""
    found = reckon(values)
    return [strips_drawing.strips(found.cuts[0], values)] if found and found.cuts else []


def leads(values: Values) -> list:
    """One pot to Pour, and the cautions of sanding."""
    found = reckon(values)
    if not found:
        return []
    mass = found.pots.mass if found.pots else found.wet + found.drinks
    return surface_leads.poured(mass, "surface-to-pour.pot") + boat_row.leads(values, INPUTS)

"""Phases: a boat in the order of building: what each phase takes, what of it stays, and what leaving it out would save.

All phases add up to the whole: what the batches of all seams waste is shared out as the seams of each phase need.
"""
from collections import namedtuple

from ..catalogue.losses import BY_KEY
from ..forms.types import Found, Values
from ..plan.batch_counts import gloves
from ..surface import fairing, gluing, pots
from ..surface.faces import COAT, FAIR, GLUED, SHEATHE
from ..words.numbers import ceiling
from . import batches_counted
from .hull import Mixed, epoxy_in, mixed

GLUING, TACKING, INSIDES, OUTSIDES, SHEATHING, FAIRING, SEALING, COATING = PHASES = (
    "glue", "tack", "inside", "outside", "sheathe", "fair", "seal", "coat")

# resin: all that is mixed, with losses and spare [kg]; putty: likewise, but glue and compound to place [m3]; filler,
# light: what is stirred in, light for fairing [kg]; glass [kg]; ply [m2]; stays: on the boat [kg]; batches, cups
# bags, trays, brushes, sheets: of abrasive, ties; backing [m]; kept: resin in what stays [kg], of surfaces
Phase = namedtuple("Phase", ("name", "resin", "putty", "filler", "light", "glass", "ply", "stays", "batches", "cups",
                             "bags", "trays", "brushes", "sheets", "ties", "backing", "kept"))
NAMES = ("resin", "putty", "filler", "light", "glass", "ply", "stays", "batches", "cups", "bags", "trays", "brushes",
         "sheets", "ties", "backing", "kept")  # all but the first
# what would stay away without it [kg]; coat: the last of three or more
Saved = namedtuple("Saved", ("cloth", "coat", "fairing"))


def phase(name: str, amounts: Values) -> Phase:
    """A phase of some amounts, the others 0."""
    return Phase(*([name] + [amounts.get(one, 0.0) for one in NAMES]))


def together(some: "list[Phase]", name: str = "") -> Phase:
    """Several as one."""
    return Phase(*([name] + [sum([one[place + 1] for one in some]) for place in range(len(NAMES))]))


def in_order(some: "list[Phase]") -> "list[Phase]":
    """One of each phase that has something, in the order of building."""
    found = []
    for name in PHASES:
        own = [one for one in some if one.name == name]
        if own:
            found.append(together(own, name))
    return found


def of_seams(values: Values, sides: tuple, counts: tuple, whole: Mixed, bought: list) -> "list[Phase]":
    """Tacking, insides and outsides. sides: `hull.Totals` of each; counts: `Counted` of each; bought: for all seams"""
    each = [mixed(values, sums, count, batches_counted.largest(values)) for sums, count in zip(sides, counts)]
    kept, found, many = dict(bought), [], {}
    for name in ("batches", "mixes", "liquid_batches"):  # one batch may coat both sides
        first = min(getattr(each[0], name), getattr(whole, name))
        many[name] = first, getattr(whole, name) - first
    first = min(_sheets(sides[0].taped), kept["abrasive"])
    sheets = first, kept["abrasive"] - first
    for place, (sums, own) in enumerate(zip(sides, each)):
        liquids = many["liquid_batches"][place]
        found.append(phase((INSIDES, OUTSIDES)[place], {
            "resin": whole.all * _share([one.all for one in each], place),
            "putty": whole.putty * _share([one.putty for one in each], place) / values["putty_density"],
            "filler": whole.filler * _share([one.filler for one in each], place),
            "glass": sums.glass, "ply": sums.ply_area, "stays": added(sums, values),
            "batches": many["batches"][place], "cups": many["mixes"][place], "bags": own.putty_batches,
            "trays": liquids, "brushes": liquids, "sheets": sheets[place]}))
    tacks = phase(TACKING, {"ties": kept["ties"], "backing": kept["backing"]})
    return ([tacks] if tacks.ties or tacks.backing else []) + [one for one in found if one.resin]


def added(sums: Found, values: Values) -> float:
    """What of seams stays on the hull [kg]. sums: a `hull.Totals`"""
    return sums.putty * values["putty_density"] + sums.glass + sums.wet_out + sums.prime + sums.weave


def resin_kept(sums: Found, values: Values) -> float:
    """Resin of it [kg]. sums: a `hull.Totals`"""
    epoxy = epoxy_in(sums.putty * values["putty_density"], values)
    return epoxy + sums.wet_out + sums.prime + sums.weave


def whole(alone: Mixed, parts: "list[Phase]", values: Values) -> Mixed:
    """What is mixed for all of the boat. Bare fillets are putty as the seams are.

    alone: for the seams; parts: of the surfaces
    """
    more, coved = together(parts), together([one for one in parts if one.name == INSIDES])
    return Mixed(alone.putty + coved.putty * values["putty_density"], alone.epoxy + coved.resin / (1 + values["spare"]),
                 alone.filler + more.filler, alone.liquid, alone.putty_batches + int(coved.bags), alone.liquid_batches,
                 alone.batches + int(more.batches), alone.mixes + int(more.cups), alone.all + more.resin)


def _share(parts: list, place: int) -> float:
    return parts[place] / sum(parts) if sum(parts) else 0.0


def _sheets(area: float) -> int:
    return ceiling(area / BY_KEY["abrasive"].value) if area else 0


def of_surface(one: Found, values: Values) -> "list[Phase]":
    """What one surface takes, phase by phase. one: a `boat_surfaces.Laid`"""
    work = one.row["work"]
    if work == COAT:
        return _coats(one.found, one.given)
    if work == SHEATHE:
        return [_cloth(one.found)]
    if work == FAIR:
        return [_compound(one.found, one.given)]
    return [_glue(one.found, one.given) if work in GLUED else _fillet(one.found, values)]


def one_coat(found: Found, given: Values, mix: float) -> float:
    """What of a mix of one coat stays [kg]. found: a `coats.CoatsResult`"""
    return (mix - found.left / int(given["coats"])) / (1 + given["spare"])


def _coats(found: Found, given: Values) -> "list[Phase]":
    """The first coat seals bare wood. Its face is sanded before."""
    count, used = int(given["coats"]), found.pots.count if found.pots else 1
    first = one_coat(found, given, found.first)
    each = [(SEALING if given["wood"] == "bare" else COATING, 1, found.first, first)]
    if count > 1:
        each.append((COATING, count - 1, found.mix - found.first, found.on_wood - first))
    return [phase(name, {
        "resin": mix, "stays": stays, "kept": stays, "batches": many * used, "cups": many * used,
        "trays": many, "brushes": many, "sheets": 0 if place else _sheets(found.area)})
        for place, (name, many, mix, stays) in enumerate(each)]


def _cloth(found: Found) -> Phase:
    used = (found.pots.count if found.pots else 1) + found.fills
    return phase(SHEATHING, {
        "resin": found.mix, "glass": found.glass, "ply": found.area if found.ply else 0.0, "stays": found.stays,
        "kept": found.stays - found.glass,
        "batches": used, "cups": used, "brushes": 1 + found.fills, "sheets": _sheets(found.area)})


def _compound(found: Found, given: Values) -> Phase:
    """All its resin is thickened, also what stays in the cups."""
    return phase(FAIRING, {
        "resin": found.mix, "putty": found.placed, "light": found.mix * fairing.dose_of(given)[0],
        "stays": found.stays, "kept": found.stays / (1 + fairing.dose_of(given)[0]), "batches": found.batches,
        "cups": found.batches,
        "sheets": _sheets(found.area * found.passes)})


def _glue(found: Found, given: Values) -> Phase:
    used = pots.cups_for(found.mix, given["air"], given["cup"])
    if found.pot and not found.pot.enough:
        used = max(2, used)
    thickened, dose = found.mix - found.neat * (1 + given["spare"]), gluing.dose_of(found.stiffness)
    return phase(GLUING, {
        "resin": found.mix, "putty": found.glue, "filler": thickened * dose,
        "stays": found.stays, "kept": found.neat + (found.stays - found.neat) / (1 + dose), "batches": used,
        "cups": used, "brushes": used})


def _fillet(found: Found, values: Values) -> Phase:
    """A fillet without tape is putty as any cove."""
    kept, mass = values["bag"] + values["cup"], found.volume * values["putty_density"]
    more = 1 + values["spare"]
    bags = batches_counted.by_mass(mass * more, 0.0, batches_counted.largest(values), kept * more, kept * more).bags
    putty = mass + bags * kept
    epoxy, stays = epoxy_in(putty, values), mass * (1 - values["tooling"])
    return phase(INSIDES, {
        "resin": epoxy * more, "putty": putty * more / values["putty_density"], "filler": (putty - epoxy) * more,
        "stays": stays, "kept": epoxy_in(stays, values), "batches": bags, "cups": bags, "bags": bags})


def with_surfaces(bought: list, more: Phase, people: int) -> list:
    """What else is bought, for the surfaces too. bought: (key, how many) for the seams"""
    extra = {"gloves": gloves(people, int(more.batches)) - people, "bags": more.bags, "cups": more.cups,
             "sticks": more.cups, "tray": more.trays, "brushes": more.brushes, "abrasive": more.sheets}
    return [(key, count + int(extra.get(key, 0))) for key, count in bought]


def saved(work: list) -> Saved:
    """What leaving out the cloth, a third coat or the fairing saves. work: as `boat_surfaces.laid` gives it

    What soaks into the wood under the cloth stays: the next coat gives it as well.
    """
    cloth = coat = compound = 0.0
    for row, given, found in work:
        if row["work"] == SHEATHE:
            cloth += found.stays - found.drinks
        elif row["work"] == FAIR:
            compound += found.stays
        elif row["work"] == COAT and given["coats"] > 2:
            coat += one_coat(found, given, found.later)
    return Saved(cloth, coat, compound)

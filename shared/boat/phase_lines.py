"""Phase lines: what is said of a boat in the order of building, and of its surfaces. found: a `boat.BoatResult`"""
from ..forms.types import Found, Said, Values
from ..surface.faces import SHEATHE
from ..words.lines import MORE, Line, line
from ..words.messages import along, listed, message, noted, quantity
from ..words.numbers import UP
from . import phases
from .boat_surfaces import called
from .cut_lines import in_runs

LABELS = {
    phases.GLUING: "boat-phase.glue", phases.TACKING: "boat-phase.tack", phases.INSIDES: "boat-phase.inside",
    phases.OUTSIDES: "boat-phase.outside", phases.SHEATHING: "boat-phase.sheathe", phases.FAIRING: "boat-phase.fair",
    phases.SEALING: "boat-phase.seal", phases.COATING: "boat-phase.coat"}


def lines(found: Found, values: Values) -> list[Line]:
    """Phase by phase, what leaving one out would save, what is bought for the surfaces, and each surface."""
    if not found.surfaces:
        return []
    told = []
    for one in found.phases:
        amounts = _amounts(one)
        told.append(line("phase_" + one.name, LABELS[one.name], one.resin, "kg", amounts[0], part="phase", rank=MORE,
                         rough=noted(amounts[1:] + _beside(one, int(values["people"])))))
    for name, label, mass in (("cloth", "boat-saved.cloth", found.saved.cloth),
                              ("coat", "boat-saved.coat", found.saved.coat),
                              ("fairing", "boat-saved.fairing", found.saved.fairing)):
        if mass > 0:
            told.append(line("saved_" + name, label, mass, "kg", quantity(mass, "kg"), part="phase", rank=MORE,
                             rough="boat-saved.rough"))
    cloths = [piece for one in dict(found.cuts)["cloth"] for piece in one[2]]
    return told + _bought(found) + [_surface(one, values, cloths) for one in found.surfaces]


def mixed_said(found: Found) -> Said:
    """What is mixed for the seams and for all the rest."""
    return message("boat-mixed.surfaces", seams=quantity(found.alone.all, "g"),
                   surfaces=quantity(found.mixed.all - found.alone.all, "g"))


def _named(label: Said, text: Said) -> Said:
    return message("card-line", label=label, text=text)


def _amounts(one: Found) -> "list[Said]":
    """Resin first, putty, filler and glass. one: a `phases.Phase`"""
    texts = []
    for key, value, unit in (("boat-phase.resin", one.resin, "g"), ("boat-phase.putty", one.putty, "mL"),
                             ("boat-filler", one.filler + one.light, "g"), ("boat-phase.glass", one.glass, "g"),
                             ("joint-ply", one.ply, "m2")):
        if value:
            texts.append(_named(key, quantity(value, unit, UP)))
    if not texts:
        texts.append(_named("boat-ties", int(one.ties)))
    return texts


def _beside(one: Found, people: int) -> list:
    """What stays on the boat, and what else is used up. people: with gloves"""
    texts = [_named("surface-stays", quantity(one.stays, "g", UP))] if one.stays else []
    for label, count in (("boat-cups", one.cups), ("boat-bags", one.bags),
                         ("boat-tray", one.trays), ("boat-brushes", one.brushes), ("boat-abrasive", one.sheets)):
        if count:
            texts.append(_named(label, int(count)))
    if one.batches:
        texts.append(_named("boat-gloves", message("boat-gloves.text", count=int(one.batches) * people)))
    if one.backing:
        texts.append(_named("boat-backing", along(one.backing, UP)))
    return texts


def _bought(found: Found) -> list[Line]:
    """Peel ply over the cloth, light filler."""
    told = []
    ply = sum([one.ply for one in found.phases if one.name == phases.SHEATHING])
    if ply:
        told.append(line("ply_area", "joint-ply", ply, "m2", quantity(ply, "m2", UP), part="buy", rank=MORE,
                         rough="surface-area-line.rough"))
    light = sum([one.light for one in found.phases])
    if light:
        told.append(line("light", "fairing-light", light, "kg", quantity(light, "g", UP), part="buy", rank=MORE,
                         rough="boat-phase.light"))
    return told


def _surface(one: Found, values: Values, cloths: list) -> Line:
    """One surface. one: a `boat_surfaces.Laid`; cloths: as `hull.cloth_pieces` gives them"""
    own = phases.together(phases.of_surface(one, values))
    texts = _amounts(own)
    if one.row["work"] == SHEATHE:
        texts.append(_named("sheathing-cloth", along(one.found.cloth, UP)))
        texts.append(_named("boat-fold.cut", in_runs([piece[0] for piece in cloths if piece[1] is one.row])))
    return line("surface_" + str(one.row["place"]), called(one.row), own.resin, "kg", listed(texts, "plain"),
                part="surface", rank=MORE, rough=_named("surface-stays", quantity(own.stays, "g", UP)))

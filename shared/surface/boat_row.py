"""Boat row: what of a surface is its own in a boat, and the same as typed text of rows there."""
from ..catalogue.fillers import FILLERS
from ..forms.declared import filled, link_inputs, missing, text_of, with_units
from ..forms.types import Values
from ..mix.filler_dose import place_of
from ..words.messages import number, with_unit
from ..words.numbers import UP, bare
from . import faces
from .faces import COAT, FAIR, FILLET, GAP, LAMINATE, SCARF, SHEATHE

# inputs that are its own; all others hold for the whole boat, or stand there as a form starts
OWN = {
    COAT: ("wood", "lie", "coats", "tool", "edge_length", "edge_thickness"),
    SHEATHE: ("wood", "lie", "cloth_weight", "cloth_width", "cloth_layers", "cloth_ply", "way"),
    FAIR: ("lie", "depths", "fair_depth"),
    SCARF: ("glued_thickness", "scarf_width", "scarf_ratio", "glued_copies"),
    LAMINATE: ("glued_thickness", "glued_width", "strips", "glued_length", "to_hull", "glued_copies"),
    GAP: ("glued_length", "gaps", "gap_depth", "glued_copies"),
    FILLET: ("fillet_panel", "fillet_angle", "fillet_length"),
}
LIGHTS = tuple([row[:2] for row in reversed(FILLERS) if ("carries", "no") in row[3]])  # fillers for fairing
LIGHT = "glass-spheres"


def leads(values: Values, declared: tuple) -> list:
    """This surface into the boat. declared: the inputs of its move

    Cloth is cut face by face: each face is a row. Of coats and compound several faces are one area.
    """
    work, units = values["work"], values["units"]
    own = [item for item in declared if item.name in OWN[work] and item.name in values]
    linked = []  # type: list
    link_inputs(own, values["_tree"], "", units, linked)  # what stands as a form starts stays behind
    tree = with_units(own, dict(linked), units)
    typed = [("work", work)] + [(name, tree[name]) for name, _ in linked]
    if work == FAIR:
        filler, given = values["filler"], values["_tree"].get("filler")
        known = filler["id"] in [row[0] for row in LIGHTS]
        typed.append(("light_filler", filler["id"] if known else LIGHT if filler["grain"] == "sphere"
                      else LIGHTS[0][0]))
        if not known or (isinstance(given, dict) and [key for key in given if not missing(given[key])] != ["id"]):
            typed.append(("light_dose", number(bare(filler["doses"][place_of("stands")], 3))))
            typed.append(("light_density", with_unit(bare(filler["density"] / 1000, 3), "g/mL")))
    each = [[]]  # type: list
    if work == SHEATHE or (work in (COAT, FAIR) and len(values["faces"]) == 1):
        ours = missing(faces.FACES.typed_in(values["_tree"]))
        each = [_size(row, ours) for row in values["faces"]]
    elif work in (COAT, FAIR):
        each = [[("area", with_unit(bare(faces.whole_area(values), 3, UP), "m2"))]]
    return [{"label": "joint-to-boat", "screen": "boat", "adds": "surfaces", "pairs": [
        ["surfaces.{}.{}".format(place, name), text]
        for place, size in enumerate(each) for name, text in typed[:1] + size + typed[1:]]}]


def _size(row: Values, ours: bool) -> list:
    """One face as it was typed. ours: nobody typed it, and it is in nobody's marks"""
    fields = faces.FACES.fields
    tree = with_units(fields, row["_tree"], row["units"], {})
    found = [(item.name, text_of(item.typed_in(tree))) for item in fields if filled(item.typed_in(tree))]
    return [(name, number(text)) for name, text in found] if ours else found

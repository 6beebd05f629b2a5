"""Boat layers: the coats and the cloth of the boat as faces of a plan, edges and bare wood in their first coat."""
from ..catalogue.rates import POSITIONS
from ..forms.types import Values
from ..surface.faces import COAT, SHEATHE, UNDER, UPRIGHT
from ..words.messages import with_unit
from ..words.numbers import UP, shown
from . import batches_counted
from .boat_surfaces import called

LIES = {UPRIGHT: POSITIONS[1][0], UNDER: POSITIONS[2][0]}  # all else is downhand


def to_plan(values: Values, laid: list) -> list:
    """To the plan of these faces, after the seams. laid: of `boat_surfaces.laid`"""
    pairs = []  # type: list
    for one in laid:
        work, found, given = one.row["work"], one.found, one.given
        if work == COAT:
            area, later, coats = found.area + found.edge, given["later_coat"], given["coats"]
            first = ("first", (found.on_wood - (coats - 1) * later * area) / area)
            more = []  # type: list
        elif work == SHEATHE:
            # through peel ply none follows: its weave is filled once the ply is off
            area, coats = found.area, 1 if found.ply else found.fills + 1
            later = found.fill_areal / max(1, found.fills)
            first = ("wet", (found.wet + found.drinks + found.ply) / area)
            more = [("layers", shown(given["cloth_layers"]))]
        else:
            continue
        own = "surfaces.{}.".format(len(pairs))
        pairs.append([[own + name, text] for name, text in [
            ("name", called(one.row)), ("work", work), ("area", with_unit(shown(area, 2, UP), "m2")),
            (first[0], with_unit(shown(first[1] * 1000, 0, UP), "g/m2")),
            ("later", with_unit(shown(max(later, 0.01) * 1000, 0, UP), "g/m2")), ("coats", shown(coats)),
            ("position", LIES.get(given["lie"], POSITIONS[0][0]))] + more])
    return [{"label": "boat-plan.faces", "screen": "plan", "pairs": [pair for row in pairs for pair in row] + (
        batches_counted.handed(values))}] if pairs else []

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
    rows = []  # type: list
    for one in laid:
        work, found, given = one.row["work"], one.found, one.given
        if work == COAT:
            area, later, coats = found.area + found.edge, given["later_coat"], given["coats"]
            own = ("first", (found.on_wood - (coats - 1) * later * area) / area)
        elif work == SHEATHE:
            # through peel ply none follows: its weave is filled once the ply is off
            area, coats = found.area, 1 if found.ply else found.fills + 1
            later = max(0.01, found.fill_areal / max(1, found.fills))
            own = ("wet", (found.wet + found.drinks + found.ply) / area)
        else:
            continue
        rows.append([("name", called(one.row)), ("work", work), ("coats", shown(coats)),
                     ("layers", shown(given.get("cloth_layers", 1))),
                     ("position", LIES.get(given["lie"], POSITIONS[0][0])),
                     ("area", with_unit(shown(area, 2, UP), "m2"))] + [
            (name, with_unit(shown(areal * 1000, 0, UP), "g/m2")) for name, areal in (own, ("later", later))])
    return [{"label": "boat-plan.faces", "screen": "plan", "pairs": [
        ["surfaces.{}.{}".format(place, name), text] for place, row in enumerate(rows) for name, text in row] + (
            batches_counted.handed(values))}] if rows else []

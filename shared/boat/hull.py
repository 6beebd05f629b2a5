"""Hull: the seams of all joints, their sums, their pieces in laying order and how these are cut."""
from collections import namedtuple

from ..equations import cutting, tape
from ..forms.memo import memo_of, once
from ..forms.types import Values
from ..plan.batch_counts import Counted
from ..seam import coves, seam
from ..surface.faces import SHEATHE
from ..surface.sheathing import ACROSS, ALONG
from . import shopping
from .boat_rows import OWN, spec_of

# row: as it was read; spec, seam: of one copy; coves: a `coves.Cove` at each station and side; radii: of the spreaders
# [mm], each rounded to a whole one
Joint = namedtuple("Joint", ("row", "spec", "seam", "coves", "radii"))
# over all joints and copies: putty [m3], glass, wet_out, ply_takes, prime, weave [kg], taped, ply_area [m2], length,
# corners: of it along corners, backed: of it along a gap [m]
Totals = namedtuple("Totals", ("putty", "glass", "wet_out", "taped", "ply_area", "ply_takes", "prime", "weave",
                               "length", "corners", "backed"))
# masses [kg]: putty, filler and all: mixed and bought, with the spare; epoxy of the putty, and liquid: without it
Mixed = namedtuple("Mixed", ("putty", "epoxy", "filler", "liquid", "putty_batches", "liquid_batches", "batches",
                             "mixes", "all"))


def seams(values: Values) -> list[Joint]:
    """Every joint of the boat."""
    # by place: on a phone one row changes at a time
    shared, seen = [values.get(name) for name in OWN], memo_of(values).under("seams")
    found, shapes = [], {}  # type: list, dict
    for place, row in enumerate(values["joints"]):
        known = seen.get(place)
        if known and known[0] is row and known[1] == shared:
            found.append(known[2])
            continue
        spec = spec_of(row, values)
        made = seam.seam(spec, shapes)
        found_coves = coves.coves(spec)
        radii = [int(one.radius * 1000 + 0.5) for one in found_coves if one.radius]
        kept = Joint(row, spec, made, found_coves, radii)
        seen[place] = (row, shared, kept)
        found.append(kept)
    return found


def totals(work: list[Joint]) -> Totals:
    """Sums over all joints and copies."""
    sums = [0.0] * 9
    corners = backed = 0.0
    for row, _, found, _, _ in work:
        copies = row["copies"]
        for place, one in enumerate((found.putty, found.glass, found.wet_out, found.taped, found.ply_area,
                                     found.ply_takes, found.prime, found.weave, found.length)):
            sums[place] += one * copies
        if row["kind"] in seam.CORNERS:
            corners += found.length * copies
        if row["gap"] and row["kind"] != seam.STRIP:
            backed += found.length * copies
    return Totals(*(sums + [corners, backed]))


def side_totals(work: list[Joint]) -> "tuple[Totals, Totals]":
    """The sums of the insides and of the outsides. What a seam takes in all is shared out by the tape of its faces."""
    sides = [[0.0] * 8, [0.0] * 8]
    for row, spec, found, _, _ in work:
        lies = [seam.over(face, spec) for face in found.faces]
        for place, (face, over) in enumerate(zip(found.faces, lies)):
            wide = _of_all([one.widest for one in lies], place)
            ply, glass = _of_all([one.ply_width for one in lies], place), _of_all([one.glass for one in lies], place)
            own = sides[1 if face.name in seam.LATE else 0]
            for at, one in enumerate((face.putty, over.glass, found.wet_out * glass, over.taped, found.ply_area * ply,
                                      found.ply_takes * ply, found.prime * wide, found.weave * wide)):
                own[at] += one * row["copies"]
    return Totals(*(sides[0] + [0.0, 0.0, 0.0])), Totals(*(sides[1] + [0.0, 0.0, 0.0]))


def _of_all(parts: list, place: int) -> float:
    """The share of one of them; of nothing the first has all."""
    return parts[place] / sum(parts) if sum(parts) else 1.0 - min(1, place)


def epoxy_in(putty: float, values: Values) -> float:
    """Resin and hardener in so much putty, both by mass."""
    return putty / (1 + values["filler"] * 10)


def mixed(values: Values, sums: Totals, planned: Counted, largest: float) -> Mixed:
    """What is mixed, in batches.

    planned: `batch_counts.Counted` of what the plans count; largest: mix [kg], for the coats
    """
    kept = values["bag"] + values["cup"]
    placed = seam.placed(sums.putty * values["putty_density"], values["tooling"])
    putty_batches = planned.bags
    putty = placed + putty_batches * kept
    epoxy = epoxy_in(putty, values)
    wet = (sums.wet_out + sums.ply_takes) + values["tray"] * sums.taped
    coats = sums.prime + sums.weave
    each = values["cup"] + values["roller"]
    coat_batches = shopping.batches(coats, max(largest, 2 * each), each)
    liquid_batches = planned.wets + coat_batches
    liquid = wet + coats + liquid_batches * each
    more = 1 + values["spare"]  # what resin is spare in the putty is stirred up too
    # enough for what the plans mix: pieces that are cut overlap, and figures that are handed over are rounded up
    needed = max((epoxy + liquid) * more + planned.surplus, planned.poured + (coats + coat_batches * each) * more)
    stirred = max(putty * more, planned.putty)
    return Mixed(stirred, epoxy, stirred - epoxy_in(stirred, values), liquid, putty_batches, liquid_batches,
                 planned.batches + coat_batches, planned.mixes + coat_batches, needed)


def tape_pieces(work: list[Joint]) -> list[tuple]:
    """Every piece of tape in laying order: (number, joint, face, width, areal, length [m]); outside after inside."""
    found = []  # type: list
    for late in (False, True):
        for row, _, made, _, _ in work:
            for _ in range(int(row["copies"])):
                for face in made.faces:
                    if (face.name in seam.LATE) != late:
                        continue
                    for layer in face.layers:
                        for length in layer.pieces:
                            found.append((len(found) + 1, row, face.name, layer.width, layer.areal, length))
    return found


def ply_pieces(work: list[Joint], values: Values) -> list[tuple]:
    """Every piece of peel ply in laying order: (number, joint, face, width, 0, length [m])."""
    found = []  # type: list
    for late in (False, True):
        for row, _, made, _, _ in work:
            for _ in range(int(row["copies"])):
                for face in made.faces:
                    if not face.layers or (face.name in seam.LATE) != late:
                        continue
                    width = max([layer.width for layer in face.layers]) + 2 * values["ply_margin"]
                    for length in tape.pieces(made.length, values["reach"], 0.0):
                        found.append((len(found) + 1, row, face.name, width, 0.0, length))
    return found


def cloth_pieces(laid: list, values: Values) -> list[tuple]:
    """Every piece of cloth, face by face: (number, surface, how it runs, width, areal, length [m]).

    A strip longer than a roll is laid in pieces that lap. Of an area the metres are cut as they come off the roll.
    laid: as `boat_surfaces.laid` gives them
    """
    found = []  # type: list
    for row, given, made in laid:
        if row["work"] == SHEATHE:
            cuts = made.cuts
            for long in [long for cut in cuts for _ in range(cut.faces * int(given["cloth_layers"]))
                         for long in cut.lengths] or [made.cloth]:
                for length in tape.pieces(long, values["roll"], given["lap"]):
                    found.append((len(found) + 1, row, ACROSS if cuts and cuts[0].across else ALONG,
                                  given["cloth_width"], given["cloth_weight"], length))
    return found


def cut_lists(pieces: list[tuple], values: Values, of: str) -> list[tuple]:
    """One cut list for each width and weight: (width, areal, pieces, their lengths [mm], Cutting, its remnants)."""
    groups = {}  # type: dict
    for piece in pieces:
        groups.setdefault((_whole(piece[3], 1e4), _whole(piece[4], 1e4)), []).append(piece)
    roll = int(values["ply_roll" if of == "ply" else "roll"] * 1000)
    found, left = [], {}  # type: list, dict
    for key in reversed(sorted(groups)):  # of one wide remnant the wide pieces first
        rows = groups[key]
        own = [rest for rest in values["remnants"] or [] if rest["of"] == of and _serves(rest, of, key)]
        caps = [left.get(rest["place"], int(rest["length"] * 1000 + 1e-6)) for rest in own]
        # cut to the full millimetre above, a computed last bit aside
        lengths = [int(piece[5] * 1000 + 0.999999) for piece in rows]
        cuts = _cut(values, tuple(lengths), roll, tuple(caps))
        for each in cuts.cuts:
            if each.stock == cutting.REMNANT:
                left[own[each.place]["place"]] = each.length - sum([lengths[place] for place in each.pieces])
        found.insert(0, (rows[0][3], rows[0][4], rows, lengths, cuts, own))
    return found


def _serves(rest: Values, of: str, key: tuple) -> bool:
    """Whether a remnant is of use: tape and cloth of the same width and weight; peel ply as wide or wider."""
    width = _whole(rest["width"], 1e4)
    return width >= key[0] if of == "ply" else (width, _whole(rest["weight"], 1e4)) == key


def cuts_of(values: Values, work: list[Joint], laid: list) -> list[tuple]:
    """(material, its cut lists) of tape, peel ply and cloth, reckoned once for lines and drawings."""
    return once(values, "cuts", lambda: [(of, cut_lists(pieces, values, of)) for of, pieces in (
        ("tape", tape_pieces(work)), ("ply", ply_pieces(work, values) if values["ply"] == "yes" else []),
        ("cloth", cloth_pieces(laid, values)))])


def _whole(value: float, per: float) -> int:
    return int(value * per + 0.5)


def _cut(values: Values, lengths: tuple, roll: int, left: tuple) -> cutting.Cutting:
    """The same pieces are not cut again at each key press."""
    return memo_of(values).once("cuts", (lengths, roll, left), lambda: cutting.cut(lengths, roll, left))

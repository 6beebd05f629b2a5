"""Hull: the seams of all joints, their sums, their pieces in laying order and how these are cut."""
from math import pi

from ..equations import changing_angle, cutting, tape
from ..forms.declared import Values
from ..forms.memo import memo_of, once
from ..seam import coves, seam
from ..words.lengths import metres, ranged
from ..words.lines import MORE, line
from ..words.numbers import UP, small
from ..words.units import told
from . import shopping

OWN = ("flank", "least", "overlap", "stagger", "reach", "fraction", "fibre_density", "resin_density", "ply",
       "ply_margin", "ply_takes", "prime", "weave")  # inputs of the joint that hold for the whole boat




def faces(text: str):
    """The faces that layers go on, from typed words; "" for a word that names none, each face where nothing is typed.

    >>> faces("each : Out"), faces(""), faces("up")
    (['all', 'second'], ['all'], [''])
    """
    return [dict(seam.FACES).get(small(word.strip(" ")), "") for word in text.split(":")] if text else [seam.EACH]


def spec_of(row, values):
    """The seam's spec of one row, made once to be checked and to be worked out."""
    return once(values, "spec " + str(row["place"]), lambda: _spec_of(row, values))


def _spec_of(row: Values, values: Values) -> seam.Spec:
    sides, given = faces(row["faces"]), dict(values)
    given.update(row)
    if row.get("radius"):
        given["sized"] = "radius"
    layers = [seam.Tape(_nth(row["width"], place), _nth(row["weight"], place), _nth(sides, place))
              for place in range(int(row["layers"]))]
    stations = changing_angle.spread(row["angle"] if row["kind"] in seam.CORNERS else (pi,), row["length"])
    return seam.spec_of(given, stations, tuple(layers))


def _nth(given, place):
    """One for each layer; the last stands for the rest."""
    return given[min(place, len(given) - 1)]


def seams(values):
    """(row, spec, Seam, its line) of every joint."""
    # by place: on a phone one row changes at a time
    shared, seen = [values.get(name) for name in OWN], memo_of(values).under("seams")
    found, shapes = [], {}
    for place, row in enumerate(values["joints"]):
        known = seen.get(place)
        if known and known[0] is row and known[1] == shared:
            found.append(known[2])
            continue
        spec = spec_of(row, values)
        made = seam.seam(spec, shapes)
        found_coves = coves.coves(spec)
        radii = [int(one.radius * 1000 + 0.5) for one in found_coves if one.radius]
        kept = (row, spec, made, joint_line(row, made, found_coves, row["units"]), radii)
        seen[place] = (row, shared, kept)
        found.append(kept)
    return found


def totals(values, work):
    """Sums over all joints and copies, in SI."""
    sums = {"putty": 0.0, "glass": 0.0, "wet_out": 0.0, "taped": 0.0, "ply_area": 0.0, "ply_takes": 0.0, "prime": 0.0,
            "weave": 0.0, "length": 0.0, "corners": 0.0, "backed": 0.0}
    for row, _, found, _, _ in work:
        copies = row["copies"]
        for name in ("putty", "glass", "wet_out", "taped", "ply_area", "ply_takes", "prime", "weave", "length"):
            sums[name] += getattr(found, name) * copies
        if row["kind"] in seam.CORNERS:
            sums["corners"] += found.length * copies
        if row["gap"] and row["kind"] != seam.STRIP:
            sums["backed"] += found.length * copies
    return sums


def mixed(values, sums, planned, largest):
    """What is mixed, in batches: a dict of masses [kg] and counts; "filler" and "all" are bought, with the spare.

    planned: `batch_counts.Counted` of what the plans count; largest: mix [kg], for the coats
    """
    kept = values["bag"] + values["cup"]
    placed = seam.placed(sums["putty"] * values["putty_density"], values["tooling"])
    putty_batches = planned.bags
    putty = placed + putty_batches * kept
    epoxy = putty / (1 + values["filler"] * 10)
    wet = (sums["wet_out"] + sums["ply_takes"]) + values["tray"] * sums["taped"]
    coats = sums["prime"] + sums["weave"]
    each = values["cup"] + values["roller"]
    coat_batches = shopping.batches(coats, max(largest, 2 * each), each)
    liquid_batches = planned.wets + coat_batches
    liquid = wet + coats + liquid_batches * each
    more = 1 + values["spare"]  # what resin is spare in the putty is stirred up too
    # enough for what the plans mix: pieces that are cut overlap, and figures that are handed over are rounded up
    needed = max((epoxy + liquid) * more + planned.surplus, planned.poured + (coats + coat_batches * each) * more)
    return {"putty": putty, "epoxy": epoxy, "filler": max((putty - epoxy) * more, planned.filler), "liquid": liquid,
            "putty_batches": putty_batches, "liquid_batches": liquid_batches,
            "batches": planned.batches + coat_batches,
            "mixes": planned.mixes + coat_batches,
            "all": needed}


def tape_pieces(work):
    """Every piece of tape in laying order: (number, joint, face, width, areal, length [m]); outside after inside."""
    found = []
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


def ply_pieces(work, values):
    """Every piece of peel ply in laying order: (number, joint, face, width, 0, length [m])."""
    found = []
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


def cut_lists(pieces, values, of):
    """One cut list for each width and weight: (width, areal, pieces, their lengths [mm], Cutting, its remnants)."""
    groups = {}
    for piece in pieces:
        groups.setdefault((_whole(piece[3], 1e4), _whole(piece[4], 1e4)), []).append(piece)
    roll = int(values["roll" if of == "tape" else "ply_roll"] * 1000)
    found, left = [], {}
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


def _serves(rest, of, key):
    """Whether a remnant is of use: tape of the same width and weight; peel ply as wide or wider."""
    width = _whole(rest["width"], 1e4)
    return width >= key[0] if of == "ply" else (width, _whole(rest["weight"], 1e4)) == key


def cuts_of(values, work):
    """The cut lists of tape and of peel ply, reckoned once for lines and drawings."""
    return once(values, "cuts", lambda: (
        cut_lists(tape_pieces(work), values, "tape"),
        cut_lists(ply_pieces(work, values), values, "ply") if values["ply"] == "yes" else []))


def _whole(value, per):
    return int(value * per + 0.5)


def _cut(values, lengths, roll, left):
    """The same pieces are not cut again at each key press."""
    return memo_of(values).once("cuts", (lengths, roll, left), lambda: cutting.cut(lengths, roll, left))


def joint_line(row, made, found_coves, units):
    """One row of the boat as a line: its coves, putty in place and tape, all copies."""
    copies = int(row["copies"])
    texts = []
    radii = [one.radius for one in found_coves if one.radius]
    if radii:
        texts.append("R " + ranged(radii, units))
    elif found_coves:
        texts.append("flat tape")
    if made.putty:
        texts.append(told(made.putty * copies, "mL", units) + " putty in place")
    laid = sum([sum(layer.pieces) for face in made.faces for layer in face.layers]) * copies
    if laid:
        texts.append(metres(laid, units, UP) + " tape")
    notes = ["all copies"] if copies > 1 else []
    if row["pour"] == "now":
        texts.insert(0, "in the next batch")
    if [1 for one in found_coves if one.why == coves.TAPE]:
        notes.append("capped by the tape")
    return line("joint_" + str(row["place"]), (str(copies) + " × " if copies > 1 else "")
                + (row["name"] or "Joint " + str(row["place"] + 1)), made.putty * copies, "m3", ", ".join(texts),
                part="joint", rank=MORE, rough="; ".join(notes))

"""Boat: from all its joints to what is bought, what is cut from which roll, and what it adds to the hull."""
from ..catalogue.demo_boat import JOINTS
from ..catalogue.fillers import DOSE_SPREAD
from ..forms.errors import InputError
from ..forms.inputs import Choice, Group, Number, Parts, Pick, Text
from ..forms.memo import memo_of
from ..forms.remembered import remembered
from ..mix import ratio
from ..plan import plan
from ..seam import impossible_joints, joint, joint_leads, seam
from ..things.records import SYSTEM
from ..words.lengths import metres, mm
from ..words.lengths import radii as radii_text
from ..words.lines import ANSWER, BESIDE, MORE, SAY, line, words
from ..words.numbers import UP, bare, shown, small
from ..words.units import braces, told
from . import batches_counted, boat_cards, boat_limits, boat_pieces, cut_lines, shopping
from .cut_drawing import cut_figures
from .hull import OWN, cuts_of, faces, mixed, seams, spec_of, totals

STOCK, WORK = "Rolls and remnants", "How it is worked"
PUTTY = ("putty_density", "tooling", "bag", "cup", "tray", "roller", "spare")


EDGES = ("clear", "bevel", "touch", "finish", "round_over")  # of one joint, and seldom asked


def _of_joint(names):
    return tuple([item for item in joint.INPUTS if item.name in names])


LATER, NOW = "later", "now"
FOLDS = (("buy", "Shopping list"), ("cut", "Cut list"), ("joint", "Joint by joint"), ("wall", "Cards for the wall"))
KIND = _of_joint(("kind",))[0]

INPUTS = (
    Group("joints", "Joints", (
        Text("name", "Name", most=40),
        Choice("kind", "Kind of joint", KIND.options),
        Number("thickness", "Panel thickness", unit="mm", low=0, high=60, default=6, above=True),
        Parts("angle", "Angle inside", unit="deg", low=0, high=359, least=1, most=9, default="90",
              help="One, or several along the seam: 95 : 120 : 150"),
        Parts("length", "Length", unit="m", low=0, high=200, least=1, most=8, default="1",
              help="In all, or the stretches between the angles: {0.8 : 1.4 m}"),
        Number("gap", "Gap", unit="mm", low=0, high=60, default=0),
        Number("copies", "How many", low=1, high=100, default=1, whole=True, help="Mirror images too."),
        Number("layers", "Layers of tape", low=0, high=8, default=1, whole=True),
        Parts("width", "Tape width", unit="mm", low=4, high=2000, least=1, most=8, default="75",
              help="One for all layers, or one for each: {75 : 100 mm}"),
        Parts("weight", "Dry weight", unit="g/m2", low=5, high=3000, least=1, most=8, default="300"),
        Text("faces", "Faces of the layers", help="One for each layer, each, in or out: each : out. Left empty: each."),
        Number("radius", "Cove radius", unit="mm", low=1, high=300, optional=True, help="Left empty: by the rule.",
               when=joint.ROUNDED),
        Number("throat", "Throat wanted", unit="mm", low=0, high=100, above=True, optional=True,
               when=joint.ROUNDED, help="Left empty: the panel thickness."),
    ) + _of_joint(EDGES) + (
        Choice("pour", "Next batch", ((LATER, "not in it"), (NOW, "goes into it"))),
    ), most=60, each="Joint", default=tuple([dict(row) for row in JOINTS])),
    Pick("system", "Resin system", SYSTEM, default="3-1"),
    Parts("packs", "Resin is sold in packs of", unit="kg", low=0, high=500, least=1, most=3, default="1 : 5",
          help="Each with its hardener in ratio."),
    Number("people", "People", low=1, high=20, default=1, whole=True, fold=WORK),
    Number("temperature", "Wood and air", unit="degC", low=-10, high=50, optional=True, fold=WORK,
           help="The batches are counted for it. Left empty: " + braces("degC", batches_counted.WARMTH) + "."),
    Number("most", "Largest mix wanted", unit="g", low=10, high=20000, optional=True, fold=WORK, was=("batch",),
           help=plan.MOST_HELP),
    remembered("filler", "filler", "Filler to {100 g} of epoxy", "g", 0, 200, fold=WORK,
               before="Wood flour for a cove. "),
    Number("roll", "Tape comes in rolls of", unit="m", low=1, high=500, default=50, fold=STOCK),
    Number("ply_roll", "Peel ply comes in rolls of", unit="m", low=1, high=500, default=50, fold=STOCK),
    Group("remnants", "Remnants at hand", (
        Choice("of", "Of", (("tape", "tape"), ("ply", "peel ply"))),
        Number("width", "Width", unit="mm", low=5, high=2000, default=75),
        Number("weight", "Dry weight", unit="g/m2", low=10, high=3000, default=300, when=(("of", ("tape",)),)),
        Number("length", "Length", unit="m", low=0, high=500),
        Text("name", "Name"),
    ), most=12, rows=0, each="Remnant", fold=STOCK),
    remembered("least_radius", "least", "Smallest cove radius", "mm", 1, 100, fold=WORK),
    remembered("flank", "flank", "Tape on bare panel, each side", "mm", 0, 200, fold=WORK),
) + _of_joint(OWN[2:] + PUTTY)


def check(values):
    """A boat has joints, and each of them can be built."""
    if not values["joints"]:
        raise InputError("joints", "No joints yet: add the first seam. What was typed elsewhere stays")
    boat_limits.angles(values["joints"])
    for row in values["joints"]:
        _check_row(row, values)
    if values["most"] is not None and values["most"] <= values["bag"] + values["cup"]:
        raise InputError("most", "Largest mix wanted: more than what bag and cup keep")
    if values["tooling"] >= 1:
        raise InputError("tooling", "Tooling: less than everything, please")
    longest = values["roll"]
    if values["reach"] > longest:
        raise InputError("reach", "Pieces cannot be longer than a roll of tape")
    if values["ply"] == "yes" and values["reach"] > values["ply_roll"]:
        raise InputError("reach", "Pieces cannot be longer than a roll of peel ply")
    work = seams(values)
    boat_limits.pieces(values, work)
    boat_limits.packs(values)


def _check_row(row, values):
    """On a phone one row changes at a time: the others are known to be sound."""
    shared, sound = [values.get(name) for name in OWN], memo_of(values).under("sound joints")  # by place
    known = sound.get(row["place"])
    if known and known[0] is row and known[1] == shared:
        return
    _check_new_row(row, values)
    sound[row["place"]] = row, shared


def _check_new_row(row, values):
    own = "joints.{}.".format(row["place"])
    called = row["name"] or "Joint {}".format(row["place"] + 1)
    corner = row["kind"] in seam.CORNERS
    if corner and len(row["length"]) > 1 and len(row["length"]) != len(row["angle"]) - 1:
        raise InputError(own + "length", called + ": one length, or one stretch between each two angles")
    if row["kind"] == seam.STRIP and not row["layers"]:
        raise InputError(own + "layers", called + ": a reinforcement strip is tape, add a layer")
    for word in faces(row["faces"]):
        if not word:
            raise InputError(own + "faces", called + ": each, in or out for each layer, with a colon between them")
    error = None
    try:
        impossible_joints.check(spec_of(row, values), values["units"])
    except InputError as caught:
        error = caught
    if error:
        field = error.field
        if field.startswith("layers."):
            field = "width"
        elif field.startswith("stations."):
            field = "angle"
        if field not in ("angle", "gap", "layers", "width", "radius", "throat") + EDGES:
            raise InputError(field if field in values else own + "thickness", called + ": " + error.message)
        raise InputError(own + field, called + ": " + error.message)


CHECKS = (check,)


def answer(values):
    """What to buy and what it adds, then each joint, then the cut lists."""
    work = seams(values)
    sums = totals(values, work)
    planned = boat_pieces.counts(values, work)
    batch, units = mixed(values, sums, planned, batches_counted.largest(values)), values["units"]
    tapes, plies = cuts_of(values, work)
    lines = _resin_lines(values, batch)
    if batch["batches"]:
        lines.append(line("batches", "To mix", batch["batches"], "", _counted(batch["batches"], "batch", "batches"),
                          part="mix", rank=BESIDE, rough=_how_counted(values, planned, batch)))
    if sums["putty"]:
        volume = batch["putty"] / values["putty_density"]
        lines.append(line("putty", "Putty to mix, in all", volume, "m3", told(volume, "mL", units, UP) + " · "
                          + told(batch["putty"], "g", units, UP), rank=ANSWER, part="mix",
                          rough=_counted(batch["putty_batches"], "batch", "batches")
                          + "; rounded up, with tooling, bags and cups"))
    lines.extend(_tape_lines(tapes, plies, units))
    added = sums["putty"] * values["putty_density"] + sums["glass"] + sums["wet_out"] + sums["prime"] + sums["weave"]
    lines.append(line("added", "Added to the hull", added, "kg", told(added, "kg", units),
                      rough="what stays on it: putty, glass and resin in place; nothing wasted counted"))
    count = sum([int(row["copies"]) for row, _, _, _, _ in work])
    if not [kept for kept in work if kept[0]["pour"] == NOW]:
        lines.append(words("next_batch", "Next batch", "Open the joints that go into it and choose so; one tap then "
                           "takes them to Pour together.", rank=SAY))
    lines.append(line("seams", "Seams in all", sums["length"], "m", metres(sums["length"], units), rank=MORE,
                      rough="every copy; " + _counted(count, "seam", "seams")))
    if batch["filler"] > 0:
        lines.append(line("filler", "Filler", batch["filler"], "kg", told(batch["filler"], "g", units, UP), part="buy",
                          rough=bare(values["filler"] * 1000, 1) + " to 100 of epoxy by weight, ±"
                          + bare(DOSE_SPREAD * 100, 1) + "%, from memory; rounded up, "
                          + shown(values["spare"] * 100) + "% spare in it"))
    lines.extend(_consumable_lines(values, batch, sums, work))
    lines.extend([kept[3] for kept in work])
    lines.extend(cut_lines.lines(values, tapes, plies))
    lines.extend(boat_cards.lines(values, work, tapes))
    return lines


def figures(values):
    """The cut lists as strips."""
    tapes, plies = cuts_of(values, seams(values))
    return cut_figures((("Tape", tapes), ("Peel ply", plies)), values["units"])


def leads(values):
    """The joints chosen for the next batch go to Pour; with none chosen all of them, where they make one batch. All of
    them go to the plan of a day."""
    work = seams(values)
    plans = boat_pieces.leads(values, work)
    chosen = [kept for kept in work if kept[0]["pour"] == NOW]
    sums = totals(values, chosen or work)
    putty = seam.placed(sums["putty"], values["tooling"])
    if putty:
        putty += (values["bag"] + values["cup"]) / values["putty_density"]
    liquid = sums["wet_out"] + sums["ply_takes"]
    if liquid:
        liquid = (liquid * (1 + values["spare"]) + values["tray"] * sums["taped"] + values["roller"] + values["cup"])
    if not chosen:
        most = batches_counted.largest(values) * (1 + 1e-9)
        putty = putty if putty * values["putty_density"] <= most else 0.0
        liquid = liquid if liquid <= most else 0.0
        return joint_leads.to_pour(putty, liquid, "all joints") + plans
    return joint_leads.to_pour(putty, liquid, "1 joint" if len(chosen) == 1 else str(len(chosen)) + " joints") + plans


def _resin_lines(values, batch):
    units, system = values["units"], values["system"]
    found = ratio.basis(system)
    names = ratio.part_names(system)
    lines = [line("mixed", "Epoxy to mix, in all", batch["all"], "kg", told(batch["all"], "kg", units, UP), part="mix",
                  rank=MORE, rough="in the putty " + told(batch["epoxy"], "g", units) + ", as liquid "
                  + told(batch["liquid"], "g", units) + ", and " + shown(values["spare"] * 100) + "% spare")]
    if not found.weight_parts:
        return lines + [words("resin", "Resin to buy", ratio.NO_DENSITIES.format("volume", "weight"), part="buy",
                              rank=ANSWER)]
    masses = [share * batch["all"] for share in ratio.shares(found.weight_parts)]
    text = " + ".join([told(mass, "kg", units, UP) for mass in masses])
    lines.insert(0, line("resin", " and ".join([names[0]] + [small(name) for name in names[1:]]), batch["all"], "kg",
                         text, part="buy", rank=ANSWER, rough="by the label's ratio; rounded up, "
                         + shown(values["spare"] * 100) + "% spare in it"))
    counts, held = shopping.packs(masses[0], values["packs"])
    shares = ratio.shares(found.weight_parts)
    texts = []
    for count, size in zip(counts, values["packs"]):
        if count:
            pair = " + ".join([told(size * share / shares[0], "kg", units) for share in shares])
            texts.append(str(count) + " × (" + pair + ")")
    lines.append(line("packs", "Packs", held, "kg", ", ".join(texts), part="buy", rank=BESIDE,
                      rough="pairs in ratio that leave least over: " + told(max(0.0, held - masses[0]), "kg", units)
                      + " of " + small(names[0])))
    return lines


def _tape_lines(tapes, plies, units):
    lines = []
    for label, name, lists in (("Tape", "tape", tapes), ("Peel ply", "ply", plies)):
        for number, (width, areal, rows, lengths, found, _) in enumerate(lists):
            total = sum([piece[5] for piece in rows])
            text = metres(sum(lengths) / 1000, units, UP) + " of " + mm(width, units) + (
                ", " + told(areal, "g/m2", units) if areal else "")
            bought = "no roll to open" if not found.rolls else _counted(
                found.rolls, "roll", "rolls") + ", " + metres(found.from_rolls / 1000, units, UP) + " cut from it"
            lines.append(line("{}_{}".format(name, number + 1), label, total, "m", text, part="buy",
                              rank=MORE if name == "ply" else ANSWER if len(lists) == 1 else BESIDE,
                              rough=_counted(len(rows), "piece", "pieces")
                              + (" with overlaps; " if areal else "; ") + bought + _honest(found, units)))
    return lines


def _how_counted(values, planned, batch):
    """By what the batches are counted, and why none is larger."""
    found = "{} by the plan of the seams".format(planned.batches) if planned.planned else (
        "no plan counts all of them: by the largest mix")
    if planned.planned and planned.batches < batch["batches"]:
        found += ", coats by mass"
    if values["temperature"] is None:
        found += ", at " + told(batches_counted.WARMTH, "degC", values["units"], places=0)
    if planned.surplus > 0.001:
        found += "; {} more than needed, because this scale measures no smaller mix in ratio".format(
            told(planned.surplus, "g", values["units"], UP))
    return found + "; " + (planned.why or batches_counted.why_largest(values))


def _counted(count, one, many):
    return str(count) + " " + (one if count == 1 else many)


def _honest(found, units):
    """Whether the cut is the best there is, or how far from it it may be."""
    if found.proven:
        return ""
    if found.rolls > found.least_rolls:
        return "; not searched to the end: at least {} needed".format(found.least_rolls)
    return "; not searched to the end: at most " + mm((found.from_rolls - found.least_from_rolls) / 1000, units) + (
        " could still be saved")


def _consumable_lines(values, batch, sums, work):
    radii = {}
    for kept in work:
        for radius in kept[4]:
            radii[radius] = True
    found = shopping.consumables(batch, int(values["people"]), len(radii), sums["backed"], sums["corners"],
                                 sums["taped"])
    lines = []
    for key, label, count, unit, how in found:
        if count:
            many = unit if count != 1 else unit[:-1]
            lines.append(line("buy_" + key, label, count, "m" if unit == "m" else "",
                              metres(count, values["units"], UP) if unit == "m" else str(count)
                              + (" " + many if many else ""), part="buy", rank=MORE, rough=how))
    sizes = sorted(radii)
    if sizes:
        lines.append(words("spreaders", "Spreaders to cut", radii_text(sizes, values["units"]),
                           rank=MORE, part="buy", rough="the cove at each station, to the nearest millimetre"))
    return lines

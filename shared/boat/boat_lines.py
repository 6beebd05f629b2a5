"""Boat lines: what is said of all joints, from what was reckoned of them. found: a `boat.BoatResult`"""
from ..catalogue.fillers import DOSE_SPREAD
from ..catalogue.losses import BY_KEY
from ..forms.memo import memo_of
from ..forms.types import Found, Said, Values
from ..mix.label_words import only_by, parts_inside, parts_said, unconfirmed
from ..mix.ratio_doubt import WEIGHT
from ..mix.ratio_doubt import doubt as ratio_doubt
from ..mix.ratio_doubt_lines import in_short
from ..plan.limit_lines import why_said
from ..seam import coves, joint_leads
from ..words.lines import ANSWER, BESIDE, MORE, SAY, Line, line, words
from ..words.messages import along, fact, length, lengths, listed, message, noted, number, quantity, row, typed
from ..words.numbers import DOWN, UP, bare, shown
from ..words.provenance import marked
from . import batches_counted, boat_cards, cut_lines, phase_lines
from .boat_limits import called

METRES = "m"
# what is bought by length or by weight
CALLED = {"tape": "joint-tape", "ply": "joint-ply", "cloth": "sheathing-cloth", "filler": "boat-filler",
          "light_filler": "fairing-light"}
# what else is bought: key: (label, how many of it, how it is counted); METRES are told as a length
BOUGHT = {
    "gloves": ("boat-gloves", "boat-gloves.text", "boat-gloves.rough"),
    "bags": ("boat-bags", "", "boat-bags.rough"),
    "cups": ("boat-cups", "", "boat-mix-each"),
    "sticks": ("boat-sticks", "", "boat-mix-each"),
    "tray": ("boat-tray", "boat-tray.text", "boat-tray.rough"),
    "brushes": ("boat-brushes", "", "boat-brushes.rough"),
    "blanks": ("boat-blanks", "", "boat-blanks.rough"),
    "backing": ("boat-backing", METRES, message("boat-backing.rough",
                                                more=number(shown(BY_KEY["backing"].value * 100)))),
    "ties": ("boat-ties", "", message("boat-ties.rough", each=fact("mm", BY_KEY["tie_spacing"].value),
                                      mark=marked(BY_KEY["tie_spacing"].mark))),
    "abrasive": ("boat-abrasive", "", message("boat-abrasive.rough", tape=fact("m2", BY_KEY["abrasive"].value),
                                              mark=marked(BY_KEY["abrasive"].mark))),
    "cartridges": ("boat-cartridges", "boat-cartridges.text", "boat-cartridges.rough"),
}


def say(found: Found, values: Values) -> list[Line]:
    """What to buy and what it adds, then each joint, then the cut lists."""
    batch, sums, joints = found.mixed, found.sums, joint_lines(found.joints, values)
    lines = _resin_lines(found, values)
    if batch.batches:
        text = message("boat-batches.text", count=batch.batches)
        lines.append(line("batches", "boat-batches", batch.batches, "", text, part="mix", rank=BESIDE,
                          rough=_how_counted(values, found.planned, batch, found.alone)))
    if sums.putty:
        volume = found.putty
        lines.append(line("putty", "boat-putty", volume, "m3",
                          row([quantity(volume, "mL", UP), quantity(batch.putty, "g", UP)], " · "), rank=ANSWER,
                          part="mix", rough=message("boat-putty.rough", count=batch.putty_batches)))
    lines.extend(_tape_lines(found.cuts))
    lines.append(line("added", "joint-added", found.added, "kg", quantity(found.added, "kg"), rough="boat-added.rough"))
    if not found.chosen:
        lines.append(words("next_batch", "boat-pour", "boat-pour.none", rank=SAY))
    lines.append(line("seams", "boat-seams", sums.length, "m", along(sums.length), rank=MORE,
                      rough=message("boat-seams.rough", count=found.copies)))
    if batch.filler > 0:
        lines.append(line("filler", "boat-filler", batch.filler, "kg", quantity(batch.filler, "g", UP), part="buy",
                          rough=message("boat-filler.rough", dose=number(bare(values["filler"] * 1000, 1)),
                                        doubt=number(bare(DOSE_SPREAD * 100, 1)), spare=_spare(values))))
    lines.extend(_consumable_lines(found))
    lines.extend(phase_lines.lines(found, values))
    lines.extend(joints)
    lines.extend(cut_lines.lines(values, found.cuts))
    lines.extend(boat_cards.lines(values, found.joints, [one.label for one in joints], dict(found.cuts)["tape"]))
    return lines


def pours(found: Found) -> list:
    """Leads to Pour: of the joints that are chosen, or of all of them."""
    count = len(found.chosen)
    putty, liquid = found.next
    return joint_leads.to_pour(putty, liquid, message("boat-chosen", count=count) if count else "boat-chosen.all")


def joint_lines(joints: list, values: Values) -> list[Line]:
    """A line of each joint; on a phone one joint changes at a time."""
    before, found = memo_of(values).under("joint lines"), []  # by place
    for one in joints:
        place = one.row["place"]
        said = before.get(place)
        if not said or said[0] is not one:
            said = before[place] = one, joint_line(one)
        found.append(said[1])
    return found


def joint_line(one: Found) -> Line:
    """One row of the boat as a line: its coves, putty in place and tape, all copies."""
    joint, made = one.row, one.seam
    copies = int(joint["copies"])
    texts, notes = [], []  # type: list, list
    radii = [each.radius for each in one.coves if each.radius]
    if joint["pour"] == "now":
        texts.append("boat-joint.now")
    if radii:
        texts.append(message("boat-joint.radii", radii=lengths(radii)))
    elif one.coves:
        texts.append("boat-joint.flat")
    if made.putty:
        texts.append(message("boat-joint.putty", putty=quantity(made.putty * copies, "mL")))
    laid = sum([sum(layer.pieces) for face in made.faces for layer in face.layers]) * copies
    if laid:
        texts.append(message("boat-joint.tape", tape=along(laid, UP)))
    if copies > 1:
        notes.append("boat-joint.copies")
    if [1 for each in one.coves if each.why == coves.TAPE]:
        notes.append("boat-joint.capped")
    if [1 for each in one.coves if each.why == coves.WIDTH]:
        notes.append("boat-joint.width")
    flank = coves.flank(one.spec, one.coves)
    if flank is not None and flank < one.spec.flank * (1 - 1e-9):
        notes.append(message("boat-joint.flank", flank=length(flank, DOWN)))
    name = called(joint)
    return line("joint_" + str(joint["place"]), row([copies, name], " × ") if copies > 1 else name,
                made.putty * copies, "m3", listed(texts, "plain"), part="joint", rank=MORE,
                rough=noted(notes))


def _spare(values: Values) -> Said:
    return quantity(values["spare"], "%", places=0)


def _resin_lines(found: Found, values: Values) -> list[Line]:
    batch, spare, system = found.mixed, _spare(values), values["system"]
    names = parts_said(system)
    small_names = parts_inside(system)
    lines = [line("mixed", "boat-mixed", batch.all, "kg", quantity(batch.all, "kg", UP), part="mix", rank=MORE,
                  rough=phase_lines.mixed_said(found) if found.surfaces else message(
                      "boat-mixed.rough", putty=quantity(batch.epoxy, "g"), liquid=quantity(batch.liquid, "g"),
                      spare=spare))]
    if not found.parts:
        return lines + [words("resin", "boat-resin", only_by("volume"), part="buy",
                              rank=ANSWER)] + unconfirmed(system, "ratio")
    text = row([quantity(mass, "kg", UP) for mass in found.parts], " + ")
    doubt = in_short(ratio_doubt(system, WEIGHT))
    label = names[0]  # type: Said
    for name in small_names[1:]:
        label = message("boat-resin.and", parts=label, part=name)
    lines.insert(0, line("resin", label, batch.all, "kg", text, part="buy", rank=ANSWER, rough=message(
        "boat-resin.rough-doubt", doubt=doubt, spare=spare) if doubt else message("boat-resin.rough", spare=spare)))
    if found.shelf:
        lines.append(_shelf_line(found.shelf))
    lines.append(line("packs", "boat-packs", found.packs.held, "kg",
                      _packs_said(found.packs) if found.packs.rows else "boat-packs.none", part="buy", rank=BESIDE,
                      rough=message("boat-packs.rough", over=quantity(found.packs.over, "kg"),
                                    part=small_names[0]) if found.packs.rows else ""))
    return lines + _cost_lines(found, small_names[0]) + unconfirmed(system, "ratio")


def _shelf_line(shelf: Found) -> Line:
    """What is there of each part, and what it mixes."""
    mixes = quantity(shelf.mixes, "kg", DOWN)
    how = message("boat-shelf.rough-day", mixes=mixes, day=typed(shelf.last)) if shelf.last else message(
        "boat-shelf.rough", mixes=mixes)
    text = row([quantity(mass, "kg", DOWN) for mass in shelf.left], " + ")
    return line("shelf", "boat-shelf", shelf.mixes, "kg", text, part="buy", rank=BESIDE, rough=how)


def _packs_said(packs: Found) -> Said:
    return listed([message("boat-packs.each", count=count, parts=row([quantity(mass, "kg") for mass in masses], " + "))
                   for count, masses in packs.rows], "plain")


def _money(value: float) -> Said:
    return number(shown(value, 2))


def _cost_lines(found: Found, part: Said) -> list[Line]:
    """What these packs cost, what of that ends where, and the packs that cost least."""
    packs, cheap = found.packs, found.cheapest
    if not cheap or not packs.rows:
        return []
    used = packs.cost * (1 - packs.over / packs.held)
    on_it = used * min(1.0, found.kept / found.mixed.all)
    return [line("cost", "boat-cost", packs.cost, "", _money(packs.cost), part="buy", rank=BESIDE, rough=message(
                "boat-cost.rough", boat=_money(on_it), waste=_money(used - on_it), left=_money(packs.cost - used))),
            line("cheapest", "boat-cheapest", cheap.cost, "", _packs_said(cheap), part="buy", rank=BESIDE,
                 rough=message("boat-cheapest.rough", cost=_money(cheap.cost), over=quantity(cheap.over, "kg"),
                               part=part))]


def _tape_lines(cuts: list) -> list[Line]:
    lines = []
    for name, lists in cuts:
        for place, (width, areal, rows, pieces, found, _) in enumerate(lists):
            total, long, wide = sum([piece[5] for piece in rows]), along(sum(pieces) / 1000, UP), length(width)
            text = message("joint-ply.text", length=long, width=wide) if name == "ply" else message(
                "joint-tape.text", pieces=long, width=wide, weight=quantity(areal, "g/m2"))
            rolls = message("boat-from-rolls", count=found.rolls, length=along(found.from_rolls / 1000, UP))
            rough = [message("boat-ply.pieces", count=len(rows)), rolls if found.rolls else "boat-from-rolls.none"]
            lines.append(line("{}_{}".format(name, place + 1), CALLED[name], total, "m", text, part="buy",
                              rank=MORE if name != "tape" else ANSWER if len(lists) == 1 else BESIDE,
                              rough=noted(rough + _not_proven(found))))
    return lines


def _how_counted(values: Values, planned: Found, batch: Found, alone: Found) -> Said:
    """By what the batches are counted, and why none is larger. alone: `hull.Mixed` of the seams"""
    by = [message("boat-counted.plan", count=planned.batches) if planned.planned else "boat-counted.mass"]
    if planned.planned and planned.batches < alone.batches:
        by.append("boat-counted.coats")
    if values["temperature"] is None:
        by.append(message("boat-counted.warmth", warmth=quantity(batches_counted.WARMTH, "degC", places=0)))
    found = [listed(by, "plain")]
    if planned.surplus > 0.001:
        found.append(message("boat-counted.surplus", surplus=quantity(planned.surplus, "g", UP)))
    if batch.batches > alone.batches:
        found.append(message("boat-counted.surfaces", count=batch.batches - alone.batches))
    found.append(why_said(planned.why or batches_counted.why_largest(values)))
    return noted(found)


def _not_proven(found: Found) -> list:
    """How far the cut may be from the best there is; nothing where it is the best."""
    if found.proven:
        return []
    if found.rolls > found.least_rolls:
        return [message("boat-from-rolls.least", count=found.least_rolls)]
    return [message("boat-from-rolls.saved", length=length((found.from_rolls - found.least_from_rolls) / 1000))]


def _consumable_lines(found: Found) -> list[Line]:
    lines = []
    for key, count in found.bought:
        if count:
            label, text, how = BOUGHT[key]
            if text == METRES:
                lines.append(line("buy_" + key, label, count, "m", along(count, UP), part="buy", rank=MORE, rough=how))
            else:
                lines.append(line("buy_" + key, label, count, "", message(text, count=count) if text else count,
                                  part="buy", rank=MORE, rough=how))
    if found.radii:
        lines.append(words("spreaders", "boat-spreaders", cut_lines.radii_said(found.radii),
                           rank=MORE, part="buy", rough="boat-spreaders.rough"))
    return lines

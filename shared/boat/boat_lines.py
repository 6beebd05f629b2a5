"""Boat lines: what is said of all joints, from what was reckoned of them. found: a `boat.BoatResult`"""
from ..catalogue.fillers import DOSE_SPREAD
from ..catalogue.losses import BY_KEY
from ..forms.memo import memo_of
from ..forms.types import Found, Said, Values
from ..mix.label_words import NO_DENSITIES, part_names, unconfirmed
from ..mix.ratio_doubt import WEIGHT
from ..mix.ratio_doubt import doubt as ratio_doubt
from ..mix.ratio_doubt_lines import in_short
from ..plan.limit_lines import why_said
from ..seam import coves, joint_leads
from ..words.lengths import metres, mm, ranged
from ..words.lengths import radii as radii_text
from ..words.lines import ANSWER, BESIDE, MORE, SAY, Line, line, words
from ..words.messages import row
from ..words.numbers import UP, bare, fraction, shown, small
from ..words.units import braces, told
from . import batches_counted, boat_cards, cut_lines

TIES_EVERY = "one each " + braces("mm", BY_KEY["tie_spacing"].value) + " of seam (" + BY_KEY["tie_spacing"].mark + ")"
# what else is bought: key: (label, unit, how it is counted)
BOUGHT = {
    "gloves": ("Gloves", "pairs", "people × (batches + 1); twice that if two pairs are worn"),
    "bags": ("Bags for putty", "", "one for each batch of putty"),
    "cups": ("Cups", "", "one for each mix"),
    "sticks": ("Mixing sticks", "", "one for each mix"),
    "tray": ("Tray film", "sheets", "one for each batch of wet-out resin"),
    "brushes": ("Brushes or rollers", "", "one for each batch of liquid"),
    "blanks": ("Spreader blanks", "", "one for each cove radius, to the millimetre"),
    "backing": ("Backing tape", "m", "behind every gap, and " + fraction(BY_KEY["backing"].value) + " more"),
    "ties": ("Ties", "", TIES_EVERY),
    "abrasive": ("Abrasive sheets", "", "one for {} of tape ({})".format(
        braces("m2", BY_KEY["abrasive"].value), BY_KEY["abrasive"].mark)),
    "cartridges": ("Respirator filters", "sets", "one for each person; vapour and dust are different filters, see "
                   "Safety"),
}


def say(found: Found, values: Values) -> list[Line]:
    """What to buy and what it adds, then each joint, then the cut lists."""
    units, batch, sums, joints = values["units"], found.mixed, found.sums, joint_lines(found.joints, values)
    lines = _resin_lines(found, values)
    if batch.batches:
        lines.append(line("batches", "To mix", batch.batches, "", _counted(batch.batches, "batch", "batches"),
                          part="mix", rank=BESIDE, rough=_how_counted(values, found.planned, batch)))
    if sums.putty:
        volume = found.putty
        lines.append(line("putty", "Putty to mix, in all", volume, "m3", told(volume, "mL", units, UP) + " · "
                          + told(batch.putty, "g", units, UP), rank=ANSWER, part="mix",
                          rough=_counted(batch.putty_batches, "batch", "batches")
                          + "; rounded up, with tooling, bags and cups"))
    lines.extend(_tape_lines(found.tapes, found.plies, units))
    lines.append(line("added", "Added to the hull", found.added, "kg", told(found.added, "kg", units),
                      rough="what stays on it: putty, glass and resin in place; nothing wasted counted"))
    if not found.chosen:
        lines.append(words("next_batch", "Next batch", "Open the joints that go into it and choose so; one tap then "
                           "takes them to Pour together.", rank=SAY))
    lines.append(line("seams", "Seams in all", sums.length, "m", metres(sums.length, units), rank=MORE,
                      rough="every copy; " + _counted(found.copies, "seam", "seams")))
    if batch.filler > 0:
        lines.append(line("filler", "Filler", batch.filler, "kg", told(batch.filler, "g", units, UP), part="buy",
                          rough=bare(values["filler"] * 1000, 1) + " to 100 of epoxy by weight, ±"
                          + bare(DOSE_SPREAD * 100, 1) + "%, from memory; rounded up, "
                          + shown(values["spare"] * 100) + "% spare in it"))
    lines.extend(_consumable_lines(found, units))
    lines.extend(joints)
    lines.extend(cut_lines.lines(values, found.tapes, found.plies))
    lines.extend(boat_cards.lines(values, found.joints, [one.label for one in joints], found.tapes))
    return lines


def pours(found: Found) -> list:
    """Leads to Pour: of the joints that are chosen, or of all of them."""
    count = len(found.chosen)
    putty, liquid = found.next
    return joint_leads.to_pour(putty, liquid, "all joints" if not count else "1 joint" if count == 1
                               else str(count) + " joints")


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
    row, made, units = one.row, one.seam, one.row["units"]
    copies = int(row["copies"])
    texts = []
    radii = [each.radius for each in one.coves if each.radius]
    if radii:
        texts.append("R " + ranged(radii, units))
    elif one.coves:
        texts.append("flat tape")
    if made.putty:
        texts.append(told(made.putty * copies, "mL", units) + " putty in place")
    laid = sum([sum(layer.pieces) for face in made.faces for layer in face.layers]) * copies
    if laid:
        texts.append(metres(laid, units, UP) + " tape")
    notes = ["all copies"] if copies > 1 else []
    if row["pour"] == "now":
        texts.insert(0, "in the next batch")
    if [1 for each in one.coves if each.why == coves.TAPE]:
        notes.append("capped by the tape")
    return line("joint_" + str(row["place"]), (str(copies) + " × " if copies > 1 else "")
                + (row["name"] or "Joint " + str(row["place"] + 1)), made.putty * copies, "m3", ", ".join(texts),
                part="joint", rank=MORE, rough="; ".join(notes))


def _resin_lines(found: Found, values: Values) -> list[Line]:
    units, batch, names = values["units"], found.mixed, part_names(values["system"])
    lines = [line("mixed", "Epoxy to mix, in all", batch.all, "kg", told(batch.all, "kg", units, UP), part="mix",
                  rank=MORE, rough="in the putty " + told(batch.epoxy, "g", units) + ", as liquid "
                  + told(batch.liquid, "g", units) + ", and " + shown(values["spare"] * 100) + "% spare")]
    if not found.parts:
        return lines + [words("resin", "Resin to buy", NO_DENSITIES.format("volume", "weight"), part="buy",
                              rank=ANSWER)] + unconfirmed(values["system"], "ratio")
    text = " + ".join([told(mass, "kg", units, UP) for mass in found.parts])
    doubt = in_short(ratio_doubt(values["system"], WEIGHT))
    lines.insert(0, line("resin", " and ".join([names[0]] + [small(name) for name in names[1:]]), batch.all, "kg",
                         text, part="buy", rank=ANSWER, rough="by the label's ratio" + (", " + doubt if doubt else "")
                         + "; rounded up, " + shown(values["spare"] * 100) + "% spare in it"))
    texts = [str(count) + " × (" + " + ".join([told(mass, "kg", units) for mass in masses]) + ")"
             for count, masses in found.packs.rows]
    lines.append(line("packs", "Packs", found.packs.held, "kg", ", ".join(texts), part="buy", rank=BESIDE,
                      rough="pairs in ratio that leave least over: " + told(found.packs.over, "kg", units)
                      + " of " + small(names[0])))
    return lines + unconfirmed(values["system"], "ratio")


def _tape_lines(tapes: list, plies: list, units: str) -> list[Line]:
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


def _how_counted(values: Values, planned: Found, batch: Found) -> Said:
    """By what the batches are counted, and why none is larger."""
    found = "{} by the plan of the seams".format(planned.batches) if planned.planned else (
        "no plan counts all of them: by the largest mix")
    if planned.planned and planned.batches < batch.batches:
        found += ", coats by mass"
    if values["temperature"] is None:
        found += ", at " + told(batches_counted.WARMTH, "degC", values["units"], places=0)
    if planned.surplus > 0.001:
        found += "; {} more than needed, because this scale measures no smaller mix in ratio".format(
            told(planned.surplus, "g", values["units"], UP))
    return row([found, why_said(planned.why or batches_counted.why_largest(values))], "; ")


def _counted(count: int, one: str, many: str) -> str:
    return str(count) + " " + (one if count == 1 else many)


def _honest(found: Found, units: str) -> str:
    """Whether the cut is the best there is, or how far from it it may be."""
    if found.proven:
        return ""
    if found.rolls > found.least_rolls:
        return "; not searched to the end: at least {} needed".format(found.least_rolls)
    return "; not searched to the end: at most " + mm((found.from_rolls - found.least_from_rolls) / 1000, units) + (
        " could still be saved")


def _consumable_lines(found: Found, units: str) -> list[Line]:
    lines = []
    for key, count in found.bought:
        if count:
            label, unit, how = BOUGHT[key]
            many = unit if count != 1 else unit[:-1]
            lines.append(line("buy_" + key, label, count, "m" if unit == "m" else "",
                              metres(count, units, UP) if unit == "m" else str(count)
                              + (" " + many if many else ""), part="buy", rank=MORE, rough=how))
    if found.radii:
        lines.append(words("spreaders", "Spreaders to cut", radii_text(found.radii, units),
                           rank=MORE, part="buy", rough="the cove at each station, to the nearest millimetre"))
    return lines

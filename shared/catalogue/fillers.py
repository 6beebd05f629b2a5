"""Fillers and stiffnesses, all from memory: grams of filler for 100 g of mixed epoxy, give or take 30 %.

A builder's own weighed batches go before these (see calibration.py), a maker's sheet before both.
"""
from .marks import JUDGED, MEMORY, PUBLISHED

DOSE_SPREAD = 0.30  # of any dose in the table: how far we trust them
AIR, AIR_RANGE = 0.05, (0.02, 0.10)  # share of a putty's volume that stirring leaves in it; least and most, from memory
PACKING = 0.62  # share by volume at which hollow spheres touch: no liquid is left between them
SPHERE_PACKING = (0.64, 0.62, 0.66)  # of spheres stirred in: value, least, most
SURE = 2  # the remembered yield stresses may be half: so many times what statics asks for is wanted
BATCH_DEVIATION = 0.10  # how differently the same putty is tapped from batch to batch
BATCH_WORTH = 4  # how many batches that judgement is worth against the scatter seen
STANDS_OUT = 3.0  # deviations from the middle of the batches
APART = 1.35  # one batch over the other
FAR = (0.5, 2)  # one batch over the table

# key, name by what it does on a stick, the trade's word (messages), yield stress [Pa] (from memory, half to double)
STIFFNESSES = (
    ("runs", "filler-stiffness.runs", "stiffness-trade.runs", 2),
    ("slumps", "filler-stiffness.slumps", "stiffness-trade.slumps", 20),
    ("clings", "filler-stiffness.clings", "stiffness-trade.clings", 80),
    ("stands", "filler-stiffness.stands", "stiffness-trade.stands", 250),
    ("dry-edged", "filler-stiffness.dry-edged", "stiffness-trade.dry-edged", 600),
)

# id, label, mark, typed text of the record's fields; doses run, slump, cling, stand, dry-edged
FILLERS = (
    ("wood-flour", "row-filler.wood-flour", MEMORY, (
        ("name", "Wood flour"), ("doses", "8 : 15 : 25 : 38 : 50"), ("density", "1.3 g/mL"), ("loose", "0.22 g/mL"),
        ("grain", "other"), ("carries", "yes"), ("alone", "yes"))),
    ("silica", "row-filler.silica", MEMORY, (
        ("name", "Fumed silica"), ("doses", "1.5 : 3 : 5 : 7.5 : 10"), ("density", "2.2 g/mL"), ("loose", "0.05 g/mL"),
        ("grain", "other"), ("carries", "yes"), ("alone", "yes"))),
    ("cotton", "row-filler.cotton", MEMORY, (
        ("name", "Cotton fibre"), ("doses", "3 : 6 : 10 : 15 : 20"), ("density", "1.5 g/mL"), ("loose", "0.13 g/mL"),
        ("grain", "other"), ("carries", "yes"), ("alone", "yes"))),
    ("milled-glass", "row-filler.milled-glass", MEMORY, (
        ("name", "Milled glass"), ("doses", "20 : 40 : 60 : 85 : 110"), ("density", "2.55 g/mL"), ("loose", "0.7 g/mL"),
        ("grain", "other"), ("carries", "yes"), ("alone", "no"))),
    ("glass-spheres", "row-filler.glass-spheres", MEMORY, (
        ("name", "Glass microspheres"), ("doses", "4 : 9 : 16 : 23 : 28"), ("density", "0.20 g/mL"),
        ("loose", "0.12 g/mL"), ("grain", "sphere"), ("carries", "no"), ("alone", "yes"))),
    ("phenolic-balloons", "row-filler.phenolic-balloons", MEMORY, (
        ("name", "Phenolic microballoons"), ("doses", "4 : 9 : 16 : 24 : 30"), ("density", "0.23 g/mL"),
        ("loose", "0.10 g/mL"), ("grain", "sphere"), ("carries", "no"), ("alone", "yes"))),
    ("talc", "row-filler.talc", MEMORY, (
        ("name", "Talc"), ("doses", "20 : 45 : 75 : 110 : 150"), ("density", "2.75 g/mL"), ("loose", "0.4 g/mL"),
        ("grain", "other"), ("carries", "no"), ("alone", "yes"))),
)
TABLES = (
    ("fillers", FILLERS, (1,), ()),
    ("facts-stiffness", tuple([(told, stress, "Pa", MEMORY) for _, told, _, stress in STIFFNESSES]),
     (0,), (1, 2)),
    ("facts-putty", (("facts-putty.dose-spread", DOSE_SPREAD, "%", JUDGED),
               ("facts-putty.air", (AIR,) + AIR_RANGE, "%", MEMORY),
               ("facts-putty.packing", PACKING, "%", PUBLISHED, "packing"),
               ("facts-putty.sphere-packing", SPHERE_PACKING, "%", PUBLISHED, "packing"),
               ("facts-putty.sure", SURE, "times", JUDGED)), (0,), (1, 2)),
    ("facts-own-batches", (
        ("facts-own-batches.batch-deviation", BATCH_DEVIATION, "%", JUDGED),
        ("facts-own-batches.batch-worth", BATCH_WORTH, "", JUDGED),
        ("facts-own-batches.stands-out", STANDS_OUT, "times", JUDGED),
        ("facts-own-batches.apart", APART, "times", JUDGED),
        ("facts-own-batches.far", FAR, "times", JUDGED)), (0,), (1, 2)),
)

"""Fillers and stiffnesses, all from memory: grams of filler for 100 g of mixed epoxy, give or take 30 %.

A builder's own weighed batches go before these (see calibration.py), a maker's sheet before both.
"""
from .marks import MEMORY

DOSE_SPREAD = 0.30  # of any dose in the table, from memory
AIR = 0.05  # share of a putty's volume that stirring leaves in it (0.02 to 0.10), from memory
PACKING = 0.62  # share by volume at which hollow spheres touch: no liquid is left between them, from memory

# key, name by what it does on a stick, the trade's word, yield stress [Pa] (from memory, half to double)
STIFFNESSES = (
    ("runs", "Runs off the stick", "syrup", 2),
    ("slumps", "Slumps in lumps", "ketchup", 20),
    ("clings", "Clings, tips bend", "mayonnaise", 80),
    ("stands", "Stands, for coves", "peanut butter", 250),
    ("dry-edged", "Stands, dry-edged", "stiff dough", 600),
)

# id, label, mark, typed text of the record's fields; doses run, slump, cling, stand, dry-edged
FILLERS = (
    ("wood-flour", "Wood flour", MEMORY, (
        ("name", "Wood flour"), ("doses", "8 : 15 : 25 : 38 : 50"), ("density", "1.3 g/mL"), ("loose", "0.22 g/mL"),
        ("grain", "other"), ("carries", "yes"), ("alone", "yes"))),
    ("silica", "Fumed silica", MEMORY, (
        ("name", "Fumed silica"), ("doses", "1.5 : 3 : 5 : 7.5 : 10"), ("density", "2.2 g/mL"), ("loose", "0.05 g/mL"),
        ("grain", "other"), ("carries", "yes"), ("alone", "yes"))),
    ("cotton", "Cotton fibre", MEMORY, (
        ("name", "Cotton fibre"), ("doses", "3 : 6 : 10 : 15 : 20"), ("density", "1.5 g/mL"), ("loose", "0.13 g/mL"),
        ("grain", "other"), ("carries", "yes"), ("alone", "yes"))),
    ("milled-glass", "Milled glass", MEMORY, (
        ("name", "Milled glass"), ("doses", "20 : 40 : 60 : 85 : 110"), ("density", "2.55 g/mL"), ("loose", "0.7 g/mL"),
        ("grain", "other"), ("carries", "yes"), ("alone", "no"))),
    ("glass-spheres", "Glass microspheres, hollow", MEMORY, (
        ("name", "Glass microspheres"), ("doses", "4 : 9 : 16 : 23 : 28"), ("density", "0.20 g/mL"),
        ("loose", "0.12 g/mL"), ("grain", "sphere"), ("carries", "no"), ("alone", "yes"))),
    ("phenolic-balloons", "Phenolic microballoons", MEMORY, (
        ("name", "Phenolic microballoons"), ("doses", "4 : 9 : 16 : 24 : 30"), ("density", "0.23 g/mL"),
        ("loose", "0.10 g/mL"), ("grain", "sphere"), ("carries", "no"), ("alone", "yes"))),
    ("talc", "Talc", MEMORY, (
        ("name", "Talc"), ("doses", "20 : 45 : 75 : 110 : 150"), ("density", "2.75 g/mL"), ("loose", "0.4 g/mL"),
        ("grain", "other"), ("carries", "no"), ("alone", "yes"))),
)
TABLES = (
    ("fillers", FILLERS, (1,), ()),
    ("Stiffness of a putty, yield stress", tuple([(told, stress, "Pa", MEMORY) for _, told, _, stress in STIFFNESSES]),
     (0,), (1, 2)),
    ("Putty", (("Any dose in the table, give or take", DOSE_SPREAD, "%", MEMORY),
               ("Air that stirring leaves in it", AIR, "%", MEMORY),
               ("Hollow spheres touch at, by volume", PACKING, "%", MEMORY)), (0,), (1, 2)),
)

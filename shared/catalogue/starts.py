"""What a form starts with until somebody types their own figure. SI.

The sizes of a panel, a tape and a container stand where they are known: `glass` and `pots`.
"""
from .marks import COMMON, JUDGED

BATCH = 0.240  # kg
SCOOP = 15e-6  # m3
FIRST_PARTS = (2, 3)  # of the filler: so many of so many
SEAM, BOAT_SEAM = 2.4, 1.0  # m
GLUED_LENGTH, GLUED_WIDTH = 2.0, 0.060  # m
RADII = (0.010, 0.015, 0.020)  # m
PACKS = (1.0, 5.0)  # kg
PAUSE = 300.0  # s
OPENING = 0.5  # m2
MIXING_FACTOR = 5
CLEARED = 0.99
AIR = 293.15  # K

# title, rows: what, value, unit, mark
TABLES = (
    ("facts-filler-parts", (
        ("facts-filler-parts.first-parts", FIRST_PARTS[0] / FIRST_PARTS[1], "%", COMMON),), (0,), (1, 2)),
    ("facts-start", (
        ("facts-start.batch", BATCH, "kg", JUDGED),
        ("facts-start.scoop", SCOOP, "millilitres", JUDGED),
        ("facts-start.seam", SEAM, "m", JUDGED),
        ("facts-start.boat-seam", BOAT_SEAM, "m", JUDGED),
        ("facts-start.glued-length", GLUED_LENGTH, "m", JUDGED),
        ("facts-start.glued-width", GLUED_WIDTH, "m", JUDGED),
        ("facts-start.radius-small", RADII[0], "m", JUDGED),
        ("facts-start.radius-middling", RADII[1], "m", JUDGED),
        ("facts-start.radius-large", RADII[2], "m", JUDGED),
        ("facts-start.packs", PACKS, "kg", JUDGED),
        ("facts-start.pause", PAUSE, "s", JUDGED),
        ("facts-start.opening", OPENING, "m2", JUDGED),
        ("facts-start.mixing-factor", MIXING_FACTOR, "", JUDGED),
        ("facts-start.cleared", CLEARED, "%", JUDGED),
        ("facts-start.air", AIR, "K", JUDGED)), (0,), (1, 2)),
)

"""What a form starts with until somebody types their own figure. SI.

The sizes of a panel, a tape and a container stand where they are known: `glass` and `pots`.
"""
from .marks import COMMON, JUDGED

BATCH = 0.240  # kg
SCOOP = 15e-6  # m3
FIRST_PARTS = (2, 3)  # of the filler: so many of so many
SEAM, BOAT_SEAM = 2.4, 1.0  # m
RADII = (0.010, 0.015, 0.020)  # m
PACKS = (1.0, 5.0)  # kg
PAUSE = 300.0  # s
OPENING = 0.5  # m2
MIXING_FACTOR = 5
CLEARED = 0.99
AIR = 293.15  # K

# title, rows: what, value, unit, mark
TABLES = (
    ("Filler, how it goes in", (
        ("Share that is stirred in first", FIRST_PARTS[0] / FIRST_PARTS[1], "%", COMMON),), (0,), (1, 2)),
    ("Where a form starts", (
        ("Batch", BATCH, "kg", JUDGED),
        ("Level scoop", SCOOP, "m3", JUDGED),
        ("Seam length", SEAM, "m", JUDGED),
        ("Seam length in a boat's list", BOAT_SEAM, "m", JUDGED),
        ("Radius of a small spreader", RADII[0], "m", JUDGED),
        ("Radius of a middling spreader", RADII[1], "m", JUDGED),
        ("Radius of a large spreader", RADII[2], "m", JUDGED),
        ("Packs of resin", PACKS, "kg", JUDGED),
        ("Pause between two batches", PAUSE, "s", JUDGED),
        ("Opening for the other way of the air", OPENING, "m2", JUDGED),
        ("Mixing factor of the room", MIXING_FACTOR, "", JUDGED),
        ("Share of the air to clear", CLEARED, "%", JUDGED),
        ("Air temperature of the room", AIR, "K", JUDGED)), (0,), (1, 2)),
)

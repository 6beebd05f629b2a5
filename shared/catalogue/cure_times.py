"""How long a laid seam cures before the next step may follow, by the hardener's speed. From memory; labels go first.

Hours at 20 to 25 degC. A window that opens is counted as at 25 degC, the late reading; one that closes as at 20, the
early one.
"""
from .marks import COMMON, JUDGED, MEMORY, PUBLISHED

OPENS_AT, CLOSES_AT = 298.15, 293.15  # K
COUNTED_AT = (("opens", OPENS_AT, JUDGED), ("closes", CLOSES_AT, JUDGED))
ENERGY = (55000.0, 45000.0, 65000.0, PUBLISHED, "amine-cure")  # J/mol: value, least, most
FULL = 168  # h
POINTS_GAP = (12 * 3600.0, JUDGED)  # s: between two typed temperatures, more is a gap

# name, label, (fast, medium, slow) [h], whether it closes a window, what to look for, mark
STAGES = (
    ("recoat_opens", "Recoat without sanding, from", (2, 3.5, 5.5), False, "it no longer moves, a glove still sticks",
     MEMORY),
    ("recoat_closes", "Recoat without sanding, until", (8, 14, 22), True, "while a thumbnail still dents it; later: "
     "wash, sand, coat", MEMORY),
    ("tack_free", "No longer tacky", (4, 7, 11), False, "a glove no longer sticks", MEMORY),
    ("peel", "Peel ply off", (5, 9, 14), False, "hard enough that the tape stays down; or leave it on until sanding",
     MEMORY),
    ("sand", "Sand", (14, 24, 36), False, "only when dust comes off, not gum; wash the blush off with water first",
     MEMORY),
    ("turn", "Turn the hull", (24, 24, 48), False, "the witness puck is hard; held at bulkheads, not at a fresh seam",
     MEMORY),
    ("light", "Load it lightly", (24, 24, 48), False, "the witness puck is hard", MEMORY),
    ("full", "Full strength", (FULL, FULL, FULL), False, "5 to {} days are usual; the longer counts".format(FULL // 24),
     COMMON),
)
# the hours at which a day is coldest and warmest [s after midnight], mark
COLDEST, WARMEST, DAY_MARK = 5 * 3600.0, 15 * 3600.0, COMMON
DAY = (("coldest", COLDEST, DAY_MARK), ("warmest", WARMEST, DAY_MARK))

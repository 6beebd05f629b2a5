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
    ("recoat_opens", "facts-stages.recoat-from", (2, 3.5, 5.5), False, "facts-stages.recoat-from-look", MEMORY),
    ("recoat_closes", "facts-stages.recoat-until", (8, 14, 22), True, "facts-stages.recoat-until-look", MEMORY),
    ("tack_free", "facts-stages.tack-free", (4, 7, 11), False, "facts-stages.tack-free-look", MEMORY),
    ("peel", "facts-stages.peel", (5, 9, 14), False, "facts-stages.peel-look", MEMORY),
    ("sand", "facts-stages.sand", (14, 24, 36), False, "facts-stages.sand-look", MEMORY),
    ("turn", "facts-stages.turn", (24, 24, 48), False, "facts-stages.turn-look", MEMORY),
    ("light", "facts-stages.light", (24, 24, 48), False, "facts-stages.light-look", MEMORY),
    ("full", "facts-stages.full", (FULL, FULL, FULL), False, "facts-stages.full-look", COMMON),
)
# the hours at which a day is coldest and warmest [s after midnight], mark
COLDEST, WARMEST, DAY_MARK = 5 * 3600.0, 15 * 3600.0, COMMON
DAY = (("coldest", COLDEST, DAY_MARK), ("warmest", WARMEST, DAY_MARK))

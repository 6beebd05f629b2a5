"""Sunlight on a mix: how much of it there is, how much a surface takes up, what covers it."""
from .marks import COMMON, JUDGED, PUBLISHED

BEAM = 900.0  # W/m2, square to the sun's rays under a clear sky
UPRIGHT = 0.45  # what an upright face takes of the sun on the level, at its most (tested for every height of the sun)
UNEVEN = 850.0  # W/m2 taken up, at which a deep pot ages as if it were twice as much: the sun warms its skin first
TRAY_UP_TO = 100.0  # W/m2 taken up: above it a tray is no help any more

# value, label, sun on the level [W/m2], least, most, mark, source
SUN = (
    ("shade", "sun-level.shade", 0.0, 0.0, 100.0, JUDGED, ""),
    ("open", "sun-level.open", 190.0, 100.0, 200.0, JUDGED, ""),
    ("some", "sun-level.some", 580.0, 300.0, 600.0, JUDGED, ""),
    # clear sky, sun 20 degrees from overhead: a midsummer noon at 43 degrees; 60 degrees and overhead behind it
    ("full", "sun-level.full", 970.0, 488.0, 1035.0, PUBLISHED, "haurwitz"),
)
# value, label, share of the sun that is taken up [-], least, most, mark, source
LOOKS = (
    ("unknown", "sun-look.unknown", 0.6, 0.3, 0.95, JUDGED, ""),
    ("white", "sun-look.white", 0.30, 0.2, 0.45, PUBLISHED, "lbnl"),
    ("bare", "sun-look.bare", 0.40, 0.31, 0.57, PUBLISHED, "wood-sun"),
    ("wet", "sun-look.wet", 0.55, 0.4, 0.7, JUDGED, ""),
    ("putty", "sun-look.putty", 0.6, 0.5, 0.7, JUDGED, ""),
    ("dark", "sun-look.dark", 0.75, 0.65, 0.85, JUDGED, ""),
    ("black", "sun-look.black", 0.95, 0.9, 0.97, PUBLISHED, "e1980"),
)
# value, label, share of the sun that passes [-], heat given to the air against uncovered [-], mark, source
COVER = (
    ("open", "sun-covered.open", 1.0, 1.0, COMMON, ""),
    ("glass", "sun-covered.glass", 0.84, 0.5, PUBLISHED, "clear-glass"),
)

TABLES = (
    ("facts-sun", SUN, (1,), (2, 3, 4)),
    ("facts-looks", LOOKS, (1,), (2, 3, 4)),
    ("facts-cover", COVER, (1,), (2, 3)),
    ("facts-sun-on-pot", (
        ("facts-sun-on-pot.beam", BEAM, "", PUBLISHED, "astm-g173"),
        ("facts-sun-on-pot.upright", UPRIGHT, "times", JUDGED),
        ("facts-sun-on-pot.uneven", UNEVEN, "", JUDGED),
        ("facts-sun-on-pot.tray-up-to", TRAY_UP_TO, "", JUDGED)), (0,), (1, 2)),
)

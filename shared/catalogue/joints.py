"""Limits of a joint's angle, and of the tape that is cut for it."""
from .marks import COMMON, JUDGED

NARROWEST = 20.0  # degrees: below it no hand, spreader or tape gets in
FLATTEST = 30.0  # degrees that a bulkhead leans, at the least
FLAT_FROM = 160.0  # degrees
THIN_COVER = 0.75  # of the panel's thickness
MOST_TAPES = 100  # pieces of one layer that are told one by one; 200 m of 2.5 m need 82

# title, rows: what, value, unit, mark
TABLES = (
    ("Angle of a joint", (
        ("Too narrow a corner below", NARROWEST, "°", JUDGED),
        ("Bulkhead too flat on its panel below", FLATTEST, "°", JUDGED),
        ("Flat tape alone, no cove, from", FLAT_FROM, "°", COMMON)), (0,), (1, 2)),
    ("Outer edge, rounded over", (
        ("Too thin a cover left below, of the panel", THIN_COVER, "%", JUDGED),), (0,), (1, 2)),
    ("Tape cut in pieces", (("Most pieces of one layer", MOST_TAPES, "", JUDGED),), (0,), (1, 2)),
)

"""Limits of a joint's angle, and of the tape that is cut for it."""
from .marks import COMMON, JUDGED

NARROWEST = 20.0  # degrees: below it no hand, spreader or tape gets in
FLATTEST = 30.0  # degrees that a bulkhead leans, at the least
FLAT_FROM = 160.0  # degrees
COVE_WIDTH = (6.0, 4.75, 6.25)  # across, of the panel's thickness: 19 to 25 mm on 4 mm
THIN_COVER = 0.75  # of the panel's thickness
MOST_TAPES = 100  # pieces of one layer that are told one by one; 200 m of 2.5 m need 82

# of a seam with several: face, what it is called
FACES = (("inside", "joint-face.inside"), ("outside", "joint-face.outside"), ("one_side", "joint-face.one-side"),
         ("other_side", "joint-face.other-side"), ("one_face", "joint-face.one-face"),
         ("other_face", "joint-face.other-face"), ("strip", "joint-face.strip"))

# title, rows: what, value, unit, mark
TABLES = (
    ("facts-angle", (
        ("facts-angle.narrowest", NARROWEST, "°", JUDGED),
        ("facts-angle.flattest", FLATTEST, "°", JUDGED),
        ("facts-angle.flat-from", FLAT_FROM, "°", COMMON)), (0,), (1, 2)),
    ("facts-cove", (("facts-cove.width", COVE_WIDTH, "times", COMMON),), (0,), (1, 2)),
    ("facts-outer-edge", (
        ("facts-outer-edge.thin-cover", THIN_COVER, "%", JUDGED),), (0,), (1, 2)),
    ("facts-tape-pieces", (("facts-tape-pieces.most-tapes", MOST_TAPES, "", JUDGED),), (0,), (1, 2)),
)

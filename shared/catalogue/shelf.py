"""The shelf: when a word is said before the last day of a can, and how warm crystals are melted."""
from .marks import COMMON, JUDGED

SOON = 60 * 86400.0  # s
WARM = 323.15  # K; 318 to 333 are usual

# title, rows: what, value, unit, mark
TABLES = (("facts-shelf", (
    ("facts-shelf.soon", SOON, "hours", JUDGED),
    ("facts-shelf.warm", WARM, "K", COMMON)), (0,), (1, 2)),)

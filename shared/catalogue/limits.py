"""Limits of a mixing ratio. The label's own figure goes before them."""
from .marks import JUDGED, MEMORY

AIM, STOP = 0.02, 0.05  # of the hardener
WRONG_WAY = 1.25  # hardener parts to resin parts
FAR_OFF = 0.25  # of the ratio that the equivalent weights give
LIGHTEST, HEAVIEST = 0.6, 1.6  # density of one part to that of the first

# title, rows: what, value, unit, mark
TABLES = (
    ("Ratio error, of the hardener", (
        ("Good up to", AIM, "%", MEMORY),
        ("Too much from", STOP, "%", MEMORY)), (0,), (1, 2)),
    ("Ratio of a label that is asked back", (
        ("More hardener than resin, from", WRONG_WAY, "times", JUDGED),
        ("Ratio off that of the equivalent weights, from", FAR_OFF, "%", JUDGED),
        ("Density of a part to the first, where two ratios give it, least", LIGHTEST, "times", JUDGED),
        ("Density of a part to the first, where two ratios give it, most", HEAVIEST, "times", JUDGED)), (0,), (1, 2)),
)

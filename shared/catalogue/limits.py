"""Limits of a mixing ratio. The label's own figure is used first."""
from .marks import JUDGED, MEMORY

AIM, STOP = 0.02, 0.05  # of the hardener
LOST_PER_PERCENT = (1.0, 0.5, 2.0)  # K of glass temperature for each percent of ratio: usual, least, most
WRONG_WAY = 1.25  # hardener parts to resin parts
FAR_OFF = 0.25  # of the ratio that the equivalent weights give
LIGHTEST, HEAVIEST = 0.6, 1.6  # density of one part to that of the first
RESIN_DENSITY, HARDENER_DENSITY = (1100.0, 1180.0), (930.0, 1050.0)  # kg/m3: where nobody has read it
TOLD_EVENLY = 0.2  # of the ratio: further off, what is lost no longer grows evenly
SAME_MARK = 0.02  # between two fills of one syringe to one mark, all of it

# title, rows: what, value, unit, mark
TABLES = (
    ("Ratio error, of the hardener", (
        ("Good up to", AIM, "%", JUDGED),
        ("Too much from", STOP, "%", JUDGED)), (0,), (1, 2)),
    ("What a wrong ratio costs", (
        ("Glass temperature lost for each percent of hardener too little or too much", LOST_PER_PERCENT, "dK", MEMORY),
        ("Glass temperature lost at what is still good and at what is too much, at most",
         (AIM * 100 * LOST_PER_PERCENT[2], STOP * 100 * LOST_PER_PERCENT[2]), "dK", MEMORY),
        ("Told as one for each percent, up to", TOLD_EVENLY, "%", JUDGED)),
     (0,), (1, 2)),
    ("Ratio of a label that is asked back", (
        ("More hardener than resin, from", WRONG_WAY, "times", JUDGED),
        ("Ratio off that of the equivalent weights, from", FAR_OFF, "%", JUDGED),
        ("Density of a part to the first, where two ratios give it, least", LIGHTEST, "times", JUDGED),
        ("Density of a part to the first, where two ratios give it, most", HEAVIEST, "times", JUDGED)), (0,), (1, 2)),
    ("Density of a part, where only a remembered one is known", (
        ("Resin", (sum(RESIN_DENSITY) / 2,) + RESIN_DENSITY, "kg/m3", MEMORY),
        ("Hardener", (sum(HARDENER_DENSITY) / 2,) + HARDENER_DENSITY, "kg/m3", MEMORY),
        ("Two fills of one syringe to one mark differ by, at most", SAME_MARK, "%", JUDGED)), (0,), (1, 2)),
    ("Doubt of a ratio by weight that only densities give, k = 2", (
        ("Nothing said up to, shown from", AIM, "%", JUDGED),
        ("No reading of a scale from", STOP, "%", JUDGED)), (0,), (1, 2)),
)

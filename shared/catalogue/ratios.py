"""Limits of a mixing ratio, where the label's own figure is used first, and of a can on the shelf."""
from .marks import COMMON, JUDGED, MEMORY, PUBLISHED

AIM, STOP = 0.02, 0.05  # of the hardener
LOST_PER_PERCENT = (1.0, 0.5, 2.0)  # K of glass temperature for each percent of ratio: usual, least, most
WRONG_WAY = 1.25  # hardener parts to resin parts
FAR_OFF = 0.25  # of the ratio that the equivalent weights give
LIGHTEST, HEAVIEST = 0.6, 1.6  # density of one part to that of the first
RESIN_DENSITY, HARDENER_DENSITY = (1100.0, 1180.0), (930.0, 1050.0)  # kg/m3: where nobody has read it
TOLD_EVENLY = 0.2  # of the ratio: further off, what is lost no longer grows evenly
SAME_MARK = 0.02  # between two fills of one syringe to one mark, all of it
SOON = 60 * 86400.0  # s
WARM = 323.15  # K; 318 to 333 are usual for crystals

# title, rows: what, value, unit, mark
TABLES = (
    ("kit-shelf", (
        ("shelf-soon", SOON, "hours", JUDGED),
        ("shelf-crystals", WARM, "K", COMMON)), (0,), (1, 2)),
    ("facts-ratio-error", (
        ("facts-ratio-error.aim", AIM, "%", JUDGED),
        ("facts-ratio-error.stop", STOP, "%", JUDGED)), (0,), (1, 2)),
    ("facts-ratio-cost", (
        ("facts-ratio-cost.lost-per-percent", LOST_PER_PERCENT, "dK", MEMORY),
        ("facts-ratio-cost.lost-at-most",
         (AIM * 100 * LOST_PER_PERCENT[2], STOP * 100 * LOST_PER_PERCENT[2]), "dK", MEMORY),
        ("facts-ratio-cost.told-evenly", TOLD_EVENLY, "%", JUDGED)),
     (0,), (1, 2)),
    ("facts-odd-label", (
        ("facts-odd-label.wrong-way", WRONG_WAY, "times", JUDGED),
        ("facts-odd-label.far-off", FAR_OFF, "%", JUDGED),
        ("facts-odd-label.lightest", LIGHTEST, "times", JUDGED),
        ("facts-odd-label.heaviest", HEAVIEST, "times", JUDGED)), (0,), (1, 2)),
    ("facts-part-density", (
        ("facts-part-density.resin", (sum(RESIN_DENSITY) / 2,) + RESIN_DENSITY, "kg/m3", PUBLISHED,
         "resin-liquid"),
        ("facts-part-density.hardener", (sum(HARDENER_DENSITY) / 2,) + HARDENER_DENSITY, "kg/m3", PUBLISHED,
         "crc-amines"),
        ("facts-part-density.same-mark", SAME_MARK, "%", JUDGED)), (0,), (1, 2)),
    ("facts-ratio-doubt", (
        ("facts-ratio-doubt.aim", AIM, "%", JUDGED),
        ("facts-ratio-doubt.stop", STOP, "%", JUDGED)), (0,), (1, 2)),
)

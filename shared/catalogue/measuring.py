"""Limits of stirring, of cups and of measuring tools."""
from .marks import COMMON, JUDGED, MEMORY

STIR_SHORT, STIR_LONG = 120, 180  # s, up to SMALL; above it or in the cold
SMALL = 0.2  # kg
COLD = 288.15  # K
DENSEST = 1200.0  # kg/m3: liquids of no known density are taken for the larger batch, stirred longer
MARK_ERROR = 0.001  # m: mark, meniscus and eye together
TALLEST = 4
ROOM = 0.85
FURTHEST = 1.5
ALIKE = 0.1  # of a step: two steps of which neither is nearer by more than this go by the whole
STROKE_DEVIATION = 0.03
# of a step, linearity and drift of zero: half of what a verified scale of the coarser class may be off in use up to 500
# steps (Directive 2014/31/EU, Annex I, 4); what goes evenly with the load drops out of a ratio
OWN_ERROR = 0.5

# title, rows: what, value, unit, mark
TABLES = (
    ("facts-stirring", (
        ("facts-stirring.stir-short", STIR_SHORT, "s", COMMON),
        ("facts-stirring.stir-long", STIR_LONG, "s", COMMON),
        ("facts-stirring.small", SMALL, "kg", COMMON),
        ("facts-stirring.cold", COLD, "K", JUDGED),
        ("facts-stirring.densest", DENSEST, "kg/m3", JUDGED)), (0,), (1, 2)),
    ("facts-stick", (
        ("facts-stick.mark-error", MARK_ERROR, "m", JUDGED),
        ("facts-stick.tallest", TALLEST, "times", JUDGED),
        ("facts-stick.room", ROOM, "%", JUDGED)), (0,), (1, 2)),
    ("facts-pumps", (
        ("facts-pumps.furthest", FURTHEST, "times", JUDGED),
        ("facts-pumps.alike", ALIKE, "%", JUDGED),
        ("facts-pumps.own-error", OWN_ERROR, "%", JUDGED),
        ("facts-pumps.stroke-deviation", STROKE_DEVIATION, "%", MEMORY)), (0,), (1, 2)),
)

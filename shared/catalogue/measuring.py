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

# title, rows: what, value, unit, mark
TABLES = (
    ("Stirring, how long to mix", (
        ("A small batch", STIR_SHORT, "s", COMMON),
        ("A large batch, or a cold one", STIR_LONG, "s", COMMON),
        ("A batch is small up to", SMALL, "kg", COMMON),
        ("A mix is cold below", COLD, "K", JUDGED),
        ("Density where none is known, to be safe", DENSEST, "kg/m3", JUDGED)), (0,), (1, 2)),
    ("Cup and stick", (
        ("How far a mark on a stick may be off", MARK_ERROR, "m", JUDGED),
        ("Cup too tall to stir in, height to width", TALLEST, "times", JUDGED),
        ("Cup filled at most, of its height", ROOM, "%", JUDGED)), (0,), (1, 2)),
    ("Pumps and scales", (
        ("Batch may grow to come into ratio, at most", FURTHEST, "times", JUDGED),
        ("Steps of a scale that are as near, of a step", ALIKE, "%", JUDGED),
        ("One pump stroke to the next, standard deviation", STROKE_DEVIATION, "%", MEMORY)), (0,), (1, 2)),
)

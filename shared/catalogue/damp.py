"""Limits of damp air and cold surfaces: when dew and blush are to be feared."""
from .marks import COMMON, MEMORY, PUBLISHED

MARGIN = 3.0  # K above the dew point
DAMP = 0.85  # relative humidity
SKY = (5.0, 1.0, 8.0)  # K: value, least, most
METER_OFF = 1.0  # K

# title, rows: what, value (least, most), unit, mark; "dK" is a difference of temperature
TABLES = (
    ("Damp, dew and blush", (
        ("Surface above the dew point, margin at the least", MARGIN, "dK", COMMON),
        ("Relative humidity of the air that is too damp, above", DAMP, "%", COMMON),
        ("What the open night sky cools a surface below the air", SKY, "dK", PUBLISHED, "wood-sun"),
        ("How far a hygrometer may move the dew point", METER_OFF, "dK", MEMORY)), (0,), (1, 2)),
)

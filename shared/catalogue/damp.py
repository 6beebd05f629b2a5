"""Limits of damp air and cold surfaces: when dew and blush are to be feared."""
from .marks import COMMON, MEMORY, PUBLISHED

MARGIN = 3.0  # K above the dew point
DAMP = 0.85  # relative humidity
SKY = (5.0, 1.0, 8.0)  # K: value, least, most
METER_OFF = 1.0  # K

# title, rows: what, value (least, most), unit, mark; "dK" is a difference of temperature
TABLES = (
    ("facts-damp", (
        ("facts-damp.margin", MARGIN, "dK", COMMON),
        ("facts-damp.damp", DAMP, "%", COMMON),
        ("facts-damp.sky", SKY, "dK", PUBLISHED, "wood-sun"),
        ("facts-damp.meter-off", METER_OFF, "dK", MEMORY)), (0,), (1, 2)),
)

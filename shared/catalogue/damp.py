"""Limits of damp air and cold surfaces: when dew and blush are to be feared."""
from .marks import COMMON, PUBLISHED

MARGIN = 3.0  # K above the dew point
DAMP = 0.85  # relative humidity
SKY = (5.0, 1.0, 8.0)  # K: value, least, most
METER_OFF = 1.5  # K

# title, rows: what, value (least, most), unit, mark; "dK" is a difference of temperature
TABLES = (
    ("facts-damp", (
        ("facts-damp.margin", MARGIN, "dK", COMMON),
        ("facts-damp.damp", DAMP, "%", COMMON),
        ("facts-damp.sky", SKY, "dK", PUBLISHED, "wood-sun"),
        ("facts-damp.meter-off", METER_OFF, "dK", PUBLISHED, "hygrometer")), (0,), (1, 2)),
)

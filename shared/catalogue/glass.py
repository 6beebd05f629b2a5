"""Glass tape as it is commonly sold, and how much glass hand work leaves in the laminate. SI."""
from .marks import COMMON, MEMORY

WIDTHS = (0.050, 0.075, 0.100, 0.150)  # m
WEIGHTS = (0.200, 0.300, 0.400, 0.600)  # kg/m2
MARK = COMMON
FIBRE_DENSITY, FIBRE_MARK = 2560.0, MEMORY  # kg/m3
# glass by mass, hand work: value, low, high, mark
FOR_BUYING = (0.45, 0.38, 0.55, MEMORY)
SKILLED = (0.50, 0.38, 0.55, MEMORY)
EQUAL_MASSES = (0.50, 0.50, 0.50, COMMON)
# rolls as they come: id, label, mark, typed text of the record's fields
ROLLS = (
    ("tape", "Tape, {75 mm}, {300 g/m2}", COMMON, (("name", "Tape 75"), ("of", "tape"), ("width", "75 mm"),
                                               ("weight", "300 g/m2"), ("length", "50 m"))),
    ("cloth", "Cloth, {1.2 m} wide, {200 g/m2}", COMMON, (("name", "Cloth"), ("of", "cloth"), ("width", "1200 mm"),
                                                     ("weight", "200 g/m2"), ("length", "10 m"))),
    ("ply", "Peel ply, {150 mm}", COMMON, (("name", "Peel ply 150"), ("of", "ply"), ("width", "150 mm"),
                                         ("length", "50 m"))),
)
TABLES = (
    ("Rolls", ROLLS, (1,), ()),
    ("Glass tape", (("Widths commonly sold", WIDTHS, "m", MARK), ("Weights commonly sold", WEIGHTS, "kg/m2", MARK),
                    ("Density of the fibre", FIBRE_DENSITY, "kg/m3", FIBRE_MARK)), (0,), (1, 2)),
    ("Glass by weight in hand work", (("Counted for buying",) + FOR_BUYING, ("In skilled hands",) + SKILLED,
                                      ("As much resin as glass",) + EQUAL_MASSES), (0,), (1, 2, 3)),
)

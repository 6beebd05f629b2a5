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
FLAT_FROM = 160.0  # degrees: from here on flat tape alone, common practice
TABLES = (
    ("Glass tape", (("Widths commonly sold", WIDTHS, "m", MARK), ("Weights commonly sold", WEIGHTS, "kg/m2", MARK),
                    ("Density of the fibre", FIBRE_DENSITY, "kg/m3", FIBRE_MARK)), (0,), (1, 2)),
    ("Glass by weight in hand work", (("Counted for buying",) + FOR_BUYING, ("In skilled hands",) + SKILLED,
                                      ("As much resin as glass",) + EQUAL_MASSES), (0,), (1, 2, 3)),
)

"""Glass tape as it is commonly sold, and how much glass hand work leaves in the laminate. SI."""
from .marks import COMMON, JUDGED, PUBLISHED

FIBRE_DENSITY = 2540.0  # kg/m3
# glass by mass, hand work: value, low, high, mark
FOR_BUYING = (0.45, 0.38, 0.55, JUDGED)
SKILLED = (0.50, 0.38, 0.55, COMMON)
EQUAL_MASSES = (0.50, 0.50, 0.50, COMMON)
WEIGHED = (1.6, 2.1)  # resin to glass by weight, weave filled, on seams that were weighed
# rolls as they come, and a form starts with: tape and peel ply [mm], [g/m2], [m]; cloth
TAPE_WIDTH, TAPE_WEIGHT, TAPE_ROLL = 75, 300, 50
PLY_WIDTH, PLY_ROLL = 150, 50
CLOTH_WIDTH, CLOTH_WEIGHT, CLOTH_ROLL = 1200, 200, 10
# id, label as a message, mark, typed text of the record's fields; a label is made of them
ROLLS = (
    ("tape", ("row-roll.tape", {
        "width": "{{{} mm}}".format(TAPE_WIDTH), "weight": "{{{} g/m2}}".format(TAPE_WEIGHT)}), COMMON, (
        ("name", "Tape {}".format(TAPE_WIDTH)), ("of", "tape"), ("width", "{} mm".format(TAPE_WIDTH)),
        ("weight", "{} g/m2".format(TAPE_WEIGHT)), ("length", "{} m".format(TAPE_ROLL)))),
    ("cloth", ("row-roll.cloth", {
        "width": "{{{} m}}".format(CLOTH_WIDTH / 1000), "weight": "{{{} g/m2}}".format(CLOTH_WEIGHT)}), COMMON, (
        ("name", "Cloth"), ("of", "cloth"), ("width", "{} mm".format(CLOTH_WIDTH)),
        ("weight", "{} g/m2".format(CLOTH_WEIGHT)), ("length", "{} m".format(CLOTH_ROLL)))),
    ("ply", ("row-roll.ply", {"width": "{{{} mm}}".format(PLY_WIDTH)}), COMMON, (
        ("name", "Peel ply {}".format(PLY_WIDTH)), ("of", "ply"), ("width", "{} mm".format(PLY_WIDTH)),
        ("length", "{} m".format(PLY_ROLL)))),
)
TABLES = (
    ("Rolls", ROLLS, (1,), ()),
    ("facts-glass-tape", (
        ("facts-glass-tape.fibre-density", FIBRE_DENSITY, "kg/m3", PUBLISHED, "e-glass"),), (0,), (1, 2)),
    ("facts-hand-laminate", (
        ("facts-hand-laminate.for-buying",) + FOR_BUYING, ("facts-hand-laminate.skilled",) + SKILLED,
        ("facts-hand-laminate.equal-masses",) + EQUAL_MASSES), (0,), (1, 2, 3)),
    ("facts-weighed", (("facts-weighed.resin", WEIGHED, "times", COMMON),), (0,), (1, 2)),
)

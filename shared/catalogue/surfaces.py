"""What faces, cloth, glue lines and fairing take until somebody has weighed their own. SI."""
from .losses import Fact
from .marks import COMMON, JUDGED, MEMORY, PUBLISHED

# coats, cloth, glue, compound: what a form starts with, and how far that may be off
SURFACES = (
    Fact("later_coat", "facts-surfaces.later-coat", 0.080, 0.060, 0.120, "kg/m2", JUDGED),
    Fact("brush", "facts-surfaces.brush", 0.010, 0.005, 0.020, "kg", JUDGED),
    Fact("tray_area", "facts-surfaces.tray-area", 0.08, 0.05, 0.15, "m2", JUDGED),
    Fact("coat_pace", "facts-surfaces.coat-pace", 180.0, 120.0, 360.0, "s", JUDGED),
    Fact("wet_pace", "facts-surfaces.wet-pace", 510.0, 330.0, 840.0, "s", JUDGED),
    Fact("wood_drinks", "facts-surfaces.wood-drinks", 0.055, 0.030, 0.080, "kg/m2", JUDGED),
    Fact("weave_share", "facts-surfaces.weave-share", 0.50, 0.30, 0.70, "%", JUDGED),
    Fact("weave_empty", "facts-surfaces.weave-empty", 0.50, 0.40, 0.65, "%", JUDGED),
    Fact("sanded_off", "facts-surfaces.sanded-off", 0.00004064, 0.00003, 0.00005, "m", JUDGED),
    Fact("cloth_lap", "facts-surfaces.cloth-lap", 0.050, 0.025, 0.075, "m", COMMON),
    Fact("cloth_spare", "facts-surfaces.cloth-spare", 0.025, 0.010, 0.050, "m", JUDGED),
    Fact("glue_prime", "facts-surfaces.glue-prime", 0.085, 0.070, 0.100, "kg/m2", JUDGED),
    Fact("end_prime", "facts-surfaces.end-prime", 2.0, 1.5, 2.5, "times", JUDGED),
    Fact("bond_line", "facts-surfaces.bond-line", 0.0003, 0.0001, 0.001, "m", JUDGED),
    Fact("squeezed", "facts-surfaces.squeezed", 0.20, 0.15, 0.25, "%", JUDGED),
    Fact("soak", "facts-surfaces.soak", 600.0, 300.0, 1200.0, "s", JUDGED),
    Fact("pressure", "facts-surfaces.pressure", 50000.0, 20000.0, 100000.0, "Pa", JUDGED),
    Fact("clamp", "facts-surfaces.clamp", 100.0, 50.0, 200.0, "kg", JUDGED),
    Fact("apart", "facts-surfaces.apart", 0.15, 0.10, 0.20, "m", JUDGED),
    Fact("fair_depth", "facts-surfaces.fair-depth", 0.001, 0.0003, 0.0015, "m", JUDGED),
    Fact("fair_sanded", "facts-surfaces.fair-sanded", 0.30, 0.20, 0.50, "%", JUDGED),
    Fact("face_pull", "facts-surfaces.face-pull", 2.0e6, 1.5e6, 3.0e6, "Pa", JUDGED),
)
BY_KEY = dict([(row.key, row) for row in SURFACES])

# of plywood in bending, from memory: its figure, the least and the most; a stronger panel asks more of its glue
PLYWOOD = (42.6e6, 33.7e6, 42.6e6)  # Pa
BUTT_REACHES = 0.25  # of the wood's tensile strength
SCARF_WOOD = 12.0  # to 1, or flatter: the highest strength
SCARF_LEAST = 10.0  # times the section, to come near the strength of clear wood
SCARF_PLY = 8.0  # to 1
GAP_GLUE = 0.001  # m: wider is no gap for glue
BEND_COLD = 150.0  # radius to thickness of dry softwood
BARE_FILLET = (2.0, 3.0)  # radius to the panel's thickness, without tape
PASS_FLAT, PASS_UPRIGHT = 0.0025, 0.0015  # m
LEAN = 45.0  # degrees from level: a side that leans
FACE, PLY_SHEET = 1.2, 2.4  # m: a form starts with a sheet
# title, rows: what, value, unit, mark
TABLES = (
    ("facts-surfaces", tuple([
        (row.what, tuple([one / 1e6 for one in row[2:5]]), "MPa", row.mark) if row.unit == "Pa" else
        (row.what, row[2:5], row.unit, row.mark) for row in SURFACES]), (0,), (1, 2)),
    ("facts-bonds", (
        ("facts-bonds.plywood", tuple([one / 1e6 for one in PLYWOOD]), "MPa", MEMORY),
        ("facts-bonds.butt-reaches", BUTT_REACHES, "%", PUBLISHED, "wood-handbook-10"),
        ("facts-bonds.scarf-wood", SCARF_WOOD, "times", PUBLISHED, "wood-handbook-10"),
        ("facts-bonds.scarf-least", SCARF_LEAST, "times", PUBLISHED, "wood-handbook-10"),
        ("facts-bonds.scarf-ply", SCARF_PLY, "times", COMMON),
        ("facts-bonds.gap-glue", GAP_GLUE, "m", JUDGED),
        ("facts-bonds.bend-cold", BEND_COLD, "times", JUDGED),
        ("facts-bonds.bare-fillet", BARE_FILLET, "times", COMMON),
        ("facts-bonds.pass-flat", PASS_FLAT, "m", JUDGED),
        ("facts-bonds.pass-upright", PASS_UPRIGHT, "m", JUDGED),
        ("facts-bonds.lean", LEAN, "°", JUDGED),
        ("facts-bonds.sheet-length", PLY_SHEET, "m", COMMON),
        ("facts-bonds.sheet-width", FACE, "m", COMMON)), (0,), (1, 2)),
)

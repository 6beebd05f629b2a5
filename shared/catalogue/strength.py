"""What the strength of a seam is reckoned with: the panel, the wood under the tape, the putty. SI."""
from .marks import COMMON, JUDGED

SOLID = 85e6  # Pa, solid wood in bending, along its grain
PULLS = {"ply": 0.65, "solid": 1.0}  # in pull, of the strength in bending
SOLID_ACROSS = 0.1  # solid wood across its grain, of that along
PLY_ACROSS = 0.067  # a veneer across its grain, of its stiffness along
PANEL_STIFF = 8.55e9  # Pa
VENEER = 0.0013  # m: one ply, for a panel whose plies nobody counted
ROLLS, ROLLS_STIFF = 1.5e6, 60e6  # Pa, a veneer sheared across its grain: strength on average, stiffness
PUTTY_BENDS, PUTTY_PUSH, PUTTY_STIFF = 15e6, 40e6, 2.5e9  # Pa
KNOCK = (0.5, 0.4, 0.7)  # of glass and putty that are left, wet, tired and with voids
TAPES = (0.050, 0.075, 0.100, 0.150)  # m, widths as they are sold
MOST_LAYERS = 4  # of one face that are proposed

# title, rows: what, value, unit, mark
TABLES = (
    ("facts-strength", (
        ("facts-strength.solid", SOLID / 1e6, "MPa", JUDGED),
        ("facts-strength.ply-pulls", PULLS["ply"], "times", JUDGED),
        ("facts-strength.solid-pulls", PULLS["solid"], "times", JUDGED),
        ("facts-strength.solid-across", SOLID_ACROSS, "times", JUDGED),
        ("facts-strength.ply-across", PLY_ACROSS, "times", JUDGED),
        ("facts-strength.panel-stiff", PANEL_STIFF / 1e6, "MPa", JUDGED),
        ("facts-strength.veneer", VENEER, "m", COMMON),
        ("facts-strength.rolls", ROLLS / 1e6, "MPa", JUDGED),
        ("facts-strength.rolls-stiff", ROLLS_STIFF / 1e6, "MPa", JUDGED),
        ("facts-strength.putty-bends", PUTTY_BENDS / 1e6, "MPa", JUDGED),
        ("facts-strength.putty-push", PUTTY_PUSH / 1e6, "MPa", JUDGED),
        ("facts-strength.putty-stiff", PUTTY_STIFF / 1e6, "MPa", JUDGED),
        ("facts-strength.knock", KNOCK, "times", JUDGED),
        ("facts-strength.tapes", TAPES, "m", COMMON),
        ("facts-strength.most-layers", MOST_LAYERS, "", JUDGED)), (0,), (1, 2)),
)

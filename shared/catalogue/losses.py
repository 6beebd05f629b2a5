"""What stays behind, what is taken up and what is put on top: each with the range it is remembered in. SI."""
from collections import namedtuple

from . import fillers
from .marks import COMMON, JUDGED, MEMORY

Fact = namedtuple("Fact", ("key", "what", "value", "low", "high", "unit", "mark"))

LOSSES = (
    Fact("cup", "facts-losses.cup", 0.006, 0.004, 0.010, "kg", MEMORY),
    Fact("bag", "facts-losses.bag", 0.020, 0.010, 0.035, "kg", MEMORY),
    Fact("tray", "facts-losses.tray", 0.040, 0.020, 0.070, "kg/m2", MEMORY),
    Fact("roller", "facts-losses.roller", 0.030, 0.015, 0.060, "kg", MEMORY),
    Fact("spare", "facts-losses.spare", 0.10, 0.05, 0.20, "", COMMON),
    Fact("tooling", "facts-losses.tooling", 0.12, 0.08, 0.25, "", MEMORY),
    Fact("peel_ply", "facts-losses.peel-ply", 0.070, 0.050, 0.120, "kg/m2", MEMORY),
    Fact("first_coat", "facts-losses.first-coat", 0.110, 0.080, 0.160, "kg/m2", MEMORY),
    Fact("weave", "facts-losses.weave", 0.120, 0.080, 0.200, "kg/m2", MEMORY),
    Fact("edges", "facts-losses.edges", 2.5, 2.0, 3.0, "", MEMORY),
    Fact("flank", "facts-losses.flank", 0.015, 0.015, 0.025, "m", JUDGED),
    Fact("least_radius", "facts-losses.least-radius", 0.010, 0.008, 0.012, "m", MEMORY),
    Fact("one_pass", "facts-losses.one-pass", 0.012, 0.010, 0.015, "m", JUDGED),
    Fact("ply_margin", "facts-losses.ply-margin", 0.020, 0.010, 0.030, "m", JUDGED),
    Fact("overlap", "facts-losses.overlap", 0.050, 0.040, 0.075, "m", COMMON),
    Fact("stagger", "facts-losses.stagger", 0.100, 0.100, 0.200, "m", COMMON),
    Fact("putty_density", "facts-losses.putty-density", 1100.0, 1050.0, 1200.0, "kg/m3", MEMORY),
    Fact("resin_density", "facts-losses.resin-density", 1110.0, 1080.0, 1150.0, "kg/m3", JUDGED),
    Fact("reach", "facts-losses.reach", 2.5, 2.5, 2.5, "m", JUDGED),
    Fact("abrasive", "facts-losses.abrasive", 0.5, 0.5, 0.5, "m2", JUDGED),
    Fact("backing", "facts-losses.backing", 0.1, 0.1, 0.1, "", JUDGED),
    Fact("tie_spacing", "facts-losses.tie-spacing", 0.150, 0.100, 0.250, "m", COMMON),
)
BY_KEY = dict([(row.key, row) for row in LOSSES])


def _filler() -> Fact:
    """Wood flour to epoxy for a cove, as the table of fillers doses what stands; its ends to a whole gram for 100."""
    dose = float(dict(fillers.FILLERS[0][3])["doses"].split(" : ")[3])
    low, high = [int(dose * (1 + off) + 0.5) / 100 for off in (-fillers.DOSE_SPREAD, fillers.DOSE_SPREAD)]
    return Fact("filler", "", dose / 100, low, high, "", MEMORY)


BY_KEY["filler"] = _filler()

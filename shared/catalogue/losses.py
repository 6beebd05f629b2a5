"""What stays behind, what is taken up and what is put on top: each with the range it is remembered in. SI."""
from collections import namedtuple

from . import fillers
from .marks import COMMON, JUDGED, MEMORY

Fact = namedtuple("Fact", ("key", "what", "value", "low", "high", "unit", "mark"))

LOSSES = (
    Fact("cup", "left in cup and on stick", 0.006, 0.004, 0.010, "kg", MEMORY),
    Fact("bag", "left in the bag", 0.020, 0.010, 0.035, "kg", MEMORY),
    Fact("tray", "left in the tray, per area wetted out", 0.040, 0.020, 0.070, "kg/m2", MEMORY),
    Fact("roller", "left in the roller", 0.030, 0.015, 0.060, "kg", MEMORY),
    Fact("spare", "spare on liquids", 0.10, 0.05, 0.20, "", COMMON),
    Fact("tooling", "taken off by tooling, of what is placed", 0.12, 0.08, 0.25, "", MEMORY),
    Fact("peel_ply", "taken up by peel ply", 0.070, 0.050, 0.120, "kg/m2", MEMORY),
    Fact("first_coat", "first coat on bare plywood", 0.110, 0.080, 0.160, "kg/m2", MEMORY),
    Fact("weave", "to fill the weave", 0.120, 0.080, 0.200, "kg/m2", MEMORY),
    Fact("edges", "what an edge takes, in times of a face", 2.5, 2.0, 3.0, "", MEMORY),
    Fact("flank", "bare panel under the tape each side of the cove", 0.015, 0.015, 0.025, "m", JUDGED),
    Fact("least_radius", "smallest radius that glass and tool bend to", 0.010, 0.008, 0.012, "m", MEMORY),
    Fact("one_pass", "thickest throat in one pass", 0.012, 0.010, 0.015, "m", JUDGED),
    Fact("ply_margin", "peel ply wider than the tape, each side", 0.020, 0.010, 0.030, "m", JUDGED),
    Fact("overlap", "overlap where two pieces of tape meet", 0.050, 0.040, 0.075, "m", COMMON),
    Fact("stagger", "ends of one layer away from those of the next", 0.100, 0.100, 0.200, "m", COMMON),
    Fact("putty_density", "putty for a cove, air in it", 1100.0, 1050.0, 1200.0, "kg/m3", MEMORY),
    Fact("resin_density", "resin and hardener, mixed", 1110.0, 1080.0, 1150.0, "kg/m3", MEMORY),
    Fact("reach", "longest piece of tape that one pair of arms lays", 2.5, 2.5, 2.5, "m", JUDGED),
    Fact("abrasive", "tape that one abrasive sheet does", 0.5, 0.5, 0.5, "m2", JUDGED),
    Fact("backing", "backing tape, spare", 0.1, 0.1, 0.1, "", JUDGED),
    Fact("tie_spacing", "between the ties", 0.150, 0.100, 0.250, "m", COMMON),
)
BY_KEY = dict([(row.key, row) for row in LOSSES])


def _filler():
    """Wood flour to epoxy for a cove, as the table of fillers doses what stands; its ends to a whole gram for 100."""
    dose = float(dict(fillers.FILLERS[0][3])["doses"].split(" : ")[3])
    low, high = [int(dose * (1 + off) + 0.5) / 100 for off in (-fillers.DOSE_SPREAD, fillers.DOSE_SPREAD)]
    return Fact("filler", "", dose / 100, low, high, "", MEMORY)


BY_KEY["filler"] = _filler()

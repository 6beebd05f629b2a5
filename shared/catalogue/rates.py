"""How fast one person works along a seam, downhand, and how long a mix takes. From memory: own timings go before them.

Position factors multiply the rate: slower where the seam stands or hangs.
"""
from .marks import JUDGED, MEMORY

# name, label, rate [m/min], least, most, mark
RATES = (
    ("place", "facts-rates.place", 2.0, 1.0, 3.0, MEMORY),
    ("tool", "facts-rates.tool", 1.0, 0.6, 1.5, MEMORY),
    ("clean", "facts-rates.clean", 1.25, 0.8, 2.0, MEMORY),
    ("wet", "facts-rates.wet", 1.25, 0.8, 2.0, MEMORY),
    ("lay", "facts-rates.lay", 2.0, 1.0, 3.0, MEMORY),
    ("roll", "facts-rates.roll", 0.8, 0.5, 1.2, MEMORY),
    ("peel", "facts-rates.peel", 1.25, 0.8, 2.0, MEMORY),
)
# value, label, factor on the rate [-], mark
HANDS = (
    ("practised", "facts-hands.practised", 1.0, JUDGED),
    ("novice", "facts-hands.novice", 0.5, JUDGED),
)
POSITIONS = (
    ("downhand", "facts-positions.downhand", 1.0, JUDGED),
    ("vertical", "facts-positions.vertical", 0.7, JUDGED),
    ("overhead", "facts-positions.overhead", 0.5, JUDGED),
)
# name, label, minutes, least, most, mark
MIXING = (
    ("mix_putty", "facts-mixing.mix-putty", 6, 5, 9, MEMORY),
    ("mix_wet", "facts-mixing.mix-wet", 3, 2, 4, MEMORY),
)

# of taps and of what is learned from them
AT_ONCE = 30.0  # s: two steps tapped nearer together were not timed
BEHIND = 1.2  # times: the tape was this much behind the cove at the end, so its hand has not waited
FAR = 4.0  # times: a step that was tapped late, or two tapped at once
DEVIATION = 0.2  # how differently the same hands work from batch to batch, the whole minute of a tap in it
# name, value, unit, mark
LEARNING = (
    ("at_once", AT_ONCE, "s", JUDGED),
    ("behind", BEHIND, "times", JUDGED),
    ("far", FAR, "times", JUDGED),
    ("deviation", DEVIATION, "%", JUDGED),
)

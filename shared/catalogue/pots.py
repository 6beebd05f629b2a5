"""Limits of a running pot, of timings and of the heat that a mix may reach."""
from .glass import TAPE_WIDTH
from .marks import JUDGED

MOST_PEAK = 423.15  # K: above it the matter smokes and breaks down, and a figure would say more than is known
DEEPEST_CUP = 2.5  # of its width: a cup that would be deeper is asked back
HARDLY_ABOVE = 3.0  # K: a peak no further above the air is told as none
SOON = 180.0  # s
AGAIN = 300.0  # s
ON_WAY = 60.0  # s: a link that is older was not scanned just now, or the two phones' clocks differ
LONG_AGO = 6 * 3600.0  # s
AWAY = 30.0  # s: a page that nobody saw for longer was closed, not loaded anew
CLOCKS_APART = 2.0  # s: two clocks of one phone that differ by more were changed
TIMES_APART = 0.25  # facts that the calibration cannot bring nearer than this are questioned
SHALLOWER = 0.75  # a bag for a cup: what was gone bounds it too, to the safe side
ROUGHLY = 1.1  # a pot seen stiffening may well have been good a little later than another
# how well a time is trusted, as a relative deviation: own timings go before the label's
OWN_DOUBT, LABEL_DOUBT, FILM_DOUBT = 0.05, 0.2, 0.4
# what a container is like where nobody measured it [m]: a cup as wide as it is full, and the sizes the form starts with
SIZES = {"cup_width": None, "bag_width": 0.06, "tray_length": 0.30, "tray_width": 0.20, "radius": 0.012,
         "panel": 0.006, "tape_width": TAPE_WIDTH / 1000, "film": 0.0003}
SMALL_CUP = 0.065  # m: a cup that nobody measured may be as wide, however little is in it

# title, rows: what, value, unit, mark
TABLES = (
    ("Pot that gets hot", (
        ("Hottest that is given as a figure", MOST_PEAK, "K", JUDGED),
        ("Hardly above the air, within", HARDLY_ABOVE, "dK", JUDGED),
        ("Depth of a cup to its width, asked back above", DEEPEST_CUP, "times", JUDGED)), (0,), (1, 2)),
    ("Clock of a running pot", (
        ("Last minutes from", SOON, "s", JUDGED),
        ("Looked at again after it was still good", AGAIN, "s", JUDGED),
        ("Link from the other phone, on its way", ON_WAY, "s", JUDGED),
        ("Over for so long that the pot is asked back", LONG_AGO, "hours", JUDGED),
        ("Page out of sight before its clock is in doubt", AWAY, "s", JUDGED),
        ("Two clocks of one phone apart", CLOCKS_APART, "s", JUDGED)), (0,), (1, 2)),
    ("Pot life, timings that do not agree", (
        ("Label's times apart from which they are asked back", TIMES_APART, "%", JUDGED),
        ("What a bag bears of a cup that was gone", SHALLOWER, "times", JUDGED),
        ("Stiffening later than another pot was stiffening", ROUGHLY, "times", JUDGED),
        ("Doubt of an own timing", OWN_DOUBT, "%", JUDGED),
        ("Doubt of the label's pot life", LABEL_DOUBT, "%", JUDGED),
        ("Doubt of the label's film time", FILM_DOUBT, "%", JUDGED)), (0,), (1, 2)),
    ("Size of a container that nobody measured", (
        ("Cup, as wide with little in it", SMALL_CUP, "m", JUDGED),
        ("Bag, thickness when full", SIZES["bag_width"], "m", JUDGED),
        ("Tray, length", SIZES["tray_length"], "m", JUDGED),
        ("Tray, width", SIZES["tray_width"], "m", JUDGED),
        ("Cove, radius", SIZES["radius"], "m", JUDGED),
        ("Panel thickness", SIZES["panel"], "m", JUDGED),
        ("Tape width", SIZES["tape_width"], "m", JUDGED),
        ("Film thickness", SIZES["film"], "m", JUDGED)), (0,), (1, 2)),
)

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
    ("facts-hot-pot", (
        ("facts-hot-pot.most-peak", MOST_PEAK, "K", JUDGED),
        ("facts-hot-pot.hardly-above", HARDLY_ABOVE, "dK", JUDGED),
        ("facts-hot-pot.deepest-cup", DEEPEST_CUP, "times", JUDGED)), (0,), (1, 2)),
    ("facts-pot-clock", (
        ("facts-pot-clock.soon", SOON, "s", JUDGED),
        ("facts-pot-clock.again", AGAIN, "s", JUDGED),
        ("facts-pot-clock.on-way", ON_WAY, "s", JUDGED),
        ("facts-pot-clock.long-ago", LONG_AGO, "hours", JUDGED),
        ("facts-pot-clock.away", AWAY, "s", JUDGED),
        ("facts-pot-clock.clocks-apart", CLOCKS_APART, "s", JUDGED)), (0,), (1, 2)),
    ("facts-timings-apart", (
        ("facts-timings-apart.times-apart", TIMES_APART, "%", JUDGED),
        ("facts-timings-apart.shallower", SHALLOWER, "times", JUDGED),
        ("facts-timings-apart.roughly", ROUGHLY, "times", JUDGED),
        ("facts-timings-apart.own-doubt", OWN_DOUBT, "%", JUDGED),
        ("facts-timings-apart.label-doubt", LABEL_DOUBT, "%", JUDGED),
        ("facts-timings-apart.film-doubt", FILM_DOUBT, "%", JUDGED)), (0,), (1, 2)),
    ("facts-container-size", (
        ("facts-container-size.small-cup", SMALL_CUP, "m", JUDGED),
        ("facts-container-size.bag-width", SIZES["bag_width"], "m", JUDGED),
        ("facts-container-size.tray-length", SIZES["tray_length"], "m", JUDGED),
        ("facts-container-size.tray-width", SIZES["tray_width"], "m", JUDGED),
        ("facts-container-size.radius", SIZES["radius"], "m", JUDGED),
        ("facts-container-size.panel", SIZES["panel"], "m", JUDGED),
        ("facts-container-size.tape-width", SIZES["tape_width"], "m", JUDGED),
        ("facts-container-size.film", SIZES["film"], "m", JUDGED)), (0,), (1, 2)),
)

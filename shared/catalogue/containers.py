"""Where a mix waits, and what it sheds its heat through, each with its plausible range behind it."""
from .cautions import RUNS_AWAY
from .marks import COMMON, JUDGED, MEMORY, PUBLISHED

TOO_HOT = 333.15  # K

# kind, label, help, shape factor of the inner resistance [-], resistance of the wall [m2 K/W], a pot (True) or laid out
# Inner resistance from the mean of the matter to its surface, heat made evenly, over lambda: slab (V/A)/3,
# cylinder (V/A)/2.
CONTAINERS = (
    ("cup", "container-cup", "container-cup.help", 1 / 2, 0.005, True),
    ("bag", "container-bag", "container-bag.help", 1 / 2, 0.001, True),
    ("tray", "container-tray", "container-tray.help", 1 / 3, 0.001, False),
    ("bead", "container-bead", "container-bead.help", 1 / 3, 0.0, False),
    ("roll", "container-roll", "container-roll.help", 1 / 2, 0.0, True),
    ("film", "container-film", "container-film.help", 1 / 3, 0.0, False),
)
LAID = ("bead", "film")  # laid out on wood: how much of it there is does not matter
# how thick a wall is taken for, and of what: 1.1 and 0.22 mm at 0.22 W/(m K), 0.33 mm at 0.33
WALL = {"cup": "facts-walls.cup", "bag": "facts-walls.bag", "tray": "facts-walls.tray"}
WALLS = tuple([(WALL[row[0]], row[4], PUBLISHED, "en-12524") for row in CONTAINERS if row[4]])
# name, value [SI], least, most, mark, source
MATTER = (
    ("heat_per_epoxide", 106600.0, 100000.0, 118000.0, PUBLISHED, "dgeba"),  # J/mol
    ("undiluted", 1.0, 0.7, 1.0, JUDGED),  # what thinners in resin and hardener leave of that heat
    ("epoxide_weight", 0.187, 0.180, 0.210, PUBLISHED, "dgeba"),  # kg/eq, where the label gives none
    ("phr", 30.0, 10.0, 60.0, JUDGED),  # where the label gives no ratio by weight
    ("specific_heat", 2000.0, 1800.0, 2100.0, PUBLISHED, "mix-heat"),  # of the liquid mix, J/(kg K)
    ("filler_heat", 1000.0, 750.0, 1600.0, PUBLISHED, "en-12524"),  # J/(kg K), of glass to that of wood
    ("conductivity", 0.20, 0.17, 0.25, PUBLISHED, "en-12524"),  # of the mix, as of cured epoxy, W/(m K)
    ("density", 1100.0, 1000.0, 1200.0, JUDGED),  # of the mix, kg/m3, where the label gives none
    ("wood", 0.13, 0.09, 0.17, PUBLISHED, "iso-10456"),  # conductivity of plywood across the plies, W/(m K)
    ("bench", 0.08, 0.04, 0.15, PUBLISHED, "en-12524"),  # m2 K/W, 10 (5 to 20) mm of timber, 0.13 W/(m K)
)
# value, label, heat given to the air, convection and radiation together [W/(m2 K)], least, most, mark
AIR = (
    ("still", "facts-air.still", 9.0, 9.0, 16.0, PUBLISHED, "churchill"),
    ("moving", "facts-air.moving", 20.0, 15.0, 30.0, PUBLISHED, "iso-6946"),
)
# how the mix cures, where the label's times alone cannot tell: name, value, least, most, mark
CURE = (
    ("uncatalysed", 0.06, 0.02, 0.2, MEMORY),  # k1 / k2: a film then lasts about 3 times as long as 100 g in a cup
    ("too_hot", TOO_HOT, 323.15, 343.15, COMMON),  # K; a pot too hot to hold is at its end, however thin
    ("usable_conversion", 0.30, 0.2, 0.4, JUDGED),  # half of the way to the gel: several times as thick
)
# from this peak [K] on: what it does, what it may do where only the hot end of the band is there, mark
HOT = (
    (TOO_HOT, "hot-holds", "hot-holds.may", COMMON),
    (RUNS_AWAY, "hot-runs-away", "hot-runs-away.may", COMMON),
)
HOT_POT = "hot-pot-caution"

"""Titles: what the tables of the catalogue and their rows are called, for a builder who looks a figure up.

Only for tables that carry no such words themselves, or whose figures are kept in another unit than they are read in.
"""

OF_POT_LIFE, OF_A_FACE = "pot life", "face"  # times that: no units of a table
# module, name of the table there, title, unit of every figure, columns of the text (all before the mark where empty)
TITLES = (
    ("containers", "air", "facts-air", "W/(m2 K)", ()),
    ("containers", "cure", "facts-pot-cure", "", ()),
    ("containers", "hot", "facts-hot", "K", (1,)),
    ("containers", "walls", "facts-walls", "m2 K/W", ()),
    ("containers", "matter", "facts-matter", "", ()),
    ("pot_life", "lowest", "facts-lowest", "K", ()),
    ("pot_life", "windows", "facts-windows", "", ()),
    ("cure_times", "counted at", "facts-counted-at", "K", ()),
    ("cure_times", "day", "facts-day", "hours", ()),
    ("cure_times", "points gap", "facts-points-gap", "", ()),
    ("cure_times", "energy", "facts-cure-energy", "J/mol", ()),
    ("cure_times", "stages", "facts-stages", "h", (2, 4)),
    ("rates", "learning", "facts-learning", "", ()),
    ("rates", "hands", "facts-hands", "of the rate", ()),
    ("rates", "mixing", "facts-mixing", "min", ()),
    ("rates", "positions", "facts-positions", "of the rate", ()),
    ("rates", "rates", "facts-rates", "m a minute", ()),
    ("glass", "facts-hand-laminate", "facts-hand-laminate", "%", ()),
    ("losses", "losses", "facts-losses", "", ()),
    ("airing", "facts-draughts", "facts-draughts", "air changes an hour", ()),
)

# table, key of the row, words, unit
ROWS = (
    ("cure", "uncatalysed", "facts-pot-cure.uncatalysed", ""),
    ("cure", "too_hot", "facts-pot-cure.too-hot", "K"),
    ("cure", "usable_conversion", "facts-pot-cure.usable-conversion", "%"),
    ("matter", "heat_per_epoxide", "facts-matter.heat-per-epoxide", "J/mol"),
    ("matter", "epoxide_weight", "facts-matter.epoxide-weight", "kg/eq"),
    ("matter", "undiluted", "facts-matter.undiluted", ""),
    ("matter", "phr", "facts-matter.phr", "g"),
    ("matter", "specific_heat", "facts-matter.specific-heat", "J/(kg K)"),
    ("matter", "filler_heat", "facts-matter.filler-heat", "J/(kg K)"),
    ("matter", "conductivity", "facts-matter.conductivity", "W/(m K)"),
    ("matter", "density", "facts-matter.density", "kg/m3"),
    ("matter", "wood", "facts-matter.wood", "W/(m K)"),
    ("matter", "bench", "facts-matter.bench", "m2 K/W"),
    ("lowest", "fast", "facts-lowest.fast", "K"),
    ("lowest", "medium", "facts-lowest.medium", "K"),
    ("lowest", "slow", "facts-lowest.slow", "K"),
    ("windows", "soft", "facts-windows.soft", OF_POT_LIFE),
    ("windows", "film", "facts-windows.film", OF_POT_LIFE),
    ("windows", "exponent", "facts-windows.exponent", ""),
    ("windows", "doubling", "facts-windows.doubling", "times"),
    ("windows", "share", "facts-windows.share", "%"),
    ("windows", "film share", "facts-windows.film-share", "%"),
    ("learning", "at_once", "facts-learning.at-once", "s"),
    ("learning", "behind", "facts-learning.behind", "times"),
    ("learning", "far", "facts-learning.far", "times"),
    ("learning", "deviation", "facts-learning.deviation", "%"),
    ("losses", "spare", "facts-losses.spare", "%"),
    ("losses", "tooling", "facts-losses.tooling", "%"),
    ("losses", "backing", "facts-losses.backing", "%"),
    ("losses", "edges", "facts-losses.edges", OF_A_FACE),
    ("counted at", "opens", "facts-counted-at.opens", "K"),
    ("counted at", "closes", "facts-counted-at.closes", "K"),
    ("day", "coldest", "facts-day.coldest", "hours"),
    ("day", "warmest", "facts-day.warmest", "hours"),
    ("points gap", "points gap", "facts-points-gap.points-gap", "hours"),
    ("energy", "energy", "facts-cure-energy.energy", "J/mol"),
)

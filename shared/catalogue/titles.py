"""Titles: what the tables of the catalogue and their rows are called, for a builder who looks a figure up.

Only for tables that carry no such words themselves, or whose figures are kept in another unit than they are read in.
"""

from .windows import HUNDRED

OF_POT_LIFE = "times the pot life of {" + str(int(HUNDRED * 1000 + 0.5)) + " g}"
# module, name of the table there, title, unit of every figure, columns of the text (all before the mark where empty)
TITLES = (
    ("containers", "air", "Heat given to the air", "W/(m2 K)", ()),
    ("containers", "cure", "How a pot cures", "", ()),
    ("containers", "hot", "A pot that gets this hot", "K", (1,)),
    ("containers", "walls", "What the wall of a pot keeps back", "m2 K/W", ()),
    ("containers", "matter", "What heats and cools a pot", "", ()),
    ("windows", "lowest", "Lowest working temperature", "K", ()),
    ("windows", "windows", "How long a mix can be used", "", ()),
    ("cure_times", "counted at", "Hours until the next step, counted as at", "K", ()),
    ("cure_times", "day", "A day, hours after midnight", "hours", ()),
    ("cure_times", "points gap", "Cure, temperatures that are typed", "", ()),
    ("cure_times", "energy", "How curing follows the temperature", "J/mol", ()),
    ("cure_times", "stages", "Until the next step, hardener fast, medium, slow", "h", (2, 4)),
    ("rates", "learning", "Own rates, learned from taps", "", ()),
    ("rates", "hands", "How fast the hands are", "of the rate", ()),
    ("rates", "mixing", "Time to mix", "min", ()),
    ("rates", "positions", "How the seam lies", "of the rate", ()),
    ("rates", "rates", "How fast one person works", "m a minute", ()),
    ("glass", "Glass by weight in hand work", "Glass by weight in hand work", "%", ()),
    ("losses", "losses", "Left behind, taken up, put on top", "", ()),
    ("airing", "Draughts, air changes per hour", "Draughts", "air changes an hour", ()),
)

# table, key of the row, words, unit
ROWS = (
    ("cure", "uncatalysed", "What cures without help, to what cures with it", ""),
    ("cure", "too_hot", "Too hot to hold from", "K"),
    ("cure", "usable_conversion", "No longer usable once cured", "%"),
    ("matter", "heat_per_epoxide", "Heat from each epoxide group", "J/mol"),
    ("matter", "epoxide_weight", "Epoxide equivalent weight, where the label gives none", "kg/eq"),
    ("matter", "phr", "Hardener to 100 of resin by weight, where the label gives none", "g"),
    ("matter", "specific_heat", "Specific heat of the liquid mix", "J/(kg K)"),
    ("matter", "filler_heat", "Specific heat of filler, from that of glass to that of wood", "J/(kg K)"),
    ("matter", "conductivity", "How the mix conducts heat", "W/(m K)"),
    ("matter", "density", "Density of the mix, where the label gives none", "kg/m3"),
    ("matter", "wood", "How plywood conducts heat, across the plies", "W/(m K)"),
    ("matter", "bench", "What a wooden bench keeps back", "m2 K/W"),
    ("lowest", "fast", "Fast hardener", "K"),
    ("lowest", "medium", "Medium hardener", "K"),
    ("lowest", "slow", "Slow hardener", "K"),
    ("windows", "soft", "A bead of putty on wood", OF_POT_LIFE),
    ("windows", "film", "A thin film", OF_POT_LIFE),
    ("windows", "exponent", "Pot life goes with the mass to minus this power", ""),
    ("windows", "doubling", "Quicker for each {10 K} warmer", "times"),
    ("windows", "share", "What a plan uses of any window", "%"),
    ("windows", "film share", "What is used of a film's time, where that is one to the gel", "%"),
    ("learning", "at_once", "Two taps nearer together were not timed", "s"),
    ("learning", "behind", "Tape behind the cove, so that nobody waited", "times"),
    ("learning", "far", "Faster or slower than usual, left out from", "times"),
    ("learning", "deviation", "How differently the same hands work, standard deviation", "%"),
    ("losses", "spare", "Spare on liquids", "%"),
    ("losses", "tooling", "Taken off by tooling, of what is placed", "%"),
    ("losses", "backing", "Backing tape, spare", "%"),
    ("losses", "edges", "What an edge takes", "times what a face takes"),
    ("counted at", "opens", "A window that opens: the late reading", "K"),
    ("counted at", "closes", "A window that closes: the early reading", "K"),
    ("day", "coldest", "Coldest", "hours"),
    ("day", "warmest", "Warmest", "hours"),
    ("points gap", "points gap", "Hours between two of them, more is a gap", "hours"),
    ("energy", "energy", "Activation energy", "J/mol"),
)

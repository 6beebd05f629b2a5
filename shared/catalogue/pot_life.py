"""How long a mix can be used, as multiples of the pot life of 100 g. From memory: label and own timings go first."""
from .marks import COMMON, JUDGED, MEMORY

HUNDRED = 0.1  # kg; the mass whose pot life the other windows are multiples of

# name, value, least, most, mark
WINDOWS = (
    ("soft", 2.0, 1.5, 2.5, MEMORY),  # a bead of putty on wood, times the pot life of 100 g
    ("film", 3.5, 2.0, 6.0, MEMORY),  # a thin film, times the pot life of 100 g
    ("exponent", 1 / 3, 0.2, 0.45, MEMORY),  # pot life goes with mass to minus this
    ("doubling", 2.0, 1.8, 2.3, COMMON),  # how much faster for each 10 degC warmer
    ("share", 0.8, 0.6, 1.0, JUDGED),  # of the time until a mix is thick, that is used
    ("film share", 0.5, 0.34, 0.6, JUDGED),  # the same of a film whose time is one to the gel: it is thick long before
)
# hardener speed, lowest working temperature [K], mark
LOWEST = (("fast", 278.15, MEMORY), ("medium", 285.15, MEMORY), ("slow", 291.15, MEMORY))

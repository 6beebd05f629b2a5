"""Generic resin systems to start from, all from memory: a product's own label goes before them.

Densities 1.15 and 0.98 g/mL and the pot times are typical figures remembered, no product's.
The weights follow from them.
"""
from .marks import MEMORY

DENSITIES = "1.15 : 0.98 g/mL"

# id, label as a message, mark, typed text of the record's fields
SYSTEMS = tuple([
    (key, ("row-system", {"ratio": ratio}), MEMORY, (
        ("name", name), ("by_volume", ratio), ("densities", DENSITIES), ("speed", speed),
        ("pot_time", pot_time), ("pot_mass", "100 g"), ("pot_temperature", "25 °C")))
    for key, name, ratio, speed, pot_time in (
        ("1-1", "One to one", "1 : 1", "medium", "30 min"),
        ("2-1", "Two to one", "2 : 1", "medium", "30 min"),
        ("3-1", "Three to one", "3 : 1", "medium", "30 min"),
        ("4-1", "Four to one", "4 : 1", "fast", "15 min"),
        ("5-1", "Five to one", "5 : 1", "slow", "45 min"))])

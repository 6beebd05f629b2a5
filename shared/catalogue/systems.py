"""Generic resin systems to start from, all from memory: a product's own label goes before them.

Densities 1.15 and 0.98 g/mL and the pot times are typical figures remembered, no product's.
The weights follow from them.
"""
from .marks import MEMORY

DENSITIES = "1.15 : 0.98 g/mL"

# id, label, mark, typed text of the record's fields
SYSTEMS = (
    ("1-1", "1 : 1 by volume", MEMORY, (
        ("name", "One to one"), ("by_volume", "1 : 1"), ("densities", DENSITIES), ("speed", "medium"),
        ("pot_time", "30 min"), ("pot_mass", "100 g"), ("pot_temperature", "25 °C"))),
    ("2-1", "2 : 1 by volume", MEMORY, (
        ("name", "Two to one"), ("by_volume", "2 : 1"), ("densities", DENSITIES), ("speed", "medium"),
        ("pot_time", "30 min"), ("pot_mass", "100 g"), ("pot_temperature", "25 °C"))),
    ("3-1", "3 : 1 by volume", MEMORY, (
        ("name", "Three to one"), ("by_volume", "3 : 1"), ("densities", DENSITIES), ("speed", "medium"),
        ("pot_time", "30 min"), ("pot_mass", "100 g"), ("pot_temperature", "25 °C"))),
    ("4-1", "4 : 1 by volume", MEMORY, (
        ("name", "Four to one"), ("by_volume", "4 : 1"), ("densities", DENSITIES), ("speed", "fast"),
        ("pot_time", "15 min"), ("pot_mass", "100 g"), ("pot_temperature", "25 °C"))),
    ("5-1", "5 : 1 by volume", MEMORY, (
        ("name", "Five to one"), ("by_volume", "5 : 1"), ("densities", DENSITIES), ("speed", "slow"),
        ("pot_time", "45 min"), ("pot_mass", "100 g"), ("pot_temperature", "25 °C"))),
)

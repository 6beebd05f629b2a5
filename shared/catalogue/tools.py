"""Scales and pump sets to start from: steps and strokes as such tools commonly have them; one's own go before."""
from .marks import COMMON, MEMORY

SCALES = (
    ("1g", "Scale that shows 1 g", COMMON, (("name", "Kitchen scale"), ("step", "1 g"), ("most", "5 kg"))),
    ("0.1g", "Scale that shows 0.1 g", COMMON, (("name", "Fine scale"), ("step", "0.1 g"), ("most", "500 g"))),
    ("5g", "Scale that shows 5 g", COMMON, (("name", "Old scale"), ("step", "5 g"), ("most", "10 kg"))),
)
PUMPS = (
    ("equal", "Two equal pumps, {10 mL}", MEMORY, (("name", "Equal pumps"), ("strokes", "10 : 10 mL"))),
)

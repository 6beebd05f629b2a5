"""Limits that a verdict rests on. The label's own figure goes before them."""
from .marks import MEMORY

AIM, STOP = 0.02, 0.05
# name, value, mark
LIMITS = (
    ("aim", AIM, MEMORY),  # a ratio error up to this is good, of the hardener
    ("stop", STOP, MEMORY),  # one above this is too much
)

"""Cups, graduated cups and syringes to start from: sizes as such things commonly have them, from memory.

A builder measures the own cup's inside with a ruler and replaces these.
"""
from .marks import COMMON, MEMORY

CUPS = (
    ("small", "Small tapered cup, about {200 mL}", MEMORY, (
        ("name", "Small cup"), ("bottom", "48 mm"), ("top", "68 mm"), ("height", "80 mm"))),
    ("medium", "Tapered cup, about {400 mL}", MEMORY, (
        ("name", "Tapered cup"), ("bottom", "60 mm"), ("top", "80 mm"), ("height", "105 mm"))),
    ("tin", "Straight tin, about {400 mL}", MEMORY, (
        ("name", "Straight tin"), ("bottom", "73 mm"), ("top", "73 mm"), ("height", "105 mm"))),
    ("tub", "Wide tub, about {1 L}", MEMORY, (
        ("name", "Wide tub"), ("bottom", "100 mm"), ("top", "118 mm"), ("height", "110 mm"))),
)
GRADUATED = (
    ("30mL", "Medicine cup, 30 mL in steps of 2.5", MEMORY, (("name", "Medicine cup"), ("holds", "30 mL"),
                                                            ("step", "2.5 mL"))),
    ("400mL", "Mixing cup, 400 mL in steps of 10", MEMORY, (("name", "Mixing cup"), ("holds", "400 mL"),
                                                           ("step", "10 mL"))),
    ("1L", "Mixing cup, 1 L in steps of 50", MEMORY, (("name", "Large mixing cup"), ("holds", "1 L"),
                                                     ("step", "50 mL"))),
)
SYRINGES = (
    ("60-20", "One of {60 mL}, one of {20 mL}", COMMON, (("name", "60 and 20"), ("holds", "60 : 20 mL"),
                                                     ("steps", "1 : 1 mL"))),
    ("10-10", "Two of {10 mL}", COMMON, (("name", "Two of 10"), ("holds", "10 mL"), ("steps", "0.5 mL"))),
)

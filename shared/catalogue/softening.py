"""Where a cure stops for want of warmth, what a post-cure brings, and how hot a hull gets in the sun.

Room-temperature epoxy hardens until its glass temperature has overtaken the warmth it is held at; then hardly anything
moves in it any more, however long it stands.
"""
from .marks import COMMON, JUDGED, MEMORY, PUBLISHED

# what, least, most, unit, mark: of boat epoxies with amine hardeners. Own runs of a cure that its own glass slows
# (tests/test_softening.py) end 10 to 16 K above with the published free-volume slope, 6 to 10 K above with twice of it.
GLASS = (
    ("Glass temperature of the fresh mix", 223.15, 253.15, "K", MEMORY),
    ("Glass temperature, wholly cured", 328.15, 368.15, "K", MEMORY),
    ("DiBenedetto's lambda", 0.3, 0.6, "", MEMORY),
    ("Glass temperature above that of the cure", 10.0, 25.0, "dK", JUDGED),
)
# what, value, unit, mark
POST = (
    ("Full strength is counted from", 293.15, "K", COMMON),
    ("Post-cure, held at", 323.15, "K", COMMON),
    ("Post-cure, held for", 8 * 3600.0, "hours", COMMON),
    ("Post-cure, climb in an hour", 10.0, "dK", COMMON),
    ("Post-cure, below the glass temperature wanted", 10.0, "dK", COMMON),
    ("Warmth counted within", 30 * 86400.0, "hours", JUDGED),
)
# key, label, share of the sunlight taken up, least and most, mark, source
COLOURS = (
    ("white", "White", 0.2, 0.45, PUBLISHED, "lbnl"),
    ("mid", "A colour, grey or bare wood", 0.4, 0.8, PUBLISHED, "lbnl"),
    ("dark", "Dark or black", 0.8, 0.95, PUBLISHED, "e1980"),
)
# name, value, unit, mark, source
SUNLIT = (
    ("Full sun", 1000.0, "W/m2", PUBLISHED, "e1980"),
    ("Hull in the sun, air", 310.0, "K", PUBLISHED, "e1980"),
    ("Clear sky, colder by", 10.0, "dK", PUBLISHED, "e1980"),
    ("Convection, still air", 5.0, "W/(m2 K)", PUBLISHED, "e1980"),
    ("Convection, breeze", 12.0, "W/(m2 K)", PUBLISHED, "e1980"),
    ("Emittance of paint", 0.9, "", PUBLISHED, "e1980"),
)
TABLES = (
    ("Where a cure stops", GLASS, (0,), (1, 2, 3)),
    ("Post-cure and full strength", POST, (0,), (1, 2)),
    ("Sunlight that a hull takes up", COLOURS, (1,), (2, 3)),
    ("Hull in the sun", SUNLIT, (0,), (1, 2)),
)

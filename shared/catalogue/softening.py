"""Where a cure stops for want of warmth, what a post-cure brings, and how hot a hull gets in the sun.

Room-temperature epoxy hardens until its glass temperature has overtaken the warmth it is held at; then hardly anything
moves in it any more, however long it stands.
"""
from .marks import COMMON, JUDGED, MEMORY, PUBLISHED

# what, least, most, unit, mark: of boat epoxies with amine hardeners. Own runs of a cure that its own glass slows
# (tests/test_softening.py) end 10 to 16 K above with the published free-volume slope, 6 to 10 K above with twice of it.
GLASS = (
    ("facts-cure-stops.fresh", 223.15, 253.15, "K", MEMORY),
    ("facts-cure-stops.cured", 328.15, 368.15, "K", MEMORY),
    ("facts-cure-stops.lambda", 0.3, 0.6, "", MEMORY),
    ("facts-cure-stops.above-cure", 10.0, 25.0, "dK", JUDGED),
)
# what, value, unit, mark
POST = (
    ("facts-post-cure.full-from", 293.15, "K", COMMON),
    ("facts-post-cure.held-at", 323.15, "K", COMMON),
    ("facts-post-cure.held-for", 8 * 3600.0, "hours", COMMON),
    ("facts-post-cure.climb", 10.0, "dK", COMMON),
    ("facts-post-cure.within", 30 * 86400.0, "hours", JUDGED),
    ("facts-post-cure.long", 72 * 3600.0, "hours", JUDGED),
)
# key, label, share of the sunlight taken up, least and most, mark, source
COLOURS = (
    ("white", "facts-hull-colour.white", 0.2, 0.45, PUBLISHED, "lbnl"),
    ("mid", "facts-hull-colour.mid", 0.4, 0.8, PUBLISHED, "lbnl"),
    ("dark", "facts-hull-colour.dark", 0.8, 0.95, PUBLISHED, "e1980"),
)
# name, value, unit, mark, source
SUNLIT = (
    ("facts-hull-sun.full", 1000.0, "W/m2", PUBLISHED, "e1980"),
    ("facts-hull-sun.air", 310.0, "K", PUBLISHED, "e1980"),
    ("facts-hull-sun.sky", 10.0, "dK", PUBLISHED, "e1980"),
    ("facts-hull-sun.still", 5.0, "W/(m2 K)", PUBLISHED, "e1980"),
    ("facts-hull-sun.breeze", 12.0, "W/(m2 K)", PUBLISHED, "e1980"),
    ("facts-hull-sun.emittance", 0.9, "", PUBLISHED, "e1980"),
)
TABLES = (
    ("facts-cure-stops", GLASS, (0,), (1, 2, 3)),
    ("facts-post-cure", POST, (0,), (1, 2)),
    ("facts-hull-colour", COLOURS, (1,), (2, 3)),
    ("facts-hull-sun", SUNLIT, (0,), (1, 2)),
)

"""Rooms, fans and draughts to start from, and the rules for make-up air."""
from .marks import COMMON, JUDGED, MEMORY, PUBLISHED

# id, label, mark, typed text of the record's fields
ROOMS = tuple([
    (key, words + ", {" + length + "} by {" + width + "} by {" + height + "}", COMMON,
     (("name", name), ("length", length), ("width", width), ("height", height)))
    for key, words, name, length, width, height in (
        ("shed", "Shed", "Shed", "6 m", "3.5 m", "2.4 m"),
        ("garage", "Garage", "Garage", "6 m", "6 m", "2.5 m"),
        ("tent", "Tent over the boat", "Tent", "8 m", "3 m", "2.5 m"))])
FANS = tuple([(key, name + ", {" + flow + "}", JUDGED, (("name", name), ("flow", flow))) for key, name, flow in (
    ("small", "Window fan", "240 m3/h"),
    ("box", "Large fan", "1500 m3/h"))])

# key, label, air changes per hour that can be counted on without a fan, mark, source
DRAUGHTS = (
    ("shut", "Everything shut", 0.15, PUBLISHED, "windows-shut"),
    # below the 1.5 and 2.3 that were measured in houses with one and two openings (Johnson et al., 2004)
    ("one", "Open on one side", 1.0, JUDGED, ""),
    ("two", "Open on two sides", 2.0, JUDGED, ""),
)

# name, value, unit, mark, source
RULES = (
    ("mixing factor, lowest in an ordinary room", 3, "", MEMORY, ""),
    ("mixing factor, highest in an ordinary room", 10, "", PUBLISHED, "mmwr"),
    ("pressure a fan may spend on the make-up opening", 5, "Pa", JUDGED, ""),
    ("discharge coefficient of a plain opening", 0.6, "", COMMON, ""),
    ("share of the lower explosive limit that is not to be passed", 0.1, "%", COMMON, ""),
)
TABLES = (
    ("Rooms", ROOMS, (1,), ()),
    ("Fans", FANS, (1,), ()),
    ("Draughts, air changes per hour", DRAUGHTS, (1,), (2,)),
    ("Rules for air", RULES, (0,), (1, 2)),
)

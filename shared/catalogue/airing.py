"""Rooms, fans and draughts to start from, and the rules for make-up air."""
from .marks import COMMON, JUDGED, PUBLISHED

# id, label as a message, mark, typed text of the record's fields; a label is made of them
ROOMS = tuple([
    (key, (label, {"length": "{" + length + "}", "width": "{" + width + "}", "height": "{" + height + "}"}), COMMON,
     (("name", name), ("length", length), ("width", width), ("height", height)))
    for key, label, name, length, width, height in (
        ("shed", "row-room.shed", "Shed", "6 m", "3.5 m", "2.4 m"),
        ("garage", "row-room.garage", "Garage", "6 m", "6 m", "2.5 m"),
        ("tent", "row-room.tent", "Tent", "8 m", "3 m", "2.5 m"))])
FANS = tuple([(key, (label, {"flow": "{" + flow + "}"}), JUDGED, (("name", name), ("flow", flow)))
              for key, label, name, flow in (("small", "row-fan.small", "Window fan", "240 m3/h"),
                                             ("box", "row-fan.box", "Large fan", "1500 m3/h"))])

# key, label, air changes per hour that can be counted on without a fan, mark, source
DRAUGHTS = (
    ("shut", "air-draught.shut", 0.15, PUBLISHED, "windows-shut"),
    # below the 1.5 and 2.3 that were measured in houses with one and two openings (Johnson et al., 2004)
    ("one", "air-draught.one", 1.0, JUDGED, ""),
    ("two", "air-draught.two", 2.0, JUDGED, ""),
)

# name, value, unit, mark, source
RULES = (
    # perfect mixing, 1, is not counted on
    ("air-rule-mixing-lowest", 3, "", JUDGED, ""),
    ("air-rule-mixing-highest", 10, "", PUBLISHED, "mmwr"),
    ("air-rule-pressure", 5, "Pa", JUDGED, ""),
    ("air-rule-discharge", 0.6, "", COMMON, ""),
    ("air-rule-explosive", 0.1, "%", COMMON, ""),
)
TABLES = (
    ("Rooms", ROOMS, (1,), ()),
    ("Fans", FANS, (1,), ()),
    ("facts-draughts", DRAUGHTS, (1,), (2,)),
    ("facts-air-rules", RULES, (0,), (1, 2)),
)

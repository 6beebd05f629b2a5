"""First aid for what burns skin and eyes, as amine hardener does, and a pot that smokes: the steps in their order.

The words are the official precautionary statements (`hazards.PRECAUTIONS`); what is added to them has its own source.
"""
from .marks import COMMON, PUBLISHED

# key, official statement, mark, source
STEPS = (
    ("eyes", "P305+P351+P338", PUBLISHED, "ghs"),
    ("skin", "P303+P361+P353", PUBLISHED, "ghs"),
    ("swallowed", "P301+P330+P331", PUBLISHED, "ghs"),
    ("inhaled", "P304+P340", PUBLISHED, "ghs"),
    ("call", "P310", PUBLISHED, "ghs"),
    ("clothes", "P363", PUBLISHED, "ghs"),
)
# what is added to a step: its key, text, mark, source; {minutes}: the row below
ADDED = (
    ("eyes", "At least {minutes}, and on the way to a doctor.", PUBLISHED, "eyewash"),
    ("eyes", "Hold the lids open.", COMMON, ""),
    ("skin", "At least {minutes}.", PUBLISHED, "eyewash"),
    ("skin", "Hardener: water first, undress under it, rinse again.", PUBLISHED, "icsc-0620"),
    ("swallowed", "Rest. To a doctor.", PUBLISHED, "icsc-0620"),
    ("inhaled", "Half upright. Signs may come hours later.", PUBLISHED, "icsc-0620"),
    ("call", "In all cases a doctor.", PUBLISHED, "icsc-0620"),
    ("call", "Label and data sheet in the hand.", COMMON, ""),
)
# what a step without words before its colon is called
CALLED = (("call", "CALL"), ("clothes", "CLOTHES"))

# name, value, unit, mark, source
RINSING = (
    ("minutes of rinsing eyes or skin, at the least", 900, "s", PUBLISHED, "eyewash"),
    ("water of an eyewash in a minute", 0.0015, "m3", PUBLISHED, "eyewash"),
)
MINUTES, FLOW = RINSING[0][1], RINSING[1][1] / 60  # s, m3/s

# name, text, mark, source
EMERGENCY = (
    ("112", "In the EU 112 reaches the emergency services, from any phone.", PUBLISHED, "112"),
)

# a pot that smokes or burns, in this order: key, text, mark, source
HOT_STEPS = (
    ("out", "Everybody out of the smoke and upwind. Do not breathe it.", COMMON, ""),
    ("carry", "Can you still hold it? Goggles, leather gloves or tongs: outdoors, onto bare ground or metal.", COMMON,
     ""),
    ("spread", "While it flows: spread it thin. Never a lid, never a bin.", COMMON, ""),
    ("water", "No water into the pot: it can spit. Cold water around it, in a metal pail, may slow it.", COMMON, ""),
    ("leave", "It smokes and you cannot carry it, or it burns: leave, door shut, call the fire service.", COMMON,
     ""),
    ("burns", "A small fire, and your back to the way out: powder, foam, carbon dioxide or water spray. Cans near it "
     "are kept cool by spraying with water.", PUBLISHED, "icsc-0620"),
    ("watch", "Watch it until it is cold: for hours.", COMMON, ""),
)
TABLES = (
    ("First aid, step by step", STEPS, (0,), (1,)),
    ("First aid, what is added", ADDED, (0,), (1,)),
    ("First aid, rinsing", RINSING, (0,), (1, 2)),
    ("Emergency numbers", EMERGENCY, (0,), (1,)),
    ("A pot that smokes, step by step", HOT_STEPS, (0,), (1,)),
)

"""First aid for what burns skin and eyes, as amine hardener does, and a pot that smokes: the steps in their order.

The words are the official precautionary statements (`hazards.PRECAUTIONS`); what is added to them has its own source.
"""
from .marks import COMMON, PUBLISHED

# key, official statement, when it is done, what is done: the two halves of the statement; mark, source
STEPS = (
    ("eyes", "P305+P351+P338", "ghs-p305-p351-p338.when", "ghs-p305-p351-p338.do", PUBLISHED, "ghs"),
    ("skin", "P303+P361+P353", "ghs-p303-p361-p353.when", "ghs-p303-p361-p353.do", PUBLISHED, "ghs"),
    ("swallowed", "P301+P330+P331", "ghs-p301-p330-p331.when", "ghs-p301-p330-p331.do", PUBLISHED, "ghs"),
    ("inhaled", "P304+P340", "ghs-p304-p340.when", "ghs-p304-p340.do", PUBLISHED, "ghs"),
    ("call", "P310", "aid-call", "ghs-p310.do", PUBLISHED, "ghs"),
    ("clothes", "P363", "aid-clothes", "ghs-p363", PUBLISHED, "ghs"),
)
# what is added to a step: its key, text, mark, source; $minutes: the row below
ADDED = (
    ("eyes", "aid-eyes-minutes", PUBLISHED, "eyewash"),
    ("eyes", "aid-eyes-lids", COMMON, ""),
    ("skin", "aid-skin-minutes", PUBLISHED, "eyewash"),
    ("skin", "aid-skin-hardener", PUBLISHED, "icsc-0620"),
    ("swallowed", "aid-swallowed-rest", PUBLISHED, "icsc-0620"),
    ("inhaled", "aid-inhaled-upright", PUBLISHED, "icsc-0620"),
    ("call", "aid-call-doctor", PUBLISHED, "icsc-0620"),
    ("call", "aid-call-label", COMMON, ""),
)
# name, value, unit, mark, source
RINSING = (
    ("aid-rinsing-minutes", 900, "s", PUBLISHED, "eyewash"),
    ("aid-rinsing-water", 0.0015, "litres", PUBLISHED, "eyewash"),
)
MINUTES, FLOW = RINSING[0][1], RINSING[1][1] / 60  # s, m3/s

# name, text, mark, source
EMERGENCY = (
    ("112", "aid-112.text", PUBLISHED, "112"),
)

# a pot that smokes or burns, in this order: key, text, mark, source
HOT_STEPS = (
    ("out", "smoking-pot-out", COMMON, ""),
    ("carry", "smoking-pot-carry", COMMON, ""),
    ("spread", "smoking-pot-spread", COMMON, ""),
    ("water", "smoking-pot-water", COMMON, ""),
    ("leave", "smoking-pot-leave", COMMON, ""),
    ("burns", "smoking-pot-burns", PUBLISHED, "icsc-0620"),
    ("watch", "smoking-pot-watch", COMMON, ""),
)
# what the steps are called beside `tasks.TOPICS`
NAMED = (("swallowed", "facts-first-aid.swallowed"), ("inhaled", "facts-first-aid.inhaled"),
         ("call", "facts-first-aid.call"), ("out", "facts-smoking-pot.out"), ("carry", "facts-smoking-pot.carry"),
         ("spread", "facts-smoking-pot.spread"), ("water", "facts-smoking-pot.water"),
         ("leave", "facts-smoking-pot.leave"), ("burns", "facts-smoking-pot.burns"),
         ("watch", "facts-smoking-pot.watch"))
TABLES = (
    ("facts-first-aid", STEPS, (0,), (1,)),
    ("facts-first-aid-added", ADDED, (0,), (1,)),
    ("facts-rinsing", RINSING, (0,), (1, 2)),
    ("facts-emergency", EMERGENCY, (0,), (1,)),
    ("facts-smoking-pot", HOT_STEPS, (0,), (1,)),
)

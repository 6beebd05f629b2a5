"""What can hurt, in the words of the open standard where it has words; otherwise common practice.

The product's own safety data sheet decides: these are reminders of what it usually says.
"""
from .marks import COMMON, PUBLISHED

FIRST = ("Your product's own safety data sheet, your local rules and licensed practice come first. "
         "These are reminders of what they usually say.")

# stands on every screen while nothing more pressing does (common practice)
REMINDER = "Gloves and goggles before a pot is opened. The product's data sheet comes first."

# name, heading, text, mark, source
STANDING = (
    ("gloves", "Hands", "Wear protective gloves: nitrile, two pairs, no latex as the only barrier. A wet or torn glove "
     "comes off at once. Which glove lasts how long: the glove maker's ISO 374 data for this product.", COMMON, ""),
    ("sensitise", "Skin", "May cause an allergic skin reaction. Once sensitised, for good. Never wash it off with "
     "solvent: soap and plenty of water.", PUBLISHED, "ghs"),
    ("skin_first_aid", "On the skin", "IF ON SKIN: Wash with plenty of water. If skin irritation or rash occurs: "
     "Get medical help.", PUBLISHED, "ghs"),
    ("eyes", "Eyes", "Goggles on before a pot is opened. Hardener may cause severe skin burns and eye damage.",
     PUBLISHED, "ghs"),
    ("eyes_first_aid", "In the eyes", "IF IN EYES: Rinse cautiously with water for several minutes. Remove contact "
     "lenses, if present and easy to do. Continue rinsing. Get medical help.", PUBLISHED, "ghs"),
    ("air", "Air", "Work where air moves through, and keep others and children out. A dust mask does not stop vapour. "
     "Inside a hull or a tank: not without its own plan and licensed practice.", COMMON, ""),
    ("heat", "A pot that heats up", "Mixed resin heats itself; a full cup can smoke, burn and catch fire. Mix what "
     "you can use. A hot pot goes outdoors onto bare ground, spread thin if it still flows, never under a lid.",
     COMMON, ""),
    ("dust", "Dust", "Powders and sanding dust: a particle filter (EN 149 FFP2 or FFP3, or 42 CFR 84 N95 or better). "
     "Never sand epoxy that is not fully cured.", COMMON, ""),
    ("waste", "Leftovers", "Let leftovers cure spread thin, outdoors; dispose of contents and container by local "
     "rules. Avoid release to the environment.", PUBLISHED, "ghs"),
)

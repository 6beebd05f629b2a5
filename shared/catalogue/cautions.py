"""What can hurt, in the words of the open standard where it has words; otherwise common practice.

The product's own safety data sheet decides: these are reminders of what it usually says.
"""
from .losses import BY_KEY
from .marks import COMMON, JUDGED, PUBLISHED

FIRST = ("Your product's safety data sheet, local codes and licensed practice come first; these are reminders of what "
         "they usually say.")

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

# The cautions of the moment, the more urgent first: which one stands is decided by shared/cautions.py from the inputs.
# name, heading, text, the panel's task it leads to, mark, source
MOMENT = (
    ("hot_now", "It is hot", "Out with it now: bare ground outdoors, thin if it still flows, never a lid.", "hot",
     COMMON, ""),
    ("hull", "Inside the hull", "Not without air led in, air tested, someone outside and licensed practice.",
     "confined", COMMON, ""),
    ("poison", "{signal}: your product, {code}", "{official}.", "open", PUBLISHED, "ghs"),
    ("asthma", "{signal}: your product, {code}", "{official}.", "mix", PUBLISHED, "ghs"),
    ("vapour", "Solvent vapour", "No flame or spark, air moving through. See the grams this room takes.", "wipe",
     COMMON, ""),
    ("uncured", "Not cured", "Do not sand it yet: the dust of uncured epoxy can sensitise.", "sand", COMMON, ""),
    ("big_pot", "A big pot", "{amount} in one cup can smoke. Split it, or spread it in a tray at once.", "hot",
     COMMON, ""),
    ("warm_pot", "Warm today", "At {temperature} a cup of {amount} runs away sooner. Mix less, spread it at once.",
     "hot", COMMON, ""),
    ("hot_pot", "It can run away", "{amount} left in one pot can smoke and burn. Use it up, or spread it in a tray at "
     "once.", "hot", COMMON, ""),
    ("in_sun", "In the sun", "Shade first: spread thin in the sun it is thick sooner than a cup in the shade.",
     "hot", JUDGED, ""),
    ("short_pot", "Little time", "About {minutes} in the cup. Everything laid out first, then mix.", "mix", COMMON, ""),
    ("powder", "{filler}", "Particle mask and goggles on before the bag is opened. {about}", "powder", COMMON, ""),
    ("sanding", "Dust", "Particle mask on, dust taken off at the tool.", "sand", COMMON, ""),
    ("lasting", "{signal}: your product, {code}", "{official}.", "open", PUBLISHED, "ghs"),
    ("corrosive", "{signal}, goggles on: {code}", "{official}.", "open", PUBLISHED, "ghs"),
    ("small_room", "This room", "{room} with {changes}: open two sides before the lids come off.", "mix", COMMON, ""),
    ("thick", "Thick in one go", "{depth} deep heats itself on the boat too. Two passes.", "hot", COMMON, ""),
    ("cold", "Cold", "Warm the cans in warm water, never over a flame; no heater with a flame near lids.", "open",
     COMMON, ""),
    ("blush", "Wash first", "Water and a pad before any paper: blush sanded in stays in.", "peel", COMMON, ""),
    ("gloves", "Gloves", "Two pairs and goggles on. A wet or torn glove comes off at once.", "open", COMMON, ""),
    ("wash", "A drop on the skin", "Stop and wash with soap and plenty of water. Never solvent.", "open", COMMON, ""),
)

# the codes of a product's own sheet that bring up a caution, the gravest first
OWN_CODES = (
    ("poison", ("H330", "H310", "H300", "H331", "H311", "H301")),
    ("asthma", ("H334",)),
    ("lasting", ("H350", "H340", "H360", "H370", "H372")),
    ("corrosive", ("H314", "H318")),
)

# what a caution advises, and what it advises in the sun
SPREAD_IN_SUN = (("spread it in a tray at once", "spread it in the shade"),
                 ("spread it at once", "spread it in the shade"))

RUNS_AWAY = 373.15  # K
# name, value, unit, mark, source: from where on a caution of the moment stands (SI)
FROM = (
    ("mass in one cup that is big", 0.3, "kg", JUDGED, ""),
    ("mass in one cup that is big on a warm day", 0.15, "kg", JUDGED, ""),
    ("peak of a pot that runs away", RUNS_AWAY, "K", JUDGED, ""),
    ("smallest mass whose peak is shown", 0.01, "kg", JUDGED, ""),
    ("air that is warm", 301.15, "K", JUDGED, ""),
    ("air that is cold", 285.15, "K", JUDGED, ""),
    ("pot that is hot", 323.15, "K", JUDGED, ""),
    ("usable time that is short", 600.0, "s", JUDGED, ""),
    ("air changes that are few", 2 / 3600, "1/s", JUDGED, ""),
    ("room that is small", 30.0, "m3", JUDGED, ""),
    ("putty that is thick", BY_KEY["one_pass"].value, "m", BY_KEY["one_pass"].mark, ""),
)
TABLES = (
    ("Cautions that always stand", STANDING, (1,), (2,)),
    ("Cautions of the moment", MOMENT, (1,), (2,)),
    ("From where a caution stands", FROM, (0,), (1, 2)),
)

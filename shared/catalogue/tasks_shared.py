"""Statements that belong to several tasks, each written once."""
from .marks import COMMON, PUBLISHED

WET = ("open", "mix", "powder", "lay", "confined", "clean", "spill", "leftover")  # uncured epoxy is about
DRY = ("powder", "sand")
SOLVENT = ("wipe", "clean")
TROUBLE = ("hot", "fire")

# key, tasks, topic, text, mark, source
SHARED = (
    ("gloves_pair", ("open", "mix", "powder", "lay", "confined", "spill", "leftover"), "hands",
     "Nitrile, two pairs. The outer one comes off at once when wet or torn, and by the times the glove maker gives.",
     COMMON, ""),
    ("gloves_type", ("open", "mix", "lay", "clean"), "hands",
     "Glove type A, B or C says how many of 18 test chemicals it holds back, and how long. No epoxy is among the 18: "
     "ask the glove maker about resin and hardener.", PUBLISHED, "iso374"),
    ("goggles", ("open", "mix", "powder", "confined", "spill", "leftover"), "eyes",
     "Goggles that close at the sides, on before the first lid is off.", COMMON, ""),
    ("skin_wash", ("open", "mix", "powder", "lay", "confined", "clean", "leftover"), "skin",
     "A drop on the skin: stop, wash with soap and plenty of water, then go on.", COMMON, ""),
    ("skin_covered", ("mix", "lay", "confined", "spill"), "skin",
     "Sleeves down, wrists covered. Keep the back of the glove off your face.", COMMON, ""),
    ("sensitise", ("open", "mix", "lay", "powder", "clean", "peel", "sand"), "skin",
     "May cause an allergic skin reaction.", PUBLISHED, "ghs"),
    ("clothes_out", WET, "clothes", "Contaminated work clothing should not be allowed out of the workplace.",
     PUBLISHED, "ghs"),
    ("clothes_wash", ("open", "lay", "confined", "spill", "waste", "peel"), "clothes",
     "Take off contaminated clothing and wash it before reuse.", PUBLISHED, "ghs"),
    ("vapour_mask", ("open", "mix", "lay", "spill", "leftover"), "breathing",
     "With air moving through, no mask is usual. A dust mask does not stop vapour.", COMMON, ""),
    ("vapour_filter", ("mix", "lay", "spill", "wipe", "clean"), "breathing",
     "Where the sheet asks for a vapour filter: type A is for organic vapour that boils above {65 degC}, AX for below "
     "(acetone), K for ammonia and its organic derivatives.", PUBLISHED, "en14387"),
    ("dust_mask", DRY, "breathing",
     "A particle filter on before the dust is: EN 149 FFP2 or FFP3, or 42 CFR 84 N95 or better.", COMMON, ""),
    ("mask_fit", ("powder", "sand", "wipe"), "breathing",
     "A mask works only where it seals. With a beard it does not.", COMMON, ""),
    ("air_through", ("open", "mix", "lay", "leftover", "peel"), "air",
     "Doors and windows open on two sides, the air at your back.", COMMON, ""),
    ("no_flame", ("open", "mix", "lay", "powder", "peel"), "fire",
     "No flame, no heater with a flame and no smoking where this is done.", COMMON, ""),
    ("others_away", ("open", "mix", "lay", "confined", "wipe", "clean", "peel", "sand", "powder", "spill"), "others",
     "Children, pets and lookers-on stay out. Lids on and pots labelled, even for a minute.", COMMON, ""),
    ("no_solvent_on_skin", ("open", "mix", "lay", "clean", "wipe", "spill", "peel"), "never",
     "Never solvent on skin: it carries resin in.", COMMON, ""),
    ("no_latex", ("open", "mix", "lay"), "never", "Never latex as the only barrier.", COMMON, ""),
    ("no_food", ("open", "mix", "lay", "waste"), "never",
     "Never eat, drink or smoke with resin about, nor mix in a cup somebody might drink from.", COMMON, ""),
    ("aid_skin", ("open", "mix", "lay", "powder", "clean", "leftover", "waste", "peel", "spill", "confined"), "aid",
     "IF ON SKIN: Wash with plenty of water. If skin irritation or rash occurs: Get medical help.",
     PUBLISHED, "ghs"),
    ("aid_eyes", ("open", "mix", "powder", "wipe", "clean", "peel", "sand", "spill", "leftover", "waste"), "aid",
     "IF IN EYES: Rinse cautiously with water for several minutes. Remove contact lenses, if present and easy to do. "
     "Continue rinsing. Get medical help.", PUBLISHED, "ghs"),
    ("aid_inhaled", ("wipe", "sand", "hot", "fire", "spill"), "aid",
     "IF INHALED: Remove person to fresh air and keep comfortable for breathing. Get medical help.", PUBLISHED, "ghs"),
    ("aid_burn", TROUBLE, "aid",
     "A burn: cool running water, twenty minutes. Do not pull off what sticks. Get medical help.", COMMON, ""),
    ("stop_rash", ("open", "mix", "lay", "clean", "peel", "leftover", "waste"), "stop",
     "Itching, a rash, swollen eyes or a tight chest: stop for today and get medical help. Sensitised is for good.",
     COMMON, ""),
    ("stop_dizzy", ("wipe", "clean", "confined", "spill"), "stop",
     "A headache, dizziness or a strong smell that fades: out into fresh air at once.", COMMON, ""),
    ("sheet_at_hand", ("open", "spill", "fire", "waste"), "have",
     "The products' safety data sheets, on paper or on the phone. Their numbers lead.", COMMON, ""),
)
TABLES = (("What to do, for several tasks", SHARED, (2,), (3,)),)

"""Statements for the tasks with wet epoxy: opening, mixing, powders, laying, and work inside a hull."""
from .marks import COMMON, PUBLISHED

# key, tasks, topic, text, mark, source
MIXING = (
    ("open_have", ("open",), "have", "Gloves, goggles, soap and water, paper towels, a bag for waste.", COMMON, ""),
    ("open_eyes", ("open",), "eyes",
     "Hardener may cause severe skin burns and eye damage: open it away from your face.", COMMON, ""),
    ("open_stop", ("open",), "stop", "A can that bulges, leaks or has lost its label: do not open it.", COMMON, ""),
    ("mix_have", ("mix",), "have", "A tray or bare ground outdoors where a hot pot can go, and the way to it clear.",
     COMMON, ""),
    ("mix_fire", ("mix",), "fire", "Mixed resin heats itself. Mix what you can use, and get it out of the cup soon.",
     COMMON, ""),
    ("mix_never", ("mix",), "never", "Never change the ratio to make it quicker or slower.", COMMON, ""),
    ("mix_stop", ("mix",), "stop", "The cup feels warm before you are done: spread it out now.", COMMON, ""),
    ("powder_have", ("powder",), "have", "Mask on, scoop and lid at hand, a damp cloth for what falls beside.",
     COMMON, ""),
    ("powder_air", ("powder",), "air", "No fan blowing on the powder. Add it low and slowly, fold it in, then air the "
     "room.", COMMON, ""),
    ("powder_eyes", ("powder",), "eyes", "Powder flies up when it is poured: goggles, not glasses.", COMMON, ""),
    ("powder_breathing", ("powder",), "breathing",
     "Do not breathe dust. A half mask that fits is rated to let through a tenth at most.",
     PUBLISHED, "1910.134"),
    ("powder_fire", ("powder",), "fire", "Wood dust is combustible: no spark near it.", PUBLISHED, "npg"),
    ("powder_never", ("powder",), "never", "Never blow powder away, never sweep it dry.", COMMON, ""),
    ("powder_stop", ("powder",), "stop",
     "You see dust hanging in the light, or the mask grows hard to breathe through.", COMMON, ""),
    ("lay_have", ("lay",), "have", "Spare gloves laid out, more than you think. Somewhere to drop what is wet.",
     COMMON, ""),
    ("lay_eyes", ("lay",), "eyes", "Goggles or side shields, above all overhead: rollers spit.", COMMON, ""),
    ("lay_clothes", ("lay",), "clothes", "Long sleeves, an apron or a coverall, knees and hair covered.", COMMON, ""),
    ("lay_never", ("lay",), "never", "Never kneel or lean in wet resin, nor answer the phone with the wet glove.",
     COMMON, ""),
    ("lay_stop", ("lay",), "stop", "The resin strings, warms or drags: it is gelling. Leave it, do not thin it.",
     COMMON, ""),
    ("confined_first", ("confined",), "have",
     "A plan in writing, a trained person outside who stays and never follows in, a way to pull you out, "
     "and licensed practice where the law asks for it. Without these: do not.", COMMON, ""),
    ("confined_tested", ("confined",), "have",
     "Air tested before entry, in this order: oxygen, then flammable vapour, then toxic vapour. Oxygen from 19.5 up "
     "to 22 %, flammable vapour under a tenth of its lower limit.", PUBLISHED, "1915.12"),
    ("confined_air", ("confined",), "air",
     "Air led in by a hose to where you breathe and out at the lowest place, all the time. Vapour is heavier than air "
     "and lies in the bilge.", COMMON, ""),
    ("confined_breathing", ("confined",), "breathing",
     "A filter mask is no answer where air may lack oxygen or vapour may build up: that needs supplied air and "
     "training.", COMMON, ""),
    ("confined_fire", ("confined",), "fire",
     "No solvent, no spark, no lamp or tool that is not made for it. One spilt cup of solvent can fill a hull.",
     COMMON, ""),
    ("confined_never", ("confined",), "never", "Never alone, never with solvent, never in after somebody who has gone "
     "down: call for help.", COMMON, ""),
    ("confined_aid", ("confined",), "aid", "Somebody down inside: call the emergency number first, blow air in, do not "
     "follow.", COMMON, ""),
    ("confined_stop", ("confined",), "stop", "The fan stops, the alarm sounds, the person outside has to leave: "
     "everybody out.", COMMON, ""),
    ("confined_deck", ("confined",), "have", "Where it can wait or be done from outside, through a hatch, with a long "
     "handle: do that.", COMMON, ""),
)
TABLES = (("What to do with wet epoxy", MIXING, (2,), (3,)),)

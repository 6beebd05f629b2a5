"""Statements for what is left over and what goes wrong: hot pots, leftovers, waste, spills, fire."""
from .marks import COMMON, PUBLISHED

# key, tasks, topic, text, mark, source
TROUBLE = (
    ("hot_have", ("hot",), "have", "A clear way outdoors, bare ground or a metal tray, a metal bucket, leather gloves, "
     "a garden hose.", COMMON, ""),
    ("hot_hands", ("hot", "fire"), "hands", "Do not carry a smoking cup in thin gloves: they melt. Use a metal pail or "
     "tongs.", COMMON, ""),
    ("hot_eyes", ("hot",), "eyes", "Goggles on, face turned away: it can spit.", COMMON, ""),
    ("hot_breathing", ("hot",), "breathing", "Do not breathe the smoke. No mask of yours is made for it.", COMMON, ""),
    ("hot_skin", ("hot",), "skin", "Hot resin sticks and burns on. Keep sleeves down.", COMMON, ""),
    ("hot_clothes", ("hot", "fire"), "clothes", "Synthetic clothes melt onto skin: keep well back in them.",
     COMMON, ""),
    ("hot_air", ("hot",), "air", "Out of the room with it, doors open, stay upwind.", COMMON, ""),
    ("hot_fire", ("hot",), "fire",
     "Outdoors onto bare ground, away from everything that burns. While it still flows: spread it thin in a tray.",
     COMMON, ""),
    ("hot_others", ("hot",), "others", "Everybody out of the smoke. Nobody leans over the pot.", COMMON, ""),
    ("hot_never", ("hot",), "never", "Never a lid on a hot pot, never into a bin.", COMMON, ""),
    ("hot_stop", ("hot",), "stop",
     "It smokes and you cannot carry it at arm's length: leave, and call the fire service.", COMMON, ""),
    ("leftover_have", ("leftover",), "have", "A flat tray lined with film, outdoors, under a roof.", COMMON, ""),
    ("leftover_fire", ("leftover",), "fire",
     "Spread leftovers thin, a finger's breadth at most, outdoors. In a full cup they can smoke and burn hours later.",
     COMMON, ""),
    ("leftover_others", ("leftover",), "others", "Out of reach of children and pets until it is hard.", COMMON, ""),
    ("leftover_never", ("leftover",), "never", "Never a lid on it, never poured together in one pot.", COMMON, ""),
    ("leftover_stop", ("leftover",), "stop", "A tray that warms: thinner, and further from the house.", COMMON, ""),
    ("waste_have", ("waste",), "have", "A metal bin with a lid outdoors, bags, labels that say what is in them.",
     COMMON, ""),
    ("waste_hands", ("waste",), "hands", "Wet waste only with gloves. Peel gloves off inside out, into the same bag.",
     COMMON, ""),
    ("waste_eyes", ("waste",), "eyes", "Goggles for pouring and for squeezing out bags.", COMMON, ""),
    ("waste_breathing", ("waste",), "breathing", "Outdoors no mask is usual. For dust: a particle filter.", COMMON, ""),
    ("waste_skin", ("waste",), "skin", "Wash hands and arms afterwards, with soap, up to where the glove ended.",
     COMMON, ""),
    ("waste_air", ("waste",), "air", "Sort it outdoors.", COMMON, ""),
    ("waste_fire", ("waste",), "fire",
     "Solvent cloths flat to dry outdoors or under water in a closed metal bin: a heap can take fire.", COMMON, ""),
    ("waste_release", ("waste", "spill"), "never", "Avoid release to the environment.", PUBLISHED, "ghs"),
    ("waste_never", ("waste",), "never", "Never liquid resin, hardener or solvent in the household bin or the drain. "
     "Local rules say where it goes.", COMMON, ""),
    ("waste_others", ("waste",), "others", "Nothing within reach of children. Tell whoever takes it away what it is.",
     COMMON, ""),
    ("spill_have", ("spill",), "have", "Sand, earth or cat litter, a scraper, bags, soap and water, gloves.",
     COMMON, ""),
    ("spill_air", ("spill",), "air", "Open up first. Solvent spilt indoors: out, no switch touched, until it is aired.",
     COMMON, ""),
    ("spill_fire", ("spill",), "fire", "No sawdust or paper heap for mixed or hardener-wet spills: it can heat. Sand "
     "is better.", COMMON, ""),
    ("spill_collect", ("spill",), "have", "Collect spillage.", PUBLISHED, "ghs"),
    ("spill_stop", ("spill",), "stop", "More than you can take up in a few minutes, or it runs to a drain: call for "
     "help.", COMMON, ""),
    ("fire_have", ("fire",), "have", "A foam, powder or CO2 extinguisher by the door, known to everybody; the "
     "emergency number.", COMMON, ""),
    ("fire_fire", ("fire",), "fire", "Small, and your back to the door: try once. Otherwise out, door shut, call the "
     "fire service.", COMMON, ""),
    ("fire_breathing", ("fire",), "breathing", "The smoke of epoxy is poisonous. Stay low, get out.", COMMON, ""),
    ("fire_eyes", ("fire",), "eyes", "Smoke blinds: know the way out by hand.", COMMON, ""),
    ("fire_skin", ("fire",), "skin", "Clothes on fire: stop, lie down, roll; water on them.", COMMON, ""),
    ("fire_air", ("fire",), "air", "Fan off, doors shut behind you.", COMMON, ""),
    ("fire_others", ("fire",), "others", "Everybody out and counted, before anything else.", COMMON, ""),
    ("fire_never", ("fire",), "never", "Never a water jet on burning solvent. Never go back in.", COMMON, ""),
    ("fire_stop", ("fire",), "stop", "It is not out after one extinguisher: leave.", COMMON, ""),
)
TABLES = (("What to do when it goes wrong", TROUBLE, (2,), (3,)),)

"""What may hurt somebody, typed a second time: every statement and every limit of safety, each with where it comes "
"from.

Nothing here is taken from shared/: tests/test_safety_table.py compares the two, so that a change to either asks for
both. Limits stand in the units people read them in (mg/m3, ppm, %, g, degC, min), not in those of the engine.
How a row is known stands last in it:
    READ    found in the source, or in a copy of it, when this table was typed (2026)
    KNOWN   remembered by who typed this; the source is named but was not opened
A row of common practice or from memory has no source: two hands that remember the same are still only memory.
"""

READ, KNOWN = "read", "known"
PUBLISHED, COMMON, MEMORY = "published", "common practice", "from memory"

# --- UN GHS, Annex 3, section 1: codes and words (READ in copies of Annex 3, revision 4 and later, and of CLP Annex
# III);
# signal words and pictograms by Annex 1. A statement with several categories has the one that liquids and powders of a
# boat shed usually have, or the worse: H226 category 3, H290 1, H304 1, H228 1, H242 C, H222
# 1, H261 2, H305 2, H229 alone, H272 2, H280 compressed, H281 refrigerated, H240 to H242 A to C.
# H240 to H242 and H270 to H281: words, signal words and signs READ in Annex I, 2.4.3 to 2.15.3 of the CLP
# as it stood on 1 September 2025, and in two lists of the European Commission's customs laboratories.
# Words of EUH440, 441, 450 and 451 were read in two public lists; their signal word, Danger, is remembered.
# Words of all READ rows were compared with two public copies when they were typed; H227 with OSHA's category 4 of
# flammable liquids, EUH380 and 381 with guidance on Regulation (EU) 2023/707, categories 1 and 2.
# code: (words, signal word, pictograms, mark, known)
HAZARDS = {
    "H222": ("Extremely flammable aerosol", "Danger", "flame", PUBLISHED, READ),
    "H223": ("Flammable aerosol", "Warning", "flame", PUBLISHED, READ),
    "H224": ("Extremely flammable liquid and vapour", "Danger", "flame", PUBLISHED, READ),
    "H225": ("Highly flammable liquid and vapour", "Danger", "flame", PUBLISHED, READ),
    "H226": ("Flammable liquid and vapour", "Warning", "flame", PUBLISHED, READ),
    "H227": ("Combustible liquid", "Warning", "", PUBLISHED, READ),
    "H228": ("Flammable solid", "Danger", "flame", PUBLISHED, READ),
    "H229": ("Pressurised container: May burst if heated", "Warning", "", PUBLISHED, READ),
    "H240": ("Heating may cause an explosion", "Danger", "bomb", PUBLISHED, READ),
    "H241": ("Heating may cause a fire or explosion", "Danger", "bomb flame", PUBLISHED, READ),
    "H242": ("Heating may cause a fire", "Danger", "flame", PUBLISHED, READ),
    "H250": ("Catches fire spontaneously if exposed to air", "Danger", "flame", PUBLISHED, READ),
    "H251": ("Self-heating: may catch fire", "Danger", "flame", PUBLISHED, READ),
    "H252": ("Self-heating in large quantities: may catch fire", "Warning", "flame", PUBLISHED, READ),
    "H260": ("In contact with water releases flammable gases which may ignite spontaneously", "Danger", "flame",
             PUBLISHED, READ),
    "H261": ("In contact with water releases flammable gases", "Danger", "flame", PUBLISHED, READ),
    "H270": ("May cause or intensify fire; oxidiser", "Danger", "oxidiser", PUBLISHED, READ),
    "H271": ("May cause fire or explosion; strong oxidiser", "Danger", "oxidiser", PUBLISHED, READ),
    "H272": ("May intensify fire; oxidiser", "Danger", "oxidiser", PUBLISHED, READ),
    "H280": ("Contains gas under pressure; may explode if heated", "Warning", "gas", PUBLISHED, READ),
    "H281": ("Contains refrigerated gas; may cause cryogenic burns or injury", "Warning", "gas", PUBLISHED, READ),
    "H290": ("May be corrosive to metals", "Warning", "corrosion", PUBLISHED, READ),
    "H300": ("Fatal if swallowed", "Danger", "skull", PUBLISHED, READ),
    "H301": ("Toxic if swallowed", "Danger", "skull", PUBLISHED, READ),
    "H302": ("Harmful if swallowed", "Warning", "exclamation", PUBLISHED, READ),
    "H303": ("May be harmful if swallowed", "Warning", "", PUBLISHED, READ),
    "H304": ("May be fatal if swallowed and enters airways", "Danger", "health", PUBLISHED, READ),
    "H305": ("May be harmful if swallowed and enters airways", "Warning", "health", PUBLISHED, READ),
    "H310": ("Fatal in contact with skin", "Danger", "skull", PUBLISHED, READ),
    "H311": ("Toxic in contact with skin", "Danger", "skull", PUBLISHED, READ),
    "H312": ("Harmful in contact with skin", "Warning", "exclamation", PUBLISHED, READ),
    "H313": ("May be harmful in contact with skin", "Warning", "", PUBLISHED, READ),
    "H314": ("Causes severe skin burns and eye damage", "Danger", "corrosion", PUBLISHED, READ),
    "H315": ("Causes skin irritation", "Warning", "exclamation", PUBLISHED, READ),
    "H316": ("Causes mild skin irritation", "Warning", "", PUBLISHED, READ),
    "H317": ("May cause an allergic skin reaction", "Warning", "exclamation", PUBLISHED, READ),
    "H318": ("Causes serious eye damage", "Danger", "corrosion", PUBLISHED, READ),
    "H319": ("Causes serious eye irritation", "Warning", "exclamation", PUBLISHED, READ),
    "H320": ("Causes eye irritation", "Warning", "", PUBLISHED, READ),
    "H330": ("Fatal if inhaled", "Danger", "skull", PUBLISHED, READ),
    "H331": ("Toxic if inhaled", "Danger", "skull", PUBLISHED, READ),
    "H332": ("Harmful if inhaled", "Warning", "exclamation", PUBLISHED, READ),
    "H333": ("May be harmful if inhaled", "Warning", "", PUBLISHED, READ),
    "H334": ("May cause allergy or asthma symptoms or breathing difficulties if inhaled", "Danger", "health",
             PUBLISHED, READ),
    "H335": ("May cause respiratory irritation", "Warning", "exclamation", PUBLISHED, READ),
    "H336": ("May cause drowsiness or dizziness", "Warning", "exclamation", PUBLISHED, READ),
    "H340": ("May cause genetic defects", "Danger", "health", PUBLISHED, READ),
    "H341": ("Suspected of causing genetic defects", "Warning", "health", PUBLISHED, READ),
    "H350": ("May cause cancer", "Danger", "health", PUBLISHED, READ),
    "H350i": ("May cause cancer by inhalation", "Danger", "health", PUBLISHED, READ),
    "H351": ("Suspected of causing cancer", "Warning", "health", PUBLISHED, READ),
    "H360": ("May damage fertility or the unborn child", "Danger", "health", PUBLISHED, READ),
    "H360F": ("May damage fertility", "Danger", "health", PUBLISHED, READ),
    "H360D": ("May damage the unborn child", "Danger", "health", PUBLISHED, READ),
    "H360FD": ("May damage fertility. May damage the unborn child", "Danger", "health", PUBLISHED, READ),
    "H360Fd": ("May damage fertility. Suspected of damaging the unborn child", "Danger", "health", PUBLISHED, READ),
    "H360Df": ("May damage the unborn child. Suspected of damaging fertility", "Danger", "health", PUBLISHED, READ),
    "H361": ("Suspected of damaging fertility or the unborn child", "Warning", "health", PUBLISHED, READ),
    "H361f": ("Suspected of damaging fertility", "Warning", "health", PUBLISHED, READ),
    "H361d": ("Suspected of damaging the unborn child", "Warning", "health", PUBLISHED, READ),
    "H361fd": ("Suspected of damaging fertility. Suspected of damaging the unborn child", "Warning", "health",
             PUBLISHED, READ),
    "H362": ("May cause harm to breast-fed children", "", "", PUBLISHED, READ),
    "H370": ("Causes damage to organs", "Danger", "health", PUBLISHED, READ),
    "H371": ("May cause damage to organs", "Warning", "health", PUBLISHED, READ),
    "H372": ("Causes damage to organs through prolonged or repeated exposure", "Danger", "health", PUBLISHED, READ),
    "H373": ("May cause damage to organs through prolonged or repeated exposure", "Warning", "health", PUBLISHED, READ),
    "H400": ("Very toxic to aquatic life", "Warning", "environment", PUBLISHED, READ),
    "H401": ("Toxic to aquatic life", "", "", PUBLISHED, READ),
    "H402": ("Harmful to aquatic life", "", "", PUBLISHED, READ),
    "H410": ("Very toxic to aquatic life with long lasting effects", "Warning", "environment", PUBLISHED, READ),
    "H411": ("Toxic to aquatic life with long lasting effects", "", "environment", PUBLISHED, READ),
    "H412": ("Harmful to aquatic life with long lasting effects", "", "", PUBLISHED, READ),
    "H413": ("May cause long lasting harmful effects to aquatic life", "", "", PUBLISHED, READ),
    "H420": ("Harms public health and the environment by destroying ozone in the upper atmosphere", "Warning",
             "exclamation", PUBLISHED, READ),
    "EUH018": ("In use may form flammable/explosive vapour-air mixture", "", "", PUBLISHED, READ),
    "EUH019": ("May form explosive peroxides", "", "", PUBLISHED, READ),
    "EUH066": ("Repeated exposure may cause skin dryness or cracking", "", "", PUBLISHED, READ),
    "EUH070": ("Toxic by eye contact", "", "", PUBLISHED, READ),
    "EUH071": ("Corrosive to the respiratory tract", "", "", PUBLISHED, READ),
    "EUH204": ("Contains isocyanates. May produce an allergic reaction", "", "", PUBLISHED, READ),
    "EUH205": ("Contains epoxy constituents. May produce an allergic reaction", "", "", PUBLISHED, READ),
    "EUH208": ("Contains (name of sensitising substance). May produce an allergic reaction", "", "", PUBLISHED, READ),
    "EUH209": ("Can become highly flammable in use", "", "", PUBLISHED, READ),
    "EUH210": ("Safety data sheet available on request", "", "", PUBLISHED, READ),
    "EUH211": ("Warning! Hazardous respirable droplets may be formed when sprayed. Do not breathe spray or mist", "",
               "", PUBLISHED, READ),
    "EUH212": ("Warning! Hazardous respirable dust may be formed when used. Do not breathe dust", "", "", PUBLISHED,
               READ),
    "EUH380": ("May cause endocrine disruption in humans", "Danger", "", PUBLISHED, READ),
    "EUH381": ("Suspected of causing endocrine disruption in humans", "Warning", "", PUBLISHED, READ),
    "EUH430": ("May cause endocrine disruption in the environment", "Danger", "", PUBLISHED, READ),
    "EUH431": ("Suspected of causing endocrine disruption in the environment", "Warning", "", PUBLISHED, READ),
    "EUH440": ("Accumulates in the environment and living organisms including in humans", "Danger", "",
               PUBLISHED, KNOWN),
    "EUH441": ("Strongly accumulates in the environment and living organisms including in humans", "Danger", "",
               PUBLISHED, KNOWN),
    "EUH450": ("Can cause long-lasting and diffuse contamination of water resources", "Danger", "", PUBLISHED, KNOWN),
    "EUH451": ("Can cause very long-lasting and diffuse contamination of water resources", "Danger", "", PUBLISHED,
             KNOWN),
}
# what brings a caution on every screen that knows the product: the caution; a code not here brings none. Of several the
# earlier counts. (Acute toxicity 1 to 3, respiratory sensitisation, what burns or explodes and bears Danger, categories
# 1 of what lasts, H314 and H318, EUH070.)
BRINGS = {
    "H330": "poison", "H310": "poison", "H300": "poison", "H331": "poison", "H311": "poison", "H301": "poison",
    "H334": "asthma",
    "H240": "fire", "H241": "fire", "H271": "fire", "H270": "fire", "H250": "fire", "H260": "fire", "H242": "fire",
    "H272": "fire", "H222": "fire", "H224": "fire", "H251": "fire", "H225": "fire",
    "H228": "fire", "H261": "fire",
    "H350": "lasting", "H340": "lasting", "H360": "lasting", "H370": "lasting", "H372": "lasting",
    "H314": "corrosive", "H318": "corrosive", "EUH070": "eyes",
}
# joined routes: CLP Annex III, table 1.2 (READ in copies)
JOINED = {
    "H300+H310": "Fatal if swallowed or in contact with skin",
    "H300+H330": "Fatal if swallowed or if inhaled",
    "H310+H330": "Fatal in contact with skin or if inhaled",
    "H300+H310+H330": "Fatal if swallowed, in contact with skin or if inhaled",
    "H301+H311": "Toxic if swallowed or in contact with skin",
    "H301+H331": "Toxic if swallowed or if inhaled",
    "H311+H331": "Toxic in contact with skin or if inhaled",
    "H301+H311+H331": "Toxic if swallowed, in contact with skin or if inhaled",
    "H302+H312": "Harmful if swallowed or in contact with skin",
    "H302+H332": "Harmful if swallowed or if inhaled",
    "H312+H332": "Harmful in contact with skin or if inhaled",
    "H302+H312+H332": "Harmful if swallowed, in contact with skin or if inhaled",
}

# --- UN GHS, Annex 3, section 2. code: (words, the words of older labels or "", known)
EYES = "Rinse cautiously with water for several minutes. Remove contact lenses, if present and easy to do. " \
       "Continue rinsing."
PRECAUTIONS = {
    "P210": ("Keep away from heat, hot surfaces, sparks, open flames and other ignition sources. No smoking.", "",
             READ),
    "P260": ("Do not breathe dust/fume/gas/mist/vapours/spray.", "", READ),
    "P261": ("Avoid breathing dust/fume/gas/mist/vapours/spray.", "", READ),
    "P264": ("Wash ... thoroughly after handling.", "", READ),
    "P271": ("Use only outdoors or in a well-ventilated area.", "", READ),
    "P272": ("Contaminated work clothing should not be allowed out of the workplace.", "", READ),
    "P273": ("Avoid release to the environment.", "", READ),
    "P280": ("Wear protective gloves/protective clothing/eye protection/face protection/...", "", READ),
    "P302+P352": ("IF ON SKIN: Wash with plenty of water/...", "IF ON SKIN: Wash with plenty of soap and water.", READ),
    "P304+P340": ("IF INHALED: Remove person to fresh air and keep comfortable for breathing.",
                  "IF INHALED: Remove victim to fresh air and keep at rest in a position comfortable for breathing.",
                  READ),
    "P305+P351+P338": ("IF IN EYES: " + EYES, "", READ),
    "P301+P310": ("IF SWALLOWED: Immediately call a POISON CENTER/doctor/...", "", READ),
    "P301+P330+P331": ("IF SWALLOWED: Rinse mouth. Do NOT induce vomiting.", "", READ),
    "P303+P361+P353": ("IF ON SKIN (or hair): Take off immediately all contaminated clothing. Rinse skin with water "
                       "[or shower].", "", READ),
    "P310": ("Immediately call a POISON CENTER/doctor/...", "Get emergency medical help immediately. (P316)", READ),
    "P313": ("Get medical help. (P317)", "Get medical advice/attention.", READ),
    "P316": ("Get emergency medical help immediately.", "Immediately call a POISON CENTER/doctor/... (P310)", KNOWN),
    "P317": ("Get medical help.", "Get medical advice/attention. (P313)", READ),
    "P333+P313": ("If skin irritation or rash occurs: Get medical help. (P333+P317)",
                  "If skin irritation or rash occurs: Get medical advice/attention.", READ),
    "P333+P317": ("If skin irritation or rash occurs: Get medical help.",
                  "If skin irritation or rash occurs: Get medical advice/attention. (P333+P313)", READ),
    "P342+P311": ("If experiencing respiratory symptoms: Call a POISON CENTER/doctor/...", "", READ),
    "P362+P364": ("Take off contaminated clothing and wash it before reuse.", "", READ),
    "P363": ("Wash contaminated clothing before reuse.", "", READ),
    "P391": ("Collect spillage.", "", READ),
    "P501": ("Dispose of contents/container to ...", "", READ),
}

# --- first aid for what burns (P statements: as above, READ). What is added: ICSC 0620 (DETA), READ in a copy: "First
# rinse with plenty of water, then remove contaminated clothes and rinse again", "Half-upright position", "Symptoms may
# be delayed", "Rinse mouth. Do NOT induce vomiting. Rest. Refer for medical attention", "IN ALL CASES CONSULT A
# DOCTOR"; fire: "Powder, alcohol-resistant foam, water spray, carbon dioxide", "keep drums, etc., cool by spraying with
# water". Eyewash: WAC 296-800-15030, 15 minutes at 1.5 L/min (READ by others of this house)
FIRST_AID = (
    ("IF IN EYES", "Rinse cautiously with water for several minutes. Remove contact lenses, if present and easy to do. "
     "Continue rinsing. Rinse for at least 15 minutes, also on the way to a doctor. Hold the eyelids open."),
    ("IF ON SKIN (or hair)", "Take off immediately all contaminated clothing. Rinse skin with water or shower. "
     "Rinse for at least 15 minutes. Hardener: rinse first, undress under the water, rinse again."),
    ("IF SWALLOWED", "Rinse mouth. Do NOT induce vomiting. Rest. Go to a doctor."),
    ("IF INHALED", "Remove person to fresh air and keep comfortable for breathing. Sit half upright. Symptoms may "
     "come hours later."),
    ("CALL", "Immediately call a POISON CENTER/doctor. Always see a doctor. Have the label and data sheet ready."),
    ("CLOTHES", "Wash contaminated clothing before reuse."),
)
RINSING = {"minutes": 15, "L/min": 1.5, "at hand L": 25}
HOT_STEPS = (
    "Get everybody out and upwind. Do not breathe the smoke.",
    "If you can still hold the pot: goggles on, leather gloves or tongs. Carry it outdoors, onto bare ground or metal.",
    "Spread the mix thin while it flows. Never use a lid or a bin.",
    "Never pour water in: the mix can spit. Cold water around the pot, in a metal pail, may slow it.",
    "If it burns, or smokes and you cannot carry it: leave, shut the door, call the fire service.",
    "Fight only a small fire, with the way out behind you: powder, foam, carbon dioxide or water spray. Cool nearby "
    "cans with water spray.",
    "Watch the pot for hours, until it is cold.",
)

# --- what such products usually carry: (codes, words, mark). Resin: CLP Annex VI, 603-074-00-8, KNOWN. Hardener: READ,
# each code in one or more of four public sheets of 2013 to 2024 (isophoronediamine; with triethylenetetramine), H335 in
# GisChem's sheet of diethylenetriamine; the water's is category 3, H412.
CLASSES = {
    "resin": ("H315 H317 H319 H411", "Number average molecular weight up to 700.", PUBLISHED),
    "hardener": ("H302 H312 H314 H317 H318 H332 H335 H412", "Hardeners differ a lot. Some may also cause asthma, H334.",
                 PUBLISHED),
    "solvent": ("H225 H319 H336", "Typical of acetone, alcohols and butanone.", PUBLISHED),
    "powder": ("", "The dust is the hazard. Most carry no statement.", COMMON),
}
# UN GHS 1.4.10.5.3.1 (READ in a copy), CLP Article 26: which sign makes which exclamation marks needless
PRECEDENCE = {
    "skull": ("", "every exclamation mark"),
    "corrosion": ("", "H315 H319"),
    "health": ("H334", "H315 H317 H319"),
}
# sign: (its number in CLP Annex V, KNOWN; the picture in words)
PICTOGRAMS = {
    "bomb": ("GHS01", "a bomb that bursts: it can explode"),
    "flame": ("GHS02", "a flame over a line: it burns"),
    "oxidiser": ("GHS03", "a flame over a circle: it feeds a fire"),
    "gas": ("GHS04", "a gas cylinder: under pressure"),
    "corrosion": ("GHS05", "drops eating into a hand and a bar: it burns skin and eyes"),
    "skull": ("GHS06", "a skull over crossed bones: poisonous in small amounts"),
    "health": ("GHS08", "a person with a star on the chest: lasting harm"),
    "exclamation": ("GHS07", "an exclamation mark: irritates, sensitises the skin, or is harmful"),
    "environment": ("GHS09", "a bare tree and a dead fish: poisonous to water life"),
}

# --- dust, mg/m3 over a working day: (dust, which part, who) -> (limit, mark, source, known). Typed in November 2026
# with these open: NIOSH's pages of wood dust, cotton dust and amorphous silica; OSHA's wood page (ACGIH 1 and 0.5);
# 29 CFR 1910.1043(c)(1) and NIOSH 95-113 (0.2); a public list of agents (ACGIH, raw cotton 0.1 thoracic); a public list
# of the limits of crystalline silica (OSHA 0.05, ACGIH 0.025); the MAK Commission's documentation of 2023 (amorphous
# 0.02); DGUV on TRGS 900 (1.25 and 10); the annex of Directive 2004/37/EC as national regulations print it (2 and 0.1).
DUST_LIMITS = {
    ("wood", "total", "npg"): (1, PUBLISHED, "NIOSH Pocket Guide, wood dust, TWA 1 mg/m3, Ca (page of 2019)", READ),
    ("wood", "inhalable", "tlv"): (1, PUBLISHED, "OSHA, wood dust: ACGIH, all other species 1 mg/m3", READ),
    ("wood", "inhalable", "eu-carcinogens"): (2, PUBLISHED, "hardwood 2, also mixed with other wood, from 2023", READ),
    ("wood", "total", "table-z1"): (15, PUBLISHED, "OSHA wood dust page; NIOSH Pocket Guide, OSHA PEL 15 total", READ),
    ("wood", "respirable", "table-z1"): (5, PUBLISHED, "the same, 5 respirable", READ),
    ("red cedar", "inhalable", "tlv"): (0.5, PUBLISHED, "OSHA, wood dust: ACGIH, western red cedar 0.5 mg/m3", READ),
    ("silica", "respirable", "mak"): (0.02, PUBLISHED, "synthetic amorphous silica, 0.02 mg/m3 respirable", READ),
    ("silica", "total", "npg"): (6, PUBLISHED, "NIOSH, amorphous silica, TWA 6 mg/m3", READ),
    ("silica", "total", "table-z3"): (80 / 100, PUBLISHED, "58 FR 40191: amorphous, 80 mg/m3 over %SiO2, here 100",
     READ),
    ("quartz", "respirable", "tlv"): (0.025, PUBLISHED, "ACGIH 0.025 mg/m3", READ),
    ("quartz", "respirable", "1910.1053"): (0.05, PUBLISHED, "50 micrograms per cubic metre", READ),
    ("quartz", "respirable", "eu-carcinogens"): (0.1, PUBLISHED, "respirable crystalline silica dust 0.1", READ),
    ("cotton", "thoracic", "tlv"): (0.1, PUBLISHED, "ACGIH, raw cotton, 0.1 mg/m3 thoracic", READ),
    ("cotton", "respirable", "1910.1043"): (0.2, PUBLISHED, "yarn making, 200 micrograms, respirable", READ),
    ("cotton", "total", "npg"): (0.2, PUBLISHED, "NIOSH REL below 0.200 mg/m3", READ),
    ("other", "respirable", "trgs-900"): (1.25, PUBLISHED, "general dust limit, A fraction", READ),
    ("other", "inhalable", "trgs-900"): (10, PUBLISHED, "general dust limit, E fraction", READ),
    ("other", "total", "table-z1"): (15, PUBLISHED, "58 FR 40191: nuisance dust, total 15 mg/m3", READ),
    ("other", "respirable", "table-z1"): (5, PUBLISHED, "58 FR 40191: nuisance dust, respirable 5 mg/m3", READ),
    ("talc", "respirable", "npg"): (2, PUBLISHED, "NIOSH on talc without asbestos, 2 mg/m3 (resp)", READ),
    # one source, two rows: NIOSH's recommended 5, OSHA's 15 for dust not otherwise named
    ("glass", "total", "osha-csi", 5): (5, PUBLISHED, "fibrous glass dust, NIOSH TWA 5 mg/m3 total", READ),
    ("glass", "total", "osha-csi", 15): (15, PUBLISHED, "fibrous glass dust, shipyards 15 mg/m3", READ),
}
# the strictest that must be found for what is sanded or poured: mg/m3, which part of it, where that holds. No powder
# is let off the general limit, and none that has a stricter one of its own falls under the general one.
STRICTEST = {
    "wood-flour": (1, "total dust", "US"), "silica": (0.02, "respirable dust", "Germany"),
    "quartz": (0.025, "respirable dust", "US"), "cotton": (0.1, "thoracic dust", "US"),
    "milled-glass": (1.25, "respirable dust", "Germany"), "glass-spheres": (1.25, "respirable dust", "Germany"),
    "phenolic-balloons": (1.25, "respirable dust", "Germany"), "talc": (1.25, "respirable dust", "Germany"),
    "other": (1.25, "respirable dust", "Germany"), "sanding-epoxy": (1, "total dust", "US"),
    "sanding-glass": (1.25, "respirable dust", "Germany"), "sanding-wood": (1, "total dust", "US"),
    "sanding-cedar": (0.5, "inhalable dust", "US"),
}
# what a builder may call a filler of their own: the powder whose dust it raises, None where nobody can know
CALLED = {
    "Cotton flock": "cotton", "flox": "cotton", "FLOCKS, cotton": "cotton", "silica thickener": "silica",
    "Quartz sand": "quartz", "stone flour": "quartz", "silica sand": "quartz", "hardwood flour": "wood-flour",
    "Sawdust from the saw": "wood-flour", "Glass bubbles": "glass-spheres", "hollow glass spheres": "glass-spheres",
    "phenolic balloons": "phenolic-balloons", "Milled glass fibre": "milled-glass",
    "fiberglass, cut": "milled-glass",
    "Pyrogene Kieselsäure": "silica", "Quarzmehl": "quartz", "Baumwollflocken": "cotton", "HOLZMEHL": "wood-flour",
    "Sägemehl, fein": "wood-flour", "Phenolharz-Microballons": "phenolic-balloons", "Glashohlkugeln": "glass-spheres",
    "Gemahlene Glasfaser": "milled-glass", "Talkum": "talc",
    "Talcum": "talc", "Mystery powder": None, "thousand": None,
}
# key: (the dusts, the words, mark)
POWDERS = {
    "wood-flour": ("wood", "Wood dust can burn in the air. Breathed in, it is treated as a cause of cancer.",
                   PUBLISHED),
    "silica": ("silica other", "It stays in the air for long, and dries skin and eyes.", COMMON),
    "quartz": ("quartz other", "Quartz dust scars the lungs and can cause cancer.", PUBLISHED),
    "cotton": ("cotton other", "Its dust tightens the chest, above all from raw fibre.", PUBLISHED),
    "milled-glass": ("glass other", "Splinters prick skin and eyes. Rinse, do not rub.", COMMON),
    "glass-spheres": ("glass other", "So light that a breath lifts it. Slippery on the floor.", COMMON),
    "phenolic-balloons": ("other", "So light that a breath lifts it. Organic dust can burn in the air.", COMMON),
    "talc": ("talc other", "Use only talc without asbestos. Ask for its data sheet.", COMMON),
    "other": ("other", "Read its data sheet first. Every powder has a dust limit.", COMMON),
    "sanding-epoxy": ("other wood", "Epoxy, filler and wood together: the strictest limit counts.", COMMON),
    "sanding-glass": ("other glass", "Glass dust pricks: cover wrists and neck.", COMMON),
    "sanding-wood": ("wood", "Wood dust can burn, and is treated as a cause of cancer.", PUBLISHED),
    "sanding-cedar": ("red cedar wood", "Its dust can cause asthma, and can burn.", PUBLISHED),
}
# assigned protection factor: 29 CFR 1910.134, Table 1 (KNOWN); full face: NIOSH Pocket Guide, wood dust, escape (READ)
MASKS = {"half": (10, PUBLISHED), "full": (50, PUBLISHED)}

# --- solvents: molar mass g/mol (sums of IUPAC standard atomic weights C 12.011, H 1.008, O 15.999, by hand), density
# g/mL, explosive limits %, limits in the air ppm over a working day or 15 minutes. (value, mark, source key, known)
SOLVENTS = {
    "acetone": {
        "molar": [(3 * 12.011 + 6 * 1.008 + 15.999, PUBLISHED, "iupac", READ)],
        "density": [(0.79, PUBLISHED, "osha-csi", KNOWN)],
        "lower": [(2.5, PUBLISHED, "nfpa-497", READ)],
        "upper": [(12.8, PUBLISHED, "nfpa-497", READ)],
        "day": [(250, PUBLISHED, "npg", READ), (1000, PUBLISHED, "table-z1", READ),
                (250, PUBLISHED, "tlv", KNOWN)],  # until 2014 it was 500, and 750 for 15 minutes (READ)
        "short": [(500, PUBLISHED, "tlv", KNOWN)],
    },
    "isopropanol": {
        "molar": [(3 * 12.011 + 8 * 1.008 + 15.999, PUBLISHED, "iupac", READ)],
        "density": [(0.79, PUBLISHED, "npg", KNOWN)],
        "lower": [(2.0, PUBLISHED, "nfpa-497", READ)],
        "upper": [(12.7, PUBLISHED, "nfpa-497", READ)],
        # TRGS 900: READ in public safety data sheets, 500 mg/m3 or 200 ppm, 1000 mg/m3 or 400 ppm for 15 minutes
        "day": [(400, PUBLISHED, "npg", READ), (400, PUBLISHED, "table-z1", READ), (200, PUBLISHED, "trgs-900", READ)],
        "short": [(500, PUBLISHED, "npg", READ), (400, PUBLISHED, "trgs-900", READ)],
    },
    "ethanol": {
        "molar": [(2 * 12.011 + 6 * 1.008 + 15.999, PUBLISHED, "iupac", READ)],
        "density": [(0.79, PUBLISHED, "npg", READ)],
        "lower": [(3.3, PUBLISHED, "npg", READ), (3.1, PUBLISHED, "iec-60079-20-1", READ)],
        "upper": [(19, PUBLISHED, "npg", READ)],
        "day": [(1000, PUBLISHED, "npg", READ), (1000, PUBLISHED, "table-z1", READ), (200, PUBLISHED, "trgs-900",
                                                                                       KNOWN)],
        "short": [(1000, PUBLISHED, "tlv", KNOWN)],
    },
    "butanone": {
        "molar": [(4 * 12.011 + 8 * 1.008 + 15.999, PUBLISHED, "iupac", READ)],
        "density": [(0.81, PUBLISHED, "npg", KNOWN)],
        "lower": [(1.4, PUBLISHED, "nfpa-497", READ), (1.5, PUBLISHED, "iec-60079-20-1", READ)],
        "upper": [(11.4, PUBLISHED, "nfpa-497", READ)],
        # what ACGIH intended for 2023, 200 to 75 and 300 to 150 ppm: READ in a copy of a laboratory's list that had
        # lost the substance's name; it stands between formic and nitric acid, and its limits in force are butanone's
        "day": [(200, PUBLISHED, "osha-16", READ), (200, PUBLISHED, "npg", READ), (200, PUBLISHED, "r4412-149", READ),
                (200, PUBLISHED, "gischem-butanone", READ), (75, PUBLISHED, "tlv-2023", READ)],
        "short": [(300, PUBLISHED, "npg", READ), (300, PUBLISHED, "r4412-149", READ),
                  (200, PUBLISHED, "gischem-butanone", READ), (150, PUBLISHED, "tlv-2023", READ)],
    },
}
# the lowest that must be counted with: day ppm, 15 minutes ppm, explosive %
LOWEST_SOLVENT = {"acetone": (250, 500, 2.5), "isopropanol": (200, 400, 2.0), "ethanol": (200, 1000, 3.1),
                  "butanone": (75, 150, 1.4)}

# --- air of the room: the shut room's READ; openings below what Johnson et al. (2004) measured; the tenth is
# 29 CFR 1915.12(b), READ
DRAUGHTS = {"shut": 0.15, "one": 1, "two": 2}  # air changes an hour, no fan
AIR_RULES = {"mixing lowest": 3, "mixing highest": 10, "make-up Pa": 5, "discharge": 0.6, "of lower limit %": 10}

# --- from where on a caution of the moment stands: own judgement, but for what one pass of putty takes
FROM = {
    "Big mass in one cup": (300, "g"), "Big mass in one cup on a warm day": (150, "g"),
    "Warm air": (28, "degC"), "Cold air": (12, "degC"), "Hot pot": (50, "degC"),
    "Short usable time": (10, "min"), "Few air changes": (2, "an hour"),
    "Small room": (30, "m3"), "Thick putty": (12, "mm"),
    # the temperature from which HOT, below, says that it runs away; the least mass is own judgement: 10 g at 25 degC
    # stay below 40 degC in a cup of 65 mm at both ends of the band, 20 g reach 156 degC at the hot one (small_pots.py)
    "Peak temperature of a pot that overheats": (100, "degC"),
    "Smallest mass with its peak temperature shown": (10, "g"),
}

# --- ratio, stirring, filling: from memory or common practice
RATIO = {"aim %": 2, "too much %": 5}
STIR = {"short min": 2, "long min": 3, "from g": 200, "cold degC": 15, "densest g/mL": 1.2}
CUP = {"filled %": 85, "mark off mm": 1}
# the margin of ISO 8502-4 and of common practice, 3 K above the dew point; 85 % relative humidity from memory; a cheap
# sensor is sold as good to 5 points of humidity (READ): 1.4 K at 20 degC and 55 %, told as 1.5
DEW = {"margin K": 3, "damp %": 85, "clear sky K": 5, "meter K": 1.5}

# --- how long a mix lasts: (value, least, most, mark), times as multiples of the pot life of 100 g
WINDOWS = {"soft": (2, 1.5, 2.5, MEMORY), "film": (3.5, 2, 6, MEMORY), "exponent": (1 / 3, 0.2, 0.45, MEMORY),
           "doubling": (2, 1.8, 2.3, COMMON), "share": (0.8, 0.6, 1, "own judgement"),
           # of a time to gel: own runs have a film twice as thick at 0.34 to 0.43 of it, four times at 0.5 to 0.6
           "film share": (0.5, 0.34, 0.6, "own judgement")}
COLDEST_WORK = {"fast": 5, "medium": 12, "slow": 18}  # degC, from memory
# hours at 20 to 25 degC with a fast, medium, slow hardener; what to look for; from memory
CURE = {
    "recoat_opens": (2, 3.5, 5.5, "it no longer moves, a glove still sticks"),
    "recoat_closes": (8, 14, 22, "while a thumbnail still dents it. Later: wash, sand, coat"),
    "tack_free": (4, 7, 11, "a glove no longer sticks"),
    "peel": (5, 9, 14, "hard enough that the tape stays down. Or leave the ply on until sanding"),
    "sand": (14, 24, 36, "only when dust comes off, not gum. Wash the blush off with water first"),
    "turn": (24, 24, 48, "the sample beside the seam is hard. Hold the hull at bulkheads, not at a fresh seam"),
    "light": (24, 24, 48, "the sample beside the seam is hard"),
    "full": (168, 168, 168, "5 to 7 days are usual, the longer counts"),
}
CLOSES = ("recoat_closes",)
# glass temperatures [K], DiBenedetto's lambda, how far the glass ends above the warmth [K]: remembered ranges
GLASS = [(223.15, 253.15, "K", MEMORY), (328.15, 368.15, "K", MEMORY), (0.3, 0.6, "", MEMORY),
         (10.0, 25.0, "dK", "own judgement")]  # own runs, tests/test_softening.py
POST_CURE = [(293.15, "K", COMMON), (323.15, "K", COMMON), (28800.0, "hours", COMMON), (10.0, "dK", COMMON),
             (30 * 86400.0, "hours", "own judgement"), (72 * 3600.0, "hours", "own judgement")]
HULL_COLOURS = {"white": (0.2, 0.45, PUBLISHED, "lbnl"), "mid": (0.4, 0.8, PUBLISHED, "lbnl"),
                "dark": (0.8, 0.95, PUBLISHED, "e1980")}
# ASTM E1980-11, 3.1.11, READ: 1000 W/m2, air 310 K, sky 300 K, hc 5 and 12; emittance 0.90 of its black and white
E1980 = [1000.0, 310.0, 10.0, 5.0, 12.0, 0.9]
CURE_COUNTED_AT = {"opens degC": 25, "closes degC": 20}

# --- a pot's heat. kind: (shape factor, wall m2K/W, a pot that can run away)
VESSELS = {"cup": (1 / 2, 0.005, True), "bag": (1 / 2, 0.001, True), "tray": (1 / 3, 0.001, False),
           "bead": (1 / 3, 0, False), "roll": (1 / 2, 0, True), "film": (1 / 3, 0, False)}
# (value, least, most, mark): an aliphatic amine cure 106.6 kJ/eq, READ; 55 to 60 and 46 kJ/mol, READ; what
# EN 12524 gives for epoxy, glass, timber and polypropylene, READ as the library ht ships it
HEAT = {
    "heat_per_epoxide": (106.6e3, 100e3, 118e3, PUBLISHED, "dgeba"), "undiluted": (1, 0.7, 1, "own judgement"),
    "epoxide_weight": (0.187, 0.180, 0.210, PUBLISHED, "dgeba"),
    "phr": (30, 10, 60, "own judgement"), "specific_heat": (2000, 1800, 2100, PUBLISHED, "mix-heat"),
    "filler_heat": (1000, 750, 1600, PUBLISHED, "en-12524"),
    "conductivity": (0.20, 0.17, 0.25, PUBLISHED, "en-12524"), "density": (1100, 1000, 1200, "own judgement"),
    "wood": (0.13, 0.09, 0.17, PUBLISHED, "iso-10456"), "bench": (0.08, 0.04, 0.15, PUBLISHED, "en-12524"),
    "still": (9, 9, 16, PUBLISHED, "churchill"), "moving": (20, 15, 30, PUBLISHED, "iso-6946"),  # W/m2K
    "uncatalysed": (0.06, 0.02, 0.2, MEMORY),
    "too_hot": (333.15, 323.15, 343.15, COMMON), "usable_conversion": (0.30, 0.2, 0.4, "own judgement"),
}
ENERGY = (55e3, 45e3, 65e3, PUBLISHED, "amine-cure")
HOT = {60: ("It gets too hot to hold and softens the cup", "It may get too hot to hold and soften the cup"),
       100: ("It smokes, foams, melts the cup, burns skin, and can catch fire",
             "It may smoke, foam, melt the cup, burn skin, and catch fire")}

# --- g/mL, true and loose, and the doses (g for 100 g of mixed epoxy, from a syrup to a stiff dough). True densities as
# handbooks have them, rounded: cellulose 1.5, fused silica 2.2, E-glass 2.54 to 2.60, talc 2.7 to 2.8; bubbles vary.
FILLERS = {
    "wood-flour": (1.3, 0.22, (8, 15, 25, 38, 50)), "silica": (2.2, 0.05, (1.5, 3, 5, 7.5, 10)),
    "cotton": (1.5, 0.13, (3, 6, 10, 15, 20)), "milled-glass": (2.55, 0.7, (20, 40, 60, 85, 110)),
    "glass-spheres": (0.20, 0.12, (4, 9, 16, 23, 28)), "phenolic-balloons": (0.23, 0.10, (4, 9, 16, 24, 30)),
    "talc": (2.75, 0.4, (20, 45, 75, 110, 150)),
}
NOT_FOR_SEAMS = ("glass-spheres", "phenolic-balloons", "talc")  # common practice: fairing fillers carry no load
NOT_ALONE = ("milled-glass",)  # it sinks and runs without a thickener
HAND = {"dose spread %": 30, "air %": 5, "packing %": 62}

# --- systems to start from, all from memory: parts by volume, hardener's speed, minutes in 100 g at 25 degC
SYSTEMS = {"1-1": ("1:1", "medium", 30), "2-1": ("2:1", "medium", 30), "3-1": ("3:1", "medium", 30),
           "4-1": ("4:1", "fast", 15), "5-1": ("5:1", "slow", 45)}
SYSTEM_DENSITIES = (1.15, 0.98)  # g/mL, resin and hardener

# --- catalogues of which nothing was looked up: no row of them may be called published
NEVER_PUBLISHED = ("losses", "rates", "systems", "tools",
                   "vessels", "pot_life")

# --- sun: on the level [W/m2], what a surface takes up [-], each with its range; Haurwitz at 20, 60 and 0 degrees
# from overhead, Kang's wood
SUNLIGHT = {"shade": (0, 0, 100, "own judgement", ""), "open": (190, 100, 200, "own judgement", ""),
            "some": (580, 300, 600, "own judgement", ""),
            "full": (970, 488, 1035, PUBLISHED, "haurwitz")}
TAKEN_UP = {"unknown": (0.6, 0.3, 0.95, "own judgement", ""), "white": (0.3, 0.2, 0.45, PUBLISHED, "lbnl"),
            "bare": (0.4, 0.31, 0.57, PUBLISHED, "wood-sun"), "wet": (0.55, 0.4, 0.7, "own judgement", ""),
            "putty": (0.6, 0.5, 0.7, "own judgement", ""), "dark": (0.75, 0.65, 0.85, "own judgement", ""),
            "black": (0.95, 0.9, 0.97, PUBLISHED, "e1980")}
# what passes a cover, and the heat that is given off below it; clear glass of 3 mm passes 0.837 (READ in two copies of
# the department's models)
COVERS = {"open": (1, 1, COMMON, ""), "glass": (0.84, 0.5, PUBLISHED, "clear-glass")}
# g/mL where nobody has read it: undiluted resin 1.16, READ; amines 0.96 to 1.05, READ as the library chemicals has them
PART_DENSITIES = {"resin": (1.10, 1.18, PUBLISHED, "resin-liquid"), "hardener": (0.93, 1.05, PUBLISHED, "crc-amines")}

FIRST = ("Your product's safety data sheet, local codes and licensed practice come first. These are reminders of what "
         "they usually say.")
REMINDER = "Gloves and goggles on before you open a can. The product's data sheet comes first."
HOT_POT = ("Keep watching the pot. While you can still hold it, take it outdoors. Set it on bare ground, away "
           "from anything that burns. Spread it thin if it still flows. Never put a lid on it, never bin it. Keep out "
           "of the smoke. Smoke or flames indoors: leave, close the door, call the fire service.")
SPREAD_OUT = ("The mix can overheat. Spread it thin at once, outdoors, on bare ground or in a tray, never under a "
              "lid. If it smokes or is too hot to hold, do not touch it and keep away. Then mix a new batch.")

# --- the cautions that always stand: (words, mark)
STANDING = {
    "gloves": ("Wear protective gloves: nitrile, two pairs. Never wear latex as the only barrier. Take a wet or torn "
               "glove off at once. How long a glove lasts: see the glove maker's ISO 374 data for this "
               "product.", COMMON),
    "sensitise": ("May cause an allergic skin reaction. The allergy stays for life. Wash with soap and plenty of "
                  "water, never with solvent.", PUBLISHED),
    "skin_first_aid": ("IF ON SKIN: Wash with plenty of water. If skin irritation or rash occurs: Get medical help.",
                       PUBLISHED),
    "eyes": ("Hardener may cause severe skin burns and eye damage. Goggles on before you open a can.", PUBLISHED),
    "eyes_first_aid": ("IF IN EYES: " + EYES + " Get medical help.", PUBLISHED),
    "air": ("Work where air moves through. Keep others and children out. A dust mask does not stop vapour. Inside a "
            "hull or tank: only with its own plan and licensed practice.", COMMON),
    "heat": ("Mixed resin heats itself. A full cup can smoke, burn and catch fire. Mix only what you can use. Put a "
             "hot pot outdoors on bare ground, never under a lid. Spread it thin if it still flows.", COMMON),
    "dust": ("Powder or sanding dust: wear a particle mask (EN 149 FFP2 or FFP3, or 42 CFR 84 N95 or better). Never "
             "sand epoxy that is not fully cured.", COMMON),
    "waste": ("Spread leftovers thin outdoors to cure. Dispose of contents and container by local rules. Avoid release "
              "to the environment.", PUBLISHED),
}

# --- the cautions of the moment, the most urgent first: (name, heading, words, the task it leads to, mark)
MOMENT = (
    ("hot_now", "The pot is hot", "Take it outdoors now, onto bare ground, spread thin if it still flows, never "
     "under a lid.", "hot", COMMON),
    ("hull", "Inside the hull", "Enter only with air led in, air tested, someone outside and licensed practice.",
     "confined", COMMON),
    ("poison", "{signal}: your product, {code}", "{official}.", "open", PUBLISHED),
    ("asthma", "{signal}: your product, {code}", "{official}.", "mix", PUBLISHED),
    ("fire", "{signal}: your product, {code}", "{official}.", "open", PUBLISHED),
    ("vapour", "Solvent vapour", "No flame, no spark, air moving through. See how many grams this room takes.", "wipe",
     COMMON),
    ("uncured", "Not cured", "Do not sand yet: dust of uncured epoxy can make you allergic.", "sand", COMMON),
    ("big_pot", "A big batch", "{amount} in one cup can smoke. Split it, or spread it in a tray at once.", "hot",
     COMMON),
    ("warm_pot", "Warm today", "At {temperature} a cup of {amount} overheats sooner. Mix less and spread it at once.",
     "hot", COMMON),
    ("hot_pot", "This pot can overheat", "{amount} left in one pot can smoke and burn. Use it up, or spread it in a "
     "tray at once.", "hot", COMMON),
    ("in_sun", "In the sun", "Move it into the shade, then spread it thin. A thin layer in the sun stiffens sooner "
     "than a cup in the shade.", "hot", "own judgement"),
    ("short_pot", "Little time", "About {minutes} in the cup. Lay everything out first, then mix.", "mix", COMMON),
    ("powder", "{filler}", "Particle mask and goggles on before you open the bag.", "powder", COMMON),
    ("sanding", "Dust", "Wear a particle mask and extract dust at the tool.", "sand", COMMON),
    ("lasting", "{signal}: your product, {code}", "{official}.", "open", PUBLISHED),
    ("corrosive", "{signal}, goggles on: {code}", "{official}.", "open", PUBLISHED),
    ("eyes", "Goggles on: {code}", "{official}.", "open", PUBLISHED),
    ("small_room", "Little air", "{room} with {changes} air changes an hour: open the room on two sides before you "
     "open a can.", "mix", COMMON),
    ("thick", "Thick layer", "Putty {depth} deep heats itself on the boat too. Apply it in two passes.", "hot", COMMON),
    ("cold", "Cold", "Warm the cans in warm water, never by a flame. Keep heaters with a flame away from them.",
     "open", COMMON),
    ("blush", "Wash first", "Wash the greasy film off with water and a pad before you sand: sanded in, it stays.",
     "peel", COMMON),
    ("gloves", "Gloves", "Wear two pairs, and goggles. Take a wet or torn glove off at once.", "open", COMMON),
    ("wash", "A drop on the skin", "Stop and wash with soap and plenty of water. Never solvent.", "open", COMMON),
)

# --- what is told of each task. key: (tasks, topic, words, mark and source key)
CP = COMMON
STATEMENTS = {
    # with wet epoxy
    "open_have": ("open", "have", "Gloves, goggles, soap and water, paper towels, a bag for waste.", CP),
    "open_eyes": ("open", "eyes", "Hardener may cause severe skin burns and eye damage. Open the can away from your "
                  "face.", CP),
    "open_stop": ("open", "stop", "Do not open a can that bulges, leaks or has lost its label.", CP),
    "mix_have": ("mix", "have", "A tray or bare ground outdoors for a hot pot, and a clear way to it.", CP),
    "mix_fire": ("mix", "fire", "Mixed resin heats itself. Mix only what you can use. Get it out of the cup soon.", CP),
    "mix_never": ("mix", "never", "Never change the ratio for a faster or slower cure.", CP),
    "mix_stop": ("mix", "stop", "If the cup feels warm before you are done, spread the batch out now.", CP),
    "powder_have": ("powder", "have", "Mask on. Scoop, lid and a damp cloth for spills at hand.", CP),
    "powder_air": ("powder", "air", "Point no fan at the powder. Add it slowly from close above, fold it in, then air "
                   "the room.", CP),
    "powder_eyes": ("powder", "eyes", "Powder flies up when you pour it. Wear goggles, not glasses.", CP),
    "powder_breathing": ("powder", "breathing", "Do not breathe dust. A half mask that fits is rated to let at most a "
                         "tenth through.", PUBLISHED + " 1910.134"),
    "powder_fire": ("powder", "fire", "Wood dust can burn. Keep sparks away.", PUBLISHED + " npg"),
    "powder_never": ("powder", "never", "Never blow powder away. Never sweep it dry.", CP),
    "powder_stop": ("powder", "stop", "Stop when dust hangs in the light or the mask gets hard to breathe through.",
                    CP),
    "lay_have": ("lay", "have", "More spare gloves than you think. A place to drop wet things.", CP),
    "lay_eyes": ("lay", "eyes", "Rollers spit. Wear goggles or side shields, above all overhead.", CP),
    "lay_clothes": ("lay", "clothes", "Long sleeves, an apron or a coverall, knees and hair covered.", CP),
    "lay_never": ("lay", "never", "Never kneel or lean in wet resin. Never answer the phone with a wet glove.", CP),
    "lay_stop": ("lay", "stop", "Resin that pulls strings, warms up or drags is setting. Stop there. Never thin it.",
                 CP),
    "confined_first": ("confined", "have", "Do not go in without a written plan, a way to pull you out, a trained "
                       "person outside who stays and never follows you in, and licensed practice where the law asks "
                       "for it.", CP),
    # 29 CFR 1915.12 (READ): oxygen at or above 19.5 and below 22.0 %, then flammable below 10 % LEL, then toxic
    "confined_tested": ("confined", "have", "Test the air before entry, in this order: oxygen, flammable vapour, toxic "
                        "vapour. Oxygen must be from 19.5 up to 22%, flammable vapour under a tenth of its lower "
                        "explosive limit.",
                        PUBLISHED + " 1915.12"),
    "confined_air": ("confined", "air", "Vapour is heavier than air and lies in the bilge. Lead air in by hose to "
                     "where you breathe, and out at the lowest place, all the time.", CP),
    "confined_breathing": ("confined", "breathing", "A filter mask does not protect where air may lack oxygen or "
                           "vapour may build up. You need supplied air and training.", CP),
    "confined_fire": ("confined", "fire", "One spilt cup of solvent can fill a hull with vapour. No solvent, no spark, "
                      "only lamps and tools made for such air.", CP),
    "confined_never": ("confined", "never", "Never go in alone or with solvent. Never go in after somebody who has "
                       "collapsed: call for help.", CP),
    "confined_aid": ("confined", "aid", "Somebody collapsed inside: call the emergency number first, blow air in, do "
                     "not go in.", CP),
    "confined_stop": ("confined", "stop", "Fan stops, alarm sounds or the person outside has to leave: everybody "
                      "out.", CP),
    "confined_deck": ("confined", "have", "If the work can wait, wait. Or work from outside, through a hatch, with a "
                      "long handle.", COMMON),
    # between the layers
    "wipe_have": ("wipe", "have", "A little solvent in a metal can with a lid, cloths, a lidded metal bin outdoors.",
                  CP),
    "wipe_hands": ("wipe clean", "hands", "Thin nitrile holds ketones (acetone) back for minutes only. Wear the glove "
                   "the solvent's sheet names. Change it when wet.", CP),
    "wipe_eyes": ("wipe clean", "eyes", "Solvent splashes off a cloth and a brush. Wear goggles.", CP),
    "wipe_breathing": ("wipe", "breathing", "Fresh air comes before a mask. Let it carry the vapour away.", CP),
    "wipe_skin": ("wipe", "skin", "Solvent takes the fat out of skin. Keep it off, above all off bare hands.", CP),
    "wipe_clothes": ("wipe", "clothes", "Synthetics can spark: wear cotton. Change wet clothes.", CP),
    "wipe_air": ("wipe clean", "air", "Work outdoors if you can. Indoors, see under Air what this room takes: grams "
                 "and minutes decide.", CP),
    "wipe_fire": ("wipe clean", "fire", "Keep away from heat, hot surfaces, sparks, open flames and other ignition "
                  "sources. No smoking.", PUBLISHED + " ghs"),
    "wipe_fire_low": ("wipe", "fire", "Vapour runs along the floor and can catch fire at a heater, switch or fan "
                      "motor.", CP),
    "wipe_never": ("wipe", "never", "Never wipe uncured epoxy off a person or a glove with solvent.", CP),
    "wipe_stop": ("wipe", "stop", "Stop when Air shows the vapour over the limit, or the fan is not running.", CP),
    "clean_have": ("clean", "have", "Scrapers and paper first, then as little cleaner as possible.", CP),
    "clean_breathing": ("clean", "breathing", "With the lid on the can and air moving through, usually no mask is "
                        "worn.", CP),
    "clean_never": ("clean", "never", "Never pour cleaner down a drain or on the ground.", CP),
    "peel_have": ("peel", "have", "Water, a pad, clean cloths, thick gloves, a bag for the peel ply.", CP),
    "peel_hands": ("peel", "hands", "Leather or thick work gloves for cut glass edges, waterproof ones for washing.",
                   CP),
    "peel_eyes": ("peel", "eyes", "Cured splinters fly when peel ply tears off. Wear goggles.", CP),
    "peel_breathing": ("peel", "breathing", "Washing wet needs no mask. Sanding afterwards needs one.", CP),
    "peel_skin": ("peel", "skin", "The greasy film is amine blush. Wash it off the work and off you, with water.", CP),
    "peel_never": ("peel", "never", "Never sand blush in. Wash it off with water first.", CP),
    "peel_stop": ("peel", "stop", "If it is tacky under the peel ply, leave it to cure.", CP),
    "sand_unsure": ("sand", "stop", "Not sure it is cured? Press a fingernail in and sand one stroke. If the nail "
                    "leaves a mark, or dust clumps and clogs, wait.", CP),
    "sand_soft": ("sand", "stop", "The dust of uncured epoxy can make you allergic. Do not sand it. Warm it, wait, or "
                  "scrape it in curls.", CP),
    "sand_hard": ("sand", "stop", "Stop where dust clumps, the paper clogs or it smells: that patch is not cured.", CP),
    "sand_have": ("sand", "have", "A vacuum on the tool, or water and wet paper. A mask. Clothes to leave behind.",
                  CP),
    "sand_hands": ("sand", "hands", "Wear nitrile gloves, cuffs under the sleeves. Nothing loose near a turning disc.",
                   CP),
    "sand_eyes": ("sand", "eyes", "Glass and epoxy dust scratch. Wear goggles that seal.", CP),
    "sand_skin": ("sand", "skin", "Sleeves down and closed at the wrist, neck covered. Then cold water and soap before "
                  "you touch your face.", CP),
    "sand_clothes": ("sand", "clothes", "Wear a coverall that stays in the workshop. Vacuum it, never beat or blow "
                     "it.", CP),
    "sand_air": ("sand", "air", "Extract the dust at the tool. Blow what the fan catches outdoors, away from people.",
                 CP),
    "sand_fire": ("sand", "fire", "Wood dust can burn. Empty the bag outdoors, away from sparks.",
                  PUBLISHED + " npg"),
    "sand_never": ("sand", "never", "Never make dust of uncured epoxy.", CP),
    # when it goes wrong
    "hot_have": ("hot", "have", "A clear way outdoors, bare ground or a metal tray, a metal bucket, leather gloves, a "
                 "garden hose.", CP),
    "hot_hands": ("hot fire", "hands", "Do not carry a smoking cup in thin gloves: they melt. Use a metal bucket or "
                  "tongs.",
                  CP),
    "hot_eyes": ("hot", "eyes", "The mix can spit. Goggles on, face turned away.", CP),
    "hot_breathing": ("hot", "breathing", "Do not breathe the smoke. None of your masks is made for it.", CP),
    "hot_skin": ("hot", "skin", "Hot resin sticks and keeps burning. Keep sleeves down.", CP),
    "hot_clothes": ("hot fire", "clothes", "Synthetic clothes melt onto skin. If you wear them, keep well back.", CP),
    "hot_air": ("hot", "air", "Take the pot out of the room, open doors, stay upwind.", CP),
    "hot_fire": ("hot", "fire", "Take the pot outdoors onto bare ground, away from everything that burns. If the mix "
                 "still flows, spread it thin in a tray.", CP),
    "hot_others": ("hot", "others", "Everybody out of the smoke. Nobody leans over the pot.", CP),
    "hot_never": ("hot", "never", "Never put a lid on a hot pot. Never put it in a bin.", CP),
    "hot_stop": ("hot", "stop", "If the pot smokes and you cannot carry it at arm's length, leave and call the fire "
                 "service.",
                 CP),
    "leftover_have": ("leftover", "have", "A flat tray lined with film, outdoors, under a roof.", CP),
    "leftover_fire": ("leftover", "fire", "In a full cup, leftovers can smoke and burn hours later. Spread them thin "
                      "outdoors, at most a finger's breadth.", CP),
    "leftover_others": ("leftover", "others", "Keep leftovers out of reach of children and pets until hard.", CP),
    "leftover_never": ("leftover", "never", "Never put a lid on leftovers. Never pour them into one cup.", CP),
    "leftover_stop": ("leftover", "stop", "If a tray gets warm, spread it thinner, further from the house.", CP),
    "waste_have": ("waste", "have", "A metal bin with a lid outdoors, bags, labels that say what is in them.", CP),
    "waste_hands": ("waste", "hands", "Touch wet waste only with gloves. Peel gloves off inside out, into the same "
                    "bag.", CP),
    "waste_eyes": ("waste", "eyes", "Wear goggles to pour and to squeeze out bags.", CP),
    "waste_breathing": ("waste", "breathing", "Against dust, wear a particle mask. Otherwise, outdoors, usually no "
                        "mask is worn.", CP),
    "waste_skin": ("waste", "skin", "Afterwards wash hands and arms with soap, up to where the glove ended.", CP),
    "waste_air": ("waste", "air", "Sort waste outdoors.", CP),
    "waste_fire": ("waste", "fire", "Solvent cloths in a heap can catch fire. Dry them flat outdoors, or put them "
                   "under water in a closed metal bin.", CP),
    "waste_release": ("waste spill", "never", "Avoid release to the environment.", PUBLISHED + " ghs"),
    "waste_never": ("waste", "never", "Never put liquid resin, hardener or solvent in the household bin or drain. "
                    "Local rules say where it goes.", CP),
    "waste_others": ("waste", "others", "Keep waste out of reach of children. Tell whoever takes it away what it "
                     "is.", CP),
    "spill_have": ("spill", "have", "Sand, earth or cat litter, a scraper, bags, soap and water, gloves.", CP),
    "spill_air": ("spill", "air", "Open doors and windows first. Solvent spilt indoors: get out, touch no switch until "
                  "the room is aired.", CP),
    "spill_fire": ("spill", "fire", "Mixed resin or hardener can heat up in a heap of sawdust or paper. Use sand.", CP),
    "spill_collect": ("spill", "have", "Collect spillage.", PUBLISHED + " ghs"),
    "spill_stop": ("spill", "stop", "If you cannot clean the spill up in a few minutes, or it runs to a drain, call "
                   "for help.", CP),
    "fire_have": ("fire", "have", "A foam, powder or CO2 extinguisher by the door, known to everybody. The emergency "
                  "number.", CP),
    "fire_fire": ("fire", "fire", "Small fire, way out behind you: try once to put it out. Otherwise get out, shut the "
                  "door, call the fire service.", CP),
    "fire_breathing": ("fire", "breathing", "Epoxy smoke is poisonous. Stay low, get out.", CP),
    "fire_eyes": ("fire", "eyes", "Smoke blinds. Know the way out by touch.", CP),
    "fire_skin": ("fire", "skin", "Clothes on fire: stop, lie down, roll, put water on them.", CP),
    "fire_air": ("fire", "air", "Turn the fan off. Shut the doors behind you.", CP),
    "fire_others": ("fire", "others", "First get everybody out and count them.", CP),
    "fire_never": ("fire", "never", "Never point a water jet at burning solvent. Never go back in.", CP),
    "fire_stop": ("fire", "stop", "If one extinguisher does not put it out, leave.", CP),
    # of several tasks
    "gloves_pair": ("open mix powder lay confined spill leftover", "hands", "Wear two pairs of nitrile. Change the "
                    "outer pair at once when wet or torn, and at the glove maker's times.", CP),
    # EN ISO 374-1:2016 (KNOWN): 18 chemicals; A: six of them for 30 min, B: three for 30 min, C: one for 10 min
    "gloves_type": ("open mix lay clean", "hands", "Types A, B and C say how many of 18 test chemicals a glove holds "
                    "back, and how long. No epoxy is among the 18. Ask the glove maker about resin and hardener.",
                    PUBLISHED + " iso374"),
    "goggles": ("open mix powder confined spill leftover", "eyes", "Put on goggles that close at the sides before the "
                "first lid is off.", CP),
    "skin_wash": ("open mix powder lay confined clean leftover", "skin", "A drop on the skin: stop, wash with soap and "
                  "plenty of water, then go on.", CP),
    "skin_covered": ("mix lay confined spill", "skin", "Sleeves down, wrists covered. Keep the back of the glove off "
                     "your "
                     "face.", CP),
    "sensitise": ("open mix lay powder clean peel sand", "skin", "May cause an allergic skin reaction.",
                  PUBLISHED + " ghs"),
    "clothes_out": ("open mix powder lay confined clean spill leftover", "clothes", "Contaminated work clothing "
                    "should not "
                    "be allowed out of the workplace.", PUBLISHED + " ghs"),
    "clothes_wash": ("open lay confined spill waste peel", "clothes", "Take off contaminated clothing and wash it "
                     "before "
                     "reuse.", PUBLISHED + " ghs"),
    "vapour_mask": ("open mix lay spill leftover", "breathing", "A dust mask does not stop vapour. With air moving "
                    "through, usually no mask is worn.", CP),
    # NIOSH, both with skin: method 2540 and the comments of 54 FR 2332, READ; Ontario's list has the same
    "vapour_amine": ("open mix lay spill leftover", "air", "Hardener vapour can harm lungs and passes through skin. "
                     "The limit is 1 ppm for diethylenetriamine over a working day, 0.1 mg/m³ for m-xylylenediamine at "
                     "any moment. A hardener with no known limit can be as bad.", PUBLISHED + " npg"),
    # EN 14387 (KNOWN): A organic above 65 degC, AX at or below 65 degC, K ammonia and organic ammonia derivatives
    "vapour_filter": ("mix lay spill wipe clean", "breathing", "If the sheet asks for a vapour filter: type A is for "
                      "organic vapour that boils above 65 °C, AX for below (acetone), K for ammonia and its organic "
                      "derivatives.", PUBLISHED + " en14387"),
    "dust_mask": ("powder sand", "breathing", "Put on a particle mask before there is dust: EN 149 FFP2 or FFP3, or "
                  "42 CFR 84 N95 or better.", CP),
    "mask_fit": ("powder sand wipe", "breathing", "A mask works only if it seals. With a beard it does not.", CP),
    "air_through": ("open mix lay leftover peel", "air", "Open doors and windows on two sides, air at your back.",
                    CP),
    "no_flame": ("open mix lay powder peel", "fire", "No flame, no heater with a flame and no smoking where you work.",
                 CP),
    "others_away": ("open mix lay confined wipe clean peel sand powder spill", "others", "Keep children, pets and "
                    "onlookers out. Lids on and cups labelled, even for a minute.", CP),
    "no_solvent_on_skin": ("open mix lay clean wipe spill peel", "never", "Never use solvent on skin: it carries resin "
                           "in.",
                           CP),
    "no_latex": ("open mix lay", "never", "Never wear latex as the only barrier.", CP),
    "no_food": ("open mix lay waste", "never", "Never eat, drink or smoke near resin. Never mix in a cup somebody "
                "might drink from.", CP),
    "aid_skin": ("open mix lay powder clean leftover waste peel spill confined", "aid", "IF ON SKIN: Wash with plenty "
                 "of "
                 "water. If skin irritation or rash occurs: Get medical help.", PUBLISHED + " ghs"),
    "aid_eyes": ("open mix powder wipe clean peel sand spill leftover waste", "aid", "IF IN EYES: " + EYES
                 + " Get medical help.", PUBLISHED + " ghs"),
    "aid_inhaled": ("wipe sand hot fire spill", "aid", "IF INHALED: Remove person to fresh air and keep comfortable "
                    "for "
                    "breathing. Get medical help.", PUBLISHED + " ghs"),
    # twenty minutes: what first-aid guides of several countries print (READ in two); ten are the least that any prints
    "aid_burn": ("hot fire", "aid", "Hold a burn under cool running water for 20 minutes. Do not pull off what sticks. "
                 "Get medical help.", CP),
    "stop_rash": ("open mix lay clean peel leftover waste", "stop", "Itching, a rash, swollen eyes or a tight chest: "
                  "stop for today and get medical help. The allergy stays for life.", CP),
    "stop_dizzy": ("wipe clean confined spill", "stop", "A headache, dizziness, or you stop noticing a strong smell: "
                   "go into fresh air at once.", CP),
    "sheet_at_hand": ("open spill fire waste", "have", "The products' safety data sheets, on paper or on the phone. "
                      "Their values come first.", CP),
}
CURED = {"unknown": "sand_unsure", "soft": "sand_soft", "hard": "sand_hard"}

# --- what must hold of every sentence wherever it stands, however both tables are worded: a sentence that has all the
# words on the left must have one of those on the right. It is what a wrong change made to both would break.
NEVER = (
    (("solvent", "skin"), ("never", "keep it off", "takes the fat out")),
    (("wash", "solvent"), ("never",)),
    (("wipe", "solvent", "person"), ("never",)),
    (("sand", "uncured"), ("never", "do not")),
    (("sand it",), ("do not", "never")),
    (("sand epoxy",), ("never",)),
    (("lid", "hot pot"), ("never",)),
    (("latex",), ("never",)),
    (("dust mask", "vapour"), ("does not",)),
    (("follow", "outside"), ("never",)),
    (("change the ratio",), ("never",)),
    (("water jet",), ("never",)),
    (("drain",), ("never", "call for help")),
    (("full cup",), ("can smoke",)),
)

# --- what the answers themselves warn of. (move, what is asked, line, words with ... for figures); each is a warning,
# and
# stays one. All are common practice or from memory but for the tenth of the explosive limit (29 CFR 1915.12, READ).
HOT_LABEL = {"system": {"by_weight": "100:30", "pot_time": "15", "pot_mass": "100", "pot_temperature": "25"}}
SAID = (
    ("air", {"place": "hull"}, "hull", "Work inside a hull or tank needs its own plan, tested air and licensed "
     "practice. No figures are shown."),
    ("air", {"solvent": "acetone", "solvent_mass": "3 kg", "wiping": "10 min"}, "explosive", "Do not do this: "
     "it is over a tenth of the lower explosive limit. Use less, work outdoors, keep sparks away."),
    ("air", {"solvent": "butanone", "solvent_mass": "50 g", "wiping": "10 min"}, "over_limit", "Too much vapour for "
     "this room. Work outdoors, use less, or move more air."),
    ("air", {"solvent": "acetone", "solvent_mass": "5 g", "wiping": "10 min", "fan_runs": "out"}, "fan_spark", "Vapour "
     "must not pass a motor that can spark. Let an ordinary fan blow clean air in instead."),
    ("air", {"fan_runs": "out", "opening": "0"}, "no_make_up", "A fan moves almost no air without an opening "
     "on the far side. Open ... there. The fan is not counted."),
    ("air", {"dust": "silica"}, "dust_mask", "It stays in the air for long, and dries skin and eyes. Put on a "
     "particle mask first. A half mask that fits is rated for 10 times the limit."),
    ("heat", {"air": "2", "batch": "100", **HOT_LABEL}, "too_cold", "The lowest working temperature is ... Below "
     "that the cure may stop for good, even if the mix stays liquid. Warm the shed, the wood and the resin first, or "
     "use a faster hardener."),
    ("heat", {"air": "30", "batch": "1000", **HOT_LABEL}, "runaway", "It smokes, foams, melts the cup, "
     "burns skin, and can catch fire. Expected about ... after mixing. Use it, or spread it thin, within ..."),
    ("dew", {"air": "20", "humidity": "90", "surface": "19"}, "damp", "Do not coat or tape now. Warm the surface "
     "to 3... above the dew point, or wait. A burning gas heater makes it worse: it gives off water."),
    ("dew", {"air": "20", "humidity": "90", "surface": "19"}, "humid", "Above 85% humidity many hardeners blush, "
     "however warm the surface."),
    ("thicken", {"thicken": "yes", "filler": "glass-spheres", "purpose": "seam"}, "fairing_only", "Glass "
     "microspheres: for "
     "fairing only, never for load in a seam. Use wood flour, cotton fibre or silica."),
    ("pot", {"started": "0", "now": "3600", "duration": "20 min"}, "stop", "Use no more of this pot. "
     + STANDING["heat"][0]),
    ("rescue", {"rescue": "yes", "readings": [{"shown": "180"}, {"shown": "270"}], "first_contact": "0", "now": "60",
                **HOT_LABEL}, "past_saving", "No time to add and stir. " + SPREAD_OUT),
    ("rescue", {"rescue": "yes", "system": {"by_weight": "3:1"}, "readings": [{"shown": "180"}, {"shown": "270"}]},
     "off", "+50.0%"),
    ("measure", {"system": {"by_weight": "3:1"}, "readings": [{"shown": "180"}, {"shown": "270"}]}, "poured", "+50.0%"),
)
# what stands under the figure it belongs to: (move, what is asked, line, words)
CAUTIONS = (
    ("thicken", {"thicken": "yes"}, "filler", "Dust: put on a particle mask before opening the tub. Close the "
     "lid at once."),
    ("heat", {"air": "30", "batch": "1000", **HOT_LABEL}, "runaway", HOT_POT),
)

# --- which lines warn, by the module that says them: none of them may become a plain line. A name that is made up at
# the time is told by its beginning; a line that warns only at times stands below with what it goes by.
WARNINGS = {
    "air_lines": "hull dust_mask no_make_up explosive fan_spark small_make_up over_limit",
    "batch_lines": "missed_ do_not_start",
    "by_marks_lines": "too_coarse pours much_more coarse_ too_small",
    "by_scale_lines": "over_scale too_small",
    "by_stick_lines": "pours",
    "cautions_lines": "caution_",
    "compare_tools_lines": "no_way",
    "cure_lines": "too_cold",
    "cure_stops_lines": "sun",
    "dew_lines": "damp humid night_damp",
    "heat_lines": "too_cold runaway largest too_much",
    "joint_lines": "thin_cover",
    "kit_lines": "last_day last_day",
    "label_words": "example",
    "plan_lines": "cold sun no_plan no_plan cut too_late",
    "pot_doubt_lines": "link_times clocks_differ clock_changed lost",
    "pot_lines": "stop next",
    "pouring_lines": "why packed mend off",
    "rescue_lines": "off cup_too_small past_saving",
    "run_lines": "saved",
    "safety_lines": "powder_kind",
    "spreader_lines": "measure",
    "sun_lines": "no_tray no_tray",
    "surface_lines": "name",
    "thicken_lines": "cup_too_small packed sags fairing_only",
    "timer_lines": "lost",
    "trial_lines": "hot",
}
# (module, line): (what it goes by, whether it warns where that is so)
WARN_AT_TIMES = {
    ("by_marks_lines", "marks_error"): ("marks.off.off", True),
    ("by_pumps_lines", "strokes_error"): ("off.off", True),
    ("by_stick_lines", "spread"): ("found.wide", True),
    ("own_codes_lines", "own_"): ("found.hazard", True),
    ("pouring_lines", "one"): ("one['name'] in ('off', 'too_coarse')", True),
    ("ratio_error_lines", "poured"): ("off.off", True),
    ("rescue_lines", "off"): ("off.off", True),
    ("run_lines", "one"): ("one.key == 'gate'", True),
    ("safety_lines", "topic"): ("topic in ('never', 'stop')", True),
    ("thicken_lines", "needed"): ("stands.holds", False),
}

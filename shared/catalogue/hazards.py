"""Hazard and precautionary statements of the GHS, and what the usual classes of product carry.

Wordings change from revision to revision and more than one is on the shelves: the product's own sheet decides.
"""
from .marks import COMMON, MEMORY, PUBLISHED

# code, text, pictogram, signal word, mark, source. Where a code has several categories the sign and the
# word of the worst stand here. Letters behind a code are the EU's; of two that differ in size only the worse is first.
HAZARDS = (
    ("H224", "Extremely flammable liquid and vapour", "flame", "Danger", PUBLISHED, "ghs"),
    ("H225", "Highly flammable liquid and vapour", "flame", "Danger", PUBLISHED, "ghs"),
    ("H226", "Flammable liquid and vapour", "flame", "Warning", PUBLISHED, "ghs"),
    ("H227", "Combustible liquid", "", "Warning", PUBLISHED, "ghs"),
    ("H228", "Flammable solid", "flame", "Danger", PUBLISHED, "ghs"),
    ("H242", "Heating may cause a fire", "flame", "Danger", PUBLISHED, "ghs"),
    ("H251", "Self-heating: may catch fire", "flame", "Danger", PUBLISHED, "ghs"),
    ("H290", "May be corrosive to metals", "corrosion", "Warning", PUBLISHED, "ghs"),
    ("H300", "Fatal if swallowed", "skull", "Danger", PUBLISHED, "ghs"),
    ("H301", "Toxic if swallowed", "skull", "Danger", PUBLISHED, "ghs"),
    ("H302", "Harmful if swallowed", "exclamation", "Warning", PUBLISHED, "ghs"),
    ("H304", "May be fatal if swallowed and enters airways", "health", "Danger", PUBLISHED, "ghs"),
    ("H310", "Fatal in contact with skin", "skull", "Danger", PUBLISHED, "ghs"),
    ("H311", "Toxic in contact with skin", "skull", "Danger", PUBLISHED, "ghs"),
    ("H312", "Harmful in contact with skin", "exclamation", "Warning", PUBLISHED, "ghs"),
    ("H314", "Causes severe skin burns and eye damage", "corrosion", "Danger", PUBLISHED, "ghs"),
    ("H315", "Causes skin irritation", "exclamation", "Warning", PUBLISHED, "ghs"),
    ("H317", "May cause an allergic skin reaction", "exclamation", "Warning", PUBLISHED, "ghs"),
    ("H318", "Causes serious eye damage", "corrosion", "Danger", PUBLISHED, "ghs"),
    ("H319", "Causes serious eye irritation", "exclamation", "Warning", PUBLISHED, "ghs"),
    ("H330", "Fatal if inhaled", "skull", "Danger", PUBLISHED, "ghs"),
    ("H331", "Toxic if inhaled", "skull", "Danger", PUBLISHED, "ghs"),
    ("H332", "Harmful if inhaled", "exclamation", "Warning", PUBLISHED, "ghs"),
    ("H334", "May cause allergy or asthma symptoms or breathing difficulties if inhaled", "health", "Danger",
     PUBLISHED, "ghs"),
    ("H335", "May cause respiratory irritation", "exclamation", "Warning", PUBLISHED, "ghs"),
    ("H336", "May cause drowsiness or dizziness", "exclamation", "Warning", PUBLISHED, "ghs"),
    ("H340", "May cause genetic defects", "health", "Danger", PUBLISHED, "ghs"),
    ("H341", "Suspected of causing genetic defects", "health", "Warning", PUBLISHED, "ghs"),
    ("H350", "May cause cancer", "health", "Danger", PUBLISHED, "ghs"),
    ("H350i", "May cause cancer by inhalation", "health", "Danger", PUBLISHED, "clp"),
    ("H351", "Suspected of causing cancer", "health", "Warning", PUBLISHED, "ghs"),
    ("H360", "May damage fertility or the unborn child", "health", "Danger", PUBLISHED, "ghs"),
    ("H360F", "May damage fertility", "health", "Danger", PUBLISHED, "clp"),
    ("H360D", "May damage the unborn child", "health", "Danger", PUBLISHED, "clp"),
    ("H360FD", "May damage fertility. May damage the unborn child", "health", "Danger", PUBLISHED, "clp"),
    ("H360Fd", "May damage fertility. Suspected of damaging the unborn child", "health", "Danger", PUBLISHED, "clp"),
    ("H360Df", "May damage the unborn child. Suspected of damaging fertility", "health", "Danger", PUBLISHED, "clp"),
    ("H361", "Suspected of damaging fertility or the unborn child", "health", "Warning", PUBLISHED, "ghs"),
    ("H361f", "Suspected of damaging fertility", "health", "Warning", PUBLISHED, "clp"),
    ("H361d", "Suspected of damaging the unborn child", "health", "Warning", PUBLISHED, "clp"),
    ("H361fd", "Suspected of damaging fertility. Suspected of damaging the unborn child", "health", "Warning",
     PUBLISHED, "clp"),
    ("H362", "May cause harm to breast-fed children", "", "", PUBLISHED, "ghs"),
    ("H370", "Causes damage to organs", "health", "Danger", PUBLISHED, "ghs"),
    ("H371", "May cause damage to organs", "health", "Warning", PUBLISHED, "ghs"),
    ("H372", "Causes damage to organs through prolonged or repeated exposure", "health", "Danger", PUBLISHED, "ghs"),
    ("H373", "May cause damage to organs through prolonged or repeated exposure", "health", "Warning", PUBLISHED,
     "ghs"),
    ("H400", "Very toxic to aquatic life", "environment", "Warning", PUBLISHED, "ghs"),
    ("H401", "Toxic to aquatic life", "", "", PUBLISHED, "ghs"),
    ("H402", "Harmful to aquatic life", "", "", PUBLISHED, "ghs"),
    ("H410", "Very toxic to aquatic life with long lasting effects", "environment", "Warning", PUBLISHED, "ghs"),
    ("H411", "Toxic to aquatic life with long lasting effects", "environment", "", PUBLISHED, "ghs"),
    ("H412", "Harmful to aquatic life with long lasting effects", "", "", PUBLISHED, "ghs"),
    ("H413", "May cause long lasting harmful effects to aquatic life", "", "", PUBLISHED, "ghs"),
    ("H420", "Harms public health and the environment by destroying ozone in the upper atmosphere", "exclamation",
     "Warning", PUBLISHED, "ghs"),
    ("EUH018", "In use may form flammable/explosive vapour-air mixture", "", "", PUBLISHED, "clp"),
    ("EUH019", "May form explosive peroxides", "", "", PUBLISHED, "clp"),
    ("EUH066", "Repeated exposure may cause skin dryness or cracking", "", "", PUBLISHED, "clp"),
    ("EUH071", "Corrosive to the respiratory tract", "", "", PUBLISHED, "clp"),
    ("EUH204", "Contains isocyanates. May produce an allergic reaction", "", "", PUBLISHED, "clp"),
    ("EUH205", "Contains epoxy constituents. May produce an allergic reaction", "", "", PUBLISHED, "clp"),
    ("EUH208", "Contains (name of sensitising substance). May produce an allergic reaction", "", "", PUBLISHED, "clp"),
    ("EUH209", "Can become highly flammable in use", "", "", PUBLISHED, "clp"),
    ("EUH380", "May cause endocrine disruption in humans", "", "Danger", PUBLISHED, "clp"),
    ("EUH381", "Suspected of causing endocrine disruption in humans", "", "Warning", PUBLISHED, "clp"),
)

# code, text, the text on other labels (empty: the same), mark, source. P316 and P317 came with the ninth revision of
# the GHS; labels of the EU and the US still carry P310 to P313.
PRECAUTIONS = (
    ("P210", "Keep away from heat, hot surfaces, sparks, open flames and other ignition sources. No smoking.", "",
     PUBLISHED, "ghs"),
    ("P260", "Do not breathe dust/fume/gas/mist/vapours/spray.", "", PUBLISHED, "ghs"),
    ("P261", "Avoid breathing dust/fume/gas/mist/vapours/spray.", "", PUBLISHED, "ghs"),
    ("P264", "Wash ... thoroughly after handling.", "", PUBLISHED, "ghs"),
    ("P271", "Use only outdoors or in a well-ventilated area.", "", PUBLISHED, "ghs"),
    ("P272", "Contaminated work clothing should not be allowed out of the workplace.", "", PUBLISHED, "ghs"),
    ("P273", "Avoid release to the environment.", "", PUBLISHED, "ghs"),
    ("P280", "Wear protective gloves/protective clothing/eye protection/face protection/...", "", PUBLISHED, "ghs"),
    ("P302+P352", "IF ON SKIN: Wash with plenty of water/...", "IF ON SKIN: Wash with plenty of soap and water.",
     PUBLISHED, "ghs"),
    ("P304+P340", "IF INHALED: Remove person to fresh air and keep comfortable for breathing.",
     "IF INHALED: Remove victim to fresh air and keep at rest in a position comfortable for breathing.",
     PUBLISHED, "ghs"),
    ("P305+P351+P338", "IF IN EYES: Rinse cautiously with water for several minutes. Remove contact lenses, if present "
     "and easy to do. Continue rinsing.", "", PUBLISHED, "ghs"),
    ("P301+P310", "IF SWALLOWED: Immediately call a POISON CENTER/doctor/...", "", PUBLISHED, "ghs"),
    ("P301+P330+P331", "IF SWALLOWED: Rinse mouth. Do NOT induce vomiting.", "", PUBLISHED, "ghs"),
    ("P303+P361+P353", "IF ON SKIN (or hair): Take off immediately all contaminated clothing. Rinse skin with water "
     "[or shower].", "", PUBLISHED, "ghs"),
    ("P310", "Immediately call a POISON CENTER/doctor/...", "Get emergency medical help immediately. (P316)", PUBLISHED,
     "ghs"),
    ("P313", "Get medical help. (P317)", "Get medical advice/attention.", PUBLISHED, "ghs"),
    ("P316", "Get emergency medical help immediately.", "Immediately call a POISON CENTER/doctor/... (P310)", PUBLISHED,
     "ghs"),
    ("P317", "Get medical help.", "Get medical advice/attention. (P313)", PUBLISHED, "ghs"),
    ("P333+P313", "If skin irritation or rash occurs: Get medical help. (P333+P317)",
     "If skin irritation or rash occurs: Get medical advice/attention.", PUBLISHED, "ghs"),
    ("P333+P317", "If skin irritation or rash occurs: Get medical help.",
     "If skin irritation or rash occurs: Get medical advice/attention. (P333+P313)", PUBLISHED, "ghs"),
    ("P342+P311", "If experiencing respiratory symptoms: Call a POISON CENTER/doctor/...", "", PUBLISHED, "ghs"),
    ("P362+P364", "Take off contaminated clothing and wash it before reuse.", "", PUBLISHED, "ghs"),
    ("P363", "Wash contaminated clothing before reuse.", "", PUBLISHED, "ghs"),
    ("P391", "Collect spillage.", "", PUBLISHED, "ghs"),
    ("P501", "Dispose of contents/container to ...", "", PUBLISHED, "ghs"),
)

# key, label, the codes usual for it, what to know, mark, source
CLASSES = (
    ("resin", "Bisphenol-A epoxy resin", "H315, H317, H319, H411",
     "Number average molecular weight up to 700.", PUBLISHED, "sds-resin"),
    ("hardener", "Amine hardener", "H302, H312, H314, H317, H318, H335, H411",
     "They differ a lot; some may also cause asthma, H334.", MEMORY, ""),
    ("solvent", "Solvents for wiping", "H225, H319, H336",
     "Acetone, alcohols and butanone, more or less.", PUBLISHED, "clp-vi"),
    ("powder", "Powders", "", "Mostly no statement of their own: the dust is the hazard.", COMMON, ""),
)

# key, what it is called, the picture in words, mark, source
PICTOGRAMS = (
    ("flame", "Flame, GHS02", "a flame over a line: it burns", PUBLISHED, "clp-v"),
    ("corrosion", "Corrosion, GHS05", "drops eating into a hand and a bar: it burns skin and eyes", PUBLISHED, "clp-v"),
    ("skull", "Skull and crossbones, GHS06", "a skull over crossed bones: poisonous in small amounts", PUBLISHED,
     "clp-v"),
    ("health", "Health hazard, GHS08", "a person with a star on the chest: harm that stays", PUBLISHED, "clp-v"),
    ("exclamation", "Exclamation mark, GHS07", "an exclamation mark: irritates, sensitises the skin, or is harmful",
     PUBLISHED, "clp-v"),
    ("environment", "Environment, GHS09", "a bare tree and a dead fish: poisonous to water life", PUBLISHED, "clp-v"),
)

EVERY = "every exclamation mark"
# which sign makes an exclamation mark unnecessary: sign, the statement it must come from ("": any), the statements
# whose mark it replaces, mark, source
PRECEDENCE = (
    ("skull", "", (EVERY,), PUBLISHED, "ghs-label"),
    ("corrosion", "", ("H315", "H319"), PUBLISHED, "ghs-label"),
    ("health", "H334", ("H315", "H317", "H319"), PUBLISHED, "ghs-label"),
)
# the stronger first: a label bears one
SIGNAL_WORDS = ("Danger", "Warning")

# routes of acute toxicity by the third figure of the code: with the same last figure they are joined into one sentence
ROUTES = (("0", "if swallowed"), ("1", "in contact with skin"), ("3", "if inhaled"))


def _small(code):
    return "".join([chr(ord(c) + 32) if "A" <= c <= "Z" else c for c in code])


def hazard(code):
    """(code as the standard writes it, words, signs, signal word, mark, source) of a hazard statement, None where it is
    not held here. A joined code, H302+H312, has the words that the standard gives for the routes together.

    Letters are looked for as typed, then whatever their size; of a code with unknown letters the plain one stands.
    >>> hazard("H300+H310+H330")[1], hazard("H360fd")[0], hazard("H999")
    ('Fatal if swallowed, in contact with skin or if inhaled', 'H360FD', None)
    """
    parts = code.split("+")
    if len(parts) > 1:
        rows = [hazard(one) for one in parts]
        if None in rows:
            return None
        verb = rows[0][1][:-len(dict(ROUTES)[code[2]])]
        ways = [dict(ROUTES)[one[2]] for one in parts]
        said = verb + ", ".join(ways[:-1]) + " or " + ways[-1]
        return (code, said) + rows[0][2:4] + (PUBLISHED, "clp")
    exact = [row for row in HAZARDS if row[0] == code]
    if exact:
        return exact[0]
    small = _small(code)
    near = [row for row in HAZARDS if _small(row[0]) == small] or [row for row in HAZARDS if row[0] == code[:4]]
    return near[0] if near else None


TABLES = (
    ("Hazard statements", HAZARDS, (0,), (1, 3)),
    ("Precautionary statements", PRECAUTIONS, (0,), (1, 2)),
    ("What the usual products carry", CLASSES, (1,), (2, 3)),
    ("Pictograms", PICTOGRAMS, (1,), (2,)),
    ("Which pictogram makes another unnecessary", PRECEDENCE, (0,), (2,)),
)

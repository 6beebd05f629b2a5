"""Hazard and precautionary statements of the GHS, and what the usual classes of product carry.

Wordings change from revision to revision and more than one is on the shelves: the product's own sheet decides.
"""
from .marks import MEMORY, PUBLISHED

# code, text, pictogram, signal word, mark, source
HAZARDS = (
    ("H225", "Highly flammable liquid and vapour", "flame", "Danger", PUBLISHED, "ghs"),
    ("H226", "Flammable liquid and vapour", "flame", "Warning", PUBLISHED, "ghs"),
    ("H290", "May be corrosive to metals", "corrosion", "Warning", MEMORY, ""),
    ("H301", "Toxic if swallowed", "skull", "Danger", MEMORY, ""),
    ("H302", "Harmful if swallowed", "exclamation", "Warning", PUBLISHED, "ghs"),
    ("H304", "May be fatal if swallowed and enters airways", "health", "Danger", MEMORY, ""),
    ("H311", "Toxic in contact with skin", "skull", "Danger", MEMORY, ""),
    ("H312", "Harmful in contact with skin", "exclamation", "Warning", PUBLISHED, "ghs"),
    ("H314", "Causes severe skin burns and eye damage", "corrosion", "Danger", PUBLISHED, "ghs"),
    ("H315", "Causes skin irritation", "exclamation", "Warning", PUBLISHED, "ghs"),
    ("H317", "May cause an allergic skin reaction", "exclamation", "Warning", PUBLISHED, "ghs"),
    ("H318", "Causes serious eye damage", "corrosion", "Danger", PUBLISHED, "ghs"),
    ("H319", "Causes serious eye irritation", "exclamation", "Warning", PUBLISHED, "ghs"),
    ("H331", "Toxic if inhaled", "skull", "Danger", PUBLISHED, "ghs"),
    ("H332", "Harmful if inhaled", "exclamation", "Warning", PUBLISHED, "ghs"),
    ("H334", "May cause allergy or asthma symptoms or breathing difficulties if inhaled", "health", "Danger",
     PUBLISHED, "ghs"),
    ("H335", "May cause respiratory irritation", "exclamation", "Warning", PUBLISHED, "ghs"),
    ("H336", "May cause drowsiness or dizziness", "exclamation", "Warning", MEMORY, ""),
    ("H341", "Suspected of causing genetic defects", "health", "Warning", PUBLISHED, "ghs"),
    ("H351", "Suspected of causing cancer", "health", "Warning", PUBLISHED, "ghs"),
    ("H360", "May damage fertility or the unborn child", "health", "Danger", PUBLISHED, "ghs"),
    ("H361", "Suspected of damaging fertility or the unborn child", "health", "Warning", PUBLISHED, "ghs"),
    ("H373", "May cause damage to organs through prolonged or repeated exposure", "health", "Warning",
     PUBLISHED, "ghs"),
    ("H400", "Very toxic to aquatic life", "environment", "Warning", PUBLISHED, "ghs"),
    ("H410", "Very toxic to aquatic life with long lasting effects", "environment", "Warning", PUBLISHED, "ghs"),
    ("H411", "Toxic to aquatic life with long lasting effects", "environment", "", PUBLISHED, "ghs"),
    ("H412", "Harmful to aquatic life with long lasting effects", "", "", PUBLISHED, "ghs"),
)

# code, text as it is now, the older text (empty: the same), mark, source
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
    ("P313", "Get medical help. (P317)", "Get medical advice/attention.", PUBLISHED, "ghs"),
    ("P317", "Get medical help.", "Get medical advice/attention. (P313)", PUBLISHED, "ghs"),
    ("P333+P313", "If skin irritation or rash occurs: Get medical help. (P333+P317)",
     "If skin irritation or rash occurs: Get medical advice/attention.", PUBLISHED, "ghs"),
    ("P333+P317", "If skin irritation or rash occurs: Get medical help.",
     "If skin irritation or rash occurs: Get medical advice/attention. (P333+P313)", PUBLISHED, "ghs"),
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
     "They differ much; some may also cause asthma, H334.", MEMORY, ""),
    ("solvent", "Solvents for wiping", "H225, H319, H336", "Acetone, alcohols and butanone, more or less.", MEMORY, ""),
    ("powder", "Powders", "", "Mostly no statement of their own: the dust is the hazard.", MEMORY, ""),
)

# key, what it is called, the picture in words, mark, source
PICTOGRAMS = (
    ("flame", "Flame", "a flame over a line: it burns", PUBLISHED, "ghs"),
    ("corrosion", "Corrosion", "drops eating into a hand and a bar: it burns skin and eyes", PUBLISHED, "ghs"),
    ("skull", "Skull and crossbones", "a skull over crossed bones: poisonous in small amounts", PUBLISHED, "ghs"),
    ("health", "Health hazard", "a person with a star on the chest: harm that stays", PUBLISHED, "ghs"),
    ("exclamation", "Exclamation mark", "an exclamation mark: irritates, sensitises the skin, or is harmful",
     PUBLISHED, "ghs"),
    ("environment", "Environment", "a bare tree and a dead fish: poisonous to water life", PUBLISHED, "ghs"),
)

# which sign makes another one unnecessary: sign, the statement it must come from ("": any), what it replaces, mark,
# source
PRECEDENCE = (
    ("skull", "", ("H302", "H312", "H315", "H317", "H319", "H332", "H335", "H336"), PUBLISHED, "ghs-label"),
    ("corrosion", "", ("H315", "H319"), PUBLISHED, "ghs-label"),
    ("health", "H334", ("H315", "H317", "H319"), PUBLISHED, "ghs-label"),
)

TABLES = (
    ("Hazard statements", HAZARDS, (0,), (1,)),
    ("Precautionary statements", PRECAUTIONS, (0,), (1, 2)),
    ("What the usual products carry", CLASSES, (1,), (2, 3)),
    ("Pictograms", PICTOGRAMS, (1,), (2,)),
    ("Which pictogram makes another unnecessary", PRECEDENCE, (0,), (2,)),
)

"""Statements that belong to several tasks, each written once."""
from .marks import COMMON, PUBLISHED

WET = ("open", "mix", "powder", "lay", "confined", "clean", "spill", "leftover")  # uncured epoxy is about
DRY = ("powder", "sand")
SOLVENT = ("wipe", "clean")
TROUBLE = ("hot", "fire")

# key, tasks, topic, text, mark, source
SHARED = (
    ("gloves_pair", ("open", "mix", "powder", "lay", "confined", "spill", "leftover"), "hands",
     "do-gloves-pair",
     COMMON, ""),
    ("gloves_type", ("open", "mix", "lay", "clean"), "hands", "do-gloves-type", PUBLISHED, "iso374"),
    ("goggles", ("open", "mix", "powder", "confined", "spill", "leftover"), "eyes", "do-goggles", COMMON, ""),
    ("skin_wash", ("open", "mix", "powder", "lay", "confined", "clean", "leftover"), "skin",
     "do-skin-wash", COMMON, ""),
    ("skin_covered", ("mix", "lay", "confined", "spill"), "skin", "do-skin-covered", COMMON, ""),
    ("sensitise", ("open", "mix", "lay", "powder", "clean", "peel", "sand"), "skin",
     "ghs-h317.sentence", PUBLISHED, "ghs"),
    ("clothes_out", WET, "clothes", "ghs-p272", PUBLISHED, "ghs"),
    ("clothes_wash", ("open", "lay", "confined", "spill", "waste", "peel"), "clothes",
     "ghs-p362-p364", PUBLISHED, "ghs"),
    ("vapour_mask", ("open", "mix", "lay", "spill", "leftover"), "breathing", "do-vapour-mask", COMMON, ""),
    ("vapour_filter", ("mix", "lay", "spill", "wipe", "clean"), "breathing", "do-vapour-filter", PUBLISHED, "en14387"),
    ("vapour_amine", ("open", "mix", "lay", "spill", "leftover"), "air", "do-vapour-amine", PUBLISHED, "npg"),
    ("dust_mask", DRY, "breathing", "do-dust-mask", COMMON, ""),
    ("mask_fit", ("powder", "sand", "wipe"), "breathing", "do-mask-fit", COMMON, ""),
    ("air_through", ("open", "mix", "lay", "leftover", "peel"), "air", "do-air-through", COMMON, ""),
    ("no_flame", ("open", "mix", "lay", "powder", "peel"), "fire", "do-no-flame", COMMON, ""),
    ("others_away", ("open", "mix", "lay", "confined", "wipe", "clean", "peel", "sand", "powder", "spill"), "others",
     "do-others-away", COMMON, ""),
    ("no_solvent_on_skin", ("open", "mix", "lay", "clean", "wipe", "spill", "peel"), "never",
     "do-no-solvent-on-skin", COMMON, ""),
    ("no_latex", ("open", "mix", "lay"), "never", "do-no-latex", COMMON, ""),
    ("no_food", ("open", "mix", "lay", "waste"), "never", "do-no-food", COMMON, ""),
    ("aid_skin", ("open", "mix", "lay", "powder", "clean", "leftover", "waste", "peel", "spill", "confined"), "aid",
     "ghs-aid-skin",
     PUBLISHED, "ghs"),
    ("aid_eyes", ("open", "mix", "powder", "wipe", "clean", "peel", "sand", "spill", "leftover", "waste"), "aid",
     "ghs-aid-eyes", PUBLISHED, "ghs"),
    ("aid_inhaled", ("wipe", "sand", "hot", "fire", "spill"), "aid", "ghs-aid-inhaled", PUBLISHED, "ghs"),
    ("aid_burn", TROUBLE, "aid", "do-aid-burn", COMMON, ""),
    ("stop_rash", ("open", "mix", "lay", "clean", "peel", "leftover", "waste"), "stop", "do-stop-rash", COMMON, ""),
    ("stop_dizzy", ("wipe", "clean", "confined", "spill"), "stop", "do-stop-dizzy", COMMON, ""),
    ("sheet_at_hand", ("open", "spill", "fire", "waste"), "have", "do-sheet-at-hand", COMMON, ""),
)
TABLES = (("facts-do-shared", SHARED, (2,), (3,)),)

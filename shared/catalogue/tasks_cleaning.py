"""Statements for the tasks between the layers: solvent wiping, cleaning tools, peeling and washing, sanding."""
from .marks import COMMON, PUBLISHED

# key, tasks, topic, text, mark, source
CLEANING = (
    ("wipe_have", ("wipe",), "have", "do-wipe-have", COMMON, ""),
    ("wipe_hands", ("wipe", "clean"), "hands", "do-wipe-hands", COMMON, ""),
    ("wipe_eyes", ("wipe", "clean"), "eyes", "do-wipe-eyes", COMMON, ""),
    ("wipe_breathing", ("wipe",), "breathing", "do-wipe-breathing", COMMON, ""),
    ("wipe_skin", ("wipe",), "skin", "do-wipe-skin", COMMON, ""),
    ("wipe_clothes", ("wipe",), "clothes", "do-wipe-clothes", COMMON, ""),
    ("wipe_air", ("wipe", "clean"), "air", "do-wipe-air", COMMON, ""),
    ("wipe_fire", ("wipe", "clean"), "fire", "ghs-p210", PUBLISHED, "ghs"),
    ("wipe_fire_low", ("wipe",), "fire", "do-wipe-fire-low", COMMON, ""),
    ("wipe_never", ("wipe",), "never", "do-wipe-never", COMMON, ""),
    ("wipe_stop", ("wipe",), "stop", "do-wipe-stop", COMMON, ""),
    ("clean_have", ("clean",), "have", "do-clean-have", COMMON, ""),
    ("clean_breathing", ("clean",), "breathing", "do-clean-breathing", COMMON, ""),
    ("clean_never", ("clean",), "never", "do-clean-never", COMMON, ""),
    ("peel_have", ("peel",), "have", "do-peel-have", COMMON, ""),
    ("peel_hands", ("peel",), "hands", "do-peel-hands", COMMON, ""),
    ("peel_eyes", ("peel",), "eyes", "do-peel-eyes", COMMON, ""),
    ("peel_breathing", ("peel",), "breathing", "do-peel-breathing", COMMON, ""),
    ("peel_skin", ("peel",), "skin", "do-peel-skin", COMMON, ""),
    ("peel_never", ("peel",), "never", "do-peel-never", COMMON, ""),
    ("peel_stop", ("peel",), "stop", "do-peel-stop", COMMON, ""),
    ("sand_unsure", ("sand",), "stop", "do-sand-unsure", COMMON, ""),
    ("sand_soft", ("sand",), "stop", "do-sand-soft", COMMON, ""),
    ("sand_hard", ("sand",), "stop", "do-sand-hard", COMMON, ""),
    ("sand_have", ("sand",), "have", "do-sand-have", COMMON, ""),
    ("sand_hands", ("sand",), "hands", "do-sand-hands", COMMON, ""),
    ("sand_eyes", ("sand",), "eyes", "do-sand-eyes", COMMON, ""),
    ("sand_skin", ("sand",), "skin", "do-sand-skin", COMMON, ""),
    ("sand_clothes", ("sand",), "clothes", "do-sand-clothes", COMMON, ""),
    ("sand_air", ("sand",), "air", "do-sand-air", COMMON, ""),
    ("sand_fire", ("sand",), "fire", "do-sand-fire", PUBLISHED, "npg"),
    ("sand_never", ("sand",), "never", "do-sand-never", COMMON, ""),
)
TABLES = (("facts-do-between", CLEANING, (2,), (3,)),)

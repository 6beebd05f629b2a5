"""Statements for the tasks with wet epoxy: opening, mixing, powders, laying, and work inside a hull."""
from .marks import COMMON, PUBLISHED

# key, tasks, topic, text, mark, source
MIXING = (
    ("open_have", ("open",), "have", "do-open-have", COMMON, ""),
    ("open_eyes", ("open",), "eyes", "do-open-eyes", COMMON, ""),
    ("open_stop", ("open",), "stop", "do-open-stop", COMMON, ""),
    ("mix_have", ("mix",), "have", "do-mix-have", COMMON, ""),
    ("mix_fire", ("mix",), "fire", "do-mix-fire", COMMON, ""),
    ("mix_never", ("mix",), "never", "do-mix-never", COMMON, ""),
    ("mix_stop", ("mix",), "stop", "do-mix-stop", COMMON, ""),
    ("powder_have", ("powder",), "have", "do-powder-have", COMMON, ""),
    ("powder_air", ("powder",), "air", "do-powder-air", COMMON, ""),
    ("powder_eyes", ("powder",), "eyes", "do-powder-eyes", COMMON, ""),
    ("powder_breathing", ("powder",), "breathing", "do-powder-breathing", PUBLISHED, "1910.134"),
    ("powder_fire", ("powder",), "fire", "do-powder-fire", PUBLISHED, "npg"),
    ("powder_never", ("powder",), "never", "do-powder-never", COMMON, ""),
    ("powder_stop", ("powder",), "stop", "do-powder-stop", COMMON, ""),
    ("lay_have", ("lay",), "have", "do-lay-have", COMMON, ""),
    ("lay_eyes", ("lay",), "eyes", "do-lay-eyes", COMMON, ""),
    ("lay_clothes", ("lay",), "clothes", "do-lay-clothes", COMMON, ""),
    ("lay_never", ("lay",), "never", "do-lay-never", COMMON, ""),
    ("lay_stop", ("lay",), "stop", "do-lay-stop", COMMON, ""),
    ("confined_first", ("confined",), "have", "do-confined-first", COMMON, ""),
    ("confined_tested", ("confined",), "have", "do-confined-tested", PUBLISHED, "1915.12"),
    ("confined_air", ("confined",), "air", "do-confined-air", COMMON, ""),
    ("confined_breathing", ("confined",), "breathing", "do-confined-breathing", COMMON, ""),
    ("confined_fire", ("confined",), "fire", "do-confined-fire", COMMON, ""),
    ("confined_never", ("confined",), "never", "do-confined-never", COMMON, ""),
    ("confined_aid", ("confined",), "aid", "do-confined-aid", COMMON, ""),
    ("confined_stop", ("confined",), "stop", "do-confined-stop", COMMON, ""),
    ("confined_deck", ("confined",), "have", "do-confined-deck", COMMON, ""),
)
TABLES = (("facts-do-wet", MIXING, (2,), (3,)),)

"""Languages: what each has of its own besides its sentences, and who reads.

The sentences of a language are in a file named after it: `en.ftl`. A phone has the row of its own language, and of
English where that stands beside it, and no other (`server/put_in.py`): so nothing here may ask for another by its name.
"""
from collections import namedtuple

# name: as HTML names it (BCP 47); label: its name in itself; decimal: its mark; to: between the least and the most;
# both, either: before the last of a list; apart: between notes, and between things in a list that hold commas
# plural: the case of a figure as it stands there, by its ASCII digits (Unicode CLDR, cardinal rules)
# tails: by unit what stands behind a figure instead of the unit's sign: behind one, and behind any other count; each
# with its blank, of one character
# aloud: by unit what is said of one, and of any other count; spelt: whether figures are said in words (`speech.py`)
Language = namedtuple("Language", ("name", "label", "decimal", "to", "both", "either", "apart", "plural",
                                   "tails", "aloud", "spelt"))


def one_alone(digits: str) -> str:
    """Of English, German and many others. CLDR: one where i = 1 and v = 0, no decimals are in sight; else other.

    >>> [one_alone(digits) for digits in ("1", "1.0", "2", "0", "-1")]
    ['one', 'other', 'other', 'other', 'one']
    """
    return "one" if digits in ("1", "-1") else "other"


FIRST = "en"  # what all others are made from, and what stands beside one that no native has read
LANGUAGES = {one.name: one for one in (
    Language("en", "English", ".", " to ", " and ", " or ", "; ", one_alone,
             {"strokes": (" stroke", " strokes"), "day": (" day", " days")},
             {"g": ("gram", "grams"), "kg": ("kilogram", "kilograms"), "mL": ("millilitre", "millilitres"),
              "L": ("litre", "litres"), "mm": ("millimetre", "millimetres"), "oz": ("ounce", "ounces"),
              "lb": ("pound", "pounds"), "US fl oz": ("fluid ounce", "fluid ounces"), "in": ("inch", "inches"),
              "min": ("minute", "minutes"), "h": ("hour", "hours"), "strokes": ("stroke", "strokes")}, True),
    Language("de", "Deutsch", ",", " bis ", " und ", " oder ", "; ", one_alone,
             {"strokes": (" Hub", " Hübe"), "day": (" Tag", " Tage"), "%": ("\u00a0%", "\u00a0%")},
             {"g": ("Gramm", "Gramm"), "kg": ("Kilogramm", "Kilogramm"), "mL": ("Milliliter", "Milliliter"),
              "L": ("Liter", "Liter"), "mm": ("Millimeter", "Millimeter"), "oz": ("Unze", "Unzen"),
              "lb": ("Pfund", "Pfund"), "US fl oz": ("Flüssigunze", "Flüssigunzen"), "in": ("Zoll", "Zoll"),
              "min": ("Minute", "Minuten"), "h": ("Stunde", "Stunden"), "strokes": ("Hub", "Hübe")}, False),
)}

# Spellings of units beside those of English, in small letters: all are understood whatever language a page is in
SPELT = (
    # German
    ("g", ("gramm",)), ("kg", ("kilogramm",)), ("oz", ("unze", "unzen")),
    ("mL", ("ccm", "kubikzentimeter")), ("m3", ("cbm", "kubikmeter")), ("cm", ("zentimeter",)),
    ("in", ("zoll", "\u201c", "\u201e")), ("ft", ("fuß", "fuss", "\u2018")), ("m2", ("qm", "quadratmeter")),
    ("deg", ("grad",)), ("degC", ("grad", "grad c", "grad celsius", "celsius")),
    ("degF", ("grad f", "grad fahrenheit", "fahrenheit")), ("s", ("sek", "sekunde", "sekunden")), ("min", ("minuten",)),
    ("h", ("std", "stunde", "stunden")), ("day", ("tag", "tage", "tagen")), ("g/m2", ("g/qm",)), ("m3/h", ("cbm/h",)),
    ("%", ("prozent",)), ("strokes", ("hub", "hübe", "hüben")),
)

# messages: the patterns of the language by key, or None where the build has put them in place of the keys (a phone);
# language: a row of LANGUAGES; units: METRIC or US; alone: without the English behind a sentence that keeps from harm
Reader = namedtuple("Reader", ("messages", "language", "units", "alone"))

"""Units: the user's at the edge, SI inside. Factors are exact by definition where one exists.

Inch 25.4 mm, pound 453.59237 g, US gallon 231 cubic inches, imperial gallon 4.54609 L: NIST SP 811 (2008), App. B.8.
"""
from collections import namedtuple

from .numbers import NEAREST, places_for, shown, small

METRIC, US = "metric", "us"

# value in SI = typed * times / over + zero
Unit = namedtuple("Unit", ("name", "quantity", "times", "over", "zero", "us", "spellings"))

INCH, FOOT, YARD, POUND = 0.0254, 0.3048, 0.9144, 0.45359237
US_GALLON, IMPERIAL_GALLON = 231 * INCH**3, 0.00454609

UNITS = (
    Unit("g", "mass", 1, 1000, 0, "oz", ("gram", "grams", "gr")),
    Unit("kg", "mass", 1, 1, 0, "lb", ("kilo", "kilos", "kilogram", "kilograms")),
    Unit("oz", "mass", POUND, 16, 0, "oz", ("ounce", "ounces")),
    Unit("lb", "mass", POUND, 1, 0, "lb", ("lbs", "pound", "pounds")),
    Unit("mL", "volume", 1, 1e6, 0, "US fl oz", ("ml", "cc", "cm3", "cm³", "millilitre", "milliliter")),
    Unit("L", "volume", 1, 1000, 0, "US gal", ("l", "litre", "litres", "liter", "liters")),
    Unit("m3", "volume", 1, 1, 0, "ft3", ("m³", "cubic metres", "cubic meters")),
    Unit("ft3", "volume", FOOT**3, 1, 0, "ft3", ("ft³", "cu ft", "cubic feet")),
    Unit("US fl oz", "volume", US_GALLON, 128, 0, "US fl oz", ("us fl oz", "us floz", "usfloz")),
    Unit("imp fl oz", "volume", IMPERIAL_GALLON, 160, 0, "imp fl oz",
         ("imperial fl oz", "imp floz", "uk fl oz", "impfloz")),
    Unit("US pt", "volume", US_GALLON, 8, 0, "US pt", ("us pt", "us pint", "us pints")),
    Unit("imp pt", "volume", IMPERIAL_GALLON, 8, 0, "imp pt", ("imperial pint", "uk pint", "imp pint")),
    Unit("US qt", "volume", US_GALLON, 4, 0, "US qt", ("us qt", "us quart", "us quarts")),
    Unit("US gal", "volume", US_GALLON, 1, 0, "US gal", ("us gal", "us gallon", "us gallons")),
    Unit("imp gal", "volume", IMPERIAL_GALLON, 1, 0, "imp gal", ("imperial gallon", "uk gallon", "imp gallon")),
    Unit("US tbsp", "volume", US_GALLON, 256, 0, "US tbsp", ("us tbsp", "tbsp", "tablespoon", "tablespoons")),
    Unit("mm", "length", 1, 1000, 0, "in", ("millimetre", "millimeter")),
    Unit("cm", "length", 1, 100, 0, "in", ("centimetre", "centimeter")),
    Unit("m", "length", 1, 1, 0, "ft", ("metre", "metres", "meter", "meters")),
    Unit("in", "length", INCH, 1, 0, "in", ("inch", "inches", '"', "″")),
    Unit("ft", "length", FOOT, 1, 0, "ft", ("foot", "feet", "'", "′")),
    Unit("yd", "length", YARD, 1, 0, "yd", ("yard", "yards")),
    Unit("m2", "area", 1, 1, 0, "ft2", ("m²",)),
    Unit("ft2", "area", FOOT**2, 1, 0, "ft2", ("ft²", "sq ft")),
    Unit("deg", "angle", 3.141592653589793, 180, 0, "deg", ("°", "degrees", "degree")),
    Unit("degC", "temperature", 1, 1, 273.15, "degF", ("°c", "c", "°")),
    Unit("degF", "temperature", 5, 9, 273.15 - 160 / 9, "degF", ("°f", "f")),
    Unit("s", "time", 1, 1, 0, "s", ("sec", "seconds")),
    Unit("min", "time", 60, 1, 0, "min", ("minute", "minutes", "mins")),
    Unit("h", "time", 3600, 1, 0, "h", ("hour", "hours", "hr", "hrs")),
    Unit("day", "time", 86400, 1, 0, "day", ("d", "days")),
    Unit("g/mL", "density", 1000, 1, 0, "g/mL", ("g/ml", "kg/l", "g/cm3", "g/cm³", "g/cc")),
    Unit("kg/m3", "density", 1, 1, 0, "kg/m3", ("kg/m³",)),
    Unit("lb/US gal", "density", POUND / US_GALLON, 1, 0, "lb/US gal", ("lb/us gal",)),
    Unit("g/m2", "areal weight", 1, 1000, 0, "oz/yd2", ("g/m²", "gsm")),
    Unit("oz/yd2", "areal weight", POUND / 16 / YARD**2, 1, 0, "oz/yd2", ("oz/yd²", "oz/sq yd")),
    Unit("g/m", "weight per length", 1, 1000, 0, "oz/ft", ("gram per metre",)),
    Unit("oz/ft", "weight per length", POUND / 16 / FOOT, 1, 0, "oz/ft", ()),
    Unit("m/min", "speed", 1, 60, 0, "ft/min", ()),
    Unit("ft/min", "speed", FOOT, 60, 0, "ft/min", ("fpm",)),
    Unit("m3/h", "flow", 1, 3600, 0, "ft3/min", ("m³/h",)),
    Unit("ft3/min", "flow", FOOT**3, 60, 0, "ft3/min", ("cfm", "ft³/min")),
    Unit("g/eq", "equivalent weight", 1, 1000, 0, "g/eq", ("g",)),
    Unit("%", "share", 1, 100, 0, "%", ("percent", "per cent")),
    Unit("strokes", "count", 1, 1, 0, "strokes", ("stroke", "pumps")),
    Unit("", "count", 1, 1, 0, "", ("x",)),
)
BY_NAME = {unit.name: unit for unit in UNITS}


def _by_spelling():
    """Every spelling in lower case -> the units it may mean (g is a mass and an equivalent weight)."""
    found = {}
    for unit in UNITS:
        for words in (small(unit.name),) + unit.spellings:
            if unit not in found.setdefault(words, []):
                found[words].append(unit)
    return found


BY_SPELLING = _by_spelling()

# Words that mean more than one unit: asked back, never guessed.
AMBIGUOUS = (
    (("us oz", "usoz"), "oz for weight, or US fl oz"),
    (("fl oz", "floz", "fluid ounce", "fluid ounces"), "US fl oz or imp fl oz"),
    (("pt", "pint", "pints"), "US pt or imp pt"),
    (("gal", "gallon", "gallons"), "US gal or imp gal"),
    (("qt", "quart", "quarts"), "US qt, or litres"),
)
SIGNS = {"degC": "°C", "degF": "°F", "deg": "°", "m2": "m²", "m3": "m³", "g/m2": "g/m²", "kg/m3": "kg/m³",
         "m3/h": "m³/h", "oz/yd2": "oz/yd²", "ft2": "ft²", "ft3": "ft³", "ft3/min": "ft³/min"}


def sign(name: str) -> str:
    """A unit as people read it.

    >>> sign("degC"), sign("g")
    ('°C', 'g')
    """
    return SIGNS.get(name, name)


def unit_for(name: str, system: str) -> str:
    """The unit a person of that system expects where a metric one is declared.

    >>> unit_for("g", "us"), unit_for("g", "metric"), unit_for("deg", "us")
    ('oz', 'g', 'deg')
    """
    return BY_NAME[name].us if system == US else name


def find(typed: str, quantity: str):
    """The unit that typed words name -> (unit or None, why not). Case matters to nobody here.

    >>> find("Grams", "mass")[0].name, find("fl oz", "volume")[1]
    ('g', 'say which one: US fl oz or imp fl oz')
    """
    words = " ".join([word for word in small(typed).split(" ") if word])
    if words.endswith(".") and len(words) > 1:
        words = words[:-1]
    other = ""
    for unit in BY_SPELLING.get(words, ()):
        if unit.quantity == quantity:
            return unit, ""
        other = other or unit.quantity
    for spellings, choices in AMBIGUOUS:
        if words in spellings:
            return None, "say which one: " + choices
    if other:
        return None, "'" + typed[:20] + "' is a unit of " + other + ", not of " + quantity
    return None, "'" + typed[:20] + "' is not a unit known here"


def to_si(value: float, name: str) -> float:
    """A value in the named unit -> SI.

    >>> to_si(250.0, "g"), to_si(50.0, "degF")
    (0.25, 283.15)
    """
    unit = BY_NAME[name]
    return value * unit.times / unit.over + unit.zero


def from_si(value: float, name: str) -> float:
    """An SI value -> the named unit.

    >>> round(from_si(0.25, "oz"), 3)
    8.818
    """
    unit = BY_NAME[name]
    return (value - unit.zero) * unit.over / unit.times


def told(value: float, name: str, system: str = METRIC, toward: str = NEAREST, places=None, digits: int = 3) -> str:
    """An SI value as text for people, in the unit they expect.

    value: SI; name: the metric unit to tell it in; system: METRIC or US; places: decimals, or None for `digits` figures

    >>> told(0.24, "g"), told(0.24, "g", US), told(0.0000182, "mL"), told(0.00008, "mL", US)
    ('240 g', '8.47 oz', '18.2 mL', '2.71 US fl oz')
    """
    unit = unit_for(name, system)
    value = from_si(value, unit)
    text = shown(value, places_for(value, digits) if places is None else places, toward)
    mark = sign(unit)
    return text + mark if mark in ("%", "°") else (text + " " + mark if mark else text)

"""Units against their definitions and against pint."""
from fractions import Fraction

import pint
import pytest
from covemix.shared.words.texts import said
from covemix.shared.words.units import AMBIGUOUS, BY_NAME, METRIC, UNITS, US, find, from_si, sign, to_si, told, unit_for
from covemix.shared.words.written import reader
from hypothesis import given
from hypothesis import strategies as st

SP811 = "NIST SP 811 (2008), App. B.8, and NIST Handbook 44, App. C"

# id, value, unit, unit wanted, result; un-3 to un-10 from memory, exact by definition
CASES = (
    ("un-1", 1, "US fl oz", "mL", 29.5735295625), ("un-2", 1, "oz", "g", 28.349523125),
    ("un-3", 1, "US pt", "mL", 473.176473), ("un-5", 6, "oz/yd2", "g/m2", 203.434485),
    ("un-6", 1, "imp fl oz", "mL", 28.4130625), ("un-7", 1, "US tbsp", "mL", 14.78676478125),
    ("un-8", 1, "ft3/min", "m3/h", 1.6990108), ("un-9", 50, "degF", "degC", 10), ("un-10", 72, "degF", "degC", 200 / 9),
)


@pytest.mark.parametrize("check, value, unit, wanted, result", CASES)
def test_units_are_those_of_the_published_tables(outside, check, value, unit, wanted, result):
    """NIST SP 811 (2008), App. B.8; NIST Handbook 44, App. C; exact definitions of inch, pound and gallons."""
    outside.worked(check, SP811, result, from_si(to_si(value, unit), wanted), rel=1e-8)


def test_a_square_yard_is_nine_square_feet_of_the_published_table(outside):
    """NIST SP 811 (2008), App. B.8: 1 yd2 = 0.836 127 36 m2."""
    outside.printed("un-4", SP811, 0.83612736, to_si(9, "ft2"))


@pytest.mark.parametrize("name, exact", [
    ("in", Fraction(254, 10000)), ("ft", Fraction(3048, 10000)), ("yd", Fraction(9144, 10000)),
    ("lb", Fraction(45359237, 10**8)), ("oz", Fraction(45359237, 16 * 10**8)),
    ("US gal", 231 * Fraction(254, 10000) ** 3), ("imp gal", Fraction(454609, 10**8)),
    ("US fl oz", 231 * Fraction(254, 10000) ** 3 / 128), ("imp fl oz", Fraction(454609, 10**8) / 160),
])
def test_factors_are_the_exact_definitions(outside, name, exact):
    """Inch 25.4 mm, pound 453.59237 g, US gallon 231 in3, imperial gallon 4.54609 L; in exact fractions."""
    outside.worked("definition of " + name, SP811, float(exact), to_si(1, name), rel=1e-15)


PINT = {
    "US fl oz": "US_fluid_ounce", "imp fl oz": "imperial_fluid_ounce", "US pt": "US_pint", "imp pt": "imperial_pint",
    "US qt": "US_liquid_quart", "US gal": "US_liquid_gallon", "imp gal": "imperial_gallon", "US tbsp": "tablespoon",
    "lb/US gal": "pound / US_liquid_gallon", "oz/yd2": "ounce / yard**2",
    "g/m": "gram / meter", "oz/ft": "ounce / foot", "degC": "degree_Celsius",
    "degF": "degree_Fahrenheit", "ft3/min": "foot**3 / minute", "ft/min": "foot / minute", "g/eq": "gram", "in": "inch",
    "m3/h": "meter**3 / hour", "g/mL": "gram / milliliter", "deg": "degree", "%": "percent", "strokes": "", "": "",
    "m2": "meter**2", "mm2": "millimeter**2", "in2": "inch**2",
    "ft2": "foot**2", "m3": "meter**3", "ft3": "foot**3", "g/m2": "gram / meter**2",
    "kg/m3": "kilogram / meter**3", "MPa": "megapascal", "psi": "psi",
}


SI = {
    "mass": "kilogram", "volume": "meter**3", "length": "meter", "area": "meter**2", "angle": "radian",
    "temperature": "kelvin", "time": "second", "density": "kilogram / meter**3", "areal weight": "kilogram / meter**2",
    "weight per length": "kilogram / meter",
    "speed": "meter / second", "flow": "meter**3 / second", "equivalent weight": "kilogram",
    "stress": "pascal", "share": "", "count": "",
}


@pytest.fixture(scope="module")
def registry():
    return pint.UnitRegistry()


@pytest.mark.parametrize("unit", UNITS, ids=lambda unit: unit.name)
def test_every_unit_is_that_of_pint(registry, unit):
    """pint, whose definitions follow NIST and BIPM."""
    theirs = registry.Quantity(37.5, PINT.get(unit.name, unit.name)).to(SI[unit.quantity]).magnitude
    assert to_si(37.5, unit.name) == pytest.approx(theirs, rel=1e-12)


def test_every_quantity_is_compared():
    assert set(SI) == {unit.quantity for unit in UNITS}


@given(st.floats(-1e6, 1e6), st.sampled_from(UNITS))
def test_there_and_back_is_the_same(value, unit):
    assert from_si(to_si(value, unit.name), unit.name) == pytest.approx(value, rel=1e-12, abs=1e-9)


@pytest.mark.parametrize("unit", UNITS, ids=lambda unit: unit.name)
def test_every_spelling_finds_its_unit_in_any_case(unit):
    for words in (unit.name, *unit.spellings, *([sign(unit.name)] if unit.name else [])):
        if words:
            for typed in (words, words.upper() if words.isascii() else words, f"  {words} ", words + "."):
                assert find(typed, unit.quantity)[0] is unit, typed


@pytest.mark.parametrize("spellings, choices", AMBIGUOUS)
def test_words_with_two_meanings_are_asked_back(spellings, choices):
    for words in spellings:
        for quantity in ("mass", "volume"):
            found, why = find(words, quantity)
            assert (found, said(why, reader())) == (None, "type the exact unit: " + said(choices, reader()))


def test_fluid_ounces_are_never_shown_without_their_country():
    for unit in UNITS:
        if "fl oz" in unit.name or "pt" in unit.name or "gal" in unit.name:
            assert unit.name.split()[0] in ("US", "imp", "lb/US")
    assert told(0.0001, "mL", US).endswith(" US fl oz")


def refused(typed, quantity):
    """Why a unit is none of that quantity, in words."""
    found, why = find(typed, quantity)
    assert found is None
    return said(why, reader())


def test_a_unit_of_another_quantity_is_named_as_such():
    assert refused("mm", "mass") == "'mm' is a unit of length, not of mass"
    assert refused("furlongs", "length") == "unknown unit 'furlongs'. Type the number alone, or another unit."


@pytest.mark.parametrize("unit", UNITS, ids=lambda unit: unit.name)
def test_both_systems_have_a_unit_of_the_same_quantity(unit):
    for system in (METRIC, US):
        assert BY_NAME[unit_for(unit.name, system)].quantity == unit.quantity


@given(st.floats(1e-6, 100), st.sampled_from((METRIC, US)))
def test_what_is_told_reads_back_to_three_figures(mass, system):
    text, _, unit = told(mass, "g", system).partition(" ")
    assert to_si(float(text), unit) == pytest.approx(mass, rel=0.0051, abs=to_si(0.00006, unit))

"""Numbers: what a thumb types, and text that is alike on every runtime; fractions and decimal as references."""

from decimal import ROUND_CEILING, ROUND_FLOOR, ROUND_HALF_UP, Decimal
from fractions import Fraction

import pytest
from covemix.shared.words.numbers import (
    DOWN,
    LEAST,
    MOST,
    NEAREST,
    UP,
    ceiling,
    number,
    places_for,
    reading,
    shown,
    to_step,
)
from hypothesis import given
from hypothesis import strategies as st

TYPED = (
    ("240", 240),
    ("1.5", 1.5),
    ("1,5", 1.5),
    (" 1,5 ", 1.5),
    (".5", 0.5),
    (",5", 0.5),
    ("5.", 5),
    ("007", 7),
    ("+2", 2),
    ("-3", -3),
    ("−3", -3),
    ("1/4", 0.25),
    ("3 1/2", 3.5),
    ("½", 0.5),
    ("1½", 1.5),
    ("3 ¾", 3.75),
    ("1⁄8", 0.125),
    ("1,000", 1),
    ("0", 0),
    ("-1 1/2", -1.5),
    ("999999999999", 999999999999),
    (240, 240),
    (1.5, 1.5),
    (-0.0, 0),
)
REFUSED = (
    "",
    " ",
    "abc",
    "NaN",
    "inf",
    "-inf",
    "1e400", "1e308", "1e-9", "2.5E+3", "1e3",
    "1e3",
    "0x10",
    "1_000",
    "1,500.2",
    "1.2.3",
    "1,500,000",
    "1 500",
    "--5",
    "+-5",
    "1/0",
    "1/2/3",
    "1/",
    "/2",
    "½/3",
    "1.5/2",
    ".",
    ",",
    "+",
    "-",
    "١٢",
    "१२",
    "１２",
    "9" * 13,
    "9" * 200,
    "0." + "0" * 30 + "1",
    "\x00",
    "🛶",
    "5\u200f",
    "12 000",
    None,
    True,
    False,
    [],
    {},
    float("nan"),
    float("inf"),
    1e300,
    5e-324,
    10**400,
)


@pytest.mark.parametrize("typed, value", TYPED)
def test_what_a_thumb_types_is_a_number(typed, value):
    assert number(typed) == value


@pytest.mark.parametrize("typed", REFUSED, ids=lambda typed: ascii(typed)[:20])
def test_what_is_no_number_is_refused_in_words(typed):
    value, words, why = reading(typed)
    assert number(typed) is None
    # without a number there is a reason; behind a number there are words that are no unit
    assert why if value is None else words


@given(st.integers(0, 999), st.integers(0, 999), st.integers(1, 999))
def test_a_mixed_fraction_is_that_of_the_fractions_library(whole, above, below):
    assert number(f"{whole} {above}/{below}") == pytest.approx(float(whole + Fraction(above, below)), rel=1e-15)


@given(st.decimals("-99999", "99999", places=4), st.sampled_from(".,"))
def test_a_decimal_reads_as_python_reads_it_with_comma_or_point(typed, mark):
    assert number(str(typed).replace(".", mark)) == float(typed)


@given(st.text(max_size=50))
def test_no_text_at_all_breaks_the_reader(typed):
    value, _, why = reading(typed)
    assert value is None or (abs(value) <= MOST and (value == 0 or abs(value) >= LEAST))
    assert (value is None) == bool(why)


ROUNDINGS = {NEAREST: ROUND_HALF_UP, DOWN: ROUND_FLOOR, UP: ROUND_CEILING}


@given(st.integers(-(10**9), 10**9), st.integers(0, 4), st.integers(0, 4), st.sampled_from(sorted(ROUNDINGS)))
def test_shown_is_decimal_rounding_of_the_number_as_typed(digits, behind, places, toward):
    """Python's decimal module, on the decimal that was typed: a tie is a tie, whatever the float makes of it."""
    typed = Decimal(digits).scaleb(-behind)
    expected = typed.quantize(Decimal(1).scaleb(-places), ROUNDINGS[toward])
    text = shown(float(typed), places, toward)
    assert Decimal(text) == expected
    assert len(text.partition(".")[2]) == places
    assert not (text.startswith("-") and expected == 0)


def test_shown_keeps_to_the_figures_that_a_float_holds():
    assert shown(1e22) == "1" + "0" * 22
    assert shown(1076652469294506442752.0)[15:] == "0000000"


@pytest.mark.parametrize(
    "value, text", [(0.25, "0.3"), (0.35, "0.4"), (2.675 * 10, "26.8"), (-0.04, "0.0"), (-0.25, "-0.3")]
)
def test_ties_go_away_from_zero(value, text):
    assert shown(value, 1) == text


@given(st.floats(1e-4, 1e6), st.integers(1, 4))
def test_places_leave_the_wanted_figures(value, digits):
    text = shown(value, places_for(value, digits))
    assert float(text) == pytest.approx(value, rel=0.51 * 10 ** (1 - digits), abs=0.51e-4)


@given(st.integers(0, 10**5), st.sampled_from((1, 2, 5, 10)), st.sampled_from((1, 0.1, 0.01, 0.001)))
def test_a_step_shows_the_nearest_multiple_as_a_scale_would(tenths, one_two_five, decade):
    """Exact in fractions: the multiple of the step within half a step, ties up."""
    step = Fraction(one_two_five) * Fraction(str(decade))
    value = Fraction(tenths, 10) * step
    expected = int(value / step + Fraction(1, 2)) * step
    assert to_step(float(value), float(step)) == pytest.approx(float(expected), rel=1e-12, abs=1e-12)


@given(st.integers(0, 10**6), st.floats(-1e-9, 1e-9))
def test_a_whole_number_is_its_own_ceiling_whatever_the_last_bit(whole, noise):
    assert ceiling(whole + noise) == whole
    assert ceiling(whole + 0.01) == whole + 1

"""Cups: fill heights against quadrature and root finding, sensitivities against propagated errors."""
from math import pi, sqrt

import pytest
from covemix.shared.equations import cups
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.integrate import quad
from scipy.optimize import brentq
from uncertainties import ufloat, umath

# id: bottom radius, top radius, height [mm], fill [mL], fill height [mm], full [mL]
FRUSTUMS = (
    (30, 40, 100, 100, 31.86364, 387.4631),
    (30, 40, 100, 300, 81.78269, 387.4631),
    (25, 25, 90, 50, 25.46479, 176.7146),
    (40, 32, 100, 200, 43.4562, 408.8259),
)


def quadrature_volume(height, bottom, taper):
    return quad(lambda z: pi * (bottom + taper * z) ** 2, 0, height)[0]


@pytest.mark.parametrize("bottom, top, height, fill, expected, full", FRUSTUMS)
def test_fill_height_is_the_handbook_frustum_solved_for_its_height(bottom, top, height, fill, expected, full):
    """Machinery's Handbook, Volumes of Solids, frustum of a cone: V = 0.2618 h (D^2 + D d + d^2); from memory."""
    cup = {"bottom": 2 * bottom / 1000, "top": 2 * top / 1000, "height": height / 1000}
    handbook = 0.2618 * height * (4 * top * top + 4 * top * bottom + 4 * bottom * bottom) / 1000
    assert cups.full_volume(cup) * 1e6 == pytest.approx(full, rel=1e-6)
    assert handbook == pytest.approx(full, rel=1e-4)
    found = cups.fill_height(fill / 1e6, bottom / 1000, cups.taper_of(cup))
    assert found * 1000 == pytest.approx(expected, rel=1e-6)


@settings(max_examples=150, deadline=None)
@given(st.floats(0.005, 0.2), st.floats(-0.35, 0.6), st.floats(0.02, 0.3), st.floats(0.01, 1))
def test_fill_height_agrees_with_quadrature_and_root_finding(bottom, taper, height, share):
    """scipy.integrate.quad over the cross-section, scipy.optimize.brentq for the level; all kinds of cups."""
    if bottom + taper * height < 0.1 * bottom:
        height = -0.9 * bottom / taper
    volume = share * quadrature_volume(height, bottom, taper)
    wanted = brentq(lambda z: quadrature_volume(z, bottom, taper) - volume, 0, height * 1.01, xtol=1e-14)
    assert cups.fill_height(volume, bottom, taper) == pytest.approx(wanted, rel=1e-8)


@pytest.mark.parametrize("taper", [0, 1e-13, -1e-13, 1e-9, -1e-9, 1e-6, -1e-6, 9.9e-6, 1.1e-5, 1e-4])
def test_a_nearly_straight_cup_loses_no_digits(taper):
    """Near taper 0 the cube roots cancel; scipy.optimize.brentq on the polynomial volume does not."""
    volume = 250e-6
    wanted = brentq(lambda z: pi * (0.035**2 * z + 0.035 * taper * z**2 + taper**2 * z**3 / 3) - volume, 0, 1,
                    xtol=1e-16, rtol=1e-14)
    assert cups.fill_height(volume, 0.035, taper) == pytest.approx(wanted, rel=1e-12)


@settings(max_examples=100, deadline=None)
@given(st.floats(0.02, 0.1), st.floats(-0.18, 0.4), st.floats(0.05, 0.5), st.floats(0.05, 0.5))
def test_sensitivity_of_the_ratio_to_the_marks_agrees_with_propagated_errors(bottom, taper, first, second):
    """PyPI `uncertainties`: both marks carry 1 mm, the ratio is differentiated by the library."""
    cup = {"bottom": 2 * bottom, "top": 2 * (bottom + taper * 0.1), "height": 0.1}
    first, second = first * cups.full_volume(cup), second * cups.full_volume(cup)
    low, high = cups.stick_marks((first, second), cup)
    taper = cups.taper_of(cup)
    marks = ufloat(low, 0.001), ufloat(high, 0.001)
    volumes = [pi * z / 3 * (bottom**2 + bottom * (bottom + taper * z) + umath.pow(bottom + taper * z, 2))
               for z in marks]
    ratio = (volumes[1] - volumes[0]) / volumes[0]
    assert cups.stick_spread((first, second), cup, 0.001) == pytest.approx(ratio.s / ratio.n, rel=1e-6)


def test_more_than_the_cone_above_a_narrowing_cup_is_no_height():
    with pytest.raises(ValueError, match="cone"):
        cups.fill_height(1, 0.03, -0.2)


def test_three_parts_take_the_worst_pair():
    """PyPI `uncertainties` on three marks in a straight cup."""
    cup = {"bottom": 0.06, "top": 0.06, "height": 0.2}
    volumes, area = (100e-6, 30e-6, 5e-6), pi * 0.03**2
    marks = [ufloat(sum(volumes[:n]) / area, 0.001) for n in (1, 2, 3)]
    pairs = [(marks[1] - marks[0]) / marks[0], (marks[2] - marks[1]) / marks[0]]
    assert cups.stick_spread(volumes, cup, 0.001) == pytest.approx(max([one.s / one.n for one in pairs]), rel=1e-9)


def test_the_smallest_stick_batch_is_where_the_spread_meets_the_tolerance():
    """scipy.optimize.brentq on the spread; straight, tapered and narrowing cups, two and three parts."""
    for bottom, top, parts in ((30, 40, (2, 1)), (40, 30, (1, 1)), (35, 35, (3, 1)), (25, 60, (2, 1, 0.5))):
        cup, whole = {"bottom": bottom / 1000, "top": top / 1000, "height": 0.15}, sum(parts)

        def spread(batch, cup=cup, parts=parts, whole=whole):
            return cups.stick_spread([part / whole * batch for part in parts], cup, 0.001)

        full = cups.full_volume(cup)
        for wanted in (0.999 * spread(full), 0.5 * spread(full)):
            assert cups.smallest_stick_batch(parts, cup, 0.001, wanted) is None
        for wanted in (1.001 * spread(full), 1.5 * spread(full), 6 * spread(full)):
            exact = brentq(lambda v, wanted=wanted: spread(v) - wanted, full / 1e4, full, xtol=1e-15)
            least = cups.smallest_stick_batch(parts, cup, 0.001, wanted)
            assert least == pytest.approx(exact, rel=1e-5)
            assert spread(least) <= wanted * (1 + 1e-8)
    cup = {"bottom": 0.03, "top": 0.04, "height": 0.15}
    assert cups.smallest_stick_batch((2, 1), cup, 0.001, 0.001) is None


def test_in_a_straight_cup_the_widest_that_holds_has_the_wanted_spread():
    width = cups.widest_cup((150e-6, 50e-6), 0.001, 0.03)
    cup = {"bottom": width, "top": width, "height": 1}
    assert cups.stick_spread((150e-6, 50e-6), cup, 0.001) == pytest.approx(0.03, rel=1e-9)
    area = pi * width * width / 4
    by_hand = 0.001 * area * sqrt((1 / 150e-6 + 1 / 50e-6) ** 2 + (1 / 50e-6) ** 2)
    assert by_hand == pytest.approx(0.03, rel=1e-9)


@given(st.floats(10e-6, 2000e-6), st.floats(0.02, 0.1), st.floats(-13, -1), st.sampled_from((-1, 1)))
def test_a_level_gives_back_its_volume_to_the_last_digits_however_straight_the_wall(volume, bottom, power, sign):
    """What a series and a cube root lose a Newton step brings back: 1e-14, or a mark moves with the phone."""
    taper = sign * 10**power
    if 3 * volume * taper / pi + bottom**3 <= 0.2 * bottom**3:
        return  # no such cup: it would close below the level
    height = cups.fill_height(volume, bottom, taper)
    assert cups.frustum_volume(height, bottom, taper) == pytest.approx(volume, rel=3e-14, abs=0)

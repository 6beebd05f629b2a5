"""Kinetics, gelation and runaway against published relations and independent numerics."""
from math import exp, sqrt

import numpy
import pytest
from covemix.shared.equations import kinetics, runaway
from scipy import constants
from scipy.integrate import quad, solve_ivp
from scipy.optimize import brentq, minimize_scalar


def test_the_gas_constant_is_codatas(outside):
    """CODATA 2018 through scipy.constants."""
    outside.library("heat gas constant", "CODATA 2018, by scipy.constants (library)", constants.R,
            kinetics.GAS_CONSTANT)


@pytest.mark.parametrize(("arms", "ratio", "expected"), [
    ((2, 4), 1, 0.5773503), ((2, 5), 1, 0.5), ((2, 4), 0.8, 0.5163978)])
def test_gel_conversion_of_flory_and_stockmayer(outside, arms, ratio, expected):
    """Flory, Principles of Polymer Chemistry (1953), ch. 9; Stockmayer, J. Polym. Sci. 9 (1952) 69 (from memory)."""
    outside.worked(f"heat gel {arms} at {ratio}",
            "Flory (1953), ch. 9; Stockmayer, J. Polym. Sci. 9 (1952) 69 (from memory)",
            expected, kinetics.gel_conversion(*arms, ratio), rel=1e-6)


def test_beyond_the_limits_of_the_ratio_nothing_gels():
    """Stockmayer (1952): two and four arms gel between 1/3 and 3 amine hydrogens per epoxide."""
    assert kinetics.gel_limits(2, 4) == pytest.approx((1 / 3, 3), rel=1e-6)
    assert kinetics.gel_conversion(2, 4, 0.33) is None
    assert kinetics.gel_conversion(2, 4, 3.01) is None
    assert kinetics.gel_conversion(2, 4, 3) == pytest.approx(1)


@pytest.mark.parametrize("arms", [(2, 4), (2, 5), (3, 4), (2.2, 6)])
@pytest.mark.parametrize("ratio", [0.7, 1.0, 1.3])
def test_at_the_gel_point_the_branching_matrix_has_the_eigenvalue_one(arms, ratio):
    """Independent numerics: numpy's largest eigenvalue of the expected further bonds of a bonded unit is 1 at gel."""
    epoxide = kinetics.gel_conversion(*arms, ratio)
    amine = epoxide / ratio
    matrix = numpy.array([[0, amine * (arms[1] - 1)], [epoxide * (arms[0] - 1), 0]])
    assert max(abs(numpy.linalg.eigvals(matrix))) == pytest.approx(1, rel=1e-12)


@pytest.mark.parametrize(("conversion", "expected"), [(0.5, 14044.96), (0.9, 46622.65)])
def test_isothermal_time_in_closed_form(outside, conversion, expected):
    """Horie, Hiura, Sawada, Mita and Kambe, J. Polym. Sci. A-1 8 (1970) 1357, rate form; constants constructed."""
    outside.worked(f"heat isothermal time to {conversion}",
            "rate form of Horie et al., J. Polym. Sci. A-1 8 (1970) 1357, "
            "integrated by hand", expected, kinetics.isothermal_time(conversion, 1e-5, 3e-4), rel=1e-6)


@pytest.mark.parametrize("ratio", [0.0, 0.5, 5, 50, 500])
@pytest.mark.parametrize("conversion", [0.01, 0.3, 0.577, 0.95])
def test_isothermal_time_is_the_integral_of_the_inverse_rate(conversion, ratio):
    """scipy.integrate.quad of da / rate."""
    first = 2e-5
    area, _ = quad(lambda a: 1 / kinetics.cure_rate(a, first, first * ratio), 0, conversion, epsabs=0, epsrel=1e-11)
    assert kinetics.isothermal_time(conversion, first, first * ratio) == pytest.approx(area, rel=1e-9)


@pytest.mark.parametrize("ratio", [0.0, 1.0, 2.0, 30.0, 1000.0])
def test_the_fastest_rate_is_the_largest_of_all(ratio):
    """scipy's bounded minimiser."""
    best = minimize_scalar(lambda a: -kinetics.cure_rate(a, 1e-5, 1e-5 * ratio), bounds=(0, 1), method="bounded",
                           options={"xatol": 1e-10})
    assert kinetics.fastest_rate(1e-5, 1e-5 * ratio) == pytest.approx(-best.fun, rel=1e-6)


@pytest.mark.parametrize(("energy", "start", "end", "expected"), [
    (58600, 20, 30, 2.210189), (50000, 23, 15, 0.5690645)])
def test_arrhenius(outside, energy, start, end, expected):
    """The Arrhenius law with R of CODATA 2018."""
    outside.worked(f"heat Arrhenius {energy} J/mol", "the Arrhenius law with R of CODATA 2018", expected,
            kinetics.rate_factor(energy, end + 273.15, start + 273.15), rel=1e-6)


@pytest.mark.parametrize(("phr", "heat", "rise"), [(10.86, 474.7572, 237.3786), (50, 350.8772, 175.4386)])
def test_heat_of_a_mix_and_its_adiabatic_rise(outside, phr, heat, rise):
    """The first law; about 100 kJ per mol epoxide: Rozenberg, Adv. Polym. Sci. 75 (1986) 113, from memory."""
    found = kinetics.heat_of_mix(100000, 0.190, phr)
    source = "about 100 kJ per mol epoxide: Rozenberg, Adv. Polym. Sci. 75 (1986) 113 (from memory); the first law"
    outside.worked(f"heat of a mix {phr} phr", source, heat, found / 1000, rel=1e-6)
    outside.worked(f"heat adiabatic rise {phr} phr", source, rise, kinetics.adiabatic_rise(found, 2000), rel=1e-6)
    assert kinetics.heat_of_mix(100000, 0.190, phr, 0.4) == pytest.approx(found * 0.6)


def test_semenovs_rise_and_number():
    """Semenov (1928): the critical rise is R T^2 / E; at psi = 1/e the heat made just touches the heat shed."""
    assert runaway.critical_rise(50000, 293.15) == pytest.approx(14.29039, rel=1e-6)
    # exponential approximation in dimensionless temperature: psi exp(theta) = theta has a double root at theta = 1
    assert runaway.SEMENOV * exp(1) == pytest.approx(1)
    loss = runaway.semenov_number(50000, 200, 1.0, 1e-5, 293.15) / runaway.SEMENOV
    assert runaway.semenov_number(50000, 200, loss, 1e-5, 293.15) == pytest.approx(runaway.SEMENOV)


@pytest.mark.parametrize(("shape", "power", "digits"), [("slab", 0, 3), ("cylinder", 1, 3), ("sphere", 2, 4)])
def test_frank_kamenetskiis_critical_numbers_by_shooting(shape, power, digits):
    """Boddington, Gray and Robinson give 0.88, 2 and 3.32; here scipy shoots theta'' + n theta'/x + delta e^theta = 0.

    The curve of delta against the middle's theta has its top at the critical number.
    """
    def delta(middle):
        def miss(number):
            def slope(x, y):
                return [y[1], -number * exp(y[0]) - (power * y[1] / x if x > 0 else 0)]
            start = 1e-6
            bent = -number * exp(middle) / (power + 1)
            found = solve_ivp(slope, (start, 1), [middle + bent * start**2 / 2, bent * start], rtol=1e-9, atol=1e-11)
            return found.y[0][-1]
        return brentq(miss, 0.05, 8, xtol=1e-10)

    top = minimize_scalar(lambda middle: -delta(middle), bounds=(0.6, 2.4), method="bounded", options={"xatol": 1e-4})
    assert -top.fun == pytest.approx(runaway.CRITICAL[shape], rel=10**-digits / 2)


def test_a_critical_radius():
    """Frank-Kamenetskii (1938), long cylinder, constructed numbers: 32.95323 mm."""
    found = runaway.critical_half_size("cylinder", 55000, 0.2, 1100, 450000, 1e-5, 298.15)
    assert found * 1000 == pytest.approx(32.95323, rel=1e-4)
    assert runaway.critical_half_size("cylinder", 55000, 0.2, 1100, 450000, 4e-5, 298.15) == pytest.approx(found / 2)
    assert runaway.critical_half_size("slab", 55000, 0.2, 1100, 450000, 1e-5, 298.15) == pytest.approx(
        found * sqrt(0.878458 / 2), rel=1e-6)

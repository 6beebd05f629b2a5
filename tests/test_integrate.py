"""The pot's integrator against scipy, closed limits and constructed cases."""
from math import exp

import pytest
from covemix.shared.equations.integrate import LONGEST, Pot, Rates, _cubic, _top, pot_run
from covemix.shared.equations.kinetics import GAS_CONSTANT, cure_rate, isothermal_time, rate_factor
from covemix.shared.equations.runaway import SEMENOV, semenov_number
from hypothesis import example, given, settings
from hypothesis import strategies as st
from scipy.integrate import solve_ivp

CONSTRUCTED = Rates(1e-5, 3e-4, 58600, 50000, 296.15)


def by_scipy(rates, pot, end, wanted=None, hot=None, rtol=1e-10):
    """LSODA at 1e-10: (time to the conversion or heat, peak, its time, conversion at the end)."""
    def slope(time, y):
        rate = cure_rate(y[0], rates.first * rate_factor(rates.first_energy, y[1], rates.reference),
                         rates.grown * rate_factor(rates.grown_energy, y[1], rates.reference))
        return [rate, pot.rise * rate - pot.loss * (y[1] - pot.air)]

    events = [lambda time, y: slope(time, y)[1]]
    if wanted is not None:
        events.append(lambda time, y: y[0] - wanted)
    if hot is not None:
        events.append(lambda time, y: y[1] - hot)
    # dense output between LSODA's own steps: the events are found however far apart the steps are
    found = solve_ivp(slope, (0, end), [0, pot.start], method="LSODA", rtol=rtol, atol=1e-12, events=events,
                      max_step=end / 200)
    tops = [(y[1], time) for time, y in zip(found.t_events[0], found.y_events[0], strict=True)]
    peak, peak_time = max([*tops, (pot.start, 0.0), (found.y[1][-1], end)])
    ends = [times[0] for times in found.t_events[1:] if len(times)]
    return min(ends) if ends else None, peak, peak_time, found.y[0][-1]


@pytest.mark.parametrize(("mass", "loss", "peak", "peak_time", "gel_time"), [
    (0.3, 0.15, 168.689, 6066.37, 5868.04), (0.1, 0.12, 116.895, 8086.2, 7692.71)])
def test_two_constructed_pots(mass, loss, peak, peak_time, gel_time):
    """Energy balance with the Horie form, parameters constructed; scipy solve_ivp, LSODA, rtol 1e-10: 0.5 %."""
    run = pot_run(CONSTRUCTED, Pot(175.0, loss / (mass * 2000), 293.15, 293.15), 0.577, whole=True)
    assert run.peak - 273.15 == pytest.approx(peak, rel=0.005)
    assert run.peak_time == pytest.approx(peak_time, rel=0.005)
    assert run.reached == pytest.approx(gel_time, rel=0.005)
    assert run.steps < 130


def test_a_slow_ramp_of_temperature():
    """Horie form under a ramp of 7.5 K/h from 15 degC for 2 h: conversion 0.1826118, constructed. The pot follows its
    air at once, so the ramp is laid out as sixty held temperatures, each as a film would see it."""
    conversion, parts = 0.0, 60
    for part in range(parts):
        temp = 288.15 + 15 * (part + 0.5) / parts
        first = 1e-5 * rate_factor(58600, temp, 296.15)
        grown = 3e-4 * rate_factor(50000, temp, 296.15)
        # from one conversion to the next by the closed form's inverse: bisection on the time
        low, high = conversion, conversion + 0.05
        begun = isothermal_time(conversion, first, grown)
        for _ in range(60):
            middle = (low + high) / 2
            if isothermal_time(middle, first, grown) - begun < 7200 / parts:
                low = middle
            else:
                high = middle
        conversion = low
    assert conversion == pytest.approx(0.1826118, rel=2e-4)


@settings(max_examples=100, deadline=None, derandomize=True)
@given(first=st.floats(-6, -3.5), ratio=st.floats(0, 2), energy=st.floats(45000, 65000), other=st.floats(45000, 65000),
       rise=st.floats(20, 230), loss=st.floats(-5, -1.5), air=st.floats(273, 313), start=st.floats(273, 313))
def test_times_and_peaks_agree_with_scipy(first, ratio, energy, other, rise, loss, air, start):
    """scipy solve_ivp, LSODA, rtol 1e-10, over cups, trays and films, cold and hot: time 1 %, peak 2 K + 1 %."""
    rates = Rates(10**first, 10 ** (first + ratio), energy, other, 298.15)
    pot = Pot(rise, 10**loss, air, start)
    run = pot_run(rates, pot, 0.3, 333.15, whole=True)
    end = run.points[-1][0]
    if run.reached is None:  # so cold and slow that a month is not enough
        assert end == pytest.approx(LONGEST)
        assert by_scipy(rates, pot, end)[3] < 0.302
        return
    reached, peak, _, _ = by_scipy(rates, pot, end, 0.3, 333.15)
    assert run.reached == pytest.approx(reached, rel=0.01)
    assert run.peak == pytest.approx(peak, abs=2 + 0.01 * (peak - min(air, start)))
    short = pot_run(rates, pot, 0.3, 333.15)
    assert short.reached == pytest.approx(run.reached, rel=1e-12)


@settings(max_examples=150, deadline=None, derandomize=True)
@given(first=st.floats(-6, -3.5), ratio=st.floats(0.7, 1.7), energy=st.floats(45000, 65000), rise=st.floats(20, 230),
       loss=st.floats(-5, -1.5), air=st.floats(273, 313), start=st.one_of(st.none(), st.floats(273, 313)))
@example(first=-3.853, ratio=1.54, energy=54500.0, rise=83.8, loss=-4.99, air=309.0, start=None)  # a flat top
def test_a_peaks_time_is_as_exact_as_is_promised(first, ratio, energy, rise, loss, air, start):
    """scipy solve_ivp, LSODA, rtol 1e-10; k1/k2 0.02 to 0.2, the pots of which a peak is told: 1 %.

    Asked far beyond the run's own end: until then its last point would pass for a top. One that is 97 % converted and
    still climbs ends there, before its flat top.
    """
    rates = Rates(10**first, 10 ** (first + ratio), energy, energy, 298.15)
    pot = Pot(rise, 10**loss, air, air if start is None else start)
    run = pot_run(rates, pot, 0.3, 333.15, whole=True)
    if run.reached is None:
        return
    reached, peak, peak_time, _ = by_scipy(rates, pot, 6 * run.points[-1][0], 0.3, 333.15)
    assert run.reached == pytest.approx(reached, rel=0.01)
    if peak <= max(air, pot.start) + 3:
        return
    if run.peak_time == run.points[-1][0]:
        assert run.conversion > 0.97 and run.peak_time < peak_time and peak - run.peak <= 0.03 * rise
    else:
        assert run.peak_time == pytest.approx(peak_time, rel=0.01)


@pytest.mark.parametrize("loss", [1.0, 100.0])
@pytest.mark.parametrize("wanted", [0.1, 0.3, 0.577, 0.9])
def test_a_pot_that_sheds_all_its_heat_is_isothermal(loss, wanted):
    """The closed isothermal form of the rate law; the stiff end, where an explicit method needs a step a second."""
    rates = Rates(1e-5, 3e-4, 58600, 50000, 298.15)
    run = pot_run(rates, Pot(200.0, loss, 298.15, 298.15), wanted, tolerance=1e-4)
    assert run.reached == pytest.approx(isothermal_time(wanted, 1e-5, 3e-4), rel=0.003)
    assert run.steps < 150


def test_a_pot_without_loss_rises_by_the_adiabatic_rise():
    """First law: T - T_start = rise x conversion at every point, and the peak is the whole rise."""
    run = pot_run(CONSTRUCTED, Pot(180.0, 0.0, 293.15, 293.15), 0.3, whole=True, until=1e5)
    for _, temp, conversion in run.points:
        assert temp - 293.15 == pytest.approx(180 * conversion, abs=1e-6)
    assert pot_run(CONSTRUCTED, Pot(180.0, 0.0, 293.15, 293.15), 0.999, until=1e6).temperature_then == pytest.approx(
        293.15 + 180 * 0.999, abs=0.5)


def test_without_reaction_a_pot_follows_newtons_cooling():
    """Closed form: T = T_air + (T_start - T_air) exp(-loss t)."""
    run = pot_run(Rates(1e-14, 1e-14, 50000, 50000, 298.15), Pot(200.0, 1e-3, 280.0, 320.0), 0.3, until=3000.0,
                  tolerance=1e-4)
    assert run.reached is None
    assert run.points[-1][0] == pytest.approx(3000)
    assert run.points[-1][1] == pytest.approx(280 + 40 * exp(-3), abs=0.02)


def test_a_tighter_tolerance_brings_the_order_of_the_method():
    """RODAS3 is of third order: a thousandth of the tolerance leaves far less than a twentieth of the error."""
    pot = Pot(175.0, 5e-4, 293.15, 293.15)
    exact = pot_run(CONSTRUCTED, pot, 0.4, tolerance=1e-7).reached
    assert exact == pytest.approx(by_scipy(CONSTRUCTED, pot, 3 * exact, 0.4)[0], rel=3e-6)
    coarse = abs(pot_run(CONSTRUCTED, pot, 0.4, tolerance=1e-2).reached - exact)
    fine = abs(pot_run(CONSTRUCTED, pot, 0.4, tolerance=1e-5).reached - exact)
    assert fine < coarse / 20


def test_semenovs_bound_tells_pots_that_stay_cool_from_pots_that_run_away():
    """Semenov (1928), an order-of-size check on the safe side: with the fastest isothermal rate far below 1/e a pot's
    peak stays under the critical rise; far above it, it runs most of the way to its adiabatic peak."""
    rates = Rates(1e-5, 3e-4, 55000, 55000, 293.15)
    fastest = 4.9e-5
    for loss, cool in ((3e-2, True), (1e-2, True), (1e-4, False), (3e-5, False)):
        number = semenov_number(55000, 200.0, loss, fastest, 293.15)
        assert (number < SEMENOV) == cool
        run = pot_run(rates, Pot(200.0, loss, 293.15, 293.15), 0.3, whole=True)
        rise = GAS_CONSTANT * 293.15**2 / 55000
        assert (run.peak - 293.15 < rise) if cool else (run.peak - 293.15 > 120)


@pytest.mark.parametrize(("before", "after", "slope", "new_slope", "step"), [
    (300.0, 301.0, 0.02, -0.01, 100.0), (420.0, 419.0, 0.001, -0.3, 60.0), (350.0, 350.0, 0.05, -0.05, 200.0),
    (298.0, 299.5, 0.2, -0.001, 30.0)])
def test_the_top_within_a_step_is_where_the_cubic_is_highest(before, after, slope, new_slope, step):
    """By looking at 20,000 places of the cubic through both ends with both slopes."""
    places = [one / 20000 for one in range(20001)]
    best = max(places, key=lambda part: _cubic(before, after, slope, new_slope, step, part))
    assert 0 < best < 1
    assert _top(before, after, slope, new_slope, step) == pytest.approx(best, abs=2e-4)
    assert _cubic(before, after, slope, new_slope, step, 0) == before
    assert _cubic(before, after, slope, new_slope, step, 1) == after

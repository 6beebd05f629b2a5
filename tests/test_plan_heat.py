"""Plan and heat: the plan counts the shorter of quick rule and heat balance, and says which."""
import pytest
from covemix.shared.catalogue.pots import SIZES
from covemix.shared.clock.heat_table import BEND, heat_table
from covemix.shared.clock.pot_heat import pot
from covemix.shared.door import moves
from covemix.shared.equations.calibrate_heat import TOO_HOT, USABLE, usable_time
from covemix.shared.forms import inputs
from covemix.shared.plan import plan, working_times
from hypothesis import given
from hypothesis import strategies as st
from test_integrate import by_scipy
from test_plan import HAND, by_name

FREE = {key: value for key, value in HAND.items() if key not in ("exponent", "soft", "film")}
SYSTEM = HAND["system"]
SYSTEMS = st.fixed_dictionaries(
    {"by_weight": st.integers(15, 60).map("100:{}".format), "pot_time": st.integers(8, 90).map(str),
     "pot_mass": st.sampled_from(("50", "100", "150", "500")), "pot_temperature": st.sampled_from(("20", "25"))},
    optional={"film_time": st.integers(40, 400).map(str)})
MASSES, AIR = st.floats(0.01, 3.0), st.floats(276.0, 313.0)


def read(**more):
    values, errors = inputs.read(plan.INPUTS, dict(FREE, **more))
    assert not errors, [error.message for error in errors]
    return values


def answered(**more):
    found = moves.answer("plan", dict(FREE, **more))
    assert not found["errors"], found["errors"]
    return by_name(found)


@given(SYSTEMS, MASSES, AIR)
def test_the_table_is_read_on_the_safe_side_and_near_the_balance(system, mass, air):
    table = heat_table(read(system=system)["system"])
    straight = min(usable_time(rates, pot("bag", mass, SIZES, table.mix, 0.0, air, air)) for rates in table.rates)
    assert 0.97 * straight < table.bag(mass, air) <= straight * 1.001
    assert table.at_least(air) <= straight * 1.01


@pytest.mark.parametrize("doublings, air", [(-3, 288.15), (-1.5, 298.15), (0, 306.15)])
def test_the_table_against_scipy(outside, doublings, air):
    """scipy solve_ivp, LSODA, rtol 1e-10, on the same balance: at the table's own masses within what the integrator
    promises (tests/test_integrate.py), before the table takes off BEND; between them never above."""
    table = heat_table(read()["system"])

    def wanted(mass):
        here = pot("bag", mass, SIZES, table.mix, 0.0, air, air)
        return min(by_scipy(rates, here, 20000.0, USABLE, TOO_HOT)[0] for rates in table.rates)

    mass = 2 ** doublings
    outside.solved(f"heat table {mass * 1000:.0f} g", "scipy.integrate.solve_ivp, LSODA, rtol 1e-10", wanted(mass),
                   table.bag(mass, air) / BEND, rel=0.01, why="what the integrator promises")
    for between in (1.12 * mass, 1.2 * mass):
        assert 0.98 * wanted(between) <= table.bag(between, air) <= wanted(between)


@given(SYSTEMS, MASSES, st.floats(278.0, 298.0), st.floats(1.0, 18.0))
def test_the_ends_of_a_range_of_temperatures_leave_least(system, mass, low, rise):
    table = heat_table(read(system=system)["system"])
    for time in (lambda at: table.bag(mass, at), lambda at: table.bead(at, 0.27), table.film):
        ages = [time(low + rise * part / 4) * 2 ** ((low + rise * part / 4 - 298.15) / 10) for part in range(5)]
        assert min(ages) > 0.99 * min(ages[0], ages[-1])


@pytest.mark.parametrize(("kind", "window", "mass"), [("bag", "pot", 90), ("bag", "pot", 500), ("film", "film", 90)])
@pytest.mark.parametrize("air", ["18", "27"])
def test_the_plan_and_the_clock_count_the_same_minutes(kind, window, mass, air):
    """One bag at one temperature, its filler counted: the very same minutes on either screen."""
    found = moves.answer("plan", dict(FREE, temperature=air, share="80", most="20000",
                                      pieces=[{"length": "1", "putty": str(mass), "wet": "30"}]))
    lead = next(one for one in found["leads"] if one["label"].startswith("Start the clock"))
    filler = dict(lead["pairs"])["filler"] if kind == "bag" else ""
    clock = by_name(moves.answer("heat", {"air": air, "system": SYSTEM, "batch": str(mass), "container": kind,
                                          "filler": filler}))
    one = by_name(found)["window_" + window]
    assert one["value"] == pytest.approx(clock["usable"]["value"], rel=1e-4)
    by_heat = clock["by_heat"]["value"] < clock["by_rule"]["value"]
    assert (", by the heat balance." in one["rough"]) == by_heat


def test_the_heat_balance_binds_where_it_is_shorter_and_the_answer_says_so():
    """A label that gives its pot life for 500 g: by the cube root 60 g would last twice as long; a bag does not."""
    lean = [{"length": "1", "putty": "15", "wet": "12"}] * 4
    system = dict(SYSTEM, pot_mass="500")
    values = read(system=system, temperature="25", pieces=lean)
    times = plan.planned(values).times
    assert times.heat_pot(0.06) < 0.75 * times.rule_pot(0.06)
    assert times.pot(0.06) == times.heat_pot(0.06)
    found = answered(system=system, temperature="25", pieces=lean)
    assert ", by the heat balance. By the quick rule it is " in found["window_pot"]["rough"]


@given(SYSTEMS, MASSES, st.floats(283.0, 308.0))
def test_each_window_is_the_shorter(system, mass, air):
    values = read(system=system, temperature=str(air - 273.15))
    times = plan.planned(values).times
    windows = times.windows()
    assert windows.pot(mass) == pytest.approx(min(times.rule_pot(mass), times.heat_pot(mass)), rel=1e-9)
    assert windows.soft == min(times.rule_soft, times.heat_soft)
    assert windows.film == min(times.rule_film, times.heat_film)


def test_typed_working_times_count_alone(monkeypatch):
    """With all three typed nothing is calibrated at all."""
    monkeypatch.setattr(working_times, "heat_table", None)
    found = answered(exponent="0.5", soft="50", film="60")
    assert found["window_pot"]["rough"].endswith(", by the quick rule")
    for window, minutes in (("soft", 50), ("film", 60)):
        assert found["window_" + window]["rough"].endswith(f"% of {minutes} min, the time you typed")


def test_a_warm_hour_in_the_day_counts_for_the_heat_balance():
    """Over a changing temperature the heat balance counts at the end of the range where it leaves less."""
    def planned(*degrees):
        points = [{"at": at, "temperature": degree} for at, degree in zip(("7:00", "12:00"), degrees, strict=True)]
        return plan.planned(read(temperature_is="points", points=points)).times

    cool, warm, both = planned("15", "15"), planned("30", "30"), planned("15", "30")
    for mass in (0.05, 0.4):
        assert both.heat_pot(mass) == pytest.approx(min(cool.heat_pot(mass), warm.heat_pot(mass)))
    assert both.heat_film == pytest.approx(min(cool.heat_film, warm.heat_film))


def test_a_tie_of_both_ends_of_a_day_is_not_told_by_the_last_digit_of_a_float(monkeypatch):
    """The quick rule ages with the temperature: its time at 25 degC is the same at both ends. Whichever of them a float
    puts first, the shorter heat balance is told beside it."""
    day = {"temperature_is": "points", "points": {"0": {"at": "4", "temperature": "-2.86"},
                                                  "1": {"at": "8", "temperature": "5"}},
           "pieces": {"0": {"length": "2.1", "putty": "7", "wet": "7"}}, "system": {}}
    values = read(**day)
    times = working_times.WorkingTimes(values, plan.day.profile(values))
    straight, found = working_times.usable, []
    for bit in (1 - 1e-15, 1 + 1e-15):  # of the first end

        def bent(batch, bit=bit, **more):
            one = straight(batch, **more)
            return one._replace(end=one.end * bit) if batch["air"] == times.ends[0] else one

        monkeypatch.setattr(working_times, "usable", bent)
        times.kept.clear()
        found.append(times.told("cup", 0.03, times.ends[1]))
    assert found[0].by == "quick" and found[0].other == "heat"
    assert found[0].longer == found[1].longer
    both = [straight(times._batch("cup", 0.03, at), rule=(times.exponent, times.doubling)).model
            * times.profile.pace_at(at) for at in times.ends]
    assert found[0].longer == pytest.approx(min(both) / times.profile.pace_at(times.ends[1]))
    assert max(both) > 1.1 * min(both)

"""Softening: where a cure stops against an own integration with scipy, a hull in the sun against ASTM E1980, and what
is said of both."""
from math import exp

import numpy
import pytest
from covemix.shared.catalogue.softening import GLASS
from covemix.shared.clock import cure, cure_stops
from covemix.shared.door import moves
from covemix.shared.equations import maturity
from covemix.shared.equations.softening import glass_temperature, sunlit_surface
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.integrate import solve_ivp
from scipy.optimize import brentq

FAST = {"id": "3-1", "speed": "fast"}
RANGES = [row[1:3] for row in GLASS]
WORKED = (233.15, 345.15, 0.45)  # Tg0 -40, Tg1 72 degC, lambda: within those ranges


def lines(**tree):
    answer = moves.answer("cure", tree)
    assert answer["errors"] == []
    return {row["name"]: row for row in answer["lines"]}


def slowed_by_its_glass(kelvin, days, uncured, cured, bend, slope):
    """Conversion after so many days at one temperature, by scipy: the chemical rate and one of diffusion in series
    (Rabinowitch), the latter as the chemical one where the glass temperature has come up to the room's, and from there
    by the free volume f = 0.025 + 0.00048 (T - Tg), exp(-b/f) (Wisanrakkit and Gillham 1990: b 0.51; WLF: 1).
    Rates of a mix that gels in some two hours at 25 degC, 55 kJ/mol, k1 = 0.06 k2."""
    factor = exp(-55000 / 8.314462618 * (1 / kelvin - 1 / 298.15))

    def rate(_, state):
        done = state[0]
        glass = uncured + (cured - uncured) * bend * done / (1 - (1 - bend) * done)
        free = max(0.025 + 0.00048 * (kelvin - glass), 1e-3)
        moves_on = exp(min(slope / 0.025 - slope / free, 30))
        return [2.5e-4 * factor * (0.06 + done) * (1 - done) ** 2 * moves_on / (1 + moves_on)]

    return solve_ivp(rate, (0, days * 86400), [0.0], method="LSODA", rtol=1e-8, atol=1e-10).y[0, -1]


@pytest.mark.parametrize("celsius", [6, 12, 20, 25, 40])
def test_a_cure_that_its_own_glass_slows_stops_within_the_band(outside, celsius):
    """Own integration with scipy.integrate.solve_ivp, 7 and 30 days: it ends 10 to 25 K above the room and in the band.

    With the full WLF slope it ends up to 5 K lower than the 10 K that are counted: the band of conversion still holds.
    """
    kelvin = celsius + 273.15
    band = cure_stops.stopped(kelvin)
    source = "scipy solve_ivp, Rabinowitch, free volume of Wisanrakkit and Gillham (1990)"
    for days in (7, 30):
        for slope, least in ((0.51, 10), (1, 5)):
            done = slowed_by_its_glass(kelvin, days, *WORKED, slope)
            above = glass_temperature(done, *WORKED) - kelvin
            outside.solved(f"so-{celsius}-{days}-{slope}", source, "within",
                    "within" if band.conversion[0] <= done <= band.conversion[1] and least <= above <= 25 else
                    f"{done:.3f}, {above:.1f} K")
    for end in range(8):  # the eight corners of the three remembered figures: after a month all are past the room
        corner = [RANGES[place][end >> place & 1] for place in range(3)]
        above = glass_temperature(slowed_by_its_glass(kelvin, 30, *corner, 0.51), *corner) - kelvin
        # so near to its whole cure (40 degC and a resin of 55) the chemistry is what is slow, not the glass
        assert (10 if kelvin + 25 <= corner[1] else 9.5) <= above <= 25, (corner, above)


@pytest.mark.parametrize("celsius, worked", [(6, 0.73), (12, 0.77), (20, 0.82), (25, 0.85), (40, 0.93)])
def test_the_band_holds_the_worked_example_and_nearly_all_of_a_draw(outside, celsius, worked):
    """Tg0 -40, Tg1 72 degC, lambda 0.45, D 15 K; and 200,000 draws of the four remembered ranges (JCGM 101)."""
    low, high = cure_stops.stopped(celsius + 273.15).conversion
    assert low < worked < high
    draw = numpy.random.default_rng(7)
    uncured, cured, bend, beyond = (draw.uniform(*one, 200_000) for one in RANGES)
    part = numpy.clip((celsius + 273.15 + beyond - uncured) / (cured - uncured), 0, 1)
    drawn = part / (bend + (1 - bend) * part)
    ends = numpy.percentile(drawn, [2.5, 97.5])
    # the linear law of JCGM 100 against the draw: its two ends to 2 % of the whole cure
    outside.solved(f"so-draw-{celsius}", "JCGM 101:2008, Monte Carlo by numpy, 95 %", tuple(ends), (low, high),
            absolute=0.02)


def test_a_hull_in_the_sun_is_as_hot_as_the_standard_says(outside):
    """ASTM E1980-11: its conditions (3.1.11) and its regression of the index (Eq. 4), largest error 2; and scipy."""
    def ours(absorbed, wind, emittance=0.9):
        return sunlit_surface(1000, absorbed, 310, 300, wind, emittance)

    for wind in (5, 12, 30):
        black, white = ours(0.95, wind), ours(0.2, wind)
        for absorbed in (0.15, 0.4, 0.6, 0.8, 0.95):
            for emittance in (0.85, 0.9, 0.95):
                found = ours(absorbed, wind, emittance)
                chi = (absorbed - 0.029 * emittance) * (8.797 + wind) / (9.5205 * emittance + wind)
                outside.worked(f"so-sri-{wind}-{absorbed}-{emittance}", "ASTM E1980-11, Eq. 3 and 4",
                        123.97 - 141.35 * chi + 9.655 * chi * chi, 100 * (black - found) / (black - white), absolute=2)
                exact = brentq(lambda at: absorbed * 1000 - emittance * 5.67e-8 * (at**4 - 300**4)  # noqa: B023
                               - wind * (at - 310), 290, 500)  # noqa: B023
                assert found == pytest.approx(exact, abs=0.02)


def test_below_twenty_degrees_no_full_strength_is_told():
    """At 6 degC it was "after 42 days"; of a label that gives its days at 15 degC too."""
    for tree in ({"air": "6", "system": FAST}, {"air": "19.9"}, {"air": "12", "mixed_at": "9:00"},
                 {"air": "15", "system": {"by_volume": "3:1", "cure_full": "300", "cure_temperature": "15",
                                          "speed": "medium"}},
                 {"course": "day", "high": "19", "low": "12", "mixed_at": "9:00"},
                 {"course": "points", "points": [{"hours": "0", "temperature": "14"}]}):
        found = lines(**tree)["full"]
        assert found["value"] is None and found["text"].startswith("hard, but stops near "), tree
        assert "until warmed to 20 °C, and softens above " in found["text"]
    cold = lines(air="6", system=FAST)
    assert "softens above 16 °C" in cold["full"]["text"] and cold["softens"]["value"] == pytest.approx(289.15)
    assert cold["stops"]["text"] in cold["full"]["text"]
    warm = lines(air="20")
    assert warm["full"]["text"].startswith("after 11.0 days") and warm["softens"]["text"] == "30 °C"


@settings(max_examples=30, deadline=None, derandomize=True)
@given(st.integers(-5, 45), st.integers(0, 20), st.sampled_from(["fast", "medium", "slow"]))
def test_full_strength_counts_only_hours_at_twenty_or_more(high, less, speed):
    """An own sum in steps of five minutes over the same day's curve, 168 h at 25 degC, 45 and 65 kJ/mol."""
    found = lines(course="day", high=str(high), low=str(high - less), mixed_at="9:00", system={"id": "3-1",
                                                                                              "speed": speed})["full"]
    at = maturity.through_days(high - less + 273.15, high + 273.15, 9 * 3600.0)
    hour = numpy.array([at(300.0 * step + 150) for step in range(288)])
    lowest = {"fast": 278.15, "medium": 285.15, "slow": 291.15}[speed]
    a_day = [numpy.where(hour >= max(lowest, 293.15), numpy.exp(-energy / 8.314462618 * (1 / hour - 1 / 298.15)),
                         0).sum() * 300 for energy in (45000, 55000, 65000)]
    days = 7 * 86400 / min(a_day) if min(a_day) else float("inf")
    if found["value"] is None:
        assert days > 29
    else:
        assert found["value"] / 86400 == pytest.approx(days, rel=0.08, abs=1)


def test_what_is_held_is_the_warmest_that_lasts():
    """A warm afternoon on one day of many does not count; the same afternoons for a month do."""
    once = lines(course="points", points=[{"hours": str(at), "temperature": str(kelvin)} for at, kelvin in (
        (0, 14), (10, 14), (12, 24), (16, 24), (18, 14))])
    assert once["softens"]["text"] == "24 °C"
    often = lines(course="day", high="24", low="14", mixed_at="9:00")
    assert 31 <= often["softens"]["value"] - 273.15 <= 34
    same = [lines(**tree)["softens"]["value"] for tree in (
        {"air": "17"}, {"course": "day", "high": "17", "low": "17", "mixed_at": "9:00"},
        {"course": "points", "points": [{"hours": "0", "temperature": "17"}, {"hours": "9", "temperature": "17"}]})]
    assert same == [pytest.approx(300.15)] * 3


def test_what_a_post_cure_brings(outside):
    """8 h at 50 degC is the usual one (common practice); by Arrhenius, 65 kJ/mol, 40 degC takes 17.3 h."""
    assert "8.0 h at 50" in lines(air="20")["post"]["text"]
    enough = lines(air="20", post_to="50", post_for="8")
    assert (enough["softens"]["text"], enough["softens"]["rough"][:13]) == ("50 °C", "at best 75 °C")
    assert "Raise the heat at most 10 °C an hour. Support the hull" in enough["post"]["text"]
    needed = 8 * exp(65000 / 8.314462618 * (1 / 313.15 - 1 / 323.15))
    outside.worked("so-post", "Arrhenius, 65 kJ/mol, 8 h at 50 degC", needed, cure_stops.post_of(
        313.15, 3600.0, 290.0).needed / 3600, rel=1e-9)
    short = lines(air="20", post_to="40", post_for="17")
    assert short["post"]["rank"] == "ask" and "18 h" in short["post"]["text"] and short["softens"]["text"] == "30 °C"
    assert lines(air="20", post_to="40", post_for="18")["softens"]["text"] == "40 °C"
    assert lines(air="30", post_to="29", post_for="200")["post"]["text"].startswith("No sure gain")
    assert lines(air="30", post_to="39", post_for="200")["softens"]["text"] == "40 °C"  # no less for having been warmed
    # no more than the usual one is sure to bring
    assert lines(air="20", post_to="80", post_for="10")["softens"]["text"] == "50 °C"


@pytest.fixture(scope="module")
def slow_hardener():
    """Drawn resins with a slow hardener (2.4e-4 /s at 25 degC: an hour in 100 g): a function that holds them, cured so
    far, at a temperature, by small steps of numpy, to their conversions; and their glass temperatures."""
    draw = numpy.random.default_rng(15)
    energy, glasses = draw.uniform(45e3, 65e3, 600), [draw.uniform(*one, 600) for one in RANGES[:3]]

    def cured(done, kelvin, lasts, step=60):
        for _ in range(int(lasts / step)):
            free = numpy.maximum(0.025 + 0.00048 * (kelvin - glass_temperature(done, *glasses)), 1e-3)
            moves_on = numpy.exp(numpy.minimum(0.51 / 0.025 - 0.51 / free, 30))
            pace = 2.4e-4 * numpy.exp(-energy / 8.314462618 * (1 / kelvin - 1 / 298.15))
            done = done + step * pace * (0.06 + done) * (1 - done) ** 2 * moves_on / (1 + moves_on)
        return done

    return cured, lambda done: glass_temperature(done, *glasses)


@pytest.fixture(scope="module")
def slow_seams(slow_hardener):
    """The same after four days at 20 degC: a function that warms them on, to their glass temperatures."""
    cured, glass = slow_hardener
    after = cured(numpy.zeros(600), 293.15, 4 * 86400)
    return lambda kelvin, lasts: glass(cured(after, kelvin, lasts))


@pytest.mark.parametrize("warmth", [15, 20, 25, 30, 35, 40, 45, 50])
def test_hours_that_just_count_promise_no_more_than_a_slow_hardener_holds(outside, slow_hardener, warmth):
    """Steps of numpy from the fresh mix: 97 of 100 soften above what is told, to a kelvin. Old main told 55 degC after
    8 h typed at 50 (49) and after 12 h at 45 (47.5), 50 degC after 17 h at 40 (44.7)."""
    cured, glass = slow_hardener
    kelvin = warmth + 273.15
    hours = cure_stops.post_of(kelvin, 1e6, None).needed
    for times in (1.0, cure_stops.LONG / cure_stops.POST_FOR):
        lasting = hours * times * (1 + 1e-6)
        values = {"post_to": None, "post_for": None, "hull_colour": "", "hull_air": None}
        told = cure_stops.stops(values, [(kelvin, lasting)]).after.glass[0]
        low = float(numpy.percentile(glass(cured(numpy.zeros(600), kelvin, lasting, 300)), 2.5))
        outside.own(f"cure {lasting / 3600:.0f} h at {warmth} degC: {told - 273.15:.1f} degC told, 97 of 100 soften "
                    f"above {low - 273.15:.1f}", "own steps by numpy of a cure that its glass slows", 1.0,
                    float(told <= low + 1), rel=0)


@pytest.mark.parametrize("to", [40, 45, 50, 60, 80])
def test_a_post_cure_of_the_least_hours_reaches_what_is_told(outside, slow_seams, to):
    """Steps of numpy, Rabinowitch's two rates: the fewest hours that count. Told was 10 K above the post-cure, 55 degC
    at the most, where a twentieth of the slow ones stays below 51 degC."""
    post = cure_stops.post_of(to + 273.15, 1e6, None)
    values = {"post_to": post.to, "post_for": post.needed, "hull_colour": "", "hull_air": None}
    told = cure_stops.stops(values, [(293.15, 4 * 86400.0)]).after.glass[0]
    low = float(numpy.percentile(slow_seams(post.to, post.needed), 2.5))
    outside.own(f"cure post at {to} degC: {told - 273.15:.0f} degC told, 97 of 100 soften above {low - 273.15:.1f}",
                "own steps by numpy of a cure that its glass slows", 1.0, float(told <= low + 1), rel=0)


def test_a_post_cure_counts_for_full_strength_only_as_much_as_the_days():
    """168 h at 25 degC are 25 h at 60 degC by the slowest of the band (45 kJ/mol), by Arrhenius."""
    needed = 168 * exp(45000 / 8.314462618 * (1 / 333.15 - 1 / 298.15))
    assert 24 < needed < 26
    short, long = (lines(air="12", post_to="60", post_for=hours)["full"]["text"] for hours in ("24", "26"))
    assert short.startswith("hard, but stops near ") and long == "after the typed post-cure"


def test_the_sun_warns_of_a_dark_hull_over_a_room_cured_seam():
    dark = lines(air="20", hull_colour="dark")["sun"]
    assert dark["rank"] == "warn" and "Up to 104 °C, in a breeze 76 °C" in dark["text"]
    assert "The seam softens above 30 °C" in dark["text"] and "post-cure it first" in dark["text"]
    unsaid = lines(air="20")["sun"]
    assert unsaid["rank"] == "say" and "up to 104 °C" in unsaid["text"] and "may soften there" in unsaid["text"]
    mild = lines(air="25", hull_colour="white", hull_air="5", post_to="50", post_for="8")["sun"]
    assert mild["rank"] == "say" and "softens only above 50 °C" in mild["text"]
    hull = lines(air="12", hull_colour="white", hull_air="25")["sun"]
    assert hull["rank"] == "warn" and "The seam may soften above 22 °C" in hull["text"]
    # too cold to harden: there is no seam to speak of
    assert lines(air="0", hull_colour="dark")["sun"]["rank"] == "say"


def test_warming_and_its_hours_are_typed_together_and_us_units_follow():
    for tree, field in (({"post_to": "50"}, "post_for"), ({"post_for": "8"}, "post_to")):
        assert [row["field"] for row in moves.answer("cure", {"air": "20", **tree})["errors"]] == [field]
    us = lines(air="43", system=FAST, units="us", post_to="120", post_for="30", hull_colour="dark")
    assert "softens" in us and "°C" not in " ".join(row["text"] + row["rough"] for row in us.values())


def test_a_cure_below_its_hardeners_least_says_nothing_of_glass():
    found = lines(air="0")
    assert "softens" not in found and found["full"]["text"] == "not at these temperatures"
    assert cure.ORDER[-1][0] == "full"

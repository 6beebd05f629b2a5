"""Pot: minutes left from what was stored and the time now; changed clocks; past midnight; what is said aloud."""

from datetime import UTC, datetime, timedelta
from random import Random

import numpy
import pytest
from covemix.shared.clock import pot, pot_air
from covemix.shared.door import moves
from covemix.shared.equations.calibrate_heat import film_time
from covemix.shared.equations.integrate import Rates
from covemix.shared.equations.kinetics import rate_factor
from scipy.integrate import quad, solve_ivp
from scipy.optimize import brentq

START = datetime(2031, 6, 5, 22, 40, tzinfo=UTC).timestamp()
STORED = {
    "started": str(START),
    "duration": "20",
    "zone": "120",
    "batch": "Batch 2",
    "container": "bag",
    "place": "keel",
    "steps": [{"name": "Place the putty", "minute": "9", "done": "yes"}, {"name": "Tool the cove", "minute": "14"}],
}


def told(minutes, **more):
    found = moves.answer("pot", dict(STORED, now=str(START + minutes * 60), **more))
    assert not found["errors"], found["errors"]
    return {row["name"]: row for row in found["lines"]}


def test_a_running_pot_tells_what_is_left_and_what_comes_next():
    found = told(10)
    assert found["left"]["text"] == "10:00" and found["left"]["value"] == 600
    assert found["next"]["text"] == "Tool the cove" and found["next"]["value"] == 240
    assert found["place"]["text"] == "Bag · keel"
    assert found["say"]["text"] == "Batch 2: 10 minutes left. Next: Tool the cove, in 4 minutes."
    assert "clock_changed" not in found and "over" not in found


def test_a_step_that_should_be_done_is_warned_of():
    found = told(16)
    assert found["next"]["rank"] == "warn" and found["next"]["rough"] == "overdue by 2:00"
    assert found["say"]["text"].endswith("Next: Tool the cove, now.")
    assert "next" not in told(16, steps=[dict(step, done="yes") for step in STORED["steps"]])


def test_a_pot_that_ended_while_the_page_was_closed_says_how_long_ago():
    found = told(27.2)
    assert found["over"]["value"] == pytest.approx(432) and found["over"]["text"] == "7:12"
    assert found["stop"]["rank"] == "warn" and "alarm" not in found
    assert "8 minutes ago" in found["say"]["text"]
    assert "long_ago" not in found and "long_ago" in told(20 + 7 * 60)


@pytest.mark.parametrize("hours", ["24", "12"])
def test_the_end_on_the_wall_past_midnight_against_the_calendar(outside, hours):
    """datetime of the standard library, with the phone's own offset from UTC."""
    for zone in (-210, 0, 120, 345, 780):
        for duration in (5, 45, 200):
            now = START + 120
            found = told(2, zone=str(zone), duration=str(duration), hours=hours)
            here = datetime.fromtimestamp(START, UTC) + timedelta(minutes=zone + duration)
            today = datetime.fromtimestamp(now, UTC) + timedelta(minutes=zone)
            text = (
                here.strftime("%H:%M")
                if hours == "24"
                else str((here.hour + 11) % 12 + 1) + here.strftime(":%M ") + ("am" if here.hour < 12 else "pm")
            )
            text += " next day" if here.date() > today.date() else ""
            outside.library(f"pot end, zone {zone} min, {duration} min, {hours} h clock",
                    "datetime of the standard library",
                    text,
                    found["end"]["text"])
            assert found["alarm"]["text"] == text
            assert found["end"]["value"] == pytest.approx(START + duration * 60)


def test_a_clock_set_back_does_not_make_the_pot_younger():
    """Twelve minutes by the steady clock, two by the wall: twelve count, the alarm is on the wall as it now stands."""
    found = told(2, elapsed="720")
    assert found["left"]["value"] == 480
    assert found["clock_changed"]["value"] == -600 and "10 minutes behind" in found["clock_changed"]["text"]
    assert found["end"]["value"] == pytest.approx(START + 120 + 480)


def test_a_clock_set_forward_rings_earlier_and_says_so():
    found = told(12, elapsed="120")
    assert found["left"]["value"] == 480
    assert found["clock_changed"]["value"] == 600 and "10 minutes ahead" in found["clock_changed"]["text"]
    assert found["clock_changed"]["rank"] == "warn"


def test_an_hour_of_summer_time_changes_nothing_but_the_figures():
    """The offset jumps, the time in UTC does not."""
    before, after = told(10, elapsed="600"), told(10, elapsed="600", zone="60")
    assert before["left"] == after["left"] and "clock_changed" not in after
    assert before["end"]["text"] != after["end"]["text"]


def test_a_clock_before_the_start_is_said_where_no_steady_clock_knows_better():
    found = told(-30)
    assert found["left"]["value"] == 1200
    assert found["clock_changed"]["value"] == -1800 and "30 minutes before" in found["clock_changed"]["text"]
    assert found["clock_changed"]["rank"] == "warn"
    assert found["lost"]["rank"] == "warn" and "If in doubt, treat the pot as used up" in found["lost"]["text"]


def test_two_seconds_are_no_change_of_clock():
    assert "clock_changed" not in told(10, elapsed="601.9") and "clock_changed" in told(10, elapsed="603")


def test_the_alarm_is_never_later_than_either_clock_asks():
    """Generated: what is left is the least that any clock leaves, never below nought, never left and over both."""
    rng = Random(3)
    for _ in range(500):
        duration, wall, steady = (
            rng.uniform(60, 4000),
            rng.uniform(-4000, 8000),
            rng.choice((None, rng.uniform(0, 8000))),
        )
        found = pot.state(1e9, duration, 1e9 + wall, steady)
        ages = [max(0.0, wall)] + ([] if steady is None else [steady])
        assert found.left == pytest.approx(max(0.0, duration - max(ages)), abs=1e-5)
        assert found.over == pytest.approx(max(0.0, max(ages) - duration), abs=1e-5)
        assert found.end - (1e9 + wall) == pytest.approx(found.left - found.over, abs=1e-5)


def test_asking_twice_gives_the_same_pot():
    """A reload forgets the steady clock and nothing else: the same stored pot, the same time, the same answer."""
    assert told(7) == told(7)
    assert told(7)["left"] == told(7, elapsed="420")["left"]


def test_the_first_of_several_pots_to_ring():
    pots = [
        pot.state(0, 900, 300),
        pot.state(60, 900, 300, None, ((200.0, True), (280.0, False))),
        pot.state(100, 900, 300),
    ]
    assert pot.first_to_ring(pots) == (1, 1, 40)
    pots.append(pot.state(0, 200, 300))
    assert pot.first_to_ring(pots) == (3, 0, -100)
    assert pot.first_to_ring([]) is None


def test_every_figure_on_the_screen_is_of_the_same_moment():
    """Left, due and passed are told to the second, so that no two lines of a pot differ by a rounded minute."""
    def seconds(text):
        minutes, _, rest = text.rpartition(" ")[2].partition(":")
        return int(minutes) * 60 + int(rest)

    for moment in (0.4, 3.77, 8.99, 13.2):
        found = told(moment)
        assert abs(seconds(found["left"]["text"]) + seconds(found["passed"]["text"]) - 1200) <= 1
        assert abs(seconds(found["left"]["text"]) - seconds(found["next"]["rough"]) - 360) <= 1
    late = told(21.5)
    assert seconds(late["over"]["text"]) == 90


def test_a_pot_follows_its_air():
    """Half of 20 min used, then air in which it would last 10: five more. The end, the span and the ring follow."""
    change = {"minute": "10", "usable": "10"}
    found = told(12, changes=[change])
    assert found["left"]["value"] == 180 and found["end"]["value"] == pytest.approx(START + 900)
    assert told(15.5, changes=[change])["ring"]["part"].startswith("end 15")
    colder = told(12, changes=[change, {"minute": "12", "usable": "40"}])
    assert colder["left"]["value"] == 180  # a pot keeps the warmth that it has
    film = told(12, container="film", changes=[change, {"minute": "12", "usable": "40"}])
    assert film["left"]["value"] == pytest.approx(0.3 * 2400)
    assert told(12, changes=[{"minute": "30", "usable": "1"}])["left"] == told(12)["left"]


def can(grams, air, then=None, moment=0.0, energy=55e3, fast=4.4e-4, first=0.06):
    """Minutes of a can as wide as it is full, until a third is cured or it is at 60 degC: own balance, by scipy. Its
    air [degC] changes to `then` at a moment [min]. fast: k2 at 25 degC [1/s]"""
    volume = grams / 1.1e6
    flat, side = (numpy.pi / 4 * (4 * volume / numpy.pi) ** (2 / 3), numpy.pi * (4 * volume / numpy.pi) ** (2 / 3))
    inner = volume / (2 * flat + side) / 0.4
    loss = flat / (1 / 9 + inner) + side / (1 / 9 + 0.005 + inner) + flat / (1 / 9 + 0.085 + inner)

    def slope(_, state, around):
        pace = fast * numpy.exp(-energy / 8.314 * (1 / state[1] - 1 / 298.15))
        speed = pace * (first + state[0]) * (1 - state[0]) ** 2
        return [speed, 185.0 * speed - loss * (state[1] - around - 273.15) / (grams * 2)]

    thick, hot = (lambda t, y, _: y[0] - 0.3), (lambda t, y, _: y[1] - 333.15)
    thick.terminal = hot.terminal = True
    start, end, at = [0.0, air + 273.15], 0.0, [(air, moment * 60), (then, 4e4)] if moment else [(air, 4e4)]
    for around, until in at:
        run = solve_ivp(slope, (end, until), start, args=(around,), method="LSODA", rtol=1e-7, events=(thick, hot))
        start, end = run.y[:, -1], run.t[-1]
        if end < until:
            break
    return end / 60


@pytest.mark.parametrize(("grams", "air", "then"), [
    (60, 30, 8), (100, 25, 5), (240, 30, 8), (100, 28, 18), (100, 15, 25), (240, 10, 30)])
@pytest.mark.parametrize("used", [0.4, 0.8])
def test_a_pot_taken_to_other_air_ends_no_earlier_than_is_told(outside, grams, air, then, used):
    """scipy solve_ivp, fitted to the label by itself. A pot keeps its own warmth in colder air: 60 g that were
    told 15 min at 30 degC were told 62 when they went to 8 degC after 6 of them, and end at 27 to 31."""
    label = {"by_weight": "100:44", "pot_time": "30", "pot_mass": "100", "pot_temperature": "25"}
    fresh, there = [next(line["value"] for line in moves.answer("heat", {
        "system": label, "air": str(one), "batch": str(grams)})["lines"] if line["name"] == "usable")
        for one in (air, then)]
    found = told(0, container="cup", duration=f"{fresh} s", steps=[], changes=[
        {"minute": f"{used * fresh} s", "usable": f"{there} s"}])["left"]["value"] / 60
    ends = []
    for energy in (45e3, 65e3):
        fast = brentq(lambda k2, energy=energy: can(100, 25, energy=energy, fast=k2) - 30, 5e-5, 5e-3, rtol=1e-3)
        ends.append(can(grams, air, then, used * fresh / 60, energy, fast))
    outside.solved(f"pot {grams} g, {air} to {then} degC at {used:g} of its time: {found:.0f} min told, "
                   f"{min(ends):.0f} the earliest", "scipy.integrate.solve_ivp, own balance", 1.0,
                   float(found <= min(ends)), rel=0)


def test_a_film_whose_air_changes_against_quadrature(outside):
    """Isothermal cure in closed form at two temperatures, one Arrhenius factor: scipy.integrate.quad over the rate."""
    rates = Rates(1e-5, 3e-4, 55000.0, 55000.0, 298.15)
    at = {degrees: film_time(rates, 273.15 + degrees) for degrees in (18, 30)}
    moment = 0.4 * at[18]

    def miss(end):
        pace = [rate_factor(55000.0, 273.15 + degrees, 298.15) for degrees in (18, 30)]
        gained = quad(lambda time: pace[0] if time < moment else pace[1], 0, end, points=[moment])[0]
        return gained - at[18] * pace[0]

    wanted = brentq(miss, moment, at[18])
    outside.solved("po-air", "scipy.integrate.quad and brentq over the Arrhenius rate", wanted,
            pot_air.lasting(at[18], ((moment, at[30]),)), rel=1e-6)


@pytest.mark.parametrize(
    ("typed", "field"),
    [
        ({"started": ""}, "started"),
        ({"now": "later"}, "now"),
        ({"duration": "0"}, "duration"),
        ({"elapsed": "-5"}, "elapsed"),
        ({"container": "hat"}, "container"),
        ({"zone": "900"}, "zone"),
        ({"hours": "10"}, "hours"),
        ({"steps": [{"name": "", "minute": "4"}]}, "steps.0.name"),
        ({"steps": [{"name": "b", "minute": "9"}, {"name": "a", "minute": "4"}]}, "steps.1.minute"),
        ({"steps": [{"name": "b"}]}, "steps.0.minute"),
        ({"changes": [{"minute": "4", "usable": "9"}, {"minute": "3", "usable": "9"}]}, "changes.1.minute"),
        ({"changes": [{"minute": "4", "usable": "0"}]}, "changes.0.usable"),
    ],
)
def test_bad_input_is_told_at_its_field(typed, field):
    found = moves.answer("pot", dict(dict(STORED, now=str(START)), **typed))
    assert [error["field"] for error in found["errors"]] == [field]
    assert found["lines"] == []


def test_a_step_may_be_due_at_once():
    found = told(0, steps=[{"name": "Place the putty", "minute": "0"}, {"name": "Tool the cove", "minute": "0"}])
    assert found["next"]["text"] == "Place the putty" and found["next"]["value"] == 0

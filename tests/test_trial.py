"""Test cup: the fit against a model of its own in two dimensions, what cannot be, and the minutes of every screen."""
import random
from itertools import pairwise
from math import log

import numpy as np
import pytest
from covemix.shared.catalogue.pots import SIZES
from covemix.shared.clock.heat_model import mixed_resin
from covemix.shared.clock.pot_heat import pot
from covemix.shared.clock.usable import batch, usable
from covemix.shared.door import moves
from covemix.shared.equations.fit_pot import Seen, fitted
from covemix.shared.forms import inputs, links
from covemix.shared.things.records import SYSTEM
from covemix.shared.things.trials import read_trials, trials_text
from covemix.shared.words.numbers import DOWN, shown
from sun_model import DENSITY, GELS, HOT, SPECIFIC, Cup, rate

LABEL = {"name": "Yard resin", "by_weight": "100 : 30", "pot_time": "30 min", "pot_mass": "100 g",
         "pot_temperature": "25 °C"}
PLAN = {"temperature": "20", "pieces": [{"length": "1", "putty": "100", "wet": "60"}]}
NO_LABEL = {"by_weight": "100 : 30"}
SOURCE = "own finite volumes (tests/sun_model.py), read by a thermometer off by 0.7 K, to whole degrees and minutes"
# mass [kg], air [K], heat to the air [W/m2K], heat of the mix [J/kg], E [J/mol], k1/k2, k2 at 25 degC [1/s]
CUPS = ((0.1, 297.15, 9.0, 375e3, 49e3, 0.04, 4.4e-4), (0.06, 293.15, 10.0, 390e3, 60e3, 0.03, 6e-4),
        (0.1, 292.15, 12.0, 330e3, 52e3, 0.09, 4e-4), (0.08, 292.15, 9.0, 370e3, 53e3, 0.05, 3e-4))


def trace(mass, air, h, heat, energy, first, k2, until=4 * 3600):
    """(time [s], mean, middle [K], cured [-]) of a cup, in steps of at most two seconds."""
    body = Cup(mass, 6)
    step, t, a = min(body.step, 2.0), np.full(body.cells, air), np.zeros(body.cells)
    weight, capacity, rows = body.volume / body.volume.sum(), body.volume * DENSITY * SPECIFIC, [(0.0, air, air, 0.0)]
    while rows[-1][0] < until and (rows[-1][3] < 0.9 or rows[-1][1] > air + 5):
        speed = rate(t, a, k2, energy, first)
        t = t + step * (body.flow(t, air, h, 0.0, 0.0) / capacity + heat / SPECIFIC * speed)
        a = np.minimum(a + step * speed, 0.999)
        rows.append((rows[-1][0] + step, (t * weight).sum(), t[0, body.cells[1] // 2], (a * weight).sum()))
    return np.array(rows)


def ends(rows):
    """When it is thick or too hot, pulls strings, and is hottest [s]."""
    thick = rows[np.argmax((rows[:, 3] >= GELS) | (rows[:, 1] >= HOT)), 0]
    return thick, rows[np.argmax(rows[:, 3] >= 0.5), 0], rows[np.argmax(rows[:, 2]), 0]


def typed(cup, rows, times, draw):
    """What a person types of it: the middle a quarter of a minute late, a degree and a minute as they are read."""
    readings = []
    for time in times:
        minute = round(time / 60)
        shows = float(np.interp(60 * minute - 15, rows[:, 0], rows[:, 2])) - 273.15 + draw.gauss(0, 0.7)
        readings.append({"minute": str(minute), "temperature": str(round(shows))})
    return {"system": NO_LABEL, "mass": f"{cup[0] * 1000:g}", "air": f"{cup[1] - 273.15:g}", "readings": readings}


def asked(tree):
    answer = moves.answer("trial", tree)
    assert answer["errors"] == []
    return {line["name"]: line for line in answer["lines"]}, answer


def found(tree):
    values, errors = inputs.read(moves.module("trial").INPUTS, tree)
    assert errors == [] and inputs.checked(moves.module("trial").CHECKS, values) == []
    return moves.module("trial").reckon(values)


def system(**more):
    values, errors = inputs.read((inputs.Pick("system", "", SYSTEM),), {"system": dict(LABEL, **more)})
    assert errors == []
    return values["system"]


TRACES = {}


def traced(cup, mass=None):
    key = (cup, mass)
    if key not in TRACES:
        TRACES[key] = trace(mass or cup[0], *cup[1:])
    return TRACES[key]


@pytest.mark.parametrize("seen", ["whole", "rise", "moments", "strings"])
@pytest.mark.parametrize("place", range(len(CUPS)))
def test_the_fit_finds_the_time_of_a_cup_it_knows_nothing_of(outside, place, seen):
    """No label at all: the rate is the readings' own. What is told lies within its own band, and 240 g too."""
    cup, draw = CUPS[place], random.Random(f"trial {place} {seen}")
    rows = traced(cup)
    thick, strings, hottest = ends(rows)
    times = {"whole": np.linspace(120, hottest * 1.3, 10), "rise": np.linspace(120, thick * 0.95, 9)}.get(seen, ())
    tree = typed(cup, rows, times, draw)
    if seen in ("moments", "strings"):
        tree["strings_at"] = f"{strings / 60 * draw.gauss(1, 0.04):.0f}"
    if seen == "moments":
        tree["hottest_at"] = f"{hottest / 60 * draw.gauss(1, 0.04):.0f}"
    one = found(tree)
    assert one.sure and one.thick[0] < thick < one.thick[1]
    outside.own(f"trial {cup[0] * 1000:g} g, {seen}, thick by (ln s)", SOURCE, log(thick), log(one.fit.end),
            absolute=0.1)
    large = ends(traced(cup, 0.24))[0]
    usual = one.usual.usable
    # the unsafe end is what must hold: the cube root of the mass, which is the shorter, tells less
    assert usual.end < large and one.usual.least < usual.share * large < one.usual.most * 1.25


def test_a_loss_that_readings_while_it_cools_tell_is_found(outside):
    """The same cup in air that takes twice the heat: the fit says so, by as much."""
    losses = []
    for h in (9.0, 18.0):
        cup = (0.06, 293.15, h, 390e3, 55e3, 0.06, 5e-4)
        rows = traced(cup)
        tree = typed(cup, rows, np.linspace(300, ends(rows)[2] * 2.2, 15), random.Random(3))
        losses.append(found(tree).loss)
    own = [pot("cup", 0.06, SIZES, (390e3, 1100.0), 0.0, 293.15, 293.15, air).loss for air in ("still", "moving")]
    told = log(losses[1][0] / losses[0][0])
    assert losses[1][0] > 1.2 * losses[0][0] and losses[1][2] > losses[0][2]
    outside.own("trial, twice the heat to the air (ln)",
            SOURCE + "; the walls take their share: own balance of still and "
            "moving air", log(own[1] / own[0]), told, absolute=0.35)


def seen_by_somebody(draw):
    """A cup, and what might be typed of it: minutes of its moments, or a curve that climbs steeper and steeper."""
    air = 273.15 + draw.randint(8, 32)
    cup = pot("cup", draw.choice((0.04, 0.06, 0.1, 0.15)), SIZES, (437e3, 1100.0), 0.0, air, air + draw.randint(-2, 4))
    last, moments = 60.0 * draw.randint(12, 90), draw.random() < 0.3
    if moments:
        return cup, Seen((), last, draw.choice((None, last * 1.2)), None, None)
    many, warm, hot = draw.randint(3, 9), draw.randint(3, 33), draw.randint(20, 90)
    readings = [(60.0 * round(last * one / many / 60), air + round(warm * (one / many) ** 2 + hot * (one / many) ** 8))
                for one in range(1, many + 1)]
    return cup, Seen(tuple(readings), None, None, None, draw.choice((None, last * 1.1)))


def test_the_last_bit_of_what_goes_in_changes_nothing():
    """Two runtimes differ in the last bit of a sum; an optimiser's turns made a tenth digit of it, or another end."""
    draw, off = random.Random(4), 1 + 2e-16
    for _ in range(80):
        cup, seen = seen_by_somebody(draw)
        one, other = fitted(cup, seen, 0.2), fitted(cup._replace(rise=cup.rise * off, loss=cup.loss / off), seen, 0.2)
        assert one.at == pytest.approx(other.at, rel=1e-14, abs=1e-14)
        assert one.end == pytest.approx(other.end, rel=1e-12)
        assert one.end_doubt == pytest.approx(other.end_doubt, rel=1e-6)  # it is told and kept in steps of 0.001


@pytest.mark.parametrize(("more", "field", "words"), [
    ({"readings": [("5", "22")]}, "readings", "One reading"),
    ({"readings": [("5", "22"), ("12", "30"), ("9", "26")]}, "readings.2.minute", "later than"),
    ({"readings": [("5", "22"), ("12", "30"), ("12", "31")]}, "readings.2.minute", "later than"),
    ({"readings": [("5", "22"), ("20", "30"), ("30", "249")]}, "readings.2.temperature", "hotter than this mix can"),
    ({"readings": [("5", "4"), ("20", "30"), ("30", "49")]}, "readings.0.temperature", "colder than"),
    ({"readings": [("5", "22"), ("10", "80"), ("20", "29"), ("25", "36"), ("30", "48")]}, "readings.3.temperature",
     "does not warm again"),
    ({"readings": [("1", "95"), ("20", "95"), ("40", "95"), ("60", "95")]}, "readings.0.temperature",
     "this hot so soon"),
    ({"readings": [("5", "21"), ("20", "22"), ("40", "23"), ("60", "24")], "strings_at": "3"}, "readings.1.temperature",
     "does not fit"),
    ({"readings": [("30", "22"), ("60", "22"), ("90", "23")], "strings_at": "3"}, "strings_at", "does not fit"),
    ({"strings_at": "20", "spreads_at": "30"}, "strings_at", "later than Still spreads at"),
    ({"strings_at": "30", "hottest_at": "20"}, "hottest_at", "later than Pulls strings at"),
    ({"spreads_at": "30", "stiff_at": "20", "strings_at": "40"}, "stiff_at", "later than Still spreads at"),
    ({"air": "", "strings_at": "30"}, "air", "Air temperature: type the temperature"),
])
def test_what_cannot_be_is_asked_back_at_its_field_and_gives_no_figure(more, field, words):
    more = {name: [{"minute": one, "temperature": other} for one, other in value] if name == "readings" else value
            for name, value in more.items()}
    answer = moves.answer("trial", {"system": LABEL, "air": "20", **more})
    assert field in [error["field"] for error in answer["errors"]]
    assert words in next(error["message"] for error in answer["errors"] if error["field"] == field)
    assert answer["lines"] == answer["leads"] == answer["figures"] == []


@pytest.mark.parametrize("readings", [
    [("2", "20"), ("10", "20"), ("20", "21")], [("2", "21"), ("4", "21")], [("0", "20"), ("1", "20"), ("2", "20")]])
def test_readings_that_tell_little_give_no_minutes_and_are_not_kept(readings):
    lines, answer = asked({"system": LABEL, "air": "20", "readings": [
        {"minute": one, "temperature": other} for one, other in readings]})
    assert "too wide a range to rely on" in lines["not_sure"]["text"]
    assert "usable" not in lines and answer["leads"] == answer["figures"] == []


def test_before_anything_is_typed_it_says_how_it_goes_and_what_can_hurt():
    lines, answer = asked({})
    assert lines["hot"]["rank"] == "warn" and "60 °C" in lines["hot"]["text"] and "data sheet" in lines["hot"]["text"]
    assert [lines[f"how_{place}"]["rank"] for place in range(1, 5)] == ["say"] * 4
    assert answer["leads"] == []


@pytest.mark.parametrize(("bound", "time", "way"), [("stiff_at", "22", -1), ("spreads_at", "36", 1)])
def test_a_cup_that_was_too_stiff_or_still_spread_bounds_the_fit(bound, time, way):
    tree = {"system": LABEL, "air": "20", "strings_at": "36"}
    free, bounded = found(tree), found(dict(tree, **{bound: time}))
    assert (bounded.fit.end - free.fit.end) * way > 0.015 * free.fit.end
    assert abs(log(bounded.fit.end / (60 * float(time)))) < abs(log(free.fit.end / (60 * float(time)))) * 0.6


@pytest.mark.parametrize(("timing", "way"), [("gone 22 min 100 g cup 20 °C", -1), ("good 45 min 100 g cup 20 °C", 1)])
def test_own_timings_of_the_system_bound_the_fit(timing, way):
    tree = {"air": "20", "strings_at": "36"}
    free, bounded = [found(dict(tree, system=one)) for one in (LABEL, dict(LABEL, timings=timing))]
    assert (bounded.fit.end - free.fit.end) * way > 0.05 * free.fit.end


KEPT = "thick 1200 s, doubt 9 %, mass 100 g, air 20.0 °C, loss {} %, heat 90 %"


def test_a_kept_test_sets_the_minutes_of_every_screen():
    """Pour, Rescue, Clock, its pot and Plan tell the same of a batch as the test did, and other than the label."""
    tree = {"system": LABEL, "air": "20", "strings_at": "20"}
    lines, answer = asked(tree)
    kept = dict(LABEL, trials=dict(answer["leads"][0]["pairs"])["system.trials"])
    minutes = []
    for one in (LABEL, kept):
        heat = moves.answer("heat", {"air": "20", "batch": "240", "system": one})
        [clock] = [line for line in heat["lines"] if line["name"] == "usable"]
        [started] = [dict(lead["pairs"]) for lead in heat["leads"] if lead["label"] == "Start the clock"]
        assert started["pot.duration"] == shown(clock["value"] / 60, 0, DOWN)  # the running pot's
        pour = moves.answer("measure", {"system": one, "amount": "240", "air": "20"})["lines"]
        [poured] = [line["value"] for line in pour if line["name"] == "usable"]
        rescue = moves.answer("rescue", {"system": one, "amount": "240", "air": "20", "readings": [
            {"shown": "185"}, {"shown": "240"}]})["lines"]
        rescued = [line["value"] for line in rescue if line["name"] == "usable"]
        assert [poured, *rescued] == pytest.approx([clock["value"]] * (1 + len(rescued)), rel=2e-3)
        minutes.append(clock["value"])
    assert minutes[1] == pytest.approx(lines["usual"]["value"], rel=2e-3) and minutes[1] < 0.8 * minutes[0]
    plans = [{line["name"]: line["value"] for line in moves.answer("plan", dict(PLAN, system=one))["lines"]}
             for one in (LABEL, kept)]
    assert plans[1]["window_pot"] < 0.8 * plans[0]["window_pot"]
    again, after = asked(dict(tree, system=kept))
    assert again["usual"]["value"] == lines["usual"]["value"] and after["leads"] == []  # not a second one


@pytest.mark.parametrize("doubt", [8, 12, 20])
@pytest.mark.parametrize("label", [LABEL, dict(LABEL, pot_time="15 min"), dict(NO_LABEL, film_time="3 h",
                                                                              pot_temperature="25 °C")])
def test_the_heat_balance_is_the_test_s_own_too_whatever_a_label_says(label, doubt):
    """When it is thick, how hot it gets and when it runs away: a label twice as slow must not halve the way there."""
    kept = dict(label, trials=KEPT.format(100).replace("doubt 9", f"doubt {doubt}"))
    answer = moves.answer("heat", {"air": "20", "batch": "100", "system": kept})
    lines = {line["name"]: line for line in answer["lines"]}
    assert lines["by_heat"]["value"] == pytest.approx(1200, rel=0.08)
    assert lines["fact_1"]["value"] == pytest.approx(1, abs=0.08)


def test_a_test_makes_known_what_no_label_tells():
    assert moves.answer("heat", {"air": "20", "system": NO_LABEL})["errors"]
    kept = dict(NO_LABEL, trials=KEPT.format(100))
    assert moves.answer("heat", {"air": "20", "system": kept})["errors"] == []
    assert moves.answer("plan", dict(PLAN, system=kept))["errors"] == []


def test_a_high_loss_counts_in_cups_of_its_size_and_a_low_one_everywhere():
    def losses(text, kind, mass):
        mix = mixed_resin(system(trials=KEPT.format(text)))
        own = pot(kind, mass, SIZES, mix, 0.0, 293.15, 293.15).loss
        return own / pot(kind, mass, SIZES, mix[:2], 0.0, 293.15, 293.15).loss

    for kind in ("cup", "bag", "tray"):
        assert [losses("80", kind, mass) for mass in (0.05, 0.1, 0.5)] == pytest.approx([0.8] * 3)
        high = [losses("150", kind, mass) for mass in (0.05, 0.1, 0.14142135, 0.2, 0.5)]
        assert high == pytest.approx([1.5, 1.5, 1.5**0.5, 1, 1] if kind == "cup" else [1] * 5, rel=1e-6)


def test_a_larger_cup_never_lasts_longer_behind_a_test():
    here = system(trials=KEPT.format(160))
    times = [usable(batch(here, "cup", 0.02 * 1.15**place, 293.15)).time for place in range(30)]
    assert all(after <= before + 0.2 for before, after in pairwise(times))


def test_two_tests_in_other_air_are_kept_beside_each_other_and_one_in_the_same_is_replaced():
    one = dict(LABEL, trials=KEPT.format(100))
    texts = []
    for air in ("21", "28"):
        _, answer = asked({"system": one, "air": air, "strings_at": "22"})
        texts.append(dict(answer["leads"][0]["pairs"])["system.trials"])
    assert [len(read_trials(text)) for text in texts] == [1, 2] and "air 21.0 °C" in texts[0]
    assert trials_text(read_trials(texts[1])) == texts[1]


@pytest.mark.parametrize("text", [
    "thick 1200 s", KEPT.format(100) + ", warm 3", KEPT.format(5), "thick 1200, doubt 9 %", KEPT.format("x"),
    KEPT.format(100) + ", loss 90 %"])
def test_what_no_test_wrote_is_told_at_its_field(text):
    answer = moves.answer("heat", {"air": "20", "system": dict(LABEL, trials=text)})
    assert [error["field"] for error in answer["errors"]] == ["system.trials"]


@pytest.mark.parametrize("name", ["heat", "kit"])
def test_the_test_cup_is_reached_with_the_system_it_is_made_of(name):
    tree = {"air": "20", "system": LABEL} if name == "heat" else {"kind": "system", "system": LABEL}
    [lead] = [one for one in moves.answer(name, tree)["leads"] if one["screen"] == "trial"]
    values, errors = inputs.read(moves.module("trial").INPUTS, links.tree(lead["pairs"]))
    assert errors == [] and values["system"]["pot_time"] == 1800


def test_a_link_takes_a_test_along():
    pairs = links.pairs(moves.screen_inputs("clock"), {"system": dict(LABEL, trials=KEPT.format(90)), "air": "20"})
    assert dict(pairs)["system.trials"] == KEPT.format(90)

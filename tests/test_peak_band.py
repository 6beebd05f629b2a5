"""Peak band: how hot a small pot can get, against finite volumes that know nothing of it; and what is said of it."""
import json
from itertools import product

import pytest
import small_pots
from covemix.shared.catalogue.containers import AIR, HOT, HOT_POT, MATTER
from covemix.shared.catalogue.pots import SIZES
from covemix.shared.clock import heat, peak_band
from covemix.shared.clock.heat_model import calibration_of, container_mix, facts, mixed_resin, pot_of
from covemix.shared.clock.hot_pot import RUNS_AWAY, peak_temperature
from covemix.shared.clock.pot_heat import COOL_END, HOT_END, pot
from covemix.shared.clock.sun import LOOKS_ROWS, SUN_ROWS, Sun
from covemix.shared.door import moves
from covemix.shared.door.call import call
from covemix.shared.equations.calibrate_heat import USABLE, refitted, usable_time
from covemix.shared.equations.integrate import pot_run
from covemix.shared.forms import inputs
from covemix.shared.words.texts import said
from covemix.shared.words.written import reader
from test_integrate import by_scipy

LABEL = {"by_weight": "100:44", "pot_time": "30", "pot_mass": "100", "pot_temperature": "25"}
SLOW = dict(LABEL, pot_time="60")
# activation energy [J/mol], k1/k2 [-], heat [J/kg]: the corners of what is remembered, and the middle
CHEMISTRIES = ((65e3, 0.02, 395e3), (55e3, 0.06, 360e3), (45e3, 0.2, 280e3), (65e3, 0.2, 280e3))


def read(what):
    """What a row says, as its reader has it."""
    return said(what, reader())


def asked(label=LABEL, celsius=15, grams=60, container="cup", **more):
    values, errors = inputs.read(heat.INPUTS, {"system": dict(label), "air": str(celsius), "batch": f"{grams} g",
                                               "container": container, **more})
    assert not errors
    return values


def band(label=LABEL, celsius=15, grams=60, container="cup", **more):
    return peak_band.band(asked(label, celsius, grams, container, **more), container, grams / 1000)


@pytest.fixture(scope="module")
def chemistries():
    return [small_pots.fitted(*one) for one in CHEMISTRIES]


def test_still_air_takes_what_churchill_and_chu_say(outside):
    """Incropera and others, Introduction to Heat Transfer, 6th edition, example 9.2: Nu 147 at Pr 0.69, Gr 2.63e9. With
    radiation the ends of the row are those of pots of 20 g to half a kilogram, 5 to 60 K warmer than the air."""
    outside.printed("heat still air, the law of the check", "Incropera, example 9.2 (Churchill and Chu, 1975)", 147,
            small_pots.nusselt(0.69, 2.63e9), absolute=0.5)
    ends = [small_pots.to_air(293.15 + warmer, 293.15, high) for warmer in (5, 60) for high in (0.028, 0.083)]
    row = next(row for row in AIR if row[0] == "still")
    source = "Churchill and Chu (1975), with radiation"
    outside.worked("heat still air, least [W/m2K]", source, row[3], min(ends), absolute=0.5)
    outside.worked("heat still air, most [W/m2K]", source, row[4], max(ends), absolute=0.5)


@pytest.mark.parametrize("celsius", [15, 25])
@pytest.mark.parametrize("grams", [20, 60, 100])
def test_finite_volumes_lie_within_the_band(outside, chemistries, grams, celsius):
    """Each chemistry fitted to the same label, in a cup as wide as it is full and in one of 65 mm."""
    found = [small_pots.run(small_pots.Beaker(grams / 1000, width), one, celsius + 273.15)[1]
             for one, width in product(chemistries, (None, 0.065))]
    told = band(celsius=celsius, grams=grams)
    ends = f"{min(found) - 273.15:.0f} to {max(found) - 273.15:.0f} degC"
    outside.own(f"heat peak of {grams} g at {celsius} degC, {ends} in finite volumes, within the band",
                "own finite volumes (tests/small_pots.py)", 1.0,
                float(told.cool <= min(found) and max(found) <= told.hot), rel=0)
    # a band as wide as anything would hold them too
    assert told.hot - max(found) < 35 and min(found) - told.cool < 35


@pytest.mark.parametrize("container", ["cup", "bag", "tray", "roll", "film"])
@pytest.mark.parametrize("label", [LABEL, SLOW])
def test_no_mixture_of_the_ends_leaves_the_band(label, container):
    """All sixteen corners, each brought to the label by itself: heat, air, energy, and how it speeds itself up."""
    undiluted = next(row for row in MATTER if row[0] == "undiluted")
    for celsius, grams in ((5, 100), (15, 60), (25, 20), (25, 300), (35, 60)):
        values = asked(label, celsius, grams, container)
        told = peak_band.band(values, container, grams / 1000)
        mix, calibration, (fact,) = mixed_resin(values["system"]), calibration_of(values), facts(values)
        air, peaks = celsius + 273.15, []
        for share, end, rates, first in product(undiluted[2:4], (HOT_END, COOL_END), calibration[1:3], (0.02, 0.2)):
            there, here = [pot(kind, mass, SIZES, mix, filler, at, at, end=end,
                               grain=container_mix(values)[3]) for kind, mass, filler, at in (
                ("cup", 0.1, 0.0, 298.15), (container, grams / 1000, container_mix(values)[2], air))]
            usual = undiluted[2] if end == COOL_END else 1.0
            there, here = [one._replace(rise=one.rise / usual * share) for one in (there, here)]
            peaks.append(pot_run(refitted(rates, fact, there, first), here, USABLE, whole=True).peak)
        assert told.cool - 1 <= min(peaks) and max(peaks) <= told.hot + 1
        assert told.hot - max(peaks) < 1
        assert told.time > 0


@pytest.mark.parametrize("end", [HOT_END, COOL_END])
def test_each_corner_meets_the_label(end):
    values = asked()
    (fact,) = facts(values, end)
    for rates in peak_band.corners(values, end):
        assert usable_time(rates, fact.pot) / 60 == pytest.approx(30, rel=0.02)


def test_a_film_alone_and_own_timings_bound_the_corners_too():
    film = band({"by_weight": "100:44", "film_time": "90", "pot_temperature": "25"}, 25, 60)
    assert film.hot > film.cool > 298
    timed = {"said": "stiffening", "after": "60", "mass": "100 g", "in": "cup", "at": "25"}
    own = asked(LABEL, 15, 60, timings=[timed])
    assert peak_band.band(own, "cup", 0.06).hot < band().hot


def test_the_corners_of_a_system_are_worked_out_once(monkeypatch):
    calls = []
    monkeypatch.setattr(peak_band, "refitted", lambda *given: calls.append(given) or refitted(*given))
    values = asked()
    for grams in (0.03, 0.06, 0.12):
        peak_band.band(values, "cup", grams)
    assert len(calls) == 4


def lines(label, celsius, grams, container="cup", **more):
    told = moves.answer("heat", {"system": label, "air": str(celsius), "batch": f"{grams} g", "container": container,
                                 **more})
    assert not told["errors"]
    return {row["name"]: row for row in told["lines"]}


def test_sixty_grams_at_15_degc_may_run_away_and_may_stay_cool():
    """The band's hot end first; what it may do, and what to do then."""
    told = lines(LABEL, 15, 60)
    assert told["peak"]["text"] == "over 150 °C, at best 20 °C" and told["peak"]["value"] > RUNS_AWAY
    assert "from memory" in told["peak"]["rough"]
    assert told["runaway"]["label"] == "This pot may overheat"
    assert told["runaway"]["text"].startswith(read(HOT[1][2])) and told["runaway"]["caution"] == read(HOT_POT)
    sure = lines(LABEL, 30, 1000)
    assert sure["runaway"]["text"].startswith(read(HOT[1][1])) and sure["peak"]["text"].endswith("at best 145 °C")


def test_the_words_follow_the_band_and_never_fall_silent():
    for container, celsius, grams in product(("cup", "bag", "tray", "film"), (5, 15, 25, 35), (5, 20, 60, 200)):
        told, found = lines(LABEL, celsius, grams, container), band(LABEL, celsius, grams, container)
        assert told["peak"]["value"] == pytest.approx(found.hot, abs=0.02)
        if found.hot >= HOT[0][0]:
            reached = [row for row in HOT if found.hot >= row[0]][-1]
            assert told["runaway"]["text"].startswith(read(reached[1 if found.cool >= reached[0] else 2]))
        else:
            assert "runaway" not in told
            assert told["peak"]["text"] == "hardly above the air" or "below 60 °C" in told["peak"]["rough"]


def screen(name, *pairs):
    return json.loads(call(json.dumps({"screen": name, "pairs": [list(pair) for pair in pairs]})))


@pytest.mark.parametrize(("name", "more"), [
    ("pour", [("amount", "40 g"), ("air", "15")]),
    ("pour", [("amount", "40 g"), ("air", "15"), ("rescue", "yes"), ("in_cup.0.mass", "28"), ("in_cup.1.mass", "10")]),
    ("clock", [("batch", "40 g"), ("air", "15")]),
    ("plan", [("pieces.0.length", "1"), ("pieces.0.putty", "100"), ("pieces.0.wet", "60"), ("temperature", "10"),
              ("smallest", "10 g")])])
def test_the_caution_goes_by_the_hot_end(name, more):
    """A slow label: the middle of what is remembered stays below 100 degC, its hot end does not."""
    assert "left in one pot" in screen(name, *[(f"system.{key}", text) for key, text in SLOW.items()], *more)["caution"]


def test_pour_and_clock_tell_one_band():
    pairs = [(f"system.{key}", text) for key, text in LABEL.items()] + [("air", "15")]
    pour = dict(screen("pour", *pairs, ("amount", "60 g"))["answers"])["measure"]["lines"]
    clock = dict(screen("clock", *pairs, ("batch", "60 g"))["answers"])["heat"]["lines"]
    told = [next(row for row in rows if row["name"] == "peak") for rows in (pour, clock)]
    assert told[0]["text"] == told[1]["text"] and told[0]["value"] == pytest.approx(told[1]["value"], abs=0.02)
    values = asked()
    assert peak_temperature(values["system"], 0.06, "cup", 288.15) == pytest.approx(told[1]["value"], abs=0.02)


@pytest.mark.parametrize(("minutes", "celsius", "grams", "more"), [
    ("30", 15, 60, {}), ("30", 25, 240, {}), ("60", 35, 100, {"sun": "full"}), ("5", 35, 20000, {}),
    ("15", 5, 5000, {}),
    ("15", 25, 240, {"container": "bag", "resin_temperature": "10"})])
def test_the_minute_of_a_told_peak_is_that_of_scipy(outside, minutes, celsius, grams, more):
    """scipy solve_ivp, LSODA, rtol 1e-10, each chemistry of the hot end, until long after its top."""
    values = asked(dict(LABEL, pot_time=minutes), celsius, grams, **more)
    container, tops = values["container"], []
    here = pot_of(values, container, grams / 1000, HOT_END)
    for rates in peak_band.corners(values, HOT_END):
        run = pot_run(rates, here, USABLE, whole=True)
        tops.append(by_scipy(rates, here, 4 * run.points[-1][0])[2])
    told = peak_band.band(values, container, grams / 1000).time
    outside.solved(f"heat peak of {grams} g at {celsius} degC, label {minutes} min: minute", "scipy, LSODA, rtol 1e-10",
            min(tops) / 60, told / 60, rel=0.01)


@pytest.mark.parametrize(("container", "grams", "looks"), [("cup", 60, "white"), ("cup", 60, "black"),
                                                          ("tray", 240, "unknown")])
def test_the_cool_end_counts_the_least_sun_that_was_said(container, grams, looks):
    """What "full sun" is on a low sun and the palest of such surfaces: a pot that this leaves cool is not told as one
    that is sure to run away. The hot end stays what it was."""
    told = band(celsius=9, grams=grams, container=container, sun="full", looks=looks)
    shade = band(celsius=9, grams=grams, container=container)
    row, look = SUN_ROWS["full"], LOOKS_ROWS[looks]
    as_said = min(peak for peak, _ in peak_band.peaks(asked(celsius=9, grams=grams, container=container, sun="full",
                                                            looks=looks), container, grams / 1000, COOL_END,
                                                      Sun(row[2] * look[2], 1.0)))
    assert shade.cool <= told.cool < as_said - 3
    least = min(peak for peak, _ in peak_band.peaks(asked(celsius=9, grams=grams, container=container), container,
                                                    grams / 1000, COOL_END, Sun(row[3] * look[3], 1.0)))
    assert told.cool == pytest.approx(least, abs=0.02)

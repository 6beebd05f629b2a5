"""What is followed without a second look in the newer parts: glue-ups, fillets, cloth, plans of coats, a run's dates, a
test cup, a shelf.

Each test is for a person who would be harmed by a former too wide, a radius of the other side, a pot too big for a warm
day, a coat that goes on too soon.
"""
import math
import re

import pytest
from covemix.shared.catalogue.surfaces import BY_KEY
from covemix.shared.door import moves
from covemix.shared.equations.fit_pot import doubt
from covemix.shared.forms import links
from covemix.shared.plan import layers, plan, run, run_lines
from scipy import stats
from test_layers import TYPED_DAY, mixed_and_on, over, values_of
from test_run import QUICK, found
from test_surface import asked, faces, value
from test_trial import LABEL
from test_trial import found as trial_found

SLOW = {"system.by_weight": "3:1", "system.pot_time": "90 min", "system.pot_mass": "100 g",
        "system.pot_temperature": "25 °C"}


# --- glue, fillets, cloth

def test_a_former_is_tighter_than_the_bend_by_its_springback_and_the_hull_itself_is_not():
    """By hand: four layers for 1.606 m want 1.606 (1 - 1/16) = 1.5056 m, told no wider; on the hull nothing springs."""
    typed = {"work": "laminate", "bend": "1.606 m", "strips": "4"}
    free, hull = asked("gluing", **typed), asked("gluing", **typed, to_hull="yes")
    assert value(free, "former") == pytest.approx(1.505625) and free["former"]["text"] == "1.5 m"
    assert value(hull, "former") == pytest.approx(1.606)


def test_each_radius_of_a_leaning_panel_stands_on_its_own_side():
    """By hand: the foot t + 2 R cot h is as wide on both sides; the sharp side has the smaller radius, told no less."""
    one = asked("fillets", fillet_angle="70", fillet_strength="40 MPa", face_pull="2 MPa")
    sides = [(float(one[name]["label"].rstrip("°").rpartition(" ")[2]), value(one, name), one[name]["text"])
             for name in ("radius_1", "radius_2")]
    assert [angle for angle, _, _ in sides] == [70, 110]
    foot = 0.5 * 0.006 * ((40 / 2) ** 0.5 - 1)  # R cot h, t (sqrt(f / f_90) - 1) / 2
    assert [radius for _, radius, _ in sides] == pytest.approx([foot * 0.7002075382, foot * 1.4281480067])
    for _, radius, text in sides:
        assert 0 <= float(text.split()[0]) / 1000 - radius < 0.0001
    pairs = dict(one[""]["leads"][-1]["pairs"])
    assert (pairs["radius"], pairs["angle"]) == (sides[1][2], "70")  # one cutter for both: the larger


@pytest.mark.parametrize(("lie", "wood", "told"), [
    ("upright", "bare", True), ("under", "bare", True), ("level", "bare", False), ("leans", "bare", False),
    ("upright", "sealed", False)])
def test_cloth_on_an_upright_bare_face_is_warned_of_first(lie, wood, told):
    lines = asked("sheathing", *faces("2 m2"), lie=lie, wood=wood)[""]["lines"]
    assert ((lines[0]["name"], lines[0]["rank"]) == ("dry", "warn")) == told
    assert [line["name"] for line in lines].count("dry") == told


@pytest.mark.parametrize(("air", "limit"), [("20", 300), ("27", 300), ("28", 150), ("33", 150)])
def test_a_warm_day_halves_what_one_cup_may_hold_in_glue_and_pots(air, limit):
    """As the cautions have it: 300 g, from 28 degrees on 150 g. What is said is what bound."""
    for width in range(20, 100, 4):
        one = asked("gluing", *SLOW.items(), work="laminate", glued_width=f"{width} mm", strips="3", air=air, soak="0")
        mass = value(one, "mixed_mass") * 1000
        assert ("big_pot" in one) == (mass >= limit), mass
        assert mass < limit or ("one_pot" not in one and f"{limit} g or more" in one["big_pot"]["text"])
    for move in ("coats", "sheathing"):
        assert f"{limit} g or more" in asked(move, *faces("9 m2"), air=air)["largest"]["rough"]


def test_a_glue_up_s_pot_lasts_through_the_wait_and_no_longer_than_a_cup():
    """By hand: two faces primed and one spread at 70 s/m2, 3 min to mix, 3 more for the filler, and the wait."""
    one, other = (asked("gluing", *SLOW.items(), work="scarf", soak=soak) for soak in ("5 min", "25 min"))
    assert value(other, "one_pot") - value(one, "one_pot") == pytest.approx(1200)
    heat = moves.answer("heat", links.tree([*SLOW.items(), ("air", "20"), ("container", "cup"), (
        "batch", f"{value(one, 'mixed_mass') * 1000:.6f} g")]))
    usable = next(line for line in heat["lines"] if line["name"] == "usable")["value"]
    assert f"of {int(usable // 60)} min" in one["one_pot"]["text"]


def test_a_scarf_s_end_grain_is_primed_twice_as_much_and_a_laminate_s_faces_once():
    """By hand: both faces of the bond at 85 g/m2, end grain twice that."""
    scarf, flat = asked("gluing", work="scarf"), asked("gluing", work="laminate")
    assert value(scarf, "neat") == pytest.approx(2 * value(scarf, "bond") * 2 * 0.085)
    assert value(flat, "neat") == pytest.approx(2 * value(flat, "bond") * 0.085)


def test_a_joined_length_is_told_no_longer_than_it_is_and_each_pour_is_its_own():
    """By hand: 2.44 and 2.44 m less a bevel of 8 x 5.9 mm are 4.8328 m."""
    one = asked("gluing", work="scarf", glued_thickness="5.9 mm", piece_one="2.44 m", piece_two="2.44 m")
    assert value(one, "joined") == pytest.approx(4.8328) and one["joined"]["text"] == "4.83 m"
    all_of_it, glue = [dict(lead["pairs"]) for lead in one[""]["leads"]][:2]
    assert all_of_it["amount"] == f"{math.ceil(value(one, 'mixed_mass') * 1000 - 1e-6)} g"
    assert (glue["amount"], glue["amount_is"], glue["thicken"]) == (
        f"{math.ceil(value(one, 'glue') * 1e6 - 1e-6)} mL", "putty", "yes")


# --- coats and their pots

@pytest.mark.parametrize(("air", "told"), [("8", True), ("11.9", True), ("12", False), ("20", False)])
def test_a_hardener_that_may_never_cure_is_told_from_its_lowest_temperature_down(air, told):
    """The built-in system's, from memory: 12 degrees."""
    one = asked("coats", air=air)
    assert ("cold" in one) == told and (not told or one["cold"]["rank"] == "warn")


@pytest.mark.parametrize("move", ["coats", "sheathing"])
@pytest.mark.parametrize("area", ["0.9 m2", "9 m2"])
def test_what_goes_to_pour_is_one_pot_and_no_more(move, area):
    one = asked(move, *faces(area))
    pairs = dict(one[""]["leads"][0]["pairs"])
    assert pairs["amount"] == f"{math.ceil(value(one, 'largest') * 1000 - 1e-6)} g"


def test_a_pot_is_mixed_and_laid_while_its_film_is_worked_at_the_pace_of_its_place():
    """Two hours a square metre, half as quick again on a wall, twice as slow overhead: as the crew's places have it."""
    film = next(line["value"] for line in moves.answer("heat", links.tree([
        ("air", "20"), ("container", "film"), ("batch", "200 g"), ("system", "3-1")]))["lines"]
        if line["name"] == "usable")
    for lie, slower in (("level", 1.0), ("leans", 1.0), ("upright", 1 / 0.7), ("under", 2.0)):
        for area in range(10, 60):
            one = asked("sheathing", *faces(f"{area / 20} m2"), cloth_weight="50 g/m2", wood="sealed",
                        wet_pace="120 min", lie=lie)
            reach = value(one, "reach")
            assert 180 + reach * 7200 * slower <= film
            count = round(area / 20 / reach)
            assert count == 1 or 180 + area / 20 / (count - 1) * 7200 * slower > film


@pytest.mark.parametrize("area", ["0.2 m2", "1 m2", "6 m2"])
@pytest.mark.parametrize("filler", ["glass-spheres", "wood-flour"])
def test_no_batch_of_compound_is_a_big_pot_and_pour_gets_one_of_them(area, filler):
    one = asked("fairing", *faces(area), filler=filler)
    each = value(one, "largest")
    count = int(one["largest"]["text"].split()[0])
    assert each <= 0.3 and count >= value(one, "passes")
    spare = value(one, "placed") * value(one, "density") * 1.1  # and what 6 g of resin and its filler leave in each cup
    assert 0.006 < (each * count - spare) / count < 0.010
    pairs = dict(one[""]["leads"][0]["pairs"])
    assert pairs["amount"] == f"{math.ceil(each / value(one, 'density') * 1e6 - 1e-6)} mL"
    assert pairs["filler"] == filler


# --- a plan of coats

def test_a_coat_s_pots_are_those_of_the_warmest_hour_of_its_day():
    """Twelve degrees in the morning, twenty-four in the afternoon: each pot is laid while its film is worked then."""
    typed = {**TYPED_DAY, "start": "6:00", "finish": "22:00", "surfaces.0.area": "60", "most": "5 kg"}
    values = values_of(typed)
    made = plan.planned(values)
    pots = layers.pots(values, made, values["surfaces"][0], 1)
    pace, film = BY_KEY["coat_pace"].value, made.windows.film * made.windows.share
    warm, cool = (film / made.profile.pace_at(kelvin) for kelvin in (297.15, 285.15))
    laid = values["mix_wet"] + 60 / pots.count * pace
    assert laid <= warm * (1 + 1e-9)
    assert values["mix_wet"] + 60 / (pots.count - 1) * pace > warm
    assert values["mix_wet"] + 60 / (pots.count - 1) * pace < cool  # which would be told in the morning's cool


def test_each_coat_is_poured_for_the_air_of_its_own_hour():
    """By hand: from 12 degrees at 6:00 to 24 at 14:00 are 15 at 8:00, when the first begins; Pour gets that."""
    typed = {**TYPED_DAY, "start": "8:00", "finish": "22:00", "surfaces.0.area": "6.5"}
    coats, at = plan.reckon(values_of(typed)).layers, over([(21600, 285.15), (50400, 297.15), (79200, 287.15)])
    for one in coats:
        assert one.air == pytest.approx(at(one.starts[0]) if one.starts[0] < 79200 else 287.15)
    assert coats[0].air == pytest.approx(288.15) and abs(coats[1].air - coats[0].air) > 3
    begun = {"running": "yes", "clock": "8:05", "today": "2026-11-27", "day": "2026-11-27"}
    for told, air in (({}, 288.15), (mixed_and_on(5, 60), coats[1].air)):
        leads = moves.answer("plan", links.tree([*typed.items(), *begun.items(), *told.items()]))["leads"]
        pairs = dict(next(lead for lead in leads if lead["screen"] == "pour")["pairs"])
        assert float(pairs["air"].split()[0]) == pytest.approx(air - 273.15, abs=0.35)  # ten minutes later at most


# --- a run's dates

@pytest.mark.parametrize("age", [1700, 2900])
def test_no_coat_goes_on_through_the_peel_ply(age):
    """Contacts of 60 and 860 s; the peel ply is off after 9000 s, a window that opened at 5000 s waits for it."""
    got, values = found(QUICK, age)
    coat = got.dates.recoat._replace(opens=5000.0, closes=30_000.0, cold=False, shut=False)
    ended = run_lines._end(got._replace(dates=run.Dates(9000.0, coat, 60.0, 860.0)), values)
    (_, begins, _), (_, opens, _) = ended["ends"]
    assert opens >= begins and opens + 60 >= values["ran_wall"] - age + 860 + 9000
    for state in ({"cold": True}, {"shut": True}):
        dates = run.Dates(9000.0, coat._replace(**state), 60.0, 860.0)
        ended = run_lines._end(got._replace(dates=dates), values)
        assert len(ended["ends"]) == 1 and ended["under"][1], state


# --- a test cup

# what somebody read of two cups of LABEL in air of 20 degrees: one that shed more heat than was thought, and one that
# hardly differs; minutes, degrees
COOLS = (("5", "21"), ("15", "24"), ("25", "30"), ("35", "42"), ("45", "55"), ("55", "48"), ("65", "38"), ("80", "28"))
AS_THOUGHT = (("2", "21"), ("8", "24"), ("14", "31"), ("18", "44"), ("21", "80"), ("24", "150"))


def cup(rows, **more):
    typed = {"system": LABEL, "air": "20", "readings": [{"minute": one, "temperature": other} for one, other in rows],
             **more}
    return trial_found(typed), typed


def test_what_sounds_calmer_of_a_test_cup_is_kept_by_its_cautious_end():
    """Of a cup that sheds three times the heat and warms by half, the next pots are reckoned with less of either."""
    for rows, shed, warms in ((COOLS, 2.87, 0.535), (AS_THOUGHT, 1.07, 0.787)):
        one, _ = cup(rows)
        kept, ends = one.rows[-1], []
        for place, spread in ((1, 0.4), (2, 0.2)):  # 1.645 deviations of its own doubt and of the model's tenth
            off = 1.645 * math.hypot(spread * doubt(one.fit, place), 0.1)
            ends.append([math.exp(spread * one.fit.at[place] + way * off) for way in (-1, 0, 1)])
        (least, middle, _), (_, heat, most) = ends
        assert (middle, heat) == pytest.approx((shed, warms), abs=0.01)
        assert kept["loss"] == pytest.approx(max(1.0, least), abs=0.006) and kept["loss"] < shed
        assert kept["heat"] == pytest.approx(min(1.0, most), abs=0.006) and kept["heat"] > warms


def test_the_band_of_a_test_cup_is_as_wide_as_its_doubt_and_told_from_least_to_most():
    """Nine in ten of a normal law lie within 1.645 deviations (scipy). No more is told than what was found."""
    one, typed = cup(COOLS)
    off = math.hypot(one.fit.end_doubt, 0.08)
    assert one.thick[1] / one.thick[0] == pytest.approx(math.exp(2 * stats.norm.ppf(0.95) * off), rel=0.01)
    line = next(row for row in moves.answer("trial", typed)["lines"] if row["name"] == "usable")
    least, most = (60 * int(text) for text in re.findall(r"(\d+) min", line["rough"]))
    share = one.cup.usable.share
    assert least <= share * one.thick[0] < least + 60 and most <= share * one.thick[1] < most + 60 and least < most


def test_resin_that_was_warm_when_it_was_stirred_is_kept_so():
    """Else a cool cup of the same time would be told the minutes of a warm one."""
    rows = (("2", "24"), ("8", "26"), *AS_THOUGHT[2:])
    one, typed = cup(rows, stirred="24")
    assert one.rows[-1]["resin"] == pytest.approx(297.15) and one.rows[-1]["at"] == pytest.approx(293.15)
    (lead,) = moves.answer("trial", typed)["leads"]
    assert "mix 24.0 °C" in dict(lead["pairs"])["system.trials"]

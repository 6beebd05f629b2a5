"""Plan: days that are checked by hand, what must never change, the clock, a plan under way, and bad input."""

from itertools import pairwise
from math import log
from random import Random
from types import SimpleNamespace

import pytest
from covemix.shared.catalogue import pot_life, rates
from covemix.shared.door import moves
from covemix.shared.equations.quick_rule import pot_time
from covemix.shared.equations.temperature_profile import Profile
from covemix.shared.forms import inputs, links
from covemix.shared.forms.clock_times import clock_said, clock_time
from covemix.shared.plan import smallest_mix
from covemix.shared.plan.day import Plan
from covemix.shared.plan.plan import INPUTS
from covemix.shared.words.numbers import DOWN, UP
from covemix.shared.words.texts import said
from covemix.shared.words.written import reader
from scipy.integrate import quad

HAND = {
    "people": "1",
    "temperature": "25",
    "start": "8:00",
    "pause": "5",
    "exponent": "0.5",
    "doubling": "2",
    "soft": "50",
    "film": "60",
    "share": "80",
    "mix_putty": "6",
    "mix_wet": "3",
    "left_putty": "0",
    "left_wet": "0",
    "spare": "0",
    "filler": "0",
    "smallest": "0",
    "one_mix": "never",
    "long": "whole",
    "most": "20000",
    "system": {"by_weight": "100:30", "pot_time": "40", "pot_mass": "100", "pot_temperature": "25"},
    "place_rate": "2",
    "tool_rate": "1",
    "clean_rate": "1",
    "wet_rate": "1",
    "lay_rate": "2",
    "roll_rate": "1",
    "peel_rate": "1",
    "pieces": [{"name": "Seam " + str(k + 1), "length": "1", "putty": "100", "wet": "50"} for k in range(6)],
}


def answered(**more):
    found = moves.answer("plan", dict(HAND, **more))
    assert not found["errors"], found["errors"]
    return found


def by_name(found):
    return {row["name"]: row for row in found["lines"]}


def of_part(found, part):
    return {row["name"]: row for row in found["lines"] if row["part"] == part}


def test_a_day_alone_checked_by_hand():
    """Six seams of 1 m, by the rules written out: p + q + c = 0.5 + 1 + 1, w + d + r = 1 + 0.5 + 1, y = 1 min/m.

    L metres: bag 6 + 0.5 L; rolled 6 + 2.5 L + 3 + 2.5 L = 9 + 5 L within 0.8 x 50 = 40, so L <= 6.2;
    bag within 0.8 x 40 / sqrt(L): L = 6: 9 <= 13.06; peel ply 3 + 3.5 L within 48: L <= 12.9. One batch of 6 m.
    """
    found = by_name(answered())
    assert found["batches"]["value"] == 1
    assert found["end"]["text"] == "08:45"  # 9 + 5 x 6 + 6 = 45 min
    assert found["slack"]["value"] == pytest.approx(60 * min(40 - 39, 32 / 6**0.5 - 9, 48 - 24))
    assert found["largest"]["value"] == pytest.approx(0.6)


def test_ten_degrees_warmer_halves_the_windows():
    """At 35 degC: rolled within 20, so L <= 2.2: three batches of 2 m, each 9 + 12 = 21 min, two pauses of 5."""
    found = by_name(answered(temperature="35"))
    assert found["batches"]["value"] == 3
    assert found["end"]["value"] == pytest.approx((480 + 3 * 21 + 2 * 5) * 60)
    assert found["binds"]["text"].startswith("the soft cove")


def test_a_day_for_two_checked_by_hand():
    """Two people, 1 m pieces, at 35 degC: rolled_i = max(tooled_i, free + 1) + 1.5; tooled_i = 6 + 0.5 n + 2 i.

    B needs 2.5 a piece and A 2, so piece i is rolled at 6 + 0.5 n + 2 + 1.5 + 2.5 (i - 1), the last of n at 7 + 3 n:
    within 20 up to n = 4. The bag: 6 + 0.5 n within 0.8 x 20 / sqrt(n): n = 4 would be 8 <= 8, just; n = 5 not.
    Two batches at least; of equal largest 300 g + 150 g: three and three. Each ends at 7 + 9 + 1 of peel ply = 17.
    """
    found = answered(people="2", temperature="35")
    lines = by_name(found)
    assert lines["batches"]["value"] == 2
    assert [lines["batch_1"]["value"], lines["batch_2"]["value"]] == [pytest.approx(3)] * 2
    assert lines["end"]["value"] == pytest.approx((480 + 17 + 5 + 17) * 60)
    first = of_part(found, "batch_1")
    # the first tape is wet as the first piece is tooled, at 9.5: mixed from 5.5 on
    assert first["step_wet_mix"]["value"] == pytest.approx((480 + 5.5 + 3) * 60)
    assert first["step_place"]["value"] == pytest.approx((480 + 7.5) * 60)
    assert first["step_roll"]["value"] == pytest.approx((480 + 16) * 60)


def test_a_third_person_mixes_ahead():
    """As for two, but the next mixing is done while the first batch is covered: 17 + 5 - 6 = 16 instead of 22."""
    lines = by_name(answered(people="3", temperature="35"))
    assert lines["end"]["value"] == pytest.approx((480 + 16 + 17) * 60)


def test_four_people_work_as_two_pairs():
    """Three seams each, the second pair six minutes later (one scale): the end is 6 + 17."""
    lines = by_name(answered(people="4", temperature="35"))
    assert lines["batches"]["value"] == 2
    assert "2 pairs" in lines["batches"]["text"]
    assert lines["end"]["value"] == pytest.approx((480 + 6 + 17) * 60)


def test_the_bag_binds_where_the_hardener_is_fast():
    """A pot life of 20 min at 100 g, square root: 16 / sqrt(n) >= 6 + 0.5 n holds up to n = 4 (8 >= 8; 7.2 < 8.5).

    Two bags of half the mass: 16 / sqrt(n / 2), at n = 6: 9.24 >= 9, all in one batch.
    """
    found = by_name(answered(system=dict(HAND["system"], pot_time="20")))
    assert found["batches"]["value"] == 2
    assert found["binds"]["text"].startswith("the putty in the bag")
    assert found["helps_bags"]["value"] == 1


def test_the_film_binds_where_it_is_short():
    """Peel ply 3 + 3.5 L within 0.8 x 20 = 16: L <= 3.7."""
    found = by_name(answered(film="20"))
    assert found["batches"]["value"] == 2
    assert found["binds"]["text"].startswith("the wet-out resin")


def test_a_mix_is_never_smaller_than_the_scale_measures():
    """100 g of putty and 50 g of wet-out resin, a scale that holds 120 g: two mixes are made larger, one is enough."""
    one_seam = [HAND["pieces"][0]]
    two = of_part(answered(pieces=one_seam, smallest="120"), "batch_1")
    assert [two["amount_putty"]["value"], two["amount_wet"]["value"]] == [pytest.approx(0.12)] * 2
    assert two["over"]["value"] == pytest.approx(0.09)
    one = of_part(answered(pieces=one_seam, smallest="120", one_mix="sound"), "batch_1")
    assert one["amount_mix"]["value"] == pytest.approx(0.15)
    assert "over" not in one and "step_wet_mix" not in one


def test_one_mix_for_both_is_held_to_the_largest_without_its_filler():
    """138 g of putty with 38 g of filler, 190 g of wet-out: 290 g in the cup; the filler comes when it is parted."""
    piece = [{"name": "x", "length": "1", "putty": "138", "wet": "190"}]
    found = answered(pieces=piece, filler="38", smallest="200", one_mix="sound", most="300")
    batch = of_part(found, "batch_1")
    assert batch["amount_mix"]["value"] == pytest.approx(0.29) and "over" not in batch
    assert by_name(found)["largest"]["value"] == pytest.approx(0.29)


def test_the_most_that_a_count_adds_for_the_scale_is_what_each_mix_alone_lacks():
    """By hand: of 100 g of epoxy at least, putty with 38 % of filler is 138 g; 50 and 20 g are wanted."""
    mixing = SimpleNamespace(least=0.1, filler=0.38)
    for wanted, lacks in (((0.05, 0.02), 0.088 + 0.08), ((0.0, 0.02), 0.08), ((0.2, 0.15), 0.0)):
        work = SimpleNamespace(mixing=mixing, needed=lambda first, last, wanted=wanted: wanted)
        assert smallest_mix.surplus_at_most(work, SimpleNamespace(first=0, last=1)) == pytest.approx(lacks)


def test_what_is_mixed_only_because_the_scale_holds_no_less_is_told_as_surplus():
    """10 g of putty without filler and 5 g of wet-out in one mix of 120 g: 110 onto the tray, 105 of it surplus."""
    piece = [{"name": "x", "length": "0.1", "putty": "100", "wet": "50"}]
    found = by_name(answered(pieces=piece, smallest="120", one_mix="sound"))
    assert found["amount_mix"]["text"].startswith("120 g")
    assert "Put 110 g onto the tray, 105 g of it surplus." in found["amount_mix"]["rough"]
    assert found["over"]["text"] == "105 g" and found["over"]["rank"] == "more"
    assert found["over"]["rough"] == "no mix below 120 g can be measured accurately"
    assert found["surplus"]["rough"].startswith("no mix below 120 g can be measured accurately. "
                                                "Use a finer scale, pumps or")
    assert found["surplus"]["rank"] == "beside"
    enough = by_name(answered(pieces=piece, smallest="0", one_mix="sound"))
    assert "over" not in enough and "surplus" not in str(enough)


def test_a_largest_mix_below_the_smallest_honest_one_is_named_as_the_cause():
    """A piece of 10 and 5 g by a scale that holds 120 g: 110 g is too little for it, not too late."""
    piece = [{"name": "x", "length": "0.1", "putty": "100", "wet": "50"}]
    found = by_name(answered(pieces=piece, smallest="120", one_mix="sound", most="110", long="cut"))
    assert found["no_plan"]["text"] == (
        "x cannot be laid: no mix below 120 g can be measured accurately, but the largest wanted is 110 g.")
    assert found["change"]["text"] == "Use a finer scale, pumps or syringes, or a larger mix."
    assert "batches" in by_name(answered(pieces=piece, smallest="120", one_mix="sound", most="120"))


def test_a_piece_that_takes_more_than_the_largest_mix_says_how_much():
    """3 m of 100 g/m are 300 g of putty; whole, in mixes of 210 g, it cannot be."""
    piece = [{"name": "x", "length": "3", "putty": "100", "wet": "50"}]
    found = by_name(answered(pieces=piece, most="210"))
    assert found["no_plan"]["text"] == "x cannot be laid: it needs a mix of 300 g, but the largest wanted is 210 g."
    assert found["change"]["text"].startswith("Cut it at a bulkhead")
    assert by_name(answered(pieces=piece, most="210", long="cut"))["batches"]["value"] == 2


def test_one_mix_is_left_alone_where_the_kept_part_would_not_survive():
    """One mix: peel ply at 6 + 6 L since the first contact; at L = 4 that is 30, and 0.8 x 35 = 28 is too short for it.

    Two mixes: 3 + 3.5 L = 17 since theirs.
    """
    found = of_part(answered(pieces=HAND["pieces"][:4], smallest="250", one_mix="sound", film="35"), "batch_1")
    assert "amount_mix" not in found and found["amount_wet"]["value"] == pytest.approx(0.25)


def test_a_piece_that_is_too_long_is_cut_with_an_overlap():
    """A 10 m seam at 25 degC: 9 + 5 L <= 40 allows 6.2 m, so two parts of (10 + 0.05) / 2 m; whole, there is no plan.

    The bag: 6 + 0.5 L within 0.8 x 40 / sqrt(L x 20 / 100) with a lean cove of 20 g/m.
    """
    long = [{"name": "Keel", "length": "10", "putty": "20", "wet": "50"}]
    cut = answered(pieces=long, long="cut")
    lines = by_name(cut)
    assert lines["batches"]["value"] == 2
    assert "Cut Keel into 2" in lines["cut"]["text"]
    assert lines["batch_1"]["value"] == lines["batch_2"]["value"] == pytest.approx(5.025)
    whole = by_name(answered(pieces=long))
    assert "Keel cannot be laid in time: 19 min too late for the soft cove" in whole["no_plan"]["text"]  # 59 - 40
    assert "cut_it" in whole and "batches" not in whole


def test_what_holds_of_several_batches_or_pieces_is_told_once():
    """Strips cut alike are one line with their names, and the surplus of all batches is one line with its reason."""
    found = answered(pieces=[dict(piece, length="20") for piece in TAPE], long="cut", overlap="50", smallest="1500")
    cuts = [row["text"] for row in found["lines"] if row["name"] == "cut"]
    assert cuts == ["Cut Strip 1, Strip 2, Strip 3, Strip 4 and 2 more each into 2, tape overlap 50 mm."]
    overs = [row["value"] for row in found["lines"] if row["name"] == "over"]
    assert len(overs) > 2 and by_name(found)["surplus"]["value"] == pytest.approx(sum(overs))
    assert len([row for row in found["lines"] if "tie holes" in row["rough"]]) == 1


def test_a_mixing_time_beyond_every_window_is_said_in_words():
    found = by_name(answered(long="cut", mix_putty="60"))
    assert found["no_plan"]["rank"] == "warn" and "batches" not in found


def test_amounts_follow_the_label_and_the_filler():
    """600 g of putty, 50 g filler to 100 g of epoxy: 400 g of epoxy at 100 : 30, 307.7 and 92.3 g; 200 g of filler."""
    found = of_part(answered(filler="50"), "batch_1")["amount_putty"]
    assert found["value"] == pytest.approx(0.4)
    assert found["text"] == "400 g: 308 g resin + 92.3 g hardener"
    assert "200 g of filler" in found["rough"]


def test_a_novice_and_a_standing_seam_take_longer():
    """Remembered factors 0.5 and 0.7 on the rates: the times go with 2 and 1 / 0.7."""

    def planned(typed):
        values, errors = inputs.read(INPUTS, typed)
        assert not errors
        return Plan(values)

    for more, factor in (
        ({"hand": "novice"}, 2),
        ({"pieces": [dict(p, position="vertical") for p in HAND["pieces"]]}, 1 / 0.7),
    ):
        plain = dict([(k, v) for k, v in HAND.items() if not k.endswith("_rate")], soft="400", film="400", exponent="0")
        one = planned(dict(plain, system=dict(HAND["system"], pot_time="400")))
        two = planned(dict(plain, system=dict(HAND["system"], pot_time="400"), **more))
        [(_, [a], _)], [(_, [b], _)] = one.crews, two.crews
        assert b.covered - 9 * 60 == pytest.approx(factor * (a.covered - 9 * 60))


def test_remembered_figures_lie_in_their_own_ranges():
    for _, _, value, least, most, _ in rates.RATES + rates.MIXING:
        assert least <= value <= most
    for _, value, least, most, _ in pot_life.WINDOWS:
        assert least <= value <= most


def test_the_quick_rule_halves_for_eight_times_the_mass_and_for_ten_degrees():
    """No outside source: the exponent is from memory, the halving common practice. The code is held to that rule."""
    assert pot_time(0.8, 298.15, 1800, 0.1, 298.15) == pytest.approx(900)
    assert pot_time(0.1, 308.15, 1800, 0.1, 298.15) == pytest.approx(900)
    assert pot_time(0.2, 293.15, 1800, 0.1, 298.15, 0.2, 1.8) == pytest.approx(1800 * 2**-0.2 * 1.8**0.5)


def test_ageing_over_a_profile_is_the_integral_of_the_rate(outside):
    """scipy.integrate.quad on generated profiles, flat pieces and steps among them; span is its inverse."""
    rng = Random(5)
    for day in range(60):
        times = sorted(rng.sample(range(0, 80000, 600), 4))
        points = tuple([(float(t), 273.15 + rng.choice((12, 18, 18, 25, 31))) for t in times])
        doubling = rng.choice((1.0, 1.8, 2.0, 2.3))
        profile = Profile(points, doubling)
        start, span = rng.uniform(-5000, 80000), rng.uniform(60, 20000)
        wanted, _ = quad(
            lambda t, p=profile, d=doubling: d ** ((p.at(t) - 298.15) / 10),
            start,
            start + span,
            epsrel=1e-11,
            points=[t for t in times if start < t < start + span] or None,
            limit=200,
        )
        assert profile.age(start, span) == pytest.approx(wanted, rel=1e-8)
        if day < 6:
            outside.solved(f"plan age of day {day + 1}", "scipy.integrate.quad (library), the rate over the day",
                    wanted,
                    profile.age(start, span), rel=1e-8)
        assert profile.span(start, wanted) == pytest.approx(span, rel=1e-7)


@pytest.mark.parametrize("start", [5, 7, 9.5, 11.9, 15, 20, 23])
@pytest.mark.parametrize("minutes", [5, 90, 400])
def test_the_hours_ahead_are_what_each_of_them_is_alone(start, minutes):
    """`ahead` is age, span and pace in one go; scipy's quad is what `age` is checked against."""
    hours = ((7, 14), (12, 28), (14, 28), (16, 30), (21, 18))
    day = Profile(tuple((hour * 3600.0, degrees + 273.15) for hour, degrees in hours), 2.0)
    begin, age = start * 3600.0, minutes * 60.0
    span, cold, hot, gained = day.ahead(begin, age, 1.4)
    assert span == pytest.approx(day.span(begin, age), rel=1e-9)
    for time in (0.0, 60.0, 0.5 * span, span, 1.4 * span, 5 * 3600.0):
        assert gained(time) == pytest.approx(day.age(begin, time), rel=1e-9, abs=1e-6)
    paces = [day.pace(begin + 1.4 * span * part / 50) for part in range(51)]
    assert cold <= min(paces) * (1 + 1e-9) and hot >= max(paces) * (1 - 1e-9)
    low, high = day.between(begin, begin + 1.4 * span)
    assert (cold, hot) == pytest.approx((day.pace_at(low), day.pace_at(high)))
    steps = {after > before for before, after in pairwise(paces) if abs(after - before) > 1e-9}
    assert day.trend(begin, begin + 1.4 * span) == (0 if len(steps) > 1 else 1 if steps != {False} else -1)


def test_a_slow_rise_and_a_flat_day_agree():
    """The limit of the closed form as the rise goes to nought: log and exponential cancel."""
    flat = Profile(((0.0, 293.15),))
    for rise in (1e-3, 1e-5, 1e-7, 1e-9):
        tilted = Profile(((0.0, 293.15), (36000.0, 293.15 + rise)))
        assert tilted.age(0.0, 36000.0) / flat.age(0.0, 36000.0) - 1 == pytest.approx(
            rise * log(2) / 20, rel=1e-3, abs=1e-14
        )


def test_a_cool_morning_saves_batches_and_the_plan_says_start_earlier():
    points = [
        {"at": "5:00", "temperature": "15"},
        {"at": "8:00", "temperature": "30"},
        {"at": "20:00", "temperature": "35"},
    ]
    early = by_name(answered(temperature_is="points", points=points, start="5:00"))
    late = by_name(answered(temperature_is="points", points=points, start="8:00"))
    assert early["batches"]["value"] < late["batches"]["value"]
    assert "helps_earlier" in late


def test_clock_times_are_read_as_people_write_them():
    for text, hours in (
        ("8", 8),
        ("8:30", 8.5),
        ("08.30", 8.5),
        ("8h30", 8.5),
        ("12 am", 0),
        ("12:30 pm", 12.5),
        ("1:15 PM", 13.25),
        ("23:59", 23 + 59 / 60),
        ("8 a.m.", 8),
    ):
        assert clock_time(text) == pytest.approx(hours * 3600), text
    for text in ("", "24:00", "8:60", "13 pm", "0 am", "eight", "-1", "8:5:1", "٨:٣٠", "1e1"):
        assert clock_time(text) is None, text


def test_clock_times_come_back_through_text_on_both_clocks():
    for minute in range(0, 1440, 7):
        for hours in ("24", "12"):
            assert clock_time(said(clock_said(minute * 60.0, hours), reader())) == minute * 60
            assert clock_time(said(clock_said(minute * 60.0 + 59, hours, DOWN), reader())) == minute * 60
            assert clock_time(said(clock_said(minute * 60.0 - 59, hours, UP), reader())) == minute * 60


def test_work_goes_on_past_midnight():
    found = by_name(answered(start="23:40"))
    assert found["end"]["text"] == "00:25 next day"
    points = [{"at": "22:00", "temperature": "25"}, {"at": "2:00", "temperature": "25"}]
    again = by_name(answered(start="23:40", temperature_is="points", points=points))
    assert again["end"]["value"] == found["end"]["value"]
    assert by_name(answered(start="23:40", hours="12"))["end"]["text"] == "12:25 am next day"


@pytest.mark.parametrize("people", ["1", "2"])
def test_one_moment_is_told_by_one_time_and_never_before_it_is(people):
    """A batch ends with its last step and begins with its first, wherever that is told; steps follow each other."""
    found = answered(people=people, tool_rate="0.7", roll_rate="1.3", peel_rate="0.9", mix_wet="2.3")
    lines, latest = by_name(found), ""
    for number in range(1, lines["batches"]["value"] + 1):
        told = of_part(found, "batch_" + str(number))
        steps = [row for name, row in told.items() if name.startswith("step_")]
        times = [row["label"].split(" to ") for row in steps]
        span = told["batch_" + str(number)]["text"].partition(" · ")[0].split(" to ")
        assert span == [min(times)[0], times[-1][1]]
        assert all(clock_time(end) >= row["value"] - 1e-3 for (_, end), row in zip(times, steps, strict=True))
        latest = max(latest, span[1])
    assert any(row["value"] % 60 > 1 for name, row in lines.items() if name.startswith("step_"))  # else nothing is seen
    assert lines["end"]["text"] == latest
    start = of_part(found, "batch_1")["batch_1"]["text"].partition(" to ")[0]
    assert ["planned " + start] == [lead["label"][-len("planned " + start):] for lead in found["leads"]
                                    if lead["screen"] == "clock"]


def test_what_is_in_time_is_told_no_later_than_its_limit():
    """Moments are rounded up and limits down, yet a batch never contradicts itself; steps stay in their order."""
    rng, near = Random(7), 0
    for day in range(40):
        pace = {key: str(rng.uniform(0.6, 2.4)) for key in ("tool_rate", "roll_rate", "peel_rate", "place_rate")}
        found = answered(people=str(1 + day % 2), temperature=str(rng.uniform(29, 36)), finish="13:00",
                         one_mix=("never", "sound")[day % 3 // 2], **pace)
        for number in range(1, by_name(found)["batches"]["value"] + 1):
            told = of_part(found, "batch_" + str(number))
            steps = {name: row for name, row in told.items() if name.startswith("step_")}
            begun, ended = [{name: clock_time(row["label"].split(" to ")[place]) for name, row in steps.items()}
                            for place in (0, 1)]
            assert all(begun[name] <= ended[name] for name in steps)
            rows = list(steps.values())
            assert all((one["value"] <= two["value"]) <= (ended[one["name"]] <= ended[two["name"]])
                       for one in rows for two in rows)
            assert all(-60 < row["value"] - ended[row["name"]] < 60 for row in rows)
            for limit, step in (("by_pot", "step_place"), ("by_soft", "step_roll"), ("by_film", "step_peel")):
                if steps[step]["value"] <= told[limit]["value"]:
                    assert ended[step] <= clock_time(told[limit]["text"][3:]), (day, number, limit)
                    near += told[limit]["value"] - steps[step]["value"] < 60
            # the limit names its step: with a mix of its own for the tape, that mixing; else the wetting out
            mixed_apart = told["by_tape"]["label"] == "Start mixing the wet-out"
            own = ("step_wet_mix",) if mixed_apart else ("step_wet", "step_roll")
            first = next(begun[name] for name in own if name in steps)
            assert ("step_wet_mix" in steps) == (own == ("step_wet_mix",))
            assert first <= clock_time(told["by_tape"]["text"][3:])
            if "latest" in told:
                assert min(begun.values()) <= clock_time(told["latest"]["text"])
    assert near > 5  # else nothing is seen


def test_a_late_step_shifts_what_is_left():
    """Three batches of 2 m at 35 degC, 26 min apart; the first is tooled at 14 instead of 11 min: all else too."""
    found = answered(
        temperature="35",
        done=[{"batch": "1", "step": "mix", "minute": "6"}, {"batch": "1", "step": "clean", "minute": "14"}],
    )
    plain = answered(temperature="35")
    for part in ("batch_1", "batch_2", "batch_3"):
        late = of_part(found, part)["step_roll"]["value"] - of_part(plain, part)["step_roll"]["value"]
        assert late == pytest.approx(180)
    # rolled at 22 min after the first contact, the soft window ends at 20
    missed = of_part(found, "batch_1")["missed_soft"]
    assert missed["value"] == pytest.approx(120) and "Let it harden" in missed["text"] and missed["rank"] == "warn"


def test_an_early_step_brings_the_rest_forward_and_a_done_batch_folds_away():
    done = [
        {"batch": "1", "step": step, "minute": minute}
        for step, minute in (
            ("mix", "6"),
            ("place", "7"),
            ("tool", "9"),
            ("clean", "11"),
            ("wet_mix", "13"),
            ("wet", "15"),
            ("lay", "16"),
            ("roll", "18"),
            ("peel", "19"),
        )
    ]
    found = answered(temperature="35", done=done)
    assert of_part(found, "batch_1")["batch_1"]["label"] == "Batch 1, done"
    assert of_part(found, "batch_2")["step_mix"]["value"] == pytest.approx((480 + 19 + 5 + 6) * 60)


def test_the_first_contact_is_told_back_from_the_end_of_mixing():
    """Mixed at 16 min: the mixing began at 10, and the soft window of 20 min ends at 30."""
    found = answered(temperature="35", done=[{"batch": "1", "step": "mix", "minute": "16"}])
    assert of_part(found, "batch_1")["by_soft"]["value"] == pytest.approx((480 + 30) * 60)


def test_the_tape_must_be_begun_in_time_to_be_rolled():
    """Batches of 2 m at 35 degC: mixing, wetting, laying and rolling take 3 + 5, the soft window ends at 20.

    The mixing begins at 6 + 1 + 4 = 11, in time for 12. The tape on the tray is wet from 14 to 16, in time too, so the
    limit must name the mixing. One mix for both, by a scale that holds 150 g: wet from 11 on, by 20 - 5 = 15.
    """
    found = of_part(answered(temperature="35"), "batch_1")
    assert found["by_tape"]["label"] == "Start mixing the wet-out" and found["by_tape"]["text"] == "by 08:12"
    assert found["step_wet_mix"]["label"] == "08:11 to 08:14" and found["step_wet"]["label"] == "08:14 to 08:16"
    both = of_part(answered(temperature="35", one_mix="sound", smallest="150"), "batch_1")
    assert both["by_tape"]["label"] == "Start wetting out" and both["by_tape"]["text"] == "by 08:15"
    assert both["step_wet"]["label"] == "08:11 to 08:13"
    assert found["by_tape"]["value"] == pytest.approx((480 + 20 - 8) * 60)
    assert found["by_pot"]["value"] == pytest.approx((480 + 16 / 2**0.5) * 60)
    assert found["by_film"]["value"] == pytest.approx((480 + 11 + 24) * 60)


def test_a_batch_that_cannot_be_finished_is_not_started():
    """Three batches end at 8:73 = 9:13. Finished by 9:15 leaves 2 min: the last must begin by 8:54."""
    found = answered(temperature="35", finish="9:15")
    assert of_part(found, "batch_3")["latest"]["value"] == pytest.approx((480 + 75 - 21) * 60)
    late = answered(temperature="35", finish="9:15", done=[{"batch": "1", "step": "mix", "minute": "9"}])
    assert "do_not_start" in of_part(late, "batch_3") and "do_not_start" not in of_part(late, "batch_2")
    assert "latest" not in of_part(late, "batch_3")
    assert "too_late" in by_name(late)


def test_a_batch_that_waited_into_the_heat_is_not_started():
    """Six metres at 25 degC take 39 of 40 minutes: once it is warmer, the same batch misses its soft window."""
    points = [
        {"at": "7:00", "temperature": "25"},
        {"at": "9:00", "temperature": "25"},
        {"at": "12:00", "temperature": "34"},
    ]
    plain = answered(temperature_is="points", points=points)
    latest = of_part(plain, "batch_1")["latest"]["value"]
    assert 8 * 3600 < latest < 9 * 3600 + 1800
    for minute in (0, 240):
        found = of_part(answered(temperature_is="points", points=points, now=str(minute)), "batch_1")
        assert ("do_not_start" in found) == (480 + minute > latest / 60)
    # the latest start is the moment at which the window just holds
    profile = Profile(tuple([(h * 3600.0, 273.15 + t) for h, t in ((7, 25), (9, 25), (12, 34))]))
    assert profile.age(latest, 39 * 60) == pytest.approx(40 * 60, rel=1e-3)


def test_now_pushes_a_step_that_is_not_done():
    """Mixed in time, nothing told since, and it is 20 min now: the bag is empty at the earliest now."""
    found = answered(temperature="35", now="20", done=[{"batch": "1", "step": "mix", "minute": "6"}])
    assert of_part(found, "batch_1")["step_place"]["value"] == pytest.approx(500 * 60)
    assert "missed_pot" in of_part(found, "batch_1")


def test_steps_of_no_batch_are_asked_back():
    found = by_name(answered(done=[{"batch": "9", "step": "mix", "minute": "6"}]))
    assert found["no_batch"]["rank"] == "ask"
    found = by_name(answered(people="2", done=[{"batch": "1", "step": "lay", "minute": "20"}]))
    assert found["no_step"]["rank"] == "ask"


def test_a_hardener_below_its_lowest_temperature_is_warned_of():
    medium = dict(HAND["system"], speed="medium")
    assert "cold" not in by_name(answered(temperature="13", system=medium))
    cold = by_name(answered(temperature="11", system=medium))["cold"]
    assert cold["rank"] == "warn" and "12" in cold["text"] and "from memory" in cold["rough"]
    label = by_name(answered(temperature="11", system=dict(HAND["system"], lowest="8")))
    assert "cold" not in label
    unknown = by_name(answered(temperature="13"))["cold"]  # a label without its speed: by the slowest that it may be
    assert "18" in unknown["text"]


def test_a_profile_with_a_gap_is_asked_back():
    points = [{"at": "7:00", "temperature": "20"}, {"at": "15:00", "temperature": "20.5"}]
    assert "gap" in by_name(answered(temperature_is="points", points=points))
    short = [{"at": "7:00", "temperature": "20"}, {"at": "8:10", "temperature": "20.5"}]
    assert "after_profile" in by_name(answered(temperature_is="points", points=short))


SYSTEM = HAND["system"]


@pytest.mark.parametrize(
    ("typed", "field"),
    [
        ({"temperature": ""}, "temperature"),
        ({"temperature": "warm"}, "temperature"),
        ({"pieces": []}, "pieces"),
        ({"pieces": [{"name": "x", "length": "0", "putty": "50", "wet": "40"}]}, "pieces.0.length"),
        ({"pieces": [{"name": "x", "length": "1", "wet": "40"}]}, "pieces.0.putty"),
        ({"pieces": [{"name": "x", "length": "1", "putty": "50", "wet": "-4"}]}, "pieces.0.wet"),
        (
            {"pieces": [{"name": "x", "length": "1", "putty": "50", "wet": "40", "position": "sideways"}]},
            "pieces.0.position",
        ),
        ({"pieces": [{"length": "1", "putty": "5", "wet": "4"}] * 61}, "pieces"),
        ({"people": "7"}, "people"),
        ({"start": "25:00"}, "start"),
        ({"finish": "soon"}, "finish"),
        ({"share": "0"}, "share"),
        ({"tool_rate": "0"}, "tool_rate"),
        ({"system": {"by_weight": "100:30", "pot_mass": "100", "pot_temperature": "25"}}, "system.pot_time"),
        ({"system": {"by_weight": "100:30", "pot_time": "30", "pot_temperature": "25"}}, "system.pot_mass"),
        ({"system": {"by_weight": "100:30", "pot_time": "30", "pot_mass": "100"}}, "system.pot_temperature"),
        ({"system": dict(SYSTEM, by_weight="", by_volume="3:1"), "smallest": ""}, "system.densities"),
        ({"temperature_is": "points", "points": []}, "points"),
        ({"temperature_is": "points", "points": [{"at": "9:00", "temperature": "20"}]}, "points.0.at"),
        ({"temperature_is": "points", "points": [{"at": "7:00"}]}, "points.0.temperature"),
        (
            {
                "temperature_is": "points",
                "points": [{"at": "7:00", "temperature": "20"}, {"at": "7:00", "temperature": "22"}],
            },
            "points.1.at",
        ),
        (
            {
                "temperature_is": "points",
                "points": [
                    {"at": "7:00", "temperature": "20"},
                    {"at": "20:00", "temperature": "22"},
                    {"at": "8:00", "temperature": "22"},
                ],
            },
            "points.2.at",
        ),
        (
            {"done": [{"batch": "1", "step": "mix", "minute": "9"}, {"batch": "1", "step": "place", "minute": "8"}]},
            "done.1.minute",
        ),
        (
            {"done": [{"batch": "1", "step": "mix", "minute": "9"}, {"batch": "1", "step": "mix", "minute": "9"}]},
            "done.1.step",
        ),
        ({"done": [{"batch": "1.5", "step": "mix", "minute": "9"}]}, "done.0.batch"),
    ],
)
def test_bad_input_is_told_at_its_field(typed, field):
    found = moves.answer("plan", dict(HAND, **typed))
    assert field in [error["field"] for error in found["errors"]], found["errors"]
    assert found["lines"] == [] and found["figures"] == []
    assert all(error["message"][0].isupper() and "None" not in error["message"] for error in found["errors"])


def test_the_figure_shows_each_batch_with_what_the_lines_say():
    found = answered(temperature="35")
    [figure] = found["figures"]
    assert [s["text"] for s in figure["shapes"] if s["role"] == "label"] == ["1", "2", "3"]
    assert figure["told"].startswith("batch 1 from 08:00 to 08:21; batch 2 from 08:26")
    for shape in figure["shapes"]:
        for x, y in shape["points"]:
            assert 0 <= x <= figure["width"] and 0 <= y <= figure["height"]
    bars = [s for s in figure["shapes"] if s["kind"] == "area" and s["role"] == "putty"]
    assert len(bars) == 3 + 1  # place, tool and clean in one bar a batch; and one in the legend


def test_a_whole_hull_at_once_is_asked_back_and_told_briefly():
    many = [{"name": "p", "length": "3", "putty": "60", "wet": "50"}] * 60
    found = answered(pieces=many, temperature="30", long="cut")
    assert by_name(found)["long_day"]["rank"] == "ask"
    assert by_name(found)["batches"]["value"] == 60
    assert len(found["lines"]) < 500 and "step_mix" in of_part(found, "batch_20")
    assert "batch_60" in by_name(found) and "step_mix" not in of_part(found, "batch_60")


def test_no_line_is_too_long_for_a_narrow_screen():
    for people in ("1", "2", "3", "4"):
        for row in answered(people=people, temperature="33")["lines"]:
            assert len(row["label"]) <= 32, row["label"]


def test_every_input_of_the_plan_has_a_default_or_is_asked():
    assert {item.name for item in INPUTS if item.kind == "number" and item.default is None and not item.optional} == {
        "temperature"
    }


def test_the_plan_leads_to_the_next_pour_with_the_amount_on_it():
    """What is filled in opens Pour on the same parts that the batch tells."""
    found = answered(filler="50", temperature="35", done=[{"batch": "1", "step": "peel", "minute": "30"}])
    assert [lead["label"] for lead in found["leads"]] == [
        "Start the day", "Pour batch 2: Putty", "Pour batch 2: Wet-out", "Start the clock of batch 2, planned 08:35"]
    told_here = of_part(found, "batch_2")["amount_putty"]["text"]
    pour = moves.screen("pour", links.tree([tuple(pair) for pair in found["leads"][1]["pairs"]]))
    answers = dict(pour["answers"])
    parts = {row["name"]: row["text"] for row in answers["ratio"]["lines"]}
    assert all(parts[name].split(" ·")[0] in told_here for name in ("part_a", "part_b"))


def test_a_plan_that_cannot_be_names_the_piece_that_stops_it():
    """The first piece is cut in several, which moved the place of the one that cannot be laid at all."""
    pieces = [{"name": "Long keel", "length": "9", "putty": "100", "wet": "50"},
              {"name": "Chine", "length": "1", "putty": "100", "wet": "50"},
              {"name": "Thick butt", "length": "1", "putty": "5000", "wet": "5000"}]
    found = by_name(answered(pieces=pieces, long="cut", most="200", left_putty="10"))
    assert found["no_plan"]["text"].startswith("Thick butt cannot be laid")


def test_what_is_laid_ready_is_the_plans_own_count():
    found = answered(people="2")
    rows = by_name(found)
    batches = rows["batches"]["value"]
    cups = sum(name.startswith("amount_") for name in [row["name"] for row in found["lines"]])
    bags = "1 bag" if batches == 1 else f"{batches} bags"
    assert rows["ready"]["text"] == f"{cups} cups, {bags}, {2 * (batches + 1)} pairs of gloves"


TAPE = [{"name": "Strip " + str(k + 1), "length": "1", "putty": "0", "wet": "50"} for k in range(6)]


def test_tape_alone_checked_by_hand():
    """Six strips of 1 m by the same rules: mixed in 3, w + d + r = 1 + 0.5 + 1, y = 1 min/m: peel ply at 3 + 3.5 L.

    The cup: 3 within 0.8 x 40 / sqrt(3), 300 g in it: 18.47, 15.47 left. The film: 24 within 48, 24 left.
    """
    found = answered(pieces=TAPE)
    lines, batch = by_name(found), of_part(found, "batch_1")
    assert lines["batches"]["value"] == 1
    assert lines["end"]["text"] == "08:24"
    assert lines["slack"]["value"] == pytest.approx(60 * (32 / 3**0.5 - 3))
    assert lines["largest"]["value"] == pytest.approx(0.3)
    assert lines["binds"]["text"].startswith("the wet-out resin in its cup")
    assert [name for name in batch if name.startswith("step_")] == ["step_wet_mix", "step_wet", "step_lay", "step_roll",
                                                                   "step_peel"]
    assert [name for name in batch if name.startswith("amount_")] == ["amount_wet"]
    assert [batch["by_cup"]["text"], batch["by_film"]["text"]] == ["by 08:18", "by 08:48"]
    assert "by_pot" not in batch and "by_soft" not in batch and "by_tape" not in batch
    assert lines["ready"]["text"] == "1 cup, 2 pairs of gloves"
    assert not [row for row in found["lines"] if "bag" in row["text"] + row["rough"].replace("one bag or cup", "")
                or "filler" in row["rough"] or "cove" in row["text"]]


def test_the_film_ends_batches_of_tape_alone():
    """Peel ply 3 + 3.5 L within 0.8 x 25 = 20: L <= 4.86, two batches."""
    found = by_name(answered(pieces=TAPE, film="25"))
    assert found["batches"]["value"] == 2
    assert found["binds"]["text"].startswith("the wet-out resin, in ")


def test_a_cup_that_does_not_last_its_mixing_is_named():
    """A pot life of 4 min at 100 g: 0.8 x 4 / sqrt(0.5) = 4.53 with 50 g, less than 5 to mix it."""
    found = by_name(answered(pieces=TAPE[:1], mix_wet="5", system=dict(HAND["system"], pot_time="4"), film="60"))
    assert found["no_plan"]["text"].endswith("the wet-out resin in its cup.")


def test_putty_alone_checked_by_hand():
    """Six coves without tape: 6 + 0.5 L in the bag, tooled and clean at 6 + 2.5 L = 21 within 0.8 x 50 = 40."""
    pieces = [dict(piece, wet="0") for piece in HAND["pieces"]]
    found = answered(pieces=pieces)
    lines, batch = by_name(found), of_part(found, "batch_1")
    assert lines["end"]["text"] == "08:21" and lines["end"]["label"] == "Last edges clean"
    assert lines["slack"]["value"] == pytest.approx(60 * (32 / 6**0.5 - 9))
    assert [name for name in batch if name.startswith("step_")] == ["step_mix", "step_place", "step_tool", "step_clean"]
    assert batch["by_soft"]["label"] == "Cove tooled while it is soft" and "by_film" not in batch
    short = by_name(answered(pieces=pieces, soft="20"))  # 6 + 2.5 L within 16: L <= 4
    assert short["batches"]["value"] == 2


def test_a_day_of_both_counts_what_each_batch_takes():
    """At 35 degC, every window half: coves of 1 m with tape 9 + 5 L within 20: two and no strip with them."""
    pieces = HAND["pieces"][:2] + TAPE[:3]
    found = answered(pieces=pieces, temperature="35")
    assert by_name(found)["batches"]["value"] == 2
    assert by_name(found)["ready"]["text"] == "3 cups, 1 bag, 3 pairs of gloves"
    assert "step_mix" in of_part(found, "batch_1") and "step_mix" not in of_part(found, "batch_2")


@pytest.mark.parametrize("people", ["1", "2", "3"])
def test_a_day_of_tape_alone_is_told_step_by_step_and_teaches_the_rates(people):
    """Each tap tells the next step; a first contact is told back from the end of mixing; the last goes to the log."""
    done, minute = [], 10
    while True:
        found = answered(pieces=TAPE[:2], people=people, running="yes", clock=f"8:{minute}", done=done)
        taps = [lead for lead in found["leads"] if lead["screen"] == "plan"]
        if not taps:
            break
        pairs = dict(taps[0]["pairs"])
        row = {key.rpartition(".")[2]: text for key, text in pairs.items() if key.startswith("done.")}
        if not done:
            assert row["step"] == "wet_mix"
        elif len(done) == 1:
            assert of_part(found, "batch_1")["step_wet_mix"]["text" if people == "1" else "rough"]
            assert of_part(found, "batch_1")["by_cup"]["value"] == pytest.approx(
                (480 + 10 - 3 + 0.8 * 40) * 60, abs=1)
        last, done, minute = pairs, [*done, row], minute + 5
    assert "missed" not in "".join(row["name"] for row in found["lines"])
    assert last["log.laid"] == "2.00 m"
    assert "log.roll" in last and "log.place" not in last and "log.tool" not in last


def test_the_clock_of_tape_alone_runs_for_the_wet_film():
    found = answered(pieces=TAPE)
    pours = [lead for lead in found["leads"] if lead["screen"] == "pour"]
    assert [lead["label"] for lead in pours] == ["Pour batch 1: Wet-out"]
    clock = dict(next(lead for lead in found["leads"] if lead["screen"] == "clock")["pairs"])
    assert (clock["pot.container"], clock["pot.duration"], clock["filler"]) == ("film", "48", "0.0 %")
    answer = moves.answer("heat", links.tree([pair for pair in clock.items() if pair[0][:4] not in ("pot.", "timi")]))
    assert not answer["errors"], answer["errors"]


def test_the_timeline_of_tape_alone_says_what_its_mark_is():
    texts = [text for shape in answered(pieces=TAPE)["figures"][0]["shapes"] for text in (shape.get("text"),)]
    assert "wet tape stiff" in texts and "cove hard" not in texts


def test_neither_putty_nor_tape_is_said_at_the_field():
    error, = moves.answer("plan", dict(HAND, pieces=[HAND["pieces"][0], dict(TAPE[0], wet="0")]))["errors"]
    assert error["field"] == "pieces.1.putty" and "Type one, or remove the piece" in error["message"]


def test_before_its_start_a_day_tells_its_first_step():
    """Somebody who begins at 8:50 what was planned for 9:00 tells it then: it counts from the real mixing."""
    early = answered(start="9:00", running="yes", clock="8:50")
    tap, = [lead for lead in early["leads"] if lead["screen"] == "plan"]
    assert tap["label"] == "Batch 1: Putty mixed and bagged"
    told = {key.rpartition(".")[2]: text for key, text in tap["pairs"]}
    assert told == {"batch": "1", "step": "mix", "minute": "-10"}
    begun = answered(start="9:00", running="yes", clock="8:51", done=[told])
    assert of_part(begun, "batch_1")["batch_1"]["value"] == 6
    assert of_part(begun, "batch_1")["by_soft"]["value"] == pytest.approx((540 - 16 + 40) * 60)
    tap, = [lead for lead in begun["leads"] if lead["screen"] == "plan"]
    assert tap["label"] == "Batch 1: Bag empty"
    plain = answered(start="9:00", running="yes", clock="8:50")
    assert of_part(plain, "batch_1")["step_mix"]["value"] == (540 + 6) * 60  # nothing told, nothing moved


def test_the_clock_before_a_day_of_which_more_is_told_is_another_days():
    """Yesterday's day was not finished: no tap tells a step of it four hours before it began."""
    done = [{"batch": "1", "step": "mix", "minute": "6"}]
    found = answered(start="9:00", running="yes", clock="5:00", done=done)
    assert [lead for lead in found["leads"] if lead["screen"] == "plan"] == []

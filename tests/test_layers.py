"""Coats and cloth of a day: their pots by film, cup and scale, and each window on the clock, over midnight and days."""
from datetime import datetime, timedelta
from itertools import pairwise

import pytest
from covemix.server import examples
from covemix.shared.catalogue.cure_times import ENERGY, STAGES
from covemix.shared.catalogue.rates import POSITIONS
from covemix.shared.catalogue.surfaces import BY_KEY
from covemix.shared.door import moves, saved_file
from covemix.shared.equations.kinetics import GAS_CONSTANT
from covemix.shared.forms import inputs, links
from covemix.shared.forms.clock_times import clock_said
from covemix.shared.plan import layers, plan
from icalendar import Calendar
from scipy.integrate import quad
from scipy.optimize import brentq

HOUR, DAY = 3600.0, 86400.0
DECK = {"temperature": "20", "start": "8:00", "finish": "18:00", "surfaces.0.name": "Deck", "surfaces.0.area": "6.5"}
BOTTOM = {"surfaces.1.name": "Bottom", "surfaces.1.work": "sheathe", "surfaces.1.wet": "300", "surfaces.1.area": "3",
          "surfaces.1.coats": "2"}
SEAM = {"pieces.0.length": "3", "pieces.0.putty": "90", "pieces.0.wet": "60"}
TYPED_DAY = {"temperature_is": "points", "points.0.at": "6:00", "points.0.temperature": "12",
             "points.1.at": "14:00", "points.1.temperature": "24", "points.2.at": "22:00",
             "points.2.temperature": "14"}


def pairs(typed):
    return [[name, text] for name, text in typed.items()]


def values_of(typed):
    values, errors = inputs.read(plan.INPUTS, links.tree(pairs(typed)))
    assert errors == []
    assert inputs.checked(plan.CHECKS, values) == []
    return values


def laid(typed):
    return plan.reckon(values_of(typed)).layers


def answered(typed, language="en"):
    found = moves.answer("plan", links.tree(pairs(typed)), None, language)
    assert found["errors"] == [], found["errors"]
    return {line["name"]: line for line in found["lines"]}


def by_scipy(stage, start, temperature, closes):
    """When a stage is reached [s after the start] by scipy's integral of the Arrhenius rate: the latest of the band of
    activation energies for what opens, the earliest for what closes. Hours of a medium hardener."""
    hours = {row[0]: row[2][1] for row in STAGES}[stage]
    times = []
    for energy in ENERGY[:3]:
        def rate(time, energy=energy):
            return 2.718281828459045 ** (-energy / GAS_CONSTANT * (1 / temperature(start + time) - 1 / 298.15))
        aim = hours * HOUR
        if closes:  # its hours hold at 20 degC
            aim *= 2.718281828459045 ** (-energy / GAS_CONSTANT * (1 / 293.15 - 1 / 298.15))
        steps = [half * HOUR / 2 for half in range(1, 241)]
        total, before, found = 0.0, 0.0, None
        for step in steps:
            more = quad(rate, before, step)[0]
            if total + more >= aim:
                left = aim - total
                found = brentq(lambda until, b=before, r=rate, a=left: quad(r, b, until)[0] - a, before, step)
                break
            total, before = total + more, step
        times.append(found)
    return min(times) if closes else max(times)


def over(points):
    def at(time):
        before = points[0]
        for point in points:
            if time < point[0]:
                if point is points[0]:
                    return point[1]
                share = (time - before[0]) / (point[0] - before[0])
                return before[1] + share * (point[1] - before[1])
            before = point
        return before[1]
    return at


@pytest.mark.parametrize(("told", "typed", "temperature"), [
    ("20 degC", {}, lambda time: 293.15),
    ("14 degC", {"temperature": "14"}, lambda time: 287.15),
    ("12 to 24 degC", TYPED_DAY, over([(6 * HOUR, 285.15), (14 * HOUR, 297.15), (22 * HOUR, 287.15)])),
])
def test_the_window_of_the_next_coat_by_scipy(outside, told, typed, temperature):
    one = laid(DECK | typed)[0]
    end, begun = one.end, one.starts[0]
    for name, got, start, closes in (("recoat_opens", one.opens - end, end, False),
                                     ("recoat_closes", one.closes - begun, begun, True),
                                     ("sand", one.sands - end, end, False)):
        outside.solved(f"plan {told}, {name} after a coat", "scipy.integrate.quad, scipy.optimize.brentq",
                       by_scipy(name, start, temperature, closes), got, rel=0.002)


def test_the_next_coat_opens_with_the_last_drop_and_closes_with_the_first():
    first, second, third = laid(DECK)
    assert first.opens > first.end and second.starts[0] == pytest.approx(first.opens)
    assert second.end <= first.closes and second.latest == pytest.approx(18 * HOUR - second.pots.lasts)
    # its own window opens after work and closes at night: it is washed and sanded on the third day
    assert second.opens > 18 * HOUR and second.closes < DAY + 8 * HOUR
    assert third.latest is None and third.starts[0] == 2 * DAY + 8 * HOUR > second.sands
    assert third.opens is third.closes is third.sands is None
    whole = laid(DECK | {"finish": "23:00"})[2]
    assert whole.latest is not None and whole.starts[0] < DAY


def test_pots_are_bound_by_film_and_by_the_largest_mix():
    values = values_of(DECK | {"smallest": "10 g"})
    made = plan.planned(values)
    row = values["surfaces"][0]
    pace = BY_KEY["coat_pace"].value
    film = made.windows.film * made.windows.share / made.profile.pace_at(293.15)
    for area, most in ((40.0, 5.0), (6.5, 0.2), (1.0, 0.3)):
        found = layers.pots(dict(values, most=most), made, dict(row, area=area), 1)
        assert values["mix_wet"] + area / found.count * pace <= film * (1 + 1e-9)
        assert found.mass <= most * (1 + 1e-9)
        laid_in_all = row["first"] * area * (1 + values["spare"]) + found.count * values["left_wet"]
        assert found.mass * found.count == pytest.approx(laid_in_all)
        fewer = found.count - 1
        if fewer:  # one pot less breaks one of the two
            assert (values["mix_wet"] + area / fewer * pace > film
                    or (laid_in_all - values["left_wet"]) / fewer > most)
    by_film = layers.pots(dict(values, most=5.0), made, dict(row, area=40.0), 1)
    by_mass = layers.pots(dict(values, most=0.2), made, row, 1)
    assert by_film.count > 1 and by_mass.count > 3


@pytest.mark.parametrize(("more", "times"), [
    ({"people": "2"}, 1 / 2), ({"surfaces.0.position": "overhead"}, 1 / POSITIONS[2][2]), ({"hand": "novice"}, 2),
    ({"coat_pace": "6 min"}, 6 * 60 / BY_KEY["coat_pace"].value)])
def test_hands_place_and_pace_change_how_long_a_coat_takes(more, times):
    one, other = laid(DECK)[0].pots, laid(DECK | more)[0].pots
    mixed = [pot.count * 180 + (pot.count - 1) * 300 for pot in (one, other)]  # 3 min to mix, 5 min between pots
    assert other.lasts - mixed[1] == pytest.approx((one.lasts - mixed[0]) * times)


def test_cloth_is_wetted_out_at_its_own_pace_and_filled_as_a_coat():
    values = values_of(DECK | BOTTOM | {"surfaces.1.layers": "2"})
    made, row = plan.planned(values), values["surfaces"][1]
    cloth, fill = [layers.pots(values, made, row, number) for number in (1, 2)]
    assert cloth.lasts - cloth.count * 180 - (cloth.count - 1) * 300 == pytest.approx(
        3 * 2 * BY_KEY["wet_pace"].value)
    assert (fill.count, fill.lasts) == (1, pytest.approx(180 + 3 * BY_KEY["coat_pace"].value))
    assert fill.mass == pytest.approx(3 * 0.08 * (1 + values["spare"]) + values["left_wet"])
    lines = answered(DECK | BOTTOM)
    assert lines["layer_2"]["label"] == "Bottom, cloth"
    assert lines["layer_4"]["label"] == "Bottom, coat 2 of 2"


def test_no_two_coats_overlap_and_each_face_keeps_its_order():
    found = laid(DECK | BOTTOM | SEAM | {"surfaces.2.area": "2", "surfaces.2.coats": "4", "finish": "21:00"})
    assert len(found) == 3 + 2 + 4
    for one, following in pairwise(found):
        assert following.starts[0] >= one.end + 5 * 60 - 1e-6
    for place in range(3):
        own = [one for one in found if one.row["place"] == place]
        assert [one.number for one in own] == list(range(1, len(own) + 1))
        for before, after in pairwise(own):
            assert after.starts[0] >= (before.sands if after.latest is None else before.opens) - 1e-6
            assert after.latest is None or after.end <= before.closes + 1e-6
    for one in found:
        assert one.starts[0] % DAY >= 8 * HOUR - 1e-6 and (one.end - 1e-6) % DAY <= 21 * HOUR


def test_coats_come_after_the_seams():
    found = plan.reckon(values_of(DECK | SEAM))
    assert found.summary.count == 2
    assert found.layers[0].starts[0] == pytest.approx(found.summary.end + 5 * 60)
    assert laid(DECK)[0].starts[0] == 8 * HOUR


def test_the_clock_is_told_over_midnight_and_days():
    lines = answered(DECK)
    assert lines["layer_next"]["label"] == "Deck, coat 1 of 3"
    assert "from 14:07" in lines["layer_1"]["rough"] and "22:11 next day" in lines["layer_1"]["rough"]
    assert "04:06 next day" in lines["layer_2"]["rough"] and "on day 3" in lines["layer_2"]["rough"]
    assert "08:00 on day 3" in lines["layer_3"]["text"] and "sand" in lines["layer_3"]["caution"]
    assert "nächster Tag" in answered(DECK, "de")["layer_2"]["rough"]
    later = answered(DECK | {"running": "yes", "clock": "9:00"})
    assert later["layer_next"]["text"] == lines["layer_2"]["text"], "the first is over by nine"


def under_way(today, clock="9:00", **more):
    return DECK | {"running": "yes", "clock": clock, "today": today} | more


def mixed_and_on(mixed, on, face="1", coat="1", at=0):
    rows = {}
    for place, (step, minute) in enumerate((("mix", mixed), ("on", on))):
        rows |= {f"coated.{at + place}.{name}": text for name, text in
                 (("face", face), ("coat", coat), ("step", step), ("minute", str(minute)))}
    return rows


@pytest.mark.parametrize("today", ["2026-11-27", "2026-11-29", "2026-12-30", "2027-02-27", "2028-02-27", "2028-02-28"])
@pytest.mark.parametrize(("language", "told", "names"), [
    ("en", "08:00 on {}", "Monday Tuesday Wednesday Thursday Friday Saturday Sunday"),
    ("de", "08:00 am {}", "Montag Dienstag Mittwoch Donnerstag Freitag Samstag Sonntag")])
def test_a_day_beyond_tomorrow_is_a_weekday(today, language, told, names):
    """By Python's calendar, over ends of months and years and leap days."""
    day = datetime.fromisoformat(today) + timedelta(days=2)
    lines = answered(under_way(today), language)
    assert told.format(names.split()[day.weekday()]) in lines["layer_3"]["text"]
    assert "22:11" in lines["layer_1"]["rough"] and "am" not in lines["layer_1"]["rough"].split("22:11")[1]


def test_no_weekday_where_no_phone_told_the_date():
    bare = answered(DECK)["layer_3"]["text"]
    assert "08:00 on day 3" in bare
    for typed in (DECK | {"today": "2026-11-27", "day": "2026-11-27"}, under_way(""), under_way("2026-02-30"),
                  under_way("2026-11-27", ""), under_way("2026-11-27", **mixed_and_on(0, 60)),
                  under_way("2026-11-27", day="2026-11-28", **mixed_and_on(0, 60))):
        assert not [1 for line in answered(typed).values() for name in ("Monday", "Friday", "Saturday", "Sunday")
                    if name in line["text"] + line["rough"]], typed


def test_past_midnight_the_day_before_is_the_first():
    night = {"start": "20:00", "finish": "23:30"}
    before, after = [answered(under_way(today, clock, **night)) for today, clock in (
        ("2026-11-27", "20:30"), ("2026-11-28", "0:30"))]
    assert "20:00 on Sunday" in before["layer_2"]["text"] and "from 02:07 next day" in before["layer_1"]["rough"]
    assert "20:00 on Sunday" in after["layer_2"]["text"] and "from 02:07 on Saturday" in after["layer_1"]["rough"]
    assert after["layer_1"]["text"].startswith("20:00 on Friday"), "nothing is told by a next day that is today"


def test_far_days_are_counted_for_a_weekday_returns():
    assert clock_said(5 * DAY, dated=(0, 0))[1]["day"] == "clock-weekday.tu"
    assert clock_said(6 * DAY, dated=(0, 0)) == clock_said(6 * DAY)
    assert clock_said(6 * DAY, dated=(0, 1))[1]["day"] == "clock-weekday.we"
    assert clock_said(0.0, dated=(0, 2)) == clock_said(0.0), "two days ago"


def test_a_coat_is_told_by_its_taps_and_the_next_window_goes_by_them():
    plain = laid(DECK)
    late = laid(under_way("2026-11-27", "11:00", day="2026-11-27", **mixed_and_on(65, 150)))
    first, second = late[:2]
    assert first.begun and first.finished and not second.begun
    assert first.starts[0] == 9 * HOUR + 2 * 60 and first.end == 10.5 * HOUR
    assert first.opens - first.end == pytest.approx(plain[0].opens - plain[0].end), "opens by the last drop"
    assert first.closes - first.starts[0] == pytest.approx(plain[0].closes - plain[0].starts[0]), "closes by the first"
    assert second.starts[0] == pytest.approx(first.opens)
    begun = laid(under_way("2026-11-27", "11:00", day="2026-11-27",
                           **{f"coated.0.{name}": text for name, text in (
                               ("face", "1"), ("coat", "1"), ("step", "mix"), ("minute", "65"))}))
    assert begun[0].begun and not begun[0].finished and begun[0].end == 11 * HOUR, "not on before now"
    lines = answered(under_way("2026-11-27", "11:00", day="2026-11-27", **mixed_and_on(65, 150)))
    assert lines["layer_1"]["text"].endswith("done") and lines["layer_next"]["label"] == "Deck, coat 2 of 3"


def test_who_comes_back_too_late_sands_first():
    """The first coat on Friday, and nobody there until Sunday."""
    found = laid(under_way("2026-11-29", "9:30", day="2026-11-27", **mixed_and_on(65, 150)))
    assert found[1].starts[0] == pytest.approx(2 * DAY + 9.5 * HOUR) and found[1].latest is None
    line = answered(under_way("2026-11-29", "9:30", day="2026-11-27", **mixed_and_on(65, 150)))["layer_next"]
    assert "09:30 on Sunday" in line["text"] and "sand" in line["caution"]


def test_taps_alone_lead_through_all_coats():
    """Each tap is a lead of the plan before it; the pours are those of the pots."""
    typed, poured, told, today = DECK | BOTTOM | SEAM, [], [], datetime(2026, 11, 27)
    now = 9 * 60
    for _ in range(60):
        days, minute = divmod(now, 1440)
        typed |= {"today": (today + timedelta(days=days)).date().isoformat(),
                  "clock": f"{minute // 60}:{minute % 60:02}"}
        leads = moves.answer("plan", links.tree(pairs(typed)))["leads"]
        pots = [dict(lead["pairs"])["amount"] for lead in leads if lead["screen"] == "pour"]
        taps = [lead for lead in leads if lead["screen"] == "plan"]
        if not taps:
            break
        if any(name.startswith("coated") for name, _ in taps[0]["pairs"]):
            poured += pots
            told.append(taps[0]["label"])
            layer = next(one for one in laid(typed) if not one.finished)
            assert pots == [f"{layer.pots.mass * 1000:.0f} g"] or abs(
                float(pots[0][:-2]) - layer.pots.mass * 1000) <= 1
            now = max(now, int(layer.starts[0] // 60) + 1 if not layer.begun else 0) + 30
        else:
            now += 10
        typed |= {name: text for name, text in taps[0]["pairs"] if not name.startswith("log.")}
    assert told[:2] == ["Deck, coat 1 of 3: mixed", "Deck, coat 1 of 3: done"]
    assert len(told) == 2 * 5 and all(one.finished for one in laid(typed))
    assert "Bottom, cloth: mixed" in told


@pytest.mark.parametrize("rows", [
    mixed_and_on(60, 50), mixed_and_on(60, 90) | mixed_and_on(80, 120, coat="2", at=2)])
def test_coats_told_out_of_order_are_refused(rows):
    found = moves.answer("plan", links.tree(pairs(under_way("2026-11-27", day="2026-11-27", **rows))))
    assert [error["field"].split(".")[0] for error in found["errors"]] == ["coated"]


def test_without_the_hours_of_a_label_no_next_coat_is_made_up():
    own = {"system.by_weight": "100:30", "system.densities": "1.1:1.0", "system.pot_time": "30 min",
           "system.pot_mass": "100 g", "system.pot_temperature": "25"}
    (one,) = laid(DECK | own)
    assert (one.opens, one.closes, one.sands) == (None, None, None)
    assert "recoat hours" in answered(DECK | own)["layer_1"]["rough"]
    cold = laid(DECK | {"temperature": "6"})
    assert len(cold) == 1 and cold[0].opens is None, "below its lowest temperature it may never hold a coat"


@pytest.mark.parametrize(("typed", "field"), [
    ({"temperature": "20"}, "pieces"), ({"surfaces.0.area": "5000"}, "surfaces.0.area"),
    ({"surfaces.0.work": "sheathe", "surfaces.0.wet": ""}, "surfaces.0.wet"),
    ({"film": "1 min"}, "surfaces.0.area")])
def test_what_cannot_be_coated_is_told_at_its_field(typed, field):
    asked = typed if field == "pieces" else DECK | typed
    found = moves.answer("plan", links.tree(pairs(asked)))
    assert [error["field"] for error in found["errors"]] == [field]


def of_file(name, typed):
    asked = {"file": name, "pairs": pairs(typed), "day": "2026-11-27", "now": 0.0, "decimal": "."}
    return saved_file.filed(asked)["text"]


def test_calendar_and_table_hold_the_same_days():
    typed = DECK | BOTTOM | SEAM
    found = plan.reckon(values_of(typed))
    events = [one for one in Calendar.from_ical(of_file("plan.day.ics", typed)).walk("VEVENT")]
    coats = events[len(found.batches):]
    assert len(coats) == len(found.layers) == 5
    for one, layer in zip(coats, found.layers, strict=True):
        begins = datetime(2026, 11, 27) + timedelta(seconds=layer.starts[0])
        assert abs((one.decoded("dtstart") - begins).total_seconds()) <= 30
    assert "Next coat from" in str(coats[0]["description"]) and str(coats[0]["summary"]) == "Deck, coat 1 of 3"
    assert coats[-1].decoded("dtstart").date().isoformat() == "2026-11-29"
    head, *rows = [row.split(",") for row in of_file("plan.batches.csv", typed).strip("\ufeff").splitlines()]
    assert len(rows) == len(found.batches) + 5
    day, face, coat = [head.index(name) for name in ("Day", "Face", "Coat")]
    assert [row[day] for row in rows] == ["1"] * 6 + ["3"]
    assert (rows[2][face], rows[2][coat], rows[0][face]) == ("Deck", "1", "")


def test_a_boat_hands_its_coats_and_cloth_to_a_plan():
    told = moves.answer("boat", links.tree([["temperature", "18"]]))
    lead = [one for one in told["leads"] if one["screen"] == "plan"][-1]
    values = values_of(dict(lead["pairs"]))
    boat = moves.module("boat")
    given, _ = inputs.read(boat.INPUTS, links.tree([["temperature", "18"]]))
    by_name = {one.row["name"]: one.found for one in boat.reckon(given).surfaces}
    cloth, coats = values["surfaces"]
    of_cloth, of_coats = by_name["Bottom cloth"], by_name["Inside coats"]
    assert cloth["wet"] * cloth["area"] == pytest.approx(of_cloth.wet + of_cloth.drinks, rel=0.01)
    assert cloth["coats"] == of_cloth.fills + 1
    stays = coats["area"] * (coats["first"] + (coats["coats"] - 1) * coats["later"])
    assert stays == pytest.approx(of_coats.on_wood, rel=0.01)
    assert len(plan.reckon(values).layers) == 5
    assert examples.BODIES["plan"]["pieces"], "a plan of seams alone stays what it was"


def test_hours_of_a_label_without_their_temperature_are_told_at_their_field():
    """As the clock tells it; where no coat is planned nobody needs them."""
    label = {"system.by_weight": "100:30", "system.pot_time": "25", "system.pot_mass": "100",
             "system.pot_temperature": "25", "system.speed": "medium", "system.cure_recoat": "6"}
    found = moves.answer("plan", links.tree(pairs({**DECK, **label})))
    assert [error["field"] for error in found["errors"]] == ["system.cure_temperature"]
    found = moves.answer("plan", links.tree(pairs({**SEAM, **label, "temperature": "20"})))
    assert "system.cure_temperature" not in [error["field"] for error in found["errors"]]

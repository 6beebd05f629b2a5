"""Run: the steps of one batch, what is left of its windows, what can still be saved, and what it leaves behind."""
import json
from datetime import UTC, datetime, timedelta

import icalendar
import pytest
from covemix.server.data import data
from covemix.shared.door import handover, moves
from covemix.shared.door.call import call
from covemix.shared.equations.civil_date import civil
from covemix.shared.equations.tape_left import tape_left
from covemix.shared.forms.inputs import checked, read
from covemix.shared.plan import plan, run
from covemix.shared.words.written import reader

SEAM = {"pieces": [{"name": "Keel", "length": "2.4 m", "putty": "57", "wet": "39"}], "temperature": "20",
        "system": "3-1", "scale": "0.1g", "long": "whole", "start": "9:00"}
QUICK = (("pour_putty", 60), ("bag", 400), ("place", 500), ("tool", 640), ("clean", 760), ("pour_wet", 860),
         ("tray", 1000), ("wet.0", 1120), ("lay.0", 1200), ("roll.0", 1400), ("peel", 1520), ("cleanup", 1700))


def typed(ran=(), age=0, **more):
    return {**SEAM, "running": "yes", "clock": "10:00", "ran_age": f"{age} s", "ran_wall": "1700000000",
            "ran": [{"step": name, "at": f"{at} s"} for name, at in ran], **more}


def found(ran=(), age=0, **more):
    values, errors = read(run.INPUTS, typed(ran, age, **more))
    assert not errors and not checked(run.CHECKS, values)
    return run.reckon(values), values


def told(ran=(), age=0, **more):
    got = moves.answer("run", typed(ran, age, **more))
    assert got["errors"] == []
    return got


def line(got, name):
    return next((one for one in got["lines"] if one["name"] == name), None)


def until(name):
    """The taps of a quick run up to a step."""
    names = [one for one, _ in QUICK]
    return QUICK[:names.index(name) + 1]


def test_the_steps_are_those_of_a_seam_in_their_order():
    names = [one["name"] for one in told()["steps"]]
    assert names == ["air", "ready", "prepare", "protect", "pour_putty", "bag", "place", "tool", "clean", "pour_wet",
                     "tray", "wet.0", "lay.0", "roll.0", "peel", "cleanup", "date"]


def test_a_window_is_as_long_as_the_plan_says(outside):
    """The same pot, cove and film: the run counts from the contact what the plan counts from its own start."""
    values, _ = read(moves.module("plan").INPUTS, SEAM)
    screen = {one["window"]: one["usable_time"] for one in data("plan", values, reader())["windows"]}
    batch = plan.planned(values).followed()[0]
    by, begun = dict(batch.deadlines), {"pot": 0.0, "soft": 0.0, "film": batch.laid.wet_start}
    bag = found(until("pour_putty"), 100)[0].windows
    film = found(until("pour_wet"), 900)[0].windows
    for limit, windows in (("pot", bag), ("soft", bag), ("film", film)):
        window = next(one for one in windows if one.limit == limit)
        outside.own(f"run {limit}, from its contact", "plan of the same seam, by when", by[limit] - batch.start
                    - begun[limit], window.by - window.begun, rel=1e-9)
        outside.own(f"run {limit}, as Plan tells it", "plan of the same seam, its table", screen[limit],
                    window.by - window.begun, rel=0.01)
    assert [one.begun for one in bag] == [60.0, 60.0]


def test_the_clock_begins_where_hardener_meets_resin_and_never_later():
    assert line(told(QUICK[:0], 50), "window") is None
    twice = (("pour_putty", 60), ("pour_putty", 300))
    assert found(twice, 400)[0].windows[0].begun == 60.0


def test_the_tightest_window_stands_there_and_ends_with_its_work():
    assert line(told(until("bag"), 410), "window")["label"] == "Bag"
    assert line(told(until("place"), 510), "window")["label"] == "Soft cove"
    assert line(told(until("roll.0"), 1410), "window")["label"] == "Wet film"
    assert line(told(until("peel"), 1530), "window") is None


def test_what_is_left_is_what_passed_taken_off():
    first, later = (line(told(until("bag"), age), "window")["value"] for age in (410, 470))
    assert first - later == pytest.approx(60.0)


def test_a_window_with_little_to_spare_is_a_hurry():
    """Placing 2.4 m takes 2.4 / 2 = 1.2 min. 15 % of it is 11 s, but 2 min are kept spare: plenty from 192 s on."""
    lasts = line(told(until("bag"), 410), "window_lasts")["value"]
    for left, rank in ((72 + 121, "answer"), (72 + 119, "ask"), (72 + 1, "ask"), (72 - 1, "warn")):
        age = 60 + lasts - left
        assert line(told((("pour_putty", 60), ("bag", age)), age), "window")["rank"] == rank, left


def test_a_bag_that_will_not_last_says_what_is_still_saved():
    lasts = line(told(until("bag"), 410), "window_lasts")["value"]
    late = told((("pour_putty", 60), ("bag", lasts + 30)), lasts + 40)
    assert line(late, "window")["rank"] == "warn"
    assert "Place what still flows, then stop" in line(late, "saved")["text"]
    over = told(until("bag"), lasts + 200)
    assert line(over, "window")["value"] == 0
    assert "Never thin it" in line(over, "saved")["text"]


def cove(clean):
    """Taps of a cove that was clean at an age [s]."""
    return (("pour_putty", 60), ("bag", 400), ("place", 500), ("tool", 640), ("clean", clean))


def test_tape_that_does_not_fit_is_cut_here_or_left_or_laid_by_two(outside):
    """By hand: wetting, laying and rolling 2.4 m takes 2.4 / 1.25 + 2.4 / 2 + 2.4 / 0.8 = 6.12 min, mixing 3 min. With
    7 min left after it is clean there are 4 min for tape: 4 / 6.12 x 2.4 = 1.57 m, 1.5 m by tenths."""
    lasts = line(told(until("place"), 510), "window_lasts")["value"]
    clean = 60 + lasts - 420
    got, _ = found(cove(clean), clean)
    outside.worked("run cut here, 7 min left", "arithmetic on the default rates", 1.5, got.cut, absolute=1e-9)
    gate = next(one for one in told(cove(clean), clean)["steps"] if one["name"] == "gate")
    assert (gate["figure"], gate["rank"]) == ("1.5 m", "warn")
    wet, all_wet = (next(one.mass for one in each.steps if one.name == "pour_wet")
                    for each in (got, found(until("clean"), 760)[0]))
    assert wet < all_wet * 0.75  # no resin is mixed for tape that is not laid
    assert [one.length for one in got.steps if one.name == "roll.0"] == [1.5]
    saved = line(told(cove(clean), clean), "saved")
    assert saved is None  # it is planned anew: nothing of it is late
    everything = found((*cove(clean), ("gate", clean)), clean, tape="all")[0]
    assert everything.cut is None and [one.name for one in everything.steps].count("gate") == 1
    none = found(cove(60 + lasts - 300), 60 + lasts - 300)[0]  # 2 min for tape: 0.78 m; 1 min: less than half a metre
    assert none.cut == pytest.approx(0.7)
    left = told(cove(60 + lasts - 240), 60 + lasts - 240)["steps"]
    assert [one["name"] for one in left][-3:] == ["gate", "cleanup", "date"]
    assert "after the cure" in next(one for one in left if one["name"] == "gate")["under"]


def test_two_people_are_told_where_they_would_lay_all_of_it():
    lasts = line(told(until("place"), 510), "window_lasts")["value"]
    age = lasts + 60 - 600
    got = told((("pour_putty", 60), ("bag", 400), ("place", age - 20)), age)
    assert "Two people can lay all of it" in line(got, "saved")["text"]
    pair = told((("pour_putty", 60), ("bag", 400), ("place", age - 20)), age, crew="2")
    assert line(pair, "saved") is None or "Two people" not in line(pair, "saved")["text"]


def test_half_a_tape_is_cut_square():
    lasts = line(told(until("place"), 510), "window_lasts")["value"]
    age = 60 + lasts - 200
    got = told((*cove(760), ("pour_wet", age - 300), ("tray", age - 100)), age)
    assert "Cut it square" in line(got, "saved")["text"]
    over = told((*cove(760), ("pour_wet", age - 300), ("tray", age - 100), ("wet.0", age)), age + 400)
    assert "Lay no more" in line(over, "saved")["text"]


def test_its_dates_are_those_of_the_cure():
    """Contacts at 60 and 860 s, told at 1700 s, 10:00: the wet-out resin met its hardener at 9:46."""
    cure = {one["window"]: one for one in data("cure", read(moves.module("cure").INPUTS, {
        "system": "3-1", "air": "20"})[0], reader())["windows"]}
    got, _ = found(QUICK, 1700)
    assert (got.dates.peel, got.dates.first, got.dates.last) == (cure["peel"]["from"], 60.0, 860.0)
    assert (got.dates.recoat.opens, got.dates.recoat.closes) == (cure["recoat"]["from"], cure["recoat"]["to"])
    last = told(QUICK, 1700)["steps"][-1]
    off = 10 * 3600 - 840 + cure["peel"]["from"]
    halves = -(-off // 1800)
    assert last["figure"].startswith(f"{int(halves // 2) % 24:02d}:{'30' if halves % 2 else '00'}")
    assert "Sand before the second coat" in last["under"]  # under the peel ply until its time is over


def test_the_calendar_s_file_says_the_same_and_keeps_to_rfc_5545():
    last = told(QUICK, 1700, clock="10:00")["steps"][-1]
    assert all(len(row.encode()) <= 75 for row in last["ends"].split("\r\n"))
    begins = [event.decoded("dtstart") for event in icalendar.Calendar.from_ical(last["ends"]).walk("VEVENT")]
    hours, minutes = (int(one) for one in last["figure"].split(":"))
    now = datetime.fromtimestamp(1_700_000_000, UTC)  # 10:00 on the wall
    ahead = timedelta(hours=hours + (24 if "next day" in last["what"] else 0), minutes=minutes) - timedelta(hours=10)
    assert timedelta(0) <= now + ahead - begins[0] < timedelta(minutes=1)


def test_a_date_is_that_of_the_standard_library(outside):
    for seconds in (0, 951_782_399, 951_782_400, 1_709_164_800, 1_700_000_000, 4_102_444_799):
        outside.library(f"run calendar date of {seconds} s", "Python's datetime", tuple(datetime.fromtimestamp(
            seconds, UTC).timetuple()[:6]), civil(seconds))


def test_the_log_is_filled_and_the_plan_is_told():
    last = told(QUICK, 1700)["steps"][-1]
    logs = dict(map(tuple, last["logs"]))
    assert (logs["pieces"], logs["laid"], logs["thicken"]) == ("Keel||", "2.40 m", "yes")
    assert (logs["place"], logs["tool"], logs["roll"]) == ("1.7 min", "2.3 min", "3.3 min")
    pairs = dict(map(tuple, last["pairs"]))
    assert [pairs[f"done.{place}.step"] for place in range(9)] == [
        "mix", "place", "tool", "clean", "wet_mix", "wet", "lay", "roll", "peel"]
    done = [{"batch": "1", "step": pairs[f"done.{place}.step"], "minute": pairs[f"done.{place}.minute"]}
            for place in range(9)]
    refused = moves.answer("run", {**typed(), "done": done})["errors"]  # the only batch is finished
    assert [one["field"] for one in refused] == ["pieces"]


def test_tape_that_is_left_out_leaves_the_plan_nothing_to_wait_for():
    lasts = line(told(until("place"), 510), "window_lasts")["value"]
    clean = 60 + lasts - 200
    got, _ = found((*cove(clean), ("gate", clean + 10), ("cleanup", clean + 100)), clean + 100)
    assert [one.name for one in got.steps][-2:] == ["gate", "cleanup"]
    assert {"wet_mix", "roll", "peel"} <= {key for key, _ in got.ends}


def test_one_mix_for_both_fills_the_tray_before_the_filler_goes_in():
    names = [one["name"] for one in told(smallest="250 g", pieces=[dict(SEAM["pieces"][0], length="1 m")])["steps"]]
    assert names[4:8] == ["pour_mix", "keep", "filler", "bag"]
    assert not {"pour_wet", "tray", "gate"} & set(names)


def test_of_a_cut_piece_no_rate_is_learned():
    lasts = line(told(until("place"), 510), "window_lasts")["value"]
    clean = 60 + lasts - 420
    rest = [(name, clean + 60 * place) for place, name in enumerate((
        "gate", "pour_wet", "tray", "wet.0", "lay.0", "roll.0", "peel", "cleanup"))]
    got, _ = found((*cove(clean), *rest), clean + 500)
    assert got.record.took == []


def test_tape_alone_and_putty_alone_have_no_steps_of_the_other():
    tape = {**SEAM["pieces"][0], "putty": "0"}
    assert "bag" not in [one["name"] for one in told(pieces=[tape])["steps"]]
    putty = {**SEAM["pieces"][0], "wet": "0"}
    assert not {"pour_wet", "peel", "lay.0"} & {one["name"] for one in told(pieces=[putty])["steps"]}


def test_an_air_that_was_read_before_says_how_long_ago():
    assert "40 minutes" in told(air_age="40 min")["steps"][0]["under"]


@pytest.mark.parametrize(("left", "expected"), [(0.0, 0.0), (180.0, 0.0), (307.0, 0.0), (308.0, 0.5), (1e9, 2.4)])
def test_tape_left_is_never_more_than_there_is(left, expected):
    assert tape_left(left, 180.0, 612.0, 2.4, 0.5) == pytest.approx(expected)


def test_a_helper_sees_the_steps_of_one_piece_and_the_window_of_the_whole_run():
    two = [*SEAM["pieces"], {"name": "Chine", "length": "1 m", "putty": "25", "wet": "18"}]
    whole, part = told(until("clean"), 800, pieces=two), told(until("clean"), 800, pieces=two, part="2")
    assert [one["ran"] for one in part["steps"]] == ["wet.1", "lay.1", "roll.1"]
    assert [one["figure"] for one in part["steps"]] == ["1 m"] * 3
    assert all("Chine" in one["what"] for one in part["steps"])
    assert line(part, "window") == line(whole, "window")


def test_a_piece_that_is_not_in_the_batch_is_refused():
    got = moves.answer("run", typed(until("clean"), 800, part="2"))
    assert [one["field"] for one in got["errors"]] == ["part"]


def test_a_helper_s_link_is_closed_by_the_door_and_one_altered_letter_is_seen():
    pairs = [["temperature", "20"], ["pieces.0.length", "2.4 m"], ["pieces.0.putty", "57"], ["pieces.0.wet", "39"],
             ["run.part", "1"], ["run.ran.0.step", "pour_putty"], ["run.ran.0.at", "60 s"], ["run.ran_age", "310 s"],
             ["run.tape", "fits"]]
    made = json.loads(call(json.dumps({"seal": pairs, "build": "4.abc"})))["link"]
    declared, beside = moves.screen_inputs("plan"), handover.beside_of("plan")
    assert [pair for pair in made if pair[0] not in handover.OF_THE_LINK] == pairs
    assert handover.opened(declared, made, 300, beside)[1] == ""
    assert handover.opened(declared, made[:-1], 300, beside)[1] == handover.CUT
    for place, (name, text) in enumerate(made):
        if name == "by" or name.startswith("run.") or place == len(made) - 1:
            for altered in (made[:place] + made[place + 1:], [*made[:place], [name, text + "1"], *made[place + 1:]]):
                assert handover.opened(declared, altered, 300, beside)[1] == handover.CUT, name

"""What is followed without a second look: minutes and names of a run, a strength, files that leave the app, cut lists.

Each test is for a person who would be harmed by the figure of another part, a minute too many, a piece too few.
"""
import re
from datetime import datetime, timedelta

import icalendar
import pytest
from covemix.server.data import data
from covemix.shared.catalogue import marks
from covemix.shared.catalogue import strength as facts
from covemix.shared.door import moves
from covemix.shared.files import calendar
from covemix.shared.forms import links
from covemix.shared.forms.inputs import read
from covemix.shared.plan import run, run_lines
from covemix.shared.words.written import reader
from test_run import QUICK, SEAM, found, line, told, until

TWO = [{**SEAM["pieces"][0], "name": name, "length": length} for name, length in (("Keel", "1 m"), ("Chine", "1.4 m"))]


def step(got, name):
    return next(one for one in got["steps"] if one["name"] == name)


# --- a run

@pytest.mark.parametrize("air", ["12", "17.3", "20", "23.7", "29"])
def test_the_minutes_of_a_window_are_never_rounded_up(air):
    lasts = line(told(until("bag"), 410, temperature=air), "window_lasts")
    minutes = int(lasts["text"].removesuffix(" min"))
    assert 0 <= lasts["value"] - 60 * minutes < 60


def test_each_pour_of_a_run_is_of_its_own_mix():
    """Putty is thickened, wet-out is not; each is called so, and asks Pour for its own grams."""
    got, _ = found()
    masses = {one.name: one.mass for one in got.steps if one.mass}
    for name, called, thick in (("pour_putty", "Putty", "yes"), ("pour_wet", "Wet-out", "no")):
        one = step(told(), name)
        pairs = dict(map(tuple, one["pours"]))
        assert (one["label"], one["what"], pairs["thicken"]) == (called, called, thick)
        assert pairs["amount"] == one["figure"] == f"{masses[name] * 1000:.0f} g"
        assert (pairs["amount_is"], pairs["system"], pairs["air"]) == ("total", "3-1", "20.0 °C")
    assert abs(masses["pour_putty"] - masses["pour_wet"]) > 0.005  # grams that differ, or this would show nothing
    plan = moves.answer("plan", SEAM)["lines"]
    for name in ("putty", "wet"):
        said = next(one for one in plan if one["name"] == f"amount_{name}")["text"]
        assert said.startswith(step(told(), f"pour_{name}")["figure"])


def test_each_tape_of_a_run_is_of_its_own_piece():
    got = told(pieces=TWO)
    for place, (name, metres) in enumerate((("Keel", "1 m"), ("Chine", "1.4 m"))):
        for key in ("wet", "lay", "roll"):
            one = step(got, f"{key}.{place}")
            assert (one["what"], one["figure"]) == (name, metres)


@pytest.mark.parametrize("age", [1700, 1711, 2900, 3333])
def test_a_coat_opens_after_the_last_contact_and_closes_by_the_first(age):
    """Contacts of 60 and 860 s; windows that open at 5000 s and close at 30,000 s: late and early, by half hours."""
    got, values = found(QUICK, age)
    coat = got.dates.recoat._replace(opens=5000.0, closes=30_000.0, cold=False, shut=False)
    got = got._replace(dates=run.Dates(4000.0, coat, 60.0, 860.0))
    ended = run_lines._end(got, values)
    (off, begins, never), (_, opens, closes) = ended["ends"]
    now = values["ran_wall"] - age
    assert never is None and str(off) == "run-date.off"
    for time, wanted in ((begins, 860 + 4000), (opens, 860 + 5000)):
        assert 0 <= time + 60 - (now + wanted) < 1800 + 60
    assert 0 <= now + 60 + 30_000 - closes < 1800 + 60
    assert opens < closes


# --- a strength

@pytest.mark.parametrize("kind", ["inside", "outside", "both", "butt", "bulkhead"])
def test_no_share_of_a_strength_is_rounded_up(kind):
    shares = 0
    for thickness in ("4", "5.3", "6", "9", "12.7"):
        lines = moves.answer("joint", links.tree([("kind", kind), ("thickness", thickness)]))["lines"]
        for one in lines:
            if one["name"].startswith("strength") and one["text"].endswith("of the panel"):
                percent = float(re.search(r"([\d.]+)%", one["text"])[1])
                assert 0 <= 100 * one["value"] - percent < 1 + 1e-9, one
                shares += 1
    assert shares >= 10


def test_a_lap_is_enough_only_where_it_is():
    for overlap, enough in (("50", True), ("6", True), ("5", False)):
        lap = next(one for one in moves.answer("joint", links.tree([
            ("kind", "both"), ("overlap", overlap)]))["lines"] if one["name"] == "strength_lap")
        assert lap["value"] == pytest.approx(0.0051749, rel=1e-4)  # as below, by hand
        assert lap["text"].startswith("5.2 mm of ")
        assert lap["rough"] == ("long enough" if enough else "too short")
    pull = (800 * 0.45**2 - 80 * 0.45 + 37) / (22 - 17.5 * 0.45)
    assert pull * 0.3 / (2540 * 1110) * (2540 / 0.45 - (2540 - 1110)) == pytest.approx(0.0051749, rel=1e-4)


# what a seam is reckoned with, typed a second time: MPa, m, of the whole; none of it is printed anywhere we could read
STRENGTHS = {
    "solid": (85, "own judgement"), "ply-pulls": (0.65, "own judgement"), "solid-pulls": (1, "own judgement"),
    "solid-across": (0.1, "own judgement"), "ply-across": (0.067, "own judgement"),
    "panel-stiff": (8550, "own judgement"), "veneer": (0.0013, "common practice"), "rolls": (1.5, "own judgement"),
    "rolls-stiff": (60, "own judgement"), "putty-bends": (15, "own judgement"), "putty-push": (40, "own judgement"),
    "putty-stiff": (2500, "own judgement"), "knock": ((0.5, 0.4, 0.7), "own judgement"),
    "tapes": ((0.05, 0.075, 0.1, 0.15), "common practice"), "most-layers": (4, "own judgement"),
}


def test_what_a_strength_is_reckoned_with_is_as_it_was_typed_a_second_time():
    called = {marks.JUDGED: "own judgement", marks.COMMON: "common practice"}
    (_, rows, *_), = facts.TABLES
    assert {what.removeprefix("facts-strength."): (value, called.get(mark, mark)) for what, value, _, mark in rows
            } == STRENGTHS
    assert (facts.SOLID, facts.ROLLS, facts.ROLLS_STIFF) == (85e6, 1.5e6, 60e6)
    assert (facts.PUTTY_BENDS, facts.PUTTY_PUSH, facts.PUTTY_STIFF, facts.PANEL_STIFF) == (15e6, 40e6, 2.5e9, 8.55e9)


# --- files

def boat_of(*pairs):
    values, errors = read(moves.module("boat").INPUTS, links.tree([
        ("joints.0.name", "Keel"), ("joints.0.kind", "both"), ("joints.0.length", "3.05 m"),
        ("joints.1.name", "Chine"), ("joints.1.length", "2 m"), ("joints.1.copies", "2"),
        ("system.by_weight", "3:1"), *pairs]))
    assert not errors
    return data("boat", values, reader())


def test_the_parts_that_are_bought_are_those_of_the_label():
    """Three to one by weight: of the resin three times as much as of the hardener, in the table as in the answer."""
    got = boat_of()
    bought = {row["item"]: row["mass"] for row in got["shopping"]}
    assert bought["part_a"] == pytest.approx(3 * bought["part_b"])
    assert [bought["part_a"], bought["part_b"]] == [row["mass"] for row in got["parts"]]


def test_a_list_of_cuts_has_every_piece_once_under_its_own_name():
    """By hand: the keel's 3.05 m on both faces, two chines of 2 m on one; what the ends overlap comes on top."""
    cuts = boat_of()["cuts"]
    for material in ("tape", "ply"):
        rows = [row for row in cuts if row["material"] == material]
        assert sorted(row["piece"] for row in rows) == list(range(1, len(rows) + 1))
        metres = {}
        for row in rows:
            key = row["joint"], row["face"]
            metres[key] = metres.get(key, 0) + row["length"]
        assert set(metres) == {("Keel", "inside"), ("Keel", "outside"), ("Chine", "inside")}
        for key, least in ((("Keel", "inside"), 3.05), (("Keel", "outside"), 3.05), (("Chine", "inside"), 4.0)):
            assert least - 1e-9 <= metres[key] <= least + 0.051
    for one in {(row["stock"], row["stock_place"], row["width"]) for row in cuts}:
        own = [row for row in cuts if (row["stock"], row["stock_place"], row["width"]) == one]
        assert sum(row["length"] for row in own) <= own[0]["stock_length"] + 1e-9


HOT = {"pieces": [{"name": "Keel", "length": "12 m", "putty": "57", "wet": "39"}], "temperature": "25", "start": "8:00",
       "system": "3-1", "scale": "0.1g"}


def test_a_batch_that_is_too_late_is_told_so_and_its_latest_start_is_its_line_s():
    late = seen = 0
    for finish in ("9:30", "12:00", "17:00"):
        typed = {**HOT, "finish": finish}
        values, errors = read(moves.module("plan").INPUTS, typed)
        assert not errors
        lines = moves.answer("plan", typed)["lines"]
        for row in data("plan", values, reader())["batches"]:
            own = {one["name"]: one for one in lines if one["part"] == f"batch_{row['batch']}"}
            assert row["too_late"] == ("do_not_start" in own)
            assert row["latest_start"] == (own["latest"]["value"] if "latest" in own else None)
            late += row["too_late"]
            seen += "latest" in own
    assert late and seen


def test_a_calendar_s_batches_have_each_their_own_lines():
    typed = {**HOT, "pieces": TWO, "most": "150 g", "temperature": "20"}
    values, errors = read(moves.module("plan").INPUTS, typed)
    assert not errors
    answer = moves.answer("plan", typed)
    planned = moves.module("plan").reckon(values)
    events = calendar.of_plan(calendar.day_of("2026-06-01"), planned, answer, reader("metric"), values)
    assert len(events) == len(planned.batches) > 1
    for place, one in enumerate(events):
        own = [row for row in answer["lines"] if row["part"] == f"batch_{place + 1}"]
        assert [row["text"] in one.told for row in own] == [True] * len(own)
        assert len(one.told.split("\n")) == len(own)
        begins = datetime(1970, 1, 1) + timedelta(seconds=one.begins)
        assert begins.isoformat()[:16] == "2026-06-01T" + own[0]["text"][:5]


def test_a_pot_s_calendar_names_each_step_at_its_own_time_in_universal_time():
    typed = {"started": "1700000000", "now": "1700000000", "duration": "25 min", "batch": "Keel",
             "steps": [{"name": "Fill", "minute": "5"}, {"name": "Tape", "minute": "12"}]}
    values, errors = read(moves.module("pot").INPUTS, typed)
    assert not errors
    answer = moves.answer("pot", typed)
    rows = calendar.of_pot(0, moves.module("pot").reckon(values), answer, reader("metric"), values)
    assert [(one.summary, one.begins - 1_700_000_000) for one in rows[1:]] == [("Fill", 300), ("Tape", 720)]
    text = calendar.calendar(rows, 1_700_000_000)
    begins = [row.split(":")[1] for row in text.split("\r\n") if row.startswith("DTSTART")]
    assert begins[1:] == ["20231114T221820Z", "20231114T222520Z"]
    for event in icalendar.Calendar.from_ical(text).walk("VEVENT"):
        assert event.decoded("dtstart").utcoffset() == timedelta(0)


# --- a boat

CLOTH = (("work", "sheathe"), ("length", "3 m"), ("widths", "1 m"), ("cloth_weight", "200 g/m2"))


def surfaces(*rows):
    pairs = [(f"surfaces.{place}.{name}", text) for place, row in enumerate(rows) for name, text in row]
    answer = moves.answer("boat", links.tree(pairs))
    assert answer["errors"] == []
    return {one["name"]: one for one in answer["lines"]}


def test_the_cloth_of_two_faces_is_bought_for_both():
    one, two = (surfaces(*[CLOTH] * count)["cloth_1"]["value"] for count in (1, 2))
    assert two == pytest.approx(2 * one) and one > 3
    other = (*CLOTH[:3], ("cloth_weight", "300 g/m2"))
    assert {"cloth_1", "cloth_2"} <= set(surfaces(CLOTH, other))


def test_each_surface_is_told_by_its_own_name():
    found = surfaces((*CLOTH, ("name", "Deck")), (("work", "fair"), ("area", "2 m2"), ("name", "Hull")))
    assert (found["surface_0"]["label"], found["surface_1"]["label"]) == ("Deck", "Hull")
    assert "cloth" in found["surface_0"]["text"].lower() and "cloth" not in found["surface_1"]["text"].lower()


def test_the_cut_list_on_screen_has_every_piece_and_none_is_short():
    """Its numbers, run by run, are all pieces once; each length as it is told is no shorter than the piece."""
    for units in ("metric", "us"):
        pairs = [("joints.0.name", "Keel"), ("joints.0.kind", "both"), ("joints.0.length", "3.137 m"),
                 ("joints.1.length", "2.213 m"), ("joints.1.copies", "3"), ("units", units)]
        values, errors = read(moves.module("boat").INPUTS, links.tree(pairs))
        assert not errors
        rows = [row for row in data("boat", values, reader(units))["cuts"] if row["material"] == "tape"]
        texts = [one["text"] for one in moves.answer("boat", links.tree(pairs))["lines"]
                 if one["name"].startswith("cut_t_") or one["name"].startswith("cut_tape_")]
        assert texts
        numbers, metres = [], 0.0
        for told_one in "; ".join(texts).split("; "):
            long, _, places = told_one.rpartition(": ")
            own = []
            for each in places.split(", "):
                first, _, last = each.partition(" to ")
                own += range(int(first), int(last or first) + 1)
            numbers += own
            size = re.search(r"([\d.]+) (m|ft)$", long.replace("\xa0", " "))
            if size:
                each = float(size[1]) * (1 if size[2] == "m" else 0.3048)
                metres += each * len(own)
                assert all(each >= row["length"] - 1e-9 for row in rows if row["piece"] in own)
        assert sorted(numbers) == sorted(row["piece"] for row in rows)

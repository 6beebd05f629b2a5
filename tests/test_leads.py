"""From answer to answer: what a lead fills in is what the other screen reads."""
import pytest
from covemix.shared.door import moves
from covemix.shared.forms import links

PIECES = [["pieces.0.name", "Keel"], ["pieces.0.length", "3"], ["pieces.0.putty", "150"], ["pieces.0.wet", "90"],
          ["temperature", "20"]]


def led(answer, start):
    return next(lead for lead in answer["leads"] if lead["label"].startswith(start))


def pot_of(lead, **typed):
    """What the move pot says of a clock so started, at this moment of its life."""
    pairs = [[name[4:], text] for name, text in lead["pairs"] if name.startswith("pot.")]
    tree = links.tree(pairs)
    tree.update(started="1700000000", **typed)
    found = moves.answer("pot", tree)
    assert not found["errors"], found["errors"]
    return {row["name"]: row for row in found["lines"]}


@pytest.mark.parametrize("container", ["cup", "bag", "tray", "bead", "roll", "film"])
@pytest.mark.parametrize("units", ["metric", "us"])
def test_a_clock_started_from_the_heat_answer_runs_as_long_as_was_told(container, units):
    air = {"metric": "21", "us": "70"}[units]
    found = moves.answer("heat", {"air": air, "units": units, "container": container, "use": "putty", "where": "port"})
    usable = next(row for row in found["lines"] if row["name"] == "usable")
    pot = pot_of(led(found, "Start the clock"), now="1700000060")
    assert usable["value"] - 120 < pot["left"]["value"] <= usable["value"] - 60  # never longer than was told
    assert pot["place"]["text"].endswith(" · port")


def test_the_step_after_a_bag_of_putty_is_the_tape_and_it_comes_after_the_bag():
    found = moves.answer("heat", {"air": "21", "container": "bag", "use": "putty"})
    pot = pot_of(led(found, "Start the clock"), now="1700000000")
    assert pot["next"]["text"] == "Tape rolled on the soft cove" and pot["next"]["value"] > pot["left"]["value"]


def test_an_own_timing_from_a_pot_is_read_by_the_heat_answer():
    lead = led(moves.answer("heat", {"air": "21"}), "Start the clock")
    timing = {name[7:]: text for name, text in lead["pairs"] if name.startswith("timing.")}
    timed = moves.answer("heat", {"air": "21", "timings": [dict(timing, said="stiffening", after="700 s")]})
    usable = {row["name"]: row["value"] for row in timed["lines"]}["usable"]
    plain = {row["name"]: row["value"] for row in moves.answer("heat", {"air": "21"})["lines"]}["usable"]
    assert usable <= 700 < plain


def test_a_day_under_way_offers_the_next_step_with_the_minute_it_is():
    pairs = [*PIECES, ["running", "yes"], ["clock", "8:14"]]
    for step in ("mix", "place", "tool", "clean"):
        lead = moves.answer("plan", links.tree(pairs))["leads"][0]
        assert [text for _, text in lead["pairs"]] == ["1", step, "14"]
        pairs += lead["pairs"]
    assert not moves.answer("plan", links.tree(pairs))["errors"]


def test_a_day_that_has_not_begun_is_not_late_and_a_clock_past_midnight_is():
    def first(clock):
        found = moves.answer("plan", links.tree([*PIECES, ["start", "22:00"], ["running", "yes"], ["clock", clock]]))
        return [lead["pairs"][2][1] for lead in found["leads"] if lead["label"].startswith("Batch 1")]

    # before the planned start the first step can be told: somebody who begins early has begun
    assert first("21:50") == ["-10"] and first("22:00") == ["0"] and first("0:30") == ["150"]


def test_a_clock_of_a_batch_has_its_steps_in_order_and_ends_with_the_plan_s_pot_window():
    found = moves.answer("plan", links.tree(PIECES))
    pot = pot_of(led(found, "Start the clock of batch 1"), now="1700000000")
    by = {row["name"]: row["value"] for row in found["lines"] if row["part"] == "batch_1"}["by_pot"]
    assert by - 8 * 3600 - 60 < pot["left"]["value"] <= by - 8 * 3600
    assert pot["next"]["text"] == "Putty mixed and bagged"


def test_the_boat_s_seams_are_the_plan_s_pieces():
    boat = moves.answer("boat", {})
    plan = moves.answer("plan", links.tree(led(boat, "Plan the insides")["pairs"] + [["temperature", "18"]]))
    assert plan["errors"] == [] and plan["lines"][0]["name"] == "batches"
    pairs = [pair for lead in boat["leads"] if lead["screen"] == "plan" for pair in lead["pairs"]]
    lengths = [float(text.split()[0]) for name, text in pairs if name.endswith(".length")]
    faces = 2 * {row["name"]: row["value"] for row in boat["lines"]}["seams"]  # no seam has more than two of them
    assert len(lengths) <= 2 * 60 and 0 < sum(lengths) <= 1.01 * faces + 0.01 * len(lengths)


def test_clock_and_plan_lead_to_each_other_in_the_same_air():
    heat = moves.answer("heat", {"air": "17.5", "system": "5-1"})
    lead = led(heat, "Plan the day")
    assert ["temperature", "17.5 °C"] in lead["pairs"] and ["system", "5-1"] in lead["pairs"]
    plan = moves.answer("plan", dict(links.tree(lead["pairs"]), pieces=[{"length": "2", "putty": "60", "wet": "50"}]))
    assert ["air", "17.5 °C"] in led(plan, "Start the clock")["pairs"]


def test_a_clock_of_a_batch_reckons_with_the_timings_typed_on_the_plan():
    """A change of its air is asked with what the lead hands on: system and timings; those of a day before it go."""
    pairs = [*PIECES, ["system", "3-1"]]
    fast = "stiffening 9 min 500 g bag 20 °C; good 4 min 480 g cup 20 °C"
    asked = [["batch", "500 g"], ["container", "bag"], ["air", "20"]]

    def usable(lead):
        kept = [pair for pair in lead["pairs"] if pair[0].partition(".")[0] in ("system", "timings")]
        found = moves.answer("heat", links.tree(kept + asked))
        assert not found["errors"], found["errors"]
        return {row["name"]: row["value"] for row in found["lines"]}["usable"]

    timed = led(moves.answer("plan", links.tree([*pairs, ["timings", fast]])), "Start the clock")
    plain = led(moves.answer("plan", links.tree(pairs)), "Start the clock")
    assert usable(timed) <= 9 * 60 < usable(plain)
    assert [text for name, text in timed["pairs"] if name.endswith(".said")] == ["stiffening", "good"]
    assert ["timings", "none"] in plain["pairs"]

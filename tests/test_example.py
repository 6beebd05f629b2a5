"""A built-in ratio is nobody's label: wherever it gives a figure it is called an example, until the label is typed."""
import pytest
from covemix.shared.door import handover, moves

PLAN = {"temperature": "20", "pieces": [{"name": "Keel", "length": "1 m", "putty": "100", "wet": "50"}]}
MOVES = [("ratio", {}), ("heat", {"air": "20"}), ("boat", {}), ("plan", PLAN)]
LABEL = {"name": "Mine", "by_volume": "3:1", "densities": "1.15:0.98", "pot_time": "30 min", "pot_mass": "100 g",
         "pot_temperature": "25"}


def named(move, typed):
    found = moves.answer(move, typed)
    assert found["errors"] == []
    return {line["name"]: line for line in found["lines"]}


@pytest.mark.parametrize("move, typed", MOVES)
def test_each_figure_of_a_built_in_ratio_is_an_examples(move, typed):
    """Old main: "built in, figures from memory" stood in a fold of Pour alone."""
    told = named(move, typed)["example"]
    assert told["rank"] == "warn" and "Three to one" in told["text"]  # read out and on the short card by its rank
    started = {"by_volume": "3 : 1", "name": "Three to one", "densities": "1.15 : 0.98 g/mL", "origin": "row",
               "pot_time": "30 min", "pot_mass": "100 g", "pot_temperature": "25 °C"}
    assert "example" in named(move, dict(typed, system=started))  # kept in the kit, and compared with nothing


@pytest.mark.parametrize("move, typed", MOVES)
@pytest.mark.parametrize("label", [LABEL, {"id": "3-1", "origin": "label"}, dict(LABEL, origin="label")])
def test_a_label_that_was_typed_or_compared_is_none(move, typed, label):
    assert "example" not in named(move, dict(typed, system=label))


def test_the_first_step_and_its_voice_say_so():
    first = moves.answer("pouring", {"way": "pumps"})["steps"][0]
    assert first["under"].startswith("Example, not your label") and first["said"].startswith("Example, not your label")
    assert first["rank"] == "warn"
    own = moves.answer("pouring", {"way": "pumps", "system": LABEL})["steps"][0]
    assert "Example" not in own["under"] + own["said"] and own["rank"] == "answer"


def test_each_card_says_so():
    for screen, pairs in (("pour", [["way", "pumps"]]), ("clock", [["air", "20"]]), ("boat", [])):
        made = handover.handed(screen, pairs)
        assert "Example, not your label" in made["text"], screen
    assert "Example, not your label" in handover.handed("pour", [["way", "pumps"]])["short"]


def test_a_link_says_what_it_said_before():
    assert "by_link" in named("ratio", {"system": dict(LABEL, origin="link")})

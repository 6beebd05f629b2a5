"""All moves and screens, walked by their declarations: described, answering, finite, and never at a loss."""
import functools
import json
import math

import cases
import pytest
from covemix.shared.door import moves
from covemix.shared.door.call import call
from covemix.shared.forms import inputs, links
from covemix.shared.forms.inputs import Pick
from covemix.shared.forms.quantities import says_unit
from covemix.shared.things import records_shed
from covemix.shared.words.lines import ANSWER, ASK, BESIDE, CALL, MORE, SAY, WARN, Line
from covemix.shared.words.written import reader

MOVES, SCREENS = moves.names(), [name for name, _ in moves.SCREENS]
EVERY = list(dict.fromkeys([*MOVES, *SCREENS]))  # some screens are a move by itself
SYSTEMS = ("metric", "us")
LARGE = {"head", "how", "large", "small"}  # of an answer
RANKS = (ANSWER, BESIDE, SAY, MORE, ASK, WARN, CALL)


def every_input(items, prefix=""):
    for item in items:
        yield prefix + item.name, item
        inner = item.record.fields if item.kind == "pick" else item.fields if item.kind == "group" else ()
        yield from every_input(inner, prefix + item.name + ".")


def strictly(data):
    """Through JSON as a browser reads it: NaN and Infinity are no JSON."""

    def refused(name):
        raise AssertionError(name + " is no JSON")

    return json.loads(json.dumps(data), parse_constant=refused)


@pytest.mark.parametrize("name", MOVES)
def test_a_move_says_what_it_does_and_offers_what_the_door_asks(name):
    module = moves.module(name)
    about = moves.about(name, reader())
    assert about["name"] == name and about["label"] and about["purpose"]
    assert isinstance(module.INPUTS, tuple) and isinstance(module.CHECKS, tuple) and callable(module.answer)


@pytest.mark.parametrize("system", SYSTEMS)
@pytest.mark.parametrize("name", MOVES)
def test_every_input_is_described_and_its_names_are_its_own(name, system):
    strictly(moves.about(name, reader(system)))
    seen = set()
    for path, item in every_input(moves.module(name).INPUTS):
        facts = item.about(reader(system))
        assert facts["label"].strip(), path
        assert facts["kind"] in cases.MAKERS, f"{path}: MAKERS of tests/cases.py makes up nothing for {facts['kind']!r}"
        assert "." not in item.name and not item.name.isdigit(), path
        names = {path, *(path.removesuffix(item.name) + other for other in (*item.was, *item.extra_names()))}
        assert not names & seen, path
        seen |= names


@pytest.mark.parametrize("name", MOVES)
def test_what_an_input_depends_on_is_asked_before_it(name):
    known = set()
    for item in moves.module(name).INPUTS:
        for other, allowed in item.when:
            assert other in known, f"{item.name} depends on {other}"
            assert allowed
        known |= {item.name, *item.extra_names()}


@pytest.mark.parametrize("name", MOVES)
def test_every_default_means_the_same_in_both_systems(name):
    for path, item in every_input(moves.module(name).INPUTS):
        if item.default_in("metric") not in ("", [], None):
            metric, us = (item.read(item.default_in(system), path, asked(system)) for system in SYSTEMS)
            assert alike(metric, us), path


@pytest.mark.parametrize("name", MOVES)
def test_every_default_stands_in_the_unit_behind_its_field(name):
    """"10 : 15 : 20 mm" stood before "in"."""
    for path, item in every_input(moves.module(name).INPUTS):
        for system in SYSTEMS:
            facts = item.about(reader(system))
            assert not (facts.get("unit") and isinstance(facts["default"], str) and says_unit(facts["default"])), path


@pytest.mark.parametrize("record", records_shed.RECORDS, ids=lambda record: record.name)
def test_every_built_in_row_means_the_same_in_both_systems(record):
    pick = Pick("thing", "Thing", record)
    for row, *_ in record.rows:
        assert alike(*(pick.read(row, "thing", asked(system)) for system in SYSTEMS)), row


def asked(system):
    return {"units": system, "_tree": {}, "_understood": []}


def alike(metric, us):
    """Equal but for the rounding of a default to three decimals of the other unit."""
    if isinstance(metric, dict):
        return all(alike(value, us[key]) for key, value in metric.items()
                   if key not in ("units", "_tree", "_understood", "_memo") and not key.endswith("_unit"))
    if isinstance(metric, (list, tuple)):
        return len(metric) == len(us) and all(alike(a, b) for a, b in zip(metric, us, strict=True))
    if isinstance(metric, float):
        return us == pytest.approx(metric, rel=0.003, abs=2e-5)
    return metric == us


@pytest.mark.parametrize("system", SYSTEMS)
@pytest.mark.parametrize("name", MOVES)
def test_with_nothing_typed_a_move_answers_or_says_what_is_missing(name, system):
    found = strictly(moves.answer(name, {"units": system}))
    known = {path for path, _ in every_input(moves.module(name).INPUTS)}
    for error in found["errors"]:
        path = ".".join(step for step in error["field"].split(".") if not step.isdigit())
        assert path in known and 8 < len(error["message"]) < 160, error
    assert bool(found["errors"]) != bool(found["lines"]) or not found["errors"]


@pytest.mark.parametrize("name", SCREENS)
def test_a_screen_asks_each_name_once_and_alike_in_all_its_moves(name):
    found = {}
    for own in dict(moves.SCREENS)[name]:
        for item in moves.module(own).INPUTS:
            first = found.setdefault(item.name, item)
            assert {**strictly(item.about(reader())), "when": []} == {**strictly(first.about(reader())), "when": []}
            assert first.when in ((), item.when), "the first decides for all: it must be asked wherever the others are"
    assert list(found) == [item.name for item in moves.screen_inputs(name)]


@functools.cache
def generated(name):
    """Answers to sixty generated requests, as texts: two tests look at them."""
    return [call(json.dumps(request)) for request in cases.requests(name, 60)]


@pytest.mark.parametrize("name", EVERY)
def test_generated_requests_are_answered_in_finite_lines_or_errors(name):
    """Every generated form gets lines with all their names, a rank, a text; or errors at fields that exist."""
    for text in generated(name):
        found = json.loads(text, parse_constant=pytest.fail)
        for _, answer in found.get("answers", [[name, found]]):
            assert not (answer["errors"] and answer["lines"])
            for line in answer["lines"]:
                assert sorted(line.keys() - LARGE) == sorted(Line._fields)
                assert line["rank"] in RANKS and line["label"] and line["text"]
                assert line["value"] is None or math.isfinite(line["value"])
                assert "e+" not in line["text"] and "nan" not in line["text"].split()
            names = [(line["name"], line["part"]) for line in answer["lines"] if line["rank"] == ANSWER]
            assert len(names) == len(set(names)), names
            for error in answer["errors"]:
                assert error["field"] and error["message"]


@pytest.mark.parametrize("name", SCREENS)
def test_generated_requests_are_mostly_answered(name):
    """The generator types what reads: a screen that refuses nearly all of it would be compared on its errors only."""
    answered = 0
    for text in generated(name):
        found = json.loads(text)
        answered += any(answer["lines"] for _, answer in found["answers"])
    assert answered >= 15  # a quarter; a day whose hours are thrown seldom goes forward


@pytest.mark.parametrize("name", SCREENS)
def test_a_screen_answers_as_its_moves_do_alone(name):
    for request in cases.requests(name, 20, seed=5):
        tree = links.tree(request["pairs"])
        found = moves.screen(name, tree)
        for own, answer in found["answers"]:
            _, errors = inputs.read(moves.screen_inputs(name), tree)
            if not errors:
                alone = moves.answer(own, tree)
                assert [one for one in alone.pop("understood") if one not in found["understood"]] == []
                assert strictly(answer) == strictly(alone), own


def test_an_error_of_one_field_is_told_by_every_move_that_asks_it():
    found = moves.screen("pour", {"units": "old", "amount_is": "buckets"})
    for own, answer in found["answers"]:
        fields = [error["field"] for error in answer["errors"]]
        assert "units" in fields, own
        if any(item.name == "amount" for item in moves.module(own).INPUTS):
            assert "amount_is" in fields, own


@pytest.mark.parametrize(
    "name", ["nothing", "", "inputs", "catalogue", "../ratio", "ratio.answer", "__init__", "Ratio"]
)
def test_a_name_that_is_no_move_is_a_key_error(name):
    with pytest.raises(KeyError):
        moves.answer(name, {})
    with pytest.raises(KeyError):
        moves.screen(name, {})
    with pytest.raises(KeyError):
        call(json.dumps({"move": name, "typed": {}}))


@pytest.mark.parametrize("name", SCREENS)
def test_where_an_answer_leads_next_is_a_screen_that_knows_the_pairs(name):
    for request in cases.requests(name, 30, seed=9):
        for _, answer in moves.screen(name, links.tree(request["pairs"]))["answers"]:
            for lead in answer["leads"]:
                known = {"units", *names_of(moves.screen_inputs(lead["screen"]))}
                if lead["screen"] == "clock":  # what a clock is started with stands under names of its own
                    known |= {"pot." + own for own in names_of(moves.module("pot").INPUTS)}
                    [rows] = [one for one in moves.module("heat").INPUTS if one.name == "timings"]
                    known |= {"timing." + one.name for one in rows.fields}
                for path, text in lead["pairs"]:
                    own = ".".join(path.split(".")[: 2 if path.startswith(("pot.", "timing.")) else 1])
                    assert own in known and isinstance(text, str), path
                assert lead["label"]


def names_of(items):
    return [known for item in items for known in (item.name, *item.extra_names())]


MIXED_BY = [name for name in MOVES if name not in ("kit", "safety")  # a list of things; and what reads no ratio
            and any(item.kind == "pick" and item.name == "system" for item in moves.module(name).INPUTS)]


@pytest.mark.parametrize("name", MIXED_BY)
def test_figures_that_will_be_typed_are_asked_for_and_no_other_things_are_taken(name):
    """Chosen is "typed below": the figures of the first system are not what a builder then mixes by."""
    found = moves.answer(name, {"system": ""})
    assert "system.by_weight" in [error["field"] for error in found["errors"]] and not found["lines"]

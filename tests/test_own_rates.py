"""Own rates: what a plan's batches really took, what is learned from it, and that the plan counts with it."""
from math import exp, log, sqrt
from statistics import NormalDist, median

import pytest
from covemix.shared.catalogue.rates import RATES
from covemix.shared.door import moves
from covemix.shared.forms import inputs, links
from covemix.shared.plan import batch_record, plan, plan_leads
from covemix.shared.things import learned_rates, work_rates
from covemix.shared.words.written import reader
from hypothesis import given
from hypothesis import strategies as st
from scipy import stats
from test_plan import HAND, by_name

OFF = ("place_rate", "tool_rate", "clean_rate", "wet_rate", "lay_rate", "roll_rate", "peel_rate")
FREE = {key: value for key, value in HAND.items() if key not in OFF}
TOP = {row[0]: row for row in RATES}


def read(typed):
    values, errors = inputs.read(plan.INPUTS, typed)
    assert not errors, [error.message for error in errors]
    return values


def answered(**more):
    found = moves.answer("plan", dict(FREE, **more))
    assert not found["errors"], found["errors"]
    return found


def test_a_learned_rate_is_the_posterior_of_a_normal_mean(outside):
    """scipy.stats: the product of two normal densities, prior and mean of the batches, by its mode and curvature."""
    own = (0.5, 0.62, 0.55)
    logs = [log(rate / 0.8) for rate in own]
    mean = sum(logs) / 3
    prior = stats.uniform(log(0.5 / 0.8), log(1.2 / 0.5)).std()
    variance = (4 * 0.2**2 + sum((one - mean) ** 2 for one in logs)) / (4 + 3 - 1)
    belief, seen = NormalDist(0, prior), NormalDist(mean, sqrt(variance / 3))
    weights = belief.variance**-1, seen.variance**-1
    wanted = (belief.mean * weights[0] + seen.mean * weights[1]) / sum(weights)
    found = learned_rates.learned(own, 0.8, 0.5, 1.2)
    outside.worked("rates-1", "scipy.stats.uniform (std) and the product of two normal densities", 0.8 * exp(wanted),
            found.rate)
    outside.worked("rates-2", "the same, two deviations", exp(2 / sqrt(sum(weights))), found.high / found.rate,
            rel=1e-9)


@given(st.lists(st.floats(0.3, 2.0), min_size=1, max_size=40))
def test_a_learned_rate_lies_between_the_remembered_one_and_the_batches(rates):
    found = learned_rates.learned(rates, 0.8, 0.5, 1.2)
    assert min([*rates, 0.8]) * 0.999 <= found.rate <= max([*rates, 0.8]) * 1.001
    assert found.low < found.rate < found.high and found.count <= len(rates)


def test_one_forgotten_tap_does_not_move_it():
    """Statistics' median of the sound ones: an odd batch is left out, one that no hand can work at is never counted."""
    sound = [0.5, 0.52, 0.48, 0.51, 0.5, 0.49]
    found = learned_rates.learned([*sound, 0.21], 0.8, 0.5, 1.2)
    assert found.count == 6 and found.rate == pytest.approx(median(sound), rel=0.05)
    assert learned_rates.learned([*sound, 40.0], 0.8, 0.5, 1.2) == found
    assert learned_rates.learned([40.0], 0.8, 0.5, 1.2) is None


def test_learned_rates_come_back_through_text_rounded_to_the_safe_side():
    found = [(row[0], learned_rates.learned([row[2] / 60 * 0.77] * 3, row[2] / 60, row[3] / 60, row[4] / 60))
             for row in RATES]
    text = learned_rates.learned_text(found)
    assert len(text) <= 400
    back = learned_rates.read_learned(text)
    for name, one in found:
        assert back[name].count == 3 and 0 <= one.rate - back[name].rate < 0.0101 / 60


def by_hand(people, **true):
    """A day whose batches take what hands of these rates take; told step by step, and what is learned of each batch."""
    typed = dict(FREE, people=people, smallest="0", pieces=[
        {"name": f"Seam {place}", "length": "1.5", "putty": "100", "wet": "50",
         "position": ("downhand", "vertical")[place % 2]} for place in range(8)])
    really = plan.planned(read(dict(typed, **{name + "_rate": str(rate) for name, rate in true.items()}))).followed()
    values = read(typed)
    found = []
    for batch in really:
        ends = {step.key: step.end for step in batch.steps}
        # planned with remembered rates, done with the true ones
        work = plan.planned(values).work()
        found.append((batch, batch_record.spans(batch._replace(work=work), ends)))
    return found


@pytest.mark.parametrize("people", ["1", "2"])
def test_what_is_laid_at_known_rates_is_learned_as_those_rates(people):
    """Both ways round: days worked at rates the plan does not know; alone every one is found, side by side the cove's
    by their sum and the tape's by theirs."""
    true = {"place": 1.5, "tool": 0.9, "clean": 1.1, "wet": 1.0, "lay": 1.6, "roll": 0.6, "peel": 1.0}
    batches = by_hand(people, **true)
    assert batches
    for batch, spans in batches:
        pieces = batch.work.pieces[batch.laid.first:batch.laid.last]
        metres = sum(piece.place for piece in pieces) * true["place"] / 60
        if people == "1":
            assert set(spans) - {"wet_mix"} == set(true)
            for name, rate in true.items():
                assert metres / spans[name] * 60 == pytest.approx(rate), name
            continue
        assert {"place", "tool", "clean"} <= set(spans) and "peel" not in spans
        assert spans["tool"] + spans["clean"] == pytest.approx(metres / (0.9 / 60) + metres / (1.1 / 60))
        if "roll" in spans:
            tape = sum(60 * metres / true[name] for name in ("wet", "lay", "roll"))
            assert spans["wet"] + spans["lay"] + spans["roll"] == pytest.approx(tape, rel=0.03)


def test_the_last_tap_carries_what_the_batch_took():
    """Alone, the hand-checked day: 6 m, each step a minute late; the tap of the last step brings what the log keeps."""
    typed = dict(HAND, running="yes", now="52", crew={"name": "Ann", "hands": "1"}, people="")
    steps = [step.key for step in plan.planned(read(typed)).followed()[0].steps]
    minute = {"mix": 6, "place": 10, "tool": 17, "clean": 24, "wet_mix": 28, "wet": 35, "lay": 39, "roll": 46}
    done = [{"batch": "1", "step": key, "minute": str(minute[key])} for key in steps[:-1]]
    found = moves.answer("plan", dict(typed, done=done))
    lead = next(one for one in found["leads"] if one["label"] == "Batch 1: Peel ply down")
    kept = {name[4:]: text for name, text in lead["pairs"] if name.startswith("log.")}
    assert kept["crew"] == "Ann" and kept["hands"] == "1" and kept["laid"] == "6.00 m"
    took = {name: float(kept[name].split(" ")[0]) for name in TOP}
    assert took == {"place": 4, "tool": 7, "clean": 7, "wet": 7, "lay": 4, "roll": 7, "peel": 6}
    entry = moves.answer("log", kept)
    assert not entry["errors"] and "6 m laid" in entry["lines"][0]["text"].replace("6.00", "6")
    learnt = by_name(moves.answer("own_rates", {"rows": [kept] * 3}))
    assert learnt["roll"]["rough"].startswith("from 3 own batches")
    assert learnt["roll"]["value"] * 60 == pytest.approx(6 / 7, rel=0.03)


def test_layers_of_tape_teach_nothing_of_one():
    """Two layers take twice as long: as a pace per metre it would be half of what these hands do."""
    values = read(dict(HAND, running="yes", now="60",
                       pieces=[{"name": "Keel", "length": "2", "putty": "50", "wet": "40", "layers": "2"}]))
    batch, = plan.planned(values).followed()
    ends = {step.key: step.end for step in batch.steps}
    # 9 + 2.5 x 2 min until the tape is wet twice over at 1 min/m: 4 min
    assert ends["wet"] - ends["wet_mix"] == pytest.approx(4 * 60)
    told = batch._replace(steps=[step._replace(done=True) for step in batch.steps])
    pairs = plan_leads.record_pairs(batch_record.record(values, told, batch.steps[-1].end))
    kept = dict(moves.in_text([{"pairs": pairs}], reader())[0]["pairs"])
    assert kept["laid"] == "2.00 m" and kept["tool"] == "2.0 min" and not {"wet", "lay", "roll"} & set(kept)


def test_a_step_that_was_not_told_teaches_nothing():
    values = read(dict(HAND, running="yes", now="30"))
    batch = plan.planned(values).followed()[0]
    assert set(batch_record.spans(batch, {"mix": 360.0, "tool": 1000.0, "clean": 1300.0})) == {"clean"}
    assert batch_record.spans(batch, {"mix": 360.0, "place": 360.0}) == {}  # two told at once


ANN = {"name": "Ann", "hands": "1"}


@pytest.mark.parametrize(("more", "said", "rate"), [
    ({}, "all from memory", 0.8),
    ({"hand": "novice"}, "all from memory", 0.4),
    ({"crew": {**ANN, "learned": "roll 0.5, 0.4 to 0.6, from 3"}},
     "roll from 3 own batches, 0.4 to 0.6; place, tool, clean, wet out, lay, peel ply from memory", 0.5),
    ({"crew": {**ANN, "learned": "roll 0.5, 0.4 to 0.6, from 1"}}, "roll from 1 own batch, 0.4 to 0.6", 0.5),
    ({"crew": {**ANN, "roll": "0.7", "learned": "roll 0.5, 0.4 to 0.6, from 3"}}, "roll the crew's own", 0.7),
    ({"crew": {"id": "1", "roll": "0.8 m/min", "learned": "roll 0.5, 0.4 to 0.6, from 3"}}, "from 3 own", 0.5),
    ({"roll_rate": "0.9", "crew": {**ANN, "roll": "0.7"}}, "roll typed", 0.9),
])
def test_the_plan_says_which_rates_it_counts_and_where_from(more, said, rate):
    line = by_name(answered(**more))["rates"]
    assert said in line["rough"]
    counted = {one.name: one.rate for one in work_rates.paces(read(dict(FREE, **more)))}
    assert counted["roll"] * 60 == pytest.approx(rate)


def test_the_crew_brings_its_hands_and_typed_hands_go_before_it():
    one, two = answered(people="")["lines"], answered(people="", crew="2")["lines"]
    assert [one, two] != [two, two] and answered(people="2", crew="1")["lines"] == two


def test_slower_own_hands_lay_less():
    fast, slow = (by_name(answered(people="", crew={**ANN, "learned": f"roll {rate}, 0.1 to 2, from 3"}))
                  for rate in (1.2, 0.3))
    assert slow["batches"]["value"] > fast["batches"]["value"]


@pytest.mark.parametrize("text", ["roll", "roll 0.5", "fly 0.5, 0.4 to 0.6, from 3", "roll 0, 0 to 0.6, from 3", "; ",
                                  "roll 0.5, 0.4 to x, from 3"])
def test_what_does_not_read_as_learned_is_told_at_its_field(text):
    found = moves.answer("plan", dict(FREE, crew={**ANN, "learned": text}))
    assert [error["field"] for error in found["errors"]] == ["crew.learned"]


def test_a_crew_travels_in_a_link_as_its_figures():
    typed = {"crew": {"name": "Ann", "hands": "2", "learned": "roll 0.5, 0.4 to 0.6, from 3"}}
    pairs = links.pairs(plan.INPUTS, typed)
    assert dict(pairs)["crew.learned"] == typed["crew"]["learned"]
    assert read(dict(FREE, **links.tree(pairs)))["crew"]["hands"] == 2


@pytest.mark.parametrize("text", [
    "roll 500, 0.4 to 600, from 3", "roll 0.5, 0.6 to 0.7, from 3", "roll 0.5, 0.4 to 0.6, from 0",
    "roll 0, 0 to 0, from 3"])
def test_learned_rates_that_were_written_over_are_refused_where_they_cannot_be(text):
    found = moves.answer("kit", {"kind": "people", "people": {"name": "Ann", "hands": "1", "learned": text}})
    assert found["errors"][0]["field"] == "people.learned"

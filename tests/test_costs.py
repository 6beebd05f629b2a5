"""What a question may cost: pieces, bytes and steps of the dearest that is accepted, and what is refused instead.

A step is a line of the engine that is run, counted by the interpreter's own trace: it does not depend on the machine.
A phone at a quarter of this machine's speed runs about half a million of them in a second, the server some three
million (60 joints, measured); `make bench` measures the milliseconds.
"""
import asyncio
import json
import random
import sys
import threading

import cases
import hardest
import house
import httpx
import pytest
from covemix.shared.boat import boat_limits, hull, shopping
from covemix.shared.catalogue import demo_boat
from covemix.shared.door import moves
from covemix.shared.forms.inputs import read
from covemix.shared.words.written import sentences
from starlette.testclient import TestClient
from waits import in_own_thread

MOST_BYTES = 300_000
MOST_STEPS = 700_000  # lines of Python: some 75 ms, a tenth of them for making text of what is said
LONG = {"joints": [{"copies": "100", "layers": "8", "length": "200"}]}


class TooDear(Exception):
    pass


def steps_of(ask, most=MOST_STEPS):
    """(answer, lines run); TooDear as soon as they are more than `most`, so that nothing dear is waited for."""
    count = 0
    sentences("en")  # read once by a server as it starts, and never by a phone

    def trace(frame, event, _):
        nonlocal count
        count += event == "line"
        if count > most:
            raise TooDear
        return trace

    before = sys.gettrace()
    sys.settrace(trace)
    try:
        return ask(), count
    finally:
        sys.settrace(before)


def weighed(move, typed):
    """(errors, steps, bytes) of one question that nobody asked before."""
    answer, steps = steps_of(lambda: moves.answer(move, typed))
    return answer["errors"], steps, len(json.dumps(answer, ensure_ascii=False, separators=(",", ":")).encode())


@pytest.mark.parametrize(("move", "why"), [(move, why) for move, why, _ in hardest.QUESTIONS])
def test_the_dearest_question_of_each_kind_is_cheap_or_refused_at_once(move, why):
    typed = next(typed for own, text, typed in hardest.QUESTIONS if (own, text) == (move, why))
    errors, steps, size = weighed(move, typed)
    assert steps <= MOST_STEPS
    assert size <= (2_000 if errors else MOST_BYTES)


@pytest.mark.parametrize("move", moves.names())
def test_no_mixture_of_limits_is_dear(move):
    """A hunt: each input at its lowest, usual or highest, lists full, mixtures that cost more are mixed further."""
    draw, found = random.Random("costs-" + move), []
    plain = [cases.tree(moves.module(move).INPUTS, draw) for _ in range(12)]
    for turn in range(50):
        typed = plain[turn] if turn < 12 else hardest.mixture(move, draw) if turn < 25 else (
            hardest.changed(move, draw.choice(found[-3:])[2], draw))
        errors, steps, size = weighed(move, typed)
        assert size <= MOST_BYTES, typed
        if not errors:
            found = sorted([*found, (steps, size, typed)], key=lambda one: one[0])
    assert found


def test_what_makes_too_many_pieces_is_refused_at_the_row_that_makes_most_with_what_to_do():
    error, = moves.answer("boat", LONG)["errors"]
    assert error["field"] == "joints.0.copies"
    assert error["message"] == ("Joint 1: all joints make 74,000 pieces of tape and peel ply, at most 1,000 "
                                "fit. Type fewer copies, or split the boat into two")


@pytest.mark.parametrize(("typed", "field", "words"), (
    ({"joints": [{"kind": "outside", "copies": "100", "layers": "0", "length": "0.3"}] * 7}, "joints.0.copies",
     "700 faces"),
    ({"joints": [{"angle": "100 : 110 : 120 : 130 : 140"}] * 60}, "joints.0.angle", "300 angles"),
    ({"joints": [{"length": "200"}], "reach": "0.5"}, "reach", "one layer takes more than 100"),
    ({"joints": [{"length": "180", "layers": "1"}], "roll": "2.5"}, "roll", "more than 60 rolls"),
    ({"packs": "0.01 : 0.02 : 25"}, "packs", "more than 100 times"),
))
def test_products_of_inputs_are_refused_at_the_field_that_mends_them(typed, field, words):
    error, = moves.answer("boat", typed)["errors"]
    assert error["field"] == field and words in error["message"]


def test_a_joint_in_crumbs_of_tape_is_refused():
    error, = moves.answer("joint", {"length": "50", "reach": "0.2501", "stagger": "0", "overlap": "250"})["errors"]
    assert error["field"] == "reach"


def test_a_plan_of_more_than_a_day_says_how_to_ask():
    row = {"length": "100", "putty": "200", "wet": "200"}
    for rows, words in ((60, "more than 120 pieces"), (3, "")):
        errors = moves.answer("plan", {"temperature": "20", "pieces": [row] * rows})["errors"]
        assert [(error["field"], words in error["message"]) for error in errors] in ([("pieces", True)], [])
        assert bool(errors) == bool(words)


def test_the_pieces_that_are_counted_are_those_that_are_cut():
    """The count that refuses and the list that is told are one."""
    values, _ = read(moves.module("boat").INPUTS, {})
    work = hull.seams(values)
    assert sum(boat_limits.pieces_of(row, spec, made) for row, spec, made, _, _ in work) == len(
        hull.tape_pieces(work)) + len(hull.ply_pieces(work, values))


def test_the_bulk_of_a_large_need_goes_into_the_largest_packs():
    (small, large), held = shopping.packs(5003.2, (1.0, 5.0))
    assert (small, large, held) == (4, 1000, 5004.0)


@pytest.fixture(scope="module")
def client():
    with TestClient(house.app(), raise_server_exceptions=False) as client:
        yield client


MANY = json.dumps({f"k{n}": 1 for n in range(20_000)}).encode()


@pytest.mark.parametrize(("body", "words"), (
    (MANY, "More than 2,000 names and values"),
    (json.dumps({"joints": [{f"k{n}": 1} for n in range(10_000)]}).encode(), "More than 2,000 names and values"),
    (json.dumps({"k": [0] * 80_000}).encode(), "More than 2,000 names and values"),
    (json.dumps({f"k{n}": 1 for n in range(1_900)}).encode(),
     "there are no inputs of these names here: k0, k1, k2 and 1,897 more"),
    (json.dumps({"n" * 200_000: 1}).encode(), "no input of that name"),
    (json.dumps({"joints": [{f"k{n}": 1 for n in range(30)}] * 60}).encode(), "and 1,797 more"),
    (json.dumps({"joints": [[]] * 60}).encode(), "right kind of object"),
))
def test_a_body_of_unknown_names_is_refused_in_a_short_sentence(client, body, words):
    response = client.post("/api/boat", content=body, headers={"content-type": "application/json"})
    assert response.status_code == 422
    assert words in response.json()["errors"][0]["message"]
    assert len(response.content) < 4_000


def test_a_long_body_is_looked_at_off_the_loop_that_serves_all_others(monkeypatch):
    """While one body is counted the loop still answers: it is another thread that reads it."""
    from covemix.server import api
    seen, count, answered = [], api.too_many, threading.Event()

    def slow(body):
        seen.append(threading.current_thread())
        answered.wait(20)
        return count(body)

    monkeypatch.setattr(api, "too_many", slow)

    async def asked():
        loop = threading.current_thread()
        transport = httpx.ASGITransport(app=house.app())
        async with httpx.AsyncClient(transport=transport, base_url="http://x") as web:
            long = asyncio.create_task(web.post("/api/boat", content=MANY,
                                                headers={"content-type": "application/json"}))
            while not seen and not long.done():
                await asyncio.sleep(0.005)
            light = await web.post("/api/ratio", json={})
            done = long.done()
            answered.set()
            return loop, light, done, await long

    loop, light, done, long = in_own_thread(asyncio.run, asked())
    assert light.status_code == 200 and not done and seen[0] is not loop
    assert long.status_code == 422


PIECES = {str(place): {"name": f"Seam {place}", "length": "1.2", "putty": "60", "wet": "80"} for place in range(60)}
FACES = {str(place): {"area": "2.5", "coats": "3"} if place % 2 else {
    "work": "sheathe", "area": "1.5", "wet": "300", "coats": "2"} for place in range(20)}


@pytest.mark.parametrize(("move", "seams", "faces"), [
    ("boat", {"joints": {str(n): dict(demo_boat.JOINTS[n % len(demo_boat.JOINTS)]) for n in range(60)}},
     {str(n): dict(demo_boat.SURFACES[n % len(demo_boat.SURFACES)]) for n in range(20)}),
    ("plan", {"temperature": "20", "pieces": PIECES}, FACES)])
def test_sixty_joints_and_twenty_surfaces_cost_at_most_twice_the_joints(move, seams, faces):
    """By lines run, which no machine changes; `make bench` measures the same two in a phone."""
    none = {"surfaces": {"0": {"work": "fillet"}}} if move == "boat" else {}
    alone, both = [weighed(move, dict(seams, **more)) for more in (none, {"surfaces": faces})]
    assert not alone[0] and not both[0]
    assert alone[1] < both[1] <= 2 * alone[1], (alone[1], both[1])

"""Links: a card printed last month never quietly means another ratio. What is not known here is named and refused."""
import house
import pytest
from covemix.shared.door import handover, moves
from covemix.shared.forms import links
from covemix.shared.forms.inputs import UNITS_INPUT
from starlette.testclient import TestClient

SCREENS = [name for name, _ in moves.SCREENS]


@pytest.fixture(scope="module")
def client():
    with TestClient(house.app()) as client:
        yield client


def names_of(declared, before=""):
    """(dotted name, input) of everything that a form of these inputs could send."""
    found = [(before + item.name, item) for item in declared]
    for item in declared:
        found += [(before + extra, item) for extra in item.extra_names()]
        if item.kind == "pick":
            found += names_of(item.record.fields, before + item.name + ".")
        if item.kind == "group":
            found += names_of(item.fields, f"{before}{item.name}.{item.most - 1}.")
    return found


def refused(screen, pairs):
    return handover.brought(screen, pairs, 99)["refused"]


@pytest.mark.parametrize("screen", SCREENS)
def test_every_declared_name_is_known_and_the_same_name_mistyped_is_not(screen):
    names = [*names_of(moves.screen_inputs(screen)), ("units", UNITS_INPUT)]
    for name, _ in names:
        assert handover.sorted_out(moves.screen_inputs(screen), [[name, ""]])[1:] == ([], []), name
        for other in (name + "x", name[:-1] + "-"):
            assert f"'{other[:40]}'" in refused(screen, [["units", "metric"], [other, "2-1"]]), other
    assert refused(screen, [[name, ""] for name, _ in names][:links.MOST_PAIRS]) == ""


@pytest.mark.parametrize("screen", SCREENS)
def test_a_row_or_a_choice_that_is_not_known_is_named(screen):
    looked = 0
    for name, item in names_of(moves.screen_inputs(screen)):
        if item.kind in ("pick", "choice") or (item.kind == "amount" and name.endswith("_is")):
            looked += 1
            assert f"'{(name + ' = 7-1')[:40]}'" in refused(screen, [[name, "7-1"]]), name
    assert looked or not moves.screen_inputs(screen)


def test_a_row_beyond_the_last_is_not_dropped_either():
    assert "readings.5.shown" in refused("pour", [["amount", "200"], ["readings.5.shown", "90"]])
    assert "readings.00.shown" in refused("pour", [["amount", "200"], ["readings.00.shown", "90"]])


def test_a_name_that_comes_twice_with_another_text_is_refused_and_with_the_same_is_not():
    assert "'system'" in refused("pour", [["system", "2-1"], ["system", "3-1"]])
    assert refused("pour", [["system", "2-1"], ["system", "2-1"]]) == ""
    assert "'system.id'" in refused("pour", [["system", "2-1"], ["system.id", "3-1"]])


def test_many_unknown_names_are_one_short_sentence():
    assert len(refused("pour", [["amount", "1"], *[["x" * 900 + str(n), ""] for n in range(1000)]])) < 400


def test_a_pots_link_is_known_by_its_screen_and_a_mistyped_one_is_not():
    pairs = [["system", "2-1"], ["pot.started", "1700000000"], ["pot.duration", "20 min"],
             ["pot.steps.0.name", "Fill"], ["timing.mass", "240 g"]]
    assert refused("clock", pairs) == ""
    assert "'pot.durration'" in refused("clock", [*pairs, ["pot.durration", "30 min"]])


@pytest.mark.parametrize(("query", "field"), [
    ("systm=2-1", "systm"),
    ("system=7-1", "system"),
    ("system=2-1&system=3-1", "system"),
    ("amount_is=buckets&amount=2", "amount_is"),
    ("v=1&system=2-1&amount=240&end=000", ""),
    ("v=9&system=2-1", ""),
    ("system=2-1&end=abc", ""),
    ("a.b.c.d.e.f.g=1", "a.b.c.d.e.f.g"),
    ("&".join(f"x{n}=1" for n in range(2500)), ""),
])
def test_the_api_refuses_a_link_that_it_cannot_read_whole(client, query, field):
    response = client.get("/api/ratio?" + query)
    assert response.status_code == 422
    assert response.json()["errors"][0]["field"] == field
    assert response.json()["lines"] == []


def test_the_api_takes_a_sealed_link_of_the_screen_by_each_of_its_moves(client):
    link = handover.handed("pour", [["amount", "200"], ["system", "2-1"], ["thicken", "yes"]])["link"]
    for move in dict(moves.SCREENS)["pour"]:
        assert client.get(f"/api/{move}", params=link).status_code == 200, move


def test_the_page_names_what_it_does_not_know_and_shows_no_figure_for_it(client):
    page = client.get("/", params={"systm": "2-1", "amount": "240"}).text
    assert "&#39;systm&#39;" in page
    assert 'data-line="drawn_a"' in client.get("/", params={"system": "2-1"}).text
    assert 'data-line="drawn_a"' not in page
    told = client.get("/", params={"systm": "2-1", "amount": "240", "as": "text"})
    assert told.status_code == 422 and "'systm'" in told.text

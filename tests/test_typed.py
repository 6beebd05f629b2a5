"""What a program sends: no number can be misread, no name is passed over, each refusal says what may stand there."""
import json

import house
import numpy
import pytest
from covemix.server import examples
from covemix.server.typed import Taken, named, units_of
from covemix.shared.door import handover, moves
from covemix.shared.forms import inputs, links
from covemix.shared.forms.quantities import Parts
from covemix.shared.things.records_shed import RECORDS
from covemix.shared.words.units import BY_NAME
from openapi_spec_validator import OpenAPIV31SpecValidator
from starlette.testclient import TestClient


@pytest.fixture(scope="module")
def client():
    with TestClient(house.app()) as client:
        yield client


@pytest.fixture(scope="module")
def schema(client):
    return client.get("/openapi.json").json()


def radius(answer):
    return next(line["value"] for line in answer.json()["lines"] if line["name"] == "radius")


def refused(response):
    assert response.status_code == 422
    return {error["field"]: error for error in response.json()["errors"]}


def every_field():
    """(of what, its fields): each object that a program may send."""
    found = [(name, moves.module(name).INPUTS) for name in moves.names()]
    found += [(record.name, record.fields) for record in RECORDS]
    return found + [(f"{name}.{item.name}", item.fields) for name in moves.names() for item in moves.module(name).INPUTS
                    if item.kind == "group"]


def test_a_thickness_means_the_same_in_every_spelling_and_a_bare_one_is_refused(client):
    """5.828 of 6 mm as from the form (tests/test_fillet.py): six thousandths are never taken for millimetres."""
    spelled = ({"thickness_mm": 6}, {"thickness_m": 0.006}, {"thickness": "6 mm"}, {"thickness": "0.6 cm"},
               {"thickness": "6 mm", "units": "us"}, {"thickness_mm": 6, "units": "us"})
    assert {round(radius(client.post("/api/joint", json=body)), 9) for body in spelled} == {0.014485281}
    for bare in (0.006, 6, "6", " 6 "):
        told = refused(client.post("/api/joint", json={"thickness": bare}))["thickness"]["message"]
        assert "thickness_mm" in told and "thickness_m," in told and '"6 mm"' in told


def test_a_temperature_is_taken_in_kelvin_as_text_and_by_its_name(client):
    asked = ({"air_degC": 25}, {"air_K": 298.15}, {"air": "298.15 K"}, {"air": "25 °C"}, {"air": "77 °F"})
    told = [client.post("/api/heat", json=body).json()["lines"] for body in asked]
    assert all(lines[0]["value"] == pytest.approx(told[0][0]["value"], rel=1e-9) for lines in told)
    values, errors = inputs.read(moves.module("heat").INPUTS, {"air": "298.15 K"})
    assert (values["air"], errors) == (298.15, [])


@pytest.mark.parametrize(("of", "fields"), every_field(), ids=lambda one: one if isinstance(one, str) else "")
def test_every_quantity_has_a_name_for_each_unit_and_no_two_names_are_alike(of, fields):
    plain = [name for item in fields for name in (item.name, *item.was, *item.extra_names())]
    with_unit = [name for item in fields for name in named(item)]
    assert len({*plain, *with_unit}) == len(plain) + len(with_unit)
    for item in fields:
        if getattr(item, "unit", "") and BY_NAME[item.unit].quantity != "count":
            assert units_of(item)[0] == item.unit


@pytest.mark.parametrize("move", moves.names())
def test_what_stands_as_an_example_in_the_description_is_read(client, move):
    """Each example of each input, alone, by the kinds behind the form; and the whole of a move's own."""
    answer = client.post(f"/api/{move}", json=examples.BODIES[move])
    assert answer.status_code == 200 and answer.json()["errors"] == []
    fields = moves.module(move).INPUTS
    for item in fields:
        assert Taken(fields, {item.name: examples.example(item)}).errors == []
        for name, unit in named(item).items():
            if item.kind != "amount":
                value = examples.numbers(item, unit) if isinstance(item, Parts) else examples.number(item, unit)
                assert Taken(fields, {name: value}).errors == []


def test_every_schema_of_an_input_says_its_limits_its_choices_and_an_example(schema):
    def ends(one):
        return [end for each in one["anyOf"] for end in ends(each)] if "anyOf" in one else [one]

    looked = 0
    for name, model in schema["components"]["schemas"].items():
        if not name.endswith(("Request", "Row")) and name.lower() not in {record.name for record in RECORDS}:
            continue
        assert "examples" in model
        for field, one in model["properties"].items():
            looked += 1
            assert "examples" in one and "default" not in one, (name, field)  # a generated client would send it
            for end in ends(one):
                assert end.get("type") != "number" or {"minimum", "exclusiveMinimum"} & set(end), (name, field)
    assert looked > 700
    joint = schema["components"]["schemas"]["JointRequest"]["properties"]
    number = ends(joint["thickness_mm"])[0]
    assert (number["exclusiveMinimum"], number["maximum"], number["examples"]) == (0, 60, [6])
    assert ends(joint["kind"])[0]["enum"] == ["inside", "outside", "both", "bulkhead", "butt", "strip"]
    defaults = [ends(joint[field])[0].get("default") for field in ("kind", "thickness", "thickness_mm", "thickness_m")]
    assert defaults == ["inside", "6 mm", 6, 0.006]
    for move in moves.names():
        own = schema["components"]["schemas"][move.capitalize() + "Request"]["properties"]
        for item in moves.module(move).INPUTS:
            if item.default_in("metric") and not item.repeats and not getattr(item, "follows", ()):
                assert any("default" in end for end in ends(own[item.name])), (move, item.name)


def test_a_linter_finds_nothing_in_the_description(schema):
    assert [error.message for error in OpenAPIV31SpecValidator(schema).iter_errors()] == []
    for path in schema["paths"].values():
        for operation in path.values():
            assert operation["summary"] and operation["description"] and operation["tags"] == ["moves"]
            for parameter in operation.get("parameters", ()):
                assert parameter["description"] and parameter["schema"].get("examples", parameter["schema"].get("enum"))
    assert schema["tags"][0]["description"]


def test_a_list_of_numbers_is_taken_where_parts_are_asked(client):
    asked = [{"by_weight": [100, 30]}, {"by_weight": "100:30"}, {"by_weight": [100.0, "30"]}]
    lines = [client.post("/api/ratio", json={"system": one, "amount_g": 240}).json()["lines"] for one in asked]
    assert lines[0] == lines[1] == lines[2] and lines[0]
    dense = {"by_weight": [100, 30], "densities_kg_per_m3": [1120, 980]}
    text = {"by_weight": [100, 30], "densities": "1120 : 980 kg/m3"}
    assert client.post("/api/ratio", json={"system": dense}).json() == client.post(
        "/api/ratio", json={"system": text}).json()
    told = refused(client.post("/api/ratio", json={"system": {"densities": [1.12, 0.98]}}))
    assert "densities_g_per_mL" in told["system.densities"]["message"]
    assert "system.by_weight" in refused(client.post("/api/ratio", json={"system": {"by_weight": [100, None]}}))
    assert "thickness_mm" in refused(client.post("/api/joint", json={"thickness_mm": [6, 7]}))


@pytest.mark.parametrize("scalar", [numpy.float64(6), numpy.float32(6), numpy.int64(6), numpy.array(6.0)])
def test_numbers_of_numpy_are_numbers(scalar):
    taken = Taken(moves.module("joint").INPUTS, {"thickness_mm": scalar, "copies": numpy.int32(2)})
    assert (taken.tree, taken.errors) == ({"thickness": "6 mm", "copies": "2"}, [])
    assert Taken(moves.module("joint").INPUTS, {"thickness_mm": numpy.bool_(True)}).errors
    assert Taken(moves.module("spreader").INPUTS, {"radii_mm": numpy.array([10, 15])}).tree == {"radii": "10 : 15 mm"}


def test_a_refusal_says_what_is_allowed(client):
    told = refused(client.post("/api/joint", json={"kind": "corner", "angle_deg": 400, "thickness_mm": 6}))
    assert told["kind"]["allowed"] == ["inside", "outside", "both", "bulkhead", "butt", "strip"]
    assert "359" in told["angle_deg"]["message"]
    limits = refused(client.post("/api/joint", json={"angle": "none"}))["angle"]
    assert (limits["low"], limits["high"], limits["unit"]) == (1, 359, "deg")
    assert refused(client.post("/api/ratio", json={"amount_is": "bucket"}))["amount_is"]["allowed"][0] == "total"
    assert "3-1" in refused(client.post("/api/ratio", json={"system": "7-7"}))["system"]["allowed"]
    for path in ("/api/heat?air=25&container=box", "/api/heat?air=25&container=%20box"):
        assert "cup" in refused(client.get(path))["container"]["allowed"]
    assert refused(client.get("/api/heat?airr=25"))["airr"]["allowed"][0] == "air"
    assert "thickness_mm" in refused(client.post("/api/joint", json={"thickness_mn": 6}))["thickness_mn"]["allowed"]


def test_what_is_sent_is_read_also_where_nobody_asks_for_it(client):
    assert "bevel_deg" in refused(client.post("/api/joint", json={"kind": "inside", "bevel_deg": 1000}))
    assert "finish" in refused(client.post("/api/joint", json={"kind": "inside", "finish": "square"}))


@pytest.mark.parametrize("body", [
    b'{"thickness_mm": 6, "thickness_mm": 9}', b'{"thickness": "6 mm", "thickness_mm": 9}',
    b'{"thickness_mm": 6, "thickness_m": 0.006}',
    b'{"layers": [{"width_mm": 75, "width_mm": 50, "weight": "300 g/m2"}]}',
])
def test_a_doubled_name_is_refused(client, body):
    response = client.post("/api/joint", content=body, headers={"content-type": "application/json"})
    assert "given twice" in next(iter(refused(response).values()))["message"]
    many = b'{"joints": [' + b",".join([b'{"name": "Keel"}'] * 900) + b'], "people": 1, "people": 2}'
    long = client.post("/api/boat", content=many, headers={"content-type": "application/json"})
    assert "given twice" in refused(long)["people"]["message"]


def test_a_doubled_name_of_a_link_is_refused_in_every_spelling(client):
    assert "air" in refused(client.get("/api/heat?air=25&air_K=298"))
    assert client.get("/api/heat?air_K=298.15").status_code == 200
    assert "air_K" in refused(client.get("/api/heat?air_K=25%20°C"))


def test_a_link_that_people_have_is_read_as_it_was_made_and_says_how(client):
    """No unit, as the first builds wrote links; US units; a sealed one: the answers of the page."""
    told = client.get("/api/heat?air=25&batch=100").json()
    assert told["understood"] == [["air", "25 °C"], ["batch", "100 g"]]
    page = moves.answer("heat", links.tree([("air", "25"), ("batch", "100")]))
    assert told["lines"] == json.loads(json.dumps(page["lines"]))
    us = client.get("/api/heat?units=us&air=77&batch=3.5").json()
    assert us["understood"] == [["air", "77 °F"], ["batch", "3.5 oz"]]
    link = handover.handed("pour", [["amount", "200"], ["system", "2-1"]])["link"]
    assert client.get("/api/ratio", params=link).status_code == 200
    cut = [[name, text + "0" if name == "amount" else text] for name, text in link]
    assert client.get("/api/ratio", params=cut).status_code == 422
    shown = client.get("/api/measure?way=scale&system.by_weight=100:30&readings.0.shown=75&amount=100").json()
    assert ["readings.0.shown", "75 g"] in shown["understood"]


def test_a_moves_own_address_does_not_need_its_switch(client):
    body = {"system": {"by_weight": [100, 30]}, "way": "scale", "in_cup": [{"mass_g": 120}, {"mass_g": 40}]}
    own = client.post("/api/rescue", json=body).json()
    assert own["lines"] and own == client.post("/api/rescue", json={**body, "rescue": "yes"}).json()
    assert client.post("/api/rescue", json={**body, "rescue": "no"}).json()["lines"] == []
    asked = "system.by_weight=100:30&way=scale&in_cup.0.mass_g=120&in_cup.1.mass_g=40"
    assert client.get("/api/rescue?" + asked).json()["lines"] == own["lines"]
    assert client.post("/api/thicken", json={}).json()["lines"]
    link = handover.handed("pour", [["amount", "200"], ["system", "2-1"]])["link"]  # of a page where nothing is rescued
    assert client.get("/api/rescue", params=link).json()["lines"] == []


def test_a_head_is_answered_where_a_get_is(client):
    for path in ("/api/moves", *(f"/api/{name}" for name in moves.names()), "/openapi.json"):
        assert client.head(path).status_code == client.get(path).status_code
        assert client.head(path).content == b""


def test_a_number_is_told_back_only_where_it_was_typed(client):
    assert client.post("/api/heat", json={"air_degC": 25, "batch_kg": 1.125}).json()["understood"] == []
    typed = client.post("/api/heat", json={"air_degC": 25, "batch": "1,125 g"}).json()["understood"]
    assert [name for name, _ in typed] == ["batch"]

"""Kinds of input: one class says how it is read, drawn, linked, spoken and modelled. A made-up one, outside the engine,
works wherever the engine's own do."""
import re
import threading

import jinja2
import pytest
import switch
from covemix.server import examples, reference, thread_memo
from covemix.server.build import HOUSE, Build
from covemix.server.models import query_parameters, request_model
from covemix.server.pages import Pages
from covemix.server.typed import Taken, allowed_at, named
from covemix.shared.door import card, handover, moves
from covemix.shared.forms import inputs, links
from covemix.shared.forms.clock_times import Clock
from covemix.shared.forms.declared import Input
from covemix.shared.forms.quantities import Measured
from covemix.shared.words.texts import said
from covemix.shared.words.written import reader
from pydantic import Field


class Switch(switch.Switch):
    """As a server has it, which models its values for the API too."""

    def modelled(self, models, owner):
        return bool | str | None, Field(default=None, description=self.label + ".")


class Depth(Input):
    """How deep something was pressed in, made up: a length that is read from a program too."""

    def read(self, typed, path, values):
        return typed

    def own_units(self):
        return ["mm"]

    def from_program(self, taken, value, unit, path, tree):
        return taken.quantity(self, value, unit, path, tree)

    def number_modelled(self, models, unit):
        return {"type": "number", "examples": [1 if unit == "m" else 1000]}

    def exemplified(self, examples):
        return "1 m"

    def may_be(self):
        return {"unit": "mm", "low": 0, "high": 9}


@pytest.fixture
def tent(monkeypatch):
    """The move dew with a switch more, that its answer follows."""
    monkeypatch.setattr(thread_memo, "_of_thread", threading.local())  # what the server keeps was made without it
    dew = moves.module("dew")
    answer = dew.answer
    monkeypatch.setattr(dew, "INPUTS", (*dew.INPUTS, Switch("tent", "A tent over it")))
    monkeypatch.setattr(dew, "answer", lambda values: answer(values)[: 1 if values["tent"] else None])
    return dew.INPUTS[-1]


AIR = {"air": "20", "humidity": "60"}


def test_it_is_read_and_refused_at_its_field(tent):
    assert len(moves.answer("dew", {**AIR, "tent": "on"})["lines"]) == 1 < len(moves.answer("dew", AIR)["lines"])
    assert moves.answer("dew", {**AIR, "tent": "perhaps"})["errors"] == [
        {"field": "tent", "message": "A tent over it: on or off"}]


def test_it_is_drawn_by_its_own_control_and_answered(tent, monkeypatch):
    pages = Pages(Build())
    drawn = jinja2.DictLoader({"controls/switch.html": switch.DRAWN})
    pages.env.loader = jinja2.ChoiceLoader([drawn, pages.env.loader])
    page = pages.render("clock", [("air", "20"), ("tent", "on")])
    assert '<input type="checkbox" name="tent" value="on" checked> A tent over it' in page
    assert 'data-field="tent"' in page
    monkeypatch.setattr(Switch, "knows", lambda self, name, text: True)
    assert 'data-error="tent">A tent over it: on or off</p>' in pages.render("clock", [("air", "20"), ("tent", "x")])


def test_it_travels_in_a_link_but_not_by_default_and_a_strange_one_is_refused(tent):
    inputs = moves.screen_inputs("clock")
    assert links.pairs(inputs, {"air": "20", "tent": "on"}) == [("air", "20"), ("tent", "on")]
    assert links.pairs(inputs, {"air": "20", "tent": "off"}) == [("air", "20")]
    known, refused = handover.opened(inputs, [["air", "20"], ["tent", "on"]], 20)
    assert known == [["air", "20"], ["tent", "on"]] and not refused
    assert "tent = perhaps" in said(handover.opened(inputs, [["tent", "perhaps"]], 20)[1], reader())


def test_it_is_spoken_on_a_card(tent):
    assert card.told(moves.screen_inputs("clock"), [("tent", "on")]) == [["A tent over it", "yes"]]


def test_it_is_modelled_for_the_api(tent):
    model = request_model("dew", moves.module("dew").INPUTS)
    assert model(tent=True).model_dump(exclude_none=True) == {"tent": True}
    assert {"type": "boolean"} in model.model_json_schema()["properties"]["tent"]["anyOf"]
    assert len(moves.answer("dew", {**AIR, **model(tent=True).model_dump(exclude_none=True)})["lines"]) == 1


def test_a_program_sends_it_by_the_plain_name_and_is_told_of_it(tent):
    """Over the API's own way in, as a value, as text, as words that are refused; and in the description."""
    assert Taken([tent], {"tent": True}).tree == {"tent": True}
    assert Taken([tent], {"tent": "on"}).errors == []
    assert Taken([tent], {"tent": "perhaps"}).errors == [{"field": "tent", "message": "A tent over it: on or off"}]
    assert examples.example(tent) == "off"
    told = {one["name"]: one["schema"] for one in query_parameters((tent,))}
    assert told["tent"]["examples"] == ["off"]
    assert [row[0] for row in reference.rows_of([tent])] == ["tent"]


def test_a_made_up_kind_says_itself_what_a_program_may_send():
    """Its units under names that say them, its limits in a refusal, its example: as a value, in query and models."""
    dip = Depth("dip", "How deep")
    assert named(dip) == {"dip_mm": "mm", "dip_m": "m"}
    assert Taken([dip], {"dip_m": 0.2}).tree == {"dip": "0.2 m"} == Taken([dip], {"dip": "0.2 m"}).tree
    assert [one["field"] for one in Taken([dip], {"dip": 0.2}).errors] == ["dip"]
    assert allowed_at([dip], "dip_m") == {"unit": "mm", "low": 0, "high": 9} and allowed_at([Input("x", "")], "x") == {}
    told = {one["name"]: one["schema"] for one in query_parameters((dip,))}
    assert told["dip"] == {"type": "string", "examples": ["1 m"]} and told["dip_mm"]["examples"] == [1000]
    assert {"dip", "dip_mm", "dip_m"} <= set(request_model("dew", (dip,)).model_fields)


def test_nobody_asks_which_kind_an_input_is():
    kinds = [kind for kind in vars(inputs).values() if isinstance(kind, type) and issubclass(kind, Input)]
    assert len(kinds) > 7
    names = "|".join([kind.__name__ for kind in [*kinds, Input, Measured, Clock]])
    asking = re.compile(r"""(item|field|inner|one)(\.kind|\["kind"\]) (==|in|!=) |"""
                        rf"(isinstance|issubclass)\(.*, \(?([\w., ]+[., ])?({names})\b|type\(\w+\) (is|==)")
    assert asking.search("isinstance(item, (Text, Phone))") and asking.search("isinstance(one, inputs.Group)")
    files = [path for folder in ("shared", "server", "library", "bench", "webui/templates")
             for path in (HOUSE / folder).rglob("*.*")
             if path.suffix in (".py", ".html")]
    assert len(files) > 150
    assert [(path.name, line.strip()) for path in files for line in path.read_text().splitlines()
            if asking.search(line)] == []

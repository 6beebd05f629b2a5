"""A made-up kind of input on a phone: a house whose dew asks by a switch whether a tent is over it."""
import shutil
import threading

import pytest
import switch
from covemix.server import thread_memo
from covemix.server.build import HOUSE
from covemix.shared.door import moves
from playwright.sync_api import expect

from .conftest import keep

ASKED = """
from ..forms.switch import Switch
INPUTS += (Switch("tent", "A tent over it"),)
_whole = answer
def answer(values):
    return _whole(values)[:1 if values["tent"] else None]
"""
TYPE = """(field, text) => {
  field.value = text;
  field.dispatchEvent(new Event("input", { bubbles: true }));
}"""


@pytest.fixture
def tented(tmp_path, monkeypatch):
    """The house with it, and the server's own program as well."""
    house = tmp_path / "house"
    for room in ("shared", "webui"):
        shutil.copytree(HOUSE / room, house / room, ignore=shutil.ignore_patterns("__pycache__"))
    kind = (HOUSE / "tests" / "switch.py").read_text().replace("covemix.shared.forms.declared", ".declared")
    (house / "shared" / "forms" / "switch.py").write_text(kind)
    (house / "webui" / "templates" / "controls" / "switch.html").write_text(switch.DRAWN)
    module = house / "shared" / "clock" / "dew.py"
    module.write_text(module.read_text() + ASKED)
    dew = moves.module("dew")
    answer = dew.answer
    monkeypatch.setattr(thread_memo, "_of_thread", threading.local())
    monkeypatch.setattr(dew, "INPUTS", (*dew.INPUTS, switch.Switch("tent", "A tent over it")))
    monkeypatch.setattr(dew, "answer", lambda values: answer(values)[:1 if values["tent"] else None])
    return house


def test_it_works_in_page_link_reload_and_without_signal(phone, served, tented):
    served.stop()
    served.start(tented)
    keep(phone, served.url + "/clock/")
    for name, text in (("air", "20"), ("humidity", "60")):  # one of them stands in a fold
        phone.locator(f"[name={name}]").evaluate(TYPE, text)
    lines, tent = phone.locator("[data-move=dew] [data-line]"), phone.get_by_label("A tent over it")
    expect(tent).not_to_be_checked()
    expect(lines.nth(1)).to_be_attached()
    tent.evaluate("(field) => field.click()")  # it stands in a fold
    expect(lines).to_have_count(1)
    served.stop()
    phone.reload()
    expect(tent).to_be_checked()
    expect(lines).to_have_count(1)
    tent.evaluate("(field) => field.click()")
    expect(lines.nth(1)).to_be_attached()
    phone.reload()
    expect(tent).not_to_be_checked()
    phone.goto(served.url + "/clock/?air=20&humidity=60&tent=on")
    expect(tent).to_be_checked()
    expect(lines).to_have_count(1)

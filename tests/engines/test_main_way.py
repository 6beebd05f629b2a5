"""The main way in each engine, as in tests/browser in Chromium: every screen, typing, the engine in its worker, what is
kept, a link, a newer build, all of it without signal. One browser for each engine: its start is dear.
"""
import json
from urllib.parse import urlencode

import face
import pytest
from browser.serve import Server
from covemix.server.build import HOUSE
from covemix.server.pages import NAV, PAGES
from covemix.shared.door import moves
from house import another_house

from .driver import ENGINES, Engine, Refused

PINNED = json.loads((HOUSE / "webui" / "vendor" / "vendor.json").read_text(encoding="utf-8"))
MICROPYTHON = "MicroPython " + next(one["version"] for one in PINNED if one["name"] == "micropython").partition("+")[0]
AMOUNT = "[name=amount]"
HARDENER = "[data-line=drawn_b] .line-text"
# what the worker says to a question; `by` is who answered
ASKED = """const entrance = document.querySelector("script[type=module]").src;
const { ask } = (await import(entrance)).engine_engine;
return ask({ screen: "pour", pairs: [["amount", "200"]] });"""
BUILD = "return document.documentElement.dataset.build"
NOTICES = "return [...document.querySelectorAll('[data-notice]')].map((one) => one.dataset.notice)"
# the reader of codes for browsers without one, as a tap on "Scan a code" gets it; and what it reads of the code on the
# screen
READER = """const { get } = (await import(document.querySelector("script[type=module]").src)).offline_parts;
const { BarcodeDetector } = await get("share/decoder.js", null);
"""
READ = READER + """const code = document.querySelector("[data-code] .code").cloneNode(true);
code.querySelector("rect").remove(); // its white comes from the style sheet
code.setAttribute("width", "400");
code.setAttribute("height", "400");
const drawn = Object.assign(new Image(), {
  src: `data:image/svg+xml,${encodeURIComponent(new XMLSerializer().serializeToString(code))}` });
await new Promise((done, failed) => { drawn.onload = done; drawn.onerror = failed; });
const canvas = Object.assign(document.createElement("canvas"), { width: 500, height: 500 });
const paper = canvas.getContext("2d");
paper.fillStyle = "white";
paper.fillRect(0, 0, 500, 500);
paper.drawImage(drawn, 50, 50, 400, 400);
const [found] = await new BarcodeDetector({ formats: ["qr_code"] }).detect(canvas);
return found?.rawValue;"""
LOOK = "(await navigator.serviceWorker.getRegistration()).update()"


def drawn(amount: str) -> str:
    """The hardener of so much of the example, without a scale, by the engine itself."""
    lines = moves.answer("measure", {"amount": amount})["lines"]
    return str(next(line["text"] for line in lines if line["name"] == "drawn_b"))


def pours(engine: Engine, amount: str) -> None:
    engine.type(AMOUNT, amount)
    engine.says(HARDENER, drawn(amount))


def answered_in_the_worker(engine: Engine) -> None:
    """A second time where the engine fell (WPE WebKit 2.38 on a busy machine): the next question starts it anew."""
    try:
        got = engine.later(ASKED)
    except Refused:
        got = engine.later(ASKED)
    assert got["by"] == MICROPYTHON


def a_first_visit(engine: Engine, served: Server) -> None:
    engine.go(served.url)
    engine.size(390, 844)
    pours(engine, "200")
    answered_in_the_worker(engine)
    engine.says("[data-notice=ready]", "works without signal")
    assert engine.now(NOTICES) == ["ready"]  # and no newer build is offered
    engine.click("[data-notice=ready] button")
    assert engine.now(face.FACES) == [] and engine.later(face.KEPT)
    assert engine.later(READER + "return Boolean(BarcodeDetector);")


def without_signal(engine: Engine, served: Server) -> None:
    served.stop()
    engine.reload()
    assert engine.now("return document.querySelector(arguments[0]).value", AMOUNT) == "200"
    engine.until(f"return (() => {{ {face.FACES} }})().includes('{face.BOLD}')")
    assert engine.now(face.FIRST) == "Figures" and abs(engine.now(face.WIDE) - face.width()) < 0.5
    pours(engine, "125")
    answered_in_the_worker(engine)


def every_screen(engine: Engine, served: Server) -> None:
    """By the keys under the thumb, and the others by their address, as a link of paper opens them."""
    for name, path, _ in PAGES:
        if name in NAV:
            engine.click(f".nav-link[data-to={name}]")
        else:
            engine.go(f"{served.url}/{path}")
        engine.until("return document.documentElement.dataset.screen === arguments[0]"
                     " && document.querySelector('main [data-form]')?.classList.contains('live')", name)
        assert engine.now("return document.documentElement.scrollWidth <= innerWidth"), name


def typed_on_joint(engine: Engine, served: Server) -> None:
    engine.go(f"{served.url}/joint/")
    engine.type("[name=thickness]", "9 mm")
    told = moves.answer("joint", {"thickness": "9 mm"})["lines"]
    line = next(one for one in told if one["rank"] == "answer")
    engine.says(f"[data-line={line['name']}] .line-text", line["text"])
    engine.type("[name=thickness]", "none")
    engine.sees("[data-error=thickness]")


def a_kept_system(engine: Engine, served: Server) -> None:
    engine.go(f"{served.url}/kit/")
    engine.click("[data-add=system]")
    engine.choose("[data-editing] [name=system]", "")
    engine.type("[name='system.name']", "Shed mix")
    engine.type("[name='system.by_weight']", "100:40")
    engine.click("[data-editing] [data-keep]")
    engine.says("[data-shelf=system] .entry", "100:40")
    engine.reload()
    engine.says("[data-shelf=system] .entry", "Shed mix")


def a_logged_batch(engine: Engine, served: Server) -> None:
    engine.go(f"{served.url}/log/")
    engine.click("[data-listing] [data-add]")
    engine.type("[name=what]", "50 g for the keel")
    engine.click("[data-editing] [data-keep]")
    engine.says(".entry", "50 g for the keel")
    engine.reload()
    engine.says(".entry", "50 g for the keel")


def a_running_pot(engine: Engine, served: Server) -> None:
    engine.go(f"{served.url}/clock/")
    engine.type("[name=air]", "22")
    engine.click("[data-lead*=timer], [data-move=heat] [data-lead]")
    engine.sees(".pot-minutes")
    before = engine.now(MINUTES)
    engine.reload()
    engine.sees(".pot-minutes")
    assert before - 1 <= engine.now(MINUTES) <= before


MINUTES = "return Number(document.querySelector('.pot-minutes').textContent.split(':')[0])"


def a_link(engine: Engine, served: Server) -> None:
    engine.go(f"{served.url}/?{urlencode({'amount': 321})}")
    engine.says(HARDENER, drawn("321"))
    engine.go(served.url)
    assert engine.now("return document.querySelector(arguments[0]).value", AMOUNT) == "125"


def a_code(engine: Engine, served: Server) -> None:
    engine.click("[data-share]")
    engine.sees("[data-code] .code")
    link = engine.now("return document.querySelector('[data-link]').value")
    assert link.startswith(served.url) and engine.later(READ) == link
    engine.click("[data-sheet] form[method=dialog] button")


def a_newer_build(engine: Engine, served: Server, newer) -> None:
    engine.go(served.url)
    before = engine.now(BUILD)
    served.start(newer)
    engine.later(LOOK)
    engine.sees("[data-notice=update]")
    engine.click("[data-notice=update] .notice-acts button")
    engine.until(BUILD + " !== arguments[0]", before)
    engine.until("return document.querySelector(arguments[0])?.value === '125'", AMOUNT)
    served.stop()
    pours(engine, "240")


WAY = (a_first_visit, without_signal, every_screen, typed_on_joint, a_link, a_code, a_newer_build, a_running_pot,
       a_kept_system, a_logged_batch)


@pytest.mark.parametrize("kind", ENGINES, ids=lambda kind: kind.name)
def test_the_main_way(kind, tmp_path):
    engine, served = kind(), Server()
    try:
        served.start()
        for step in WAY:
            took(step, engine, served, *([another_house(tmp_path)] if step is a_newer_build else []))
    finally:
        engine.quit()
        served.stop()


def took(step, *values) -> None:
    """One step of the way, which a failure names."""
    try:
        step(*values)
    except BaseException as error:
        error.add_note(f"at: {step.__name__.replace('_', ' ')}")
        raise

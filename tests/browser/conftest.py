"""Real Chromium against a real server: fixtures that a person's doings are written with."""
import contextlib
import json
import shutil
import time

import pytest
from covemix.server.one_script import one_script
from covemix.shared.door import moves
from house import another_house, build, made_unpacked
from playwright.sync_api import Error, expect, sync_playwright

from .serve import Server, instead

CHROMIUM = shutil.which("chromium-headless-shell") or shutil.which("chromium")
expect.set_options(timeout=20_000)  # a machine with two cores may be busy; what is right is right at once
FLAGS = ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking",
         "--disable-component-update", "--disable-sync"]


def pytest_collection_modifyitems(items):
    """Four browsers on two cores: what fails is tried once more, and the run's last lines count and name it."""
    for item in items:
        if "/browser/" in item.path.as_posix() or "/engines/" in item.path.as_posix():
            item.add_marker(pytest.mark.flaky(reruns=1))


def pytest_terminal_summary(terminalreporter):
    """Why what passed at a second try failed at its first. What both runtimes were asked: how much of it was refused,
    and how many of the answers were different ones."""
    for report in terminalreporter.getreports("rerun"):
        crash = getattr(report.longrepr, "reprcrash", None)
        terminalreporter.write_line(f"{report.nodeid} at first: {crash.message if crash else report.longrepr}")
    rows = [row for report in terminalreporter.getreports("passed") for key, row in report.user_properties
            if key == "asked"]
    if rows:
        asked, refused, distinct = (sum(row[place] for row in rows) for place in (1, 2, 3))
        terminalreporter.section("questions that both runtimes answered alike")
        for name, *counts in sorted(rows):
            terminalreporter.write_line("{:16s} {:5d}, {:4d} refused, {:5d} different answers".format(name, *counts))
        terminalreporter.write_line(f"{asked} in all: {refused / asked:.1%} refused, {distinct / asked:.1%} different")


@pytest.fixture(scope="session")
def chromium():
    with sync_playwright() as playwright:
        browser = playwright.chromium.launch(executable_path=CHROMIUM, args=FLAGS)
        yield browser
        browser.close()


@pytest.fixture(scope="session")
def standing():
    """A server that nobody stops, for tests that need none of their own. What it sends comes unpacked."""
    server = Server().start(made=made_unpacked)
    yield server
    server.stop()


@pytest.fixture
def served():
    """A server of this test's own, to be stopped and restarted."""
    server = Server().start()
    yield server
    server.stop()


# what one of the page's scripts exports, by its path from the folder of all rooms: of those that come as one with the
# first, or by itself
PART = r"""window.part = async (path) => {
  const main = document.querySelector("script[type=module]").src;
  return (await import(main))[path.replace(/\.\w+$/, "").replaceAll(/\W/g, "_")] ?? import(new URL(path, main));
};"""


# a phone that was here before: what it is and the ways in stand over no page (test_in_hand.py opens one that was not)
BEEN = "try { localStorage['covemix.told.here'] ??= 'pour'; } catch { /* none is kept here */ }"


@contextlib.contextmanager
def fresh(chromium, been=True, **more):
    """A fresh phone of 360 x 740, and the script errors on it: any that is left at its end fails."""
    context = chromium.new_context(**{"viewport": {"width": 360, "height": 740}, "locale": "en-GB"} | more)
    context.add_init_script(PART)
    if been:
        context.add_init_script(BEEN)
    context.set_default_timeout(20_000)
    page = context.new_page()
    errors = []
    page.on("pageerror", lambda error: errors.append(str(error)))
    yield page, errors
    context.close()
    assert errors == []


# files that ask for what a phone keeps though their server is one that nobody stops. In the others it keeps no copy of
# that one's pages: to keep one costs as much as to open it
KEPT = {f"test_{name}.py" for name in (
    "evicted", "interpreter", "joint", "no_engine", "picture", "privacy", "recall", "targets", "update")}


@pytest.fixture
def phone(request, chromium):
    """A phone of this test's own."""
    unkept = "standing" in request.fixturenames and request.path.name not in KEPT
    with fresh(chromium, service_workers="block" if unkept else "allow") as (page, _):
        yield page


@pytest.fixture(scope="module")
def shared_phone(chromium):
    """The phone of `same_phone`, with what went wrong on it."""
    with fresh(chromium) as shared:
        yield shared


@pytest.fixture
def same_phone(shared_phone):
    """One phone for all tests that leave it as they found it: to open a page and start the engine takes longest.

    Each test answers for the script errors of its own, and no other for them.
    """
    page, errors = shared_phone
    yield page
    page.evaluate("0")  # an error that is still on its way comes before the answer
    found = list(errors)
    errors.clear()
    assert found == []


@pytest.fixture(scope="session")
def other_build(tmp_path_factory):
    """Another build, made once."""
    return another_house(tmp_path_factory.mktemp("other"))


def engine_with(interpreter):
    """The app with another interpreter in its worker. interpreter: the text of the script."""
    worker = "js/engine/worker.js"
    texts = {**build().scripts, "js/engine/interpreter.js": interpreter}
    return instead((worker,), "text/javascript", one_script(texts, worker, build().together[worker]).encode())


def keep(page, url):
    """Open the app and wait until this phone keeps it."""
    page.goto(url)
    page.evaluate("navigator.serviceWorker.ready.then(() => true)")
    page.wait_for_selector("[data-notice=ready]")
    page.click("[data-notice=ready] button")


def until(page, promised, within=20.0):
    """Waits for what a promise of the page says: `wait_for_function` takes the promise itself for a yes.

    A page that loads itself anew meanwhile is asked again: what it promised went with it.
    """
    end = time.monotonic() + within
    while not _kept(page, promised):
        assert time.monotonic() < end, promised
        page.wait_for_timeout(50)


def _kept(page, promised):
    try:
        return page.evaluate(promised)
    except Error as error:
        if "context was destroyed" not in str(error):
            raise
        return False


def body(page, text):
    """What the body of an async function returns."""
    return page.evaluate(f"async () => {{ {text} }}")


def figure(page, line):
    """The text of one line of the answer."""
    return page.locator(f"[data-line={line}] .line-text").first


def drawn(amount, **typed):
    """What the first screen says of the hardener of so much of the example, without a scale: by the engine itself."""
    lines = moves.answer("measure", {"amount": str(amount), **typed})["lines"]
    return next(line["text"] for line in lines if line["name"] == "drawn_b")


def open_share(page):
    """What is in sight is handed over: its code stands there."""
    page.get_by_role("button", name="Share").click()
    expect(page.locator("[data-code] .code")).to_be_visible()


# a label by weight, as somebody typed it who has a scale; 240 g are weighed as 187 and 53 g
BY_WEIGHT = {"name": "Shed mix", "by_weight": "345 : 98", "densities": "1.150 : 0.980 g/mL"}


def with_a_scale(page):
    """This phone is of somebody who typed that label, so that it is asked for what a scale shows."""
    kept = {"system": {"own": list(BY_WEIGHT.items()), "typed": list(BY_WEIGHT.items())}}
    page.add_init_script(f"localStorage['covemix.choice'] ??= {json.dumps(json.dumps(kept))}")


SILENT = """(word) => {
  const post = Worker.prototype.postMessage;
  Worker.prototype.postMessage = function (...asked) {
    if (asked[0]?.text?.includes(word)) throw new Error("the engine is gone");
    return post.apply(this, asked);
  };
  window.well = () => { Worker.prototype.postMessage = post; };
}"""


def unanswered(page, word=""):
    """The engine of this page answers no question with that word in it, until the page's `well()`."""
    page.evaluate(SILENT, word)


def grow_old(page):
    """This page's browser lacks what the engine needs, from the next page on."""
    page.add_init_script("delete window.BroadcastChannel")


# puts a running pot into the store
POT = """async () => {
  const { put } = await part("store/store.js");
  const typed = [["batch", "300 g"], ["duration", "30 min"]];
  return put("pots", { started: Date.now(), typed, timing: [], system: [], beside: [], done: [], rung: [], said: [] });
}"""

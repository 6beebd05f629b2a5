"""Real Chromium against a real server: fixtures that a person's doings are written with."""
import shutil
import socket
import subprocess
import sys
import time
from pathlib import Path

import httpx
import pytest
from covemix.server.build import HOUSE
from playwright.sync_api import sync_playwright

SERVE = Path(__file__).with_name("serve.py")
CHROMIUM = shutil.which("chromium") or shutil.which("chromium-browser")
FLAGS = ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking",
         "--disable-component-update", "--disable-sync"]


class Server:
    """A server that can be stopped and started again on the same port, with the same house or another."""

    def __init__(self):
        with socket.socket() as free:
            free.bind(("127.0.0.1", 0))
            self.port = free.getsockname()[1]
        self.url = f"http://localhost:{self.port}"
        self.process = None

    def start(self, house: Path = HOUSE, missing: str = ""):
        command = [sys.executable, str(SERVE), str(self.port), str(house), *([missing] if missing else [])]
        self.process = subprocess.Popen(command)
        for _ in range(200):
            try:
                httpx.get(self.url + "/sw.js")
                return self
            except httpx.TransportError:
                time.sleep(0.05)
        raise RuntimeError("the server did not start")

    def stop(self):
        if self.process:
            self.process.kill()
            self.process.wait()
            self.process = None


@pytest.fixture(scope="session")
def chromium():
    with sync_playwright() as playwright:
        browser = playwright.chromium.launch(executable_path=CHROMIUM, args=FLAGS)
        yield browser
        browser.close()


@pytest.fixture(scope="session")
def standing():
    """A server that nobody stops, for tests that need none of their own."""
    server = Server().start()
    yield server
    server.stop()


@pytest.fixture
def served():
    """A server of this test's own, to be stopped and restarted."""
    server = Server().start()
    yield server
    server.stop()


@pytest.fixture
def phone(chromium):
    """A fresh phone of 360 x 740 that fails the test on any script error."""
    context = chromium.new_context(viewport={"width": 360, "height": 740}, locale="en-GB")
    context.set_default_timeout(10_000)
    page = context.new_page()
    errors = []
    page.on("pageerror", lambda error: errors.append(str(error)))
    yield page
    context.close()
    assert errors == []


@pytest.fixture
def other_build(tmp_path):
    """A copy of the house that differs in one line of style: another build."""
    house = tmp_path / "house"
    for room in ("shared", "webui"):
        shutil.copytree(HOUSE / room, house / room, ignore=shutil.ignore_patterns("__pycache__"))
    style = house / "webui" / "css" / "base.css"
    style.write_text(style.read_text() + "\n/* another build */\n")
    return house


def keep(page, url):
    """Open the app and wait until this phone keeps it."""
    page.goto(url)
    page.evaluate("navigator.serviceWorker.ready.then(() => true)")
    page.wait_for_selector("[data-notice=ready]")
    page.click("[data-notice=ready] button")


def figure(page, line):
    """The text of one line of the answer."""
    return page.locator(f"[data-line={line}] .line-text")

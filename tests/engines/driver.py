"""Drives Debian's browsers by WebDriver, with the standard library alone: Firefox by its Marionette, WebKit by http."""
import base64
import contextlib
import json
import os
import shutil
import socket
import subprocess
import tempfile
import time
import urllib.error
import urllib.request
from pathlib import Path
from typing import Any, ClassVar

import pytest
from waits import LONG

UNHAD = Path(__file__).parents[2] / ".venv" / "unhad"  # packages that this machine could not get: `.ci/engines`
PATIENCE = 20  # s for what a page shows; what is right is there in a second

# what a command is called by http and by Marionette: https://www.w3.org/TR/webdriver2/
COMMANDS = {
    "go": ("POST", "/url", "WebDriver:Navigate"),
    "find": ("POST", "/element", "WebDriver:FindElement"),
    "click": ("POST", "/element/{id}/click", "WebDriver:ElementClick"),
    "clear": ("POST", "/element/{id}/clear", "WebDriver:ElementClear"),
    "type": ("POST", "/element/{id}/value", "WebDriver:ElementSendKeys"),
    "now": ("POST", "/execute/sync", "WebDriver:ExecuteScript"),
    "later": ("POST", "/execute/async", "WebDriver:ExecuteAsyncScript"),
    "picture": ("GET", "/screenshot", "WebDriver:TakeScreenshot"),
    "print": ("POST", "/print", "WebDriver:Print"),
    "rect": ("GET", "/window/rect", "WebDriver:GetWindowRect"),
    "set_rect": ("POST", "/window/rect", "WebDriver:SetWindowRect"),
}
# a page's policy lets nothing make a function of a text, so the text of the body stands in that of the script
PROMISED = """const values = [...arguments], done = values.pop();
(async function () {%s})
.apply(null, values).then((ok) => done({ ok }), (error) => done({ bad: String(error) }));"""

# of what has a place and is not hidden, as a kept screen is until it is filled
IN_SIGHT = "one?.getClientRects().length && getComputedStyle(one).visibility === 'visible'"


class Refused(AssertionError):
    """The browser did not do it, and said why."""


def lacks(package: str) -> None:
    """What a test needs of Debian is not here: skipped with a word, but in CI only if it could not be had."""
    if os.environ.get("COVEMIX_CI"):
        unhad = UNHAD.read_text(encoding="utf-8").split() if UNHAD.exists() else []
        assert package in unhad, f"{package} is not installed, and nobody tried: run .ci/engines"
    pytest.skip(f"{package} cannot be had here: run .ci/engines")


def free_port() -> int:
    with socket.socket() as line:
        line.bind(("127.0.0.1", 0))
        port: int = line.getsockname()[1]
        return port


class Engine:
    """One browser with one page. Its own folder holds all that it keeps, and goes with it."""

    name = ""
    package = ""

    def __init__(self) -> None:
        self.room = tempfile.TemporaryDirectory(prefix="covemix-", ignore_cleanup_errors=True)
        self.own = Path(self.room.name)
        self.running: list[subprocess.Popen[bytes]] = []

    def start(self, *command: str, **more: str) -> subprocess.Popen[bytes]:
        with open(self.own / "said", "ab") as said:
            one = subprocess.Popen(command, stdout=said, stderr=said, start_new_session=True,
                                   env={**os.environ, "HOME": self.room.name, **more})
        self.running.append(one)
        return one

    def ask(self, command: str, **more: Any) -> Any:
        raise NotImplementedError

    def quit(self) -> None:
        """Everything it started ends; a browser that does not listen is killed."""
        for one in reversed(self.running):
            one.terminate()
            with contextlib.suppress(subprocess.TimeoutExpired):
                one.wait(5)
            if one.poll() is None:
                one.kill()
                one.wait(LONG)
        self.room.cleanup()

    def go(self, url: str) -> None:
        self.ask("go", url=url)

    def reload(self) -> None:
        """As a person does it: WebDriver's own goes round the service worker in Firefox."""
        self.now("window.before = true; setTimeout(() => location.reload())")
        self.until("return !window.before && document.readyState === 'complete'")

    def now(self, body: str, *values: Any) -> Any:
        """What the body of a function returns at once. values: its `arguments`"""
        return self.ask("now", script=body, args=list(values))

    def later(self, body: str, *values: Any) -> Any:
        """What the body of an async function returns in the end."""
        told = self.ask("later", script=PROMISED % body, args=list(values))
        if "bad" in told:
            raise Refused(told["bad"])
        return told.get("ok")

    def until(self, body: str, *values: Any) -> Any:
        """Waits until the body of a function returns something that is true, and gives it.

        A page that is leaving meanwhile is asked again.
        """
        end = time.monotonic() + PATIENCE
        said: Any = None
        while time.monotonic() < end:
            try:
                said = self.now(body, *values)
            except Refused as refused:
                said = refused
            else:
                if said:
                    return said
            time.sleep(0.05)
        raise AssertionError(f"it did not come within {PATIENCE} s: {body} {values}: {said}; it shows: {self.shown()}")

    def shown(self) -> str:
        """What a reader sees, for a test that fails."""
        try:
            return str(self.now("return document.body.innerText"))[:2000]
        except Refused as refused:
            return str(refused)

    def sees(self, css: str) -> None:
        """Waits until one is in sight."""
        self.until(f"const one = document.querySelector(arguments[0]); return {IN_SIGHT}", css)

    def says(self, css: str, text: str) -> None:
        """Waits until it says so."""
        self.until(f"return [...document.querySelectorAll(arguments[0])].some((one) => {IN_SIGHT}"
                   " && one.textContent.includes(arguments[1]))", css, text)

    def _found(self, css: str) -> str:
        self.until("const one = document.querySelector(arguments[0]); one?.scrollIntoView({ block: 'center' });"
                   f"return {IN_SIGHT}", css)
        return str(next(iter(self.ask("find", using="css selector", value=css).values())))

    def type(self, css: str, text: str) -> None:
        """By the keyboard, in the place of what stands there."""
        field = self._found(css)
        self.ask("clear", id=field)
        self.ask("type", id=field, text=text)

    def click(self, css: str) -> None:
        """By the mouse, once it stands still: what is laid out meanwhile would take the click."""
        self._found(css)
        self.later("""let before = "", still = 0;
while (still < 3) {
  await new Promise((next) => { setTimeout(next, 40); });
  const { x, y } = document.querySelector(values[0])?.getBoundingClientRect() ?? {};
  still = `${x} ${y}` === before ? still + 1 : 0;
  before = `${x} ${y}`;
}""", css)
        self.ask("click", id=self._found(css))

    def choose(self, css: str, value: str) -> None:
        """One of a list, as WebDriver chooses it: by a click on what stands in the list."""
        self._found(css)
        option = self.ask("find", using="css selector", value=f"{css} option[value='{value}']")
        self.ask("click", id=next(iter(option.values())))
        assert self.now("return document.querySelector(arguments[0]).value", css) == value

    def picture(self, path: Path) -> None:
        """What is in sight, as PNG."""
        path.write_bytes(base64.b64decode(self.ask("picture")))

    def size(self, wide: int, high: int) -> None:
        """The room that a page has [CSS px]."""
        for _ in range(5):
            width, height = self.now("return [innerWidth, innerHeight]")
            if (width, height) == (wide, high):
                return
            rect = self.ask("rect")
            self.ask("set_rect", width=rect["width"] + wide - width, height=rect["height"] + high - height)
            with contextlib.suppress(AssertionError):
                self.until("return innerWidth !== arguments[0] || innerHeight !== arguments[1]", width, height)
        raise AssertionError(f"the page has {width} x {height}")

    def printed(self, path: Path) -> None:
        """The page on A4 as PDF."""
        path.write_bytes(base64.b64decode(self.ask("print", shrinkToFit=True, page={"width": 21.0, "height": 29.7})))


class Firefox(Engine):
    """Debian's firefox-esr."""

    name = "Firefox"
    package = "firefox-esr"
    SETTINGS: ClassVar = {"app.update.enabled": False, "datareporting.policy.dataSubmissionEnabled": False,
                "browser.shell.checkDefaultBrowser": False, "browser.startup.homepage": "about:blank",
                "network.captive-portal-service.enabled": False, "network.connectivity-service.enabled": False}

    def __init__(self) -> None:
        if not shutil.which("firefox-esr"):
            lacks(self.package)
        super().__init__()
        port, self.count = free_port(), 0
        settings = {**self.SETTINGS, "marionette.port": port}
        (self.own / "user.js").write_text("".join(
            f"user_pref({json.dumps(key)}, {json.dumps(value)});\n" for key, value in settings.items()))
        # the size of a page is set from the browser's own window, which only a session with access to it may touch
        browser = self.start("firefox-esr", "--marionette", "-remote-allow-system-access", "--headless", "--no-remote",
                             "--profile", self.room.name, MOZ_HEADLESS_WIDTH="1000", MOZ_HEADLESS_HEIGHT="1400")
        self.line = _line(port, browser)
        self._read()
        self.version = self._tell("WebDriver:NewSession", {})["capabilities"]["browserVersion"]

    def _read(self) -> Any:
        size = b""
        while not size.endswith(b":"):
            got = self.line.recv(1)
            assert got, "Firefox has ended"
            size += got
        left, parts = int(size[:-1]), []
        while left:
            parts.append(self.line.recv(left))
            assert parts[-1], "Firefox has ended"
            left -= len(parts[-1])
        return json.loads(b"".join(parts))

    def _tell(self, command: str, values: dict[str, Any]) -> Any:
        self.count += 1
        raw = json.dumps([0, self.count, command, values]).encode()
        self.line.sendall(str(len(raw)).encode() + b":" + raw)
        _, _, refused, got = self._read()
        if refused:
            raise Refused(f"{command}: {refused['error']}: {refused['message']}")
        return got

    def ask(self, command: str, **more: Any) -> Any:
        if command in ("now", "later"):
            more |= {"newSandbox": False, "sandbox": None}
        if command == "picture":
            more["full"] = False
        got = self._tell(COMMANDS[command][2], more)
        return got.get("value", got) if isinstance(got, dict) else got

    def size(self, wide: int, high: int) -> None:
        """A window of Firefox cannot be as narrow as a phone: its page is."""
        self._tell("Marionette:SetContext", {"value": "chrome"})
        self.now("gBrowser.selectedBrowser.style.cssText = arguments[0]",
                 f"width:{wide}px;max-width:{wide}px;min-width:0;height:{high}px;max-height:{high}px")
        self._tell("Marionette:SetContext", {"value": "content"})
        self.until("return innerWidth === arguments[0] && innerHeight === arguments[1]", wide, high)

    def quit(self) -> None:
        with contextlib.suppress(AssertionError, OSError):
            self._tell("Marionette:Quit", {"flags": ["eForceQuit"]})
        self.line.close()
        super().quit()


def _line(port: int, server: subprocess.Popen[bytes]) -> socket.socket:
    """A connection to what listens there in a moment."""
    end = time.monotonic() + PATIENCE
    while time.monotonic() < end:
        assert server.poll() is None, f"{server.args} ended with {server.returncode}"
        with contextlib.suppress(OSError):
            return socket.create_connection(("127.0.0.1", port), timeout=LONG)
        time.sleep(0.05)
    raise AssertionError(f"{server.args} does not listen within {LONG} s")


class WebKit(Engine):
    """Debian's WebKitGTK by its WebKitWebDriver, on a screen that nobody sees."""

    name = "WebKitGTK"
    package = "webkit2gtk-driver"
    driver = "WebKitWebDriver"
    options: ClassVar[dict[str, Any]] = {"webkitgtk:browserOptions": {"args": ["--automation", "--full-screen"]}}
    display = True

    def __init__(self) -> None:
        if not shutil.which(self.driver):
            lacks(self.package)
        if self.display and not shutil.which("Xvfb"):
            lacks("xvfb")
        super().__init__()
        (self.own / "run").mkdir(mode=0o700)
        # root has no sandbox of WebKit's kind
        more = {"XDG_RUNTIME_DIR": f"{self.own}/run", "LIBGL_ALWAYS_SOFTWARE": "1", "GSETTINGS_BACKEND": "memory",
                "WEBKIT_DISABLE_SANDBOX_THIS_IS_DANGEROUS": "1", "NO_AT_BRIDGE": "1"}
        if self.display:
            more["DISPLAY"] = self._screen()
        self.more, port = more, free_port()
        _line(port, self.start(self.driver, f"--port={port}", **more)).close()
        self.url = f"http://127.0.0.1:{port}/session"
        made = self._http("POST", "", {"capabilities": {"alwaysMatch": self._wanted()}})
        self.url += "/" + made["sessionId"]
        self.version = made["capabilities"]["browserVersion"]

    def _wanted(self) -> dict[str, Any]:
        options = {key: dict(value) for key, value in self.options.items()}
        found = sorted(Path("/usr/lib").glob("*/webkit2gtk-4.*/MiniBrowser"))
        if not found:
            lacks(self.package)
        options["webkitgtk:browserOptions"]["binary"] = str(found[-1])
        return options

    def _screen(self) -> str:
        """A screen of its own: Xvfb finds a number that is free and says it."""
        got, told = os.pipe()
        with open(self.own / "screen", "wb") as said:
            self.running.append(subprocess.Popen(
                ["Xvfb", "-displayfd", str(told), "-screen", "0", "1200x1400x24", "-nolisten", "tcp"],
                pass_fds=[told], stdout=said, stderr=said, start_new_session=True))
        os.close(told)
        with os.fdopen(got) as line:
            number = line.readline().strip()
        assert number, (self.own / "screen").read_text()
        return ":" + number

    def _http(self, how: str, path: str, values: dict[str, Any] | None = None) -> Any:
        body = None if how != "POST" else json.dumps(values or {}).encode()
        asked = urllib.request.Request(self.url + path, body, {"Content-Type": "application/json"}, method=how)
        try:
            with urllib.request.urlopen(asked, timeout=LONG) as answer:
                return json.load(answer)["value"]
        except urllib.error.HTTPError as error:
            raise Refused(f"{path}: {error.read().decode()[:600]}") from None

    def ask(self, command: str, **more: Any) -> Any:
        how, path, _ = COMMANDS[command]
        if "{id}" in path:
            path = path.format(id=more.pop("id"))
        return self._http(how, path, more)

    def quit(self) -> None:
        with contextlib.suppress(AssertionError, OSError):
            self._http("DELETE", "")
        super().quit()


class OldWebKit(WebKit):
    """Debian's WPE WebKit: 2.38 is the WebKit of iOS 16.0 (both say Version/16.0 of themselves). It has one size."""

    name = "WPE WebKit"
    package = "wpewebkit-driver"
    driver = "WPEWebDriver"
    display = False

    def _wanted(self) -> dict[str, Any]:
        if not shutil.which("cog"):
            lacks("cog")
        return {"browserName": "cog", "wpe:browserOptions": {
            "binary": shutil.which("cog"), "args": ["--automation", "--platform=headless"]}}

    def size(self, wide: int, high: int) -> None:
        """Nothing to be done: 800 x 600."""


ENGINES = (Firefox, WebKit, OldWebKit)

"""The page in real Chromium: the engine's start, a key press, the heavy moves, the start without signal."""
import contextlib
from collections import Counter
from pathlib import Path
from statistics import median

from browser.conftest import CHROMIUM, FLAGS, PART, keep
from browser.serve import Server
from covemix.server.build import ASKED, Build
from covemix.server.headers import HEADERS
from covemix.shared.catalogue.demo_boat import JOINTS, SURFACES
from playwright.sync_api import sync_playwright
from starlette.responses import FileResponse

from .paired import Ratio, in_turn, ratio
from .presses import key_presses
from .slow import slowed

HERE = Path(__file__).parent
BARE = "../../bench/bare.js"  # a script of the build that it does not know the service worker would look for
WORKER = "js/engine/worker.js"
ENGINE = HERE.parent / "webui/js/engine"
STARTS, OPENINGS = 7, 7
PICTURED = "covemix.pictured"  # as engine.js calls it
PICTURE = 90_000  # ms in which one is made, ten seconds after a start
SLOWER = (1, 4, 6)
HEAVY = {
    "heat": ("heat", {"air": "22"}),
    "plan, 60 pieces": ("plan", {"temperature": "20", "pieces": {
        str(n): {"name": f"Seam {n}", "length": "1.2", "putty": "60", "wet": "80"} for n in range(60)}}),
    "boat, 60 joints": ("boat", {"joints": {str(n): dict(JOINTS[n % len(JOINTS)]) for n in range(60)}}),
    "boat, 60 joints and 20 surfaces": ("boat", {
        "joints": {str(n): dict(JOINTS[n % len(JOINTS)]) for n in range(60)},
        "surfaces": {str(n): dict(SURFACES[n % len(SURFACES)]) for n in range(20)}}),
}
# the moment of the first figure the engine gave, in ms after the opening began
FIRST_ANSWER = """(() => {
  localStorage.removeItem("covemix.answer.pour");
  const look = new MutationObserver(() => {
    const figure = document.querySelector("[data-line=drawn_b] .line-text");
    if (!window.firstAnswer && figure?.textContent.includes("mL")) window.firstAnswer = performance.now();
  });
  look.observe(document, { subtree: true, childList: true, characterData: true });
})()"""
KINDS = {"app.bin": "engine and all pages", "sw.js": "service worker", ".js": "scripts",
         ".mjs": "scripts", "micropython.bin": "MicroPython", "unpack.wasm": "the unpacker", ".css": "style",
         ".png": "icons", ".svg": "icons", ".webmanifest": "manifest"}


class Wire:
    """Counts what a server sends, by kind of file; serves the floor of the bench beside the app."""

    def __init__(self):
        self.sent, self.asked = Counter(), Counter()

    def wrapped(self, app):
        async def answer(scope, receive, send):
            path = scope.get("path", "")
            if "/bench/" in path:
                name = path.rpartition("/")[2]  # what it needs of the app is sent there within another script
                file = ENGINE / name if name in ("interpreter.js", "unpack.js") else HERE / "floor" / name
                await FileResponse(file, headers=HEADERS)(scope, receive, send)
                return
            if path.endswith(ASKED):  # by no first visit
                await app(scope, receive, send)
                return
            kind = next((KINDS[end] for end in KINDS if path.endswith(end)), "the page itself")
            self.asked[kind] += 1

            async def counted(message):
                self.sent[kind] += len(message.get("body", b""))
                await send(message)

            await app(scope, receive, counted)

        return answer


class Phone:
    """Chromium with one page open on the app."""

    def __init__(self, browser, url):
        self.browser, self.url = browser, url
        self.context = browser.new_context(viewport={"width": 360, "height": 740})
        self.context.add_init_script(PART)
        self.page = self.context.new_page()

    def open(self, path=""):
        self.page.goto(self.url + "/" + path)
        self.page.evaluate((HERE / "phone.js").read_text(encoding="utf-8"))
        return self

    def __call__(self, name, *given) -> float:
        return self.page.evaluate("([name, given]) => bench[name](...given)", [name, given])

    @contextlib.contextmanager
    def slowed(self, rate):
        """The page and its workers at a part of their speed."""
        session = self.browser.new_browser_cdp_session()
        found = session.send("SystemInfo.getProcessInfo")["processInfo"]
        with slowed([one["id"] for one in found if one["type"] == "renderer"], rate):
            yield
        session.detach()

    def pressed(self, output, key, whole=False) -> float:
        """ms from a real key press in the field that has the focus to a new text of the output, or to the last change
        of the page that it makes."""
        self("armedWhole" if whole else "armed", output)
        self.page.keyboard.press(key)
        return self("took")

    def worked(self, rate) -> float:
        """ms of a fixed piece of work, slowed."""
        with self.slowed(rate):
            return self("worked")


@contextlib.contextmanager
def visited():
    """A browser and a server whose bytes are counted on the wire: (browser, server, wire)."""
    wire, server = Wire(), Server()
    server.start(wrap=wire.wrapped)
    try:
        with sync_playwright() as playwright:
            browser = playwright.chromium.launch(executable_path=CHROMIUM, args=FLAGS)
            yield browser, server, wire
            browser.close()
    finally:
        server.stop()


def measured() -> dict:
    """Everything that needs a browser, as rows for the tables."""
    with visited() as (browser, server, wire):
        wanted = {"browser": browser.version, "wire": first_visit(browser, server.url, wire)}
        floors = f"{server.url}/v/{Build().id}/bench"
        hand, *ways = (Phone(browser, floors).open(page) for page in ("ratio.html", "echo.html#message",
                                                                      "echo.html#channel"))
        phone = Phone(browser, server.url).open()
        wanted["start"] = ("The engine's start", "MicroPython started with nothing",
                           in_turn(lambda: phone("begun", WORKER), lambda: phone("begun", BARE), STARTS))
        wanted["keys"] = key_presses(phone, ways, hand)
        wanted["moves"] = heavy_moves(phone.open())
        wanted["offline"] = offline(phone, server)
    return wanted


def wire_alone() -> list[tuple[str, int, int]]:
    """What crosses the wire on a first visit, and nothing else."""
    with visited() as (browser, server, wire):
        return first_visit(browser, server.url, wire)


def first_visit(browser, url, wire) -> list[tuple[str, int, int]]:
    """(kind, requests, bytes as sent) until the app says that it is kept."""
    phone = Phone(browser, url)
    keep(phone.page, url)
    found = [(kind, wire.asked[kind], size) for kind, size in wire.sent.most_common()]
    phone.context.close()
    return found


def heavy_moves(phone) -> list[tuple[str, dict[int, Ratio]]]:
    """(move, {slowdown: ratio to the move `ratio` at full speed}), and how slow a slowed page really was."""

    def bare():
        return median(phone("asked", {"move": "ratio", "typed": {}}) for _ in range(9))

    found = {name: {} for name in HEAVY}
    found["a fixed piece of work"] = {}
    for rate in (1, 4):
        for name, (move, typed) in HEAVY.items():
            phone("asked", {"move": move, "typed": typed})
            pairs = []
            for _ in range(4):
                against = bare()
                with phone.slowed(rate):
                    pairs.append((phone("asked", {"move": move, "typed": typed}), against))
            found[name][rate] = ratio(pairs)
        found["a fixed piece of work"][rate] = ratio([(phone.worked(rate), phone.worked(1)) for _ in range(5)])
    return list(found.items())


def offline(phone, server) -> dict[int, tuple[Ratio, Ratio]]:
    """From opening to the first answer with the server gone, against the start of a bare MicroPython at full speed:
    without a picture of the engine's memory, as in the first seconds that a phone has the app, and with it."""
    bare = [phone.open()("begun", BARE) for _ in range(STARTS)]
    phone = Phone(phone.browser, phone.url)
    keep(phone.page, phone.url)
    phone.page.reload()
    mark = phone.page.wait_for_function(f"() => localStorage.getItem('{PICTURED}')", timeout=PICTURE).json_value()
    phone.context.add_init_script(FIRST_ANSWER)
    server.stop()
    found = {}
    for rate in SLOWER:
        pairs = {"": [], mark: []}
        for place in range(OPENINGS + 1):
            for kept in pairs:
                opened = _opened(phone, rate, kept)
                if place:
                    pairs[kept].append((opened, median(bare)))
        found[rate] = tuple(map(ratio, pairs.values()))
    return found


def _opened(phone, rate, kept) -> float:
    """ms from opening to the first answer. kept: what the page has under PICTURED"""
    phone.page.evaluate(f"(kept) => localStorage.setItem('{PICTURED}', kept)", kept)
    with phone.slowed(rate):
        phone.page.reload()
        return phone.page.wait_for_function("() => window.firstAnswer").json_value()

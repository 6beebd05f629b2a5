"""What leaves the phone and what stays on it: nothing that nobody asked for, on any screen, whatever a link holds."""
import json
from collections import Counter
from urllib.parse import urlencode, urlsplit

import house
import pytest
from covemix.server.build import FIGURES
from covemix.server.pages import PAGES, path_of
from playwright.sync_api import expect

from .conftest import drawn, figure, keep, open_share
from .serve import Server
from .test_kit import copies

BUILD = house.build()
SECRET = "Nobodys Business 4711"
KEPT = ("covemix.typed.", "covemix.answer.", "covemix.told.", "covemix.set.")
STORED = """async () => {
  const rows = {};
  for (const { name, version } of await indexedDB.databases()) {
    const base = await new Promise((done, failed) => {
      const asked = indexedDB.open(name, version);
      asked.onsuccess = () => done(asked.result);
      asked.onerror = failed;
    });
    for (const store of base.objectStoreNames) {
      rows[store] = await new Promise((done) => {
        const asked = base.transaction(store).objectStore(store).count();
        asked.onsuccess = () => done(asked.result);
      });
    }
    base.close();
  }
  return { rows, cookies: document.cookie, session: sessionStorage.length, local: Object.keys(localStorage) };
}"""
HOSTILE = ('"><img src=x onerror=window.hit=1>', "<script>window.hit=1</script>", "javascript:window.hit=1",
           "{{constructor.constructor('window.hit=1')()}}", "</option></select><svg onload=window.hit=1>")


class Listened:
    """A server that writes down what it is asked: method, path with query, length of the body."""

    def __init__(self):
        self.server, self.asked = Server(), []
        self.server.start(wrap=self.wrapped)
        self.url = self.server.url

    def wrapped(self, app):
        async def answer(scope, receive, send):
            if scope["type"] == "http":
                length = dict(scope["headers"]).get(b"content-length", b"0")
                self.asked.append((scope["method"], scope["path"], scope["query_string"].decode(), int(length)))
            await app(scope, receive, send)

        return answer


@pytest.fixture
def listened():
    server = Listened()
    yield server
    server.server.stop()


def test_every_screen_asks_only_its_own_server_only_for_files_and_stores_nothing_unasked(phone, listened):
    hosts = set()
    phone.context.on("request", lambda request: hosts.add(urlsplit(request.url).netloc))
    keep(phone, listened.url)
    for _, path, _ in PAGES:
        phone.goto(f"{listened.url}/{path}")
        expect(phone.locator("[data-form].live, [data-main]:not(:has([data-form]))").first).to_be_attached()
    asked = Counter(path.rpartition("/")[2] for _, path, _, _ in listened.asked)
    assert [asked[large] for large in ("micropython.bin", "app.bin", "app.css")] == [1, 1, 1]  # and then kept
    assert hosts == {urlsplit(listened.url).netloc}
    assert {(method, query, length) for method, _, query, length in listened.asked} == {("GET", "", 0)}
    assert not [path for _, path, _, _ in listened.asked if path.startswith("/api")]
    stored = phone.evaluate(STORED)
    assert not any(stored["rows"].values())
    assert stored["cookies"] == "" and stored["session"] == 0
    assert [key for key in stored["local"] if not key.startswith(KEPT)] == []


def test_what_is_typed_handed_on_and_kept_is_sent_nowhere(phone, listened):
    keep(phone, listened.url)
    before = len(listened.asked)
    phone.get_by_label("Amount", exact=True).fill("200")
    expect(figure(phone, "drawn_b")).to_have_text(drawn(200))
    open_share(phone)
    phone.goto(f"{listened.url}/log/?{urlencode({'what': SECRET})}")
    expect(phone.locator("[name=what]")).to_have_value(SECRET)
    # a browser looks for a newer worker when a page is opened; but for the app's own late files nothing else is asked,
    # and never with what was typed
    assert {(method, path, query) for method, path, query, _ in listened.asked[before:]} <= {
        ("GET", "/sw.js", ""), ("GET", "/recalled.json", ""),
        *(("GET", f"/{BUILD.base}{path}", "") for path in (FIGURES, *BUILD.late))}


@pytest.mark.parametrize("way", ["opened", "pasted"])
def test_what_a_hostile_link_holds_is_only_text(phone, standing, way):
    """All texts of each screen, with the scripts of the page at work; the fixture fails on any script error."""
    phone.on("dialog", lambda dialog: pytest.fail(dialog.message))
    fields = {"pour": "system.name", "boat": "joints.0.name", "plan": "pieces.0.name", "log": "what",
              "kit": "system.name"}
    for place, (screen, field) in enumerate(fields.items() if way == "opened" else [("pour", "system.name")]):
        text = HOSTILE[place]
        for taken, held in ((False, {field: text, "units": text}), (True, {field: text})):
            open_link(phone, standing.url, way, screen, urlencode(held), taken)
            expect(phone.locator("[data-form].live").first).to_be_attached()
            if taken:
                expect(phone.locator(f"[name='{field}']").first).to_have_value(text)
            assert phone.evaluate("window.hit === undefined")
            assert phone.locator("main script, main img, main iframe, [onload], [onerror]").count() == 0


def open_link(phone, url, way, screen, query, taken):
    """What cannot be taken is told in a sentence that holds the text: by the page, or where it was pasted."""
    if way == "opened":
        phone.goto(f"{url}/{path_of(screen)}?{query}")
        told = phone.locator("[data-notice=link]")
    else:
        phone.goto(url)
        phone.get_by_role("button", name="Share").click()
        phone.locator("[data-pasted]").fill(f"{url}/{path_of(screen)}?{query}")
        phone.get_by_role("button", name="Check the link").click()
        told = phone.locator("[data-paste-error]")
    if taken:
        phone.wait_for_url(f"{url}/{path_of(screen)}*")
        expect(phone.locator("[data-notice=link]")).to_contain_text("Your values are unchanged")
    else:
        expect(told).to_contain_text("has unknown entries: 'units = ")


def test_a_hostile_import_is_only_text(phone, standing):
    phone.goto(standing.url + "/kit/")
    expect(phone.locator("[data-listing]")).to_be_visible()
    text = HOSTILE[0]
    file = {"format": "covemix", "schema": 2, "pots": [],
            "log": [{"id": 1, "kind": "poured", "when": 1, "pairs": [["amount", text]],
                     "typed": {"what": text, "__proto__": text}}],
            "kit": [{"id": 1, "record": "system", "typed": {"name": text, "by_weight": text}, "made": 1},
                    {"id": 2, "record": "constructor", "typed": {"name": text}, "made": 1}]}
    copies(phone)
    phone.get_by_label("Bring back from a file").set_input_files(
        {"name": "c.json", "mimeType": "", "buffer": json.dumps(file).encode()})
    phone.get_by_role("button", name="Replace all").click()
    expect(phone.locator(".entry").first).to_contain_text("<img")
    for path in ("kit/", "log/", "", "clock/"):
        phone.goto(f"{standing.url}/{path}")
        expect(phone.locator("[data-form].live, [data-main]:not(:has([data-form]))").first).to_be_attached()
        assert phone.evaluate("window.hit === undefined")
        assert phone.locator("main script, main img, main iframe, [onload], [onerror]").count() == 0


def test_what_programs_read_is_never_answered_with_a_page(phone, served):
    keep(phone, served.url)
    assert "json" in phone.goto(served.url + "/openapi.json").headers["content-type"]
    phone.goto(served.url)
    served.stop()
    paths = ("openapi.json", "api/moves")
    for path in paths:
        assert phone.evaluate("(path) => fetch(path).then(() => 'answered', () => 'no signal')", path) == "no signal"
    for path in paths:
        with pytest.raises(Exception, match="ERR_CONNECTION_REFUSED"):
            phone.goto(f"{served.url}/{path}")

"""A first visit: what crosses the wire until the phone keeps the app, each byte once."""
import time
from collections import Counter

import face
import house
import pytest
from covemix.server.build import ASKED, FIGURES
from covemix.server.pages import PAGES
from covemix.shared.words.languages import LANGUAGES
from playwright.sync_api import expect

from .conftest import body, fresh, keep, open_share
from .test_targets import SHIFTS

BUILD = house.build()
SHIFT = 0.02  # of the screen, what it may move by itself


@pytest.fixture
def sent(served):
    """What the server has sent, as (path, bytes of body and headers), each time it was asked; without what comes once
    the app is kept (`test_the_face_comes_when_the_app_is_kept_and_not_before`)."""
    sent = []

    def counting(app):
        async def counted(scope, receive, send):
            count = 0

            async def count_and_send(message):
                nonlocal count
                if message["type"] == "http.response.start":
                    count += sum(len(name) + len(value) + 4 for name, value in message["headers"]) + 17
                else:
                    count += len(message.get("body", b""))
                await send(message)

            await app(scope, receive, count_and_send)
            if not scope["path"].endswith(ASKED):
                sent.append((scope["path"], count))

        return counted

    served.stop()
    served.start(wrap=counting)
    return sent


@pytest.mark.parametrize(("screen", "path"), [(screen, path) for screen, path, _ in PAGES])
def test_nothing_is_fetched_twice_and_all_of_it_is_within_the_limit(phone, served, sent, screen, path):
    """Of what the bundle holds a first visit fetches only the view in front by itself."""
    keep(phone, f"{served.url}/{path}")
    times = Counter(path.removeprefix("/" + BUILD.base) for path, _ in sent if path.startswith("/v/"))
    assert [path for path, count in times.items() if count > 1] == []
    assert times.keys() & BUILD.later.keys() == set(BUILD.ahead(screen))
    assert not times.keys() & BUILD.late.keys()
    assert sum(count for _, count in sent) < house.FIRST_VISIT


def test_the_face_comes_when_the_app_is_kept_and_not_before(phone, served):
    """While the notice that it is kept is held back nothing fetches it; nor does the reader of codes come by itself."""
    asked = []

    def telling(app):
        async def told(scope, receive, send):
            asked.append(scope.get("path", ""))
            await app(scope, receive, send)

        return told

    served.stop()
    served.start(wrap=telling)
    phone.add_init_script("""const post = ServiceWorker.prototype.postMessage;
window.held = [];
ServiceWorker.prototype.postMessage = function (...said) { window.held.push(() => post.apply(this, said)); };""")
    keep(phone, served.url)
    phone.wait_for_timeout(500)
    assert not [path for path in asked if path.endswith(ASKED)]
    phone.evaluate("window.held.forEach((post) => post())")
    assert body(phone, face.KEPT)
    assert [path for path in asked if path.endswith(ASKED)] == ["/" + BUILD.base + FIGURES]


HANDED = """const base = document.querySelector("script[type=module]").src;
const kinds = ["../app.bin", "../vendor/micropython/micropython.bin"].map(async (path) => (
  await caches.match(new URL(path, base))).headers.get("Content-Type"));
return Promise.all(kinds);"""


def test_what_the_page_has_unpacked_is_not_unpacked_once_more(phone, served):
    """What the service worker unpacks itself is kept with its type, and what it is handed without one."""
    keep(phone, served.url)
    assert body(phone, HANDED) == [None, None]


LATE = 0.3  # s, what the script is held back: long enough for the page to be painted without it
HEAVIEST = ("", "boat/", "kit/", "clock/")


@pytest.mark.parametrize("path", HEAVIEST)
@pytest.mark.parametrize("language", [one for one in LANGUAGES if one != "en"])
def test_a_first_visit_in_another_language_is_within_the_limit_too(chromium, served, sent, path, language):
    with fresh(chromium, locale=language) as (page, _):
        keep(page, f"{served.url}/{path}")
        assert page.evaluate("document.documentElement.lang") == language
    assert sum(count for _, count in sent) < house.FIRST_VISIT


@pytest.mark.parametrize(("language", "path"), [("en", path) for _, path, _ in PAGES] + [
    (one, path) for one in LANGUAGES if one != "en" for path in HEAVIEST])
def test_nothing_moves_when_the_first_answer_of_the_engine_takes_the_place_of_the_servers(chromium, standing, language,
                                                                                          path):
    """The page comes with its answer; what a builder has begun to read or to tap stays where it is."""
    with fresh(chromium, locale=language) as (page, _):
        page.add_init_script(SHIFTS)
        page.route("**/js/main.js", lambda route: (time.sleep(LATE), route.continue_()))
        keep(page, f"{standing.url}/{path}")
        assert sum(page.evaluate("window.shifts")) < SHIFT


SHEETS = """window.sheets = 0;
document.addEventListener("load", ({ target }) => { window.sheets += Number(target.rel === "stylesheet"); }, true);"""


@pytest.mark.parametrize("path", ["", "kit/"])
def test_the_style_sheet_is_read_once(phone, served, path):
    """Each time that it is read the whole page is laid out anew: on a slow phone longer than the scripts take."""
    phone.add_init_script(SHEETS)
    keep(phone, f"{served.url}/{path}")
    for come in (lambda: None, phone.reload):  # as it is sent, and as it is kept
        come()
        expect(phone.locator("[data-form].live")).to_be_attached()
        phone.wait_for_timeout(300)  # a second reading comes late
        assert phone.evaluate("window.sheets") == 1


AT_FIRST = """document.addEventListener("DOMContentLoaded", () => {
  const seen = (one) => document.querySelector(one).checkVisibility({ visibilityProperty: true });
  window.atFirst = [".listing", ".editing [data-form]"].map(seen);
});"""


@pytest.mark.parametrize("path", ["kit/", "log/"])
def test_a_list_stands_there_before_its_script_does(chromium, standing, path):
    """And where the script never comes, the form that needs none."""
    with fresh(chromium, service_workers="block") as (page, _):
        page.add_init_script(AT_FIRST)
        page.route("**/js/main.js", lambda route: route.abort())
        page.goto(f"{standing.url}/{path}")
        assert page.evaluate("window.atFirst") == [True, False]
        expect(page.locator(".editing [data-form]")).to_be_visible()


@pytest.mark.parametrize("missing", ["js/share/sheet.js", "js/share/qr_code.js", "lean-qr/index.js"])
def test_a_part_that_could_not_be_fetched_is_said_and_the_next_tap_has_it(chromium, served, missing):
    """Without a reload, though a browser remembers a failed import: of the part itself and of what it needs."""
    served.stop()
    served.start(missing=missing)
    with fresh(chromium, service_workers="block") as (phone, _):
        phone.goto(served.url)
        expect(phone.locator("[data-line=drawn_b]")).to_be_visible()
        share = phone.get_by_role("button", name="Share")
        share.click()
        expect(phone.locator("[data-notice=unfetched]")).to_be_visible()
        served.stop()
        served.start()
        share.click()
        expect(phone.locator("[data-code] .code")).to_be_visible()


COME = """(names) => {
  const come = performance.getEntriesByType("resource").map(({ name }) => name);
  return names.every((name) => come.some((one) => one.endsWith(name)));
}"""
SHARES = ["/js/share/sheet.js", "/js/share/qr_code.js", "/js/share/card.js", "/js/share/paste.js", "/lean-qr/index.js"]


def test_where_nothing_is_kept_the_keys_in_sight_work_when_the_connection_goes(chromium, served, sent):
    with fresh(chromium, service_workers="block") as (phone, _):
        phone.goto(served.url)
        expect(phone.locator("[data-line=drawn_b]")).to_be_visible()
        phone.wait_for_function(COME, arg=[*SHARES, "/js/views/steps.js"])
        phone.wait_for_load_state("networkidle")
        served.stop()
        open_share(phone)
        phone.keyboard.press("Escape")
        phone.locator("[data-along-go]").click()
        expect(phone.locator("[data-steps=tap]")).to_be_visible()
    times = Counter(path for path, _ in sent if path.startswith("/v/"))
    assert [path for path, count in times.items() if count > 1] == []


def test_a_first_visit_is_kept_though_the_connection_goes_when_the_worker_has_come(phone, served):
    """All that it keeps the page has fetched before: what keys need comes from the bundle, and not over the wire."""
    gone = False

    def going(app):
        async def answer(scope, receive, send):
            nonlocal gone
            # a browser with a tab has fetched the icon for it; this one has none
            if scope["type"] == "http" and gone and not scope["path"].endswith("icons/app.svg"):
                scope = dict(scope, path="/nothing")
            gone = gone or scope.get("path") == "/sw.js"
            await app(scope, receive, send)

        return answer

    served.stop()
    served.start(wrap=going)
    keep(phone, served.url)
    open_share(phone)


def test_the_word_that_the_app_is_kept_moves_nothing_on_the_page(phone, served):
    phone.goto(served.url)
    field = phone.get_by_label("Amount", exact=True)
    before = field.bounding_box()
    expect(phone.locator("[data-notice=ready]")).to_be_visible()
    assert field.bounding_box() == before

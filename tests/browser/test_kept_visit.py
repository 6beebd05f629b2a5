"""A later visit: a phone that keeps the app, things of its owner and what was typed last. What is in sight stays where
it is while all of that comes, each thing so late that the page is painted without it."""
import face
import pytest
from covemix.server.pages import PAGES
from playwright.sync_api import expect

from .conftest import body, fresh, keep, until
from .serve import Server
from .test_targets import SHIFTS

SHIFT = 0.02  # of the screen, what it may move by itself
LATE = 300  # ms; what is held back: the scripts by the worker, the store and the engine by the page
HELD_SCRIPTS = """
{
const match = Cache.prototype.match;
Cache.prototype.match = async function (what, ...more) {
  if (/js\\/(main|views\\/\\w+)\\.js/.test(what.url ?? what)) await new Promise((done) => { setTimeout(done, LATE); });
  return match.call(this, what, ...more);
};
}""".replace("LATE", str(LATE))
HELD_STORE = """
const listen = EventTarget.prototype.addEventListener;
IDBOpenDBRequest.prototype.addEventListener = function (kind, heard, ...more) {
  const late = (event) => setTimeout(() => heard.call(this, event), LATE);
  return listen.call(this, kind, kind === "success" ? late : heard, ...more);
};""".replace("LATE", str(LATE))
HELD_ENGINE = """
const post = Worker.prototype.postMessage;
Worker.prototype.postMessage = function (...said) { setTimeout(() => post.apply(this, said), LATE); };
""".replace("LATE", str(LATE))
THINGS = """async () => {
  const { put } = await part("store/store.js");
  const { logBatch } = await part("kit/log.js");
  const system = (name) => put("kit", { record: "system", typed: { name, by_weight: "100:30" }, made: 1 });
  for (const name of ["Shed mix", "Spare"]) await system(name);
  await put("kit", { record: "cup", typed: { name: "Yoghurt", across: "90 mm" }, made: 1 });
  for (const what of ["Keel", "Chine"]) await logBatch({ typed: { what } });
}"""
# whether the words that nothing is kept were in sight at any frame
EVER = """window.none = false; const look = () => {
  window.none ||= Boolean(document.querySelector("[data-none]")?.checkVisibility({ visibilityProperty: true }));
  requestAnimationFrame(look);
}; look();"""
LISTED = """() => new Promise((done) => { setTimeout(() => done(Boolean(
  document.querySelector("[data-listing][data-read]:not([hidden])"))), 100); })"""


def held_back(app):
    """The app whose worker gives the scripts late."""

    async def answer(scope, receive, send):
        if not scope.get("path", "").startswith("/sw."):
            await app(scope, receive, send)
            return

        async def longer(message):
            if message["type"] == "http.response.start":
                message["headers"] = [each for each in message["headers"] if each[0] != b"content-length"]
            elif not message.get("more_body"):
                message = dict(message, body=message.get("body", b"") + HELD_SCRIPTS.encode())
            await send(message)

        plain = [each for each in scope["headers"] if each[0] != b"accept-encoding"]
        await app(dict(scope, headers=plain), receive, longer)

    return answer


@pytest.fixture(scope="module")
def late():
    server = Server().start(wrap=held_back)
    yield server
    server.stop()


ENGLISH, GERMAN, BARE = "en", "de", "de without the face of the figures"


@pytest.fixture(scope="module")
def reader(chromium, late, request):
    """A phone that keeps the app, and nothing else."""
    language, *bare = getattr(request, "param", ENGLISH).split(" ", 1)
    with fresh(chromium, locale=language) as (page, _):
        for script in (SHIFTS, EVER, HELD_STORE, HELD_ENGINE):
            page.context.add_init_script(script)
        if bare:
            page.context.route("**/face.css", lambda route: route.abort())
        keep(page, late.url)
        assert bare or body(page, face.KEPT)
        yield page, late.url


@pytest.fixture(scope="module")
def owner(reader):
    """The same phone with things in its kit and batches in its log."""
    page, url = reader
    page.evaluate(THINGS)
    return page, url


def settled(page):
    expect(page.locator("[data-form].live, [data-main]:not(:has([data-form]))").first).to_be_attached()
    expect(page.locator("main").first).to_have_css("visibility", "visible")
    page.wait_for_timeout(1000 + 2 * LATE)


def moved(page):
    return sum(page.evaluate("window.shifts"))


WRAPS = ("plan/", "surface/")  # what Plan asks, the strip of Faces: of words so long as German ones


@pytest.mark.parametrize(("reader", "path"), [
    *((ENGLISH, path) for _, path, _ in PAGES), *((phone, path) for phone in (GERMAN, BARE) for path in WRAPS),
], indirect=["reader"])
def test_nothing_moves_where_a_kept_screen_is_opened_for_the_first_time(reader, path):
    page, url = reader
    page.goto(f"{url}/{path}")
    settled(page)
    assert moved(page) < SHIFT


# all folds opened, a row more in each group, every field filled, a thing of the kit chosen, a figure typed over it
TYPED = """async () => {
  for (const fold of document.querySelectorAll("main .fold:not([hidden], [open]) > summary")) fold.click();
  for (const add of document.querySelectorAll("main [data-add-row]")) if (add.checkVisibility()) add.click();
  const form = document.querySelector("[data-form]");
  const fields = [...form.querySelectorAll("select, input[type=text]")];
  for (const one of fields.filter((field) => field.name && field.name !== "units" && field.checkVisibility())) {
    const options = [...one.options ?? []].filter(({ value }) => value);
    const chosen = options.find(({ dataset }) => "kit" in dataset) ?? options.at(-1);
    if (one.value && !chosen) continue;
    one.value = chosen?.value ?? (one.placeholder || "21");
    one.dispatchEvent(new Event("input", { bubbles: true }));
  }
}"""


@pytest.mark.parametrize(("reader", "path"), [
    *((ENGLISH, path) for path in ("", "joint/", "boat/", "plan/", "clock/", "test-cup/")), (GERMAN, "surface/"),
], indirect=["reader"])
def test_nothing_moves_where_what_was_typed_last_comes_back(owner, path):
    page, url = owner
    page.goto(f"{url}/{path}")
    settled(page)
    page.evaluate(TYPED)
    page.wait_for_timeout(2500)  # the answer is kept by then
    page.reload()
    settled(page)
    assert moved(page) < SHIFT


def test_nothing_moves_on_the_way_from_screen_to_screen(owner):
    """By a tap that a script makes: what moves within half a second of a hand's own is not counted."""
    page, url = owner
    page.goto(url)
    settled(page)
    found = {}
    for screen, _, _ in (*PAGES[1:], PAGES[0]):
        page.evaluate("""(screen) => {
          window.shifts.length = 0;
          document.querySelector(`[data-to=${screen}]`).click();
        }""", screen)
        page.wait_for_function("(screen) => document.documentElement.dataset.screen === screen", arg=screen)
        page.wait_for_timeout(2 * LATE)
        settled(page)
        found[screen] = moved(page)
    assert {screen: by for screen, by in found.items() if by >= SHIFT} == {}


def test_a_kept_screen_whose_script_is_broken_is_seen_all_the_same(reader):
    page, url = reader
    with fresh(page.context.browser, service_workers="allow") as (other, errors):
        keep(other, url)
        other.add_init_script(
            "Object.defineProperty(window, 'BroadcastChannel', { get() { throw new Error('broken'); } })")
        other.goto(url)
        expect(other.locator("main")).to_have_css("visibility", "hidden")
        expect(other.locator("main")).to_have_css("visibility", "visible")
        assert other.evaluate("document.querySelector('[data-main]').dataset.unanswered") == "kept"
        errors.clear()


@pytest.mark.parametrize("path", ["kit/", "log/"])
def test_a_list_that_was_seen_before_keeps_its_room_and_never_says_that_nothing_is_kept(owner, path):
    page, url = owner
    page.goto(f"{url}/{path}")
    expect(page.locator(".entry").first).to_be_visible()
    until(page, LISTED)
    assert not page.evaluate("window.none")
    page.reload()
    expect(page.locator(".entry").first).to_be_visible()
    until(page, LISTED)
    assert moved(page) < SHIFT
    assert not page.evaluate("window.none")

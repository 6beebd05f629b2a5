"""A later visit: a phone that keeps the app, things of its owner and what was typed last. What is in sight stays where
it is while all of that comes."""
import pytest
from covemix.server.pages import PAGES
from playwright.sync_api import expect

from .conftest import fresh, keep, until
from .test_targets import SHIFTS

SHIFT = 0.02  # of the screen, what it may move by itself
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


@pytest.fixture(scope="module", params=["en", "de"])
def reader(chromium, standing, request):
    """A phone that keeps the app, and nothing else."""
    with fresh(chromium, locale=request.param) as (page, _):
        page.add_init_script(SHIFTS)
        page.add_init_script(EVER)
        keep(page, standing.url)
        yield page, standing.url


@pytest.fixture(scope="module")
def owner(reader):
    """The same phone with things in its kit and batches in its log."""
    page, url = reader
    page.evaluate(THINGS)
    return page, url


def settled(page):
    expect(page.locator("[data-form].live, [data-main]:not(:has([data-form]))").first).to_be_attached()
    expect(page.locator("main :is(.line, .error, .entry, [data-none]):visible").first).to_be_visible()
    page.wait_for_timeout(1500)


def moved(page):
    return sum(page.evaluate("window.shifts"))


WRAPS = ("plan/", "surface/")  # by up to 0.07: what Plan asks takes a row of its own, the strip of Faces two in German


@pytest.mark.parametrize("path", [path for _, path, _ in PAGES if path not in WRAPS])
def test_nothing_moves_where_a_kept_screen_is_opened_for_the_first_time(reader, path):
    page, url = reader
    page.goto(f"{url}/{path}")
    settled(page)
    assert moved(page) < SHIFT


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

"""Every screen in both languages: what stands half under the foot.

A key that is half covered is missed with a wet glove.
"""
import pytest
from covemix.server.pages import PAGES
from playwright.sync_api import expect

from .conftest import fresh, keep

SIZES = ((360, 740), (412, 915))
COVER = 64  # px; the tallest key that is covered whole, and its edge
KEYS = """[...document.querySelectorAll("main :is(a[class], button, summary, select, input, .choice)")]
  .filter((one) => one.checkVisibility({ visibilityProperty: true }) && !one.matches("[type=hidden]"))"""
NAMED = "`${one.tagName} ${one.name ?? ''} ${one.textContent.trim().slice(0, 30)}`"
FRAME = "const frame = () => new Promise((done) => { requestAnimationFrame(() => done()); });"
SEEN = """const seen = (left, top) => {
    const hit = document.elementFromPoint(left, top);
    return Boolean(hit) && !hit.closest("[data-foot], [data-notices], .strip");
  };"""
# what was kept and the like is closed: it takes its own room where the screen is narrow
TOP = """document.querySelectorAll('[data-notice] [data-kind=cross]').forEach((one) => one.click()); scrollTo(0, 0);
  await frame(); await frame();"""
EDGE = """const foot = document.querySelector("[data-foot]");
  const cover = parseFloat(getComputedStyle(foot, "::before").blockSize) || 0;
  const edge = foot.getBoundingClientRect().top - cover;"""
CUT = """async () => {
  FRAME SEEN TOP
  return KEYS.filter((one) => {
    const { left, top, width, bottom } = one.getBoundingClientRect();
    return seen(left + width / 2, top + 3) !== seen(left + width / 2, bottom - 3);
  }).map((one) => NAMED);
}"""
COVERED = """async () => {
  FRAME SEEN
  const found = [];
  for (const one of KEYS) {
    one.focus();
    await frame();
    const { left, top, width, bottom } = one.getBoundingClientRect();
    if ([top + 3, bottom - 3].some((y) => !seen(left + width / 2, y))) found.push(NAMED);
  }
  return found;
}"""
HIGH = "async () => { FRAME TOP EDGE return cover; }"
# an answer that is late is marked so within 300 ms, and then waited for
SETTLED = """async () => {
  const pass = (ms) => new Promise((resolve) => { setTimeout(resolve, ms); });
  await pass(400);
  while (document.querySelector("[data-main][data-old]")) await pass(50);
}"""
# the large figures of Pour that do not stand whole
FIGURES = """async () => {
  FRAME TOP EDGE
  return [...document.querySelectorAll(".screen-pour .head .line[data-rank=answer] > :is(.line-text, .line-rule)")]
    .filter((one) => one.getBoundingClientRect().bottom > edge).map((one) => one.textContent);
}"""


def script(text):
    for name in ("KEYS", "NAMED", "FRAME", "SEEN", "TOP", "EDGE"):
        text = text.replace(name, globals()[name])
    return text


@pytest.fixture(scope="module", params=["en", "de"])
def reader(chromium, standing, request):
    with fresh(chromium, locale=request.param) as (page, _):
        keep(page, standing.url)
        yield page, standing.url


@pytest.fixture(scope="module", params=[path for _, path, _ in PAGES])
def screen(reader, request):
    """A screen that answers, of a phone that keeps the app."""
    page, url = reader
    page.goto(f"{url}/{request.param}")
    expect(page.locator("[data-form].live, [data-main]:not(:has([data-form]))").first).to_be_attached()
    expect(page.locator("main :is(.line, .error, [data-none]):visible").first).to_be_visible()
    page.evaluate(SETTLED)
    return page


def test_the_caution_and_the_bar_under_it_cut_no_key_and_hide_none_that_is_reached(screen):
    """WCAG 2.2, 2.4.11 and 2.4.12 Focus Not Obscured."""
    for units in ("us", "metric"):
        screen.evaluate("async (units) => (await part('page/settings.js')).choose('units', units)", units)
        screen.evaluate(SETTLED)
        for width, height in SIZES:
            screen.set_viewport_size({"width": width, "height": height})
            assert screen.evaluate(script(CUT)) == [], (units, width)
            assert screen.evaluate(script(HIGH)) <= COVER, (units, width)
            assert screen.evaluate(script(COVERED)) == [], (units, width)
        screen.set_viewport_size({"width": 320, "height": 640})
        assert screen.evaluate(script(CUT)) == [], (units, 320)
        assert screen.evaluate(script(COVERED)) == [], (units, 320)
        assert screen.evaluate(script(FIGURES)) == [], (units, 320)
    screen.set_viewport_size({"width": 360, "height": 740})

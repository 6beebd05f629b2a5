"""Every screen in both languages: what stands half under the foot, or too near to its neighbour.

A key that is half covered, or beside another one, is missed with a wet glove.
"""
import json

import pytest
from covemix.server.pages import PAGES
from playwright.sync_api import expect

from .conftest import fresh, keep, until
from .test_run import REST, SEAM

SIZES = ((360, 740), (412, 915))
COVER = 64  # px; the tallest key that is covered whole, and its edge
APART = 8  # CSS px between two targets
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
  const cover = parseFloat(getComputedStyle(foot).getPropertyValue("--cut")) || 0;
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


# two that are nearer to each other than they may be, with the gap; what sticks over the page is no neighbour of what
# passes under it
NEAR = """([within, apart]) => {
  const place = (one) => one.closest("[data-foot], [data-notices], .strip");
  const kinds = "a[class], button, summary, select, input, .choice";
  const all = [...document.querySelector(within).querySelectorAll(kinds)]
    .filter((one) => one.checkVisibility({ visibilityProperty: true }))
    .filter((one) => !one.matches(".skip, .choice-input, [type=hidden]"))
    .filter((one) => within !== "body" || !one.closest("dialog"))
    .map((one) => [one, (one.closest(".field-box") ?? one).getBoundingClientRect()])
    .filter(([, { width, height }]) => width > 1 && height > 1);
  const found = [];
  const named = (one) => NAMED;
  for (const [place_, [one, a]] of all.entries()) for (const [other, b] of all.slice(place_ + 1)) {
    if (one.contains(other) || other.contains(one) || place(one) !== place(other)) continue;
    const across = Math.max(b.left - a.right, a.left - b.right), down = Math.max(b.top - a.bottom, a.top - b.bottom);
    const gap = Math.max(across, down);
    if (gap < apart - 0.5) found.push(`${named(one)} | ${named(other)}: ${gap.toFixed(1)}`);
  }
  return found;
}""".replace("NAMED", NAMED)


def near(page, within="body"):
    return page.evaluate(NEAR, [within, APART])


def test_neighbouring_targets_are_apart(screen):
    assert near(screen) == []
    screen.evaluate("() => { for (const fold of document.querySelectorAll('details')) fold.open = true; }")
    assert near(screen) == []


@pytest.fixture(params=["en", "de"])
def any_phone(chromium, request):
    with fresh(chromium, locale=request.param) as (page, _):
        page.clock.install()
        yield page


def walked(page, start):
    """What is too near to its neighbour in the view of the steps, tap by tap to its end; and how many taps it took."""
    page.locator(start).click()
    step, tap = page.locator("[data-steps=step]"), page.locator("[data-steps=tap]")
    expect(step).not_to_be_empty()
    found = set()
    for count in range(40):
        page.clock.run_for(REST)
        found |= set(near(page, "[data-along]"))
        before = tap.inner_text()
        tap.click()
        until(page, f"""() => {{
            const along = document.querySelector("[data-along]");
            return !along.open || along.querySelector("[data-steps=tap]").innerText !== {json.dumps(before)};
        }}""")
        if not page.locator("[data-along]").is_visible():
            return found, count + 1
    raise AssertionError("it never ended")


def test_neighbours_on_the_sheet_and_in_the_steps_of_a_pour_are_apart(any_phone, standing):
    any_phone.goto(standing.url)
    expect(any_phone.locator("[data-form].live")).to_be_attached()
    any_phone.locator("[data-share]").click()
    expect(any_phone.locator("[data-code] .code")).to_be_visible()
    assert near(any_phone, "[data-sheet]") == []
    any_phone.keyboard.press("Escape")
    found, count = walked(any_phone, "[data-along-go]")
    assert found == set() and count > 3


def test_neighbours_in_the_run_of_a_seam_are_apart(any_phone, standing):
    any_phone.goto(standing.url + SEAM)
    any_phone.locator("[data-notice=link] .notice-acts .button").first.click()
    expect(any_phone.locator("[data-line=batches]")).to_be_visible()
    found, count = walked(any_phone, "[data-run-go]")
    assert found == set() and count > 20

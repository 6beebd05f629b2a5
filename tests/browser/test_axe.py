"""WCAG 2.2 by machine: every screen, each look, at the size of a phone; the sheet that stands over a screen too.

A screen is opened once for all that is looked at; what is tapped and how large it is comes last, with the folds open.
"""
import pytest
from axe_playwright_python.sync_playwright import Axe
from covemix.server.pages import PAGES
from playwright.sync_api import expect

from .conftest import fresh
from .test_targets import GLOVE, LEAST, PRIMARY, sizes

LOOKS = {"light": {"color_scheme": "light"}, "dark": {"color_scheme": "dark"},
         "forced colours": {"forced_colors": "active"}}


@pytest.fixture(scope="module")
def reader(chromium, standing):
    with fresh(chromium, bypass_csp=True) as (page, _):
        yield page, standing.url


def dress(page, look):
    page.emulate_media(**{"color_scheme": "light", "forced_colors": "none", **LOOKS[look]})


def violations(page):
    found = Axe().run(page).response["violations"]
    return [(one["id"], one["nodes"][0]["html"][:160]) for one in found]


@pytest.fixture(scope="module", params=[path for _, path, _ in PAGES])
def screen(reader, request):
    """A screen that answers, opened once for all looks."""
    page, url = reader
    page.goto(f"{url}/{request.param}")
    expect(page.locator("[data-form].live, [data-main]:not(:has([data-form]))").first).to_be_attached()
    return page


@pytest.mark.parametrize("look", LOOKS)
def test_a_screen_has_no_violation(screen, look):
    dress(screen, look)
    assert violations(screen) == []


@pytest.mark.parametrize("look", LOOKS)
def test_the_sheet_has_no_violation(reader, look):
    page, url = reader
    dress(page, look)
    page.goto(url)
    page.get_by_role("button", name="Share").click()
    expect(page.locator("[data-code] .code")).to_be_visible()
    assert violations(page) == []


def test_a_screen_needs_no_sideways_scrolling_at_320(screen):
    """WCAG 2.2, 1.4.10 Reflow."""
    dress(screen, "light")
    screen.set_viewport_size({"width": 320, "height": 740})
    assert screen.evaluate("document.documentElement.scrollWidth") <= 320
    screen.set_viewport_size({"width": 360, "height": 740})


SIZES = ((360, 740), (412, 915))
HAIR = 2  # px; so much of a key is its edge, of which nothing is seen
KEYS = """[...document.querySelectorAll("main :is(a[class], button, summary, select, input, .choice)")]
  .filter((one) => one.checkVisibility({ visibilityProperty: true }) && !one.matches("[type=hidden]"))"""
NAMED = "`${one.tagName} ${one.name ?? ''} ${one.textContent.trim().slice(0, 30)}`"
# what was kept and the like is closed: it takes its own room where the screen is narrow
TOP = "document.querySelectorAll('[data-notice] [data-kind=cross]').forEach((one) => one.click()); scrollTo(0, 0);"
CUT = """(hair) => {
  TOP
  const edge = document.querySelector("[data-foot]").getBoundingClientRect().top;
  return KEYS.map((one) => [one, one.getBoundingClientRect()])
    .filter(([, { top, bottom }]) => top < edge - hair && bottom > edge + hair)
    .map(([one, { top, bottom }]) => [NAMED, top, bottom, edge]);
}""".replace("KEYS", KEYS).replace("NAMED", NAMED).replace("TOP", TOP)
COVERED = """() => KEYS.filter((one) => {
  one.focus();
  const { left, top, width, bottom } = one.getBoundingClientRect();
  const over = [top + 3, bottom - 3].map((y) => document.elementFromPoint(left + width / 2, y));
  return over.some((hit) => !hit || hit.closest("[data-foot], [data-notices], .strip"));
}).map((one) => NAMED)""".replace("KEYS", KEYS).replace("NAMED", NAMED)
# an answer that is late is marked so within 300 ms, and then waited for
SETTLED = """async () => {
  const pass = (ms) => new Promise((resolve) => { setTimeout(resolve, ms); });
  await pass(400);
  while (document.querySelector("[data-main][data-old]")) await pass(50);
}"""
# the large figures of Pour that do not stand whole
FIGURES = """() => {
  TOP
  const edge = document.querySelector("[data-foot]").getBoundingClientRect().top;
  return [...document.querySelectorAll(".screen-pour .head .line[data-rank=answer] > :is(.line-text, .line-rule)")]
    .filter((one) => one.getBoundingClientRect().bottom > edge).map((one) => one.textContent);
}""".replace("TOP", TOP)


def test_the_caution_and_the_bar_under_it_cut_no_key_and_hide_none_that_is_reached(screen):
    """WCAG 2.2, 2.4.11 and 2.4.12 Focus Not Obscured. A key that is half covered is missed with a wet glove."""
    dress(screen, "light")
    expect(screen.locator("main :is(.line, .error, [data-none]):visible").first).to_be_visible()
    for units in ("us", "metric"):
        screen.evaluate("async (units) => (await part('page/settings.js')).choose('units', units)", units)
        screen.evaluate(SETTLED)
        for width, height in SIZES:
            screen.set_viewport_size({"width": width, "height": height})
            assert screen.evaluate(CUT, HAIR) == [], (units, width)
            assert screen.evaluate(COVERED) == [], (units, width)
        screen.set_viewport_size({"width": 320, "height": 640})
        assert screen.evaluate(COVERED) == [], (units, 320)
        assert screen.evaluate(FIGURES) == [], (units, 320)
    screen.set_viewport_size({"width": 360, "height": 740})


def test_every_target_is_large_enough(screen):
    """WCAG 2.2, 2.5.8 Target Size, and 2.5.5 for what the work itself needs."""
    dress(screen, "light")
    screen.evaluate("() => { for (const fold of document.querySelectorAll('details')) fold.open = true; }")
    found = sizes(screen)
    assert len(found) > 8
    assert [one for one in found if one[1] < LEAST] == []
    kinds = [kind.removeprefix(".") for kind in PRIMARY]
    assert [one for one in found if one[1] < GLOVE and any(kind in one[0].split() for kind in kinds)] == []

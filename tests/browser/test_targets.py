"""WCAG 2.2, 2.5.8: what is tapped is large enough; what wet gloves tap is larger. Every screen: test_axe.py."""
import pytest
from playwright.sync_api import expect

from .conftest import figure, open_share

LEAST = 24  # CSS px, WCAG 2.2, 2.5.8 at level AA
GLOVE = 44  # CSS px, WCAG 2.2, 2.5.5 at level AAA: what the work itself needs
# What can be tapped and is in sight, with its size; a hidden radio button is tapped by its words.
# Links inside a sentence are left out, as 2.5.8 does.
TARGETS = """(within) => [...document.querySelector(within).querySelectorAll(KINDS)]
  .filter((one) => one.checkVisibility({ visibilityProperty: true })
    && !one.matches(".skip, [type=hidden]") && !(one.matches("a:not([class])") && one.closest("p, li")))
  .map((one) => [one.getBoundingClientRect(), one])
  .map(([{ width, height }, one]) => [`${one.tagName} ${one.className} ${one.textContent.trim().slice(0, 30)}`,
    Math.round(Math.min(width, height) * 10) / 10])"""
PRIMARY = (".button", ".choice", ".nav-link", ".top-link", ".fold-name", ".number", ".words", ".pick")


def sizes(page, within="body"):
    return page.evaluate(TARGETS.replace("KINDS", "'a, button, summary, select, input, .choice'"), within)


SHIFTS = """window.shifts = []; new PerformanceObserver((list) => {
  for (const one of list.getEntries()) if (!one.hadRecentInput) window.shifts.push(one.value);
}).observe({ type: "layout-shift", buffered: true });"""


@pytest.mark.parametrize(("width", "height"), [(412, 823), (360, 740)])
def test_nothing_moves_on_pour_while_it_comes_and_its_keys_lie_above_the_foot(phone, standing, width, height):
    """The notice that it is kept covers no link and no figure; what is tapped next is in sight, whole."""
    phone.set_viewport_size({"width": width, "height": height})
    phone.add_init_script(SHIFTS)
    phone.goto(standing.url)
    expect(phone.locator("[data-notice=ready]")).to_be_visible(timeout=60_000)
    told = phone.locator("[data-notice=ready]").bounding_box()
    share = phone.get_by_role("button", name="Share").bounding_box()
    assert told["y"] >= 0 and told["x"] + told["width"] <= share["x"]
    assert told["y"] + told["height"] <= phone.locator("[data-main]").bounding_box()["y"] + 1
    assert sum(phone.evaluate("window.shifts")) < 0.01
    phone.get_by_role("button", name="Close").click()
    expect(phone.locator("[data-notice=ready]")).to_have_count(0)
    # a label of one's own; of the built-in one there is a warning first
    phone.evaluate("""async () => (await part("store/store.js")).put("kit", { record: "system", made: 1,
      typed: { name: "Shed mix", by_weight: "100:30" } })""")
    phone.reload()
    expect(figure(phone, "reading_a")).to_have_text("185 g")  # 240 x 100 : 130
    expect(phone.locator("[data-form].live")).to_be_attached()
    foot = phone.locator("[data-foot]").bounding_box()["y"]
    for name in ("Pour step by step", "Log this batch"):
        key = phone.get_by_role("button", name=name).bounding_box()
        assert key["y"] + key["height"] <= foot


def test_the_notice_that_it_is_kept_stays_whole_in_larger_text(phone, standing):
    """It no longer fits over the brand, and takes a place of its own."""
    phone.goto(standing.url)
    told = phone.locator("[data-notice=ready]")
    expect(told).to_be_visible(timeout=60_000)
    assert told.evaluate("(box) => 'over' in box.dataset")
    phone.set_viewport_size({"width": 740, "height": 360})  # turned
    assert told.bounding_box()["y"] >= 0
    phone.set_viewport_size({"width": 360, "height": 740})
    phone.evaluate("document.documentElement.style.fontSize = '200%'")
    phone.wait_for_function("() => document.querySelector('[data-notice=ready]').getBoundingClientRect().top >= 0")
    top, box = phone.locator("[data-top]").bounding_box(), told.bounding_box()
    assert box["y"] >= top["y"] + top["height"] - 1


def test_the_bench_and_the_sheet_are_made_for_gloves(phone, standing):
    phone.goto(standing.url)
    open_share(phone)
    assert [one for one in sizes(phone, "[data-sheet]") if one[1] < GLOVE] == []
    phone.keyboard.press("Escape")
    phone.get_by_role("button", name="Pour step by step").click()
    expect(phone.locator("[data-steps=figure]")).to_contain_text("mL")
    assert [one for one in sizes(phone, "[data-along]") if one[1] < 56] == []

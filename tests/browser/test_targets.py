"""WCAG 2.2, 2.5.8: what is tapped is large enough; what wet gloves tap is larger. Every screen: test_axe.py."""
from playwright.sync_api import expect

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


def test_the_bench_and_the_sheet_are_made_for_gloves(phone, standing):
    phone.goto(standing.url)
    phone.get_by_role("button", name="Share").click()
    expect(phone.locator("[data-code] .code")).to_be_visible()
    assert [one for one in sizes(phone, "[data-sheet]") if one[1] < GLOVE] == []
    phone.keyboard.press("Escape")
    phone.get_by_role("button", name="Pour it step by step").click()
    expect(phone.locator("[data-bench=figure]")).to_contain_text("g")
    assert [one for one in sizes(phone, "[data-along]") if one[1] < 56] == []

"""In the hand: the minutes of a running pot on every screen, keys of a step that stay whole, the first minute, and what
is heard or reached by keys alone."""
import re

import pytest
from playwright.sync_api import expect

from .conftest import POT, fresh, until

# the name, as a reader says it, of what describes an element
DESCRIBED = """(one) => (one.getAttribute("aria-describedby") ?? "").split(" ").filter(Boolean)
  .map((id) => document.getElementById(id)?.textContent.trim() ?? "").join(" | ")"""


def tab(page, name):
    return page.locator(f".nav [data-to={name}]")


def test_the_minutes_of_a_running_pot_stand_on_every_screen_and_in_the_steps(phone, standing):
    phone.goto(standing.url)
    expect(tab(phone, "clock")).to_have_attribute("data-minutes", "")
    phone.evaluate(POT)
    for name in ("boat", "kit", "joint", "pour"):
        tab(phone, name).click()
        expect(phone.locator(f"main.screen-{name}")).to_be_visible()
        expect(tab(phone, "clock")).to_have_attribute("data-minutes", re.compile(r"^(30:00|29:\d\d)$"))
        drawn = tab(phone, "clock").evaluate("(one) => getComputedStyle(one, '::before').content")
        assert "attr(data-minutes)" in drawn or re.search(r"\d\d:\d\d", drawn)
    phone.get_by_role("button", name="Pour step by step").click()
    expect(phone.locator("[data-steps=hot]")).to_have_attribute("data-minutes", re.compile(r"^29:\d\d$"))
    phone.get_by_role("button", name="Leave").click()
    phone.get_by_role("link", name="Safety", exact=True).first.click()
    expect(tab(phone, "clock")).to_have_attribute("data-minutes", re.compile(r"^29:\d\d$"))


LONG = "Read the safety data sheet and let fresh air in, before you open the tub. " * 12


def test_the_keys_of_a_step_stay_whole_under_a_long_warning(phone, standing):
    phone.goto(standing.url)
    phone.get_by_role("button", name="Pour step by step").click()
    expect(phone.locator("[data-steps=figure]")).to_contain_text("mL")
    for text in ("", LONG):
        phone.evaluate("(text) => { document.querySelector('[data-steps=under]').textContent = text; }", text)
        for name in ("Undo", "Leave"):
            key = phone.get_by_role("button", name=name).bounding_box()
            assert key["y"] >= 0 and key["y"] + key["height"] <= 740, (name, text[:10])
        hit = phone.evaluate("""() => [...document.querySelectorAll(".steps-keys .button:not([hidden])")].map((one) => {
          const { left, top, width, height } = one.getBoundingClientRect();
          return [3, height - 3].every((down) => document.elementFromPoint(left + width / 2, top + down) === one);
        })""")
        assert hit and all(hit)


@pytest.fixture
def first(chromium):
    """A phone that never was here."""
    with fresh(chromium, been=False) as (page, _):
        yield page


def test_the_first_open_says_what_it_is_and_offers_three_ways_in(first, standing):
    first.goto(standing.url)
    ways = first.locator("[data-welcome]")
    expect(ways).to_contain_text("epoxy seam")
    assert ways.locator(".button").all_inner_texts() == ["Measure a mix", "Do a seam", "Plan a boat"]
    box = ways.bounding_box()
    assert box["y"] + box["height"] <= first.locator("[data-foot]").bounding_box()["y"] + 3
    ways.get_by_role("link", name="Do a seam").click()
    expect(first.locator("main.screen-joint")).to_be_visible()
    first.go_back()
    expect(first.locator("main.screen-pour")).to_be_visible()
    expect(ways).to_be_hidden()


def test_whoever_measures_is_past_the_ways_in_by_any_touch(first, standing):
    first.goto(standing.url)
    expect(first.locator("[data-welcome]")).to_be_visible()
    first.get_by_label("Amount", exact=True).click()
    expect(first.locator("[data-welcome]")).to_be_hidden()
    first.reload()
    expect(first.locator("[data-form].live")).to_be_attached()
    expect(first.locator("[data-welcome]")).to_be_hidden()


def test_a_later_open_goes_where_the_hand_was_last(phone, standing):
    phone.goto(standing.url)
    tab(phone, "joint").click()
    expect(phone.locator("main.screen-joint")).to_be_visible()
    until(phone, "() => localStorage['covemix.told.here'] === 'joint'")
    later = phone.context.new_page()
    later.goto(standing.url)
    expect(later.locator("main.screen-joint")).to_be_visible()
    linked = phone.context.new_page()
    linked.goto(standing.url + "/?amount=200")  # somebody's link is what it says
    expect(linked.locator("[data-form].live")).to_be_attached()
    expect(linked.locator("main.screen-pour")).to_be_visible()
    later.goto(standing.url)  # the same tab: asked for
    expect(later.locator("main.screen-pour")).to_be_visible()


def test_an_error_and_another_caution_are_announced(phone, standing):
    phone.goto(standing.url)
    said, caution = phone.locator("[data-status]"), phone.locator("[data-caution]")
    expect(said).not_to_be_empty()
    before = caution.inner_text()
    amount = phone.get_by_label("Amount", exact=True)
    amount.fill("18o")
    expect(phone.locator("#error-amount")).to_be_visible()
    mistake = phone.locator("#error-amount").inner_text()
    expect(said).to_have_text(re.compile(re.escape(mistake) + "$"))
    assert said.inner_text() == f"{caution.inner_text()} {mistake}"  # and nothing else
    amount.fill("5000")
    expect(caution).not_to_have_text(before, use_inner_text=True)
    expect(said).to_contain_text(caution.inner_text())


def test_a_reader_is_told_each_step(phone, standing):
    phone.goto(standing.url)
    phone.get_by_role("button", name="Pour step by step").click()
    said = phone.locator("[data-along] [role=status]")
    expect(said).not_to_be_empty()
    before = said.inner_text()
    phone.locator("[data-steps=tap]").click()
    expect(said).not_to_have_text(before, use_inner_text=True)


def test_a_unit_is_part_of_what_describes_its_field(phone, standing):
    phone.goto(standing.url)
    amount = phone.get_by_label("Amount", exact=True)
    amount.fill("250")
    assert "g" in amount.evaluate(DESCRIBED).split(" | ")
    amount.fill("250 mL")  # it says its own
    assert "g" not in amount.evaluate(DESCRIBED).split(" | ")


def test_remove_says_what_and_the_focus_stays_near(phone, standing):
    phone.goto(standing.url + "/boat/")
    phone.get_by_role("button", name="Try the demo boat").click()
    rows = phone.locator("[data-group=joints] [data-row]")
    expect(rows.nth(1)).to_be_attached()
    count = rows.count()
    rows.nth(0).locator("summary").first.click()
    key = rows.nth(0).locator("[data-row-remove]")
    name = rows.nth(0).locator(".row-name").inner_text()
    assert key.evaluate(DESCRIBED) == name
    key.click()
    expect(rows).to_have_count(count - 1)
    assert phone.evaluate("document.activeElement.closest('[data-row]').dataset.row") == "0"


CONTRAST = """(one) => {
  const { color, backgroundColor } = getComputedStyle(one);
  const light = (text) => {
    const [r, g, b] = text.match(/[\\d.]+/g).map((part) => Number(part) / 255)
      .map((part) => (part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4));
    return 0.2126 * r + 0.7152 * g + 0.0722 * b;
  };
  const [low, high] = [light(color), light(backgroundColor)].sort((a, b) => a - b);
  return (high + 0.05) / (low + 0.05);
}"""


def test_the_key_that_starts_a_clock_is_read_in_forced_colours(phone, standing):
    """WCAG 2.2, 1.4.3."""
    phone.emulate_media(forced_colors="active")
    phone.goto(standing.url + "/clock/?air=25&batch=300")
    key = phone.get_by_role("link", name="Start the clock")
    expect(key).to_be_visible()
    assert key.evaluate(CONTRAST) >= 4.5

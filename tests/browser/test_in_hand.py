"""In the hand: the minutes of a running pot on every screen, keys of a step that stay whole, the first minute, and what
is heard or reached by keys alone."""
import re
from itertools import pairwise

import pytest
from playwright.sync_api import expect

from .conftest import POT, fresh, keep, until

HIDE = """(hidden) => {
  Object.defineProperty(document, "hidden", { configurable: true, get: () => hidden });
  document.dispatchEvent(new Event("visibilitychange"));
}"""
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


def test_errors_and_another_caution_are_announced_and_an_answer_once(phone, standing):
    phone.goto(standing.url)
    said = phone.locator("[data-status]")
    expect(said).not_to_be_empty()
    phone.evaluate("""() => {
      window.told = [];
      const place = document.querySelector("[data-status]");
      new MutationObserver(() => window.told.push(place.textContent)).observe(place, { childList: true });
    }""")
    amount = phone.get_by_label("Amount", exact=True)
    amount.fill("18o")
    expect(said).to_contain_text(phone.locator("#error-amount").inner_text().strip())
    amount.fill("900")
    caution = phone.locator("[data-caution]").inner_text()
    assert "big batch" in caution
    expect(said).to_contain_text("big batch")
    amount.fill("901")
    until(phone, "() => window.told.at(-1).includes('Resin')")
    phone.wait_for_timeout(900)
    told = phone.evaluate("window.told")
    assert len(told) == len(set(told))
    assert "big batch" not in told[-1]  # the same caution of another mass


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


def test_the_focus_stays_near_in_a_list_and_at_a_tab(phone, standing):
    phone.goto(standing.url + "/kit/")
    phone.evaluate("""async () => { const { put } = await part("store/store.js");
      for (const name of ["One", "Two"]) {
        await put("kit", { record: "cup", made: Date.now(), typed: { name, volume: "1 L" } });
      } }""")
    cups = phone.locator("[data-shelf=cup] .entry")
    expect(cups).to_have_count(2)
    for act, left in (("Copy", 3), ("Remove", 2), ("Remove", 1), ("Remove", 0)):
        cups.nth(0).get_by_role("button", name=act).click()
        expect(cups).to_have_count(left)
        near = cups.nth(0).get_by_role("button", name=act) if left else phone.locator("[data-shelf=cup] [data-add]")
        expect(near).to_be_focused()
    tab(phone, "boat").press("Enter")
    expect(phone.locator("main.screen-boat")).to_be_visible()
    expect(tab(phone, "boat")).to_be_focused()


HEADINGS = """[...document.querySelectorAll("h1, h2, h3, h4")].filter((one) => one.checkVisibility())
  .map((one) => Number(one.tagName[1]))"""


@pytest.mark.parametrize("path", ["", "joint/", "boat/", "clock/?air=20", "plan/", "safety/", "log/", "kit/"])
def test_below_the_name_of_a_screen_stand_headings_and_none_is_skipped(same_phone, standing, path):
    page = same_phone
    page.goto(f"{standing.url}/{path}")
    if path == "log/":
        page.evaluate("""async () => (await part("kit/log.js")).logBatch({ typed: { what: "Keel" } })""")
        expect(page.locator(".entry")).to_have_count(1)
    expect(page.locator("[data-form].live, [data-listing]:visible").first).to_be_attached()
    until(page, f"() => {HEADINGS}.length > 1")
    levels = page.evaluate(HEADINGS)
    assert levels[0] == 1 and levels.count(1) == 1
    assert all(after <= before + 1 for before, after in pairwise(levels)), levels


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
    phone.goto(standing.url + "/clock/?air=20")
    key = phone.get_by_role("link", name="Start the clock")
    expect(key).to_be_visible()
    assert key.evaluate(CONTRAST) >= 4.5


def test_a_search_of_the_log_finds_the_words_on_the_screen(phone, standing):
    phone.goto(standing.url + "/log/")
    phone.evaluate("""async () => { const { logBatch } = await part("kit/log.js");
      await logBatch({ typed: { what: "Keel", outcome: "stiff" } });
      await logBatch({ typed: { what: "Bow", outcome: "good" } }); }""")
    entries = phone.locator(".entry")
    expect(entries).to_have_count(2)
    stiff = entries.filter(has_text="Keel").locator(".entry-line").first.inner_text()
    phone.get_by_label("Search the log").fill(stiff)
    expect(entries).to_have_count(1)
    expect(entries).to_contain_text("Keel")


def test_sound_that_is_off_is_said(phone, standing):
    phone.goto(standing.url + "/clock/")
    phone.evaluate(POT)
    key = phone.locator("[data-try-alarm]")
    expect(key).to_have_text("Sound is off: tap")
    key.click()
    expect(key).to_have_text("Try the alarm")


def test_a_pots_end_in_a_hidden_tab_is_a_notification_where_one_is_granted(phone, served):
    phone.add_init_script("""
      window.shown = [];
      window.Notification = { permission: "granted", requestPermission: async () => "granted" };
      ServiceWorkerRegistration.prototype.showNotification = async (text) => { window.shown.push(text); };""")
    keep(phone, served.url)
    for hidden, count in ((False, 0), (True, 1)):
        phone.evaluate(HIDE, hidden)
        phone.evaluate("async () => (await part('phone/alarm.js')).ring('pot-1', 'Pot 1 is thick')")
        until(phone, f"() => window.shown.length === {count}")
    assert phone.evaluate("window.shown[0]") == "Pot 1 is thick"

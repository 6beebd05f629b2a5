"""First aid in one tap, without signal, from everywhere; own numbers are there to be tapped."""
import pytest
from playwright.sync_api import expect

from .conftest import keep, until


@pytest.mark.parametrize("path", ["", "clock/"])
def test_first_aid_is_the_first_thing_one_tap_away_without_signal(phone, served, path):
    phone.set_viewport_size({"width": 360, "height": 740})
    keep(phone, f"{served.url}/{path}")
    served.stop()
    phone.get_by_role("link", name="Safety", exact=True).click()
    eyes = phone.locator("[data-line=aid_eyes]")
    expect(eyes).to_be_in_viewport(ratio=1)
    expect(eyes).to_contain_text("Rinse cautiously with water")
    expect(phone.locator("[data-line=no_calls]")).to_have_count(1)
    phone.get_by_text("A pot that smokes or burns", exact=True).click()  # its steps, in sight without a scroll
    first, second = (phone.locator(f"[data-line=hot_{key}]") for key in ("out", "carry"))
    expect(second).to_be_in_viewport(ratio=1)
    assert first.bounding_box()["y"] < second.bounding_box()["y"] < eyes.bounding_box()["y"]
    top = phone.evaluate("document.querySelector('.aid').getBoundingClientRect().top - "
                         "document.querySelector('[data-form]').querySelector('*').getBoundingClientRect().top")
    assert top < 0


# a link to it that a finger would meet, and no other thing over it
IN_REACH = """() => [...document.querySelectorAll("a[data-to=safety]")].some((one) => {
  const { left, top, width, height, bottom } = one.getBoundingClientRect();
  const seen = width && top >= 0 && bottom <= innerHeight;
  const met = seen && document.elementFromPoint(left + width / 2, top + height / 2);
  return met && (one.contains(met) || met.contains(one)) && Math.min(width, height) >= 44;
})"""


@pytest.mark.parametrize("path", ["", "joint/", "clock/", "boat/", "plan/", "kit/", "log/", "test-cup/", "spreader/",
                                  "sources/", "safety/"])
def test_a_link_to_first_aid_is_in_reach_on_every_screen_at_its_top_and_its_end(same_phone, standing, path):
    same_phone.set_viewport_size({"width": 360, "height": 740})
    same_phone.goto(f"{standing.url}/{path}")
    until(same_phone, IN_REACH)
    same_phone.evaluate("scrollTo(0, document.body.scrollHeight)")
    until(same_phone, IN_REACH)


def test_first_aid_is_one_tap_from_the_steps_of_a_pour_which_wait_where_they_were(phone, served):
    """Old main: the steps cover the screen while hardener is poured, and nothing there led to first aid."""
    phone.set_viewport_size({"width": 360, "height": 740})
    keep(phone, served.url)
    phone.goto(f"{served.url}/?system.by_weight=345:98&amount=100")
    phone.get_by_role("button", name="Pour step by step").click()
    step = phone.locator("[data-steps=step]")
    expect(step).to_contain_text("Step 1 of")
    phone.locator("[data-steps=tap]").click()
    expect(step).to_contain_text("Step 2 of")
    assert phone.evaluate(IN_REACH)
    served.stop()
    phone.locator("dialog").get_by_role("link", name="Safety", exact=True).click()
    expect(phone.locator("[data-line=aid_eyes]")).to_be_in_viewport(ratio=1)
    phone.get_by_role("link", name="Pour", exact=True).click()
    expect(step).to_contain_text("Step 2 of")
    phone.get_by_role("button", name="Leave").click()
    expect(phone.locator("dialog.steps")).to_be_hidden()


def test_first_aid_is_one_tap_from_the_sheet_that_hands_over(phone, standing):
    phone.set_viewport_size({"width": 360, "height": 740})
    phone.goto(standing.url)
    phone.get_by_role("button", name="Share").click()
    until(phone, IN_REACH)
    phone.locator("dialog").get_by_role("link", name="Safety", exact=True).click()
    expect(phone.locator("[data-line=aid_eyes]")).to_be_in_viewport(ratio=1)
    expect(phone.locator("[data-sheet]")).to_be_hidden()


def test_own_numbers_of_the_kit_are_tapped_on_safety_without_signal(phone, served):
    keep(phone, served.url + "/kit/")
    served.stop()
    phone.locator("[data-add=numbers]").click()
    expect(phone.locator("[name='numbers.name']")).to_be_focused()
    for name, text in {"name": "Yard", "ambulance": "112", "poison": "+48 (0)22 619-66-54"}.items():
        phone.locator(f"[name='numbers.{name}']").fill(text)
    phone.get_by_role("button", name="Save", exact=True).click()
    expect(phone.locator("[data-shelf=numbers] .entry")).to_contain_text("Yard")
    phone.get_by_role("link", name="Safety", exact=True).click()
    calls = phone.locator("a.call")
    expect(calls).to_have_count(2)
    assert [calls.nth(place).get_attribute("href") for place in (0, 1)] == ["tel:112", "tel:+48226196654"]
    assert all(calls.nth(place).bounding_box()["height"] >= 56 for place in (0, 1))


WAYS = {"Hot pot": "hot_out", "Eyes": "aid_eyes", "Skin": "aid_skin", "Swallowed": "aid_swallowed"}


def test_from_what_happened_it_is_one_tap_to_what_to_do(phone, served):
    """Six large buttons on the first screen of Safety, also without signal; two of them ask the task."""
    phone.set_viewport_size({"width": 360, "height": 740})
    keep(phone, served.url + "/safety/")
    served.stop()
    ways = phone.locator("[data-aid]")
    expect(ways).to_have_count(6)
    for way in ways.all():
        expect(way).to_be_in_viewport(ratio=1)
        assert way.bounding_box()["height"] >= 56
    for name, line in WAYS.items():
        phone.evaluate("scrollTo(0, 0)")
        phone.get_by_role("link", name=name, exact=True).click()
        expect(phone.locator(f"[data-line={line}]")).to_be_in_viewport(ratio=1)
        assert phone.evaluate("document.activeElement.dataset.line") == line
    for name, task in (("Fire", "fire"), ("Spill", "spill")):
        phone.evaluate("scrollTo(0, 0)")
        phone.get_by_role("link", name=name, exact=True).click()
        expect(phone.locator("[name=task]")).to_have_value(task)
        answer = phone.locator("[data-move=safety]")
        expect(answer.locator(f"[data-line^={task}_]").first).to_be_visible()
        assert phone.evaluate("document.activeElement.dataset.move") == "safety"


def test_a_hot_pot_is_one_tap_from_the_steps_and_from_each_running_pot(phone, standing):
    phone.set_viewport_size({"width": 360, "height": 740})
    phone.goto(standing.url + "/?system.by_weight=345:98&amount=100")
    phone.get_by_role("button", name="Pour step by step").click()
    phone.locator("dialog").get_by_role("link", name="Hot pot", exact=True).click()
    expect(phone.locator("[data-line=hot_out]")).to_be_in_viewport(ratio=1)
    phone.goto(standing.url + "/clock/?air=25&batch=300")
    phone.get_by_role("link", name="Start the clock").click()
    pot = phone.locator(".pot")
    pot.get_by_role("link", name="Hot pot", exact=True).click()
    expect(phone.locator("[data-line=hot_out]")).to_be_in_viewport(ratio=1)


def test_without_scripts_each_way_leads_to_an_answer_of_the_server(chromium, standing):
    page = chromium.new_context(java_script_enabled=False).new_page()
    for name, line in (("Hot pot", "hot_"), ("Fire", "fire_"), ("Spill", "spill_")):
        page.goto(standing.url + "/safety/")
        page.get_by_role("link", name=name, exact=True).click()
        assert page.locator(f"[data-move=safety] [data-line^={line}]").count()
    page.context.close()

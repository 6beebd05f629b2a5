"""What an iPhone's browser does otherwise: its icon has a copy of its own, and a finger counts when it lifts."""
from playwright.sync_api import expect

from .conftest import fresh, keep

IN_SAFARI = "Object.defineProperty(navigator, 'standalone', { value: false });"
BY_ITS_ICON = "Object.defineProperty(navigator, 'standalone', { value: true });"
ICON = "[data-notice=icon]"
TAPPED = """
window.counted = false;
window.AudioContext = class {
  constructor() { this.state = "suspended"; }
  async resume() { if (["pointerup", "touchend"].includes(event.type)) window.counted = true; }
};
"""
GRANTED = """
window.granted = 0;
window.refused = 0;
navigator.wakeLock.request = async () => {
  if (window.refused < 1) {
    window.refused += 1;
    throw new DOMException("", "NotAllowedError");
  }
  window.granted += 1;
  return new EventTarget();
};
"""


def test_in_the_browser_it_is_told_how_to_add_the_icon_and_to_bring_things_across(chromium, served):
    with fresh(chromium) as (page, _):
        page.add_init_script(IN_SAFARI)
        page.goto(served.url)
        expect(page.locator(ICON)).to_contain_text("a week without a visit deletes kit and log")
        expect(page.locator(ICON)).to_contain_text("Add to Home Screen")
        page.click(ICON + " button")
        expect(page.locator("[data-notice=ready]")).to_be_visible()
        page.goto(served.url + "/kit/")
        page.get_by_text("A copy of everything").click()
        hint = page.locator("[data-icon]")
        expect(hint).to_contain_text("Add to Home Screen")
        expect(hint).to_contain_text("bring it back there")
        page.reload()
        expect(page.locator("[data-form].live")).to_be_attached()
        expect(page.locator(ICON)).to_have_count(0)  # told once


def test_nobody_else_is_told_of_an_icon(chromium, served):
    for script in (BY_ITS_ICON, ""):
        with fresh(chromium) as (page, _):
            if script:
                page.add_init_script(script)
            keep(page, served.url)
            expect(page.locator(ICON)).to_have_count(0)
            page.goto(served.url + "/kit/")
            page.get_by_text("A copy of everything").click()
            expect(page.locator("[data-export]")).to_be_visible()
            expect(page.locator("[data-icon]")).to_be_hidden()


def test_a_tap_of_a_finger_lets_a_pot_ring(chromium, standing):
    """A page that asks for sound only when a finger comes down may never have it."""
    with fresh(chromium, has_touch=True, is_mobile=True) as (page, _):
        page.add_init_script(TAPPED)
        page.goto(standing.url + "/clock/")
        page.get_by_label("Air temperature").first.wait_for()
        page.touchscreen.tap(180, 60)
        page.wait_for_function("window.counted")


def test_a_screen_that_may_stay_on_only_after_a_tap_stays_on_after_the_next_one(chromium, standing):
    with fresh(chromium, has_touch=True, is_mobile=True) as (page, _):
        page.add_init_script(GRANTED)
        page.goto(standing.url + "/clock/")
        page.get_by_label("Air temperature").first.wait_for()
        page.evaluate("async () => (await part('phone/wake_lock.js')).stayAwake()")
        assert page.evaluate("[window.refused, window.granted]") == [1, 0]
        page.touchscreen.tap(180, 60)
        page.wait_for_function("window.granted")

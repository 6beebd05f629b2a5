"""An alarm that may not be heard: sound that is off is said, and a pot's end comes as a notification out of sight."""
import pytest
from playwright.sync_api import expect

from .conftest import POT, keep, until
from .test_clock import ADD, pot_of

# A browser whose answer is known, with what it was asked to show.
BROWSER = """window.shownThere = [];
window.Notification = class extends EventTarget {
  static permission = "%s";
  static async requestPermission() { Notification.permission = "granted"; return "granted"; }
  constructor(title, how) { super(); window.shownThere.push([title, how.body]); }
};"""
HIDDEN = "Object.defineProperty(document, 'hidden', { get: () => true });"


@pytest.fixture
def clock(phone, standing):
    phone.add_init_script(BROWSER % "default")
    phone.goto(standing.url + "/clock/")
    phone.evaluate(POT)
    expect(phone.locator(".pot-minutes")).to_be_visible()
    return phone


def test_sound_that_is_off_is_said_until_a_tap_allows_it(clock):
    said = clock.locator("[data-unheard]")
    expect(said).to_contain_text("Sound is off until you tap")
    clock.locator(".pot-name").click()
    expect(said).not_to_contain_text("Sound is off")
    clock.reload()
    expect(said).to_contain_text("Sound is off until you tap")


def test_a_pots_end_is_a_notification_once_allowed_and_out_of_sight(clock):
    key = clock.get_by_role("button", name="Notify me when a pot ends")
    key.click()
    expect(clock.locator("[data-unheard]")).to_contain_text("A notification comes")
    expect(key).to_be_hidden()
    clock.evaluate(HIDDEN)
    clock.evaluate(ADD, pot_of(10, 10 * 60 + 5))
    until(clock, "async () => window.shownThere.length === 1")
    title, body = clock.evaluate("window.shownThere[0]")
    assert title == "Covemix" and body == clock.locator("[data-kind=ring] .notice-text").text_content()


def test_in_sight_or_where_it_is_blocked_none_comes_and_that_is_said(phone, standing):
    phone.add_init_script(BROWSER % "denied")
    phone.goto(standing.url + "/clock/")
    phone.evaluate(ADD, pot_of(10, 10 * 60 + 5))
    expect(phone.locator("[data-kind=ring]")).to_be_visible()
    expect(phone.locator("[data-unheard]")).to_contain_text("blocks notifications")
    assert phone.evaluate("window.shownThere") == []


def test_a_tap_on_a_notification_brings_the_page_forward_and_puts_it_away(phone, standing):
    phone.add_init_script(BROWSER % "granted" + """
      window.focus = () => window.done.push("in front");
      window.done = [];
      window.Notification = class extends Notification {
        constructor(...how) { super(...how); window.note = this; }
        close() { window.done.push("away"); }
      };""")
    phone.goto(standing.url + "/clock/")
    phone.evaluate(POT)
    expect(phone.locator("[data-unheard]")).to_contain_text("A notification comes")
    phone.evaluate(HIDDEN)
    phone.evaluate(ADD, pot_of(10, 10 * 60 + 5))
    until(phone, "async () => window.shownThere.length === 1")
    phone.evaluate("window.note.dispatchEvent(new Event('click'))")
    assert phone.evaluate("window.done") == ["in front", "away"]


OF_WORKER = """window.shownThere = [];
window.Notification = class {
  static permission = "granted";
  constructor() { throw new TypeError("Illegal constructor"); }
};
ServiceWorkerRegistration.prototype.showNotification = async (title, { body }) => {
  window.shownThere.push([title, body]);
  if (window.refused) throw new TypeError("refused");
};"""


def test_a_phone_that_shows_those_of_its_worker_only_shows_it_by_that(phone, served):
    """And where that is refused too, the pot's end stands on the page as ever."""
    phone.add_init_script(OF_WORKER)
    keep(phone, served.url + "/clock/")
    phone.evaluate(POT)
    expect(phone.locator("[data-unheard]")).to_contain_text("A notification comes")
    phone.evaluate(HIDDEN)
    phone.evaluate(ADD, pot_of(10, 10 * 60 + 5))
    until(phone, "async () => window.shownThere.length === 1")
    said = phone.locator("[data-kind=ring] .notice-text")
    assert phone.evaluate("window.shownThere[0]") == ["Covemix", said.text_content()]
    phone.evaluate("window.refused = true")
    phone.evaluate(ADD, pot_of(10, 10 * 60 + 5))
    until(phone, "async () => window.shownThere.length === 2")
    expect(said).to_have_count(2)

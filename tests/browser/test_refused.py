"""What is refused or stays away: sound, a voice, the motion sensor, an answer. The rest goes on."""
import pytest
from playwright.sync_api import Error, expect

from .conftest import unanswered, until
from .test_clock import ADD, VOICE, pot_of
from .test_kept_from_harm import SOUND
from .test_knock import key
from .test_run import begin, handed, steps, to

RESUMES = """const resume = AudioContext.prototype.resume;
AudioContext.prototype.resume = async function () {
  if (!window.allowed) throw new DOMException("no", "NotAllowedError");
  return resume.call(this);
};"""
VOICE_FAILS = VOICE + """
localStorage["covemix.aloud"] = "yes";
navigator.vibrate = () => { window.shook = (window.shook ?? 0) + 1; };
speechSynthesis.speak = () => { throw new Error("the voice is gone"); };
"""
REFUSED = """for (const name of ["localStorage", "sessionStorage"]) {
  Object.defineProperty(window, name, { get() { throw new DOMException("no", "SecurityError"); } });
}"""


@pytest.fixture
def clock(phone, standing):
    """Its browser is told before it is opened."""
    def opened(script, ago):
        phone.add_init_script(script)
        phone.goto(standing.url + "/clock/")
        phone.evaluate(ADD, pot_of(10, ago))
        return phone
    return opened


def test_an_alarm_that_is_tried_is_felt_and_once_sound_is_allowed_heard(clock):
    page = clock(SOUND + RESUMES, 60)
    tries = page.get_by_role("button", name="Try the alarm")
    tries.click()
    page.wait_for_function("() => window.shaken.flat().length >= 3")
    expect(page.locator("[data-unheard]")).to_contain_text("Sound is off")
    page.evaluate("window.allowed = true")
    tries.click()
    page.wait_for_function("() => window.heard() >= 3")
    expect(page.locator("[data-unheard]")).not_to_contain_text("Sound is off")


def test_an_alarm_whose_voice_fails_is_felt_and_seen_and_goes_on(phone, clock):
    phone.clock.install()
    page = clock(VOICE_FAILS, 10 * 60 + 5)
    page.clock.run_for(3000)
    expect(page.locator("[data-kind=ring]")).to_be_visible()
    until(page, "window.shook === 1")
    with pytest.raises(Error, match="the voice is gone"):
        page.clock.run_for(15_000)
    until(page, "window.shook === 2")


def test_read_aloud_holds_for_the_page_where_no_choice_can_be_kept(clock):
    page = clock(VOICE + REFUSED, 60)
    page.locator(".pot-minutes").wait_for()
    page.get_by_role("button", name="Read aloud", exact=True).click()
    expect(page.get_by_role("button", name="Read aloud", exact=True)).to_have_attribute("aria-pressed", "true")
    until(page, "async () => window.told.length === 1")


def test_a_sensor_that_answers_with_an_error_is_a_refused_one(phone, standing):
    """As some phones do where the permission was denied before."""
    phone.clock.install()
    phone.add_init_script(
        "DeviceMotionEvent.requestPermission = async () => { throw new DOMException('no', 'NotAllowedError'); };")
    begin(phone, standing.url)
    to(phone, "Gloves and goggles on")
    key(phone).click()
    expect(steps(phone, "knocked")).to_contain_text("refuses")
    expect(key(phone)).to_have_text("Double knock: off")


def test_a_helpers_link_stands_as_it_is_while_nothing_answers(phone, standing):
    shared = handed(phone, standing.url)
    field = shared.get_by_role("textbox", name="Link")
    before = field.input_value()
    unanswered(phone, "")
    phone.clock.run_for(6000)
    expect(shared.locator("svg.code")).to_be_visible()
    assert field.input_value() == before
    phone.evaluate("well()")
    phone.clock.run_for(6000)
    expect(field).not_to_have_value(before)

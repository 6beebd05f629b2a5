"""A double knock on the bench is the next step of a run, where it was asked for and tried. Signals are modelled."""
import pytest
from playwright.sync_api import expect

from .conftest import keep, until
from .test_run import REST, SEAM, begin, steps, to

# Samples of a bench that is hit at these seconds, handed over as the browser does: a blow rings at 60 Hz for 30 ms.
MOVE = """([blows, strength]) => {
  window.felt ??= 1000;
  for (let time = 0; time < blows.at(-1) + 1.2; time += 1 / 60) {
    const rings = (at) => (time < at ? 0 : Math.exp((at - time) / 0.03) * Math.sin(377 * (time - at + 0.004)));
    const z = 9.8 + strength * blows.reduce((sum, at) => sum + rings(at), 0);
    const event = new DeviceMotionEvent("devicemotion", { accelerationIncludingGravity: { x: 0, y: 0, z } });
    Object.defineProperty(event, "timeStamp", { value: window.felt + 1000 * time });
    window.dispatchEvent(event);
  }
  window.felt += 1000 * (blows.at(-1) + 1.2);
}"""
GRANTED = "DeviceMotionEvent.requestPermission = async () => 'granted';"  # no sensor here
DOUBLE = [2, 2.35]
KEPT = """async () => {
  const own = await Promise.all((await caches.keys()).map(async (name) => (await caches.open(name)).keys()));
  return own.flat().some(({ url }) => url.endsWith("knocks.late.js"));
}"""


def knock(page, blows=DOUBLE, strength=4):
    page.evaluate(MOVE, [list(blows), strength])


def key(page):
    return steps(page, "double")


@pytest.fixture
def run(phone, standing):
    phone.clock.install()
    phone.add_init_script(GRANTED)
    begin(phone, standing.url)
    to(phone, "Gloves and goggles on")
    return phone


def tried(run):
    key(run).click()
    expect(steps(run, "knocked")).to_contain_text("Knock twice")
    knock(run)
    expect(steps(run, "knocked")).to_contain_text("Felt.")


def test_a_double_knock_is_the_next_step_once_it_was_asked_for_and_tried(run):
    before = steps(run, "step").inner_text()
    expect(key(run)).to_have_text("Double knock: off")
    knock(run)
    expect(steps(run, "step")).to_have_text(before)
    tried(run)
    expect(steps(run, "step")).to_have_text(before)
    knock(run)
    expect(steps(run, "step")).not_to_have_text(before)


@pytest.mark.parametrize(("blows", "strength"), [
    ([2], 4), ([2, 2.1], 4), ([2, 2.8], 4), ([2, 2.35, 2.7], 4), ([2 + 0.33 * place for place in range(8)], 4),
    (DOUBLE, 30)],
    ids=["one", "too near", "too far", "three", "hammering", "a hammer"])
def test_what_is_no_double_knock_is_no_step(run, blows, strength):
    tried(run)
    before = steps(run, "step").inner_text()
    knock(run, blows, strength)
    expect(steps(run, "step")).to_have_text(before)


def test_a_step_that_measures_or_starts_a_clock_is_never_knocked_on(run):
    """From the first figure to the hardener, and the clock of the stirring."""
    tried(run)
    for part in ("Resin", "Hardener", "Stir"):
        to(run, part)
        expect(steps(run, "knocks")).to_be_hidden()
        before = steps(run, "step").inner_text()
        knock(run)
        expect(steps(run, "step")).to_have_text(before)
    to(run, "Tool the cove")
    expect(key(run)).to_have_text("Double knock: on")
    knock(run)
    expect(steps(run, "part")).to_have_text("Clean the edges")


def test_whoever_leaves_the_run_finds_it_off(run):
    tried(run)
    steps(run, "leave").click()
    run.get_by_role("button", name="Go on").click()
    expect(key(run)).to_have_text("Double knock: off")
    before = steps(run, "step").inner_text()
    knock(run)
    expect(steps(run, "step")).to_have_text(before)


def test_a_phone_without_a_sensor_says_so(run):
    key(run).click()
    expect(steps(run, "knocked")).to_contain_text("Knock twice")
    run.clock.run_for(2500)
    expect(steps(run, "knocked")).to_contain_text("No motion sensor")
    expect(key(run)).to_have_text("Double knock: off")


def test_a_phone_that_asks_first_is_asked_in_the_tap_and_its_no_is_said(run):
    run.evaluate("""DeviceMotionEvent.requestPermission = async () => {
        window.asked = navigator.userActivation.isActive;
        return "denied";
    }""")
    key(run).click()
    expect(steps(run, "knocked")).to_contain_text("refuses")
    assert run.evaluate("window.asked")
    knock(run)
    expect(key(run)).to_have_text("Double knock: off")


def test_it_is_kept_from_the_second_opening_on_and_needs_no_signal(phone, served):
    phone.add_init_script(GRANTED)
    keep(phone, served.url)
    phone.reload()
    until(phone, KEPT)
    served.stop()
    phone.clock.install()
    begin(phone, served.url, SEAM)
    to(phone, "Gloves and goggles on")
    phone.clock.run_for(REST)
    tried(phone)

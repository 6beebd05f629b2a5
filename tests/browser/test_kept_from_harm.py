"""What keeps a person from harm on the live page: the caution in its place, the alarm, the screen that stays on, the
update that waits, the export that has the running pots. Each of these was once taken out and no test saw it.
"""
import json
import re

import pytest
from covemix.shared.door.call import call
from playwright.sync_api import expect
from safety_table import HOT_POT

from .conftest import keep, until
from .test_clock import ADD, pot_of
from .test_kit import exported

CAUTION = "[data-caution]"
TYPE = "(one, text) => { one.value = text; one.dispatchEvent(new Event('input', { bubbles: true })); }"
# screen, its path, what is typed into which field; the engine is asked the same
TYPED = (
    ("pour", "/", {"amount": "500"}),
    ("clock", "/clock/", {"air": "30", "batch": "200"}),
    ("joint", "/joint/", {"thickness": "9"}),
    ("plan", "/plan/", {"temperature": "8"}),
    ("boat", "/boat/", {"spare": "12"}),
)


@pytest.mark.parametrize("screen, path, typed", TYPED, ids=[row[0] for row in TYPED])
def test_the_caution_on_the_live_page_is_the_engines(same_phone, standing, screen, path, typed):
    """Emptied or left as the server sent it, it is not what these inputs bring up."""
    same_phone.goto(standing.url + path)
    same_phone.wait_for_function("() => document.querySelector('[data-form]').classList.contains('live')")
    place = same_phone.locator(CAUTION)
    place.evaluate("(one) => { one.textContent = 'as it was'; }")
    for name, text in typed.items():  # some stand in a fold
        same_phone.locator(f"[name={name}]").first.evaluate(TYPE, text)
    expect(place).not_to_have_text("as it was")
    pairs = same_phone.evaluate("""async () => {
        const { pairs } = await part("form/form.js");
        return pairs(document.querySelector("[data-form]"));
    }""")
    wanted = json.loads(call(json.dumps({"screen": screen, "pairs": pairs})))["caution"]
    assert len(wanted) > 20
    expect(place).to_have_text(wanted)
    expect(place).to_be_in_viewport(ratio=1)


HOT_LABEL = "system.by_weight=100:30&system.pot_time=15&system.pot_mass=100&system.pot_temperature=25"


@pytest.mark.parametrize("path", ["/?amount=500", f"/clock/?air=30&batch=1000&{HOT_LABEL}"])
def test_without_scripts_the_server_says_the_same_caution(chromium, standing, path):
    """What stands at the foot of the page, and what stands under the figure that it belongs to."""
    context = chromium.new_context(java_script_enabled=False)
    page = context.new_page()
    page.goto(standing.url + path)
    screen, _, query = path.strip("/").partition("?")
    pairs = [pair.split("=") for pair in query.split("&")]
    told = json.loads(call(json.dumps({"screen": screen.strip("/") or "pour", "pairs": pairs})))
    expect(page.locator(CAUTION)).to_have_text(told["caution"])
    expect(page.locator("[data-signs] svg")).to_have_count(len(told["signs"]))
    under = [line["caution"] for _, one in told["answers"] for line in one["lines"] if line["caution"]]
    assert under or screen == ""
    assert page.locator(".line-caution").all_text_contents() == under
    context.close()


def test_the_signs_of_a_product_and_the_caution_under_a_figure_follow_what_is_typed(phone, standing):
    """H310 brings the skull, by GHS Annex 3; a kilogram that runs away says under the figure what to do with it."""
    phone.goto(standing.url)
    signs = phone.locator("[data-signs] svg")
    expect(phone.locator("[data-status]")).not_to_be_empty()
    expect(signs).to_have_count(0)
    phone.locator("[name='system.statements']").evaluate(TYPE, "H310")
    expect(signs).to_have_count(1)
    phone.locator("[name='system.statements']").evaluate(TYPE, "")
    expect(signs).to_have_count(0)
    phone.goto(f"{standing.url}/clock/?air=30&batch=100&{HOT_LABEL}")
    expect(phone.locator("[data-status]")).not_to_be_empty()
    phone.locator("[name=batch]").fill("1000")
    under = phone.locator("[data-line=runaway] .line-caution")
    expect(under).to_have_text(HOT_POT)
    expect(phone.locator("[data-line=runaway]")).to_have_attribute("data-rank", "warn")
    expect(phone.locator("[data-status]")).to_contain_text("It smokes, foams")  # and it is spoken
    phone.evaluate("window.print = () => {}")
    phone.get_by_role("button", name="Share").click()
    phone.get_by_role("button", name="Print a card").click()
    expect(phone.locator("[data-card] [data-line=runaway] .card-caution")).to_have_text(HOT_POT)


def test_what_is_wrong_is_said_before_the_first_is_poured_and_looks_like_it(phone, standing):
    """3 g on a scale that shows 1 g: the first step says so, in the ear too, and stands out."""
    phone.goto(f"{standing.url}/?amount=3&way=scale&system.by_weight=100:30&scale.step=1+g")
    expect(phone.locator("[data-status]")).not_to_be_empty()
    expect(phone.locator(".head [data-line=too_small]")).to_have_attribute("data-rank", "warn")
    expect(phone.locator("[data-status]")).to_contain_text("too small", ignore_case=True)
    phone.get_by_role("button", name="Pour step by step").click()
    expect(phone.locator("[data-steps=tap]")).to_have_attribute("data-rank", "warn")
    expect(phone.locator("[data-steps=under]")).to_contain_text("too small", ignore_case=True)


def test_a_running_pot_says_what_is_wrong_with_it(phone, standing):
    """A pot that is over: use no more of it, with the words that the engine has for it."""
    phone.goto(standing.url + "/clock/")
    phone.get_by_label("Air temperature").first.wait_for()
    phone.evaluate(ADD, pot_of(10, 11 * 60))
    warned = phone.locator(".pot-warnings [data-line=stop]")
    expect(warned).to_be_visible()
    expect(warned).to_have_attribute("data-rank", "warn")
    expect(warned).to_contain_text("Use no more of this pot")


def test_the_caution_follows_what_is_typed_and_stands_on_the_card(same_phone, standing):
    """Common practice: a big pot is cautioned before gloves; H334 before everything a sheet can say."""
    same_phone.goto(standing.url)
    amount, place = same_phone.get_by_label("Amount", exact=True), same_phone.locator(CAUTION)
    amount.fill("500")
    expect(place).to_contain_text("A big batch. 500 g in one cup can smoke.")
    amount.fill("100")
    expect(place).to_contain_text("Gloves and goggles")
    same_phone.locator("[name='system.statements']").evaluate(TYPE, "H334")
    expect(place).to_contain_text("your product, H334")
    same_phone.get_by_role("button", name="Share").click()
    same_phone.get_by_role("radio", name="Plain words").check()
    expect(same_phone.locator("[data-words]")).to_contain_text(re.compile("Caution: Danger: your product, H334"))
    same_phone.evaluate("window.print = () => {}")
    same_phone.get_by_role("button", name="Print a card").click()
    expect(same_phone.locator("[data-card] [data-card-caution]")).to_contain_text("your product, H334")
    same_phone.evaluate("window.dispatchEvent(new Event('afterprint'))")


SOUND = """
window.tones = [];
window.shaken = [];
navigator.vibrate = (pattern) => { window.shaken.push(pattern); return true; };
window.AudioContext = class {
  constructor() { this.state = "suspended"; this.currentTime = 0; this.destination = "out"; }
  async resume() { this.state = "running"; }
  createOscillator() {
    const tone = { frequency: { value: 0 }, start: () => { tone.started = true; }, stop() {},
                   connect: (next) => { tone.next = next; return next; } };
    window.tones.push(tone);
    return tone;
  }
  createGain() {
    const level = { gain: { setValueAtTime: (loud) => { level.loud = loud; }, linearRampToValueAtTime() {} },
                    connect: (next) => { level.next = next; return next; } };
    return level;
  }
};
window.heard = () => window.tones.filter(({ started, frequency, next }) => (
  started && frequency.value >= 300 && frequency.value <= 4000 && next.loud > 0.1 && next.next === "out")).length;
"""


def test_an_alarm_is_heard_felt_and_seen(phone, standing):
    """A pot with some seconds left, after any tap: tones that a person hears go out, the phone shakes, it is on the
    screen; and a second round follows, for whoever was away."""
    phone.add_init_script(SOUND)
    phone.clock.install()
    phone.goto(standing.url + "/clock/")
    phone.get_by_label("Air temperature").first.wait_for()
    phone.mouse.click(180, 60)
    phone.evaluate(ADD, pot_of(10, 10 * 60 + 5))
    phone.clock.run_for(2000)
    expect(phone.locator("[data-kind=ring]")).to_be_visible()
    assert phone.evaluate("window.heard()") >= 3
    assert phone.evaluate("window.shaken.flat().length") >= 3
    before = phone.evaluate("window.heard()")
    phone.clock.run_for(16_000)
    assert phone.evaluate("window.heard()") >= 2 * before


ALOUD = """
window.told = [];
localStorage["covemix.aloud"] = "yes";
speechSynthesis.getVoices = () => [{ localService: true, lang: "en-GB" }];
window.SpeechSynthesisUtterance = function (words) { this.words = words; };
speechSynthesis.speak = ({ words }) => window.told.push(words);
"""


def test_an_alarm_is_spoken_where_that_was_chosen(phone, standing):
    phone.add_init_script(ALOUD)
    phone.clock.install()
    phone.goto(standing.url + "/clock/")
    phone.get_by_label("Air temperature").first.wait_for()
    phone.evaluate(ADD, pot_of(10, 10 * 60 + 5))
    phone.clock.run_for(2000)
    expect(phone.locator("[data-kind=ring]")).to_be_visible()
    [told] = phone.evaluate("window.told")
    assert told in phone.locator("[data-kind=ring]").text_content().replace("\u00a0", " ") and len(told) > 20


def test_the_end_of_stirring_is_heard_and_felt(phone, standing):
    """Two minutes from the tap, below 200 g, on the page's own clock; not before."""
    phone.add_init_script(SOUND)
    phone.clock.install()
    phone.goto(f"{standing.url}/?amount=130&way=scale&system.by_weight=100:30")
    expect(phone.locator("[data-status]")).not_to_be_empty()
    phone.get_by_role("button", name="Pour step by step").click()
    tap = phone.locator("[data-steps=tap]")
    expect(phone.locator("[data-steps=figure]")).to_have_text("0 g")  # before it stands there, a tap is no step
    for shows in ("100 g", "130 g", "2 min"):
        tap.click()
        expect(phone.locator("[data-steps=figure]")).to_have_text(shows)
    tap.click()
    phone.clock.run_for(110_000)
    assert phone.evaluate("window.heard()") == 0
    phone.clock.run_for(15_000)
    assert phone.evaluate("window.heard()") >= 3
    assert phone.evaluate("window.shaken.flat().length") >= 3


AWAKE = """
window.asked = [];
Object.defineProperty(navigator, "wakeLock", { value: { request: async (kind) => {
  const lock = new EventTarget();
  lock.release = async () => { window.asked.push("released"); lock.dispatchEvent(new Event("release")); };
  window.asked.push(kind);
  window.lock = lock;
  return lock;
} } });
"""
BACK = """() => {
  window.lock.dispatchEvent(new Event("release"));
  document.dispatchEvent(new Event("visibilitychange"));
}"""


def test_the_screen_stays_on_while_hands_are_busy(phone, standing):
    """While a batch is poured step by step it is asked for, again when the page is back, and let go at the end."""
    phone.add_init_script(AWAKE)
    phone.goto(standing.url)
    expect(phone.locator("[data-status]")).not_to_be_empty()
    assert phone.evaluate("window.asked") == []
    phone.get_by_role("button", name="Pour step by step").click()
    phone.wait_for_function("() => window.asked.length === 1")
    phone.evaluate(BACK)
    phone.wait_for_function("() => window.asked.length === 2")
    phone.get_by_role("button", name="Leave").click()
    phone.wait_for_function("() => window.asked.length === 3")
    assert phone.evaluate("window.asked") == ["screen", "screen", "released"]
    phone.goto(standing.url + "/clock/")
    phone.evaluate(ADD, pot_of(30, 0))
    button = phone.get_by_role("button", name="Keep the screen on")
    button.click()
    expect(button).to_have_attribute("aria-pressed", "true")
    phone.wait_for_function("() => window.asked.length === 1")
    button.click()
    phone.wait_for_function("() => window.asked.at(-1) === 'released'")


def test_an_update_waits_for_the_pot_and_is_offered_when_it_is_over(phone, served, other_build):
    """The newer build lies ready, on this page and after a reload, and nothing is offered until the pot has ended."""
    keep(phone, served.url + "/clock/")
    phone.evaluate(ADD, pot_of(30, 0))
    expect(phone.locator(".pot-minutes")).to_be_visible()
    served.stop()
    served.start(other_build)
    phone.evaluate("navigator.serviceWorker.getRegistration().then((one) => one.update())")
    until(phone, "() => navigator.serviceWorker.getRegistration().then((one) => Boolean(one.waiting))")
    offered = phone.locator("[data-notice=update]")
    for again in (False, True):
        if again:
            phone.reload()
            expect(phone.locator(".pot-minutes")).to_be_visible()
        phone.wait_for_timeout(1500)  # what is not held is offered within the second
        expect(offered).to_have_count(0)
    phone.locator(".pot").get_by_role("button", name="Empty").click()
    expect(offered).to_be_visible()


WIPED = """async () => {
  const { read, remove } = await part("store/store.js");
  for (const pot of await read("pots")) await remove("pots", pot.id);
}"""


def test_the_export_has_the_running_pots_and_brings_them_back(phone, standing):
    phone.goto(standing.url + "/kit/")
    expect(phone.locator("[data-listing]")).to_be_visible()
    for pot in (pot_of(30, 60), pot_of(45, 5)):
        phone.evaluate(ADD, pot)
    saved = exported(phone)
    pots = json.loads(saved)["pots"]
    assert [dict(pot["typed"])["duration"] for pot in pots] == ["30 min", "45 min"]
    assert all(isinstance(pot["started"], (int, float)) for pot in pots)
    phone.evaluate(WIPED)
    old = {**pots[0], "id": 99, "started": pots[0]["started"] - 8 * 3_600_000}  # over long ago: it must not ring now
    file = json.dumps({**json.loads(saved), "pots": [*pots, old]}).encode()
    phone.get_by_label("Bring back from a file").set_input_files({"name": "c.json", "mimeType": "", "buffer": file})
    for way in ("add", "replace"):
        expect(phone.locator(f"[data-preview-{way}]")).to_contain_text("Added: 2 running pots")
        expect(phone.locator(f"[data-preview-{way}]")).to_contain_text("No clock is started: 1 pot ended long ago")
    phone.get_by_role("button", name="Replace all").click()
    expect(phone.locator("[data-notice=import]")).to_be_visible()  # a page that is left before that has brought nothing
    phone.goto(standing.url + "/clock/")
    expect(phone.locator(".pot-minutes")).to_have_text([re.compile(r"^\d+:")] * 2)
    left = sorted(int(text.split(":")[0]) for text in phone.locator(".pot-minutes").all_text_contents())
    now = phone.evaluate("Date.now()")
    for minutes, whole, pot in zip(left, (30, 45), pots, strict=True):  # by the same clock as before
        wanted = whole - (now - pot["started"]) / 60_000
        assert wanted - 1.1 <= minutes <= wanted + 1.5, (minutes, wanted)

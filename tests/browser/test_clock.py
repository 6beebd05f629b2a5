"""Clock in a real browser: pots that survive what phones do to pages; one alarm; held updates."""
import re

import pytest
from playwright.sync_api import expect

from .conftest import figure, keep, unanswered, until

JUMP = """(seconds) => { const real = Date.now; Date.now = () => real.call(Date) + seconds * 1000; }"""
ADD = """async (pot) => {
    const { put } = await part("store/store.js");
    const { ago, ...rest } = pot;
    const started = Date.now() - ago * 1000;
    return put("pots", { started, timing: [], system: [], done: [], rung: [], said: [], ...rest });
}"""


# what is asked of the engine waits until it is let go
HELD_BACK = """const post = Worker.prototype.postMessage, held = [];
Worker.prototype.postMessage = function (...asked) {
  if (window.gone || !asked[0]?.text?.includes('"pot"')) return post.apply(this, asked);
  held.push([this, asked]);
};
window.letGo = () => { window.gone = true; for (const [worker, asked] of held) post.apply(worker, asked); };"""


def pot_of(minutes, ago, **more):
    """A pot as this phone keeps it. minutes: usable for; ago: mixed so many seconds ago"""
    return {"typed": [["duration", f"{minutes} min"], ["batch", "240 g"], ["container", "cup"], ["place", "keel"]],
            "ago": ago, **more}


def seconds_left(page):
    """What stands on the screen, in seconds."""
    minutes, seconds = page.locator(".pot-minutes").first.text_content().split(":")
    return int(minutes) * 60 + int(seconds)


@pytest.fixture
def clock(phone, standing):
    phone.goto(standing.url + "/clock/")
    phone.get_by_label("Air temperature").first.wait_for()
    return phone


def warm(page):
    page.get_by_label("Air temperature").first.fill("22")
    expect(figure(page, "usable")).to_have_text(re.compile("min"), timeout=60_000)  # the engine may start cold here


def test_the_first_view_asks_for_the_air_first(clock):
    expect(clock.locator("[data-error=air]")).to_contain_text("type the temperature where the pot stands")
    assert clock.locator(".error:visible").count() == 1
    assert clock.locator("input, select").first.get_attribute("name") == "air"


def test_one_tap_starts_a_clock_that_survives_a_reload(clock):
    warm(clock)
    clock.get_by_text("Use and place").click()
    clock.get_by_label("Used for").select_option("putty")
    clock.get_by_label("Where the mix goes").fill("port seam")
    expect(clock.locator("[data-move=heat] [data-lead]").first).to_have_attribute("data-lead", re.compile("port seam"))
    clock.get_by_role("link", name="Start the clock").click()
    expect(clock.locator(".pot-what")).to_have_text("Cup · port seam")
    expect(clock.locator(".pot-next")).to_contain_text("Tape rolled on the soft cove")
    before = seconds_left(clock)
    clock.reload()
    expect(clock.locator(".pot-minutes")).to_have_text(re.compile(r"\d+:\d\d"))
    assert before - 30 <= seconds_left(clock) <= before
    clock.get_by_role("button", name="Done: Tape rolled").click()
    expect(clock.locator(".pot-next")).to_be_hidden()


def test_a_clock_starts_from_the_pour(phone, standing):
    """The pot waits for the air temperature, and counts from the tap."""
    phone.goto(standing.url + "/?amount=200")
    phone.get_by_role("link", name="Start the clock").click()
    expect(phone.locator("[data-notice=waiting]")).to_be_visible()
    expect(phone.locator(".pot")).to_have_count(0)
    phone.get_by_label("Air temperature").first.fill("20")
    expect(phone.locator(".pot-name")).to_contain_text("200 g at 20 °C")
    phone.reload()
    expect(phone.locator(".pot")).to_have_count(1)


def test_a_pot_hidden_for_four_minutes_shows_six(phone, standing):
    phone.goto(standing.url + "/clock/")
    phone.evaluate(ADD, pot_of(10, 0))
    expect(phone.locator(".pot-minutes")).to_have_text(re.compile("^(10:00|9:)"))
    phone.evaluate("Object.defineProperty(document, 'hidden', { get: () => window.away }); window.away = true;"
                   "document.dispatchEvent(new Event('visibilitychange'))")
    shown = seconds_left(phone)
    phone.evaluate(JUMP, 240)  # the screen was off: the steady clock may have slept, the phone's own did not
    phone.evaluate("window.away = false; document.dispatchEvent(new Event('visibilitychange'))")
    expect(phone.locator(".pot-minutes")).to_have_text(re.compile("^(6:00|5:)"))
    assert shown - 300 <= seconds_left(phone) <= shown - 239  # the machine may be busy: time goes on meanwhile
    expect(phone.locator("[data-line=clock_changed]")).to_have_count(0)


def test_a_pot_that_ended_while_the_page_was_closed_says_how_long_ago(phone, standing):
    phone.goto(standing.url + "/safety/")
    phone.evaluate(ADD, pot_of(20, 19 * 60))  # a minute left: this page does not ring it
    phone.add_init_script(f"({JUMP})({60 + 7 * 60 - 30})")
    phone.goto(standing.url + "/clock/")
    expect(phone.locator(".pot-minutes")).to_have_text(re.compile("^[67]:"))
    expect(phone.locator(".pot [data-line=stop]")).to_contain_text("Use no more of this pot")
    expect(phone.locator("[data-kind=ring]")).to_contain_text("7 minutes ago")


def test_a_pot_follows_its_air_and_hands_over_the_same_clock(phone, standing):
    """Warmer air leaves less; a temperature that is none is told at its field; the code's link holds the change too."""
    phone.goto(standing.url + "/clock/")
    timing = [["mass", "240 g"], ["in", "cup"], ["at", "18 °C"]]
    phone.evaluate(ADD, pot_of(40, 300, timing=timing, system=[["system", "3-1"]]))
    phone.get_by_text("The air has changed").click()
    field, button = phone.get_by_label("Air temperature now"), phone.get_by_role("button", name="Use this")
    field.fill("warm")
    button.click()
    expect(phone.locator(".pot .error:visible")).to_contain_text("Air temperature")
    field.fill("32")
    button.click()
    expect(phone.locator(".pot-minutes")).to_have_text(re.compile("^1?[0-9]:"))
    phone.locator(".pot").get_by_role("button", name="Share").click()
    told = phone.locator("[data-notice=share]")
    expect(told.locator("svg.code")).to_be_visible()
    link = told.get_by_role("textbox", name="Link").input_value()
    assert "pot.changes.0.usable=" in link
    expect(told.locator("svg.code")).to_have_attribute("aria-label", f"QR code of the link {link}")


FAST = ("said=stiffening", "after=9", "mass=500", "in=bag", "at=20")


def start_and_type_air(phone, degrees):
    phone.get_by_role("link", name="Start the clock").click()
    phone.get_by_text("The air has changed").click()
    phone.get_by_label("Air temperature now").fill(degrees)
    phone.get_by_role("button", name="Use this").click()
    expect(phone.locator(".pot details", has_text="The air has changed")).not_to_have_attribute("open", "")


def test_a_pot_follows_its_air_with_the_timings_it_began_with(phone, standing):
    """In the same air it lasts no longer than the pot that was timed: the label alone would say 19 minutes."""
    phone.goto(f"{standing.url}/clock/?air=20&batch=500&container=bag&" + "&".join("timings.0." + one for one in FAST))
    expect(figure(phone, "usable")).to_have_text(re.compile("^[67] min"), timeout=60_000)
    start_and_type_air(phone, "20")
    phone.locator(".pot").get_by_role("button", name="Share").click()
    link = phone.locator("[data-notice=share]").get_by_role("textbox", name="Link")
    expect(link).to_have_value(re.compile(r"timings.0.after=9\+min&.*pot.changes.0.usable="))
    assert 5 * 60 < seconds_left(phone) <= 7.2 * 60


def test_a_pot_of_warm_resin_stays_one_when_its_air_is_typed(phone, standing):
    """500 g mixed at 40 °C last a fifth of what they would in their air alone: the same air typed changes little."""
    phone.goto(f"{standing.url}/clock/?air=15&batch=500&resin_temperature=40")
    expect(figure(phone, "usable")).to_have_text(re.compile("^[4-6].* min"), timeout=60_000)
    start_and_type_air(phone, "15")
    assert 3 * 60 < seconds_left(phone) <= 6 * 60
    phone.locator(".pot").get_by_role("button", name="Share").click()
    link = phone.locator("[data-notice=share]").get_by_role("textbox", name="Link")
    expect(link).to_have_value(re.compile("resin_temperature=40"))
    assert "use=" not in link.input_value()  # what stood there needs no room in a code


@pytest.mark.parametrize(("jump", "left", "word"), [(-600, "1[89]:", "behind"), (600, "[89]:", "ahead")])
def test_a_changed_phone_clock_is_said_and_the_earlier_alarm_counts(phone, standing, jump, left, word):
    phone.goto(standing.url + "/clock/")
    phone.evaluate(ADD, pot_of(20, 5))
    expect(phone.locator(".pot-minutes")).to_have_text(re.compile("^1[89]:"))
    phone.evaluate(JUMP, jump)
    expect(phone.locator(".pot [data-line=clock_changed]")).to_contain_text(word)
    expect(phone.locator(".pot-minutes")).to_have_text(re.compile("^" + left))


def test_the_link_of_a_pot_tells_the_time_until_it_is_marked_to_be_copied(phone, standing):
    phone.clock.install()
    phone.goto(standing.url + "/clock/")
    phone.evaluate(ADD, pot_of(30, 60))
    phone.locator(".pot").get_by_role("button", name="Share").click()
    field = phone.locator("[data-notice=share]").get_by_role("textbox", name="Link")
    first = field.input_value()
    phone.clock.run_for(6000)
    expect(field).not_to_have_value(first)
    field.focus()
    marked = field.input_value()
    phone.clock.run_for(12_000)
    expect(field).to_have_value(marked)


def test_a_pots_link_that_no_calculator_can_read_is_kept_to_be_tried_again(phone, standing):
    """The address no longer holds it: it would be lost."""
    phone.add_init_script("window.Worker = class { constructor() { throw new Error(); } }")
    started = phone.evaluate("Math.floor(Date.now() / 1000) - 120")
    phone.goto(f"{standing.url}/clock/?pot.started={started}&pot.duration=30&pot.batch=Batch+2")
    told = phone.locator("[data-notice=pot-link]")
    expect(told.get_by_role("button", name="Try again")).to_be_visible()


def test_of_two_tabs_one_rings(phone, served):
    keep(phone, served.url + "/safety/")
    other = phone.context.new_page()
    other.goto(served.url + "/safety/")
    other.wait_for_function("navigator.serviceWorker.controller")
    phone.evaluate(ADD, pot_of(1, 57))
    for _ in range(60):
        if sum(page.locator("[data-kind=ring]").count() for page in (phone, other)):
            break
        phone.wait_for_timeout(250)
    phone.wait_for_timeout(2000)  # two more seconds of both clocks: nothing else may ring
    assert sum(page.locator("[data-kind=ring]").count() for page in (phone, other)) == 1


def test_a_link_shows_the_same_clock_before_it_is_added(phone, standing):
    phone.goto(standing.url + "/safety/")
    now = phone.evaluate("Date.now() / 1000")
    phone.goto(f"{standing.url}/clock/?pot.started={now - 120}&pot.duration=30&pot.batch=Batch+2&pot.container=bag")
    told = phone.locator("[data-notice=pot-link]")
    expect(told).to_contain_text(re.compile(r"Batch 2: 2[78]\sminutes left"))
    expect(phone.locator(".pot")).to_have_count(0)
    told.get_by_role("button", name="Add this pot").click()
    expect(phone.locator(".pot-minutes")).to_have_text(re.compile("^2[78]:"))


def test_what_is_said_of_a_pot_becomes_an_own_timing_and_a_log_entry(clock):
    warm(clock)
    clock.get_by_role("link", name="Start the clock").click()
    expect(clock.locator(".pot-minutes")).to_have_text(re.compile(":"))
    clock.get_by_role("button", name="Stiffening").click()
    expect(clock.locator("[name='timings.0.after']")).to_have_value(re.compile(r"^\d+ s$"))
    clock.get_by_role("button", name="Empty").click()
    expect(clock.locator(".pot")).to_have_count(0)
    kinds = clock.evaluate("""async () => {
        const { all } = await part("store/store.js");
        return (await all("log")).map((entry) => entry.kind);
    }""")
    assert kinds == ["poured"]
    clock.locator("[data-notice=pot-ended]").get_by_role("button", name="Undo").click()
    expect(clock.locator(".pot")).to_have_count(1)


def test_what_a_pot_tells_stands_behind_the_timings_that_were_typed(clock):
    """Of a system that is not in the kit: the form is filled anew, and nothing of what stood there is lost."""
    warm(clock)
    clock.get_by_text("Own timings of this system", exact=True).first.click()
    for name, text in (("after", "25 min"), ("mass", "150 g"), ("at", "18 °C")):
        clock.locator(f"[name='timings.0.{name}']").fill(text)
    clock.locator("[name='timings.0.said']").select_option("good")
    expect(figure(clock, "usable").locator("..")).to_contain_text("own timing")
    clock.get_by_role("link", name="Start the clock").click()
    clock.get_by_role("button", name="Stiffening").click()
    expect(clock.locator("[name='timings.1.after']")).to_have_value(re.compile(r"^\d+ s$"))
    stands = [clock.locator(f"[name='timings.0.{name}']").input_value() for name in ("said", "after", "mass", "at")]
    assert stands == ["good", "25 min", "150 g", "18 °C"]


def test_an_own_timing_says_that_it_stood_in_the_sun(clock):
    """What it shone on is asked once there is sun; in other sun the answer says that it sets no time."""
    warm(clock)
    clock.get_by_text("Own timings of this system", exact=True).first.click()
    names = ("said", "after", "mass", "at", "sun", "looks")
    row = {name: clock.locator(f"[name='timings.0.{name}']") for name in names}
    for name, text in (("after", "5"), ("mass", "240"), ("at", "22")):
        row[name].fill(text)
    row["said"].select_option("gone")
    expect(row["looks"]).to_be_hidden()
    row["sun"].select_option("full")
    expect(row["looks"]).to_be_visible()
    expect(clock.locator("[data-line=other_sun]")).to_contain_text("1 own timing was in other sun")
    clock.locator("[name=sun]").select_option("full")
    expect(clock.locator("[data-line=other_sun]")).to_have_count(0)
    expect(figure(clock, "usable")).to_have_text("4 min")
    expect(figure(clock, "usable").locator("..")).to_contain_text("in full sun")


KIT_SYSTEM = """async () => {
    const { put } = await part("store/store.js");
    await put("kit", { record: "system", made: 1, typed: { name: "Shed mix", by_weight: "100:30",
        densities: "1.15 : 0.98", pot_time: "30", pot_mass: "100", pot_temperature: "25" } });
}"""


def start_pot_of_the_kit(clock):
    clock.evaluate(KIT_SYSTEM)
    clock.reload()
    warm(clock)
    clock.get_by_label("Resin system", exact=True).select_option(label="Shed mix")
    clock.get_by_role("link", name="Start the clock").click()
    expect(clock.locator(".pot-minutes")).to_have_text(re.compile(":"))


def test_a_timing_stays_with_a_system_of_the_kit_and_the_plan_reckons_with_it(clock, standing):
    start_pot_of_the_kit(clock)
    clock.get_by_role("button", name="Stiffening").click()
    expect(clock.locator("[data-notice=timing]")).to_contain_text("Own timings")  # seconds old: a tap by mistake
    clock.evaluate(JUMP, 17 * 60)  # of the 22 minutes that a fifth kept back leaves
    expect(clock.locator(".pot-minutes")).to_have_text(re.compile("^[45]:"))
    clock.get_by_role("button", name="Stiffening").click()
    expect(figure(clock, "usable").locator("..")).to_contain_text("from 1 own timing")
    clock.get_by_text("Own timings of this system", exact=True).first.click()
    for name, text in (("after", "20"), ("mass", "240"), ("at", "22")):
        clock.locator(f"[name='timings.0.{name}']").fill(text)
    expect(figure(clock, "usable").locator("..")).to_contain_text("from 2 own timings")
    clock.goto(standing.url + "/plan/?pieces.0.length=3&pieces.0.putty=150&pieces.0.wet=90")
    clock.get_by_role("button", name="Use these").click()
    clock.goto(standing.url + "/clock/")
    # the link's system, once taken, holds here too
    clock.get_by_label("Resin system", exact=True).select_option(label="Shed mix")
    expect(figure(clock, "usable").locator("..")).to_contain_text("from 2 own timings")
    clock.get_by_role("link", name="Plan the day").click()
    expect(clock.get_by_label("Resin system", exact=True)).to_have_value(re.compile("kit:"))
    expect(clock.locator("[data-line=window_pot]")).to_contain_text("from 2 own timings")
    clock.locator("[data-notice=lead]").get_by_role("button", name="Undo").click()
    clock.goto(standing.url + "/plan/?temperature=22&pieces.0.length=3&pieces.0.putty=150&pieces.0.wet=90")
    clock.get_by_role("button", name="Use these").click()
    clock.wait_for_function("() => localStorage.getItem('covemix.typed.plan')")  # the link is in the form
    clock.get_by_label("Resin system", exact=True).select_option(label="Shed mix")
    expect(clock.locator("[data-line=window_pot]")).to_contain_text("own timing")
    clock.goto(standing.url + "/clock/")
    expect(clock.get_by_label("Resin system", exact=True)).to_have_value(re.compile("kit:"))


KEPT_TIMINGS = """async () => {
    const { all } = await part("store/store.js");
    return (await all("kit"))[0].typed.timings;
}"""


def test_two_quick_taps_on_a_pot_are_two_timings_of_its_system(clock):
    """The second tap comes while the first one's timing is still looked at."""
    start_pot_of_the_kit(clock)
    clock.evaluate(JUMP, 17 * 60)  # of the 22 minutes that a fifth kept back leaves
    expect(clock.locator(".pot-minutes")).to_have_text(re.compile("^[45]:"))
    clock.evaluate("""() => {
        for (const said of ["Still usable", "Stiffening"]) {
            [...document.querySelectorAll(".pot button")].find((one) => one.textContent === said).click();
        }
    }""")
    expect(figure(clock, "usable").locator("..")).to_contain_text("from 2 own timings")
    assert clock.evaluate(KEPT_TIMINGS).count(";") == 1


def test_still_good_looks_again_later(phone, standing):
    phone.goto(standing.url + "/clock/")
    phone.evaluate(ADD, pot_of(10, 10 * 60 + 5))
    expect(phone.locator(".pot")).to_have_attribute("data-state", "over")
    phone.locator(".pot").get_by_role("button", name="Still usable").click()
    expect(phone.locator(".pot-minutes")).to_have_text(re.compile("^(5:00|4:)"))
    kept, = phone.evaluate("part('store/store.js').then(({ read }) => read('pots'))")
    before = [pair for pair in pot_of(10, 10 * 60 + 5)["typed"] if pair[0] != "duration"]
    assert len(before) > 1  # another time, and all else that was said of it
    assert [pair for pair in kept["typed"] if pair[0] != "duration"] == before


FOREIGN = """
window.told = [];
localStorage["covemix.aloud"] = "yes";
speechSynthesis.getVoices = () => [{ localService: true, lang: "fr-FR" }];
speechSynthesis.speak = (saying) => window.told.push(saying);
navigator.vibrate = () => { window.shook = true; };
"""


def test_the_alarm_of_a_phone_without_a_voice_for_it_sounds_and_says_it_on_the_screen(phone, standing):
    phone.add_init_script(FOREIGN)
    phone.goto(standing.url + "/clock/")
    phone.evaluate(ADD, pot_of(10, 10 * 60 + 5))
    expect(phone.locator("[data-kind=ring]")).to_be_visible()
    assert phone.evaluate("window.shook") is True
    assert phone.evaluate("window.told") == []
    expect(phone.get_by_role("button", name="Read aloud", exact=True)).to_be_hidden()


def test_an_update_waits_while_a_pot_runs(phone, served, other_build):
    keep(phone, served.url + "/clock/")
    phone.evaluate(ADD, pot_of(30, 0))
    expect(phone.locator(".pot-minutes")).to_be_visible()
    served.stop()
    served.start(other_build)
    phone.evaluate("navigator.serviceWorker.getRegistration().then((one) => one.update())")
    until(phone, "navigator.serviceWorker.getRegistration().then((one) => Boolean(one.waiting))")
    expect(phone.locator("[data-notice=update]")).to_have_count(0)


@pytest.mark.parametrize("way", ["server", "flag"])
def test_a_pot_runs_on_without_signal(phone, served, way):
    keep(phone, served.url + "/clock/")
    warm(phone)
    phone.get_by_role("link", name="Start the clock").click()
    expect(phone.locator(".pot-minutes")).to_be_visible()
    if way == "server":
        served.stop()
    else:
        phone.context.set_offline(True)
    phone.reload()
    expect(phone.locator(".pot-minutes")).to_have_text(re.compile(r"\d+:\d\d"))


def test_a_pot_that_cannot_be_told_leaves_the_others_ringing_and_can_be_ended(phone, standing):
    phone.goto(standing.url + "/clock/")
    phone.evaluate(ADD, {**pot_of(10, 0), "typed": None})
    phone.evaluate(ADD, pot_of(10, 700))
    expect(phone.locator("[data-kind=ring]")).to_be_visible()
    bad = phone.locator(".pot", has_text="cannot be shown")
    expect(bad.get_by_role("button", name="Too stiff")).to_be_hidden()
    bad.get_by_role("button", name="End this pot").click()
    expect(bad).to_have_count(0)
    expect(phone.locator(".pot")).to_have_count(1)


def test_a_pot_without_an_answer_yet_is_being_worked_out_and_nothing_failed(phone, standing):
    """A loaded machine: the engine is asked and does not answer for a while."""
    phone.add_init_script(HELD_BACK)
    phone.goto(standing.url + "/clock/")
    phone.evaluate(ADD, pot_of(30, 0))
    pot = phone.locator(".pot")
    expect(pot).to_contain_text("Working out this pot's clock")
    expect(pot).not_to_contain_text("cannot be shown")
    phone.evaluate("window.letGo()")
    expect(pot.locator(".pot-minutes")).to_have_text(re.compile(r"\d\d:\d\d"))
    expect(pot.locator(".pot-trouble")).to_be_hidden()


@pytest.mark.parametrize("order", [(1, 15), (15, 1)])
def test_of_two_pots_the_one_that_ends_first_stands_first_and_on_the_way_to_it(phone, standing, order):
    """Twenty minutes each, one and fifteen of them gone: five are left, and nobody is told of nineteen."""
    phone.goto(standing.url + "/clock/")
    for gone in order:
        phone.evaluate(ADD, pot_of(20, gone * 60))
    expect(phone.locator(".pot")).to_have_count(2)
    expect(phone.locator(".pot-minutes").first).to_have_text(re.compile("^(5:00|4:)"))
    size = "(all) => all.map((one) => parseFloat(getComputedStyle(one).fontSize))"
    sizes = phone.locator(".pot-minutes").evaluate_all(size)
    assert sizes[0] > sizes[1]  # read from where the seam is
    expect(phone.locator(".nav [data-minutes]")).to_have_attribute("data-minutes", re.compile("^(5:00|4:)"))
    phone.goto(standing.url + "/")
    expect(phone.locator(".nav [data-minutes]")).to_have_attribute("data-minutes", re.compile("^(5:00|4:)"))


LOGGED = """async () => {
    const { all } = await part("store/store.js");
    return (await all("log")).map(({ typed }) => typed);
}"""
LINK_TOLD = "[data-notice=pot-link]"


def test_a_pot_that_is_too_stiff_ends_with_its_own_time_in_the_log(clock, standing):
    """The log learns from it, the form reckons with it, and a tap by mistake takes back both."""
    warm(clock)
    clock.get_by_role("link", name="Start the clock").click()
    expect(clock.locator(".pot-minutes")).to_have_text(re.compile(":"))
    clock.evaluate(JUMP, 17 * 60)
    expect(clock.locator(".pot [data-line=clock_changed]")).to_contain_text("ahead")
    clock.get_by_role("button", name="Too stiff").click()
    expect(clock.locator(".pot")).to_have_count(0)
    expect(clock.locator("[name='timings.0.said']")).to_have_value("gone")
    expect(clock.locator("[name='timings.0.after']")).to_have_value(re.compile("^1[01].. s$"))
    kept, = clock.evaluate(LOGGED)
    assert kept["outcome"] == "stiff" and re.fullmatch("1[01].. s", kept["own_time"])
    clock.locator("[data-notice=pot-ended]").get_by_role("button", name="Undo").click()
    expect(clock.locator(".pot")).to_have_count(1)
    clock.get_by_role("button", name="Too stiff").click()
    expect(clock.locator(".pot")).to_have_count(0)
    clock.goto(standing.url + "/log/")
    expect(clock.locator(".entry")).to_have_count(1)
    expect(clock.locator(".entry")).to_contain_text(re.compile(r"1[78]\smin"))


def test_a_pot_that_cannot_be_ended_runs_on_and_is_in_the_log_once(phone, standing):
    phone.goto(standing.url + "/clock/")
    phone.evaluate(ADD, pot_of(30, 60))
    phone.locator(".pot-minutes").wait_for()
    phone.evaluate("""() => {
      const own = IDBObjectStore.prototype.delete;
      IDBObjectStore.prototype.delete = function (...row) {
        if (this.name === "pots") throw new DOMException("the disk fails", "UnknownError");
        return own.apply(this, row);
      };
      window.well = () => { IDBObjectStore.prototype.delete = own; };
    }""")
    empty = phone.locator(".pot").get_by_role("button", name="Empty")
    empty.click()
    expect(phone.locator("[data-notice=store]")).to_contain_text("cannot save")
    until(phone, f"({LOGGED})().then((kept) => kept.length === 0)")
    expect(phone.locator(".pot-minutes")).to_have_text(re.compile("^2[89]:"))
    phone.evaluate("well()")
    empty.click()
    expect(phone.locator(".pot")).to_have_count(0)
    assert len(phone.evaluate(LOGGED)) == 1


def test_a_tap_on_a_pot_that_gets_no_answer_says_so_and_the_next_tap_counts(clock):
    """A timing is not kept unlooked at, the minutes are not set, and no air is taken."""
    start_pot_of_the_kit(clock)
    clock.evaluate(JUMP, 17 * 60)  # of the 22 minutes that a fifth kept back leaves
    expect(clock.locator(".pot-minutes")).to_have_text(re.compile("^[45]:"))
    unanswered(clock, "")
    stiffening = clock.get_by_role("button", name="Stiffening")
    stiffening.click()
    expect(clock.locator("[data-notice=timing]")).to_contain_text("No answer")
    for name, typed in (("The air has changed", "30"), ("Set what is left", "1:30")):
        fold = clock.locator(".pot details", has_text=name)
        fold.locator("summary").click()
        fold.get_by_role("textbox").fill(typed)
        fold.get_by_role("button", name="Use this").click()
        expect(fold.locator(".error")).to_contain_text("No answer")
    assert clock.evaluate(KEPT_TIMINGS) is None
    clock.evaluate("well()")
    stiffening.click()
    expect(figure(clock, "usable").locator("..")).to_contain_text("from 1 own timing")
    fold.get_by_role("button", name="Use this").click()
    expect(clock.locator(".pot-minutes")).to_have_text(re.compile("^1:[0-3]."))


def test_an_air_that_changes_twice_is_two_changes_of_its_pot(phone, standing):
    phone.goto(standing.url + "/clock/")
    timing = [["mass", "240 g"], ["in", "cup"], ["at", "18 °C"]]
    phone.evaluate(ADD, pot_of(40, 300, timing=timing, system=[["system", "3-1"]]))
    fold = phone.locator(".pot details", has_text="The air has changed")
    for degrees in ("24", "32"):
        fold.locator("summary").click()
        fold.get_by_role("textbox").fill(degrees)
        fold.get_by_role("button", name="Use this").click()
        expect(fold).not_to_have_attribute("open", "")
    phone.locator(".pot").get_by_role("button", name="Share").click()
    link = phone.locator("[data-notice=share]").get_by_role("textbox", name="Link")
    expect(link).to_have_value(re.compile("pot.changes.0.usable=.*pot.changes.1.usable="))
    assert "pot.changes.2." not in link.input_value()


def test_what_waits_for_its_air_waits_on_until_it_can_be_counted(phone, standing):
    phone.goto(standing.url + "/?amount=200")
    phone.get_by_role("link", name="Start the clock").click()
    expect(phone.locator("[data-notice=waiting]")).to_be_visible()
    unanswered(phone, '"timer"')
    air = phone.get_by_label("Air temperature").first
    air.fill("20")
    expect(phone.locator("[data-move=heat] [data-lead]").first).to_be_visible()
    expect(phone.locator(".pot")).to_have_count(0)
    phone.evaluate("well()")
    air.fill("")
    expect(phone.locator("[data-error=air]")).to_be_visible()
    air.fill("21")
    expect(phone.locator(".pot-name")).to_contain_text("200 g at 21 °C")


def test_a_pots_link_is_read_at_the_second_try(phone, standing):
    phone.add_init_script("""const Real = Worker;
      window.Worker = class extends Real {
        constructor(...how) { super(...how); if (!window.well) throw new Error("no worker"); }
      };""")
    started = phone.evaluate("Math.floor(Date.now() / 1000) - 120")
    phone.goto(f"{standing.url}/clock/?pot.started={started}&pot.duration=30&pot.batch=Batch+2")
    again = phone.locator(LINK_TOLD).get_by_role("button", name="Try again")
    again.wait_for()
    phone.evaluate("window.well = true")
    again.click()
    expect(phone.locator(LINK_TOLD)).to_contain_text(re.compile(r"Batch 2: 2[78]\sminutes left"))


def test_a_pots_link_that_holds_none_says_what_is_wrong_and_adds_nothing(phone, standing):
    for pot, wrong in (("pot.started=100&pot.duration=soon", "Usable for: "), ("pot.duration=30", "Started: ")):
        phone.goto(f"{standing.url}/clock/?{pot}")
        expect(phone.locator(LINK_TOLD)).to_contain_text(f"{wrong}type a number")
        expect(phone.locator(LINK_TOLD).get_by_role("button", name="Add this pot")).to_have_count(0)


VOICE = """
window.told = [];
speechSynthesis.getVoices = () => [{ localService: true, lang: "en-GB" }];
window.SpeechSynthesisUtterance = function (words) { this.words = words; };
speechSynthesis.speak = ({ words }) => window.told.push(words);
"""


def test_pots_are_read_aloud_from_one_tap_to_the_next_and_the_choice_is_kept(phone, standing):
    phone.add_init_script(VOICE)
    phone.goto(standing.url + "/clock/")
    phone.evaluate(ADD, pot_of(30, 60))
    phone.locator(".pot-minutes").wait_for()
    key = phone.get_by_role("button", name="Read aloud", exact=True)
    expect(key).to_have_attribute("aria-pressed", "false")
    key.click()
    expect(key).to_have_attribute("aria-pressed", "true")
    told, = phone.evaluate("window.told")
    assert re.search(r"240 g.*: 2[89]\sminutes left", told)
    phone.reload()
    expect(key).to_have_attribute("aria-pressed", "true")
    phone.locator(".pot-minutes").wait_for()
    key.click()
    expect(key).to_have_attribute("aria-pressed", "false")
    phone.reload()
    phone.evaluate(ADD, pot_of(10, 10 * 60 + 5))
    expect(phone.locator("[data-kind=ring]")).to_be_visible()
    expect(key).to_have_attribute("aria-pressed", "false")
    assert phone.evaluate("window.told") == []


def test_the_link_of_a_pot_is_sent_or_copied(phone, standing):
    """What is called off or refused at first stands there once more, marked where it is to be copied by hand."""
    phone.context.grant_permissions(["clipboard-read", "clipboard-write"])
    phone.add_init_script("""navigator.share = async ({ url }) => {
      if (!window.sent) { window.sent = []; throw new DOMException("called off", "AbortError"); }
      window.sent.push(url);
    };
    const write = navigator.clipboard.writeText;
    navigator.clipboard.writeText = async () => {
      navigator.clipboard.writeText = write;
      throw new DOMException("no", "NotAllowedError");
    };""")
    phone.goto(standing.url + "/clock/")
    phone.evaluate(ADD, pot_of(30, 60))
    told = phone.locator("[data-notice=share]")
    share = phone.locator(".pot").get_by_role("button", name="Share")
    share.click()
    for _ in range(2):
        told.get_by_role("button", name="Send").click()
    share.click()
    copy = told.get_by_role("button", name="Copy link")
    copy.click()
    until(phone, "document.activeElement.value?.includes('pot.started')")
    marked = phone.evaluate("getSelection().toString()")
    copy.click()
    expect(told).to_contain_text("Link copied")
    sent, = phone.evaluate("window.sent")
    for link in (sent, marked, phone.evaluate("navigator.clipboard.readText()")):
        assert link.startswith(standing.url + "/clock/?pot.started=") and "pot.duration=30+min" in link


def test_a_second_batch_like_the_first_has_a_clock_too(phone, standing):
    phone.goto(standing.url + "/clock/")
    phone.get_by_label("Air temperature").first.fill("20")
    for place, amount in enumerate((200, 200, 150)):
        phone.goto(f"{standing.url}/?amount={amount}")
        phone.get_by_role("link", name="Start the clock").click()
        expect(phone.locator(".pot")).to_have_count(place + 1)
        expect(phone.locator("[data-status]")).not_to_be_empty()  # the answer is kept by now
    expect(phone.locator(".pot-name", has_text="200 g")).to_have_count(2)

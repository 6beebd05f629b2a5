"""Clocks that are changed: a pot never has more left than it had, on one phone or two, asleep, killed, on the night of
summer time. The phone's own clock is faked by a shift that outlives a reload; the steady clock is real."""
import re

import pytest
from playwright.sync_api import expect

from .conftest import CHROMIUM, FLAGS, PART, figure, fresh
from .test_clock import ADD, pot_of, seconds_left

WALL = """(() => {
  const real = Date.now;
  const next = localStorage.getItem("test.next");
  if (next !== null) {
    localStorage.setItem("test.shift", next);
    localStorage.removeItem("test.next");
  }
  Date.now = () => real.call(Date) + 1000 * Number(localStorage.getItem("test.shift") ?? 0);
})()"""
SHIFT = "(seconds) => localStorage.setItem('test.shift', seconds)"
UNSEEN = "(seconds) => localStorage.setItem('test.next', seconds)"  # from the next page on: this one sees no jump
HIDE = """(away) => {
  Object.defineProperty(document, "hidden", { get: () => away, configurable: true });
  document.dispatchEvent(new Event("visibilitychange"));
}"""
KEPT = """async () => {
    const { all } = await part("store/store.js");
    return (await all("pots")).map((pot) => pot.beat?.age ?? -1);
}"""
MINUTES = 60


@pytest.fixture
def wall(phone, standing):
    """A phone whose clock can be set, on the clock, with a pot that has eight of twenty minutes left."""
    phone.add_init_script(WALL)
    phone.goto(standing.url + "/clock/")
    phone.evaluate(ADD, pot_of(20, 12 * MINUTES))
    expect(phone.locator(".pot-minutes")).to_have_text(re.compile("^(8:00|7:)"))
    return phone


def told(page, name):
    return page.locator(f".pot [data-line={name}]")


def beaten(page, age=0):
    """Wait until what is kept of each pot is older than that [s]. (A promise counts as true in wait_for_function.)"""
    for _ in range(100):
        if all(kept > age for kept in page.evaluate(KEPT)):
            return
        page.wait_for_timeout(200)
    raise AssertionError(f"no heartbeat after {age} s was kept")


@pytest.mark.parametrize("back", [5, 10, 63])
def test_set_back_and_loaded_anew_it_has_no_more_left(wall, back):
    beaten(wall)
    before = 20 * MINUTES - wall.evaluate(KEPT)[0]  # at the last heartbeat
    wall.evaluate(UNSEEN, -back * MINUTES)
    wall.reload()
    expect(told(wall, "lost")).to_contain_text("set back while nobody looked")
    assert seconds_left(wall) <= before
    assert seconds_left(wall) > before - 60
    wall.reload()  # the doubt outlives the next page
    expect(told(wall, "lost")).to_be_visible()
    expect(told(wall, "clock_changed")).to_contain_text(re.compile("behind|before this pot was mixed"))


def test_set_back_in_sight_then_loaded_anew_nothing_is_lost(wall):
    wall.wait_for_timeout(2500)  # looked at twice since the page came into sight
    wall.evaluate(SHIFT, -10 * MINUTES)
    expect(told(wall, "clock_changed")).to_contain_text("10 minutes behind")
    age = seconds_left(wall)  # as it stands after the change: what is kept next was measured after it
    beaten(wall, 20 * MINUTES - age + 2)
    before = seconds_left(wall)
    wall.reload()
    expect(told(wall, "clock_changed")).to_contain_text("10 minutes behind")
    expect(told(wall, "lost")).to_have_count(0)
    assert before - 30 <= seconds_left(wall) <= before


def test_set_ahead_and_right_again_the_earlier_end_stays(wall):
    wall.evaluate(SHIFT, 5 * MINUTES)
    expect(wall.locator(".pot-minutes")).to_have_text(re.compile("^[12]:"))
    expect(told(wall, "clock_changed")).to_contain_text("ahead")
    beaten(wall, 17 * MINUTES)
    before = 20 * MINUTES - wall.evaluate(KEPT)[0]  # at the last heartbeat
    wall.evaluate(SHIFT, 0)
    wall.wait_for_timeout(2500)
    assert seconds_left(wall) <= before
    wall.reload()
    expect(told(wall, "clock_changed")).to_contain_text("ahead")
    assert seconds_left(wall) <= before


def test_set_back_while_it_sleeps_no_more_is_left_and_it_is_said(wall):
    before = seconds_left(wall)
    wall.evaluate(HIDE, True)
    wall.evaluate(SHIFT, -10 * MINUTES)
    wall.evaluate(HIDE, False)
    expect(told(wall, "lost")).to_be_visible()
    assert seconds_left(wall) <= before


def test_two_tabs_tell_the_same_after_the_clock_was_set_back(wall):
    wall.evaluate(SHIFT, -10 * MINUTES)
    other = wall.context.new_page()
    other.add_init_script(WALL)
    other.goto(wall.url)
    expect(other.locator(".pot-minutes")).to_be_visible()
    assert abs(seconds_left(other) - seconds_left(wall)) < 15
    assert seconds_left(other) <= 8 * MINUTES
    other.wait_for_timeout(6000)  # either tab's heartbeat
    assert seconds_left(wall) <= 8 * MINUTES


@pytest.mark.parametrize(("shift", "most", "line"), [(-600, 480, "lost"), (180, 300, "unseen")])
def test_after_a_kill_what_passed_unseen_is_in_doubt(chromium, standing, tmp_path, shift, most, line):
    """The same storage, another browser: by its clock ten minutes before, or three minutes later."""
    def opened():
        context = chromium.browser_type.launch_persistent_context(str(tmp_path), executable_path=CHROMIUM, args=FLAGS)
        page = context.pages[0]
        page.add_init_script(PART)
        page.add_init_script(WALL)
        page.goto(standing.url + "/clock/")
        return context, page

    context, page = opened()
    page.evaluate(ADD, pot_of(20, 12 * MINUTES))
    expect(page.locator(".pot-minutes")).to_be_visible()
    beaten(page)
    page.evaluate(UNSEEN, shift)
    page.evaluate("document.addEventListener('visibilitychange', (event) => event.stopImmediatePropagation(), true)")
    context.close()
    context, page = opened()
    expect(told(page, line)).to_be_visible()
    assert seconds_left(page) <= most
    context.close()


def tap_to_stir(page, url):
    page.add_init_script(WALL)
    page.goto(url + "/?amount=100&system.by_weight=345:98")
    expect(figure(page, "part_a")).to_have_count(1)
    expect(page.locator("[data-status]")).not_to_be_empty()
    page.get_by_role("button", name="Pour step by step").click()
    for shows in ("78 g", "100 g", "2 min"):
        expect(page.locator("[data-steps=step]")).to_contain_text("Step")
        page.locator("[data-steps=tap]").click()
        expect(page.locator("[data-steps=figure]")).to_have_text(shows)
    page.locator("[data-steps=tap]").click()
    expect(page.locator("[data-steps=figure]")).to_have_text(re.compile("1:5."))


@pytest.mark.parametrize("anew", [False, True])
@pytest.mark.parametrize("shift", [-63 * MINUTES, 63 * MINUTES])
def test_stirring_is_as_long_as_it_is_whatever_the_clock_shows(phone, standing, shift, anew):
    """Two minutes to stir. Set back by 63: no 65; set ahead in sight: not over at once."""
    tap_to_stir(phone, standing.url)
    phone.evaluate(SHIFT, shift)
    phone.wait_for_timeout(2500)
    place = phone.locator("[data-steps=figure]")
    expect(place).to_have_text(re.compile("^1:[0-5]."))
    if not anew:
        return
    phone.wait_for_function("""() => {  // kept with the clock as it now stands
      const beat = JSON.parse(localStorage.getItem("covemix.typed.pour.along")).find(([name]) => name === "beat")?.[1];
      return beat && Math.abs(JSON.parse(beat).wall - Date.now()) < 10000;
    }""")
    phone.reload()
    expect(place).to_have_text(re.compile("^(1:|0:[1-5])"))


@pytest.mark.parametrize(("shift", "doubt", "left"), [
    (-63 * MINUTES, "set back while nobody looked", "^1:[0-5]."),
    (45, "counted by the phone's clock alone", "^(1:[01]|0:[2-5])")])
def test_stirring_whose_clock_changed_unseen_is_in_doubt_and_no_longer(phone, standing, shift, doubt, left):
    tap_to_stir(phone, standing.url)
    phone.wait_for_timeout(2500)
    phone.evaluate(UNSEEN, shift)
    phone.reload()
    expect(phone.locator("[data-steps=under]")).to_contain_text(doubt)
    expect(phone.locator("[data-steps=figure]")).to_have_text(re.compile(left))


def test_what_waits_for_its_air_counts_while_the_clock_is_set_back(phone, standing):
    phone.add_init_script(WALL)
    phone.goto(standing.url + "/?amount=200")
    phone.get_by_role("link", name="Start the clock").click()
    expect(phone.locator("[data-notice=waiting]")).to_be_visible()
    phone.evaluate(SHIFT, 3 * MINUTES)
    phone.wait_for_timeout(6000)  # kept with three minutes
    phone.evaluate(UNSEEN, -10 * MINUTES)
    phone.reload()
    phone.get_by_label("Air temperature").first.fill("20")
    expect(told(phone, "lost")).to_be_visible()
    passed = phone.evaluate(KEPT)[0]
    assert 3 * MINUTES <= passed < 4 * MINUTES


def other_phone(chromium, shift):
    made = fresh(chromium)
    page, _ = made.__enter__()
    page.add_init_script(WALL.replace('localStorage.getItem("test.shift") ?? 0', str(shift)))
    return made, page


@pytest.mark.parametrize(("shift", "line"), [(-360, "clocks_differ"), (360, "unseen"), (0, None)])
def test_two_phones_whose_clocks_differ_share_one_pot(chromium, phone, standing, shift, line):
    """31 minutes, two of them gone. Six minutes behind: counts at once, from what was left; ahead: ends early, said."""
    phone.goto(standing.url + "/clock/")
    phone.evaluate(ADD, pot_of(31, 2 * MINUTES))
    expect(phone.locator(".pot-minutes")).to_have_text(re.compile("^(29:00|28:)"))
    phone.locator(".pot").get_by_role("button", name="Share").click()
    link = phone.locator("[data-notice=share]").get_by_role("textbox", name="Link").input_value()
    made, page = other_phone(chromium, shift)
    page.goto(link)
    offer = page.locator("[data-notice=pot-link]")
    offer.get_by_role("button", name="Add this pot").click()
    expect(page.locator(".pot-minutes")).to_be_visible()
    page.wait_for_timeout(1500)
    here, there = seconds_left(phone), seconds_left(page)
    wanted = here - (360 if shift > 0 else 0)
    assert wanted - 9 <= there <= wanted + 12  # the way of the link
    page.wait_for_timeout(2000)
    assert seconds_left(page) < there
    for name in ("clocks_differ", "unseen", "clock_changed", "lost"):
        expect(told(page, name)).to_have_count(1 if name == line else 0)
    if line:
        page.get_by_text("Set what is left").last.click()
        field = page.get_by_label("Time left, by the other phone")
        field.fill("soon")
        page.get_by_role("button", name="Use this").click()
        expect(page.locator(".pot .error:visible")).to_contain_text("12:30")
        field.fill(phone.locator(".pot-minutes").text_content())
        page.get_by_role("button", name="Use this").click()
        expect(told(page, line)).to_have_count(0)
        page.wait_for_timeout(1200)
        assert abs(seconds_left(page) - seconds_left(phone)) <= 9  # one is read after the other
        page.reload()
        expect(page.locator(".pot-minutes")).to_be_visible()
        assert abs(seconds_left(page) - seconds_left(phone)) <= 12
    made.__exit__(None, None, None)


NIGHTS = [  # zone, the wall there as it begins, minutes, its end as the wall shows it then
    ("Europe/Berlin", "2026-10-25T02:40:00+02:00", 50, "02:30"),
    ("Europe/Berlin", "2026-10-25T01:30:00+02:00", 20, "01:50"),
    ("Europe/Berlin", "2027-03-28T01:40:00+01:00", 50, "03:30"),
    ("America/New_York", "2026-11-01T01:40:00-04:00", 50, "01:30"),
    ("Asia/Kathmandu", "2026-10-25T02:40:00+05:45", 50, "03:30"),
]


@pytest.mark.parametrize(("zone", "begins", "minutes", "ends"), NIGHTS)
def test_the_wall_time_of_its_end_on_the_night_the_clocks_change(chromium, standing, zone, begins, minutes, ends):
    """Times by the public rules of these zones: Europe changes at 01:00 UTC, New York at 02:00 of its own."""
    with fresh(chromium, timezone_id=zone) as (page, _):
        page.add_init_script(f"""(() => {{
          const Real = Date, from = Real.now(), begins = Real.parse("{begins}");
          const now = () => Real.now() - from + begins;
          globalThis.Date = class extends Real {{
            constructor(...given) {{ super(...(given.length ? given : [now()])); }}
            static now() {{ return now(); }}
          }};
        }})()""")
        page.goto(standing.url + "/clock/")
        page.evaluate(ADD, pot_of(minutes, 0))
        expect(page.locator(".pot-until")).to_have_text(f"Ends {ends}")


def test_of_a_pot_that_nobody_looked_at_yet_no_age_is_told(phone, standing):
    """Nor one of an earlier build that kept none: 0 s would be a fresh pot."""
    phone.goto(standing.url + "/clock/")
    found = phone.evaluate("""async () => {
      const { Watch } = await part("phone/clocks.js");
      const { age } = await part("pots/pots.js");
      return [new Watch().age(), age({ id: 901, started: Date.now() - 60000 }), age({ id: 902, started: 1, seen: 30 })];
    }""")
    assert found == [None, None, 30]

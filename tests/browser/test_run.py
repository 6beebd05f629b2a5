"""The run of a seam: one step at a time from the wood to the peel ply, with what is left of each window."""
import json
import re
from pathlib import Path

import pytest
from playwright.sync_api import expect

from .conftest import figure, fresh, keep, unanswered, until

SEAM = ("/plan/?temperature=20&start=9:00&pieces.0.name=Keel&pieces.0.length=2.4&pieces.0.putty=57&pieces.0.wet=39"
        "&scale.id=0.1g&long=whole")
TAPS = 25  # of a seam of one piece measured with two syringes: each of its 23 steps, and one more for each stirring
KEPT = "Object.entries(localStorage).filter(([name]) => /typed[.]plan$|plan[.]run/.test(name)).join()"
TUBS = """async () => {
    const { all } = await part("store/store.js");
    return (await all("log")).filter(({ kind }) => kind === "putty");
}"""
HELPED = ("run.part=2&run.ran.0.step=pour_putty&run.ran.0.at=60+s&run.ran.1.step=clean&run.ran.1.at=300+s"
          "&run.ran_age=310+s&run.ran_wall={now}&run.tape=fits")
REST = 750  # ms, a little more than a shaking glove is kept out


def steps(page, name):
    return page.locator(f"[data-steps={name}]")


def begin(page, url, seam=SEAM):
    page.goto(url + seam)
    page.get_by_role("button", name="Use these").click()
    expect(figure(page, "batches")).to_have_text(re.compile(r"\d+ batch"))
    page.get_by_role("button", name="Next batch, step by step").click()
    expect(steps(page, "step")).to_contain_text("Step 1 of")
    return page


@pytest.fixture
def run(phone, standing):
    phone.clock.install()
    return begin(phone, standing.url)


# what of a step is the same until the next one, and whether its clock runs: minutes that go by are no step
STANDS = """["what", "part", "how", "next"]
  .map((name) => document.querySelector(`[data-steps=${name}]`).textContent).join("|")
  + /:/.test(document.querySelector("[data-steps=figure]").textContent)"""


def tap(page):
    """The next step, or its clock."""
    before = page.evaluate(STANDS)
    steps(page, "tap").click()
    until(page, f"{STANDS} !== {json.dumps(before)}")
    page.clock.run_for(REST)


def to(page, part, most=30):
    """Taps until a step is in sight; how many."""
    for count in range(most):
        if steps(page, "part").inner_text() == part:
            return count
        tap(page)
    raise AssertionError(f"{part} never came")


def seconds(page):
    minutes, rest = steps(page, "left").inner_text().split(":")
    return 60 * int(minutes) + int(rest)


def logged(page):
    return page.evaluate("""async () => {
        const { all } = await part("store/store.js");
        return (await all("log")).filter(({ kind }) => kind === "poured").map(({ typed }) => typed);
    }""")


def test_a_whole_seam_is_a_tap_for_each_step_and_leaves_log_plan_and_dates(run):
    expect(steps(run, "window")).to_be_hidden()
    count = to(run, "Resin")
    expect(steps(run, "what")).to_have_text("Putty")
    tap(run)
    expect(steps(run, "window")).to_contain_text("Bag")  # hardener is about to meet resin
    count += 1 + to(run, "Clean the edges")
    expect(steps(run, "window")).to_contain_text("Soft cove")
    count += to(run, "Peel ply off from")
    assert count == TAPS - 1  # and one more that leaves it
    expect(steps(run, "window")).to_be_hidden()
    with run.expect_download() as got:
        run.get_by_role("button", name="Dates for the calendar").click()
    assert Path(got.value.path()).read_text(encoding="utf-8").count("BEGIN:VEVENT") >= 1
    until(run, "async () => { const { all } = await part('store/store.js'); return (await all('log')).length === 1; }")
    assert logged(run)[0]["pieces"] == "Keel||"
    steps(run, "tap").click()
    expect(run.locator("dialog.steps")).to_be_hidden()
    expect(run.locator("[name='done.8.step']")).to_have_value("peel")


def test_a_reload_in_the_middle_goes_on_there_and_no_window_grows(run):
    to(run, "Tool the cove")
    before = seconds(run)
    run.clock.run_for(30_000)
    assert before - 34 <= seconds(run) <= before - 29
    run.reload()
    expect(steps(run, "part")).to_have_text("Tool the cove")
    expect(steps(run, "left")).to_be_visible()
    assert seconds(run) <= before - 29
    tap(run)
    expect(steps(run, "part")).to_have_text("Clean the edges")


def test_a_killed_app_opens_in_the_run(run, standing):
    to(run, "Place the putty")
    run.goto(standing.url + "/")
    expect(steps(run, "part")).to_have_text("Place the putty")


def test_what_was_read_of_a_pour_stands_there_again_after_a_step_back(run):
    to(run, "Resin")
    steps(run, "actual").fill("77")
    tap(run)
    steps(run, "undo").click()
    expect(steps(run, "part")).to_have_text("Resin")
    expect(steps(run, "actual")).to_have_value("77 mL")


def test_two_taps_of_a_shaking_glove_start_no_clock(run):
    to(run, "Resin")
    run.evaluate("""(apart) => new Promise((done) => {
        const tap = document.querySelector("[data-steps=tap]");
        tap.click();
        setTimeout(() => { tap.click(); done(); }, apart);
        setTimeout(done, 3000);
    })""", 0)
    expect(steps(run, "part")).to_have_text("Hardener")
    steps(run, "undo").click()
    expect(steps(run, "part")).to_have_text("Resin")
    expect(steps(run, "window")).to_contain_text("Bag")  # what has met it cannot be taken out: the older age counts


def test_tape_that_no_longer_fits_is_said_and_the_piece_is_cut(run):
    to(run, "Clean the edges")
    run.clock.fast_forward((seconds(run) - 450) * 1000)
    expect(steps(run, "saved")).to_contain_text(re.compile(r"time for only [\d.]+\sm of tape"))
    expect(steps(run, "window")).to_have_attribute("data-rank", "warn")
    tap(run)
    expect(steps(run, "part")).to_have_text("No time for all tape. Now only")
    shorter = steps(run, "figure").inner_text()
    run.get_by_role("button", name="Two of us: lay all").click()
    expect(steps(run, "what")).to_have_text("Wet-out")
    run.clock.run_for(REST)
    whole = steps(run, "figure").inner_text()
    steps(run, "undo").click()
    expect(steps(run, "part")).to_have_text("No time for all tape. Now only")
    run.clock.run_for(REST)
    steps(run, "tap").click()
    expect(steps(run, "what")).to_have_text("Wet-out")
    expect(steps(run, "figure")).not_to_have_text(whole, use_inner_text=True)
    run.clock.run_for(REST)
    to(run, "Wet out the tape on the tray")
    expect(steps(run, "figure")).to_have_text(shorter, use_inner_text=True)


def test_it_runs_without_signal(phone, served):
    keep(phone, served.url + "/plan/")
    served.stop()
    phone.clock.install()
    begin(phone, served.url)
    to(phone, "Peel ply off from")
    with phone.expect_download() as got:
        phone.get_by_role("button", name="Dates for the calendar").click()
    assert "Peel ply off" in Path(got.value.path()).read_text(encoding="utf-8")


def test_a_joint_leads_into_its_run(phone, standing):
    phone.goto(standing.url + "/joint/")
    phone.get_by_role("link", name="Do this seam, step by step").click()
    phone.get_by_label("Wood and air temperature").fill("18")
    expect(figure(phone, "batches")).to_have_text(re.compile(r"\d+ batch"))
    phone.get_by_role("button", name="Next batch, step by step").click()
    expect(steps(phone, "figure")).to_have_text(re.compile(r"18\.0\s°C"))


TWO = ("/plan/?temperature=20&start=9:00&pieces.0.name=Keel&pieces.0.length=1.2&pieces.0.putty=28&pieces.0.wet=20"
       "&pieces.1.name=Chine&pieces.1.length=1&pieces.1.putty=25&pieces.1.wet=18&scale.id=0.1g&long=whole")


def handed(phone, url):
    """The second piece of a run is given to a helper: the notice that its link stands in."""
    phone.clock.install()
    begin(phone, url, TWO)
    to(phone, "Clean the edges")
    steps(phone, "leave").click()
    phone.get_by_role("button", name="Give a piece to a helper").click()
    phone.locator("[data-notice=hand]").get_by_role("button", name="Chine").click()
    return phone.locator("[data-notice=share]")


def test_a_helper_takes_a_piece_by_link_and_sees_the_same_minutes(chromium, phone, standing):
    shared = handed(phone, standing.url)
    expect(shared).to_contain_text("Chine")
    expect(shared.locator("svg.code")).to_be_visible()
    link = shared.get_by_role("textbox").input_value()
    assert re.findall(r"run\.ran\.\d+\.step=(\w+)", link)[0] == "pour_putty"  # no longer than what bears on a window
    with fresh(chromium) as (other, _):
        other.clock.install(time=phone.evaluate("Date.now() / 1000"))
        other.goto(standing.url + "/plan/")
        expect(other.locator("[data-form].live")).to_be_attached()
        kept = other.evaluate(KEPT)
        other.goto(link)
        expect(steps(other, "what")).to_have_text("Helper: Chine")
        expect(steps(other, "step")).to_contain_text("Step 1 of 3")
        expect(steps(other, "part")).to_have_text("Wet out the tape on the tray")
        expect(steps(other, "window")).to_contain_text("Soft cove")
        phone.get_by_role("button", name=re.compile("Go on")).click()
        expect(steps(phone, "left")).to_be_visible()
        assert 0 <= seconds(phone) - seconds(other) <= 30  # never later than where it came from
        assert other.evaluate(KEPT) == kept
        left = seconds(other)
        other.clock.run_for(20_000)
        other.reload()
        expect(steps(other, "left")).to_be_visible()
        assert seconds(other) <= left - 15
        for part in ("Wet out the tape on the tray", "Lay the tape on the soft cove", "Roll the air out"):
            expect(steps(other, "part")).to_have_text(part)
            other.clock.run_for(REST)
            steps(other, "tap").click()
        expect(other.locator("dialog.steps")).to_be_hidden()
        assert logged(other) == []
        other.reload()
        expect(other.locator("[data-form].live")).to_be_attached()
        expect(other.locator("dialog.steps")).to_be_hidden()


@pytest.mark.parametrize("broken", [lambda link: link.replace("run.part=2", "run.part=1"), lambda link: link[:-40],
                                    lambda link: link[:-1], lambda link: re.sub(r"(?<=run.ran_age=)\d", "9", link)],
                         ids=["another piece", "cut short", "a letter less", "another age"])
def test_a_helper_s_link_that_was_changed_on_its_way_is_refused(chromium, phone, standing, broken):
    link = handed(phone, standing.url).get_by_role("textbox").input_value()
    assert broken(link) != link
    with fresh(chromium) as (other, _):
        other.goto(broken(link))
        expect(other.locator("[data-notice=link]")).to_contain_text("cut short or changed on its way")
        expect(other.locator("dialog.steps")).to_be_hidden()
        assert not other.evaluate("localStorage['covemix.typed.plan.part']")


def test_a_helper_s_own_run_waits_while_a_piece_is_done(phone, standing):
    phone.clock.install()
    begin(phone, standing.url, SEAM)
    to(phone, "Tool the cove")
    steps(phone, "leave").click()
    phone.goto(standing.url + TWO + "&" + HELPED.format(now=phone.evaluate("Date.now()") // 1000))
    for part in ("Wet out the tape on the tray", "Lay the tape on the soft cove", "Roll the air out"):
        expect(steps(phone, "part")).to_have_text(part)
        expect(steps(phone, "what")).to_have_text("Helper: Chine")
        phone.clock.run_for(REST)
        steps(phone, "tap").click()
    expect(phone.locator("dialog.steps")).to_be_hidden()
    phone.get_by_role("button", name=re.compile("Go on")).click()
    expect(steps(phone, "part")).to_have_text("Tool the cove")


def test_the_tub_that_was_weighed_gives_the_dose_and_it_is_kept(run):
    expect(steps(run, "putty")).to_be_hidden()
    to(run, "Peel ply off from")
    expect(steps(run, "putty")).to_be_visible()
    expect(run.locator("[data-unit-like='batches.0.before']")).to_have_text("g")
    steps(run, "before").fill("500")
    steps(run, "after").fill("600")  # heavier than before
    steps(run, "store").click()
    expect(steps(run, "wrong")).to_be_visible()
    assert len(logged(run)) == 1
    steps(run, "after").fill("440")
    steps(run, "store").click()
    expect(steps(run, "putty")).to_be_hidden()
    expect(steps(run, "under")).to_contain_text("own")
    kept = run.evaluate(TUBS)
    assert [(one["before"], one["after"], one["came_out"]) for one in kept] == [("500 g", "440 g", "stands")]
    assert float(kept[0]["mixed"].split()[0]) > 50 and kept[0]["filler"]
    steps(run, "tap").click()
    run.locator(".nav [data-to=pour]").click()
    run.locator("[name=thicken][value=yes]").check(force=True)
    expect(figure(run, "own")).to_be_attached()
    expect(run.locator("[name='batches.0.before']")).to_have_count(1)


def test_a_clock_that_is_set_ahead_in_sight_takes_its_minutes_off_the_window(run):
    """Of what must not last too long the older age counts: the steady clock may have stood still."""
    to(run, "Tool the cove")
    before = seconds(run)
    run.clock.set_system_time(run.evaluate("Date.now() / 1000") + 180)
    run.clock.run_for(3000)
    until(run, f"""() => {{
        const [minutes, seconds] = document.querySelector("[data-steps=left]").textContent.split(":");
        return 60 * minutes + Number(seconds) <= {before - 180};
    }}""")
    assert seconds(run) > before - 200


def test_the_way_of_a_piece_s_code_is_taken_off_the_helper_s_minutes(phone, standing):
    """Ten seconds from one screen to the other: the helper never has longer than the run that the piece is of."""
    phone.clock.install()
    phone.goto(standing.url + TWO + "&" + HELPED.format(now=phone.evaluate("Date.now()") // 1000))
    expect(steps(phone, "what")).to_have_text("Helper: Chine")
    own = phone.evaluate("Object.entries(localStorage).find(([name]) => name.endsWith('plan.part'))[1]")
    (life,) = [text for name, text in json.loads(own) if name == "life"]
    assert 320 <= json.loads(life)["age"] < 330


def test_a_reading_of_a_run_that_cannot_be_is_told_and_nothing_moves(run):
    to(run, "Resin")
    steps(run, "actual").fill("much")
    steps(run, "actual").press("Enter")
    expect(steps(run, "wrong")).to_contain_text("type a number")
    expect(steps(run, "part")).to_have_text("Resin")
    steps(run, "actual").fill("77")
    steps(run, "actual").press("Enter")
    expect(steps(run, "part")).to_have_text("Hardener")
    expect(steps(run, "wrong")).to_be_hidden()


def test_a_tub_of_a_run_that_finds_no_answer_is_not_kept_and_one_that_was_kept_is_taken_back(run):
    to(run, "Peel ply off from")
    steps(run, "before").fill("500")
    steps(run, "after").fill("440")
    unanswered(run, "thicken")
    steps(run, "store").click()
    expect(steps(run, "wrong")).to_contain_text("No answer")
    assert run.evaluate(TUBS) == []
    run.evaluate("well()")
    steps(run, "store").click()
    expect(steps(run, "under")).to_contain_text("own")
    assert len(run.evaluate(TUBS)) == 1
    run.clock.run_for(REST)
    steps(run, "undo").click()
    expect(steps(run, "putty")).to_be_visible()
    expect(steps(run, "under")).not_to_contain_text("own")
    assert run.evaluate(TUBS) == []
    assert "batches" not in run.evaluate("localStorage['covemix.typed.pour'] ?? ''")


def test_a_clock_that_was_set_ahead_is_reckoned_with_once_there_is_an_answer(run):
    to(run, "Tool the cove")
    before = seconds(run)
    unanswered(run, "timer")
    run.clock.set_system_time(run.evaluate("Date.now() / 1000") + 180)
    run.clock.run_for(3000)
    assert seconds(run) > before - 60
    run.evaluate("well()")
    run.clock.run_for(1000)
    until(run, f"""() => {{
        const [minutes, seconds] = document.querySelector("[data-steps=left]").textContent.split(":");
        return 60 * minutes + Number(seconds) <= {before - 180};
    }}""")


def test_a_piece_is_given_away_whole_where_what_stands_there_anyway_is_not_told(phone, standing):
    phone.clock.install()
    begin(phone, standing.url, TWO)
    to(phone, "Clean the edges")
    steps(phone, "leave").click()
    unanswered(phone, '"hand":"plan"')
    phone.get_by_role("button", name="Give a piece to a helper").click()
    phone.locator("[data-notice=hand]").get_by_role("button", name="Chine").click()
    link = phone.locator("[data-notice=share]").get_by_role("textbox")
    expect(link).to_have_value(re.compile("pieces.1.name=Chine.*run.part=2"))


def test_a_tub_of_a_filler_typed_without_a_name_is_kept_as_pour_knows_it(phone, standing):
    phone.clock.install()
    phone.goto(standing.url + "/?thicken=yes&filler.doses=8:15:25:38:50&filler.density=1.3&filler.loose=0.3")
    phone.get_by_role("button", name="Use these").click()
    expect(phone.locator("[data-notice=link] [data-act]", has_text="Use these")).to_have_count(0)
    begin(phone, standing.url)
    to(phone, "Peel ply off from")
    steps(phone, "before").fill("500")
    steps(phone, "after").fill("440")
    steps(phone, "store").click()
    expect(steps(phone, "under")).to_contain_text("own")
    assert [tub["filler"] for tub in phone.evaluate(TUBS)] == ["typed"]

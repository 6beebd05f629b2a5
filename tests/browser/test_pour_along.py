"""Pour along: one step at a time, misreadings corrected, the clock, the builder's own batches."""
import re

import pytest
from playwright.sync_api import expect

from .conftest import figure, until

VOICE = """
window.told = [];
speechSynthesis.getVoices = () => [{ localService: false, lang: "en-GB" }, { localService: true, lang: "en-GB" }];
window.SpeechSynthesisUtterance = function (words) { this.words = words; };
localStorage["covemix.set.voice"] ??= "on";
speechSynthesis.speak = ({ words, voice }) => window.told.push([words, voice.localService]);
"""


def steps(page, name):
    return page.locator(f"[data-steps={name}]")


@pytest.fixture
def along(phone, standing):
    """A way into the view of the steps with the values of a link."""
    phone.add_init_script(VOICE)
    phone.clock.install()

    def start(link):
        phone.goto(standing.url + link)
        expect(figure(phone, "part_a")).to_have_count(1)
        expect(phone.locator("[data-status]")).not_to_be_empty()  # the engine has started
        phone.get_by_role("button", name="Pour step by step").click()
        expect(steps(phone, "step")).to_contain_text("Step 1 of")
        return phone

    return start


def tap(page, shows):
    """The next step, which then shows a figure."""
    steps(page, "tap").click()
    expect(steps(page, "figure")).to_have_text(shows)


def came_out(page, text, shows):
    steps(page, "actual").fill(text)
    steps(page, "actual").press("Enter")
    expect(steps(page, "figure")).to_have_text(shows)


def test_a_batch_with_two_misreadings_is_brought_into_ratio(along):
    """By hand, 10 % allowed, 100 : 50 : 25 by weight, 350 g: 220 for 200 asks for half as much, 330 in all; 340 read
    asks for 340 x 25 / 150 = 56.7 more, 396.7 in all, shown 397."""
    page = along("/?system.by_weight=100:50:25&system.densities=1.1:1.0:1.0&amount=350&tolerance=10")
    expect(steps(page, "figure")).to_have_text("0 g")
    tap(page, "200 g")
    came_out(page, "220", "330 g")
    came_out(page, "340", "397 g")
    tap(page, "3 min")
    assert page.evaluate("window.told[1][0]") == "Resin to two hundred grams"
    assert page.evaluate("window.told.at(-1)[0]").startswith("Stir for three minutes")
    assert page.evaluate("window.told.every(([, local]) => local)")
    steps(page, "undo").click()
    expect(steps(page, "figure")).to_have_text("397 g")


def test_it_goes_on_where_it_was_after_a_reload_and_the_clock_has_run_on(along):
    page = along("/?system.by_weight=345:98&amount=100")
    tap(page, "78 g")
    tap(page, "100 g")
    tap(page, "2 min")
    steps(page, "tap").click()
    expect(steps(page, "figure")).to_have_text(re.compile("2:00|1:5."))
    page.clock.run_for(30_000)
    expect(steps(page, "figure")).to_have_text(re.compile("1:[123]."))
    page.reload()
    expect(steps(page, "figure")).to_have_text(re.compile("1:[0123]."))
    page.clock.fast_forward(95_000)
    expect(steps(page, "figure")).to_have_text("0:00")
    steps(page, "undo").click()
    expect(steps(page, "figure")).to_have_text("2 min")
    steps(page, "undo").click()
    expect(steps(page, "figure")).to_have_text("100 g")


def test_beyond_tolerance_the_rescue_has_the_readings(along):
    page = along("/?system.by_weight=3:1&amount=240")
    tap(page, "180 g")
    tap(page, "240 g")
    came_out(page, "270", "360 g")  # 90 g of hardener take 270 g of resin, 90 more
    page.get_by_role("button", name="Rescue this batch").click()
    expect(figure(page, "add_a")).to_have_text("90 g")


def test_too_much_is_mended_in_the_step_and_stirring_waits_for_it(along):
    """By hand, 3 : 1: 90 g of hardener take 270 g of resin, 90 more; 30 g too much of that take 10 g of hardener."""
    page = along("/?system.by_weight=3:1&amount=240")
    tap(page, "180 g")
    tap(page, "240 g")
    came_out(page, "270", "360 g")
    expect(steps(page, "part")).to_have_text("Resin")
    expect(steps(page, "how")).to_have_text(re.compile(r"add 90\sg until scale shows"))
    expect(steps(page, "under")).to_contain_text("You cannot take any out")
    came_out(page, "390", "400 g")
    expect(steps(page, "part")).to_have_text("Hardener")
    tap(page, "3 min")
    expect(steps(page, "part")).to_have_text("Stir")
    for shows in ("400 g", "360 g", "240 g"):
        steps(page, "undo").click()
        expect(steps(page, "figure")).to_have_text(shows)
    expect(steps(page, "actual")).to_have_value("270 g")


def test_a_stroke_too_many_is_mended_in_strokes(along):
    page = along("/?system.by_volume=2:1&way=pumps&pumps.strokes=10:10&amount=90%20mL")
    expect(steps(page, "figure")).to_have_text(re.compile(r"6\sstrokes"))
    came_out(page, "7", re.compile(r"1\sstroke"))
    expect(steps(page, "part")).to_have_text("Resin")
    tap(page, re.compile(r"4\sstrokes"))
    expect(steps(page, "part")).to_have_text("Hardener")
    steps(page, "undo").click()
    expect(steps(page, "figure")).to_have_text(re.compile(r"1\sstroke"))


TWO_TAPS = """(apart) => new Promise((done) => {
  const tap = document.querySelector("[data-steps=tap]");
  tap.click();
  setTimeout(() => { tap.click(); done(); }, apart);
})"""


def test_two_taps_of_a_shaking_glove_are_one_step_and_pour_nothing(along):
    page = along("/?amount=240&system.by_weight=345:98")
    page.evaluate(TWO_TAPS, 150)
    expect(steps(page, "step")).to_contain_text("Step 2 of")
    page.wait_for_timeout(400)
    expect(steps(page, "step")).to_contain_text("Step 2 of")
    assert not page.evaluate("document.querySelector(\"[name='readings.0.shown']\")?.value")
    expect(steps(page, "tap")).to_be_enabled()
    tap(page, "240 g")


def test_what_was_left_goes_on_at_its_step_also_after_a_reload(along):
    page = along("/?amount=240&system.by_weight=345:98")
    tap(page, "187 g")
    came_out(page, "190", "244 g")
    steps(page, "leave").click()
    expect(page.locator("dialog.steps")).to_be_hidden()
    page.reload()
    on = page.get_by_role("button", name="Go on at step 3 of 5")
    expect(on).to_be_visible()
    expect(page.locator("dialog.steps")).to_be_hidden()
    on.click()
    expect(steps(page, "figure")).to_have_text("244 g")
    expect(on).to_be_hidden()
    steps(page, "undo").click()
    expect(steps(page, "figure")).to_have_text("187 g")
    expect(steps(page, "actual")).to_have_value("190 g")
    page.reload()
    expect(steps(page, "actual")).to_have_value("190 g")
    tap(page, "244 g")  # what stands there is what was poured


def test_a_reading_that_cannot_be_is_told_and_nothing_moves(along):
    page = along("/?amount=240&system.by_weight=3:1")
    tap(page, "180 g")
    tap(page, "240 g")
    steps(page, "actual").fill("150")
    steps(page, "actual").press("Enter")
    expect(steps(page, "wrong")).to_contain_text("more than the reading before")
    expect(steps(page, "figure")).to_have_text("240 g")


def test_six_own_batches_move_the_dose_and_can_be_removed(along):
    """By hand: each took 49.4 g for 100 g, 1.3 times the table's 38; the shrinkage of six leaves 1.292 of it."""
    page = along("/?amount=100&thicken=yes&system.by_weight=3:1&system.densities=1.1:1.0")
    taps = ("75 g", "100 g", "2 min")
    for batch in range(6):
        for shows in taps:
            tap(page, shows)
        steps(page, "tap").click()
        for step in (5, 6, 7):
            steps(page, "tap").click()
            expect(steps(page, "step")).to_contain_text(f"Step {step} of")
        steps(page, "before").fill("500")
        steps(page, "after").fill(str(450.6 + batch / 100))
        page.get_by_role("button", name="Save this batch").click()
        expect(steps(page, "part")).to_have_text("Done")
        steps(page, "tap").click()
        page.locator("[name='readings.0.shown']").evaluate("(field) => { field.value = ''; }")
        page.locator("[name='readings.1.shown']").evaluate("(field) => { field.value = ''; }")
        if batch < 5:
            page.get_by_role("button", name="Pour step by step").click()
            expect(steps(page, "step")).to_contain_text("Step 1 of")
    expect(figure(page, "own")).to_have_text("+29%")
    page.reload()
    expect(figure(page, "own")).to_have_text("+29%")
    page.get_by_text("Putty: filler, blend, position").click()
    for _ in range(6):
        row = page.locator("[data-group=batches] .group-rows > [data-row]").last
        if not row.evaluate("(row) => row.open"):
            row.locator("summary").first.click()
        row.get_by_role("button", name="Remove").click()
    expect(figure(page, "own")).to_have_count(0)
    page.reload()
    expect(figure(page, "own")).to_have_count(0)


def test_it_reads_only_what_is_asked_for_unless_chosen(along):
    along_page = along("/?system.by_weight=345:98&amount=100")
    assert along_page.evaluate("window.told.length") == 1
    along_page.evaluate("localStorage['covemix.set.voice'] = 'off'")
    tap(along_page, "78 g")
    assert along_page.evaluate("window.told.length") == 1
    along_page.get_by_role("button", name="Read aloud", exact=True).click()
    assert along_page.evaluate("window.told.at(-1)[0]") == "Resin to seventy-eight grams"


def test_a_voice_of_another_language_reads_nothing(along):
    along_page = along("/?system.by_weight=345:98&amount=100")
    along_page.get_by_role("button", name="Read aloud", exact=True).wait_for()
    along_page.evaluate("speechSynthesis.getVoices = () => [{ localService: true, lang: 'de_DE' }]; window.told = [];")
    tap(along_page, "78 g")
    expect(along_page.get_by_role("button", name="Read aloud", exact=True)).to_be_hidden()
    assert along_page.evaluate("window.told") == []


def test_a_finished_pour_is_kept_and_filled_in_at_the_log(along):
    page = along("/?system.by_weight=345:98&amount=100")
    for shows in ("78 g", "100 g", "2 min"):
        tap(page, shows)
    steps(page, "tap").click()
    steps(page, "tap").click()
    steps(page, "log").click()
    expect(steps(page, "tap")).to_be_hidden()
    page.get_by_role("button", name="Add seam, lot, outcome").click()
    expect(page.get_by_label("Actual readings")).to_have_value("78 g, 100 g")
    expect(page.locator("[data-form] :focus")).to_have_count(1)
    page.get_by_label("When").fill("2024-05-06T07:08")
    page.get_by_label("Which seam").fill("Keel")
    page.get_by_role("button", name="Save", exact=True).click()
    expect(page.locator(".entry")).to_contain_text(re.compile("6 May 2024, 07:08.*Keel", re.DOTALL))
    page.locator(".entry").get_by_role("button", name="Pour again").click()
    expect(page.get_by_label("Amount", exact=True)).to_have_value("100")
    page.locator("[data-keep-pour]").click()
    page.locator("[data-notice=log]").get_by_role("button", name="Undo").click()
    expect(page.locator("[data-notice=log]")).to_have_count(0)


BATCHES = """async () => {
  const { all } = await part("store/store.js");
  return (await all("log")).length;
}"""


def to_the_filler(page):
    """100 g of both parts are poured and stirred; the tub of filler comes onto the scale."""
    for shows in ("75 g", "100 g", "2 min"):
        tap(page, shows)
    for step in (4, 5, 6, 7):
        steps(page, "tap").click()
        if step > 4:
            expect(steps(page, "step")).to_contain_text(f"Step {step} of")


def keep_batch(page):
    """50 g of filler went in."""
    steps(page, "before").fill("500")
    steps(page, "after").fill("450")
    page.get_by_role("button", name="Save this batch").click()
    expect(steps(page, "part")).to_have_text("Done")


def test_of_two_putty_batches_that_are_alike_each_has_its_own_row(along):
    """The second is taken back: the first one's row stays, and is the one row there after a
    reload."""
    page = along("/?amount=100&thicken=yes&system.by_weight=3:1&system.densities=1.1:1.0")
    rows = page.locator("[data-group=batches] .group-rows > [data-row]")
    to_the_filler(page)
    for count in (1, 2):
        keep_batch(page)
        expect(rows).to_have_count(count)
        if count == 1:
            steps(page, "leave").click()
            page.reload()
            expect(rows).to_have_count(1)
            page.get_by_role("button", name="Pour step by step").click()
            expect(steps(page, "step")).to_contain_text("Step 1 of")
            for step in (2, 3, 4, 5, 6, 7):
                steps(page, "tap").click()
                if step == 4:
                    steps(page, "tap").click()
                expect(steps(page, "step")).to_contain_text(f"Step {step} of")
    steps(page, "leave").click()
    page.locator("[data-notice=batch]").get_by_role("button", name="Undo").click()
    expect(rows).to_have_count(1)
    assert page.evaluate(BATCHES) == 1
    page.reload()
    expect(rows).to_have_count(1)


def test_a_putty_batch_that_was_kept_is_taken_back_by_the_same_key_or_by_the_notice(along):
    page = along("/?amount=100&thicken=yes&system.by_weight=3:1&system.densities=1.1:1.0")
    to_the_filler(page)
    rows = page.locator("[data-group=batches] .group-rows > [data-row]")
    for way in ("key", "notice"):
        keep_batch(page)
        expect(rows).to_have_count(1)
        if way == "key":
            steps(page, "undo").click()
            expect(steps(page, "putty")).to_be_visible()
        else:
            steps(page, "leave").click()
            page.locator("[data-notice=batch]").get_by_role("button", name="Undo").click()
        expect(rows).to_have_count(0)
        expect(page.locator("[data-notice=batch]")).to_have_count(0)
        assert page.evaluate(BATCHES) == 0


OLD = """async () => {
  const { put } = await part("store/store.js");
  await put("log", { kind: "putty", when: 1, filler: "Wood flour", mixed: "100 g", before: "300 g", after: "262 g",
    came_out: "stands" });
}"""
FILLERS = """async () => {
  const { all } = await part("store/store.js");
  return (await all("log")).filter((one) => one.kind === "putty").map((one) => one.filler);
}"""


def test_putty_batches_are_known_by_a_key_and_by_the_label_that_an_earlier_build_kept(along):
    page, rows = with_a_batch(along)
    own, = page.evaluate(FILLERS)
    assert own == page.locator("[name=filler]").input_value()
    of_wood = 2 if own == "wood-flour" else 1
    page.evaluate(OLD)
    page.reload()
    page.get_by_text("Putty: filler, blend, position").click()
    page.locator("[name=filler]").select_option("wood-flour")
    expect(rows).to_have_count(of_wood)
    page.locator("[name=filler]").select_option("talc")
    expect(rows).to_have_count(0)
    # a page that calls it otherwise says by which label it was kept
    page.locator("[name=filler] option[value=wood-flour]").evaluate(
        "(one) => { one.dataset.was = one.textContent.trim(); one.textContent = 'Holzmehl'; }")
    page.locator("[name=filler]").select_option("wood-flour")
    expect(rows).to_have_count(of_wood)


def with_a_batch(along):
    """A form with one own putty batch in it, its fold open; and the rows of batches."""
    page = along("/?amount=100&thicken=yes&system.by_weight=3:1&system.densities=1.1:1.0")
    to_the_filler(page)
    keep_batch(page)
    steps(page, "leave").click()
    page.get_by_text("Putty: filler, blend, position").click()
    return page, page.locator("[data-group=batches] .group-rows > [data-row]")


def test_a_putty_row_that_was_removed_comes_back_with_its_entry_of_the_log(along):
    page, rows = with_a_batch(along)
    rows.first.get_by_role("button", name="Remove").click()
    until(page, f"async () => await ({BATCHES})() === 0")
    page.locator("[data-notice=row]").get_by_role("button", name="Undo").click()
    until(page, f"async () => await ({BATCHES})() === 1")
    page.reload()
    expect(rows).to_have_count(1)
    rows.first.locator("[data-row-remove]").dispatch_event("click")
    expect(page.locator("[data-notice=row]")).to_be_visible()
    page.get_by_role("link", name="Joint", exact=True).click()
    expect(page.locator("[data-notice=row]")).to_have_count(0)  # its Undo would write in a form that is gone


def test_undo_of_a_putty_row_brings_its_filler_back_and_the_next_choice_takes_it_away(along):
    """An edit ends what could be taken back: the filler that was chosen since is not thrown away."""
    page, rows = with_a_batch(along)
    filler = page.locator("[name=filler]")
    own = filler.input_value()
    other = filler.locator("option").nth(2).get_attribute("value")
    rows.first.get_by_role("button", name="Remove").click()
    page.locator("[data-notice=row]").get_by_role("button", name="Undo").click()
    expect(filler).to_have_value(own)
    expect(rows).to_have_count(1)
    until(page, f"async () => await ({BATCHES})() === 1")
    rows.first.get_by_role("button", name="Remove").click()
    expect(page.locator("[data-notice=row]")).to_have_count(1)
    filler.select_option(other)
    expect(page.locator("[data-notice=row]")).to_have_count(0)
    expect(rows).to_have_count(0)


def test_a_putty_batch_is_taken_back_after_its_row_was_filled_in_anew(along):
    """Another row is removed and brought back in between: the batch's figures then stand in a row of no entry."""
    page = along("/?amount=100&thicken=yes&system.by_weight=3:1&system.densities=1.1:1.0"
                 "&batches.0.mixed=100&batches.0.before=500&batches.0.after=460")
    rows = page.locator("[data-group=batches] .group-rows > [data-row]")
    to_the_filler(page)
    keep_batch(page)
    steps(page, "leave").click()
    expect(rows).to_have_count(2)
    rows.first.locator("[data-row-remove]").dispatch_event("click")
    expect(rows).to_have_count(1)
    page.locator("[data-notice=row]").get_by_role("button", name="Undo").click()
    expect(rows).to_have_count(2)
    page.locator("[data-notice=batch]").get_by_role("button", name="Undo").click()
    expect(rows).to_have_count(1)
    expect(page.locator("[name='batches.0.after']")).to_have_value("460")
    assert page.evaluate(BATCHES) == 0


DEAF_FOR_NOW = """() => {
  const post = Worker.prototype.postMessage;
  Worker.prototype.postMessage = () => {};
  window.well = () => { Worker.prototype.postMessage = post; };
}"""


def test_a_tap_that_finds_no_answer_is_no_step(phone, standing):
    """The step it left is marked meanwhile; it stands again where no answer comes, and the next tap is of that one."""
    phone.goto(standing.url)
    expect(figure(phone, "drawn_b")).to_be_visible()
    phone.locator("[data-along-go]").click()
    expect(steps(phone, "step")).to_contain_text("Step 1 of")
    shown = [steps(phone, name).text_content() for name in ("part", "figure")]
    phone.evaluate(DEAF_FOR_NOW)
    steps(phone, "tap").click()
    expect(steps(phone, "step")).to_contain_text("before your tap")
    assert steps(phone, "figure").evaluate("(one) => getComputedStyle(one).textDecorationLine") == "line-through"
    phone.evaluate("well()")
    expect(steps(phone, "wrong")).to_be_visible(timeout=30_000)
    expect(steps(phone, "step")).to_contain_text("Step 1 of")
    assert [steps(phone, name).text_content() for name in ("part", "figure")] == shown
    steps(phone, "tap").click()
    expect(steps(phone, "step")).to_contain_text("Step 2 of", timeout=30_000)

"""What comes between two steps, and between two screens: a way out, an answer that stays away, a figure that cannot be,
units that are switched, what was typed in another tab."""
from playwright.sync_api import expect

from .conftest import unanswered
from .test_kept_from_harm import AWAKE
from .test_pour_along import BATCHES, FILLERS, came_out, keep_batch, steps, tap, to_the_filler
from .test_run import HELPED, TWO

BY_WEIGHT = "/?system.by_weight=345:98&amount=100"
PUTTY = "/?amount=100&thicken=yes&system.by_weight=3:1&system.densities=1.1:1.0"
UNANSWERED = "No answer"
UNFOLDED = "for (const fold of document.querySelectorAll('details')) fold.open = true"
HELD_BACK = """() => {
  const post = Worker.prototype.postMessage, held = [];
  Worker.prototype.postMessage = function (...asked) { held.push(() => post.apply(this, asked)); };
  window.letGo = () => {
    Worker.prototype.postMessage = post;
    for (const one of held) one();
  };
}"""


def ready(page, url):
    """The engine has answered, and the first step is one tap away."""
    page.goto(url)
    expect(page.locator("[data-status]")).not_to_be_empty()
    return page


def begin(page, url):
    ready(page, url).get_by_role("button", name="Pour step by step").click()
    expect(steps(page, "step")).to_contain_text("Step 1 of")
    return page


def test_escape_leaves_the_steps_as_the_key_for_it_does(phone, standing):
    begin(phone, standing.url + BY_WEIGHT)
    tap(phone, "78 g")
    phone.keyboard.press("Escape")
    expect(phone.locator("dialog.steps")).to_be_hidden()
    phone.get_by_role("button", name="Go on at step 2 of 5").click()
    expect(steps(phone, "figure")).to_have_text("78 g")


def test_what_cannot_be_poured_says_so_and_no_step_opens(phone, standing):
    """The key is tapped on a loaded machine, before the answer that takes it away."""
    ready(phone, standing.url).evaluate(HELD_BACK)
    amount = phone.get_by_label("Amount", exact=True)
    amount.fill("zero")
    phone.get_by_role("button", name="Pour step by step").click()
    expect(phone.locator("dialog.steps")).to_be_visible()
    phone.evaluate("window.letGo()")
    expect(phone.locator("[data-notice=steps]")).to_contain_text("Amount: ")
    expect(phone.locator("dialog.steps")).to_be_hidden()
    amount.fill("240")
    phone.get_by_role("button", name="Pour step by step").click()
    expect(steps(phone, "step")).to_contain_text("Step 1 of")


def test_the_way_back_to_another_screen_lets_the_phone_sleep_and_the_steps_wait(phone, standing):
    phone.add_init_script(AWAKE)
    ready(phone, standing.url + "/joint/")
    phone.locator(".nav [data-to=pour]").click()
    phone.get_by_role("button", name="Pour step by step").click()
    expect(steps(phone, "step")).to_contain_text("Step 1 of")
    steps(phone, "tap").click()
    expect(steps(phone, "step")).to_contain_text("Step 2 of")
    phone.go_back()
    expect(phone.locator("main.screen-joint")).to_be_visible()
    phone.wait_for_function("() => window.asked.at(-1) === 'released'")
    phone.go_forward()
    expect(steps(phone, "step")).to_contain_text("Step 2 of")


def test_units_that_are_switched_in_another_tab_are_those_of_the_open_step(phone, standing):
    begin(phone, standing.url + "/?way=pumps&amount=240")
    expect(steps(phone, "under")).to_contain_text("mL a stroke")
    other = phone.context.new_page()
    other.goto(standing.url + "/joint/")
    other.get_by_text("Units", exact=True).first.click()
    other.locator("[name=units]").select_option("us")
    expect(steps(phone, "under")).to_contain_text("US fl oz a stroke")
    expect(steps(phone, "step")).to_contain_text("Step 1 of")


def test_units_are_switched_where_pour_was_only_passed_by(phone, standing):
    """Its tab was tapped, and another one before it was shown: its script is here, and its form is not."""
    ready(phone, standing.url + "/joint/")
    phone.evaluate("""() => {
      for (const screen of ["pour", "clock"]) document.querySelector(`.nav [data-to=${screen}]`).click();
    }""")
    expect(phone.locator("main.screen-clock [data-form].live")).to_be_attached()
    phone.get_by_text("Units", exact=True).first.click()
    phone.locator("[name=units]").select_option("us")
    expect(phone.locator("[data-form]")).to_have_attribute("data-units", "us")


def test_steps_that_open_without_an_answer_say_so_and_the_next_tap_asks_again(phone, standing):
    unanswered(ready(phone, standing.url))
    phone.get_by_role("button", name="Pour step by step").click()
    expect(steps(phone, "wrong")).to_contain_text(UNANSWERED)
    phone.evaluate("well()")
    steps(phone, "tap").click()
    expect(steps(phone, "step")).to_contain_text("Step 1 of")
    expect(steps(phone, "wrong")).to_be_hidden()


def test_a_step_back_without_an_answer_takes_nothing_out_of_the_cup(phone, standing):
    begin(phone, standing.url + BY_WEIGHT)
    tap(phone, "78 g")
    came_out(phone, "80", "103 g")
    unanswered(phone)
    steps(phone, "undo").click()
    expect(steps(phone, "wrong")).to_contain_text(UNANSWERED)
    expect(steps(phone, "figure")).to_have_text("103 g")
    expect(phone.locator("[name='readings.0.shown']")).to_have_value("80 g")
    phone.evaluate("well()")
    steps(phone, "undo").click()
    expect(steps(phone, "actual")).to_have_value("80 g")


def test_a_tub_that_cannot_be_is_told_and_nothing_is_kept(phone, standing):
    begin(phone, standing.url + PUTTY)
    to_the_filler(phone)
    steps(phone, "before").fill("500")
    steps(phone, "after").fill("600")
    steps(phone, "store").click()
    expect(steps(phone, "wrong")).to_contain_text("less than before")
    unanswered(phone)
    steps(phone, "after").fill("450")
    steps(phone, "store").click()
    expect(steps(phone, "wrong")).to_contain_text(UNANSWERED)
    assert phone.evaluate(BATCHES) == 0
    phone.evaluate("well()")
    steps(phone, "store").click()
    expect(steps(phone, "part")).to_have_text("Done")
    assert phone.evaluate(BATCHES) == 1
    expect(phone.locator("[data-group=batches] .group-rows > [data-row]")).to_have_count(1)


def test_readings_that_the_next_pour_starts_without_come_back(phone, standing):
    begin(phone, standing.url + BY_WEIGHT)
    tap(phone, "78 g")
    came_out(phone, "80", "103 g")
    tap(phone, "2 min")
    steps(phone, "leave").click()
    phone.get_by_label("Amount", exact=True).fill("200")
    shown = [phone.locator(f"[name='readings.{place}.shown']") for place in (0, 1)]
    for field in shown:
        expect(field).to_have_value("")
    phone.locator("[data-notice=anew]").get_by_role("button", name="Undo").click()
    expect(shown[0]).to_have_value("80 g")
    expect(shown[1]).to_have_value("103 g")
    expect(phone.get_by_label("Amount", exact=True)).to_have_value("200")


def test_a_pour_that_cannot_be_written_down_says_so(phone, standing):
    unanswered(ready(phone, standing.url))
    phone.locator("[data-keep-pour]").click()
    expect(phone.locator("[data-notice=log]")).to_contain_text(UNANSWERED)
    assert phone.evaluate(BATCHES) == 0


def test_batches_of_a_filler_typed_here_are_known_by_its_name(phone, standing):
    """Another one that is typed in its place has none of them."""
    begin(phone, standing.url + PUTTY + "&filler.name=Shed+dust&filler.doses=8:15:25:38:50&filler.density=1.3"
          "&filler.loose=0.3")
    to_the_filler(phone)
    keep_batch(phone)
    assert phone.evaluate(FILLERS) == ["Shed dust"]
    steps(phone, "leave").click()
    rows = phone.locator("[data-group=batches] .group-rows > [data-row]")
    expect(rows).to_have_count(1)
    phone.evaluate(UNFOLDED)
    for other in ("talc", ""):
        phone.locator("[name=filler]").select_option(other)
        expect(rows).to_have_count(0)
    for name, count in (("Yard dust", 0), ("Shed dust", 1)):
        phone.evaluate(UNFOLDED)
        phone.locator("[name='filler.name']").fill(name)
        phone.reload()
        expect(phone.locator("[name='filler.name']")).to_have_value(name)
        expect(rows).to_have_count(count)


WORKERLESS = "if (!sessionStorage.well) window.Worker = class { constructor() { throw new Error(); } };"


def test_a_helper_s_piece_that_no_calculator_can_read_is_kept_and_opens_with_the_next_page(phone, standing):
    phone.add_init_script(WORKERLESS)
    phone.goto(standing.url + TWO + "&" + HELPED.format(now=phone.evaluate("Date.now()") // 1000))
    expect(steps(phone, "wrong")).to_contain_text(UNANSWERED)
    phone.evaluate("sessionStorage.well = 'yes'")
    phone.reload()
    expect(steps(phone, "what")).to_have_text("Helper: Chine")


def test_the_air_of_the_day_stands_in_a_plan_that_was_begun_without_it(phone, standing):
    phone.goto(standing.url + "/plan/")
    phone.locator("[name=start]").fill("9:00")
    phone.wait_for_function("() => sessionStorage.getItem('covemix.typed.plan')")
    other = phone.context.new_page()
    other.goto(standing.url + "/plan/")
    other.locator("[name=temperature]").fill("18")
    other.locator("[name=temperature]").press("Tab")
    phone.reload()
    expect(phone.locator("[name=temperature]")).to_have_value("18 °C")
    expect(phone.locator("[name=start]")).to_have_value("9:00")
    phone.wait_for_function("() => sessionStorage.getItem('covemix.typed.plan').includes('18 °C')")


def test_a_test_cup_of_a_system_that_is_not_in_the_kit_stands_in_the_form(phone, standing):
    """The next one takes the place of the one before it, and each can be taken back."""
    ready(phone, standing.url + "/test-cup/")
    phone.get_by_label("Air temperature").fill("20")
    phone.evaluate(UNFOLDED)
    trials = phone.locator("[name='system.trials']")
    undo = phone.locator("[data-notice=lead]").get_by_role("button", name="Undo")
    kept = [""]
    for minutes in ("18", "12"):
        phone.get_by_label("Pulls strings at").fill(minutes)
        phone.get_by_role("link", name="Save with this system").click()
        expect(undo).to_be_visible()
        expect(trials).not_to_have_value(kept[-1])
        kept.append(trials.input_value())
    undo.click()
    expect(trials).to_have_value(kept[1])

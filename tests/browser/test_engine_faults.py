"""An engine that hangs or answers what cannot be read: nothing old stands as new, and nobody waits for good."""
import re

import pytest
from covemix.server.build import HOUSE
from playwright.sync_api import expect

from .conftest import POT, drawn, engine_with, figure

SCREENS = {  # a path with an answer, and a field there
    "/": "amount", "/joint/": "thickness", "/surface/": "coats", "/clock/?batch=300&air=20": "batch",
    "/plan/?temperature=20&start=9:00&pieces.0.length=4&pieces.0.putty=150&pieces.0.wet=90": "temperature",
    "/safety/": "air_temperature",
}
AWKWARD = "666"


def interpreter(answers, where=AWKWARD):
    """The app with an interpreter that does something of its own where a question holds this text."""
    script = (HOUSE / "webui/js/engine/interpreter.js").read_text(encoding="utf-8")
    own = f"if (text.includes('{where}')) {{ {answers} }}"
    script = script[:script.index("return { call")] + (
        "return { call(text) { " + own + " return answer(python.ask(...given(text))); }, sweep: python.sweep };\n};\n")
    return engine_with(script)


@pytest.fixture
def odd(served):
    def start(answers):
        served.stop()
        served.start(wrap=interpreter(answers))
        return served.url

    return start


def field(phone, path):
    return phone.locator(f"[name='{SCREENS[path]}']")


def crossed_out(phone):
    return phone.evaluate("""() => [...document.querySelectorAll(".line-text")].filter((one) => one.checkVisibility())
      .map((one) => getComputedStyle(one).textDecorationLine)""")


# its first answer is spoken: on a slow machine the mark may come before it
AT_REST = """() => {
  const { textContent } = document.querySelector("[data-status]");
  return textContent && !textContent.startsWith("These results are old");
}"""


@pytest.mark.parametrize("path", SCREENS)
def test_old_figures_are_marked_in_words_within_a_third_of_a_second(phone, odd, path):
    phone.clock.install(time=0)
    phone.goto(odd("for (;;);") + path)
    line = phone.locator("[data-move] .line-text").first
    expect(line).to_be_visible()
    phone.wait_for_function(AT_REST)
    phone.clock.pause_at(3_600)
    phone.evaluate("""(name) => {
      const field = document.querySelector(`[name="${name}"]`);
      field.value = "666";
      field.dispatchEvent(new Event("input", { bubbles: true }));
    }""", SCREENS[path])
    mark = phone.locator("[data-old-mark]")
    assert mark.locator("span").is_hidden()  # nothing flickers: most answers are there by now
    phone.clock.run_for(299)
    expect(mark).to_have_text("Old results: calculating")
    expect(mark.locator("span")).to_be_visible()
    assert "These results are old" in phone.locator("[data-status]").text_content()
    assert set(crossed_out(phone)) == {"line-through"}


def test_a_hung_engine_is_started_anew_within_ten_seconds_and_says_so(phone, odd):
    """Ten seconds of the page's own clock: how busy this machine is decides nothing."""
    phone.clock.install(time=0)
    phone.goto(odd("for (;;);") + "/?amount=200")
    phone.wait_for_function(AT_REST)  # the engine's own figure: the server's page has it before any engine
    expect(figure(phone, "drawn_b")).to_have_text(drawn(200))
    amount = phone.get_by_label("Amount", exact=True)
    phone.clock.pause_at(3_600)
    amount.fill(AWKWARD)
    phone.clock.run_for(9_000)
    expect(phone.locator("[data-notice=hung]")).to_contain_text("restarted")
    phone.clock.resume()
    amount.fill("300")
    expect(figure(phone, "drawn_b")).to_have_text(drawn(300))
    expect(phone.locator("[data-old-mark] span")).to_be_hidden()  # the mark itself has no height to be seen by
    assert set(crossed_out(phone)) == {"none"}


def test_an_old_answer_leads_nowhere(phone, odd):
    phone.goto(odd("for (;;);") + "/joint/")
    lead = phone.locator("[data-lead]").first
    expect(lead).to_be_visible()
    phone.locator("[name=thickness]").fill(AWKWARD)
    expect(phone.locator("[data-old-mark] span")).to_be_visible()
    lead.click()
    expect(phone.locator("[data-notice=old]")).to_be_visible()
    assert phone.url.split("?")[0].endswith("/joint/")
    phone.locator("[name=thickness]").fill("6")  # the engine is started anew for it, and nobody has to wait any more
    expect(phone.locator("[data-notice=old]")).to_be_hidden()


def test_a_tap_before_the_answer_waits_for_it_and_is_of_what_is_typed(phone, odd):
    phone.goto(odd("const from = Date.now(); while (Date.now() - from < 500);") + "/clock/?batch=300&air=20")
    expect(phone.locator("[data-move=heat] [data-lead]").first).to_be_visible()
    phone.wait_for_function(AT_REST)
    phone.evaluate(TWICE, ["batch", AWKWARD, "[data-move=heat] [data-lead]"])
    expect(phone.locator("article.pot")).to_contain_text(f"{AWKWARD} g")
    assert phone.evaluate(POTS) == 1
    expect(phone.locator("[data-notice=old]")).to_have_count(0)


POTS = "async () => (await (await part('store/store.js')).all('pots')).length"
TWICE = """([name, text, lead]) => {
  const field = document.querySelector(`[name="${name}"]`);
  if (text) {
    field.value = text;
    field.dispatchEvent(new Event("input", { bubbles: true }));
  }
  const link = document.querySelector(lead);
  link.click();
  link.click();
}"""


def test_a_tap_right_after_a_key_press_opens_nothing_old_and_a_second_one_neither(phone, odd):
    """The answer is old from the key press on, not only once it is marked so."""
    phone.goto(odd("for (;;);") + "/clock/?batch=300&air=20")
    expect(phone.locator("[data-move=heat] [data-lead]").first).to_be_visible()
    phone.wait_for_function(AT_REST)
    phone.evaluate(TWICE, ["batch", AWKWARD, "[data-move=heat] [data-lead]"])
    expect(phone.locator("[data-notice=old]")).to_have_count(1)
    expect(phone.locator("[data-old-mark] span")).to_be_visible()
    assert phone.evaluate(POTS) == 0
    phone.locator("[name=batch]").fill("310")
    expect(phone.locator("[data-notice=old]")).to_have_count(0)
    phone.locator("[data-move=heat] [data-lead]").first.click()
    expect(phone.locator("article.pot")).to_contain_text("310 g")


def test_a_finger_that_bounces_starts_one_pot_keeps_one_pour_and_takes_one_joint(phone, standing):
    phone.goto(standing.url + "/clock/?batch=300&air=20")
    expect(phone.locator("[data-move=heat] [data-lead]").first).to_be_visible()
    phone.wait_for_function(AT_REST)
    phone.evaluate(TWICE, ["batch", "", "[data-move=heat] [data-lead]"])
    expect(phone.locator("article.pot")).to_have_count(1)
    phone.goto(standing.url)
    expect(phone.get_by_role("button", name="Log this batch")).to_be_visible()
    phone.wait_for_function(AT_REST)
    phone.evaluate(TWICE, ["amount", "", "[data-keep-pour]"])
    expect(phone.locator("[data-notice=log]")).to_be_visible()
    phone.goto(standing.url + "/joint/")
    expect(phone.locator("[data-lead]", has_text="Add to boat")).to_be_visible()
    phone.wait_for_function(AT_REST)
    phone.evaluate(TWICE, ["thickness", "", "[data-lead*='adds']"])
    expect(phone.locator("[data-screen=boat] [data-row]").first).to_be_attached()
    assert phone.evaluate("""async () => (await part("form/memory.js")).recall("boat").map(([name]) => name)
      .filter((name) => name.endsWith(".kind"))""") == ["joints.0.kind"]
    for store, count in (("pots", 1), ("log", 1)):
        assert phone.evaluate(POTS.replace("'pots'", repr(store))) == count


def test_twelve_answers_of_sixteen_come_late_and_no_figure_stands_for_another(phone, served):
    """Each figure that stands unmarked at any moment is of what is typed then: the best of sixteen proves nothing.

    An answer to an amount that ends on 0 or 5 is there at once, any other a second and a half late."""
    slow = """if (!/"amount","\\d*[05]"/.test(text)) { const from = Date.now(); while (Date.now() - from < 1500); }"""
    served.stop()
    served.start(wrap=interpreter(slow, '"screen"'))
    phone.goto(served.url)
    phone.wait_for_function(AT_REST)
    wrong = phone.evaluate("""async (wanted) => {
      const amount = document.querySelector("[name=amount]");
      const main = document.querySelector("[data-main]");
      const wrong = [];
      const look = () => {
        const figure = document.querySelector("[data-line=drawn_b] .line-text");
        const shown = figure?.checkVisibility() ? figure.textContent : "";
        const marked = "old" in main.dataset;
        if (shown && !marked && since > 400 && shown !== wanted[amount.value]) wrong.push([amount.value, shown]);
      };
      let since = 0;
      for (const grams of Object.keys(wanted)) {
        amount.value = grams;
        amount.dispatchEvent(new Event("input", { bubbles: true }));
        for (since = 0; since < 700; since += 50) {
          await new Promise((next) => { setTimeout(next, 50); });
          look();
        }
      }
      return wrong;
    }""", {str(grams): drawn(grams) for grams in range(200, 216)})
    assert wrong == []


@pytest.mark.parametrize("path", ["/", "/boat/"])
def test_what_the_server_answered_is_not_old_while_the_engine_is_on_its_way(phone, served, path):
    served.stop()
    served.start(wrap=interpreter("for (;;);", ""))  # it never answers
    phone.goto(served.url + path)
    expect(phone.locator("[data-form].live")).to_be_attached()
    phone.wait_for_timeout(1000)  # the mark comes within a third of one
    expect(phone.locator("[data-old-mark]")).to_be_hidden()
    if path == "/boat/":
        phone.locator("[data-lead]").first.click()
        expect(phone).to_have_url(re.compile("/plan/"))


def test_normal_key_presses_show_no_mark(phone, standing):
    """None but of an answer that was really late, as on a machine that is busy with other things."""
    phone.goto(standing.url)
    expect(figure(phone, "drawn_b")).to_be_visible()
    phone.evaluate("""() => {
      window.early = [];
      let pressed = 0;
      addEventListener("input", () => { pressed = performance.now(); }, { capture: true });
      const mark = document.querySelector("[data-old-mark]");
      new MutationObserver(() => {
        if (!mark.hidden) window.early.push(performance.now() - pressed);
      }).observe(mark, { attributes: true });
    }""")
    amount = phone.get_by_label("Amount", exact=True)
    for grams in ("3", "32", "321", "32"):
        amount.fill(grams)
        expect(figure(phone, "drawn_b")).to_have_text(drawn(grams))
    assert all(late > 250 for late in phone.evaluate("window.early"))


@pytest.mark.parametrize("answers", [
    "return '{ half of';", "return 'null';", "return '3';", "return '[]';", "return '{}';",
    "return '{\"answers\": [[\"measure\", 5]]}';", "return undefined;"])
def test_an_answer_that_cannot_be_read_is_an_error_with_its_name(phone, odd, answers):
    phone.goto(odd(answers) + "/?amount=200")
    expect(figure(phone, "drawn_b")).to_have_text(drawn(200))
    amount = phone.get_by_label("Amount", exact=True)
    amount.fill(AWKWARD)
    told = "the calculator's answer could not be read"
    expect(phone.locator("[data-error=amount]")).to_contain_text(told, timeout=7000)  # sooner than patience ends
    expect(figure(phone, "drawn_b")).to_be_hidden()
    amount.fill("300")
    expect(figure(phone, "drawn_b")).to_have_text(drawn(300))


ASK = """async (question) => {
  const { ask } = await part("engine/engine.js");
  return ask(question).then((got) => JSON.stringify(got), (error) => error.message);
}"""


def test_whoever_asks_is_told_that_an_answer_cannot_be_read(phone, odd):
    phone.goto(odd("return '{ half of';"))
    expect(figure(phone, "drawn_b")).to_be_visible()
    told = phone.evaluate(ASK, {"move": "measure", "typed": {"amount": AWKWARD}})
    assert told == "the calculator's answer could not be read"


SENT = """
window.sent = [];
const post = Worker.prototype.postMessage;
Worker.prototype.postMessage = function (message, ...more) {
  if (message.text) window.sent.push(message.text.length);
  return post.call(this, message, ...more);
};
"""


@pytest.mark.parametrize(("path", "name"), [("/", "amount"), ("/joint/", "thickness"), ("/", "system.timings"),
                                            ("/boat/", "joints.0.name")])
def test_three_megabytes_in_a_field_are_refused_before_they_cost_anything(phone, standing, path, name):
    """The engine is sent no more of them than it takes to say no, and nothing of them is kept."""
    phone.add_init_script(SENT)
    phone.goto(standing.url + path)
    phone.wait_for_function("() => document.querySelector('[data-status]').textContent")
    phone.evaluate("""(name) => {
      const field = document.querySelector(`[name="${name}"]`);
      field.value = "1".repeat(3_000_000);
      field.dispatchEvent(new Event("input", { bubbles: true }));
    }""", name)
    expect(phone.locator(f"[data-error='{name}']")).to_contain_text("too long")
    assert 0 < max(phone.evaluate("window.sent")) < 30_000
    assert phone.evaluate("JSON.stringify(localStorage).length") < 100_000


def test_three_megabytes_from_anywhere_are_refused_in_the_engines_words(phone, standing):
    phone.add_init_script(SENT)
    phone.goto(standing.url)
    got = phone.evaluate("""async () => {
      const { ask } = await part("engine/engine.js");
      return ask({ move: "ratio", pairs: [["amount", "1".repeat(3_000_000)]] });
    }""")
    assert [(error["field"], "too long" in error["message"]) for error in got["errors"]] == [("amount", True)]
    assert 0 < max(phone.evaluate("window.sent")) < 30_000


DECORATION = "(one) => getComputedStyle(one).textDecorationLine"


def hang(phone, name):
    phone.evaluate("""(name) => {
      const field = document.querySelector(`[name="${name}"]`);
      field.value = "666";
      field.dispatchEvent(new Event("input", { bubbles: true }));
    }""", name)


def test_a_running_pots_minutes_do_not_stand_unmarked(phone, odd):
    phone.goto(odd("for (;;);") + "/clock/")
    expect(phone.locator("[data-unanswered]")).to_have_count(0)
    assert phone.evaluate(POT)
    minutes = phone.locator(".pot-minutes")
    expect(minutes).to_be_visible()
    assert minutes.evaluate(DECORATION) == "none"
    hang(phone, "batch")
    expect(phone.locator(".pot-trouble")).to_contain_text("These minutes are old", timeout=20_000)
    assert minutes.evaluate(DECORATION) == "line-through"
    phone.locator("[name=batch]").fill("300")
    expect(phone.locator(".pot-trouble")).to_be_hidden(timeout=25_000)  # the engine is started anew
    assert minutes.evaluate(DECORATION) == "none"

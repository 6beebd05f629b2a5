"""Plan in a real browser: from the boat to a day under way."""
import re
from datetime import datetime

import pytest
from covemix.shared.door import moves
from covemix.shared.forms import links
from playwright.sync_api import expect

from .conftest import figure, fresh, unanswered

PLAN = "/plan/?temperature=20&start=9:00" + "".join(
    f"&pieces.{place}.name=Seam+{place}&pieces.{place}.length=4&pieces.{place}.putty=150&pieces.{place}.wet=90"
    for place in range(3))
AT = """([hours, minutes]) => {
    const fixed = new Date();
    fixed.setHours(hours, minutes, 0, 0);
    const ahead = fixed.getTime() - Date.now();
    const Real = Date;
    window.Date = class extends Real {
        constructor(...given) { super(...(given.length ? given : [Real.now() + ahead])); }
    };
    window.Date.now = () => Real.now() + ahead;
}"""


@pytest.fixture
def plan(phone, standing):
    phone.goto(standing.url + PLAN)
    phone.get_by_role("button", name="Use these").click()
    expect(figure(phone, "batches")).to_have_text(re.compile(r"\d+ batch"))
    return phone


def test_the_boat_s_seams_become_the_pieces(phone, standing):
    phone.goto(standing.url + "/plan/")
    phone.get_by_label("Wood and air temperature").fill("20")
    phone.get_by_role("button", name="Use the boat").click()
    expect(figure(phone, "batches")).to_have_text(re.compile(r"\d+ batch"))
    expect(phone.locator("[data-figure=plan] svg")).to_be_visible()
    phone.locator("[data-notice=lead]").get_by_role("button", name="Undo").click()
    expect(figure(phone, "batches")).to_be_hidden()


def test_a_boat_with_nothing_to_lay_leaves_the_pieces_and_says_so(plan, standing):
    """A surface that is only faired is in no plan."""
    plan.goto(standing.url + "/boat/?joints=none&surfaces.0.work=fair&surfaces.0.length=2&surfaces.0.widths=0.4")
    plan.get_by_role("button", name="Use these").click()
    expect(plan.locator("[data-notice=link]").get_by_role("button", name="Undo")).to_be_visible()
    plan.goto(standing.url + "/plan/")
    plan.get_by_role("button", name="Use the boat").click()
    expect(plan.locator("[data-notice=no-boat]")).to_contain_text("no seams to lay")
    expect(plan.locator("[name='pieces.2.name']")).to_have_value("Seam 2")


def test_without_an_answer_the_pieces_stay_and_the_page_says_so(plan):
    unanswered(plan)
    plan.get_by_role("button", name="Use the boat").click()
    expect(plan.locator("[data-notice=unanswered]")).to_contain_text("No answer")
    expect(plan.locator("[name='pieces.2.name']")).to_have_value("Seam 2")


def test_the_boat_leads_here(phone, standing):
    phone.goto(standing.url + "/boat/")
    phone.get_by_role("link", name="Plan the insides").click()
    phone.get_by_label("Wood and air temperature").fill("20")
    expect(figure(phone, "batches")).to_have_text(re.compile(r"\d+ batch"))


def test_a_step_is_told_with_one_tap_and_the_minute_it_is(plan):
    plan.add_init_script(f"({AT})([9, 5])")  # after the reload too: before nine the day has not begun
    plan.reload()
    expect(figure(plan, "batches")).to_have_text(re.compile(r"\d+ batch"))
    plan.get_by_role("link", name="Start the day").click()
    plan.get_by_role("link", name="Batch 1: Putty mixed and bagged").click()
    expect(plan.locator("[name='done.0.minute']")).to_have_value("5")
    expect(plan.get_by_role("link", name="Batch 1: Bag empty")).to_be_visible()
    plan.reload()
    expect(plan.get_by_role("link", name="Batch 1: Bag empty")).to_be_visible()


def test_a_day_that_begins_too_late_says_so(phone, standing):
    """A batch that would not be finished in time should not be started any more."""
    phone.goto(standing.url + PLAN + "&finish=11:30")
    phone.get_by_role("button", name="Use these").click()
    phone.evaluate(AT, [11, 5])
    phone.get_by_role("link", name="Start the day").click()
    expect(phone.locator("[data-line=do_not_start]").first).to_contain_text("would not be laid in time")


KEPT_WITH_POTS = """async () => {
    const { all } = await part("store/store.js");
    return (await all("pots")).map((pot) => Object.fromEntries(pot.beside)["timings.0.after"]);
}"""


def test_own_timings_of_a_plan_are_questioned_and_go_with_its_pots(plan):
    plan.get_by_text("Usable times", exact=True).first.click()
    plan.get_by_label("Own timings besides the system").fill("12 min 300 g bag 20 °C")
    expect(plan.locator("[data-line=own_typed]")).to_be_visible()
    plan.get_by_role("link", name="Start the clock of batch 1").click()
    expect(plan.locator(".pot-name")).to_contain_text("Batch 1")
    assert plan.evaluate(KEPT_WITH_POTS) == ["720 s"]


def test_a_batch_leads_to_its_pour_and_to_its_clock(plan):
    plan.get_by_role("link", name="Start the clock of batch 1").click()
    expect(plan.locator(".pot-name")).to_contain_text("Batch 1")
    expect(plan.locator(".pot-next")).to_contain_text("Putty mixed and bagged")
    plan.get_by_role("button", name="Done: Putty mixed").click()
    expect(plan.locator(".pot-next")).to_contain_text("Bag empty")


STEPS = ("putty mixed and bagged", "bag empty", "cove tooled", "edges clean", "wet-out resin mixed", "tape wet out",
         "tape laid", "air rolled out", "peel ply down")


def test_a_laid_batch_is_in_the_log_and_teaches_the_rates(phone, standing):
    """Each step told with a tap, some minutes apart; the log keeps them, kit and plan offer what is learned."""
    piece = "&pieces.0.name=Keel&pieces.0.length=1.5&pieces.0.putty=150&pieces.0.wet=90"
    phone.goto(standing.url + "/plan/?temperature=15&start=9:00&crew.name=Ann&crew.hands=1" + piece)
    phone.get_by_role("button", name="Use these").click()
    phone.evaluate(AT, [9, 5])
    phone.get_by_role("link", name="Start the day").click()
    for place, step in enumerate(STEPS):
        phone.evaluate(AT, [9, 5 + 4 * place])
        phone.locator("[name='pieces.0.name']").dispatch_event("input")
        tap = phone.get_by_role("link", name=f"Batch 1: {step}")
        expect(tap).to_have_attribute("data-lead", re.compile(f'"{5 + 4 * place}"'))
        tap.click()
    expect(phone.get_by_role("button", name="Use my rates")).to_be_visible()
    phone.goto(standing.url + "/log/")
    expect(phone.locator(".entry")).to_contain_text("Batch 1 of the plan")
    expect(phone.locator(".entry")).to_contain_text("1.50 m laid")
    phone.goto(standing.url + "/plan/")
    phone.get_by_role("button", name="Use my rates").click()
    expect(phone.locator("[data-line=rates]")).to_contain_text("from 1 own batch")
    phone.goto(standing.url + "/kit/")
    phone.get_by_role("region", name="People").get_by_role("button", name="Add").click()
    phone.locator("[name='people.name']").fill("Ann")
    phone.locator("[name='people.hands']").fill("1")
    phone.get_by_role("button", name="Save", exact=True).click()
    phone.get_by_role("button", name="Use my rates").click()
    expect(phone.locator("[data-notice=kit]")).to_contain_text("Ann now has its own rates")
    expect(phone.get_by_role("button", name="Use my rates")).to_be_hidden()
    phone.locator("[data-notice=kit]").get_by_role("button", name="Undo").click()
    phone.get_by_role("button", name="Use my rates").click()
    expect(phone.get_by_role("button", name="Use my rates")).to_be_hidden()
    phone.goto(standing.url + "/plan/")
    phone.get_by_label("People", exact=True).select_option(label="Ann")
    expect(phone.locator("[data-line=rates]")).to_contain_text("from 1 own batch")
    phone.evaluate("""async () => {
        const { all, put } = await part("store/store.js");
        const [ann] = await all("kit");
        const typed = JSON.parse(localStorage.getItem("covemix.typed.plan"));
        localStorage.setItem("covemix.typed.plan", JSON.stringify(typed.filter(([name]) => !name.startsWith("crew"))));
        return put("kit", { ...ann, typed: { name: "Ann", hands: "1" } });
    }""")
    phone.goto(standing.url + "/plan/")
    phone.get_by_label("People", exact=True).select_option(label="Ann")
    expect(phone.locator("[data-line=rates]")).not_to_contain_text("own batch")
    phone.get_by_role("button", name="Use my rates").click()
    expect(phone.locator("[data-line=rates]")).to_contain_text("from 1 own batch")
    phone.locator("[data-notice=lead]").get_by_role("button", name="Undo").click()
    expect(phone.locator("[data-line=rates]")).not_to_contain_text("own batch")


def test_the_boat_s_coats_are_a_day_on_a_phone_as_on_a_server(phone, standing):
    phone.goto(standing.url + "/boat/")
    phone.get_by_role("link", name="Plan coats and cloth").click()
    phone.get_by_label("Wood and air temperature").fill("18")
    expect(figure(phone, "layer_next")).to_contain_text("08:00")
    expect(phone.locator("[data-run-go]")).to_be_hidden()  # no seam is to be laid
    points = [("6:00", "12"), ("14:00", "24"), ("22:00", "14")]
    pairs = [["temperature_is", "points"], ["surfaces.0.area", "6.5"], ["surfaces.1.work", "sheathe"],
             ["surfaces.1.wet", "300"], ["surfaces.1.area", "3"], ["finish", "19:00"], ["pieces.0.length", "3"],
             ["pieces.0.putty", "90"], ["pieces.0.wet", "60"]]
    pairs += [[f"points.{place}.{name}", text] for place, row in enumerate(points)
              for name, text in zip(("at", "temperature"), row, strict=True)]
    pairs += [["running", "yes"], ["clock", "10:00"], ["today", "2026-02-28"], ["day", "2026-02-27"]]  # of 28 days
    pairs += [[f"coated.{place}.{name}", text] for place, row in enumerate((("1", "1", "mix", "250"),
                                                                           ("1", "1", "on", "300")))
              for name, text in zip(("face", "coat", "step", "minute"), row, strict=True)]
    there = phone.evaluate("""async (pairs) => {
      const { ask } = await part("engine/engine.js");
      return ask({ move: "plan", pairs });
    }""", pairs)
    here = moves.answer("plan", links.tree(pairs))
    assert there["errors"] == here["errors"] == []
    assert there["leads"] == here["leads"] and "Sunday" in str(here["lines"])
    assert [[line[part] for part in ("name", "label", "text", "rough")] for line in there["lines"]] == [
        [line[part] for part in ("name", "label", "text", "rough")] for line in here["lines"]]
    assert len([1 for line in here["lines"] if line["name"].startswith("layer_")]) > 5


COATS = "/plan/?temperature=20&surfaces.0.name=Deck&surfaces.0.area=6.5"


@pytest.mark.parametrize(("zone", "now"), [
    ("Pacific/Kiritimati", "2026-11-27T09:05:00+14:00"), ("Pacific/Pago_Pago", "2026-11-27T20:05:00-11:00")])
def test_a_coat_is_ticked_off_and_the_day_of_the_next_is_named(chromium, standing, zone, now):
    """Where the date is not the one in Greenwich: Friday on the wall here. The next day is the phone's own too."""
    with fresh(chromium, timezone_id=zone) as (phone, _):
        phone.clock.install(time=datetime.fromisoformat(now))
        hours = "&start=8:00&finish=18:00" if "09:05" in now else "&start=20:00&finish=23:30"
        phone.goto(standing.url + COATS + hours)
        phone.get_by_role("button", name="Use these").click()
        line = phone.locator("[data-line=layer_next]").first
        expect(line).to_contain_text("coat 1 of 3")
        expect(line).to_contain_text("from 22:11 next day" if "09:05" in now else "from 10:11 on day 3")
        phone.get_by_role("link", name="Start the day").click()
        phone.get_by_role("link", name="Deck, coat 1 of 3: mixed").click()
        expect(phone.locator("[name='coated.0.minute']")).to_have_value("65" if "09:05" in now else "5")
        phone.get_by_role("link", name="Deck, coat 1 of 3: done").click()
        expect(line).to_contain_text("coat 2 of 3")
        expect(phone.locator("[data-line=layers_end]").first).to_contain_text(
            "on Sunday" if "09:05" in now else "on Tuesday")
        phone.locator("[data-notice=lead]").get_by_role("button", name="Undo").click()
        expect(phone.get_by_role("link", name="Deck, coat 1 of 3: done")).to_be_visible()
        phone.get_by_role("link", name="Deck, coat 1 of 3: done").click()
        expect(line).to_contain_text("coat 2 of 3")
        phone.clock.fast_forward("13:00:00")  # the next morning: nothing was told since
        phone.reload()
        expect(line).to_contain_text("on Sunday to")


def test_a_coat_leads_to_its_pour_by_one_tap(phone, standing):
    phone.goto(standing.url + COATS)
    phone.get_by_role("button", name="Use these").click()
    phone.get_by_role("link", name="Deck, coat 1 of 3: Pour one pot").click()
    expect(phone.locator("[name=amount]")).to_have_value("299 g")
    expect(phone.locator("[name=air]")).to_have_value(re.compile("^20"))

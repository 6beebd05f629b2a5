"""Pour in a real browser: what a builder types and reads."""
import pytest
from playwright.sync_api import expect

from .conftest import drawn, figure, with_a_scale


@pytest.fixture
def pour(phone, standing):
    phone.goto(standing.url)
    return phone


@pytest.fixture
def again(same_phone, standing):
    """Pour as it stands at first, on a page that was opened before."""
    if not same_phone.url.startswith(standing.url):
        same_phone.goto(standing.url)
    same_phone.get_by_label("Amount", exact=True).fill("240")
    expect(figure(same_phone, "drawn_b")).to_have_text(drawn(240))
    return same_phone


def test_the_first_answer_stands_before_any_script_runs(chromium, standing):
    context = chromium.new_context(java_script_enabled=False)
    page = context.new_page()
    page.goto(standing.url + "/?amount=200&system=2-1")
    expect(figure(page, "drawn_b")).to_have_text(drawn(200, system="2-1"))
    expect(page.get_by_label("Amount", exact=True)).to_have_value("200")
    page.get_by_label("Amount", exact=True).fill("300")
    page.get_by_role("button", name="Work it out").click()
    expect(figure(page, "drawn_b")).to_have_text(drawn(300, system="2-1"))
    context.close()


def test_each_key_press_gives_a_new_answer(pour):
    pour.get_by_label("Amount", exact=True).fill("300")
    expect(figure(pour, "drawn_b")).to_have_text(drawn(300))
    pour.get_by_role("radio", name="Pumps").check()
    expect(figure(pour, "strokes_a")).to_have_text("21 strokes")


@pytest.mark.parametrize("typed", ["1,5", "1.5", " 1,5 "])
def test_a_comma_is_a_point(again, typed):
    again.get_by_label("Amount", exact=True).fill(typed + " kg")
    expect(figure(again, "drawn_b")).to_have_text(drawn(1500))


def test_a_thousands_comma_is_said_as_it_was_understood(again):
    again.get_by_label("Amount", exact=True).fill("1,000")
    expect(again.locator("[data-understood=amount]")).to_have_text(
        "understood as 1 g (decimals after the comma). For thousands type 1000.")


@pytest.mark.parametrize("typed", ["1,500.2.3", "zero", "0", "-5", "NaN", "1e400", "٣"])
def test_what_is_no_amount_is_refused_beside_its_field_and_stays(again, typed):
    amount = again.get_by_label("Amount", exact=True)
    amount.fill(typed)
    expect(again.locator("[data-error=amount]")).to_be_visible()
    expect(again.locator("[data-error=amount]")).to_contain_text("Amount: ")
    expect(amount).to_have_value(typed)
    expect(figure(again, "drawn_b")).to_be_hidden()  # no stale answer stands
    amount.fill("240")
    expect(again.locator("[data-error=amount]")).to_be_hidden()
    expect(figure(again, "drawn_b")).to_have_text(drawn(240))


def test_the_rest_follows_what_the_scale_really_showed(phone, standing):
    with_a_scale(phone)
    phone.goto(standing.url)
    pour = phone
    pour.get_by_text("What was actually poured", exact=True).click()
    pour.locator("[name='readings.0.shown']").fill("200")
    expect(figure(pour, "reading_b")).to_have_text("257 g")


def test_us_units_are_chosen_once(pour):
    pour.get_by_text("Units", exact=True).first.click()
    pour.locator("[name=units]").select_option("us")
    pour.get_by_label("Amount", exact=True).fill("8")
    expect(figure(pour, "mixed_mass")).to_have_text("8.00 oz")
    pour.reload()
    expect(figure(pour, "mixed_mass")).to_have_text("8.00 oz")


def test_an_engine_that_breaks_says_so_at_the_field_and_goes_on(pour):
    amount = pour.get_by_label("Amount", exact=True)
    amount.focus()
    pour.evaluate("document.documentElement.dataset.screen")
    pour.evaluate("""async () => {
        const { ask } = await part("engine/engine.js");
        window.broke = await ask({ screen: "nowhere", pairs: [] }).catch((error) => error.message);
    }""")
    assert "KeyError" in pour.evaluate("window.broke")
    amount.fill("200")
    expect(figure(pour, "drawn_b")).to_have_text(drawn(200))


def test_what_was_typed_survives_a_reload(pour):
    pour.get_by_label("Amount", exact=True).fill("321")
    expect(figure(pour, "drawn_b")).to_have_text(drawn(321))
    pour.reload()
    expect(pour.get_by_label("Amount", exact=True)).to_have_value("321")
    expect(figure(pour, "drawn_b")).to_have_text(drawn(321))


def test_a_link_is_shown_before_it_replaces_anything(pour, standing):
    pour.get_by_label("Amount", exact=True).fill("321")
    expect(figure(pour, "drawn_b")).to_have_text(drawn(321))
    pour.goto(standing.url + "/?amount=200&system=2-1")
    expect(pour.locator("[data-notice=link]")).to_contain_text("Amount: 200")
    expect(figure(pour, "drawn_b")).to_have_text(drawn(200, system="2-1"))
    assert '"321"' in pour.evaluate("localStorage['covemix.typed.pour']")
    pour.get_by_role("button", name="Use these").click()
    expect(figure(pour, "drawn_b")).to_have_text(drawn(200, system="2-1"))

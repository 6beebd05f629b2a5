"""Whoever will type the figures of a thing is shown where, and comes back to that."""
import pytest
from playwright.sync_api import expect


@pytest.mark.parametrize(("path", "pick", "figure"), [
    ("", "system", "system.by_volume"), ("clock/", "system", "system.by_volume"), ("plan/", "crew", "crew.hands"),
])
def test_it_is_in_sight_and_outlives_a_reload(phone, standing, path, pick, figure):
    phone.goto(f"{standing.url}/{path}")
    expect(phone.locator("[data-form].live")).to_be_attached()
    field = phone.locator(f"[name='{pick}']").first
    field.select_option("")
    expect(phone.locator(f"[name='{figure}']").first).to_be_visible()
    if path != "plan/":  # which asks for its pieces first
        expect(phone.locator("[data-error]", has_text="Type the ratio from the label")).to_be_visible()
    phone.wait_for_timeout(500)
    phone.reload()
    expect(phone.locator("[data-form].live")).to_be_attached()
    expect(field).to_have_value("")


def test_another_choice_sets_nothing_aside_where_nothing_was_typed(phone, standing):
    """A row of the clock that stands there by itself is no timing of the resin system before."""
    phone.goto(f"{standing.url}/clock/")
    expect(phone.locator("[data-form].live")).to_be_attached()
    system = phone.locator("[name=system]")
    aside = phone.get_by_text("the values typed for the one before are set aside")
    system.select_option("2-1")
    phone.wait_for_timeout(500)
    expect(aside).to_have_count(0)
    phone.locator("[name='timings.0.after']").evaluate("(field) => { field.closest('details.fold').open = true; }")
    phone.fill("[name='timings.0.after']", "31")
    system.select_option("3-1")
    expect(aside).to_be_visible()
    expect(phone.locator("[name='timings.0.after']")).to_have_value("")

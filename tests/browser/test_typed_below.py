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
    phone.wait_for_timeout(500)
    phone.reload()
    expect(phone.locator("[data-form].live")).to_be_attached()
    expect(field).to_have_value("")

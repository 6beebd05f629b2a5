"""What nobody typed yet is asked, calmly; what is wrong is said as wrong. By page and server alike."""
import pytest
from playwright.sync_api import expect

FIX, TYPE = "Fix the marked fields to see results.", "Fill in what is missing for results."


@pytest.mark.parametrize("path", ["clock/", "plan/"])
def test_a_screen_that_nobody_touched_shows_no_mistake(same_phone, standing, path):
    page = same_phone
    page.goto(standing.url + "/" + path)
    expect(page.get_by_text(TYPE)).to_be_visible()
    expect(page.get_by_text(FIX)).to_be_hidden()
    expect(page.locator("[data-error][data-asks]").first).to_be_visible()
    expect(page.locator("[aria-invalid], [data-error]:not([data-asks])")).to_have_count(0)


def test_a_mistake_is_marked_and_asked_again_once_it_is_gone(same_phone, standing):
    page = same_phone
    page.goto(standing.url + "/clock/")
    air = page.locator("[name=air]")
    air.fill("x")
    expect(air).to_have_attribute("aria-invalid", "true")
    expect(page.get_by_text(FIX)).to_be_visible()
    expect(page.get_by_text(TYPE)).to_be_hidden()
    air.fill("")
    expect(air).not_to_have_attribute("aria-invalid", "true")
    expect(page.locator("#error-air")).to_have_attribute("data-asks", "")
    assert "error-air" in air.get_attribute("aria-describedby")
    expect(page.get_by_text(TYPE)).to_be_visible()
    air.fill("20")
    expect(page.locator("[data-error]")).to_have_count(0)


def test_the_server_asks_as_calmly(chromium, standing):
    page = chromium.new_context(java_script_enabled=False).new_page()
    page.goto(standing.url + "/clock/")
    expect(page.get_by_text(TYPE)).to_be_visible()
    expect(page.locator("[aria-invalid]")).to_have_count(0)
    page.goto(standing.url + "/clock/?air=x")
    expect(page.get_by_text(FIX)).to_be_visible()
    expect(page.locator("[name=air]")).to_have_attribute("aria-invalid", "true")
    page.context.close()

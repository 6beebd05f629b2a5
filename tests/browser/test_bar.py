"""The bar at the bottom: the caution in two rows, low enough for what is worked on; its English is one tap away."""
import pytest
from covemix.server.pages import PAGES
from playwright.sync_api import expect

from .conftest import fresh

HIGH = 96  # CSS px of the caution in two rows and the tabs together, of 740
LEAST = 14  # CSS px of its letters
LONG = ("?thicken=yes&amount=500", "clock/?air=32&batch=280&sun=full", "safety/?task=hot")  # two cautions, long ones
OFFICIAL = ("?system.statements=H334", "?system.statements=H310")  # statements of a product are told whole, with a sign
ROW = 16.1  # CSS px that the longest of them may take more


@pytest.fixture(params=["en", "de"])
def reader(chromium, request):
    with fresh(chromium, locale=request.param) as (page, _):
        yield page, request.param


def test_caution_and_tabs_are_two_rows_and_a_row_of_tabs_high(reader, standing):
    page, _ = reader
    for path in [*[path for _, path, _ in PAGES], *LONG, *OFFICIAL]:
        page.goto(f"{standing.url}/{path}")
        expect(page.locator("[data-form].live")).to_be_attached()
        expect(page.locator("[data-caution]")).not_to_contain_text("[")
        assert page.locator("[data-foot]").bounding_box()["height"] <= HIGH + ROW * (path in OFFICIAL), path
        letters = page.locator("[data-caution]").evaluate("(one) => parseFloat(getComputedStyle(one).fontSize)")
        assert letters >= LEAST, path


def test_the_english_of_a_german_caution_is_one_tap_away(reader, standing):
    page, language = reader
    page.goto(f"{standing.url}/?amount=500")
    bar, told = page.locator("a.caution"), page.locator(".aid > [data-whole]")
    english = "500 g in one cup can smoke."
    expect(bar.locator("[data-caution]")).to_contain_text(
        {"en": english, "de": "500 g in einem Becher: kann qualmen."}[language])
    expect(bar.locator("[data-whole]")).to_be_hidden()
    bar.click()
    expect(told).to_have_count(1)
    if language == "en":
        expect(told).to_be_empty()
        return
    expect(told).to_contain_text(f"500 g in einem Becher: kann qualmen. [{english}]")
    expect(told).to_be_in_viewport(ratio=1)
    assert page.locator(".aid-ways").bounding_box()["y"] < told.bounding_box()["y"]

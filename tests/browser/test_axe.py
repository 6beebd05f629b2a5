"""WCAG 2.2 by machine: every screen, each look, at the size of a phone; the sheet that stands over a screen too."""
import pytest
from axe_playwright_python.sync_playwright import Axe
from covemix.server.pages import PAGES
from playwright.sync_api import expect

LOOKS = {"light": {"color_scheme": "light"}, "dark": {"color_scheme": "dark"},
         "forced colours": {"forced_colors": "active"}}


@pytest.fixture(scope="module")
def reader(chromium, standing):
    context = chromium.new_context(viewport={"width": 360, "height": 740}, bypass_csp=True)
    page = context.new_page()
    yield page, standing.url
    context.close()


def violations(page):
    found = Axe().run(page).response["violations"]
    return [(one["id"], one["nodes"][0]["html"][:160]) for one in found]


@pytest.fixture(scope="module", params=[path for _, path, _ in PAGES])
def screen(reader, request):
    """A screen that answers, opened once for all looks."""
    page, url = reader
    page.goto(f"{url}/{request.param}")
    expect(page.locator("[data-form].live, [data-main]:not(:has([data-form]))").first).to_be_attached()
    return page


@pytest.mark.parametrize("look", LOOKS)
def test_a_screen_has_no_violation(screen, look):
    screen.emulate_media(**{"color_scheme": "light", "forced_colors": "none", **LOOKS[look]})
    assert violations(screen) == []


@pytest.mark.parametrize("look", LOOKS)
def test_the_sheet_has_no_violation(reader, look):
    page, url = reader
    page.emulate_media(**{"color_scheme": "light", "forced_colors": "none", **LOOKS[look]})
    page.goto(url)
    page.get_by_role("button", name="Share").click()
    expect(page.locator("[data-code] .code")).to_be_visible()
    assert violations(page) == []


@pytest.mark.parametrize("path", [path for _, path, _ in PAGES])
def test_a_screen_needs_no_sideways_scrolling_at_320(reader, path):
    """WCAG 2.2, 1.4.10 Reflow."""
    page, url = reader
    page.set_viewport_size({"width": 320, "height": 740})
    page.goto(f"{url}/{path}")
    assert page.evaluate("document.documentElement.scrollWidth") <= 320
    page.set_viewport_size({"width": 360, "height": 740})

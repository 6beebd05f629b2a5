"""WCAG 2.2 by machine: every screen, each look, at the size of a phone; the sheet that stands over a screen too.

A screen is opened once for all that is looked at; what is tapped and how large it is comes last, with the folds open.
"""
import pytest
from axe_playwright_python.sync_playwright import Axe
from covemix.server.pages import PAGES
from playwright.sync_api import expect

from .conftest import fresh, open_share
from .test_targets import GLOVE, LEAST, PRIMARY, sizes

LOOKS = {"light": {"color_scheme": "light"}, "dark": {"color_scheme": "dark"},
         "forced colours": {"forced_colors": "active"}}


@pytest.fixture(scope="module")
def reader(chromium, standing):
    with fresh(chromium, bypass_csp=True) as (page, _):
        yield page, standing.url


def dress(page, look):
    page.emulate_media(**{"color_scheme": "light", "forced_colors": "none", **LOOKS[look]})


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
    dress(screen, look)
    assert violations(screen) == []


@pytest.mark.parametrize("look", LOOKS)
def test_the_sheet_has_no_violation(reader, look):
    page, url = reader
    dress(page, look)
    page.goto(url)
    open_share(page)
    assert violations(page) == []


def test_a_screen_needs_no_sideways_scrolling_at_320(screen):
    """WCAG 2.2, 1.4.10 Reflow."""
    dress(screen, "light")
    screen.set_viewport_size({"width": 320, "height": 740})
    assert screen.evaluate("document.documentElement.scrollWidth") <= 320
    screen.set_viewport_size({"width": 360, "height": 740})


def test_every_target_is_large_enough(screen):
    """WCAG 2.2, 2.5.8 Target Size, and 2.5.5 for what the work itself needs."""
    dress(screen, "light")
    screen.evaluate("() => { for (const fold of document.querySelectorAll('details')) fold.open = true; }")
    found = sizes(screen)
    assert len(found) > 8
    assert [one for one in found if one[1] < LEAST] == []
    kinds = [kind.removeprefix(".") for kind in PRIMARY]
    assert [one for one in found if one[1] < GLOVE and any(kind in one[0].split() for kind in kinds)] == []

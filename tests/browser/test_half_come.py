"""Where a script of the page did not come, or a list cannot be laid out: what is missing is said by its name, and the
rest stands."""
import re

from playwright.sync_api import expect

from .conftest import fresh
from .test_engine_faults import interpreter

HALF = "Covemix did not load fully. Open it again with a good connection."


def opened(chromium, url, *missing):
    """What is said of a screen some files of which never come, and how often it was loaded."""
    with fresh(chromium, service_workers="block") as (page, _):
        pages = []
        page.on("request", lambda request: pages.append(request.url) if request.is_navigation_request() else None)
        for name in missing:
            page.route(re.compile(re.escape(name) + "$"), lambda route: route.abort())
        page.goto(url)
        said = page.locator("[data-notice=half]")
        expect(said).to_be_visible()
        return said.text_content(), len(pages)


def test_all_scripts_that_did_not_come_are_named(chromium, standing):
    said, times = opened(chromium, standing.url + "/log/", "js/main.js", "js/views/log.js")
    assert said == HALF.replace("fully", "fully (main.js, log.js)") and times == 1


def test_a_script_that_did_not_come_is_named_though_the_bundle_did_not_either(chromium, standing):
    said, times = opened(chromium, standing.url + "/log/", "js/main.js", "app.bin")
    assert said == HALF.replace("fully", "fully (main.js)") and times == 1


def test_where_nothing_tells_what_is_missing_it_is_tried_once_more_and_then_said(chromium, standing):
    said, times = opened(chromium, standing.url + "/log/", "js/main.js", "sw.js")
    assert said == HALF and times == 2


ODD = "Odd cup"
PUT = """async (name) => (await part("store/store.js")).put("kit", { record: "cup", typed: { name }, made: 1 })"""


def test_a_list_that_cannot_be_laid_out_leaves_the_screen_standing_and_its_keys_at_work(chromium, served):
    """An engine that answers nothing of what is asked of one thing."""
    served.stop()
    served.start(wrap=interpreter("return '{}';", ODD))
    with fresh(chromium, service_workers="block") as (phone, errors):
        phone.goto(served.url + "/joint/")
        expect(phone.locator("[data-form].live")).to_be_attached()
        assert phone.evaluate(PUT, ODD)
        phone.goto(served.url + "/kit/")
        phone.get_by_role("region", name="Scale", exact=True).get_by_role("button", name="Add").click()
        expect(phone.locator("[name='scale.name']")).to_be_visible()
        phone.wait_for_function("() => localStorage['covemix.told.here'] === 'kit'")
        expect(phone.locator("[data-notice=half]")).to_have_count(0)
        assert errors and all("undefined" in error for error in errors)
        errors.clear()

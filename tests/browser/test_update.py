"""A newer build: never unasked, whole or not at all, in every tab, with what was typed."""
import pytest
from house import build
from playwright.sync_api import expect

from .conftest import drawn, figure, fresh, keep, until
from .serve import instead, without
from .test_recall import listing
from .test_units import NOTHING_KEPT

LOOK = "navigator.serviceWorker.getRegistration().then((one) => one.update())"
BUILD = "document.documentElement.dataset.build"


def test_a_new_build_waits_until_it_is_asked_for(phone, served, other_build):
    keep(phone, served.url)
    before = phone.evaluate("document.documentElement.dataset.build")
    phone.get_by_label("Amount", exact=True).fill("321")
    served.stop()
    served.start(other_build)
    phone.reload()
    phone.evaluate("navigator.serviceWorker.getRegistration().then((one) => one.update())")
    expect(phone.locator("[data-notice=update]")).to_be_visible()
    assert phone.evaluate("document.documentElement.dataset.build") == before
    phone.reload()
    assert phone.evaluate("document.documentElement.dataset.build") == before  # not without consent
    phone.get_by_role("button", name="Update now").click()
    phone.wait_for_function("(before) => document.documentElement.dataset.build !== before", arg=before)
    expect(phone.get_by_label("Amount", exact=True)).to_have_value("321")
    expect(figure(phone, "drawn_b")).to_have_text(drawn(321))


def test_a_new_build_with_a_file_missing_leaves_the_old_one(phone, served, other_build):
    keep(phone, served.url)
    before = phone.evaluate("document.documentElement.dataset.build")
    served.stop()
    served.start(other_build, missing="app.css")
    phone.evaluate("navigator.serviceWorker.getRegistration().then((one) => one.update()).catch(() => null)")
    until(phone, "() => navigator.serviceWorker.getRegistration().then((one) => !one.installing)")
    assert phone.evaluate("navigator.serviceWorker.getRegistration().then((one) => Boolean(one.waiting))") is False
    served.stop()
    phone.reload()
    assert phone.evaluate("document.documentElement.dataset.build") == before
    expect(figure(phone, "drawn_b")).to_be_visible()


def test_two_tabs_end_on_the_same_build_and_nothing_typed_is_lost(phone, served, other_build):
    keep(phone, served.url)
    other = phone.context.new_page()
    other.goto(served.url + "/joint/")
    before = phone.evaluate(BUILD)
    phone.get_by_label("Amount", exact=True).fill("321")
    expect(figure(phone, "drawn_b")).to_have_text(drawn(321))
    served.stop()
    served.start(other_build)
    phone.evaluate(LOOK)
    expect(phone.locator("[data-notice=update]")).to_be_visible()
    other.locator("[name=thickness]").fill("9")  # typed while the update is offered, not yet at rest when it is taken
    third = phone.context.new_page()  # opened meanwhile: still the old one, as long as nobody agreed
    third.goto(served.url + "/safety/")
    assert third.evaluate(BUILD) == before
    phone.get_by_role("button", name="Update now").click()
    for page in (phone, other, third):
        page.wait_for_function("(before) => document.documentElement.dataset.build !== before", arg=before)
    assert len({page.evaluate(BUILD) for page in (phone, other, third)}) == 1
    expect(phone.get_by_label("Amount", exact=True)).to_have_value("321")
    expect(figure(phone, "drawn_b")).to_have_text(drawn(321))
    expect(other.locator("[name=thickness]")).to_have_value("9")
    assert phone.evaluate("caches.keys().then((names) => names.length)") == 1
    served.stop()
    for page in (phone, other):
        page.reload()
        assert page.evaluate(BUILD) != before
    expect(figure(phone, "drawn_b")).to_have_text(drawn(321))


def portal(*endings):
    """A network whose sign-in page comes in the place of some files, and says that all is well."""
    return instead(endings, "text/html", b"<!doctype html><title>Sign in</title>")


@pytest.mark.parametrize("file", ["js/main.js", "app.bin", "micropython.bin", "unpack.wasm"])
def test_a_sign_in_page_in_the_place_of_a_file_leaves_the_old_build_and_is_said(phone, served, other_build, file):
    keep(phone, served.url)
    before = phone.evaluate(BUILD)
    served.stop()
    served.start(other_build, wrap=portal(file))
    phone.evaluate(LOOK + ".catch(() => null)")
    expect(phone.locator("[data-notice=half]")).to_contain_text("still works")
    assert phone.evaluate("navigator.serviceWorker.getRegistration().then((one) => Boolean(one.waiting))") is False
    assert phone.evaluate("caches.keys().then((names) => names.length)") == 1
    served.stop()
    phone.reload()
    assert phone.evaluate(BUILD) == before
    phone.get_by_label("Amount", exact=True).fill("321")
    expect(figure(phone, "drawn_b")).to_have_text(drawn(321))
    served.start(other_build)  # signed in
    phone.evaluate(LOOK)
    expect(phone.locator("[data-notice=update]")).to_be_visible()


def test_a_first_visit_behind_a_sign_in_page_is_kept_the_next_time(phone, served):
    served.stop()
    served.start(wrap=portal("app.svg"))
    phone.goto(served.url)
    expect(phone.locator("[data-notice=half]")).to_contain_text("does not work without signal yet")
    expect(figure(phone, "drawn_b")).to_be_visible()
    assert phone.evaluate("caches.keys().then((names) => names.length)") == 0
    served.stop()
    served.start()
    keep(phone, served.url)
    served.stop()
    phone.reload()
    expect(figure(phone, "drawn_b")).to_be_visible()


def test_every_form_of_every_tab_comes_back_as_typed_after_an_update(phone, served, other_build):
    """Two tabs on Pour, a half-typed thing of the kit, a batch of the log: an update taken in one of them."""
    keep(phone, served.url)
    before = phone.evaluate(BUILD)
    tabs = {name: phone.context.new_page() for name in ("pour", "kit", "log")}
    pour, kit, log = tabs.values()
    pour.goto(served.url)
    kit.goto(served.url + "/kit/")
    log.goto(served.url + "/log/")
    phone.get_by_label("Amount", exact=True).fill("321")
    pour.get_by_label("Amount", exact=True).fill("")
    kit.get_by_role("region", name="Cup", exact=True).get_by_role("button", name="Add").click()
    kit.locator("[name='cup.name']").fill("Half a cu")
    log.get_by_role("button", name="Add a batch").click()
    log.get_by_label("What was poured").fill("Half a ba")
    log.get_by_label("When").fill("2026-06-01T09:30")
    served.stop()
    served.start(other_build)
    phone.evaluate(LOOK)
    phone.get_by_role("button", name="Update now").click()
    for page in (phone, *tabs.values()):
        page.wait_for_function("(before) => document.documentElement.dataset.build !== before", arg=before)
    expect(phone.get_by_label("Amount", exact=True)).to_have_value("321")
    expect(pour.get_by_label("Amount", exact=True)).to_have_value("")
    expect(kit.locator("[name='cup.name']")).to_have_value("Half a cu")
    expect(kit.locator("[name='cup.name']")).to_be_visible()
    expect(log.get_by_label("What was poured")).to_have_value("Half a ba")
    expect(log.get_by_label("When")).to_have_value("2026-06-01T09:30")
    log.get_by_role("button", name="Save", exact=True).click()
    expect(log.locator(".entry")).to_contain_text("Half a ba")
    log.reload()  # kept: it does not open again
    expect(log.locator(".entry")).to_be_visible()


def test_a_half_typed_change_belongs_to_its_own_thing_after_the_page_was_killed(phone, standing):
    phone.goto(standing.url + "/log/")
    phone.get_by_role("button", name="Add a batch").click()
    phone.get_by_label("What was poured").fill("Keel")
    phone.get_by_role("button", name="Save", exact=True).click()
    phone.locator(".entry").get_by_role("button", name="Change").click()
    phone.get_by_label("What was poured").fill("Keel, port")
    other = phone.context.new_page()  # another tab starts with the list
    other.goto(standing.url + "/log/")
    expect(other.locator(".entry")).to_contain_text("Keel")
    phone.evaluate("window.onbeforeunload = null")
    phone.goto("about:blank")
    phone.goto(standing.url + "/log/")
    expect(phone.get_by_label("What was poured")).to_have_value("Keel, port")
    phone.get_by_role("button", name="Save", exact=True).click()
    expect(phone.locator(".entry")).to_have_count(1)
    expect(phone.locator(".entry")).to_contain_text("Keel, port")


# as WebKit tells it at times: the first worker has this page already when it is told to be installed
TAKEN = "Object.defineProperty(this, 'controller', { get: () => got.active ?? got.installing ?? got.waiting });"
# and all is over before anybody listens
LATE = """await this.ready;
while (got.active.state !== "activated") await new Promise((next) => { setTimeout(next, 20); });"""
REGISTERS = """const { register } = ServiceWorkerContainer.prototype;
ServiceWorkerContainer.prototype.register = async function (...asked) {
  const got = await register.apply(this, asked);
  %s
  return got;
};"""


@pytest.mark.parametrize("told", [TAKEN, LATE], ids=["with a controller", "too late"])
def test_a_first_visit_is_no_newer_build_however_it_is_told(phone, served, told):
    phone.add_init_script(REGISTERS % told)
    phone.goto(served.url)
    expect(phone.locator("[data-notice=ready]")).to_be_visible()
    expect(phone.locator("[data-notice=update]")).to_have_count(0)


OTHER = "(before) => document.documentElement.dataset.build !== before"


def test_where_nothing_is_kept_the_way_on_and_the_way_back_lead_into_the_build_that_the_host_has_by_then(
        chromium, served, other_build):
    """A page cannot take in a screen of another build: it is opened as a page of its own, with what was typed."""
    with fresh(chromium, service_workers="block") as (phone, _):
        phone.goto(served.url)
        before = phone.evaluate(BUILD)
        phone.get_by_label("Amount", exact=True).fill("321")
        expect(figure(phone, "drawn_b")).to_have_text(drawn(321))
        phone.get_by_role("link", name="Joint", exact=True).click()
        expect(phone.locator("main.screen-joint [data-form].live")).to_be_attached()
        assert phone.evaluate(BUILD) == before
        served.stop()
        served.start(other_build)
        phone.go_back()
        phone.wait_for_function(OTHER, arg=before)
        expect(phone.get_by_label("Amount", exact=True)).to_have_value("321")
        expect(figure(phone, "drawn_b")).to_have_text(drawn(321))
        served.stop()
        served.start()
        phone.get_by_role("link", name="Joint", exact=True).click()
        expect(phone.locator("main.screen-joint [data-form].live")).to_be_attached()
        assert phone.evaluate(BUILD) == before


def test_where_nothing_is_kept_a_recalled_build_is_left_by_loading_the_page_anew(chromium, served, other_build):
    served.stop()
    served.start(wrap=listing(build().id))
    with fresh(chromium, service_workers="block") as (phone, _):
        phone.goto(served.url)
        before = phone.evaluate(BUILD)
        told = phone.locator("[data-notice=recalled]")
        expect(told).to_be_visible()
        phone.get_by_label("Amount", exact=True).fill("321")
        expect(figure(phone, "drawn_b")).to_have_text(drawn(321))
        served.stop()
        served.start(other_build, wrap=listing(build().id))
        told.get_by_role("button", name="Update now").click()
        phone.wait_for_function(OTHER, arg=before)
        expect(phone.get_by_label("Amount", exact=True)).to_have_value("321")
        expect(told).to_have_count(0)


KNOWN = "localStorage['covemix.told.recalled']"


@pytest.mark.parametrize("why", ["refused", "half"])
def test_a_phone_that_keeps_nothing_or_half_of_the_list_hears_of_a_recalled_build(phone, served, why):
    served.stop()
    served.start(wrap=listing(build().id))
    phone.add_init_script(NOTHING_KEPT if why == "refused" else KNOWN + " ??= '{\"cut sh'")
    phone.goto(served.url)
    expect(phone.locator("[data-notice=recalled]")).to_be_visible()
    phone.get_by_label("Amount", exact=True).fill("200")
    expect(figure(phone, "drawn_b")).to_have_text(drawn(200))


def test_an_update_that_came_by_half_when_it_was_asked_for_is_said_and_offered_again_once_it_is_whole(
        phone, served, other_build):
    """Asked for from a recalled build."""
    keep(phone, served.url)
    before = phone.evaluate(BUILD)
    phone.get_by_label("Amount", exact=True).fill("321")
    served.stop()
    served.start(other_build, wrap=lambda app: listing(build().id)(without(app, "app.css")))
    phone.reload()
    told = phone.locator("[data-notice=recalled]")
    told.get_by_role("button", name="Update now").click()
    expect(told).to_contain_text("Try again with a connection")
    assert phone.evaluate(BUILD) == before
    served.stop()
    served.start(other_build, wrap=listing(build().id))
    phone.evaluate(LOOK)
    expect(phone.locator("[data-notice=update]")).to_be_attached()
    told.get_by_role("button", name="Update now").click()
    phone.wait_for_function(OTHER, arg=before)
    expect(phone.get_by_label("Amount", exact=True)).to_have_value("321")

"""Without signal: the server killed, and the network off, which browsers treat as two different things."""
import pytest
from playwright.sync_api import expect

from .conftest import drawn, figure, fresh, keep, until


@pytest.fixture(params=["server killed", "network off"])
def cut(request, phone, served):
    """The app kept on the phone, then cut off in one of two ways."""
    keep(phone, served.url)

    def now():
        if request.param == "server killed":
            served.stop()
        else:
            phone.context.set_offline(True)

    return now


def test_a_first_visit_is_enough(phone, served, cut):
    cut()
    phone.reload()
    phone.get_by_label("Amount", exact=True).fill("200")
    expect(figure(phone, "drawn_b")).to_have_text(drawn(200))


@pytest.mark.parametrize("link", ["/?amount=200", "/?", "/#amount", "/index.html", "/safety/", "/safety"])
def test_any_link_opens(phone, served, cut, link):
    cut()
    phone.goto(served.url + link)
    if "safety" in link:
        expect(phone.locator("[data-line=gloves]")).to_be_visible()
    elif "200" in link:
        expect(figure(phone, "drawn_b")).to_have_text(drawn(200))
    else:
        expect(figure(phone, "drawn_b")).to_have_text(drawn(240))


def test_a_link_is_offered_before_it_replaces_what_was_typed(phone, served, cut):
    phone.get_by_label("Amount", exact=True).fill("321")
    expect(figure(phone, "drawn_b")).to_have_text(drawn(321))
    cut()
    phone.goto(served.url + "/?amount=200")
    expect(phone.locator("[data-notice=link]")).to_contain_text("Amount: 200")
    expect(figure(phone, "drawn_b")).to_have_text(drawn(200))  # in a view of its own
    assert '"321"' in phone.evaluate("localStorage['covemix.typed.pour']")
    phone.get_by_role("button", name="Use these").click()
    expect(figure(phone, "drawn_b")).to_have_text(drawn(200))
    assert '"200"' in phone.evaluate("localStorage['covemix.typed.pour']")


def test_screens_change_without_signal(phone, served, cut):
    cut()
    phone.reload()
    phone.get_by_label("Amount", exact=True).fill("200")
    phone.get_by_role("link", name="Safety", exact=True).click()
    expect(phone.locator("[data-line=gloves]")).to_be_visible()
    phone.go_back()
    expect(phone.get_by_label("Amount", exact=True)).to_have_value("200")


def test_killed_while_it_was_being_kept_the_next_visit_completes_it(phone, served):
    served.stop()
    served.start(missing="icons/app.svg")
    with phone.context.expect_event("serviceworker"):  # before it there is no registration either
        phone.goto(served.url)
    expect(figure(phone, "drawn_b")).to_be_visible()
    until(phone, "() => navigator.serviceWorker.getRegistration().then((one) => one === undefined)")
    until(phone, "() => caches.keys().then((names) => !names.length)")  # nothing half kept
    served.stop()
    served.start()
    keep(phone, served.url)
    served.stop()
    phone.reload()
    phone.get_by_label("Amount", exact=True).fill("200")
    expect(figure(phone, "drawn_b")).to_have_text(drawn(200))


def test_on_plain_http_it_calculates_and_says_once_what_it_cannot(phone, served):
    """Chromium takes localhost for secure; a host name of another kind is what a shop network has."""
    context = phone.context.browser.new_context()
    page = context.new_page()
    page.add_init_script("Object.defineProperty(window, 'isSecureContext', { value: false });"
                         "delete Navigator.prototype.serviceWorker;")
    page.goto(served.url)
    expect(page.locator("[data-notice=plain]")).to_contain_text("an http address")
    page.get_by_label("Amount", exact=True).fill("200")
    expect(figure(page, "drawn_b")).to_have_text(drawn(200))
    page.reload()
    expect(figure(page, "drawn_b")).to_have_text(drawn(200))
    expect(page.locator("[data-notice=plain]")).to_have_count(0)
    context.close()


def test_an_engine_that_does_not_start_leaves_the_server_to_answer(phone, served):
    served.stop()
    served.start(missing="app.bin")
    phone.goto(served.url + "/?amount=200")
    expect(phone.locator("[data-notice=engine]")).to_be_visible()
    expect(figure(phone, "drawn_b")).to_have_text(drawn(200))
    phone.get_by_label("Amount", exact=True).fill("300")
    expect(figure(phone, "drawn_b")).to_be_hidden()
    phone.get_by_role("button", name="Work it out").click()
    expect(figure(phone, "drawn_b")).to_have_text(drawn(300))


def test_a_screen_whose_script_did_not_come_is_opened_as_a_page_of_its_own(chromium, standing):
    """Where nothing is kept, and a browser that remembers a script that failed once on its page asks for it no more."""
    pages = []

    def script(route):
        if pages:
            route.continue_()
        else:
            route.abort()

    with fresh(chromium, service_workers="block") as (phone, _):
        phone.goto(standing.url)
        expect(figure(phone, "drawn_b")).to_be_visible()
        phone.route("**/js/views/kit.js", script)
        phone.on("request", lambda request: pages.append(request.url) if request.is_navigation_request() else None)
        phone.get_by_role("link", name="Kit", exact=True).click()
        expect(phone.locator("[data-listing][data-read]")).to_be_visible()
        assert pages == [standing.url + "/kit/"]


HALVED = """() => {
  const kept = JSON.parse(localStorage["covemix.answer.pour"]);
  delete kept.answer.answers;
  localStorage["covemix.answer.pour"] = JSON.stringify(kept);
}"""


def test_an_answer_that_was_not_kept_whole_is_asked_anew(phone, standing):
    phone.goto(standing.url)
    phone.get_by_label("Amount", exact=True).fill("321")
    expect(phone.locator("[data-status]")).to_contain_text(drawn(321))
    phone.evaluate(HALVED)
    phone.reload()
    expect(figure(phone, "drawn_b")).to_have_text(drawn(321))


def test_where_the_copy_was_passed_over_another_language_is_taken_all_the_same(phone, served):
    """A page that was loaded anew past its copy has none that answers it; the new one takes its place."""
    keep(phone, served.url)
    phone.get_by_label("Amount", exact=True).fill("321")
    expect(figure(phone, "drawn_b")).to_have_text(drawn(321))
    phone.get_by_role("link", name="Kit", exact=True).click()
    expect(phone.locator("[data-listing][data-read]")).to_be_visible()
    session = phone.context.new_cdp_session(phone)
    session.send("Page.reload", {"ignoreCache": True})
    phone.wait_for_function("navigator.serviceWorker.controller === null")
    expect(phone.locator("[data-listing][data-read]")).to_be_visible()
    phone.locator("[name=set-language][value=de]").click(force=True)
    expect(phone.locator("html[lang=de]")).to_be_attached()
    served.stop()
    phone.goto(served.url)
    expect(phone.locator("html[lang=de]")).to_be_attached()
    expect(phone.locator("[name=amount]")).to_have_value("321")

"""Without the engine the server answers, and its answer is shown: on every screen, whatever the phone keeps."""
import pytest
from playwright.sync_api import expect

from .conftest import drawn, figure, grow_old, keep

NO_WORKER = "window.Worker = class { constructor() { throw new Error(); } }"
LACKS = {"no channel": "delete window.BroadcastChannel", "no worker": NO_WORKER}
SCREENS = {  # path, a field, what is typed, a line that only the answer has
    "/": ("amount", "300", "drawn_b"), "/joint/": ("thickness", "9", "radius"),
    "/clock/?air=20": ("batch", "300", "usable"),
    "/test-cup/?air=20&strings_at=30": ("mass", "80", "usual"), "/spreader/": ("radii", "12", "radius_1"),
    "/surface/": ("coats", "2", "mix"),
    "/safety/": ("air_temperature", "15", "gloves"), "/boat/": ("packs", "2", "resin"),
}


@pytest.fixture(params=LACKS)
def lacking(request, phone, served):
    """A phone that keeps the app and values of its own, and lost the engine since."""
    keep(phone, served.url)
    phone.get_by_label("Amount", exact=True).fill("321")
    expect(figure(phone, "drawn_b")).to_have_text(drawn(321))
    phone.add_init_script(LACKS[request.param])
    return phone


def work_out(phone, name, text):
    field = phone.locator(f"[name='{name}']")
    expect(phone.locator("form.alone")).to_be_visible()
    field.evaluate("""(field) => {
      for (let up = field.closest("details"); up; up = up.parentElement.closest("details")) up.open = true;
    }""")
    field.fill(text)
    phone.get_by_role("button", name="Work it out").click()


def test_the_servers_answer_is_shown_whatever_is_kept(lacking, served):
    lacking.goto(served.url)
    work_out(lacking, "amount", "300")
    expect(figure(lacking, "drawn_b")).to_have_text(drawn(300))
    expect(lacking.locator("[data-notice=engine]")).to_be_visible()
    expect(figure(lacking, "drawn_b")).to_have_text(drawn(300))  # and stays
    expect(lacking.locator("[data-notice=link]")).to_have_count(0)  # it is the builder's own question
    work_out(lacking, "amount", "150")
    expect(figure(lacking, "drawn_b")).to_have_text(drawn(150))


def test_a_link_and_a_second_one_are_answered_by_the_server(lacking, served):
    for grams in ("200", "150"):
        lacking.goto(f"{served.url}/?amount={grams}")
        expect(figure(lacking, "drawn_b")).to_have_text(drawn(grams))
        expect(lacking.get_by_label("Amount", exact=True)).to_have_value(grams)
    assert '"321"' in lacking.evaluate("localStorage['covemix.typed.pour']")


@pytest.mark.parametrize("path", SCREENS)
def test_every_screen_is_answered(phone, standing, path):
    name, text, line = SCREENS[path]
    phone.goto(standing.url + path.split("?")[0])
    phone.wait_for_function("() => !document.querySelector('[data-unanswered]')")
    grow_old(phone)
    phone.evaluate("localStorage.clear()")
    phone.goto(standing.url + path)
    work_out(phone, name, text)
    phone.wait_for_url("**as=page**")
    expect(phone.locator("[data-notice=engine]")).to_be_visible()
    expect(phone.locator(f"[name='{name}']")).to_have_value(text)
    expect(phone.locator(f"[data-line={line}]").first).to_be_attached()
    expect(phone.locator("[data-move] .line-text").first).to_be_visible()


def test_without_engine_and_signal_a_link_says_what_is_missing(lacking, served):
    served.stop()
    lacking.goto(served.url + "/?amount=200")
    expect(lacking.locator("[data-notice=link]")).to_contain_text("could not be checked")

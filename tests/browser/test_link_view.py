"""A link shows its answer in a view of its own, and changes nothing that the phone keeps before it is accepted."""
from urllib.parse import urlencode

import pytest
from playwright.sync_api import expect

from .conftest import drawn, figure, grow_old, keep

TYPED = "Object.entries(localStorage).filter(([name]) => /typed|answer/.test(name)).join()"
KEPT = "localStorage['covemix.typed.pour'] ?? ''"


def amount(page):
    return page.get_by_label("Amount", exact=True)


def test_a_fresh_phone_shows_it_and_keeps_nothing_of_it(phone, standing):
    phone.goto(standing.url + "/?amount=200")
    expect(figure(phone, "drawn_b")).to_have_text(drawn(200))
    expect(phone.locator("[data-notice=link]")).to_contain_text("Amount: 200 g")
    amount(phone).fill("205")  # what is typed over it stays with it
    expect(figure(phone, "drawn_b")).to_have_text(drawn(205))
    expect(phone.locator("[data-status]")).to_contain_text(drawn(205))
    assert phone.evaluate(TYPED) == ""
    phone.reload()
    expect(figure(phone, "drawn_b")).to_have_text(drawn(205))
    phone.get_by_role("link", name="Joint", exact=True).click()
    expect(phone.locator("[name=thickness]")).to_be_visible()
    expect(phone.locator("[data-notice=link]")).to_have_count(0)
    phone.get_by_role("link", name="Pour", exact=True).click()
    expect(figure(phone, "drawn_b")).to_have_text(drawn(240))
    phone.go_back()
    phone.go_back()
    expect(figure(phone, "drawn_b")).to_have_text(drawn(205))
    phone.get_by_role("button", name="Use these").click()
    assert '"205"' in phone.evaluate(KEPT)
    phone.get_by_role("button", name="Undo").click()
    expect(figure(phone, "drawn_b")).to_have_text(drawn(240))


@pytest.fixture
def mine(phone, served):
    """A phone that keeps an amount of its own."""
    keep(phone, served.url)
    amount(phone).fill("321")
    expect(figure(phone, "drawn_b")).to_have_text(drawn(321))
    return phone


def test_two_links_in_a_row_the_way_back_and_mine_without_signal(mine, served):
    served.stop()
    mine.goto(served.url + "/?amount=200")
    expect(figure(mine, "drawn_b")).to_have_text(drawn(200))
    mine.goto(served.url + "/?amount=150")
    expect(figure(mine, "drawn_b")).to_have_text(drawn(150))
    mine.go_back()
    expect(figure(mine, "drawn_b")).to_have_text(drawn(200))
    assert '"321"' in mine.evaluate(KEPT)
    mine.get_by_role("button", name="Keep mine").click()
    expect(figure(mine, "drawn_b")).to_have_text(drawn(321))
    assert mine.url == served.url + "/"


def test_in_a_second_tab_it_changes_nothing_of_the_first(mine, served):
    other = mine.context.new_page()
    other.goto(served.url + "/?amount=200")
    expect(figure(other, "drawn_b")).to_have_text(drawn(200))
    amount(other).fill("205")
    expect(figure(other, "drawn_b")).to_have_text(drawn(205))
    other.close()
    mine.reload()
    expect(figure(mine, "drawn_b")).to_have_text(drawn(321))
    expect(mine.locator("[data-notice=link]")).to_have_count(0)


def test_a_link_of_what_is_kept_anyway_asks_nothing(mine, served):
    mine.goto(served.url + "/?amount=321")
    expect(figure(mine, "drawn_b")).to_have_text(drawn(321))
    mine.wait_for_url(served.url + "/")
    expect(mine.locator("[data-notice=link]")).to_have_count(0)


def boat(joints):
    return "/boat/?" + urlencode([(f"joints.{place}.{name}", text) for place in range(joints)
                                  for name, text in (("name", f"Seam {place}"), ("length", "1.5"))])


@pytest.mark.parametrize("joints", [26, 60])
def test_a_boat_of_many_joints_asks_in_a_notice_that_can_be_answered(phone, standing, joints):
    phone.goto(standing.url + boat(joints))
    notice = phone.locator("[data-notice=link]")
    expect(notice).to_contain_text(f": {joints}", timeout=40_000)
    assert len(notice.locator("p").first.text_content()) < 160
    for name in ("Keep mine", "Use these"):
        key = notice.get_by_role("button", name=name)
        assert key.evaluate("""(key) => {
          const { x, y, width, height } = key.getBoundingClientRect();
          return height >= 48 && [[x + 2, y + 2], [x + width - 2, y + height - 2]]
            .every(([left, top]) => document.elementFromPoint(left, top)?.closest("button") === key);
        }"""), name
    notice.get_by_role("button", name="Use these").click()
    kept = "(last) => (localStorage['covemix.typed.boat'] ?? '').includes(last)"
    phone.wait_for_function(kept, arg=f"Seam {joints - 1}")


SENT = {"/": "amount_is=putty&amount=8&thicken=yes", "/joint/": "length=9", "/clock/": "air=70&batch=8"}
SEEN = """() => {
  const form = document.querySelector("[data-form]");
  return [form.dataset.units, form.querySelector("[name=units]")?.value ?? "",
    [...form.querySelectorAll(".answer .line, .head .line")].filter((one) => one.checkVisibility())
      .map((one) => one.innerText.replace(/\\s+/g, " ")).join("\\n")];
}"""


@pytest.mark.parametrize("own", ["", "metric", "us"])
@pytest.mark.parametrize("sent", ["", "us"])
@pytest.mark.parametrize("path", ["/", "/joint/", "/clock/"])
def test_a_link_counts_in_one_system_before_and_after_it_is_taken_over(phone, standing, path, sent, own):
    """In the phone's own where somebody chose one, else in the sender's; nothing is chosen before it is taken."""
    phone.add_init_script("localStorage['covemix.told.here'] ??= 'pour';"
                          + (f"localStorage['covemix.set.units'] ??= '{own}'" if own else ""))
    phone.goto(standing.url + path + "?" + (f"units={sent}&" if sent else "") + SENT[path])
    shown = phone.locator("[data-notice=link]")
    expect(shown).to_be_visible()
    expect(phone.locator("[data-status]")).not_to_be_empty()
    before, wanted = phone.evaluate(SEEN), own or sent or "metric"
    assert before[0] == wanted
    assert ("Units" in shown.inner_text()) == (sent == "us" and not own)  # only where it would change something
    assert phone.evaluate("localStorage['covemix.set.units'] ?? ''") == own
    phone.get_by_role("button", name="Use these").click()
    expect(shown).not_to_contain_text("Keep mine")
    expect(phone.locator("[data-undo], [data-notice] button", has_text="Undo").first).to_be_visible()
    assert phone.evaluate(SEEN) == before
    phone.reload()
    expect(phone.locator("[data-status]")).not_to_be_empty()
    assert phone.evaluate(SEEN) == before


def test_the_units_of_a_link_go_with_it(phone, standing):
    phone.goto(standing.url + "/?units=us&amount=8")
    expect(phone.locator("[data-form]")).to_have_attribute("data-units", "us")
    phone.get_by_role("link", name="Joint", exact=True).click()
    expect(phone.locator("main.screen-joint [data-form]")).to_have_attribute("data-units", "metric")
    phone.go_back()
    expect(phone.locator("main.screen-pour [data-form]")).to_have_attribute("data-units", "us")
    phone.get_by_role("button", name="Use these").click()
    assert phone.evaluate("localStorage['covemix.set.units']") == "us"
    phone.get_by_role("button", name="Undo").click()
    expect(phone.locator("[data-form]")).to_have_attribute("data-units", "metric")
    assert phone.evaluate("localStorage['covemix.set.units']") == ""


def test_a_link_that_could_not_be_checked_is_answered_by_the_next_tap_with_a_connection(mine, served):
    """A phone that lacks the engine by now: the server answers, as soon as it is there."""
    grow_old(mine)
    served.stop()
    mine.goto(served.url + "/?amount=200")
    notice = mine.locator("[data-notice=link]")
    expect(notice).to_contain_text("could not be checked")
    expect(amount(mine)).to_have_value("321")
    mine.locator("[data-notice=engine]").get_by_role("button", name="Close").click()  # the newest lies before it
    served.start()
    notice.get_by_role("button", name="Try again").click()
    expect(figure(mine, "drawn_b")).to_have_text(drawn(200))
    expect(amount(mine)).to_have_value("200")
    assert '"321"' in mine.evaluate(KEPT)


# a browser that has heard too much of one page's address lately takes no more of it
WEARY = """() => {
  const { replaceState } = history;
  window.rested = () => { history.replaceState = replaceState; };
  history.replaceState = () => { throw new DOMException("", "SecurityError"); };
}"""


def test_what_is_typed_over_a_link_counts_though_the_address_does_not_take_it(phone, standing):
    phone.goto(standing.url + "/?amount=200")
    expect(phone.locator("[data-notice=link]")).to_contain_text("Amount: 200 g")
    phone.evaluate(WEARY)
    amount(phone).fill("205")
    expect(figure(phone, "drawn_b")).to_have_text(drawn(205))
    expect(phone.locator("[data-notice=unkept-typed]")).to_have_count(0)
    phone.evaluate("window.rested()")
    phone.get_by_role("button", name="Use these").click()
    assert '"205"' in phone.evaluate(KEPT)

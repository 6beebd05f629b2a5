"""A browser that is short of space lets go of what it kept: said in plain words, and put right by itself."""
import pytest
from playwright.sync_api import expect

from .conftest import drawn, figure, keep, until
from .test_kit import FAILING

ADD = """async (typed) => {
  const { put, read } = await part("store/store.js");
  await put("kit", { record: "system", typed, made: 1 });
  return (await read("kit")).map((one) => one.typed.name);
}"""


def let_go(page, url, what):
    """As the browser does it: no event, no word to the page."""
    session = page.context.new_cdp_session(page)
    session.send("Storage.clearDataForOrigin", {"origin": url, "storageTypes": what})
    session.detach()


@pytest.mark.parametrize("way", ["server killed", "network off"])
def test_without_its_copy_and_without_signal_it_says_so(phone, served, way):
    keep(phone, served.url)
    let_go(phone, served.url, "cache_storage")
    if way == "server killed":
        served.stop()
    else:
        phone.context.set_offline(True)
    phone.goto(served.url + "/safety/")
    expect(phone.get_by_text("Open Covemix once with a connection")).to_be_visible()


def test_opened_once_with_a_connection_it_is_kept_again(phone, served):
    keep(phone, served.url)
    let_go(phone, served.url, "cache_storage")
    phone.goto(served.url + "/safety/")
    until(phone, """async () => {
      for (const name of await caches.keys()) if (await (await caches.open(name)).match("./../")) return true;
      return false;
    }""")
    served.stop()
    phone.goto(served.url + "/?amount=200")
    expect(figure(phone, "drawn_b")).to_have_text(drawn(200))


def test_a_page_that_is_open_goes_on_and_keeps_again_what_is_new(phone, standing):
    phone.goto(standing.url + "/kit/")
    assert phone.evaluate(ADD, {"name": "Before", "by_weight": "100:40"}) == ["Before"]
    let_go(phone, standing.url, "indexeddb")
    assert phone.evaluate(ADD, {"name": "After", "by_weight": "2:1"}) == ["After"]
    expect(phone.locator("[data-notice=store]")).to_have_count(0)
    phone.reload()
    expect(phone.locator(".entry")).to_have_count(1)
    expect(phone.locator(".entry")).to_contain_text("After")


def test_typed_text_that_is_let_go_leaves_the_form_as_it_was_first(phone, served):
    keep(phone, served.url)
    phone.get_by_label("Amount", exact=True).fill("321")
    expect(figure(phone, "drawn_b")).to_have_text(drawn(321))
    let_go(phone, served.url, "local_storage")
    served.stop()
    phone.reload()
    expect(figure(phone, "drawn_b")).to_have_text(drawn(240))


POT = """async (more) => {
  const { put } = await part("store/store.js");
  await put("pots", { started: Date.now() - 120_000, timing: [], system: [["system", "2-1"]], done: [],
    rung: [], said: [], typed: [["duration", "25"], ["batch", "200 g"], ["place", "Port <chine>"]], ...more });
}"""


@pytest.mark.parametrize(("more", "said"), [
    ({}, "usable for 25 min from then"),
    ({"typed": "of an older shape"}, "mixed at"),
    ({"started": None}, "its clock cannot be read"),
])
def test_the_page_of_a_phone_that_let_go_names_the_pots_that_run(phone, served, more, said):
    keep(phone, served.url)
    phone.evaluate(POT, more)
    let_go(phone, served.url, "cache_storage")
    served.stop()
    phone.goto(served.url + "/safety/")
    expect(phone.get_by_text("A pot is running and no alarm rings here")).to_be_visible()
    expect(phone.get_by_role("listitem")).to_contain_text(said)
    if "typed" not in more:
        expect(phone.get_by_role("listitem")).to_contain_text("200 g, Port <chine>")


def test_without_pots_the_page_of_a_phone_that_let_go_names_none_and_makes_no_store(phone, served):
    keep(phone, served.url)
    later = phone.context.new_page()
    phone.close()
    later.goto(served.url + "/manifest.webmanifest")
    let_go(later, served.url, "cache_storage,indexeddb")
    served.stop()
    later.goto(served.url + "/safety/")
    expect(later.get_by_text("Open Covemix once with a connection")).to_be_visible()
    assert "pot" not in later.locator("body").inner_text()
    assert later.evaluate("indexedDB.databases()") == []


def test_a_pot_counts_on_where_nothing_more_can_be_written_down(phone, standing):
    """What is kept of it every few seconds is missed, the next is tried, and nobody is troubled with it."""
    phone.clock.install()
    phone.goto(standing.url + "/clock/")
    phone.evaluate(POT, {})
    minutes = phone.locator(".pot-minutes")
    expect(minutes).not_to_be_empty()
    phone.evaluate(FAILING, "pots")
    for count in (1, 2):
        before = minutes.text_content()
        phone.clock.run_for(6_000)
        phone.wait_for_function("(count) => window.failed >= 2 * count", arg=count)  # each is tried twice
        expect(minutes).not_to_have_text(before)
    expect(phone.locator("[data-notice=store]")).to_have_count(0)


DEAF = """const { addEventListener } = IDBDatabase.prototype;
IDBDatabase.prototype.addEventListener = function (name, ...more) {
  if (name !== "versionchange") addEventListener.call(this, name, ...more);
};"""
NEWER = """() => new Promise((done) => {
  const asked = indexedDB.open("covemix", 99);
  asked.onblocked = () => done("waits");
  asked.onsuccess = () => { asked.result.close(); done("opened"); };
})"""


def test_a_page_that_is_put_away_holds_nobody_up_and_keeps_things_when_it_is_back(phone, standing):
    """Put away, as a browser does it, it hears nothing: a newer Covemix in another tab would wait for it."""
    phone.add_init_script(DEAF)
    phone.goto(standing.url + "/kit/")
    expect(phone.locator("[data-listing][data-read]")).to_be_visible()
    for count in (1, 2):
        phone.evaluate("dispatchEvent(new PageTransitionEvent('pagehide', { persisted: true }))")
        phone.evaluate(ADD, {"name": f"Mix {count}", "by_weight": "100:40"})
        expect(phone.locator(".entry-name").last).to_have_text(f"Mix {count}")
    phone.evaluate("dispatchEvent(new PageTransitionEvent('pagehide', { persisted: true }))")
    other = phone.context.new_page()
    other.goto(standing.url + "/manifest.webmanifest")
    assert other.evaluate(NEWER) == "opened"

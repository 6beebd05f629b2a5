"""The picture of the engine's memory that a phone keeps: a start without compiling, and what stands in its place."""
import cases
import parity
import pytest
from playwright.sync_api import expect

from .conftest import drawn, figure, until

MADE = "() => localStorage.getItem('covemix.pictured')"
CHANGED = """async (how) => {
  for (const name of await caches.keys()) {
    const cache = await caches.open(name);
    for (const { url } of await cache.keys()) {
      if (!url.endsWith("/picture")) continue;
      if (how === "gone") { await cache.delete(url); return true; }
      const kept = await cache.match(url);
      const memory = new Uint8Array(await kept.arrayBuffer());
      memory[1_500_000] ^= 1;
      await cache.put(url, new Response(memory, { headers: kept.headers }));
      return true;
    }
  }
  return false;
}"""
ASK = """async (texts) => {
  const { ask } = await part("engine/engine.js");
  const answers = [];
  for (const text of texts) answers.push(JSON.stringify({ ...await ask(JSON.parse(text)), by: undefined }));
  return answers;
}"""


def reloaded(page):
    """The names of the files that a reload asks for, up to the engine's answer."""
    names = []
    page.on("request", lambda request: names.append(request.url.split("/")[-1]))
    page.reload()
    page.get_by_label("Amount", exact=True).fill("300")
    expect(figure(page, "drawn_b")).to_have_text(drawn(300))
    return names


def with_picture(phone, url):
    """The phone, once it keeps the app of this server and its picture."""
    phone.clock.install()
    phone.goto(url + "/?amount=200")
    until(phone, "() => navigator.serviceWorker.controller && caches.keys().then((names) => names.length > 0)")
    expect(figure(phone, "drawn_b")).to_have_text(drawn(200))
    for _ in range(60):  # it is made when the phone has been quiet
        phone.clock.run_for(11_000)
        if phone.evaluate(MADE):
            return phone
        phone.wait_for_timeout(500)
    raise AssertionError("no picture was made")


@pytest.fixture
def pictured(phone, standing):
    return with_picture(phone, standing.url)


def test_a_start_from_the_picture_needs_no_bundle_and_answers_alike(pictured):
    pictured.context.set_offline(True)
    names = reloaded(pictured)
    assert "micropython.bin" in names and "app.bin" not in names
    requests = [one for name in ("pour", "joint", "heat", "cure", "boat") for one in cases.different(name, 6)]
    assert parity.report(requests, lambda texts: pictured.evaluate(ASK, texts)) == ""


@pytest.mark.parametrize("how", ["gone", "damaged"])
def test_a_picture_that_is_not_whole_is_dropped_and_the_bundle_read(pictured, how):
    assert pictured.evaluate(CHANGED, how)
    assert "app.bin" in reloaded(pictured)
    assert not pictured.evaluate(MADE)


def test_nothing_that_was_typed_is_in_it(pictured):
    pictured.get_by_label("Amount", exact=True).fill("271.25 g")
    expect(figure(pictured, "drawn_b")).not_to_have_text(drawn(200))
    assert pictured.evaluate("""async (text) => {
      const kept = await caches.match(new URL("../picture", document.querySelector("script[type=module]").src));
      const memory = new TextDecoder("latin1").decode(await kept.arrayBuffer());
      return [memory.includes(text), memory.includes("catalogue")];
    }""", "271.25") == [False, True]


BUNDLE = """async () => (await (await caches.match(
  new URL("../app.bin", document.querySelector("script[type=module]").src))).arrayBuffer()).byteLength"""


def test_a_reload_past_the_service_worker_takes_nothing_from_what_is_kept(phone, served):
    """As by the keys for a hard reload: the interpreter comes packed then, and the engine starts from its picture."""
    before = with_picture(phone, served.url).evaluate(BUNDLE)
    phone.context.new_cdp_session(phone).send("Page.reload", {"ignoreCache": True})
    until(phone, "() => !navigator.serviceWorker.controller")
    phone.get_by_label("Amount", exact=True).fill("300")
    expect(figure(phone, "drawn_b")).to_have_text(drawn(300))
    phone.wait_for_timeout(500)  # what might be written is written by then
    assert phone.evaluate(BUNDLE) == before > 1_000_000

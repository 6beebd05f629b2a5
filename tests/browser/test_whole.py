"""Each file of a build is what its SHA-256 says: half an upload is no build, and a damaged copy mends itself."""
import house
import pytest
from playwright.sync_api import expect

from .conftest import PART, POT, drawn, figure, keep, open_share, until
from .test_export import Elsewhere, elsewhere  # noqa: F401
from .test_update import BUILD, LOOK

NAMES = "() => caches.keys().then((names) => names.length)"


def one(folder, name):
    return folder / "boats" / "shop" / house.build().base / name


def halve(path):
    """An upload that broke off at the end of a line: what came is a script, a style or a picture all the same."""
    whole = path.read_bytes()
    at = whole.rfind(b"\n", 0, len(whole) // 2)
    path.write_bytes(whole[:at + 1 if at > 0 else len(whole) // 2])
    return whole


@pytest.fixture
def hurt(chromium):
    """A phone on which scripts may fail: half of one does."""
    context = chromium.new_context(viewport={"width": 360, "height": 740}, locale="en-GB")
    context.add_init_script(PART)
    context.set_default_timeout(30_000)
    yield context.new_page()
    context.close()


@pytest.mark.parametrize("name", ["app.css", "js/main.js", "icons/app.svg", "app.bin"])
def test_half_a_file_on_a_static_host_is_no_build(hurt, elsewhere, tmp_path, name):  # noqa: F811
    path = one(tmp_path, name)
    whole = halve(path)
    hurt.goto(elsewhere.url + "safety/")
    expect(hurt.locator("[data-notice=half]")).to_be_attached(timeout=40_000)  # what hinders now may stand before it
    assert hurt.evaluate(NAMES) == 0
    path.write_bytes(whole)
    hurt.goto(elsewhere.url)
    until(hurt, "() => navigator.serviceWorker.ready.then(() => true)")
    until(hurt, "() => caches.keys().then((names) => names.length === 1)")
    elsewhere.stop()
    hurt.goto(elsewhere.url + "log/")
    expect(hurt.locator("[data-none]")).to_be_visible()


def test_half_a_script_of_later_does_no_harm_because_the_bundle_holds_it_whole(hurt, elsewhere, tmp_path):  # noqa: F811
    for name in ("js/views/log.js", "js/share/qr_code.js"):
        halve(one(tmp_path, name))
    keep(hurt, elsewhere.url)
    elsewhere.stop()
    hurt.goto(elsewhere.url + "log/")
    expect(hurt.locator("[data-none]")).to_be_visible()
    hurt.goto(elsewhere.url)
    open_share(hurt)


def no_script(path):
    """An upload that broke off within a line: what came is no script at all."""
    whole = path.read_bytes()
    path.write_bytes(whole[:whole.index(b"(", len(whole) // 2) + 1])


def test_half_a_view_that_nothing_keeps_whole_is_said_by_its_name_at_once(chromium, elsewhere, tmp_path):  # noqa: F811
    no_script(one(tmp_path, "js/views/log.js"))
    context = chromium.new_context(service_workers="block")
    page = context.new_page()
    opened = []
    page.on("framenavigated", lambda frame: opened.append(frame.url))
    page.goto(elsewhere.url + "log/")
    expect(page.locator("[data-notice=half]")).to_contain_text("(log.js)")
    assert len(opened) == 1  # no reload mends what the host itself has by half
    context.close()


def test_half_a_view_at_a_first_visit_is_whole_once_this_phone_keeps_it(hurt, elsewhere, tmp_path):  # noqa: F811
    no_script(one(tmp_path, "js/views/log.js"))
    hurt.goto(elsewhere.url + "log/")
    expect(hurt.locator("[data-none]")).to_be_visible()


def test_half_a_file_of_a_newer_build_leaves_the_old_one(phone, served, other_build):
    def half(app):
        async def answer(scope, receive, send):
            short = scope["type"] == "http" and scope["path"].endswith("js/main.js")

            async def cut(message):
                if short and message["type"] == "http.response.start":
                    message = dict(message, headers=[h for h in message["headers"] if h[0] != b"content-length"])
                elif short:
                    message = dict(message, body=message["body"][:len(message["body"]) // 2])
                await send(message)

            asked = [header for header in scope.get("headers", ()) if header[0] != b"accept-encoding"]
            await app(dict(scope, headers=asked) if short else scope, receive, cut)

        return answer

    keep(phone, served.url)
    before = phone.evaluate(BUILD)
    served.stop()
    served.start(other_build, wrap=half)
    phone.evaluate(LOOK + ".catch(() => null)")
    expect(phone.locator("[data-notice=half]")).to_contain_text("still works")
    assert phone.evaluate("navigator.serviceWorker.getRegistration().then((one) => Boolean(one.waiting))") is False
    phone.reload()
    assert phone.evaluate(BUILD) == before


SPOIL = """async ([ending, how]) => {
  const [name] = await caches.keys();
  const cache = await caches.open(name);
  const request = (await cache.keys()).find((one) => new URL(one.url).pathname.endsWith(ending));
  const kept = await cache.match(request);
  const text = await kept.clone().text();
  if (how === "gone") return cache.delete(request);
  return cache.put(request, new Response(text.slice(0, text.length / 2), { headers: kept.headers }));
}"""


def forget(page):
    """What the browser itself keeps of files that were fetched once would mend them too."""
    session = page.context.new_cdp_session(page)
    session.send("Network.clearBrowserCache")
    session.detach()


@pytest.mark.parametrize("how", ["half", "gone"])
@pytest.mark.parametrize("ending", ["js/main.js", "app.bin", "app.css", "/safety/"])
def test_a_kept_file_that_is_damaged_is_fetched_again(phone, served, ending, how):
    keep(phone, served.url)
    phone.evaluate(SPOIL, [ending, how])
    phone.goto(served.url + "/safety/")
    expect(phone.locator("[data-line=gloves]")).to_be_visible()
    phone.goto(served.url)
    expect(figure(phone, "drawn_b")).to_be_visible()
    served.stop()
    phone.goto(served.url + "/safety/")
    expect(phone.locator("[data-line=gloves]")).to_be_visible()
    phone.goto(served.url)
    phone.get_by_label("Amount", exact=True).fill("200")
    expect(figure(phone, "drawn_b")).to_have_text(drawn(200))


@pytest.mark.parametrize("how", ["half", "gone"])
@pytest.mark.parametrize(("ending", "path", "seen"), [("/safety/", "/safety/", "[data-line=gloves]"),
                                                      ("js/views/log.js", "/log/", "[data-none]")])
def test_a_damaged_page_or_view_is_made_again_without_signal(phone, served, ending, path, seen, how):
    keep(phone, served.url)
    phone.evaluate(SPOIL, [ending, how])
    forget(phone)
    served.stop()
    phone.goto(served.url + path)
    expect(phone.locator(seen)).to_be_visible()


@pytest.mark.parametrize("how", ["half", "gone"])
def test_a_damaged_view_whose_bundle_is_damaged_too_is_fetched_again(phone, served, how):
    keep(phone, served.url)
    for ending in ("js/views/log.js", "app.bin"):
        phone.evaluate(SPOIL, [ending, how])
    forget(phone)
    phone.goto(served.url + "/log/")
    expect(phone.locator("[data-none]")).to_be_visible()
    served.stop()
    phone.goto(served.url + "/log/")
    expect(phone.locator("[data-none]")).to_be_visible()


def test_what_cannot_be_mended_without_signal_is_said_and_mends_itself_later(hurt, served):
    keep(hurt, served.url)
    hurt.evaluate(SPOIL, ["js/main.js", "half"])
    forget(hurt)
    served.stop()
    hurt.goto(served.url)
    expect(hurt.get_by_text("is damaged")).to_be_visible()
    served.start()
    hurt.goto(served.url)
    expect(figure(hurt, "drawn_b")).to_be_visible()


def test_a_damaged_engine_without_signal_is_said_by_its_name(hurt, served):
    keep(hurt, served.url)
    hurt.evaluate(SPOIL, ["app.bin", "half"])
    forget(hurt)
    served.stop()
    hurt.goto(served.url)
    expect(hurt.locator("[data-notice=damaged]")).to_contain_text("app.bin", timeout=30_000)


SAID_AGAIN = """() => navigator.serviceWorker.dispatchEvent(new MessageEvent("message", {
  data: { damaged: "app.bin", waits: true } }))"""
OTHER = "(before) => (document.documentElement.dataset.build ?? before) !== before"


def spoiled(page, served, other_build, ending, pot):
    """A phone whose copy is damaged by one file, which its host has no more: the host is a newer build by now."""
    keep(page, served.url)
    if pot:
        assert page.evaluate(POT)
    before = page.evaluate(BUILD)
    page.evaluate(SPOIL, [ending, "half"])
    forget(page)
    served.stop()
    served.start(other_build)
    page.goto(served.url)
    return before


@pytest.mark.parametrize("ending", ["js/main.js", "app.bin"])
def test_a_damaged_build_whose_host_has_a_newer_one_becomes_the_newer(hurt, served, other_build, ending):
    before = spoiled(hurt, served, other_build, ending, pot=False)
    hurt.wait_for_function(OTHER, arg=before)
    expect(figure(hurt, "drawn_b")).to_be_visible()


@pytest.mark.parametrize("ending", ["js/main.js", "app.bin"])
def test_while_a_pot_runs_the_newer_one_waits_and_says_so(hurt, served, other_build, ending):
    before = spoiled(hurt, served, other_build, ending, pot=True)
    expect(hurt.get_by_text("It waits because a pot")).to_be_visible(timeout=40_000)
    hurt.wait_for_timeout(1500)
    assert hurt.evaluate(BUILD) in (before, None)  # the page that the worker makes itself names none
    key = hurt.get_by_role("button", name="Update now")
    expect(key).to_be_visible()
    assert key.bounding_box()["height"] >= 48
    if ending == "app.bin":  # each start of the engine finds it damaged once more: the button stays under the finger
        kept = key.element_handle()
        hurt.evaluate(SAID_AGAIN)
        hurt.wait_for_timeout(200)
        assert kept.is_visible() and hurt.locator("[data-notice=damaged]").count() == 1
    key.click()
    hurt.wait_for_function(OTHER, arg=before)
    hurt.goto(served.url + "/clock/")
    expect(hurt.locator("[data-pots]")).to_contain_text("300 g")


def test_half_a_script_on_a_first_visit_is_said_by_its_name(hurt, elsewhere, tmp_path):  # noqa: F811
    path = one(tmp_path, "js/main.js")
    path.write_bytes(path.read_bytes()[:700])
    hurt.goto(elsewhere.url)
    expect(hurt.locator("[data-notice=half]")).to_contain_text("main.js")

"""Another language: offered once, chosen by hand, kept for a shop without signal, and left again."""
import pytest
from covemix.shared.words.written import sentences
from playwright.sync_api import expect

from .conftest import figure, fresh, keep

GERMAN, ENGLISH = sentences("de"), sentences("en")


def speaks(page, language):
    expect(page.locator(f"html[lang={language}]")).to_be_attached()


def choose(page, url, language):
    page.goto(f"{url}/kit/")
    page.locator(f"[name=set-language][value={language}]").check(force=True)
    speaks(page, language)


@pytest.fixture
def german(chromium):
    with fresh(chromium, locale="de-DE") as (page, _):
        yield page


def test_a_phone_that_speaks_it_gets_it_and_keeps_it_without_signal(german, served):
    keep(german, served.url)
    speaks(german, "de")
    served.stop()
    for screen, label in (("joint", "page-joint"), ("", "page-pour")):
        german.goto(f"{served.url}/{screen}")
        speaks(german, "de")
        expect(german.locator("h1")).to_have_text(GERMAN[label])
    german.fill("[name=amount]", "200")
    expect(figure(german, "drawn_b")).to_contain_text("mL")
    assert german.evaluate("navigator.serviceWorker.controller.scriptURL").endswith("/sw.de.js")


def test_it_is_chosen_by_hand_and_left_again_and_what_was_typed_stays(phone, served):
    keep(phone, served.url)
    phone.fill("[name=amount]", "222")
    for language, sentences_of in (("de", GERMAN), ("en", ENGLISH)):
        choose(phone, served.url, language)
        expect(phone.locator("h1")).to_have_text(sentences_of["page-kit"])
        served.stop()
        phone.goto(served.url)
        speaks(phone, language)
        expect(phone.locator("[name=amount]")).to_have_value("222")
        expect(phone.locator("h1")).to_have_text(sentences_of["page-pour"])
        served.start()


def test_without_signal_it_says_so_and_nothing_changes(phone, served):
    keep(phone, f"{served.url}/kit/")
    served.stop()
    phone.locator("[name=set-language][value=de]").click(force=True)  # it is turned back at once
    expect(phone.locator("[data-notice=language]")).to_contain_text(ENGLISH["language-unfetched"])
    expect(phone.locator("[name=set-language][value=en]")).to_be_checked()
    phone.reload()
    speaks(phone, "en")


def test_where_nothing_is_kept_the_server_answers_in_the_chosen_language(chromium, served):
    with fresh(chromium, service_workers="block") as (phone, _):
        phone.add_init_script("delete Navigator.prototype.serviceWorker")
        choose(phone, served.url, "de")
        phone.goto(f"{served.url}/joint/")
        speaks(phone, "de")


def test_a_phone_that_speaks_it_is_asked_once(german, served):
    """Its copy is in English: somebody chose that, or it came before the language did."""
    german.context.add_cookies([{"name": "language", "value": "en", "url": served.url}])
    german.goto(served.url)
    german.evaluate("navigator.serviceWorker.ready.then(() => true)")
    notice = german.locator("[data-notice=language]")
    expect(notice).to_contain_text(GERMAN["language-offer"])
    notice.get_by_role("button", name=ENGLISH["language-stay"]).click()
    german.reload()
    expect(figure(german, "drawn_b")).to_be_visible()
    expect(notice).to_have_count(0)


def test_of_several_that_a_phone_speaks_the_first_that_is_ours_is_offered(phone, served):
    phone.add_init_script("Object.defineProperty(navigator, 'languages', { get: () => ['is', 'de', 'en'] })")
    phone.goto(served.url)
    expect(phone.locator("[data-notice=language]")).to_contain_text(GERMAN["language-offer"])


def test_the_offer_is_taken(german, served):
    german.context.add_cookies([{"name": "language", "value": "en", "url": served.url}])
    german.goto(served.url)
    german.evaluate("navigator.serviceWorker.ready.then(() => true)")
    german.locator("[data-notice=language]").get_by_role("button", name="Deutsch").click()
    speaks(german, "de")
    served.stop()
    german.reload()
    speaks(german, "de")


KEPT = "gone 1020 s 240 g cup 22.5 °C"


def test_what_a_system_has_learned_stands_in_the_words_of_the_page_and_is_kept_without(german, served):
    """Keys and figures in the kit, German in its form and where it is chosen, and keys again when it is kept."""
    german.goto(f"{served.url}/kit/")
    german.evaluate("""async (timings) => {
      const { put } = await part("store/store.js");
      await put("kit", { record: "system", made: 1, typed: { name: "Shed mix", by_weight: "100:40", timings } });
    }""", KEPT)
    german.reload()
    german.locator("[data-shelf=system] .entry").get_by_role("button", name=GERMAN["entry-change"]).click()
    field = german.locator("[name='system.timings']")
    expect(field).to_have_value("steif 1020 s 240 g Becher 22,5 °C")
    field.fill("steif 1020 s 240 g Becher 22,5 °C; brauchbar 900 s 100 g Schale 19,5 °C")
    german.locator("[data-keep]").click()
    expect(german.locator("[data-listing]")).to_be_visible()
    kept = """async () => (await (await part("store/store.js")).all("kit"))[0].typed.timings"""
    assert german.evaluate(kept) == KEPT + "; good 900 s 100 g tray 19.5 °C"
    german.goto(f"{served.url}/clock/")
    expect(german.locator("[name='system.timings']")).to_have_attribute(
        "placeholder", "steif 1020 s 240 g Becher 22,5 °C; brauchbar 900 s 100 g Schale 19,5 °C")

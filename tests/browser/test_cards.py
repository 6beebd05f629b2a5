"""A class of twelve: numbered cards from one screen, each on a page of its own."""
import pymupdf
import pytest
import zxingcpp
from PIL import Image
from playwright.sync_api import expect

from .conftest import figure, fresh, keep, open_share, until

KEPT = """async () => {
  const own = await Promise.all((await caches.keys()).map(async (name) => (await caches.open(name)).keys()));
  return own.flat().some(({ url }) => url.endsWith("numbered.late.js"));
}"""
# words of one language: the field, the key, the number, lines, the caution's name
WORDS = {"en-GB": ("Cards for a class", "Share", "Print a card", "{} of 12",
                   ("Name", "Empty cup weighs", "Hardener went in at"), "Caution"),
         "de": ("Karten für einen Kurs", "Teilen", "Karte drucken", "{} von 12",
                ("Name", "Leerer Becher wiegt", "Härter kam dazu um"), "Vorsicht")}
LONG = "?amount=240&thicken=yes&stiffness=stands"


def sheets(page, paper):
    """What comes out of the printer: each sheet's words and picture."""
    with pymupdf.open("pdf", page.pdf(format=paper, prefer_css_page_size=True)) as found:
        return [(" ".join(one.get_text().replace("\u00a0", " ").split()), one.get_pixmap(dpi=150))
                for one in found]


def code(drawn):
    picture = Image.frombytes("RGB", (drawn.width, drawn.height), drawn.samples)
    return [one.text for one in zxingcpp.read_barcodes(picture)]


@pytest.mark.parametrize("language", WORDS)
def test_twelve_cards_are_twelve_whole_pages_without_signal(chromium, served, language):
    field, share, key, number, lines, caution = WORDS[language]
    with fresh(chromium, locale=language) as (page, _):
        keep(page, served.url)
        page.reload()
        until(page, KEPT)
        served.stop()
        page.goto(served.url + "/" + LONG)
        expect(figure(page, "filler")).to_be_visible()
        page.evaluate("window.print = () => {}")
        for paper in ("A4", "Letter"):
            page.get_by_role("button", name=share).click()
            page.get_by_label(field).fill("12")
            page.get_by_role("button", name=key).click()
            link = page.locator("input[data-link]").input_value()
            made = sheets(page, paper)
            assert len(made) == 12
            for place, (words, _) in enumerate(made):
                for told in (number.format(place + 1), *lines, caution):
                    assert told in words, (paper, place, told)
            assert code(made[0][1]) == code(made[11][1]) == [link]


def test_one_card_is_as_before_and_so_is_the_next_one_after_twelve(phone, standing):
    phone.goto(standing.url)
    expect(figure(phone, "drawn_b")).to_be_visible()
    phone.evaluate("window.print = () => {}")
    for count, pages in (("12", 12), ("1", 1), ("99", 30), ("none", 1)):
        phone.get_by_role("button", name="Share").click()
        phone.get_by_label("Cards for a class").fill(count)
        phone.get_by_role("button", name="Print a card").click()
        made = sheets(phone, "A4")
        assert len(made) == pages
        assert ("Lot numbers" in made[0][0]) == (pages == 1)
        assert (f"1 of {pages}" in made[0][0]) == (pages > 1)


def test_cards_are_numbered_where_something_is_poured_alone(phone, standing):
    phone.goto(standing.url + "/joint/")
    open_share(phone)
    expect(phone.get_by_label("Cards for a class")).to_be_hidden()

"""Hand over: the code read by an independent reader, links good and hostile, the card on paper."""
import io
import re

import pymupdf
import pytest
import segno
import zxingcpp
from PIL import Image
from playwright.sync_api import expect

from .conftest import CHROMIUM, FLAGS, drawn, figure, fresh, grow_old, keep, open_share, unanswered


@pytest.fixture
def sheet(phone, standing):
    phone.goto(standing.url)
    phone.get_by_label("Amount", exact=True).fill("187")
    expect(figure(phone, "drawn_b")).to_have_text(drawn(187))
    open_share(phone)
    return phone


def read_code(page, place="[data-code] .code"):
    """The text of the code on the screen, by a reader that is not ours."""
    picture = Image.open(io.BytesIO(page.locator(place).screenshot()))
    return zxingcpp.read_barcodes(picture)[0].text


def test_the_code_is_the_link_and_the_link_opens_the_same_numbers(sheet, standing):
    link = sheet.get_by_label("Link", exact=True).input_value()
    assert read_code(sheet) == link
    assert link.startswith(standing.url + "/?v=1&") and len(link) < 250
    other = sheet.context.browser.new_context()
    page = other.new_page()
    page.goto(link)
    expect(figure(page, "drawn_b")).to_have_text(drawn(187))
    other.close()


def test_the_code_of_plain_words_needs_no_signal_and_no_covemix(outside, sheet):
    sheet.get_by_role("radio", name="Plain words").check()
    words = sheet.locator("[data-words]")
    expect(words).to_contain_text("Hardener, in its own syringe: " + drawn(187))
    outside.library("qr plain words", "ZXing (library), an independent reader of ISO/IEC 18004", words.text_content(),
            read_code(sheet))


@pytest.mark.parametrize(("link", "why"), [
    ("none of it", "not a Covemix link"),
    ("javascript:alert(1)", "not a Covemix link"),
    ("https://example.org/shop?q=boats", "has nothing"),
    ("{url}/?v=9&amount=200", "newer Covemix"),
    ("{url}/?v=1&amount=20", "cut short"),
    ("{url}/?<script>alert(1)</script>=1", "has nothing"),
    ("{url}/?amount=" + "2" * 200_000, "too long"),
])
def test_a_pasted_link_that_is_none_is_refused_in_a_sentence(same_phone, standing, link, why):
    amount = same_phone.get_by_label("Amount", exact=True)
    if not same_phone.url.startswith(standing.url):
        same_phone.goto(standing.url)
        amount.fill("187")
        expect(figure(same_phone, "drawn_b")).to_have_text(drawn(187))
    same_phone.get_by_role("button", name="Share").click()
    told = same_phone.locator("[data-paste-error]")
    expect(told).to_be_hidden()
    same_phone.get_by_label("Paste a link").fill(link.replace("{url}", standing.url))
    same_phone.get_by_role("button", name="Check the link").click()
    expect(told).to_be_visible()
    expect(told).to_contain_text(why)
    same_phone.get_by_role("dialog").get_by_role("button", name="Close").click()
    expect(amount).to_have_value("187")


def test_a_pasted_link_is_shown_before_it_replaces_anything(sheet, standing):
    sheet.get_by_label("Paste a link").fill("https://example.org/elsewhere/?amount=200")
    sheet.get_by_role("button", name="Check the link").click()
    expect(sheet.locator("[data-notice=link]")).to_contain_text("Amount: 200 g")
    expect(sheet.get_by_role("button", name="Keep mine")).to_be_focused()
    expect(figure(sheet, "drawn_b")).to_have_text(drawn(200))
    assert '"187"' in sheet.evaluate("localStorage['covemix.typed.pour']")
    sheet.get_by_role("button", name="Use these").click()
    expect(figure(sheet, "drawn_b")).to_have_text(drawn(200))
    sheet.get_by_role("button", name="Undo").click()
    expect(figure(sheet, "drawn_b")).to_have_text(drawn(187))


@pytest.mark.parametrize("path", ["joint/", "joint/index.html", "boats/joint"])
def test_a_pasted_link_of_another_screen_opens_there(sheet, path):
    """Wherever the app that made it stands."""
    sheet.get_by_label("Paste a link").fill(f"https://example.org/{path}?length=7")
    sheet.get_by_role("button", name="Check the link").click()
    expect(sheet.locator("[data-notice=link]")).to_contain_text("Seam length: 7 m")
    assert sheet.url.split("?")[0].endswith("/joint/")


def test_a_browser_that_gives_no_camera_says_what_to_do(phone, standing):
    phone.add_init_script("Object.defineProperty(Navigator.prototype, 'mediaDevices', { value: undefined })")
    phone.goto(standing.url)
    expect(figure(phone, "drawn_b")).to_be_visible()
    phone.get_by_role("button", name="Share").click()
    expect(phone.get_by_role("button", name="Scan a code")).to_be_hidden()
    expect(phone.get_by_text("use the phone's camera")).to_be_visible()


# what a browser's own reader finds in a frame of the camera; the camera is Chromium's own false one
DETECTOR = """window.BarcodeDetector = class {
  async detect(video) { return video.videoWidth ? [{ rawValue: CODE }] : []; }
};"""


@pytest.fixture
def camera(chromium):
    """A browser of its own, for the camera belongs to a whole browser."""
    browser = chromium.browser_type.launch(executable_path=CHROMIUM, args=[
        *FLAGS, "--use-fake-device-for-media-stream", "--use-fake-ui-for-media-stream"])
    page = browser.new_page(viewport={"width": 360, "height": 740})
    page.set_default_timeout(20_000)
    yield page
    browser.close()


def scan(page, url, code):
    page.add_init_script(DETECTOR.replace("CODE", repr(code)))
    page.goto(url)
    page.get_by_label("Amount", exact=True).fill("187")
    expect(figure(page, "drawn_b")).to_have_text(drawn(187))
    page.get_by_role("button", name="Share").click()
    page.get_by_role("button", name="Scan a code").click()


def test_a_scanned_link_is_shown_before_it_replaces_anything(camera, standing):
    scan(camera, standing.url, "https://example.org/elsewhere/?amount=200")
    expect(camera.locator("[data-notice=link]")).to_contain_text("Amount: 200 g")
    expect(figure(camera, "drawn_b")).to_have_text(drawn(200))
    assert '"187"' in camera.evaluate("localStorage['covemix.typed.pour']")


def test_a_scanned_code_of_something_else_is_refused_and_the_camera_is_off(camera, standing):
    scan(camera, standing.url, "WIFI:S:shed;;")
    expect(camera.locator("[data-paste-error]")).to_contain_text("not a Covemix link")
    expect(camera.locator("[data-video]")).to_be_hidden()
    assert camera.evaluate("document.querySelector('[data-video]').srcObject.getTracks()[0].readyState") == "ended"


def film(path, text):
    """What a camera sees that is held before a code, as Chromium's false camera plays it: 640 x 480, of greys."""
    code = io.BytesIO()
    segno.make(text, error="m").save(code, kind="png", scale=6, border=4)
    shed = Image.new("L", (640, 480), 120)
    shed.paste(Image.open(code).convert("L").rotate(7, expand=True, fillcolor=120), (170, 60))
    frame = b"FRAME\n" + shed.tobytes() + bytes([128]) * (640 * 480 // 2)
    path.write_bytes(b"YUV4MPEG2 W640 H480 F10:1 Ip A1:1 C420jpeg\n" + frame * 3)
    return path


LINK = "https://example.org/elsewhere/?amount=200"


@pytest.fixture
def filmed(chromium, tmp_path):
    """A browser that has no reader of codes, and a camera before one."""
    browser = chromium.browser_type.launch(executable_path=CHROMIUM, args=[
        *FLAGS, "--use-fake-device-for-media-stream", "--use-fake-ui-for-media-stream",
        f"--use-file-for-fake-video-capture={film(tmp_path / 'code.y4m', LINK)}"])
    page = browser.new_page(viewport={"width": 360, "height": 740})
    page.add_init_script("delete window.BarcodeDetector")
    page.set_default_timeout(20_000)
    yield page
    browser.close()


def test_a_browser_without_a_reader_of_codes_fetches_one_when_a_code_is_scanned_and_keeps_it(filmed, served):
    """Really read from the camera's picture. Without signal it is said that it is not here; the next tap has it."""
    decoders = []
    filmed.on("request", lambda request: decoders.append(request.url) if "decoder" in request.url else None)
    keep(filmed, served.url)
    filmed.get_by_label("Amount", exact=True).fill("187")
    expect(figure(filmed, "drawn_b")).to_have_text(drawn(187))
    open_share(filmed)
    assert decoders == []
    served.stop()
    scans = filmed.get_by_role("button", name="Scan a code")
    scans.click()
    expect(filmed.locator("[data-paste-error]")).to_contain_text("could not be loaded")
    expect(filmed.locator("[data-notice=damaged]")).to_have_count(0)
    served.start()
    scans.click()
    expect(filmed.locator("[data-notice=link]")).to_contain_text("Amount: 200 g")
    served.stop()
    filmed.get_by_role("button", name="Keep mine").click()
    expect(figure(filmed, "drawn_b")).to_have_text(drawn(187))
    filmed.get_by_role("button", name="Share").click()
    scans.click()
    expect(filmed.locator("[data-notice=link]")).to_contain_text("Amount: 200 g")


def printed(page, key="Print a card"):
    """What comes out of the printer once the card is laid: each sheet's words, and the codes that a reader finds."""
    page.evaluate("window.print = () => {}")
    page.get_by_role("button", name=key).click()
    expect(page.locator("html")).to_have_attribute("data-print", "card")
    with pymupdf.open("pdf", page.pdf(format="A4", prefer_css_page_size=True)) as sheets:
        for sheet in sheets:
            words = " ".join(sheet.get_text().replace("\u00a0", " ").split())
            drawn = sheet.get_pixmap(dpi=200)
            picture = Image.frombytes("RGB", (drawn.width, drawn.height), drawn.samples)
            yield words, [code.text for code in zxingcpp.read_barcodes(picture)]


def test_the_card_of_a_putty_is_one_sheet_with_all_that_is_poured(phone, standing):
    phone.goto(standing.url + "/?amount=240&thicken=yes&stiffness=stands")
    expect(figure(phone, "filler")).to_have_text("91.3 g")
    open_share(phone)
    [(words, codes)] = printed(phone)
    for told in ("Resin system 3 : 1 by volume", "in its own syringe 163 mL", "in its own syringe 54 mL",
                 "Wood flour 91.3 g", "Caution", "Date and time", "Lot numbers"):
        assert told in words
    assert not any(chrome in words for chrome in ("Share", "Print a card", "Log this batch", "Kit"))
    assert codes == [phone.locator("input[data-link]").input_value()]


def test_each_batch_of_a_plan_is_a_sheet_with_the_codes_of_its_pours(phone, standing):
    phone.goto(standing.url + "/plan/?temperature=20&start=9:00" + "".join(
        f"&pieces.{place}.length=4&pieces.{place}.putty=150&pieces.{place}.wet=90" for place in range(3)))
    expect(phone.locator("[data-line=batch_2]")).to_be_visible()
    open_share(phone)
    sheets = list(printed(phone))
    batches = [(words, codes) for words, codes in sheets if "Batch" in words.split(" ")[1:3]]
    assert len(batches) > 1 and len(batches) < len(sheets) < len(batches) + 3
    for words, codes in batches:
        assert all(told in words for told in ("Mix and bag the putty", "Bag empty", "by ", "Caution", "Lot numbers"))
        assert len(codes) == 2 and all(code.startswith(standing.url + "/?v=1&") for code in codes)
    phone.goto(batches[0][1][0])
    expect(phone.get_by_label("Amount", exact=True)).to_have_value(re.compile(r"^\d+ g$"))


def test_plan_prints_its_day_on_one_sheet_and_each_batch_on_another_by_a_key_of_its_own(phone, standing):
    """The demo boat at 20 degC: fifteen pieces in eight batches, none above the 300 g that a bag or cup may hold. Since
    tape alone has its place in it, its day takes a second sheet; of twelve pieces nothing goes over onto one."""
    phone.goto(standing.url + "/boat/")
    phone.get_by_role("link", name="Plan the insides").click()
    phone.get_by_label("Wood and air temperature").fill("20")
    expect(figure(phone, "batches")).to_have_text("8 batches")
    day, over, *batches = [words for words, _ in printed(phone, "Print the plan")]
    assert all(told in day for told in ("Piece 15", "To mix 8 batches", "Skeg strip", "Limited by", "Batch 1 "))
    assert "Batch 8 " in over and "Caution" in over and "Scan to open" not in over
    assert [words.startswith(f"Covemix Batch {place + 1} ") for place, words in enumerate(batches)] == [True] * 8
    phone.goto(standing.url + "/plan/?temperature=20" + "".join(
        f"&pieces.{place}.length=1&pieces.{place}.putty=90&pieces.{place}.wet=40" for place in range(12)))
    expect(figure(phone, "batches")).to_be_visible()
    phone.get_by_role("button", name="Use these").click()
    day, *batches = [words for words, _ in printed(phone, "Print the plan")]
    assert all(told in day for told in ("Piece 12", "To mix", "Limited by", "Caution"))
    assert len(batches) > 3 and all(words.startswith("Covemix Batch ") for words in batches)


@pytest.mark.parametrize("link", ["?v=9&amount=200", "?v=1&amount=20", "?q=1", "?amount=" + "2" * 30_000])
def test_an_opened_link_that_is_none_changes_nothing_without_signal(phone, served, link):
    keep(phone, served.url)
    phone.get_by_label("Amount", exact=True).fill("187")
    expect(figure(phone, "drawn_b")).to_have_text(drawn(187))
    served.stop()
    phone.goto(served.url + "/" + link)
    expect(phone.locator("[data-notice=link]")).to_contain_text("Nothing was changed.")
    expect(figure(phone, "drawn_b")).to_have_text(drawn(187))


def test_the_card_on_paper_holds_the_figures_the_code_and_the_caution(sheet):
    sheet.evaluate("window.print = () => {}")
    sheet.get_by_role("button", name="Print a card").click()
    sheet.emulate_media(media="print")
    expect(sheet.locator("[data-card] [data-rank=answer]").nth(1)).to_contain_text(drawn(187))
    expect(sheet.locator("[data-card-caution]")).to_be_visible()
    expect(sheet.locator("[data-main]")).to_be_hidden()
    assert read_code(sheet, ".card .code").startswith("http")
    assert sheet.evaluate("document.documentElement.scrollWidth <= innerWidth")


MODULE = 5.5  # CSS px, a millimetre of a phone of 360 px and 65 mm across
LONG = "/plan/?temperature=20&start=9:00" + "".join(
    f"&pieces.{place}.name=Piece+{place}&pieces.{place}.length=1&pieces.{place}.putty=90&pieces.{place}.wet=40"
    for place in range(6))


def module(page):
    """CSS px of a module, the quiet ones counted; and whether all of the code is on the screen."""
    code = page.locator("[data-code] .code")
    box = code.bounding_box()
    side = float(code.get_attribute("viewBox").split()[2])
    return box["width"] / side, box["x"] >= -0.5 and box["x"] + box["width"] <= page.viewport_size["width"] + 0.5


def test_a_code_on_a_phone_has_modules_of_a_millimetre_or_is_none(chromium, standing):
    with fresh(chromium, has_touch=True, is_mobile=True) as (page, _):
        page.goto(standing.url + "/?amount=187&thicken=yes&stiffness=stands&units=us")
        expect(page.locator("[data-form].live")).to_be_attached()
        open_share(page)
        wide, whole = module(page)
        assert wide >= MODULE - 0.01 and whole
        assert read_code(page) == page.get_by_label("Link", exact=True).input_value()
        assert page.locator("[data-sheet]").evaluate("(one) => one.scrollWidth <= one.clientWidth")
        page.goto(standing.url + LONG)
        expect(page.locator("[data-line=batch_2]")).to_be_visible()
        page.get_by_role("button", name="Share").click()
        expect(page.locator("[data-code]")).to_have_text("Too much for a QR code. Send the link instead.")


def test_a_desk_shows_the_code_that_is_too_dense_for_a_phone(chromium, standing):
    with fresh(chromium, viewport={"width": 1280, "height": 800}) as (page, _):
        page.goto(standing.url + LONG)
        expect(page.locator("[data-line=batch_2]")).to_be_visible()
        open_share(page)
        wide, whole = module(page)
        assert wide >= 3.79 and whole
        assert read_code(page) == page.get_by_label("Link", exact=True).input_value()


def said(page):
    return page.locator("[data-said]")


CLIPBOARD = "navigator.clipboard.readText()"


def test_the_link_and_the_words_are_copied_whole(sheet):
    sheet.context.grant_permissions(["clipboard-read", "clipboard-write"])
    link = sheet.get_by_label("Link", exact=True).input_value()
    sheet.get_by_role("button", name="Copy link").click()
    expect(said(sheet)).to_have_text("Link copied. It holds the values and opens without signal.")
    assert sheet.evaluate(CLIPBOARD) == link
    sheet.get_by_role("button", name="Copy as words").click()
    expect(said(sheet)).to_have_text("Text copied.")
    words = sheet.evaluate(CLIPBOARD)
    assert re.search(r"^Hardener\b.*: " + re.escape(drawn(187)), words.replace("\u00a0", " "), re.MULTILINE)
    assert words.splitlines()[-1] == link


MARKED = """() => {
  const { value, selectionStart, selectionEnd } = document.activeElement;
  return value?.slice(selectionStart, selectionEnd) || getSelection().toString();
}"""


def test_what_a_browser_will_not_copy_stands_marked_to_be_copied_by_hand(sheet):
    """As on plain http, where there is no clipboard."""
    sheet.evaluate("delete Navigator.prototype.clipboard")
    link = sheet.get_by_label("Link", exact=True).input_value()
    words = rf"^Hardener\b.*: {drawn(187)}"
    for key, marked in (("Copy as words", words), ("Copy link", f"^{re.escape(link)}$")):
        sheet.get_by_role("button", name=key).click()
        expect(said(sheet)).to_have_text("Copy the marked text above.")
        assert re.search(marked, sheet.evaluate(MARKED).replace("\u00a0", " "), re.MULTILINE)
    expect(sheet.get_by_label("Link", exact=True)).to_have_value(link)


# the phone's own sheet, which gets what is sent or ends with an error of that name
SENDS = """window.sent = [];
window.fails = "";
navigator.share = async (what) => {
  if (window.fails) throw new DOMException("", window.fails);
  window.sent.push(what);
};"""


def test_the_link_is_sent_by_the_phones_own_sheet_and_copied_where_that_fails(phone, standing):
    """Whoever closes that sheet again has changed their mind: nothing is copied."""
    phone.context.grant_permissions(["clipboard-read", "clipboard-write"])
    phone.add_init_script(SENDS)
    phone.goto(standing.url)
    phone.get_by_label("Amount", exact=True).fill("187")
    expect(figure(phone, "drawn_b")).to_have_text(drawn(187))
    open_share(phone)
    link = phone.get_by_label("Link", exact=True).input_value()
    send = phone.get_by_role("button", name="Send")
    send.click()
    phone.wait_for_function("() => window.sent.length")
    assert [sent["url"] for sent in phone.evaluate("window.sent")] == [link]
    phone.evaluate("navigator.clipboard.writeText('of before')")
    for fails, told, copied in (("AbortError", "", "of before"), ("NotAllowedError", "Link copied.", link)):
        phone.evaluate("(name) => { window.fails = name; }", fails)
        send.click()
        expect(said(phone)).to_have_text(told)
        assert phone.evaluate(CLIPBOARD) == copied


def test_a_link_that_could_not_be_made_is_said_and_made_when_it_is_asked_again(phone, standing):
    phone.goto(standing.url)
    phone.get_by_label("Amount", exact=True).fill("187")
    expect(figure(phone, "drawn_b")).to_have_text(drawn(187))
    unanswered(phone)
    phone.get_by_role("button", name="Share").click()
    expect(said(phone)).to_have_text("The link could not be made. Close this and try again.")
    phone.get_by_role("dialog").get_by_role("button", name="Close").click()
    phone.evaluate("well()")
    open_share(phone)
    expect(said(phone)).to_have_text("")
    assert read_code(phone) == phone.get_by_label("Link", exact=True).input_value()


def test_a_pasted_link_that_could_not_be_checked_is_checked_by_the_next_tap(sheet):
    unanswered(sheet)
    sheet.get_by_label("Paste a link").fill(LINK)
    check = sheet.get_by_role("button", name="Check the link")
    check.click()
    expect(sheet.locator("[data-paste-error]")).to_have_text("The link could not be checked. Try again.")
    sheet.evaluate("well()")
    check.click()
    expect(sheet.locator("[data-notice=link]")).to_contain_text("Amount: 200 g")


def test_a_browser_that_lacks_the_engine_opens_a_pasted_link_and_the_server_answers_it(phone, standing):
    grow_old(phone)
    phone.goto(standing.url)
    expect(phone.locator("form.alone")).to_be_visible()
    phone.get_by_role("button", name="Share").click()
    phone.get_by_label("Paste a link").fill(LINK)
    phone.get_by_role("button", name="Check the link").click()
    expect(figure(phone, "drawn_b")).to_have_text(drawn(200))


def test_where_no_camera_may_be_used_the_link_is_pasted_instead(phone, standing):
    phone.add_init_script("navigator.mediaDevices.getUserMedia = async () => { throw new Error('not allowed'); }")
    scan(phone, standing.url, LINK)
    expect(phone.locator("[data-paste-error]")).to_have_text("The camera cannot be used. Paste the link instead.")
    expect(phone.locator("[data-video]")).to_be_hidden()


# a camera that is drawn, and what reads it, once it did not
DRAWN = """navigator.mediaDevices.getUserMedia = async () => {
  const canvas = document.createElement("canvas");
  canvas.getContext("2d").fillRect(0, 0, 9, 9);
  window.camera = canvas.captureStream(10);
  return window.camera;
};
window.looks = 0;
window.BarcodeDetector = class {
  async detect() {
    window.looks += 1;
    if (window.looks === 1) throw new DOMException("", "InvalidStateError");
    return window.looks > 3 ? [{ rawValue: CODE }] : [];
  }
};"""
OFF = "() => window.camera.getTracks().every(({ readyState }) => readyState === 'ended')"


def test_a_picture_that_cannot_be_read_is_followed_by_the_next(phone, standing):
    phone.add_init_script(DRAWN.replace("CODE", repr(LINK)))
    phone.goto(standing.url)
    expect(figure(phone, "drawn_b")).to_be_visible()
    phone.get_by_role("button", name="Share").click()
    phone.get_by_role("button", name="Scan a code").click()
    expect(phone.locator("[data-notice=link]")).to_contain_text("Amount: 200 g")


def test_the_camera_is_off_when_the_sheet_is_closed(phone, standing):
    phone.add_init_script(DRAWN.replace("window.looks > 3", "false").replace("CODE", "''"))
    phone.goto(standing.url)
    expect(figure(phone, "drawn_b")).to_be_visible()
    phone.get_by_role("button", name="Share").click()
    phone.get_by_role("button", name="Scan a code").click()
    expect(phone.locator("[data-video]")).to_be_visible()
    phone.wait_for_function("() => window.looks > 1")
    phone.get_by_role("dialog").get_by_role("button", name="Close").click()
    phone.wait_for_function(OFF)


def test_a_page_that_is_paper_itself_is_printed_as_it_stands(phone, standing):
    phone.add_init_script("window.prints = 0; window.print = () => { window.prints += 1; };")
    phone.goto(standing.url + "/spreader/")
    phone.get_by_role("button", name="Print at 100%").click()
    assert phone.evaluate("window.prints") == 1
    assert phone.locator("html[data-print]").count() == 0


def test_a_file_that_is_handed_over_can_be_read_for_a_minute_and_is_then_let_go(phone, standing):
    phone.clock.install(time=0)
    phone.add_init_script("window.gone = []; URL.revokeObjectURL = (url) => { window.gone.push(url); };")
    phone.goto(standing.url + "/boat/")
    expect(figure(phone, "putty")).to_be_visible()
    phone.evaluate("document.querySelector('[data-files]').open = true")
    phone.clock.pause_at(3_600)
    with phone.expect_download():
        phone.get_by_role("button", name="Shopping list (CSV)").click()
    phone.clock.run_for(59_000)
    assert phone.evaluate("window.gone") == []
    phone.clock.run_for(1_500)
    [url] = phone.evaluate("window.gone")
    assert url.startswith("blob:")

"""Pictures of every screen, phone and desk, light and dark, made of the app as it stands: `make pictures`.

Beside them lies shown.json: what each shows in words, each with the size it is set in, by which
tests/browser/test_pictures_show.py finds a picture that no longer shows what the screen says.
"""
import io
import json
import re
import sys
from collections import namedtuple
from datetime import UTC, datetime, timedelta
from pathlib import Path
from urllib.parse import urlencode

import pymupdf
from covemix.server.pages import PAGES
from covemix.shared.words.written import sentences
from PIL import Image
from playwright.sync_api import expect, sync_playwright

from .conftest import BEEN, CHROMIUM, FLAGS, PART
from .serve import Server

FOLDER = Path(__file__).parents[2] / "docs" / "pictures"
SHOWN = "shown.json"
DRAFTS = ("look-cup.webp", "look-loft.webp", "look-stick.webp")  # drawn once, before there was an app
SIZES = {"phone": (360, 740, 2), "desk": (1280, 800, 1)}  # width, height, dots for each pixel
NOW = datetime(2026, 5, 12, 9, 0, tzinfo=UTC)  # of the page's clock
LIGHTS = ("light", "dark")
GERMAN = "de"  # its pictures begin with it
LOCALES = {"en": "en-GB", GERMAN: "de-DE"}
PATIENCE = 30_000  # ms
# what is shown is spoken a moment after, and of a form of one's own it is kept; an error stands at its field
ANSWERED = """!document.querySelector("[data-main][data-old]")
  && Boolean(localStorage['covemix.answer.' + document.documentElement.dataset.screen]
  || document.querySelector("[data-status]").textContent || document.querySelector("[data-error]:not([hidden])"))"""
# an invented boat's things: what a phone holds after a few days of work
KEPT = """async () => {
  const { replaceAll } = await part("store/store.js");
  const hour = 3_600_000;
  const first = Date.UTC(2026, 4, 4, 8);
  const seams = ["Keel, fore half", "Keel, aft half", "Port chine", "Starboard chine", "Stem", "Bulkhead 1"];
  const own = ["31", "28", "26", "27", "22", "24"];
  const log = seams.map((seam, place) => ({ id: place + 1, kind: "poured", when: first + place * 26 * hour,
    pairs: [["amount", "240"]],
    typed: { what: `${240 - 15 * place} g Shed mix, thickened`, seam, lot: "R12, H07",
      temperature: String(17 + place), readings: `${180 - 11 * place} g, ${240 - 15 * place} g`,
      own_time: own[place], label_time: "30", outcome: "good" } }));
  const kit = [
    { id: 1, record: "system", made: first, typed: { name: "Shed mix", by_weight: "100:33", densities: "1.14 : 0.97",
      pot_time: "30 min", pot_mass: "100 g", pot_temperature: "25", lot: "R12, H07" } },
    { id: 2, record: "scale", made: first, typed: { name: "Kitchen scale", step: "1 g" } }];
  await replaceAll({ kit, log });
}"""


def ready(page, language="en"):
    """The engine has answered, the values of a link are taken over, and what is told once is closed."""
    page.wait_for_selector("[data-form].live", state="attached", timeout=PATIENCE)
    answered(page)
    use = page.locator("[data-notice=link] button", has_text=sentences(language)["link-use"])
    if "?" in page.url:
        use.wait_for(timeout=PATIENCE)
        page.evaluate("document.querySelector('[data-status]').textContent = ''")
        use.click()
        page.wait_for_function("() => !location.search", timeout=PATIENCE)
        answered(page)
    for _ in range(2):
        for cross in page.query_selector_all(f"[data-notice] [aria-label='{sentences(language)['page-close']}']"):
            cross.dispatch_event("click")
        page.wait_for_timeout(50)
    page.evaluate("document.activeElement.blur(); scrollTo(0, 0)")


def answered(page):
    for _ in range(PATIENCE // 100):
        if page.evaluate(ANSWERED):
            return
        page.wait_for_timeout(100)


def step_by_step(page):
    page.click("[data-along-go]")
    page.wait_for_selector("[data-steps=figure]:has-text('0')")
    page.click("[data-steps=tap]")
    page.wait_for_selector("[data-steps=step]:has-text('Step 2')")


def share(page):
    page.click("[data-share]")
    page.wait_for_selector("[data-code] .code")


SEAM = ("plan/?temperature=20&start=9:00&pieces.0.name=Keel&pieces.0.length=2.4&pieces.0.putty=57&pieces.0.wet=39"
        "&scale.id=0.1g&long=whole")
SPENT = 40_000  # ms at each step, of a clock that stands still between them
REST = 750  # ms, a little more than a shaking glove is kept out
LAST = "Peel ply off from"


def seam_run(page):
    """From the wood to the peel ply, a moment after each tap."""
    page.clock.pause_at(NOW + timedelta(minutes=5))
    page.click("[data-run-go]")
    tap, part = page.locator("[data-steps=tap]"), page.locator("[data-steps=part]")
    expect(page.locator("[data-steps=step]")).to_contain_text("Step 1 of", timeout=PATIENCE)
    page.clock.run_for(REST)
    yield
    while part.inner_text() != LAST:
        page.clock.fast_forward(SPENT)
        before = tap.inner_text()
        tap.click()
        expect(tap).not_to_have_text(before, use_inner_text=True, timeout=PATIENCE)
        page.clock.run_for(REST)
        yield


SEAMS = (("Keel", 3.2), ("Chine", 4.1), ("Chine, other side", 4.1), ("Transom", 1.1))
PIECES = {f"pieces.{place}.{name}": text for place, (called, long) in enumerate(SEAMS)
          for name, text in (("name", called), ("length", long), ("putty", 150), ("wet", 90))}
ASKED = {  # what a screen that answers nothing by itself is asked
    "clock": "?air=22",
    "plan": "?temperature=20&" + urlencode(PIECES),
}
ROOM = "room=shed&draught=one&solvent=acetone&solvent_mass=50&wiping=20&air_temperature=22"
# name of the file, or of several without their size and light; paths: of one, or of some that are set side by side
# sizes: (width, height, dots) each by its name, "" where there is one file; paper: how many printed sheets
# strip: act is a generator, and each of its moments is a picture of a strip
Shot = namedtuple("Shot", ("name", "paths", "act", "sizes", "lights", "paper", "strip"), defaults=(False,))
ROW, WIDE = 5, 240  # pictures side by side on a strip, px of each


def nothing(page):
    pass


def scrolled(place):
    return lambda page: page.locator(place).first.evaluate("(one) => one.scrollIntoView({ block: 'start' })")


def opened(place):
    """A fold and what is in it."""
    return lambda page: page.locator(place).first.evaluate(
        "(one) => { one.closest('details').open = true; one.scrollIntoView({ block: 'start' }); }")


def shots():
    """All pictures."""
    found = [Shot(screen, [path + ASKED.get(screen, "")], nothing, SIZES, LIGHTS, 0) for screen, path, *_ in PAGES]
    found += [Shot(name, [path], act, SIZES, LIGHTS, 0) for name, path, act in (
        ("step-by-step", "", step_by_step), ("hand-over", "", share), ("thickened", "?amount=240&thicken=yes", nothing),
        ("stick", "?amount=240&way=stick", nothing), ("wrong", "?amount=2,3,4", nothing))]
    phone = {"phone": SIZES["phone"]}
    found += [Shot(f"us-{screen}", [path], nothing, phone, ("light",), 0) for screen, path in (
        ("pour", ""), ("joint", "joint/"), ("clock", "clock/?units=us&air=72"))]
    found += [Shot(f"{GERMAN}-{screen}", [path], nothing, phone, ("light",), 0) for screen, path in (
        ("pour", ""), ("joint", "joint/"), ("clock", "clock/?air=22"), ("safety", "safety/"))]

    def one(name, paths, act=nothing, height=740, paper=0):
        return Shot(name, paths, act, {"": (360, height, 1)}, ("light",), paper)

    found += [one(f"safety-{name}.png", [f"safety/?task={task}"], act) for name, task, act in (
        ("mixing", "mix", scrolled("[data-move=safety]")), ("sanding", "sand", scrolled("[data-move=safety]")),
        ("hot-pot", "hot", opened("[data-fold-of=aid] summary")))]
    found += [
        one("air.png", ["safety/?" + ROOM], scrolled("[data-move=air]"), 1000),
        one("sources.png", ["sources/?find=hardener"]),
        one("clock-three-airs.webp", [f"clock/?air={air}&batch=240" for air in (12, 20, 30)],
            scrolled("[data-figures=heat]"), 560),
        one("plan-hands.webp", [f"plan/?{urlencode({**PIECES, 'temperature': air, 'people': people})}"
                                for air in (18, 30) for people in (1, 2)], scrolled("[data-move=plan]"), 1300),
        one("boat-paper.png", ["boat/"], paper=3),
    ]
    found += [Shot(f"seam-run-{light}.webp", [SEAM], seam_run, {"": (360, 740, 1)}, (light,), 0, True)
              for light in LIGHTS]
    return found


def files(shot):
    """{file: (its size's name, its light)} of a shot."""
    if "" in shot.sizes:
        return {shot.name: ("", shot.lights[0])}
    return {f"{shot.name}-{size}-{light}.webp": (size, light) for size in shot.sizes for light in shot.lights}


# all words in sight, in the order of the document, each with the size it is set in [px]; of a link, only that it is one
IN_SIGHT = """() => {
  const seen = (rects) => [...rects].some(({ width, height, top, bottom, left, right }) => (
    width > 1 && height > 1 && bottom > 0 && right > 0 && top < innerHeight && left < innerWidth));
  const found = [];
  const size = (element) => Math.round(parseFloat(getComputedStyle(element).fontSize) * 10) / 10;
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_ELEMENT | NodeFilter.SHOW_TEXT);
  const skipped = "[data-status], .skip, [data-notices], script, style, option";
  const range = document.createRange();
  while (walker.nextNode()) {
    const node = walker.currentNode;
    const element = node.nodeType === Node.TEXT_NODE ? node.parentElement : node;
    if (element.closest(skipped) || !element.checkVisibility({ visibilityProperty: true })) continue;
    if (node === element) {
      if (!element.matches("input:not([type=radio], [type=checkbox]), select, textarea")) continue;
      const chosen = element.selectedOptions?.[0]?.textContent;
      const text = element.matches("[data-link]") ? "(a link)" : chosen ?? element.value;
      if (text && seen(element.getClientRects())) found.push([text.trim(), size(element)]);
    } else if (node.textContent.trim()) {
      range.selectNodeContents(node);
      if (seen(range.getClientRects())) found.push([node.textContent.replace(/\\s+/g, " ").trim(), size(element)]);
    }
  }
  return found;
}"""
BUILD = re.compile(r"\b[0-9a-f]{8,}\b")  # it is another with each change


def printed(page, sheets):
    """(picture, words) of the first sheets of a page on paper, side by side."""
    pdf = pymupdf.open(stream=page.pdf(format="A4", print_background=True))
    found = [pdf[place] for place in range(min(sheets, len(pdf)))]
    shown = [Image.open(io.BytesIO(sheet.get_pixmap(dpi=46).tobytes("png"))).convert("RGB") for sheet in found]
    return joined(shown), [[" ".join(sheet.get_text().split()), 0] for sheet in found]


def joined(pictures):
    whole = Image.new("RGB", (sum(one.width for one in pictures), max(one.height for one in pictures)), "white")
    left = 0
    for one in pictures:
        whole.paste(one, (left, 0))
        left += one.width
    return whole


def strip(pictures):
    """Contact sheet: row by row, each as wide as may be read on a page."""
    high = WIDE * pictures[0].height // pictures[0].width
    small = [one.resize((WIDE, high), Image.Resampling.LANCZOS) for one in pictures]
    rows = [joined(small[place:place + ROW]) for place in range(0, len(small), ROW)]
    whole = Image.new("RGB", (ROW * WIDE, len(rows) * high), "white")
    for place, row in enumerate(rows):
        whole.paste(row, (0, place * high))
    return whole


class Studio:
    """A browser on a server of its own, with a phone or a desk for each size and light."""

    def __init__(self, browser, url):
        self.browser, self.url, self.pages = browser, url, {}

    def page(self, size, light, language="en", runs=False):
        """A page that holds what a phone holds after a few days of work, its clock standing still until it runs."""
        key = (size, light, language, runs)
        if runs or key not in self.pages:  # a clock that ran goes not back
            width, height, dots = size
            context = self.browser.new_context(viewport={"width": width, "height": height}, color_scheme=light,
                                               device_scale_factor=dots, locale=LOCALES[language],
                                               reduced_motion="reduce", timezone_id="UTC")
            context.add_init_script(PART)
            context.add_init_script(BEEN)
            page = context.new_page()
            page.clock.install(time=NOW) if runs else page.clock.set_fixed_time(NOW)
            page.goto(self.url)
            ready(page, language)
            page.evaluate(KEPT)
            self.pages[key] = page
        return self.pages[key]

    def taken(self, shot, size, light, with_picture=True):
        """(picture, words) of a shot; the words alone are there in half of the time."""
        language = GERMAN if shot.name.startswith(f"{GERMAN}-") else "en"
        page, pictures, words = self.page(shot.sizes[size], light, language, shot.strip), [], []
        for path in shot.paths:
            page.goto("about:blank")
            page.goto(self.url + "/manifest.webmanifest")
            page.evaluate("localStorage.clear(); sessionStorage.clear()")
            if shot.name.startswith("us-"):
                page.evaluate("localStorage['covemix.set.units'] = 'us'")
            page.goto(f"{self.url}/{path}")
            ready(page, language)
            for _ in shot.act(page) or (None,):
                if shot.paper:
                    return printed(page, shot.paper)
                words += [[BUILD.sub("#", text), big] for text, big in page.evaluate(IN_SIGHT)]
                if with_picture:
                    pictures.append(Image.open(io.BytesIO(page.screenshot())).convert("RGB"))
        if not with_picture:
            return None, words
        return (strip if shot.strip else joined)(pictures), words

    def close(self):
        for page in self.pages.values():
            page.context.close()


def save(picture, path: Path):
    if path.suffix == ".png":
        picture.quantize(64).save(path, "PNG", optimize=True)
    else:
        picture.save(path, "WEBP", quality=40, method=6)


def main(folder: Path, only=()):
    folder.mkdir(parents=True, exist_ok=True)
    kept = folder / SHOWN
    shown = json.loads(kept.read_text(encoding="utf-8")) if kept.exists() else {}
    server = Server().start()
    with sync_playwright() as playwright:
        browser = playwright.chromium.launch(executable_path=CHROMIUM, args=FLAGS)
        studio = Studio(browser, server.url)
        for shot in shots():
            if only and shot.name.partition(".")[0] not in only:
                continue
            for file, (size, light) in files(shot).items():
                picture, words = studio.taken(shot, size, light)
                save(picture, folder / file)
                shown[file] = {"size": [picture.width, picture.height], "words": words}
                print(file, flush=True)
        studio.close()
        browser.close()
    server.stop()
    known = {file for shot in shots() for file in files(shot)}
    kept_of = sorted(known & shown.keys())
    rows = [f"{json.dumps(file)}: {json.dumps(shown[file], ensure_ascii=False)}" for file in kept_of]
    kept.write_text("{\n" + ",\n".join(rows) + "\n}\n", encoding="utf-8")


if __name__ == "__main__":
    main(Path(sys.argv[1]), sys.argv[2:])

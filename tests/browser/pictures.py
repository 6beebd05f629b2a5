"""Pictures of every screen, phone and desk, light and dark, made of the app as it stands: `make pictures`."""
import io
import sys
from pathlib import Path
from urllib.parse import urlencode

from covemix.server.pages import PAGES
from PIL import Image
from playwright.sync_api import sync_playwright

from .conftest import CHROMIUM, FLAGS, PART
from .serve import Server

SIZES = {"phone": (360, 740, 2), "desk": (1280, 800, 1)}  # width, height, dots for each pixel
LIGHTS = ("light", "dark")
PATIENCE = 30_000  # ms
# kept a moment after it is shown
ANSWERED = "Boolean(localStorage['covemix.answer.' + document.documentElement.dataset.screen])"
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


def ready(page):
    """The engine has answered, and what is told once is closed."""
    page.wait_for_selector("[data-form].live", state="attached", timeout=PATIENCE)
    for _ in range(PATIENCE // 100):
        if page.evaluate(ANSWERED):
            break
        page.wait_for_timeout(100)
    for cross in page.query_selector_all("[data-notice] [aria-label=Close]"):
        cross.dispatch_event("click")


def step_by_step(page):
    page.click("[data-along-go]")
    page.wait_for_selector("[data-steps=figure]:has-text('0')")
    page.click("[data-steps=tap]")
    page.wait_for_selector("[data-steps=step]:has-text('Step 2')")


def share(page):
    page.click("[data-share]")
    page.wait_for_selector("[data-code] .code")


SEAMS = (("Keel", 3.2), ("Chine", 4.1), ("Chine, other side", 4.1), ("Transom", 1.1))
ASKED = {  # what a screen that answers nothing by itself is asked
    "clock": "?air=22",
    "plan": "?temperature=20&" + urlencode({f"pieces.{place}.{name}": text for place, (called, long) in enumerate(SEAMS)
                                            for name, text in (("name", called), ("length", long), ("putty", 150),
                                                               ("wet", 90))}),
}


def screens():
    """(name, path, what is done there before the picture)"""
    for screen, path, _ in PAGES:
        yield screen, path + ASKED.get(screen, ""), lambda page: None
    yield "step-by-step", "", step_by_step
    yield "hand-over", "", share
    yield "thickened", "?amount=240&thicken=yes", lambda page: None
    yield "stick", "?amount=240&way=stick", lambda page: None
    yield "wrong", "?amount=2,3,4", lambda page: None
    for screen, path in (("pour", ""), ("joint", "joint/"), ("clock", "clock/?units=us&air=72")):
        yield f"us-{screen}", path, lambda page: None


def save(shot: bytes, path: Path):
    Image.open(io.BytesIO(shot)).convert("RGB").save(path, "WEBP", quality=40, method=6)


def main(folder: Path, only=()):
    folder.mkdir(parents=True, exist_ok=True)
    server = Server().start()
    with sync_playwright() as playwright:
        browser = playwright.chromium.launch(executable_path=CHROMIUM, args=FLAGS)
        for size, (width, height, scale) in SIZES.items():
            for light in LIGHTS:
                context = browser.new_context(viewport={"width": width, "height": height}, color_scheme=light,
                                              device_scale_factor=scale, locale="en-GB", reduced_motion="reduce")
                context.add_init_script(PART)
                page = context.new_page()
                page.goto(server.url)
                ready(page)
                page.evaluate(KEPT)
                for name, path, act in screens():
                    if only and name not in only:
                        continue
                    page.goto("about:blank")
                    page.goto(server.url + "/manifest.webmanifest")
                    page.evaluate("localStorage.clear()")
                    if name.startswith("us-"):
                        page.evaluate("localStorage['covemix.set.units'] = 'us'")
                    page.goto(f"{server.url}/{path}")
                    ready(page)
                    act(page)
                    save(page.screenshot(), folder / f"{name}-{size}-{light}.webp")
                context.close()
        browser.close()
    server.stop()


if __name__ == "__main__":
    main(Path(sys.argv[1]), sys.argv[2:])

"""What a screen reader is given in fifteen minutes of use: the tree of each view as a browser makes it, and what the
page says of its own accord. Writes docs/HEARD.md: `python -m browser.heard` in `tests`."""
from pathlib import Path

from playwright.sync_api import sync_playwright

from .conftest import CHROMIUM, FLAGS, POT, fresh
from .serve import Server

PAGE = Path(__file__).parents[2] / "docs" / "HEARD.md"
HEAD = """# Heard: fifteen minutes with a screen reader

Not a recording of a reader, and no user of one was asked: it is the tree that Chromium hands to a reader at each place
of an ordinary quarter of an hour, and what the page announces there of its own accord. `tests/browser/heard.py` walks
the way with the page's clock set on, and writes this page.
"""
PLAN = ("plan/?temperature=20&start=9:00&pieces.0.name=Keel&pieces.0.length=2.4&pieces.0.putty=57&pieces.0.wet=39"
        "&scale.id=0.1g&long=whole")
MOVED = "(before) => document.querySelector('[data-steps=tap]').innerText !== before"
LINES = 22  # of a tree; the rest is named by its count


def tree(place):
    lines = [line for line in place.aria_snapshot().splitlines() if "/url:" not in line and "/placeholder:" not in line]
    more = [f"... {len(lines) - LINES} more"] if len(lines) > LINES else []
    return "\n".join([line[:150] for line in lines[:LINES]] + more)


class Walk:
    """One way through the app, written down as it goes."""

    def __init__(self, page):
        self.page, self.told = page, [HEAD]

    def stands(self, minute, what, place, said):
        self.page.wait_for_timeout(900)
        heard = self.page.locator(said).inner_text().strip()
        seen = tree(self.page.locator(place))
        self.told.append(f"## Minute {minute}: {what}\n\nSaid: {heard or 'nothing'}\n\n```\n{seen}\n```\n")

    def step(self):
        tap = self.page.locator("[data-steps=tap]")
        before = tap.inner_text()
        tap.press("Enter")
        self.page.wait_for_function(MOVED, arg=before)
        self.page.clock.run_for(800)

    def to(self, part):
        while self.page.locator("[data-steps=part]").inner_text() != part:
            self.step()


def walked(page, url):
    """The text of the page."""
    walk = Walk(page)
    page.clock.install()
    page.goto(url)
    page.wait_for_function("() => document.querySelector('[data-status]').textContent")
    walk.stands(0, "the first open", "[data-main]", "[data-status]")
    page.get_by_label("Amount", exact=True).fill("18o")
    walk.stands(1, "a typing error", "[data-field=amount]", "[data-status]")
    page.get_by_label("Amount", exact=True).fill("180")
    page.get_by_role("button", name="Pour step by step").press("Enter")
    walk.stands(2, "the steps of a pour", "dialog.steps", "[data-along] [role=status]")
    walk.step()
    walk.stands(3, "the next step", "[data-steps=tap]", "[data-along] [role=status]")
    page.get_by_role("button", name="Leave").press("Enter")
    page.goto(f"{url}/{PLAN}")
    page.get_by_role("button", name="Use these").press("Enter")
    page.get_by_role("button", name="Next batch, step by step").press("Enter")
    page.wait_for_function("() => document.querySelector('[data-steps=step]').textContent")
    walk.to("Place the putty")
    walk.stands(5, "the run of a seam, with its window", "dialog.steps", "[data-along] [role=status]")
    page.clock.run_for(240_000)
    walk.to("Lay the tape on the soft cove")
    walk.stands(9, "four minutes later, the tape", "[data-steps=tap]", "[data-along] [role=status]")
    walk.to("Peel ply off from")
    walk.stands(12, "its end", "dialog.steps", "[data-along] [role=status]")
    page.locator("[data-steps=tap]").press("Enter")
    page.evaluate(POT)
    page.locator(".nav [data-to=clock]").press("Enter")
    page.wait_for_selector(".pot-minutes:visible")
    walk.stands(13, "a running pot", "[data-pots]", "[data-status]")
    page.get_by_role("link", name="Safety", exact=True).first.press("Enter")
    page.wait_for_selector("main.screen-safety")
    walk.stands(15, "first aid", ".aid", "[data-status]")
    return "\n".join(walk.told)


def main():
    server = Server().start()
    with sync_playwright() as playwright:
        browser = playwright.chromium.launch(executable_path=CHROMIUM, args=FLAGS)
        with fresh(browser) as (page, _):
            PAGE.write_text(walked(page, server.url), encoding="utf-8")
        browser.close()
    server.stop()


if __name__ == "__main__":
    main()

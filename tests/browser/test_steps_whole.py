"""The view of the steps at 360 x 740: at every step each field and key stands there whole, and what is said at length
scrolls above them. Nothing of a step lies behind its keys."""
import pytest
from playwright.sync_api import expect

from .conftest import fresh

REST = 750  # ms, a little more than a shaking glove is kept out
SYSTEM = "system.by_weight=345:98&system.densities=1.150:0.980"
POURS = {
    "syringes, with warnings": "/?amount=5000&thicken=yes&sun=full",
    "scale, thickened": f"/?{SYSTEM}&amount=350&thicken=yes&stiffness=stands",
    "a scale that shows too little": f"/?{SYSTEM}&amount=6&scale.step=1+g",
    "pumps": "/?amount=180&way=pumps&pumps.strokes=20:10",
    "marked cups": "/?amount=500&way=graduated",
    "stick": "/?amount=300&way=stick",
}
RUN = ("/plan/?temperature=20&start=9:00&pieces.0.name=Keel&pieces.0.length=2.4&pieces.0.putty=57&pieces.0.wet=39"
       "&scale.id=0.1g&long=whole")
# what is not whole: [what, how]
CUT = """() => {
  const dialog = document.querySelector("dialog.steps");
  const whole = (one, { left, top, right, bottom } = one.getBoundingClientRect()) => top >= 0 && bottom <= innerHeight
    && [[left + 3, top + 3], [right - 3, bottom - 3]].every(([x, y]) => {
      const there = document.elementFromPoint(x, y);
      return there === one || one.contains(there) || there?.contains(one);
    });
  const keys = [...dialog.querySelectorAll("button, input, select, a")].filter((one) => one.checkVisibility());
  const found = keys.filter((one) => !whole(one)).map((one) => one.dataset.steps ?? one.textContent.trim());
  const tap = dialog.querySelector("[data-steps=tap]");
  const figure = dialog.querySelector("[data-steps=figure]");
  const [inside, around] = [figure, tap].map((one) => one.getBoundingClientRect());
  if (!figure.hidden && (inside.bottom > around.bottom + 1 || inside.right > innerWidth)) found.push("figure");
  for (const one of keys) {
    one.focus();
    if (document.activeElement === one && !whole(one)) found.push(`focused: ${one.dataset.steps}`);
  }
  if (dialog.scrollTop) found.push("scrolled");
  tap.focus();
  return found;
}"""
COUNTED = 60  # steps; no pour has as many


def walk(page):
    """Every step to the last: what is cut at any of them, and how many there were."""
    found = {}
    tap, step = page.locator("[data-steps=tap]"), page.locator("[data-steps=step]")
    expect(step).to_contain_text("1")
    for seen in range(1, COUNTED + 1):
        cut = page.evaluate(CUT)
        if cut:
            found[step.inner_text() + " " + page.locator("[data-steps=part]").inner_text()] = cut
        before = tap.inner_text()
        tap.click()
        page.clock.run_for(REST)
        page.wait_for_function("""(before) => {
          const dialog = document.querySelector("dialog.steps");
          return !dialog.open || dialog.querySelector("[data-steps=tap]").innerText !== before;
        }""", arg=before)
        if not page.locator("dialog.steps").evaluate("(one) => one.open"):
            return found, seen
    raise AssertionError("the steps never end")


@pytest.mark.parametrize("language", ["en", "de"])
@pytest.mark.parametrize("name", POURS)
def test_at_each_step_of_a_pour_every_field_and_key_is_whole(chromium, standing, name, language):
    with fresh(chromium, locale=language) as (page, _):
        page.clock.install()
        page.goto(standing.url + POURS[name])
        expect(page.locator("[data-status]")).not_to_be_empty()
        page.locator("[data-along-go]").click()
        found, seen = walk(page)
        assert found == {} and seen > 0


@pytest.mark.parametrize("language", ["en", "de"])
def test_at_each_step_of_a_run_every_field_and_key_is_whole(chromium, standing, language):
    with fresh(chromium, locale=language) as (page, _):
        page.clock.install()
        page.goto(standing.url + RUN)
        page.locator("[data-notice=link] button").first.click()
        expect(page.locator("[data-run-go]")).to_be_visible()
        page.locator("[data-run-go]").click()
        found, seen = walk(page)
        assert found == {} and seen > 20

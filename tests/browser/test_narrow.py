"""Each screen on the narrowest phone, in every language of the app and in one that nobody speaks, whose words are
longer: nothing is clipped, no figure breaks from its unit; once more from right to left."""
import pseudo
import pytest
from covemix.server.app import create_app
from covemix.server.build import Build
from covemix.server.pages import PAGES
from house import made
from playwright.sync_api import expect

from .conftest import fresh
from .serve import Server

NARROW = {"viewport": {"width": 320, "height": 640}}
# what stands wider than its box, or beside the page
CLIPPED = """() => {
  const wide = document.documentElement.clientWidth;
  const found = [];
  for (const one of document.querySelectorAll("body *")) {
    if (!one.checkVisibility({ visibilityProperty: true }) || one.closest("svg, [data-code], .skip, .said")) continue;
    const { left, right, width } = one.getBoundingClientRect();
    if (width && (left < -1 || right > wide + 1)) found.push(["beside the page", one]);
    const { overflowX, textOverflow } = getComputedStyle(one);
    const text = [...one.childNodes].some((node) => node.nodeType === 3 && node.textContent.trim());
    const cut = one.scrollWidth > one.clientWidth + 1 && (overflowX !== "visible" || textOverflow === "ellipsis");
    if (text && cut && !one.matches("select, input, textarea")) found.push(["cut", one]);
  }
  return found.map(([why, one]) => `${why}: ${one.tagName}.${one.className} ${one.textContent.trim().slice(0, 60)}`);
}"""
# a figure at the end of a line with its unit on the next
BROKEN = r"""() => {
  const units = "%|°[CF]?|[kmµ]?[gmL]|[mc]m[²³]?|m[²³]|g/m[²³L]|oz|lb|in|ft|min|h|US fl oz";
  const pair = new RegExp(`\\d\\s+(?:${units})(?![\\p{L}\\d])`, "gu");
  const found = [];
  const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  while (walk.nextNode()) {
    const node = walk.currentNode;
    const { parentElement } = node;
    if (!parentElement.checkVisibility({ visibilityProperty: true }) || parentElement.closest(".said")) continue;
    for (const { 0: text, index } of node.textContent.matchAll(pair)) {
      const range = document.createRange();
      range.setStart(node, index);
      range.setEnd(node, index + text.length);
      const seen = [...range.getClientRects()].filter(({ width }) => width > 0);
      const rows = new Set(seen.map(({ bottom }) => Math.round(bottom / 8)));
      if (rows.size > 1) found.push(`${text} in ${node.textContent.trim().slice(0, 80)}`);
    }
  }
  return found;
}"""
# what each block of the page says
SAID = r"""() => {
  const inline = (one) => getComputedStyle(one).display.startsWith("inline") && !one.matches("button, a, select");
  const words = (one) => one.textContent.trim();
  const not = "svg, script, style, select, [hidden], template, main [lang], [data-notice=language]";
  const holds = (one) => [...one.querySelectorAll("*")]
    .some((other) => !inline(other) && words(other) && !other.closest("svg"));
  const said = ({ childNodes }) => [...childNodes].filter(({ nodeName }) => nodeName !== "svg")
    .map(({ textContent }) => textContent).join(" ").trim();
  return [...document.querySelectorAll("body *")]
    .filter((one) => !one.closest(not) && !inline(one) && words(one) && !holds(one))
    .map(said)
    .concat([...document.querySelectorAll("select:not([hidden]) option")].map(words));
}"""
OPEN = """() => { for (const one of document.querySelectorAll("details")) one.open = true; }"""
SCREENS = [path for _, path, _ in PAGES]


@pytest.fixture(scope="module")
def strange():
    """A server that speaks the language that nobody does, too; the one that all tests share is made before."""
    made()
    pseudo.speak()
    server = Server().start(wrap=lambda app: create_app(Build()))
    yield server
    server.stop()
    pseudo.hush()


@pytest.fixture(scope="module")
def narrow(chromium):
    with fresh(chromium, service_workers="block", viewport={"width": 320, "height": 640}) as (page, _):
        yield page


def look(page, url, path, language, way="ltr"):
    """Opens a screen and all its folds, answered. way: of the writing"""
    page.context.add_cookies([{"name": "language", "value": language, "url": url}])
    page.goto(f"{url}/{path}")
    page.evaluate("(way) => { document.documentElement.dir = way; }", way)
    expect(page.locator(f"html[lang={language}]")).to_be_attached()
    expect(page.locator("[data-form].live").or_(page.locator("main:not(:has([data-form]))"))).to_be_attached()
    page.wait_for_timeout(1000)  # the engine's answer takes the place of the server's
    page.evaluate(OPEN)
    page.wait_for_timeout(200)


@pytest.mark.parametrize("path", SCREENS)
@pytest.mark.parametrize(("language", "way"), [("en", "ltr"), ("de", "ltr"), ("xx", "ltr"), ("xx", "rtl")])
def test_nothing_is_clipped_and_no_figure_breaks_from_its_unit(narrow, strange, path, language, way):
    look(narrow, strange.url, path, language, way)
    assert (narrow.evaluate(CLIPPED), narrow.evaluate(BROKEN)) == ([], [])


@pytest.mark.parametrize("path", SCREENS)
def test_no_plain_english_is_left_on_a_page(narrow, strange, path):
    look(narrow, strange.url, path, "xx")
    left = {text: pseudo.english(text, "Covemix") for text in narrow.evaluate(SAID)}
    assert {text: words for text, words in left.items() if words} == {}


# what stands in a field and does not fit into it
UNREAD = """() => [...document.querySelectorAll("input.number, .group-row input.words")]
  .filter((one) => one.checkVisibility({ visibilityProperty: true }) && one.scrollWidth > one.clientWidth + 1)
  .map((one) => `${one.name}: ${one.value}`)"""
TYPE = """(typed) => {
  for (const [name, text] of Object.entries(typed)) document.getElementsByName(name)[0].value = text;
}"""


@pytest.mark.parametrize("wide", [320, 360, 412])
def test_a_list_and_a_name_stand_whole_in_their_field(chromium, strange, wide):
    with fresh(chromium, viewport={"width": wide, "height": 740}) as (page, _):
        page.goto(strange.url + "/kit/")
        page.locator("[data-add=system]").click()
        page.evaluate(OPEN)
        page.evaluate(TYPE, {"system.on_shelf": "800 g : 300 g", "system.densities": "1.14 : 0.97 g/mL",
                             "system.weighed": "112.4 : 96.3 g", "system.by_weight": "100 : 33"})
        assert page.evaluate(UNREAD) == []
        page.goto(strange.url + "/boat/")
        page.locator("[data-form].live").wait_for(state="attached")
        page.evaluate(OPEN)
        page.evaluate(TYPE, {"joints.0.width": "75 : 100 mm", "joints.0.angle": "142 : 128 : 121"})
        assert page.evaluate(UNREAD) == []
        page.goto(strange.url + "/surface/")
        page.locator("[data-form].live").wait_for(state="attached")
        page.evaluate(TYPE, {"faces.0.widths": "0.5 : 1.1 : 1.3 : 0.9 m"})
        assert page.evaluate(UNREAD) == []

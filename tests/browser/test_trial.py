"""Test cup in a real browser: from the system in the kit through the readings to other minutes on Pour."""
import re

import pytest
from playwright.sync_api import expect

from .conftest import figure

ENGINE = 60_000  # ms: it may start cold
RESIN = {"record": "system", "made": 1, "typed": {
    "name": "Yard resin", "by_weight": "100 : 30", "pot_time": "30 min", "pot_mass": "100 g",
    "pot_temperature": "25 °C"}}
# a cup that was quicker than its label: pot life 30 min at 25 °C, and this in air of 20 °C
READ = (("2", "21"), ("8", "24"), ("14", "31"), ("18", "44"), ("21", "80"), ("24", "150"))


@pytest.fixture
def resin(same_phone, standing):
    """A phone whose kit holds one resin, in use; it is taken out again."""
    page = same_phone
    page.goto(standing.url + "/kit/")
    page.evaluate("""async (thing) => {
        const { keepThing } = await part("kit/kit.js");
        window.resin = await keepThing(thing);
    }""", RESIN)
    page.reload()
    yield page
    page.goto(standing.url + "/kit/")
    page.evaluate("""async () => {
        const { all, remove } = await part("store/store.js");
        for (const { id, record } of await all("kit")) if (record === "system") await remove("kit", id);
        localStorage.clear();
        sessionStorage.clear();
    }""")


def usable_of_pour(page, url):
    """What Pour tells of 240 g at 20 °C."""
    page.goto(url)
    expect(page.locator("select[name=system]")).to_have_value(re.compile("kit:"))
    page.locator("[name=amount]").fill("240")
    page.evaluate("for (const fold of document.querySelectorAll('details')) fold.open = true")
    page.locator("[name=air]").fill("20")
    expect(page.locator("[data-line=usable]").first).to_contain_text("at 20 °C", timeout=ENGINE)
    return figure(page, "usable").text_content()


def test_a_test_cup_changes_the_minutes_of_pour_and_can_be_undone(resin, standing):
    page = resin
    before = usable_of_pour(page, standing.url)
    page.goto(standing.url + "/kit/")
    page.get_by_role("button", name="Change").first.click()
    page.get_by_role("link", name="Test cup: your own times").click(timeout=ENGINE)
    expect(page.locator("[data-line=hot]")).to_contain_text("leave the cup where it stands", timeout=ENGINE)
    expect(page.locator("select[name=system]")).to_have_value(re.compile("kit:"))
    tops = [page.locator(one).bounding_box()["y"] for one in ("[data-line=hot]", "[name=air]")]
    assert tops[0] < tops[1]
    page.get_by_label("Air temperature").fill("20")
    expect(page.locator("[data-move=trial] [data-lead]")).to_have_count(0)
    page.locator("[name='readings.0.minute']").fill("5")
    page.locator("[name='readings.0.temperature']").fill("22")
    expect(page.locator("[data-error=readings]")).to_contain_text("One reading is not enough", timeout=ENGINE)
    for place, (minute, shows) in enumerate(READ):
        if not page.locator(f"[name='readings.{place}.minute']").count():
            page.get_by_role("button", name="Reading: one more").click()
        page.locator(f"[name='readings.{place}.minute']").fill(minute)
        page.locator(f"[name='readings.{place}.temperature']").fill(shows)
    keep = page.get_by_role("link", name="Save with this system")
    expect(keep).to_be_visible(timeout=ENGINE)
    expect(page.locator("[data-line=usable]")).to_contain_text("nine times in ten")
    expect(page.locator("[data-figure=heat]")).to_be_visible()
    assert page.evaluate("document.documentElement.scrollWidth <= innerWidth")
    box = keep.bounding_box()
    assert box["height"] >= 48
    keep.click()
    expect(page.locator("[data-notice=lead]")).to_contain_text("Save with this system: values filled in.")
    expect(keep).to_have_count(0)
    kept = page.evaluate("part('store/store.js').then(({ all }) => all('kit'))")
    [typed] = [thing["typed"] for thing in kept if thing["record"] == "system"]
    assert re.match(r"thick \d+ s, doubt \d+ %, mass 100 g, air 20.0 °C, loss ", typed["trials"])
    after = usable_of_pour(page, standing.url)
    assert int(after.split()[0]) < int(before.split()[0])


def test_an_undo_takes_the_test_out_of_the_kit_again(resin, standing):
    page = resin
    page.goto(standing.url + "/test-cup/")
    page.get_by_label("Air temperature").fill("20")
    page.evaluate("for (const fold of document.querySelectorAll('details')) fold.open = true")
    page.get_by_label("Pulls strings at").fill("18")
    page.get_by_role("link", name="Save with this system").click(timeout=ENGINE)
    page.locator("[data-notice=lead]").get_by_role("button", name="Undo").click()
    expect(page.get_by_role("link", name="Save with this system")).to_be_visible(timeout=ENGINE)
    kept = page.evaluate("part('store/store.js').then(({ all }) => all('kit'))")
    assert [thing["typed"] for thing in kept if thing["record"] == "system"] == [RESIN["typed"]]

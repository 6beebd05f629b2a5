"""Log: batches written down, found again, drawn against the label, saved as a table."""
import csv
import io
import re

import pytest
from playwright.sync_api import expect

from .conftest import figure, grow_old, unanswered, until
from .test_kit import exported

LOG_TWO = """async () => {
  const { logBatch } = await part("kit/log.js");
  await logBatch({ typed: { what: "240 g Three to one", seam: "Port chine", temperature: "18", own_time: "24",
    label_time: "30", lot: "=A1", outcome: "good" }, pairs: [["amount", "321"]], when: Date.UTC(2026, 5, 1, 9) });
  await logBatch({ typed: { what: "90 g Two to one", seam: "Bow", own_time: "33", label_time: "30" }, pairs: [],
    when: Date.UTC(2026, 5, 2, 9) });
}"""


@pytest.fixture
def log(phone, standing):
    phone.goto(standing.url + "/log/")
    phone.evaluate(LOG_TWO)
    expect(phone.locator(".entry")).to_have_count(2)
    return phone


def test_the_newest_stands_first_and_says_how_it_went(log):
    expect(log.locator(".entry").nth(0)).to_contain_text("Bow")
    expect(log.locator(".entry").nth(1)).to_contain_text("24 min, label 30 min: 20% sooner")
    expect(log.locator("[data-line=shortest]")).to_contain_text("24 min")
    expect(log.locator("[data-figure=timings] .shape-mix")).to_have_count(2)


def test_a_word_finds_a_batch(log):
    log.get_by_label("Search the log").fill("chine three")
    expect(log.locator(".entry")).to_have_count(1)
    log.get_by_label("Search the log").fill("stern")
    expect(log.get_by_text("No batch has all of these words.")).to_be_visible()


def test_a_search_finds_the_words_on_the_screen_which_nobody_typed(log):
    log.get_by_label("Search the log").fill("20% sooner")
    expect(log.locator(".entry")).to_have_count(1)
    expect(log.locator(".entry")).to_contain_text("Port chine")
    log.get_by_label("Search the log").fill("longer")
    expect(log.locator(".entry")).to_contain_text("Bow")
    expect(log.locator(".entry")).to_have_count(1)


def test_a_batch_is_changed_removed_brought_back_and_poured_again(log):
    log.locator(".entry").nth(0).get_by_role("button", name="Change").click()
    log.get_by_label("Which seam").fill("Stern")
    log.get_by_role("button", name="Save", exact=True).click()
    expect(log.locator(".entry").nth(0)).to_contain_text("Stern")
    log.locator(".entry").nth(0).get_by_role("button", name="Remove").click()
    expect(log.locator(".entry")).to_have_count(1)
    log.get_by_role("button", name="Undo").click()
    expect(log.locator(".entry")).to_have_count(2)
    log.get_by_role("button", name="Pour again").click()
    expect(log.get_by_label("Amount", exact=True)).to_have_value("321")


def test_a_batch_is_poured_again_by_its_own_system(log, standing):
    """Whatever was chosen since; Undo brings that back."""
    log.evaluate("""async () => (await part("kit/log.js")).logBatch({ typed: { what: "100 g Five to one" },
      pairs: [["system", "5-1"], ["amount", "100"]], when: Date.UTC(2026, 5, 3, 9) })""")
    log.goto(standing.url)
    system = log.get_by_role("combobox", name="Resin system", exact=True)
    system.select_option("2-1")
    expect(figure(log, "drawn_b")).to_be_visible()
    log.goto(standing.url + "/log/")
    log.locator(".entry", has_text="Five to one").get_by_role("button", name="Pour again").click()
    expect(system).to_have_value("5-1")
    expect(log.get_by_label("Amount", exact=True)).to_have_value("100")
    log.get_by_role("button", name="Undo").click()
    expect(system).to_have_value("2-1")


def test_a_batch_is_added_by_hand(log):
    log.get_by_role("button", name="Add a batch").click()
    log.get_by_label("What was poured").fill("50 g for the keel")
    log.get_by_role("button", name="Save", exact=True).click()
    expect(log.locator(".entry").nth(0)).to_contain_text("50 g for the keel")


def test_the_table_reads_back_as_it_was_kept(log):
    with log.expect_download() as got:
        log.get_by_role("button", name="Save as a table").click()
    rows = list(csv.DictReader(io.StringIO(got.value.path().read_text(encoding="utf-8-sig"))))
    assert [row["Which seam"] for row in rows] == ["Bow", "Port chine"]
    assert rows[1]["When"] == "2026-06-01 09:00"
    assert rows[1]["Lot numbers"] == "'=A1"  # no spreadsheet takes it for a formula


OF_SCREENS = """async () => {
  const { logBatch } = await part("kit/log.js");
  const pairs = [];
  const when = (day) => Date.UTC(2026, 5, day, 9);
  await logBatch({ typed: { mixture: "Shed mix", thicken: "yes", mass: "240 g" }, pairs, when: when(3) });
  await logBatch({ typed: { planned: "3", laid: "2.00 m" }, pairs, when: when(4) });
  await logBatch({ typed: { what: "Batch 7 of the plan", seam: "Stem" }, pairs, when: when(5) });
}"""


def test_a_batch_that_nobody_named_is_called_by_what_is_known_of_it(log):
    """In the list, in the search and in a table; what no field shows stays with it."""
    log.evaluate(OF_SCREENS)
    names = log.locator(".entry-name")
    expect(names).to_have_text(["Batch 7 of the plan", "Batch 3 of the plan", "240 g Shed mix, thickened",
                                "90 g Two to one", "240 g Three to one"])
    log.get_by_label("Search the log").fill("3 plan")
    expect(names).to_have_text(["Batch 3 of the plan"])
    log.get_by_role("button", name="Change").click()
    log.get_by_label("Which seam").fill("Stern")
    log.get_by_role("button", name="Save", exact=True).click()
    expect(names).to_have_text(["Batch 3 of the plan"])
    expect(log.locator(".entry")).to_contain_text("Stern")
    with log.expect_download() as got:
        log.get_by_role("button", name="Save as a table").click()
    rows = list(csv.DictReader(io.StringIO(got.value.path().read_text(encoding="utf-8-sig"))))
    assert [row["What was poured"] for row in rows][:3] == [
        "Batch 7 of the plan", "Batch 3 of the plan", "240 g Shed mix, thickened"]


MANY = """async () => {
  const { replaceAll } = await part("store/store.js");
  const typed = (place) => ({ what: `${100 + place} g`, seam: `Seam ${place}`, own_time: `${20 + place % 17}`,
    label_time: "30" });
  const log = [...Array(2000).keys()].map((place) => ({ id: place + 1, kind: "poured", typed: typed(place), pairs: [],
    when: Date.UTC(2020, 0, 1 + place) }));
  await replaceAll({ log });
}"""


def test_two_thousand_batches_are_searched_and_drawn(phone, standing):
    phone.goto(standing.url + "/log/")
    phone.evaluate(MANY)
    expect(phone.locator(".entry").first).to_contain_text("Seam 1999")
    expect(phone.locator(".entry")).to_have_count(30)
    expect(phone.locator("[data-line=shortest]")).to_contain_text("of 200 timed")
    expect(phone.locator("[data-figure=timings] .shape-mix")).to_have_count(12)
    phone.get_by_label("Search the log").fill("1334 seam 1234")
    expect(phone.locator(".entry")).to_have_count(1)
    phone.get_by_label("Search the log").fill("")
    phone.get_by_role("button", name="Show more").click()
    expect(phone.locator(".entry")).to_have_count(60)


def test_an_empty_batch_is_refused_in_words(phone, standing):
    phone.goto(standing.url + "/log/")
    expect(phone.get_by_text("No batches yet.")).to_be_visible()
    phone.get_by_role("button", name="Add a batch").click()
    phone.get_by_role("button", name="Save", exact=True).click()
    expect(phone.locator("[data-error=what]")).to_contain_text("Add at least one note")
    expect(phone.locator("[data-editing]")).to_be_visible()


def test_a_drawing_that_cannot_follow_the_list_does_not_stand(log):
    expect(log.locator("[data-figure=timings]")).to_be_visible()
    unanswered(log)
    log.locator(".entry").nth(0).get_by_role("button", name="Remove").click()
    expect(log.locator(".entry")).to_have_count(1)
    expect(log.locator("[data-figure=timings]")).to_be_hidden()


def test_batches_stand_there_also_where_nothing_answers(log):
    grow_old(log)
    log.reload()
    expect(log.locator(".entry")).to_have_count(2)
    expect(log.locator(".entry").nth(0)).to_contain_text("90 g Two to one")


# as they may lie on a phone: no pairs, a mass as a number, no kind, a time as text, a damaged putty batch
STRANGE = """async () => {
  const { put } = await part("store/store.js");
  const row = { kind: "poured", when: Date.UTC(2026, 5, 3), typed: { what: "Old" }, pairs: [] };
  await put("log", { kind: "poured", when: row.when, mass: 90, what: "An older shape" });
  await put("log", { ...row, typed: { what: "A number", mass: 90 } });
  await put("log", { ...row, kind: undefined });
  await put("log", { ...row, when: "2026-06-03" });
  await put("log", { kind: "putty", when: 1, filler: "Silica" });
}"""


def test_rows_that_cannot_be_read_are_shown_and_kept_and_the_rest_stands(log):
    log.evaluate(STRANGE)
    strange = log.locator("[data-unread=log]")
    expect(strange).to_have_count(5)
    expect(strange.first).to_contain_text("Unreadable entry")
    expect(strange.first).to_contain_text("An older shape")
    log.reload()
    expect(log.locator(".entry:not([data-unread])")).to_have_count(2)
    expect(log.locator("[data-line=shortest]")).to_contain_text("24 min")
    log.get_by_label("Search the log").fill("chine three")
    expect(log.locator(".entry:not([data-unread])")).to_have_count(1)
    strange.first.get_by_role("button", name="Remove").click()
    expect(strange).to_have_count(4)
    log.get_by_role("button", name="Undo").click()
    expect(strange).to_have_count(5)


def test_the_own_file_of_rows_that_cannot_be_read_comes_back(log, standing):
    log.evaluate(STRANGE)
    log.goto(standing.url + "/kit/")
    saved = exported(log)
    log.get_by_label("Bring back from a file").set_input_files({"name": "c.json", "mimeType": "", "buffer": saved})
    log.get_by_role("button", name="Replace all").click()
    expect(log.locator("[data-notice=import]")).to_be_visible()
    assert exported(log) == saved
    log.goto(standing.url + "/log/")
    expect(log.locator("[data-unread=log]")).to_have_count(5)
    expect(log.locator(".entry:not([data-unread])")).to_have_count(2)


def test_the_undo_of_a_lead_ends_with_the_next_edit(log):
    log.get_by_role("button", name="Pour again").click()
    expect(log.get_by_label("Amount", exact=True)).to_have_value("321")
    expect(log.locator("[data-notice=lead]")).to_contain_text("The batch is on Pour again")
    log.get_by_label("Amount", exact=True).fill("654")
    expect(log.locator("[data-notice=lead]")).to_have_count(0)


def test_a_batch_that_is_brought_back_takes_no_others_place(log):
    log.locator(".entry", has_text="Bow").get_by_role("button", name="Remove").click()
    expect(log.locator(".entry")).to_have_count(1)
    log.evaluate("""async () => {
      const { put } = await part("store/store.js");
      await put("log", { id: 2, kind: "poured", when: 1, typed: { what: "In its place" }, pairs: [] });
    }""")
    log.get_by_role("button", name="Undo").click()
    expect(log.locator(".entry")).to_have_count(3)
    expect(log.locator(".entry", has_text="In its place")).to_have_count(1)


# two cans of one name, told apart by their lots, and one of another name
SHELF = """async () => {
  const { put } = await part("store/store.js");
  const own = { name: "Shed mix", by_weight: "3:1" };
  for (const typed of [{ ...own, on_shelf: "2000 g : 900 g", lot: "A" },
    { ...own, on_shelf: "800 g : 300 g", lot: "B" },
    { ...own, name: "Other", on_shelf: "50 g : 50 g" }]) await put("kit", { record: "system", typed, made: 1 });
}"""
LEFT = """async () => {
  const { all } = await part("store/store.js");
  return (await all("kit")).map(({ typed }) => typed.on_shelf);
}"""
POURED = """async (mass) => {
  const { logBatch } = await part("kit/log.js");
  return logBatch({ typed: { mixture: "Shed mix", lot: "B", mass } });
}"""


def test_a_batch_comes_off_the_shelf_and_back_with_its_entry(phone, standing):
    """By hand: 400 g at 3:1 are 300 and 100 g, 240 g are 180 and 60 g."""
    phone.goto(standing.url + "/log/")
    phone.evaluate(SHELF)
    phone.evaluate(POURED, "400 g")
    assert phone.evaluate(LEFT) == ["2000 g : 900 g", "500.0 g : 200.0 g", "50 g : 50 g"]
    expect(phone.locator(".entry")).to_have_count(1)
    phone.locator(".entry").get_by_role("button", name="Change").click()
    phone.get_by_text("What went in").click()
    phone.get_by_label("Mixed mass").fill("240 g")
    phone.get_by_role("button", name="Save", exact=True).click()
    expect(phone.locator(".entry")).to_contain_text("240 g")
    phone.locator(".entry").get_by_role("button", name="Remove").click()
    expect(phone.locator(".entry")).to_have_count(0)
    until(phone, f"({LEFT})().then((left) => left[1] === '800.0 g : 300.0 g')")
    phone.get_by_role("button", name="Undo").click()
    until(phone, f"({LEFT})().then((left) => left[1] === '620.0 g : 240.0 g')")


def test_a_batch_is_taken_back_also_where_its_shelf_cannot_be_reckoned(phone, standing):
    """What is left is the engine's word: without it the figure stays, and the batch can still be brought back."""
    phone.goto(standing.url + "/log/")
    phone.evaluate(SHELF)
    phone.evaluate(POURED, "400 g")
    expect(phone.locator(".entry")).to_have_count(1)
    unanswered(phone)
    phone.locator(".entry").get_by_role("button", name="Remove").click()
    expect(phone.locator("[data-notice=log]").get_by_role("button", name="Undo")).to_be_visible()
    expect(phone.locator(".entry")).to_have_count(0)
    assert phone.evaluate(LEFT) == ["2000 g : 900 g", "500.0 g : 200.0 g", "50 g : 50 g"]


def test_units_that_are_switched_while_the_log_is_on_its_way_are_those_it_comes_in(phone, standing):
    held = []
    phone.goto(standing.url + "/kit/")
    phone.evaluate(POURED, "400 g")
    phone.route("**/log/", lambda route: held.append(route))
    with phone.expect_response("**/views/log*"), phone.expect_request("**/log/"):
        phone.locator("main [data-to=log]").click()
    other = phone.context.new_page()
    other.goto(standing.url + "/joint/")
    other.get_by_text("Units", exact=True).first.click()
    other.locator("[name=units]").select_option("us")
    phone.wait_for_function("() => localStorage['covemix.set.units'] === 'us'")
    held[0].continue_()
    expect(phone.locator(".entry")).to_contain_text("14.1")


def test_a_batch_with_a_figure_that_no_field_shows_says_why_it_cannot_be_kept(log):
    log.evaluate("""async () => {
      const { put } = await part("store/store.js");
      const typed = { what: "From a file", used: "4000 min" };
      await put("log", { kind: "poured", when: Date.now(), typed, pairs: [] });
    }""")
    log.reload()
    log.locator(".entry", has_text="From a file").get_by_role("button", name="Change").click()
    log.get_by_role("button", name="Save", exact=True).click()
    expect(log.locator("[data-notice=unsaved]")).to_contain_text(re.compile(r"type 0 to 2880\smin"))

"""The boat in a real browser: joints added, removed, moved, brought back; what leads out and what a link carries."""
import re

import pymupdf
import pytest
from playwright.sync_api import expect

from .conftest import figure, keep, unanswered


@pytest.fixture
def boat(phone, standing):
    phone.goto(standing.url + "/boat/")
    return phone


def names(page):
    return page.locator("[data-group=joints] .row-name").all_text_contents()


def test_the_demo_boat_stands_ready_and_can_be_taken_out_and_brought_back(boat):
    expect(figure(boat, "putty")).to_have_text("2235 mL · 2459 g")
    expect(boat.locator("[data-row='1'] .row-name").first).to_have_text("2 × Chine")
    boat.get_by_role("button", name="Empty the boat").click()
    expect(boat.locator("[data-error=joints]")).to_contain_text("No joints yet")
    boat.reload()
    expect(boat.locator("[data-error=joints]")).to_contain_text("No joints yet")
    boat.get_by_role("button", name="Try the demo boat").click()
    expect(figure(boat, "putty")).to_have_text("2235 mL · 2459 g")
    boat.get_by_role("button", name="Undo").click()
    expect(boat.locator("[data-error=joints]")).to_be_visible()


def test_joints_are_removed_moved_and_brought_back_with_their_names_right(boat):
    rows = boat.locator("[data-group=joints] [data-row]")
    expect(rows).to_have_count(9)
    rows.nth(1).locator("summary").first.click()
    rows.nth(1).get_by_role("button", name="Down").click()
    expect(rows.nth(2).locator(".row-name")).to_have_text("2 × Chine")
    expect(boat.locator("[name='joints.2.name']")).to_have_value("Chine")
    expect(boat.locator("[name='joints.1.name']")).to_have_value("Transom to bottom")
    rows.nth(2).get_by_role("button", name="Remove").click()
    expect(rows).to_have_count(8)
    expect(boat.locator("[name='joints.7.name']")).to_have_value("Skeg strip")
    expect(boat.locator("[name='joints.8.name']")).to_have_count(0)
    expect(figure(boat, "putty")).not_to_have_text("2235 mL · 2459 g")
    boat.get_by_role("button", name="Undo").click()
    expect(rows).to_have_count(9)
    # in the order they now have they are laid in as many batches
    expect(figure(boat, "putty")).to_have_text("2235 mL · 2459 g")


def test_a_new_joint_is_asked_and_told_on_its_own_line(boat):
    boat.get_by_role("button", name="Empty the boat").click()
    boat.get_by_role("button", name="Joint: one more").click()
    boat.locator("[name='joints.0.name']").fill("Port chine")
    boat.locator("[name='joints.0.angle']").fill("95 : 120 : 150")
    boat.locator("[name='joints.0.length']").fill("0.4 : 1.1")
    expect(boat.locator("[data-group=joints] .row-name")).to_have_text("Port chine")
    expect(boat.locator("[data-group=joints] .row-told")).to_contain_text("putty in place")
    boat.locator("[name='joints.0.thickness']").fill("0")
    expect(boat.locator("[data-error='joints.0.thickness']")).to_contain_text("more than 0")
    expect(boat.locator("[data-group=joints] .row-told")).to_have_text("")


def test_joints_chosen_for_a_batch_go_to_pour_together(boat):
    for place in (2, 3):
        row = boat.locator(f"[data-group=joints] [data-row='{place}']")
        row.locator("summary").first.click()
        row.get_by_label("Next batch").select_option("now")
    boat.get_by_role("link", name="Putty of 2 joints").click()
    expect(boat.get_by_label("of what")).to_have_value("putty")
    expect(boat.get_by_label("Amount", exact=True)).to_have_value("224 mL")


def test_a_joint_goes_into_the_boat_as_its_next_row_with_the_way_back(boat, standing):
    expect(figure(boat, "putty")).to_be_visible()
    boat.get_by_role("button", name="Empty the boat").click()
    for angle, count in (("100", 1), ("110", 2)):
        boat.goto(f"{standing.url}/joint/")
        boat.get_by_role("textbox", name="Inside angle").fill(angle)
        expect(boat.get_by_role("img", name=f"{angle} degrees")).to_be_visible()
        boat.get_by_role("link", name="Add to boat").click()
        expect(boat.locator("[data-group=joints] [data-row]")).to_have_count(count)
        expect(boat.locator(f"[name='joints.{count - 1}.angle']")).to_have_value(angle)
    boat.locator("[data-notice=lead]").get_by_role("button", name="Undo").click()
    expect(boat.locator("[data-group=joints] [data-row]")).to_have_count(1)


def test_a_link_brings_the_whole_boat_to_another_phone(boat, chromium):
    boat.locator("[data-row='0'] summary").first.click()
    boat.locator("[name='joints.0.name']").fill("Keel of mine")
    expect(boat.locator("[data-group=joints] .row-name").first).to_have_text("Keel of mine")
    boat.get_by_role("button", name="Share").click()
    link = boat.get_by_label("Link", exact=True)
    expect(link).to_have_value(re.compile("Keel[+]of[+]mine|Keel%20of%20mine"))
    other = chromium.new_context(viewport={"width": 360, "height": 740}).new_page()
    other.goto(link.input_value())
    expect(other.locator("[data-group=joints] [data-row]")).to_have_count(9)
    expect(other.locator("[name='joints.0.name']")).to_have_value("Keel of mine")
    assert figure(other, "resin").text_content() == figure(boat, "resin").text_content()
    other.context.close()


PHASES = ("Glue", "Tack", "Inside seams", "Outside seams", "Sheathe", "Fair", "Seal, first coat", "Coat")


@pytest.mark.parametrize("paper", ["A4", "Letter"])
def test_on_paper_the_list_the_cuts_and_the_cards_stand_on_sheets_of_their_own(boat, paper):
    """The PDF that Chromium prints: nothing of the form, all phases in the order of building, each card whole, no
    blank sheet."""
    expect(boat.locator("[data-line^=wall_]").first).to_be_attached()  # the page itself has the answer in short
    with pymupdf.open("pdf", boat.pdf(format=paper, prefer_css_page_size=True)) as sheets:
        text = [" ".join(page.get_text().replace("\u00a0", " ").split()) for page in sheets]
    assert 4 <= len(text) <= {"A4": 6, "Letter": 8}[paper] and all(len(page) > 100 for page in text)
    whole, at = " ".join(text), 0
    for phase in PHASES:
        at = whole.index(phase + " ", at)
        assert "Epoxy" in whole[at:at + 90], phase
    where = [next(place for place, page in enumerate(text) if words in page)
             for words in ("Shopping list", "Cut list", "Wall cards")]
    assert where == sorted(set(where))
    assert "Roll 1" in text[where[1]] and "2 × Chine" in text[where[2]]
    assert not any("Try the demo boat" in page or "Print this list" in page for page in text)


def test_without_signal_the_boat_opens_is_changed_and_goes_to_pour(phone, served):
    """The server is stopped: the demo boat stands there, a joint is longer, the sums follow, one tap pours a group."""
    keep(phone, served.url)
    served.stop()
    phone.goto(served.url + "/boat/")
    expect(figure(phone, "putty")).to_have_text("2235 mL · 2459 g")
    row = phone.locator("[data-group=joints] [data-row='2']")
    row.locator("summary").first.click()
    row.get_by_label("Length").fill("0.92 m")
    expect(figure(phone, "putty")).not_to_have_text("2235 mL · 2459 g")
    row.get_by_label("Next batch").select_option("now")
    expect(row.locator(".row-told")).to_contain_text("in the next batch")
    phone.get_by_role("link", name="Putty of 1 joint").click()
    expect(phone).to_have_url(served.url + "/")
    expect(phone.get_by_label("of what")).to_have_value("putty")
    expect(phone.get_by_label("Amount", exact=True)).to_have_value(re.compile(r"\d+ mL"))
    expect(phone.locator("[data-line=filler]")).to_be_visible()


ROLLS = """async (rolls) => {
  const { put } = await part("store/store.js");
  for (const typed of rolls) await put("kit", { record: "roll", typed, made: 1 });
}"""
OWN = [{"name": "Blue tape", "of": "tape", "width": "75", "weight": "300", "length": "30"},
       {"name": "Odd end", "of": "tape", "width": "75 mm", "weight": "300", "length": "3.2 m"},
       {"name": "Core", "of": "tape", "width": "75", "weight": "300", "length": "0.00 m"},
       {"name": "Sheet", "of": "cloth", "width": "1200", "weight": "160", "length": "9"}]


def test_the_kits_rolls_are_cut_from_and_then_are_shorter_with_the_way_back(boat, standing):
    expect(figure(boat, "putty")).to_be_visible()
    boat.evaluate(ROLLS, OWN)
    boat.get_by_role("button", name="Cut from the kit's rolls").click()
    expect(boat.locator("[data-notice=row]")).to_contain_text("3 rolls from the kit")
    expect(boat.locator("[name='remnants.1.name']")).to_have_value("Odd end")
    expect(boat.locator("[data-group=remnants] .row-told").first).to_have_text("5.04 m")
    expect(boat.locator("[name='remnants.2.of']")).to_have_value("cloth")
    expect(boat.get_by_role("button", name="Cut from the kit's rolls")).to_be_hidden()
    boat.get_by_role("button", name="All is cut").click()
    expect(boat.locator("[data-notice=cut]")).to_have_text(
        re.compile(r"Blue tape: 5\.04\sm; Odd end: 0\.02\sm; Sheet: 5\.2\d?\sm"))
    expect(boat.get_by_role("button", name="All is cut")).to_be_hidden()  # what was cut is not cut twice
    boat.locator("[data-notice=cut]").get_by_role("button", name="Undo").click()
    boat.get_by_role("button", name="All is cut").click()
    expect(boat.locator("[data-notice=cut]")).to_contain_text("Blue tape: 5.04 m")
    boat.goto(standing.url + "/kit/")
    shelf = boat.get_by_role("region", name="Roll or remnant", exact=True)
    expect(shelf.locator(".entry").first).to_contain_text("Length left: 5.04 m")
    boat.goto(standing.url + "/boat/")
    boat.get_by_role("button", name="Cut from the kit's rolls").click()
    expect(boat.locator("[name='remnants.0.length']")).to_have_value("5.04 m")
    expect(boat.locator("[data-group=remnants] [data-row]")).to_have_count(3)


LENGTHS = """async () => {
  const { all } = await part("store/store.js");
  return (await all("kit")).map((thing) => thing.typed.length);
}"""


def test_without_an_answer_nothing_is_cut_off_the_kits_rolls_and_the_page_says_so(boat):
    expect(figure(boat, "putty")).to_be_visible()
    boat.evaluate(ROLLS, OWN[:1])
    boat.get_by_role("button", name="Cut from the kit's rolls").click()
    expect(boat.locator("[data-group=remnants] .row-told").first).to_have_text(re.compile("m$"))
    unanswered(boat)
    boat.get_by_role("button", name="All is cut").click()
    expect(boat.locator("[data-notice=unanswered]")).to_contain_text("No answer")
    assert boat.evaluate(LENGTHS) == ["30"]


def test_a_roll_is_kept_in_the_kit_and_a_full_list_of_the_boat_stays_as_it_is(boat, standing):
    boat.goto(standing.url + "/kit/")
    shelf = boat.get_by_role("region", name="Roll or remnant", exact=True)
    shelf.get_by_role("button", name="Add").click()
    boat.locator("[name='roll.name']").fill("My tape")
    boat.locator("[name='roll.of']").select_option("tape")
    for name, text in (("width", "50"), ("weight", "300"), ("length", "12,5")):
        boat.locator(f"[name='roll.{name}']").fill(text)
    boat.get_by_role("button", name="Save", exact=True).click()
    expect(shelf.locator(".entry")).to_contain_text("Length left: 12,5 m")
    boat.goto(standing.url + "/boat/?" + "&".join(f"remnants.{place}.length=1" for place in range(12)))
    expect(figure(boat, "putty")).to_be_visible()
    boat.get_by_role("button", name="Cut from the kit's rolls").click()
    expect(boat.locator("[data-notice=row]")).to_contain_text("list is full")
    expect(boat.locator("[data-group=remnants] [data-row]")).to_have_count(12)


def test_an_undo_ends_with_the_next_edit_and_throws_nothing_away(phone, standing):
    phone.goto(standing.url + "/boat/")
    phone.get_by_role("button", name="Empty the boat").click()
    undo = phone.locator("[data-notice=row]").get_by_role("button", name="Undo")
    expect(undo).to_be_visible()
    phone.locator("[data-group=joints] [data-add-row]").click()
    expect(undo).to_have_count(0)
    phone.locator("[name='joints.0.name']").fill("Mine")
    phone.get_by_role("button", name="Empty the boat").click()
    undo.click()
    expect(phone.locator("[name='joints.0.name']")).to_have_value("Mine")


def test_an_undo_does_not_outlive_its_screen(phone, standing):
    """It would write into a form that nobody sees, and over what stands there by then."""
    phone.goto(standing.url + "/boat/")
    phone.get_by_role("button", name="Empty the boat").click()
    expect(phone.locator("[data-notice=row]")).to_be_visible()
    phone.get_by_role("link", name="Joint", exact=True).click()
    expect(phone.locator("[name=thickness]")).to_be_visible()
    expect(phone.locator("[data-notice=row]")).to_have_count(0)


def test_without_signal_a_surface_goes_from_its_screen_into_the_boat(phone, served):
    """On a phone of 360 x 740: one scarf is a boat by itself, a second row comes behind it, a link takes both along."""
    keep(phone, served.url)
    served.stop()
    rows, joints = (phone.locator(f"[data-group={name}] [data-row]") for name in ("surfaces", "joints"))
    for count, work in ((1, "scarf"), (2, "sheathe")):
        phone.goto(served.url + "/surface/")
        phone.get_by_label("What to do").select_option(work)
        if work == "scarf":
            phone.locator("[name=scarf_ratio]").fill("10")
        phone.get_by_role("link", name="Add to boat").click()
        expect(rows).to_have_count(count)
        expect(joints).to_have_count(0)
    expect(phone.locator("[name='surfaces.0.scarf_ratio']")).to_have_value("10")
    expect(rows.nth(1).locator(".row-told")).to_contain_text("Cloth")
    assert not rows.nth(0).evaluate("row => row.open"), "rows stay closed"
    phone.locator("[data-fold-of=boat] summary", has_text="order of building").click()
    expect(phone.locator("[data-line=phase_glue]")).to_be_visible()
    expect(phone.locator("[data-line=phase_sheathe]")).to_contain_text("Glass")
    assert phone.evaluate("document.documentElement.scrollWidth") <= 360
    phone.get_by_role("button", name="Share").click()
    expect(phone.get_by_label("Link", exact=True)).to_have_value(re.compile("surfaces.1.work=sheathe"))


def test_the_kits_rolls_are_given_back_with_one_tap(boat):
    expect(figure(boat, "putty")).to_be_visible()
    boat.evaluate(ROLLS, OWN)
    use, cut = (boat.get_by_role("button", name=name) for name in ("Cut from the kit's rolls", "All is cut"))
    use.click()
    expect(boat.locator("[data-group=remnants] .row-told").first).to_have_text("5.04 m")
    expect(use).to_be_hidden()
    boat.locator("[data-notice=row]").get_by_role("button", name="Undo").click()
    expect(boat.locator("[data-group=remnants] [data-row]")).to_have_count(0)
    expect(use).to_be_visible()
    expect(cut).to_be_hidden()
    boat.reload()
    expect(use).to_be_visible()
    expect(boat.locator("[data-group=remnants] [data-row]")).to_have_count(0)


def test_what_hinders_the_cut_is_said_and_the_kits_rolls_stay_as_long(boat):
    """A boat that is wrong somewhere, and one that needs nothing of these rolls."""
    expect(figure(boat, "putty")).to_be_visible()
    boat.evaluate(ROLLS, [{"name": "Thin cloth", "of": "cloth", "width": "1200 mm", "weight": "25", "length": "9 m"}])
    boat.get_by_role("button", name="Cut from the kit's rolls").click()
    cut, told = boat.get_by_role("button", name="All is cut"), boat.locator("[data-notice=cut]")
    cut.click()
    expect(told).to_contain_text("needs no roll from the kit")
    boat.locator("[data-row='0'] summary").first.click()
    boat.locator("[name='joints.0.thickness']").fill("0")
    expect(boat.locator("[data-error='joints.0.thickness']")).to_contain_text("more than 0")
    cut.click()
    expect(told).to_contain_text("more than 0")
    assert boat.evaluate(LENGTHS) == ["9 m"]


COUNTED = """() => {
  window.asked = 0;
  Worker.prototype.postMessage = () => { window.asked += 1; throw new Error("the engine is gone"); };
}"""


def test_rolls_that_are_cut_from_stay_so_while_nothing_answers(boat):
    """Another tab keeps a roll meanwhile: what stands here can be cut as soon as something answers again."""
    expect(figure(boat, "putty")).to_be_visible()
    boat.evaluate(ROLLS, OWN[:1])
    boat.get_by_role("button", name="Cut from the kit's rolls").click()
    cut = boat.get_by_role("button", name="All is cut")
    expect(cut).to_be_visible()
    boat.evaluate(COUNTED)
    boat.evaluate(ROLLS, OWN[1:2])
    boat.wait_for_function("() => window.asked > 1")
    expect(cut).to_be_visible()
    boat.locator("[name=spare]").evaluate("(one) => one.dispatchEvent(new Event('input', { bubbles: true }))")
    expect(cut).to_be_visible()

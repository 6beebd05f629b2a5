"""The joint in a real browser: an answer with nothing typed, a drawing that follows, and where it leads."""
import re

import pytest
from playwright.sync_api import expect

from .conftest import figure, keep


@pytest.fixture
def joint(phone, standing):
    phone.goto(standing.url + "/joint/")
    return phone


def test_an_empty_form_answers_and_the_drawing_follows_each_key_press(joint):
    expect(figure(joint, "radius")).to_have_text("14.5 mm")
    drawing = joint.get_by_role("img", name="Section to scale")
    expect(drawing).to_be_visible()
    before = drawing.locator(".shape-panel").first.get_attribute("points")
    joint.get_by_role("textbox", name="Inside angle").press_sequentially("120")
    expect(joint.get_by_role("img", name="meet at 120 degrees")).to_be_visible()
    panel = joint.get_by_role("img", name="Section to scale").locator(".shape-panel").first
    assert panel.get_attribute("points") != before
    expect(figure(joint, "radius")).to_have_text("36 mm")


def test_a_key_press_moves_the_points_that_are_there(joint):
    """A new drawing at each key press would cost a phone more than the reckoning."""
    expect(figure(joint, "radius")).to_have_text("14.5 mm")
    joint.evaluate("for (const one of document.querySelectorAll('[data-follows] *')) one.mine = true")
    joint.get_by_role("textbox", name="Inside angle").fill("100")
    expect(joint.get_by_role("img", name="meet at 100 degrees")).to_be_visible()
    assert joint.locator("[data-follows] *").evaluate_all("(all) => all.every((one) => one.mine)")


def test_drawing_first_figures_and_fields_stand_in_one_sight(phone, standing):
    keep(phone, standing.url + "/joint/")
    expect(figure(phone, "radius")).to_have_text("14.5 mm")
    foot = phone.locator("[data-foot]").bounding_box()["y"]
    seen = [phone.locator("[data-follows] svg"), phone.locator(".strip [data-line=putty]"),
            *(phone.get_by_role("textbox", name=name) for name in ("Panel thickness", "Inside angle", "Gap"))]
    boxes = [one.bounding_box() for one in seen]
    assert all(box["y"] >= 0 and box["y"] + box["height"] <= foot for box in boxes), (foot, boxes)
    phone.get_by_text("Losses and spare", exact=True).scroll_into_view_if_needed()
    expect(phone.locator(".strip [data-line=putty]")).to_be_in_viewport()


def test_no_word_of_the_drawing_is_smaller_than_12_px_or_lies_on_another(joint):
    for kind, angle, gap in (("inside", "90", "0"), ("both", "125", "2"), ("inside", "150", "1"), ("inside", "50", "0"),
                             ("bulkhead", "75", "0"), ("butt", "90", "3")):
        joint.get_by_label("Kind of joint").select_option(kind)
        if kind != "butt":
            joint.get_by_role("textbox", name="Inside angle").fill(angle)
        joint.get_by_label("Gap", exact=True).fill(gap)
        words = "gap" if gap != "0" else f"{angle} degrees"
        expect(joint.get_by_role("img", name="Section to scale")).to_be_visible()
        expect(joint.locator(".figure .shape-note", has_text="gap " if gap != "0" else "°").first).to_be_visible()
        boxes = joint.locator("[data-figure=section] .shape-note").evaluate_all(
            """(notes) => notes.map((note) => {
                const { x, y, width, height } = note.getBoundingClientRect();
                const scale = note.getScreenCTM().a;
                const size = parseFloat(getComputedStyle(note).fontSize) * scale;
                return { text: note.textContent, x, y, width, height, size };
            })""")
        for place, one in enumerate(boxes):
            assert one["size"] >= 11.8, (words, one)
            assert one["x"] >= 0 and one["x"] + one["width"] <= 360, (words, one)
            for other in boxes[place + 1:]:
                apart = (one["x"] + one["width"] <= other["x"] or other["x"] + other["width"] <= one["x"]
                         or one["y"] + one["height"] <= other["y"] + 3 or other["y"] + other["height"] <= one["y"] + 3)
                assert apart, (words, one, other)


@pytest.mark.parametrize("label, typed, field, said", [
    ("Panel thickness", "0", "thickness", "more than 0"),
    ("Inside angle", "185", "angle", "less than 180°"),
    ("Gap", "40", "gap", "Opening too wide"),
    ("Seam length", "-1", "length", "Seam length"),
])
def test_joints_that_cannot_be_are_refused_at_their_field(same_phone, standing, label, typed, field, said):
    if not same_phone.url.startswith(standing.url):
        same_phone.goto(standing.url + "/joint/")
    section = same_phone.get_by_role("img", name="Section to scale")
    expect(section).to_be_visible()
    asked = same_phone.get_by_role("textbox", name=label)
    stood = asked.input_value()
    asked.fill(typed)
    expect(same_phone.locator(f"[data-error='{field}']")).to_contain_text(said)
    expect(asked).to_have_value(typed)
    expect(section).to_be_hidden()
    asked.fill(stood)
    expect(same_phone.locator(f"[data-error='{field}']")).to_be_hidden()
    expect(section).to_be_visible()


def test_narrow_tape_and_stations_out_of_order_are_refused_in_their_row(phone, standing):
    phone.goto(standing.url + "/joint/?layers.0.width=20 mm&angle=60")
    expect(phone.locator("[data-error='layers.0.width']")).to_contain_text("too narrow")
    expect(phone.locator("form.live")).to_be_visible()
    phone.get_by_label("Width", exact=True).fill("75")
    expect(figure(phone, "radius")).to_be_visible()
    phone.get_by_text("Changing angle, copies").click()
    phone.get_by_label("Angle along the seam", exact=True).select_option("stations")
    expect(phone.locator("[data-figure=stations]")).to_be_visible()
    phone.locator("[name='stations.1.at']").fill("3")
    expect(phone.locator("[data-error='stations.2.at']")).to_contain_text("out of order")
    expect(phone.locator("[name='stations.1.at']")).to_have_value("3")
    phone.locator("[name='stations.1.at']").fill("1")
    phone.locator("summary", has_text="Cove size").click()
    phone.get_by_label("Cove size").select_option("spreader")
    phone.get_by_label("Radius", exact=True).fill("250")
    expect(phone.locator("[data-error='layers.0.width']")).to_contain_text("too narrow")


def test_a_joint_without_tape_says_so_by_an_empty_list(joint):
    joint.get_by_text("Tape and glass").click()
    joint.get_by_role("button", name="Remove").click()
    expect(figure(joint, "liquid")).to_be_hidden()
    joint.reload()
    expect(figure(joint, "radius")).to_be_visible()
    expect(figure(joint, "liquid")).to_be_hidden()


def test_the_putty_goes_to_pour_and_comes_back_with_one_tap(joint):
    joint.get_by_role("link", name="Pour this putty").click()
    expect(joint.get_by_label("Amount", exact=True)).to_have_value("147 mL")
    expect(joint.get_by_label("of what")).to_have_value("putty")
    expect(joint.locator("[data-line=filler]")).to_be_visible()


TYPED_BEHIND = """(angle) => {  // neither finger nor focus goes there
    const field = document.querySelector("[name=angle]");
    field.value = angle;
    field.dispatchEvent(new Event("input", { bubbles: true }));
}"""


def test_a_tap_is_not_lost_when_an_answer_comes_under_the_finger(joint):
    """A press and its lifting on two different links would be no tap at all."""
    expect(figure(joint, "radius")).to_have_text("14.5 mm")
    link = joint.get_by_role("link", name="Spreader template")
    link.hover()
    joint.mouse.down()
    joint.evaluate(TYPED_BEHIND, "110")
    expect(link).to_have_attribute("href", re.compile(r"radii=27\.2"))
    joint.mouse.up()
    expect(figure(joint, "radius_1")).to_have_text("27.2 mm")


def test_a_lead_keeps_the_focus_while_others_come_and_go(joint):
    """Nearly flat there is no cove: nothing to pour as putty, no spreader."""
    expect(figure(joint, "radius")).to_have_text("14.5 mm")
    joint.get_by_role("link", name="Add to boat").focus()
    for angle, count in (("179", 0), ("90", 1)):
        joint.evaluate(TYPED_BEHIND, angle)
        expect(joint.get_by_role("link", name="Spreader template")).to_have_count(count)
        expect(joint.get_by_role("link", name="Add to boat")).to_be_focused()


def test_the_spreader_of_a_joint_is_ready_to_print(joint):
    joint.get_by_role("link", name="Spreader template").click()
    expect(figure(joint, "radius_1")).to_have_text("14.5 mm")


def test_a_joint_answers_without_signal(phone, served):
    keep(phone, served.url)
    served.stop()
    phone.goto(served.url + "/joint/?thickness=5&angle=110")
    expect(figure(phone, "throat")).to_have_text("5 mm")
    expect(phone.get_by_role("img", name="Section to scale")).to_be_visible()


SAY = """async (words) => {
  (await part("page/notice.js")).notice("some", words, [["Undo", () => {}]]);
}"""
SEEN = """(element) => {
  const { left, top, width, height } = element.getBoundingClientRect();
  return element.contains(document.elementFromPoint(left + width / 2, top + height / 2));
}"""


@pytest.mark.parametrize("height", [740, 560, 400])
def test_a_notice_covers_neither_the_figures_nor_the_field_in_use(phone, standing, height):
    """400 px: what a keyboard on the screen leaves."""
    phone.set_viewport_size({"width": 360, "height": height})
    phone.goto(standing.url + "/joint/")
    expect(figure(phone, "radius")).to_be_visible()
    phone.evaluate(SAY, "Something was done just now, and this says it at some length.")
    fields = phone.locator(".joint-asked :is(input, select):visible")
    for place in [*range(fields.count()), *reversed(range(fields.count()))]:
        fields.nth(place).focus()
        assert fields.nth(place).evaluate(SEEN), place
    phone.evaluate("""async () => {
      scrollTo(0, 450);
      for (let frame = 0; frame < 3; frame += 1) await new Promise(requestAnimationFrame);
    }""")
    assert phone.locator(".strip").evaluate(SEEN)

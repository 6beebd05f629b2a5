"""Fast entry on the boat at 360 x 740: joints that start as the last one, numbers down a column, a copy for the other
side. Keystrokes and taps are counted: two a second, a slow typist's pace, are 240 in two minutes."""
import pytest
from playwright.sync_api import expect

PACE, SPAN = 2.0, 120.0  # keystrokes or taps a second; s
SIX = (("Keel", "150", "3.05"), ("Port chine", "125", "2.9"), ("Stbd chine", "125", "2.9"), ("Stem", "70", "0.6"),
       ("Transom", "100", "1.1"), ("Sheer", "95", "3"))


class Hands:
    """What a person does, counted."""

    def __init__(self, page):
        self.page, self.count = page, 0

    def key(self, name, times=1):
        for _ in range(times):
            self.page.keyboard.press(name)
            self.count += 1

    def type(self, text):
        self.page.keyboard.type(text)
        self.count += len(text)

    def tap(self, locator):
        locator.click()
        self.count += 1

    def tab_to(self, field):
        """By the keyboard from field to field, each tab counted."""
        for _ in range(30):
            if self.page.evaluate("document.activeElement.name ?? ''").endswith("." + field):
                return
            self.key("Tab")
        raise AssertionError(field)


@pytest.fixture
def empty(phone, standing):
    phone.goto(standing.url + "/boat/")
    phone.get_by_role("button", name="Empty the boat").click()
    return phone


def typed(page, field):
    return [page.locator(f"[name='joints.{place}.{field}']").input_value()
            for place in range(page.locator("[data-group=joints] [data-row]").count())]


def test_six_joints_are_in_within_two_minutes_by_the_keyboard(empty):
    hands = Hands(empty)
    hands.tap(empty.get_by_role("button", name="Joint: one more"))
    for place, (name, angle, length) in enumerate(SIX):
        if place:
            hands.key("Enter", 2)  # to the key for one more, and on it
        hands.type(name)
        if not place:
            hands.tab_to("thickness")
            hands.type("9")
        hands.tab_to("angle")
        hands.type(angle)
        hands.tab_to("length")
        hands.type(length)
    rows = empty.locator("[data-group=joints] [data-row]")
    expect(rows).to_have_count(6)
    for field, place in (("name", 0), ("angle", 1), ("length", 2)):
        assert typed(empty, field) == [row[place] for row in SIX]
    assert typed(empty, "thickness") == ["9"] * 6  # typed once
    assert empty.locator("[data-group=joints] [data-row][open]").count() == 1  # the others stay closed
    expect(rows.nth(5).locator(".row-told")).to_contain_text("putty in place")
    assert hands.count <= PACE * SPAN, hands.count
    assert hands.count == 109  # more of it is a step back


def test_numbers_go_down_a_column_and_the_last_one_makes_no_joint_by_itself(empty):
    for _ in range(3):
        empty.get_by_role("button", name="Joint: one more").click()
    rows = empty.locator("[data-group=joints] [data-row]")
    rows.nth(0).locator("summary").click()
    empty.locator("[name='joints.0.length']").focus()
    for length in ("1.1", "2.2", "3.3"):
        empty.keyboard.type(length)
        empty.keyboard.press("Enter")
        empty.keyboard.press("ControlOrMeta+a")
    assert typed(empty, "length") == ["1.1", "2.2", "3.3"]
    expect(rows).to_have_count(3)
    expect(empty.get_by_role("button", name="Joint: one more")).to_be_focused()


@pytest.mark.parametrize("name, other", [("Port chine", "Starboard chine"), ("chine, starboard", "chine, port"),
                                         ("Left sheer", "Right sheer"), ("Support", "Support"), ("Keel", "Keel")])
def test_a_joint_is_copied_to_the_other_side_by_its_name(empty, name, other):
    empty.get_by_role("button", name="Joint: one more").click()
    empty.locator("[name='joints.0.name']").fill(name)
    empty.locator("[name='joints.0.kind']").select_option("bulkhead")
    empty.locator("[name='joints.0.length']").fill("1.75")
    empty.locator("[name='joints.0.pour']").select_option("now")
    empty.get_by_role("button", name="Copy to the other side").click()
    assert typed(empty, "name") == [name, other]
    assert typed(empty, "kind") == ["bulkhead"] * 2
    assert typed(empty, "length") == ["1.75"] * 2
    assert typed(empty, "pour") == ["now", "later"]  # the next batch is each one's own
    rows = empty.locator("[data-group=joints] details[data-row]")
    assert rows.evaluate_all("(rows) => rows.map((row) => row.open)") == [False, True]

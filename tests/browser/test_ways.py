"""Every way of measuring on the phone, without signal: the answer in sight, slips told beside their field."""
import pytest
from playwright.sync_api import expect

from .conftest import drawn, figure, keep, with_a_scale

WAYS = {"Scale": "reading", "Pumps": "strokes", "Syringes": "drawn", "Marked cup": "level", "Stick": "mark"}


@pytest.fixture
def offline(phone, served):
    with_a_scale(phone)
    keep(phone, served.url)
    phone.get_by_role("button", name="Save in the kit").first.click()
    served.stop()
    phone.reload()
    return phone


def in_sight(page, line):
    """Whether a large figure stands between the top of the screen and its foot."""
    box = page.locator(f".head [data-line={line}] .line-text").bounding_box()
    foot = page.locator("[data-foot]").bounding_box()
    return box["y"] >= 0 and box["y"] + box["height"] <= foot["y"] + 1


def test_each_way_answers_offline_and_the_answer_is_in_sight(offline):
    for putty in ("Leave it liquid", "Make putty"):
        offline.get_by_role("radio", name=putty).check()
        for way, line in WAYS.items():
            offline.get_by_role("radio", name=way).check()
            expect(figure(offline, line + "_b").first).to_be_visible()
            assert in_sight(offline, line + "_a"), way
            assert in_sight(offline, line + "_b"), way
            if putty == "Make putty":
                assert in_sight(offline, "filler"), way


def test_only_the_tools_of_the_way_are_asked(phone, standing):
    phone.goto(standing.url)
    phone.get_by_text("Tools on the bench", exact=True).click()
    expect(phone.locator("[data-field=syringes]").first).to_be_visible()
    expect(phone.locator("[data-field=scale]").first).to_be_hidden()
    expect(phone.get_by_text("Putty: filler, blend, position")).to_be_hidden()
    phone.get_by_role("radio", name="Scale").check()
    expect(phone.locator("[data-field=scale]").first).to_be_visible()
    expect(phone.locator("[data-field=syringes]").first).to_be_hidden()


def test_a_scale_is_one_tap_away_says_what_it_needs_and_comes_by_itself_with_it(phone, standing):
    """Old main: 187 and 240 g stood on the first screen, by densities that nobody had read."""
    phone.goto(standing.url)
    expect(figure(phone, "drawn_b")).to_have_text(drawn(240))
    expect(phone.locator("[data-line=drawn_b] .line-rough")).to_contain_text("example")
    expect(phone.locator("[data-line=example]").first).to_be_visible()
    phone.get_by_role("radio", name="Scale").check()
    key = phone.locator("[data-to-wrong] button")  # in sight, where the figures would be
    expect(key).to_have_text("Densities ")
    said = phone.locator("[data-error='system.densities']")
    expect(said).to_contain_text("12.1% more or 7.6% less")
    expect(said).to_contain_text("parts by weight")
    key.click()
    expect(phone.locator("[name='system.densities']")).to_be_focused()
    phone.get_by_role("radio", name="Syringes").check()
    expect(figure(phone, "drawn_b")).to_have_text(drawn(240))
    expect(said).to_have_count(0)
    weight = phone.locator("[name='system.by_weight']")
    expect(weight).to_be_visible()  # the fold of what is missing stands open
    weight.fill("345:98")
    expect(figure(phone, "reading_a")).to_have_text("187 g")
    expect(phone.get_by_role("radio", name="Scale")).to_be_checked()
    phone.get_by_role("radio", name="Stick").check()  # what is chosen stays
    weight.fill("345:100")
    phone.reload()
    expect(phone.get_by_role("radio", name="Stick")).to_be_checked()
    phone.get_by_role("radio", name="Scale").check()
    expect(figure(phone, "reading_a")).to_have_text("186 g")
    phone.get_by_label("Resin system", exact=True).select_option("2-1")
    expect(figure(phone, "drawn_a")).to_be_visible()


CUT = """() => [...document.querySelectorAll(".pour-asked select")].filter((one) => one.offsetWidth).flatMap((one) => {
  const style = getComputedStyle(one);
  const told = document.body.appendChild(document.createElement("span"));
  told.style.cssText = "position: absolute; white-space: pre";
  for (const each of ["fontFamily", "fontSize", "fontWeight", "letterSpacing"]) told.style[each] = style[each];
  const room = one.clientWidth - parseFloat(style.paddingLeft) - parseFloat(style.paddingRight);
  return [...one.options].map(({ text }) => {
    told.textContent = text;
    return told.getBoundingClientRect().width > room ? text : "";
  }).filter(Boolean);
})"""


def test_every_choice_above_the_figures_can_be_read_whole(phone, standing):
    phone.goto(standing.url + "/?thicken=yes")
    expect(phone.get_by_label("How stiff", exact=True)).to_be_visible()
    assert phone.evaluate(CUT) == []


@pytest.mark.parametrize(("typed", "field", "words"), [
    ("way=stick&cup.bottom=60&cup.top=60&cup.height=20", "pours", "equal batches"),
    ("way=graduated&amount=20&graduated.holds=400&graduated.step=50", "coarse_b", "Use finer marks"),
    ("way=stick&cup.bottom=80&cup.top=60&cup.height=100", "narrows", "narrower than the bottom"),
    ("thicken=yes&batches.0.mixed=100&batches.0.before=500&batches.0.after=470&batches.1.mixed=100"
     "&batches.1.before=500&batches.1.after=440", "contradiction", "A third batch shows which"),
])
def test_what_cannot_be_well_gets_words_and_a_way_out(phone, standing, typed, field, words):
    phone.goto(f"{standing.url}/?{typed}")
    expect(phone.locator(f"[data-line={field}]").first).to_contain_text(words)


@pytest.mark.parametrize(("typed", "field", "words"), [
    ("thicken=yes&blend.0.filler=silica&blend.0.share=40&blend.1.filler=wood-flour&blend.1.share=50",
     "blend.1.share", "short"),
    ("thicken=yes&batches.0.mixed=100&batches.0.before=400&batches.0.after=500", "batches.0.after", "less than"),
    ("way=graduated&levels.0.volume=180&levels.1.volume=90", "levels.1.volume", "than the level before"),
    ("way=stick&heights.0.height=900", "heights.0.height", "Above the rim"),
])
def test_what_cannot_be_at_all_is_told_beside_its_field(phone, standing, typed, field, words):
    phone.goto(f"{standing.url}/?{typed}")
    wrong = phone.locator(f"[data-error='{field}']")
    expect(wrong).to_be_visible()
    expect(wrong).to_contain_text(words)


def test_a_rescue_before_and_after_filler(phone, standing):
    """By hand: 3 : 1 by weight with 180 and 90 g asks for 270 of resin, 90 more; 60 of filler in 270 g become 80."""
    link = "/?system.by_weight=3:1&rescue=yes&in_cup.0.mass=180&in_cup.1.mass=90"
    phone.goto(standing.url + link)
    expect(figure(phone, "add_a")).to_have_text("90 g")
    phone.get_by_role("button", name="Use these").click()
    phone.locator("[name=filler_in]").fill("60")
    expect(figure(phone, "add_filler")).to_have_text("20.0 g")
    expect(figure(phone, "add_a")).to_have_text("90 g")

"""Which part is which, as a person reads, hears, prints and hands it on: each name with its own figure.

The figures are worked out here from the label, by plain proportion; the names are typed and stand for no order.
"""
import re

from covemix.shared.door import moves
from playwright.sync_api import expect

from .test_engine_faults import interpreter

# 350 g of 100 : 50 : 25 by weight, densities 1.10 : 1.00 : 0.80 (of one decimal each no volume
# would be told): 200, 100 and 50 g, 181.8, 100 and 62.5 mL
NAMES = ("Base", "Kicker", "Flex")
GRAMS = (200.0, 300.0, 350.0)
LABEL = "system.by_weight=100:50:25&system.densities=1.10:1.00:0.80&system.parts=Base:Kicker:Flex"
LINK = f"/?{LABEL}&amount=350&pumps.strokes=10:10:10&syringes.holds=60&syringes.steps=1"
# what the large figures must come to: g in all on the scale, mL in syringes with marks of 1 mL, mL at marks of 10 mL,
# strokes of 10 mL, mm on a stick; how far whole strokes and marks may lead from it, for they are never fewer in all
EXACT = {"scale": ("reading", GRAMS, 1), "syringes": ("drawn", (181.8, 100.0, 62.5), 6),
         "graduated": ("level", (181.8, 281.8, 344.3), 60), "pumps": ("strokes", (18.2, 10.0, 6.25), 4),
         "stick": ("mark", (None, None, None), 0)}
VOICE = """
window.told = [];
speechSynthesis.getVoices = () => [{ localService: true, lang: "en-GB" }];
window.SpeechSynthesisUtterance = function (words) { this.words = words; };
localStorage["covemix.set.voice"] ??= "on";
speechSynthesis.speak = ({ words }) => window.told.push(words);
"""
SAID = ("two hundred grams", "three hundred grams", "three hundred and fifty grams")


def number(text):
    return float(re.match(r"[0-9.]+", text.replace("\u00a0", " "))[0])


def hatch(page, place):
    """The hatching of the piece on the rule in a place: by the word and the hatch a part is told."""
    return page.locator(f"{place} .line-rule rect").nth(1).get_attribute("class").removeprefix("shape-")


def large(page, line):
    """Name and figure of one large line, as they stand on the page."""
    one = page.locator(f".head [data-line={line}]").first
    expect(one).to_be_visible()
    return one.locator(".line-part").text_content().strip(), number(one.locator(".line-text").text_content())


def test_large_figures_steps_voice_card_and_pot_name_each_part_with_its_own(phone, standing):
    phone.add_init_script(VOICE)
    phone.goto(standing.url + LINK)
    expect(phone.locator("[data-status]")).not_to_be_empty()  # laid out by the page, not as the server sent it
    for way, (line, wanted, slack) in EXACT.items():
        phone.locator(f"input[name=way][value={way}]").check(force=True)
        expect(phone.locator(f".head [data-line={line}_c]").first).to_be_visible()
        found = [large(phone, f"{line}_{letter}") for letter in "abc"]
        assert tuple(name for name, _ in found) == NAMES, way
        assert [hatch(phone, f".head [data-line={line}_{letter}]") for letter in "abc"] == ["a", "b", "c"]
        figures = [figure for _, figure in found]
        if wanted[0] is None:  # one on the other in one cup: they rise in the order of pouring
            assert figures == sorted(figures) and len(set(figures)) == 3
            continue
        for figure, own in zip(figures, wanted, strict=True):
            assert abs(figure - own) <= slack, (way, figures)
        if way in ("pumps", "syringes"):
            assert figures == sorted(figures, reverse=True)
    phone.locator("input[name=way][value=scale]").check(force=True)
    expect(phone.locator(".head [data-line=reading_c] .line-text")).to_have_text("350 g")
    every = phone.locator("[data-line^=part_]")
    assert [every.nth(place).locator(".line-label").text_content() for place in range(3)] == list(NAMES)
    assert [number(every.nth(place).locator(".line-text").text_content()) for place in range(3)] == [200, 100, 50]

    share(phone)
    step_by_step(phone)
    clock_of_it(phone)


def share(phone):
    """The words, the card on paper and the link carry the names, each with its figure."""
    phone.get_by_role("button", name="Share").click()
    phone.get_by_role("radio", name="Plain words").check()
    words = phone.locator("[data-words]").text_content()
    for name, grams in zip(NAMES, GRAMS, strict=True):
        assert re.search(rf"{name}[^\n]*: {grams:.0f} g", words), words
    link = phone.get_by_label("Link", exact=True).input_value()
    assert "system.parts=Base%3AKicker%3AFlex" in link and "system.by_weight=100%3A50%3A25" in link
    phone.evaluate("window.print = () => {}")
    phone.get_by_role("button", name="Print a card").click()
    rows = phone.locator("[data-card] [data-card-lines] [data-line^=reading_]")
    expect(rows).to_have_count(3)
    for place, (name, grams) in enumerate(zip(NAMES, GRAMS, strict=True)):
        label = rows.nth(place).locator(".card-label").text_content()
        assert name in label and not any(other in label for other in NAMES if other != name)
        assert rows.nth(place).locator(".card-text").text_content() == f"{grams:.0f} g"
    phone.evaluate("window.dispatchEvent(new Event('afterprint'))")


def step_by_step(phone):
    """Each step against what the engine says of it, and the engine's against the label."""
    steps = moves.answer("pouring", {"amount": "350", "system": {
        "by_weight": "100:50:25", "densities": "1.10:1.00:0.80", "parts": "Base:Kicker:Flex"}})["steps"]
    view = {name: phone.locator(f"[data-steps={name}]") for name in ("step", "part", "figure", "under", "tap", "next",
                                                                        "undo", "leave", "say")}
    phone.get_by_role("button", name="Pour step by step").click()
    for place, one in enumerate(steps[:5]):
        expect(view["step"]).to_contain_text(f"Step {place + 1} of {len(steps)}")
        expect(view["part"]).to_have_text(one["label"].split(", ")[0])
        expect(view["figure"]).to_have_text(one["figure"])
        expect(view["under"]).to_contain_text(one["under"])  # behind a part that was poured there is more
        expect(view["next"]).to_have_text(f"Then: {steps[place + 1]['label']} {steps[place + 1]['figure']}".strip())
        assert phone.evaluate("window.told.at(-1)") == one["said"]
        phone.evaluate("window.told.length = 0")
        view["say"].click()
        assert phone.evaluate("window.told") == [one["said"]]
        if 1 <= place <= 3:
            assert hatch(phone, "[data-steps=rule]") == "abc"[place - 1]
            expect(view["part"]).to_have_text(NAMES[place - 1])
            expect(view["figure"]).to_have_text(f"{GRAMS[place - 1]:.0f} g")
            assert one["said"] == f"{NAMES[place - 1]} to {SAID[place - 1]}"
            assert "to 0" not in view["under"].text_content()  # the scale is zeroed once, with the empty cup
        if place < 4:
            view["tap"].click()
    for _ in range(4):
        view["undo"].click()
    expect(view["step"]).to_contain_text("Step 1 of")
    view["leave"].click()


def clock_of_it(phone):
    """The pot that is started from this pour, and its own link, know the same label."""
    lead = phone.locator("[data-leads] a", has_text="clock").first
    assert "system.parts=Base%3AKicker%3AFlex" in lead.get_attribute("href")
    lead.click()
    phone.get_by_label("Air temperature").first.fill("20")
    expect(phone.locator("[name='system.parts']")).to_have_value("Base:Kicker:Flex")
    expect(phone.locator("[name='system.by_weight']")).to_have_value("100:50:25")


def test_each_row_of_what_was_read_stands_by_its_own_part(phone, standing):
    """Typed is what the scale showed, all as planned; beside each row stands whose it is and what is told of it."""
    shown = "&".join(f"readings.{place}.shown={grams:.0f}" for place, grams in enumerate((200, 300, 350)))
    phone.goto(f"{standing.url}/?{LABEL}&amount=350&way=scale&{shown}")
    phone.wait_for_function("() => !document.querySelector('[data-unanswered]')")
    rows = phone.locator("[data-group=readings] [data-row]")
    expect(rows).to_have_count(3)
    expect(rows.nth(2).locator(".row-told")).to_have_text("350 g")
    for place, name in enumerate(NAMES):
        called = rows.nth(place).locator(".row-name").text_content()
        assert name in called and not any(other in called for other in NAMES if other != name), called
        assert number(rows.nth(place).locator(".row-told").text_content()) == GRAMS[place]


def test_what_follows_a_key_press_before_the_rest_names_the_same_parts(phone, served):
    """The rest of the answer never comes: what stands large is the first of it, of 700 g."""
    served.stop()
    served.start(wrap=interpreter("for (;;);", '\\"screen\\"'))
    phone.goto(served.url + LINK)
    phone.get_by_label("Amount", exact=True).fill("700")
    expect(phone.locator(".head [data-line=reading_c] .line-text")).to_have_text("700 g")
    assert [large(phone, f"reading_{letter}") for letter in "abc"] == [
        (name, 2 * grams) for name, grams in zip(NAMES, GRAMS, strict=True)]


def test_the_rescue_names_what_is_short_and_stays_a_warning(phone, standing):
    """Plain proportion: 200 of Base and 150 of Kicker ask for 100 more of Base and, of 450 by 25 / 150, 75 of Flex."""
    phone.goto(f"{standing.url}/?{LABEL}&amount=350&rescue=yes&in_cup.0.mass=200&in_cup.1.mass=150&in_cup.2.mass=50")
    expect(phone.locator("[data-status]")).not_to_be_empty()
    expect(phone.locator(".head [data-line=add_c]")).to_be_visible()
    assert [large(phone, f"add_{letter}") for letter in "ac"] == [("Base", 100), ("Flex", 25)]
    expect(phone.locator(".head [data-line=add_b]")).to_have_count(0)
    off = phone.locator(".head [data-line=off]")
    expect(off).to_be_visible()
    expect(off).to_have_attribute("data-rank", "warn")
    expect(off.locator(".line-rough")).to_contain_text("too much Kicker")
    plain, marked = (phone.locator(where).first.evaluate("(one) => getComputedStyle(one).backgroundColor")
                     for where in (".line[data-rank=answer]", ".head [data-line=off]"))
    assert plain != marked  # and it looks like one


def test_without_scripts_the_server_lays_out_the_same_names(chromium, standing):
    context = chromium.new_context(java_script_enabled=False)
    page = context.new_page()
    page.goto(standing.url + LINK)
    assert [large(page, f"reading_{letter}") for letter in "abc"] == list(zip(NAMES, GRAMS, strict=True))
    context.close()

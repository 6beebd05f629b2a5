"""One choice of units for the whole phone: what a field says is what the engine reads, on all screens, in all tabs."""
import json

import pytest
from covemix.server.pages import PAGES
from covemix.shared.door import moves
from covemix.shared.forms import links
from covemix.shared.forms.declared import Several, units_of_tools
from covemix.shared.forms.errors import InputError
from covemix.shared.words.units import BY_NAME, METRIC, US, find, to_si
from playwright.sync_api import expect

from .conftest import BY_WEIGHT, figure, fresh, with_a_scale

SCREENS = [name for name, _ in moves.SCREENS]
PATHS = {name: path for name, path, _ in PAGES}


def choose(page, system):
    """In the Kit, as a person does."""
    page.locator(f"[name=set-units][value={system}]").locator("xpath=..").click()


def units(page, system):
    page.evaluate("([system]) => localStorage.setItem('covemix.set.units', system)", [system])


def leaves(inputs, prefix=""):
    """(path, declaration, beside) of every field in sight that holds numbers; of a group the first row."""
    for item in inputs:
        if item.kind == "pick":
            yield from leaves(item.record.fields, f"{prefix}{item.name}.")
        elif item.kind == "group":
            yield from leaves(item.fields, f"{prefix}{item.name}.0.")
        elif item.kind == "amount":
            for option in item.options:
                yield prefix + item.name, item, option
        elif item.kind in ("number", "parts") and not item.unseen:
            yield prefix + item.name, item, None


def bare(item, option, system):
    """A number that the field takes in that system, as text without a unit."""
    if item.kind == "amount":
        return "7"
    for text in ("7", "1", "4", "0.3", "11", "70", "0.02", "130", "20", "600", "5000", "0.002"):
        typed = " : ".join([text] * max(item.least, 1)) if item.kind == "parts" else text
        try:
            item.read(typed, "", {"units": system, "_understood": [], "_tree": {}})
        except (InputError, Several):
            continue
        return typed
    raise AssertionError(f"no number found that {item.name} takes")


def read_in(item, option, typed, system, tools):
    """What the engine reads of it [SI]."""
    tree = {item.name + "_is": option[0]} if option else {}
    read = item.read(typed, "", {"units": system, "_understood": [], "_tree": tree, "_tools": tools})
    return read[1] if option else read


SEEN = """(paths) => paths.map(([path, option]) => {
    const form = document.querySelector("[data-form]");
    const group = form.querySelector(`[data-group="${path.split(".")[0]}"] [data-blank]`);
    const field = form.elements.namedItem(path) ?? group?.content.querySelector(`[name="${path}"]`);
    if (!field) return null;
    const unit = field.nextElementSibling;
    const one = option && [...form.elements.namedItem(path + "_is").options].find((each) => each.value === option);
    return [one ? one.dataset.unit : unit?.matches(".unit") ? unit.textContent : "", field.placeholder];
})"""


# what the page asks the engine with
TYPED = """async () => {
  const { pairs } = await part("form/form.js");
  return pairs(document.querySelector("[data-form]"));
}"""


def meant(unit, quantity, value):
    found, why = find(unit, quantity) if unit else (None, "")
    assert found or not unit, why
    return to_si(value, found.name if found else "")


def check(screen, page, system):
    """Every number field of a screen: a bare number with the suffix in sight is what the engine reads."""
    declared = moves.screen_inputs(screen)
    fields = [leaf for leaf in leaves(declared)]
    tools = units_of_tools(declared, links.tree(page.evaluate(TYPED)), system)
    seen = page.evaluate(SEEN, [[path, option[0] if option else None] for path, _, option in fields])
    assert fields or screen in ("sources", "safety"), screen
    for (path, item, option), shown in zip(fields, seen, strict=True):
        assert shown, f"{screen}: {path} is not on the page"
        unit, placeholder = shown
        typed = bare(item, option, system)
        read = read_in(item, option, typed, system, tools)
        quantity = BY_NAME[option[2][0] if option else item.unit].quantity
        for text, si in zip(typed.split(" : "), read if isinstance(read, tuple) else (read,), strict=True):
            assert si == pytest.approx(meant(unit, quantity, float(text)), rel=1e-9), (screen, path, unit, typed)
        if item.kind == "number" and item.default is not None and "." not in path:
            assert placeholder == item.default_in(system), (screen, path)


@pytest.mark.parametrize("screen", SCREENS)
def test_every_field_says_what_the_engine_reads_in_both_systems(screen, same_phone, standing):
    """From the declarations: a new field is in it."""
    page = same_phone
    page.goto(standing.url + "/" + PATHS[screen])
    for system in (US, METRIC):
        page.evaluate("([system]) => localStorage.setItem('covemix.set.units', system)", [system])
        page.reload()
        expect(page.locator("[data-form]")).to_have_attribute("data-units", system)
        check(screen, page, system)
    page.evaluate("() => localStorage.clear()")


def test_the_units_chosen_in_the_kit_are_those_of_every_screen_and_tab(phone, standing):
    page = phone
    page.goto(standing.url)
    page.get_by_label("Amount", exact=True).fill("240")
    expect(figure(page, "part_a")).to_contain_text(" mL")
    others = {}
    for screen in ("clock", "joint"):
        others[screen] = page.context.new_page()
        others[screen].goto(standing.url + "/" + PATHS[screen])
        others[screen].wait_for_selector("form.live")
    kit = page.context.new_page()
    kit.goto(standing.url + "/kit/")
    choose(kit, US)
    for screen, other in others.items():  # in open tabs, without a reload
        expect(other.locator("[data-form]")).to_have_attribute("data-units", US)
        check(screen, other, US)
    expect(page.get_by_label("Amount", exact=True)).to_have_value("240 g")
    for system in (US, METRIC):  # the choice that holds is the one that is marked
        expect(kit.locator(f"[name=set-units][value={system}]")).to_be_checked(checked=system == US)
    kit.click("[data-to=pour]")
    expect(kit.get_by_label("Amount", exact=True)).to_have_value("240 g")
    check("pour", kit, US)
    asked = kit.evaluate("() => localStorage.getItem('covemix.typed.pour')")
    assert dict(json.loads(asked))["amount"] == "240", "kept as typed until it is edited"


def test_a_cup_that_pour_picked_is_no_number_on_another_screen(phone, standing):
    page = phone
    page.goto(standing.url)
    page.get_by_label("Amount", exact=True).fill("180")
    for screen in ("joint", "boat", "plan"):
        page.goto(standing.url + "/" + PATHS[screen])
        page.wait_for_selector("form.live")
        for name in ("cup", "filler", "people"):
            field = page.locator(f"[data-form] input[name={name}]")
            if field.count():
                expect(field).to_have_value("")


TOOLS = [item for item in moves.screen_inputs("pour") if item.kind == "pick" and item.record.shows]
CHOICES = [(item, row[0], {}) for item in TOOLS for row in item.record.rows] + [
    (item, "", typed) for item in TOOLS for typed in {
        "scale": ({"step": "0.05 oz"}, {"step": "2"}), "syringes": ({"holds": "2", "steps": "0.1 US fl oz"},),
        "graduated": ({"holds": "16 US fl oz", "step": "1 US fl oz"},)}[item.name]]
WAYS = {"scale": "scale", "syringes": "syringes", "graduated": "graduated"}


@pytest.mark.parametrize("system", [METRIC, US])
def test_what_an_instrument_shows_is_typed_in_its_unit_whichever_is_chosen(system, same_phone, standing):
    """Built in, or typed by its figures: every field, and the blank of every row to come."""
    page = same_phone
    page.goto(standing.url)
    units(page, system)
    page.reload()
    page.wait_for_selector("form.live")
    for item, row, typed in CHOICES:
        page.locator(f"[name=way][value={WAYS[item.name]}]").check(force=True)
        put(page, item.name, row or item.record.rows[0][0])
        for name, text in typed.items():
            put(page, f"{item.name}.{name}", text)
        check("pour", page, system)
    page.evaluate("() => { localStorage.clear(); sessionStorage.clear(); }")


def put(page, name, text):
    """Into a field of the form, folded away or not."""
    page.evaluate("""([name, text]) => {
        const field = document.querySelector("[data-form]").elements.namedItem(name);
        field.value = text;
        field.dispatchEvent(new Event("input", { bubbles: true }));
    }""", [name, text])


def in_us(page, url):
    with_a_scale(page)
    page.goto(url)
    units(page, US)
    page.reload()
    page.wait_for_selector("form.live")


def told(**typed):
    """What the second reading must be: the mass of the first says its unit here."""
    found = moves.answer("measure", {"units": US, "system": BY_WEIGHT, **typed})["lines"]
    return next(one["text"] for one in found if one["name"] == "reading_b")


def test_a_scale_that_shows_grams_is_read_in_grams_in_us_units(phone, standing):
    """Old main: Pour said "187 g", and 190 typed below it was 190 oz."""
    page = phone
    in_us(page, standing.url)
    expect(figure(page, "reading_a")).to_have_text("187 g")
    shown = page.locator("[name='readings.0.shown']")
    page.get_by_text("What was actually poured").click()
    shown.fill("190")
    expect(shown.locator("xpath=following-sibling::span")).to_have_text("g")
    expect(figure(page, "reading_b")).to_have_text(told(readings=[{"shown": "190 g"}]))
    # another scale: what was typed is what it was
    page.get_by_text("Tools on the bench").click()
    page.get_by_text("Scale: figures").click()
    page.locator("[name='scale.step']").fill("0.05 oz")
    expect(shown).to_have_value("190 g")
    expect(page.locator("[name='readings.1.shown'] + .unit")).to_have_text("oz")
    expect(figure(page, "reading_b")).to_have_text(told(readings=[{"shown": "190 g"}], scale={"step": "0.05 oz"}))
    page.reload()
    expect(shown).to_have_value("190 g")
    expect(figure(page, "reading_b")).to_have_text(told(readings=[{"shown": "190 g"}], scale={"step": "0.05 oz"}))


def test_a_reading_stays_what_it_was_where_another_screen_chooses_another_scale(phone, standing):
    page = phone
    in_us(page, standing.url)
    page.get_by_text("What was actually poured").click()
    page.locator("[name='readings.0.shown']").fill("190")
    page.goto(standing.url + "/plan/")
    page.wait_for_selector("form.live")
    put(page, "scale.step", "0.05 oz")
    page.goto(standing.url)
    expect(page.locator("[name='readings.0.shown']")).to_have_value("190 g")


def test_the_steps_take_what_the_scale_shows(phone, standing):
    """Reading and filler tub: the number alone, as it stands on the scale."""
    page = phone
    in_us(page, standing.url)
    page.locator("[name=thicken][value=yes]").check(force=True)
    page.get_by_role("button", name="Pour step by step").click()
    at = lambda name: page.locator(f"[data-steps={name}]")  # noqa: E731
    expect(at("figure")).to_have_text("0 g")  # before the first step stands there, a tap says yes to nothing
    at("tap").click()
    expect(at("figure")).to_have_text("187 g")
    expect(at("unit")).to_have_text("g")
    at("actual").fill("190")
    at("actual").press("Enter")
    expect(at("figure")).to_have_text(told(readings=[{"shown": "190 g"}]))
    at("tap").click()
    at("tap").click()  # the clock
    at("tap").click()
    at("tap").click()
    at("tap").click()
    expect(at("part")).to_contain_text("Weigh the filler tub")
    for name in ("before", "after"):
        expect(page.locator(f"[data-unit-like='batches.0.{name}']")).to_have_text("g")
    at("before").fill("500")
    at("after").fill("440")
    at("store").click()
    expect(at("part")).to_contain_text("Done")
    kept = page.evaluate("""async () => {
        const { all } = await part("store/store.js");
        return all("log");
    }""")
    assert [(one["before"], one["after"]) for one in kept] == [("500 g", "440 g")]


def test_the_keys_of_a_field_follow_the_units(phone, standing):
    """Inches take fractions and feet, which a keypad for decimals cannot type; millimetres are one number."""
    phone.goto(standing.url + "/joint/")
    phone.wait_for_selector("form.live")
    field = phone.locator("[name=thickness]")
    expect(field).to_have_attribute("inputmode", "decimal")
    units(phone, US)
    phone.reload()
    expect(field).to_have_attribute("inputmode", "text")
    units(phone, METRIC)
    phone.reload()
    expect(field).to_have_attribute("inputmode", "decimal")


def test_a_tap_on_the_unit_brings_the_keys_of_other_units_and_fractions(chromium, standing):
    """A keypad for decimals has neither; a field that holds some of them has all keys by itself."""
    with fresh(chromium, has_touch=True, is_mobile=True) as (page, _):
        page.goto(standing.url)
        amount, unit = page.locator("[name=amount]"), page.locator("[data-unit-of=amount]")
        expect(figure(page, "drawn_b")).to_be_visible()
        amount.tap()
        assert amount.evaluate("(one) => one.inputMode") == "decimal"
        unit.tap()
        expect(amount).to_be_focused()
        assert amount.evaluate("(one) => one.inputMode") == "text"
        amount.fill("1.5 kg")
        page.locator("[data-line=drawn_b]").first.tap()
        amount.evaluate("(one) => one.blur()")
        assert amount.evaluate("(one) => one.inputMode") == "decimal"
        amount.tap()
        assert amount.evaluate("(one) => one.inputMode") == "text"


NOTHING_KEPT = """for (const name of ["localStorage", "sessionStorage"]) {
  Object.defineProperty(window, name, { get() { throw new DOMException("", "SecurityError"); } });
}"""


def test_where_nothing_can_be_kept_the_units_that_are_chosen_hold_until_the_page_closes(phone, standing):
    """And that is said; what is told once is told again."""
    phone.add_init_script(NOTHING_KEPT)
    phone.goto(standing.url + "/joint/")
    expect(phone.locator("[data-form].live")).to_have_attribute("data-units", METRIC)
    phone.get_by_role("link", name="Kit", exact=True).click()
    expect(phone.locator("[data-listing][data-read]")).to_be_visible()
    choose(phone, US)
    expect(phone.locator("[data-notice=settings]")).to_have_text(
        "This browser cannot save. The setting lasts until you close the page.✕")
    expect(phone.locator(f"[name=set-units][value={US}]")).to_be_checked()
    phone.get_by_role("link", name="Joint", exact=True).click()
    expect(phone.locator("main.screen-joint [data-form]")).to_have_attribute("data-units", US)
    check("joint", phone, US)
    phone.reload()
    expect(phone.locator("[data-form].live")).to_have_attribute("data-units", METRIC)
    expect(phone.locator("[data-notice=unkept]")).to_contain_text("cannot save Covemix")


def test_units_that_another_tab_chooses_while_a_screen_is_on_its_way_are_those_it_comes_with(phone, standing):
    phone.goto(standing.url + "/kit/")
    expect(phone.locator("[data-listing][data-read]")).to_be_visible()
    late, held = phone.context.new_page(), []
    errors = []
    late.on("pageerror", lambda error: errors.append(str(error)))
    late.route("**/js/views/clock.js", lambda route: held.append(route))
    late.goto(standing.url + "/clock/", wait_until="commit")
    late.wait_for_function("() => window.name === 'covemix'")
    late.evaluate("addEventListener('storage', () => { window.told = true; })")
    choose(phone, US)
    late.wait_for_function("() => window.told")
    for route in held:
        route.continue_()
    expect(late.locator("[data-form].live")).to_have_attribute("data-units", US)
    assert errors == []

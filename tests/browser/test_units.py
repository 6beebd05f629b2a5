"""One choice of units for the whole phone: what a field says is what the engine reads, on all screens, in all tabs."""
import json

import pytest
from covemix.shared.door import moves
from covemix.shared.forms.declared import Several
from covemix.shared.forms.errors import InputError
from covemix.shared.words.units import BY_NAME, METRIC, US, find, to_si
from playwright.sync_api import expect

from .conftest import figure

SCREENS = [name for name, _ in moves.SCREENS]
PATHS = {name: "" if name == "pour" else f"{name}/" for name in SCREENS}


def choose(page, system):
    """In the Kit, as a person does."""
    page.locator(f"[name=set-units][value={system}]").locator("xpath=..").click()


def units(page, system):
    page.evaluate("([system]) => localStorage.setItem('covemix.set.units', system)", [system])


def leaves(inputs, prefix=""):
    """(path, declaration, beside) of every field that holds numbers; of a group the first row."""
    for item in inputs:
        if item.kind == "pick":
            yield from leaves(item.record.fields, f"{prefix}{item.name}.")
        elif item.kind == "group":
            yield from leaves(item.fields, f"{prefix}{item.name}.0.")
        elif item.kind == "amount":
            for option in item.options:
                yield prefix + item.name, item, option
        elif item.kind in ("number", "parts"):
            yield prefix + item.name, item, None


def bare(item, option, system):
    """A number that the field takes in that system, as text without a unit."""
    if item.kind == "amount":
        return "7"
    for text in ("7", "1", "0.3", "11", "70", "0.02", "130", "20", "600", "5000", "0.002"):
        typed = " : ".join([text] * max(item.least, 1)) if item.kind == "parts" else text
        try:
            item.read(typed, "", {"units": system, "_understood": [], "_tree": {}})
        except (InputError, Several):
            continue
        return typed
    raise AssertionError(f"no number found that {item.name} takes")


def read_in(item, option, typed, system):
    """What the engine reads of it [SI]."""
    tree = {item.name + "_is": option[0]} if option else {}
    read = item.read(typed, "", {"units": system, "_understood": [], "_tree": tree})
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


def meant(unit, quantity, value):
    found, why = find(unit, quantity) if unit else (None, "")
    assert found or not unit, why
    return to_si(value, found.name if found else "")


def check(screen, page, system):
    """Every number field of a screen: a bare number with the suffix in sight is what the engine reads."""
    fields = [leaf for leaf in leaves(moves.screen_inputs(screen))]
    seen = page.evaluate(SEEN, [[path, option[0] if option else None] for path, _, option in fields])
    assert fields or screen in ("sources", "safety"), screen
    for (path, item, option), shown in zip(fields, seen, strict=True):
        assert shown, f"{screen}: {path} is not on the page"
        unit, placeholder = shown
        typed = bare(item, option, system)
        read = read_in(item, option, typed, system)
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
    expect(figure(page, "part_a")).to_contain_text(" g")
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

"""Choices: the builder's own things are taken by themselves, one choice holds everywhere, a link's thing is kept."""
import re

import pytest
from playwright.sync_api import expect

from .conftest import drawn, figure
from .test_kit import FULL, add, kit, shelf  # noqa: F401  (kit is a fixture)

SYSTEM = ("system.name=Harbour+mix&system.by_weight=100:44&system.pot_time=40+min&system.pot_mass=100+g"
          "&system.pot_temperature=20+C")


def system(page):
    return page.get_by_role("combobox", name="Resin system", exact=True)


def chosen(pick):
    return pick.evaluate("(one) => one.selectedOptions[0].textContent.trim()")


def opened(page, address):
    page.goto(address)
    expect(page.locator("[data-form].live")).to_have_count(1)


def test_a_new_system_starts_empty_and_by_pumps_asks_for_what_is_missing(kit, standing):  # noqa: F811
    """Old main: 1 : 1 by volume stood behind it, and "11 strokes" each were in ratio."""
    shelf(kit, "Resin system").get_by_role("button", name="Add").click()
    assert chosen(system(kit)) == "Figures typed below"
    kit.locator("[name='system.name']").fill("Harbour mix")
    kit.locator("[name='system.by_weight']").fill("100:44")
    kit.get_by_role("button", name="Save", exact=True).click()
    expect(shelf(kit, "Resin system").locator(".entry-line")).to_have_text("Parts by weight: 100:44")
    opened(kit, standing.url)
    expect(system(kit).locator("option:checked")).to_have_text("Harbour mix")
    expect(figure(kit, "reading_a")).to_have_text("167 g")
    kit.get_by_role("radio", name="Pumps").check()
    expect(kit.locator("[data-error='system.densities']")).to_be_visible()
    expect(kit.locator("[data-line=strokes_a]")).to_have_count(0)
    kit.locator("[data-no-answer]").get_by_role("button", name="Densities").click()  # the field itself is far below
    expect(kit.locator("[name='system.densities']")).to_be_focused()
    expect(kit.locator("[name='system.densities']")).to_be_in_viewport()
    kit.keyboard.type("1.15 0.98")
    expect(kit.locator("[data-line=strokes_a]")).to_be_visible()
    expect(kit.locator("[data-wrong]")).to_have_count(0)


def test_typed_over_a_built_in_row_it_stands_as_typed(phone, standing):
    opened(phone, standing.url)
    phone.get_by_text("Resin system: figures").click()
    phone.locator("[name='system.by_weight']").fill("100:44")
    expect(system(phone)).to_have_value("")
    expect(phone.locator("[name='system.densities']")).to_have_attribute("placeholder", "")
    expect(figure(phone, "reading_a")).to_have_text("167 g")
    phone.get_by_role("radio", name="Pumps").check()
    expect(phone.locator("[data-error='system.densities']")).to_be_visible()


@pytest.mark.parametrize("path", ["", "joint/", "boat/", "clock/", "plan/"])
def test_ones_own_is_taken_by_itself_on_every_screen(kit, standing, path):  # noqa: F811
    add(kit)
    opened(kit, standing.url + "/" + path)
    picks = kit.locator("[data-pick=system]")
    for place in range(picks.count()):
        expect(picks.nth(place).locator("option:checked")).to_have_text("Shed mix")


def test_one_choice_holds_on_every_screen(kit, standing):  # noqa: F811
    add(kit)
    add(kit, name="Second", ratio="100:25")
    opened(kit, standing.url)
    expect(system(kit).locator("option:checked")).to_have_text("Shed mix")
    system(kit).select_option(label="Second")
    for path in ("clock/", "boat/", "plan/"):
        opened(kit, standing.url + "/" + path)
        expect(kit.locator("[data-pick=system]").first.locator("option:checked")).to_have_text("Second")
    kit.locator("[data-pick=system]").first.select_option("2-1")
    opened(kit, standing.url)
    expect(system(kit)).to_have_value("2-1")


def test_a_system_that_came_by_a_link_has_its_name_and_is_kept_with_one_tap(phone, standing):
    phone.goto(standing.url + "/?" + SYSTEM)
    expect(system(phone).locator("option:checked")).to_have_text("Harbour mix (from a link)")
    key = phone.get_by_role("button", name="Save in the kit").first
    expect(key).to_be_visible()
    assert key.bounding_box()["height"] >= 48
    key.click()
    expect(system(phone).locator("option:checked")).to_have_text("Harbour mix")
    expect(key).to_be_hidden()
    opened(phone, standing.url + "/clock/")
    expect(phone.locator("[data-pick=system]").first.locator("option:checked")).to_have_text("Harbour mix")
    opened(phone, standing.url + "/kit/")
    expect(shelf(phone, "Resin system").locator(".entry")).to_contain_text("Harbour mix")
    expect(shelf(phone, "Resin system").locator(".entry")).to_contain_text("100:44")
    expect(shelf(phone, "Resin system").locator(".entry")).to_contain_text("from a link")


def test_what_is_from_a_link_typed_or_built_in_is_told_apart_in_answer_form_and_list(kit, standing):  # noqa: F811
    """Old main: "as typed" stood at all of them, and a ratio that came by a link was poured as if from a label."""
    opened(kit, standing.url + "/?" + SYSTEM)
    asked = kit.locator("[data-line=by_link]")
    expect(asked).to_contain_text("Compare its ratio with the label")
    kit.get_by_role("button", name="Use these").click()
    expect(system(kit).locator("option:checked")).to_have_text("Harbour mix (from a link)")
    kit.goto(standing.url + "/clock/")
    kit.get_by_label("Air temperature").first.fill("20")
    expect(kit.locator("[data-line=by_link]")).to_contain_text("Compare its pot life with the label")
    opened(kit, standing.url)
    kit.get_by_role("button", name="Save in the kit").first.click()
    expect(system(kit).locator("option:checked")).to_have_text("Harbour mix")
    expect(asked).to_contain_text("from a link")
    opened(kit, standing.url + "/kit/")
    mine = shelf(kit, "Resin system").locator(".entry")
    expect(mine.locator(".entry-line")).to_contain_text("from a link")
    mine.get_by_role("button", name="Change").click()
    kit.locator("[name='system.origin']").select_option("label")
    kit.get_by_role("button", name="Save", exact=True).click()
    expect(mine.locator(".entry-line")).to_contain_text("compared with its label")
    opened(kit, standing.url)
    expect(figure(kit, "reading_a")).to_have_text("167 g")
    expect(asked).to_have_count(0)
    opened(kit, standing.url + "/kit/")
    shelf(kit, "Resin system").get_by_role("button", name="Add").click()
    system(kit).select_option("2-1")
    kit.locator("[name='system.name']").fill("Two")
    kit.get_by_role("button", name="Save", exact=True).click()
    expect(mine.nth(1).locator(".entry-line").first).to_contain_text("started from built-in figures")


def test_another_thing_that_is_chosen_has_nothing_of_what_was_typed_before(kit, standing):  # noqa: F811
    """Old main: "Shed mix" stood there, 100 : 30, and the readings were of the link's 100 : 44."""
    add(kit, ratio="100:30")
    opened(kit, standing.url + "/?amount=144+g&" + SYSTEM)
    kit.get_by_role("button", name="Use these").click()
    expect(figure(kit, "reading_a")).to_have_text("100 g")
    system(kit).select_option(label="Shed mix")
    expect(figure(kit, "reading_a")).to_have_text("111 g")
    kit.locator("[data-notice=apart]").get_by_role("button", name="Undo").click()
    expect(figure(kit, "reading_a")).to_have_text("100 g")
    expect(system(kit).locator("option:checked")).to_have_text("Harbour mix (from a link)")
    system(kit).select_option("2-1")
    expect(figure(kit, "drawn_b")).to_have_text(drawn(144, system="2-1"))
    kit.reload()
    expect(system(kit)).to_have_value("2-1")
    expect(figure(kit, "drawn_b")).to_have_text(drawn(144, system="2-1"))


def test_a_link_with_a_name_that_is_not_known_is_named_and_changes_nothing(phone, standing):
    phone.goto(standing.url + "/?systm=2-1&amount=777")
    expect(phone.locator("[data-notice=link]")).to_contain_text("'systm'")
    expect(phone.get_by_label("Amount", exact=True)).to_have_value("240")


def test_undo_after_removing_the_chosen_thing_chooses_it_again(kit, standing):  # noqa: F811
    """Old main: the first of the kit was taken in its place."""
    add(kit)
    add(kit, name="Second", ratio="100:25")
    opened(kit, standing.url)
    system(kit).select_option(label="Second")
    opened(kit, standing.url + "/kit/")
    second = shelf(kit, "Resin system").locator(".entry").nth(1)
    second.get_by_role("button", name="Remove").click()
    kit.locator("[data-notice=kit]").get_by_role("button", name="Undo").click()
    expect(shelf(kit, "Resin system").locator(".entry")).to_have_count(2)
    opened(kit, standing.url)
    expect(system(kit).locator("option:checked")).to_have_text("Second")


def test_undo_after_keeping_what_was_typed_brings_the_typed_figures_back(phone, standing):
    """Old main: the thing was gone, and with it all that had been typed."""
    opened(phone, standing.url)
    phone.get_by_text("Resin system: figures").click()
    phone.locator("[name='system.name']").fill("Harbour mix")
    phone.locator("[name='system.by_weight']").fill("100:44")
    expect(figure(phone, "reading_a")).to_have_text("167 g")
    phone.get_by_role("button", name="Save in the kit").first.click()
    expect(system(phone).locator("option:checked")).to_have_text("Harbour mix")
    phone.locator("[data-notice=kit]").get_by_role("button", name="Undo").click()
    expect(phone.locator("[name='system.by_weight']")).to_have_value("100:44")
    expect(system(phone).locator("option:checked")).to_have_text("Harbour mix (as typed)")
    expect(figure(phone, "reading_a")).to_have_text("167 g")
    phone.reload()
    expect(phone.locator("[name='system.by_weight']")).to_have_value("100:44")
    opened(phone, standing.url + "/kit/")
    expect(shelf(phone, "Resin system").locator(".entry")).to_have_count(0)


PUT = """async (things) => {
    const { put } = await part("store/store.js");
    for (const thing of things) await put("kit", { made: 1, ...thing });
}"""
# as an earlier build kept them: bare numbers
BARE = [{"record": "system", "typed": {"name": "Shed mix", "by_weight": "100:30", "densities": "1.15 : 0.98",
                                       "pot_time": "30", "pot_mass": "100", "pot_temperature": "25"}},
        {"record": "scale", "typed": {"name": "Old scale", "step": "1"}},
        {"record": "cup", "typed": {"name": "My cup", "bottom": "60", "top": "80", "height": "105"}}]
SAID = ("system.name=Shed+mix&system.by_weight=100:30&system.densities=1.15+:+0.98+g/mL&system.pot_time=30+min"
        "&system.pot_mass=100+g&system.pot_temperature=25+%C2%B0C&scale.name=Old+scale&scale.step=1+g"
        "&cup.name=My+cup&cup.bottom=60+mm&cup.top=80+mm&cup.height=105+mm&way=stick&amount=125+g")


@pytest.mark.parametrize("units", ["metric", "us"])
def test_figures_that_say_their_units_are_the_thing_of_the_kit_that_was_kept_without(kit, standing, units):  # noqa: F811
    """Old main: they stood there "as typed", and what the kit's own thing learned did not count."""
    kit.evaluate(PUT, BARE)
    kit.evaluate("(units) => localStorage.setItem('covemix.set.units', units)", units)
    kit.goto(standing.url + "/?" + SAID)
    for record, name in (("system", "Shed mix"), ("cup", "My cup"), ("scale", "Old scale")):
        expect(kit.locator(f"[data-pick={record}] option:checked").first).to_have_text(name)
        expect(kit.locator(f"[data-pick={record}]").first).to_have_value(re.compile("^kit:"))


def test_a_thing_kept_without_units_is_metric_on_a_phone_of_ounces(kit, standing):  # noqa: F811
    """Old main: its pot of 100 g was one of 100 oz."""
    kit.evaluate(PUT, BARE[:1])
    opened(kit, standing.url + "/clock/")
    kit.get_by_label("Air temperature").first.fill("22 C")
    expect(figure(kit, "usable")).to_have_text("22 min")
    kit.evaluate("localStorage.setItem('covemix.set.units', 'us')")
    opened(kit, standing.url + "/clock/")
    expect(kit.get_by_label("Air temperature").first).to_have_value("22 C")
    expect(kit.locator("[name='system.pot_mass']")).to_have_attribute("placeholder", "100 g")
    expect(figure(kit, "usable")).to_have_text("22 min")


TIMING = {"after": "12", "mass": "240 g", "at": "20"}


def own_timing(page):
    return page.locator("[name='timings.0.after']")


def time_it(page):
    if not own_timing(page).is_visible():
        page.locator("summary", has_text="Own timings of this system").click()
    for name, text in TIMING.items():
        page.locator(f"[name='timings.0.{name}']").fill(text)


def test_own_timings_are_of_their_system_and_come_back_with_it(phone, standing):
    """Chosen on this screen or on another: what was seen of one system counts for no other, and is not lost."""
    opened(phone, standing.url + "/clock/")
    phone.locator("[name=air]").fill("20")
    usable = figure(phone, "usable")
    expect(usable).not_to_have_text("9 min")
    time_it(phone)
    expect(usable).to_have_text("9 min")
    system(phone).select_option("2-1")
    expect(own_timing(phone)).to_have_value("")
    expect(usable).not_to_have_text("9 min")
    system(phone).select_option("3-1")
    expect(own_timing(phone)).to_have_value("12")
    expect(usable).to_have_text("9 min")
    opened(phone, standing.url)
    system(phone).select_option("2-1")
    expect(figure(phone, "drawn_b")).to_be_visible()
    opened(phone, standing.url + "/clock/")
    expect(system(phone)).to_have_value("2-1")
    expect(own_timing(phone)).to_have_value("")
    phone.reload()
    expect(own_timing(phone)).to_have_value("")
    system(phone).select_option("3-1")
    expect(own_timing(phone)).to_have_value("12")
    phone.get_by_role("button", name="Undo").click()
    expect(system(phone)).to_have_value("2-1")
    expect(own_timing(phone)).to_have_value("")


def test_an_own_timing_comes_back_with_all_that_was_chosen_in_it(phone, standing):
    """Gone in a tray is not stiffening in a cup, with which a new row begins."""
    opened(phone, standing.url + "/clock/")
    time_it(phone)
    chosen_in_it = {name: phone.locator(f"[name='timings.0.{name}']") for name in ("said", "in")}
    for name, value in (("said", "gone"), ("in", "tray")):
        expect(chosen_in_it[name]).not_to_have_value(value)
        chosen_in_it[name].select_option(value)
    for other in ("2-1", "3-1"):
        system(phone).select_option(other)
    expect(own_timing(phone)).to_have_value("12")
    expect(chosen_in_it["said"]).to_have_value("gone")
    expect(chosen_in_it["in"]).to_have_value("tray")


def test_whose_timings_they_are_is_known_after_an_update(phone, standing):
    """A page that is saved before it is loaded anew keeps what each edit keeps."""
    opened(phone, standing.url + "/clock/")
    time_it(phone)
    phone.evaluate("part('main.js').then(({ save }) => save())")
    opened(phone, standing.url)
    system(phone).select_option("2-1")
    opened(phone, standing.url + "/clock/")
    expect(system(phone)).to_have_value("2-1")
    expect(own_timing(phone)).to_have_value("")


def test_own_timings_stay_with_figures_that_are_corrected_and_with_the_thing_they_become(kit, standing):  # noqa: F811
    opened(kit, standing.url + "/clock/")
    kit.locator("[name=air]").fill("20")
    time_it(kit)
    kit.locator("summary", has_text="Resin system: figures").click()
    for name, text in (("name", "Harbour mix"), ("by_weight", "100:44"), ("pot_time", "40"), ("pot_mass", "100"),
                       ("pot_temperature", "25")):
        kit.locator(f"[name='system.{name}']").fill(text)
    expect(own_timing(kit)).to_have_value("12")
    kit.get_by_role("button", name="Save in the kit").click()
    expect(system(kit).locator("option:checked")).to_have_text("Harbour mix")
    expect(own_timing(kit)).to_have_value("12")
    kit.reload()
    expect(system(kit).locator("option:checked")).to_have_text("Harbour mix")
    expect(own_timing(kit)).to_have_value("12")


REFUSED = """for (const name of ["localStorage", "sessionStorage"]) {
  Object.defineProperty(window, name, { get() { throw new DOMException("no", "SecurityError"); } });
}"""


@pytest.mark.parametrize("why", ["full", "refused"])
def test_where_no_typed_text_can_be_kept_it_says_so_and_every_screen_works(phone, standing, why):
    """Amount, system and own timings hold on their screen, and a thing is kept in the kit: that is another store."""
    phone.goto(standing.url + "/manifest.webmanifest")
    if why == "full":
        phone.evaluate(FULL)
    else:
        phone.add_init_script(REFUSED)
    phone.goto(standing.url)
    phone.get_by_label("Amount", exact=True).fill("321")
    expect(phone.locator("[data-notice=unkept-typed]")).to_contain_text("cannot save")
    phone.get_by_role("combobox", name="Resin system", exact=True).select_option("2-1")
    expect(figure(phone, "drawn_b")).to_have_text(drawn(321, system="2-1"))
    expect(phone.locator("[data-status]")).not_to_be_empty()
    phone.get_by_role("link", name="Clock", exact=True).click()
    own = phone.locator("[name='timings.0.after']")
    phone.locator("summary", has_text="Own timings of this system").click()
    own.fill("12")
    phone.get_by_role("combobox", name="Resin system", exact=True).select_option("5-1")
    expect(own).to_have_value("")
    phone.get_by_role("button", name="Undo").click()
    expect(own).to_have_value("12")
    phone.get_by_role("link", name="Kit", exact=True).click()
    shelf = phone.get_by_role("region", name="Scale", exact=True)
    expect(phone.locator("[data-listing][data-read]")).to_be_visible()
    shelf.get_by_role("button", name="Add").click()
    phone.locator("[name='scale.name']").fill("Bench scale")
    phone.locator("[name='scale.step']").fill("1")
    phone.get_by_role("button", name="Save", exact=True).click()
    expect(shelf.locator(".entry")).to_contain_text("Bench scale")


BROKEN = """() => {
  for (const name of ["choice", "beside", "typed.pour", "answer.pour", "typed.kit", "told.lists.kit"]) {
    localStorage.setItem(`covemix.${name}`, '{"cut sh');
  }
  sessionStorage.setItem("covemix.open.kit", '{"cut sh');
}"""


def test_typed_text_that_was_kept_half_is_left_out_and_the_next_is_kept_whole(phone, standing):
    phone.goto(standing.url + "/manifest.webmanifest")
    phone.evaluate(BROKEN)
    phone.goto(standing.url + "/kit/")
    expect(phone.locator("[data-listing][data-read]")).to_be_visible()
    phone.goto(standing.url)
    expect(figure(phone, "drawn_b")).to_have_text(drawn(240))
    phone.get_by_label("Amount", exact=True).fill("321")
    phone.get_by_role("combobox", name="Resin system", exact=True).select_option("2-1")
    expect(figure(phone, "drawn_b")).to_have_text(drawn(321, system="2-1"))
    phone.reload()
    expect(phone.get_by_label("Amount", exact=True)).to_have_value("321")
    expect(figure(phone, "drawn_b")).to_have_text(drawn(321, system="2-1"))


def test_own_timings_of_typed_figures_stay_where_the_same_are_led_in_and_go_where_others_are(phone, standing):
    """From Pour the clock of the system is started that both hold, and then of one that came by a link."""
    opened(phone, standing.url + "/clock/")
    phone.locator("[name=air]").fill("20")
    phone.locator("summary", has_text="Resin system: figures").click()
    for name, text in (("name", "Shed mix"), ("by_weight", "100:40"), ("pot_time", "40"), ("pot_mass", "100"),
                       ("pot_temperature", "20")):
        phone.locator(f"[name='system.{name}']").fill(text)
    time_it(phone)
    expect(figure(phone, "usable")).to_have_text("9 min")
    phone.get_by_role("link", name="Pour", exact=True).click()
    expect(system(phone).locator("option:checked")).to_have_text("Shed mix (as typed)")
    start = phone.get_by_role("link", name="Start the clock")
    start.click()
    expect(phone.locator("[name='system.by_weight']")).to_have_value("100:40")
    expect(own_timing(phone)).to_have_value("12")
    opened(phone, standing.url + "/?" + SYSTEM)
    start.click()
    expect(phone.locator("[name='system.by_weight']")).to_have_value("100:44")
    expect(own_timing(phone)).to_have_value("")

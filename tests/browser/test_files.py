"""Files from the screens, made on the phone without a server: each is opened by a reader that is not ours."""
import io
import json
import xml.etree.ElementTree as ElementTree
from datetime import datetime

import ezdxf
import icalendar
import pandas
import pytest
from covemix.shared.door import moves
from playwright.sync_api import expect

from .conftest import figure, fresh, keep


def saved(page, name):
    """The text and the name of the file that a key makes."""
    key = page.locator("main [data-file]").filter(has_text=name)
    fold = key.locator("xpath=ancestor::details[1]")
    if fold.count() and not fold.evaluate("one => one.open"):
        fold.locator("summary").first.click()
    with page.expect_download() as got:
        key.click()
    return got.value.path().read_bytes().decode(), got.value.suggested_filename


def table(text, between=",", decimal="."):
    return pandas.read_csv(io.StringIO(text.removeprefix("\ufeff")), sep=between, decimal=decimal)


def size(text):
    """Of a picture, in millimetres, and how many of them a unit is."""
    root = ElementTree.fromstring(text)
    width = float(root.get("width").removesuffix("mm"))
    return width, width / float(root.get("viewBox").split()[2])


@pytest.fixture(scope="module")
def alone(chromium, request):
    """A phone that keeps the app, and has no server any more; the address, and the phone."""
    from .serve import Server

    server = Server().start()
    with fresh(chromium) as (page, errors):
        keep(page, server.url)
        server.stop()
        yield server.url, page, errors


def test_a_boat_is_bought_and_cut_by_its_tables(alone):
    url, page, _ = alone
    page.goto(url + "/boat/")
    expect(figure(page, "putty")).to_have_text("2235 mL · 2459 g")
    text, name = saved(page, "Shopping list (CSV)")
    assert name.startswith("covemix-20") and name.endswith("-shopping.csv")
    bought = table(text).set_index("Item")
    data = moves.module("boat")
    found = data.reckoned(moves.inputs.read(data.INPUTS, {})[0])
    for item, mass in zip(("Resin", "Hardener"), found.parts, strict=True):
        assert mass <= bought["Mass [kg]"][item] < mass + 0.0011, "rounded up, by less than a step of a scale"
    assert bought["How many"]["Gloves"] == dict(found.bought)["gloves"]
    cut = table(saved(page, "Cut list (CSV)")[0])
    pieces = [length for _, some in found.cuts for one in some for length in one[3]]
    assert sorted(cut["Length [m]"]) == pytest.approx(sorted(length / 1000 for length in pieces), abs=1e-3)
    drawn = ElementTree.fromstring(saved(page, "Cut list, drawn (SVG)")[0])
    texts = [one.text for one in drawn.iter("{http://www.w3.org/2000/svg}text")]
    assert {str(piece) for piece in cut["Piece"] if piece < 10} <= set(texts)


def test_a_section_and_a_spreader_are_measured_at_true_size(alone):
    url, page, _ = alone
    page.goto(url + "/joint/?thickness=12 mm")
    expect(page.locator("[data-figure=section]")).to_be_visible()
    text, _ = saved(page, "Drawing at true size (SVG)")
    _, each = size(text)
    outline = ElementTree.fromstring(text).find(".//{*}path[@class='panel']").get("d")[1:-1].split("L")
    points = [tuple(float(one) * each for one in point.split()) for point in outline]
    edges = [((a[0] - b[0])**2 + (a[1] - b[1])**2)**0.5 for a, b in zip(points, points[1:] + points[:1], strict=True)]
    assert min(abs(edge - 12) for edge in edges) < 0.1, "a panel is as thick as it is"
    page.goto(url + "/spreader/?radii=10 : 17.5")
    expect(figure(page, "radius_2")).to_have_text("17.5 mm")
    assert size(saved(page, "Template (SVG)")[0]) == (210, 1)
    drawing = ezdxf.read(io.StringIO(saved(page, "For a cutter (DXF)")[0]))
    assert [arc.dxf.radius for arc in drawing.modelspace().query("ARC")] == [10, 17.5]


def test_a_planned_day_goes_into_a_calendar(alone):
    url, page, _ = alone
    piece = "&".join(f"pieces.0.{name}={text}" for name, text in (("length", 3), ("putty", 90), ("wet", 60)))
    page.goto(f"{url}/plan/?{piece}&temperature=20&start=8:00")
    expect(page.locator("[data-part=batch_1]").first).to_be_attached()
    day = page.get_by_label("Day", exact=True)
    day.evaluate("one => { one.closest('details').open = true; }")
    today = datetime.now()
    assert datetime.fromisoformat(day.input_value()).date() == today.date()
    day.fill("2026-06-01")
    text, _ = saved(page, "Into a calendar (iCal)")
    events = icalendar.Calendar.from_ical(text).walk("VEVENT")
    rows = table(saved(page, "Batches (CSV)")[0])
    assert len(events) == len(rows) > 0
    assert [f"{one.decoded('dtstart'):%Y-%m-%d %H:%M}" for one in events] == [
        f"2026-06-01 {at}" for at in rows["Start"]]


def test_a_cure_and_a_running_pot_go_into_a_calendar(alone):
    url, page, _ = alone
    page.goto(url + "/clock/?air=18&batch=240")
    expect(figure(page, "usable")).to_be_visible()
    cure = page.locator("[data-file='cure.windows.ics']")
    cure.evaluate("one => { one.closest('details').open = true; }")
    cure.click()
    expect(page.locator("[data-notice=file]")).to_contain_text("First type when it was mixed.")
    page.goto(url + "/clock/?air=18&batch=240&mixed_at=14:30")
    expect(figure(page, "usable")).to_be_visible()
    page.locator("[data-file='cure.windows.ics']").evaluate("one => { one.closest('details').open = true; }")
    with page.expect_download() as got:
        page.locator("[data-file='cure.windows.ics']").click()
    windows = icalendar.Calendar.from_ical(got.value.path().read_bytes()).walk("VEVENT")
    assert windows and windows[0].decoded("dtstart") > datetime.now().replace(
        hour=14, minute=30, second=0, microsecond=0)
    page.get_by_role("button", name="Use these").click()
    page.locator("[data-move=heat] [data-lead]").first.click()
    pot = page.locator(".pot")
    expect(pot.locator(".pot-minutes")).not_to_be_empty()
    with page.expect_download() as got:
        pot.get_by_role("button", name="Into a calendar (iCal)").click()
    over = icalendar.Calendar.from_ical(got.value.path().read_bytes()).walk("VEVENT")[0]
    left = over.decoded("dtstart").timestamp() - datetime.now().timestamp()
    minutes = pot.locator(".pot-minutes").inner_text()
    assert abs(left - sum(int(one) * 60**place for place, one in enumerate(reversed(minutes.split(":"))))) < 90
    assert over.walk("VALARM")


def test_a_country_with_decimal_commas_gets_its_own_tables(chromium, standing):
    with fresh(chromium, locale="de-DE") as (page, _):
        page.goto(standing.url + "/boat/")
        expect(page.locator("html")).to_have_attribute("lang", "de")
        expect(figure(page, "putty")).to_contain_text("2235 mL")
        text, _ = saved(page, "Einkaufsliste (CSV)")
    bought = table(text, ";", ",")
    masses = bought["Masse [kg]"].dropna()
    assert bought["Was"][0] == "Harz" and masses.dtype == float
    assert 0.1 < masses[0] < 100 and masses[0] != int(masses[0])


def test_a_boat_goes_to_another_phone_as_a_file(chromium, standing, tmp_path):
    path = tmp_path / "boat.json"
    with fresh(chromium) as (page, _):
        page.goto(standing.url + "/boat/")
        page.locator("[name='joints.0.name']").evaluate("one => { one.closest('details').open = true; }")
        page.locator("[name='joints.0.name']").fill("=Keel & more")
        page.locator("[name='joints.0.thickness']").fill("9,5")
        expect(figure(page, "putty")).not_to_have_text("2235 mL · 2459 g")
        told = figure(page, "putty").inner_text()
        text, _ = saved(page, "Save the boat as a file")
        path.write_text(text)
    assert json.loads(text)["format"] == "covemix-boat"
    with fresh(chromium) as (page, _):
        page.goto(standing.url + "/boat/")
        expect(figure(page, "putty")).to_have_text("2235 mL · 2459 g")
        page.locator("[data-files] > summary").click()
        chooser = page.get_by_label("Open a boat's file")
        broken = tmp_path / "other.json"
        for strange in ("{", '{"format": "covemix"}', '{"format": "covemix-boat", "link": [["a"]]}'):
            broken.write_text(strange)
            chooser.set_input_files(broken)
            expect(page.locator("[data-notice=file]")).to_contain_text("No boat is in this file.")
        broken.write_text(text.replace("9,5", "5"))
        chooser.set_input_files(broken)
        expect(page.locator("[data-notice=file]")).to_contain_text("cut short")
        expect(figure(page, "putty")).to_have_text("2235 mL · 2459 g")
        chooser.set_input_files(path)
        expect(page.locator("[name='joints.0.name']")).to_have_value("=Keel & more")
        expect(figure(page, "putty")).to_have_text(told)
        page.get_by_role("button", name="Undo").click()
        expect(figure(page, "putty")).to_have_text("2235 mL · 2459 g")


def test_the_page_for_programs_leads_nowhere_wrong_without_a_signal(phone, served):
    """Before it was opened once the kit says so, and stays; after that this phone keeps it."""
    keep(phone, served.url)
    phone.goto(served.url + "/kit/")
    link = phone.get_by_role("link", name="Use from a program")
    served.stop()
    link.click()
    expect(phone.locator("[data-notice=unfetched]")).to_contain_text("Try again with a connection")
    expect(phone).to_have_url(served.url + "/kit/")
    served.start()
    link.click()
    expect(phone.get_by_role("heading", level=1)).to_contain_text("the API")
    served.stop()
    phone.goto(served.url + "/kit/")
    link.click()
    expect(phone.get_by_role("heading", level=1)).to_contain_text("the API")
    expect(phone.locator("#name-usable_time")).to_be_attached()

"""Files: each is opened by a reader that is not ours, and says what the answer says."""
import csv
import io
import xml.etree.ElementTree as ElementTree
from datetime import date, datetime, timedelta
from decimal import Decimal

import ezdxf
import house
import icalendar
import pandas
import pymupdf
import pytest
from covemix.server import examples
from covemix.server.data import SHAPES
from covemix.shared.door import handover, saved_file
from covemix.shared.equations import civil_date
from covemix.shared.files import calendar, tables
from covemix.shared.files.calendar import folded
from ezdxf import bbox
from starlette.testclient import TestClient

GERMAN = {"accept-language": "de"}
POINT = 72 / 25.4  # of a millimetre


@pytest.fixture(scope="module")
def client():
    with TestClient(house.app()) as client:
        yield client


def got(client, path, body=None, headers=None):
    move = path.split("/")[2]
    response = client.post(path, json=examples.BODIES[move] if body is None else body, headers=headers or {})
    assert response.status_code == 200, response.text
    return response


def table(text, between, decimal):
    return pandas.read_csv(io.StringIO(text.removeprefix("\ufeff")), sep=between, decimal=decimal)


@pytest.mark.parametrize(("headers", "between", "decimal"), [({}, ",", "."), (GERMAN, ";", ",")])
@pytest.mark.parametrize(("move", "name"), [("boat", "shopping"), ("boat", "cuts"), ("plan", "batches"),
                                            ("plan", "steps"), ("cure", "windows"), ("heat", "curve")])
def test_a_table_opens_with_its_numbers_as_numbers_in_either_country(client, move, name, headers, between, decimal):
    response = got(client, f"/api/{move}/{name}.csv", headers=headers)
    assert response.headers["content-type"] == "text/csv; charset=utf-8"
    assert response.content.startswith(b"\xef\xbb\xbf") and response.text.count("\r\n") == response.text.count("\n")
    rows = client.post(f"/api/{move}", json=examples.BODIES[move], headers=headers).json()["data"][name]
    read = table(response.text, between, decimal)
    assert len(read) == len(rows) > 0
    for column in SHAPES[move][1][name].split():
        heading = next(head for head in read.columns if head.split(" [")[0] == column)
        told = [row[column] for row in rows]
        if any(isinstance(one, float) for one in told):
            assert heading.endswith("]") and heading.split(" [")[1][:-1] in ("kg", "m", "m3", "kg/m2", "s", "K")
            known = [one is not None for one in told]
            assert list(read[heading].notna()) == known
            assert list(read[heading].dropna()) == pytest.approx([one for one in told if one is not None], rel=1e-8)


@pytest.mark.parametrize("name", ["=1+1", "+1", "-1", "@SUM(A1)", "\t=1", 'a "b", c;d'])
def test_no_cell_is_a_formula_and_every_name_comes_back_whole(client, name):
    body = {"joints": [{"name": name, "thickness_mm": 6, "length_m": 2}]}
    text = got(client, "/api/boat/joints.csv", body).text.removeprefix("\ufeff")
    (row,) = csv.DictReader(io.StringIO(text))
    own = name.strip()
    assert row["joint"] == ("'" + own if own[:1] in "=+-@" else own)
    assert float(row["length [m]"]) == 2
    assert tables.csv(["a"], [[-0.2]]).splitlines()[1] == "-0.2", "a number below nought is no formula"


def test_a_number_is_never_written_with_an_exponent_or_a_third_mark():
    rows = [[value] for value in (1e-9, 1234567.891, 0.1 + 0.2, 1e15, 999999999.96, 0.0, 12)]
    assert tables.csv(["volume"], rows, ",").split("\r\n")[1:-1] == [
        "0,000000001", "1234567,89", "0,3", "1000000000000000", "1000000000", "0", "12"]


def test_a_number_comes_back_from_any_table():
    """By Decimal: each value to nine figures, at every size that a quantity has."""
    for size in range(-12, 16):
        for digits in ("1", "9.99999999", "1.23456789", "5.5"):
            value = float(f"{digits}e{size}")
            assert Decimal(tables.figure(value)) == Decimal(f"{value:.9g}"), value


def test_every_day_is_the_day_that_the_calendar_says():
    """By datetime, over the cycle of the Gregorian calendar."""
    for days in range(-150_000, 150_000, 7):
        known = date(1970, 1, 1) + timedelta(days=days)
        assert civil_date.date(days) == (known.year, known.month, known.day)
        assert calendar.day_of(known.isoformat()) == days
    for strange in ("2026-02-29", "2026-13-01", "2026-00-10", "2026-6-1", "2026-06-1x", "20260601--", "", "-026-06-01"):
        assert calendar.day_of(strange) is None


def test_accept_says_what_an_address_without_an_ending_is(client):
    body = examples.BODIES["boat"]
    text = got(client, "/api/boat/cuts.csv").text
    assert got(client, "/api/boat/cuts", body, {"accept": "text/csv"}).text == text
    rows = client.post("/api/boat", json=body).json()["data"]["cuts"]
    assert got(client, "/api/boat/cuts", body).json() == {"cuts": rows}
    section = got(client, "/api/joint/section", headers={"accept": "image/svg+xml"})
    assert section.headers["content-type"] == "image/svg+xml"


def test_a_link_gives_the_same_file_and_a_broken_one_none(client):
    link = handover.handed("joint", [["thickness", "9 mm"]])["link"]
    assert client.get("/api/joint/tapes.csv", params=link).text == got(
        client, "/api/joint/tapes.csv", {"thickness_mm": 9}).text
    assert client.get("/api/joint/tapes.csv?thicknes=9").status_code == 422
    assert client.head("/api/joint/tapes.csv").status_code == 200
    cut = [[name, "3 mm" if name == "thickness" else text] for name, text in link]
    assert client.get("/api/joint/tapes.csv", params=cut).status_code == 422


@pytest.mark.parametrize(("path", "body", "status"), [
    ("/api/nothing/parts.csv", {}, 404), ("/api/joint/nothing.csv", {}, 404), ("/api/joint/nothing.svg", {}, 404),
    ("/api/joint/coves.xlsx", {}, 404), ("/api/joint/calendar.ics", {}, 404), ("/api/boat/templates.dxf", {}, 404),
    ("/api/joint/coves.csv", {"thickness": 6}, 422), ("/api/joint/coves.csv", {"thicknes_mm": 6}, 422),
    ("/api/joint/coves.csv", [], 422), ("/api/plan/calendar.ics", examples.BODIES["plan"], 422),
    ("/api/cure/calendar.ics", {"air_degC": 18, "date": "2026-06-01"}, 422),
    ("/api/plan/calendar.ics", {**examples.BODIES["plan"], "date": "2026-02-30"}, 422),
])
def test_what_there_is_no_file_of_is_refused_in_the_one_shape(client, path, body, status):
    response = client.post(path, json=body)
    assert response.status_code == status
    assert response.json()["errors"][0]["message"] and response.json()["lines"] == []
    doubled = client.post("/api/joint/coves.csv", content=b'{"thickness_mm": 6, "thickness_mm": 9}',
                          headers={"content-type": "application/json"})
    assert doubled.status_code == 422


def test_the_spreader_is_measured_in_its_dxf(client):
    """By ezdxf: a half circle of the radius that was asked for below three straight sides, millimetres, true arcs."""
    text = got(client, "/api/spreader/templates.dxf", {"radii_mm": [10, 15.5, 20]}).text
    drawing = ezdxf.read(io.StringIO(text))
    assert drawing.header["$INSUNITS"] == 4 and not drawing.audit().errors
    arcs, lines = drawing.modelspace().query("ARC"), drawing.modelspace().query("LINE")
    assert [arc.dxf.radius for arc in arcs] == [10, 15.5, 20] and len(lines) == 9
    for place, arc in enumerate(arcs):
        assert (arc.dxf.start_angle, arc.dxf.end_angle) == (180, 360)
        box = bbox.extents([arc, *lines[3 * place:3 * place + 3]], fast=False)
        assert box.size.x == pytest.approx(2 * arc.dxf.radius, abs=1e-6)
        assert box.extmin.y == pytest.approx(arc.dxf.center.y - arc.dxf.radius, abs=1e-3)
        ends = [one for line in lines[3 * place:3 * place + 3] for one in (line.dxf.start, line.dxf.end)]
        for end in (arc.start_point, arc.end_point):  # the outline closes
            assert min(end.distance(one) for one in ends) < 1e-6
    boxes = [bbox.extents([arc]) for arc in arcs]
    assert not any(one.has_intersection(two) for one in boxes for two in boxes if one is not two)


def test_the_spreader_is_measured_in_its_svg(client):
    """By MuPDF: the sheet is A4, the bar 100 mm, and each template as wide as its radius twice, on paper."""
    data = got(client, "/api/spreader/template_a4.svg").content
    root = ElementTree.fromstring(data)
    assert (root.get("width"), root.get("height"), root.get("viewBox")) == ("210mm", "297mm", "0 0 210 297")
    with pymupdf.open(stream=data, filetype="svg") as picture:
        page = pymupdf.open("pdf", picture.convert_to_pdf())[0]
    scale = page.rect.width / 210
    assert page.rect.height / page.rect.width == pytest.approx(297 / 210, rel=1e-3)
    widths = sorted(round(one["rect"].width / scale, 1) for one in page.get_drawings())
    assert {20.0, 30.0, 40.0, 100.0} <= set(widths)


@pytest.mark.parametrize(("move", "name"), [("joint", "section"), ("boat", "cut_t_1"), ("heat", None), ("plan", None)])
def test_a_drawing_is_a_picture_with_all_its_shapes(client, move, name):
    drawings = client.post(f"/api/{move}", json=examples.BODIES[move]).json()["figures"]
    drawing = next(one for one in drawings if name in (None, one["name"]))
    data = got(client, f"/api/{move}/{drawing['name']}.svg").content
    root = ElementTree.fromstring(data)
    space = "{http://www.w3.org/2000/svg}"
    assert root.findtext(f"{space}title") == drawing["title"] and root.findtext(f"{space}desc") == drawing["told"]
    texts = [one.text for one in root.iter(f"{space}text")]
    told = [text for shape in drawing["shapes"] for text in shape.get("texts", [shape.get("text")]) if text]
    assert texts == told
    with pymupdf.open(stream=data, filetype="svg") as picture:
        assert picture[0].get_pixmap().color_count() > 1


def events(response):
    assert response.headers["content-type"] == "text/calendar; charset=utf-8"
    read = icalendar.Calendar.from_ical(response.text)
    assert read["version"] == "2.0" and read["prodid"]
    for line in response.text.split("\r\n"):
        assert len(line.encode()) <= 75 and "\n" not in line
    found = list(read.walk("VEVENT"))
    assert len({one["uid"] for one in found}) == len(found)
    assert all(one["dtstamp"] for one in found)
    return found


def test_a_planned_day_is_read_back_from_its_calendar(client):
    body = {**examples.BODIES["plan"], "date": "2026-06-01"}
    told = client.post("/api/plan", json=examples.BODIES["plan"]).json()
    found = events(got(client, "/api/plan/calendar.ics", body))
    assert len(found) == told["data"]["batch_count"]
    for one, batch in zip(found, told["data"]["batches"], strict=True):
        begins, ends = one.decoded("dtstart"), one.decoded("dtend")
        midnight = datetime(2026, 6, 1)
        assert begins.tzinfo is None and abs((begins - midnight).total_seconds() - batch["start"]) <= 30
        assert 0 <= (ends - midnight).total_seconds() - batch["end"] < 60
        line = next(one for one in told["lines"] if one["name"] == f"batch_{batch['batch']}")
        assert str(one["summary"]) == line["label"] and line["text"] in str(one["description"])


def test_the_windows_of_a_cure_open_late_and_close_early(client):
    body = {**examples.BODIES["cure"], "date": "2026-06-01"}
    told = client.post("/api/cure", json=examples.BODIES["cure"]).json()["data"]["windows"]
    found = events(got(client, "/api/cure/calendar.ics", body))
    known = [one for one in told if one["from"] is not None]
    assert len(found) == len(known) > 2
    mixed = datetime(2026, 6, 1, 14, 30)
    for one, window in zip(found, known, strict=True):
        assert 0 <= (one.decoded("dtstart") - mixed).total_seconds() - window["from"] < 60
        if window["to"] is None:
            assert "dtend" not in one
        else:
            assert 0 <= window["to"] - (one.decoded("dtend") - mixed).total_seconds() < 60


def test_a_running_pot_rings_in_universal_time(client):
    body = {**examples.BODIES["pot"], "batch": "Keel, bow; port", "steps": [{"name": "Fill", "minute_min": 10}]}
    over, step = events(got(client, "/api/pot/calendar.ics", body))
    assert over.decoded("dtstart").timestamp() == 1_700_001_500 and str(over["summary"]) == "Keel, bow; port"
    assert step.decoded("dtstart").timestamp() == 1_700_000_600 and str(step["summary"]) == "Fill"
    assert all(len(one.walk("VALARM")) == 1 for one in (over, step))


@pytest.mark.parametrize("language, summaries, line", [
    ("en", ["Batch 3", "Tape laid"], "Left: "), ("de", ["Ansatz 3", "Glasband aufgelegt"], "Noch: ")])
def test_a_pot_of_a_plan_is_called_in_the_calendar_as_on_the_screen(client, language, summaries, line):
    """Its number and its steps are kept as keys, which nobody reads; so is the sign behind a label."""
    body = {**examples.BODIES["pot"], "batch": "3", "steps": [{"name": "lay", "minute_min": 10}]}
    found = events(got(client, "/api/pot/calendar.ics", body, {"accept-language": language}))
    assert [str(one["summary"]) for one in found] == summaries
    assert line in str(found[0]["description"])


def test_a_long_line_is_folded_between_letters():
    text = "SUMMARY:" + "Kiel – Öse 🛶 " * 20
    pieces = folded(text).split("\r\n")
    assert "".join(piece[1:] if place else piece for place, piece in enumerate(pieces)) == text
    assert all(len(piece.encode()) <= 75 for piece in pieces)


ENTRIES = [
    {"when": "2026-06-01 08:30", "what": "Keel; port", "mass_g": 240.5, "temperature_degC": 18.5, "outcome": "good",
     "own_time_min": 24, "label_time_min": 30, "note": "=1+1"},
    {"when": "2026-06-02 14:05", "what": "Bulkhead, fore", "mass": "8 oz", "laid": "2.5 m"},
]


@pytest.mark.parametrize(("headers", "between", "decimal"), [({}, ",", "."), (GERMAN, ";", ",")])
def test_the_batches_of_a_log_that_a_program_sends_open_as_a_table(client, headers, between, decimal):
    """8 oz are 226.796 g (an avoirdupois ounce is 28.349523125 g)."""
    response = got(client, "/api/log/log.csv", {"entries": ENTRIES}, headers)
    assert response.headers["content-type"] == "text/csv; charset=utf-8"
    read = table(response.text, between, decimal)
    assert len(read) == 2 and list(read.iloc[:, 0]) == [one["when"] for one in ENTRIES]
    assert list(read.iloc[:, 1]) == [one["what"] for one in ENTRIES]
    in_grams = next(name for name in read.columns if name.endswith("[g]"))
    assert list(read[in_grams]) == pytest.approx([240.5, 226.796], abs=1e-9)
    in_degrees = next(name for name in read.columns if name.endswith("[\u00b0C]"))
    assert read[in_degrees][0] == 18.5 and pandas.isna(read[in_degrees][1])
    assert "'=1+1" in response.text and f"{between}=1+1" not in response.text
    us = table(got(client, "/api/log/log.csv", {"entries": ENTRIES, "units": "us"}).text, ",", ".")
    in_ounces = next(name for name in us.columns if name.endswith("[oz]"))
    assert list(us[in_ounces]) == pytest.approx([240.5 / 28.349523125, 8], abs=1e-3)


def test_the_table_of_a_log_is_the_one_that_a_phone_makes(client):
    typed = {"what": "Keel; port", "mass": "240.5 g", "temperature": "18.5 degC", "outcome": "good",
             "own_time": "24 min", "label_time": "30 min", "note": "=1+1"}
    made = saved_file.filed({"file": "log.log.csv", "rows": [["2026-06-01 08:30", typed]], "units": "metric",
                        "decimal": "."})
    assert got(client, "/api/log/log.csv", {"entries": ENTRIES[:1]}).text == made["text"]


@pytest.mark.parametrize(("body", "field"), [
    ({}, "entries"), ({"entries": {"mass_g": 1}}, "entries"), ({"entries": [3]}, "entries"),
    ({"entries": [], "entrys": []}, "entrys"), ({"entries": [], "units": "imperial"}, "units"),
    ({"entries": [{}, {"mass": 240}]}, "entries.1.mass"), ({"entries": [{"weight_g": 1}]}, "entries.0.weight_g"),
    ({"entries": [{"mass_g": -3}]}, "entries.0.mass_g"), ({"entries": [{"outcome": "fine"}]}, "entries.0.outcome"),
    ({"entries": [{"when": 3}]}, "entries.0.when"),
])
def test_a_batch_of_a_log_that_cannot_be_read_is_refused_at_its_name(client, body, field):
    response = client.post("/api/log/log.csv", json=body)
    assert response.status_code == 422 and response.json()["lines"] == []
    assert response.json()["errors"][0]["field"] == field and response.json()["errors"][0]["message"]


def test_what_is_cut_is_measured_in_its_drawing_at_true_size(client):
    """By MuPDF: each piece is as long as the cut list says and as wide as its tape, in millimetres on paper."""
    body = {"joints": [{"name": "Keel", "thickness_mm": 6, "length_m": 0.8}, {"name": "Transom", "thickness_mm": 6,
                                                                             "length_m": 0.55}]}
    data = got(client, "/api/boat/cuts.svg", body).content
    root = ElementTree.fromstring(data)
    width = float(root.get("width").removesuffix("mm"))
    assert root.get("viewBox").split()[2] == root.get("width").removesuffix("mm"), "a unit is a millimetre"
    with pymupdf.open(stream=data, filetype="svg") as picture:
        page = pymupdf.open("pdf", picture.convert_to_pdf())[0]
    scale = page.rect.width / width
    boxes, lengths = [], []
    for one in page.get_drawings():
        upright = sorted({item[1].x / scale for item in one["items"] if item[0] == "l" and
                          abs(item[1].x - item[2].x) < 1e-3 < abs(item[1].y - item[2].y)})
        if one["closePath"] or len(one["items"]) in (1, 4):
            boxes.append((one["rect"].width / scale, one["rect"].height / scale, one["rect"].x0 / scale))
        lengths.append(upright)
    rows = client.post("/api/boat", json=body).json()["data"]["cuts"]
    tape = [row for row in rows if row["material"] == "tape"]
    whole = sum(row["length"] for row in tape if row["width"] == tape[0]["width"]) * 1000
    assert any(wide == pytest.approx(whole, abs=0.2) and high == pytest.approx(tape[0]["width"] * 1000, abs=0.1)
               for wide, high, _ in boxes), boxes


def test_a_section_is_measured_in_its_drawing_at_true_size(client):
    """By MuPDF: the panel's short edge is its thickness, in millimetres on paper."""
    data = got(client, "/api/joint/section.svg", {"thickness_mm": 12, "angle_deg": 90}).content
    width = float(ElementTree.fromstring(data).get("width").removesuffix("mm"))
    with pymupdf.open(stream=data, filetype="svg") as picture:
        page = pymupdf.open("pdf", picture.convert_to_pdf())[0]
    scale = page.rect.width / width
    edges = [abs(item[1] - item[2]) / scale for one in page.get_drawings() for item in one["items"] if item[0] == "l"]
    assert any(edge == pytest.approx(12, abs=0.1) for edge in edges)

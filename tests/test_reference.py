"""The page of the API: made from the declarations, so every input and every name of a result stands on it."""
import re
from html import unescape

import house
import pytest
from covemix.server import reference
from covemix.server.data_names import NAMES
from covemix.server.export import export
from covemix.server.typed import named
from covemix.shared.door import moves
from covemix.shared.things.records_shed import RECORDS
from starlette.testclient import TestClient


@pytest.fixture(scope="module")
def page():
    return TestClient(house.app()).get("/reference/").text


def rows(page):
    """The cells of each row of each table, as text."""
    return [[unescape(re.sub("<[^>]+>", "", cell)) for cell in re.split("<td>", row)]
            for row in re.findall(r"<tr[^>]*><th scope=row>(.*?)(?=<tr|</table>)", page, re.S)]


def test_every_input_stands_there_with_units_limits_default_and_options(page):
    told = {row[0].split(", ")[0]: row for row in rows(page) if len(row) == 7}
    for move in moves.names():
        for item in moves.module(move).INPUTS:
            assert item.name in told, (move, item.name)
            for field in item.inner() if item.repeats else ():
                assert f"{item.name}[].{field.name}" in told
    for record in RECORDS:
        assert f'id="thing-{record.name}"' in page and all(field.name in told for field in record.fields)
    assert told["copies"] == ["copies", "How many", "", "1", "100", "1", ""]
    thickness = told["thickness"]
    assert thickness[0] == "thickness, thickness_mm, thickness_m" and thickness[2:6] == ["mm, m", "0", "60", "6 mm"]
    assert told["paper"][6] == "a4, letter"
    assert named(moves.module("joint").INPUTS[1]) == {"thickness_mm": "mm", "thickness_m": "m"}


def test_every_name_of_a_result_stands_there_with_its_unit_and_meaning(page):
    told = {row[0]: row[1:] for row in rows(page) if len(row) == 3}
    assert told == {name: [unit, meaning] for name, (unit, meaning) in NAMES.items()}
    anchors, links = set(re.findall(r' id="([^"]+)"', page)), set(re.findall(r'href="#([^"]+)"', page))
    assert links <= anchors and {f"name-{name}" for name in NAMES} <= links


def test_the_kit_leads_to_it_and_an_export_has_it(page, tmp_path):
    client = TestClient(house.app())
    assert 'href="../reference/"' in client.get("/kit/").text
    assert client.head("/reference/").status_code == 200 and "<script" not in page
    export(tmp_path, house.build())
    kept = (tmp_path / reference.PATH / "index.html").read_text(encoding="utf-8")
    assert 'http-equiv="Content-Security-Policy"' in kept and "name-usable_time" in kept
    (style,) = re.findall(r'<link rel="stylesheet" href="([^"]+)"', kept)
    assert (tmp_path / "reference" / style).resolve().exists()

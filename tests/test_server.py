"""The server: every route's headers, one shape of refusal, pages as plain HTML, the versioned files."""
import base64
import gzip
import posixpath
import re
from html import unescape

import house
import pytest
from covemix.server import api
from covemix.server.build import ASKED, BUNDLE, FACES, INSTALLED, Build, sum_of, told_to
from covemix.server.headers import HEADERS, OF_PAGES, OF_WINDOWS, is_page, is_worker, needs_none
from covemix.server.lean import lean_page
from covemix.server.pages import MOST_LINES, PAGES
from covemix.shared.door import moves
from starlette.testclient import TestClient
from unpack import unpacked

BUILD = house.build()
PATHS = [
    *("/" + path for _, path, _ in PAGES), "/sw.js", "/manifest.webmanifest", "/favicon.ico", "/openapi.json",
    "/api/moves", *(f"/api/{name}" for name in moves.names()), "/nothing", f"/v/{BUILD.id}/app.css",
    f"/v/{BUILD.id}/js/engine/worker.js", f"/v/{BUILD.id}/icons/app.svg", f"/v/{BUILD.id}/app.bin", "/v/older/app.css",
]


@pytest.fixture(scope="module")
def client():
    with TestClient(house.app(), raise_server_exceptions=False) as client:
        yield client


@pytest.mark.parametrize("path", PATHS)
def test_every_answer_carries_the_security_headers_and_a_file_those_that_mean_something_there(client, path):
    response = client.get(path)
    for name, value in HEADERS.items():
        if (is_page(path) and not (is_worker(path) and name in OF_WINDOWS)) or (
                name not in OF_PAGES and not needs_none(path)):
            assert response.headers[name] == value
    assert response.headers["cache-control"]


@pytest.mark.parametrize("path", ["/sw.js", "/sw.de.js", f"/v/{BUILD.id}/js/engine/worker.js"])
def test_a_worker_carries_its_policy_and_nothing_of_windows(client, path):
    """Of a first visit that is 127 bytes for each."""
    headers = client.get(path).headers
    assert "script-src 'self'" in headers["content-security-policy"]
    assert headers["referrer-policy"] == "no-referrer" and headers["cross-origin-resource-policy"] == "same-origin"
    assert not {"cross-origin-opener-policy", "permissions-policy"} & headers.keys()


@pytest.mark.parametrize("path", PATHS)
def test_every_address_answers_a_head_or_refuses_in_words(client, path):
    response = client.head(path)
    assert response.status_code in (200, 404, 405, 422)


@pytest.mark.parametrize(("method", "path", "body", "status", "field"), [
    ("POST", "/api/ratio", '{"amount": "none"}', 422, "amount"),
    ("POST", "/api/ratio", '{"amount": -1}', 422, "amount"),
    ("POST", "/api/ratio", '{"ammount": 1}', 422, "ammount"),
    ("POST", "/api/ratio", '{"system": {"by_weight": "3:0"}}', 422, "system.by_weight"),
    ("POST", "/api/measure", '{"way": "scale", "readings": [{"shown": "x"}]}', 422, "readings.0.shown"),
    ("POST", "/api/ratio", "{", 422, ""),
    ("POST", "/api/ratio", "[]", 422, ""),
    ("GET", "/api/ratio?amount=none", None, 422, "amount"),
    ("GET", "/api/moves?units=cubits", None, 422, "units"),
    ("GET", "/api/nothing", None, 404, ""),
    ("DELETE", "/api/ratio", None, 405, ""),
    ("POST", "/api/ratio", "1" * 300_000, 413, ""),
])
def test_every_refusal_has_one_shape(client, method, path, body, status, field):
    response = client.request(method, path, content=body, headers={"content-type": "application/json"})
    assert response.status_code == status
    answer = response.json()
    assert set(answer) == {"errors", "lines"}
    assert answer["lines"] == []
    assert answer["errors"][0]["field"] == field
    assert answer["errors"][0]["message"]


def test_all_errors_are_told_at_once_in_the_order_of_the_form(client):
    answer = client.post("/api/measure", json={"way": "guess", "amount": "", "tolerance": "50", "units": "x"}).json()
    assert [error["field"] for error in answer["errors"]] == ["units", "way", "tolerance"]


def test_a_link_and_a_body_give_the_same_answer(client):
    link = client.get("/api/measure?system.by_weight=100:30&amount=200&readings.0.shown=150").json()
    body = client.post("/api/measure", json={"system": {"by_weight": "100:30"}, "amount": "200 g",
                                             "readings": [{"shown_kg": 0.15}]}).json()
    assert link.pop("understood") == [["amount", "200 g"], ["readings.0.shown", "150 g"]]
    assert body.pop("understood") == []
    assert link == body
    assert link["lines"]


def test_a_number_that_could_be_read_in_two_ways_is_echoed(client):
    told = client.get("/api/heat", params={"air": "25", "batch": "1,500 g"}).json()["understood"]
    assert told == [["batch", "1.5 g (decimals after the comma). For thousands type 1500."], ["air", "25 °C"]]


def test_an_exception_of_ours_shows_nothing_of_itself(client, monkeypatch):
    monkeypatch.setattr(api, "worked_out", lambda *_: 1 / 0)
    response = client.get("/api/ratio")
    assert response.status_code == 500
    assert all(response.headers.get_list(name) == [value] for name, value in HEADERS.items())
    assert response.headers["cache-control"]
    assert "zero" not in response.text
    assert set(response.json()) == {"errors", "lines"}


def test_moves_tells_every_input_of_every_move(client):
    told = client.get("/api/moves").json()["moves"]
    assert [move["name"] for move in told] == moves.names()
    for move in told:
        declared = [item.name for item in moves.module(move["name"]).INPUTS]
        assert [item["name"] for item in move["inputs"]] == declared


def test_openapi_names_every_operation_unit_and_limit(client):
    schema = client.get("/openapi.json").json()
    operations = [one for path in schema["paths"].values() for one in path.values()]
    ids = [operation["operationId"] for operation in operations]
    assert len(set(ids)) == len(ids)
    for operation in operations:
        assert "422" in operation["responses"]
    scale = schema["components"]["schemas"]["Scale"]["properties"]["step"]
    assert "From 0.001 to 100 g" in scale["description"]


@pytest.mark.parametrize("path", ["/" + path for _, path, _ in PAGES])
def test_a_page_names_no_other_host_and_holds_no_inline_script(client, path):
    page = client.get(path).text
    assert re.findall(r'(?:src|href)="(?:https?:)?//', page) == []
    assert re.findall(r"<script(?![^>]*src=)", page) == []
    assert " style=" not in page and " onclick" not in page


def test_what_a_link_holds_is_only_ever_text(client):
    page = client.get("/", params={"amount": '"><script>alert(1)</script>'}).text
    assert "<script>alert" not in page and "&lt;script&gt;" in page
    page = client.get("/", params={"amount": "240", "system": "<i>"}).text  # a row nobody knows is named in the refusal
    assert "<i>" not in page and "&lt;i&gt;" in page


def test_an_answer_with_errors_stands_beside_its_field_in_plain_html(client):
    page = client.get("/?amount=none").text
    assert 'value="none"' in page
    assert re.search(r'data-error="amount">\s*Amount: type a number', page)


@pytest.mark.parametrize("encoding", ["br", "gzip", "identity"])
@pytest.mark.parametrize("path", [path for _, path, _ in PAGES])
def test_a_page_without_a_query_is_made_once_and_sent_small(path, encoding):
    client = TestClient(house.app())
    page = client.get(f"/{path}", headers={"accept-encoding": encoding})
    assert page.headers.get("content-encoding", "identity") == encoding
    assert "Accept-Encoding" in page.headers["vary"] and page.headers["cache-control"] == "no-cache"
    assert page.headers["content-type"] == "text/html; charset=utf-8"
    assert "content-security-policy" in page.headers
    made = client.get(f"/{path}?as=page", headers={"accept-encoding": encoding})  # made for this request
    assert page.text == lean_page(made.text)


def test_of_the_sources_a_fresh_page_has_the_first_and_leads_to_all(client):
    """Without a script or an engine too; with them all 600 are there a moment later."""
    lines = 'data-line="'
    page = client.get("/sources/").text
    assert page.count(lines) == MOST_LINES
    (lead,) = re.findall(r'href="([^"]+)" data-lead[^>]*>Show all (\d+)<', page)
    every = client.get("/sources/" + unescape(lead[0]).removeprefix("../sources/")).text
    assert every.count(lines) == int(lead[1]) == len(moves.screen("sources", {})["answers"][0][1]["lines"])
    assert "Show all" not in every
    assert client.get("/boat/").text.count("Show all") == 0


def test_the_scripts_of_later_are_those_that_no_screen_starts_with():
    """The rule that parts them reads the scripts: a view, a dialog and what only they import are on the other side."""
    assert {"js/engine/engine.js", "js/views/screen.js", "vendor/idb/index.js"} <= set(BUILD.together["js/main.js"])
    assert set(BUILD.together["js/engine/worker.js"]) == {
        "js/engine/worker.js", "js/engine/bundle.js", "js/engine/interpreter.js", "js/engine/picture.js",
        "js/engine/unpack.js"}
    assert {"js/share/sheet.js", "js/views/steps.js", "js/views/clock.js", "vendor/lean-qr/index.js"} <= set(
        BUILD.later)
    assert "js/kit/log.js" in BUILD.ahead("pour") and BUILD.ahead("joint") == []
    for path in BUILD.files:  # what is imported, at once or when it is asked for, is served
        if path.endswith((".js", ".mjs")):
            for near in re.findall(r'(?:^import [^"]*|\bimport\()"(\.[^"]+)"', BUILD.files[path].body.decode(), re.M):
                assert posixpath.normpath(f"{path}/../{near}") in BUILD.files, (path, near)


def test_versioned_files_are_kept_for_ever_and_sent_small(client):
    response = client.get(f"/v/{BUILD.id}/app.css", headers={"accept-encoding": "gzip"})
    assert "immutable" in response.headers["cache-control"]
    assert response.headers["content-encoding"] == "gzip"
    plain = client.get(f"/v/{BUILD.id}/app.css", headers={"accept-encoding": "identity"})
    assert "content-encoding" not in plain.headers
    assert plain.content == response.content


@pytest.mark.parametrize("path", [BUNDLE, "vendor/micropython/micropython.bin"])
@pytest.mark.parametrize("accepted", ["gzip, br", "gzip", "identity"])
def test_what_comes_packed_is_sent_alike_whatever_the_other_side_takes(client, path, accepted):
    """Packed by the build and not once more on the way: a host that compresses nothing sends as little."""
    response = client.get(f"/v/{BUILD.id}/{path}", headers={"accept-encoding": accepted})
    assert "content-encoding" not in response.headers
    assert response.headers["content-type"] == "application/octet-stream"
    told = told_to(client.get("/sw.js").text)
    assert sum_of(response.content) == told["sums"][BUILD.base + path]
    whole = unpacked(response.content)
    assert len(response.content) < len(whole) / 2
    assert sum_of(whole) == told["whole"][BUILD.base + path][1]


def test_the_worker_keeps_every_file_and_every_page(client):
    told = told_to(client.get("/sw.js").text)
    assert {path.removeprefix(BUILD.base) for path in told["sums"]} == {*BUILD.together, BUNDLE} | {
        path for path in BUILD.files if not path.endswith((".js", ".mjs")) and path not in INSTALLED}
    bundle = house.unpacked(client.get("/" + told["bundle"]).content)
    assert bundle["scripts"] == {BUILD.base + path: BUILD.files[path].body.decode() for path in BUILD.later}
    pages = bundle["pages"]
    assert set(pages) == {path for _, path, _ in PAGES}
    assert all('data-form' in page for page in pages.values())


def test_the_worker_knows_by_its_name_what_no_first_visit_waits_for(client):
    """The face of the figures, in a style sheet and so of a type that every host has, and the reader of codes."""
    worker = (house.HOUSE / "webui/sw.js").read_text(encoding="utf-8")
    names = re.search(r"isMore = \(path\) => /(.*)/\.test", worker)[1]
    assert {path for path in BUILD.files if re.search(names, path) and path not in BUILD.later} == set(ASKED)
    told = told_to(client.get("/sw.js").text)
    for path in ASKED:
        sent = client.get("/" + BUILD.base + path)
        assert sum_of(sent.content) == told["sums"][BUILD.base + path]
        kind = "text/css" if path.endswith(".css") else "text/javascript"
        assert sent.headers["content-type"].split(";")[0] == kind
    style = client.get("/" + BUILD.base + ASKED[0]).text
    faces = [base64.b64decode(one) for one in re.findall(r"url\(data:font/woff2;base64,([^)]+)\)", style)]
    assert faces == [(house.HOUSE / "webui" / FACES / name).read_bytes() for name in ("regular.woff2", "bold.woff2")]
    assert all(len(face) < 6_000 for face in faces) and "url(." not in style


@pytest.mark.parametrize("language, worker", [("en", "/sw.js"), ("de", "/sw.de.js")])
def test_a_first_visit_stays_within_350_kB(client, language, worker):
    """Everything the worker keeps, as it crosses the wire: all screens, files, worker, manifest."""
    own = Build(language=language)
    files = sum(len(file.sent("gzip, br")[0]) for path, file in own.files.items()
                if path not in (*INSTALLED, *ASKED, *own.later, *own.late))
    told = told_to(client.get(worker).text)
    bundle = client.get("/" + told["bundle"], headers={"accept-encoding": "gzip, br"}).headers
    first = sum(len(gzip.compress(client.get(path, headers={"accept-language": language}).content))
                for path in ("/", worker, "/manifest.webmanifest"))
    total = files + int(bundle["content-length"]) + first
    assert total < house.FIRST_VISIT, total


def test_the_api_answers_in_the_language_that_is_asked_for(client):
    for headers, language, decimal in (({}, "en", "."), ({"accept-language": "de-AT, en;q=0.5"}, "de", ",")):
        answer = client.post("/api/joint", json={"kind": "inside"}, headers=headers)
        assert answer.headers["content-language"] == language
        assert answer.headers["vary"].split(", ")[0] == "Accept-Language"
        radius = next(line["text"] for line in answer.json()["lines"] if line["name"] == "radius")
        assert decimal in radius
    german = client.get("/api/joint?thickness=abc", headers={"accept-language": "de"})
    assert german.status_code == 422 and "Plattendicke" in german.json()["errors"][0]["message"]


def test_a_page_comes_in_the_language_that_is_asked_for_or_was_chosen(client):
    asked = ({}, "en"), ({"accept-language": "de"}, "de"), ({"accept-language": "de", "cookie": "language=en"}, "en"), (
        {"cookie": "language=zz"}, "en")
    for headers, language in asked:
        page = client.get("/joint/", headers=headers)
        assert f'<html lang="{language}"' in page.text
        assert {"Accept-Language", "Cookie"} <= set(page.headers["vary"].split(", "))

"""The API under generated abuse: whatever is sent, the answer is one that its own description names."""
import asyncio
import json

import house
import pytest
import schemathesis
from covemix.server.api import MOST_BODY
from covemix.server.app import create_app
from covemix.server.headers import HEADERS, LISTS, OF_PAGES, OF_WINDOWS, is_worker
from hypothesis import HealthCheck, settings
from schemathesis.specs.openapi.checks import positive_data_acceptance
from starlette.testclient import TestClient
from waits import in_own_thread

APP = create_app(house.build(), packs=False)  # which is asked while tests are collected
schema = schemathesis.openapi.from_asgi("/openapi.json", APP)
schema.config.phases.update(phases=["fuzzing"])


@schema.parametrize()
@settings(max_examples=12, deadline=None, derandomize=True, suppress_health_check=list(HealthCheck))
def test_no_answer_is_undocumented(case):
    """Status, content type and schema of every answer; no 5xx. What a typed text may say is the engine's to decide,
    so a text refused with 422 is no fault."""
    case.call_and_validate(excluded_checks=[positive_data_acceptance])


BODIES = {
    "half a surrogate pair as a name": b'{"\\ud800": 1}',
    "half a surrogate pair that a refusal quotes": b'{"system": {"id": "\\udfff"}}',
    "not UTF-8": b'\xff\xfe{"amount": 3}',
    "deeper than a reader goes": b"[" * 100_000,
    "more digits than Python reads": b'{"amount": 1' + b"0" * 5000 + b"}",
    "beyond a float": b'{"amount": 1e400}',
    "no number": b'{"amount": NaN}',
    "a NUL": b'{"system": "\\u0000"}',
    "nothing": b"",
    "null": b"null",
    "markup": b'{"system": "<img src=x onerror=alert(1)>"}',
}


@pytest.fixture(scope="module")
def client():
    with TestClient(APP, raise_server_exceptions=False) as client:
        yield client


@pytest.mark.parametrize("why", BODIES)
def test_a_hostile_body_is_refused_in_the_one_shape(client, why):
    response = client.post("/api/ratio", content=BODIES[why], headers={"content-type": "application/json"})
    assert response.status_code == 422
    assert response.headers["content-type"] == "application/json"
    assert set(response.json()) == {"errors", "lines"}


@pytest.mark.parametrize("kind", ["text/plain", "application/x-www-form-urlencoded", "multipart/form-data", "text/xml"])
def test_a_body_of_another_kind_is_refused(client, kind):
    """What a form of another site could post without being asked first is not taken for a body."""
    assert client.post("/api/ratio", content=b'{"amount": 3}', headers={"content-type": kind}).status_code == 422


def test_an_endless_body_is_refused_while_it_comes():
    """Without a length, as a chunked body has none: no more is taken in than the limit and the piece that breaks it."""
    came, sent = [], []

    async def receive():
        came.append(64_000)
        return {"type": "http.request", "body": b" " * came[-1], "more_body": True}

    async def send(message):
        sent.append(message)

    headers = [(b"content-type", b"application/json")]
    asked = {"type": "http", "method": "POST", "path": "/api/ratio", "headers": headers, "query_string": b"",
             "app": APP}
    in_own_thread(asyncio.run, APP(asked, receive, send))
    assert sent[0]["status"] == 413
    assert set(json.loads(sent[1]["body"])) == {"errors", "lines"}
    assert sum(came) < MOST_BODY + 64_000


def all_routes(routes):
    """Every route of the app with a path, those of included routers too."""
    for route in routes:
        if getattr(route, "path", None):
            yield route.path, sorted(route.methods)
        else:
            yield from all_routes(route.original_router.routes)


ROUTES = dict(all_routes(APP.routes))


def test_the_list_of_routes_is_the_whole_app():
    assert {"/", "/sw.js", "/api/ratio", "/openapi.json", "/v/{build_id}/{path:path}"} <= set(ROUTES)
    assert len([path for path in ROUTES if path.startswith("/api/")]) == len(APP.openapi()["paths"])


@pytest.mark.parametrize("method", ["GET", "HEAD", "POST", "PUT", "DELETE", "OPTIONS", "TRACE"])
@pytest.mark.parametrize("path", ROUTES)
def test_every_route_sends_every_header_that_means_something_there_whatever_it_is_asked(client, path, method):
    response = client.request(method, path, content=b"1" * 300_000 if method == "PUT" else b"")
    for name, value in HEADERS.items():
        if not ((path.startswith(("/v/", *LISTS)) and name in OF_PAGES) or (is_worker(path) and name in OF_WINDOWS)):
            assert response.headers.get_list(name) == [value]
    assert response.headers["cache-control"]
    assert response.status_code < 500
    assert "set-cookie" not in response.headers

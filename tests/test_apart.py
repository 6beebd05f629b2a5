"""What takes long is answered by another process, alike; a short question, and each while there is no other, is
answered here."""
import json
import os
import signal
import time

import house
import pytest
from covemix.server import apart, running
from covemix.server.api import MOST_BODY
from covemix.server.examples import BODIES
from starlette.testclient import TestClient
from waits import LONG, STEP

MANY = {"joints": [{**BODIES["boat"]["joints"][0], "length_m": 2 + place / 50} for place in range(60)]}
JSON = {"content-type": "application/json"}
TOO_LONG = b"x" * (apart.LONG + 1)


def telling(word):
    """An app that tells which process it is in, and what it was sent."""

    async def app(scope, receive, send):
        body = (await receive()).get("body", b"") if scope["method"] == "POST" else b""
        told = json.dumps([os.getpid(), word, scope["path"], len(body)]).encode()
        await send({"type": "http.response.start", "status": 200, "headers": [(b"content-type", b"application/json")]})
        await send({"type": "http.response.body", "body": told})

    return app


@pytest.fixture
def both():
    """That app with another process beside it, and what asks it."""
    found = apart.Apart(telling("here"), MOST_BODY, telling, "there")
    yield found, TestClient(found)
    found.end()


def begun(found):
    """Wait until the other process is there."""
    found.ready()
    found.first.result(LONG)
    return found.first.result()


def test_a_long_question_is_answered_by_another_process_and_a_short_one_here(both):
    found, client = both
    there = begun(found)
    assert there != os.getpid()
    assert client.post("/api/ratio", content=b"{}").json() == [os.getpid(), "here", "/api/ratio", 2]
    assert client.get("/boat/").json()[:2] == [os.getpid(), "here"]  # made ready for everyone
    assert client.post("/api/ratio", content=TOO_LONG).json() == [there, "there", "/api/ratio", len(TOO_LONG)]
    for path in ("/boat/?joints.0.length=2", "/api/plan?temperature=20", "/joint/?thickness=" + "6" * apart.LONG):
        assert client.get(path).json()[:2] == [there, "there"], path


def test_until_the_other_process_is_there_and_once_it_is_gone_the_answer_comes_from_here(both):
    found, client = both
    assert client.post("/api/boat", content=b"{}").json() == [os.getpid(), "here", "/api/boat", 2]
    there = begun(found)
    assert client.post("/api/boat", content=b"{}").json()[0] == there
    os.kill(there, signal.SIGKILL)
    assert client.post("/api/boat", content=b"{}").json() == [os.getpid(), "here", "/api/boat", 2]
    assert client.post("/api/boat", content=b"[]").json() == [os.getpid(), "here", "/api/boat", 2]


def test_where_the_other_process_comes_to_nothing_the_answer_comes_from_here(both, monkeypatch):
    """Its share of a machine that others take whole; a question that is being answered is waited for."""
    found, client = both
    there = begun(found)
    assert client.post("/api/boat", content=b"{}").json()[0] == there
    monkeypatch.setattr(apart, "PATIENCE", 0.05)
    os.kill(there, signal.SIGSTOP)
    assert client.post("/api/boat", content=b"{}").json()[0] == os.getpid()
    os.kill(there, signal.SIGCONT)
    monkeypatch.setattr(apart, "PATIENCE", LONG)
    assert client.post("/api/boat", content=b"{}").json()[0] == there


def test_it_gives_way_and_ends_with_the_server(both):
    found, _ = both
    there = begun(found)
    threads = [int(one) for one in os.listdir(f"/proc/{there}/task")] if os.path.isdir("/proc/self/task") else [there]
    given_way = min(os.getpriority(os.PRIO_PROCESS, 0) + apart.GIVES_WAY, 19)
    assert sum(os.getpriority(os.PRIO_PROCESS, one) == given_way for one in threads) >= min(2, len(threads))
    found.end()
    assert gone(there)


def gone(pid):
    """Whether a process is no more, which is waited for."""
    for _ in range(int(LONG / STEP)):
        try:
            os.kill(pid, 0)
        except ProcessLookupError:
            return True
        time.sleep(STEP)
    return False


@pytest.mark.parametrize("method, path, query, body", [
    ("POST", "/api/boat", "", json.dumps(MANY)),
    ("GET", "/boat/", "joints.0.length=2.4&joints.0.thickness=6", ""),
    ("GET", "/sources/", "find=resin", ""),
    ("POST", "/api/boat", "", '{"joints": 3}'),
])
def test_the_same_app_answers_there(method, path, query, body):
    """Status, headers and every byte."""
    here = TestClient(house.app()).request(method, f"{path}?{query}" if query else path, content=body or None,
                                           headers={**JSON, "accept-encoding": "identity"})
    scope = {"type": "http", "http_version": "1.1", "method": method, "scheme": "http", "path": path, "root_path": "",
             "query_string": query.encode(), "headers": [
                 (b"content-type", b"application/json"), (b"accept-encoding", b"identity"), (b"host", b"testserver")]}
    start, *bodies = apart.answered(running.that_answers, (), scope, body.encode())
    assert start["status"] == here.status_code
    assert dict(start["headers"]) == dict(here.headers.raw)
    assert b"".join(one["body"] for one in bodies) == here.content


def asking(word):
    """An app that tells what it was asked: where, how, in which language, and with what."""

    async def app(scope, receive, send):
        body = (await receive()).get("body", b"")
        told = json.dumps([word, scope["method"], scope["path"], scope["query_string"].decode(),
                           dict(scope["headers"]).get(b"accept-language", b"").decode(), body.decode()]).encode()
        await send({"type": "http.response.start", "status": 200, "headers": [(b"content-type", b"application/json")]})
        await send({"type": "http.response.body", "body": told})

    return app


def test_the_other_process_is_asked_the_same_as_this_one_would_be_each_time(monkeypatch):
    """A query that is lost on the way would be answered with the figures of the empty form."""
    monkeypatch.setattr(apart, "PATIENCE", LONG)
    found = apart.Apart(asking("here"), MOST_BODY, asking, "there")
    client = TestClient(found)
    begun(found)
    try:
        for place in range(3):
            query, said = f"joints.0.length={place}", ("de", "en", "")[place]
            got = client.get(f"/boat/?{query}", headers={"accept-language": said}).json()
            assert got == ["there", "GET", "/boat/", query, said, ""]
            text = json.dumps({"joints": [{"length_m": place}]})
            got = client.post("/api/boat?units=us", content=text, headers={"accept-language": said}).json()
            assert got == ["there", "POST", "/api/boat", "units=us", said, text]
    finally:
        found.end()

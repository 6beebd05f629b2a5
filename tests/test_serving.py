"""`covemix serve`: who half asks is dropped, who stops it need not wait, nothing of a reader is written or echoed."""
import contextlib
import re
import socket
import stat
import subprocess
import sys
import threading

import house
import pytest
import uvicorn
from covemix.server import command, running, timed
from covemix.server.front import Logged, Prefixed
from covemix.server.version import VERSION
from starlette.testclient import TestClient
from waits import LONG, until


async def small(scope, receive, send):
    """An app that reads what it is sent and says so; below /wait it never ends."""
    more = scope["type"] == "http"
    while more:
        more = (await receive()).get("more_body", False)
    if scope["path"] == "/wait":
        await __import__("asyncio").Event().wait()
    await send({"type": "http.response.start", "status": 200, "headers": [(b"content-length", b"2")]})
    await send({"type": "http.response.body", "body": b"ok"})


@contextlib.contextmanager
def serving(app=small):
    """An app served as `covemix serve` does it: its server and its port."""
    with running.taken("127.0.0.1", 0) as listener:
        server = uvicorn.Server(running.config(app, lifespan="off"))
        thread = threading.Thread(target=server.run, kwargs={"sockets": [listener]}, daemon=True)
        thread.start()
        until(lambda: server.started, thread)
        yield server, thread, listener.getsockname()[1]
        server.should_exit = server.force_exit = True
        thread.join(LONG)


def line(port, *sent):
    """A connection that has sent so much."""
    made = socket.create_connection(("127.0.0.1", port), timeout=LONG)
    for one in sent:
        made.sendall(one)
    return made


def answer_of(sent):
    """The whole answer of the small app."""
    got = b""
    while not got.endswith(b"ok"):
        more = sent.recv(1000)
        assert more, got
        got += more
    return got


WHOLE = b"GET / HTTP/1.1\r\nhost: x\r\n\r\n"


@pytest.mark.parametrize("half", [b"", b"GET / HTTP/1.1\r\nhost: x\r\nx-a: ",
                                  b"POST / HTTP/1.1\r\nhost: x\r\ncontent-length: 9\r\n\r\n123"])
def test_half_a_request_is_dropped(half, monkeypatch):
    assert timed.WHOLE == 10  # what docs/SERVER.md says
    monkeypatch.setattr(timed, "WHOLE", 0.2)
    with serving() as (_, _, port), line(port, half) as sent, contextlib.suppress(ConnectionResetError):
        assert sent.recv(100) == b""


def test_half_a_request_is_dropped_on_a_line_that_was_used_before(monkeypatch):
    """And the time it had is its own: uvicorn's for a line without any request does not count any more."""
    monkeypatch.setattr(timed, "WHOLE", 0.5)
    with serving() as (_, _, port), line(port, WHOLE) as sent:
        assert answer_of(sent)
        sent.sendall(WHOLE[:-2])
        with contextlib.suppress(ConnectionResetError):
            assert sent.recv(100) == b""


def test_two_hundred_half_requests_keep_nobody_from_an_answer_and_go(monkeypatch):
    monkeypatch.setattr(timed, "WHOLE", 2.0)
    with serving() as (server, thread, port), contextlib.ExitStack() as all_of_them:
        for _ in range(200):
            all_of_them.enter_context(line(port, WHOLE[:20]))
        with line(port, WHOLE) as whole:
            assert answer_of(whole)
        until(lambda: not server.server_state.connections, thread)


def test_a_request_that_comes_in_pieces_is_answered_and_its_answer_may_take_long(monkeypatch):
    monkeypatch.setattr(timed, "WHOLE", 0.5)
    with serving() as (_, _, port), line(port, WHOLE[:20], WHOLE[20:]) as sent:
        assert answer_of(sent)
        waiting = line(port, b"GET /wait HTTP/1.1\r\nhost: x\r\n\r\n")
        waiting.settimeout(1.5)
        with waiting, pytest.raises(TimeoutError):
            waiting.recv(1)  # it is still being answered


def test_a_server_that_is_told_to_stop_waits_for_nobody(monkeypatch):
    monkeypatch.setattr(timed, "WHOLE", 10_000)
    assert running.LAST < 5
    with (serving() as (server, thread, port), line(port, b"GET /wait HTTP/1.1\r\nhost: x\r\n\r\n"),
          line(port, b"POST / HTTP/1.1\r\nhost: x\r\ncontent-length: 9\r\n\r\n123")):
        until(lambda: len(server.server_state.tasks) >= 2, thread)
        server.should_exit = True
        thread.join(LONG)
        assert not thread.is_alive()


class Stopping(threading.Timer):
    """What ends a process that says nothing: without it a test would wait for its next line for ever."""

    def __init__(self, *args):
        super().__init__(*args)
        self.start()

    def close(self):
        self.cancel()


def test_it_says_at_once_what_it_does_and_ends_by_a_signal(tmp_path):
    path = tmp_path / "covemix.sock"
    serve = [sys.executable, "-m", "covemix.server", "serve", "--socket", path, "--log"]
    with (subprocess.Popen(serve, stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True) as started,
          contextlib.closing(Stopping(LONG, started.kill))):
        assert re.match(rf"Covemix {re.escape(VERSION)} is starting\.", started.stdout.readline())
        assert started.stdout.readline() == f"Covemix is at {path}\n"
        assert stat.S_IMODE(path.stat().st_mode) == 0o660
        with socket.socket(socket.AF_UNIX) as line_to:
            line_to.settimeout(LONG)
            line_to.connect(str(path))
            line_to.sendall(b"GET /health?secret=1 HTTP/1.1\r\nhost: x\r\n\r\n")
            assert b"200" in line_to.recv(1000)
            line_to.sendall(b"POST /api/ratio HTTP/1.1\r\nhost: x\r\ncontent-length: 9\r\n\r\n")
            started.terminate()
            said, wrong = started.communicate(timeout=LONG)
        assert started.returncode in (0, -15) and wrong == ""
    assert re.search(r"^GET /health 200 \d+ ms$", said, re.M) and "secret" not in said


def test_what_takes_its_place_is_said_plainly(tmp_path, capsys):
    with running.taken("127.0.0.1", 0) as listener:
        listener.listen()
        with pytest.raises(SystemExit) as left:
            command.main(["serve", "--port", str(listener.getsockname()[1])])
    assert left.value.code == 1 and "choose another port with --port" in capsys.readouterr().err
    plain = tmp_path / "file"
    plain.write_text("")
    for options, why in ((["--socket", str(plain)], "is no socket"), (["--host", "192.0.2.300"], "is no address"),
                         (["--certificate", str(plain), "--key", str(plain)], "do not go together"),
                         (["--certificate", "none", "--key", "none"], "there is no file")):
        with pytest.raises(SystemExit):
            command.main(["serve", *options])
        assert why in capsys.readouterr().err
    assert plain.exists()


@pytest.mark.parametrize("options", [
    ["--certificate", "a"], ["--root-path", "covemix"], ["--socket", "a", "--host", "b"], ["--lan", "--socket", "a"],
    ["--name", "shop.local"]])
def test_options_that_do_not_go_together_are_refused_before_anything_is_done(options, capsys):
    with pytest.raises(SystemExit) as left:
        command.main(["serve", *options])
    assert left.value.code == 2 and "starting" not in capsys.readouterr().out


def test_a_socket_that_a_server_left_is_taken_and_one_that_is_served_is_not(tmp_path):
    path = tmp_path / "covemix.sock"
    left = socket.socket(socket.AF_UNIX)
    left.bind(str(path))
    left.close()
    with running.at_path(path) as listener:
        listener.listen()
        with pytest.raises(running.Unready, match="another server listens"), running.at_path(path):
            pass
    assert not path.exists()


@pytest.fixture(scope="module")
def client():
    with TestClient(house.app(), raise_server_exceptions=False) as client:
        yield client


@pytest.mark.parametrize("path", ["/joint?amount=3", "/api/ratio/?amount=3", "/kit", "/nothing", "/v/abc"])
def test_the_name_of_the_host_is_never_given_back(client, path):
    answer = client.get(path, headers={"host": "evil.example"}, follow_redirects=False)
    assert "evil" not in repr(answer.headers) + answer.text


def test_a_redirect_keeps_its_query_and_the_prefix_of_a_proxy(client):
    answer = client.get("/joint?amount=3", follow_redirects=False)
    assert answer.status_code == 307 and answer.headers["location"] == "./joint/?amount=3"
    assert client.get("/api/ratio/?amount=3", follow_redirects=False).headers["location"] == "../ratio?amount=3"


@pytest.mark.parametrize("sent_as", ["/boats/shop/joint/?amount=3", "/joint/?amount=3", "/boats/shop/joint?amount=3"])
def test_below_a_prefix_it_answers_whether_or_not_the_proxy_takes_it_off(sent_as):
    with TestClient(Prefixed(house.app(), "/boats/shop/")) as below:
        answer = below.get(sent_as)
        assert answer.status_code == 200 and 'data-screen="joint"' in answer.text
        file = re.search(r'href="\.\./(v/\w+/app\.css)"', answer.text)[1]
        for base in ("/", "/boats/shop/"):
            assert below.get(base + file).headers["cache-control"].startswith("max-age")
            assert "content-security-policy" not in below.get(base + file).headers
        assert below.get("/boats/shops/joint/").status_code == 404


def test_health_says_the_build_and_is_never_kept(client):
    answer = client.get("/health?x=1")
    assert answer.json() == {"version": VERSION, "build": house.build().id}
    assert answer.headers["cache-control"] == "no-store"


@pytest.mark.parametrize("path", ["/", "/joint/?amount=3", f"/v/{house.build().id}/app.css", "/openapi.json"])
@pytest.mark.parametrize(("accepted", "sent_as"), [
    ("br;q=0, gzip", "gzip"), ("br;q=0.0, gzip;q=0", None), ("gzip;q=0", None), ("identity", None), ("gzip", "gzip"),
    ("xbr", None)])
def test_an_encoding_of_weight_zero_is_not_sent(client, path, accepted, sent_as):
    assert client.get(path, headers={"accept-encoding": accepted}).headers.get("content-encoding") == sent_as


def test_a_line_of_the_log_names_nobody_and_stays_one_line():
    lines = []
    with TestClient(Logged(house.app(), lines.append), raise_server_exceptions=False) as client:
        client.get("/joint/?amount=187", headers={"x-forwarded-for": "203.0.113.9"})
        client.get("/nothing%0AGET%20/forged")
        client.post("/api/ratio", json={"amount": "secret"})
    assert [re.sub(r"\d+ ms$", "9 ms", one) for one in lines] == [
        "GET /joint/ 200 9 ms", "GET /nothing%0AGET%20/forged 404 9 ms", "POST /api/ratio 422 9 ms"]

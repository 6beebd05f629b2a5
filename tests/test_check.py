"""`covemix check`: what is wrong with a host is said with what to change there; what is right is not found wrong."""
import threading

import house
import pytest
import uvicorn
from browser.serve import instead
from covemix.server import authority, check, lan, running
from covemix.server.build import BUNDLE, worker_with
from covemix.server.command import main
from cryptography.hazmat.primitives.serialization import Encoding
from starlette.testclient import TestClient
from waits import LONG, until

BUILD = house.build()


def found(wrap=lambda app: app, base="http://localhost", address="/"):
    """What is said of the house, served so."""
    with TestClient(wrap(house.app()), base_url=base, raise_server_exceptions=False) as client:
        return check.check(base + address, client)


def led(to):
    """The app, with some paths answered by what stands at others."""
    def wrap(app):
        async def answer(scope, receive, send):
            if scope["type"] == "http" and scope["path"] in to:
                scope = dict(scope, path=to[scope["path"]])
            await app(scope, receive, send)
        return answer
    return wrap


def unpacked(app):
    """The app, on a host that packs nothing."""
    async def answer(scope, receive, send):
        if scope["type"] == "http":
            scope = dict(scope, headers=[one for one in scope["headers"] if one[0] != b"accept-encoding"])
        await app(scope, receive, send)
    return answer


def with_header(path, name, value):
    """The app, with a header of one answer set."""
    def wrap(app):
        async def answer(scope, receive, send):
            async def send_set(message):
                if message["type"] == "http.response.start" and scope["path"] == path:
                    others = [header for header in message["headers"] if header[0] != name]
                    message["headers"] = [*others, (name, value)]
                await send(message)
            await app(scope, receive, send_set)
        return answer
    return wrap


def test_where_all_is_well_nothing_is_to_change():
    seen = found()
    assert (seen.wrong, seen.better) == ([], [])
    assert len([one for one in seen.right if "are whole" in one]) == 2
    assert seen.lines()[-1] == "All is well: phones keep the app from here."
    assert any("covemix serve answers" in one for one in seen.right)


OTHER = b"another body"


@pytest.mark.parametrize(("wrap", "said"), [
    (instead(("micropython.bin",), "application/octet-stream", OTHER), "micropython.bin: is another file"),
    (instead((BUNDLE,), "text/html", b"<p>Sign in"), "app.bin: a page comes in its place"),
    (instead(("/app.css",), "text/plain", BUILD.files["app.css"].body), "app.css: comes as text/plain"),
    (instead(("/js/main.js",), "application/octet-stream", BUILD.files["js/main.js"].body), "must be text/javascript"),
    (led({f"/v/{BUILD.id}/app.css": "/nothing"}), "app.css: answers 404"),
    (with_header("/sw.js", b"content-type", b"text/plain"), "Browsers run no script of that type"),
    (led({"/sw.js": "/nothing"}), "sw.js answers 404"),
    (instead(("/sw.de.js",), "text/javascript", OTHER), "sw.de.js is not as it was written"),
    (with_header("/sw.js", b"service-worker-allowed", b"/other/"), "may not be used for this folder"),
    (instead(("/joint/",), "text/html", b'<html data-build="older">'), "of another build (older)"),
    (led({"/kit/": "/nothing"}), "kit/ answers 404"),
    (led({"/joint": "/joint/"}), "Without its slash an address does not lead to its page: joint (200)"),
    (led({f"/{check.NOWHERE}": "/"}), "the host answers 200 with a page"),
    (instead(("/manifest.webmanifest",), "text/html", OTHER), "manifest.webmanifest answers 200 and cannot be read"),
    (led({f"/v/{BUILD.id}/icons/app-512.png": "/nothing"}), "Icons are missing"),
    (instead(("/recalled.json",), "text/html", OTHER), "would not learn that its build is wrong"),
    (instead(("/health",), "application/json", b'{"build": "older"}'), "says that it is build older"),
    (led({"/": "/nothing"}), "Let the host answer a folder with the index.html"),
    (instead(("/",), "text/html", b"<p>A shop"), "is no page of Covemix"),
])
def test_what_is_wrong_is_said_with_what_to_change(wrap, said):
    seen = found(wrap)
    assert [one for one in seen.wrong if said in one]
    assert seen.lines()[-1].startswith("docs/HOSTS.md has tested settings") and "to change" in seen.lines()[-2]


@pytest.mark.parametrize(("wrap", "said"), [
    (unpacked, "app.css crosses the wire unpacked"),
    (unpacked, "js/main.js crosses the wire unpacked"),
    (with_header("/sw.js", b"cache-control", b"max-age=86400"), "sw.js may be kept for 86,400 seconds"),
    (with_header("/", b"content-security-policy", b"script-src 'self'"), "into a frame"),
    (with_header("/", b"x-content-type-options", b""), "X-Content-Type-Options: nosniff"),
    (with_header(f"/v/{BUILD.id}/{BUNDLE}", b"cache-control", b"no-cache"), "Files below v/ never change"),
    (instead(("/manifest.webmanifest",), "text/plain", b'{"icons": []}'), "application/manifest+json"),
])
def test_what_could_be_better_keeps_nobody_from_the_app(wrap, said):
    seen = found(wrap)
    assert [one for one in seen.better if said in one] and seen.wrong == []


def test_without_https_phones_keep_nothing():
    assert [one for one in found(base="http://shop.example").wrong if "no https" in one]
    assert found(base="https://shop.example").wrong == []


def test_any_address_below_the_app_will_do():
    assert found(address="/index.html?amount=3").wrong[:1] == found(led({"/index.html": "/"})).wrong[:1] == []


def test_the_host_that_it_says_it_is_gets_its_own_settings():
    seen = check.Found(better=["x"], host="nginx/1.22.1")
    assert seen.lines()[-1] == "docs/HOSTS.md has tested settings for nginx."


@pytest.fixture
def safe(tmp_path):
    """The house by https, its authority as a file, and its leaf's end."""
    own = authority.made(tmp_path / "own", "localhost", [])
    trusted = tmp_path / "root.pem"
    trusted.write_bytes(own.root.public_bytes(Encoding.PEM))
    leaf = own.vouch(lan.names("localhost", ""), days=9.5)
    with running.taken("127.0.0.1", 0) as listener:
        files = {"ssl_certfile": own.folder / authority.LEAF, "ssl_keyfile": own.folder / authority.LEAF_KEY}
        server = uvicorn.Server(running.config(house.app(), lifespan="off", **files))
        thread = threading.Thread(target=server.run, kwargs={"sockets": [listener]}, daemon=True)
        thread.start()
        until(lambda: server.started, thread)
        yield f"https://localhost:{listener.getsockname()[1]}/", trusted, leaf
        server.should_exit = server.force_exit = True
        thread.join(LONG)


def test_the_certificate_s_end_is_told_and_one_that_nobody_trusts_is_refused(safe, monkeypatch, capsys):
    url, trusted, _ = safe
    with pytest.raises(SystemExit) as left:
        main(["check", url])
    assert left.value.code == 1 and "The certificate is not trusted: " in capsys.readouterr().out
    monkeypatch.setenv("SSL_CERT_FILE", str(trusted))
    seen = check.check(url)
    assert seen.wrong == ["The certificate lasts 9 more days. Renew it now, and let that be done by itself."]
    assert any("The same build at " in one for one in seen.right)
    with pytest.raises(SystemExit) as left:
        main(["check", "shop.example"])
    assert left.value.code == 2


def test_a_host_that_does_not_answer_is_no_riddle():
    seen = check.check("http://localhost:9/")
    assert len(seen.wrong) == 1 and "does not answer" in seen.wrong[0]


def test_two_builds_at_one_host_are_told_apart(safe, monkeypatch):
    url, trusted, _ = safe
    monkeypatch.setenv("SSL_CERT_FILE", str(trusted))
    told = iter(["a" * 12, "b" * 12])
    monkeypatch.setattr(check, "_asked_everywhere", lambda *where: [
        ("192.0.2.1", check.httpx.Response(200, text=worker_with({"id": next(told)}, ""))) for _ in range(2)])
    seen = check.check(url)
    assert any("Not the same build everywhere: build aaaaaaaaaaaa at 192.0.2.1; build bbb" in one for one in seen.wrong)

"""The static export on a host that knows nothing of Covemix, in a folder of its own."""
import functools
import http.server
import json
import re
import shutil
import tempfile
import threading
from pathlib import Path

import pytest
from covemix.server.command import main
from playwright.sync_api import expect

from .conftest import drawn, figure, grow_old, keep


class Quiet(http.server.SimpleHTTPRequestHandler):
    def log_message(self, *words):
        pass


class Elsewhere:
    """A plain file server."""

    def __init__(self, folder):
        self.files = http.server.ThreadingHTTPServer(("127.0.0.1", 0), functools.partial(Quiet, directory=folder))
        self.url = f"http://localhost:{self.files.server_port}/boats/shop/"
        threading.Thread(target=self.files.serve_forever, daemon=True).start()

    def stop(self):
        self.files.shutdown()
        self.files.server_close()


@functools.cache
def exported():
    """The exported files, made once: that takes seconds. They go with this process."""
    room = tempfile.TemporaryDirectory()
    main(["export", f"{room.name}/shop"])
    return room


@pytest.fixture
def elsewhere(tmp_path):
    """The exported files in a sub-folder of a host that knows nothing of Covemix."""
    shutil.copytree(f"{exported().name}/shop", tmp_path / "boats" / "shop")
    host = Elsewhere(tmp_path)
    yield host
    host.stop()


def test_it_works_in_any_folder_and_then_without_signal(phone, elsewhere):
    keep(phone, elsewhere.url)
    phone.get_by_label("Amount", exact=True).fill("200")
    expect(figure(phone, "drawn_b")).to_have_text(drawn(200))
    elsewhere.stop()
    phone.goto(elsewhere.url + "?amount=300")
    phone.get_by_role("button", name="Use these").click()
    expect(figure(phone, "drawn_b")).to_have_text(drawn(300))
    phone.get_by_role("link", name="Safety", exact=True).click()
    expect(phone.locator("[data-line=first]")).to_be_visible()
    assert phone.url == elsewhere.url + "safety/"


def test_a_browser_too_old_is_told_so_and_not_sent_to_a_server(phone, elsewhere):
    grow_old(phone)
    phone.goto(elsewhere.url)
    expect(phone.locator("[data-notice=engine]")).to_contain_text("this browser is too old")
    expect(phone.get_by_role("button", name="Work it out")).to_be_hidden()


def test_two_folders_of_a_host_are_two_apps_and_no_page_says_so_at_any_depth(elsewhere):
    """Without an id an app is known by its own address (W3C, Web Application Manifest, "id member")."""
    shop = f"{exported().name}/shop"
    with open(f"{shop}/manifest.webmanifest") as file:
        manifest = json.load(file)
    assert "id" not in manifest and manifest["start_url"] == manifest["scope"] == "./"
    with open(f"{shop}/404.html") as file:
        missing = file.read()
    assert "no page of Covemix" in missing and "keine Seite von Covemix" in missing
    assert not re.search(r"(?:src|href)=", missing)


def test_no_file_has_a_type_that_stock_hosts_do_not_know():
    """Debian's nginx and busybox send no .mjs as a script, and a browser then runs none of it."""
    found = {path.suffix for path in Path(f"{exported().name}/shop").rglob("*") if path.is_file()}
    assert found == {"", ".bin", ".css", ".html", ".js", ".json", ".png", ".svg", ".wasm", ".webmanifest"}

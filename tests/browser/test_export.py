"""The static export on a host that knows nothing of Covemix, in a folder of its own."""
import subprocess
import sys

import httpx
import pytest
from covemix.server.command import main
from playwright.sync_api import expect

from .conftest import Server, figure, keep


@pytest.fixture
def elsewhere(tmp_path):
    """The files in a sub-folder of a plain file server."""
    main(["export", str(tmp_path / "boats" / "shop")])
    server = Server()
    server.process = subprocess.Popen([sys.executable, "-m", "http.server", str(server.port), "--directory", tmp_path],
                                      stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
    for _ in range(100):
        try:
            httpx.get(server.url)
            break
        except httpx.TransportError:
            continue
    server.url += "/boats/shop/"
    yield server
    server.stop()


def test_it_works_in_any_folder_and_then_without_signal(phone, elsewhere):
    keep(phone, elsewhere.url)
    phone.get_by_label("Amount", exact=True).fill("200")
    expect(figure(phone, "reading_b")).to_have_text("200 g")
    elsewhere.stop()
    phone.goto(elsewhere.url + "?amount=300")
    phone.get_by_role("button", name="Use these").click()
    expect(figure(phone, "reading_b")).to_have_text("300 g")
    phone.get_by_role("link", name="Safety", exact=True).click()
    expect(phone.locator("[data-line=first]")).to_be_visible()
    assert phone.url == elsewhere.url + "safety/"

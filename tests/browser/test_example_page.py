"""The example page, at home on another host: it asks the API of a server that allows it, and of no other."""
import functools
import http.server
import threading

import house
from covemix.server.app import create_app
from covemix.server.build import HOUSE
from playwright.sync_api import expect

from .serve import Server


class Quiet(http.server.SimpleHTTPRequestHandler):
    def log_message(self, *told):
        """Nothing is written."""


def test_a_page_of_another_host_tells_by_the_api(phone):
    pages = http.server.ThreadingHTTPServer(("127.0.0.1", 0), functools.partial(Quiet, directory=HOUSE / "docs"))
    threading.Thread(target=pages.serve_forever, daemon=True).start()
    club = f"http://127.0.0.1:{pages.server_port}"
    server = Server().start(wrap=lambda app: create_app(house.build(), origins=[club]))
    phone.goto(f"{club}/example.html?server={server.url}")
    expect(phone.locator("output")).to_have_text("Resin: 184.6 g, Hardener: 55.4 g")
    phone.get_by_role("textbox").fill("x")
    expect(phone.locator("output")).to_contain_text("Amount")
    server.stop()
    pages.shutdown()
    pages.server_close()
    script = (HOUSE / "docs" / "example.html").read_text(encoding="utf-8").split("<script")[1]
    assert len(script.strip().splitlines()) <= 12, "ten lines and the tags around them"

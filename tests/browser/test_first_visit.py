"""A first visit: what crosses the wire until the phone keeps the app, each byte once."""
from collections import Counter

import house
import pytest
from covemix.server.pages import PAGES
from playwright.sync_api import expect

from .conftest import fresh, keep

BUILD = house.build()

MOST = 350_000  # bytes with all headers, over HTTP/1.1


@pytest.fixture
def sent(served):
    """What the server has sent, as (path, bytes of body and headers), each time it was asked."""
    sent = []

    def counting(app):
        async def counted(scope, receive, send):
            count = 0

            async def count_and_send(message):
                nonlocal count
                if message["type"] == "http.response.start":
                    count += sum(len(name) + len(value) + 4 for name, value in message["headers"]) + 17
                else:
                    count += len(message.get("body", b""))
                await send(message)

            await app(scope, receive, count_and_send)
            sent.append((scope["path"], count))

        return counted

    served.stop()
    served.start(wrap=counting)
    return sent


@pytest.mark.parametrize(("screen", "path"), [(screen, path) for screen, path, _ in PAGES])
def test_nothing_is_fetched_twice_and_all_of_it_is_within_the_limit(phone, served, sent, screen, path):
    """Of what the bundle holds a first visit fetches only the view in front by itself."""
    keep(phone, f"{served.url}/{path}")
    times = Counter(path.removeprefix("/" + BUILD.base) for path, _ in sent if path.startswith("/v/"))
    assert [path for path, count in times.items() if count > 1] == []
    assert times.keys() & BUILD.later.keys() == set(BUILD.ahead(screen))
    assert sum(count for _, count in sent) < MOST


def test_a_part_that_cannot_be_fetched_is_said_and_comes_later(chromium, served):
    served.stop()
    served.start(missing="js/sheet.js")
    with fresh(chromium, service_workers="block") as (phone, _):
        phone.goto(served.url)
        phone.get_by_role("button", name="Share").click()
        expect(phone.locator("[data-notice=unfetched]")).to_be_visible()
        served.stop()
        served.start()
        phone.reload()
        phone.get_by_role("button", name="Share").click()
        expect(phone.locator("[data-code] .code")).to_be_visible()

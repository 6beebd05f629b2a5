"""Turns: what is worked out in no time is answered where it comes in, all else in a thread of its own."""
import asyncio
import threading

import pytest
from covemix.server import api
from covemix.server.app import create_app
from covemix.server.examples import BODIES
from httpx import ASGITransport, AsyncClient
from waits import in_own_thread


@pytest.fixture(scope="module")
def app():
    return create_app(packs=False)


@pytest.mark.parametrize(("move", "body", "here"), [
    ("ratio", {}, True), ("dew", BODIES["dew"], True), ("boat", BODIES["boat"], False), ("joint", {}, False),
    ("ratio", {"amount": "240 g" + " " * api.SHORT}, False)])
def test_only_what_is_quick_and_short_is_answered_where_it_comes_in(app, monkeypatch, move, body, here):
    """A thread has to be given its turn twice, and beside heavy moves it waits for both."""
    seen, real = [], api.answered
    monkeypatch.setattr(api, "answered", lambda *given, **named: (
        seen.append(threading.get_ident()), real(*given, **named))[1])

    async def asked():
        async with AsyncClient(transport=ASGITransport(app), base_url="http://shop") as client:
            await client.post(f"/api/{move}", json=body)

    own = in_own_thread(lambda: asyncio.run(asked()) or threading.get_ident())
    assert [one == own for one in seen] == [here]

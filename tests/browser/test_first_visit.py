"""A first visit: what crosses the wire until the phone keeps the app, each byte once."""
from collections import Counter

import pytest

from .conftest import keep

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


def test_nothing_is_fetched_twice_and_all_of_it_is_within_the_limit(phone, served, sent):
    keep(phone, served.url)
    times = Counter(path for path, _ in sent if path.startswith("/v/"))
    assert [path for path, count in times.items() if count > 1] == []
    assert sum(count for _, count in sent) < MOST

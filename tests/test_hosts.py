"""The export on stock servers from Debian's packages, looked at by `covemix check`; also as docs/hosts sets them."""
import httpx
import pytest
from covemix.server.check import check
from hosts import SNIPPETS, STOCK, Host

named = {"ids": lambda kind: kind.__name__}


@pytest.mark.parametrize("kind", STOCK, **named)
def test_a_stock_server_serves_the_export_as_it_is(kind):
    host = Host(kind)
    try:
        found = check(host.url)
    finally:
        host.stop()
    assert found.wrong == []
    assert any("(en) are whole" in one for one in found.right) and any("(de) are whole" in one for one in found.right)


@pytest.mark.parametrize("kind", SNIPPETS, **named)
def test_with_the_settings_of_the_guide_there_is_nothing_left_to_better(kind):
    host = Host(kind, snippet=True)
    try:
        found = check(host.url)
        gone = httpx.get(host.url + "joint/nothing")
        packed = httpx.get(host.url, headers={"accept-encoding": "gzip"})
        plain = httpx.get(host.url, headers={"accept-encoding": "identity"})
    finally:
        host.stop()
    assert (found.wrong, found.better) == ([], [])
    assert gone.status_code == 404 and "There is no page of Covemix" in gone.text
    assert packed.headers["content-encoding"] == "gzip" and "content-encoding" not in plain.headers

"""The export on stock servers as Debian ships them, in a folder: kept, and whole without signal at every address."""
import pytest
from hosts import STOCK, Host
from playwright.sync_api import expect

from .conftest import drawn, figure, keep, open_share

STYLED = "[...document.styleSheets].some((one) => one.cssRules.length > 1)"


@pytest.fixture(params=STOCK, ids=lambda kind: kind.__name__)
def host(request):
    served = Host(request.param)
    yield served
    served.stop()


def test_a_phone_keeps_it_and_needs_no_host_from_then_on(phone, host):
    wrong = []
    phone.on("console", lambda message: wrong.append(message.text) if message.type == "error" else None)
    keep(phone, host.url)
    phone.get_by_label("Amount", exact=True).fill("200")
    expect(figure(phone, "drawn_b")).to_have_text(drawn(200))
    open_share(phone)
    assert wrong == []
    host.stop()
    phone.goto(host.url + "joint?panels=6")  # as somebody types it
    assert phone.url == host.url + "joint/?panels=6" and phone.evaluate(STYLED)
    phone.goto(host.url + "joint/index.html")
    assert phone.evaluate(STYLED)
    phone.goto(host.url + "?amount=300")
    phone.reload()
    phone.get_by_role("button", name="Use these").click()
    expect(figure(phone, "drawn_b")).to_have_text(drawn(300))

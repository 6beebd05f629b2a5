"""A first visit over a slow line, by Chromium's network emulation: 1.6 Mbit/s down, half of it up, 150 ms a round trip.

It delays each request of the page; what the service worker keeps comes from what the page has fetched.
"""
import time

from .paired import Ratio, ratio
from .phone import Phone, keep, visited

DOWN, ROUND = 200_000, 150  # bytes/s, ms
VISITS = 3


def measured() -> list[tuple[str, str, str]]:
    """(what, against what, ratio) of a visit, until the page says that it is kept."""
    with visited() as (browser, server, wire):
        found = [_visit(browser, server.url, wire) for _ in range(VISITS + 1)][1:]
    kept: Ratio = ratio(found)
    seconds = ", ".join(f"{took:.1f}" for took, _ in sorted(found))
    return [(f"A first visit until kept: {seconds} s", "its bytes alone on that line", str(kept))]


def _visit(browser, url, wire) -> tuple[float, float]:
    """How long it took until all was kept, and what its bytes and one round trip take [s]."""
    before = sum(wire.sent.values())
    phone = Phone(browser, url)
    session = phone.context.new_cdp_session(phone.page)
    session.send("Network.enable")
    session.send("Network.emulateNetworkConditions",
                 {"offline": False, "latency": ROUND, "downloadThroughput": DOWN, "uploadThroughput": DOWN / 2})
    began = time.perf_counter()
    keep(phone.page, url)
    took = time.perf_counter() - began
    phone.context.close()
    return took, (sum(wire.sent.values()) - before) / DOWN + ROUND / 1000

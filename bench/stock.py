"""The export behind a stock server: its first page against a file of that size beside it."""
import http.client
import time
from collections.abc import Callable
from pathlib import Path

import hosts
import pytest

from .paired import in_turn

ASKED, TURNS = 50, 40  # requests on one line in each turn


def measured() -> list[tuple[str, str, str]]:
    """(what, against what, ratio) of Debian's nginx; where it cannot be had it is said."""
    try:
        host = hosts.Host(hosts.nginx)
    except pytest.skip.Exception as why:
        return [("The export behind nginx", "a file of that size", str(why))]
    root = Path(host.room.name)
    page = (root / "covemix" / "index.html").read_bytes()
    same = root / "same.html"
    same.write_bytes(b"x" * len(page))
    try:
        found = in_turn(_asked(host.port, "/covemix/", len(page)), _asked(host.port, "/same.html", len(page)), TURNS)
    finally:
        same.unlink()
        host.stop()
    return [(f"The export's first page behind nginx, {len(page):,} bytes", "a file of that size beside it", str(found))]


def _asked(port: int, path: str, size: int) -> Callable[[], float]:
    """How long so many requests for it take [s]."""

    def ask() -> float:
        line = http.client.HTTPConnection("127.0.0.1", port)
        began = time.perf_counter()
        for _ in range(ASKED):
            line.request("GET", path)
            answer = line.getresponse()
            assert answer.status == 200 and len(answer.read()) == size
        taken = time.perf_counter() - began
        line.close()
        return taken

    return ask

"""The export behind nginx, as docs/hosts sets it, against a file of the same size from the same nginx."""
import http.client
import os
import sys
import time
from pathlib import Path

import pytest
from covemix.server.build import HOUSE

from .paired import in_turn

sys.path.insert(0, str(HOUSE / "tests"))
from hosts import Host, nginx

FILES = ("index.html", "v/*/app.bin")
TURNS, CALLS = 20, 100


def measured() -> list[tuple[str, str, str]]:
    """(what, against what, ratio); nothing where there is no nginx."""
    try:
        host = Host(nginx, snippet=True)
    except pytest.skip.Exception:
        return []
    line, folder = http.client.HTTPConnection("127.0.0.1", host.port), Path(host.room.name) / "covemix"
    try:
        return [(f"`{path.name}` of the export behind nginx", "a file of that size", _ratio(line, path, folder))
                for path in (sorted(folder.glob(name))[0] for name in FILES)]
    finally:
        line.close()
        host.stop()


def _ratio(line: http.client.HTTPConnection, path: Path, folder: Path) -> str:
    same = folder / f"as-large-as-{path.name}.bin"
    same.write_bytes(os.urandom(path.stat().st_size))
    one, other = (f"/covemix/{each.relative_to(folder).as_posix()}" for each in (path, same))
    return str(in_turn(lambda: _took(line, one), lambda: _took(line, other), TURNS))


def _took(line: http.client.HTTPConnection, address: str) -> float:
    """So many requests, one after the other [s]."""
    began = time.perf_counter()
    for _ in range(CALLS):
        line.request("GET", address)
        answer = line.getresponse()
        answer.read()
        assert answer.status == 200, (address, answer.status)
    return time.perf_counter() - began

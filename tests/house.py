"""The house as it is served, gathered and compressed once for all tests of a run: that takes seconds."""
import functools
import json
from pathlib import Path

from covemix.server.app import create_app
from covemix.server.build import HOUSE, Build
from starlette.testclient import TestClient


def unpacked(bundle: bytes) -> dict[str, dict[str, str]]:
    """What a bundle holds, by room and path, read as `webui/js/engine/bundle.js` reads it."""
    first, _, body = bundle.partition(b"\n")
    found, at = {}, 0
    for room, files in json.loads(first).items():
        for path, length in files:
            found.setdefault(room, {})[path] = body[at:at + length].decode()
            at += length
    assert at == len(body)
    return found


@functools.cache
def _build(house: Path):
    return Build(house)


@functools.cache
def _app(house: Path):
    """With all its files made: a test that changes a part of the house meanwhile would be in them."""
    made = create_app(_build(house))
    TestClient(made).get("/sw.js")  # the last of them
    return made


def build(house: Path = HOUSE):
    """All files of a house."""
    return _build(house)  # a cache keeps what is asked with a default apart from what is asked with the same by name


def app(house: Path = HOUSE):
    """The app of a house."""
    return _app(house)

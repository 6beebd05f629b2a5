"""The house as it is served, gathered and compressed once for all tests of a run: that takes seconds."""
import functools
import json
import os
import shutil
import threading
from dataclasses import replace
from pathlib import Path

import unpack
from covemix.server.app import create_app
from covemix.server.build import HOUSE, Build, File
from covemix.server.language import worker_name
from covemix.server.lean import FIELD, SAME
from covemix.server.pages import Pages
from covemix.shared.words.languages import LANGUAGES
from covemix.shared.words.written import FIRST
from starlette.testclient import TestClient

# bytes of a first visit with all headers, over HTTP/1.1; a copy for changed files is packed in haste (broken_runs.py)
FIRST_VISIT = 500_000 if os.environ.get("PACKED_LIGHTLY") else 350_000


def unpacked(packed: bytes) -> dict[str, dict[str, str]]:
    """What a bundle holds, by room and path, read as `webui/js/engine/bundle.js` reads it."""
    first, _, body = unpack.unpacked(packed).partition(b"\n")
    *texts, end = body.decode().split("\0")
    assert end == ""
    found, place = {}, 0
    for room, paths in json.loads(first).items():
        own = texts[place:place + len(paths)]
        found[room] = dict(zip(paths, map(named, own) if room == "pages" else own, strict=True))
        place += len(paths)
    assert place == len(texts)
    return found


def named(page: str) -> str:
    """A page of the bundle with the name of each field where its sign stands."""
    before, *fields = page.split(FIELD)
    return FIELD.join([before, *[field.replace(SAME, field[:field.index('"')]) for field in fields]])


MAKING = threading.RLock()


@functools.cache
def _build(house: Path):
    return Build(house)


@functools.cache
def _app(build: Build):
    """With all its files made: a test that changes a part of the house meanwhile would be in them. Of a build that only
    browsers ask those of its first language."""
    made = create_app(build)
    for language in LANGUAGES if build is _build(HOUSE) else (FIRST,):
        TestClient(made).get("/" + worker_name(language))  # the last of them
    return made


@functools.cache
def bundle() -> File:
    """The bundle of this house."""
    return _build(HOUSE).bundle(Pages(_build(HOUSE)).kept())


def build(house: Path = HOUSE):
    """All files of a house."""
    return _build(house)  # a cache keeps what is asked with a default apart from what is asked with the same by name


class Later:
    """The app of a house, made when it is asked for the first time: what is only collected asks nothing, and what is
    made then is made once for all workers (tests/made_once.py)."""

    def __init__(self, house: Path):
        self.house = house

    async def __call__(self, scope, receive, send):
        await made(self.house)(scope, receive, send)

    def __getattr__(self, name):
        return getattr(made(self.house), name)


def app(house: Path = HOUSE):
    """The app of a house, for who may never ask it."""
    return Later(house)


def made(house: Path = HOUSE):
    """The app of a house, with all its files."""
    with MAKING:
        return _app(_build(house))


class Unpacked(Build):
    """The same build, whose two large files are sent as a phone unpacks them: to unpack them twice is two fifths of
    what a first visit costs it, and of most tests not what they ask."""

    @functools.cached_property
    def packed(self):
        """The build as it is sent."""
        return _build(self.house) if self.language == FIRST else Build(self.house, self.language)

    @functools.cached_property
    def id(self):
        return self.packed.id

    @functools.cached_property
    def files(self):
        return {name: unpacked_file(file) for name, file in self.packed.files.items()}

    def bundle(self, pages):
        return unpacked_file(self.packed.bundle(pages))


def unpacked_file(file: File) -> File:
    """A file as it is unpacked; one that is not packed as it is."""
    return replace(file, body=file.whole) if file.whole else file


@functools.cache
def _unpacked(house: Path):
    return Unpacked(house)


def made_unpacked(house: Path = HOUSE):
    """The app of a house, with all its files, sent unpacked."""
    with MAKING:
        return _app(_unpacked(house))


def another_house(folder: Path) -> Path:
    """A copy of the house that differs in one rule of style (a comment would not be sent): another build."""
    house = folder / "house"
    for room in ("shared", "webui"):
        shutil.copytree(HOUSE / room, house / room, ignore=shutil.ignore_patterns("__pycache__"))
    style = house / "webui" / "css" / "base.css"
    style.write_text(style.read_text() + "\n.another-build { margin: 0; }\n")
    return house

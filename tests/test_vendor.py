"""Vendored files are what they are pinned to be."""
import hashlib
import json

import brotli
import house
import pytest
from covemix.server.build import HOUSE
from covemix.server.lean_wasm import NAMES, without_frozen

VENDOR = HOUSE / "webui" / "vendor"
BUILD = house.build()
LISTED = json.loads((VENDOR / "vendor.json").read_text(encoding="utf-8"))


@pytest.mark.parametrize("library", LISTED, ids=[library["name"] for library in LISTED])
def test_a_library_has_version_licence_reason_and_the_pinned_hash(library):
    assert library["version"] and library["licence"] and library["why"]
    assert (VENDOR / library["name"] / "LICENSE").exists()
    for file in library["files"]:
        assert hashlib.sha256((VENDOR / file["path"]).read_bytes()).hexdigest() == file["sha256"]


def test_nothing_is_vendored_that_is_not_listed():
    listed = {file["path"] for library in LISTED for file in library["files"]}
    kept = {path.relative_to(VENDOR).as_posix() for path in VENDOR.rglob("*.*js")} | {
        path.relative_to(VENDOR).as_posix() for path in VENDOR.rglob("*.wasm")}
    assert kept == listed


@pytest.mark.parametrize("made", sorted(VENDOR.rglob("*.br")), ids=lambda path: path.name)
def test_a_small_form_holds_what_is_sent(made):
    path = made.with_suffix("").relative_to(HOUSE / "webui").as_posix()
    assert brotli.decompress(made.read_bytes()) == BUILD.files[path].body


def test_the_interpreter_is_sent_without_its_frozen_modules_and_otherwise_as_it_is_pinned():
    """Only zeros differ, and no name of a frozen module is left where they are looked for."""
    pinned = (VENDOR / "micropython" / "micropython.wasm").read_bytes()
    file = BUILD.files["vendor/micropython/micropython.wasm"]
    sent = file.body
    assert len(sent) == len(pinned)
    assert all(new in (old, 0) for old, new in zip(pinned, sent, strict=True))
    assert NAMES.search(pinned) and not NAMES.search(sent)
    assert len(file.br) < 0.9 * len(brotli.compress(pinned))


def test_an_interpreter_that_keeps_its_modules_another_way_is_not_touched_blindly():
    pinned = (VENDOR / "micropython" / "micropython.wasm").read_bytes()
    with pytest.raises(ValueError, match="not where they were"):
        without_frozen(pinned.replace(b"asyncio/event.py\0asyncio/funcs.py", b"asyncio/event.py\0asyncio/funcs.mp"))

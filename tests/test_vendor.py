"""Vendored files are what they are pinned to be."""
import hashlib
import json

import brotli
import house
import pytest
from covemix.server.build import HOUSE

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


def test_the_interpreter_is_built_from_what_stands_beside_it():
    """Who changes a file of it builds it anew: refresh.py writes these hashes when it does."""
    (library,) = [one for one in LISTED if "port" in one]
    files = (HOUSE / "webui" / "interpreter").iterdir()
    assert library["port"] == {path.name: hashlib.sha256(path.read_bytes()).hexdigest() for path in files}

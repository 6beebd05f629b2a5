"""Vendored files are what they are pinned to be."""
import hashlib
import importlib.util
import json
import re

import pytest
from covemix.server.build import HOUSE
from fontTools.ttLib import TTFont

VENDOR = HOUSE / "webui" / "vendor"
LISTED = json.loads((VENDOR / "vendor.json").read_text(encoding="utf-8"))

# by name: where it is built here, and the tools that decide its bytes. emscripten brings its libc along.
PORTS = {"micropython": ("interpreter", {"emscripten", "clang-19", "lld-19", "llvm-19", "binaryen", "nodejs", "make"}),
         "ppmd": ("unpacker", {"clang-14", "lld-14", "libllvm14", "make"})}
BUILT = {library["name"]: library for library in LISTED if "port" in library}


@pytest.fixture
def refresh():
    """refresh.py, which is no part of a package."""
    spec = importlib.util.spec_from_file_location("refresh", VENDOR / "refresh.py")
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    return module


@pytest.mark.parametrize("library", LISTED, ids=[library["name"] for library in LISTED])
def test_a_library_has_version_licence_reason_and_the_pinned_hash(library):
    assert library["version"] and library["licence"] and library["why"]
    assert (VENDOR / library["name"] / "LICENSE").exists()
    for file in library["files"]:
        assert hashlib.sha256((VENDOR / file["path"]).read_bytes()).hexdigest() == file["sha256"]


def test_nothing_is_vendored_that_is_not_listed():
    listed = {file["path"] for library in LISTED for file in library["files"]}
    kept = {path.relative_to(VENDOR).as_posix() for kind in ("*.*js", "*.wasm", "*.woff*", "*.[ot]tf")
            for path in VENDOR.rglob(kind)}
    assert kept == listed


def test_all_that_is_built_here_is_known():
    assert BUILT.keys() == PORTS.keys()


@pytest.mark.parametrize("name", PORTS)
def test_a_library_is_built_from_what_stands_in_its_folder(name):
    """Who changes a file of it builds it anew: refresh.py writes these hashes when it does."""
    files = (HOUSE / "webui" / PORTS[name][0]).iterdir()
    assert BUILT[name]["port"] == {path.name: hashlib.sha256(path.read_bytes()).hexdigest() for path in files}


@pytest.mark.parametrize("name", PORTS)
def test_each_tool_that_decides_the_bytes_is_pinned(name):
    built = BUILT[name]
    assert set(built["tools"]) >= PORTS[name][1]
    assert re.fullmatch(r"Debian \d+\.\d+, as it stood on \d{4}-\d\d-\d\d", built["room"])
    for tool, version in built["tools"].items():
        assert re.fullmatch(r"(\d+:)?\d[\w.+~]*-[\w.+~]+", version), tool
    assert re.fullmatch(r"[0-9a-f]{64}", built["archive"]["sha256"])


def test_the_guide_names_the_command_that_proves_the_bytes():
    assert "`sudo make interpreter`" in (HOUSE / "DEVELOPERS.md").read_text(encoding="utf-8")
    recipe = (HOUSE / "Makefile").read_text(encoding="utf-8").split("\ninterpreter:\n\t")[1].splitlines()[0]
    assert recipe == "webui/interpreter/room.sh $(ROOM) --prove"
    room = HOUSE / "webui" / "interpreter" / "room.sh"
    assert room.stat().st_mode & 0o100
    assert "http" not in room.read_text(encoding="utf-8")  # the host is debootstrap's own, or given


@pytest.mark.parametrize(("tool", "byte"), [(False, False), (True, False), (False, True)])
def test_a_proof_tells_a_strange_tool_and_a_strange_byte_and_writes_nothing(refresh, monkeypatch, tmp_path, tool, byte):
    kept = {path: path.read_bytes() for path in VENDOR.rglob("*") if path.is_file()}
    made = tmp_path / "micropython.wasm"
    made.write_bytes((VENDOR / "micropython/micropython.wasm").read_bytes() + b"x" * byte)
    (tmp_path / "LICENSE").write_text("another", encoding="utf-8")
    here = BUILT["micropython"]["tools"] | ({"binaryen": "121-1"} if tool else {})
    monkeypatch.setattr(refresh, "installed", lambda packages: here)
    monkeypatch.setattr(refresh, "built", lambda *given: tmp_path)
    said = refresh.refresh(["micropython"], prove=True)
    assert ["binaryen: 121-1 is not 120-4"] * tool == [line for line in said if line.startswith("binaryen")]
    assert len(said) == tool + byte
    assert {path: path.read_bytes() for path in VENDOR.rglob("*") if path.is_file()} == kept


def test_a_tool_that_is_missing_is_told(refresh):
    assert refresh.strange({"make": "4.4.1-2", "sed": "4.9-2"}, {"sed": "4.9-2"}) == ["make: none is not 4.4.1-2"]


FACE = next(library for library in LISTED if "subset" in library)


@pytest.mark.parametrize("file", FACE["files"], ids=lambda file: file["path"])
def test_the_face_of_the_figures_holds_the_signs_that_are_listed_and_no_other(file):
    """And each figure is as wide as another, so that nothing jumps while a number changes."""
    with TTFont(VENDOR / file["path"]) as face:
        signs, widths = face.getBestCmap(), face["hmtx"]
    assert set(map(chr, signs)) == set(FACE["subset"]["signs"])
    assert len({widths[signs[ord(figure)]][0] for figure in "0123456789"}) == 1
    assert set(FACE["subset"]["signs"]) >= set("0123456789.,:/+-×±%°½¼¾²³µ−–\u00a0äöüÄÖÜß")


def test_what_cuts_the_face_is_pinned_and_a_strange_one_is_told(refresh, monkeypatch, tmp_path):
    assert set(FACE["subset"]["tools"]) == {"fonttools", "brotli"}
    for file in FACE["files"]:
        cut = tmp_path / file["from"]
        cut.parent.mkdir(exist_ok=True)
        cut.write_bytes((VENDOR / file["path"]).read_bytes())
    monkeypatch.setattr(refresh, "fetched", lambda *given: tmp_path)
    monkeypatch.setattr(refresh, "cut_out", lambda face, signs: None)
    pinned = FACE["subset"]["tools"]
    monkeypatch.setattr(refresh, "having", lambda tools: pinned | {"fonttools": "4.0"})
    assert refresh.refresh([FACE["name"]], prove=True) == [f"fonttools: 4.0 is not {pinned['fonttools']}"]


def test_only_the_signs_that_are_asked_for_are_left_of_a_face(refresh, tmp_path):
    face = tmp_path / "face.woff2"
    face.write_bytes((VENDOR / FACE["files"][0]["path"]).read_bytes())
    refresh.cut_out(face, "0123456789 g")
    with TTFont(face) as left:
        assert set(map(chr, left.getBestCmap())) == set("0123456789 g")

"""What is shipped, with its size and why it is there: written to docs/WEIGHT.md by `make bench`.

The reason is what a file says of itself first. The page lists rooms, not each file of ours: it is written anew when a
room or a library comes, and at no other work.
"""
import ast
import json
import re

import brotli
from covemix.server.build import ASKED, BUNDLE, FACES, FIGURES, HOUSE, INSTALLED, MAIN, RUNTIME, UNPACKER, Build, File
from covemix.server.pages import PAGES, Pages

from .table import table

REPORT = HOUSE / "docs" / "WEIGHT.md"
ICONS = {
    "app.svg": "in the tab of a browser",
    "app-180.png": "on the home screen of a phone that reads no manifest",
    "app-192.png": "on the home screen; fetched when the phone installs the app, not before",
    "app-512.png": "fetched when the phone installs the app, not before",
    "app-maskable-512.png": "the same for phones that cut icons to their own shape; fetched when it installs",
}
MPY = """
## Why the engine is sent as text
Compiled modules of MicroPython (.mpy) import quicker. But they weighed a ninth more than the lean source as brotli
sends it, when both were measured; they need a compiler of the runtime's own version as a build step; and nobody can
read in them what a phone calculates with. So the text is sent, without docstrings, comments and the white space that
means nothing (`server/lean.py`).
"""
PACKED = """
## Where the bytes go
Two files are {share:.0f} % of it: `{bundle}` (the engine, the pages, the scripts of later) and MicroPython. The
build packs both (`server/packed.py`), and the phone unpacks them, on every host alike. So they are sent as they are,
and a host that compresses nothing sends as little of them. Brotli at its highest quality would make {brotli:,} bytes
of the bundle and {runtime:,} of MicroPython. The unpacker is {unpacker:,} bytes.

- Of the text, what stood before (480 bytes and more: what pages share) is a mark first, and the words that take up most
  of it are one byte each. PPMd, variant H, packs what is left. It foretells each byte from up to forty before it.
- The unpacker is the decoder of 7-Zip, built for WebAssembly by `webui/unpacker/`. Its model takes {memory} MB while it
  works.
- It was held against brotli, xz, and the same decoder in PPMd's other variant (I, 0.2 % less), and at orders from 6
  to 56 on the bundle: from 16 on, memory grows and bytes hardly shrink, above 48 they grow.
- A phone keeps both files unpacked, so no later start waits for that. Each is kept only if it is what its SHA-256 says,
  as it comes and once more as it is kept.
"""


def shipped(build: Build) -> list[tuple[str, bytes, bytes, str]]:
    """(path, as it is, as it is sent, why) of every file a phone can get, those inside another by themselves."""
    found = [(f"{BUNDLE}: {path}" if path in build.later else path, file.whole or file.body, file.sent("br")[0],
              reason(build, path))
             for path, file in build.files.items() if path not in build.together]
    inside = [(path, one, build.scripts[path]) for one, paths in build.together.items() for path in paths]
    for path, one, text in [*inside, *((path, BUNDLE, text) for path, text in build.engine.items())]:
        body = text.encode()
        found.append((f"{one}: {path}", body, brotli.compress(body), reason(build, path)))
    made = Pages(build)
    pages = made.kept()
    bundle = build.bundle(pages)
    for _, path, label in PAGES:
        body = pages[path].encode()
        found.append((f"{BUNDLE}: {path or './'}", body, brotli.compress(body), f"the screen {made.t(label)}"))
    worker = build.worker(bundle).encode()
    return [*found, ("sw.js", worker, brotli.compress(worker), reason(build, "sw.js"))]


def reason(build: Build, path: str) -> str:
    """What a file says of itself: its docstring, its first comment, or what is known of a vendored file or an icon."""
    folder, _, name = path.rpartition("/")
    if folder == "icons":
        return ICONS[name]
    if path == "app.css":
        return "all styles in the order of their layers: one file to fetch"
    if path == FIGURES:
        return reason(build, FACES + "bold.woff2") + "; fetched when the app is kept"
    if folder.startswith("vendor"):
        known = json.loads((build.house / "webui/vendor/vendor.json").read_text(encoding="utf-8"))
        vendored = path.replace(".bin", ".wasm")  # what is sent packed
        return next(one["why"] for one in known if any(f"vendor/{file['path']}" == vendored for file in one["files"]))
    if path.endswith(".py"):
        words = ast.get_docstring(ast.parse((build.house / path).read_text(encoding="utf-8")))
        return words.splitlines()[0].rstrip(".")
    text = (build.house / "webui" / path).read_text(encoding="utf-8")
    return re.search(r"^// (.*)", text, re.M)[1].rstrip(".")


def room_of(path: str) -> str:
    """Where a file is listed: with its room, or by itself where it is none of ours to split.

    >>> room_of("app.bin: shared/pour/measure.py"), room_of("js/views/clock.js")
    ('shared/pour/', 'js/')
    >>> room_of("js/main.js: vendor/idb/index.js")
    'vendor/idb/index.js'
    """
    inside = path.rpartition(": ")[2]
    if inside.startswith("shared/"):
        return inside.rpartition("/")[0] + "/"
    return "js/" if inside.startswith("js/") else path if path.startswith(BUNDLE) else inside


def by_room(build: Build, files) -> list[tuple[str, int, int, str]]:
    """(room, bytes, as sent each by itself, why) of all files."""
    found: dict[str, tuple[int, int, str]] = {}
    for path, body, small, why in files:
        room = room_of(path)
        size, sent, _ = found.get(room, (0, 0, ""))
        if room.startswith("shared/"):
            why = reason(build, room + "__init__.py")
        found[room] = (size + len(body), sent + len(small), "the page's own scripts" if room == "js/" else why)
    return [(room, *row) for room, row in found.items()]


def report(build: Build) -> str:
    """The whole page, the heaviest first."""
    files = shipped(build)
    bundle = build.bundle(Pages(build).kept())
    rows = sorted(by_room(build, files), key=lambda row: -row[2])
    alone = [file for file in files if ": " not in file[0] and file[0] not in (*INSTALLED, *ASKED, *build.late)]
    joined = sum(len(build.files[one].br) for one in build.together if one not in ASKED)
    plain = len(bundle.body) + len(files[-1][1]) + sum(
        len(file.body) for path, file in build.files.items()
        if path not in (*INSTALLED, *ASKED, *build.later, *build.late))
    sent = len(bundle.body) + joined + sum(len(file[2]) for file in alone)
    return "\n".join((
        "# What is shipped, and why", "",
        "Written by `make bench`; a test compares the list with what is shipped. Bytes as they are after",
        "`server/lean.py`, and as they are sent. Engine, pages and the scripts of later (one screen, one action)",
        "travel as one file, because they share their words, and the scripts that every screen starts with as another:",
        "",
        table(("", "bytes", "sent"), [
            (BUNDLE, f"{len(bundle.whole):,}", f"{len(bundle.body):,}"),
            (MAIN, f"{len(build.files[MAIN].body):,}", f"{len(build.files[MAIN].br):,}"),
            ("everything a phone keeps", "", f"{sent:,}"),
            ("the same from a host that compresses nothing", "", f"{plain:,}"),
            *((f"{one}: " + when, f"{len(build.files[one].body):,}", f"{len(build.files[one].br):,}")
              for one, when in zip(ASKED, ("when the app is kept", "when a code is scanned"), strict=True))]),
        "Each by itself as brotli would send it, the heaviest first; of a room all files together:", "",
        table(("what", "bytes", "sent", "why"), [
            (f"`{room}`", f"{size:,}", f"{small:,}", why.replace("|", "\\|")) for room, size, small, why in rows])
        + PACKED.format(**large(build, bundle, sent)) + MPY))


def large(build: Build, bundle: File, sent: int) -> dict:
    """What is said of the two files that come packed. sent: bytes of everything a phone keeps"""
    runtime = build.files[RUNTIME + ".bin"]
    return {"bundle": BUNDLE, "share": 100 * (len(bundle.body) + len(runtime.body)) / sent, "memory": bundle.body[2],
            "brotli": len(brotli.compress(bundle.whole, quality=11, lgwin=24)),
            "runtime": len(brotli.compress(runtime.whole, quality=11)),
            "unpacker": len(build.files[UNPACKER].br)}


def main() -> None:
    REPORT.write_text(report(Build()), encoding="utf-8")


if __name__ == "__main__":
    main()

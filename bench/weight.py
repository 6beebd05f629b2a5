"""What is shipped, file by file, with its size and why it is there: written to docs/WEIGHT.md by `make bench`.

The reason is what a file says of itself first: nothing here has to be kept up when a file comes or goes.
"""
import ast
import json
import re

import brotli
from covemix.server.build import BUNDLE, HOUSE, INSTALLED, Build
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
Compiled modules of MicroPython (.mpy) import quicker, in about a tenth of the time. But they were measured at 78 kB for
this engine where its lean source is 70 kB as brotli sends it; they need a compiler of the runtime's own version as a
build step; and nobody can read in them what a phone calculates with. So the text is sent, without docstrings, comments
and the white space that means nothing (`server/lean.py`).

The large vendored files and the bundle are compressed once, at the highest quality, not at each request.
"""


def shipped(build: Build) -> list[tuple[str, bytes, bytes, str]]:
    """(path, as it is, as it is sent, why) of every file a phone can get, those inside the bundle by themselves."""
    found = [(f"{BUNDLE}: {path}" if path in build.later else path, file.body, file.sent("br")[0], reason(build, path))
             for path, file in build.files.items()]
    for path, text in build.engine.items():
        body = text.encode()
        found.append((f"{BUNDLE}: {path}", body, brotli.compress(body), reason(build, path)))
    pages = Pages(build).kept()
    bundle = build.bundle(pages)
    for _, path, label in PAGES:
        body = pages[path].encode()
        found.append((f"{BUNDLE}: {path or './'}", body, brotli.compress(body), f"the screen {label}"))
    worker = build.worker(bundle).encode()
    return [*found, ("sw.js", worker, brotli.compress(worker), reason(build, "sw.js"))]


def reason(build: Build, path: str) -> str:
    """What a file says of itself: its docstring, its first comment, or what is known of a vendored file or an icon."""
    folder, _, name = path.rpartition("/")
    if folder == "icons":
        return ICONS[name]
    if path == "app.css":
        return "all styles in the order of their layers: one file to fetch"
    if folder.startswith("vendor"):
        known = json.loads((build.house / "webui/vendor/vendor.json").read_text(encoding="utf-8"))
        return next(one["why"] for one in known if any(f"vendor/{file['path']}" == path for file in one["files"]))
    if path.endswith(".py"):
        words = ast.get_docstring(ast.parse((build.house / path).read_text(encoding="utf-8")))
        return words.splitlines()[0].rstrip(".")
    text = (build.house / "webui" / path).read_text(encoding="utf-8")
    return re.search(r"^// (.*)", text, re.M)[1].rstrip(".")


def report(build: Build) -> str:
    """The whole page, the heaviest first."""
    files = shipped(build)
    bundle = build.bundle(Pages(build).kept())
    rows = sorted(files, key=lambda file: -len(file[2]))
    alone = [file for file in files if not file[0].startswith(BUNDLE) and file[0] not in INSTALLED]
    sent = len(bundle.br) + sum(len(file[2]) for file in alone)
    return "\n".join((
        "# What is shipped, and why", "",
        "Written by `make bench`; a test compares the list with what is shipped. Bytes as they are after",
        "`server/lean.py`, and as they are sent. Engine, pages and the scripts of later (one screen, one action)",
        "travel as one file, because they share their words:",
        "",
        table(("", "bytes", "sent"), [
            (BUNDLE, f"{len(bundle.body):,}", f"{len(bundle.br):,}"),
            ("everything a phone keeps", "", f"{sent:,}")]),
        "Each by itself, the heaviest first:", "",
        table(("file", "bytes", "sent", "why"), [
            (f"`{path}`", f"{len(body):,}", f"{len(small):,}", why.replace("|", "\\|"))
            for path, body, small, why in rows])
        + MPY))


def main() -> None:
    REPORT.write_text(report(Build()), encoding="utf-8")


if __name__ == "__main__":
    main()

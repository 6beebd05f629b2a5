"""The build: every file the page needs, gathered once, under a path that holds the hash of all of it."""
import ast
import gzip
import hashlib
import json
import re
from dataclasses import dataclass
from functools import cached_property
from pathlib import Path

import brotli

from .headers import HEADERS

HOUSE = Path(__file__).resolve().parent.parent
TYPES = {
    ".css": "text/css; charset=utf-8",
    ".js": "text/javascript; charset=utf-8",
    ".mjs": "text/javascript; charset=utf-8",
    ".json": "application/json",
    ".png": "image/png",
    ".svg": "image/svg+xml",
    ".wasm": "application/wasm",
    ".webmanifest": "application/manifest+json",
}
DOCUMENTED = (ast.Module, ast.ClassDef, ast.FunctionDef)
QUALITY = 9  # of brotli at every start: 50 ms; the large vendored files come with a form made once at the highest
FOLDERS = ("css", "js", "icons", "vendor")
COMPRESSED = {".css", ".js", ".mjs", ".json", ".svg", ".wasm"}


@dataclass(frozen=True)
class File:
    """One file as it is sent. gzip, br: its smaller forms, empty where there is none."""

    body: bytes
    kind: str
    gzip: bytes
    br: bytes

    def sent(self, accepted: str) -> tuple[bytes, str]:
        """The smallest form among the accepted encodings, and the name of its encoding."""
        for name in ("br", "gzip"):
            if name in accepted and getattr(self, name):
                return getattr(self, name), name
        return self.body, ""


class Build:
    """All static files by their path below `/v/<id>/`, read once from the house."""

    def __init__(self, house: Path = HOUSE):
        self.house = house

    @cached_property
    def files(self) -> dict[str, File]:
        found = {}
        webui = self.house / "webui"
        for folder in FOLDERS:
            for path in sorted((webui / folder).rglob("*")):
                if path.is_file() and path.suffix in TYPES and not path.name.startswith("."):
                    made = path.with_name(path.name + ".br")
                    br = made.read_bytes() if made.exists() else b""
                    found[path.relative_to(webui).as_posix()] = self._file(path.read_bytes(), path.suffix, br)
        del found["vendor/vendor.json"]  # for contributors
        found["engine.json"] = self._file(self.engine, ".json")
        return found

    @cached_property
    def engine(self) -> bytes:
        """The engine's modules as one JSON object of path and text: one request instead of many."""
        shared = self.house / "shared"
        modules = {
            "shared/" + path.relative_to(shared).as_posix(): lean(path.read_text(encoding="utf-8"))
            for path in sorted(shared.rglob("*.py"))
        }
        return json.dumps(modules, ensure_ascii=False, separators=(",", ":")).encode()

    @cached_property
    def id(self) -> str:
        """A hash over every file's path and content, the templates and the headers: a change of any is a new build."""
        digest = hashlib.sha256()
        for path, file in self.files.items():
            digest.update(path.encode() + b"\0" + hashlib.sha256(file.body).digest())
        for path in [*sorted((self.house / "webui" / "templates").glob("*")), self.house / "webui" / "sw.js"]:
            digest.update(path.name.encode() + b"\0" + hashlib.sha256(path.read_bytes()).digest())
        digest.update(json.dumps(HEADERS, sort_keys=True).encode())
        return digest.hexdigest()[:12]

    @property
    def base(self) -> str:
        """Path of the versioned files, relative to the app's root."""
        return f"v/{self.id}/"

    def worker(self, pages: list[str]) -> str:
        """The service worker, told which files make up this build."""
        told = {"id": self.id, "files": [self.base + path for path in self.files], "pages": pages}
        script = (self.house / "webui" / "sw.js").read_text(encoding="utf-8")
        return f"const BUILD = {json.dumps(told)};\n{script}"

    def manifest(self) -> dict:
        """The web app manifest: relative to the app's root, so that a sub-path works."""
        icons = [
            {"src": f"{self.base}icons/app-{size}.png", "sizes": f"{size}x{size}", "type": "image/png",
             "purpose": "any"}
            for size in (192, 512)
        ]
        icons.append({"src": f"{self.base}icons/app-maskable-512.png", "sizes": "512x512", "type": "image/png",
                      "purpose": "maskable"})
        return {
            "name": "Covemix", "short_name": "Covemix", "id": "./", "start_url": "./", "scope": "./",
            "display": "standalone", "orientation": "any", "lang": "en",
            "description": "The mixing maths of an epoxy seam, and the work around it, without a signal",
            "background_color": "#f6f7f3", "theme_color": "#f6f7f3", "icons": icons,
        }

    @staticmethod
    def _file(body: bytes, suffix: str, br: bytes = b"") -> File:
        if suffix not in COMPRESSED:
            return File(body, TYPES[suffix], b"", b"")
        return File(body, TYPES[suffix], gzip.compress(body, 9, mtime=0), br or brotli.compress(body, quality=QUALITY))


def lean(source: str) -> str:
    """The same module without docstrings and comment lines, which a phone would load and never read.

    Nothing else changes; MicroPython has no docstrings at run time, so no behaviour can depend on them.

    >>> lean("# why\\ndef four():\\n    'Four.'\\n    return 4\\n")
    'def four():\\n    ""\\n    return 4\\n'
    """
    lines = source.split("\n")
    for node in ast.walk(ast.parse(source)):
        first = node.body[0] if isinstance(node, DOCUMENTED) and node.body else None
        if isinstance(first, ast.Expr) and isinstance(first.value, ast.Constant) and isinstance(first.value.value, str):
            lines[first.lineno - 1] = " " * first.col_offset + '""'
            for place in range(first.lineno, first.end_lineno):
                lines[place] = ""
    return re.sub(r"\n(?:[ \t]*(?:#[^\n]*)?\n)+", "\n", "\n" + "\n".join(lines))[1:]

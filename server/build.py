"""The build: every file the page needs, gathered once, under a path that holds the hash of all of it."""
import base64
import gzip
import hashlib
import json
from dataclasses import dataclass
from functools import cached_property
from pathlib import Path

import brotli

from .headers import HEADERS
from .lean import lean, lean_script, lean_style

BUNDLE = "app.json"  # the engine and the pages: one file, because they share their words
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
QUALITY = 11  # of brotli for what is small; the large vendored files come with a form made once at the highest
INSTALLED = ("icons/app-512.png", "icons/app-maskable-512.png")  # the phone fetches them when it installs, not before
FOLDERS = ("js", "icons", "vendor")
STYLES = (  # layers in order
    "tokens", "base", "shell", "form", "rows", "lines", "figures", "pots", "keep", "share", "clock", "views", "pour",
    "joint", "boat", "bench", "print", "template")
COMPRESSED = {".css", ".js", ".mjs", ".json", ".svg", ".wasm"}


@dataclass(frozen=True)
class File:
    """One file as it is sent. gzip, br: its smaller forms, empty where there is none."""

    body: bytes
    kind: str
    gzip: bytes
    br: bytes

    @property
    def sum(self) -> str:
        """SHA-256 of the body, in base 64."""
        return base64.b64encode(hashlib.sha256(self.body).digest()).decode()

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
                    body = path.read_bytes()
                    if folder == "js":
                        body = lean_script(body.decode()).encode()
                    found[path.relative_to(webui).as_posix()] = self._file(body, path.suffix, br)
        del found["vendor/vendor.json"]  # for contributors
        found["app.css"] = self._file(self.styles, ".css")
        return found

    @cached_property
    def engine(self) -> dict[str, str]:
        """The engine's modules by their path, as a phone loads them."""
        shared = self.house / "shared"
        return {
            "shared/" + path.relative_to(shared).as_posix(): lean(path.read_text(encoding="utf-8"))
            for path in sorted(shared.rglob("*.py"))
        }

    @cached_property
    def styles(self) -> bytes:
        """The stylesheets in the order of their layers: many small files to read, one to fetch."""
        folder = self.house / "webui" / "css"
        return lean_style("\n".join((folder / f"{name}.css").read_text(encoding="utf-8") for name in STYLES)).encode()

    @cached_property
    def id(self) -> str:
        """A hash over every file's path and content, the templates and the headers: a change of any is a new build."""
        digest = hashlib.sha256()
        for path in sorted((self.house / "shared").rglob("*.py")):
            digest.update(path.name.encode() + b"\0" + path.read_bytes())
        for path, file in self.files.items():
            digest.update(path.encode() + b"\0" + hashlib.sha256(file.body).digest())
        for path in [*sorted((self.house / "webui" / "templates").rglob("*.html")), self.house / "webui" / "sw.js"]:
            digest.update(path.name.encode() + b"\0" + hashlib.sha256(path.read_bytes()).digest())
        digest.update(json.dumps(HEADERS, sort_keys=True).encode())
        return digest.hexdigest()[:12]

    @property
    def base(self) -> str:
        """Path of the versioned files, relative to the app's root."""
        return f"v/{self.id}/"

    def worker(self, bundle: File) -> str:
        """The service worker, told which files make up this build with the SHA-256 of each, and its pages' headers."""
        kept = {path: file for path, file in self.files.items() if path not in INSTALLED} | {BUNDLE: bundle}
        told = {"id": self.id, "sums": {self.base + path: file.sum for path, file in kept.items()},
                "bundle": self.base + BUNDLE, "headers": {"Content-Type": "text/html; charset=utf-8", **HEADERS}}
        script = lean_script((self.house / "webui" / "sw.js").read_text(encoding="utf-8"))
        return f"const BUILD = {json.dumps(told)};\n{script}"

    def bundle(self, pages: dict[str, str]) -> File:
        """The engine and all pages as one file: half the bytes of each by itself, because they share their words."""
        body = json.dumps({"engine": self.engine, "pages": pages}, ensure_ascii=False, separators=(",", ":")).encode()
        return self._file(body, ".json", brotli.compress(body, quality=11, lgwin=24))

    def worker_file(self, bundle: File) -> File:
        """The service worker as it is sent."""
        return self._file(self.worker(bundle).encode(), ".js")

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


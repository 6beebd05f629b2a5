"""The build: every file the page needs, gathered once, under a path that holds the hash of all of it."""
import base64
import gzip
import hashlib
import json
import re
from dataclasses import dataclass
from functools import cached_property
from pathlib import Path
from typing import Any

import brotli
from covemix.shared.words.languages import LANGUAGES
from covemix.shared.words.written import on_a_phone, sentences

from .declared import declared, in_front, spoken
from .flat_style import flat
from .headers import HEADERS
from .language import FIRST
from .lean import bundled_page, lean, lean_script, lean_style, tight_script, tight_style, value_names, with_value_names
from .one_script import needs, one_script, through
from .packed import packed_bytes, packed_texts
from .put_in import ROWS, WRITTEN, handed_on, own_row, put_in, put_in_script, short_names
from .short import short
from .unasked import without
from .unmentioned import without_unmentioned

BUNDLE = "app.bin"  # the engine, the pages and the scripts of later: one file, because they share their words
RUNTIME = "vendor/micropython/micropython"  # is vendored as .wasm, and sent packed as .bin
UNPACKER = "vendor/ppmd/unpack.wasm"
MAIN = "js/main.js"
DECODER = "js/share/decoder.js"  # of QR codes, where the browser has none
ENTRANCES = (MAIN, "js/loader.js", "js/engine/worker.js", DECODER)  # what a page or a script names by itself
FIGURES, FACES = "face.css", "vendor/archivo-narrow/"  # the face of the figures: the sheet that it comes in, its files
# by this address no browser still has the sheet of a first visit, which is without the face
AGAIN = ('app.css"', 'app.css?"')
ASKED = (FIGURES, DECODER)  # no first visit has them: one comes when the app is kept, one when a code is scanned
DECLARED = "js/form/declarations.js"  # it starts with what the declarations say
SPEECH = "shared/words/speech.py"  # figures in the words of the one language that has them so
SPOKEN = "js/page/language.js"  # and this with the languages
# in front of the service worker, which imports nothing
AHEAD = ("js/engine/bundle.js", "js/engine/unpack.js", "js/page/sentences.js")
HOUSE = Path(__file__).resolve().parent.parent
TYPES = {
    ".bin": "application/octet-stream",
    ".css": "text/css",
    ".html": "text/html; charset=utf-8",
    ".js": "text/javascript",  # always UTF-8 where it is a module or a worker
    ".mjs": "text/javascript",
    ".json": "application/json",
    ".png": "image/png",
    ".svg": "image/svg+xml",
    ".txt": "text/plain; charset=utf-8",
    ".wasm": "application/wasm",
    ".webmanifest": "application/manifest+json",
    ".woff2": "font/woff2",
}
QUALITY = 11  # of brotli
# the phone fetches them when it is put on the home screen, not before
INSTALLED = tuple(f"icons/app-{name}.png" for name in ("180", "192", "512", "maskable-512"))
SCRIPTS = (".js", ".mjs")
LATE = ".late.js"  # ends the name of a script that no first visit fetches: the next one does, and the worker keeps it
FOLDERS = ("js", "icons", "vendor")
STYLES = (  # layers in order
    "tokens", "base", "shell", "form", "rows", "lines", "figures", "pots", "keep", "share", "clock", "views", "pour",
    "joint", "boat", "steps", "print", "template")
COMPRESSED = {".css", ".html", ".js", ".mjs", ".svg", ".txt", ".wasm"}


def as_loaded(program: dict[str, str], scripts: str) -> dict[str, str]:
    """Modules with nothing that a phone does not need, and none that comes to nothing. scripts: all that calls them"""
    lean_program = {path: lean(text) for path, text in program.items()}
    sent = short(without_unmentioned(lean_program, scripts), scripts)
    return {path: text for path, text in sent.items() if text}


@dataclass(frozen=True)
class File:
    """One file as it is sent. gzip, br: its smaller forms, empty where there is none. whole: what it is unpacked to,
    and the type of that; empty where nothing is to be unpacked.
    """

    body: bytes
    kind: str
    gzip: bytes = b""
    br: bytes = b""
    whole: bytes = b""
    whole_kind: str = ""

    @property
    def sum(self) -> str:
        """SHA-256 of the body, in base 64."""
        return sum_of(self.body)

    def sent(self, accepted: str) -> tuple[bytes, str]:
        """The smallest form among the accepted encodings, and the name of its encoding."""
        for name in ("br", "gzip"):
            if name in accepted and getattr(self, name):
                return getattr(self, name), name
        return self.body, ""


class Build:
    """All static files by their path below `/v/<id>/`, read once from the house."""

    def __init__(self, house: Path = HOUSE, language: str = FIRST):
        self.house, self.language = house, language

    @cached_property
    def files(self) -> dict[str, File]:
        found = {}
        for name, path in self._paths().items():
            if path.suffix not in SCRIPTS:
                found[name] = self._file(path.read_bytes(), path.suffix)
        del found["vendor/vendor.json"]  # for contributors
        runtime = found.pop(RUNTIME + ".wasm").body
        found[RUNTIME + ".bin"] = File(packed_bytes(runtime), TYPES[".bin"], whole=runtime, whole_kind=TYPES[".wasm"])
        for one in ENTRANCES:
            found[one] = self._file(tight_script(one_script(self.scripts, one, self.together[one])).encode(), ".js")
        for name, text in (self.later | self.late).items():
            found[name] = self._file(text.encode(), ".js")
        found["app.css"] = self._file(self.styles, ".css")
        faces = {name: found.pop(name) for name in list(found) if name.startswith(FACES)}
        found[FIGURES] = self._file(self.faces(faces), ".css")
        return found

    @cached_property
    def scripts(self) -> dict[str, str]:
        """Each script by itself, lean, by its path from `webui/`."""
        found, said = {}, sentences(self.language)
        for name, path in self._paths().items():
            if path.suffix in SCRIPTS:
                text = path.read_text(encoding="utf-8")
                found[name] = lean_script(put_in_script(text, said)) if path.suffix == ".js" else text
        return dict(found, **{DECLARED: in_front("DECLARED", declared(), found[DECLARED]),
                              SPOKEN: in_front("LANGUAGES", spoken(self.language), found[SPOKEN])})

    def _paths(self) -> dict[str, Path]:
        webui = self.house / "webui"
        return {path.relative_to(webui).as_posix(): path
                for folder in FOLDERS for path in sorted((webui / folder).rglob("*"))
                if path.is_file() and path.suffix in TYPES and not path.name.startswith(".")}

    @cached_property
    def program(self) -> dict[str, str]:
        """The engine's modules by their path, speaking one language."""
        shared, said = self.house / "shared", sentences(self.language)
        texts = {"shared/" + path.relative_to(shared).as_posix(): path.read_text(encoding="utf-8")
                 for path in sorted(shared.rglob("*.py"))}
        texts[WRITTEN], texts[ROWS] = on_a_phone(self.language), own_row(texts[ROWS], self.language)
        if not LANGUAGES[self.language].spelt:
            texts[SPEECH] = "def number_words(digits):\n return digits\n"  # never asked
        asked = {path: without(text) for path, text in texts.items()}
        short, whole = short_names(said), handed_on(list(asked.values()), said)
        return {path: put_in(text, said, short, whole) for path, text in asked.items()}

    @cached_property
    def engine(self) -> dict[str, str]:
        """The engine's modules by their path, as a phone loads them."""
        callers = sorted((self.house / "webui" / "js" / "engine").glob("*.js"))
        scripts = "".join(path.read_text(encoding="utf-8") for path in callers)
        return as_loaded(self.program, scripts)

    def _needs(self, *paths: str) -> list[str]:
        """These scripts and all that they import before they start; not what they import when it is asked for."""
        found = list(paths)
        for path in found:  # grows meanwhile
            found += dict.fromkeys(one for one in needs(self.scripts[path], path) if one not in found)
        return found

    @cached_property
    def together(self) -> dict[str, tuple[str, ...]]:
        """By entrance what comes as one with it: each screen starts with these; all others come in the bundle."""
        return {one: tuple(self._needs(one)) for one in ENTRANCES}

    @cached_property
    def later(self) -> dict[str, str]:
        """The scripts of one screen or one action: a page fetches them singly only where the bundle is not kept yet."""
        return self._apart(late=False)

    @cached_property
    def late(self) -> dict[str, str]:
        """Those that are no part of the bundle (`LATE`): few need them, and none of them at a first visit."""
        return self._apart(late=True)

    def _apart(self, late: bool) -> dict[str, str]:
        first = {path for paths in self.together.values() for path in paths}
        return {path: tight_script(through(text, path, MAIN, self.together[MAIN]))
                for path, text in self.scripts.items() if path not in first and path.endswith(LATE) == late}

    def ahead(self, screen: str) -> list[str]:
        """The scripts of a screen's own view, which its page fetches while it is read."""
        view = f"js/views/{screen}.js"
        return [path for path in self._needs(view) if path in self.later] if view in self.scripts else []

    @cached_property
    def _plain_styles(self) -> str:
        """The stylesheets in the order of their layers: many small files to read, one to fetch."""
        folder = self.house / "webui" / "css"
        texts = "\n".join((folder / f"{name}.css").read_text(encoding="utf-8") for name in STYLES)
        return tight_style(flat(lean_style(texts))) + "\n"

    @cached_property
    def value_names(self) -> dict[str, str]:
        """What the styles' own values are called as they are sent: what scripts set keeps its name."""
        return value_names(self._plain_styles, re.findall(r"[\"'`](--[\w-]+)", "\n".join(self.scripts.values())))

    @property
    def styles(self) -> bytes:
        return with_value_names(self._plain_styles, self.value_names).encode()

    def faces(self, files: dict[str, File]) -> bytes:
        """The face of the figures in a style sheet of its own, all of it: another file would come after the figures,
        and each host has a type for a style sheet. The service worker sets it behind the others."""
        text = (self.house / "webui" / "css" / FIGURES).read_text(encoding="utf-8")
        for name, file in files.items():
            text = text.replace(f"../{name}", f"data:{file.kind};base64,{base64.b64encode(file.body).decode()}")
        return lean_style(text).encode()

    @cached_property
    def id(self) -> str:
        """A hash over every file, the sentences, templates and headers: a change of any is a new build."""
        digest = hashlib.sha256()
        digest.update(repr(sentences(self.language)).encode())
        for path in sorted((self.house / "shared").rglob("*.py")):
            digest.update(path.name.encode() + b"\0" + path.read_bytes())
        for name, file in self.files.items():
            digest.update(name.encode() + b"\0" + hashlib.sha256(file.body).digest())
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
        kept = {path: file for path, file in self.files.items() if path not in (*INSTALLED, *self.later, *self.late)}
        kept[BUNDLE] = bundle
        told = {"id": self.id, "sums": {self.base + path: file.sum for path, file in kept.items()},
                "whole": {self.base + path: [file.whole_kind, sum_of(file.whole)]
                          for path, file in kept.items() if file.whole},
                "base": self.base, "bundle": self.base + BUNDLE, "unpacker": self.base + UNPACKER, "headers": HEADERS,
                "types": {"pages": TYPES[".html"], "scripts": TYPES[".js"]}, "language": self.language}
        ahead = "".join(self.scripts[path].replace("export const", "const") for path in AHEAD)
        text = (self.house / "webui" / "sw.js").read_text(encoding="utf-8")
        script = tight_script(ahead + lean_script(put_in_script(text, sentences(self.language))))
        return worker_with(told, script)

    def bundle(self, pages: dict[str, str]) -> File:
        """The engine, all pages and the scripts of later as one file: half of the bytes that each has by itself.

        A first line tells what is there, and each ends with a NUL; `webui/js/engine/bundle.js` reads it. As JSON it
        would be 3 kB more. The longest pages come first: what the others share with them is near.
        """
        longest = sorted(pages, key=lambda path: -len(pages[path]))
        rooms = {"engine": {path: self.engine[path] for path in sorted(self.engine, key=apart_by_kind)},
                 "pages": {path: bundled_page(pages[path].replace(*AGAIN)) for path in longest},
                 "scripts": {self.base + path: text for path, text in self.later.items()}}
        told = json.dumps({room: list(files) for room, files in rooms.items()}, separators=(",", ":"))
        *said, scripts = ["".join(text + "\0" for text in files.values()).encode() for files in rooms.values()]
        body = b"".join((told.encode(), b"\n", *said))
        return File(packed_texts(body, scripts), TYPES[".bin"], whole=body + scripts, whole_kind=TYPES[".txt"])

    def page(self, text: str) -> File:
        """A page that is the same for everyone, compressed once."""
        return self._file(text.encode(), ".html")

    def worker_file(self, bundle: File) -> File:
        """The service worker as it is sent."""
        return self._file(self.worker(bundle).encode(), ".js")

    def manifest(self) -> dict:
        """The web app manifest: relative to the app's root, so that a sub-path works.

        It has no id: that would be one for all folders of a host, and without it each folder's address is its own.
        """
        icons = [
            {"src": f"{self.base}icons/app-{size}.png", "sizes": f"{size}x{size}", "type": "image/png",
             "purpose": "any"}
            for size in (192, 512)
        ]
        icons.append({"src": f"{self.base}icons/app-maskable-512.png", "sizes": "512x512", "type": "image/png",
                      "purpose": "maskable"})
        return {
            "name": "Covemix", "short_name": "Covemix", "start_url": "./", "scope": "./",
            "display": "standalone", "orientation": "any", "lang": self.language,
            "description": sentences(self.language)["page-about"],
            "background_color": "#f6f7f3", "theme_color": "#f6f7f3", "icons": icons,
        }

    @staticmethod
    def _file(body: bytes, suffix: str) -> File:
        if suffix not in COMPRESSED:
            return File(body, TYPES[suffix])
        return File(body, TYPES[suffix], gzip.compress(body, 9, mtime=0), brotli.compress(body, quality=QUALITY))


# rooms of the engine in the order in which they pack best, as it was tried
ROOMS = ("seam", "pour", "clock", "kit", "plan", "surface", "mix", "safety", "things", "boat", "door", "drawing",
         "equations", "words", "forms", "files", "__init__.py")


def apart_by_kind(path: str) -> tuple[bool, bool, int, str]:
    """Modules in the order in which they pack best: the catalogue first, then what is said, then room by room.

    >>> sorted(["shared/mix/ratio.py", "shared/mix/ratio_lines.py", "shared/catalogue/glass.py"], key=apart_by_kind)[:2]
    ['shared/catalogue/glass.py', 'shared/mix/ratio_lines.py']
    """
    room = path.split("/")[1]
    apart, said = "/catalogue/" not in path, path.endswith("_lines.py")
    return apart, not said, (*ROOMS, room).index(room) if apart and not said else 0, path


def sum_of(body: bytes) -> str:
    """SHA-256, in base 64."""
    return base64.b64encode(hashlib.sha256(body).digest()).decode()


def worker_with(told: dict[str, Any], script: str) -> str:
    """A service worker with what it is told of its build as its first line.

    >>> worker_with({"id": "0123456789ab", "sums": {}}, "start();")
    'const BUILD = {"id":"0123456789ab","sums":{}};\\nstart();'
    """
    return f"const BUILD = {json.dumps(told, separators=(',', ':'))};\n{script}"


def told_to(worker: str) -> dict[str, Any] | None:
    """What a service worker was told of its build; None where its first line is not as `worker_with` wrote it.

    >>> told_to(worker_with({"id": "0123456789ab"}, "start();"))
    {'id': '0123456789ab'}
    >>> told_to("start();") is None and told_to("const BUILD = {changed};\\n") is None
    True
    """
    said = re.match(r"const BUILD = (\{.*\});\n", worker)
    try:
        return json.loads(said[1]) if said else None
    except ValueError:
        return None

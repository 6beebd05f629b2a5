"""Static export: the whole app as files for any https host, in any folder of it. The API is then simply absent."""
import gzip
import json
from pathlib import Path

import brotli
from covemix.shared.forms import recall
from covemix.shared.words.languages import LANGUAGES
from covemix.shared.words.written import reader

from .bare import missing
from .build import BUNDLE, COMPRESSED, Build, File
from .language import worker_name
from .pages import PAGES, Pages

PACKED = COMPRESSED | {".json", ".webmanifest"}


def export(folder: Path, build: Build | None = None, compress: bool = False) -> int:
    """Write every page and file below `folder`; returns how many files were written.

    compress: beside each text its forms in gzip and brotli, for a host that sends those (nginx by `gzip_static`, Caddy
    by `precompressed`). The others take no notice of them.

    A host that sends files asks no browser for its language: pages are in the build's own. Another language comes with
    its service worker, which brings its own pages.
    """
    build = build or Build()
    written = {f"{path}index.html": Pages(build).render(screen, policy=True).encode() for screen, path, _ in PAGES}
    written["recalled.json"] = json.dumps(recall.as_data(reader(language=build.language))).encode()
    written["manifest.webmanifest"] = json.dumps(build.manifest()).encode()
    packed: dict[str, bytes] = {}  # in brotli, where it was made anyway
    for name in LANGUAGES:
        files = spoken(build if name == build.language else Build(build.house, name))
        written.update({path: file.body for path, file in files.items()})
        packed.update({path: file.br for path, file in files.items()})
    # the first is shown at any depth; the second keeps a host from making pages of its own
    written["404.html"], written[".nojekyll"] = missing().encode(), b""
    if compress:
        for path, body in list(written.items()):
            if Path(path).suffix in PACKED:
                written[path + ".gz"] = gzip.compress(body, 9, mtime=0)
                written[path + ".br"] = packed.get(path) or brotli.compress(body, quality=11)
    for path, body in written.items():
        target = folder / path
        target.parent.mkdir(parents=True, exist_ok=True)
        target.write_bytes(body)
    return len(written)


def spoken(build: Build) -> dict[str, File]:
    """What a phone fetches of a language, by path: the service worker and all that this keeps."""
    bundle = build.bundle(Pages(build).kept(policy=True))
    files = {build.base + path: file for path, file in build.files.items()}
    return {worker_name(build.language): build.worker_file(bundle), build.base + BUNDLE: bundle} | files

"""Static export: the whole app as files for any https host, in any folder of it. The API is then simply absent."""
import json
from pathlib import Path

from covemix.shared.forms import recall
from covemix.shared.words.written import reader

from .build import BUNDLE, Build
from .pages import PAGES, Pages


def export(folder: Path, build: Build | None = None) -> int:
    """Write every page and file below `folder`; returns how many files were written."""
    build = build or Build()
    pages = Pages(build)
    written = {f"{path}index.html": pages.render(screen, policy=True).encode() for screen, path, _ in PAGES}
    bundle = build.bundle(pages.kept(policy=True))
    written["sw.js"] = build.worker(bundle).encode()
    written[build.base + BUNDLE] = bundle.body
    written["recalled.json"] = json.dumps(recall.as_data(reader())).encode()
    written["manifest.webmanifest"] = json.dumps(build.manifest()).encode()
    written.update({build.base + path: file.body for path, file in build.files.items()})
    for path, body in written.items():
        target = folder / path
        target.parent.mkdir(parents=True, exist_ok=True)
        target.write_bytes(body)
    return len(written)

"""Static export: the whole app as files for any https host, in any folder of it. The API is then simply absent."""
import json
from pathlib import Path

from covemix.shared.forms import recall
from covemix.shared.words.languages import LANGUAGES
from covemix.shared.words.written import reader

from . import reference
from .build import BUNDLE, Build
from .headers import POLICY
from .language import worker_name
from .pages import PAGES, Pages


def export(folder: Path, build: Build | None = None) -> int:
    """Write every page and file below `folder`; returns how many files were written.

    A host that sends files asks no browser for its language: pages are in the build's own. Another language comes with
    its service worker, which brings its own pages.
    """
    build = build or Build()
    written = {f"{path}index.html": Pages(build).render(screen, policy=True).encode() for screen, path, _ in PAGES}
    written[reference.PATH + "index.html"] = reference.page("../" + build.base, POLICY).encode()
    written["recalled.json"] = json.dumps(recall.as_data(reader(language=build.language))).encode()
    written["manifest.webmanifest"] = json.dumps(build.manifest()).encode()
    for name in LANGUAGES:
        written.update(spoken(build if name == build.language else Build(build.house, name)))
    for path, body in written.items():
        target = folder / path
        target.parent.mkdir(parents=True, exist_ok=True)
        target.write_bytes(body)
    return len(written)


def spoken(build: Build) -> dict[str, bytes]:
    """What a phone fetches of a language, by path: the service worker and all that this keeps."""
    bundle = build.bundle(Pages(build).kept(policy=True))
    files = {build.base + path: file.body for path, file in build.files.items()}
    return {worker_name(build.language): build.worker(bundle).encode(), build.base + BUNDLE: bundle.body} | files

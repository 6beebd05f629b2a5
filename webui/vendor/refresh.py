"""Refresh the vendored libraries: `python webui/vendor/refresh.py` fetches what vendor.json pins and checks every hash.

To take a new version, change it in vendor.json and run with `--accept`: the new hashes are written there, and the
difference is yours to read before it is committed. Needs npm, which knows where its packages come from, and the
environment of the tests: files worth it get their smallest form, of what is really sent, made once here instead of at
every start.
"""
import hashlib
import json
import shutil
import subprocess
import sys
import tarfile
import tempfile
from pathlib import Path

import brotli
from covemix.server.lean_wasm import without_frozen

HERE = Path(__file__).resolve().parent
LIST = HERE / "vendor.json"
WORTH_IT = 50_000  # bytes


def fetched(package: str, version: str, into: Path) -> Path:
    """The unpacked package."""
    done = subprocess.run(["npm", "pack", f"{package}@{version}", "--silent"], cwd=into, check=True,
                          capture_output=True, text=True)
    with tarfile.open(into / done.stdout.strip().splitlines()[-1]) as archive:
        archive.extractall(into, filter="data")
    return into / "package"


def refresh(accept: bool) -> list[str]:
    """Copy every pinned file; the hashes that do not fit are returned (and taken over with `accept`)."""
    wrong, listed = [], json.loads(LIST.read_text(encoding="utf-8"))
    for library in listed:
        with tempfile.TemporaryDirectory() as folder:
            package = fetched(library["package"], library["version"], Path(folder))
            for file in library["files"]:
                body = (package / file["from"]).read_bytes()
                digest = hashlib.sha256(body).hexdigest()
                if digest != file["sha256"] and not accept:
                    wrong.append(f"{file['path']}: {digest} is not {file['sha256']}")
                    continue
                file["sha256"] = digest
                target = HERE / file["path"]
                target.parent.mkdir(exist_ok=True)
                target.write_bytes(body)
                if len(body) > WORTH_IT:
                    sent = without_frozen(body) if target.suffix == ".wasm" else body
                    target.with_name(target.name + ".br").write_bytes(brotli.compress(sent, quality=11))
            if (package / "LICENSE").exists():
                shutil.copy(package / "LICENSE", HERE / library["name"] / "LICENSE")
    if accept:
        LIST.write_text(json.dumps(listed, indent=2) + "\n", encoding="utf-8")
    return wrong


if __name__ == "__main__":
    problems = refresh("--accept" in sys.argv)
    print("\n".join(problems) or "all files are as pinned")
    sys.exit(bool(problems))

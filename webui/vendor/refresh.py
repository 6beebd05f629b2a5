"""Refresh the vendored libraries: `refresh.py [NAME...]` gets what vendor.json pins, and checks every hash.

To take a new version, change it in vendor.json and run with `--accept`: the new hashes are written there, and the
difference is yours to read before it is committed; the hash of an archive is typed in by hand. A library is fetched
with npm, or built from Debian's source of it: the interpreter, as `webui/interpreter/` says. That needs the Debian that
vendor.json names (a chroot will do) with emscripten, make, dpkg-dev and python3-brotli, and its source packages among
apt's sources; the same archive and compiler give the same bytes. Files worth it get their smallest form, made once here
instead of at every start.
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

HERE = Path(__file__).resolve().parent
LIST = HERE / "vendor.json"
PORT = HERE.parent / "interpreter"
WORTH_IT = 50_000  # bytes


def fetched(package: str, version: str, into: Path) -> Path:
    """The unpacked package."""
    done = subprocess.run(["npm", "pack", f"{package}@{version}", "--silent"], cwd=into, check=True,
                          capture_output=True, text=True)
    with tarfile.open(into / done.stdout.strip().splitlines()[-1]) as archive:
        archive.extractall(into, filter="data")
    return into / "package"


def port() -> dict[str, str]:
    """What the interpreter is built by, beside its archive: each file of `webui/interpreter/` with its SHA-256."""
    return {path.name: hashlib.sha256(path.read_bytes()).hexdigest() for path in sorted(PORT.iterdir())}


def built(source: str, version: str, archive: dict, into: Path) -> Path:
    """A folder with what `webui/interpreter/` makes of Debian's source package, and the licence of that."""
    subprocess.run(["apt-get", "source", "--download-only", f"{source}={version}"], cwd=into, check=True)
    packed = into / archive["name"]
    if hashlib.sha256(packed.read_bytes()).hexdigest() != archive["sha256"]:
        raise SystemExit(f"{packed.name} is not the archive that vendor.json pins")
    with tarfile.open(packed) as opened:
        opened.extractall(into, filter="data")
    (top,) = (path.parent for path in into.glob("*/LICENSE"))
    made = into / "made"
    subprocess.run(["make", "-C", PORT, f"TOP={top}", f"BUILD={made}"], check=True)
    shutil.copy(top / "LICENSE", made / "LICENSE")
    return made


def refresh(names: list[str], accept: bool) -> list[str]:
    """Copy every pinned file (of `names`, where some are given); hashes that do not fit are returned, or accepted."""
    wrong, listed = [], json.loads(LIST.read_text(encoding="utf-8"))
    for library in listed:
        if names and library["name"] not in names:
            continue
        with tempfile.TemporaryDirectory() as folder:
            if "archive" in library:
                library["port"] = port()
                package = built(library["source"], library["version"], library["archive"], Path(folder))
            else:
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
                    target.with_name(target.name + ".br").write_bytes(brotli.compress(body, quality=11))
            if (package / "LICENSE").exists():
                shutil.copy(package / "LICENSE", HERE / library["name"] / "LICENSE")
    if accept:
        LIST.write_text(json.dumps(listed, indent=2) + "\n", encoding="utf-8")
    return wrong


if __name__ == "__main__":
    problems = refresh([word for word in sys.argv[1:] if word != "--accept"], "--accept" in sys.argv)
    print("\n".join(problems) or "all files are as pinned")
    sys.exit(bool(problems))

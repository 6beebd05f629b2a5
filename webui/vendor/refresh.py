"""Refresh the vendored libraries: `refresh.py [NAME...]` gets what vendor.json pins, and checks every hash.

To take a new version, change it in vendor.json and run with `--accept`: the new hashes are written there, and the
difference is yours to read before it is committed; the hash of an archive is typed in by hand. `--prove` writes
nothing: what is made is only compared. A library is fetched with npm, or built from its source: the interpreter from
Debian's package of it, as `webui/interpreter/` says, in a room that `room.sh` there makes; the unpacker from the one
that pip fetches, as `webui/unpacker/` says. Of the face of the figures only the signs are kept that vendor.json names,
cut out by fonttools. Each tool that decides the bytes is pinned too; the same archive and tools give the same bytes.
"""
import hashlib
import importlib.metadata
import json
import os
import shutil
import subprocess
import sys
import tarfile
import tempfile
from collections.abc import Iterable
from pathlib import Path

HERE = Path(__file__).resolve().parent
LIST = HERE / "vendor.json"
PORTS = {"micropython": HERE.parent / "interpreter", "ppmd": HERE.parent / "unpacker"}


def fetched(package: str, version: str, into: Path) -> Path:
    """The unpacked package."""
    done = subprocess.run(["npm", "pack", f"{package}@{version}", "--silent"], cwd=into, check=True,
                          capture_output=True, text=True)
    with tarfile.open(into / done.stdout.strip().splitlines()[-1]) as archive:
        archive.extractall(into, filter="data")
    return into / "package"


def port(name: str) -> dict[str, str]:
    """What a library is built by, beside its archive: each file of its folder here with its SHA-256."""
    return {path.name: hashlib.sha256(path.read_bytes()).hexdigest() for path in sorted(PORTS[name].iterdir())}


def installed(packages: list[str]) -> dict[str, str]:
    """The version of each Debian package that stands in this room; one that does not stand here is left out."""
    asked = ["dpkg-query", "--show", "--showformat", "${Package} ${Version}\n", *packages]
    said = subprocess.run(asked, capture_output=True, text=True).stdout
    return dict(line.split(" ", 1) for line in said.splitlines() if not line.endswith(" "))


def strange(pinned: dict[str, str], here: dict[str, str]) -> list[str]:
    """A line for each tool that is not here in its pinned version."""
    return [f"{tool}: {here.get(tool, 'none')} is not {version}" for tool, version in pinned.items()
            if here.get(tool) != version]


def built(library: dict, into: Path) -> Path:
    """A folder with what is made here of a library's source package, and Debian's licence of it."""
    source = library.get("sdist") or library["source"]
    pinned = f"{source}={'=' * ('sdist' in library)}{library['version']}"
    pip = [sys.executable, "-m", "pip", "download", "--no-deps", "--no-binary", ":all:", "--dest", into, pinned]
    apt = ["apt-get", "source", "--download-only", pinned]
    subprocess.run(pip if "sdist" in library else apt, cwd=into, check=True)
    packed = into / library["archive"]["name"]
    if hashlib.sha256(packed.read_bytes()).hexdigest() != library["archive"]["sha256"]:
        raise SystemExit(f"{packed.name} is not the archive that vendor.json pins")
    with tarfile.open(packed) as opened:
        opened.extractall(into, filter="data")
    (top,) = (path.parent for path in into.glob("*/LICENSE"))
    made = into / "made"
    subprocess.run(["make", f"--jobs={os.cpu_count()}", "-C", PORTS[library["name"]], f"TOP={top}", f"BUILD={made}"],
                   check=True)
    if "source" in library:
        shutil.copy(top / "LICENSE", made / "LICENSE")
    return made


def having(tools: Iterable[str]) -> dict[str, str]:
    """The version of each package of Python that stands beside this one; one that does not is left out."""
    here = {one.name.lower(): one.version for one in importlib.metadata.distributions()}
    return {tool: here[tool] for tool in tools if tool in here}


def cut_out(face: Path, signs: str) -> None:
    """Leave only these signs of a face, in its place, with how they stand beside each other and whose work it is."""
    made = face.with_suffix(".cut")
    subprocess.run([sys.executable, "-m", "fontTools.subset", face, f"--text={signs}", f"--output-file={made}",
                    "--flavor=woff2", "--layout-features=kern,lnum,tnum", "--name-IDs=0,13,14", "--no-hinting",
                    "--notdef-outline"], check=True)
    made.replace(face)


def refresh(names: list[str], accept: bool = False, prove: bool = False) -> list[str]:
    """Copy every pinned file (of `names`, where some are given); hashes and versions of tools that do not fit are
    returned, or accepted. prove: compare only, and leave every file as it stands.
    """
    wrong, listed = [], json.loads(LIST.read_text(encoding="utf-8"))
    for library in listed:
        if names and library["name"] not in names:
            continue
        with tempfile.TemporaryDirectory() as folder:
            if "archive" in library:
                here = installed(list(library["tools"]))
                if accept:
                    library["tools"] |= here
                wrong += strange(library["tools"], here)
                library["port"] = port(library["name"])
                package = built(library, Path(folder))
            else:
                package = fetched(library["package"], library["version"], Path(folder))
            if subset := library.get("subset"):
                here = having(subset["tools"])
                if accept:
                    subset["tools"] |= here
                wrong += strange(subset["tools"], here)
                for file in library["files"]:
                    cut_out(package / file["from"], subset["signs"])
            for file in library["files"]:
                body = (package / file["from"]).read_bytes()
                digest = hashlib.sha256(body).hexdigest()
                if digest != file["sha256"] and not accept:
                    wrong.append(f"{file['path']}: {digest} is not {file['sha256']}")
                    continue
                file["sha256"] = digest
                target = HERE / file["path"]
                if not prove:
                    target.parent.mkdir(exist_ok=True)
                    target.write_bytes(body)
                elif target.read_bytes() != body:
                    wrong.append(f"{target.name}: what stands here is not what is made")
            if not prove and (package / "LICENSE").exists():
                shutil.copy(package / "LICENSE", HERE / library["name"] / "LICENSE")
    if accept:
        LIST.write_text(json.dumps(listed, indent=2) + "\n", encoding="utf-8")
    return wrong


if __name__ == "__main__":
    wishes = {word for word in sys.argv[1:] if word.startswith("--")}
    if not wishes <= {"--accept", "--prove"} or len(wishes) > 1:
        raise SystemExit("refresh.py [NAME...] [--accept | --prove]")
    problems = refresh([word for word in sys.argv[1:] if word not in wishes], "--accept" in wishes, "--prove" in wishes)
    print("\n".join(problems) or "all files are as pinned")
    sys.exit(bool(problems))

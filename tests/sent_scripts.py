"""Writes every script as it is sent into a folder: `sent_scripts.py FOLDER`. `.ci/js` looks at them there."""
import sys
from pathlib import Path

from covemix.server.build import SCRIPTS, TYPES, Build, File


def written(folder: Path, build: Build) -> int:
    """How many they are. The service worker comes without what it is told of a real bundle."""
    scripts = {path: file.body for path, file in build.files.items() if path.endswith(SCRIPTS)}
    scripts["sw.js"] = build.worker(File(b"", TYPES[".bin"])).encode()
    for path, body in scripts.items():
        target = folder / path
        target.parent.mkdir(parents=True, exist_ok=True)
        target.write_bytes(body)
    return len(scripts)


if __name__ == "__main__":
    print(written(Path(sys.argv[1]), Build()), "scripts as they are sent")

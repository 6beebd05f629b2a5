"""Programs of Debian's packages that tests drive, unpacked by `.ci/hosts` or installed: none is started by itself."""
import os
import shutil
from pathlib import Path

import pytest

ROOM = Path(__file__).parents[1] / ".venv" / "hosts"


def program(name: str) -> str:
    """Where a program lies; without it the test is skipped."""
    for folder in ("usr/sbin", "usr/bin", "bin"):
        if (ROOM / folder / name).is_file():
            return str(ROOM / folder / name)
    found = shutil.which(name) or shutil.which(name, path="/usr/sbin:/sbin")
    return found or pytest.skip(f"{name} cannot be had here: run .ci/hosts")


def environment(**more) -> dict[str, str]:
    """With the libraries that came with it."""
    libraries = [str(path) for path in sorted((ROOM / "usr" / "lib").glob("*-linux-gnu*"))]
    return {**os.environ, "LD_LIBRARY_PATH": ":".join(libraries), **more}

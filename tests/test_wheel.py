"""The wheel: installed into an empty environment it serves the same app."""
import json
import re
import shutil
import socket
import subprocess
import sys
import time
import venv
from pathlib import Path

import house
import pytest
from covemix.server.version import VERSION

LONG, STEP = 300, 0.2  # seconds until a program that this starts is given up, and between two looks at it
HOUSE = Path(__file__).resolve().parent.parent
TELL = """
from covemix.server.app import create_app
from covemix.server.build import Build
from starlette.testclient import TestClient
build = Build()
page = TestClient(create_app(build)).get("/?amount=200&system=2-1").text
assert "200 g" in page
print(build.id)
"""


@pytest.fixture(scope="module")
def installed(tmp_path_factory):
    """A fresh environment with nothing but the wheel and what it asks for."""
    shutil.rmtree(HOUSE / "build", ignore_errors=True)  # an older build would be packed with it
    folder = tmp_path_factory.mktemp("wheel")
    subprocess.run([sys.executable, "-m", "pip", "wheel", "--quiet", "--no-deps", "--no-build-isolation",
                    "--wheel-dir", folder, HOUSE], check=True, timeout=LONG)
    venv.create(folder / "venv")
    [wheel] = folder.glob("*.whl")
    subprocess.run([*pip_of(folder / "venv/bin"), "install", "--quiet", "--no-compile", wheel], check=True,
                   timeout=LONG)
    return folder / "venv/bin"


def pip_of(programs):
    """This environment's pip, at work in another: one of its own takes a while to be made."""
    return [sys.executable, "-m", "pip", "--python", programs / "python"]


def test_a_wheel_serves_the_same_build(installed, tmp_path):
    done = subprocess.run([installed / "python", "-c", TELL], cwd=tmp_path, capture_output=True, text=True,
                          timeout=LONG)
    assert done.returncode == 0, done.stderr
    assert done.stdout.strip() == house.build().id


def test_the_wheel_brings_its_command(installed, tmp_path):
    done = subprocess.run([installed / "covemix", "serve", "--help"], cwd=tmp_path, capture_output=True, text=True,
                          timeout=LONG)
    assert "--port" in done.stdout


def test_the_wheel_knows_its_version(installed, tmp_path):
    done = subprocess.run([installed / "covemix", "--version"], cwd=tmp_path, capture_output=True, text=True,
                          timeout=LONG)
    assert done.stdout.strip() == f"covemix {VERSION}"
    known = subprocess.run([*pip_of(installed), "list", "--format=freeze"], capture_output=True, text=True,
                           timeout=LONG).stdout
    assert f"covemix=={VERSION}" in known.splitlines()


def test_the_recipe_of_a_container_starts_what_its_check_finds(installed, tmp_path):
    """Both commands as they stand there, by another port: no container can be built here."""
    recipe = (HOUSE / "docs/hosts/Containerfile").read_text(encoding="utf-8")
    with socket.socket() as free:
        free.bind(("127.0.0.1", 0))
        port = str(free.getsockname()[1])

    def command(found):
        program, *rest = json.loads(found[1])
        return [installed / program, *(one.replace("8000", port).replace("0.0.0.0", "127.0.0.1") for one in rest)]

    start = command(re.search(r"^CMD (.*)$", recipe, re.M))
    check = command(re.search(r"^HEALTHCHECK .*? CMD (.*)$", recipe, re.M))

    def sound():
        return subprocess.run(check, cwd=tmp_path, capture_output=True, timeout=LONG).returncode == 0

    assert re.search(r"^USER (?!root)\w+$", recipe, re.M) and not sound()
    server = subprocess.Popen(start, cwd=tmp_path, stdout=subprocess.DEVNULL)
    try:
        assert any(server.poll() is None and (sound() or time.sleep(STEP)) for _ in range(int(LONG / STEP)))
    finally:
        server.terminate()
    server.wait(LONG)
    assert not sound()

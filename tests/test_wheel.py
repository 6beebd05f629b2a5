"""The wheel: installed into an empty environment it serves the same app."""
import shutil
import subprocess
import sys
import venv
from pathlib import Path

import house
import pytest
from covemix.server.version import VERSION

LONG = 300  # seconds until a program that this starts is given up
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

"""One version, said alike by the package, the command, the API and the changelog."""
import re
import subprocess
import sys

import house
from covemix.server.build import HOUSE
from covemix.server.version import VERSION
from starlette.testclient import TestClient


def test_the_command_and_the_api_say_it():
    asked = [sys.executable, "-m", "covemix.server", "--version"]
    done = subprocess.run(asked, capture_output=True, text=True, check=True)
    assert done.stdout.strip() == f"covemix {VERSION}"
    assert TestClient(house.app()).get("/openapi.json").json()["info"]["version"] == VERSION


def test_the_changelog_starts_with_it():
    newest = re.search(r"^## (\S+) \(\d{4}-\d{2}-\d{2}\)$", (HOUSE / "CHANGELOG.md").read_text(encoding="utf-8"), re.M)
    assert newest and newest.group(1) == VERSION

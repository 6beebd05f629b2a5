"""The service worker case by case, in Node: what is kept, and what is said where it is lost (`tests/node/worker.mjs`).

It stands beside the browser tests (test_offline, test_update, test_evicted), which show that a phone does so. A case
here takes no second, and sets up what no browser can be made to do at will.
"""
import re
import shutil
import subprocess
from pathlib import Path

import pytest
from covemix.server.build import HOUSE

SCRIPT = Path(__file__).parent / "node" / "worker.mjs"
NAMES = re.findall(r'^  "(.+)": async', SCRIPT.read_text(encoding="utf-8"), re.M)
NODE = shutil.which("node") or shutil.which("nodejs")


@pytest.fixture(scope="module")
def told():
    """{case: "ok" or what was wrong}"""
    if NODE is None:
        pytest.skip("there is no Node here: `make test` installs it where it may")
    run = subprocess.run([NODE, str(SCRIPT), str(HOUSE / "webui")], capture_output=True, text=True, check=False,
                         timeout=300)
    found = dict(row.split("\t") for row in run.stdout.splitlines() if "\t" in row)
    assert found, run.stderr
    return found


def test_each_case_is_run(told):
    assert sorted(told) == sorted(NAMES) and len(NAMES) > 20


@pytest.mark.parametrize("name", NAMES)
def test_the_worker_keeps_a_build_whole_and_says_what_is_lost(told, name):
    assert told[name] == "ok"

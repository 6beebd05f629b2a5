"""The service worker case by case, in Node: what is kept, and what is said where it is lost (`tests/node/worker.mjs`).

It stands beside the browser tests (test_offline, test_update, test_evicted), which show that a phone does so. A case
here takes no second, and sets up what no browser can be made to do at will.
"""
import base64
import json
import re
import shutil
import subprocess
from pathlib import Path

import pytest
from covemix.server.build import HOUSE
from covemix.server.packed import packed_bytes, packed_texts

SCRIPT = Path(__file__).parent / "node" / "worker.mjs"
NAMES = re.findall(r'^  "(.+)": async', SCRIPT.read_text(encoding="utf-8"), re.M)
# what comes packed: its text and the type that it is kept with
BUNDLE = json.dumps({"engine": ["shared/a.py"], "pages": ["", "joint/"], "scripts": ["v/1/js/later.js"]}) + (
    "\nA = 1\0<p>start</p>\0<p>joint</p>\0")
LATER = "later\0"
PACKED = {"v/1/app.bin": (packed_texts(BUNDLE.encode(), LATER.encode()), BUNDLE + LATER, "text/plain"),
          "v/1/micropython.bin": (packed_bytes(b"machine"), "machine", "application/wasm")}
NODE = shutil.which("node") or shutil.which("nodejs")


@pytest.fixture(scope="module")
def told():
    """{case: "ok" or what was wrong}"""
    if NODE is None:
        pytest.skip("there is no Node here: `make test` installs it where it may")
    packed = json.dumps({path: [base64.b64encode(sent).decode(), *more] for path, (sent, *more) in PACKED.items()})
    run = subprocess.run([NODE, str(SCRIPT), str(HOUSE / "webui"), packed], capture_output=True, text=True,
                         check=False, timeout=300)
    found = dict(row.split("\t") for row in run.stdout.splitlines() if "\t" in row)
    assert found, run.stderr
    return found


def test_each_case_is_run(told):
    assert sorted(told) == sorted(NAMES) and len(NAMES) > 20


@pytest.mark.parametrize("name", NAMES)
def test_the_worker_keeps_a_build_whole_and_says_what_is_lost(told, name):
    assert told[name] == "ok"

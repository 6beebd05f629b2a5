"""Which browser tests reach which piece of the page's scripts, for `make mutants`: a change is asked of those alone.

Once for each copy of the house all browser tests are run with a mark at the start of each block of each script. A test
that fails with them counts by what it had reached. Their times are kept too: quick ones are asked first.
"""
import functools
import json
import os
import subprocess
import sys
from pathlib import Path

# tells each block once a while: a page may stand from test to test
TELLS = """(() => {
  const now = performance.now.bind(performance), told = new Set();
  let since = 0, left = [];
  const send = () => { const every = left; left = []; globalThis.tellReached?.(every); };
  globalThis.reached = (number) => {
    if (now() > since + 200) { told.clear(); since = now(); }
    if (told.has(number)) return;
    told.add(number);
    if (left.push(number) === 1) queueMicrotask(send);
  };
})();"""


def listen(context, told):
    """From now on what a context's pages reach is told: told(numbers)."""
    context.expose_binding("tellReached", lambda _, numbers: told(numbers))
    context.add_init_script(TELLS)


class Reached:
    """A plugin of pytest: what each test reached, and how long it took, as lines of a file."""

    def __init__(self, place: Path):
        self.place, self.now, self.took = place, set(), 0.0

    def pytest_sessionstart(self):
        from playwright.sync_api import Browser, BrowserType
        for owner, name in (
                (Browser, "new_context"), (Browser, "new_page"), (BrowserType, "launch_persistent_context")):
            setattr(owner, name, self.heard(getattr(owner, name)))

    def heard(self, made):
        """What opens a context, or a page with one of its own: it is listened to."""
        @functools.wraps(made)
        def opened(*words, **more):
            got = made(*words, **more)
            listen(getattr(got, "context", got), self.now.update)
            return got

        return opened

    def pytest_runtest_logreport(self, report):
        if report.when != "teardown":
            self.took = report.duration if report.when == "setup" else max(self.took, report.duration)
            return
        with self.place.open("a", encoding="utf-8") as file:
            file.write(json.dumps([report.nodeid, round(self.took, 2), sorted(self.now)]) + "\n")
        self.now.clear()


def pytest_configure(config):
    """With xdist what runs is in its workers alone."""
    worker = os.environ.get("PYTEST_XDIST_WORKER", "")
    if worker or not config.getoption("numprocesses", None):
        config.pluginmanager.register(Reached(Path(f"reached.{worker or 'all'}.lines")))


def marks(house: Path, files, stryker: Path):
    """file -> its text with marks, and its blocks: [from, to, number of its mark]."""
    run = subprocess.run(["node", "marks.mjs", str(house), *files], cwd=stryker, capture_output=True, text=True,
                         check=True)
    return json.loads(run.stdout)


def ask_all(folder: Path, files, stryker: Path, tests, workers=2):
    """Runs tests in the copy with marks in its scripts -> file -> [[from, to, {test: seconds}]]. The copy is whole
    again when it ends."""
    marked = marks(folder, files, stryker)
    places = {file: folder / "covemix" / file for file in files}
    whole = {file: place.read_text(encoding="utf-8") for file, place in places.items()}
    for old in folder.glob("reached.*.lines"):
        old.unlink()
    for file, place in places.items():
        place.write_text(marked[file]["text"], encoding="utf-8")
    try:
        path = os.pathsep.join((str(folder), str(folder / "tests")))
        subprocess.run(
            [sys.executable, "-m", "pytest", "-q", "-p", "reached", "-p", "no:cacheprovider", "-o", "testpaths=",
             "--force-reruns", "0", "-n", str(workers), *tests], cwd=folder, check=False,
            stdout=subprocess.DEVNULL, env={**os.environ, "PYTHONPATH": path, "PACKED_LIGHTLY": "1"})
    finally:
        for file, place in places.items():
            place.write_text(whole[file], encoding="utf-8")
    found = [json.loads(line) for part in sorted(folder.glob("reached.*.lines"))
             for line in part.read_text(encoding="utf-8").splitlines()]
    by = {}
    for test, took, numbers in found:
        for number in numbers:
            by.setdefault(number, {})[test] = took
    return {file: [[first, last, by.get(number, {})] for first, last, number in marked[file]["blocks"]]
            for file in files}


def tests_of(blocks, first: int, last: int):
    """The tests that reach a place, by the smallest block around it; where it runs as the script is loaded, those that
    reach any of its blocks.

    >>> tests_of([[0, 90, {"a": 2.0, "b": 1.0}], [10, 20, {"a": 2.0}]], 12, 14)
    {'a': 2.0}
    >>> tests_of([[0, 9, {"a": 2.0}], [12, 14, {"b": 1.0}]], 20, 30)
    {'a': 2.0, 'b': 1.0}
    """
    around = [(to - start, tests) for start, to, tests in blocks if start <= first and last <= to]
    return min(around, key=lambda one: one[0])[1] if around else {
        test: took for _, _, tests in blocks for test, took in tests.items()}


def in_order(tests, near):
    """Those of the files named first, in that order; in a file the quick ones first.

    >>> in_order({"t/b.py::x": 2.0, "t/a.py::y": 1.0, "t/a.py::z": 0.5, "t/c.py::v": 9.0}, ["t/a.py", "t/b.py"])
    ['t/a.py::z', 't/a.py::y', 't/b.py::x', 't/c.py::v']
    """
    def turn(test):
        file = test.partition("::")[0]
        return near.index(file) if file in near else len(near), file if file not in near else "", tests[test]

    return sorted(tests, key=turn)

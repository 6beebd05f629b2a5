"""Tests asked many times in a copy of the house, without starting anew each time: for `make mutants` and `make broken`.

One process has loaded pytest, its plugins and all packages that earlier runs needed, but nothing of the house. Each run
is a fork of it: it reads the house as it stands in the copy then, and ends. Tests that were quick before are asked
first, and nothing is shrunk: all that is asked for is whether one of them fails. No compiled file is written: of two
changes within a second the second would be read as the first. A package that starts threads as it is loaded (one of
them is written in Go) is left to each fork: a fork has none of the threads, and would wait for them without end.
"""
import contextlib
import gc
import json
import os
import resource
import shlex
import signal
import subprocess
import sys
import sysconfig
from pathlib import Path

import pytest

HANGS = "it hangs"
QUICK = 0.05  # seconds: tests below that stay in the order of their files


class Forked:
    """Asks tests in the copy `folder` -> (exit code, the first test that failed or "")."""

    def __init__(self, folder: Path):
        subprocess.run([sys.executable, "-m", "compileall", "-q", "covemix", "tests"], cwd=folder, check=False,
                       stdout=subprocess.DEVNULL)
        self.process = subprocess.Popen(
            [sys.executable, str(Path(__file__).resolve())], cwd=folder, text=True, stdin=subprocess.PIPE,
            stdout=subprocess.PIPE, env={**os.environ, "PYTHONPATH": str(folder), "OPENBLAS_NUM_THREADS": "1"})

    def ask(self, tests: str, limit: float):
        """limit: seconds of the processor's time; five times as many may pass. Beyond that the test is called HANGS."""
        self.process.stdin.write(json.dumps([shlex.split(tests), limit]) + "\n")
        self.process.stdin.flush()
        return tuple(json.loads(self.process.stdout.readline()))

    def end(self):
        self.process.stdin.close()
        self.process.wait()
        self.process.stdout.close()


class Quickest:
    """A plugin of pytest: the quick ones first, how long each took, and which failed first."""

    def __init__(self, took):
        self.took, self.failed = took, ""

    def pytest_sessionstart(self):
        from hypothesis import Phase, settings
        settings.register_profile("unshrunk", settings(), phases=(Phase.explicit, Phase.generate))
        settings.load_profile("unshrunk")

    @pytest.hookimpl(trylast=True)
    def pytest_collection_modifyitems(self, items):
        known = {item.nodeid: self.took.get(item.nodeid, 0.0) for item in items}
        items.sort(key=lambda item: known[item.nodeid] if known[item.nodeid] > QUICK else 0.0)

    def pytest_runtest_logreport(self, report):
        before = 0.0 if report.when == "setup" else self.took.get(report.nodeid, 0.0)
        self.took[report.nodeid] = max(report.duration, before)
        self.fails(report)

    def pytest_collectreport(self, report):
        self.fails(report)

    def fails(self, report):
        if report.failed and not self.failed:
            self.failed = report.nodeid


def run(tests, took):
    """One run, in a fork -> what is told of it."""
    watch = Quickest(took)
    code = pytest.main(["-x", "-q", "--assert=plain", "-p", "no:cacheprovider", "-o", "testpaths=", "--force-reruns",
                        "0", *tests], plugins=[watch])
    outside = [name for name, module in list(sys.modules.items()) if outside_of_the_house(module)]
    return {"code": int(code), "failed": watch.failed, "took": watch.took, "outside": outside}


# not all of the environment: a copy of the house may lie in it
INSTALLED = tuple(sysconfig.get_paths()[room] for room in ("stdlib", "platstdlib", "purelib", "platlib"))


def outside_of_the_house(module):
    """Whether it is a package that was installed, or one of Python's own."""
    place = getattr(getattr(module, "__spec__", None), "origin", None) or ""
    return place.startswith(INSTALLED) and "covemix" not in module.__name__


def serve(given, answers):
    """Reads (tests, limit) line by line, and answers each with (code, first that failed)."""
    took, tried = {}, set()
    for line in given:
        tests, limit = json.loads(line)
        gc.collect()
        gc.freeze()
        assert threads() == 1
        back, there = os.pipe()
        child = os.fork()
        if not child:
            os.setpgid(0, 0)
            os.close(back)
            sys.dont_write_bytecode = True
            signal.alarm(int(5 * limit))
            resource.setrlimit(resource.RLIMIT_CPU, (int(limit), int(limit)))
            with open(os.devnull, "r+b") as nothing:
                for one in range(3):
                    os.dup2(nothing.fileno(), one)
            told = json.dumps(run(tests, took))
            with os.fdopen(there, "w") as way:
                way.write(told)
            os._exit(0)
        os.close(there)
        with os.fdopen(back) as way:
            told = way.read()
        _, status = os.waitpid(child, 0)
        with contextlib.suppress(ProcessLookupError):
            os.killpg(child, signal.SIGKILL)  # what a test started and did not end
        if not told:
            over = os.WIFSIGNALED(status) and os.WTERMSIG(status) in (signal.SIGALRM, signal.SIGXCPU, signal.SIGKILL)
            answers.write(json.dumps([2, HANGS if over else ""]) + "\n")
        else:
            told = json.loads(told)
            took.update(told["took"])
            new = {}
            for name in told["outside"]:
                if name not in tried:
                    tried.add(name)
                    new.setdefault(name.partition(".")[0], []).append(name)
            for names in new.values():
                load(names)
            answers.write(json.dumps([told["code"], told["failed"]]) + "\n")
        answers.flush()


def load(names):
    """Modules of a package, for all that are forked later; not where that would start a thread."""
    child = os.fork()
    if not child:
        bring(names)
        os._exit(threads() > 1)
    if os.waitpid(child, 0)[1] == 0:
        bring(names)


def bring(names):
    for name in names:
        with contextlib.suppress(Exception):  # some are loaded by their package alone: they come with it
            __import__(name)


def threads():
    """How many the system counts, those of other languages too."""
    return len(os.listdir("/proc/self/task"))


if __name__ == "__main__":
    answers, sys.stdout = sys.stdout, sys.stderr
    sys.path[:] = [place for place in sys.path if place != str(Path(__file__).resolve().parent)]
    import _hypothesis_pytestplugin  # noqa: F401
    serve(sys.stdin, answers)

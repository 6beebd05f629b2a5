"""What all tests share: checks against something outside the project are asserted and recorded in one call.

`pytest --outside FILE` writes the record as JSON: check, source, expected, got, tolerance and test, in the order met.
"""
import gc
import json
import os
import sys
from decimal import Decimal
from pathlib import Path

import by_day
import dealt
import made_once
import pytest
from covemix.shared.words import written
from hypothesis import HealthCheck, settings

# the same examples each time, and no verdict on the speed of the machine
settings.register_profile("house", derandomize=True, deadline=None, suppress_health_check=[HealthCheck.too_slow])
settings.load_profile("house")

RECORD = pytest.StashKey()


def pytest_addoption(parser):
    parser.addoption("--outside", metavar="FILE", help="write what was checked against the outside as JSON")
    parser.addoption("--day", action="store_true", help="leave out what tests/by_day.py leaves for the night")


def pytest_configure(config):
    gc.set_threshold(50_000, 20, 50)  # a suite leaves little behind that the collector has to find: a tenth of its time
    config.stash[RECORD] = []


@pytest.fixture(scope="session", autouse=True)
def made_once_by_all_workers(tmp_path_factory):
    if "PYTEST_XDIST_WORKER" in os.environ:
        made_once.share(tmp_path_factory.getbasetemp().parent / "made")


def pytest_collection_modifyitems(config, items):
    if config.getoption("--day"):
        items[:], left = by_day.split(items, Path(__file__).parent)
        config.hook.pytest_deselected(items=left)
    items[:] = dealt.dealt(items, getattr(config, "workerinput", {}).get("workercount", 1))


def pytest_sessionfinish(session):
    target = session.config.getoption("--outside")
    if target:
        rows = session.config.stash[RECORD]
        Path(target).write_text(json.dumps(rows, indent=1, ensure_ascii=False) + "\n", encoding="utf-8")


@pytest.fixture(autouse=True, scope="module")
def own_languages():
    """A module that speaks the language that nobody does leaves it behind: the next one counts those of the house."""
    yield
    if "pseudo" in sys.modules:
        sys.modules["pseudo"].hush()


@pytest.fixture
def german(monkeypatch):
    """The name of a language with the marks, units and rules of German and the sentences of English."""
    english, plain = written.sentences("en"), written.sentences
    monkeypatch.setattr(written, "sentences", lambda language: english if language == "de" else plain(language))
    written.reader.cache_clear()
    yield "de"
    written.reader.cache_clear()


# how an outside value is known; docs/CHECKS.md counts them so
KINDS = {
    "printed": "the value stands in the source, in these digits; the tolerance is half of the last of them",
    "library": "an independent library's own answer to the same question",
    "solved": "a library's solver, integral or draw works the equation that the test writes anew",
    "worked": "worked by hand, or the source's formula typed a second time",
    "own": "a second model of our own, or what the product draws, measured: it sees a slip, not a wrong idea",
}


def half_digit(value):
    """Half of the last digit that a number is printed with.

    >>> half_digit(138), half_digit(20.6), half_digit(2e-08)
    (0.5, 0.05, 5e-09)
    """
    return float(Decimal(5).scaleb(Decimal(repr(value)).as_tuple().exponent - 1))


class Outside:
    """outside.printed(check, source, expected, got), and so on for each of KINDS: asserts a value against a source, and
    records it.

    check: a short id ("un-1"); source: title, edition and place, as a reader would look it up
    expected, got: a number, or several in a tuple or list; a text is compared exactly
    rel, absolute: the tolerance, from the digits the source prints; `absolute` replaces `rel` when given
    why: what a tolerance stands on that is wider than half of the last digit of a printed value
    """

    def __init__(self, request):
        self.test, self.rows = request.node, request.config.stash[RECORD]

    def __getattr__(self, kind):
        if kind not in KINDS:
            raise AttributeError(f"a value is one of {', '.join(KINDS)}, not {kind}")
        return lambda *given, **more: self._compare(kind, *given, **more)

    def _compare(self, kind, check, source, expected, got, rel=1e-9, absolute=None, why=""):
        assert source, "an outside check names its source"
        exact = isinstance(expected, str)
        tolerance = "exact" if exact else f"{rel:g} of the value" if absolute is None else f"±{absolute:g}"
        if kind == "printed" and not exact and not why:
            for one in expected if isinstance(expected, (list, tuple)) else [expected]:
                taken = rel * abs(one) if absolute is None else absolute
                half = half_digit(one)
                exact_enough = taken <= max(half, 1e-9 * abs(one))
                assert exact_enough, f"{check}: half of its last digit is {half:g}, not {taken:g}"
        tolerance += f": {why}" if why else ""
        agrees = bool(got == (expected if exact else pytest.approx(
            expected, rel=rel if absolute is None else 0, abs=0 if absolute is None else absolute)))
        if check != "demo":
            told = f"{source} {self.test.function.__doc__ or ''}".lower()
            known = [words for words in ("from memory", "from secondary texts") if words in told]
            self.rows.append({
                "check": check, "kind": kind, "source": source, "known": ", ".join(known), "expected": expected,
                "got": got, "tolerance": tolerance, "agrees": agrees, "test": self.test.nodeid})
        assert agrees, f"{check}: expected {expected} ({tolerance}), got {got}; {source}"


@pytest.fixture
def outside(request):
    """What compares with something outside the project: `Outside`."""
    return Outside(request)

"""What all tests share: checks against something outside the project are asserted and recorded in one call.

`pytest --outside FILE` writes the record as JSON: check, source, expected, got, tolerance and test, in the order met.
"""
import json
from pathlib import Path

import pytest
from covemix.shared.words import written
from hypothesis import HealthCheck, settings

# the same examples each time, and no verdict on the speed of the machine
settings.register_profile("house", derandomize=True, deadline=None, suppress_health_check=[HealthCheck.too_slow])
settings.load_profile("house")

RECORD = pytest.StashKey()


def pytest_addoption(parser):
    parser.addoption("--outside", metavar="FILE", help="write what was checked against the outside as JSON")


def pytest_configure(config):
    config.stash[RECORD] = []


def pytest_collection_modifyitems(items):
    """The longest first: at the end no worker should wait for another."""
    items.sort(key=lambda item: "test_both_runtimes" not in item.nodeid)


def pytest_sessionfinish(session):
    target = session.config.getoption("--outside")
    if target:
        rows = session.config.stash[RECORD]
        Path(target).write_text(json.dumps(rows, indent=1, ensure_ascii=False) + "\n", encoding="utf-8")


@pytest.fixture
def german(monkeypatch):
    """The name of a language with the marks, units and rules of German and the sentences of English."""
    english, plain = written.sentences("en"), written.sentences
    monkeypatch.setattr(written, "sentences", lambda language: english if language == "de" else plain(language))
    written.reader.cache_clear()
    yield "de"
    written.reader.cache_clear()


@pytest.fixture
def outside(request):
    """outside(check, source, expected, got, rel=1e-9, absolute=None): assert a value against a source, and record it.

    check: a short id ("un-1"); source: title, edition and place, as a reader would look it up
    expected, got: a number, or several in a tuple or list; a text is compared exactly
    rel, absolute: the tolerance, from the digits the source prints; `absolute` replaces `rel` when given
    """

    def compare(check, source, expected, got, rel=1e-9, absolute=None):
        assert source, "an outside check names its source"
        exact = isinstance(expected, str)
        tolerance = "exact" if exact else f"{rel:g} of the value" if absolute is None else f"±{absolute:g}"
        agrees = bool(got == (expected if exact else pytest.approx(
            expected, rel=rel if absolute is None else 0, abs=0 if absolute is None else absolute)))
        if check != "demo":
            request.config.stash[RECORD].append({
                "check": check, "source": source, "expected": expected, "got": got, "tolerance": tolerance,
                "agrees": agrees, "test": request.node.nodeid})
        assert agrees, f"{check}: expected {expected} ({tolerance}), got {got}; {source}"

    return compare

"""What asks tests many times for `make mutants` (`forked.py`): each run reads the house as it stands then."""
import json
import os
import sys
from types import SimpleNamespace

import pytest
from forked import HANGS, Forked, outside_of_the_house

TEST = """
import time

import pytest
from covemix.one import twice

def test_slow():
    time.sleep(0.2)
    assert twice(0) == 0

def test_quick():
    assert twice(3) == 6

def test_slow_too():
    time.sleep(0.1)
    assert twice(1) == 2
"""


@pytest.fixture(scope="module")
def house(tmp_path_factory):
    """Asks the test of a house whose one function says this."""
    folder = tmp_path_factory.mktemp("house")
    (folder / "covemix").mkdir()
    (folder / "tests").mkdir()
    (folder / "pytest.ini").write_text("[pytest]\naddopts = --disable-plugin-autoload -p pytest_rerunfailures\n")
    (folder / "tests" / "test_one.py").write_text(TEST)
    place = folder / "covemix" / "one.py"

    def ask(text, limit=20):
        place.write_text(f"def twice(x):\n    {text}\n")
        os.utime(place, (1_700_000_000, 1_700_000_000))  # all of them within one second
        return forked.ask("tests", limit)

    place.write_text("")
    with pytest.MonkeyPatch.context() as patch:
        patch.delenv("PYTHONDONTWRITEBYTECODE", raising=False)
        forked = Forked(folder)
    yield ask
    forked.end()


def test_each_change_is_read_anew_though_it_is_as_long_and_of_the_same_second(house):
    assert house("return x * 2") == (0, "")
    assert house("return x * 3") == (1, "tests/test_one.py::test_quick")  # the slow ones are known by now
    assert house("return x + 2") == (1, "tests/test_one.py::test_quick")
    assert house("return x * 2") == (0, "")
    assert house("return x + x") == (0, "")


def test_what_starts_a_thread_as_it_is_loaded_is_left_to_each_fork(house):
    """minify is written in Go: loaded before, its first answer in a fork would be waited for without end."""
    uses = "import minify; minify.string('text/css', 'a { b: c }'); return x * 2"
    assert [house(uses, limit=4) for _ in range(2)] == [(0, "")] * 2


def test_what_cannot_be_read_or_does_not_end_is_seen(house):
    assert house("return x *")[0] != 0
    assert house("while True: pass", limit=1) == (2, HANGS)
    assert house("return x * 2") == (0, "")


def test_a_copy_of_the_house_in_the_environment_is_not_installed_there():
    """Taken for installed, its modules would be loaded once, before the change, and no test would see any."""
    copied = SimpleNamespace(__name__="facts", __spec__=SimpleNamespace(origin=f"{sys.prefix}/broken/tests/facts.py"))
    assert not outside_of_the_house(copied)
    assert outside_of_the_house(pytest) and outside_of_the_house(json)

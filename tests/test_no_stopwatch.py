"""No test decides by a stopwatch: how long something takes is measured by `make bench`, over pairs, with its spread.

A test that takes the best of eight passes while most of the eight are late; one that takes the worst fails on a busy
machine. What is a promise is asked without a clock: that no old figure stands as a new one, however late the new one is
(tests/browser/test_engine_faults.py), and that a question costs so many steps of the engine (tests/test_costs.py).
"""
import ast
import re
from pathlib import Path

import pytest

HERE = Path(__file__).parent
CLOCKS = re.compile(r"\b(perf_counter|process_time|thread_time|monotonic|performance\.now|time\.time|timeit)\b")
# (file, function): why a clock is read there though nothing is decided by how quick something is
MAY = {
    ("browser/conftest.py", "until"): "a wait that ends",
    ("engines/driver.py", "Engine"): "a wait that ends",
    ("engines/driver.py", "_line"): "a wait that ends",
    ("reached.py", ""): "a block is told again after a while; nothing is decided by how quick one is",
    ("mutants.py", "main"): "a night that ends; no verdict hangs on it",
    ("browser/test_engine_faults.py", "test_normal_key_presses_show_no_mark"):
        "no mark comes too early: a machine that is slow cannot make it fail",
}
ROOMS = sorted(path for path in HERE.rglob("*.py") if path.name != Path(__file__).name)


def readers(text):
    """The functions of a file that read a clock, in Python or in a script that they send; "" for the file itself."""
    tree, found = ast.parse(text), set()
    for node in ast.walk(tree):
        if isinstance(node, (ast.FunctionDef, ast.ClassDef, ast.Module)) and ast.get_docstring(node) is not None:
            node.body[0].value.value = ""
    for node in tree.body:
        if CLOCKS.search(ast.unparse(node)):
            found.add(getattr(node, "name", ""))
    return found


@pytest.mark.parametrize("path", ROOMS, ids=lambda path: path.relative_to(HERE).as_posix())
def test_a_file_of_tests_reads_no_clock(path):
    name = path.relative_to(HERE).as_posix()
    found = {(name, one) for one in readers(path.read_text(encoding="utf-8"))}
    assert found == {key for key in MAY if key[0] == name}


def test_a_clock_is_found_in_a_test_and_in_the_script_that_it_sends():
    best_of = "def test_speed(page):\n    assert min(page.evaluate('performance.now() - was') for _ in range(8)) < 9\n"
    assert readers(best_of) == {"test_speed"}
    assert readers("TOOK = time.perf_counter() - began\n") == {""}
    assert readers('def test_slow():\n    """Says perf_counter."""\n') == set()


def test_the_bench_measures_and_its_ratios_say_their_spread():
    """What is slow at all stands in a table that no test can fail by."""
    paired = (HERE.parent / "bench" / "paired.py").read_text(encoding="utf-8")
    assert "perf_counter" in (HERE.parent / "bench" / "api.py").read_text(encoding="utf-8")
    assert "quantiles" in paired and "min(" not in paired

"""Mutants: what is changed, what is asked, and how a share is told; `make mutants` makes the changes."""
import re
import shlex

import mutants
import pytest
from mutants import BROWSER, DECIDES, HERE, OTHER, Mutant
from scipy.stats import binomtest


@pytest.mark.parametrize("file", mutants.files_of("page") + mutants.files_of("worker"))
def test_each_script_has_browser_tests_that_are_there(file):
    for path in mutants.browser_tests(file).split():
        assert (HERE / path).exists()


def test_each_row_of_the_browser_tests_is_of_a_script_or_a_room():
    assert [place for place in BROWSER if not (HERE / place).exists()] == []


@pytest.mark.parametrize("file", mutants.files_of("engine"))
def test_each_module_of_the_engine_has_tests_near_to_it(file):
    for word in mutants.tests_near(file).split():
        assert word == f"covemix/{file}" or (HERE / word.partition("::")[0]).exists()


def test_what_decides_is_most_of_the_engine_and_each_room_that_keeps_or_warns():
    files = mutants.files_of("engine") + mutants.files_of("page") + mutants.files_of("worker")
    other = {file for file in files if mutants.class_of(file) == OTHER}
    assert len(other) < 0.2 * len(files)
    for file in files:
        if re.search(r"shared/(catalogue|equations|mix|clock/(usable|cure|pot)|safety/(air|cautions)|forms)\b|"
                     r"webui/(sw\.js|js/(kit|store|pots|form|answer|phone|views|offline))", file) and (
                "drawing" not in file):
            assert mutants.class_of(file) == DECIDES, file


def test_a_change_of_a_script_is_asked_of_the_tests_that_reach_it(monkeypatch):
    """All near ones, some minutes of the others; all near ones of a worker, which tells nothing."""
    trial, kit, far = (f"tests/browser/test_{name}.py::test_it[a b]" for name in ("trial", "kit", "joint"))
    blocks = {file: [] for file in mutants.files_of("page")}
    blocks["webui/js/kit/kit.js"] = [[0, 100, {far: 1.0, kit: 2.0, trial: 9.0}], [10, 20, {trial: 9.0}], [30, 40, {}]]
    monkeypatch.setattr(mutants, "blocks_of", lambda folder: blocks)

    def asked(first, last, file="webui/js/kit/kit.js"):
        return mutants.tests_that_reach(None, Mutant(file, 1, "made up", "", "", (first, last, "")))

    assert asked(50, 60) == f"'{kit}' '{trial}' '{far}'"
    assert asked(12, 14) == f"'{trial}'"
    assert asked(32, 33) == ""
    assert asked(200, 210) == asked(50, 60)
    blocks["webui/js/engine/worker.js"] = [[0, 5, {far: 1.0}], [10, 20, {}]]
    for silent in ("webui/js/engine/worker.js", "webui/js/share/decoder.js", "webui/sw.js"):
        assert asked(12, 14, silent) == mutants.browser_tests(silent)
    for name, many in ((kit, 50), (far, mutants.ENOUGH // 10)):
        blocks["webui/js/kit/kit.js"][0][2] = {f"{name}{count}": 10.0 for count in range(50)}
        assert len(shlex.split(asked(50, 60))) == many


def test_a_month_has_one_sample_and_the_next_another():
    every = [Mutant("webui/sw.js", line, "made up", "", "", (line, line + 1, str(which)))
             for line in range(200) for which in range(3)]
    drawn, places = mutants.sample(every, 20, "2026-11 page decides")
    assert places == 200 and len({one.line for one in drawn}) == 20
    assert mutants.sample(every, 20, "2026-11 page decides")[0] == drawn
    assert mutants.sample(every, 20, "2026-12 page decides")[0] != drawn
    assert mutants.sample(every, 500, "2026-11")[1] == len(mutants.sample(every, 500, "2026-11")[0]) == 200


def test_a_change_of_a_script_is_made_where_it_was_found():
    one = Mutant("webui/sw.js", 1, "made up", "b", "BB", (1, 2, "BB"))
    assert mutants.changed(one, "abc") == "aBBc"


@pytest.mark.parametrize(("seen", "tried"), [(81, 263), (15, 148), (0, 20), (29, 29), (7, 8)])
def test_the_interval_of_a_share_is_that_of_scipy(seen, tried):
    """scipy.stats, binomtest, proportion_ci by Wilson's score."""
    least, most = binomtest(seen, tried).proportion_ci(0.95, "wilson")
    assert mutants.interval(seen, tried) == pytest.approx((least, most), abs=1e-4)


def test_the_page_counts_what_was_tried_and_says_what_nothing_saw():
    row = {"file": "shared/mix/ratio.py", "line": 1, "kind": "k", "was": "a < b", "now": "a > b", "put": [],
           "part": "engine", "class": DECIDES}
    tried = [dict(row, seen="x")] * 9 + [dict(row, seen="")]
    found = {"seed": "2026-11", "places": {"engine decides": 900}, "tried": tried}
    page = mutants.page(found)
    assert "| engine: decides | 900 | 10 | 9 | 90 % (60 % to 98 %) | 0 | 90 % (60 % to 98 %) | 95 % |" in page
    assert "| shared/mix/ratio.py | `a < b` | `a > b` | **not yet** |" in page


def test_what_the_page_told_is_kept_and_counted_once():
    """Two small samples are added; of two that share places the larger counts."""
    row = {"file": "shared/mix/ratio.py", "line": 1, "kind": "k", "was": "a < b", "now": "a > b", "put": [],
           "part": "engine", "class": DECIDES}
    old = mutants.page({"seed": "2026-11", "places": {"engine decides": 900},
                        "tried": [dict(row, seen="x")] * 9 + [dict(row, seen="")]})
    told = mutants.told_by(old)
    assert mutants.page(told).replace(" 10 of them were drawn and tried earlier in the month, from the house as it was "
                                      "then.", "") == old
    more = dict(told, tried=[dict(row, file="shared/plan/day.py", seen="x")] * 20)
    page = mutants.page(more)
    assert "| engine: decides | 900 | 30 | 29 | 97 % (83 % to 99 %) | 0 |" in page
    assert "shared/mix/ 10, shared/plan/ 20. 10 of them" in page and "| `a > b` | **not yet** |" in page
    for many, counts in ((80, "| 80 | 80 |"), (40, "| 40 | 40 |")):
        assert counts in mutants.page(dict(told, tried=[dict(row, seen="x")] * many))
    assert "| 10 | 9 |" in mutants.page(dict(told, places={"engine decides": 100}, tried=[dict(row, seen="x")] * 8))


def test_the_page_that_stands_is_read_as_it_is_written():
    text = mutants.PAGE.read_text(encoding="utf-8")
    told = mutants.told_by(text)
    again = mutants.told_by(mutants.page(told))
    assert told["earlier"] == again["earlier"] and told["rooms"] == again["rooms"] and told["rows"] == again["rows"]
    assert sum(many for many, _, _ in told["earlier"].values()) == sum(told["rooms"].values()) > 100

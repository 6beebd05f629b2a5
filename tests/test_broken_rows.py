"""Broken runs: each change of the table still has its place in the product; `make broken` makes them."""
import pytest
from broken_runs import CHANGES, HERE


@pytest.mark.parametrize("change", CHANGES, ids=lambda change: change.what)
def test_a_change_has_its_place_and_its_tests(change):
    assert change.old in (HERE / change.file).read_text(encoding="utf-8")
    assert change.old != change.new
    for path in change.tests.split():
        file, _, test = path.partition("::")
        assert f"def {test.partition('[')[0]}" in (HERE / file).read_text(encoding="utf-8")

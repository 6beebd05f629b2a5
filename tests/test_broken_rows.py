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


def test_the_page_has_a_row_of_each_change_and_nothing_that_was_made_went_unseen():
    """docs/PROOF.md is of this table, and counts what stands in it."""
    rows, left = [], (HERE / "docs" / "PROOF.md").read_text(encoding="utf-8")
    for line in left.splitlines():
        if line.startswith("| ") and not line.startswith("| what was broken"):
            rows.append([cell.strip() for cell in line.split("|")[1:-1]])
    assert [row[:3] for row in rows] == [[one.what, one.file, one.before] for one in CHANGES]
    made = [row[3] for row in rows if row[3] != "not run yet"]
    assert [row for row in made if "::test_" not in row] == []
    assert left.endswith(f"{len(rows)} changes, {len(made)} of them made so far, {len(made)} of these seen.\n")

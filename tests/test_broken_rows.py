"""Broken runs: each change of the table still has its place in the product; `make broken` makes them."""
import pytest
from broken_runs import CHANGES, HERE, PAGE, mark, page, prepared, rows_of, stands, told_by


@pytest.mark.parametrize("change", CHANGES, ids=lambda change: change.what)
def test_a_change_has_its_place_and_its_tests(change):
    assert change.old in (HERE / change.file).read_text(encoding="utf-8")
    assert change.old != change.new
    for path in change.tests.split():
        file, _, test = path.partition("::")
        assert f"def {test.partition('[')[0]}" in (HERE / file).read_text(encoding="utf-8")


def test_the_page_has_a_row_of_each_change_and_nothing_that_was_made_went_unseen():
    """docs/PROOF.md is of this table, as the command writes it, and counts what stands in it."""
    text = PAGE.read_text(encoding="utf-8")
    rows = rows_of(text)
    assert [row[:3] for row in rows] == [[one.what, one.file, one.before] for one in CHANGES]
    made = [row for row in rows if row[3] != "not run yet"]
    assert [row for row in made if "::test_" not in row[3]] == []
    assert text.endswith(f"{len(rows)} changes, {len(made)} of them made so far, {len(made)} of these seen.\n")


def test_what_the_page_tells_as_run_was_run_with_the_change_and_the_tests_of_today():
    text = PAGE.read_text(encoding="utf-8")
    told = told_by(text)
    assert page([(one, told.get(mark(one))) for one in CHANGES]) == text


def test_a_row_counts_no_longer_where_its_change_its_text_or_its_test_is_another():
    one = CHANGES[0]
    seen = "test_which_part.py::test_each_step_names_shows_and_says_its_own_part"
    told = page([(one, (seen, "0d8e2201"))])
    assert told_by(told) == {mark(one): (seen, "0d8e2201")}
    assert told_by(page([(one._replace(new="pass"), (seen, "0d8e2201"))])) == {}
    assert told_by(page([(one._replace(tests="tests/test_run.py"), (seen, "0d8e2201"))])) == {}
    assert told_by(told.replace("says_its_own_part", "is_gone")) == {}
    assert not stands(one._replace(old="no such text"), seen)


def test_the_copy_that_is_broken_has_all_of_the_house_from_its_root_and_from_its_rooms(tmp_path):
    """test_words.py reads DEVELOPERS.md from where the rooms stand: in the copy it could not even be collected."""
    prepared(tmp_path / "copy")
    for path in HERE.iterdir():
        if not path.name.startswith(".") and not path.name.endswith(("cache", ".egg-info")):
            assert (tmp_path / "copy" / path.name).exists() and (tmp_path / "copy" / "covemix" / path.name).exists()

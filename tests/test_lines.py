"""Lines: one shape for every answer, finite, and laid out by what they are."""

import json
from itertools import pairwise

import pytest
from covemix.shared.words import lines
from covemix.shared.words.written import reader
from hypothesis import given
from hypothesis import strategies as st


def test_a_line_is_data_with_every_name_in_it():
    made = [lines.line("a", "A", 1.5, "kg", "1.5 kg", rough="by eye"), lines.words("b", "B", "words", rank=lines.ASK)]
    data = lines.as_data(made, reader())
    assert [sorted(row) for row in data] == [sorted(lines.Line._fields)] * 2
    assert [row["name"] for row in json.loads(json.dumps(data))] == ["a", "b"]
    assert (data[1]["value"], data[1]["unit"]) == (None, "")


@pytest.mark.parametrize("value", [float("nan"), float("inf"), -float("inf")])
def test_no_line_holds_what_is_not_finite(value):
    with pytest.raises(ValueError, match="finite"):
        lines.line("a", "A", value, "kg", "?")


@given(st.lists(st.floats(1e-3, 1e3), min_size=1, max_size=5))
def test_spans_lie_end_to_end_from_nothing_to_all(amounts):
    found = lines.spans(amounts)
    assert found[0][0] == 0 and found[-1][1] == pytest.approx(100, abs=0.011)
    assert all(before[1] == after[0] for before, after in pairwise(found))
    assert all(
        (to - start) == pytest.approx(100 * amount / sum(amounts), abs=0.011)
        for (start, to), amount in zip(found, amounts, strict=True)
    )

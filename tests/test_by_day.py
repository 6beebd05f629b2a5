"""What is left for the night is left on purpose: by names that there are, and nothing that keeps somebody from harm."""
import re
from pathlib import Path

import by_day
import pytest

HERE = Path(__file__).parent
# which part is which, words and limits of safety, first aid, cautions in their place, minutes of a pot, what is refused
FROM_HARM = ("browser/parts_on_screen", "browser/kept_from_harm", "browser/first_aid", "browser/pour", "which_part",
             "one_truth", "pot", "air", "safety", "safety_table", "safety_told", "first_aid", "found_limits",
             "input_limits", "told_marks", "ratio", "thicken", "rescue", "measure", "joint", "surface",
             "elapsed", "hot_pot", "trusted")


@pytest.mark.parametrize("file", by_day.ASKED)
def test_each_name_is_that_of_a_test(file):
    place = HERE / Path(file).parent / f"test_{Path(file).name}.py"
    there = set(re.findall(r"^def test_(\w+)\(", place.read_text(encoding="utf-8"), re.MULTILINE))
    names = set(by_day.ASKED[file]) - {by_day.REST}
    assert names <= there, names - there
    assert all(one_of >= 0 for one_of in by_day.ASKED[file].values())


def test_what_keeps_from_harm_is_asked_by_day():
    for file in FROM_HARM:
        assert (HERE / Path(file).parent / f"test_{Path(file).name}.py").exists(), file
        assert file not in by_day.ASKED

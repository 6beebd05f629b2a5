"""What is shipped is listed with its reason, all of it and nothing else."""
import re

import house
import pytest
from covemix.server.build import BUNDLE

from bench import weight

BUILD = house.build()


@pytest.fixture(scope="module")
def shipped():
    return weight.shipped(BUILD)


def test_every_shipped_file_has_a_size_and_a_reason(shipped):
    assert {path for path, _, _, _ in shipped} == {
        *BUILD.files.keys() - BUILD.later.keys() - BUILD.together.keys(), "sw.js",
        *(f"{one}: {path}" for one, paths in BUILD.together.items() for path in paths),
        *(f"{BUNDLE}: {path}" for path in [*BUILD.engine, *BUILD.later]),
        *(f"{BUNDLE}: {path or './'}" for path in weight.Pages(BUILD).kept())}
    for path, body, sent, why in shipped:
        assert body and sent and len(why) > 8, path


def test_the_page_lists_what_is_shipped_and_nothing_else(shipped):
    listed = re.findall(r"^\| `(.*?)` \|", weight.REPORT.read_text(encoding="utf-8"), re.M)
    rooms = {weight.room_of(path) for path, _, _, _ in shipped}
    assert sorted(listed) == sorted(rooms), "python -m bench.weight writes it anew"

"""The pictures of the pages show what the screens say today: by their words and sizes, whenever they were made.

`make pictures` makes all of them anew; `.venv/bin/python -m browser.pictures ../docs/pictures NAME ...`, said in
`tests`, makes some.
"""
import json
import re

import pytest
from covemix.server.build import HOUSE
from PIL import Image

from .pictures import DRAFTS, FOLDER, SHOWN, Studio, files, shots

LISTED = json.loads((FOLDER / SHOWN).read_text(encoding="utf-8"))
GROUPS = {"phone": lambda shot: "phone" in shot.sizes, "desk": lambda shot: "desk" in shot.sizes,
          "others": lambda shot: "" in shot.sizes}


def first_other(before, now):
    """The first words that are not the same, as they stand in the picture and on the screen."""
    for place, (old, new) in enumerate(zip([*before, None], [*now, None], strict=False)):
        if old != new:
            return f"{old} there, {new} here, {place} of {len(before)}"
    return f"{len(before)} texts there, {len(now)} here"


@pytest.mark.parametrize("group", GROUPS)
def test_each_picture_shows_what_the_screen_says(chromium, standing, group):
    """All words in sight and the size each is set in; light and dark say the same."""
    studio, stale, strips = Studio(chromium, standing.url), [], {}
    for shot in filter(GROUPS[group], shots()):
        size = next(iter(shot.sizes)) if group == "others" else group
        words = strips.get((*shot.paths, shot.strip))
        if not words:
            _, words = studio.taken(shot, size, "light", with_picture=False)
        if shot.strip:
            strips[(*shot.paths, True)] = words
        for file, (own, _) in files(shot).items():
            if own == size and LISTED[file]["words"] != words:
                stale.append(f"{file}: {first_other(LISTED[file]['words'], words)}")
    studio.close()
    assert not stale, "make pictures:\n" + "\n".join(stale)


def test_each_picture_is_made_by_one_command_and_has_the_size_that_is_told_of_it():
    made = {file for shot in shots() for file in files(shot)}
    assert {path.name for path in FOLDER.iterdir()} == made | {*DRAFTS, SHOWN}
    assert LISTED.keys() == made
    for file in made:
        with Image.open(FOLDER / file) as picture:
            assert list(picture.size) == LISTED[file]["size"], file


def test_each_picture_that_is_no_screen_is_shown_by_a_page():
    """What `make pictures` makes of each screen may lie there; any other is there for a page that shows it."""
    paths = (HOUSE / "README.md", *(HOUSE / "docs").glob("*.md"))
    pages = "\n".join(path.read_text(encoding="utf-8") for path in paths)
    shown = set(re.findall(r"pictures/([\w.-]+)", pages))
    others = {file for shot in shots() for file in files(shot) if "" in shot.sizes}
    assert others | set(DRAFTS) <= shown


def test_a_word_that_changed_is_found():
    assert "240 g" in first_other([["Resin", 20], ["240 g", 96]], [["Resin", 20], ["241 g", 96]])
    assert "96" in first_other([["240 g", 96]], [["240 g", 90]])
    assert "None there" in first_other([["240 g", 96]], [["240 g", 96], ["new", 10]])

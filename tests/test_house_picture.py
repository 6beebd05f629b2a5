"""The picture in docs/HOUSE.md is the house as it stands: its rooms, the arrows between them, and its counts."""
import re

from covemix.server.build import HOUSE
from test_page_rooms import ROOMS as PAGE_ROOMS
from test_rooms import FILES, ROOMS, imported, late_asked
from test_rooms_outside import FILES as OUTSIDE
from test_rooms_outside import ids
from test_rooms_outside import imported as imported_outside

PAGE = (HOUSE / "docs" / "HOUSE.md").read_text(encoding="utf-8")
NEAR = 0.1  # of a count that each new module changes


def arrows():
    """{room: rooms that it imports}, of the engine's rooms and of those that stand on it."""
    found = {room: set() for room in ROOMS}
    for path in FILES:
        found[path.parent.name] |= {room for room, _ in imported(path) + late_asked(path) if room} - {path.parent.name}
    for path in OUTSIDE:
        room = ids(path).partition("/")[0]
        names = {names[1] if names[0] == "shared" and len(names) > 1 else names[0] for names in imported_outside(path)}
        found.setdefault(room, set()).update(names & {*ROOMS, "server", "library"} - {room})
    return found


def reached(found, room):
    """All rooms that one stands on, near or far."""
    return found[room] | {below for to in found[room] for below in reached(found, to)}


def drawn_arrows(found):
    """{(from, to)}: an arrow that another way already makes is left out, so that a picture can be read."""
    return {(room, to) for room in found for to in found[room]
            if not any(to in reached(found, other) for other in found[room] - {to})}


def floors(found):
    """How many floors high: a room stands above all that it imports."""
    def floor(room):
        return 1 + max((floor(to) for to in found[room]), default=0)
    return max(floor(room) for room in found)


def test_the_picture_shows_the_rooms_and_their_arrows():
    picture = PAGE.partition("```mermaid\n")[2].partition("```")[0]
    told = {(room, to) for room, to in re.findall(r"^  (\w+) --> (\w+)$", picture, re.M)}
    assert told == drawn_arrows(arrows())


def count(row):
    """The last cell of a row of the table: the house today."""
    return int(re.search(rf"^\| {row} \|.*\| (?:some )?(\d+) \|$", PAGE, re.M)[1])


def test_the_counts_are_those_of_today():
    names = [path for path in FILES if path.name != "__init__.py"]
    in_one = max(sum(path.parent.name == room for path in names) for room in ROOMS)
    assert (count("rooms of the engine"), count("floors of rooms")) == (len(ROOMS), floors(
        {room: to & set(ROOMS) for room, to in arrows().items() if room in ROOMS}))
    assert count("rooms of the page's scripts") == len(PAGE_ROOMS)
    assert abs(count("modules of the engine") - len(names)) <= NEAR * len(names)
    assert abs(count("most modules side by side") - in_one) <= NEAR * in_one


def test_the_circles_that_the_page_counts_are_those_that_tests_look_for():
    """test_rooms.py, test_rooms_outside.py and test_page_rooms.py find each circle, also one hidden in a function."""
    assert count("circles, imports in functions counted") == 0
    found = arrows()
    assert [room for room in found if room in reached(found, room)] == []

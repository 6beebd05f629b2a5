"""The rooms of the page's scripts: DEVELOPERS.md says what each is for and may import, and the imports keep to it."""
import posixpath
import re

import pytest
from covemix.server.build import HOUSE

ROOT = HOUSE / "webui" / "js"
FILES = sorted(path.relative_to(ROOT).as_posix() for path in ROOT.rglob("*.js"))
ENTRANCES = {"main.js", "loader.js", "navigation.js"}  # above all rooms
ROW = re.compile(r"^\| `(\w+)/` \| (.+) \| (.+) \|$", re.M)
# a script that a script names: at its top, by import(), or by the address from which a part or a worker is fetched
NAMED = re.compile(r"""["'`]([\w./-]+\.m?js)["'`]""")
OTHERS = {"sw.js"}  # no module: the service worker


def table():
    """{room: rooms it may import} as DEVELOPERS.md has them, from the door down."""
    text = (HOUSE / "DEVELOPERS.md").read_text(encoding="utf-8")
    part = text.partition("| room of `webui/js/` |")[2].partition("\n\n")[0]
    return {room: set(re.findall(r"`(\w+)/`", may)) for room, _, may in ROW.findall(part)}


ROOMS = table()


def code(text):
    """A script without its comments."""
    return re.sub(r"^\s*//[^\n]*|(?<=[;,{}()\[\]>]) //[^\n]*|/\*.*?\*/", "", text, flags=re.M | re.S)


def imported(path, text):
    """What a script names, as paths below `webui/js/`; a vendored file as it lies below `webui/`."""
    found = set()
    for name in NAMED.findall(code(text)):
        near = posixpath.normpath(posixpath.join("js", posixpath.dirname(path), name))
        if name.startswith("."):
            found.add(near.removeprefix("js/"))
        elif name not in OTHERS:  # an address: a part's from the folder of all rooms, a worker's beside who starts it
            found.add(near.removeprefix("js/") if "/" not in name else name)
    return found


ARROWS = {path: imported(path, (ROOT / path).read_text(encoding="utf-8")) for path in FILES}


@pytest.mark.parametrize(("script", "names"), [
    ('import { a } from "./rows.js";', {"form/rows.js"}),
    ('import "../kit/log.js"; // why', {"kit/log.js"}),
    ('export { a as b } from "../page/notice.js";', {"page/notice.js"}),
    ('const a = () => import("../views/log.js");', {"views/log.js"}),
    ('const PART = "share/sheet.js";\nsoon(PART);', {"share/sheet.js"}),
    ('new Worker(new URL("worker.js", import.meta.url));', {"form/worker.js"}),
    ('import { openDB } from "../../vendor/idb/index.js";', {"vendor/idb/index.js"}),
    ('// import("./rows.js") would be too late\nlet a; // "./rows.js"\n/* "./rows.js" */\nfetch("sw.js");', set()),
    ('// a /* of one line\nimport "./rows.js"; // */', {"form/rows.js"}),
])
def test_every_way_to_name_a_script_is_seen(script, names):
    assert imported("form/some.js", script) == names


def test_every_script_lives_in_a_room_or_is_an_entrance():
    assert {path for path in FILES if "/" not in path} == ENTRANCES
    assert {path.partition("/")[0] for path in FILES if "/" in path} == ROOMS.keys()
    assert max(path.count("/") for path in FILES) == 1


def test_the_rooms_stand_from_the_door_down():
    """So that no two of them need each other."""
    names = list(ROOMS)
    for place, (room, may) in enumerate(ROOMS.items()):
        assert may <= set(names[place + 1:]), f"{room}/ imports what stands above it"


@pytest.mark.parametrize("path", FILES)
def test_a_script_says_first_what_it_is_for(path):
    first = (ROOT / path).read_text(encoding="utf-8").splitlines()[0]
    assert first.startswith("// ") and len(first) > 30


@pytest.mark.parametrize("path", FILES)
def test_the_arrows_point_down(path):
    room = path.rpartition("/")[0]
    for other in ARROWS[path]:
        if other.startswith("vendor/"):
            assert (HOUSE / "webui" / other).exists()
            continue
        assert other in ARROWS, f"{path} names {other}, which is not there"
        to = other.rpartition("/")[0]
        if room:
            assert to == room or to in ROOMS[room], f"{path} imports {other}"


def test_what_a_room_may_import_is_what_it_needs():
    used = {room: set() for room in ROOMS}
    for path, others in ARROWS.items():
        room = path.rpartition("/")[0]
        if room:
            used[room] |= {other.partition("/")[0] for other in others} - {room, "vendor"}
    assert used == ROOMS


def test_a_script_that_leaves_a_rule_out_says_why():
    """A function above 60 lines is split, or says why not (`max-lines-per-function` in tests/js)."""
    left = [line.strip() for path in FILES for line in (ROOT / path).read_text(encoding="utf-8").splitlines()
            if "eslint-disable" in line]
    assert left and [line for line in left if not re.fullmatch(
        r"// eslint-disable-next-line max-lines-per-function -- One function: .{20,}", line)] == []
    assert '"max-lines-per-function": ["error", { max: 60 }]' in (HOUSE / "tests/js/eslint.config.mjs").read_text()


def test_no_circle_of_scripts():
    left = {path: {other for other in others if other in ARROWS} for path, others in ARROWS.items()}
    while True:
        free = [path for path, others in left.items() if not others & left.keys()]
        if not free:
            break
        for path in free:
            del left[path]
    assert sorted(left) == []


def test_a_vendored_library_has_one_script_that_knows_it():
    """Another library in its place is a change of one file."""
    users = {}
    for path, others in ARROWS.items():
        for other in others:
            if other.startswith("vendor/"):
                users.setdefault(other, []).append(path)
    assert users and all(len(paths) == 1 for paths in users.values()), users

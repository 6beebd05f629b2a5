"""Mutants: `make mutants`. One change at a time in a copy of the house, and the tests must see each of them.

`python tests/mutants.py FOLDER [engine|page|worker] [words of a file ...]`. The changes of the engine are made by
cosmic-ray. Those of the page's scripts and of sw.js are found by Stryker's instrumenter, and made here, in the file as
it stands: Stryker itself would put all changes and a switch into what a page and its workers load, which is not what
is sent.

A sample of MANY places that decide, and of a third as many others, is drawn by SEED, which is the month: the same
places for the same program all month long. It is run in the order in which it was drawn, so that what MINUTES cut short
is still a sample. What was found is kept in FOLDER.json: asked again, only what was not seen and what is left is run.
Without FOLDER.json, what docs/MUTANTS.md tells of the same month is kept where a part is named: it was drawn from the
house as it was then. `make mutants` names none, and begins anew. Writes docs/MUTANTS.md.
"""
import datetime
import functools
import json
import math
import os
import random
import re
import shlex
import subprocess
import sys
import time
from collections import Counter, namedtuple
from pathlib import Path

import facts
import pytest
import reached
from broken_runs import HERE, asked, prepared
from forked import HANGS
from mutants_looked_at import LOOKED_AT

SEED = os.environ.get("SEED") or datetime.date.today().strftime("%Y-%m")
MANY = int(os.environ.get("MANY", "150"))
MINUTES = float(os.environ.get("MINUTES", "inf"))
NEAR = bool(os.environ.get("NEAR"))  # asks only the tests near to a change, and leaves the rest of the suite out
PAGE = HERE / "docs" / "MUTANTS.md"
STRYKER = HERE / ".venv" / "js-mutants"
LIMIT = 900  # seconds that the tests of one change may take: what hangs is seen
ENOUGH = 240  # seconds that those may take that reach a piece of a script and are not named for it by BROWSER

# file: from the root; line; kind: the tool's name of it; was, now: the text of that line, and what it becomes; put: how
# the change is made: of the engine (kind, which of its kind), of a script (from, to, text)
Mutant = namedtuple("Mutant", ("file", "line", "kind", "was", "now", "put"))
DECIDES, OTHER = "decides", "other"
FEW = 0.05  # of all places: two samples so small hardly share one
WANTED = {DECIDES: 0.95, OTHER: 0.85}
PARTS = {"engine": "engine", "worker": "sw.js", "page": "scripts of the page"}

# changes that fail on the first float whatever is tested, or that hang on the identity of small numbers: they would
# flatter the score or blur it
CRUDE = ("Bit", "Shift", "FloorDiv", "Mod", "Pow_", "_Pow", "_Is", "Is_", "RemoveDecorator", "Invert", "UAdd")
# of the engine all decides a mass, a minute, a limit, a mark, a caution, a part's name or what is kept, but these
DRAWN = re.compile(r"shared/(drawing/|words/(?!numbers|units|provenance|sourced)|"
                   r"\w+/\w*(drawing|section|leads|hull|cut_lines)\w*\.py)")
# of the page's scripts these do not: they start it, carry it, or choose how it looks
CARRIED = re.compile(r"webui/js/(engine/|page/|main|loader|navigation|share/(qr_code|sheet))")


def class_of(file: str):
    """Which share of a file's changes must be seen."""
    return OTHER if DRAWN.match(file) or CARRIED.match(file) else DECIDES


IN_WORKERS = "/engine/"

# which browser tests touch a script: by its file or its room
BROWSER = {
    "webui/sw.js": "offline update recall first_visit export language",
    "webui/js/answer": "pour parts_on_screen kept_from_harm engine_faults patch boat joint",
    "webui/js/engine": "engine_faults no_engine interpreter picture first_visit pour",
    "webui/js/engine/interpreter.js": "interpreter engine_faults both_runtimes",
    "webui/js/engine/picture.js": "picture interpreter",
    "webui/js/engine/unpack.js": "unpack whole",
    "webui/js/form": "choices units ways link_view kit pour joint made_up_kind",
    "webui/js/form/form.js": "choices units in_hand ways link_view kit pour joint made_up_kind boat",
    "webui/js/form/beside.js": "typed_below choices clock pour",
    "webui/js/form/memory.js": "kept_visit pour choices update kit",
    "webui/js/kit/boat_rolls.js": "boat kit",
    "webui/js/kit/kit.js": "kit trial plan ways",
    "webui/js/kit/putty_batches.js": "pour_along",
    "webui/js/kit/reference.late.js": "files kit",
    "webui/js/kit/rolls.js": "boat kit",
    "webui/js/kit": "kit log evicted kept_from_harm boat ways",
    "webui/js/store": "kit evicted log clock",
    "webui/js/offline": "update offline recall evicted first_visit share",
    "webui/js/main.js": "run pour offline first_visit engine_faults link_view joint whole",
    "webui/js/form/rows.js": "fast_entry boat pour choices units ways",
    "webui/js/page": "language units pour kit choices no_engine",
    "webui/js/page/language.js": "language",
    "webui/js/page/notice.js": "update evicted recall joint kit",
    "webui/js/page/to_safety.js": "first_aid",
    "webui/js/page/whole_keys.js": "whole_keys",
    "webui/js/phone/clocks.js": "clocks run clock kept_from_harm pour_along",
    "webui/js/phone/knocks.late.js": "knock",
    "webui/js/phone/speech.js": "pour_along kept_from_harm unheard language",
    "webui/js/phone/unheard.late.js": "unheard",
    "webui/js/phone/wake_lock.js": "kept_from_harm iphone",
    "webui/js/phone": "kept_from_harm clocks clock pour_along kit",
    "webui/js/pots": "clock clocks kept_from_harm engine_faults share",
    "webui/js/share/numbered.late.js": "cards",
    "webui/js/share/pot_link.js": "clocks clock run",
    "webui/js/share": "share link_view parts_on_screen kept_from_harm boat plan pour_along",
    "webui/js/views": "pour kept_from_harm engine_faults choices",
    "webui/js/views/backup.js": "kit evicted kept_from_harm",
    "webui/js/views/boat.js": "boat together",
    "webui/js/views/clock.js": "clock clocks kept_from_harm",
    "webui/js/views/editor.js": "kit trial ways",
    "webui/js/views/kit.js": "kit units language",
    "webui/js/views/knock.late.js": "knock",
    "webui/js/views/log.js": "log",
    "webui/js/views/plan.js": "plan together",
    "webui/js/views/pour.js": "pour pour_along parts_on_screen",
    "webui/js/views/run.js": "run knock clocks",
    "webui/js/views/steps.js": "pour_along kept_from_harm parts_on_screen scenarios",
    "webui/js/views/trial.js": "trial",
    "webui/js": "pour offline first_visit engine_faults link_view joint whole",
}
# of the engine: what asks a whole room by its result, beside the tests that import the module
ROOMS = {
    "boat": "boat boat_pieces cutting", "catalogue": "safety_table facts found_limits", "clock": "heat cure hot_pot",
    "door": "moves card links", "drawing": "figures", "equations": "reckon",
    "forms": "inputs input_limits links link_names moves",
    "kit": "facts found_limits own_timings own_rates", "mix": "ratio which_part thicken",
    "plan": "plan plan_heat plan_grouping card trusted",
    "pour": "one_truth which_part measure thicken calibration rescue pouring measure_ways figures",
    "safety": "safety safety_table air", "seam": "joint fillet spreader", "things": "properties own_timings leads",
    "files": "files data", "surface": "surface boat_surfaces", "words": "words languages numbers units lines",
}


def tests_near(file: str):
    """What is asked first, as words for pytest: the module's examples, what imports it, what asks its room."""
    if file.startswith("webui/"):
        return browser_tests(file)
    room, stem = Path(file).parent.name, Path(file).stem
    own = [f"covemix/{file}"] if ">>>" in (HERE / file).read_text(encoding="utf-8") else []
    bases = {stem, re.sub(r"_(lines|drawing|leads|found|table|limits)$", "", stem)}
    words = stem.split("_")  # pot_doubt_lines: test_pot_doubt.py, test_pot.py
    named = [*sorted(bases), *("_".join(words[:many]) for many in range(len(words) - 1, 0, -1))]
    found = [f"test_{one}.py" for one in dict.fromkeys(named) if (HERE / f"tests/test_{one}.py").exists()]
    imports = re.compile(rf"from covemix\.shared\.{room}(?:\.(?:{'|'.join(bases)}) import|"
                         rf" import (?:\([^)]*|[^\n(]*)\b(?:{'|'.join(bases)})\b)")
    found += [name for name, text in engine_tests().items() if imports.search(text)]
    rooms = dict.fromkeys([room, *(rooms_using(stem) if room == "equations" else ())])
    found += [f"test_{one}.py" for name in rooms for one in ROOMS[name].split()]
    found += ["test_reckon.py", "test_input_limits.py"]
    if DRAWN.match(file) or stem == "pictograms":
        found += ["test_figures.py", "test_held_figures.py"]
    found = [name for name in found if name != "test_every_fact.py"]
    if room == "catalogue" and stem in facts.MODULES:
        found.append(f"test_every_fact.py::test_what_is_said_follows_each_figure[{stem}]")  # minutes for all of them
    return " ".join([*own, *(f"tests/{name}" for name in dict.fromkeys(found))])


@functools.cache
def rooms_using(equation: str):
    """The rooms of the engine that import a module of equations."""
    used = re.compile(rf"from \.\.equations(?:\.{equation} import| import [^\n]*\b{equation}\b)")
    return sorted({path.parent.name for path in (HERE / "shared").glob("*/*.py")
                   if used.search(path.read_text(encoding="utf-8"))})


def browser_tests(file: str):
    """Those of the script itself, or else of its room."""
    place = next(one for one in (file, *(str(one) for one in Path(file).parents)) if one in BROWSER)
    return " ".join(f"tests/browser/test_{name}.py" for name in BROWSER[place].split())


# what runs a script in Node, without a browser: asked first (tests/test_worker_in_node.py asks the same)
IN_NODE = {"webui/sw.js": "tests/node/worker.mjs"}


def in_node(folder: Path, file: str):
    """The first case that fails in Node, or "" where all of them pass."""
    run = subprocess.run(["node", IN_NODE[file], "covemix/webui"], cwd=folder, capture_output=True, text=True,
                         check=False, timeout=LIMIT)
    rows = [row.split("\t") for row in run.stdout.splitlines() if "\t" in row]
    wrong = [f"{IN_NODE[file]}: {name}" for name, told in rows if told != "ok"]
    return wrong[0] if wrong else "" if rows else "it does not start"


@functools.cache
def engine_tests():
    """The tests that need no browser: name -> text."""
    return {path.name: path.read_text(encoding="utf-8") for path in sorted((HERE / "tests").glob("test_*.py"))}


def tests_that_reach(folder: Path, one: Mutant):
    """The tests that reach the piece of a script where a change is: all near ones, then some minutes of the others; ""
    where none does. What may run in a worker, which tells nothing, is asked of all near ones then."""
    near = tests_near(one.file)
    blocks = blocks_of(folder)[one.file] if one.file in files_of("page") else []
    tests = reached.tests_of(blocks, *one.put[:2])
    if not tests and (not blocks or IN_WORKERS in one.file):
        return near
    taken, left = [], ENOUGH
    for test in reached.in_order(tests, near.split()):
        left -= tests[test]
        if left >= 0 or test.partition("::")[0] in near.split():
            taken.append(test)
    return shlex.join(taken)


@functools.cache
def blocks_of(folder: Path):
    """What is reached in each script, asked once; kept beside the copy as long as no script changes, and no test."""
    files = files_of("page")
    asked_by = (folder / "tests" / "browser").glob("*.py")
    texts = {path.relative_to(folder).as_posix(): path.read_text(encoding="utf-8")
             for path in [*(folder / "covemix" / file for file in files), *asked_by]}
    kept = folder.with_suffix(".reached.json")
    if kept.exists():
        old = json.loads(kept.read_text(encoding="utf-8"))
        if old["texts"] == texts:
            return old["blocks"]
    blocks = reached.ask_all(folder, files, STRYKER, ["tests/browser"])
    kept.write_text(json.dumps({"texts": texts, "blocks": blocks}), encoding="utf-8")
    return blocks


def tests_left(file: str):
    """For a change of the engine that no test near to it saw: the rest of the suite without the browser."""
    if NEAR:
        return ""
    near = tests_near(file).replace("::", " ").split()
    return " ".join(f"tests/{name}" for name in engine_tests() if f"tests/{name}" not in near)


def engine_mutants(files):
    """Every change that cosmic-ray makes in these files, without the crude ones."""
    from cosmic_ray.ast import ast_nodes, get_ast
    from cosmic_ray.plugins import get_operator, operator_names
    kinds = [name for name in operator_names() if not any(word in name for word in CRUDE)]
    kinds = [(name, get_operator(name)()) for name in kinds if not get_operator(name).arguments()]
    for file in files:
        text = (HERE / file).read_text(encoding="utf-8")
        nodes, lines = list(ast_nodes(get_ast(text))), text.splitlines()
        for name, kind in kinds:
            places = [place for node in nodes for place in kind.mutation_positions(node)]
            for number, ((row, _), _) in enumerate(places):
                yield Mutant(file, row, name, lines[row - 1].strip(), "", (name, number, places[number][0]))


def page_mutants(files):
    """Every change that Stryker makes in these scripts."""
    run = subprocess.run(["node", "mutants.mjs", str(HERE), *files], cwd=STRYKER, capture_output=True, text=True,
                         check=True)
    for one in json.loads(run.stdout):
        text = (HERE / one["file"]).read_text(encoding="utf-8")
        was = text[one["from"]:one["to"]]
        yield Mutant(one["file"], one["line"], one["kind"], was, one["put"], (one["from"], one["to"], one["put"]))


def changed(one: Mutant, text: str):
    """The file's text with the change made."""
    if one.file.startswith("webui/"):
        first, last, put = one.put
        return text[:first] + put + text[last:]
    from cosmic_ray.mutating import MutationVisitor
    from cosmic_ray.plugins import get_operator
    return MutationVisitor.mutate_code(text, get_operator(one.put[0])(), one.put[1])


def spelt(one: Mutant):
    """The change with the line that it makes, read from the changed text."""
    old = (HERE / one.file).read_text(encoding="utf-8").splitlines()
    new = changed(one, "\n".join(old) + "\n").splitlines()
    differ = [(was, now) for was, now in zip(old, new, strict=False) if was != now]
    return one._replace(was=differ[0][0].strip(), now=differ[0][1].strip()) if differ else one


def place_of(one: Mutant):
    """Where a change is: of several at one place only one is tried."""
    return one.file, one.put[2] if one.file.startswith("shared/") else (one.put[0], one.put[1])


def sample(mutants, many, seed):
    """So many places, each with one of its changes, in the order in which they were drawn."""
    places = {}
    for one in mutants:
        places.setdefault(place_of(one), []).append(one)
    draw, order = random.Random(seed), sorted(places)
    draw.shuffle(order)
    return [draw.choice(places[place]) for place in order[:many]], len(places)


def interval(seen, tried, z=1.96):
    """Share of all that is seen, 19 of 20 times [-, -]: Wilson's interval of a share.

    >>> [round(one, 4) for one in interval(15, 148)]
    [0.0624, 0.1605]
    """
    if not tried:
        return 0.0, 1.0
    share, square = seen / tried, z * z / tried
    middle = (share + square / 2) / (1 + square)
    half = z / (1 + square) * math.sqrt(share * (1 - share) / tried + square / tried / 4)
    return max(0.0, middle - half), min(1.0, middle + half)


def broken(folder: Path, one: Mutant):
    """The test that saw it, or "" where none did; None where that test fails without the change as well, as a browser
    does at times on a busy machine: such a change is not counted, and asked again."""
    place = folder / "covemix" / one.file
    whole = place.read_text(encoding="utf-8")
    if one.file in IN_NODE:
        place.write_text(changed(one, whole), encoding="utf-8")
        try:
            seen = in_node(folder, one.file)
        finally:
            place.write_text(whole, encoding="utf-8")
        if seen or NEAR:
            return seen
    near = tests_near(one.file)
    script = one.file.startswith("webui/")
    asks = (tests_that_reach(folder, one),) if script else (near, tests_left(one.file))
    for tests in filter(None, asks):
        place.write_text(changed(one, whole), encoding="utf-8")
        try:
            code, failed = asked(folder, tests, limit=LIMIT)
        finally:
            place.write_text(whole, encoding="utf-8")
        if failed == HANGS:
            return HANGS if passes(folder, tests) else None
        if code == pytest.ExitCode.USAGE_ERROR:
            return None  # a test that is not there
        if code:
            # where not even a test begins, any of them shows it
            known = failed.partition("[")[0] or shlex.split(tests)[-1]
            return (failed or "nothing can be asked") if passes(folder, known) else None
    return ""


@functools.cache
def passes(folder: Path, tests: str):
    """Whether these tests pass in the copy as it is."""
    return asked(folder, tests, limit=LIMIT)[0] == 0


def files_of(part: str):
    if part == "worker":
        return ["webui/sw.js"]
    room, end = ("shared", "py") if part == "engine" else ("webui/js", "js")
    found = sorted(path.relative_to(HERE).as_posix() for path in (HERE / room).rglob(f"*.{end}"))
    return [one for one in found if not one.endswith("__init__.py")]


ASKED = {
    True: "The engine is asked of the tests near to a change alone, and `sw.js` in Node alone (`NEAR=1`): what the "
          "rest of the suite would see counts as unseen.",
    False: "The engine is asked of all tests that need no browser, near ones first.",
}


def name_of(one):
    """By what a change is known from run to run: lines may move."""
    return f"{one['file']}: {one['was']} -> {one['now']}"


def percent(share):
    return f"{100 * share:.0f} %"


def said(seen, tried):
    """A share with its interval."""
    low, high = interval(seen, tried)
    return f"{percent(seen / tried)} ({percent(low)} to {percent(high)})" if tried else "-"


def tried_now(found, part, kind):
    return [one for one in found["tried"] if one["part"] == part and one["class"] == kind]


def counted(found, part, kind):
    """(how many were tried, how many of them were seen, how many make a difference that somebody could see, how many
    were tried before FOLDER.json began).

    What the page told before is added to what was tried since while both are few of all places, so that none is counted
    twice; else the larger of both samples counts.
    """
    tried = tried_now(found, part, kind)
    same = sum(not one["seen"] and LOOKED_AT.get(name_of(one), "").startswith("same") for one in tried)
    now = (len(tried), sum(bool(one["seen"]) for one in tried), same)
    before = found.get("earlier", {}).get(f"{part} {kind}", (0, 0, 0))
    few = before[0] + now[0] <= FEW * found["places"].get(f"{part} {kind}", 0)
    counts = [now, before] if few else [max(before, now, key=lambda one: one[0])]
    many, seen, same = (sum(each) for each in zip(*counts, strict=True))
    return many, seen, many - same, before[0] if before in counts else 0


def told_by(text: str):
    """What docs/MUTANTS.md tells: its month, and its counts, places, rooms and rows, as FOLDER.json keeps them."""
    month = re.search(r"The sample is that of ([\w-]+):", text)
    found = {"seed": month[1] if month else "", "tried": [], "places": {}, "earlier": {}, "rooms": {}, "rows": []}
    for part, title in PARTS.items():
        for kind in WANTED:
            row = re.search(rf"^\| {re.escape(title)}: {kind} \|(.*)\|$", text, re.MULTILINE)
            if row:
                cells = [cell.strip().replace(",", "") for cell in row[1].split("|")]
                found["places"][f"{part} {kind}"] = int(cells[0])
                found["earlier"][f"{part} {kind}"] = [int(cells[1]), int(cells[2]), int(cells[4])]
    rooms = re.search(r"^Tried so far, by room: ([^.]*)\.", text, re.MULTILINE)
    for room in rooms[1].split(", ") if rooms and rooms[1] else []:
        name, _, count = room.rpartition(" ")
        found["rooms"][name.rstrip("/")] = int(count)
    found["rows"] = [line for line in text.partition("## Not seen")[2].splitlines()[4:] if line.startswith("| ")]
    return found


HEAD = """# Would a test see it?

Written by `make mutants`. It changes one thing at a time in a copy of the house (a sign, a number, a comparison, a
branch that is never taken), and asks the tests whether they see it. The changes of the engine are those of cosmic-ray,
those of the page's scripts and of `sw.js` are those of Stryker.
{asked} A script is asked of the browser tests that reach the changed piece, first of those that `BROWSER` of
`tests/mutants.py` names; `sw.js` in Node first.

The sample is that of {seed}: each month's is drawn anew, by its name as the seed. Of several changes at one place one
is tried. In brackets: where the share of all places lies, 19 of 20 times. "Decides" is what decides a mass, a minute, a
limit, a mark, a caution, a part's name, or what is kept. "The same" is a change with which the program does the same,
so that nobody can see it.

| of | places | tried | seen | share | the same | share without those | wanted |
|---|---|---|---|---|---|---|---|"""
FOOT = """
## Not seen, looked at one by one

| file | was | becomes | looked at |
|---|---|---|---|"""


def page(found):
    """docs/MUTANTS.md."""
    rows, unseen, before = [], [], 0
    for part, title in PARTS.items():
        for kind, text in ((DECIDES, "decides"), (OTHER, "other")):
            tried, seen, differ, told = counted(found, part, kind)
            if part == "worker" and kind == OTHER:
                continue  # all of it decides what is kept
            places = found["places"].get(f"{part} {kind}", 0)
            rows.append(f"| {title}: {text} | {places:,} | {tried} | {seen} | {said(seen, tried)} | "
                        f"{tried - differ} | {said(seen, differ)} | {percent(WANTED[kind])} |")
            unseen += [one for one in tried_now(found, part, kind) if not one["seen"]]
            before += told
    looked = [(one["file"], cell(one["was"]), cell(one["now"]), LOOKED_AT.get(name_of(one), "**not yet**"))
              for one in sorted(unseen, key=name_of)]
    rooms = Counter(one["file"].rpartition("/")[0] for one in found["tried"]) + Counter(found.get("rooms", {}))
    where = "Tried so far, by room: " + ", ".join(f"{room}/ {count}" for room, count in sorted(rooms.items())) + "."
    if found.get("vain"):
        where += (f" {len(found['vain'])} more are not counted: the test that failed with them failed without them "
                  "too, as a browser does at times on a busy machine.")
    if before:
        where += f" {before} of them were drawn and tried earlier in the month, from the house as it was then."
    lines = [f"| {' | '.join(row)} |" for row in looked]
    lines = sorted({*lines, *(found.get("rows", []) if before else [])})
    return "\n".join((HEAD.format(asked=ASKED[NEAR], seed=found["seed"]), *rows, "", where, FOOT, *lines)) + "\n"


def cell(text):
    """A piece of a program in a table: one line, cut where it is long."""
    flat = " ".join(text.split()).replace("|", "\\|").replace("`", "'")
    return f"`{flat if len(flat) <= 110 else flat[:107] + '...'}`"


def main(folder: Path, words):
    named = [word for word in words if word in PARTS]
    parts = named or list(PARTS)
    words = [word for word in words if word not in PARTS]
    kept = folder.with_suffix(".json")
    found = {"seed": SEED, "tried": [], "places": {}}
    if kept.exists():
        found = json.loads(kept.read_text(encoding="utf-8"))
    elif named and told_by(PAGE.read_text(encoding="utf-8"))["seed"] == SEED:
        found = told_by(PAGE.read_text(encoding="utf-8"))
    assert found["seed"] == SEED, f"{kept} is of {found['seed']}: put it away first"
    prepared(folder)
    known = {(one["file"], json.dumps(one["put"])): one for one in found["tried"]}
    left = []
    for part in parts:
        make = engine_mutants if part == "engine" else page_mutants
        for kind in (DECIDES, OTHER):
            files = [file for file in files_of(part) if class_of(file) == kind]
            many = MANY if kind == DECIDES else max(1, MANY // 3)
            drawn, found["places"][f"{part} {kind}"] = sample(make(files), many, f"{SEED} {part} {kind}")
            left += [(turn / len(drawn), part, kind, one) for turn, one in enumerate(drawn)]
    end = time.monotonic() + 60 * MINUTES
    for _, part, kind, one in sorted(left, key=lambda row: row[0]):
        old = known.get((one.file, json.dumps(one.put)))
        if old:
            old.update(was=spelt(one).was, now=spelt(one).now)
        done = old and (old["seen"] or LOOKED_AT.get(name_of(old), "").startswith("same"))
        if done or (words and not any(word in one.file for word in words)):
            continue
        if time.monotonic() > end:
            break
        one = spelt(one)
        new = {**one._asdict(), "part": part, "class": kind, "seen": broken(folder, one)}
        vain = [name for name in found.get("vain", []) if name != name_of(new)]
        found["vain"] = vain + [name_of(new)] * (new["seen"] is None)
        if new["seen"] is None:
            print(f"{one.file}:{one.line} {one.kind}: asked in vain, its test fails without it too", flush=True)
            continue
        found["tried"] = [other for other in found["tried"] if other is not old] + [new]
        kept.write_text(json.dumps(found, indent=1), encoding="utf-8")
        print(f"{one.file}:{one.line} {one.kind}: {new['seen'] or 'NOTHING SAW ' + name_of(new)}", flush=True)
    kept.write_text(json.dumps(found, indent=1), encoding="utf-8")
    PAGE.write_text(page(found), encoding="utf-8")
    return [f"{part} {kind}" for part in PARTS for kind in WANTED
            if interval(*counted(found, part, kind)[1:3])[1] < WANTED[kind]]


if __name__ == "__main__":
    short = main(Path(sys.argv[1]).resolve(), sys.argv[2:])
    sys.exit(short and f"surely below what is wanted: {', '.join(short)}")

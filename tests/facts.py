"""The engine with figures of the catalogue changed: what is said then, and which question tells of which figure.

Each change is read in a process of its own: what is imported there takes the changed rows, so a figure that was
copied into a default, a label or a text at import shows up as well. `make facts` changes every figure of the catalogue,
one at a time, looks for a question whose answer follows, and writes them to facts_asked.json, which the tests ask.
"""
import ast
import importlib.abc
import importlib.util
import json
import os
import pickle
import random
import re
import sys
from collections import namedtuple
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path

from covemix.shared.catalogue.sources import SOURCES

CATALOGUE = Path(__file__).resolve().parent.parent / "shared" / "catalogue"
PACKAGE = "covemix.shared."
SENTENCES = (PACKAGE + "words.written", PACKAGE + "words.languages")  # read once, and no figure of a row in them
ASKED = Path(__file__).resolve().parent / "facts_asked.json"
# a figure as it stands in the source: where, what it is, what it becomes upward and downward, and far away
Figure = namedtuple("Figure", ("module", "place", "line", "start", "end", "text", "up", "down", "far_up", "far_down"))
WAYS = Figure._fields[-4:]
# drawings, words, and what says where a fact comes from
NO_FACTS = ("__init__", "marks", "sources", "titles", "pictograms", "recalled", "tasks")
MODULES = [path.stem for path in sorted(CATALOGUE.glob("*.py")) if path.stem not in NO_FACTS]
# a text that a field reads: a number first, then more of them or a unit
TYPED = re.compile(r"[\d.]+( : [\d.]+)*( [A-Za-z°/²³0-9]+)?$")
# typed in another unit or as a fraction: not to be told from a figure of a row
ODD = re.compile(r"[^\x00-\x7f]|deg ?F|\d ?[fF]\b|\d/\d|\d ?[kK](elvin)?\b")


def figures(module):
    """The figures of a module of the catalogue, in their order: numbers, and those in texts that a field reads."""
    whole = (CATALOGUE / (module + ".py")).read_bytes()
    starts = [0]
    for row in whole.split(b"\n"):
        starts.append(starts[-1] + len(row) + 1)
    found = []
    for start, end, line in sorted(_places(ast.parse(whole), starts)):
        piece = whole[start:end].decode()
        if piece[0] in "\"'":
            found += [(start + hit.start(), start + hit.end(), line, True)
                      for hit in re.finditer(r"(?<![\w.])\d[\d.]*", piece)]
        else:
            found.append((start, end, line, False))
    return [Figure(module, place, line, start, end, whole[start:end].decode(),
                   *[change(whole[start:end].decode(), way, typed) for change in (_other, _far) for way in (1, -1)])
            for place, (start, end, line, typed) in enumerate(found)]


def every_figure():
    """All figures of all modules that state facts."""
    return [figure for module in MODULES for figure in figures(module)]


def name(figure):
    """How a figure is called in facts_asked.json: it stays when rows are added that say other figures."""
    same = [other for other in figures(figure.module) if other.text == figure.text]
    return f"{figure.module}: {figure.text}" + (f", {same.index(figure) + 1}" if len(same) > 1 else "")


def named():
    """All figures of all modules by their names."""
    found = {}
    for module in MODULES:
        own = figures(module)
        texts = [figure.text for figure in own]
        for place, figure in enumerate(own):
            same = f", {texts[:place + 1].count(figure.text)}" if texts.count(figure.text) > 1 else ""
            found[f"{module}: {figure.text}{same}"] = figure
    return found


def _places(tree, starts):
    """(start, end, line) of each number that a table states, and of each text that a field reads."""
    def at(node):
        return starts[node.lineno - 1] + node.col_offset, starts[node.end_lineno - 1] + node.end_col_offset, node.lineno

    def walk(node):
        if isinstance(node, (ast.FunctionDef, ast.Subscript)):
            return  # no row
        if isinstance(node, ast.Assign) and getattr(node.targets[0], "id", "") == "TABLES":
            return  # it names rows and their columns
        if isinstance(node, ast.Tuple) and ast.unparse(node) == "(4, step)":
            return  # `messages.number` of a name
        if isinstance(node, ast.Constant) and isinstance(node.value, str):
            if TYPED.match(node.value) and node.value not in SOURCES:
                yield at(node)
        elif _is_number(node):
            yield at(node)
        elif isinstance(node, ast.BinOp):  # a number beside a name only turns a unit: WIDTH / 1000
            for below in (node.left, node.right):
                if not _is_number(below):
                    yield from walk(below)
        else:
            for below in ast.iter_child_nodes(node):
                yield from walk(below)
    return walk(tree)


def _is_number(node):
    """A number, or one that is worked out from numbers: 12 * 3600.0, 1 / 3."""
    if isinstance(node, ast.BinOp):
        return _is_number(node.left) and _is_number(node.right)
    if isinstance(node, ast.UnaryOp):
        return _is_number(node.operand)
    return isinstance(node, ast.Constant) and type(node.value) in (int, float)


def _other(text, way, typed):
    """Another figure of the same kind, so far off that it is told otherwise: what is whole stays whole."""
    value = eval(text)
    if re.fullmatch(r"[234]\d\d\.15", text):  # a temperature
        return f"{value + 1.5 * way:.2f}"
    if isinstance(value, int) and (typed or value < 100):
        return str(value + (way * max(1, round(value * 0.13)) if value > 1 else 1))
    new = (value + 1) / 2 if way > 0 and 0.7 < value < 1 else value * (1.31 if way > 0 else 0.76)
    if re.fullmatch(r"\d+\.\d+|\.\d+", text):  # one digit more than it has
        return f"{new:.{len(text.partition('.')[2]) + 1}f}"
    return str(round(new)) if isinstance(value, int) else repr(float(f"{new:.6g}"))


def _far(text, way, typed):
    """A figure that crosses what a question may have typed."""
    value = eval(text)
    if re.fullmatch(r"[234]\d\d\.15", text):
        return f"{value + 22 * way:.2f}"
    if isinstance(value, int):
        return str(value * 4 if way > 0 else max(1, value // 6))
    new = 0.97 if way > 0 and 0.3 < value < 0.97 else value * (4 if way > 0 else 0.1)
    return repr(float(f"{new or way:.6g}"))


class World(importlib.abc.MetaPathFinder, importlib.abc.Loader):
    """Finds the engine's modules: those of the catalogue as they were changed, all others compiled once."""

    def __init__(self, changes=(), codes=None):
        self.codes = {} if codes is None else dict(codes)
        for module in {figure.module for figure, _ in changes}:
            text = (CATALOGUE / (module + ".py")).read_bytes()
            for figure, new in sorted(changes, key=lambda change: -change[0].start):
                if figure.module == module:
                    text = text[:figure.start] + new.encode() + text[figure.end:]
            self.codes[PACKAGE + "catalogue." + module] = compile(text, module + ".py, changed", "exec")

    def find_spec(self, name, path, target=None):
        return importlib.util.spec_from_loader(name, self) if name in self.codes else None

    def create_module(self, spec):
        return None

    def exec_module(self, module):
        exec(self.codes[module.__name__], module.__dict__)


def compiled():
    """The code of every module of the engine by its name; the sentences are read beside it."""
    importlib.import_module(PACKAGE + "words.written").sentences("en")
    found = {}
    for path in CATALOGUE.parent.rglob("*.py"):
        if path.name not in ("__init__.py", "written.py", "languages.py"):
            name = PACKAGE + ".".join(path.relative_to(CATALOGUE.parent).with_suffix("").parts)
            found[name] = importlib.util.spec_from_file_location(name, path).loader.get_code(name)
    return found


def said(changes, work, codes):
    """What work() gives where these figures are changed: [(figure, text)]. codes: of `compiled`"""
    reads, writes = os.pipe()
    child = os.fork()
    if not child:
        try:
            os.close(reads)
            for name in [name for name in sys.modules if name.startswith(PACKAGE) and name not in SENTENCES]:
                del sys.modules[name]
            try:
                sys.meta_path.insert(0, World(changes, codes))
                found = work()
            except Exception as broken:
                found = f"raised {type(broken).__name__}: {broken}"
            with os.fdopen(writes, "wb") as out:
                pickle.dump(found, out)
        finally:
            os._exit(0)
    os.close(writes)
    with os.fdopen(reads, "rb") as given:
        text = given.read()
    os.waitpid(child, 0)
    return pickle.loads(text)


def ask(text):
    """The answer to a question, or what a form holds: {"form": move, "units": system}; in this process."""
    question = json.loads(text)
    if "form" in question:
        moves = importlib.import_module(PACKAGE + "door.moves")
        reader = importlib.import_module(PACKAGE + "words.written").reader
        return json.dumps([item.about(reader(question["units"])) for item in moves.module(question["form"]).INPUTS])
    return importlib.import_module(PACKAGE + "door.call").call(text)


def forms():
    """What each form holds, in both systems of units, as questions."""
    from covemix.shared.door import moves
    return [json.dumps({"form": move, "units": system}) for move in moves.names() for system in ("metric", "us")]


def questions(count, seed=11):
    """So many questions of each move but the sources, most of which have an answer, and the forms of all moves."""
    import cases
    from covemix.shared.door import moves
    found = []
    for move in moves.names():
        if move == "sources":
            continue
        draw, kept, tree = random.Random(f"{move}-{seed}"), 0, {}
        for place in range(8 * count):
            text = json.dumps({"move": move, "typed": tree}, ensure_ascii=False)
            tree = cases.tree(moves.module(move).INPUTS, draw)
            if kept < count and not ODD.search(text) and (place % 5 == 0 or not json.loads(ask(text))["errors"]):
                found.append(text)
                kept += 1
    return found + forms()


def differing(changes, pool, before, codes, first=False):
    """The places of the questions whose answers these changes alter, or words where the engine broke there.

    pool: {place: question}; first: no further than the first of them
    """
    def work():
        found = []
        for place, text in pool.items():
            if ask(text) != before[place]:
                found.append(place)
                if first:
                    break
        return found
    return said(changes, work, codes)


# figures that no answer follows: module, the row's first words or figures, whether its first figure too, why
NOT_FOLLOWED = (
    ("containers", r"MEMORY|COMMON|JUDGED|PUBLISHED", False, "how far a figure may be off, for who looks it up"),
    ("containers", r'"too_hot"', True, "how far a remembered figure may be off, for who looks it up"),
    ("containers", r'"(bead|roll|film)", ', False, "nothing between the matter and the wood or the air: no wall"),
    ("losses", r"Fact", False, "how far a remembered figure may be off, for who looks it up"),
    ("glass", r"^(FOR_BUYING|SKILLED|EQUAL_MASSES)", False, "how far a remembered figure may be off"),
    ("pot_life", r'"(share|film share)"', False, "how far a remembered figure may be off"),
    ("pot_life", r'"film share"', True, "of a film whose label gives a time to the gel: tests/test_heat.py"),
    ("fillers", r"^SPHERE_PACKING", False, "how far a remembered figure may be off"),
    ("fillers", r"^FAR", True, "the lower side: of batches that are weighed, tests/test_thicken.py"),
    ("sunlight", r".", True, "no question of the list says a sun: tests/test_sun.py asks each sun, surface and cover"),
    ("ratios", r"^(SOON|WARM)", True, "of a system with its shelf typed: tests/test_shelf.py"),
    ("plans", r"^LEAST_TAPE", True, "of a run that is late: tests/test_run.py"),
    ("damp", r"^SKY", False, "how far a remembered figure may be off"),
    ("cure_times", r"^POINTS_GAP", True, "of temperatures over more than a day: tests/test_cure.py"),
    ("dusts", r'TOTAL, 15e-6|"silica", TOTAL|"full"', True,
     "another source's figure, never the strictest; a mask to look up"),
    ("solvents", r"UPPER", True, "the upper limit is looked up: nobody reckons with it, and below it is not safe"),
    ("solvents", r'"butanone", DENSITY', True, "to look up: grams are typed"),
    ("cautions", r"from-hot|from-least-peak|from-short|from-few-changes|from-small-room|from-cold", True,
     "told by the page's caution alone: tests/test_safety.py"),
    ("joints", r"^THIN_COVER", True, "of an edge that is rounded off wide: tests/test_joint.py"),
    ("measuring", r"^TALLEST|^ALIKE", True, "of a narrower cup, of a step that ties: tests/test_measure_ways.py"),
    ("plans", r"^MOST_|^WIDEST|^POINTS_GAP|^BEFORE|^COOLER", True,
     "of days and boats too long to be asked here: tests/test_plan.py, tests/test_boat.py"),
    ("pots", r"^AWAY|^CLOCKS_APART|^ROUGHLY", True, "of two looks at one clock: tests/test_elapsed.py"),
    ("rates", r"^AT_ONCE|^BEHIND|vertical|overhead", True, "of batches that were tapped: tests/test_plan.py"),
)


def why_not(figure):
    """Why no answer follows a figure, or ""."""
    row = (CATALOGUE / (figure.module + ".py")).read_text(encoding="utf-8").split("\n")[figure.line - 1]
    first = next(other for other in figures(figure.module) if other.line == figure.line) == figure
    return next((why for module, words, also_first, why in NOT_FOLLOWED
                 if module == figure.module and re.search(words, row) and (also_first or not first)), "")


def main(modules):
    """Changes every figure of these modules, writes which question follows it, and names those that none follows."""
    codes = compiled()
    known = json.loads(ASKED.read_text(encoding="utf-8")) if ASKED.exists() else {"questions": [], "of": {}}
    # what is known to tell of something first, then what is short
    pool = dict.fromkeys([*known["questions"], *OWN, *sorted(questions(MANY), key=len)])
    pool = dict(enumerate(pool))
    before = {place: ask(text) for place, text in pool.items()}
    found = {}

    def one_module(module):
        own, near = figures(module), set()
        for way in WAYS:  # all at once: what else could follow one of them
            near.update(place for place in differing([(figure, getattr(figure, way)) for figure in own], pool, before,
                                                     codes) if isinstance(place, int))
        near = {place: pool[place] for place in pool if place in near}
        for figure in own:
            for new in figure[-4:]:
                places = differing([(figure, new)], near, before, codes, first=True)
                if places and not isinstance(places, str):
                    found[figure] = places[0], new
                    break
        print(module, len(own), "figures,", len(near), "questions near", flush=True)

    with ThreadPoolExecutor(os.cpu_count()) as many:
        list(many.map(one_module, modules))
    of = {name(figure): (place, new) for figure, (place, new) in found.items()}
    of.update({figure: row for figure, row in known["of"].items() if figure.partition(":")[0] not in modules})
    used = sorted({place for place, _ in of.values()})
    of = {figure: [used.index(place), new] for figure, (place, new) in of.items()}
    ASKED.write_text(json.dumps({"questions": [pool[place] for place in used], "of": dict(sorted(of.items()))},
                                indent=1, ensure_ascii=False) + "\n", encoding="utf-8")
    for figure in every_figure():
        if figure.module in modules and figure not in found:
            print(f"{figure.module}.py:{figure.line}: {figure.text} followed by no answer:", why_not(figure) or "WHY?")
    print(f"{len(of)} figures are followed, by {len(used)} questions")


MANY = 6  # questions of each move, beside those below
POT = {"by_weight": "100:40", "pot_time": "20", "pot_mass": "100", "pot_temperature": "25"}
START = 1700000000
POT_RUNS = {"started": str(START), "duration": "40", "steps": [{"name": "Place", "minute": "9"}]}
PIECES = [{"length": "8", "putty": "60", "wet": "120"}] * 4
CUP = {"air": "20", "readings": [{"minute": minute, "temperature": shows} for minute, shows in (
    ("3", "21"), ("13", "24"), ("22", "31"), ("28", "44"), ("33", "80"), ("37", "150"), ("49", "125"), ("61", "95"),
    ("83", "58"))]}
TRIED = "thick 1200 s, doubt 9 %, mass 100 g, air 23.5 °C, loss 140 %, heat 90 %"
BOTH = {"by_volume": "3:1", "densities": "1.15:0.98"}
OWN = tuple(json.dumps(
    {"screen": move[1:], "pairs": list(typed.items())} if move[0] == "/" else {"move": move, "typed": typed}
) for move, typed in (
    # questions for figures that few answers rest on
    *[("air", dict(solvent=solvent, solvent_mass="40", wiping="20", air_temperature="18"))
      for solvent in ("acetone", "isopropanol", "ethanol", "butanone")],
    *[("air", dict(dust=dust)) for dust in ("wood-flour", "silica", "cotton", "milled-glass", "talc", "sanding-epoxy",
                                            "sanding-glass", "sanding-wood", "quartz", "sanding-cedar",
                                            "phenolic-balloons")],
    ("coats", {"lie": "leans"}), ("fairing", {"work": "fair"}), ("fillets", {"work": "fillet"}),
    ("gluing", {"work": "scarf", "scarf_of": "wood"}), ("gluing", {"work": "gap"}),
    ("gluing", {"work": "laminate", "bend": "0.5 m"}),
    ("joint", {"kind": "both", "panel": "solid", "grain": "along"}),
    ("joint", {"kind": "both", "thickness": "4", "grain": "along", "layers": [{"width": "120", "weight": "200"}]}),
    *[("air", dict(draught=draught, solvent="acetone", solvent_mass="9")) for draught in ("shut", "one")],
    *[("cure", dict(air="18", system={"by_weight": "100:30", "speed": speed})) for speed in ("fast", "slow")],
    ("cure", dict(air="18", course="day", high="22", low="9", mixed_at="10:00")),
    *[("cure", dict(air="19", hull_colour=colour)) for colour in ("white", "mid", "dark")],
    ("cure", dict(air="20")),
    ("trial", CUP),
    ("trial", dict(CUP, readings=CUP["readings"][:6], strings_at="34", hottest_at="41")),
    ("trial", dict(air="20", strings_at="22", system=dict(POT, trials=TRIED))),
    *[("trial", dict(air="20", readings=[{"minute": minute, "temperature": shows} for minute, shows in rows]))
      for rows in ((("5", "22"), ("10", "47"), ("12", "44"), ("14", "49.5")), (("5", "14.9"), ("20", "30")),
                   (("5", "21"), ("20", "22"), ("40", "23"), ("60", "24")),
                   (("2", "21"), ("12", "28"), ("18", "40")))],
    ("trial", dict(air="20", strings_at="5", readings=[{"minute": "20", "temperature": "22"},
                                                       {"minute": "30", "temperature": "23"}])),
    ("heat", dict(air="20", batch="150", system=dict(POT, trials=TRIED))),
    ("aid", {}),
    ("measure", dict(amount="240", system={"by_volume": "3:1", "weighed": "23.1:19.4"})),
    ("cure", dict(air="12", post_to="40", post_for="17")),
    ("cure", dict(air="12", post_to="45", post_for="30")),
    ("cure", dict(air="12", post_to="75", post_for="30")),
    *[("heat", dict(air="20", batch="150", container=kind, system=POT))
      for kind in ("cup", "bag", "tray", "bead", "roll", "film")],
    *[("heat", dict(air="20", system={"by_weight": "100:40", "pot_time": "20", "pot_mass": "100",
                                      "pot_temperature": "25", "film_time": "200", "speed": speed},
                     resin_temperature="28", moving="moving"))
      for speed in ("fast", "slow")],
    ("heat", dict(air="20", system=POT)),
    ("heat", dict(air="20", system=POT, batch="300", cup_width="50")),
    ("measure", dict(system={"by_weight": "100:30"}, amount="130", readings=[{"shown": "100"}, {"shown": "138"}])),
    ("heat", dict(air="20", system=dict(POT, by_weight="", by_volume="2:1"))),
    *[("/clock", dict({"system." + key: text for key, text in POT.items()}, air=air, batch="60"))
      for air in ("11", "27", "38")],
    *[("/safety", {"room.length": "3", "room.width": wide, "room.height": "2.4", "draught": draught})
      for wide, draught in (("3", "shut"), ("3.5", "one"), ("30", "shut"))],
    *[("joint", dict(kind="outside", thickness="9", angle=angle, round_over=over))
      for angle, over in (("90", "20"), ("90", "12"), ("140", "30"))],
    ("dew", dict(air="20", humidity="88", surface="21", night="12")),
    ("dew", dict(air="20", humidity="60", surface="24")),
    ("ratio", dict(system={"by_weight": "100:130"})),
    ("ratio", dict(system={"by_weight": "100:30", "eew": "190", "ahew": "80"})),
    *[("ratio", dict(system={"by_weight": "100:" + by, "by_volume": "100:100"})) for by in ("65", "140")],
    ("joint", dict(kind="outside", thickness="9", angle="90", round_over="7")),
    ("joint", dict(length="100", reach="0.5", layers=[{"width": "75", "weight": "300"}])),
    ("measure", dict(system=BOTH, amount="60", way="stick",
                     cup={"bottom": "30", "top": "30", "height": "100"})),
    ("measure", dict(system=BOTH, amount="190", way="scale")),
    ("measure", dict(system={"by_volume": "3:1", "densities": "1.15:0.98"}, way="scale", amount="3", scale="1g")),
    ("measure", dict(system=BOTH, amount="25", way="pumps")),
    ("air", dict(fan_runs="in", opening="0.05")),
    ("dew", dict(air="20", humidity="60", night="12", sky="open")),
    ("measure", dict(system=BOTH, amount="60", way="pumps", compare="yes")),
    ("measure", dict(system={"by_volume": "3:1"}, amount="60 mL", way="syringes")),
    ("pouring", dict(system={"by_volume": "3:1"}, amount="160 mL", way="syringes")),
    ("thicken", dict(thicken="yes", batches=[
        {"mixed": "100", "before": "500", "after": "462"}, {"mixed": "100", "before": "500", "after": "440"},
        {"mixed": "100", "before": "500", "after": "464"}, {"mixed": "100", "before": "500", "after": "459"}])),
    ("thicken", dict(thicken="yes", batches=[{"mixed": "100", "before": "500", "after": "415"}])),
    ("thicken", dict(thicken="yes", batches=[{"mixed": "100", "before": "500", "after": "460"},
                                             {"mixed": "100", "before": "500", "after": "430"}])),
    *[("pot", dict(POT_RUNS, now=str(START + late))) for late in (1000, 2300, 30000)],
    *[("pot", dict(POT_RUNS, now=str(START + 400), seen=seen, seen_at=str(START + int(seen)), elapsed=elapsed))
      for seen, elapsed in (("300", "400"), ("395", "400"), ("395", "411"))],
    ("pot", dict(POT_RUNS, now=str(START + 90), sent=str(START + 10))),
    *[("heat", dict(air="20", system=POT, container=kind, timings=[{"said": "stiffening", "after": "14", "mass": "100",
                                                                    "at": "20", "in": "cup"}]))
      for kind in ("cup", "bag")],
    ("heat", dict(air="20", system=POT, container="bag", timings=[{"said": "gone", "after": "9", "mass": "240",
                                                                   "in": "cup", "at": "20"}])),
    *[("plan", dict(temperature=warm, system=dict(POT, speed="fast"), pieces=PIECES))
      for warm in ("20", "33")],
    ("plan", dict(temperature_is="points", start="8:00", system=POT, pieces=PIECES, points=[
        {"at": at, "temperature": warm} for at, warm in (("5:00", "15"), ("8:00", "30"), ("20:00", "35"))])),
    *[("plan", dict(temperature="20", system=POT, pieces=[dict(PIECES[0], position=position)]))
      for position in ("vertical", "overhead")],
    ("thicken", dict(thicken="yes", filler="glass-spheres", stiffness="dry-edged", amount="200")),
    *[("thicken", dict(thicken="yes", filler="phenolic-balloons", stiffness=stiffness))
      for stiffness in ("runs", "stands")],
))

if __name__ == "__main__":
    main(sys.argv[1:] or MODULES)  # the modules of a change, or all of them

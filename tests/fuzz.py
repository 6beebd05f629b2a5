"""Fuzz: questions that nobody would ask, put to the phone's runtime in Node as its worker puts them.

Each is one that a page may ask, with its structure, a typed text or its bytes changed at random. What a page can send
is answered; what cannot be read raises an error that has a name; nothing traps, nothing hangs, and between them plain
questions are answered as before. `make fuzz` asks 100,000, the tests a few hundred. Run alone, it says how many of
which kind, the slowest of them, and how much memory was taken.
"""
import base64
import contextlib
import copy
import functools
import itertools
import json
import random
import re
import subprocess
import sys
import threading
from collections import Counter
from pathlib import Path

import cases
import questions
from covemix.server.build import HOUSE, Build
from covemix.shared.door import moves

HERE = Path(__file__).parent
SCRIPT = HOUSE / "webui/js/engine/interpreter.js"
WASM = HOUSE / "webui/vendor/micropython/micropython.wasm"
NAMED = re.compile(r"[A-Z]\w*Error\b")  # what was raised
HUNG = 60  # s without an answer, after which it is stopped: seven times what a page waits
POOL = 40  # plain questions of each name, of which others are made
EACH = 1000  # questions, after which plain ones are asked again
RUN = 5000  # questions of one seed
WAYS = ("structure", "text", "bytes")
HEAVY = 100_000  # letters of an endless text
ODD = (None, True, False, 0, -1, 2**64, 1e308, -0.0, 5e-324, "", " ", "\x00", "\ud800", "é" * 300, "[" * 50, [], {},
       [[]], {"": {}}, [None], "nan", "inf", "1e999", "--", "0" * 400, "9" * 400, "½" * 20, "\u202e1", "1\n2", "units")
SCRAPS = ("0", "9", ".", ",", "-", "/", ":", ";", "½", "e", " ", "\u00a0", "°C", "oz", "fl oz", "to", "%", "\x00", "\n",
          "\"", "\\", "{", "}", "$", "é", "\u0663", "🛶", "\ud83d", "1e400", "NaN", "id", "units", "0x", "_", "\u2028")


class Ended(Exception):
    """A question that was not answered at all: it hung, or the engine's process ended."""


@functools.cache
def engine(language):
    """Its files as a phone has them, and the program that `worker.js` runs."""
    script = (HOUSE / "webui/js/engine/worker.js").read_text(encoding="utf-8")
    own = script[script.index("const PROGRAM"):script.index("let python")].partition("//")[0]
    program = "".join(map(json.loads, re.findall(r'"[^"]*"', own)))
    return {"files": list(Build(language=language).engine.items()), "program": program}


class Phone:
    """The engine of a phone in Node."""

    def __init__(self, language="en"):
        self.node = subprocess.Popen(["node", HERE / "phone.mjs", SCRIPT, WASM], stdin=subprocess.PIPE,
                                     stdout=subprocess.PIPE)
        self._begun([engine(language)])
        assert self.hear() == {"ready": True}

    def __enter__(self):
        return self

    def __exit__(self, *_):
        self.node.kill()
        self.node.wait(HUNG)
        self.node.stdin.close()
        self.node.stdout.close()

    def say(self, told):
        self.node.stdin.write("".join(json.dumps(one) + "\n" for one in told).encode())
        self.node.stdin.flush()

    def hear(self):
        hung = threading.Event()
        watch = threading.Timer(HUNG, lambda: (hung.set(), self.node.kill()))
        watch.start()
        line = self.node.stdout.readline()
        watch.cancel()
        if not line.endswith(b"\n"):
            raise Ended(f"no answer within {HUNG} s" if hung.is_set() else f"its process ended: {self.node.wait(HUNG)}")
        return json.loads(line)

    def answers(self, asked):
        """What each of these comes to, in their order: {"text"} or {"broken", "fell"}, with ms and bytes of memory."""
        self._begun(asked)
        for one in asked:
            try:
                yield self.hear()
            except Ended as why:
                raise Ended(str(why), one) from None

    def _begun(self, told):
        """A process that does not read keeps nobody: `hear` ends it."""
        threading.Thread(target=self._say, args=(told,), daemon=True).start()

    def _say(self, asked):
        with contextlib.suppress(BrokenPipeError):  # whoever reads is told
            self.say(asked)


def shown(asked):
    """A question as a report shows it."""
    text = asked.get("text")
    return (base64.b64decode(asked["bytes"]).decode(errors="backslashreplace") if text is None else text)[:600]


def pool(seed):
    """Plain questions of every name."""
    return [request for name in questions.NAMES for request in itertools.islice(questions.drawn(name, seed), POOL)]


def places(tree, path=()):
    """Every place in what JSON holds, the outermost first."""
    yield path
    inner = tree.items() if isinstance(tree, dict) else enumerate(tree) if isinstance(tree, list) else ()
    for key, value in inner:
        yield from places(value, (*path, key))


def at(tree, path):
    for key in path:
        tree = tree[key]
    return tree


def with_other_structure(request, draw, others):
    """One place taken out, doubled, moved, put deeper, given another's content or something odd."""
    request = json.loads(json.dumps(request))
    for _ in range(draw.choice((1, 1, 2, 5))):
        found = [path for path in places(request) if path]
        if not found:
            break
        path = draw.choice(found)
        holder, key = at(request, path[:-1]), path[-1]
        how = draw.randrange(7)
        if how == 0:
            del holder[key]
        elif how == 1:
            holder[key] = copy.deepcopy(draw.choice(ODD))
        elif how == 2:
            other = draw.choice(others)
            holder[key] = json.loads(json.dumps(at(other, draw.choice(list(places(other))))))
        elif how == 3:
            inner = holder[key]
            for _ in range(draw.choice((1, 2, 8, 40))):
                inner = draw.choice(([inner], {"0": inner}, {"id": inner}))
            holder[key] = inner
        elif how == 4 and isinstance(holder, list):
            holder[key:key] = [json.loads(json.dumps(holder[key]))] * draw.choice((1, 2, 30))
        elif how == 4:
            holder[draw.choice(("units", "id", "0", "first", "screen", "move", "system", "", "a.b"))] = holder[key]
        elif how == 5 and isinstance(holder, list):
            draw.shuffle(holder)
        elif isinstance(holder[key], str):
            holder[key] = draw.choice(moves.names() + list(dict(moves.SCREENS)))
        else:
            holder[key] = str(holder[key])
    return request


def with_other_text(request, draw, others):
    """A typed text, or a name, with letters put in, taken out, doubled, or of another question."""
    request = json.loads(json.dumps(request))
    found = [path for path in places(request) if path and isinstance(at(request, path), str)]
    typed = [path for path in found if path[0] in ("pairs", "typed")] or found
    for path in draw.sample(typed, min(len(typed), draw.choice((1, 1, 2, 4)))):
        at(request, path[:-1])[path[-1]] = letters(at(request, path), draw, others)
    return request


def letters(text, draw, others):
    """One text changed."""
    for _ in range(draw.choice((1, 2, 6))):
        place = draw.randint(0, len(text))
        how = draw.randrange(8)
        if how < 3:
            text = text[:place] + draw.choice(SCRAPS) + text[place:]
        elif how == 3:
            text = text[:place] + text[place + draw.choice((1, 1, 3)):]
        elif how == 4:
            text = text[:place] + text * draw.choice((1, 2, 20)) + text[place:]
        elif how == 5:
            text = draw.choice(cases.BROKEN + cases.UNUSUAL + cases.WORDS)
        elif how == 6:
            text = text[::-1]
        else:
            other = [word for word in _texts(draw.choice(others))] or [""]
            text = draw.choice(other)
        text = text if isinstance(text, str) else str(text)
    if draw.random() < 0.002:
        text = (text or "9") * (HEAVY // max(1, len(text)))
    return text[:HEAVY]


def _texts(tree):
    return [at(tree, path) for path in places(tree) if isinstance(at(tree, path), str)]


def with_other_bytes(request, draw, others):
    """The bytes of a question: some flipped, put in, taken out, cut off, or those of another from some place on."""
    found = bytearray(json.dumps(request, ensure_ascii=draw.random() < 0.5).encode(errors="surrogatepass"))
    for _ in range(draw.choice((1, 1, 2, 8))):
        place = draw.randrange(len(found) + 1)
        how = draw.randrange(6)
        if how == 0 and place < len(found):
            found[place] ^= 1 << draw.randrange(8)
        elif how == 1 and place < len(found):
            found[place] = draw.randrange(256)
        elif how == 2:
            found[place:place] = bytes(draw.randrange(256) for _ in range(draw.choice((1, 2, 9))))
        elif how == 3:
            del found[place:place + draw.choice((1, 2, 20))]
        elif how == 4:
            other = json.dumps(draw.choice(others)).encode()
            found[place:] = other[draw.randrange(len(other)):]
        elif draw.random() < 0.2:
            del found[place:]
    return bytes(found)


MAKERS = {"structure": with_other_structure, "text": with_other_text}


def made(seed, count):
    """So many: (way, what a phone is asked)."""
    draw, plain = random.Random(seed), pool(seed)
    for place in range(count):
        way = WAYS[place % len(WAYS)]
        request = draw.choice(plain)
        if way == "bytes":
            yield way, {"bytes": base64.b64encode(with_other_bytes(request, draw, plain)).decode()}
        else:
            yield way, {"text": json.dumps(MAKERS[way](request, draw, plain), ensure_ascii=draw.random() < 0.5)}


def asked_by_a_page(asked):
    """Whether a page could send this: whatever is typed in it, it is to be answered."""
    try:
        request = json.loads(asked["text"] if "text" in asked else base64.b64decode(asked["bytes"]).decode())
    except (ValueError, RecursionError):
        return False
    if not isinstance(request, dict):
        return False
    words = [word for word in ("first", "screen", "hand", "brought", "move") if word in request]
    if len(words) != 1 or not isinstance(request[words[0]], str):
        return False
    word, name = words[0], request[words[0]]
    if name not in (moves.names() if word == "move" else dict(moves.SCREENS)):
        return False
    if word == "first" and name not in questions.FIRST:
        return False
    if word == "brought" and type(request.get("length")) is not int:
        return False
    if word == "move" and "typed" in request:
        return isinstance(request["typed"], dict) and _shallow(request["typed"])
    rows = request.get("pairs")
    return isinstance(rows, list) and "typed" not in request and all(
        isinstance(row, list) and len(row) == 2 and all(isinstance(text, str) for text in row) for row in rows)


def _shallow(tree, left=20):
    """As deep as the server's reader lets a tree through."""
    inner = tree.values() if isinstance(tree, dict) else tree if isinstance(tree, list) else ()
    return left > 0 and all(_shallow(each, left - 1) for each in inner)


def fault(asked, found):
    """What is wrong with how a question ended, "" where nothing is."""
    if found.get("fell"):
        return "trap: " + found["broken"][:200]
    if "text" in found:
        try:
            return "" if isinstance(json.loads(found["text"]), dict) else "no object"
        except ValueError as error:
            return f"no JSON ({error})"
    _, place, said = found["broken"].rpartition("\n  File ")
    if not NAMED.match(said.partition("\n")[2] if place else said):  # what reads no text has no place
        return "an error without a name: " + found["broken"][:200]
    return "raised " + found["broken"][-300:] if asked_by_a_page(asked) else ""


def probes():
    """Plain questions of every name: as each screen opens, and one that was typed."""
    return [{"text": json.dumps(request)} for name in questions.NAMES
            for request in itertools.islice(questions.drawn(name, 1), 2)]


class Found:
    """What came of a run. faults: [(what, the question)]; slowest: [(ms, the question)]; bytes: of memory at most"""

    def __init__(self):
        self.faults, self.ends, self.slowest, self.bytes = [], Counter(), [], 0

    def take(self, way, asked, found):
        """One question and its end."""
        what = fault(asked, found)
        if what:
            self.fault(f"{way}: {what}", asked)
        self.ends[way, "answered" if "text" in found else "refused by name" if not what else "fault"] += 1
        self.slowest = sorted([*self.slowest, (found["ms"], shown(asked))], key=lambda row: -row[0])[:5]
        self.bytes = max(self.bytes, found["bytes"])

    def fault(self, what, asked):
        self.faults.append((what, asked))
        print(f"{what}\n    {shown(asked)!r}", flush=True)


def run(count, seed, found=None):
    """What came of so many questions. found: to which it is added"""
    found, questions_made, plain = found or Found(), made(seed, count), probes()
    while batch := list(itertools.islice(questions_made, EACH)):
        try:
            with Phone() as phone:
                before = list(phone.answers(plain))
                for (way, asked), told in zip(batch, phone.answers([asked for _, asked in batch]), strict=True):
                    found.take(way, asked, told)
                for asked, then, now in zip(plain, before, phone.answers(plain), strict=True):
                    if now.get("text") != then["text"]:
                        found.fault("a plain question is answered otherwise afterwards", asked)
        except Ended as why:
            found.fault(*why.args)
    return found


def main(count, seed):
    """Run after run of so many with a seed of its own each."""
    found = Found()
    for place in range(0, count, RUN):
        run(min(RUN, count - place), f"{seed}-{place}", found)
        print(f"{place + RUN:,} asked, {len(found.faults)} faults", flush=True)
    for (way, end), many in sorted(found.ends.items()):
        print(f"{way:10} {end:16} {many:,}")
    for ms, text in found.slowest:
        print(f"{ms:.0f} ms: {text[:160]!r}")
    print(f"memory: {found.bytes / 2**20:.0f} MiB; seed {seed}; {len(found.faults)} faults")
    return bool(found.faults)


if __name__ == "__main__":
    sys.exit(main(int(sys.argv[1]), sys.argv[2] if len(sys.argv) > 2 else cases.SEED))

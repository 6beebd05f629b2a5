"""No hidden state: the same question has the same answer, in any order, in any thread, with a memo and without."""
import ast
import json
import random
from concurrent.futures import ThreadPoolExecutor

import cases
import pytest
from covemix.server.build import HOUSE
from covemix.shared.door import moves
from covemix.shared.door.call import call
from covemix.shared.forms.memo import Memo

THREADS, EACH = 8, 75  # some 5,000 answers in all
FEWER = {"heat": 12, "clock": 6, "plan": 5, "boat": 10, "joint": 40, "sources": 1, "timings": 30, "pour": 60}


def questions():
    """Of all moves and screens, each asked again by somebody else between other questions; and what follows a hand."""
    names = list(dict.fromkeys([*moves.names(), *dict(moves.SCREENS)]))
    found = [request for name in names for request in cases.different(name, FEWER.get(name, EACH))]
    found += [{"first": one["screen"], "pairs": one["pairs"]} for one in found
              if one.get("screen") in ("pour", "joint")][:200]
    return [json.dumps(one) for one in found]


def test_five_thousand_questions_over_eight_threads_are_answered_as_each_alone():
    asked = questions()
    alone = {one: call(one) for one in asked}
    shared = Memo()  # handed in for all threads at once: what is kept must still follow from what it is kept under

    def some(seed):
        order = random.Random(seed).sample(asked, len(asked) // 2)
        own = Memo() if seed % 2 else shared
        return [one for one in order if call(one, own) != alone[one]]

    assert len(asked) * THREADS / 2 > 5000
    with ThreadPoolExecutor(THREADS) as threads:
        assert [one for wrong in threads.map(some, range(THREADS)) for one in wrong] == []


def test_a_hand_that_types_is_answered_by_one_memo_as_by_none():
    """One field after another, back and forth, as a phone asks: what the last question left changes nothing."""
    draw, memo = random.Random(5), Memo()
    for screen in ("pour", "joint", "boat", "clock"):
        tree = cases.tree(moves.screen_inputs(screen), draw)
        pairs = [[name, str(text)] for name, text in cases.pairs(tree)]
        for _ in range(40):
            if pairs:
                pairs = [list(pair) for pair in pairs]
                one = draw.choice(pairs)
                one[1] = draw.choice((one[1] + "0", one[1][:-1], "1", one[1]))
            early = [{"first": screen, "pairs": pairs}] if screen in ("pour", "joint") else []
            for question in (*early, {"screen": screen, "pairs": pairs}):
                text = json.dumps(question)
                assert call(text, memo) == call(text), text


def test_what_was_made_is_answered_where_another_thread_forgets_it_meanwhile():
    """A full heading starts anew under whoever shares it: as if what is kept were gone before it is read."""
    class Gone(dict):
        def __setitem__(self, key, made):
            """Kept for no time at all."""

    memo = Memo()
    memo.kept["pots"] = Gone()
    assert memo.once("pots", 1, lambda: "made") == "made"


def test_a_heading_has_as_many_places_as_it_was_given():
    memo = Memo()
    for place in range(70):
        memo.once("pots", place, lambda: None, 64)
    assert len(memo.under("pots")) == 6


@pytest.mark.parametrize("room", ["library", "server"])
def test_no_module_outside_the_engine_keeps_a_memo(room):
    """Threads that ask would share it: each has its own, from `thread_memo`."""
    made = [path.name for path in (HOUSE / room).rglob("*.py") for node in ast.parse(path.read_text()).body
            if isinstance(node, ast.Assign | ast.AnnAssign) and "Memo(" in ast.unparse(node)]
    assert made == []


def test_no_module_and_no_declaration_keeps_anything():
    """No list or dict of a module is written to by a function; what is kept is kept in the memo that was handed in."""
    found = []
    for path in (HOUSE / "shared").rglob("*.py"):
        tree = ast.parse(path.read_text())
        own = {name.id for node in tree.body if isinstance(node, ast.Assign) for target in node.targets
               for name in ast.walk(target) if isinstance(name, ast.Name)}
        for function in [node for node in ast.walk(tree) if isinstance(node, ast.FunctionDef)]:
            local = {node.id for node in ast.walk(function)
                     if isinstance(node, ast.Name) and isinstance(node.ctx, ast.Store)}
            local |= {one.arg for one in function.args.args}
            for node in ast.walk(function):
                if isinstance(node, ast.Global):
                    found.append((path.name, function.name, "global"))
                named = None
                if isinstance(node, ast.Call) and isinstance(node.func, ast.Attribute) and node.func.attr in (
                        "append", "extend", "insert", "update", "setdefault", "clear", "pop", "add"):
                    named = node.func.value
                elif isinstance(node, ast.Subscript) and isinstance(node.ctx, ast.Store | ast.Del):
                    named = node.value
                if isinstance(named, ast.Name) and named.id in own - local:
                    found.append((path.name, function.name, named.id))
    assert found == []

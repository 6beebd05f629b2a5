"""Questions for both runtimes: all that a page asks through the door, most of them answered, no two alike.

A question is named by the move or screen it asks, with a word in front where the door knows another way to ask: "first
pour" what follows a key press, "hand pour" what leaves by a link, a card or words, "brought pour" a link that came,
"alone plan" one move of a screen by the pairs of its form. What nobody can get an answer for tells little: it is mended
(the field that is wrong is left out, one that is missing is filled) until a tenth of them at the most is refused.
"""
import functools
import itertools
import json
import random

import cases
import parity
from covemix.shared.door import handover, moves
from covemix.shared.forms.declared import find_in

MOST_REFUSED = 0.1  # of the questions of a name
MOST_ALIKE = 0.4  # of them answered as another one is
WORDS_OF_ONE = {"aid", "hand aid", "sources", "hand sources"}  # that have hardly anything to be asked with
ROUNDS = 8  # of mending
DRAWS = 60  # for each question that is wanted
SCREENS = dict(moves.SCREENS)
FIRST = tuple(screen for screen, asked in moves.SCREENS if hasattr(moves.module(asked[0]), "first"))
ALONE = ("heat", "plan", "boat", "joint")  # slow moves of a screen, asked by the pairs of its form
NAMES = (*dict.fromkeys([*moves.names(), *SCREENS]), *(f"first {screen}" for screen in FIRST),
         *(f"hand {screen}" for screen in SCREENS), *(f"brought {screen}" for screen in SCREENS),
         *(f"alone {move}" for move in ALONE))
# what a move answers nothing without: typed there where the answer would be empty
ASKS = {"rescue": {"rescue": "yes"}, "thicken": {"thicken": "yes"}, "coats": {"work": "coat"},
        "sheathing": {"work": "sheathe"}, "fairing": {"work": "fair"}, "gluing": {"work": "scarf"},
        "fillets": {"work": "fillet"}}


def different(name, count, seed=cases.SEED):
    """So many questions of a name, no two the same, a tenth refused at the most; fewer where it knows few words.
    Where four in ten were answered as another one is, each of the rest has an answer of its own."""
    draw = random.Random(f"mend {name}-{seed}")
    _answered.cache_clear()
    found, answers, refused_so_far, alike = {}, set(), 0, 0
    for request in itertools.islice(drawn(name, seed), DRAWS * count):
        if _key(request) in found:
            continue
        if refused(request) and refused_so_far + 1 > MOST_REFUSED * count:
            request = mended(request, draw)
            if request is None or _key(request) in found:
                continue
        known = name not in WORDS_OF_ONE and here(request) in answers
        if known and alike + 1 > MOST_ALIKE * count:
            continue
        answers.add(here(request))
        alike += known
        refused_so_far += refused(request)
        found[_key(request)] = request
        if len(found) == count:
            break
    return list(found.values())


def _key(request):
    return json.dumps(request, ensure_ascii=False)


def drawn(name, seed):
    """Requests without end; the first asks with nothing typed."""
    how, _, own = name.rpartition(" ")
    for request in cases.drawn(own, seed):
        pairs = request["pairs"] if "pairs" in request else cases.pairs(request["typed"])
        if not how:
            yield request
        elif how == "alone":
            yield {"move": own, "pairs": pairs}
        elif how == "brought":
            sealed = handover.sealed(pairs)
            yield {"brought": own, "pairs": sealed, "length": sum(len(one) + len(text) + 2 for one, text in sealed)}
        else:
            yield {how: own, "pairs": pairs}


@functools.lru_cache(maxsize=4000)  # of one name: an answer is some 20 kB
def _answered(text):
    return parity.cpython([text])[0]


def here(request):
    """What the engine here answers to a request, as text."""
    return _answered(_key(request))


def told(texts):
    """The same of many, as `parity` wants an engine."""
    return [_answered(text) for text in texts]


def told_in(language):
    """The same in another language."""
    return lambda texts: parity.cpython(texts, language)


def refused(request):
    """Whether nothing at all is told: no line and no drawing; what leaves tells as much as its screen."""
    if "hand" in request:
        request = _in_full(request)
    told = json.loads(here(request))
    if "brought" in request:
        return bool(told["refused"])
    return not any(one["lines"] or one["figures"] for one in _answers(told))


def _answers(told):
    return [one for _, one in told["answers"]] if "answers" in told else [told]


def mended(request, draw):
    """The same with what is wrong left out and what is missing filled in; None where that does not mend it."""
    for _ in range(ROUNDS):
        if not refused(request):
            return request
        request = _mended(request, draw)
        if request is None:
            return None
    return None


def _mended(request, draw):
    if "brought" in request:
        return _without_what_is_strange(request)
    own = next(request[word] for word in ("move", "screen", "first", "hand") if word in request)
    typed = dict(request["typed"]) if "typed" in request else None
    pairs = list(request["pairs"]) if "pairs" in request else None
    inputs = moves.screen_inputs(own) if "move" not in request else moves.module(own).INPUTS
    told = json.loads(here(_in_full(request)))
    fields = list(dict.fromkeys(error["field"] for one in _answers(told) for error in one["errors"]))
    changed = False
    for field in fields:
        kept = _left_out(typed, field.split(".")) if pairs is None else _pairs_without(pairs, field)
        if kept is None:
            made = _filled(inputs, field, draw)
            if made is None:
                continue
            kept = _put(typed, field.split("."), made) if pairs is None else pairs + cases.pairs({field: made})
        typed, pairs, changed = (kept, None, True) if pairs is None else (None, kept, True)
    for name, text in ASKS.get(own, {}).items() if not fields else ():
        if typed is not None and typed.get(name) != text:
            typed, changed = {**typed, name: text}, True
    if not changed:
        return None
    return {**request, "typed": typed} if pairs is None else {**request, "pairs": pairs}


def _in_full(request):
    """The question whose answer tells which fields are wrong."""
    for word in ("first", "hand"):
        if word in request:
            return {"screen": request[word], "pairs": request["pairs"]}
    return request


def _without_what_is_strange(request):
    """A link sealed anew with the pairs that its screen knows, each name once."""
    plain = [pair for pair in request["pairs"] if pair[0] not in handover.OF_THE_LINK]
    screen = request["brought"]
    known, _, twice = handover.sorted_out(moves.screen_inputs(screen), plain, handover.beside_of(screen))
    sealed = handover.sealed([pair for pair in known if pair[0] not in twice])
    return None if sealed == request["pairs"] else {
        **request, "pairs": sealed, "length": sum(len(one) + len(text) + 2 for one, text in sealed)}


def _pairs_without(pairs, field):
    left = [pair for pair in pairs if pair[0] != field and not pair[0].startswith(field + ".")]
    return None if len(left) == len(pairs) else left


def _left_out(tree, steps):
    """The tree without what stands at a path; None where nothing stands there."""
    if isinstance(tree, list):
        if not steps[0].isdecimal() or int(steps[0]) >= len(tree):
            return None
        place = int(steps[0])
        if len(steps) == 1:
            return tree[:place] + tree[place + 1:]
        below = _left_out(tree[place], steps[1:])
        return None if below is None else [*tree[:place], below, *tree[place + 1:]]
    if not isinstance(tree, dict) or steps[0] not in tree:
        return None
    if len(steps) == 1 or not isinstance(tree[steps[0]], (dict, list)):
        return {key: value for key, value in tree.items() if key != steps[0]}
    below = _left_out(tree[steps[0]], steps[1:])
    return None if below is None else {**tree, steps[0]: below}


def _put(tree, steps, made):
    """The tree with something at a path; what stands in the way is taken out."""
    if len(steps) == 1:
        return {**tree, steps[0]: made} if isinstance(tree, dict) else tree
    below = tree.get(steps[0]) if isinstance(tree, dict) else None
    if isinstance(below, str) and below:
        below = {"id": below}
    return {**tree, steps[0]: _put(below if isinstance(below, dict) else {}, steps[1:], made)}


def _filled(inputs, field, draw):
    """Something plain for a field that is missing; None where there is no such field."""
    found = find_in(inputs, field.split("."))
    item = found[2] if found else next((one for one in inputs if one.name == field), None)
    if item is None:
        return None
    hand = cases.Hand(draw)
    hand.mood = "plain"
    return cases.MAKERS[item.kind](item, hand, "plain", {})

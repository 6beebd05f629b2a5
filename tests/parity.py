"""Both runtimes answer alike: compare the answers of any engine with CPython's, and shrink what differs.

An engine is a function `ask(list of request texts) -> list of answer texts`; an answer that could not be had is a text
that is no JSON object with one of ANSWERS in it, and counts as a difference even where both sides fail.
"""
import json
import math

from covemix.shared.door.call import call

ANSWERS = ("answers", "lines", "card", "refused")  # of a screen or its first figures, a move, what leaves, what came
RELATIVE = 1e-11  # what a fit makes of the last bits of its exponentials: of 17,186 answers one differed by 1.01e-12
FLOOR = 1e-15  # a ratio's error is a difference of numbers near 1: below this it is the last bit of that difference


def cpython(texts, language="en"):
    """The engine here, as an `ask`."""
    found = []
    for text in texts:
        try:
            found.append(call(text, language=language))
        except Exception as error:  # the report tells it; any exception is a bug of the engine
            found.append("raised " + type(error).__name__ + ": " + str(error))
    return found


def differences(ours, theirs, path=""):
    """Places where two parsed answers differ, as (path, ours, theirs): texts exactly, numbers to RELATIVE."""
    if isinstance(ours, dict) and isinstance(theirs, dict):
        found = []
        for key in sorted(set(ours) | set(theirs)):
            found += differences(ours.get(key, "(missing)"), theirs.get(key, "(missing)"), path + "." + key)
        return found
    if isinstance(ours, list) and isinstance(theirs, list) and len(ours) == len(theirs):
        return [row for place, (a, b) in enumerate(zip(ours, theirs, strict=True))
                for row in differences(a, b, f"{path}[{place}]")]
    if _number(ours) and _number(theirs):
        return [] if math.isclose(ours, theirs, rel_tol=RELATIVE, abs_tol=FLOOR) else [(path, ours, theirs)]
    return [] if type(ours) is type(theirs) and ours == theirs else [(path, ours, theirs)]


def _number(value):
    return isinstance(value, (int, float)) and not isinstance(value, bool)


def differing(requests, ask, reference=cpython):
    """[(request, differences)] of the requests that the engine answers otherwise than the reference."""
    texts = [json.dumps(request, ensure_ascii=False) for request in requests]  # as JSON.stringify writes it
    found = []
    for request, ours, theirs in zip(requests, reference(texts), ask(texts), strict=True):
        rows = _compared(ours, theirs)
        if rows:
            found.append((request, rows))
    return found


def _compared(ours, theirs):
    try:
        ours, theirs = _parsed(ours), _parsed(theirs)
    except ValueError as error:
        return [("", ours[:300], theirs[:300] + f" ({error})")]
    return [] if _letters(ours) == _letters(theirs) else differences(ours, theirs)


def _letters(parsed):
    """An answer as one text: nearly all agree to the last digit, which is seen at once."""
    return json.dumps(parsed, sort_keys=True)


def _parsed(text):
    parsed = json.loads(text, parse_constant=_refused, parse_int=float)  # what is 1.0 here may be written 1 there
    if not isinstance(parsed, dict) or not any(key in parsed for key in ANSWERS):
        raise ValueError("not an answer")
    return parsed


def _refused(name):
    raise ValueError("not finite: " + name)


def report(requests, ask, reference=cpython, most=3):
    """"" when all agree; otherwise how many differ, and the smallest request of the first few that still does."""
    found = differing(requests, ask, reference)
    if not found:
        return ""
    told = [f"{len(found)} of {len(requests)} answers differ"]
    for request, first in found[:most]:
        small, rows = shrunk(request, ask, reference) or (request, [*first, ("asked alone", "as here", "as there")])
        told.append(json.dumps(small, ensure_ascii=True))
        told += [f"    {path or 'answer'}: {ours!r} here, {theirs!r} there" for path, ours, theirs in rows[:5]]
    return "\n".join(told)


def shrunk(request, ask, reference=cpython):
    """The smallest request that still differs, with its differences: one step smaller at a time, a round in one go.
    None where it is answered alike when it is asked alone: then what was asked before it matters."""
    alone = differing([request], ask, reference)
    if not alone:
        return None
    rows = alone[0][1]
    while True:
        smaller = list(_smaller(request))
        found = differing(smaller, ask, reference) if smaller else []
        if not found:
            return request, rows
        request, rows = min(found, key=lambda pair: len(json.dumps(pair[0])))


def _smaller(request):
    key = "pairs" if "pairs" in request else "typed"
    for piece in _less(request[key]):
        if key == "typed" or all(isinstance(pair, list) and len(pair) == 2 for pair in piece):
            yield {**request, key: piece}


def _less(value):
    """The value with one thing left out, or one text made shorter."""
    if isinstance(value, dict):
        for key in value:
            rest = {other: value[other] for other in value if other != key}
            yield rest
            for piece in _less(value[key]):
                yield {**rest, key: piece}
    elif isinstance(value, list):
        for place in range(len(value)):
            yield value[:place] + value[place + 1:]
            for piece in _less(value[place]):
                yield [*value[:place], piece, *value[place + 1:]]
    elif isinstance(value, str) and value:
        if len(value) > 8:
            yield value[:len(value) // 2]
        yield value[1:]
        yield value[:-1]

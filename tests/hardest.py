"""The hardest questions there are, by hand and by dice: each input at its limits, lists full, all at once."""
import json

from covemix.shared.door import moves

SEAM = {"kind": "both", "thickness": "6", "angle": "118 : 138 : 152 : 156", "length": "3.05", "gap": "1", "layers": "2",
        "width": "75 : 100", "weight": "300"}
PIECE = {"length": "1.2", "putty": "60", "wet": "80"}
HOURS = [{"at": f"{hour % 24}:00", "temperature": str(15 + hour * 7 % 20)} for hour in range(8, 32)]
WARMING = {"temperature_is": "points", "points": HOURS}
STEPS = ("mix", "place", "tool", "clean", "wet_mix", "wet", "lay", "roll", "peel")


def _joints(count, **more):
    return [{**SEAM, "name": f"Seam {place}", **more} for place in range(count)]


def _pieces(count, **more):
    return [{**PIECE, "name": f"Seam {place}", **more} for place in range(count)]


# (move, what is large about it, what is typed): accepted or refused, none may be dear
QUESTIONS = [
    ("boat", "one row, copies, layers and length", {"joints": [{"copies": "100", "layers": "8", "length": "200"}]}),
    ("boat", "60 such rows", {"joints": [{"copies": "100", "layers": "8", "length": "200"}] * 60}),
    ("boat", "60 joints", {"joints": _joints(60)}),
    ("boat", "60 joints, no two alike", {"joints": [dict(one, thickness=f"{4 + place / 10:.1f}",
                                                         length=f"{3 + place / 143:.3f}")
                                                    for place, one in enumerate(_joints(60))]}),
    ("boat", "60 joints of 9 angles", {"joints": _joints(60, angle=" : ".join(str(110 + 5 * n) for n in range(9)))}),
    ("boat", "as many pieces as are taken", {"joints": _joints(1, kind="inside", angle="90", layers="1", length="20",
                                                               copies="58")}),
    ("boat", "faces without tape", {"joints": _joints(60, copies="100", layers="0", length="0.3")}),
    ("boat", "short pieces", {"joints": _joints(1, length="200"), "reach": "0.3", "overlap": "10", "stagger": "0"}),
    ("boat", "pieces that hardly go on", {"joints": _joints(1, length="200"), "reach": "0.50001", "overlap": "500",
                                          "stagger": "0"}),
    ("boat", "short rolls", {"joints": _joints(1, length="200"), "reach": "1", "roll": "1", "ply_roll": "1"}),
    ("boat", "small packs", {"packs": "0.0001 : 0.0002 : 0.0003"}),
    ("boat", "a large need in small packs", {
        "joints": _joints(60, length="3", thickness="60", gap="60", kind="butt", copies="5", layers="0"),
        "packs": "0.3 : 0.29 : 25"}),
    ("boat", "long remnants", {"joints": [dict(one, length=f"{3 + place / 143:.3f}") for place, one in enumerate(
        _joints(60))], "remnants": [{"width": "75", "weight": "300", "length": str(80 - n)} for n in range(12)]}),
    ("joint", "pieces that hardly go on", {"length": "1000", "reach": "0.50001", "overlap": "500", "stagger": "0"}),
    ("plan", "60 pieces", {"temperature": "20", "pieces": _pieces(60)}),
    ("plan", "60 long pieces", {"temperature": "20", "pieces": _pieces(60, length="100")}),
    ("plan", "60 pieces to be cut", {"temperature": "20", "pieces": _pieces(60, length="6")}),
    ("plan", "60 pieces over a day", {**WARMING, "pieces": _pieces(60)}),
    ("plan", "60 longer pieces over a day", {**WARMING, "pieces": _pieces(60, length="6")}),
    ("plan", "20 long pieces over a day", {**WARMING, "pieces": _pieces(20, length="20")}),
    ("plan", "60 long pieces over a day", {**WARMING, "pieces": _pieces(60, length="20")}),
    ("plan", "three people over a day", {**WARMING, "pieces": _pieces(60, length="2"), "people": "3"}),
    ("plan", "300 steps done", {"temperature": "20", "pieces": _pieces(60, length="5"), "running": "yes",
                                "clock": "9:00", "done": [{"batch": str(batch + 1), "step": step,
                                                           "minute": str(20 * batch + place)}
                                                          for batch in range(33) for place, step in enumerate(STEPS)]}),
]


def mixture(move, draw):
    """One tree with each input at a limit or left out; lists are full, of equal rows or not."""
    left_out, typed = draw.random(), {}
    for item in moves.module(move).INPUTS:
        if draw.random() > left_out:
            _put(item, typed, draw)
    return typed


def changed(move, typed, draw):
    """The same tree with one to three inputs otherwise."""
    typed, inputs = json.loads(json.dumps(typed)), moves.module(move).INPUTS
    for item in draw.sample(inputs, min(len(inputs), draw.randint(1, 3))):
        rows = typed.get(item.name)
        if item.kind == "group" and isinstance(rows, list) and rows and draw.random() < 0.8:
            field = draw.choice(item.fields)
            for row in rows:
                _put(field, row, draw)
        elif draw.random() < 0.3:
            typed.pop(item.name, None)
        else:
            _put(item, typed, draw)
    return typed


def _put(item, typed, draw):
    text = _limit(item, draw)
    if item.kind == "amount":
        typed[item.name + "_is"] = draw.choice(item.options)[0]
    typed[item.name] = text


def _limit(item, draw):
    if item.kind in ("number", "parts"):
        usual = item.default if item.kind == "number" and item.default is not None else (item.low + item.high) / 2
        low = max(item.low, item.high / 1000)
        numbers = [draw.choice((low * 1.01, item.high, usual, min(item.high, usual * 4)))
                   for _ in range(1 if item.kind == "number" else draw.choice((item.least, item.most)))]
        if getattr(item, "whole", False):
            numbers = [int(number) for number in numbers]
        return " : ".join(f"{number:.6g}" for number in numbers)
    if item.kind == "choice":
        return draw.choice(item.options)[0]
    if item.kind == "text":
        return draw.choice(("x" * item.most, "", "8:30"))
    if item.kind == "phone":
        return draw.choice(("+1" + "2" * (item.most // 2 - 1), "", "(0)30-19 240"))
    if item.kind == "amount":
        return draw.choice(("1", "100", str(item.high)))
    if item.kind == "pick":
        rows = [row[0] for row in item.record.rows]
        own = {"id": draw.choice(rows)} if rows else {}
        for field in item.record.fields:
            if draw.random() < 0.1:
                _put(field, own, draw)
        return own
    first = {}
    for field in item.fields:
        _put(field, first, draw)
    rows = [dict(first) for _ in range(draw.choice((item.most, max(1, item.least))))]
    for row in rows if draw.random() < 0.5 else ():
        _put(draw.choice(item.fields), row, draw)
    return rows

"""Generated cases: typed trees made from the declarations of any move or screen, the same for the same seed.

Three moods: "plain" is what somebody means to type, "edge" sits on a limit or uses an unusual spelling, "broken" is
what nobody should get an answer for. A tree of the last two moods is plain except in a few places, so most of it reads.
"""
import itertools
import json
import math
import random

from covemix.shared.door import moves
from covemix.shared.forms.declared import Several
from covemix.shared.forms.errors import InputError
from covemix.shared.words.messages import spoken, with_unit
from covemix.shared.words.texts import said
from covemix.shared.words.units import BY_NAME, BY_SPELLING, UNITS, from_si, to_si, unit_for
from covemix.shared.words.written import reader

SEED = 20260
BROKEN = ("", " ", "abc", "1e400", "NaN", "-inf", "-3", "0", "1,500.2", "1.2.3", "1 500", "١٢", "9" * 200, "1/0", "½/3",
          "--5", "+", ".", ",", "/", "5 furlongs", "5 °C", "5 g", "5 fl oz", "0x10", "1_000", "1e3", "\x00", "🛶",
          "12\n", "'", "1e", "3\x1f", "\x85", "5\u2003g", "12 K\u212a", "0." + "0" * 30 + "1",
          None, True, False, [], {}, [1], {"a": "b"}, -1, 0, 1e300, 5e-324, -0.0, 2**40)
UNUSUAL = ("½", "1½", "3 1/2", "1/3", ".5", "5.", ",5", "+2", "007", "0.1", "0.10000000000000001", "1e-3", " 12 ",
           "12\u00a0g", "2 to 1", "999999999999", "0.000001", 1, 2.5, 1e-9, 3.0000000000000004)
PLAIN_WORDS = ("Bow seam", "8:30", "14:05", "7 pm", "Öse 3 : ÄÖ", "\u2003Harz\x85 : \u212aelvin")
OWN_WORDS = {  # texts that are read
    "timings": ("stiffening 31 min 240 g cup 20 °C", "Stiffening 24 min 100 g cup 25 °C; gone 40 min 240 g cup 18 °C"),
    "trials": ("thick 1500 s, doubt 9 %, mass 100 g, air 20 °C, loss 110 %, heat 90 %",
               "thick 2600 s, doubt 12 %, mass 60 g, air 18.5 °C, loss 85 %, heat 100 %, width 70 mm, mix 21 °C"),
    "learned": ("roll 0.5, 0.41 to 0.6, from 3",),
    "made": ("2026-03-15", "2025-08-31", "2027-01"),
    "opened": ("2026-06", "2026-10-30"),
    "day": ("2026-11-29", "2027-02-28"),
}
WORDS = (*PLAIN_WORDS, "a.b", "50%", "<b>x</b>", "\u200f١", "two\nlines", "a" * 61, "x" * 5000, "&=?#", "  ", "null")


def aloud(figure: str) -> str:
    """A figure with its unit, as an English screen shows it, as it is said: "243 g"."""
    digits, _, unit = figure.partition(" ")
    return said(spoken(with_unit(digits, unit if unit in BY_NAME else BY_SPELLING[unit][0].name)), reader())


def requests(name, count, seed=SEED):
    """Requests for `moves.call`: for a screen its pairs, for a move its tree. The first asks with nothing typed."""
    return list(itertools.islice(drawn(name, seed), count))


def different(name, count, seed=SEED):
    """So many requests of which no two are the same; fewer where a move knows few words."""
    found = {}
    for request in itertools.islice(drawn(name, seed), 40 * count):
        found.setdefault(json.dumps(request), request)
        if len(found) == count:
            break
    return list(found.values())


def drawn(name, seed):
    """Requests without end."""
    draw = random.Random(f"{name}-{seed}")
    is_screen = name in dict(moves.SCREENS)
    inputs = moves.screen_inputs(name) if is_screen else moves.module(name).INPUTS
    typed = {}
    while True:
        yield {"screen": name, "pairs": pairs(typed)} if is_screen else {"move": name, "typed": typed}
        typed = tree(inputs, draw)


class Hand:
    """Who types one tree: the dice, the mood, the units, how many parts the label has, how much is left empty."""

    def __init__(self, draw):
        self.draw = draw
        self.mood = draw.choices(("plain", "edge", "broken"), (60, 25, 15))[0]
        self.system = draw.choice(("metric", "metric", "us"))
        self.parts = draw.choices((2, 3, 4), (85, 10, 5))[0]
        self.empty = draw.choice((0.2, 0.5, 0.8, 0.95))

    def slips(self):
        """The mood for one field: plain in most of them even where the tree is not."""
        return self.mood if self.draw.random() < 0.15 else "plain"


def tree(inputs, draw):
    """One typed tree: about six in ten plain, the others with something unusual or broken in them."""
    hand = Hand(draw)
    typed = {"units": hand.system} if hand.system != "metric" or draw.random() < 0.2 else {}
    if hand.mood == "broken" and draw.random() < 0.1:
        typed["units"] = draw.choice(("imperial", 3, None, {}))
    typed.update(fields(inputs, hand))
    return typed


def fields(inputs, hand):
    """Typed text of some of the inputs, those that must be given among them. What is plain is what reads."""
    draw, typed = hand.draw, {}
    for item in inputs:
        mood = hand.slips()
        left_out = hand.empty / 2 if item.kind == "choice" else hand.empty
        if item.kind == "group" and not item.gaps:  # rows that must agree with each other seldom do
            left_out = 1 - (1 - hand.empty) / 2
        if draw.random() < left_out and (mood != "plain" or _reads(item, {}, hand)):
            continue
        name = draw.choice((item.name, *item.was))
        if mood == "broken" and draw.random() < 0.7:
            typed[name] = draw.choice(BROKEN)
            continue
        for _ in range(6):
            typed[name] = MAKERS[item.kind](item, hand, mood, typed)
            if mood != "plain" or _reads(item, typed, hand):
                break
    return typed


def _reads(item, typed, hand):
    """Whether the input reads what was typed for it, or nothing at all."""
    try:
        item.read(item.typed_in(typed), "", {"units": hand.system, "_tree": typed, "_understood": []})
    except (InputError, Several):
        return False
    return True


def quantity(hand, unit, low, high, near=None):
    """A number in the unit between the limits, near a usual value if there is one, at times with a unit behind it."""
    draw = hand.draw
    if near:
        low, high = max(low, near / 8), min(high, near * 8)
    value = to_si(low + (high - low) * draw.random() ** 4, unit)
    own, behind = unit_for(unit, hand.system), ""
    if draw.random() < 0.3 and BY_NAME[unit].name:
        other = draw.choice([known for known in UNITS if known.quantity == BY_NAME[unit].quantity])
        own, behind = other.name, draw.choice(("", " ")) + draw.choice((other.name, *other.spellings))
    value = from_si(value, own)
    places = min(6, max(0, draw.randint(0, 3) - (math.floor(math.log10(abs(value))) if value else 0)))
    text = f"{value:.{places}f}"
    return (text.replace(".", ",") if draw.random() < 0.2 else text) + behind


def _number(item, hand, mood, _):
    draw = hand.draw
    if mood == "edge":
        limits = [f"{limit * by:.10g}" for limit in (item.low, item.high) for by in (1, 1.0001, 0.9999)]
        return draw.choice((*limits, *UNUSUAL))
    if item.whole:
        return str(draw.randint(math.ceil(item.low), math.floor(min(item.high, (item.default or 3) * 3))))
    return quantity(hand, item.unit, item.low, item.high, item.default)


def _choice(item, hand, mood, _):
    if mood == "broken":
        return "nothing of the kind"
    others = [option[0] for option in item.options if option[0] != item.default]
    return hand.draw.choice(others) if others and hand.draw.random() < 0.8 else item.default


def _text(item, hand, mood, _):
    return hand.draw.choice(OWN_WORDS.get(item.name, PLAIN_WORDS) if mood == "plain" else WORDS)


def _parts(item, hand, mood, _):
    draw = hand.draw
    count = draw.choice((item.least, item.most, item.most + 1, 1, 2)) if mood != "plain" else hand.parts
    if mood == "plain":
        count = max(item.least, min(item.most, count))
    if item.unit:
        near = math.sqrt(item.low * item.high) if item.low else min(item.high / 8, 10 ** draw.randint(0, 3))
        numbers = [quantity(hand, item.unit, item.low, item.high, near) for _ in range(count)]
    else:
        numbers = [draw.choice(("100", "1", "2", "3", "5")), *(draw.choice(("1", "30", "28,4", "1/2", "0.7", "44"))
                                                              for _ in range(count - 1))]
    if mood == "edge" and numbers:
        numbers[draw.randrange(len(numbers))] = str(draw.choice(UNUSUAL))
    return draw.choice((":", " : ", ";", " to ")).join(numbers)


def _amount(item, hand, mood, typed):
    draw = hand.draw
    option = draw.choice(item.options)
    if draw.random() < 0.8:
        typed[item.name + "_is"] = option[0] if mood != "broken" else draw.choice(BROKEN)
    else:
        option = item.options[0]
        typed.pop(item.name + "_is", None)
    if mood == "edge":
        return draw.choice((*UNUSUAL, str(item.high), "0.0001"))
    near = 12 if BY_NAME[option[2][0]].quantity == "count" else 300
    unit = draw.choice(option[2])
    behind = "" if unit == option[2][0] else " " + unit_for(unit, hand.system)
    return quantity(hand, unit, 0, item.high, near) + behind


def _pick(item, hand, mood, _):
    draw, rows = hand.draw, [row[0] for row in item.record.rows]
    if rows and draw.random() < 0.5:
        return draw.choice(rows) if mood != "broken" else "no such row"
    own = fields(item.record.fields, hand)
    if rows and draw.random() < 0.6:
        own["id"] = draw.choice(rows) if mood != "broken" else draw.choice(("no such row", 7, None, {}))
    return own


def _group(item, hand, mood, _):
    draw = hand.draw
    count = draw.randint(0, item.most + 1) if mood == "broken" else draw.randint(item.least, min(item.most, 4))
    if mood == "plain" and item.gaps:  # a row for each part, most with one figure typed
        rows, empty, hand.empty = [], hand.empty, 0
        for _ in range(draw.choice((1, hand.parts, hand.parts))):
            row = fields(item.fields, hand)
            rows.append(dict([next(iter(row.items()))]) if row and draw.random() < 0.8 else row)
        hand.empty = empty
    else:
        rows = [fields(item.fields, hand) for _ in range(count)]
    if mood == "plain" and draw.random() < 0.6:  # what is read off one after the other mostly grows
        rows.sort(key=lambda row: [(len(str(text).replace(",", ".").split(".")[0]), str(text))
                                   for text in row.values()])
    if mood == "edge" and rows:
        rows[draw.randrange(len(rows))] = {}
    if draw.random() < 0.5:
        return rows
    named = {str(place): row for place, row in enumerate(rows) if mood != "edge" or draw.random() < 0.8}
    if mood == "broken":
        named[draw.choice(("-1", "x", "1e3", "99999", "\u0663", ""))] = draw.choice(({}, "text", None))
    return named


def _phone(_, hand, mood, __):
    draw = hand.draw
    if mood == "edge":
        return draw.choice(("+49 (0)30-192 40", " 112 ", "(030) 12.34.56", "+1 800 222 1222", "9" * 15))
    return draw.choice(("112", "911", "+48 22 123 45 67", "015 11 22 33")) if mood == "plain" else draw.choice(
        ("112/144", "one", "1", "+", "9" * 16, "112 or 999"))


MAKERS = {"number": _number, "choice": _choice, "text": _text, "parts": _parts, "amount": _amount, "pick": _pick,
          "group": _group, "phone": _phone}


def pairs(typed, prefix=""):
    """A tree as pairs of dotted name and text, as a form would send it; a row's id stands under the name itself."""
    found = []
    for key, value in (enumerate(typed) if isinstance(typed, list) else typed.items()):
        name = prefix + str(key)
        if isinstance(value, (dict, list)):
            found += pairs(value, name + ".")
        elif value is not None:
            found.append([prefix[:-1] if key == "id" and prefix else name, str(value)])
    return found

"""Own timings: what running pots of a system told, kept with it in a few words each; the newest few count."""
from ..catalogue.containers import CONTAINERS
from ..forms.errors import InputError
from ..forms.inputs import Group
from ..words.numbers import DIGITS, reading, shown, small
from ..words.units import BY_SPELLING, to_si

MOST = 6
SAID = ("stiffening", "good", "gone")
PLACES = tuple([row[0] for row in CONTAINERS])
ASIDE = ("still", "after", "in", "a", "at", "with", "of")
# quantity: field, least, most [SI], as the clock's own timings are asked
FIGURES = {"time": ("after", 60, 172800), "mass": ("mass", 0.001, 20), "temperature": ("at", 263.15, 323.15)}
LIKE = "Own timings: like 'stiffening 31 min {240 g} cup {20 degC}', the next behind a semicolon"


def read_timings(text: str):
    """Typed timings as the rows that `heat` reads; those that nothing is said of were stiffening.

    >>> [(row["said"], row["after"], row["in"], row["at"]) for row in read_timings("31 min 240g cup 20 °C")]
    [('stiffening', 1860.0, 'cup', 293.15)]
    """
    rows = []
    for piece in text.split(";"):
        words = [word for word in small(piece).split(" ") if word]
        if words:
            rows.append(_row(words, len(rows)))
    return rows[-MOST:]


def _row(words, place):
    row, before = {"said": SAID[0], "place": place}, ""
    for word in words:
        word = word[:-1] if word[-1] == "," else word
        if not word:
            continue
        if before:
            word, before = before + " " + word, ""
        elif word[0] in DIGITS and word[-1] in DIGITS:
            before = word  # its unit comes next
            continue
        if word in SAID:
            row["said"] = word
        elif word in PLACES:
            row["in"] = word
        elif word[0] in DIGITS:
            _figure(row, word)
        elif word not in ASIDE:
            raise InputError("timings", LIKE)
    if before or len(row) < 6:
        raise InputError("timings", LIKE)
    return row


def _figure(row, word):
    value, behind, _ = reading(word)
    for unit in BY_SPELLING.get(behind, ()) if value is not None else ():
        name, least, most = FIGURES.get(unit.quantity, ("", 0, 0))
        if name and name not in row and least <= to_si(value, unit.name) <= most:
            row[name] = to_si(value, unit.name)
            return
    raise InputError("timings", LIKE)


def timings_text(rows):
    """Timings as typed text; the inverse of `read_timings`.

    >>> timings_text(read_timings("gone 31 min 240 g cup 20 °C"))
    'gone 1860 s 240 g cup 20.0 °C'
    """
    return "; ".join([" ".join([text for _, text in _typed(row)]) for row in rows[-MOST:]])


def timings_pairs(rows):
    """Timings as the rows of the clock's form; none at all as a list that was emptied.

    >>> timings_pairs(read_timings("gone 31 min 240 g cup 20 °C"))[:2], timings_pairs([])
    ([['timings.0.said', 'gone'], ['timings.0.after', '1860 s']], [['timings', 'none']])
    """
    found = []
    for place, row in enumerate(rows[-MOST:]):
        found += [["timings.{}.{}".format(place, name), text] for name, text in _typed(row)]
    return found or [["timings", Group.NONE]]


def _typed(row):
    return (("said", row["said"]), ("after", shown(row["after"]) + " s"), ("mass", shown(row["mass"] * 1000) + " g"),
            ("in", row["in"]), ("at", shown(row["at"] - 273.15, 1) + " °C"))


def counted_text(count: int) -> str:
    """How many own timings a time rests on.

    >>> counted_text(1), counted_text(3)
    ('from 1 own timing', 'from 3 own timings')
    """
    return "from " + str(count) + (" own timing" if count == 1 else " own timings")

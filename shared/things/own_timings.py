"""Own timings: what running pots of a system told, kept with it in a few words each; the newest few count."""
from ..catalogue.containers import CONTAINERS
from ..catalogue.sunlight import COVER, LOOKS, SUN
from ..forms.errors import InputError
from ..forms.inputs import Group
from ..forms.types import Said
from ..words.messages import message
from ..words.numbers import DIGITS, reading, shown, small, warmth_typed
from ..words.units import BY_SPELLING, to_si
from .kept_words import SPELT

MOST = 6
SAID = ("stiffening", "good", "gone")
PLACES = tuple([row[0] for row in CONTAINERS])
ASIDE = ("still", "after", "in", "a", "at", "with", "of", "the")
RESIN = "resin"  # the temperature behind it is the resin's own
SHINES = "sun"  # alone it is full sun
# words of the sun that it stood in: which field each fills; what is not said is the first of its rows, but for the sun
SUNS = dict([(row[0], name) for name, rows in ((SHINES, SUN), ("looks", LOOKS[1:]), ("cover", COVER[1:]))
             for row in rows])
UNSAID = {SHINES: "", "looks": LOOKS[0][0], "cover": COVER[0][0]}
IN_SUN = tuple([row[0] for row in SUN if row[2]])
SAYS = ("filler", RESIN, SHINES)  # what says what it is
NEEDED = ("after", "mass", "in", "at")
# quantity: field, least, most [SI], as the clock's own timings are asked
FIGURES = {"time": ("after", 60, 172800), "mass": ("mass", 0.001, 20), "temperature": ("at", 263.15, 323.15),
           "share": ("filler", 0, 0.8), "density": ("grain", 50, 8000)}
WARM = {"temperature": (RESIN, 268.15, 333.15)}
LIKE = "own-timings-like"


def read_timings(text: str) -> list:
    """Typed timings as the rows that `heat` reads; those that nothing is said of were stiffening.

    >>> [(row["said"], row["after"], row["in"], row["at"]) for row in read_timings("31 min 240g cup 20 °C")]
    [('stiffening', 1860.0, 'cup', 293.15)]
    >>> [row] = read_timings("gone 31 min 240 g cup 20 °C filler 30 % resin 25 °C")
    >>> row["filler"], row["resin"], row["grain"], row["sun"]
    (0.3, 298.15, None, '')
    >>> [(row["sun"], row["looks"]) for row in read_timings("9 min 240 g tray 20 °C in full sun black")]
    [('full', 'black')]
    """
    rows = []
    for piece in text.split(";"):
        words = [word for word in small(piece).split(" ") if word]
        if words:
            rows.append(_row(words, len(rows)))
    return rows[-MOST:]


def _row(words: list, place: int) -> dict:
    row, before, figures = {"said": SAID[0], "place": place, "filler": None, "grain": None, RESIN: None}, "", FIGURES
    row.update(UNSAID)
    for word in words:
        word = word[:-1] if word[-1] == "," else word
        if not word:
            continue
        if before:
            word, before = before + " " + word, ""
        elif word[0] in DIGITS and word[-1] in DIGITS:
            before = word  # its unit comes next
            continue
        word = SPELT.get(word, word)
        if word in SAID:
            row["said"] = word
        elif word in PLACES:
            row["in"] = word
        elif word[0] in DIGITS:
            _figure(row, word, figures)
            figures = FIGURES
        elif word == RESIN:
            figures = WARM
        elif word == SHINES:
            row[SHINES] = row[SHINES] or SUN[-1][0]
        elif word in SUNS:
            row[SUNS[word]] = word
        elif word != "filler" and word not in ASIDE:
            raise InputError("timings", LIKE)
    if before or [name for name in NEEDED if name not in row]:
        raise InputError("timings", LIKE)
    return row


def _figure(row: dict, word: str, figures: dict) -> None:
    value, behind, _ = reading(word)
    for unit in BY_SPELLING.get(behind, ()) if value is not None else ():
        name, least, most = figures.get(unit.quantity, ("", 0, 0))
        if name == "at" and name in row:  # the second temperature is the resin's
            name, least, most = WARM[unit.quantity]
        if name and row.get(name) is None and least <= to_si(value, unit.name) <= most:
            row[name] = to_si(value, unit.name)
            return
    raise InputError("timings", LIKE)


def timings_text(rows: list) -> str:
    """Timings as typed text; the inverse of `read_timings`.

    >>> timings_text(read_timings("gone 31 min 240 g cup 20 °C"))
    'gone 1860 s 240 g cup 20.0 °C'
    """
    return "; ".join([" ".join([name + " " + text if name in SAYS else text for name, text in _typed(row)])
                      for row in rows[-MOST:]])


def timings_pairs(rows: list) -> list:
    """Timings as the rows of the clock's form; none at all as a list that was emptied.

    >>> timings_pairs(read_timings("gone 31 min 240 g cup 20 °C"))[:2], timings_pairs([])
    ([['timings.0.said', 'gone'], ['timings.0.after', '1860 s']], [['timings', 'none']])
    """
    found = []
    for place, row in enumerate(rows[-MOST:]):
        found += [["timings.{}.{}".format(place, name), text] for name, text in _typed(row)]
    return found or [["timings", Group.NONE]]


def _typed(row: dict) -> list:
    found = [("said", row["said"]), ("after", shown(row["after"]) + " s"), ("mass", shown(row["mass"] * 1000) + " g"),
             ("in", row["in"]), ("at", warmth_typed(row["at"]))]
    if row["filler"] is not None:
        found.append(("filler", shown(row["filler"] * 100, 1) + " %"))
    if row["grain"] is not None:
        found.append(("grain", shown(row["grain"] / 1000, 2) + " g/mL"))
    if row[RESIN] is not None:
        found.append((RESIN, warmth_typed(row[RESIN])))
    return found + sun_typed(row)


def sun_typed(row: dict) -> list:
    """The sun that a pot stood in, as its fields are typed; none in the shade, and no more than was said.

    >>> sun_typed({"sun": "full", "looks": "unknown", "cover": "glass"}), sun_typed({"sun": "shade"})
    ([('sun', 'full'), ('cover', 'glass')], [])
    """
    names = (SHINES, "looks", "cover") if in_sun(row) else ()
    return [(name, row[name]) for name in names if row[name] != UNSAID[name]]


def in_sun(row: dict) -> bool:
    """Whether an own timing, or what else declares a sun, stood in it; where nobody said, it stood in the shade.

    >>> in_sun({"sun": "some"}), in_sun({"sun": ""}), in_sun({})
    (True, False, False)
    """
    return (row.get(SHINES) or "") in IN_SUN


def counted(count: int) -> Said:
    """How many own timings a time rests on."""
    return message("own-timings-counted", count=count)

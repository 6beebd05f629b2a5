"""Cautions lines: the cautions of the moment in words, with the figures that bring them up."""
from ..catalogue.cautions import IN_SUN, LEFT, MOMENT
from ..catalogue.hazards import FIRST_SENTENCE, hazard
from ..forms.types import Said, Values
from ..words.lines import WARN, Line, words
from ..words.messages import message, noted, number, quantity, sentences, typed
from ..words.numbers import DOWN, UP, shown
from ..words.sourced import sourced
from .own_codes import gravest
from .powders import powder

ROWS = dict([(one[0], one) for one in MOMENT])
UNNAMED = "powder"  # what `current_caution` calls a filler of which it knows nothing


def say(names: "list[str]", known: Values) -> list[Line]:
    """Lines of rank WARN, each with where it comes from.

    names: of catalogue.cautions.MOMENT; known: the keywords of `cautions.standing`
    >>> [line.name for line in say(["big_pot", "powder"], {"mass": 0.5, "filler": "Wood flour"})]
    ['caution_big_pot', 'caution_powder']
    """
    lines, in_sun = [], dict(IN_SUN)
    dust = powder(known.get("filler") or "")
    for name in names:
        _, _, text, task, mark, source, short = ROWS[name]
        grave = gravest(name, known.get("codes") or ())
        if grave:
            mark, source = grave[-2:]
        where = sourced(mark, source)
        if name == "powder":
            if dust:
                where = noted([where, sourced(*dust[4:])])
            else:
                text = short  # nothing is known about it
        elif known.get("sun"):
            text = in_sun.get(name, text)
        said = message(text, **_filled(name, known))
        if name == "powder" and dust:
            said = sentences([said, dust[3]])
        lines.append(words("caution_" + name, label(name, known), said, rough=where, caution=task, rank=WARN))
    return lines


def label(name: str, known: Values) -> Said:
    """What a caution is headed by."""
    return message(ROWS[name][1], **_filled(name, known))


def short(name: str, known: Values) -> Said:
    """A caution where there is room for one sentence."""
    text = dict(LEFT).get(name) if known.get("left") is not None else None
    return message(text or ROWS[name][6], **_filled(name, known, short=True))


def _filled(name: str, known: Values, short: bool = False) -> dict:
    """The values that a caution names; only what is known."""
    filled: dict = {}
    if name == "powder":
        dust = powder(known.get("filler") or "")
        filled["filler"] = dust[1] if dust else _called(known.get("filler"))
    grave = gravest(name, known.get("codes") or ())
    if grave:
        code, official, _, filled["signal"], _, _ = grave
        first = dict(FIRST_SENTENCE).get(code) if short else None
        row = hazard(first) if first else None
        filled["code"], filled["official"] = typed(code), row[1] if row else official
    for key, what, unit, toward in (("left", "amount", "g", UP), ("mass", "amount", "g", UP),
                                    ("temperature", "temperature", "degC", UP), ("usable", "minutes", "min", DOWN),
                                    ("depth", "depth", "mm", UP), ("room", "room", "m3", DOWN)):
        if known.get(key) is not None:
            filled[what] = quantity(known[key], unit, toward, None if key == "depth" else 0, 2)
    if known.get("changes") is not None:
        filled["changes"] = number(shown(known["changes"] * 3600, 1, DOWN))
    return filled


def _called(filler: "str | None") -> Said:
    if not filler:
        return "caution-powder.other"
    return "caution-powder.unnamed" if filler == UNNAMED else typed(filler[:30])

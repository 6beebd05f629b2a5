"""Cautions lines: the cautions of the moment in words, with the figures that bring them up."""
from ..catalogue.cautions import MOMENT, SPREAD_IN_SUN
from ..forms.types import Values
from ..words.lines import WARN, Line, words
from ..words.numbers import BLANKS, DOWN, UP
from ..words.provenance import provenance
from ..words.units import METRIC, told
from .own_codes import gravest
from .powders import powder


def say(names: "list[str]", known: Values, units: str = METRIC) -> list[Line]:
    """Lines of rank WARN, each with where it comes from.

    names: of catalogue.cautions.MOMENT; known: the keywords of `cautions.standing`; units: METRIC or US
    >>> [line.label for line in say(["big_pot", "powder"], {"mass": 0.5, "filler": "Wood flour"})]
    ['A big pot', 'Wood flour']
    """
    rows = dict([(row[0], row) for row in MOMENT])
    lines, filled, row = [], _filled(known, units), powder(known.get("filler") or "")
    for name in names:
        _, label, text, task, mark, source = rows[name]
        grave = gravest(name, known.get("codes") or ())
        if grave:
            filled["code"], filled["official"], _, filled["signal"], mark, source = grave
        where = provenance(mark, source)
        if row and "{about}" in text:
            where += "; " + provenance(*row[4:])
        for key in filled:
            label, text = label.replace("{" + key + "}", filled[key]), text.replace("{" + key + "}", filled[key])
        if known.get("sun"):
            for advice, in_sun in SPREAD_IN_SUN:
                text = text.replace(advice, in_sun)
        lines.append(words("caution_" + name, label, text.strip(BLANKS), rough=where, caution=task,
                           rank=WARN))
    return lines


def _filled(known: Values, units: str) -> dict:
    """The figures a caution names, as text; only what is known."""
    filled = {"filler": "Powder", "about": ""}
    row = powder(known.get("filler") or "")
    if row:
        filled["filler"], filled["about"] = row[1], row[3]
    elif known.get("filler"):
        filled["filler"] = known["filler"][:30]
    for key, name, unit, toward in (("mass", "amount", "g", UP), ("temperature", "temperature", "degC", UP),
                                    ("usable", "minutes", "min", DOWN), ("depth", "depth", "mm", UP),
                                    ("room", "room", "m3", DOWN)):
        if known.get(key) is not None:
            filled[name] = told(known[key], unit, units, toward, None if key == "depth" else 0, 2)
    if known.get("changes") is not None:
        filled["changes"] = told(known["changes"] * 3600, "", units, DOWN, 1) + " air changes an hour"
    return filled

"""Trials: what test cups of a system gave, kept with it in a few words each; each counts as an own timing."""
from ..forms.errors import InputError
from ..words.numbers import reading, shown, small
from ..words.units import BY_SPELLING, to_si

MOST = 3
LIKE = "trials-like"
# as it is typed, unit, name in the row, least, most [SI]; the last two figures are shares of what is estimated
FIGURES = (("thick", "s", "after", 60, 172800), ("doubt", "%", "doubt", 0.01, 1), ("mass", "g", "mass", 0.001, 20),
           ("air", "°C", "at", 263.15, 323.15), ("loss", "%", "loss", 0.1, 10), ("heat", "%", "heat", 0.3, 3),
           ("width", "mm", "width", 0.02, 0.4), ("mix", "°C", "resin", 268.15, 333.15))
NEEDED = 6


def read_trials(text: str) -> list:
    """Kept tests as own timings of a cup that was stiffening, with what only a test knows beside it.

    >>> [row] = read_trials("thick 1800 s, doubt 8 %, mass 100 g, air 20 °C, loss 90 %, heat 97 %")
    >>> row["said"], row["after"], row["in"], row["loss"], row["width"]
    ('stiffening', 1800.0, 'cup', 0.9, None)
    """
    rows = []
    for piece in text.split(";"):
        if piece.strip(" "):
            rows.append(_row(piece, len(rows)))
    return rows[-MOST:]


def _row(piece: str, place: int) -> dict:
    row = {"said": "stiffening", "in": "cup", "place": place}
    row.update(dict([(key, None) for key in ("filler", "grain", "width", "resin")]))
    known: dict = dict([(one[0], one) for one in FIGURES])
    for words in piece.split(", "):  # a comma alone may be of decimals
        name, _, typed = words.strip(" ").partition(" ")
        value, behind, _ = reading(typed)
        _, sign, key, least, most = known.pop(name, ("", "", "", 0, 0))
        if value is None or not sign or behind != sign:
            raise InputError("trials", LIKE)
        row[key] = to_si(value, BY_SPELLING[small(sign)][0].name)
        if not least <= row[key] <= most:
            raise InputError("trials", LIKE)
    if [one for one in FIGURES[:NEEDED] if one[0] in known]:
        raise InputError("trials", LIKE)
    return row


def trials_text(rows: "list | tuple") -> str:
    """Tests as typed text; the inverse of `read_trials`.

    >>> text = "thick 1800 s, doubt 8 %, mass 100 g, air 20.0 °C, loss 90 %, heat 97 %, width 70 mm"
    >>> trials_text(read_trials(text)) == text
    True
    """
    found = []
    for row in rows[-MOST:]:
        words = []
        for name, sign, key, _, _ in FIGURES:
            if row[key] is not None:
                value = row[key] - 273.15 if sign == "°C" else row[key] * {"s": 1, "%": 100}.get(sign, 1000)
                words.append(name + " " + shown(value, 1 if sign == "°C" else 0) + " " + sign)
        found.append(", ".join(words))
    return "; ".join(found)

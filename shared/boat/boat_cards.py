"""Boat cards: what each joint takes, to hang on the wall: its putty, its resin, its spreader, its pieces by number."""
from ..forms.memo import memo_of
from ..forms.types import Found, Values
from ..seam import seam
from ..words.lengths import mm
from ..words.lengths import radii as radii_text
from ..words.lines import MORE, Line, words
from ..words.numbers import UP
from ..words.units import told
from .cut_lines import in_runs


def lines(values: Values, work: list, labels: list, tapes: list) -> list[Line]:
    """One card for each joint, all copies. work: as `hull.seams` gives it; labels: of each

    tapes: as `hull.cut_lists` gives them
    """
    shared = [values[name] for name in ("units", "putty_density", "tooling", "tray")]
    before = memo_of(values).under("wall cards")  # by place: on a phone one joint changes at a time
    numbers, widths, found = {}, [], []  # type: dict, list, list
    for width, _, rows, _, _, _ in tapes:
        width = mm(width, values["units"])
        if width not in widths:
            widths.append(width)
        for piece in rows:
            numbers.setdefault(piece[1]["place"], {}).setdefault(width, []).append(piece[0])
    for kept, label in zip(work, labels):
        place = kept[0]["place"]
        said = before.get(place)
        if not said or said[0] is not kept or said[1] != shared:
            said = before[place] = kept, shared, takes(values, kept)
        own = numbers.get(place, {})
        pieces = "; ".join(["tape " + width + ": " + in_runs(own[width]) for width in widths if width in own])
        if said[2] or pieces:
            found.append(words("wall_" + str(place), label, said[2] or pieces, rank=MORE, part="wall",
                               rough=pieces if said[2] else ""))
    return found


def takes(values: Values, kept: Found) -> str:
    """Putty, resin and spreader of one joint in words."""
    row, made, radii = kept.row, kept.seam, kept.radii
    texts, units, copies = [], values["units"], row["copies"]
    if made.putty:
        putty = seam.placed(made.putty * values["putty_density"], values["tooling"]) * copies
        texts.append("putty to place " + told(putty, "g", units, UP))
    wet = (made.wet_out + made.ply_takes + values["tray"] * made.taped) * copies
    if wet:
        texts.append("resin for tape " + told(wet, "g", units, UP))
    if radii:
        sizes = sorted(dict([(radius, True) for radius in radii]))
        texts.append("spreader " + radii_text(sizes, units))
    return "; ".join(texts)

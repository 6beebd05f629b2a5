"""Boat cards: what each joint takes, to hang on the wall: its putty, its resin, its spreader, its pieces by number."""
from . import seam
from .lengths import mm
from .lines import MORE, words
from .numbers import UP
from .units import told


def lines(values, work, tapes):
    """One card for each joint, all copies. work: as `hull.seams` gives it; tapes: as `hull.cut_lists` does."""
    units, numbers = values["units"], {}
    for width, _, rows, _, _ in tapes:
        for piece in rows:
            own = numbers.setdefault(piece[1]["place"], {})
            own.setdefault(mm(width, units), []).append(piece[0])
    found = []
    for row, _, made, told_line, radii in work:
        texts, copies = [], row["copies"]
        if made.putty:
            putty = seam.placed(made.putty * values["putty_density"], values["tooling"]) * copies
            texts.append("putty to place " + told(putty, "g", units, UP))
        wet = (made.wet_out + made.ply_takes + values["tray"] * made.taped) * copies
        if wet:
            texts.append("resin for tape " + told(wet, "g", units, UP))
        if radii:
            sizes = sorted(dict([(radius, True) for radius in radii]))
            texts.append("spreader R " + ", ".join([str(size) for size in sizes]) + " mm")
        own = numbers.get(row["place"], {})
        pieces = ["tape " + width + ": " + ", ".join([str(number) for number in own[width]]) for width in own]
        if texts or pieces:
            found.append(words("wall_" + str(row["place"]), told_line.label, "; ".join(texts or pieces), rank=MORE,
                               part="wall", rough="; ".join(pieces) if texts else ""))
    return found

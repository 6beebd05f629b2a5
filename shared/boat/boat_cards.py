"""Boat cards: what each joint takes, to hang on the wall: its putty, its resin, its spreader, its pieces by number."""
from ..forms.memo import memo_of
from ..forms.types import Found, Said, Values
from ..seam import seam
from ..words.lines import MORE, Line, words
from ..words.messages import length, message, noted, quantity
from ..words.numbers import UP, bare
from .cut_lines import in_runs, radii_said


def lines(values: Values, work: list, labels: list, tapes: list) -> list[Line]:
    """One card for each joint, all copies. work: as `hull.seams` gives it; labels: of each

    tapes: as `hull.cut_lists` gives them
    """
    shared = [values[name] for name in ("putty_density", "tooling", "tray")]
    before = memo_of(values).under("wall cards")  # by place: on a phone one joint changes at a time
    numbers, widths, found = {}, [], []  # type: dict, list, list
    for width, _, rows, _, _, _ in tapes:
        wide = bare(width * 1000, 1)  # tapes of one width and several weights are one to whoever lays them
        if wide not in [one for one, _ in widths]:
            widths.append((wide, length(width)))
        for piece in rows:
            numbers.setdefault(piece[1]["place"], {}).setdefault(wide, []).append(piece[0])
    for kept, label in zip(work, labels):
        place = kept[0]["place"]
        said = before.get(place)
        if not said or said[0] is not kept or said[1] != shared:
            said = before[place] = kept, shared, takes(values, kept)
        own = numbers.get(place, {})
        laid = [message("boat-wall.tape", width=width, numbers=in_runs(own[wide])) for wide, width in widths
                if wide in own]
        pieces = noted(laid)
        if said[2] or pieces:
            found.append(words("wall_" + str(place), label, said[2] or pieces, rank=MORE, part="wall",
                               rough=pieces if said[2] else ""))
    return found


def takes(values: Values, kept: Found) -> Said:
    """Putty, resin and spreader of one joint in words."""
    made, radii, copies = kept.seam, kept.radii, kept.row["copies"]
    texts = []
    if made.putty:
        putty = seam.placed(made.putty * values["putty_density"], values["tooling"]) * copies
        texts.append(message("boat-wall.putty", putty=quantity(putty, "g", UP)))
    wet = (made.wet_out + made.ply_takes + values["tray"] * made.taped) * copies
    if wet:
        texts.append(message("boat-wall.resin", resin=quantity(wet, "g", UP)))
    if radii:
        sizes = sorted(dict([(radius, True) for radius in radii]))
        texts.append(message("boat-wall.spreader", radii=radii_said(sizes)))
    return noted(texts)

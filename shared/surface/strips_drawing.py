"""Strips drawing: one face with the strips of cloth on it, and where they join."""
from ..drawing.shapes import figure
from ..drawing.sheet import EDGE, WIDTH, Sheet
from ..forms.types import Found, Said, Values
from ..words.messages import along, listed, message
from ..words.messages import row as words_of
from ..words.numbers import UP

MOST_WRITTEN = 6  # joins beside each other that can still be read


def strips_said(cut: Found) -> Said:
    """"3 × 3.1 m", or each length where they differ. cut: a `sheathing.Cut`"""
    each = [along(long, UP) for long in cut.lengths]
    return words_of([len(each), each[0]], " × ") if min(cut.lengths) == max(cut.lengths) else listed(each, "plain")


def strips(cut: Found, values: Values) -> dict:
    """The face as it is laid out, its joins measured from the first edge. cut: a `sheathing.Cut`"""
    row = values["faces"][0]
    for one in values["faces"]:
        if one["place"] == cut.place:
            row = one
    run, widths = row["length"], row["widths"]
    wide = max(widths)
    step = run / (len(widths) - 1) if len(widths) > 1 else run
    edge = [(0.0, 0.0)] + [(step * place, one) for place, one in enumerate(widths)]
    if len(widths) == 1:
        edge.append((run, wide))
    sheet = Sheet([(0.0, 0.0), (run, wide)], top=40)
    shapes = [sheet.area("panel", edge + [(run, 0.0)])]
    for join in cut.joins:
        for side in (-values["lap"] / 2, values["lap"] / 2):
            at = join + side
            line = [(at, 0.0), (at, wide)] if cut.across else [(0.0, at), (run, at)]
            shapes.append(sheet.path("tape", line))
        if len(cut.joins) <= MOST_WRITTEN:
            x, y = sheet.one(join, wide) if cut.across else sheet.one(run / 2, join)
            sheet.write("dimension", x, y - 6 if cut.across else y + 4, along(join))
        sheet.rule("leader", *[sheet.one(*point) for point in (
            ((join, 0.0), (join, wide)) if cut.across else ((0.0, join), (run, join)))])
    sheet.write("label", EDGE, 16, strips_said(cut), "start")
    told = message("sheathing-drawing.told", count=len(cut.lengths),
                   joins=listed([along(join) for join in cut.joins])) if (
        cut.joins) else "sheathing-drawing.told-one"
    return figure("strips", "sheathing-drawing", WIDTH, sheet.bottom + EDGE, shapes + sheet.measures(), told)

"""Cups, graduated cups and syringes to start from: sizes that we chose, as such things may have them.

A builder measures the own cup's inside with a ruler and replaces these.
"""
from .marks import COMMON, JUDGED


def about(bottom: int, top: int, height: int) -> str:
    """What a tapered cup holds to the rim, to one figure, as a label says it. All in mm.

    >>> about(48, 68, 80), about(100, 118, 110)
    ('200 mL', '1 L')
    """
    held, step = 3.14159 / 12 * height * (bottom * bottom + bottom * top + top * top) / 1000, 1
    while held >= 10 * step:
        step = step * 10
    held = int(held / step + 0.5) * step
    return "{} mL".format(held) if held < 1000 else "{} L".format(held // 1000)


# id, label as a message, mark, typed text of the record's fields; a label is made of them; (4, text): `messages.number`
CUPS = tuple([
    (key, (label, {"holds": "{" + about(bottom, top, height) + "}"}), JUDGED, (
        ("name", name), ("bottom", "{} mm".format(bottom)), ("top", "{} mm".format(top)),
        ("height", "{} mm".format(height))))
    for key, label, name, bottom, top, height in (
        ("small", "row-cup.small", "Small cup", 48, 68, 80),
        ("medium", "row-cup.medium", "Tapered cup", 60, 80, 105),
        ("tin", "row-cup.tin", "Straight tin", 73, 73, 105),
        ("tub", "row-cup.tub", "Wide tub", 100, 118, 110))])
GRADUATED = tuple([
    (key, (label, {"holds": holds, "step": (4, step)}), JUDGED, (
        ("name", name), ("holds", holds), ("step", step + " mL")))
    for key, label, name, holds, step in (
        ("30mL", "row-graduated.medicine", "Medicine cup", "30 mL", "2.5"),
        ("400mL", "row-graduated.mixing", "Mixing cup", "400 mL", "10"),
        ("1L", "row-graduated.mixing", "Large mixing cup", "1 L", "50"))])
SYRINGES = tuple([
    (key, (label, {"first": "{" + holds[0] + " mL}", "last": "{" + holds[-1] + " mL}"}), COMMON, (
        ("name", name.format(*holds)), ("holds", " : ".join(holds) + " mL"), ("steps", steps)))
    for key, label, name, holds, steps in (
        ("60-20", "row-syringes.one-each", "{} and {}", ("60", "20"), "1 : 1 mL"),
        ("10-10", "row-syringes.two-alike", "Two of {}", ("10",), "0.5 mL"))])

"""Late: modules that most key presses do not need. A phone loads them when they are first asked; said once, here."""

LATE = ("bench", "by_marks", "by_pumps", "by_stick", "handover", "in_cup", "in_place", "in_use", "learned_rates",
        "own_timings", "rescue_lines", "thicken_lines")


def late(name):
    """The module of that name; KeyError where it is none of these."""
    if name not in LATE:
        raise KeyError(name)
    package = __name__.rpartition(".")[0]
    return __import__(package + "." + name, None, None, (name,))

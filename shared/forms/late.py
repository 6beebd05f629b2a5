"""Late: modules that most key presses do not need. A phone loads them when they are first asked; said once, here."""

from .types import Module

# room, module
LATE = (
    ("clock", "hot_pot"),
    ("door", "calendar_file"),
    ("door", "saved_file"),
    ("door", "handover"),
    ("mix", "shelf"),
    ("pour", "by_marks"),
    ("pour", "by_marks_lines"),
    ("pour", "by_pumps"),
    ("pour", "by_pumps_lines"),
    ("pour", "by_stick"),
    ("pour", "by_stick_lines"),
    ("pour", "compare_tools"),
    ("pour", "compare_tools_lines"),
    ("pour", "cup_drawing"),
    ("pour", "in_cup"),
    ("pour", "putty"),
    ("pour", "rescue_lines"),
    ("pour", "thicken_lines"),
    ("pour", "time_in_cup"),
    ("pour", "time_in_cup_lines"),
    ("safety", "current_caution"),
    ("safety", "own_codes"),
    ("safety", "own_codes_lines"),
    ("safety", "pictogram_drawing"),
    ("things", "learned_rates"),
    ("things", "own_timings"),
    ("things", "trials"),
)


def late(name: str) -> Module:
    """The module of that name; KeyError where it is none of these."""
    for room, module in LATE:
        if module == name:
            package = __name__[:-len(".forms.late")]
            return __import__(package + "." + room + "." + name, None, None, (name,))
    raise KeyError(name)

"""Catalogue tables: what the catalogue states, table by table."""
from ..catalogue.marks import COMMON, JUDGED, LABEL, MEMORY, OWN, PUBLISHED
from ..forms.types import Module
from ..words.numbers import small

# every module of the catalogue that states facts; one that declares no TABLES is read column by column
MODULES = ("systems", "tools", "vessels", "fillers", "containers", "pot_life", "cure_times", "softening", "rates",
           "glass", "losses", "ratios", "measuring", "damp", "joints", "pots", "trials", "plans", "starts", "cautions",
           "tasks_shared", "tasks_mixing", "tasks_cleaning", "tasks_trouble", "first_aid", "hazards", "solvents",
           "dusts", "airing", "sunlight", "surfaces",
           "strength")
MARKS = (PUBLISHED, COMMON, MEMORY, JUDGED, LABEL, OWN)


def catalogue(name: str) -> Module:
    """A module of the catalogue."""
    package = __name__[:-len(".kit.catalogue_tables")]
    return __import__(package + ".catalogue." + name, None, None, ("TABLES",))


def tables(module: Module) -> tuple:
    """Its tables: (title, rows, columns of the label, columns of the text); found by their marks where not declared."""
    declared = getattr(module, "TABLES", None)
    if declared is not None:
        return declared
    found = []
    for name in sorted(dir(module)):
        rows, title = getattr(module, name), small(name).replace("_", " ")
        if not isinstance(rows, tuple) or not rows:
            continue
        if mark_at(rows) >= 0:  # one fact by itself, its mark behind it
            rows = ((title,) + rows,)
        if not isinstance(rows[0], tuple) or mark_at(rows[0]) < 0:
            continue
        place = mark_at(rows[0])
        if isinstance(rows[0][-1], str):  # the mark, or its source behind it
            label = 0 if isinstance(rows[0][1], (int, float)) else 1  # behind its key a row may carry its words
            found.append((title, rows, (label,), tuple(range(label + 1, place))))
        else:
            found.append((title, rows, (1,), ()))
    return tuple(found)


def mark_at(row: tuple) -> int:
    """The column of a row's mark, below nought where it has none."""
    for place, item in enumerate(row):
        if isinstance(item, str) and item in MARKS:
            return place
    return -1

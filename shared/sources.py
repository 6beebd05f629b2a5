"""Sources: every figure and statement of the catalogue in one table, with its mark and where it comes from."""
from .catalogue.marks import COMMON, LABEL, MEMORY, OWN, PUBLISHED
from .inputs import Choice
from .lines import SAY, words
from .numbers import BLANKS, places_for, shown, small
from .provenance import provenance

# every module of the catalogue that states facts; one that declares no TABLES is read column by column
MODULES = ("systems", "tools", "vessels", "fillers", "containers", "windows", "cure_times", "rates", "glass",
           "losses", "cautions",
           "tasks_shared", "tasks_mixing", "tasks_cleaning", "tasks_trouble", "hazards", "solvents", "dusts", "airing")
MARKS = (PUBLISHED, COMMON, MEMORY, LABEL, OWN)
ALL = "all"

INPUTS = (
    Choice("mark", "Show", ((ALL, "All"), (PUBLISHED, "Published"), (COMMON, "Common practice"),
                            (MEMORY, "From memory"))),
)
CHECKS = ()

# unit in the table -> unit on the screen, times, offset
UNITS = {"share": ("ppm", 1e6, 0), "kg/mol": ("g/mol", 1000, 0), "K": ("°C", 1, -273.15), "1/s": ("an hour", 3600, 0),
         "s": ("min", 1 / 60, 0)}


def catalogue(name):
    """A module of the catalogue."""
    package = __name__.rpartition(".")[0]
    return __import__(package + ".catalogue." + name, None, None, ("TABLES",))


def tables(module):
    """Its tables: (title, rows, columns of the label, columns of the text); found by their marks where not declared."""
    declared = getattr(module, "TABLES", None)
    if declared is not None:
        return declared
    found = []
    for name in sorted(dir(module)):
        rows, title = getattr(module, name), small(name).replace("_", " ")
        if not isinstance(rows, tuple) or not rows:
            continue
        if mark_at(rows) is not None:  # one fact by itself, its mark behind it
            rows = ((title,) + rows,)
        if not isinstance(rows[0], tuple) or mark_at(rows[0]) is None:
            continue
        place = mark_at(rows[0])
        if place + 1 == len(rows[0]):
            found.append((title, rows, (0,), tuple(range(1, place))))
        else:
            found.append((title, rows, (1,), ()))
    return tuple(found)


def mark_at(row):
    """The column of a row's mark, or None."""
    for place, item in enumerate(row):
        if isinstance(item, str) and item in MARKS:
            return place
    return None


def walk():
    """Every fact: (module, table, what, text, mark, source)."""
    for name in MODULES:
        for title, rows, label_columns, text_columns in tables(catalogue(name)):
            for row in rows:
                place = mark_at(row)
                source = row[place + 1] if place + 1 < len(row) and isinstance(row[place + 1], str) else ""
                what = " · ".join([_text(row[column]) for column in label_columns])
                yield name, title, what, _told(row, text_columns, place), row[place], source


def _told(row, columns, place):
    if not columns:
        return _text(row[place + 1])
    if len(columns) == 2 and isinstance(row[columns[0]], (int, float)) and isinstance(row[columns[1]], str):
        return _figure(row[columns[0]], row[columns[1]])
    return " · ".join([_text(row[column]) for column in columns if row[column] != ""])


def _figure(value, unit):
    if unit == "kg/m3" and value < 0.001:
        return shown(value * 1e6, 1) + " mg/m³"
    if unit == "share" and value > 0.005:
        return shown(value * 100, 1) + "%"
    unit, times, offset = UNITS.get(unit, (unit, 1, 0))
    value = value * times + offset
    return (shown(value, places_for(value)) + " " + unit).strip(BLANKS)


def _text(item):
    if item is True or item is False:
        return "yes" if item else "no"
    if isinstance(item, (int, float)):
        return shown(item, places_for(item))
    if isinstance(item, (tuple, list)):
        return ", ".join([" ".join(piece) if isinstance(piece, (tuple, list)) else _text(piece) for piece in item])
    pieces = item.split("{")  # a figure that is filled in on the screen stands as three dots here
    return pieces[0] + "".join(["…" + piece.partition("}")[2] for piece in pieces[1:]])


def answer(values):
    """One line for each fact, in the order of the catalogue."""
    lines = []
    for place, (_, title, what, text, mark, source) in enumerate(walk()):
        if values["mark"] in (ALL, mark):
            lines.append(words("fact_" + str(place), title + ": " + what, text, rough=provenance(mark, source),
                               rank=SAY))
    return lines

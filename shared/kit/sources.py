"""Sources: every figure and statement of the catalogue in one table, with its mark and where it comes from."""
from ..catalogue.hazards import PICTOGRAMS
from ..catalogue.marks import COMMON, JUDGED, LABEL, MEMORY, OWN, PUBLISHED
from ..catalogue.solvents import SOLVENTS
from ..catalogue.tasks import TOPICS
from ..catalogue.titles import ROWS, TITLES
from ..forms.inputs import Choice, Text
from ..things.records_shed import RECORDS
from ..words.lines import SAY, words
from ..words.numbers import capital, places_for, shown, small
from ..words.provenance import provenance
from ..words.units import BY_NAME, METRIC, US, from_si, holds_figure, in_system, sign, to_si, told, unit_for
from .kit import KINDS

# every module of the catalogue that states facts; one that declares no TABLES is read column by column
MODULES = ("systems", "tools", "vessels", "fillers", "containers", "windows", "cure_times", "rates", "glass",
           "losses", "limits", "measuring", "damp", "joints", "pots", "plans", "cautions",
           "tasks_shared", "tasks_mixing", "tasks_cleaning", "tasks_trouble", "hazards", "solvents", "dusts", "airing")
MARKS = (PUBLISHED, COMMON, MEMORY, JUDGED, LABEL, OWN)
ALL = "all"

INPUTS = (
    Choice("mark", "Show", ((ALL, "All"), (PUBLISHED, "Published"), (COMMON, "Common practice"),
                            (MEMORY, "From memory"), (JUDGED, "Own judgement"))),
    Text("find", "Find", help="A word or two: hardener density"),
)
CHECKS = ()

# unit in the table -> unit on the screen, times, plus
SI_UNITS = {"share": ("ppm", 1e6, 0), "%": ("%", 100, 0), "kg/mol": ("g/mol", 1000, 0), "kg/eq": ("g/eq", 1000, 0),
         "J/mol": ("kJ/mol", 0.001, 0), "1/s": ("an hour", 3600, 0), "s": ("min", 1 / 60, 0),
         "hours": ("h", 1 / 3600, 0),
         "kg/m3": ("g/mL", 0.001, 0), "W/(m2 K)": ("W/(m² K)", 1, 0), "m2 K/W": ("m² K/W", 1, 0)}
# those that a builder's units go for
OWN_UNITS = {"K": "degC", "kg": "g", "m": "mm", "kg/m2": "g/m2", "m3": "m3", "m2": "m2"}


def _in_own(name, units):
    """(sign, times, plus) from SI to the user's unit."""
    unit = unit_for(name, units)
    return sign(unit), from_si(1.0, unit) - from_si(0.0, unit), from_si(0.0, unit)


def _units(units):
    found = dict(SI_UNITS)
    for name in OWN_UNITS:
        found[name] = _in_own(OWN_UNITS[name], units)
    found["dK"] = found["K"][:2] + (0,)  # a difference of temperatures
    return found


UNITS = {METRIC: _units(METRIC), US: _units(US)}
TITLED = {(module, table): (title, unit, columns) for module, table, title, unit, columns in TITLES}
WORDED = {(table, key): (what, unit) for table, key, what, unit in ROWS}
# keys that have words elsewhere
KEYED = dict((("other", "Any other"),) + TOPICS + SOLVENTS + tuple([row[:2] for row in PICTOGRAMS]))


def catalogue(name):
    """A module of the catalogue."""
    package = __name__[:-len(".kit.sources")]
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
            label = 1 if isinstance(rows[0][1], str) else 0  # behind its key a row may carry its words
            found.append((title, rows, (label,), tuple(range(label + 1, place))))
        else:
            found.append((title, rows, (1,), ()))
    return tuple(found)


def mark_at(row):
    """The column of a row's mark, or None."""
    for place, item in enumerate(row):
        if isinstance(item, str) and item in MARKS:
            return place
    return None


def walk(units=METRIC):
    """Every fact: (module, table, what, text, mark, source)."""
    for name in MODULES:
        for table, rows, label_columns, text_columns in tables(catalogue(name)):
            title, table_unit, columns = TITLED.get((name, table), (table, "", ()))
            record = "".join([one.name for one in RECORDS if one.rows is rows])
            for row in rows:
                place = mark_at(row)
                source = row[place + 1] if place + 1 < len(row) and isinstance(row[place + 1], str) else ""
                what, unit = WORDED.get((table, _text(row[0])), ("", table_unit))
                if not what and isinstance(row[0], float):  # a row that is called by its figure
                    what = _figure(row[:1], table_unit, units)
                if not what:
                    what = capital(", ".join([KEYED.get(row[one]) or _text(row[one]) for one in label_columns]))
                if record:
                    text = _typed(KINDS[record], row[place + 1], units)
                    yield name, KINDS[record].label, what, text, row[place], source
                else:
                    yield name, title, what, _told(row, columns or text_columns, unit, units), row[place], source


def _typed(record, typed, units):
    """A row that is kept as it would be typed: each field by its label."""
    fields, tree = {field.name: field for field in record.fields}, dict(typed)
    each = [fields[name].label + " " + _as_told(fields[name], text, tree, units)
            for name, text in typed if name != "name"]
    return ", ".join([small(piece[:1]) + piece[1:] for piece in each]).replace("m3", "m³")


def _as_told(field, text, tree, units):
    """What a row holds, in the user's units; METRIC: as it stands in the row."""
    unit = getattr(field, "unit", "")
    if units == METRIC or unit_for(unit, units) == unit:
        return field.in_words(text, tree, METRIC, {})
    read = field.read(text, field.name, {"units": METRIC, "_understood": []})
    each = [told(one, unit, units) for one in (read if isinstance(read, tuple) else (read,))]
    return " : ".join(each)


def _told(row, columns, unit, units):
    """A value with its unit, its least and most behind it, then the words of the row."""
    figures, said = [], []
    for column in columns:
        item = row[column]
        if isinstance(item, (int, float)):
            figures.append(item)
        elif (figures and item in UNITS[METRIC]) or item in ("times", "Pa", "°"):
            unit = item
        elif isinstance(item, tuple) and isinstance(item[0], (int, float)):
            figures.extend(item)
        elif item != "":
            said.append(_text(item))
    if not figures:
        return " · ".join(said)
    if len(figures) != 3 or unit == "h":
        return " · ".join([_figure(figures, unit, units)] + said)
    text = _figure(figures[:1], unit, units)
    if figures[1] != figures[2]:
        text += ", " + _figure(figures[1:2], "", units, unit) + " to " + _figure(figures[2:], "", units, unit)
    return " · ".join([text] + said)


def _figure(values, unit, units, scale=""):
    """Values with their unit; scale: the unit they are only counted in, where it stands elsewhere already."""
    if "kg/m3" in (unit, scale) and values[0] < 0.001:
        sign, times, plus = "mg/m³", 1e6, 0
    elif "share" in (unit, scale) and values[0] > 0.005:
        sign, times, plus = "%", 100, 0
    elif "s" in (unit, scale) and values[0] < 60:
        sign, times, plus = "s", 1, 0
    else:
        known = unit or scale
        sign, times, plus = UNITS[units].get(known, (unit, 1, 0))
        if known == "m a minute" and units == US:
            sign, times = "ft a minute", from_si(1.0, "ft")
        elif known not in UNITS[units] and known in BY_NAME and unit_for(known, units) != known:
            own = unit_for(known, units)  # a row that says its own unit
            sign, times, plus = own, from_si(to_si(1.0, known), own), 0
    text = ", ".join([_text(value * times + plus) for value in values])
    if unit and sign:
        text += sign if sign in ("%", "°") else " " + sign
    return text


def _text(item):
    if isinstance(item, (int, float)):
        text = shown(item, places_for(item))
        while "." in text and text[-1] in "0.":
            text = text[:-1]
        return text
    if isinstance(item, (tuple, list)):
        return ", ".join([" ".join(piece) if isinstance(piece, (tuple, list)) else _text(piece) for piece in item])
    pieces = item.split("{")  # a figure that is filled in on the screen stands as three dots here
    return pieces[0] + "".join([_filled(piece.partition("}")) for piece in pieces[1:]])


def _filled(piece):
    inside, _, after = piece
    return ("{" + inside + "}" if holds_figure(inside) else "…") + after


def answer(values):
    """One line for each fact that is looked for, in the order of the catalogue."""
    lines, wanted = [], [word for word in small(values["find"]).split(" ") if word]
    for place, (_, title, what, text, mark, source) in enumerate(walk(values["units"])):
        where, what, text = provenance(mark, source), in_system(what, values["units"]), in_system(text, values["units"])
        words_of = small(" ".join((title, what, text, where)))
        if values["mark"] in (ALL, mark) and all([word in words_of for word in wanted]):
            lines.append(words("fact_" + str(place), title + ": " + what, text, rough=where, rank=SAY))
    if not lines:
        lines.append(words("none", "Nothing found", "Try one word of it, or show all.", rank=SAY))
    return lines

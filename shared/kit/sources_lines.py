"""Sources lines: each fact of the catalogue in words, and which of them are found by the words somebody types."""
from ..catalogue import dusts, first_aid
from ..catalogue.hazards import PICTOGRAMS
from ..catalogue.pot_life import HUNDRED
from ..catalogue.solvents import SOLVENTS
from ..catalogue.tasks import TOPICS
from ..catalogue.titles import OF_A_FACE, OF_POT_LIFE, ROWS, TITLES
from ..forms.types import Found, Said, Values
from ..words.lines import SAY, Line, words
from ..words.messages import fact as fact_of
from ..words.messages import listed, message, number, quantity, row, typed, with_unit
from ..words.numbers import places_for, shown, small
from ..words.sourced import sourced
from ..words.units import BY_NAME, METRIC, US, from_si, holds_figure, sign, to_si, unit_for

# unit in the table -> unit on the screen, times, plus
SI_UNITS = {"share": ("ppm", 1e6, 0), "%": ("%", 100, 0), "kg/mol": ("g/mol", 1000, 0), "kg/eq": ("g/eq", 1000, 0),
         "J/mol": ("kJ/mol", 0.001, 0), "1/s": ("an hour", 3600, 0), "s": ("min", 1 / 60, 0),
         "hours": ("h", 1 / 3600, 0),
         "kg/m3": ("g/mL", 0.001, 0), "W/(m2 K)": ("W/(m² K)", 1, 0), "m2 K/W": ("m² K/W", 1, 0)}
NONE = "none"  # the line that stands where nothing is found
# those that a builder's units go for
OWN_UNITS = {"K": "degC", "kg": "g", "m": "mm", "kg/m2": "g/m2", "m3": "m3", "litres": "L", "millilitres": "mL",
             "m2": "m2"}


def _in_own(name: str, units: str) -> "tuple[str, float, float]":
    """(sign, times, plus) from SI to the user's unit."""
    unit = unit_for(name, units)
    return sign(unit), from_si(1.0, unit) - from_si(0.0, unit), from_si(0.0, unit)


def _units(units: str) -> dict:
    found: dict = dict(SI_UNITS)
    for name in OWN_UNITS:
        found[name] = _in_own(OWN_UNITS[name], units)
    found["dK"] = found["K"][:2] + (0,)  # a difference of temperatures
    return found


UNITS = {METRIC: _units(METRIC), US: _units(US)}
# units that are words
UNIT_WORDS = {"an hour": "facts-unit.an-hour", "times": "facts-unit.times", "of the rate": "facts-unit.of-rate",
              "m a minute": "facts-unit.m-a-minute", "ft a minute": "facts-unit.ft-a-minute",
              "air changes an hour": "facts-unit.air-changes", OF_POT_LIFE: "facts-unit.pot-life",
              OF_A_FACE: "facts-unit.face"}
TITLED = {(module, table): (title, unit, columns) for module, table, title, unit, columns in TITLES}
WORDED = {(table, key): (what, unit) for table, key, what, unit in ROWS}
# keys that have words elsewhere
KEYED = dict((("other", "facts-other"),) + TOPICS + SOLVENTS + tuple([row[:2] for row in PICTOGRAMS])
             + dusts.NAMED + first_aid.NAMED)


class Dots:
    """The values of a message of which nobody knows them here: what is filled in on the screen stands as three dots."""

    def __contains__(self, name: str) -> bool:
        return not holds_figure(name)

    def __getitem__(self, name: str) -> Said:
        return typed("…")


DOTS = Dots()


def worded(fact: Found, units: str = METRIC) -> "tuple[Said, Said, Said]":
    """(table, what, text) of one fact. fact: `sources.Fact`"""
    each = fact.row
    title, table_unit, columns = TITLED.get((fact.module, fact.table), (fact.table, "", ()))
    what, unit = WORDED.get((fact.table, each[0]), ("", table_unit)) if isinstance(each[0], str) else ("", table_unit)
    if not what and isinstance(each[0], float):  # a row that is called by its figure
        what = _figure(each[:1], table_unit, units)
    if not what:
        what = listed([_called(each[one]) for one in fact.labels], "plain")
    if fact.record:  # behind its mark stands what would be typed
        return fact.record.label, what, _typed(fact.record, each[each.index(fact.mark) + 1], units)
    return title, what, _told(each, columns or fact.columns, unit, units)


def _called(item: Found) -> Said:
    return _text(KEYED.get(item, item) if isinstance(item, str) else item)


def _typed(record: Found, typed: tuple, units: str) -> Said:
    """A row that is kept as it would be typed: each field by its label."""
    fields, tree = {field.name: field for field in record.fields}, dict(typed)
    return listed([message("card-field", field=fields[name].label, text=_as_told(fields[name], text, tree, units))
                   for name, text in typed if name != "name"], "plain")


def _as_told(field: Found, text: str, tree: dict, units: str) -> Said:
    """What a row holds, in the user's units; METRIC: as it stands in the row."""
    unit = getattr(field, "unit", "")
    if units == METRIC or unit_for(unit, units) == unit:
        return field.in_words(text.replace("m3", "m³"), tree, METRIC, {})
    read = field.read(text, field.name, {"units": METRIC, "_understood": []})
    return row([quantity(one, unit) for one in (read if isinstance(read, tuple) else (read,))], " : ")


def _told(cells: tuple, columns: tuple, unit: str, units: str) -> Said:
    """A value with its unit, its least and most behind it, then the words of the row."""
    figures, said = [], []
    for column in columns:
        item = cells[column]
        if isinstance(item, (int, float)):
            figures.append(item)
        elif isinstance(item, str) and ((figures and item in UNITS[METRIC]) or item in ("times", "Pa", "MPa", "°")):
            unit = item
        elif isinstance(item, tuple) and isinstance(item[0], (int, float)):
            figures.extend(item)
        elif item != "":
            said.append(_text(item))
    if not figures:
        return row(said, " · ")
    if len(figures) != 3 or unit == "h":
        return row([_figure(figures, unit, units)] + said, " · ")
    found = _figure(figures[:1], unit, units)
    if figures[1] != figures[2]:
        found = message("facts-between", figure=found, low=_figure(figures[1:2], "", units, unit),
                        high=_figure(figures[2:], "", units, unit))
    return row([found] + said, " · ")


def _figure(values: "list | tuple", unit: str, units: str, scale: str = "") -> Said:
    """Values with their unit; scale: the unit they are only counted in, where it stands elsewhere already."""
    if "kg/m3" in (unit, scale) and values[0] < 0.001:
        name, times, plus = "mg/m³", 1e6, 0.0
    elif "share" in (unit, scale) and values[0] > 0.005:
        name, times, plus = "%", 100, 0
    elif unit == "m3" and values[0] < 0.001:
        name, times, plus = _in_own("mL", units)
    elif "s" in (unit, scale) and values[0] < 60:
        name, times, plus = "s", 1, 0
    else:
        known = unit or scale
        name, times, plus = UNITS[units].get(known, (unit, 1, 0))
        if known == "m a minute" and units == US:
            name, times = "ft a minute", from_si(1.0, "ft")
        elif known not in UNITS[units] and known in BY_NAME and unit_for(known, units) != known:
            own = unit_for(known, units)  # a row that says its own unit
            name, times, plus = own, from_si(to_si(1.0, known), own), 0
    figure = listed([_text(value * times + plus) for value in values], "plain")
    if not unit or not name:
        return figure
    if name in UNIT_WORDS:
        return message(UNIT_WORDS[name], figure=figure, mass=fact_of("g", HUNDRED))
    if name == "%":
        return row([figure, with_unit("", name)], "")
    return row([figure, typed(name)], "" if name == "°" else " ")


def _text(item: Found) -> Said:
    if isinstance(item, (int, float)):
        text = shown(item, places_for(item))
        while "." in text and text[-1] in "0.":
            text = text[:-1]
        return number(text)
    if isinstance(item, str):
        pieces = item.split("{")  # a figure that is filled in on the screen stands as three dots here
        return (pieces[0] + "".join([_filled(piece.partition("}")) for piece in pieces[1:]]), DOTS)
    if item[0] is None:  # a sentence in the place of its key, as a phone has it
        return (item, DOTS)
    if isinstance(item[-1], dict):  # a message that the catalogue made itself
        return item
    return listed([row(list(piece), " ") if isinstance(piece, (tuple, list)) else _text(piece) for piece in item],
                  "plain")


def _filled(piece: tuple) -> str:
    inside, _, after = piece
    return ("{" + inside + "}" if holds_figure(inside) else "…") + after


def say(found: "list[Found]", values: Values) -> list[Line]:
    """found: `sources.Fact` of each that may be shown"""
    lines = []
    for one in found:
        title, what, text = worded(one, values["units"])
        lines.append(words("fact_" + str(one.place), message("facts-row", table=title, what=what), text,
                           rough=sourced(one.mark, one.source), rank=SAY))
    lines.append(words(NONE, "facts-none", "facts-none.text", rank=SAY))
    return lines


def sift(lines: list, values: Values) -> list:
    """Those of the lines, as they are read, that hold every word somebody looks for. lines: dicts of `as_data`"""
    wanted = [word for word in small(values["find"]).split(" ") if word]
    facts, none = lines[:-1], lines[-1:]
    if wanted:
        facts = [one for one in facts if _holds(one, wanted)]
    return facts or none


def _holds(one: dict, wanted: list) -> bool:
    words_of = small(" ".join((one["label"], one["text"], one["rough"])))
    return all([word in words_of for word in wanted])

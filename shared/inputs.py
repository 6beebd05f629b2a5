"""Inputs, each declared once: the form, the API model, the link and the error message all come from the declaration.

Typed values are text in a tree: {"amount": "240", "system": {"by_weight": "3:1"}, "readings": [{"shown": "181"}]}.
Every kind reads its own piece of that tree into SI and refuses in the user's words, at the dotted path of the field.

Options that every kind takes:
    help      a hint under the field
    fold      the heading it is folded away under; empty: in sight
    when      (name, values) pairs: asked only while one of these choices has one of its values; empty: always
    was       older names of the field; links printed on a card live for years
"""
from .errors import InputError
from .numbers import BLANKS, DIGITS, DOWN, UP, digits, reading, shown
from .units import BY_NAME, METRIC, US, find, from_si, sign, to_si, unit_for

LONGEST_TEXT = 120


class Input:
    """What every kind has in common."""

    kind = ""
    blank = ""
    known = None

    def __init__(self, name, label, help="", fold="", when=(), was=(), optional=False):
        self.name, self.label, self.help, self.fold = name, label, help, fold
        self.when, self.was, self.optional = when, was, optional

    def asked(self, values):
        """Whether the choices read so far leave this input in the form."""
        if not self.when:
            return True
        for name, allowed in self.when:
            if values.get(name) in allowed:
                return True
        return False

    def typed_in(self, tree):
        """What was typed for this input, under its name or an older one."""
        if self.name in tree:
            return tree[self.name]
        for name in self.was:
            if name in tree:
                return tree[name]
        return None

    def extra_names(self):
        """Names beside its own that the input reads from a form, a link or the API."""
        return ()

    def untouched(self, name, text, tree, system):
        """Whether what stands under `name` in the tree is what an empty form shows: a link leaves it out."""
        return text == self.default_in(system)

    def about(self, system):
        """The declaration as data, for the form and for GET /api/moves."""
        facts = {"kind": self.kind, "name": self.name, "label": self.label, "help": self.help, "fold": self.fold,
                 "optional": self.optional}
        if self.when:
            facts["when"] = [{"name": name, "values": list(allowed)} for name, allowed in self.when]
        return facts

    def refuse(self, path, why):
        raise InputError(path, self.label + ": " + why)


def _missing(typed):
    return typed is None or (isinstance(typed, str) and not typed.strip(BLANKS))


class Number(Input):
    """A quantity. `low`, `high` and `default` are in `unit`; a unit typed behind the number goes before it.

    low and high are limits of sense, not of safety; an optional number that is not typed reads as None.
    """

    kind = "number"

    def __init__(self, name, label, unit="", low=0, high=1e9, default=None, above=False, whole=False, missing="",
                 **more):
        Input.__init__(self, name, label, **more)
        self.missing = missing  # what is said where nothing is typed, in the place of "type a number"
        self.unit, self.low, self.high, self.default = unit, low, high, default
        self.above, self.whole = above, whole  # above: low itself is refused too
        self.known, self.defaults = {METRIC: {}, US: {}}, {}
        self.unit_name = name + "_unit"

    def unit_in(self, system):
        return unit_for(self.unit, system)

    def default_in(self, system):
        """The default as typed text in the unit of that system."""
        if self.default is None:
            return ""
        text = self.defaults.get(system)
        if text is None:
            text = self.defaults[system] = _default_in(self.default, self.unit, system)
        return text

    def read(self, typed, path, values):
        told = len(values["_understood"])
        si = self._read(typed, path, values)
        # a phone reads every field at each key press and one has changed: `read_into` takes the others from here
        if typed is None or isinstance(typed, str):
            known = self.known[values["units"]]
            if len(known) > 8:
                known.clear()
            known[typed] = (si, None if si is None else values[self.unit_name],
                            [echoed[1] for echoed in values["_understood"][told:]])
        return si

    def _read(self, typed, path, values):
        system = values["units"]
        if _missing(typed):
            if self.optional:
                return None
            if self.default is None:
                self.refuse(path, self.missing or "type a number" + _in(self.unit_in(system)))
            typed = self.default_in(system)
        value, words, why = reading(typed)
        if value is None:
            self.refuse(path, why)
        unit = self.unit_in(system)
        if words:
            found, why = find(words, BY_NAME[self.unit].quantity)
            if found is None:
                self.refuse(path, why)
            unit = found.name
        si = to_si(value, unit)
        self._within(si, unit, path)
        if self.whole and value != int(value):
            self.refuse(path, "a whole number, please")
        values[self.unit_name] = unit
        echo(values, path, typed, value, unit)
        return si

    def _within(self, si, unit, path):
        low, high = to_si(self.low, self.unit), to_si(self.high, self.unit)
        if si < low or si > high or (self.above and si == low):
            first = "more than " if self.above else "from "
            bounds = first + _limit(low, unit, UP) + (" up to " if self.above else " to ") + _limit(high, unit, DOWN)
            self.refuse(path, bounds + _unit_behind(unit))

    def about(self, system):
        facts = Input.about(self, system)
        unit = self.unit_in(system)
        facts.update({"unit": sign(unit), "quantity": BY_NAME[self.unit].quantity, "default": self.default_in(system),
                      "low": from_si(to_si(self.low, self.unit), unit),
                      "high": from_si(to_si(self.high, self.unit), unit)})
        return facts


class Choice(Input):
    """One of a few. options: (value, label) or (value, label, help), the first is the default unless one is named.

    row: laid out as a row of large keys, for the few choices that a glove makes
    """

    kind = "choice"

    def __init__(self, name, label, options, default="", row=False, **more):
        Input.__init__(self, name, label, **more)
        self.options, self.row = options, row
        self.default = default or options[0][0]

    def default_in(self, system):
        return self.default

    def read(self, typed, path, values):
        if _missing(typed):
            return self.default
        for option in self.options:
            if typed == option[0]:
                return typed
        self.refuse(path, "choose one of: " + ", ".join([option[1] for option in self.options]))

    def about(self, system):
        facts = Input.about(self, system)
        facts["default"], facts["row"] = self.default, self.row
        facts["options"] = [{"value": o[0], "label": o[1], "help": o[2] if len(o) > 2 else ""} for o in self.options]
        return facts


class Text(Input):
    """A few words that name something. Control characters are dropped, the rest is kept as typed."""

    kind = "text"

    def __init__(self, name, label, most=60, default="", **more):
        Input.__init__(self, name, label, **more)
        self.most, self.default = most, default

    def default_in(self, system):
        return self.default

    def read(self, typed, path, values):
        if _missing(typed):
            return self.default
        if not isinstance(typed, str):
            self.refuse(path, "type a few words")
        text = "".join([c for c in typed if ord(c) >= 32 and ord(c) != 127]).strip(BLANKS)
        if len(text) > self.most:
            self.refuse(path, "at most " + str(self.most) + " characters")
        return text

    def about(self, system):
        facts = Input.about(self, system)
        facts.update({"default": self.default, "most": self.most})
        return facts


class Parts(Input):
    """Numbers in a row, one for each part: "100:30", "2 : 1", "1.15 : 0.98 g/mL". Reads into a tuple of SI floats.

    unit: "" for parts of a ratio; otherwise each number may carry its unit, and a last unit holds for all
    """

    kind = "parts"

    def __init__(self, name, label, unit="", low=0, high=1e6, most=5, least=2, default="", **more):
        Input.__init__(self, name, label, **more)
        self.unit, self.low, self.high, self.most, self.default = unit, low, high, most, default
        self.least = least

    def default_in(self, system):
        """The default as typed text; a bare one is in the declared unit, which is said where it is not expected."""
        if self.default and unit_for(self.unit, system) != self.unit and not reading(self.default.split(":")[-1])[1]:
            return self.default + " " + self.unit
        return self.default

    def read(self, typed, path, values):
        if _missing(typed):
            if not self.default:
                if self.optional:
                    return ()
                self.refuse(path, "type the parts, like 100:30 or 2:1")
            typed = self.default_in(values["units"])
        if not isinstance(typed, str):
            self.refuse(path, "type the parts, like 100:30 or 2:1")
        pieces = typed.replace(" to ", ":").replace(";", ":").split(":")
        if not self.least <= len(pieces) <= self.most:
            self.refuse(path, "type {} to {} numbers with a colon between them, like 100:30".format(
                self.least, self.most))
        unit, read = self._unit_behind(pieces[-1], path, values["units"]), []
        for piece in pieces:
            value, words, why = reading(piece)
            if value is None:
                self.refuse(path, "'" + piece.strip(BLANKS)[:20] + "': " + why)
            own = unit
            if words:
                found, why = find(words, BY_NAME[self.unit].quantity)
                if found is None:
                    self.refuse(path, why)
                own = found.name
            si = to_si(value, own)
            low, high = to_si(self.low, self.unit), to_si(self.high, self.unit)
            if not low < si <= high:
                self.refuse(path, "each number more than {} and at most {}".format(
                    _limit(low, own, UP), _limit(high, own, DOWN)) + _unit_behind(own))
            read.append(si)
        return tuple(read)

    def _unit_behind(self, piece, path, system):
        _, words, _ = reading(piece)
        found = find(words, BY_NAME[self.unit].quantity)[0] if words else None
        return found.name if found else unit_for(self.unit, system)

    def about(self, system):
        facts = Input.about(self, system)
        facts.update({"unit": sign(unit_for(self.unit, system)), "default": self.default_in(system), "most": self.most})
        return facts


class Amount(Input):
    """One of several amounts: what is known is chosen under `<name>_is`, how much of it is typed under `name`.

    options: (key, label, units): the first unit is the default, another quantity is allowed where its unit is listed.
    Reads into (key, SI value, quantity).
    """

    kind = "amount"

    def __init__(self, name, label, options, default=None, high=1e6, **more):
        Input.__init__(self, name, label, **more)
        self.options, self.default, self.high = options, default, high

    def default_in(self, system):
        return "" if self.default is None else _default_in(self.default, self.options[0][2][0], system)

    def extra_names(self):
        return (self.name + "_is",)

    def untouched(self, name, text, tree, system):
        """The default stands for the first kind of amount only; that kind is itself the default."""
        key = tree.get(self.name + "_is")
        first = _missing(key) or key == self.options[0][0]
        return first and (name != self.name or text == self.default_in(system))

    def option(self, key):
        for option in self.options:
            if option[0] == key:
                return option
        return None

    def read(self, typed, path, values):
        key = values.get("_tree", {}).get(self.name + "_is")
        option = self.options[0] if _missing(key) else self.option(key)
        if option is None:
            raise InputError(path + "_is", self.label + ": choose one of: " + ", ".join([o[1] for o in self.options]))
        values[self.name + "_is"] = option[0]
        if _missing(typed):
            if self.default is None or option is not self.options[0]:
                self.refuse(path, "type how much" + _in(unit_for(option[2][0], values["units"])))
            typed = self.default_in(values["units"])
        value, words, why = reading(typed)
        if value is None:
            self.refuse(path, why)
        unit = unit_for(option[2][0], values["units"])
        if words:
            unit = self._named(words, option, path)
        if not value > 0:
            self.refuse(path, "more than zero, please")
        if value > self.high:
            self.refuse(path, "at most {} {}".format(_plain(self.high), sign(unit)))
        values[self.name + "_unit"] = unit
        echo(values, path, typed, value, unit)
        return option[0], to_si(value, unit), BY_NAME[unit].quantity

    def _named(self, words, option, path):
        why = ""
        for allowed in option[2]:
            found, said = find(words, BY_NAME[allowed].quantity)
            if found is not None:
                return found.name
            # a word with two meanings is the better answer than "not a unit of mass"
            why = said if said.startswith("say which") or not why else why
        self.refuse(path, why)

    def about(self, system):
        facts = Input.about(self, system)
        facts["default"] = self.default_in(system)
        facts["options"] = [{"value": o[0], "label": o[1], "help": o[3] if len(o) > 3 else "",
                             "unit": sign(unit_for(o[2][0], system))} for o in self.options]
        return facts


class Pick(Input):
    """A thing from the kit, or one typed here. Fields of the record stand under the input's name: "system.by_weight".

    record: a `records.Record`; a name of one of its built-in rows may stand for all its fields, and typed fields go
    before the row's. Reads into a dict of the record's values, with "id" for the row it came from.
    """

    kind = "pick"

    def __init__(self, name, label, record, default="", **more):
        Input.__init__(self, name, label, **more)
        self.record, self.default = record, default
        self.last = (None, None)

    def default_in(self, system):
        return self.default

    def read(self, typed, path, values):
        tree = self.tree(typed, path)
        if tree is None:
            return None
        # the system stays while the amount is typed: what was read last is kept, or a phone reads it at each key press
        # only text is compared (True == 1), and the pair is taken once, as another request may put its own there
        asked, last = (path, tree, values["units"]), self.last
        if asked == last[0]:
            read = last[1]
        else:
            read = self._read(tree, path, values["units"])
            if _only_text(tree):
                self.last = asked, read
        # what the user typed himself is told back, a built-in row's figures are not
        own = typed if isinstance(typed, dict) else {}
        values["_understood"].extend([told for told in read["_understood"] if told[0][len(path) + 1:] in own])
        return read

    def _read(self, tree, path, units):
        read = {"units": units, "_tree": tree, "_understood": []}
        errors = []
        read_into(read, self.record.fields, tree, path + ".", errors)
        if errors:
            raise Several(errors)
        read["id"] = tree.get("id", "")
        if self.record.check:
            _checked(self.record.check, read, path + ".")
        return read

    def tree(self, typed, path):
        """The typed fields, the built-in row's own where the user typed none; None where nothing was picked."""
        own = {}
        if isinstance(typed, dict):
            own = dict([(key, value) for key, value in typed.items() if not _missing(value)])
            row = own.get("id", "") if own.get("id") else ("" if own else self.default)
        else:
            row = self.default if _missing(typed) else typed
        if not row:
            return own if own or not self.optional else None
        base = self.record.row(row)
        if base is None:
            quoted = "'" + row[:40] + "'" if isinstance(row, str) else "such thing"
            self.refuse(path, "there is no " + quoted + " here; choose one, or type its figures")
        tree = dict(base, **own)
        tree["id"] = row
        return tree

    def about(self, system):
        facts = Input.about(self, system)
        facts.update({"default": self.default, "record": self.record.name,
                      "fields": [field.about(system) for field in self.record.fields],
                      "rows": [{"id": row, "label": label, "typed": dict(typed), "mark": mark}
                               for row, label, mark, typed in self.record.rows]})
        return facts


class Group(Input):
    """A group of fields that repeats. Reads into a list of dicts; rows with nothing typed are left out unless `gaps`.

    gaps: a row left empty is kept as None, because its place has meaning (the reading of the second part)
    told: how the names of the lines begin that its rows stand for, each followed by the letter of its part
    rows: how many an empty form shows where there is no default; each: what one row is called
    Typed as "none" it has no rows: a form that was emptied says so, because nothing typed at all is the default.
    """

    kind = "group"
    NONE = "none"

    def __init__(self, name, label, fields, least=0, most=12, gaps=False, default=(), each="", rows=1,
                 told="", **more):
        Input.__init__(self, name, label, **more)
        self.rows, self.told = rows, told
        self.fields, self.least, self.most, self.gaps = fields, least, most, gaps
        self.default, self.each = default, each
        self.kept, self.resting = {}, None

    def default_in(self, system):
        return [dict(row) for row in self.default]

    def read(self, typed, path, values):
        given = not _missing(typed)
        if not given:
            typed = self.default_in(values["units"])
        typed = [] if typed == self.NONE else in_rows(typed, self.most)
        if not isinstance(typed, list) or any([not isinstance(row, dict) for row in typed]):
            self.refuse(path, "a list is expected here")
        if len(typed) > self.most:
            self.refuse(path, "at most " + str(self.most) + " of them")
        rows, errors = [], []
        for place, tree in enumerate(typed):
            if all([_missing(tree[key]) or self._rests(key, tree[key]) for key in tree]):
                if self.gaps:
                    rows.append(None)
                continue
            rows.append(self._row(tree, path, place, values, errors, given))
        if errors:
            raise Several(errors)
        if len(rows) < self.least:
            self.refuse(path, "at least " + str(self.least) + " of them")
        return rows

    def _rests(self, key, text):
        """Whether a field of a row is a choice that nobody has touched: a form sends it with every empty row. Where a
        row of nothing but choices is one that reads, it counts."""
        if self.resting is None:
            wanted = [field for field in self.fields if field.kind == "number" and field.default is None]
            asked = [field for field in wanted if not field.optional and not field.when]
            self.resting = {}
            if asked:
                self.resting = dict([(field.name, field.default) for field in self.fields if field.kind == "choice"])
        return key in self.resting and text == self.resting[key]

    def _row(self, tree, path, place, values, errors, given):
        """One row; one that has not changed since the last key press is kept as read. A default is not echoed."""
        prefix = "{}.{}.".format(path, place)
        kept = self.kept.get(prefix)
        if kept is None or kept["units"] != values["units"] or kept["_tree"] != tree:
            kept = {"units": values["units"], "_tree": tree, "_understood": [], "place": place}
            before = len(errors)
            read_into(kept, self.fields, tree, prefix, errors)
            if len(errors) == before and _only_text(tree):
                self.kept[prefix] = kept
        if given:
            values["_understood"].extend(kept["_understood"])
        return kept

    def about(self, system):
        facts = Input.about(self, system)
        facts.update({"fields": [field.about(system) for field in self.fields], "least": self.least,
                      "most": self.most, "each": self.each or self.label, "rows": self.rows,
                      "gaps": self.gaps, "told": self.told, "default": self.default_in(system)})
        return facts


def _only_text(tree):
    """Whether all that was typed is text, as from a form: True == 1 == 1.0, and they do not read alike."""
    return all([isinstance(tree[key], str) or (isinstance(tree[key], dict) and _only_text(tree[key])) for key in tree])


class Several(ValueError):
    """More than one InputError, told together."""

    def __init__(self, errors):
        super().__init__("several")
        self.errors = errors


UNITS_INPUT = Choice("units", "Units", ((METRIC, "g, mL, mm, °C"), (US, "oz, US fl oz, in, °F")),
                     help="Another unit can always be typed behind a number.")


def read(inputs, tree):
    """Typed tree -> (values, errors): all errors at once, in the order of the form."""
    values, errors = {"_tree": tree, "_understood": []}, []
    try:
        values["units"] = UNITS_INPUT.read(tree.get("units"), "units", values)
    except InputError as error:
        values["units"] = METRIC
        errors.append(error)
    read_into(values, inputs, tree, "", errors)
    return values, errors


def echo(values, path, typed, value, unit):
    """Keep what was understood wherever a number could be read in two ways, so that the form can say it."""
    if not isinstance(typed, str) or all([c in DIGITS or c == "." for c in typed.strip(BLANKS)]):
        return
    text = _plain(value) + _unit_behind(unit)
    if typed == text:
        return
    behind = typed.partition(",")[2]
    if len(behind) >= 3 and all([c in DIGITS for c in behind[:3]]) and not (behind[3:4] and behind[3] in DIGITS):
        text += " (a comma marks the decimals)"
    values["_understood"].append([path, text])


def checked(checks, values):
    """Errors of what no single field can know: each check is a function of the values that raises InputError."""
    errors = []
    for check in checks:
        try:
            check(values)
        except InputError as error:
            # two moves may find the same fault; it is told once
            if (error.field, error.message) not in [(told.field, told.message) for told in errors]:
                errors.append(error)
    return errors


def read_into(values, inputs, tree, prefix, errors):
    """Read each input that is asked into `values`, collecting what cannot be read into `errors`."""
    units = values["units"]
    for item in inputs:
        if item.when and not item.asked(values):
            continue
        typed = tree.get(item.name)
        if typed is None and item.was:
            typed = item.typed_in(tree)
        if item.known and (typed is None or isinstance(typed, str)):
            known = item.known[units].get(typed)
            if known:
                values[item.name], unit, echoed = known
                if unit is not None:
                    values[item.unit_name] = unit
                for text in echoed:
                    values["_understood"].append([prefix + item.name, text])
                continue
        try:
            values[item.name] = item.read(typed, prefix + item.name, values)
        except InputError as error:
            errors.append(error)
        except Several as several:
            errors.extend(several.errors)


def _checked(check, values, prefix):
    error = None
    try:
        check(values)
    except InputError as caught:
        error = caught
    if error:
        raise InputError(prefix + error.field, error.message)


def in_rows(typed, most):
    """Rows of a group as a list: a form and a link name them by their place ("0", "1", ...), gaps stay gaps.

    >>> in_rows({"1": {"shown": "90"}}, 5)
    [{}, {'shown': '90'}]
    """
    if not isinstance(typed, dict):
        return typed
    places = [int(key) for key in typed if digits(key, 3)]
    return [typed.get(str(place), {}) for place in range(min(most, max(places)) + 1)] if places else []


def _in(unit):
    return " in " + sign(unit) if unit else ""


def _unit_behind(unit):
    mark = sign(unit)
    return mark if mark in ("%", "°", "") else " " + mark


def _plain(value):
    """A declared limit or default as short text: 0.5, 240, never 240.0."""
    for places in range(0, 5):
        text = shown(value, places)
        if abs(float(text) - value) <= 1e-9 * max(1.0, abs(value)):
            return text
    return shown(value, 6)


def _default_in(value, unit, system):
    """A default as typed text in the unit that the system expects."""
    own = unit_for(unit, system)
    return _plain(value if own == unit else float(shown(from_si(to_si(value, unit), own), 3)))


def _limit(si, unit, toward):
    """A limit as short text on its inner side, so that what a message names is itself read."""
    value = from_si(si, unit)
    places = 0
    while places < 4 and abs(float(shown(value, places, toward)) - value) > 0.005 * abs(value):
        places += 1
    return shown(value, places, toward)

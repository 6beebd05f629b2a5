"""Rows: a thing of the kit with its fields, and a group of fields that repeats."""
from ..words.languages import Reader
from ..words.messages import message
from ..words.messages import typed as as_typed
from ..words.numbers import digits
from ..words.provenance import marked
from ..words.texts import said
from ..words.units import SYSTEMS
from .choices import widest
from .declared import (
    Input,
    Several,
    alike,
    checked_at,
    filled,
    find_in,
    link_inputs,
    missing,
    only_text,
    read_into,
    text_of,
    with_units,
)
from .errors import InputError
from .memo import memo_of
from .types import Function, Given, Said


class Pick(Input):
    """A thing from the kit, or one typed here. Fields of the record stand under the input's name: "system.by_weight".

    record: a `records.Record`; a name of one of its built-in rows may stand for all its fields, and typed fields go
    before the row's. What makes the thing another one (`Record.own`) leaves nothing of the row. Reads into a dict of
    the record's values, with "id" for the row it came from.
    check: of its values, where less is asked of it than the record asks of a thing of the kit
    """

    kind = "pick"
    control = "pick"
    says_default = True

    def __init__(self, name: str, label: str, record: Given, default: Given = "", check: "Function | None" = None,
                 **more: Given) -> None:
        Input.__init__(self, name, label, **more)
        self.record, self.default, self.shows = record, default, record.shows
        self.check = check or record.check

    def default_in(self, system: str) -> Given:
        return self.default

    def read(self, typed: Given, path: str, values: dict) -> "dict | None":
        tree = self.tree(typed, path)
        if tree is None:
            return None
        # the system stays while the amount is typed: what was read last is kept, or a phone reads it at each key press
        # only text is compared: True == 1
        kept = memo_of(values).under(self)
        asked = (tree, values["units"])
        if path in kept and kept[path][0] == asked:
            read = kept[path][1]
        else:
            read = self._read(tree, path, values)
            if only_text(tree):
                kept[path] = asked, read
        # what the user typed himself is told back, a built-in row's figures are not
        own = typed if isinstance(typed, dict) else {}
        values["_understood"].extend([told for told in read["_understood"] if told[0][len(path) + 1:] in own])
        return read

    def _read(self, tree: dict, path: str, values: dict) -> "dict | None":
        read = {"units": values["units"], "_tree": tree, "_understood": [], "_memo": values["_memo"]}
        errors = []
        read_into(read, self.record.fields, tree, path + ".", errors)
        if errors:
            raise Several(errors)
        read["id"] = tree.get("id", "")
        if self.check:
            checked_at(self.check, read, path + ".")
        return read

    def tree(self, typed: Given, path: str) -> "dict | None":
        """The typed fields, the built-in row's own where the user typed none; None where nothing was picked."""
        own = {}
        if isinstance(typed, dict):
            own = dict([(key, value) for key, value in typed.items() if not missing(value)])
            if all([key in self.record.whence for key in own]):
                own = {}  # where figures are from, without figures
            row = own.get("id", "") if own.get("id") else ("" if own else self.default)
        else:
            row = self.default if typed is None else typed  # "": figures are typed, and none is yet
        if not row:
            return own if own or not self.optional else None
        base = self.record.row(row)
        if base is None:
            self.refuse(path, message("field-no-such", row=as_typed(row[:40])) if isinstance(row, str)
                        else "field-no-such.thing")
        if self.record.is_another(base, own):
            del own["id"]
            return own
        tree = dict(base, **own)
        tree["id"] = row
        return tree

    def with_units(self, typed: Given, system: str, tree: dict, tools: dict) -> Given:
        return with_units(self.record.fields, typed, system, tools) if isinstance(typed, dict) else typed

    def shown_unit(self, tree: dict, system: str) -> str:
        shows = self.shows
        read: dict = {"units": system, "_understood": [], "_tree": {}}
        try:
            typed = self.tree(self.typed_in(tree), self.name) or {}
            for field in self.record.fields:
                if field.name == shows:
                    field.read(typed.get(shows), shows, read)
        except InputError:
            return ""  # its own field says what is wrong
        return read.get(shows + "_unit", "")

    def inner(self) -> "list | tuple":
        return self.record.fields

    def _below(self, steps: "list | tuple") -> "tuple | None":
        if steps[1:] == ["id"]:
            return self.name, self.label, self
        inner = find_in(self.record.fields, steps[1:])
        return inner and (self.name + "." + inner[0], inner[1], inner[2])

    def knows(self, name: str, text: str) -> bool:
        return not text or self.record.row(text) is not None

    def in_words(self, text: str, tree: dict, system: str, tools: dict) -> Said:
        return ([row[1] for row in self.record.rows if row[0] == text] + [as_typed(text)])[0]

    def link_value(self, value: Given, name: str, typed: dict, system: str, found: list, whole: bool) -> None:
        if not isinstance(value, dict):
            if (filled(value) or value == "") and value != self.default:  # "": figures will be typed
                found.append((name, text_of(value)))
            return
        row = value.get("id", "")
        base = self.record.row(row) if row else None
        own_figures = any([filled(value[key]) for key in value if key != "id"])
        if base is not None and self.record.is_another(base, value):
            base = None  # nothing of the row is read, so it does not travel either
        if base is not None and (row != self.default or own_figures):
            found.append((name, row))
        own = {}
        for key in value:
            if key != "id" and not (base is not None and alike(value[key], base.get(key))):
                own[key] = value[key]
        link_inputs(self.record.fields, own, name + ".", system, found, whole=True)

    def come_by_link(self, pairs: list) -> list:
        whence = self.record.whence
        figures = [1 for name, text in pairs if name.startswith(self.name + ".") and text
                   and name[len(self.name) + 1:] not in whence]
        return [[self.name + "." + name, whence[name]] for name in whence] if figures else []

    def modelled(self, models: Given, owner: str) -> Given:
        return models.record(self, owner)

    def from_program(self, taken: Given, value: Given, unit: str, path: str, tree: dict) -> Given:
        return taken.record(self, value, path)

    def exemplified(self, examples: Given) -> Given:
        return examples.row(self)

    def may_be(self) -> dict:
        return {"allowed": [row[0] for row in self.record.rows]}

    def parameters(self, name: str) -> list:
        return [(name, self)] + [one for field in self.inner() for one in field.parameters(name + "." + field.name)]

    def about(self, who: Reader) -> dict:
        facts = Input.about(self, who)
        facts.update({"default": self.default, "record": self.record.name, "own": list(self.record.own),
                      "shows": self.shows,
                      "fields": [field.about(who) for field in self.record.fields],
                      "rows": [{"id": row, "label": said(label, who), "typed": self.record.started(row, typed, who),
                                "mark": said(marked(mark), who)}
                               for row, label, mark, typed in self.record.rows]})
        for row in facts["rows"]:
            was = self.record.was(row["id"], row["label"])
            if was:
                row["was"] = was
        facts["widest"] = widest([row["label"] for row in facts["rows"]])
        return facts


class Group(Input):
    """A group of fields that repeats. Reads into a list of dicts; rows with nothing typed are left out unless `gaps`.

    gaps: a row left empty is kept as None, because its place has meaning (the reading of the second part)
    told: how the names of the lines begin that its rows stand for, each followed by the letter of its part
    numbered: the same where the place of the row follows, from 0
    rows: how many an empty form shows where there is no default; each: what one row is called
    measured: what its rows were really measured of, by name: with another of these they are of something else
    kept: the phone keeps such rows by themselves. "as": as which kind of thing; "by": the fields that tell one from
          another; "of": the pick that they belong to; "left": the field that use makes less
    beside: groups whose own rows stand with its own or not at all: what is typed for one of them goes before them all
    apart: what each row has of its own, first what it is called: a new row starts with all else that the last one has
    Typed as "none" it has no rows: a form that was emptied says so, because nothing typed at all is the default.
    """

    kind = "group"
    control = "group"
    repeats = True
    NONE = "none"

    def __init__(self, name: str, label: str, fields: "list | tuple", least: int = 0, most: int = 12,
                 gaps: bool = False,
                 default: Given = (), each: str = "", rows: Given = 1,
                 told: "list | str" = "", numbered: str = "", measured: tuple = (), kept: Given = None,
                 apart: tuple = (), **more: Given) -> None:
        Input.__init__(self, name, label, **more)
        self.rows, self.told, self.numbered = rows, told, numbered
        self.measured, self.kept, self.apart = measured, kept, apart
        self.fields, self.least, self.most, self.gaps = fields, least, most, gaps
        self.default, self.each = default, each
        self.beside = ()
        self.left_alone = left_alone(fields)

    def default_in(self, system: str) -> Given:
        return [dict(row) for row in self.default]

    def read(self, typed: Given, path: str, values: dict) -> list:
        given = not missing(typed)
        if not given:
            others = [1 for other in self.beside if not missing(other.typed_in(values["_tree"]))]
            typed = [] if others else self.default_in(values["units"])
        typed = [] if typed == self.NONE else in_rows(typed, self.most)
        if not isinstance(typed, list) or any([not isinstance(row, dict) for row in typed]):
            self.refuse(path, "field-list")
        if len(typed) > self.most:
            self.refuse(path, message("field-rows.most", most=self.most))
        rows: list = []
        errors: list = []
        for place, tree in enumerate(typed):
            prefix = "{}.{}.".format(path, place)
            row = self._kept(tree, prefix, values)
            if row is None:
                if self._empty(tree):
                    if self.gaps:
                        rows.append(None)
                    continue
                row = self._row(tree, prefix, place, values, errors)
            if given:  # a default is not echoed
                values["_understood"].extend(row["_understood"])
            rows.append(row)
        if errors:
            raise Several(errors)
        if len(rows) < self.least and not [1 for other in self.beside if other.has_rows(values["_tree"])]:
            self.refuse(path, message("field-rows.least", least=self.least))
        return rows

    def _empty(self, row: dict) -> bool:
        """Whether nobody has typed anything in a row, so that it is none."""
        for key in row:
            if not (missing(row[key]) or key == "units" or self._rests(key, row[key])):
                return False
        return True

    def _rests(self, key: str, text: Given) -> bool:
        """Whether a field of a row is a choice that nobody has touched: a form sends it with every empty row."""
        return key in self.left_alone and text == self.left_alone[key]

    def _kept(self, tree: dict, prefix: str, values: dict) -> "dict | None":
        """A row as it was read, where it has not changed since the last key press."""
        kept = memo_of(values).under(self).get(prefix)
        if kept and kept["_tree"] == tree and kept["units"] == values["units"] and (
                kept["_tools"] == values.get("_tools", {})):
            return kept
        return None

    def _row(self, tree: dict, prefix: str, place: int, values: dict, errors: list) -> dict:
        """One row, which has changed."""
        own = tree.get("units")  # a row of the log says which it was typed in
        if own in SYSTEMS and own != values["units"]:
            tree = with_units(self.fields, tree, own, values.get("_tools", {}))
        kept = {"units": values["units"], "_tools": values.get("_tools", {}), "_tree": tree, "_understood": [],
                "_memo": values["_memo"], "place": place}
        before = len(errors)
        read_into(kept, self.fields, tree, prefix, errors)
        if len(errors) == before and only_text(tree):
            memo_of(values).under(self)[prefix] = kept
        return kept

    def with_units(self, typed: Given, system: str, tree: dict, tools: dict) -> Given:
        if isinstance(typed, list):
            return [self._told(row, system, tools) for row in typed]
        if not isinstance(typed, dict):
            return typed
        return dict([(key, self._told(typed[key], system, tools)) for key in typed])

    def inner(self) -> "list | tuple":
        return self.fields

    def _below(self, steps: "list | tuple") -> "tuple | None":
        if len(steps) < 3 or not _is_row(steps[1], self.most):
            return None
        inner = find_in(self.fields, steps[2:])
        return inner and (self.name + "." + steps[1] + "." + inner[0],
                          (self.each or self.label, int(steps[1]) + 1, inner[1]), inner[2])

    def in_words(self, text: str, tree: dict, system: str, tools: dict) -> Said:
        return "field-rows.none" if text == self.NONE else as_typed(text)

    def link_value(self, value: Given, name: str, typed: dict, system: str, found: list, whole: bool) -> None:
        if value == self.NONE:
            if self.default and not [1 for other in self.beside if other.has_rows(typed)]:
                found.append((name, value))
            return
        own = self._own_pairs(value, name, system)
        # not the rows that nothing typed at all stands for
        if not (self._is_ours(value, name, own, system)
                and all([other.rests(typed, system) for other in self.beside])):
            found.extend(own)

    def _own_pairs(self, value: Given, name: str, system: str) -> list:
        return self._linked_rows(in_rows(value, self.most), name, system)

    def _is_ours(self, value: Given, name: str, own: Given, system: str) -> Given:
        ours = self._linked_rows(self.default, name, system)
        return own and len(in_rows(value, self.most)) == len(self.default) and self._same(own, ours)

    def has_rows(self, tree: dict) -> bool:
        """Whether a tree has rows of it."""
        value = self.typed_in(tree)
        return isinstance(value, (list, dict)) and bool(value)

    def rests(self, tree: dict, system: str) -> bool:
        """Whether what a tree has of it are its own rows."""
        value = self.typed_in(tree)
        if not isinstance(value, (list, dict)):
            return False
        return self._is_ours(value, self.name, self._own_pairs(value, self.name, system), system)

    def _same(self, pairs: list, ours: list) -> bool:
        """Whether rows that were typed are those of ours, both as pairs of a link."""
        fields = dict([(field.name, field) for field in self.fields])
        return len(pairs) == len(ours) and all([
            one[0] == other[0] and fields.get(one[0].split(".")[2], self).is_ours(one[1], other[1])
            for one, other in zip(pairs, ours)])

    def _linked_rows(self, rows: "list | tuple", name: str, system: str) -> list:
        own = []
        for place, row in enumerate(rows if isinstance(rows, (list, tuple)) else ()):
            if isinstance(row, dict):
                prefix, before = "{}.{}.".format(name, place), len(own)
                link_inputs(self.fields, row, prefix, system, own)
                if len(own) == before and not self._empty(row):  # a row of nothing but defaults is still a row
                    link_inputs(self.fields, row, prefix, system, own, whole=True)
        return own

    def modelled(self, models: Given, owner: str) -> Given:
        return models.rows(self, owner)

    def from_program(self, taken: Given, value: Given, unit: str, path: str, tree: dict) -> Given:
        return taken.rows(self, value, path)

    def exemplified(self, examples: Given) -> Given:
        return examples.rows(self)

    def parameters(self, name: str) -> list:
        return [one for field in self.fields for one in field.parameters(name + ".0." + field.name)]

    def _told(self, row: dict, system: str, tools: dict) -> Given:
        if not isinstance(row, dict):
            return row
        own = row.get("units")
        return with_units(self.fields, row, own if own in SYSTEMS else system, tools)

    def about(self, who: Reader) -> dict:
        facts = Input.about(self, who)
        facts.update({"fields": [field.about(who) for field in self.fields], "least": self.least,
                      "most": self.most, "each": said(self.each or self.label, who), "rows": self.rows,
                      "gaps": self.gaps, "told": self.told, "numbered": self.numbered,
                      "default": [in_marks(self.fields, row, who) for row in self.default_in(who.units)]})
        if self.beside:
            facts["beside"] = [other.name for other in self.beside]
        if self.measured:
            facts["measured"] = list(self.measured)
        if self.apart:
            facts["apart"] = list(self.apart)
        if self.kept:
            facts["kept"] = dict(self.kept)
        return facts


def stand_together(*groups: Given) -> None:
    """Groups whose own rows stand all or none."""
    for group in groups:
        group.beside = tuple([other for other in groups if other is not group])


def in_marks(fields: "list | tuple", row: dict, who: Reader) -> dict:
    """A row of our own, {name: text}, as it stands in the form of `who`."""
    known = dict([(field.name, field) for field in fields])
    return dict([(name, known[name].in_marks(row[name], who)) for name in row])


def left_alone(fields: "list | tuple") -> dict:
    """What a form sends with a row that nobody has touched: {name: text}. Where a row of nothing but choices is one
    that reads, it counts.
    """
    if not [1 for field in fields if field.must()]:
        return {}
    return dict([(field.name, field.resting()) for field in fields if field.resting() is not None])


def _is_row(step: Given, most: int) -> bool:
    """Whether a step of a dotted name is a row that the group has, spelled the one way a tree knows it."""
    return digits(step, 3) and str(int(step)) == step and int(step) < most


def in_rows(typed: Given, most: int) -> Given:
    """Rows of a group as a list: a form and a link name them by their place ("0", "1", ...), gaps stay gaps.

    >>> in_rows({"1": {"shown": "90"}}, 5)
    [{}, {'shown': '90'}]
    """
    if not isinstance(typed, dict):
        return typed
    places = [int(key) for key in typed if digits(key, 3)]
    return [typed.get(str(place), {}) for place in range(min(most, max(places)) + 1)] if places else []

"""Declared: what every kind of input has in common, and how a tree of typed text is read by its declarations.

Options that every kind takes:
    help      a hint under the field
    fold      the heading it is folded away under; empty: in sight
    when      (name, values) pairs: asked only while one of these choices has one of its values; empty: always
    was       older names of the field; links printed on a card live for years
    learned   what a thing of the kit learns by and by: with it, it is still the same thing
    stays     it is said on this phone alone: no link takes it along
    of        the pick of whose thing it is told: another one that is chosen has nothing of it
    private   a figure of a thing, as a person's telephone number: no link takes it along either
"""
from math import isfinite

from ..words.languages import Reader
from ..words.messages import message, number, row, with_unit
from ..words.messages import typed as as_typed
from ..words.numbers import BLANKS, DIGITS, MOST, places_for, shown, thousands
from ..words.texts import said
from ..words.units import TAILS, from_si, to_si, unit_for
from .errors import InputError
from .memo import memo_of
from .types import Function, Given, Never, Said

READ = "read"  # heading of the memo: what was read of each number, by (units, typed text)
LONGEST_TYPED = 500  # characters of one field, and none takes more than 400: it is refused before anything reads it


class Input:
    """What every kind has in common. A kind says all about itself: how it is read, drawn, linked, spoken and modelled;
    nobody asks which kind an input is.

    kind: its name in the declarations as data; control: which control of the page draws it
    alone: nothing else in a form is read by it; says_default: a card tells its default where it stands in the form
    repeats: it has rows, each with fields of its own
    tool: the pick whose tool shows this figure; shows: the field of a picked tool that says in which unit it shows
    """

    kind = ""
    control = "words"
    alone = False
    says_default = False
    repeats = False
    tool = shows = ""
    options: "list | tuple" = ()  # of one that is chosen among a few: (value, label, ...)

    def __init__(self, name: str, label: str, help: "str | tuple" = "", fold: str = "", when: tuple = (),
                 was: tuple = (), optional: bool = False, learned: bool = False,
                 stays: bool = False, of: str = "", private: bool = False, unseen: bool = False) -> None:
        self.name, self.label, self.help, self.fold = name, label, help, fold
        self.learned, self.stays, self.of, self.private = learned, stays, of, private
        self.when, self.was, self.optional, self.unseen = when, was, optional, unseen

    def again(self, **changed: Given) -> Given:
        """The same input as it stands in another form, but for what is changed there."""
        other = object.__new__(type(self))
        for name in self.__dict__:
            setattr(other, name, self.__dict__[name])
        for name in changed:
            setattr(other, name, changed[name])
        return other

    def asked(self, values: dict) -> bool:
        """Whether the choices read so far leave this input in the form."""
        if not self.when:
            return True
        for name, allowed in self.when:
            if values.get(name) in allowed:
                return True
        return False

    def typed_in(self, tree: dict) -> Given:
        """What was typed for this input, under its name or an older one."""
        if self.name in tree:
            return tree[self.name]
        for name in self.was:
            if name in tree:
                return tree[name]
        return None

    def extra_names(self) -> tuple:
        """Names beside its own that the input reads from a form, a link or the API."""
        return ()

    def untouched(self, name: str, text: Given, tree: dict, system: str) -> bool:
        """Whether what stands under `name` in the tree is what an empty form shows: a link leaves it out."""
        return self.is_ours(text, self.default_in(system))

    def with_units(self, typed: Given, system: str, tree: dict, tools: dict) -> Given:
        """What was typed, with its unit behind each number that said none: the one of that system or of its tool.

        tree: what is beside; tools: of `units_of_tools`
        """
        return typed

    def must(self) -> bool:
        """Whether a row of a group without it is no row."""
        return False

    def resting(self) -> "str | None":
        """What a form sends for it although nobody has touched it; None where it sends nothing."""
        return None

    def inner(self) -> "list | tuple":
        """The fields that stand below its name."""
        return ()

    def find(self, steps: "list | tuple") -> "tuple | None":
        """What a dotted name below it leads to: (name today, label, input), or None. steps: the name in its pieces"""
        if steps[0] in self.extra_names():
            return (steps[0], message("field-of-what", label=self.label), self) if len(steps) == 1 else None
        if steps[0] != self.name and steps[0] not in self.was:
            return None
        return (self.name, self.label, self) if len(steps) == 1 else self._below(steps)

    def _below(self, steps: "list | tuple") -> "tuple | None":
        return None

    def knows(self, name: str, text: str) -> bool:
        """Whether a row or a choice of that name is known; any other text is read by its field, which says what is
        wrong."""
        return True

    def in_words(self, text: str, tree: dict, system: str, tools: dict) -> Said:
        """A typed text as the screen shows it: the label of a choice, a bare number with its unit.

        tree: what is beside; tools: of `units_of_tools`
        """
        return as_typed(text.strip(BLANKS))

    def chosen(self, tree: dict) -> dict:
        """What it stands at, by name, where other inputs go by it; without reading the rest of the tree."""
        return {}

    def shown_unit(self, tree: dict, system: str) -> str:
        """The unit in which the tool that is picked here shows its figures, "" where none is."""
        return ""

    def linked(self, typed: dict, prefix: str, system: str, found: list,
                whole: bool = False) -> None:
        """Its pairs for a link, onto `found`. typed: the tree it stands in; prefix: dotted name of that tree, or "".

        whole: defaults travel too, because something else than the field's own default stands behind it
        """
        value = self.typed_in(typed)
        for extra in self.extra_names():
            if filled(typed.get(extra)) and (whole or not self.untouched(extra, typed[extra], typed, system)):
                found.append((prefix + extra, text_of(typed[extra])))
        if value is not None:
            self.link_value(value, prefix + self.name, typed, system, found, whole)

    def link_value(self, value: Given, name: str, typed: dict, system: str, found: list, whole: bool) -> None:
        """The pairs of what was typed under its own name."""
        if filled(value) and (whole or not self.untouched(self.name, text_of(value), typed, system)):
            found.append((name, text_of(value)))

    def come_by_link(self, pairs: list) -> list:
        """The pairs that say of what a link brought that a link brought it. pairs: under today's names"""
        return []

    def meant_before(self, pairs: list) -> "list | None":
        """The pairs that a link of an earlier build meant and left out. pairs: under today's names"""
        return []

    def modelled(self, models: Given, owner: str) -> Given:
        """Its type in the API. models: offers quantity, text, choice, record and rows, each for an input"""
        return models.text(self, owner)

    def query_modelled(self, models: Given) -> dict:
        """The schema of its text in a query. models: offers typed_text and one_of, each for an input"""
        return models.typed_text(self)

    def number_modelled(self, models: Given, unit: str) -> dict:
        """The schema of a bare number in one of its `own_units`. models: offers number, numbers and positive"""
        return models.number(self, unit)

    def own_units(self) -> list:
        """The units that a bare number of it may be in, as they are declared."""
        return []

    def from_program(self, taken: Given, value: Given, unit: str, path: str, tree: dict) -> Given:
        """What a program sent as the text or the tree that `read` takes, None where it was refused.

        taken: offers plain, words, one_of, quantity, quantities, record and rows, each for an input
        unit: the one that its name says, "" for none; tree: what was sent beside it
        """
        return taken.plain(self, value, path, tree)

    def exemplified(self, examples: Given) -> Given:
        """What a program could send. examples: offers untouched, words, phone, clock, option, quantity, quantities,
        amount, row and rows, each for an input"""
        return examples.untouched(self)

    def must_be_sent(self) -> bool:
        """Whether an example without it is none."""
        return self.must()

    def may_be(self) -> dict:
        """What may stand in it, for a refusal: {"allowed": [...]}, or its limits in its own unit."""
        return {}

    def most_letters(self) -> int:
        """How long its text may be, 0 where that is not said."""
        return 0

    def parameters(self, name: str) -> list:
        """(dotted name, input) of each text that a query may carry for it."""
        return [(name, self)] + [(name[:len(name) - len(self.name)] + extra, self) for extra in self.extra_names()]

    def about(self, who: Reader) -> dict:
        """The declaration as data, for the form and for GET /api/moves."""
        facts = {"kind": self.kind, "control": self.control, "repeats": self.repeats, "name": self.name,
                 "label": said(self.label, who), "help": said(self.help, who), "fold": said(self.fold, who),
                 "optional": self.optional}
        if self.learned:
            facts["learned"] = True
        if self.stays:
            facts["stays"] = True
        if self.unseen:
            facts["unseen"] = True
        if self.when:
            facts["when"] = [{"name": name, "values": list(allowed)} for name, allowed in self.when]
        return facts

    def default_in(self, system: str) -> Given:
        """The default as typed text, in the unit of that system; "" where there is none."""
        return ""

    def in_marks(self, text: str, who: Reader) -> str:
        """A text that we would type into it as it stands in the form of `who`."""
        return text

    def is_ours(self, typed: Given, text: Given) -> bool:
        """Whether what was typed is a text of ours as it stands in somebody's form."""
        return alike(typed, text)

    def too_long(self) -> Said:
        """What is said of a text longer than anything that could be meant here."""
        return "field-too-long"

    def refuse(self, path: str, why: Said) -> Never:
        raise InputError(path, message("field-refused", label=self.label, why=why))


class Several(ValueError):
    """More than one InputError, told together."""

    def __init__(self, errors: list) -> None:
        super().__init__("several")
        self.errors = errors


def read_into(values: dict, inputs: "list | tuple", tree: dict, prefix: str, errors: list) -> None:
    """Read each input that is asked into `values`, collecting what cannot be read into `errors`."""
    units, numbers = values["units"], memo_of(values).under(READ)
    for item in inputs:
        if item.when and not item.asked(values):
            continue
        typed = tree.get(item.name)
        if typed is None and item.was:
            typed = item.typed_in(tree)
        if isinstance(typed, str) and len(typed) > LONGEST_TYPED:
            why = message("field-refused", label=item.label, why=item.too_long())
            errors.append(InputError(prefix + item.name, why))
            continue
        if item in numbers and (typed is None or isinstance(typed, str)):
            known = numbers[item].get((units, typed))
            if known:
                values[item.name], unit, echoed = known
                if unit is not None:
                    values[item.unit_name] = unit
                for what, typed in echoed:
                    values["_understood"].append([prefix + item.name, what, typed])
                continue
        try:
            values[item.name] = item.read(typed, prefix + item.name, values)
        except InputError as error:
            errors.append(error)
        except Several as several:
            errors.extend(several.errors)


def with_units(inputs: "list | tuple", tree: dict, system: str, tools: "dict | None" = None) -> Given:
    """A typed tree with a unit behind each number that said none: read in whichever system, it means the same.

    system: the one it was typed in; tools: of `units_of_tools`, where the inputs are fields of a row
    """
    told = dict(tree)
    if tools is None:
        tools = units_of_tools(inputs, tree, system)
    for item in inputs:
        for name in (item.name,) + tuple(item.was):
            if told.get(name) is not None:
                told[name] = item.with_units(told[name], system, tree, tools)
    return told


def units_of_tools(inputs: "list | tuple", tree: dict, system: str) -> dict:
    """The unit in which each tool that is asked shows its figures, by the name of its pick: {"scale": "g"}.

    A scale that shows grams shows them to everybody: what is read off it is in its unit, whatever the user counts in.
    """
    found, stands = {}, None
    for item in inputs:
        if item.shows and item.when and stands is None:
            stands = _chosen(inputs, tree)
        if item.shows and (not item.when or item.asked(stands)):
            unit = item.shown_unit(tree, system)
            if unit:
                found[item.name] = unit
    return found


def _chosen(inputs: "list | tuple", tree: dict) -> dict:
    """What each choice of a tree stands at, without reading the rest."""
    found = {}
    for item in inputs:
        if item.options:  # nothing else is chosen among a few
            found.update(item.chosen(tree))
    return found


def checked_at(check: Function, values: dict, prefix: str) -> None:
    error = None
    try:
        check(values)
    except InputError as caught:
        error = caught
    if error:
        raise InputError(prefix + error.field, error.message)


def echo(values: dict, path: str, typed: Given, figures: list) -> None:
    """Keep what was understood wherever a number could be read in two ways, so that the form can say it.

    figures: what was understood, as (ASCII digits, unit) pairs: of feet and inches there are two
    """
    if not isinstance(typed, str):
        return
    mark = thousands(typed) if "," in typed or "." in typed[:-3] else ""
    if not mark and (all([c in DIGITS or c == "." for c in typed.strip(BLANKS)]) or typed == _plainly(figures)):
        return
    values["_understood"].append([path, in_two_ways(with_units_behind(figures), typed, mark), "" if mark else typed])


def needless(text: Given, typed: Given, decimal: str) -> bool:
    """Whether what was understood need not be told: it is what was typed, or that is a number in the reader's own
    marks. typed: "" where it could be read in two ways everywhere

    >>> needless("1,5 g", "1,5", ","), needless("1.5 g", "1,5", "."), needless("1 g", "", ".")
    (True, False, False)
    """
    return bool(typed) and (text == typed or all([c in DIGITS or c == decimal for c in typed.strip(BLANKS)]))


def _plainly(figures: list) -> str:
    return " ".join([digits + TAILS[unit] for digits, unit in figures])


def with_units_behind(figures: list) -> tuple:
    """Figures as they are said: one, or the two of feet and inches."""
    each = [with_unit(digits, unit) for digits, unit in figures]
    return row(each, " ") if len(each) > 1 else each[0]


def in_two_ways(read: tuple, typed: Given, mark: str) -> tuple:
    """What was understood, and why, where the mark in it means thousands in another country. read: as it is said

    >>> read = with_units_behind([("12.5", "g")])
    >>> in_two_ways(read, "12,500 g", ",")[0], in_two_ways(read, "12,5", "")
    ('field-read.comma', (13, '12.5', 'g'))
    """
    if not mark:
        return read
    before, _, behind = typed.strip(BLANKS + "+-").partition(mark)
    whole = number(before + behind[:3])
    if mark == ",":
        return message("field-read.comma", read=read, whole=whole)
    return message("field-read.point", read=read, whole=whole)


def link_inputs(inputs: "list | tuple", typed: dict, prefix: str, system: str, found: list,
                whole: bool = False) -> None:
    """The pairs of all inputs of a tree, in their order."""
    for item in inputs:
        item.linked(typed, prefix, system, found, whole)


def find_in(inputs: "list | tuple", steps: "list | tuple") -> "tuple | None":
    """The input a dotted name leads to, older names included: (its name today, label, input), or None."""
    for item in inputs:
        found = item.find(steps)
        if found or steps[0] == item.name:
            return found
    return None


def item_at(inputs: "list | tuple", name: str) -> "Input | None":
    """The input that a dotted name leads to, or None."""
    found = find_in(inputs, name.split("."))
    return found[2] if found else None


def alike(typed: Given, known: Given) -> bool:
    """Whether what was typed is a text of ours, whichever decimal marks either has.

    >>> alike("1,15 g/mL", "1.15 g/mL"), alike("1.150 g/mL", "1.15 g/mL")
    (True, False)
    """
    return typed == known or (isinstance(typed, str) and isinstance(known, str)
                              and typed.replace(",", ".") == known.replace(",", "."))


def filled(value: Given) -> bool:
    """Whether something stands there that a link can carry."""
    return value is not None and value != "" and not isinstance(value, (dict, list))


def text_of(value: Given) -> str:
    """Typed text as it was typed; a number that came in through the API as plain text, never 1e-07.

    >>> text_of("1,5"), text_of(240.0), text_of(0.0000001)
    ('1,5', '240', '0.0000001')
    """
    if not isinstance(value, float) or not isfinite(value) or abs(value) > MOST:
        return str(value)
    text = shown(value, 9)
    while text.endswith("0"):
        text = text[:-1]
    return text[:-1] if text.endswith(".") else text


def missing(typed: Given) -> bool:
    return typed is None or (isinstance(typed, str) and not typed.strip(BLANKS))


def only_text(tree: dict) -> bool:
    """Whether all that was typed is text, as from a form: True == 1 == 1.0, and they do not read alike."""
    return all([isinstance(tree[key], str) or (isinstance(tree[key], dict) and only_text(tree[key])) for key in tree])


def plain(value: float) -> str:
    """A declared limit or default as short text: 0.5, 240, never 240.0."""
    for places in range(0, 5):
        text = shown(value, places)
        if abs(float(text) - value) <= 1e-9 * max(1.0, abs(value)):
            return text
    return shown(value, 6)


def default_text(value: float, unit: str, system: str) -> str:
    """A default as typed text in the unit that the system expects."""
    own = unit_for(unit, system)
    if own == unit:
        return plain(value)
    told = from_si(to_si(value, unit), own)
    return plain(float(shown(told, places_for(told, 3))))


def limit(si: float, unit: str, toward: str) -> str:
    """A limit as short digits on its inner side, so that what a message names is itself read."""
    value = from_si(si, unit)
    places = 0
    while places < 4 and abs(float(shown(value, places, toward)) - value) > 0.005 * abs(value):
        places += 1
    return shown(value, places, toward)

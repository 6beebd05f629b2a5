"""Declared: what every kind of input has in common, and how a tree of typed text is read by its declarations.

Options that every kind takes:
    help      a hint under the field
    fold      the heading it is folded away under; empty: in sight
    when      (name, values) pairs: asked only while one of these choices has one of its values; empty: always
    was       older names of the field; links printed on a card live for years
"""
from ..words.numbers import BLANKS, DIGITS, places_for, shown, thousands
from ..words.units import from_si, in_system, sign, to_si, unit_for
from .errors import InputError

LONGEST_TYPED = 500  # characters of one field, and none takes more than 400: it is refused before anything reads it

class Input:
    """What every kind has in common."""

    kind = ""
    blank = ""
    known = None
    tool = ""

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

    def with_units(self, typed, system, tree, tools):
        """What was typed, with its unit behind each number that said none: the one of that system or of its tool.

        tree: what is beside; tools: of `units_of_tools`
        """
        return typed

    def about(self, system):
        """The declaration as data, for the form and for GET /api/moves."""
        facts = {"kind": self.kind, "name": self.name, "label": in_system(self.label, system),
                 "help": in_system(self.help, system), "fold": self.fold, "optional": self.optional}
        if self.when:
            facts["when"] = [{"name": name, "values": list(allowed)} for name, allowed in self.when]
        return facts

    def too_long(self):
        """What is said of a text longer than anything that could be meant here."""
        return "that is too long for any field here"

    def refuse(self, path, why):
        raise InputError(path, self.label + ": " + why)


class Several(ValueError):
    """More than one InputError, told together."""

    def __init__(self, errors):
        super().__init__("several")
        self.errors = errors


def read_into(values, inputs, tree, prefix, errors):
    """Read each input that is asked into `values`, collecting what cannot be read into `errors`."""
    units = values["units"]
    for item in inputs:
        if item.when and not item.asked(values):
            continue
        typed = tree.get(item.name)
        if typed is None and item.was:
            typed = item.typed_in(tree)
        if isinstance(typed, str) and len(typed) > LONGEST_TYPED:
            errors.append(InputError(prefix + item.name, item.label + ": " + item.too_long()))
            continue
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


def with_units(inputs, tree, system, tools=None):
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


def units_of_tools(inputs, tree, system):
    """The unit in which each tool that is asked shows its figures, by the name of its pick: {"scale": "g"}.

    A scale that shows grams shows them to everybody: what is read off it is in its unit, whatever the user counts in.
    """
    found = {}
    for item in inputs:
        shows = item.kind == "pick" and item.record.shows
        if shows and (not item.when or item.asked(_chosen(inputs, tree))):
            unit = _unit_shown(item, shows, tree, system)
            if unit:
                found[item.name] = unit
    return found


def _chosen(inputs, tree):
    """What each choice of a tree stands at, without reading the rest."""
    found = {}
    for item in inputs:
        if item.kind == "choice":
            typed = item.typed_in(tree)
            found[item.name] = item.default if missing(typed) else typed
        elif item.kind == "amount":
            typed = tree.get(item.name + "_is")
            found[item.name + "_is"] = item.options[0][0] if missing(typed) else typed
    return found


def _unit_shown(item, shows, tree, system):
    read = {"units": system, "_understood": [], "_tree": {}}
    try:
        typed = item.tree(item.typed_in(tree), item.name) or {}
        for field in item.record.fields:
            if field.name == shows:
                field.read(typed.get(shows), shows, read)
    except InputError:
        return ""  # its own field says what is wrong
    return read.get(shows + "_unit", "")


def checked_at(check, values, prefix):
    error = None
    try:
        check(values)
    except InputError as caught:
        error = caught
    if error:
        raise InputError(prefix + error.field, error.message)


def echo(values, path, typed, text):
    """Keep what was understood wherever a number could be read in two ways, so that the form can say it.

    text: what was understood, with its unit
    """
    if not isinstance(typed, str) or typed == text:
        return
    mark = thousands(typed) if "," in typed or "." in typed[:-3] else ""
    if not mark and all([c in DIGITS or c == "." for c in typed.strip(BLANKS)]):
        return
    values["_understood"].append([path, text + in_two_ways(typed, mark)])


def in_two_ways(typed, mark):
    """Why a number was read as it was, where the mark in it means thousands in another country.

    >>> in_two_ways("12,500", ",")
    ' (a comma marks the decimals; for thousands type 12500)'
    """
    if not mark:
        return ""
    before, _, behind = typed.strip(BLANKS + "+-").partition(mark)
    return " (a {} marks the decimals; for thousands type {})".format("comma" if mark == "," else "point",
                                                                     before + behind[:3])


def missing(typed):
    return typed is None or (isinstance(typed, str) and not typed.strip(BLANKS))


def only_text(tree):
    """Whether all that was typed is text, as from a form: True == 1 == 1.0, and they do not read alike."""
    return all([isinstance(tree[key], str) or (isinstance(tree[key], dict) and only_text(tree[key])) for key in tree])


def in_unit(unit):
    return " in " + sign(unit) if unit else ""


def unit_behind(unit):
    mark = sign(unit)
    return mark if mark in ("%", "°", "") else " " + mark


def plain(value):
    """A declared limit or default as short text: 0.5, 240, never 240.0."""
    for places in range(0, 5):
        text = shown(value, places)
        if abs(float(text) - value) <= 1e-9 * max(1.0, abs(value)):
            return text
    return shown(value, 6)


def default_text(value, unit, system):
    """A default as typed text in the unit that the system expects."""
    own = unit_for(unit, system)
    if own == unit:
        return plain(value)
    told = from_si(to_si(value, unit), own)
    return plain(float(shown(told, places_for(told, 3))))


def limit(si, unit, toward):
    """A limit as short text on its inner side, so that what a message names is itself read."""
    value = from_si(si, unit)
    places = 0
    while places < 4 and abs(float(shown(value, places, toward)) - value) > 0.005 * abs(value):
        places += 1
    return shown(value, places, toward)

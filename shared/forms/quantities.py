"""Quantities: inputs that read a number with its unit, several in a row, or one of several amounts."""
from ..words.languages import Reader
from ..words.messages import message, number, row, unit_of, with_unit
from ..words.messages import typed as as_typed
from ..words.numbers import BLANKS, DIGITS, DOWN, FRACTIONS, SPACES, UP, digits, reading, thousands
from ..words.texts import figure, said, unit_text
from ..words.units import BY_NAME, FINER, TAILS, US, WHICH, find, from_si, to_si, unit_for
from .choices import choose, is_option
from .declared import (
    READ,
    Input,
    alike,
    default_text,
    echo,
    in_two_ways,
    limit,
    missing,
    plain,
    text_of,
    with_units_behind,
)
from .errors import InputError
from .memo import MOST, memo_of
from .types import Given, Said

GLYPHS = [glyph for glyph, _ in FRACTIONS]
BETWEEN = (" to ", " zu ")  # numbers in a row, in the languages that we know
FIGURES = DIGITS + "+-.,\u2212" + "".join(GLYPHS)  # how a number begins


def asked_in(plain_key: str, unit_key: str, unit: str) -> Said:
    """What is said where a number is missing. unit: of a bare one, "" for none

    The keys are given whole: a phone has sentences in their places.
    """
    return message(unit_key, unit=alone(unit)) if unit else plain_key


def alone(unit: str) -> tuple:
    """A unit without a figure, whatever the reader's units are."""
    return unit_of(with_unit("", unit))


class Measured(Input):
    """What is read with a unit behind it."""

    unit = ""

    def unit_beside(self, tree: dict, system: str, tools: dict) -> str:
        """The unit of a bare number. tree: what was typed beside it; tools: of `units_of_tools`"""
        return unit_for(self.unit, system)

    def in_words(self, text: str, tree: dict, system: str, tools: dict) -> Said:
        unit, last = self.unit_beside(tree, system, tools), reading(in_pieces(text)[-1])
        bare = unit and not last[1] and last[0] is not None
        typed = number(text.strip(BLANKS))  # in the reader's marks: 1.500 was read as one and a half
        return row([typed, alone(unit)], " ") if bare else typed

    def in_marks(self, text: str, who: Reader) -> str:
        return figure(text, who.language)

    def modelled(self, models: Given, owner: str) -> Given:
        return models.quantity(self, owner)

    def own_units(self) -> list:
        return [self.unit]

    def from_program(self, taken: Given, value: Given, unit: str, path: str, tree: dict) -> Given:
        return taken.quantity(self, value, unit, path, tree)

    def exemplified(self, examples: Given) -> Given:
        return examples.quantity(self)


class Number(Measured):
    """A quantity. `low`, `high` and `default` are in `unit`; a unit typed behind the number goes before it.

    low and high are limits of sense, not of safety; an optional number that is not typed reads as None.
    tool: the pick whose tool shows this figure: a bare number is in the unit of that tool
    """

    kind = "number"
    control = "figure"
    alone = True
    says_default = True

    def __init__(self, name: str, label: str, unit: str = "", low: float = 0, high: float = 1e9,
                 default: Given = None, above: bool = False, whole: bool = False, missing: str = "",
                 tool: str = "", **more: Given) -> None:
        Input.__init__(self, name, label, **more)
        self.tool = tool
        self.missing = missing  # what is said where nothing is typed, in the place of "field-number"
        self.unit, self.low, self.high, self.default = unit, low, high, default
        self.above, self.whole = above, whole  # above: low itself is refused too
        self.unit_name = name + "_unit"

    def unit_in(self, system: str) -> str:
        return unit_for(self.unit, system)

    def own_unit(self, system: str, tools: dict) -> str:
        """The unit of a bare number. tools: of `units_of_tools`"""
        return (self.tool and tools.get(self.tool)) or self.unit_in(system)

    def default_in(self, system: str) -> Given:
        """The default as typed text in the unit of that system."""
        if self.default is None:
            return ""
        return default_text(self.default, self.unit, system)

    def read(self, typed: Given, path: str, values: dict) -> "float | None":
        if self.tool:  # what it means goes by another field
            return self._read(typed, path, values)
        told = len(values["_understood"])
        si = self._read(typed, path, values)
        # a phone reads every field at each key press and one has changed: `read_into` takes the others from here
        if typed is None or isinstance(typed, str):
            known = memo_of(values).under(READ).setdefault(self, {})
            if len(known) > MOST:
                known.clear()
            known[values["units"], typed] = (si, None if si is None else values[self.unit_name],
                            [echoed[1:] for echoed in values["_understood"][told:]])
        return si

    def _read(self, typed: Given, path: str, values: dict) -> "float | None":
        system, given = values["units"], not missing(typed)
        own = self.own_unit(system, values.get("_tools", {}))
        if not given:
            if self.optional:
                return None
            if self.default is None:
                self.refuse(path, self.missing or asked_in("field-number", "field-number.unit", own))
            typed = self.default_in(system)
        value, words, why = reading(typed)
        if value is None:
            self.refuse(path, why)
        kinds = (BY_NAME[self.unit].quantity,)
        value, unit, figures = with_its_unit(self, value, words, own, kinds, path)
        si = to_si(value, unit)
        self._within(si, unit, path)
        if self.whole and value != int(value):
            self.refuse(path, "field-whole")
        values[self.unit_name] = unit
        if given:
            echo(values, path, typed, figures)
        return si

    def with_units(self, typed: Given, system: str, tree: dict, tools: dict) -> Given:
        return behind(typed, self.unit, system, (self.tool and tools.get(self.tool)) or "")

    def unit_beside(self, tree: dict, system: str, tools: dict) -> str:
        return self.own_unit(system, tools)

    def must(self) -> bool:
        return self.default is None and not self.optional and not self.when

    def may_be(self) -> dict:
        return {"unit": self.unit, "low": self.low, "high": self.high}

    def _within(self, si: float, unit: str, path: str) -> None:
        low, high = to_si(self.low, self.unit), to_si(self.high, self.unit)
        if si < low or si > high or (self.above and si == low):
            self.refuse(path, message("field-above" if self.above else "field-within", low=number(limit(low, unit, UP)),
                                      high=with_unit(limit(high, unit, DOWN), unit)))

    def about(self, who: Reader) -> dict:
        facts = Input.about(self, who)
        unit = self.unit_in(who.units)
        facts.update({"unit": unit_text(unit, who.language), "quantity": BY_NAME[self.unit].quantity,
                      "default": self.in_marks(self.default_in(who.units), who),
                      "low": from_si(to_si(self.low, self.unit), unit),
                      "high": from_si(to_si(self.high, self.unit), unit)})
        # a phone's keypad for decimals has no minus and neither / nor a sign of feet and inches
        facts["keypad"] = "text" if facts["low"] < 0 or unit in ("in", "ft") else "decimal"
        if self.tool:
            facts["tool"] = self.tool
        return facts


def with_its_unit(item: "Amount | Number | Parts", value: float, words: str, own: str, quantities: "list | tuple",
                  path: str) -> tuple:
    """A number and the words behind it -> (value, unit, what was understood); words for anything else are refused.

    own: the unit where none is said; quantities: what it may be an amount of
    what was understood: (ASCII digits, unit) pairs, two of feet and inches
    """
    if not words:
        return value, own, [(plain(value), own)]
    found, why = named(words, quantities)
    if found:
        return value, found, [(plain(value), found)]
    whole = two_units(value, words, quantities)
    if whole is None or len(whole) < 3:
        item.refuse(path, whole or why)
    return whole


def named(words: str, quantities: "list | tuple") -> tuple:
    """The unit of one of some quantities that words name -> (its name or "", why not)."""
    why = ""
    for quantity in quantities:
        found, said = find(words, quantity)
        if found is not None:
            return found.name, ""
        # a word with two meanings is the better answer than "not a unit of mass"
        why = said if said[0] == WHICH or not why else why
    return "", why


def two_units(value: float, words: str, quantities: "list | tuple") -> "tuple | None":
    """Feet and inches, pounds and ounces, hours and minutes: (in the larger unit, that unit, what was understood).

    A message says why not (a pair), None that the words are nothing of the kind. Without a second unit the smaller is
    meant.

    >>> two_units(7.0, "ft 10 1/2 in", ("length",))[2], two_units(1.0, "lb 4", ("mass",))[0]
    ([('7', 'ft'), ('10.5', 'in')], 1.25)
    """
    cut = 0
    while cut < len(words) and words[cut] not in DIGITS:
        cut += 1
    if cut == len(words):
        return None
    large, _ = named(words[:cut].replace("\u2013", "-").strip(" -,"), quantities)
    more, unit, why = reading(words[cut:])
    if large not in FINER:
        return None
    small, many = FINER[large]
    if more is None:
        return message(why)
    if unit and named(unit, quantities)[0] != small:
        return message("field-finer", large=alone(large), small=alone(small))
    if value < 0 or value != int(value) or not 0 <= more < many:
        return message("field-finer.whole", large=alone(large), most=with_unit(str(many), small))
    return value + more / many, large, [(plain(value), large), (plain(more), small)]


def says_unit(typed: Given) -> bool:
    """Whether a unit stands behind what was typed, behind the last of several numbers.

    >>> says_unit("240"), says_unit("240 g"), says_unit("10 mL : 3.4"), says_unit("10 to 3.4 mL")
    (False, True, False, True)
    """
    return bool(reading(in_pieces(typed)[-1])[1])


def behind(typed: Given, unit: str, system: str, own: str = "") -> str:
    """What was typed, with the unit of that system where it said none and the systems have not the same.

    own: the unit of a bare number where it is not the system's
    >>> behind("240", "g", "metric"), behind("3,4 ", "mL", "us"), behind("8 oz", "g", "metric")
    ('240 g', '3,4 US fl oz', '8 oz')
    """
    if missing(typed) or unit_for(unit, US) == unit:
        return typed
    text = text_of(typed) if isinstance(typed, (int, float)) else typed
    if not isinstance(text, str) or says_unit(text) or reading(in_pieces(text)[-1])[0] is None:
        return typed
    return text.strip(BLANKS) + TAILS[own or unit_for(unit, system)]


class Parts(Measured):
    """Numbers in a row, one for each part: "100:30", "2 : 1", "1.15 : 0.98 g/mL". Reads into a tuple of SI floats.

    unit: "" for parts of a ratio; otherwise each number may carry its unit, and a last unit holds for all
    zero: one of them may be nothing at all, as a reading of a scale or a gauge
    """

    kind = "parts"

    def __init__(self, name: str, label: str, unit: str = "", low: float = 0, high: float = 1e6, most: int = 5,
                 least: int = 2, default: Given = "", zero: bool = False, **more: Given) -> None:
        Input.__init__(self, name, label, **more)
        self.zero = zero
        self.unit, self.low, self.high, self.most, self.default = unit, low, high, most, default
        self.least = least

    def default_in(self, system: str) -> Given:
        """The default as typed text, each number in the unit of that system as a single one would be."""
        if not self.default or unit_for(self.unit, system) == self.unit:
            return self.default
        return " : ".join([default_text(reading(piece)[0], self.unit, system) for piece in in_pieces(self.default)])

    def read(self, typed: Given, path: str, values: dict) -> tuple:
        if missing(typed):
            if not self.default:
                if self.optional:
                    return ()
                self.refuse(path, "field-parts")
            typed = self.default_in(values["units"])
        if not isinstance(typed, str):
            self.refuse(path, "field-parts")
        pieces = in_pieces(typed)
        if len(pieces) > 1 and not [mark for mark in (":", ";") + BETWEEN if mark in typed]:
            values["_understood"].append([path, number(" : ".join(pieces)), ""])
        if not self.least <= len(pieces) <= self.most:
            self.refuse(path, message("field-parts.count", least=self.least, most=self.most))
        unit, read, texts = self._unit_behind(pieces[-1], path, values["units"]), [], []
        for piece in pieces:
            value, words, why = reading(piece)
            if value is None:
                self.refuse(path, message("field-parts.one", typed=as_typed(piece.strip(BLANKS)[:20]), why=why))
            value, own, figures = with_its_unit(self, value, words, unit, (BY_NAME[self.unit].quantity,), path)
            si = to_si(value, own)
            low, high = to_si(self.low, self.unit), to_si(self.high, self.unit)
            if not (low < si <= high or (self.zero and si == 0)):
                self.refuse(path, message("field-parts.each", low=number(limit(low, own, UP)),
                                          high=with_unit(limit(high, own, DOWN), own)))
            read.append(si)
            texts.append(with_units_behind(figures))
        values[self.name + "_unit"] = unit
        self._echo(values, path, typed, pieces, texts)
        return tuple(read)

    @staticmethod
    def _echo(values: dict, path: str, typed: Given, pieces: list, texts: list) -> None:
        """A row is told back where one of its numbers could be read in two ways, or was typed in two units."""
        two = [piece for piece in pieces if thousands(piece)]
        if "," in typed or two:
            first = two[0] if two else ""
            # commas that part nothing are the decimal marks of some readers, who need not be told
            own = "" if two or ", " in typed else "".join([c for c in typed if c in DIGITS + ",."])
            values["_understood"].append([path, in_two_ways(row(texts, " : "), first, thousands(first)), own])

    def with_units(self, typed: Given, system: str, tree: dict, tools: dict) -> Given:
        return behind(typed, self.unit, system)

    def number_modelled(self, models: Given, unit: str) -> dict:
        return models.numbers(self, unit)

    def from_program(self, taken: Given, value: Given, unit: str, path: str, tree: dict) -> Given:
        return taken.quantities(self, value, unit, path, tree)

    def exemplified(self, examples: Given) -> Given:
        return examples.quantities(self)

    def must_be_sent(self) -> bool:
        return not self.default and not self.optional

    def may_be(self) -> dict:
        return {"unit": self.unit, "low": self.low, "high": self.high}

    def _unit_behind(self, piece: str, path: str, system: str) -> str:
        _, words, _ = reading(piece)
        found = find(words, BY_NAME[self.unit].quantity)[0] if words else None
        return found.name if found else unit_for(self.unit, system)

    def about(self, who: Reader) -> dict:
        facts = Input.about(self, who)
        facts.update({"unit": unit_text(unit_for(self.unit, who.units), who.language),
                      "default": self.in_marks(self.default_in(who.units), who),
                      "most": self.most})
        return facts


def in_pieces(typed: Given) -> list:
    """The numbers in a row as they were typed, each with the unit behind it.

    Between them stands a colon, a semicolon or "to", as BETWEEN has it; where none of these does, a blank or a comma
    with one behind it.
    Blanks part no numbers of different units: such are one length or one weight.

    >>> in_pieces("100:44"), in_pieces("1,15 0,98 g/mL"), in_pieces("1 1/2 3"), in_pieces("60 mL, 20 mL")
    (['100', '44'], ['1,15', '0,98 g/mL'], ['1 1/2', '3'], ['60 mL', '20 mL'])
    >>> in_pieces("7 ft 10 in"), in_pieces("250 300")
    (['7 ft 10 in'], ['250', '300'])
    """
    text = typed.replace(";", ":")
    for word in BETWEEN:
        text = text.replace(word, ":")
    for space in SPACES:
        text = text.replace(space, " ")
    if ":" in text:
        return text.split(":")
    pieces = []
    for word in text.replace(", ", " ").split(" "):
        if not word:
            continue
        fraction = ("/" in word or word in GLYPHS) and pieces and digits(pieces[-1])
        if pieces and (fraction or word[0] not in FIGURES):
            pieces[-1] += " " + word
        else:
            pieces.append(word)
    # letter by letter: a strip by letters beyond ASCII cuts a sign like the degree in two on the phone's runtime
    behind = ["".join([c for c in piece if c not in FIGURES + "/ "]) for piece in pieces]
    unlike = [words for words in behind if words and words != behind[-1]]
    return [text] if unlike or not pieces else pieces  # "7 ft 10 in" is one length


class Amount(Measured):
    """One of several amounts: what is known is chosen under `<name>_is`, how much of it is typed under `name`.

    options: (key, label, units): the first unit is the default, another quantity is allowed where its unit is listed.
    Reads into (key, SI value, quantity).
    """

    kind = "amount"
    control = "amount"
    alone = True
    says_default = True

    def __init__(self, name: str, label: str, options: "list | tuple", default: Given = None, high: float = 1e6,
                 **more: Given) -> None:
        Input.__init__(self, name, label, **more)
        self.options, self.default, self.high = options, default, high

    def default_in(self, system: str) -> Given:
        return "" if self.default is None else default_text(self.default, self.options[0][2][0], system)

    def extra_names(self) -> tuple:
        return (self.name + "_is",)

    def untouched(self, name: str, text: Given, tree: dict, system: str) -> bool:
        """The default stands for the first kind of amount only; that kind is itself the default."""
        key = tree.get(self.name + "_is")
        first = missing(key) or key == self.options[0][0]
        return first and (name != self.name or alike(text, self.default_in(system)))

    def option(self, key: Given) -> "tuple | None":
        for option in self.options:
            if option[0] == key:
                return option
        return None

    def read(self, typed: Given, path: str, values: dict) -> tuple:
        key = values.get("_tree", {}).get(self.name + "_is")
        option = self.options[0] if missing(key) else self.option(key)
        if option is None:
            raise InputError(path + "_is", message("field-refused", label=self.label, why=choose(self.options)))
        values[self.name + "_is"] = option[0]
        given = not missing(typed)
        if not given:
            if self.default is None or option is not self.options[0]:
                unit = unit_for(option[2][0], values["units"])
                self.refuse(path, asked_in("field-amount", "field-amount.unit", unit))
            typed = self.default_in(values["units"])
        value, words, why = reading(typed)
        if value is None:
            self.refuse(path, why)
        allowed = [BY_NAME[unit].quantity for unit in option[2]]
        own = unit_for(option[2][0], values["units"])
        value, unit, figures = with_its_unit(self, value, words, own, allowed, path)
        if not value > 0:
            self.refuse(path, "field-amount.positive")
        if value > self.high:
            self.refuse(path, message("field-amount.most", most=with_unit(plain(self.high), unit)))
        values[self.name + "_unit"] = unit
        if given:
            echo(values, path, typed, figures)
        return option[0], to_si(value, unit), BY_NAME[unit].quantity

    def with_units(self, typed: Given, system: str, tree: dict, tools: dict) -> Given:
        option = self.option(tree.get(self.name + "_is") or self.options[0][0])
        return typed if option is None else behind(typed, option[2][0], system)

    def knows(self, name: str, text: str) -> bool:
        return name.rpartition(".")[2] == self.name or is_option(self.options, text)

    def own_units(self) -> list:
        return [unit for option in self.options for unit in option[2]]

    def number_modelled(self, models: Given, unit: str) -> dict:
        return models.positive(self, unit)

    def exemplified(self, examples: Given) -> Given:
        return examples.amount(self)

    def unit_beside(self, tree: dict, system: str, tools: dict) -> str:
        option = self.option(tree.get(self.name + "_is")) or self.options[0]
        return unit_for(option[2][0], system)

    def chosen(self, tree: dict) -> dict:
        typed = tree.get(self.name + "_is")
        return {self.name + "_is": self.options[0][0] if missing(typed) else typed}

    def in_words(self, text: str, tree: dict, system: str, tools: dict) -> Said:
        for option in self.options:
            if option[0] == text:
                return option[1]
        return Measured.in_words(self, text, tree, system, tools)

    def about(self, who: Reader) -> dict:
        facts = Input.about(self, who)
        facts["default"] = self.in_marks(self.default_in(who.units), who)
        facts["options"] = [{"value": o[0], "label": said(o[1], who), "help": said(o[3], who) if len(o) > 3 else "",
                             "unit": unit_text(unit_for(o[2][0], who.units), who.language)} for o in self.options]
        facts["stands"] = {"_is": self.options[0][0]}
        return facts

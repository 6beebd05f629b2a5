"""Typed: what a program sends, made into the text that the engine reads; a number that could be misread is refused.

A bare number stands only under a name that says its unit: `thickness_mm`, or `thickness_m` in SI. The plain name takes
text with its unit, as it is typed in the form: "6 mm", "298.15 K".
"""
from collections import namedtuple
from collections.abc import Iterable
from decimal import Decimal
from functools import cache
from math import isfinite
from numbers import Real
from typing import Any

from covemix.shared.forms import links
from covemix.shared.forms.declared import Input, find_in, item_at, missing, units_of_tools
from covemix.shared.forms.errors import InputError
from covemix.shared.forms.memo import Memo
from covemix.shared.forms.quantities import in_pieces
from covemix.shared.forms.rows import Group, Pick, in_rows
from covemix.shared.words.numbers import BLANKS, reading
from covemix.shared.words.texts import said
from covemix.shared.words.units import BY_NAME, METRIC, SYSTEMS
from covemix.shared.words.written import reader

from .examples import example

# of each quantity that has one here, its unit in SI; a share, a count and an angle are in their own alone
SI = {"mass": "kg", "volume": "m3", "length": "m", "area": "m2", "temperature": "K", "time": "s", "density": "kg/m3"}
# move: the choice that asks for it on its screen
SWITCHES = {"thicken": ("thicken", "yes"), "rescue": ("rescue", "yes"), "sheathing": ("work", "sheathe"),
            "fairing": ("work", "fair"), "gluing": ("work", "scarf"), "fillets": ("work", "fillet")}
NO_UNIT = 'this number says no unit: send it under {}, or as text with its unit behind it, such as "{}"'
TWICE = "given twice, as {} and as {}"
A_NUMBER = "a number is expected here, {} is said by the name"
A_TEXT = "a text is expected here"
LONGEST_NAME = 80


def behind_name(unit: str) -> str:
    """A unit as a name ends with it.

    >>> behind_name("g/mL"), behind_name("%"), behind_name("degC")
    ('g_per_mL', 'percent', 'degC')
    """
    return unit.replace("/", "_per_").replace("%", "percent")


def units_of(item: Input) -> list[str]:
    """The units that a bare number of an input may be in: its own, then that of SI; none where it is a pure number.

    >>> from covemix.shared.forms.inputs import Number
    >>> units_of(Number("thickness", "", unit="mm")), units_of(Number("people", ""))
    (['mm', 'm'], [])
    """
    own = item.own_units()
    found = [unit for unit in dict.fromkeys(own) if unit and (BY_NAME[unit].quantity != "count" or len(own) > 1)]
    found += [SI[BY_NAME[unit].quantity] for unit in found if BY_NAME[unit].quantity in SI]
    return list(dict.fromkeys(found))


@cache
def named(item: Input) -> dict[str, str]:
    """The names under which an input takes a bare number, each with its unit.

    >>> from covemix.shared.forms.inputs import Number
    >>> named(Number("air", "", unit="degC"))
    {'air_degC': 'degC', 'air_K': 'K'}
    """
    return {f"{item.name}_{behind_name(unit)}": unit for unit in units_of(item)}


def is_number(value: Any) -> bool:
    """Whether a value is a real number, of Python or of a library of numbers; true and false are none."""
    return isinstance(value, Real) and not isinstance(value, bool)


def in_digits(value: Real) -> str:
    """A number in plain digits, each of them kept.

    >>> in_digits(0.0000001), in_digits(240.0), in_digits(-3)
    ('0.0000001', '240', '-3')
    """
    number = float(value)
    if not isfinite(number):
        return str(number)
    text = format(Decimal(repr(number)), "f")
    return text.rstrip("0").rstrip(".") if "." in text else text


# known: an input and the unit in its name, by each name that is taken; extra: by each name of what stands beside one
Names = namedtuple("Names", ("known", "extra"))


@cache
def names_of(inputs: tuple[Input, ...]) -> Names:
    """By what names inputs are taken.

    >>> from covemix.shared.forms.inputs import Number
    >>> [(name, unit) for name, (_, unit) in names_of((Number("air", "", unit="degC"),)).known.items()]
    [('air_degC', 'degC'), ('air_K', 'K'), ('air', '')]
    """
    known = {name: (item, unit) for item in inputs for name, unit in named(item).items()}
    known.update((name, (item, "")) for item in inputs for name in (*item.was, item.name))
    return Names(known, {name: item for item in reversed(inputs) for name in item.extra_names()})


class Taken:
    """What was taken of a tree: `tree` of text for the engine, `errors` as [{"field", "message"}].

    Each kind of input chooses the method that takes its value (`Input.from_program`).
    sent: the name under which a value came, by the path of its input; numbers: the paths whose value came as a number
    """

    def __init__(self, inputs: Iterable[Input], tree: dict, units: str = METRIC):
        self.errors: list[dict] = []
        self.sent: dict[str, str] = {}
        self.numbers: set[str] = set()
        self.units = units if units in SYSTEMS else METRIC
        self._before: dict[tuple, Any] = {}
        self.tree = self._fields(names_of(tuple(inputs)), tree, "")

    def _fields(self, names: Names, tree: dict, prefix: str) -> dict:
        found = {}
        given: dict[str, str] = {}
        for key, value in tree.items():
            item, unit = names.known.get(key, (None, ""))
            if item is None:
                found[key] = value
                if key in names.extra:
                    self._among([option[0] for option in names.extra[key].options], value, prefix + key)
                continue
            if value is None:
                continue
            if item.name in given:
                self._refuse(prefix + key, TWICE.format(given[item.name], key))
                continue
            given[item.name] = key
            self.sent[prefix + item.name] = prefix + key
            if unit:
                self.numbers.add(prefix + item.name)
            read = self._value(item, value, unit, prefix + key, tree)
            if read is not None:
                found[item.name] = read
        return found

    def _value(self, item: Input, value: Any, unit: str, path: str, tree: dict) -> Any:
        if hasattr(value, "tolist"):  # an array or a scalar of numpy
            value = value.tolist()
        return item.from_program(self, value, unit, path, tree)

    def plain(self, item: Input, value: Any, path: str, tree: dict) -> Any:
        """A value as it came, if the engine reads it."""
        if value is None or missing(value) or not self._reads(item, value, path, tree):
            return None
        return value

    def words(self, item: Input, value: Any, path: str, tree: dict) -> Any:
        """A text."""
        if not isinstance(value, str):
            self._refuse(path, A_TEXT)
            return None
        return self.plain(item, value, path, tree)

    def one_of(self, item: Input, value: Any, path: str) -> Any:
        """A choice among a few."""
        value = in_digits(value) if is_number(value) else value
        return value if self._among([option[0] for option in item.options], value, path) else None

    def quantity(self, item: Input, value: Any, unit: str, path: str, tree: dict) -> Any:
        """A quantity as text with its unit."""
        if isinstance(value, (list, tuple)):
            self._refuse(path, "one number is expected here, not a list")
            return None
        return self._once(item, value, unit, path, tree)

    def quantities(self, item: Input, value: Any, unit: str, path: str, tree: dict) -> Any:
        """Several in a row: a list of them, or a text as it is typed."""
        if isinstance(value, (list, tuple)):
            pieces = [in_digits(one) if is_number(one) else one for one in value]
            if not all(isinstance(one, str) for one in pieces):
                self._refuse(path, "a list of numbers is expected here")
                return None
            value = " : ".join(pieces)
        return self._once(item, value, unit, path, tree)

    def _once(self, item: Input, value: Any, unit: str, path: str, tree: dict) -> Any:
        """A quantity as it was taken before in another row: what is read does not hang on where it stands."""
        text = in_digits(value) if is_number(value) else value
        key = (item, text, unit) if isinstance(text, str) else None
        if key in self._before:
            return self._before[key]
        told = len(self.errors)
        found = self.plain(item, self._measured(item, text, unit, path), path, tree)
        if key and len(self.errors) == told:
            self._before[key] = found
        return found

    def record(self, item: Pick, value: Any, path: str) -> Any:
        """The name of a row, or an object with fields of its own."""
        inner = value
        if isinstance(value, dict):
            inner = self._fields(names_of(tuple(item.record.fields)), value, path + ".")
        row = value.get("id") if isinstance(value, dict) else value
        if row == "" or (isinstance(row, str) and item.record.row(row) is None):
            self._among([one[0] for one in item.record.rows], row, path)
            return None
        return inner

    def rows(self, item: Group, value: Any, path: str) -> Any:
        """A list of objects."""
        rows = in_rows(value, item.most) if isinstance(value, dict) else value
        names = names_of(tuple(item.fields))
        return [self._fields(names, row, f"{path}.{place}.") if isinstance(row, dict) else row
                for place, row in enumerate(rows)] if isinstance(rows, (list, tuple)) else value

    def _measured(self, item: Input, value: Any, unit: str, path: str) -> str | None:
        """A quantity as text with its unit, or None where it was refused."""
        if not isinstance(value, str):
            self._refuse(path, "a text with its unit is expected here")
            return None
        if missing(value):
            return value
        says = reading(in_pieces(value)[-1])
        if unit:
            if says[0] is None or says[1]:
                self._refuse(path, A_NUMBER.format(unit))
                return None
            return f"{value.strip(BLANKS)} {unit}"
        units = units_of(item)
        if units and says[0] is not None and not says[1]:
            names = " or ".join(named(item))
            self._refuse(path, NO_UNIT.format(names, example(item)))
            return None
        return value

    def _reads(self, item: Input, value: str, path: str, tree: dict) -> bool:
        """Whether the engine reads it, also where nobody asks for it: what is sent is never passed over."""
        values = {"units": self.units, "_understood": [], "_memo": Memo(), "_tree": tree}
        try:
            item.read(value, path, values)  # type: ignore[attr-defined]
        except InputError as error:
            if error.field == path:
                self._refuse(path, said(error.message, reader(self.units)))
                return False
        return True

    def _among(self, allowed: list[str], value: Any, path: str) -> bool:
        if value is None or (isinstance(value, str) and value in allowed):
            return True
        self._refuse(path, "choose one of: " + ", ".join(allowed), [one for one in allowed if one])
        return False

    def _refuse(self, path: str, message: str, allowed: Iterable[str] = ()) -> None:
        told: dict[str, Any] = {"field": path[:LONGEST_NAME], "message": message}
        if allowed:
            told["allowed"] = list(allowed)
        self.errors.append(told)


def of_link(inputs: list[Input], pairs: list) -> tuple[list, list[dict]]:
    """Pairs of a link with each name that says a unit as its plain name, (pairs, errors). A bare number of a plain name
    stays: links that people have are read as they were made, and `bare` tells how.

    >>> from covemix.shared.forms.inputs import Number
    >>> of_link([Number("air", "", unit="degC")], [("air_K", "298.15"), ("air", "25")])
    ([('air', '298.15 K'), ('air', '25')], [])
    """
    found, errors = [], []
    for name, text in pairs:
        item, plain, unit = _under_unit(inputs, name)
        if item is None:
            found.append((name, text))
            continue
        says = reading(in_pieces(text)[-1])
        if says[0] is None or says[1]:
            errors.append({"field": name[:LONGEST_NAME], "message": A_NUMBER.format(unit)})
        else:
            found.append((plain, f"{text.strip(BLANKS)} {unit}"))
    return found, errors


def _under_unit(inputs: list[Input], name: str) -> tuple[Input | None, str, str]:
    if "_" in name and not find_in(inputs, name.split(".")):
        before, _, last = name.rpartition(".")
        for place, letter in enumerate(last):
            if letter == "_":
                plain = (before + "." if before else "") + last[:place]
                known = find_in(inputs, plain.split("."))
                unit = named(known[2]).get(last) if known else None
                if known and unit:
                    return known[2], plain, unit
    return None, name, ""


def bare(inputs: list[Input], pairs: list, language: str) -> list[list[str]]:
    """How each number of a link was read that says no unit: [[name, "25 °C"], ...]."""
    tree, found = links.tree(pairs), []
    units: str = tree["units"] if tree.get("units") in SYSTEMS else METRIC
    tools = units_of_tools(inputs, tree, units)
    for name, text in pairs:
        item = item_at(inputs, name)
        if item and units_of(item) and name.rpartition(".")[2] not in item.extra_names():
            says = reading(in_pieces(text)[-1])
            if says[0] is not None and not says[1]:
                beside = _beside(tree, name)
                found.append([name, said(item.in_words(text, beside, units, tools), reader(units, language))])
    return found


def _beside(tree: dict, name: str) -> dict:
    for step in name.split(".")[:-1]:
        inner = tree.get(step)
        tree = inner if isinstance(inner, dict) else {}
    return tree


def allowed_at(inputs: list[Input], field: str) -> dict[str, Any]:
    """What may stand in a field, for a refusal: its options or the names of its rows, or its limits in its own unit.

    >>> from covemix.shared.forms.inputs import Number
    >>> allowed_at([Number("air", "", unit="degC", low=-10, high=50)], "air_K")
    {'unit': 'degC', 'low': -10, 'high': 50}
    """
    item, plain, _ = _under_unit(inputs, field)
    known = find_in(inputs, field.split(".")) if item is None else find_in(inputs, plain.split("."))
    if not known:
        return {}
    item, last = known[2], field.rpartition(".")[2]
    if last in item.extra_names():
        return {"allowed": [option[0] for option in item.options if option[0]]}
    return item.may_be()


def switched_on(name: str, tree: dict) -> dict:
    """A tree for a move's own address: who asks there has asked for it."""
    switch, on = SWITCHES.get(name, ("", ""))
    return {**tree, switch: on} if switch and missing(tree.get(switch)) else tree

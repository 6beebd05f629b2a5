"""Inputs, each declared once: the form, the API model, the link and the error message all come from the declaration.

Typed values are text in a tree: {"amount": "240", "system": {"by_weight": "3:1"}, "readings": [{"shown": "181"}]}.
Every kind reads its own piece of that tree into SI and refuses in the user's words, at the dotted path of the field.
The kinds stand in choices, quantities and rows; moves take them from here. What all kinds share is in declared.
"""
from ..words.messages import typed
from ..words.units import METRIC, SYSTEMS, US
from .choices import Choice, Numbered, Phone, Text  # noqa: F401
from .declared import read_into, units_of_tools, with_units
from .errors import InputError
from .memo import Memo
from .quantities import Amount, Number, Parts  # noqa: F401
from .rows import Group, Pick, stand_together  # noqa: F401

TYPED_IN = "units_typed"  # the units that bare numbers were typed in, where they are not those of the answer

UNITS_INPUT = Choice("units", "setting-units", ((METRIC, typed("g, mL, mm, °C")), (US, typed("oz, US fl oz, in, °F"))),
                     help="units-help")


def read(inputs: "list | tuple", tree: dict, memo: "Memo | None" = None) -> "tuple[dict, list]":
    """Typed tree -> (values, errors): all errors at once, in the order of the form.

    memo: the `Memo` of whoever asks again and again; without one everything is read anew
    """
    tree = typed_elsewhere(inputs, tree)
    values: dict = {"_tree": tree, "_understood": [], "_memo": memo or Memo()}
    errors: list = []
    try:
        values["units"] = UNITS_INPUT.read(tree.get("units"), "units", values)
    except InputError as error:
        values["units"] = METRIC
        errors.append(error)
    values["_tools"] = units_of_tools(inputs, tree, values["units"])
    read_into(values, inputs, tree, "", errors)
    return values, errors


def typed_elsewhere(inputs: "list | tuple", tree: dict) -> dict:
    """A tree that was typed in other units than it asks to be answered in: each of its numbers says its unit.

    >>> from .quantities import Number
    >>> typed = {"units": "us", "units_typed": "metric", "mass": "240"}
    >>> typed_elsewhere((Number("mass", "Mass", unit="g"),), typed)["mass"]
    '240 g'
    """
    before, now = tree.get(TYPED_IN), tree.get("units") or METRIC
    if before == now or before not in SYSTEMS:
        return tree
    return with_units(inputs, tree, before)


def checked(checks: "list | tuple", values: dict) -> list:
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

"""Field words: which input a dotted name leads to, and what was typed there as the screen shows it."""
from ..words.numbers import BLANKS, digits, reading, small
from ..words.units import in_system, sign, unit_for
from .quantities import in_pieces


def find(inputs, steps):
    """The input a dotted name leads to, older names included: (its name today, label, input), or None.

    The input is None for a name that only says which (the kind of an amount).
    """
    for item in inputs:
        if steps[0] in item.extra_names():
            return (steps[0], item.label + ", of what", item) if len(steps) == 1 else None
        if steps[0] != item.name and steps[0] not in item.was:
            continue
        if len(steps) == 1:
            return item.name, item.label, item
        if item.kind == "pick":
            if steps[1:] == ["id"]:
                return item.name, item.label, item
            inner = find(item.record.fields, steps[1:])
            return inner and (item.name + "." + inner[0], inner[1], inner[2])
        if item.kind == "group" and len(steps) > 2 and _is_row(steps[1], item.most):
            inner = find(item.fields, steps[2:])
            number = str(int(steps[1]) + 1)
            return inner and (item.name + "." + steps[1] + "." + inner[0],
                              (item.each or item.label) + " " + number + ", " + small(inner[1]), inner[2])
        return None
    return None


def _is_row(step, most):
    """Whether a step of a dotted name is a row that the group has, spelled the one way a tree knows it."""
    return digits(step, 3) and str(int(step)) == step and int(step) < most


def in_words(item, text, tree, units, tools):
    """A typed text as the screen shows it: the label of a choice or a row, a bare number with its unit.

    tools: of `units_of_tools`
    """
    for option in getattr(item, "options", ()):
        if option[0] == text:
            return in_system(option[1], units)
    if item.kind == "pick":
        return in_system("".join([row[1] for row in item.record.rows if row[0] == text]), units) or text
    unit = ""
    if item.kind == "number":
        unit = item.own_unit(units, tools)
    elif item.kind == "parts":
        unit = unit_for(item.unit, units)
    elif item.kind == "amount":
        option = item.option(tree.get(item.name + "_is")) or item.options[0]
        unit = unit_for(option[2][0], units)
    last = reading(in_pieces(text)[-1])
    if unit and not last[1] and last[0] is not None:
        return text.strip(BLANKS) + " " + sign(unit)
    return text.strip(BLANKS)

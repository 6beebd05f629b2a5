"""Links: a mix, a joint or a plan as short pairs of field name and typed text, in the order of the form.

Dotted names are the one spelling of a tree of typed text that a form, a query string and an error can share:
"system.by_weight" is a field of a record, "readings.0.shown" a field of the first row of a group.
"""

from math import isfinite

from ..words.numbers import MOST, shown
from .rows import in_rows

LONGEST_LINK = 8000  # characters of payload; a boat of sixty joints is about half of it
MOST_PAIRS = 2000


def tree(pairs):
    """Pairs of dotted name and text -> typed tree. The first of two equal names counts; impossible paths are dropped.

    >>> tree([("amount", "240"), ("system.by_weight", "3:1"), ("readings.1.shown", "90")])["readings"]["1"]["shown"]
    '90'
    """
    root = {}
    for name, text in list(pairs)[:MOST_PAIRS]:
        steps = name.split(".")
        if len(steps) > 6 or "" in steps:
            continue
        place = root
        for step in steps[:-1]:
            inner = place.get(step)
            if inner is None:
                inner = place[step] = {}
            elif not isinstance(inner, dict):
                # "system=three-to-one" and "system.densities=..." belong together: the row, then its own figures
                inner = place[step] = {"id": inner}
            place = inner
        last = place.get(steps[-1])
        if isinstance(last, dict):
            last["id"] = text
        elif last is None:
            place[steps[-1]] = text
    return root


def pairs(inputs, typed):
    """The typed tree as pairs for a link, in the order of the inputs, blanks and defaults left out.

    A list of inputs decides what travels: names it does not declare stay behind.
    """
    found = []
    units = typed.get("units")
    if not isinstance(units, str):
        units = ""  # nothing that a form could have sent
    if units and units != "metric":
        found.append(("units", units))
    _collect(inputs, typed, "", units or "metric", found)
    return found


def handed_on(item, values):
    """A picked thing as pairs for another screen: each of its numbers says its unit, whatever that screen counts in.

    item: the Pick; values: as read, with the user's units
    """
    typed = item.with_units(values[item.name]["_tree"], values["units"], values, {})
    return [list(pair) for pair in pairs((item,), {item.name: typed})]


def _collect(inputs, typed, prefix, units, found, whole=False):
    """whole: defaults travel too, because something else than the field's own default stands behind it"""
    for item in inputs:
        value = item.typed_in(typed)
        if value is None and item.kind != "amount":
            continue
        name = prefix + item.name
        for extra in item.extra_names():
            if _filled(typed.get(extra)) and (whole or not item.untouched(extra, typed[extra], typed, units)):
                found.append((prefix + extra, text_of(typed[extra])))
        if item.kind == "pick":
            _collect_pick(item, value, name, units, found)
        elif item.kind == "group":
            _collect_group(item, value, name, units, found)
        elif _filled(value) and (whole or not item.untouched(item.name, text_of(value), typed, units)):
            found.append((name, text_of(value)))


def _collect_pick(item, value, name, units, found):
    if not isinstance(value, dict):
        if _filled(value) and value != item.default:
            found.append((name, text_of(value)))
        return
    row = value.get("id", "")
    base = item.record.row(row) if row else None
    own_figures = any([_filled(value[key]) for key in value if key != "id"])
    if base is not None and item.record.is_another(base, value):
        base = None  # nothing of the row is read, so it does not travel either
    if base is not None and (row != item.default or own_figures):
        found.append((name, row))
    own = {}
    for key in value:
        if key != "id" and not (base is not None and base.get(key) == value[key]):
            own[key] = value[key]
    _collect(item.record.fields, own, name + ".", units, found, whole=True)


def _collect_group(item, value, name, units, found):
    if value == item.NONE:
        if item.default:
            found.append((name, value))
        return
    rows, own = in_rows(value, item.most), []
    for place, row in enumerate(rows if isinstance(rows, list) else []):
        if isinstance(row, dict):
            _collect(item.fields, row, "{}.{}.".format(name, place), units, own)
    if not own and item.default:  # rows of nothing but defaults are still other rows than the group's own
        for place, row in enumerate(rows if isinstance(rows, list) else []):
            if isinstance(row, dict):
                _collect(item.fields, row, "{}.{}.".format(name, place), units, own, whole=True)
    if own and len(rows) == len(item.default):
        resting = []
        for place, row in enumerate(item.default):
            _collect(item.fields, row, "{}.{}.".format(name, place), units, resting)
        if own == resting:
            return  # the rows that nothing typed at all stands for
    found.extend(own)


def _filled(value):
    return value is not None and value != "" and not isinstance(value, (dict, list))


def text_of(value):
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

"""Links: a mix, a joint or a plan as short pairs of field name and typed text, in the order of the form.

Dotted names are the one spelling of a tree of typed text that a form, a query string and an error can share:
"system.by_weight" is a field of a record, "readings.0.shown" a field of the first row of a group.
"""
from .declared import link_inputs
from .types import Given

LONGEST_LINK = 8000  # characters of payload; a boat of sixty joints is about half of it
MOST_PAIRS = 2000
LONGEST_NAME, LONGEST_TEXT = 200, 1000  # letters; a longer name is unknown, and a longer text refused anyway


def tree(pairs: "list | tuple") -> dict:
    """Pairs of dotted name and text -> typed tree. The first of two equal names counts; impossible paths are dropped.

    >>> tree([("amount", "240"), ("system.by_weight", "3:1"), ("readings.1.shown", "90")])["readings"]["1"]["shown"]
    '90'
    """
    root = {}
    for name, text in list(pairs)[:MOST_PAIRS]:
        if len(name) > LONGEST_NAME:
            continue
        text, steps = text[:LONGEST_TEXT], name.split(".")
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


def pairs(inputs: "list | tuple", typed: Given) -> list:
    """The typed tree as pairs for a link, in the order of the inputs, blanks and defaults left out.

    A list of inputs decides what travels: names it does not declare stay behind.
    """
    found = []
    units = typed.get("units")
    if not isinstance(units, str):
        units = ""  # nothing that a form could have sent
    if units and units != "metric":
        found.append(("units", units))
    link_inputs(inputs, typed, "", units or "metric", found)
    return found


def handed_on(item: Given, values: dict) -> list:
    """A picked thing as pairs for another screen: each of its numbers says its unit, whatever that screen counts in.

    item: the Pick; values: as read, with the user's units
    """
    typed = item.with_units(values[item.name]["_tree"], values["units"], values, {})
    return [list(pair) for pair in pairs((item,), {item.name: typed})]

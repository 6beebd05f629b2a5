"""Batch cards: each batch of a plan on a sheet of its own, to hang on the wall, with the links of its pours."""
from ..clock.sun import NAMES
from ..forms.types import Found, Values
from ..words.messages import message, typed
from ..words.numbers import UP, digits, shown, warmth_typed
from ..words.texts import said

CARRIED = ("units", "system") + NAMES  # what the links of the pours take along


def sheets(lines: "list[Values]", link: "list[list[str]]", who: Found) -> "list[Values]":
    """[{"title", "lines", "pours": [[label, pairs of a link to Pour]]}], one for each batch told in full.

    lines: a plan's, as data; link: the pairs of its own link, of which the units and the resin system go along
    who: the `languages.Reader` who reads lines and sheets
    """
    found: dict = {}
    system = [pair for pair in link if pair[0].partition(".")[0] in CARRIED]
    order = []
    for line in lines:
        kind, _, number = line["part"].partition("_")
        if kind != "batch" or not digits(number, 3):
            continue
        if number not in found:
            order.append(number)
            title = said(message("plan-batch", number=int(number)), who)
            found[number] = {"title": title, "lines": [], "pours": [], "air": []}
        sheet = found[number]
        sheet["lines"].append(line)
        if line["name"] == "air":
            sheet["air"] = [["air", warmth_typed(line["value"])], ["temperature", ""]]
        if line["name"].startswith("amount_"):
            amount = ["amount", shown(line["value"] * 1000, 0, UP) + " g"]
            label = message("plan-pour.card", what=typed(line["label"]))
            sheet["pours"].append([said(label, who), system + [amount] + sheet["air"]])
    return [dict([(key, found[number][key]) for key in ("title", "lines", "pours")]) for number in order
            if found[number]["pours"]]

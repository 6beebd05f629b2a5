"""In place: the caution that matters now on a screen, from what is typed and what was answered there."""
from . import statements
from .catalogue.cautions import REMINDER
from .cautions import cautions, standing

ALWAYS = "gloves"  # what always stands is told in the reminder's own words


def caution(values, answers):
    """One caution as text: the most urgent that the real inputs bring up, else the reminder.

    values: what the screen read; answers: [[move, answer], ...] as `moves.screen` gives them
    """
    known = _known(values, answers)
    if standing(**known)[0] == ALWAYS:
        return REMINDER
    line = cautions(units=values["units"], most=1, **known)[0]
    first, stop, _ = line.text.partition(". ")  # the rest is one tap away
    return line.label + ". " + first + ("." if stop else "")


def _known(values, answers):
    told = {}
    for _, answer in answers:
        for line in answer["lines"]:
            if line["value"] is not None and line["name"] not in told:
                told[line["name"]] = line["value"]
    system, filler = values.get("system") or {}, values.get("filler") or {}
    in_cup = values.get("batch") if values.get("container") in ("cup", "bag") else None
    thick = values.get("thicken") == "yes"
    return {
        "mass": told.get("mixed_mass") or told.get("largest") or values.get("mass") or in_cup,
        "depth": told.get("throat"),
        "solvent": (values.get("solvent") or "none") != "none",
        "filler": (filler.get("id") or filler.get("name") or "powder") if thick else "",
        "temperature": _kelvin(values.get("air"), values.get("temperature")),
        "usable": told.get("usable"),
        "task": "confined" if values.get("place") == "hull" else values.get("task") or "",
        "cured": values.get("cured") or "",
        "codes": statements.codes(system.get("statements") or ""),
    }


def _kelvin(*temperatures):
    for one in temperatures:
        if isinstance(one, float):
            return one
    return None

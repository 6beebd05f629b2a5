"""In place: the caution that matters now on a screen, from what is typed and what was answered there."""
from ..catalogue.cautions import REMINDER
from ..things import statements
from .cautions import BIG, cautions, standing

HEATS = "hot_pot"
ALWAYS = "gloves"  # what always stands is told in the reminder's own words


def caution(values, answers):
    """One caution as text: the most urgent that the real inputs bring up, else the reminder.

    A pot that can run away is told beside it.

    values: what the screen read; answers: [[move, answer], ...] as `moves.screen` gives them
    """
    known = _known(values, answers)
    names = standing(**known)
    first = next(iter([name for name in names if name != HEATS]))
    lines = dict([(line.name, line) for line in cautions(units=values["units"], most=len(names), **known)])
    text = REMINDER if first == ALWAYS else _short(lines["caution_" + first])
    if HEATS not in names:
        return text
    # what must be on before a pot is opened is not kept back by what the pot does once it is mixed: both are told
    if first == ALWAYS:
        text = text.partition(". ")[0] + "."
    return text + " " + _short(lines["caution_" + HEATS], named=False)  # what it can do says it all; room is scarce


def _short(line, named=True):
    first, stop, _ = line.text.partition(". ")  # the rest is one tap away
    return (line.label + ". " if named else "") + first + ("." if stop else "")


def _known(values, answers):
    told = {}
    for _, answer in answers:
        for line in answer["lines"]:
            if line["value"] is not None and line["name"] not in told:
                told[line["name"]] = line["value"]
    system, filler = values.get("system") or {}, values.get("filler") or {}
    in_cup = values.get("batch") if values.get("container") in ("cup", "bag") else None
    thick = values.get("thicken") == "yes"
    mass = told.get("mixed_mass") or told.get("largest") or values.get("mass") or in_cup
    return {
        "mass": mass,
        "peak": told["peak"] if "peak" in told else _peak(values, system, mass),
        "depth": told.get("throat"),
        "solvent": (values.get("solvent") or "none") != "none",
        "filler": (filler.get("id") or filler.get("name") or "powder") if thick else "",
        "temperature": _kelvin(values.get("air"), values.get("temperature")),
        "usable": told.get("usable"),
        "task": "confined" if values.get("place") == "hull" else values.get("task") or "",
        "cured": values.get("cured") or "",
        "codes": statements.codes(system.get("statements") or ""),
    }


def _peak(values, system, mass):
    """How hot the mix gets if it stays in its cup, or in the bag of a plan [K]; None where nothing tells it.

    Where it was not measured how warm it is, it is as warm as the label says.
    """
    if not mass or mass >= BIG or "pot_time" not in system:
        return None
    from ..clock.usable import known
    warm = _kelvin(values.get("air"), values.get("temperature"), system["pot_temperature"])
    if warm is None or not known(system):
        return None
    from ..clock.hot_pot import peak_temperature
    return peak_temperature(system, mass, "bag" if "pieces" in values else "cup", warm)


def _kelvin(*temperatures):
    for one in temperatures:
        if isinstance(one, float):
            return one
    return None

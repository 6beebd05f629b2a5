"""Current caution: the caution that matters now on a screen, from what is typed and what was answered there."""
from collections import namedtuple

from ..catalogue.hazards import signs_of
from ..clock.sun import sun_of
from ..forms.errors import InputError
from ..forms.late import late
from ..forms.types import Said, Values
from ..things import statements
from .cautions import BIG, standing
from .cautions_lines import UNNAMED
from .current_caution_lines import say
from .own_codes import gravest
from .powders import powder

HEATS = ("big_pot", "warm_pot", "hot_pot")
CUPS, SPREAD = ("cup", "bag"), ("tray", "roll")  # containers of a batch; a bead and a film lie on the boat
THICKENED = ("fair", "scarf", "laminate", "gap", "fillet")  # works of a surface that take filler

# first: the most urgent caution, a name of catalogue.cautions.MOMENT; heats: what is told beside it of a pot that gets
# hot, another such name, "" where nothing is; signs: keys of the pictograms of the own codes that bring up a caution
# known: the keywords of `cautions.standing`
CurrentResult = namedtuple("CurrentResult", ("first", "heats", "signs", "known"))


def caution(values: Values, answers: list) -> "tuple[Said, Said, list[dict]]":
    """One caution: the most urgent that the real inputs bring up, else the reminder; the same for two rows of a phone;
    and the pictograms of the product's own codes that bring one up, also where another is more urgent.

    values: what the screen read; answers: [[move, answer], ...] as `moves.screen` gives them
    """
    found = reckon(values, answers)
    return say(found), say(found, True), [late("pictogram_drawing").figure(key) for key in found.signs]


def reckon(values: Values, answers: list) -> CurrentResult:
    """The most urgent caution of these inputs, and what it is told with."""
    known = _known(values, answers)
    names = standing(**known)
    signs: list = []
    for name in names:
        grave = gravest(name, known["codes"])
        if grave:
            signs.extend([sign for sign in signs_of(grave) if sign not in signs])
    first, heats = _first([name for name in names if name not in HEATS], [name for name in names if name in HEATS],
                          names[0])
    return CurrentResult(first, heats, signs, known)


def _first(others: "list[str]", heats: "list[str]", gravest_of_all: str) -> "tuple[str, str]":
    """What is told first, and what is told beside it of a pot that gets hot.

    >>> _first(["powder", "gloves"], ["big_pot"], "big_pot"), _first(["gloves"], ["big_pot"], "big_pot")
    (('powder', 'big_pot'), ('big_pot', ''))
    """
    if gravest_of_all not in ("big_pot", "warm_pot"):
        return others[0], heats[0] if heats else ""
    # the mask is told before the bag is opened, however big the pot
    return ("powder", heats[0]) if "powder" in others else (heats[0], "")


def _known(values: Values, answers: list) -> dict:
    found: dict = {}
    held = []  # what the cup really holds, with its filler, and the mix that was asked for: the larger counts
    for _, answer in answers:
        for line in answer["lines"]:
            if line["value"] is not None and line["name"] not in found:
                found[line["name"]] = line["value"]
            if line["name"] in ("in_cup", "mixed_mass"):
                held.append(line["value"])
    system, filler = values.get("system") or {}, values.get("filler") or {}
    thick = (values.get("thicken") == "yes" or (values.get("amount") or ("",))[0] == "putty"
             or values.get("work") in THICKENED)
    batch, kind = values.get("batch"), values.get("container")
    mass = max(held) if held else found.get("largest") or values.get("mass") or (batch if kind in CUPS else None)
    return {
        "mass": mass,
        "left": batch if kind in SPREAD else None,
        # of a pour that went wrong the peak was told as it should have been
        "peak": found["peak"] if "peak" in found and values.get("rescue") != "yes" else _peak(values, system, mass),
        "depth": found.get("throat"),
        "solvent": (values.get("solvent") or "none") != "none",
        "filler": _called(filler) if thick else values.get("powder") if values.get("task") == "powder" else "",
        "temperature": _kelvin(values.get("air"), values.get("temperature")),
        "usable": found.get("usable"),
        "task": "confined" if values.get("place") == "hull" else values.get("task") or "",
        "cured": values.get("cured") or "",
        "codes": _codes(values),
        "sun": sun_of(values).flux,
    }


def _codes(values: Values) -> "tuple[str, ...]":
    """The codes of the product's sheet, also while something else of its label cannot be read."""
    system = values.get("system") or values["_tree"].get("system")
    typed = system.get("statements") if isinstance(system, dict) else ""
    try:
        return statements.codes(typed) if isinstance(typed, str) else ()
    except InputError:
        return ()  # told at its field


def _called(filler: dict) -> str:
    """What a filler is known by: its name where its dust is known by that, else the built-in row it began as."""
    name, row = filler.get("name") or "", filler.get("id") or ""
    return (name if powder(name) else row) or name or UNNAMED


def _peak(values: Values, system: dict, mass: "float | None") -> "float | None":
    """How hot the mix gets if it stays in its cup, or in the bag of a plan [K]; None where nothing tells it.

    Where it was not measured how warm it is, it is as warm as the label says.
    """
    if not mass or mass >= BIG or "pot_time" not in system:
        return None
    warm = _kelvin(values.get("air"), values.get("temperature"), system["pot_temperature"])
    if warm is None:
        return None
    return late("hot_pot").known_peak(system, mass, "bag" if "pieces" in values else "cup", warm, sun_of(values))


def _kelvin(*temperatures: object) -> "float | None":
    for one in temperatures:
        if isinstance(one, float):
            return one
    return None

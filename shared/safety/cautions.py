"""Cautions of the moment: the one or two that matter now, chosen from what is really being done."""
from ..catalogue.cautions import FROM, MOMENT
from ..things.statements import base
from ..words.lines import WARN, words
from ..words.numbers import BLANKS, DOWN, UP
from ..words.provenance import provenance
from ..words.units import METRIC, told
from .powders import powder

MOST = 2
_FROM = dict([(row[0], row[1]) for row in FROM])
BIG, BIG_WARM = _FROM["mass in one cup that is big"], _FROM["mass in one cup that is big on a warm day"]
WARM, COLD, HOT = _FROM["air that is warm"], _FROM["air that is cold"], _FROM["pot that is hot"]
RUNS_AWAY, LITTLE = _FROM["peak of a pot that runs away"], _FROM["mass whose peak is told at the least"]
SHORT, FEW = _FROM["usable time that is short"], _FROM["air changes that are few"]
SMALL, THICK = _FROM["room that is small"], _FROM["putty that is thick"]


def standing(*, mass=None, filler="", temperature=None, pot=None, peak=None, usable=None, depth=None, room=None,
             changes=None, task="", solvent=False, cured="", codes=()):
    """The names of all cautions that stand, the most urgent first: the order of catalogue.cautions.MOMENT.

    mass: in one cup [kg]; filler: key or label; temperature: of the air [K]; pot: temperature of the pot [K]
    peak: predicted for this mass where it stands [K]; usable: time in the cup [s]; depth: of putty in one pass [m]
    room: volume [m3]; changes: of its air [1/s]
    task: key of catalogue.tasks.TASKS; solvent: some is used; cured: "soft" or "unknown"; codes: of the product's sheet
    What is None or empty is not known and brings up nothing. `gloves` and `wash` always stand, last.
    >>> standing(mass=0.5, filler="silica", temperature=293.15)
    ['big_pot', 'powder', 'gloves', 'wash']
    """
    own = [base(code) for code in codes]
    warm = temperature is not None and temperature >= WARM
    big = mass is not None and mass >= BIG
    big_warm = warm and not big and mass is not None and mass >= BIG_WARM
    holds = {
        "hot_now": task == "hot" or (pot is not None and pot >= HOT),
        "hull": task == "confined",
        "asthma": "H334" in own,
        "vapour": solvent or task == "wipe",
        "uncured": task == "sand" and cured in ("soft", "unknown"),
        "big_pot": big,
        "warm_pot": big_warm,
        "hot_pot": (peak is not None and mass is not None and peak >= RUNS_AWAY and mass >= LITTLE
                    and not big and not big_warm),
        "short_pot": usable is not None and usable < SHORT,
        "powder": bool(filler) or task == "powder",
        "sanding": task == "sand",
        "corrosive": "H314" in own,
        "small_room": room is not None and changes is not None and room < SMALL and changes < FEW,
        "thick": depth is not None and depth > THICK,
        "cold": temperature is not None and temperature <= COLD,
        "blush": task == "peel",
        "gloves": True,
        "wash": True,
    }
    return [row[0] for row in MOMENT if holds[row[0]]]


def cautions(*, units=METRIC, most=MOST, **known):
    """The cautions that matter now as lines of rank WARN, at most `most`, each with where it comes from.

    units: METRIC or US; known: the keywords of `standing`
    >>> [line.label for line in cautions(mass=0.5, filler="Wood flour")]
    ['A big pot', 'Wood flour']
    """
    rows = dict([(row[0], row) for row in MOMENT])
    lines = []
    for name in standing(**known)[:most]:
        _, label, text, task, mark, source = rows[name]
        filled, where = _filled(known, units), provenance(mark, source)
        if "{about}" in text and powder(known.get("filler") or ""):
            where += "; " + provenance(*powder(known["filler"])[4:])
        for key in filled:
            label, text = label.replace("{" + key + "}", filled[key]), text.replace("{" + key + "}", filled[key])
        lines.append(words("caution_" + name, label, text.strip(BLANKS), rough=where, caution=task,
                           rank=WARN))
    return lines


def _filled(known, units):
    """The figures a caution names, as text; only what is known."""
    filled = {"filler": "Powder", "about": ""}
    row = powder(known.get("filler") or "")
    if row:
        filled["filler"], filled["about"] = row[1], row[3]
    elif known.get("filler"):
        filled["filler"] = known["filler"][:30]
    for key, name, unit, toward in (("mass", "amount", "g", UP), ("temperature", "temperature", "degC", UP),
                                    ("usable", "minutes", "min", DOWN), ("depth", "depth", "mm", UP),
                                    ("room", "room", "m3", DOWN)):
        if known.get(key) is not None:
            filled[name] = told(known[key], unit, units, toward, None if key == "depth" else 0, 2)
    if known.get("changes") is not None:
        filled["changes"] = told(known["changes"] * 3600, "", units, DOWN, 1) + " air changes an hour"
    return filled

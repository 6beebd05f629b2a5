"""Cautions of the moment: the one or two that matter now, chosen from what is really being done."""
from ..catalogue.cautions import FROM, MOMENT, OWN_CODES
from ..catalogue.sunlight import TRAY_UP_TO
from ..things.statements import single

BIG, BIG_WARM, RUNS_AWAY, LITTLE, WARM, COLD, HOT, SHORT, FEW, SMALL, THICK = [row[1] for row in FROM]


def standing(*, mass: "float | None" = None, filler: str = "", temperature: "float | None" = None,
             pot: "float | None" = None, peak: "float | None" = None, usable: "float | None" = None,
             depth: "float | None" = None, room: "float | None" = None, changes: "float | None" = None, task: str = "",
             solvent: bool = False, cured: str = "", codes: tuple = (), sun: float = 0.0,
             left: "float | None" = None) -> "list[str]":
    """The names of all cautions that stand, the most urgent first: the order of catalogue.cautions.MOMENT.

    mass: in one cup [kg]; filler: key or label; temperature: of the air [K]; pot: temperature of the pot [K]
    peak: predicted for this mass where it stands [K]; usable: time in the cup [s]; depth: of putty in one pass [m]
    room: volume [m3]; changes: of its air [1/s]
    task: key of catalogue.tasks.TASKS; solvent: some is used; cured: "soft" or "unknown"; codes: of the product's sheet
    sun: taken up [W/m2]; left: in a tray or a roll, no cup [kg]
    What is None or empty is not known and brings up nothing. `gloves` and `wash` always stand, last.
    >>> standing(mass=0.5, filler="silica", temperature=293.15)
    ['big_pot', 'powder', 'gloves', 'wash']
    """
    own = single(codes)
    warm = temperature is not None and temperature >= WARM
    big = mass is not None and mass >= BIG
    together = left if mass is None else mass
    big_warm = warm and not big and mass is not None and mass >= BIG_WARM
    holds = {
        "hot_now": task == "hot" or (pot is not None and pot >= HOT),
        "hull": task == "confined",
        "vapour": solvent or task == "wipe",
        "uncured": task == "sand" and cured in ("soft", "unknown"),
        "big_pot": big,
        "warm_pot": big_warm,
        "hot_pot": (peak is not None and together is not None and peak >= RUNS_AWAY and together >= LITTLE
                    and not big and not big_warm),
        "in_sun": sun > TRAY_UP_TO,
        "short_pot": usable is not None and usable < SHORT,
        "powder": bool(filler) or task == "powder",
        "sanding": task == "sand",
        "small_room": room is not None and changes is not None and room < SMALL and changes < FEW,
        "thick": depth is not None and depth > THICK,
        "cold": temperature is not None and temperature <= COLD,
        "blush": task == "peel",
        "gloves": True,
        "wash": True,
    }
    for name, grave in OWN_CODES:
        holds[name] = len([code for code in grave if code in own]) > 0
    return [row[0] for row in MOMENT if holds[row[0]]]

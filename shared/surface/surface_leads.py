"""Surface leads: where an answer goes next, as typed text: to Pour, to the cautions of sanding, to a joint."""
from ..forms.types import Said
from ..words.messages import number, with_unit
from ..words.numbers import UP, bare, shown

SANDING = {"label": "surface-to-sanding", "screen": "safety", "pairs": [["task", "sand"]]}


def poured(mass: float, label: Said) -> list:
    """A mass of mix [kg] to Pour, and the cautions of sanding."""
    return [{"label": label, "screen": "pour", "pairs": [
        ["amount_is", "total"], ["amount", shown(mass * 1000, 0, UP) + " g"], ["thicken", "no"]]}, dict(SANDING)]


def thickened(volume: float, stiffness: str, filler: str, label: Said) -> list:
    """A volume of putty [m3] to Pour. filler: key of a built-in row, "" for the one that Pour begins with"""
    pairs = [["amount_is", "putty"], ["amount", shown(volume * 1e6, 0, UP) + " mL"], ["thicken", "yes"],
             ["stiffness", stiffness]]
    return [{"label": label, "screen": "pour", "pairs": pairs + ([["filler", filler]] if filler else [])}]


def as_joint(radius: float, angle: float, thickness: float, length: float) -> list:
    """A fillet as a joint without tape. radius, thickness, length [m]; angle [degrees]"""
    return [{"label": "surface-to-joint", "screen": "joint", "pairs": [
        ["kind", "bulkhead"], ["thickness", with_unit(bare(thickness * 1000, 3), "mm")],
        ["angle", number(bare(angle, 1))], ["length", with_unit(bare(length, 3), "m")], ["sized", "radius"],
        ["radius", with_unit(bare(radius * 1000, 1, UP), "mm")], ["layers", "none"]]}]

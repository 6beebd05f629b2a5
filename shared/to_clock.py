"""To the clock: a mix that is being poured starts its clock with one tap; how long it lasts is told there."""
from . import links
from .numbers import shown

NOW = "now"  # for `pot.started`: the moment of the tap; the page knows the time, the engine has no clock


def leads(values, mass, system_input):
    """mass: of the mixed liquids [kg], or None where the label leaves it unknown: then there is no lead."""
    if mass is None:
        return []
    system = [list(pair) for pair in links.pairs((system_input,), {"system": values["system"]["_tree"]})]
    return [{"label": "Start its clock", "screen": "clock", "pairs": system + [
        ["batch", shown(mass * 1000, 0) + " g"], ["pot.started", NOW]]}]

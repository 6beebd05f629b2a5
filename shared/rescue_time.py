"""Rescue time: how long the mix in the cup can be used, by the shorter of quick rule and heat balance."""
from . import measure
from .calibrate_heat import TOO_HOT, USABLE
from .heat_model import facts, kept_calibration, mixed_resin
from .integrate import LONGEST, pot_run
from .numbers import DOWN, to_step
from .pot_heat import SIZES, pot
from .quick_rule import pot_time
from .units import told


def usable(values, mass: float):
    """(time since first contact [s], how it was reckoned): a cup of this mass [kg], as warm as the air around it.

    No longer than the label's own time. A cup that was not chosen is taken as wide as it is full.
    """
    system = values["system"]
    label = (system["pot_time"], system["pot_mass"], system["pot_temperature"])
    warm = label[2] if values["temperature"] is None else values["temperature"]
    rule = pot_time(mass, warm, *label, longest=label[0])
    sizes = dict(SIZES)
    if measure.cup_chosen(values):
        sizes["cup_width"] = (values["cup"]["bottom"] + values["cup"]["top"]) / 2
    rates = kept_calibration(facts({"system": system, "timings": ()})).rates
    vessel = pot("cup", mass, sizes, mixed_resin(system), 0.0, warm, warm)
    heat = pot_run(rates, vessel, USABLE, TOO_HOT, until=2 * rule).reached or LONGEST
    heat = to_step(heat, 0.1)  # finer than it is known, coarser than the runtimes differ
    if heat < rule:
        return heat, "by the heat balance of the cup; the quick rule says {}: the shorter counts".format(
            told(rule, "min", "metric", DOWN, places=0))
    return rule, "by the quick rule for mass, from memory; the heat balance says no less"

"""Label cure: what the label says of peeling, coating, sanding and full cure. It goes before what is remembered."""
from ..equations.kinetics import rate_factor
from ..forms.errors import InputError
from ..forms.inputs import Number

FOLD = "label-cure-fold"
# field, label, stage of catalogue.cure_times
ROWS = (
    ("cure_recoat", "label-cure-recoat", "recoat_opens"),
    ("cure_until", "label-cure-until", "recoat_closes"),
    ("cure_peel", "label-cure-peel", "peel"),
    ("cure_handle", "label-cure-handle", "handle"),
    ("cure_sand", "label-cure-sand", "sand"),
    ("cure_full", "label-cure-full", "full"),
)
FIELDS = tuple([Number(name, label, unit="h", low=0.1, high=720, optional=True, fold=FOLD)
                for name, label, _ in ROWS]) + (
    Number("cure_temperature", "label-cure-temperature", unit="degC", low=0, high=45, optional=True, fold=FOLD),)


def check(values: dict) -> None:
    """Hours mean nothing without their temperature, and a window opens before it closes."""
    system = values["system"]
    typed = [name for name, _, _ in ROWS if system[name] is not None]
    if typed and system["cure_temperature"] is None:
        raise InputError("system.cure_temperature", "label-cure-temperature.missing")
    if not typed and not system["speed"]:
        raise InputError("system.speed", "label-cure-nothing")
    opens, closes = system["cure_recoat"], system["cure_until"]
    if opens is not None and closes is not None and closes <= opens:
        raise InputError("system.cure_until", "label-cure-until.early")


def ages(system: dict, energy: float, reference: float) -> dict:
    """Stage -> equivalent age at the reference temperature [s], for what the label gives.

    energy: E [J/mol]; reference: T_ref [K]; a label's hours at T count as hours times exp(-E/R (1/T - 1/T_ref))
    >>> row = dict([(name, None) for name, _, _ in ROWS], cure_sand=36000.0, cure_temperature=298.15)
    >>> ages(row, 55000.0, 298.15)
    {'sand': 36000.0}
    """
    found = {}
    for name, _, stage in ROWS:
        time = system.get(name)
        if time is not None:
            found[stage] = time * rate_factor(energy, system["cure_temperature"], reference)
    return found

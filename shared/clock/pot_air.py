"""Pot air: a mix whose air changed ages on at the new pace; a pot that warms itself never at a slower one."""
from ..catalogue.containers import LAID
from ..forms.errors import InputError
from ..forms.inputs import Group, Number
from ..forms.types import Values

CHANGES = Group("changes", "pot-changes", (
    Number("minute", "pot-changes.after", unit="min", low=0, high=2880),
    Number("usable", "pot-changes.usable", unit="min", low=0, high=43200, above=True,
           help="pot-changes.usable-help"),
), most=12, each="pot-changes.each")


def lasting(duration: float, changes: tuple, laid: bool = True) -> float:
    """How long a mix lasts whose air changed: each moment uses up its share of the time that it would last there,
        sum(dt_i / t_i) = 1

    duration: t_0 [s], of the air it was mixed in; changes: (moment [s], t_i [s]) in the order of time
    laid: thin on wood, as warm as its air; else it keeps the warmth it has, and no t_i counts longer than one before
    returns: [s]; exact where only the pace changes (one Arrhenius factor), rough for a pot that heats itself
    >>> lasting(1200.0, ((600.0, 600.0),)), lasting(1200.0, ((1500.0, 60.0),)), lasting(1200.0, ())
    (900.0, 1200.0, 1200.0)
    >>> lasting(1200.0, ((600.0, 3600.0),)), lasting(1200.0, ((600.0, 3600.0),), False)
    (2400.0, 1200.0)
    """
    used, since, lasts = 0.0, 0.0, duration
    for moment, other in changes:
        share = (moment - since) / lasts
        if used + share >= 1:
            break
        used, since, lasts = used + share, moment, other if laid else min(lasts, other)
    return since + (1 - used) * lasts


def check(values: Values) -> None:
    """Changes in the order of their times."""
    before = 0.0
    for row in values["changes"]:
        if row["minute"] < before:
            raise InputError("changes.{}.minute".format(row["place"]), "pot-changes.order")
        before = row["minute"]


def usable(values: Values) -> float:
    """How long the pot of these values can be used, its changes of air counted [s]."""
    rows = tuple([(row["minute"], row["usable"]) for row in values["changes"]])
    return lasting(values["duration"], rows, values["container"] in LAID) if rows else values["duration"]

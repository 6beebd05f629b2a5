"""Counted: how many batches the seams of a boat take. The plan of these seams counts them, here and on its own screen.

A boat that is not planned yet is counted with what it says itself: system, people, temperature, the largest mix wanted.
What has no plan is counted by the largest mix alone.
"""
from ..catalogue.plans import WARMTH
from ..forms import links
from ..forms.declared import missing
from ..forms.inputs import checked, read
from ..forms.memo import once
from ..forms.types import Values
from ..plan import day, plan
from ..plan.batch_counts import Counted, of_plan, together
from ..words.numbers import shown
from ..words.units import told
from . import shopping

PIECES = tuple([item for item in plan.INPUTS if item.name == "pieces"])
ASSUMED = told(WARMTH, "degC", places=0)  # as typed; the batches say so
FULLY = 2  # plans that are grouped as on their own screens; of more the batches are the same, cups and surplus bounds


def handed(values: Values) -> list:
    """What the boat says of its work, as pairs for its plans; what nobody typed stays the plan's own default."""
    typed = values["_tree"]
    pairs = links.handed_on(plan.SYSTEM_INPUT, values)
    if values["people"] > 1:
        pairs.append(["people", str(min(6, int(values["people"])))])
    if values["temperature"] is not None:
        pairs.append(["temperature", shown(values["temperature"] - 273.15, 2) + " °C"])
    if values["most"] is not None:
        pairs.append(["most", shown(values["most"] * 1000, 2) + " g"])
    for name, names, value, unit in (
        ("filler", ("filler",), values["filler"] * 1000, " %"),
        ("left_putty", ("bag", "cup"), (values["bag"] + values["cup"]) * 1000, " g"),
        ("left_wet", ("roller", "cup"), (values["roller"] + values["cup"]) * 1000, " g"),
        ("spare", ("spare",), values["spare"] * 100, " %"),
    ):
        if [1 for one in names if not missing(typed.get(one))]:
            pairs.append([name, shown(value, 2) + unit])
    return pairs


def _shared(values: Values) -> tuple:
    """What all plans of a boat read alike, with one piece in it, and the errors of it: read once."""
    return once(values, "shared with plans", lambda: read(plan.INPUTS, links.tree(handed(values) + [
        ["temperature", ASSUMED], ["units", values["units"]], ["pieces.0.length", "1 m"], ["pieces.0.putty", "1 g/m"],
        ["pieces.0.wet", "1 g/m"]])))


def plan_values(values: Values, typed: tuple) -> "Values | None":
    """The values of a plan of these pieces as `boat_pieces` hands them over, each without its name, at the assumed
    temperature where none is typed; None where it has none."""
    shared, errors = _shared(values)
    unlike = dict([(one, None) for one in typed])  # copies are alike, and read once
    read_of, more = read(PIECES, {"pieces": [dict(one) for one in unlike], "units": values["units"]})
    if errors or more:
        return None
    rows = dict(zip(unlike, read_of["pieces"]))
    found = dict(shared, pieces=[dict(rows[one], place=place) for place, one in enumerate(typed)])
    found["_made"] = once(values, "alike in plans", dict)  # how much stays calm, which hangs on no piece
    return None if checked((plan.check_asked,), found) else found


def largest(values: Values) -> float:
    """The largest mix of the boat's work [kg], as its plans have it."""
    return once(values, "largest", lambda: _largest(values))[0]


def why_largest(values: Values) -> day.WhyLargest:
    """Why no mix is larger."""
    return once(values, "largest", lambda: _largest(values))[1]


def _largest(values: Values) -> tuple:
    found = dict(_shared(values)[0])
    found.setdefault("system", values["system"])  # one that a plan would refuse for its times
    found["_made"] = once(values, "alike in plans", dict)
    return day.largest(found), day.why_largest(found, day.limits(found)[0])


def by_mass(putty: float, wet: float, most: float, kept_putty: float, kept_wet: float) -> Counted:
    """What masses take where no plan counts them [kg]."""
    bags = shopping.batches(putty, max(most, 2 * kept_putty), kept_putty)
    wets = shopping.batches(wet, max(most, 2 * kept_wet), kept_wet)
    return Counted(max(bags, wets), bags + wets, bags, wets, 0.0, 0.0, 0.0, False, None)


def counted(values: Values, plans: list) -> Counted:
    """All plans of a boat. plans: (pieces as `plan_values` takes them, putty [kg], wet-out [kg]) of each"""
    found, most, alike = [], largest(values), {}
    for pieces, putty, wet in plans:
        typed = tuple([tuple(piece[1:]) for piece in pieces])  # without its name
        if typed not in alike:
            asked = plan_values(values, typed)
            made = _made(asked, len(plans) <= FULLY) if asked else None
            alike[typed] = of_plan(made) if made and made.crews else by_mass(
                putty, wet, most, values["bag"] + values["cup"], values["roller"] + values["cup"])
        found.append(alike[typed])
    return together(found)


def _made(asked: Values, fully: bool) -> "day.Plan | None":
    """The plan of these values, None where it takes more than a plan can. fully: grouped as its own screen does"""
    try:
        return day.Plan(asked, counted=not fully)
    except day.TooMany:
        return None

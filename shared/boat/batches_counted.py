"""Batches counted: how many batches the seams of a boat take. The plan of these seams counts them, here as there.

A boat that is not planned yet is counted with what it says itself: system, people, temperature, the largest mix wanted.
What has no plan is counted by the largest mix alone.
"""
from collections import namedtuple

from ..catalogue.plans import WARMTH
from ..forms import links
from ..forms.declared import missing
from ..forms.inputs import checked, read
from ..forms.memo import Memo, memo_of, once
from ..forms.types import Given, Values
from ..plan import day, plan
from ..plan.batch_counts import Counted, of_plan
from ..words.messages import number as figure
from ..words.numbers import NEAREST, shown
from ..words.units import from_si, to_si
from . import shopping

PIECE = dict([(field.name, field) for item in plan.INPUTS if item.name == "pieces"
              for field in getattr(item, "fields", ())])
NUMBERS: "dict[str, Given]" = dict([(item.name, item) for item in plan.INPUTS])
FULLY = 2  # plans that are grouped as on their own screens; of more the batches are the same, cups and surplus bounds

# one piece as a plan has it: name, (as said, key of its face or ""); length [m]; putty, wet [kg/m]; layers
Piece = namedtuple("Piece", ("name", "length", "putty", "wet", "layers"))


def rounded(value: float, places: int, unit: str, toward: str = NEAREST) -> float:
    """A value in that unit -> SI, as a plan reads it that is handed the rounded figure.

    >>> rounded(167.2, 0, "g/m", "up")
    0.168
    """
    return to_si(float(shown(value, places, toward)), unit)


def numbers(values: Values) -> "list[tuple[str, float]]":
    """What the boat says of its work: (input of a plan, SI); what nobody typed stays the plan's own default."""
    typed, found = values["_tree"], []
    if values["temperature"] is not None:
        found.append(("temperature", rounded(values["temperature"] - 273.15, 2, "degC")))
    if values["most"] is not None:
        found.append(("most", rounded(values["most"] * 1000, 2, "g")))
    for name, names, value, unit in (
        ("filler", ("filler",), values["filler"] * 1000, "%"),
        ("left_putty", ("bag", "cup"), (values["bag"] + values["cup"]) * 1000, "g"),
        ("left_wet", ("roller", "cup"), (values["roller"] + values["cup"]) * 1000, "g"),
        ("spare", ("spare",), values["spare"] * 100, "%"),
    ):
        if [1 for one in names if not missing(typed.get(one))]:
            found.append((name, rounded(value, 2, unit)))
    return found


def handed(values: Values) -> list:
    """The same as pairs for a plan's own screen, with the system and the people."""
    pairs = _things(values)
    for name, value in numbers(values):
        unit = NUMBERS[name].unit
        pairs.append([name, figure(shown(from_si(value, unit), 2) + " " + ("°C" if unit == "degC" else unit))])
    return pairs


def _things(values: Values) -> list:
    pairs = links.handed_on(plan.SYSTEM_INPUT, values)
    if values["people"] > 1:
        pairs.append(["people", str(min(6, int(values["people"])))])
    return pairs


def _fits(item: Given, value: float) -> bool:
    """Whether an input takes a value."""
    return to_si(item.low, item.unit) <= value <= to_si(item.high, item.unit)


def _shared(values: Values) -> tuple:
    """What all plans of a boat have alike, with one piece to go by, whether a plan takes it, how much stays calm, which
    hangs on no piece, and what was counted; kept while the boat says the same of its work."""
    return once(values, "shared with plans", lambda: _share(values))


def _share(values: Values) -> tuple:
    kept, own = memo_of(values).under("shared with plans"), numbers(values)
    asked = [_things(values), own, values["units"]]
    before = kept.get("")
    if not before or before[0] != asked or before[1] is not values["system"]:
        before = kept[""] = asked, values["system"], _shared_anew(values, dict(own), asked[0]) + ({}, Memo())
    return before[2]


def _shared_anew(values: Values, own: dict, things: list) -> tuple:
    found, errors = read(plan.INPUTS, links.tree(things + [
        ["temperature", "20"], ["units", values["units"]], ["pieces.0.length", "1"], ["pieces.0.putty", "1"],
        ["pieces.0.wet", "1"]]), memo_of(values))
    found["temperature"] = WARMTH
    found.update(own)
    return found, not errors and all([_fits(NUMBERS[name], own[name]) for name in own])


def plan_values(values: Values, pieces: "tuple[Piece, ...]") -> "Values | None":
    """The values of a plan of these pieces, at the assumed temperature where none is typed; None where it has none."""
    shared, taken, alike, _ = _shared(values)
    if not taken or not all([_fits(PIECE[name], value) for one in set([piece[1:] for piece in pieces])
                             for name, value in zip(("length", "putty", "wet", "layers"), one)]):
        return None
    row = shared["pieces"][0]
    found = dict(shared, pieces=[dict(row, length=one.length, putty=one.putty, wet=one.wet, layers=one.layers,
                                      place=place) for place, one in enumerate(pieces)])
    found["_made"] = alike
    return None if checked((plan.check_asked,), found) else found


def largest(values: Values) -> float:
    """The largest mix of the boat's work [kg], as its plans have it."""
    return once(values, "largest", lambda: _largest(values))[0]


def why_largest(values: Values) -> day.WhyLargest:
    """Why no mix is larger."""
    return once(values, "largest", lambda: _largest(values))[1]


def _largest(values: Values) -> tuple:
    shared, _, alike, _ = _shared(values)
    found = dict(shared, _made=alike)
    found.setdefault("system", values["system"])  # one that a plan would refuse for its times
    return day.largest(found), day.why_largest(found, day.limits(found)[0])


def by_mass(putty: float, wet: float, most: float, kept_putty: float, kept_wet: float) -> Counted:
    """What masses take where no plan counts them [kg]."""
    bags = shopping.batches(putty, max(most, 2 * kept_putty), kept_putty)
    wets = shopping.batches(wet, max(most, 2 * kept_wet), kept_wet)
    return Counted(max(bags, wets), bags + wets, bags, wets, 0.0, 0.0, 0.0, False, None)


def each_counted(values: Values, plans: list) -> "list[Counted]":
    """Each plan of a boat. plans: (`Piece` of each piece, putty [kg], wet-out [kg]) of each"""
    found, most, alike = [], largest(values), {}
    for pieces, putty, wet in plans:
        unnamed = tuple([Piece("", *piece[1:]) for piece in pieces])
        if unnamed not in alike:
            alike[unnamed] = _counted(values, unnamed, len(plans) <= FULLY) or by_mass(
                putty, wet, most, values["bag"] + values["cup"], values["roller"] + values["cup"])
        found.append(alike[unnamed])
    return found


def _counted(values: Values, pieces: "tuple[Piece, ...]", fully: bool) -> "Counted | None":
    """What a plan of these pieces takes, None where there is none; kept while the boat says the same of its work."""
    def counted() -> "Counted | None":
        asked = plan_values(values, pieces)
        made = _made(asked, fully) if asked else None
        return of_plan(made) if made and made.crews else None

    return _shared(values)[3].once(fully, pieces, counted)


def _made(asked: Values, fully: bool) -> "day.Plan | None":
    """The plan of these values, None where it takes more than a plan can. fully: grouped as its own screen does"""
    try:
        return day.Plan(asked, counted=not fully)
    except day.TooMany:
        return None

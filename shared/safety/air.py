"""Air: from a room, its openings and a fan to the time to clear it, and to what solvent and dust do in it."""
from collections import namedtuple

from ..catalogue.airing import DRAUGHTS, RULES
from ..catalogue.dusts import POWDERS, SANDING, strictest
from ..catalogue.solvents import DAY, DENSITY, LOWER, MOLAR, SHORT, SOLVENTS, Fact, lowest
from ..catalogue.starts import AIR, CLEARED, MIXING_FACTOR, OPENING
from ..equations.ventilation import (
    air_changes,
    aired_share,
    clearing_time,
    flow_for_health_403,
    flow_for_share,
    opening_area,
    opening_flow,
)
from ..forms.errors import InputError
from ..forms.inputs import Choice, Number, Pick
from ..forms.remembered import start
from ..forms.types import Values
from ..things.records_shed import FAN, ROOM
from ..words.messages import message, number
from ..words.numbers import bare
from ..words.units import US_GALLON
from . import air_drawing
from .air_lines import say

MIXING_LEAST, MIXING_MOST, PRESSURE, DISCHARGE, TENTH = [row[1] for row in RULES]
NONE, OTHER = "none", "other"
IN_ROOM = (("place", ("room",)),)
WITH_SOLVENT = (("solvent", tuple([row[0] for row in SOLVENTS]) + (OTHER,)),)
OWN_SOLVENT = (("solvent", (OTHER,)),)
DUSTS = tuple([row for row in POWDERS if row[0] != OTHER]) + SANDING

ROOM_FOLD, AIR_FOLD = "air-room-fold", "air-in-it-fold"

INPUTS = (
    Choice("place", "air-place", (("room", "air-place.room"), ("hull", "air-place.hull"))),
    Pick("room", "air-room", ROOM, default="shed", fold=ROOM_FOLD, when=IN_ROOM),
    Choice("draught", "air-draught", tuple([row[:2] for row in DRAUGHTS]), default="two", fold=ROOM_FOLD, when=IN_ROOM),
    Choice("fan_runs", "air-fan", (("off", "air-fan.off"), ("in", "air-fan.in"), ("out", "air-fan.out")),
           fold=ROOM_FOLD, when=IN_ROOM),
    Pick("fan", "air-which-fan", FAN, default="small", fold=ROOM_FOLD, when=(("fan_runs", ("in", "out")),)),
    Number("opening", "air-opening", unit="m2", low=0, high=50, default=start(OPENING, "m2"),
           fold=ROOM_FOLD, when=(("fan_runs", ("in", "out")),),
           help="air-opening.help"),
    Number("mixing", "air-mixing", low=1, high=10, default=MIXING_FACTOR, fold=ROOM_FOLD, when=IN_ROOM,
           help=message("air-mixing.help", least=number(bare(MIXING_LEAST, 1)), most=number(bare(MIXING_MOST, 1)))),
    Number("clear", "air-clear", unit="%", low=10, high=99.99, default=start(CLEARED, "%"), fold=ROOM_FOLD,
           when=IN_ROOM),
    Choice("solvent", "air-solvent", ((NONE, "air-solvent.none"),) + SOLVENTS + ((OTHER, "air-solvent.other"),),
           fold=AIR_FOLD),
    Number("solvent_mass", "air-solvent-mass", unit="g", low=0, high=20000, above=True, optional=True,
           fold=AIR_FOLD, when=WITH_SOLVENT),
    Number("wiping", "air-wiping", unit="min", low=0, high=600, above=True, optional=True,
           fold=AIR_FOLD, when=WITH_SOLVENT),
    Number("solvent_molar", "air-molar", low=10, high=400, optional=True, fold=AIR_FOLD,
           when=OWN_SOLVENT),
    Number("solvent_limit", "air-limit", low=0, high=10000, above=True, optional=True, fold=AIR_FOLD,
           when=OWN_SOLVENT),
    Number("solvent_lower", "air-lower", unit="%", low=0, high=100, above=True, optional=True,
           fold=AIR_FOLD, when=OWN_SOLVENT),
    Choice("dust", "air-dust", ((NONE, "air-dust.none"),) + tuple([row[:2] for row in DUSTS]), fold=AIR_FOLD),
    Number("air_temperature", "air-temperature", unit="degC", low=-20, high=50, default=start(AIR, "degC"),
           fold=ROOM_FOLD),
)


# volume: of the room [m3]; changes: of its air that can be counted on [1/s]; by_fan: they are the fan's, else the
# draught's; clearing: how long it takes to clear [s]; fan, solvent, dust: `Fan`, `Solvent`, `Dust`, None where there is
# none, of a solvent also where its mass or time is not known
AirResult = namedtuple("AirResult", ("volume", "changes", "by_fan", "clearing", "fan", "solvent", "dust"))
# flow: the fan's own [m3/s]; passes: what the opening lets through of it [m3/s]; opening: what it needs [m2];
# pressure: that it may spend there [Pa]; closed: there is none; small: it is smaller
Fan = namedtuple("Fan", ("flow", "passes", "opening", "pressure", "closed", "small"))
# needed: flow [m3/s]; vapour: at the end [share]; limit: lowest limit in air [share]; limit_of: (mark, source) of it,
# None where it was typed; lower: lower explosive limit [share]; most: share of it that is not to be passed;
# explosive: it is passed; over: the limit is; handbook: the needed flow by the 403 rule [m3/s], None of a typed solvent
Solvent = namedtuple("Solvent", ("needed", "vapour", "limit", "limit_of", "lower", "most", "explosive", "over",
                                 "handbook"))
# row: of catalogue.dusts; limit: its `Limit`, the strictest; floating: how much fills the room to that limit [kg]
Dust = namedtuple("Dust", ("row", "limit", "floating"))


def check(values: Values) -> None:
    """A solvent from its own sheet needs the three figures of that sheet."""
    if values["solvent"] != OTHER:
        return
    for name, missing in (("solvent_molar", "air-molar.missing"), ("solvent_limit", "air-limit.missing"),
                          ("solvent_lower", "air-lower.missing")):
        if values[name] is None:
            raise InputError(name, missing)


CHECKS = (check,)


def volume(room: Values) -> float:
    """The room's volume [m3]: the typed one, else length by width by height."""
    return room["volume"] or room["length"] * room["width"] * room["height"]


def reckon(values: Values) -> "AirResult | None":
    """The room first, then solvent and dust in it; None inside a hull, which needs its own plan."""
    if values["place"] == "hull":
        return None
    room, fan = volume(values["room"]), None
    if values["fan_runs"] != "off":
        fan = _fan(values["fan"]["flow"], values["opening"])
    draught = dict([(row[0], row[2]) for row in DRAUGHTS])[values["draught"]] / 3600
    changes = max(draught, air_changes(fan.passes if fan else 0.0, room))
    solvent = None
    if values["solvent"] != NONE and values["solvent_mass"] is not None and values["wiping"] is not None:
        solvent = _solvent(values, room, changes)
    return AirResult(room, changes, changes > draught, clearing_time(changes, 1 - values["clear"], values["mixing"]),
                     fan, solvent, _dust(values["dust"], room) if values["dust"] != NONE else None)


def _fan(flow: float, opening: float) -> Fan:
    """A fan moves no more than the opening on the other side lets through."""
    need = opening_area(flow, PRESSURE, DISCHARGE)
    return Fan(flow, min(flow, opening_flow(opening, PRESSURE, DISCHARGE)), need, PRESSURE, opening == 0,
               opening < need * (1 - 1e-9))


def _solvent(values: Values, room: float, changes: float) -> Solvent:
    """Vapour at the end against the lowest limit and a tenth of the explosive limit; the flow it needs."""
    mass, time, kelvin, mixing = values["solvent_mass"], values["wiping"], values["air_temperature"], values["mixing"]
    molar, limit, limit_of, lower = _solvent_facts(values)
    share = aired_share(mass, time, molar, room, changes, kelvin, mixing)
    need = max(flow_for_share(mass / time, molar, limit, kelvin, mixing),
               flow_for_share(mass / time, molar, TENTH * lower, kelvin, mixing))
    return Solvent(need, share, limit, limit_of, lower, TENTH, share >= TENTH * lower * (1 - 1e-9),
                   share > limit * (1 + 1e-9), _handbook(values, limit, molar) if limit_of else None)


def _lowest(name: str, quantity: str) -> Fact:
    """The same of what every solvent has."""
    return lowest(name, quantity)  # type: ignore[return-value]


def _solvent_facts(values: Values) -> "tuple[float, float, tuple | None, float]":
    """Molar mass [kg/mol], lowest limit in air [share], where that comes from, lower explosive limit [share]."""
    name = values["solvent"]
    if name == OTHER:
        return values["solvent_molar"] / 1000, values["solvent_limit"] / 1e6, None, values["solvent_lower"]
    limit = _lowest(name, DAY)
    short = lowest(name, SHORT)
    if short and short.value < limit.value:
        limit = short
    return _lowest(name, MOLAR).value, limit.value, (limit.mark, limit.source), _lowest(name, LOWER).value


def _handbook(values: Values, limit: float, molar: float) -> float:
    """The flow that is needed for health by the handbook's 403 rule [m3/s]."""
    gravity = _lowest(values["solvent"], DENSITY).value / 1000
    pints = values["solvent_mass"] / 1000 / gravity / (US_GALLON / 8) / (values["wiping"] / 60)
    return flow_for_health_403(gravity, pints, molar * 1000, limit * 1e6, values["mixing"]) * 0.3048**3 / 60


def _dust(name: str, room: float) -> Dust:
    """How little floating dust fills the room to the lowest limit. A caution, no promise."""
    row = dict([(row[0], row) for row in DUSTS])[name]
    limit = strictest(row[2])
    return Dust(row, limit, limit.value * room)


def answer(values: Values) -> list:
    """The room first, then solvent and dust in it; inside a hull no figures, but what must be there before."""
    return say(reckon(values), values)


def figures(values: Values) -> list:
    """Where to put the fan, none inside a hull."""
    return [] if values["place"] == "hull" else air_drawing.figures(values)

"""Air: from a room, its openings and a fan to the time to clear it, and to what solvent and dust do in it."""
from math import floor, log10

from ..catalogue.airing import DRAUGHTS, RULES
from ..catalogue.dusts import MASKS, POWDERS, SANDING, strictest
from ..catalogue.marks import MEMORY, OWN
from ..catalogue.solvents import DAY, DENSITY, LOWER, MOLAR, SHORT, SOLVENTS, lowest
from ..catalogue.tasks_mixing import MIXING
from ..drawing import shapes as draw
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
from ..things.records_shed import FAN, ROOM
from ..words.lines import ANSWER, ASK, BESIDE, MORE, SAY, WARN, line, words
from ..words.numbers import DOWN, UP, bare, ceiling, fraction, shown, to_step
from ..words.provenance import provenance
from ..words.units import US_GALLON, from_si, to_si, told, unit_for

_RULE = dict([(row[0], row[1]) for row in RULES])
PRESSURE = _RULE["pressure a fan may spend on the make-up opening"]
DISCHARGE = _RULE["discharge coefficient of a plain opening"]
TENTH = _RULE["share of the lower explosive limit that is not to be passed"]
NONE, OTHER = "none", "other"
IN_ROOM = (("place", ("room",)),)
WITH_SOLVENT = (("solvent", tuple([row[0] for row in SOLVENTS]) + (OTHER,)),)
OWN_SOLVENT = (("solvent", (OTHER,)),)
DUSTS = tuple([row for row in POWDERS if row[0] != OTHER]) + SANDING

ROOM_FOLD, AIR_FOLD = "The room and its fan", "Solvent and dust in the air"

INPUTS = (
    Choice("place", "Where", (("room", "A room or shed"), ("hull", "Inside a hull, tank or locker"))),
    Pick("room", "Room", ROOM, default="shed", fold=ROOM_FOLD, when=IN_ROOM),
    Choice("draught", "Openings", tuple([row[:2] for row in DRAUGHTS]), default="two", fold=ROOM_FOLD, when=IN_ROOM),
    Choice("fan_runs", "Fan", (("off", "No fan"), ("in", "Blows in"), ("out", "Blows out")), fold=ROOM_FOLD,
           when=IN_ROOM),
    Pick("fan", "Which fan", FAN, default="small", fold=ROOM_FOLD, when=(("fan_runs", ("in", "out")),)),
    Number("opening", "Opening for the other way", unit="m2", low=0, high=50, default=0.5,
           fold=ROOM_FOLD, when=(("fan_runs", ("in", "out")),),
           help="Free area where the air comes in, or goes out, on the far side"),
    Number("mixing", "Mixing factor", low=1, high=10, default=5, fold=ROOM_FOLD, when=IN_ROOM,
           help="1: air mixes perfectly; {} to {} in ordinary rooms, from memory".format(
               *[bare(_RULE["mixing factor, " + one + " in an ordinary room"], 1) for one in ("lowest", "highest")])),
    Number("clear", "Share to clear", unit="%", low=10, high=99.99, default=99, fold=ROOM_FOLD,
           when=IN_ROOM),
    Choice("solvent", "Solvent wiped", ((NONE, "None"),) + SOLVENTS + ((OTHER, "Another, from its sheet"),),
           fold=AIR_FOLD),
    Number("solvent_mass", "Solvent used", unit="g", low=0, high=20000, above=True, optional=True,
           fold=AIR_FOLD, when=WITH_SOLVENT),
    Number("wiping", "Over", unit="min", low=0, high=600, above=True, optional=True,
           fold=AIR_FOLD, when=WITH_SOLVENT),
    Number("solvent_molar", "Its molar mass, g/mol", low=10, high=400, optional=True, fold=AIR_FOLD,
           when=OWN_SOLVENT),
    Number("solvent_limit", "Its limit in air, ppm", low=0, high=10000, above=True, optional=True, fold=AIR_FOLD,
           when=OWN_SOLVENT),
    Number("solvent_lower", "Its lower explosive limit", unit="%", low=0, high=100, above=True, optional=True,
           fold=AIR_FOLD, when=OWN_SOLVENT),
    Choice("dust", "Dust", ((NONE, "None"),) + tuple([row[:2] for row in DUSTS]), fold=AIR_FOLD),
    Number("air_temperature", "Air temperature", unit="degC", low=-20, high=50, default=20, fold=ROOM_FOLD),
)


def check(values):
    """A solvent from its own sheet needs the three figures of that sheet."""
    if values["solvent"] != OTHER:
        return
    for name, what in (("solvent_molar", "molar mass"), ("solvent_limit", "limit in air"),
                       ("solvent_lower", "lower explosive limit")):
        if values[name] is None:
            raise InputError(name, "Another solvent: type its " + what + " from the data sheet, or choose a known one")


CHECKS = (check,)


def volume(room) -> float:
    """The room's volume [m3]: the typed one, else length by width by height."""
    return room["volume"] or room["length"] * room["width"] * room["height"]


def fan_flow(values) -> float:
    """What the fan really moves [m3/s]: no more than the opening on the other side lets through."""
    if values["fan_runs"] == "off":
        return 0.0
    return min(values["fan"]["flow"], opening_flow(values["opening"], PRESSURE, DISCHARGE))


def changes(values) -> float:
    """Air changes that can be counted on [1/s]: the fan's, or the draught's where that is more."""
    draught = dict([(row[0], row[2]) for row in DRAUGHTS])[values["draught"]] / 3600
    return max(draught, air_changes(fan_flow(values), volume(values["room"])))


def answer(values):
    """The room first, then solvent and dust in it; inside a hull no figures, but what must be there before."""
    if values["place"] == "hull":
        return hull_lines()
    lines = room_lines(values) + fan_lines(values)
    if values["solvent"] != NONE:
        lines.extend(solvent_lines(values))
    if values["dust"] != NONE:
        lines.extend(dust_lines(values))
    lines.append(words("air_first", "The room's average", "Near the work it is several times that. Local codes and the "
                       "product's sheet decide.", rank=SAY))
    return lines


def hull_lines():
    """Do not; and the list that a permit to enter would ask for."""
    lines = [words("hull", "Do not", "No figures for the inside of a hull or tank: it needs its own plan, tested air "
                   "and licensed practice.", rough="common practice", rank=WARN)]
    for name, tasks, _, text, mark, source in MIXING:
        if tasks == ("confined",):
            lines.append(words("permit_" + name, "Before anybody goes in", text, rough=provenance(mark, source)))
    return lines


def room_lines(values):
    """Air changes and the time to clear."""
    often, units = changes(values), values["units"]
    time = clearing_time(often, 1 - values["clear"], values["mixing"])
    by_fan = often > dict([(row[0], row[2]) for row in DRAUGHTS])[values["draught"]] / 3600
    return [
        line("clear", "To clear, " + _plain(100 * values["clear"], 2) + "%", time, "s", _minutes(time),
             rough=_hours(time) + "rounded up to the minute, mixing factor " + _plain(values["mixing"], 1)
             + ", once nothing more comes into the air", rank=ANSWER),
        line("changes", "Air changes", often, "1/s", shown(often * 3600, 1, DOWN) + " an hour",
             rough="from the fan" if by_fan else "a draught, " + MEMORY + ": still air gives less"),
        line("room_volume", "Room", volume(values["room"]), "m3", told(volume(values["room"]), "m3", units), rank=MORE),
    ]


def _minutes(time):
    return shown(ceiling(time / 60)) + " min"


def _hours(time):
    """Many minutes in hours, in front of what is said about them.

    >>> _hours(2763.1), _hours(17272)
    ('', '4 h 48 min; ')
    """
    minutes = ceiling(time / 60)
    return "{} h {} min; ".format(minutes // 60, minutes % 60) if minutes > 120 else ""


def _plain(value, places):
    """A number as it would be typed: no zeros behind its decimals.

    >>> _plain(99.0, 2), _plain(99.9, 2), _plain(10.0, 1)
    ('99', '99.9', '10')
    """
    text = shown(value, places)
    while "." in text and text[-1] in ".0":
        text = text[:-1]
    return text


def fan_lines(values):
    """The opening a fan needs, and what it means when there is none."""
    if values["fan_runs"] == "off":
        return []
    flow, units = values["fan"]["flow"], values["units"]
    need = opening_area(flow, PRESSURE, DISCHARGE)
    text = told(need, "m2", units, UP, 2)
    lines = [line("make_up", "Make-up opening", need, "m2", text + " at least",
                  rough="rounded up; " + bare(PRESSURE, 1) + " Pa and a plain opening, " + MEMORY)]
    if values["opening"] == 0:
        lines.append(words("no_make_up", "No air to replace it", "A fan moves next to nothing without an opening on "
                           "the far side. Open " + text + " there; the figures here are without the fan.", rank=WARN))
    elif values["opening"] < need * (1 - 1e-9):
        lines.append(line("small_make_up", "Opening too small", fan_flow(values), "m3/s", "It lets through about "
                          + told(fan_flow(values), "m3/h", units, DOWN, 0) + " of the fan's "
                          + told(flow, "m3/h", units, DOWN, 0) + ". Open " + text + ".", rank=WARN))
    return lines


def solvent_facts(values):
    """Molar mass [kg/mol], lowest limit in air and lower explosive limit [share], and where the limit comes from."""
    name = values["solvent"]
    if name == OTHER:
        return values["solvent_molar"] / 1000, values["solvent_limit"] / 1e6, values["solvent_lower"], OWN
    limit = lowest(name, DAY)
    short = lowest(name, SHORT)
    if short and short.value < limit.value:
        limit = short
    return (lowest(name, MOLAR).value, limit.value, lowest(name, LOWER).value,
            "lowest limit, " + provenance(limit.mark, limit.source))


def solvent_lines(values):
    """Vapour at the end against the lowest limit and a tenth of the explosive limit; the flow it needs."""
    mass, time, units = values["solvent_mass"], values["wiping"], values["units"]
    if mass is None or time is None:
        return [words("solvent_asked", "Solvent", "Type the grams and the minutes to see the vapour in this room.",
                      rank=ASK)]
    molar, limit, lower, where = solvent_facts(values)
    room, kelvin, mixing = volume(values["room"]), values["air_temperature"], values["mixing"]
    share = aired_share(mass, time, molar, room, changes(values), kelvin, mixing)
    need = max(flow_for_share(mass / time, molar, limit, kelvin, mixing),
               flow_for_share(mass / time, molar, TENTH * lower, kelvin, mixing))
    lines = [
        line("needed_flow", "Air needed", need, "m3/s", _needed(need, units),
             rough="rounded up, mixing factor " + _plain(mixing, 1) + "; " + where, rank=ANSWER),
        line("vapour", "Vapour at the end", share, "", _ppm(share, UP), rough="room's average, evaporating evenly"),
        line("of_limit", "Of the limit, " + _ppm(limit, DOWN), share / limit, "",
             shown(100 * share / limit, 0, UP) + "%", rough=where),
        line("of_lower", "Of the lower explosive limit", share / lower, "", shown(100 * share / lower, 1, UP) + "%",
             rough="stay under " + bare(TENTH * 100, 1) + "%, lowest of the sources"),
    ]
    if share >= TENTH * lower * (1 - 1e-9):
        lines.insert(0, words("explosive", "It can catch fire", "Over " + fraction(TENTH) + " of the lower explosive "
                              "limit: do not. Take less, outdoors, no spark near.", rank=WARN))
    elif share > limit * (1 + 1e-9):
        lines.insert(0, words("over_limit", "Over the limit", "Too much vapour for this room and this air. Do it "
                              "outdoors, take less, or move more air.", rank=WARN))
    if values["fan_runs"] == "out":
        lines.append(words("fan_spark", "Fan's motor", "Vapour must not pass a motor that can spark: let an ordinary "
                           "fan blow clean air in instead.", rough="common practice", rank=WARN))
    if values["solvent"] != OTHER:
        lines.append(_cross_check(values, limit, molar, units))
    return lines


def _cross_check(values, limit, molar, units):
    gravity = lowest(values["solvent"], DENSITY).value / 1000
    pints = values["solvent_mass"] / 1000 / gravity / (US_GALLON / 8) / (values["wiping"] / 60)
    flow = flow_for_health_403(gravity, pints, molar * 1000, limit * 1e6, values["mixing"]) * 0.3048**3 / 60
    return line("manual", "By the handbook's 403 rule", flow, "m3/s", _needed(flow, units),
                rough="a second way to the same flow, at {21 degC}; for health only", rank=MORE)


def _needed(flow, units):
    """A flow to have, to two figures and rounded up: more of them would claim what no such reckoning knows."""
    unit = unit_for("m3/h", units)
    value = from_si(flow, unit)
    step = 10.0 ** max(0, floor(log10(value) + 1e-9) - 1)
    return told(to_si(to_step(value, step, UP), unit), "m3/h", units, UP, 0)


def _ppm(share, toward):
    return shown(share * 1e6, 0, toward) + " ppm"


def row_of(table, key):
    """The row of a table by its key."""
    return dict([(row[0], row) for row in table])[key]


def dust_lines(values):
    """How little floating dust fills the room to the lowest limit. A caution, no promise."""
    row = row_of(DUSTS, values["dust"])
    limit = strictest(row[2])
    floating = limit.value * volume(values["room"])
    return [
        line("dust_limit", row[1], limit.value, "kg/m3", shown(limit.value * 1e6, 1, DOWN) + " mg/m³",
             rough="lowest limit, " + provenance(limit.mark, limit.source)),
        line("dust_room", "That is, in this room", floating, "kg", shown(floating * 1e6, 0, DOWN) + " mg afloat",
             rough="a pinch; rounded down, a caution and no promise", rank=BESIDE),
        words("dust_mask", "Dust", row[3] + " A particle mask on first; a half mask that fits is reckoned good for "
              + shown(MASKS[0][2]) + " times the limit.", rough=provenance(row[4], row[5]), rank=WARN),
    ]


def figures(values):
    """Where to put the fan: the room from above, clean air from behind the worker, out on the far side."""
    if values["place"] == "hull":
        return []
    room = values["room"]
    sides = (room["length"] or 5, room["width"] or 3)  # a room known by its volume only is drawn 5 by 3
    longer, shorter = max(sides), min(sides)
    width, left, top = 200.0, 50.0, 30.0
    deep = max(60.0, min(200.0, width * shorter / longer))
    middle, right = top + deep / 2, left + width
    fan_at = left if values["fan_runs"] == "in" else right
    shapes = [
        draw.box("panel", left, top, width, deep),
        draw.path("gap", ((left, middle - 15), (left, middle + 15))),
        draw.path("gap", ((right, middle - 15), (right, middle + 15))),
        _arrow(left - 40, left + 20, middle), _arrow(right - 20, right + 40, middle),
        draw.note("note", left + width * 0.4, middle + 4, "you"),
        draw.note("note", left + width * 0.65, middle + 4, "work"),
        draw.note("note", left - 8, top - 8, "in"), draw.note("note", right + 8, top - 8, "out"),
    ]
    told_words = "Seen from above: air comes in at one end, passes you, then the work, and goes out at the far end."
    if values["fan_runs"] != "off":
        shapes.append(draw.box("fan", fan_at - 5, middle - 15, 10, 30))
        shapes.append(draw.note("note", fan_at, middle + 30, "fan"))
        told_words += " The fan stands " + ("where the air comes in." if values["fan_runs"] == "in"
                                            else "where the air goes out.")
    return [draw.figure("fan_place", "Where the air goes", 300, deep + 60, shapes, told_words)]


def _arrow(start, end, y):
    return draw.path("dimension", ((start, y), (end, y), (end - 6, y - 4), (end, y), (end - 6, y + 4)))

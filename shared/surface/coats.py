"""Coats: from faces and edges to grams a coat, the film they leave, and when each may follow the last."""
from collections import namedtuple
from math import pi

from ..catalogue.fillers import STIFFNESSES, SURE
from ..catalogue.pots import SIZES
from ..catalogue.surfaces import BY_KEY
from ..clock import cure
from ..equations import surfaces
from ..forms.clock_times import HOURS, Clock
from ..forms.errors import InputError
from ..forms.inputs import Choice, Number
from ..forms.memo import once
from ..forms.remembered import remembered, start
from ..forms.types import Values
from ..things.label_cure import ROWS
from ..things.label_cure import check as check_label
from ..things.lowest_temperature import lowest
from . import boat_row, coats_lines, faces, pots, surface_leads
from .faces import COAT

EDGES = "surface-fold.edges"
HERE = faces.only(COAT)
ROLLED, BRUSHED = "roller", "brush"

INPUTS = (
    faces.WORK, faces.FACES,
    Number("coats", "coats-count", low=1, high=8, default=3, whole=True, when=HERE),
    faces.WOOD, faces.LIE,
    Choice("tool", "coats-tool", ((ROLLED, "coats-tool.roller"), (BRUSHED, "coats-tool.brush")), when=HERE),
    Number("edge_length", "coats-edge-length", unit="m", low=0, high=2000, default=0, fold=EDGES, when=HERE),
    Number("edge_thickness", "coats-edge-thickness", unit="mm", low=0, high=200,
           default=start(SIZES["panel"], "mm"), fold=EDGES, when=HERE),
    remembered("edges", "soaks", "coats-soaks", "", 1, 10, fold=EDGES, when=HERE),
    faces.SYSTEM_USED, faces.WARMTH,
    Clock("day_from", "coats-day-from", default="8:00", fold=faces.CLOCK, when=HERE),
    Clock("day_until", "coats-day-until", default="18:00", fold=faces.CLOCK, when=HERE),
    remembered("coat_pace", "coat_pace", "coats-pace", "min", 0.1, 120, of=BY_KEY, fold=faces.CLOCK, when=HERE),
    Choice("hours", HOURS.label, HOURS.options, fold=faces.CLOCK, when=HERE),
    remembered("first_coat", "first_coat", "coats-first", "g/m2", 10, 500, fold=faces.AMOUNTS, when=HERE),
    remembered("later_coat", "later_coat", "coats-later", "g/m2", 10, 500, of=BY_KEY, fold=faces.AMOUNTS, when=HERE),
    faces.DENSITY,
    faces.ROLLER,
    remembered("brush", "brush", "coats-brush", "g", 0, 500, of=BY_KEY, fold=faces.LOSSES, when=HERE),
    remembered("tray", "tray", "joint-tray", "g/m2", 0, 1000, fold=faces.LOSSES, when=HERE),
    remembered("tray_area", "tray_area", "coats-tray-area", "m2", 0, 5, of=BY_KEY, fold=faces.LOSSES, when=HERE),
    faces.CUP, faces.SPARE,
)


def check(values: Values) -> None:
    """Faces with a size, a day that ends after it begins and is long enough for a coat, a label that fits itself."""
    if values["work"] != COAT:
        return
    faces.check_faces(values)
    if values["day_until"] <= values["day_from"]:
        raise InputError("day_until", "coats-day-until.early")
    if values["system"]["speed"] or _labelled(values["system"]):
        check_label(values)


CHECKS = (check,)

# all masses of all faces [kg]. area: of the faces, edge: of the edges [m2]; on_wood: what stays; mix: what is mixed,
# first, later: of it in the first coat and in each of the others; left: of it in tools, trays and cups; film: of one
# later coat, whole: of all coats on top of what soaks in [m]; heaviest: coat that does not run, None on the level
# [kg/m2]; runs: a later coat is heavier; pots: `pots.Pots` of the heavier coat, or None
# lasts: one coat, mixed [s]; starts: of `surfaces.coat_starts`, () where no window is known or a coat is longer than
# the day; opens, closes: after mixing [s], None where never or not known; cold: the hardener may stop
# today: coats that fit the first day
CoatsResult = namedtuple("CoatsResult", ("area", "edge", "on_wood", "mix", "first", "later", "left", "film", "whole",
                                         "heaviest", "runs", "pots", "lasts", "starts", "opens", "closes", "cold",
                                         "today"))
Windows = namedtuple("Windows", ("starts", "opens", "closes", "cold"))  # as there


def _labelled(system: Values) -> list:
    return [name for name, _, _ in ROWS if system[name] is not None]


def reckon(values: Values) -> "CoatsResult | None":
    """What the coats take, leave and wait for; None where another work is asked."""
    return once(values, "coats", lambda: _reckoned(values)) if values["work"] == COAT else None


def _reckoned(values: Values) -> CoatsResult:
    count, later, bare = int(values["coats"]), values["later_coat"], values["wood"] == "bare"
    area, edge = faces.whole_area(values), values["edge_length"] * values["edge_thickness"]
    first, soaks = (values["first_coat"], values["soaks"]) if bare else (later, 1.0)
    on_wood = surfaces.coats_mass(area, edge, first, later, count, soaks)
    one, other = surfaces.coats_mass(area, edge, first, later, 1, soaks), later * (area + edge)
    pace = pots.pace_of(values["coat_pace"], values["lie"])
    kept = values["roller"] if values["tool"] == ROLLED else values["brush"]
    kept += values["tray"] * values["tray_area"]
    more = 1 + values["spare"]
    used = pots.pots_for(values, area + edge, (max(one, other) if count > 1 else one) * more + kept, pace)
    cups = used.count if used else 1
    kept += values["cup"] * cups
    slope = faces.SLOPES[values["lie"]]
    heaviest = surfaces.heaviest_coat(STIFFNESSES[0][3] / SURE, slope * pi / 180) if slope else None
    on_top = count - 1 if bare else count
    mix = on_wood * more + kept * count
    film = surfaces.film(later, values["resin_density"])
    lasts = (area + edge) * pace + cups * pots.MIX_LIQUID
    found = _windows(values, count, lasts)
    return CoatsResult(area, edge, on_wood, mix, one * more + kept, other * more + kept, kept * count, film,
                       film * on_top, heaviest, bool(on_top) and heaviest is not None and later > heaviest, used,
                       lasts, found.starts, found.opens, found.closes, found.cold,
                       len([one for one in found.starts if one[0] < surfaces.DAY]))


def _windows(values: Values, count: int, lasts: float) -> Windows:
    """The windows of the system's cure, at one temperature all along. lasts: one coat [s]"""
    least, system = lowest(values["system"]), values["system"]
    if not (system["speed"] or _labelled(system)):
        return Windows((), None, None, False)
    times = cure.by_name(values, cure.stage_times(dict(values, course="same"), least)[0])
    opens, closes, sands = [times.get(name) for name in ("recoat_opens", "recoat_closes", "sand")]
    day, starts = (values["day_from"], values["day_until"]), ()  # type: tuple, tuple
    if lasts <= day[1] - day[0]:
        starts = tuple(surfaces.coat_starts(count, day, lasts, opens, closes, sands))
    return Windows(starts, opens, closes, values["air"] < least - 1e-9)


def answer(values: Values) -> list:
    """What to mix first, then the film, the clock and what can run."""
    found = reckon(values)
    return coats_lines.say(found, values) if found else []


def leads(values: Values) -> list:
    """One pot to Pour, and the cautions of sanding between coats."""
    found = reckon(values)
    if not found:
        return []
    mass = found.pots.mass if found.pots else found.first
    return surface_leads.poured(mass, "surface-to-pour.pot") + boat_row.leads(values, INPUTS)

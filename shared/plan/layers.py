"""Layers: coats and cloth of a day, after its seams: pots that a film, a cup and these hands reach, and when the next
coat of each face may follow: from the clock of the cure, within the hours of work."""
from collections import namedtuple

from ..catalogue.plans import LONG_DAY, MOST_BATCHES
from ..catalogue.rates import HANDS, POSITIONS
from ..catalogue.surfaces import BY_KEY
from ..clock import cure
from ..equations.surfaces import in_day, reach
from ..forms.errors import InputError
from ..forms.inputs import Choice, Group, Number, Text
from ..forms.memo import once
from ..forms.remembered import remembered
from ..forms.types import Values
from ..surface.faces import COAT, SHEATHE, WORKS, only
from ..things.lowest_temperature import lowest
from ..words.messages import fact, message
from ..words.numbers import ceiling
from . import day

CLOTH = only(SHEATHE)
GROUP = Group("surfaces", "plan-surfaces", (
    Text("name", "plan-piece-name"),
    Choice("work", "surface-work", WORKS[:2]),
    Number("area", "surface-area-line", unit="m2", low=0, high=5000, above=True),
    Number("wet", "plan-surface-wet", unit="g/m2", low=10, high=5000, when=CLOTH, help="plan-surface-wet.help"),
    Number("layers", "sheathing-cloth-layers", low=1, high=8, default=1, whole=True, when=CLOTH),
    remembered("first_coat", "first", "coats-first-mix", "g/m2", 10, 500, when=only(COAT)),
    remembered("later_coat", "later", "coats-later-mix", "g/m2", 10, 500, of=BY_KEY),
    Number("coats", "coats-count", low=1, high=8, default=3, whole=True, help="plan-surface-coats.help"),
    Choice("position", "plan-piece-position", tuple([row[:2] for row in POSITIONS])),
), most=20, rows=0, each="surface-face", fold="plan-surfaces")
PACES = (("coat_pace", "coats-pace"), ("wet_pace", "sheathing-wet-pace"))


def paces(fold: str) -> tuple:
    """How long a square metre takes one person, if it is typed."""
    return tuple([Number(name, label, unit="min", low=0.1, high=120, optional=True, fold=fold, help=message(
        "plan-pace.help", usual=fact("min", BY_KEY[name].value), range=fact("min", *BY_KEY[name][3:5])))
        for name, label in PACES])


# pots of one coat: count; mass: to mix of each [kg]; mixing, each: how long a pot is mixed, and used after it [s]
# lasts: the coat, with the pauses between its pots [s]
Pots = namedtuple("Pots", ("count", "mass", "each", "lasts"))
# row: of the form; number: of the coat, from 1; starts: of the mixing of each pot, end [s on the clock]; pots: `Pots`
# sanded: the last coat has to be washed and sanded first; latest: start of a coat that is not [s], or None
# opens, closes: when the next coat may begin, and when it must be on; sands: when it may be sanded instead [s]; None
# where it is never or not known, or no coat follows
Layer = namedtuple("Layer", ("row", "number", "starts", "end", "pots", "sanded", "latest", "opens", "closes", "sands"))


def pots(values: Values, plan: "day.Plan", row: Values, number: int) -> Pots:
    """The pots of one coat, all hands side by side, at the warmest of the day. number: of the coat, from 1

    Each pot is poured out at once: its cup bounds the mixing, the film the laying, the largest mix its mass.
    """
    cloth = number == 1 and row["work"] == SHEATHE
    areal = row["wet"] if cloth else row["first"] if number == 1 else row["later"]
    name = PACES[cloth][0]
    pace = values[name] or BY_KEY[name].value / dict([(one[0], one[2]) for one in HANDS])[values["hand"]]
    pace *= row["layers"] if cloth else 1
    pace /= dict([(one[0], one[2]) for one in POSITIONS])[row["position"]] * day.hands(values)
    windows, mixing, left = plan.windows, values["mix_wet"], values["left_wet"]
    share = windows.share / plan.profile.pace_at(plan.profile.warmest)
    far, room = reach(windows.film * share, mixing, pace), day.largest(values) - left
    laid = areal * row["area"] * (1 + values["spare"])
    count = MOST_BATCHES + 1
    if far and room > 0:
        count = max(1, ceiling(row["area"] / far), ceiling(laid / room))
    while count <= MOST_BATCHES and windows.cup(laid / count + left) * share < mixing:
        count += 1
    if count > MOST_BATCHES:
        raise InputError("surfaces.{}.area".format(row["place"]), message("plan-refused-batches", most=MOST_BATCHES))
    each = mixing + row["area"] / count * pace
    return Pots(count, max(laid / count + left, day.smallest(values)), each,
                count * each + (count - 1) * values["pause"])


def stages(values: Values, plan: "day.Plan", start: float) -> dict:
    """Stage -> after a mixing at that time of the day [s], None where it is never reached; {} where nothing tells."""
    system, profile = values["system"], plan.profile
    asked = dict(values, course="same", air=profile.warmest)
    if not profile.constant:
        asked["course"] = "points"
        asked["points"] = [{"hours": time, "temperature": profile.at(start + time)} for time in [0.0] + [
            point[0] - start for point in profile.points if point[0] > start]]
    return dict(zip([row[0] for row in cure.stages_of(system)], cure.stage_times(asked, lowest(system))[0]))


def reckoned(values: Values, plan: "day.Plan") -> "list[Layer]":
    """The coats after the seams of a plan, made once; [] where its seams have no plan."""
    if not values["surfaces"] or (values["pieces"] and not plan.crews):
        return []
    return once(values, "layers", lambda: reckon(values, plan))


def reckon(values: Values, plan: "day.Plan") -> "list[Layer]":
    """All coats in the order in which they are laid: of those that may begin first the one whose window ends first."""
    begins, ends = values["start"], values["finish"]
    if ends is None or ends <= begins:
        ends = begins + LONG_DAY
    free = max([batch.steps[-1].end + values["pause"] for batch in plan.followed()] + [begins])
    known = {}  # type: dict

    def at(time: float) -> dict:
        key = 0.0 if plan.profile.constant else time
        if key not in known:
            known[key] = stages(values, plan, time)
        return known[key]

    def when(row: Values, last: "Layer | None", free: float) -> tuple:
        """(start, latest start, `Pots`, whether it is sanded first) of the next coat of a face"""
        made = pots(values, plan, row, last.number + 1 if last else 1)
        fits = min(made.lasts, ends - begins)
        first = in_day(max(free, last.opens if last else free), fits, (begins, ends))[0]
        if not last:
            return first, None, made, False
        if last.closes is None or first + made.lasts <= last.closes:
            return first, last.closes and last.closes - made.lasts, made, False
        if last.sands is None:
            return None, None, made, True
        return in_day(max(free, last.sands), fits, (begins, ends))[0], None, made, True

    found, waiting = [], [(row, None) for row in values["surfaces"]]  # type: list, list
    while waiting:
        asked = [(when(row, last, free), place) for place, (row, last) in enumerate(waiting)]
        ready = sorted([(one[0], 1e30 if one[1] is None else one[1], place) for one, place in asked
                        if one[0] is not None])
        if not ready:
            break
        place = ready[0][2]
        (start, latest, made, sanded), (row, last) = asked[place][0], waiting[place]
        end, number = start + made.lasts, last.number + 1 if last else 1
        starts = tuple([start + pot * (made.each + values["pause"]) for pot in range(made.count)])
        opens = closes = sands = None
        if number < row["coats"]:
            late = at(end)
            opens, closes, sands = [late.get(name) for name in ("recoat_opens", "recoat_closes", "sand")]
            closes = at(start).get("recoat_closes")
            opens, sands = [None if one is None else end + one for one in (opens, sands)]
            closes = None if closes is None else start + closes
            sands = None if sands is None or opens is None else max(opens, sands)
        found.append(Layer(row, number, starts, end, made, sanded, latest, opens, closes, sands))
        waiting[place] = row, found[-1]
        if opens is None:
            waiting.pop(place)
        free = end + values["pause"]
    return found

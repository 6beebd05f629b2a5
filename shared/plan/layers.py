"""Layers: coats and cloth of a day, after its seams: pots that a film, a cup and these hands reach, and when the next
coat of each face may follow: from the clock of the cure, within the hours of work."""
from collections import namedtuple

from ..catalogue.plans import LONG_DAY, MOST_BATCHES
from ..catalogue.rates import HANDS, POSITIONS
from ..catalogue.surfaces import BY_KEY
from ..clock import cure
from ..equations.surfaces import follows, reach
from ..forms.errors import InputError
from ..forms.inputs import Choice, Group, Number, Text
from ..forms.memo import once
from ..forms.remembered import remembered
from ..forms.types import Values
from ..surface.faces import COAT, SHEATHE, WORKS, only
from ..things import work_rates
from ..things.label_cure import ROWS
from ..things.label_cure import check as check_label
from ..things.lowest_temperature import lowest
from ..words.messages import message
from ..words.numbers import ceiling
from . import day
from .done_so_far import MIXED, ON, coats_told
from .progress import now_of_coats

CLOTH = only(SHEATHE)
GROUP = Group("surfaces", "plan-surfaces", (
    Text("name", "plan-piece-name"),
    Choice("work", "surface-work", WORKS[:2]),
    Number("area", "surface-area-line", unit="m2", low=0, high=100, above=True),
    Number("wet", "plan-surface-wet", unit="g/m2", low=10, high=5000, when=CLOTH, help="plan-surface-wet.help"),
    Number("layers", "sheathing-cloth-layers", low=1, high=8, default=1, whole=True, when=CLOTH),
    remembered("first_coat", "first", "coats-first-mix", "g/m2", 10, 500, when=only(COAT)),
    remembered("later_coat", "later", "coats-later-mix", "g/m2", 10, 500, of=BY_KEY),
    Number("coats", "coats-count", low=1, high=8, default=3, whole=True, help="plan-surface-coats.help"),
    Choice("position", "plan-piece-position", tuple([row[:2] for row in POSITIONS])),
), most=20, rows=0, each="surface-face", fold="plan-surfaces")
# how long a square metre takes one person
PACES = tuple([remembered(name, name, label, "min", 0.1, 120, before="plan-pace", of=BY_KEY, fold="plan-fold-rates")
               for name, label in (("coat_pace", "coats-pace"), ("wet_pace", "sheathing-wet-pace"))])


# pots of one coat: count; mass: to mix of each [kg]; mixing, each: how long a pot is mixed, and used after it [s]
# lasts: the coat, with the pauses between its pots [s]
Pots = namedtuple("Pots", ("count", "mass", "each", "lasts"))
# row: of the form; number: of the coat, from 1; starts: of the mixing of each pot, end [s on the clock]; pots: `Pots`
# latest: start within the hours of work and its window [s], None where the last coat is washed and sanded first
# opens, closes: when the next coat may begin, and when it must be on; sands: when it may be sanded instead [s]; None
# where it is never or not known, or no coat follows; begun, finished: as it was told; air: when it is begun [K]
Layer = namedtuple("Layer", ("row", "number", "starts", "end", "pots", "latest", "opens", "closes", "sands", "begun",
                             "finished", "air"))


def pots(values: Values, plan: "day.Plan", row: Values, number: int) -> Pots:
    """The pots of one coat, all hands side by side, at the warmest of the day. number: of the coat, from 1

    Each pot is poured out at once: its cup bounds the mixing, the film the laying, the largest mix its mass.
    """
    cloth = number == 1 and row["work"] == SHEATHE
    areal = row["wet"] if cloth else row["first"] if number == 1 else row["later"]
    name = PACES[cloth].name
    pace = values[name] * (row["layers"] if cloth else 1) / day.hands(values)
    pace /= work_rates.factors(POSITIONS)[row["position"]]
    if values[name] == BY_KEY[name].value:  # nobody typed another
        pace /= work_rates.factors(HANDS)[values["hand"]]
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


def check(values: Values) -> None:
    """A label's hours tell when a coat may follow, if they say at what temperature."""
    if values["surfaces"] and [name for name, _, _ in ROWS if values["system"].get(name) is not None]:
        check_label(values)


def stages(values: Values, plan: "day.Plan", start: float) -> dict:
    """Stage -> after a mixing at that time of the day [s], None where it is never reached; {} where nothing tells."""
    at = plan.profile.at
    asked = dict(values, course="points", points=[{"hours": time, "temperature": at(start + time)} for time in [0.0] + [
        point[0] - start for point in plan.profile.points if point[0] > start]])
    return cure.by_name(values, cure.stage_times(asked, lowest(values["system"]))[0])


def reckoned(values: Values, plan: "day.Plan") -> "list[Layer]":
    """The coats after the seams of a plan, made once; [] where its seams have no plan."""
    if not values["surfaces"] or (values["pieces"] and not plan.crews):
        return []
    return once(values, "layers", lambda: reckon(values, plan))


def ahead(found: "list[Layer]", values: Values) -> "list[Layer]":
    """The coats to come: what nobody told, and where nobody tells any what the clock has not passed."""
    told, now = [one for one in found if one.begun], now_of_coats(values)
    return [one for one in found if not one.finished and (told or now is None or one.end > now)]


def reckon(values: Values, plan: "day.Plan") -> "list[Layer]":
    """All coats in the order in which they are laid: those that were told, as they were; then of those that may begin
    first the one whose window ends first, from now on."""
    begins, ends = values["start"], values["finish"]
    hours = begins, ends if ends and ends > begins else begins + LONG_DAY
    told = coats_told(values)
    now = now_of_coats(values) if told else None
    free = max([batch.steps[-1].end + values["pause"] for batch in plan.followed()] + [begins])
    known, found = {}, []  # type: dict, list
    waiting = [(row, None, pots(values, plan, row, 1)) for row in values["surfaces"]]  # type: list

    def at(stage: str, time: float) -> "float | None":
        """When a stage is reached by a mixing at that time [s on the clock]"""
        key = 0.0 if plan.profile.constant else time
        if key not in known:
            known[key] = stages(values, plan, time)
        after = known[key].get(stage)
        return None if after is None else time + after

    while waiting:
        ready, open_from = [], max(free, free if now is None else now)  # type: list, float
        for place, (row, last, made) in enumerate(waiting):
            done = told.get((row["place"] + 1, last.number + 1 if last else 1))
            if done:
                start = done[MIXED] - values["mix_wet"] if MIXED in done else done[ON] - made.lasts
                ready.append((0, start, 0, place, start))
                continue
            after = follows(max(open_from, last.opens if last else open_from), last and last.closes,
                            last and last.sands and max(open_from, last.sands), min(made.lasts, hours[1] - begins),
                            hours)
            if after:
                ready.append((1, after[0], (last and after[1]) or hours[1] * 99, place, after[1]))
        if not ready:
            break
        _, start, _, place, latest = sorted(ready, key=lambda one: one[:4])[0]
        row, last, made = waiting[place]
        number = last.number + 1 if last else 1
        done = told.get((row["place"] + 1, number), {})
        end = done.get(ON, max(start + made.lasts, (done and now) or 0))
        opens = closes = sands = None
        if number < row["coats"]:
            opens, closes, sands = at("recoat_opens", end), at("recoat_closes", start), at("sand", end)
        found.append(Layer(row, number, tuple([start + pot * (made.each + values["pause"])
                                               for pot in range(made.count)]), end, made, latest, opens, closes,
                           sands and opens and max(opens, sands), bool(done), ON in done, plan.profile.at(start)))
        waiting.pop(place)
        if opens is not None:
            waiting.insert(place, (row, found[-1], pots(values, plan, row, number + 1)))
        free = max(free, end + values["pause"])
    return found

"""Plan leads: from a plan under way to one tap for each step, the pours of the next batch and the clock of its bag."""
from ..clock import sun
from ..clock.pot_start import NOW, minutes_typed, timed_in
from ..forms import links
from ..forms.declared import Input
from ..forms.types import Said, Values
from ..things.own_timings import read_timings, timings_pairs
from ..things.piece_names import kept
from ..words.messages import message, number
from ..words.numbers import DOWN, UP, shown, warmth_typed
from .batch_lines import MIXES, moment
from .batch_record import Record
from .done_so_far import COAT_STEPS, STEPS
from .layers import Layer, ahead
from .layers_lines import called
from .limit_lines import as_kept
from .plan_found import Found
from .plan_next import POT, Clock, Next
from .progress import day_pairs, now_of_coats

SAID = dict(STEPS)


def leads(values: Values, found: Found, after: Next, system_input: Input) -> "list[Values]":
    """In the order in which they are wanted. system_input: the declaration that says how a system travels in a link"""
    said = [done_lead(after, place, values) for place in range(len(after.taps))]
    coats = [one for one in found.layers if not one.finished] if after.number is None else []
    now = now_of_coats(values)
    if coats and now is not None and values["running"] == "yes":
        own, one = "coated.{}.".format(max([row["place"] for row in values["coated"]] + [-1]) + 1), coats[0]
        step = COAT_STEPS[one.begun]
        said.append(_of_coat(one, step[1], "plan", [
            [own + "face", str(one.row["place"] + 1)], [own + "coat", str(one.number)], [own + "step", step[0]],
            [own + "minute", shown((now - values["start"]) / 60, 0)]] + day_pairs(values)))
    if after.begin:  # from a plan on paper to a day under way
        said.append({"label": "plan-begin", "screen": "plan", "pairs": [["running", "yes"]]})
    system = links.handed_on(system_input, values)
    for name, mass in after.mixes:
        label = message("plan-pour", number=after.number, what=MIXES[name])
        said.append({"label": label, "screen": "pour",
                     "pairs": system + _poured(shown(mass * 1000), after.air) + sun.pairs(values)})
    for one in (ahead(coats, values) or coats)[:1]:
        said.append(_of_coat(one, "surface-to-pour.pot", "pour", system + [["thicken", "no"]] + _poured(
            shown(one.pots.mass * 1000, 0, UP), one.air) + sun.pairs(values)))
    if after.clock is not None:
        system = system + [[name, number(text)] for name, text in timings_pairs(read_timings(values["timings"]))]
        label = message("plan-start-clock", number=after.number, time=moment(values, found.close, after.clock.start))
        said.append({"label": label, "screen": "clock",
                     "pairs": system + clock_pairs(after, after.clock) + sun_pairs(values)})
    return said


def _poured(grams: str, air: float) -> "list[list]":
    return [["amount", grams + " g"], ["air", number(warmth_typed(air))], ["temperature", ""]]


def _of_coat(layer: Layer, what: Said, screen: str, pairs: "list[list]") -> Values:
    return {"label": message("card-line", label=called(layer), text=what), "screen": screen, "pairs": pairs}


def done_lead(after: Next, place: int, values: Values) -> Values:
    """A tap for the next step of a batch under way, told with the minute it is now."""
    tap, own = after.taps[place], "done.{}.".format(after.place)
    pairs = [[own + "batch", str(tap.number)], [own + "step", tap.step],
             [own + "minute", shown(tap.after / 60, 0)]] + day_pairs(values)
    if tap.record is not None:  # the page keeps in the log what the whole batch took
        pairs += [["log." + name, text] for name, text in record_pairs(tap.record)]
    label = message("plan-tap", number=tap.number, step=SAID[tap.step])
    return {"label": label, "screen": "plan", "pairs": pairs}


def record_pairs(record: Record) -> "list[list]":
    """What a finished batch took, as the log keeps it."""
    pairs = [["planned", str(record.number)],
             ["pieces", kept([as_kept(name) for name in record.names])],
             ["temperature", number(warmth_typed(record.temperature))],
             ["mass", shown(record.mass * 1000, 0) + " g"], ["crew", record.crew],
             ["hands", str(record.hands)], ["laid", number(shown(record.metres, 2) + " m")]]
    pairs += [[name, number(shown(time / 60, 1) + " min")] for name, time in record.took]
    return [pair for pair in pairs if pair[1]]


def sun_pairs(values: Values) -> "list[list[str]]":
    """The sun of the day, for the pot and for another air that it is reckoned with."""
    return ([["pot.sun", values["sun"]]] if sun.said(values) else []) + timed_in(values) + sun.pairs(values)


def clock_pairs(after: Next, clock: Clock) -> "list[list]":
    """A clock for the bag of a batch, of tape alone for the wet film: usable as long as the plan counts, with the
    batch's own steps."""
    container = "bag" if clock.limit == POT else "film"
    mass, at = shown(clock.mass * 1000, 0, UP) + " g", number(warmth_typed(after.air))
    filler = number(shown(clock.filler * 100, 1, DOWN) + " %")
    pairs = [["air", at], ["batch", mass], ["container", container],
             ["filler", filler], ["grain", ""], ["resin_temperature", ""],
             ["pot.started", NOW], ["pot.duration", number(minutes_typed(clock.span))],
             ["pot.share", shown(clock.share * 100) + " %"], ["pot.batch", str(after.number)],
             ["pot.container", container],
             ["pot.pieces", kept([as_kept(name) for name in clock.names[:1] + clock.names[1:][-1:]])],
             ["timing.mass", mass], ["timing.in", container],
             ["timing.at", at]]
    if clock.filler:
        pairs.append(["timing.filler", filler])
    for place, (key, end) in enumerate(clock.ends):
        own = "pot.steps.{}.".format(place)
        pairs += [[own + "name", key], [own + "minute", number(shown(end / 60, 1, DOWN))]]
    return pairs

"""Plan leads: from a plan under way to one tap for each step, the pours of the next batch and the clock of its bag."""
from ..clock import sun
from ..clock.pot_start import NOW, minutes_typed
from ..forms import links
from ..forms.declared import Input
from ..forms.types import Values
from ..things.own_timings import read_timings, timings_pairs
from ..words.numbers import DOWN, UP, shown, small
from .batch_cards import air_typed
from .batch_lines import MIXES, moment
from .batch_record import Record
from .done_so_far import STEPS
from .limit_lines import named, piece_name
from .plan_found import Found
from .plan_next import POT, Clock, Next

SAID = dict(STEPS)


def leads(values: Values, found: Found, after: Next, system_input: Input) -> "list[Values]":
    """In the order in which they are wanted. system_input: the declaration that says how a system travels in a link"""
    said = [done_lead(after, place) for place in range(len(after.taps))]
    if after.begin:  # from a plan on paper to a day under way
        said.append({"label": "Begin the day", "screen": "plan", "pairs": [["running", "yes"]]})
    system = links.handed_on(system_input, values)
    for name, mass in after.mixes:
        words = "Pour batch {}: {}".format(after.number, small(MIXES[name]))
        said.append({"label": words, "screen": "pour",
                     "pairs": system + [["amount", shown(mass * 1000) + " g"], ["air", air_typed(after.air)],
                                        ["temperature", ""]] + sun.pairs(values)})
    if after.clock is not None:
        system = system + timings_pairs(read_timings(values["timings"]))
        label = "Start the clock of batch {}, planned {}".format(
            after.number, moment(values, found.close, after.clock.start))
        said.append({"label": label, "screen": "clock",
                     "pairs": system + clock_pairs(after, after.clock) + sun_pairs(values)})
    return said


def done_lead(after: Next, place: int) -> Values:
    """A tap for the next step of a batch under way, told with the minute it is now."""
    tap, own = after.taps[place], "done.{}.".format(after.place)
    pairs = [[own + "batch", str(tap.number)], [own + "step", tap.step],
             [own + "minute", shown(tap.after / 60, 0)]]
    if tap.record is not None:  # the page keeps in the log what the whole batch took
        pairs += [["log." + name, text] for name, text in record_pairs(tap.record)]
    return {"label": "Batch {}: {}".format(tap.number, small(SAID[tap.step])), "screen": "plan", "pairs": pairs}


def record_pairs(record: Record) -> "list[list[str]]":
    """What a finished batch took, as the log keeps it."""
    pairs = [["what", "Batch {} of the plan".format(record.number)],
             ["seam", named(record.names)[:60]],
             ["temperature", shown(record.temperature - 273.15, 1) + " °C"],
             ["mass", shown(record.mass * 1000, 0) + " g"], ["crew", record.crew],
             ["hands", str(record.hands)], ["laid", shown(record.metres, 2) + " m"]]
    pairs += [[name, shown(time / 60, 1) + " min"] for name, time in record.took]
    return [pair for pair in pairs if pair[1]]


def sun_pairs(values: Values) -> "list[list[str]]":
    """The sun of the day, for the pot and for another air that it is reckoned with."""
    return ([["pot.sun", values["sun"]]] if sun.said(values) else []) + sun.pairs(values)


def clock_pairs(after: Next, clock: Clock) -> "list[list[str]]":
    """A clock for the bag of a batch, of tape alone for the wet film: usable as long as the plan counts, with the
    batch's own steps."""
    container = "bag" if clock.limit == POT else "film"
    mass, at = shown(clock.mass * 1000, 0, UP) + " g", air_typed(after.air)
    names = [piece_name(name) for name in clock.names]
    pairs = [["air", at], ["batch", mass], ["container", container],
             ["filler", shown(clock.filler * 100, 1, DOWN) + " %"], ["grain", ""], ["resin_temperature", ""],
             ["pot.started", NOW], ["pot.duration", minutes_typed(clock.span)],
             ["pot.share", shown(clock.share * 100) + " %"], ["pot.batch", "Batch " + str(after.number)],
             ["pot.container", container],
             ["pot.place", (names[0] + (" to " + names[-1] if len(names) > 1 else ""))[:60]],
             ["timing.mass", mass], ["timing.in", container],
             ["timing.at", at]]
    if clock.filler:
        pairs.append(["timing.filler", shown(clock.filler * 100, 1, DOWN) + " %"])
    for place, (key, end) in enumerate(clock.ends):
        own = "pot.steps.{}.".format(place)
        pairs += [[own + "name", SAID[key]], [own + "minute", shown(end / 60, 1, DOWN)]]
    return pairs

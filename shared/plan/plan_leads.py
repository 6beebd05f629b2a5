"""Plan leads: from a plan under way to one tap for each step, the pours of the next batch and the clock of its bag."""
from ..clock.pot_start import NOW, minutes_typed
from ..equations.laying import FILM, POT, in_pot
from ..forms import links
from ..things.own_timings import read_timings, timings_pairs
from ..words.numbers import DOWN, UP, shown, small
from . import batch_record, batches
from .batch_cards import air_typed
from .progress import time_now
from .steps import STEPS

SAID = dict(STEPS)
AT_ONCE = 2  # batches that are under way side by side, at most


def leads(values, plan, system_input):
    """In the order in which they are wanted. system_input: the declaration that says how a system travels in a link"""
    standing, now = plan.followed(), time_now(values)
    found = done_leads(values, standing, now) if values["running"] == "yes" else [begin_lead(values, standing)]
    system = links.handed_on(system_input, values)
    for batch in [batch for batch in standing if not batch.finished][:1]:
        for _, label, mass in batches.liquids(batch):
            words = "Pour batch {}: {}".format(batch.number, small(label))
            found.append({"label": words, "screen": "pour",
                          "pairs": system + [["amount", shown(batches.poured(mass) * 1000) + " g"],
                                             ["air", air_typed(batch.work.profile.at(batch.start))],
                                             ["temperature", ""]]})
        if not batch.begun:
            found.append(clock_lead(plan, batch, system + timings_pairs(read_timings(values["timings"]))))
    return [lead for lead in found if lead]


def begin_lead(values, standing):
    """From a plan on paper to a day under way."""
    if not standing:
        return None
    return {"label": "Begin the day", "screen": "plan", "pairs": [["running", "yes"]]}


def done_leads(values, standing, now):
    """A tap for the next step of each batch under way, told with the minute it is now."""
    if now is None:
        return []
    found, place = [], max([row["place"] for row in values["done"]] + [-1]) + 1
    minute = shown((now - values["start"]) / 60, 0)
    for batch in [batch for batch in standing if not batch.finished][:AT_ONCE]:
        step = next(iter([step for step in batch.steps if not step.done]))
        own = "done.{}.".format(place)
        pairs = [[own + "batch", str(batch.number)], [own + "step", step.key], [own + "minute", minute]]
        if step.key == batch.steps[-1].key:  # the page keeps in the log what the whole batch took
            pairs += [["log." + name, text] for name, text in batch_record.pairs(values, batch, now)]
        found.append({"label": "Batch {}: {}".format(batch.number, small(SAID[step.key])), "screen": "plan",
                      "pairs": pairs})
        if not batch.begun:
            break
    return found


def clock_lead(plan, batch, system):
    """A clock for the bag of a batch, of tape alone for the wet film: usable as long as the plan reckons, with the
    batch's own steps. Its cup is empty as soon as it is mixed; what has to be watched is on the tape.

    system: it and what was timed of it here, as pairs; a change of air is reckoned with both
    """
    batch_record = batch.laid
    limit, container = (POT, "bag") if batch_record.putty else (FILM, "film")
    mass = shown(in_pot(batch_record) * 1000, 0, UP) + " g"
    filler = shown(plan.fillers().get(in_pot(batch_record), 0.0) * 100, 1, DOWN) + " %"
    span = dict(batch.deadlines)[limit] - batch.start
    names = [piece.name for piece in batch.work.pieces[batch_record.first:batch_record.last]]
    at = air_typed(batch.work.profile.at(batch.start))
    pairs = [["air", at], ["batch", mass], ["container", container], ["filler", filler], ["resin_temperature", ""],
             ["pot.started", NOW], ["pot.duration", minutes_typed(span)],
             ["pot.share", shown(plan.times.share(limit) * 100) + " %"], ["pot.batch", "Batch " + str(batch.number)],
             ["pot.container", container],
             ["pot.place", (names[0] + (" to " + names[-1] if len(names) > 1 else ""))[:60]],
             ["timing.mass", mass], ["timing.in", container],
             ["timing.at", at]]
    for place, step in enumerate(batch.steps):
        own = "pot.steps.{}.".format(place)
        pairs += [[own + "name", SAID[step.key]], [own + "minute", shown((step.end - batch.start) / 60, 1, DOWN)]]
    label = "Start the clock of batch {}, planned {}".format(batch.number, batches.moment(plan, batch.start))
    return {"label": label, "screen": "clock", "pairs": system + pairs}

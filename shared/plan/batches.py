"""Batches: each batch of a plan as lines, with its amounts, containers, steps and limits on the clock."""

from math import floor

from ..catalogue.losses import BY_KEY
from ..equations.laying import CUP, FILM, POT, SIZE, SOFT
from ..forms.clock_times import clock_text
from ..forms.memo import once
from ..mix import ratio
from ..words.lines import MORE, WARN, line
from ..words.numbers import DOWN, UP, capital, ceiling, small, to_step
from ..words.units import told
from . import advice, progress, smallest_mix

PUTTY = BY_KEY["putty_density"].value  # from memory: for how large a bag must be, not for what is weighed
SAFE = "rounded down, to be sure"
LATE_TAPE = "Do not push tape into stiffening putty: let it harden, wash, abrade, then tape."
TAPE_LATER = "later, leave it, and tape the hard cove another day"
DONE_BY = {POT: "Bag empty", CUP: "Cup empty, onto the tray", SOFT: "Tape rolled on the soft cove",
           FILM: "Peel ply down on wet tape"}
TOOLED = "Cove tooled while it is soft"
TOOLED_LATE = "Leave the stiff cove: let it harden, abrade, fill what is missing."
WHAT_TO_DO = (
    (POT, "Empty the bag now: spread the rest thin outdoors, mix less next time."),
    (CUP, "Onto the tray now, or outdoors; mix less next time."),
    (SOFT, LATE_TAPE),
    (SIZE, "Mix less at a time."),
    (FILM, "Peel ply only where the tape is still wet; elsewhere let it cure, wash, abrade."),
)


def count_text(count):
    """So many batches, in words.

    >>> count_text(1), count_text(4)
    ('1 batch', '4 batches')
    """
    return str(count) + (" batch" if count == 1 else " batches")


def latest(values, time: float) -> str:
    """What must not be passed [s on the clock], the end of a window or the latest start, as text: rounded down."""
    return clock_text(time, values["hours"], DOWN)


def moment(plan, time: float, days: bool = True) -> str:
    """A moment of the plan [s on the clock] as text, rounded up: nothing is told to be done before it is.

    The end of one step is the start of the next and the end of its batch: rounded alike, they are told alike. What is
    in time though it lies in the last minute of its limit is told by that minute, and what comes before it there too.
    """
    close = once(plan.values, "close", lambda: _close(plan.followed()))
    toward = DOWN if time <= close.get(_minute(time), 0.0) else UP
    return clock_text(time, plan.values["hours"], toward, days)


def _minute(time):
    return floor(time / 60 + 1e-6)  # as a clock shows it


def _close(batches):
    """What is in time in the very minute its limit is told by: {minute: the last moment of it [s]}."""
    found = {}
    for batch in batches:
        for time, by in progress.bounded(batch):
            minute = _minute(time)
            if time <= by + progress.LATE and minute == _minute(by):
                found[minute] = max(time, found.get(minute, time))
    return found


def batch_lines(values, plan, batch, fully=True):
    """One batch: when, what, how much, in which container, the steps in order, and by when each window ends.

    fully: with its amounts and steps; a batch that is far off is told in one line
    """
    laid, part = batch.laid, "batch_" + str(batch.number)
    pieces = batch.work.pieces[laid.first : laid.last]
    length = sum([piece.length for piece in pieces])
    label = "Batch " + str(batch.number)
    if len(plan.crews) > 1:
        label += ", pair " + str(batch.crew + 1)
    state = ", done" if batch.finished else (", under way" if batch.begun else "")
    found = [
        line("batch_" + str(batch.number), label + state, length, "m",
             moment(plan, batch.start) + " to " + moment(plan, batch.steps[-1].end) + " · "
             + told(length, "m", values["units"]), rough=", ".join([piece.name for piece in pieces]), part=part)
    ]
    found.extend(_warnings(values, plan, batch, part))
    if batch.finished or not fully:
        return found
    air = batch.work.profile.at(batch.start)
    found.append(line("air", "Air when it is mixed", air, "K", told(air, "degC", values["units"], places=1), part=part,
                      rank=MORE))
    found.extend(_amounts(values, batch, part))
    pair, before, told_before = batch.work.crew.pair, None, ""
    for key, label, who, begun, end, done in batch.steps:
        # mostly a step begins when the one before it ends
        start = told_before if begun == before else moment(plan, begun)
        before, told_before = end, moment(plan, end)
        if pair:  # one who works alone needs no name; two are told apart
            label = ("First: ", "Second: ", "Mixer: ")[who] + label
        rough = "done" if done else ""
        found.append(line("step_" + key, start + " to " + told_before, end, "s", label, rough, "", part, MORE))
    tape = progress.tape_begun_by(batch)
    if tape is not None:
        text = "by " + latest(values, tape)
        begun = "Wetting out begun" if batch.laid.one_mix else "Wet-out mixing begun"  # the first step of the tape
        found.append(line("by_tape", begun, tape, "s", text, TAPE_LATER, "", part, MORE))
    for limit, by in batch.deadlines:
        text = "by " + latest(values, by)
        what = DONE_BY[limit] if limit != SOFT or batch.laid.wet else TOOLED
        found.append(line("by_" + limit, what, by, "s", text, SAFE, "", part, MORE))
    return found


def _warnings(values, plan, batch, part):
    found = []
    if batch.finished:
        return found
    if batch.begun:
        for limit, by, when in progress.missed(batch):
            found.append(
                line(
                    "missed_" + limit,
                    "Too late",
                    when - by,
                    "s",
                    "{} lasts until {}; this is done at {}. {}".format(
                        capital(advice.words_of(limit)[0]),
                        latest(values, by),
                        moment(plan, when),
                        dict(WHAT_TO_DO)[limit] if limit != SOFT or batch.laid.wet else TOOLED_LATE,
                    ),
                    part=part,
                    rank=WARN,
                )
            )
        return found
    finish = values["finish"]
    missed = batch.latest is not None and batch.start > batch.latest + 1
    if missed or batch.slack < -1 or (finish is not None and batch.steps[-1].end > finish + 1):
        text = "Batch {} should not be started any more: it would not be laid in time.".format(batch.number)
        why = advice.words_of(batch.limit)[1] if batch.slack < -1 else "it would not be finished in time"
        if missed and batch.latest < batch.start - 3:
            why = "its latest start was " + latest(values, batch.latest)
        found.append(line("do_not_start", "Do not start", batch.start, "s", text, why, part=part, rank=WARN))
    elif batch.latest is not None:
        text, after = latest(values, batch.latest), "after that, leave it for another day"
        found.append(line("latest", "Start at the latest", batch.latest, "s", text, after, part=part, rank=MORE))
    return found


def liquids(batch):
    """What is poured for a batch, filler left out: (name, label, mass [kg]) of each mix."""
    laid, filler = batch.laid, batch.work.mixing.filler
    epoxy = laid.putty / (1 + filler)
    if laid.one_mix:
        return (("mix", "Mix, for both", epoxy + laid.wet),)
    return tuple([mix for mix in (("putty", "Putty", epoxy), ("wet", "Wet-out", laid.wet)) if mix[2]])


def poured(mass: float) -> float:
    """A mix as it is poured [kg]: whole grams, rounded up, so that what is told here is what the pour is asked for.

    >>> poured(0.1333), poured(0.4)
    (0.134, 0.4)
    """
    return ceiling(mass * 1000) / 1000


def _container(values, batch, name):
    laid, filler, units = batch.laid, batch.work.mixing.filler, values["units"]
    stirred = told(laid.putty / (1 + filler) * filler, "g", units) + " of filler"
    if name == "wet":
        return "cup, at once onto the tray"
    bag = "then the bag, about " + told(to_step(laid.putty / PUTTY, 1e-5, UP), "mL", units) + " of putty (from memory)"
    if name == "mix":
        over = smallest_mix.surplus(batch.work, laid)
        tray = told(laid.wet, "g", units) + " of it onto the tray"
        if over > 1e-4:
            tray += ", of which " + told(over, "g", units, UP) + " are surplus"
        return "cup; {}; {} into the rest, {}".format(tray, stirred, bag)
    return "cup, then {}, {}".format(stirred, bag)


def _amounts(values, batch, part):
    units, found = values["units"], []
    for name, label, mass in liquids(batch):
        whole = poured(mass)
        text = told(whole, "g", units) + _parts(values, whole)
        container = _container(values, batch, name)
        found.append(line("amount_" + name, label, mass, "kg", text, container, part=part, rank=MORE))
    found.extend(smallest_mix.surplus_line(values, batch, part))
    return found


def _shares(system):
    parts = ratio.basis(system).weight_parts
    return list(zip(ratio.shares(parts), [" " + small(name) for name in ratio.part_names(system)])) if parts else []


def _parts(values, mass):
    """The parts of a mix [kg] in words, its shares and names read once for all batches."""
    found = [told(share * mass, "g", values["units"]) + name for share, name in once(
        values, "shares", lambda: _shares(values["system"]))]
    return ": " + " + ".join(found) if found else ""

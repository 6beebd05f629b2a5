"""Batches: a plan as lines. It says what binds and what would help before it tells the steps."""
from . import advice, ratio, under_way
from .catalogue.cautions import STANDING
from .catalogue.windows import OVERLAP
from .clock import clock_text
from .day import lowest
from .laying import FILM, POT, SIZE, SOFT
from .lines import ANSWER, ASK, BESIDE, MORE, WARN, line, words
from .numbers import DOWN, NEAREST, UP, shown
from .steps import STEPS
from .units import told

HEAT = next(text for name, _, text, _, _ in STANDING if name == "heat")
ROUGH = "quick rule, rates and windows from memory; a trial bag timed in your shed goes before them"
LATE_TAPE = ("Do not push tape into stiffening putty: let it harden, wash, abrade, then tape.")
WHAT_TO_DO = (
    (POT, "Empty the bag now: spread the rest thin outdoors, mix less next time."),
    (SOFT, LATE_TAPE),
    (SIZE, "Mix less at a time."),
    (FILM, "Peel ply only where the tape is still wet; elsewhere let it cure, wash, abrade."),
)
MOST_HELPS = 3
GAP = 6 * 3600.0  # s between two temperatures that is asked back (own judgement)


def lines(values, plan):
    """All lines of a plan, what matters first."""
    found = _cold(values, plan) + _cuts(values, plan)
    if not plan.crews:
        return found + _no_plan(values, plan)
    batches = plan.followed()
    found = _summary(values, plan, batches) + found + _questions(values, plan, batches)
    for batch in batches:
        found.extend(_batch_lines(values, plan, batch))
    return found


def _clock(values, time, toward):
    return clock_text(time, values["hours"], toward)


def _summary(values, plan, batches):
    end = max([batch.steps[-1].end for batch in batches])
    count = len(batches)
    crews = "" if len(plan.crews) == 1 else ", " + str(len(plan.crews)) + " pairs side by side"
    found = [line("batches", "To mix", count, "", _batches(count) + crews, rough=ROUGH, rank=ANSWER),
             line("end", "Last peel ply down", end, "s", _clock(values, end, UP), rank=ANSWER,
                  rough="at these rates, " + shown(values["pause"] / 60) + " min between batches")]
    big = max([_in_one_pot(batch.laid) for batch in batches])
    found.append(line("largest", "Largest mix", big, "kg", told(big, "g", values["units"], UP), caution=HEAT,
                      rough="filler counted in: to the safe side"))
    limit, ended, all_ended = advice.binding(plan)
    what, why = advice.words_of(limit)
    if all_ended:
        text = what + ": it ends {} of {}".format(ended, _batches(all_ended))
    else:
        text = what + ": it has the least left, though all goes into one batch"
        if count > 1:
            text = what + ": it has the least left"
    found.append(words("binds", "What binds", text, rough=why))
    least = min([batch.slack for batch in batches])
    found.append(line("slack", "Least left of a window", least, "s", shown(least / 60, 0, DOWN) + " min",
                      rough="beyond the " + shown((1 - values["share"]) * 100) + "% kept back"))
    return found + _helps(values, plan, count)


def _batches(count):
    return str(count) + (" batch" if count == 1 else " batches")


def _in_one_pot(laid):
    return laid.putty + laid.wet if laid.one_mix else max(laid.putty, laid.wet)


def _helps(values, plan, count):
    works = [work for work, _, _ in plan.crews]
    starts = [starts[0] for _, _, starts in plan.crews]
    if count <= len(works):
        return []
    better = advice.helps(works, starts, plan.profile, count)
    found = [line("helps_" + name, "Would help", fewer, "", label + ": " + _batches(fewer), rough="instead of " + str(count))
             for name, label, fewer in better[:MOST_HELPS]]
    return found or [words("helps_nothing", "Would help", "Nothing listed here makes it fewer batches",
                           rough="helper, cooler hours, slower hardener and small bags were tried", rank=MORE)]


def _cold(values, plan):
    least, remembered = lowest(values["system"])
    coldest = min([point[1] for point in plan.profile.points])
    if coldest >= least:
        return []
    return [line("cold", "Too cold for this hardener", coldest, "K", told(coldest, "degC", values["units"]) + " is below its "
                 "lowest, " + told(least, "degC", values["units"]) + ". Warm the place, or take a faster hardener.",
                 rough="from memory; the label's own figure goes before it" if remembered else "the label's", rank=WARN)]


def _cuts(values, plan):
    found = []
    for name, parts, failed in plan.cuts:
        what, _ = advice.words_of(failed.limit)
        found.append(words("cut", "Too long for one batch", "{} is cut in {}, tape lapped {}.".format(
            name, parts, told(values["overlap"], "mm", values["units"])), rough=what + " binds; overlap " + OVERLAP[3],
            rank=WARN))
    return found


def _no_plan(values, plan):
    """No grouping holds: which piece, which limit, and what to change."""
    failed = plan.hopeless[0] if plan.hopeless else plan.failed
    work = plan.work()
    what, why = advice.words_of(failed.limit) if failed else ("the changing temperature", "")
    name = plan.whole.pieces[failed.first].name if failed else "the pieces"
    over = " by " + shown(-failed.slack / 60, 0, UP) + " min" if failed else ""
    found = [words("no_plan", "No plan", name + " cannot be laid in time: " + what + over + " too late.", rough=why, rank=WARN)]
    if values["long"] == "whole":
        found.append(words("cut_it", "Change", "Cut it at a bulkhead or where an overlap may be, and plan again.", rank=BESIDE))
    # one at a time: what would let the piece that failed be laid at all
    for name, label, changed, _ in advice.changes(work, plan.profile):
        if failed and changed.one_piece(failed.first)[1]:
            found.append(words("helps_" + name, "Would help", label, rank=BESIDE))
    if len(found) == 1:
        found.append(words("change", "Change", "Shorter pieces, more hands, cooler hours and a slower hardener together.",
                           rank=BESIDE))
    return found


def _questions(values, plan, batches):
    """What is asked back or warned of: a profile with a gap, a finish that is missed, steps told for no batch."""
    found = []
    points = plan.profile.points
    if not plan.profile.constant:
        for before, after in zip(points, points[1:]):
            if after[0] - before[0] > GAP:
                found.append(words("gap", "Temperature", "None between {} and {}: is it straight?".format(
                    _clock(values, before[0], DOWN), _clock(values, after[0], DOWN)), rank=ASK))
    end = max([batch.steps[-1].end for batch in batches])
    if values["temperature_is"] == "points" and end > points[-1][0] + 60:
        found.append(words("after_profile", "Temperature", "After {} none was typed: the last one is taken to stay.".format(
            _clock(values, points[-1][0], DOWN)), rank=ASK))
    if values["finish"] is not None and end > values["finish"] + 1:
        found.append(line("too_late", "Not finished in time", end - values["finish"], "s",
                          shown((end - values["finish"]) / 60, 0, UP) + " min after "
                          + _clock(values, values["finish"], DOWN) + ". Leave batches for another day, whole ones.", rank=WARN))
    names = dict(STEPS)
    for row in values["done"]:
        number = int(row["batch"])
        if number > len(batches):
            found.append(words("no_batch", "Done so far", "There is no batch " + str(number) + " in this plan.", rank=ASK))
        elif row["step"] not in [step.key for step in batches[number - 1].steps]:
            found.append(words("no_step", "Done so far", "Batch {}: '{}' is no step of its own here; tell the next one.".format(
                number, names[row["step"]]), rank=ASK))
    return found


def _batch_lines(values, plan, batch):
    laid, part = batch.laid, "batch " + str(batch.number)
    pieces = batch.work.pieces[laid.first:laid.last]
    length = sum([piece.length for piece in pieces])
    label = "Batch " + str(batch.number)
    if len(plan.crews) > 1:
        label += ", pair " + str(batch.crew + 1)
    state = ", done" if batch.finished else (", under way" if batch.begun else "")
    found = [line("batch_" + str(batch.number), label + state, length, "m",
                  _clock(values, batch.start, NEAREST) + " to " + _clock(values, batch.steps[-1].end, NEAREST) + " · "
                  + told(length, "m", values["units"]), rough=", ".join([piece.name for piece in pieces]), part=part)]
    found.extend(_warnings(values, batch, part))
    if batch.finished:
        return found
    found.extend(_amounts(values, batch, part))
    for step in batch.steps:
        # one who works alone needs no name; two are told apart
        who = ("First: ", "Second: ", "Mixer: ")[step.who] if batch.work.crew.pair else ""
        found.append(line("step_" + step.key, _clock(values, step.start, NEAREST), step.end, "s", who + step.label,
                          rough=("done " if step.done else "to ") + _clock(values, step.end, NEAREST), part=part, rank=MORE))
    for limit, by in batch.deadlines:
        why = advice.words_of(limit)[1]
        found.append(line("by_" + limit, "Not after " + _clock(values, by, DOWN), by, "s", why, part=part, rank=MORE,
                          rough="rounded down"))
    return found


def _warnings(values, batch, part):
    found = []
    if batch.finished:
        return found
    if batch.begun:
        for limit, by, when in under_way.missed(batch):
            found.append(line("missed_" + limit, "Too late", when - by, "s", "{} ends at {}, this at {}. {}".format(
                advice.words_of(limit)[0], _clock(values, by, DOWN), _clock(values, when, UP), dict(WHAT_TO_DO)[limit]),
                part=part, rank=WARN))
        return found
    if batch.latest is not None and batch.start > batch.latest + 1:
        found.append(line("do_not_start", "Do not start", batch.latest, "s", "Batch {} should not be started any more: "
                          "it would not be laid in time.".format(batch.number), rank=WARN, part=part,
                          rough="its latest start was " + _clock(values, batch.latest, DOWN) if batch.latest < batch.start - 3
                          else advice.words_of(batch.limit)[1]))
    elif batch.latest is not None:
        found.append(line("latest", "Start at the latest", batch.latest, "s", _clock(values, batch.latest, DOWN), part=part,
                          rank=MORE, rough="after that, leave it for another day"))
    elif batch.slack < -1:
        found.append(words("do_not_start", "Do not start", "Batch {} should not be started any more: it would not be laid "
                           "in time.".format(batch.number), part=part, rank=WARN))
    return found


def _amounts(values, batch, part):
    laid, work = batch.laid, batch.work
    filler = laid.putty / (1 + work.mixing.filler) * work.mixing.filler
    liquids = laid.putty - filler
    if laid.one_mix:
        mixes = (("mix", "Mix, for both", liquids + laid.wet, "cup; {} of it stays out for the tray, the rest takes {} of "
                  "filler and goes into the bag".format(told(laid.wet, "g", values["units"]),
                                                        told(filler, "g", values["units"]))),)
    else:
        mixes = (("putty", "Putty", liquids, "cup, then {} of filler, then the bag".format(
            told(filler, "g", values["units"]))), ("wet", "Wet-out", laid.wet, "cup, at once onto the tray"))
    found = [line("amount_" + name, label, mass, "kg", told(mass, "g", values["units"], UP) + _parts(values, mass), part=part,
                  rough=container, rank=MORE) for name, label, mass, container in mixes]
    putty, wet = needed(work, laid)
    over = laid.putty + laid.wet - putty - wet
    if over > 1e-4:
        found.append(line("over", "More than needed", over, "kg", told(over, "g", values["units"], UP), part=part, rank=MORE,
                          rough="so that the scale holds the ratio; tie holes and end grain first"))
    return found


def needed(work, laid):
    """What a group takes with what stays behind and the spare [kg], whatever the scale can hold: (putty, wet-out)."""
    mixing = work.mixing
    more = 1 + mixing.spare
    return ((work.putty[laid.last] - work.putty[laid.first]) * more + mixing.left_putty,
            (work.wet[laid.last] - work.wet[laid.first]) * more + mixing.left_wet)


def _parts(values, mass):
    if not ratio.basis(values["system"]).weight_parts:
        return ""
    mix = ratio.mix_of_mass(values["system"], mass)
    return ": " + " + ".join([told(own, "g", values["units"]) + " " + name.lower()
                              for own, name in zip(mix.masses, mix.names)])
